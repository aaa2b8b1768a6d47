//! The elements: number, symbol, name, standard atomic weight.
//!
//! Source: Prohaska et al., "Standard atomic weights of the elements 2021 (IUPAC Technical Report)",
//! Pure Appl. Chem. 94 (2022) 573-600, Tables 1 (standard) and 2 (abridged), with the revisions of 2024 by the
//! Commission on Isotopic Abundances and Atomic Weights (CIAAW): zirconium 91.222(3), gadolinium 157.249(2),
//! lutetium 174.96669(5). The mass number given for an element without a standard atomic weight is that of its
//! longest-lived known isotope. Masses of the two isotopes with their own symbols: Atomic Mass Evaluation 2020
//! (AME2020).
//!
//! Nothing is calculated here. Atomic weights are relative to 1/12 of the mass of an atom of carbon-12, so they
//! have no unit; the same figures are masses in u and, to 2 parts in 10^9, molar masses in g/mol.

/// The edition of [`STANDARD_ATOMIC_WEIGHTS_2024`].
pub const STANDARD_ATOMIC_WEIGHTS_EDITION: &str =
    "IUPAC/CIAAW standard atomic weights 2021 with the 2024 revisions of Zr, Gd and Lu";

/// The source of [`STANDARD_ATOMIC_WEIGHTS_2024`].
pub const STANDARD_ATOMIC_WEIGHTS_SOURCE: &str =
    "Prohaska et al., Pure Appl. Chem. 94 (2022) 573-600, Tables 1 and 2; CIAAW revisions of 2024";

/// Mass of the electron, in u: 5.485 799 090 441(97)e-4, CODATA 2022.
pub const ELECTRON_MASS_2022: f64 = 5.485_799_090_441e-4;

/// Standard uncertainty of [`ELECTRON_MASS_2022`], in u.
pub const ELECTRON_MASS_STANDARD_UNCERTAINTY_2022: f64 = 9.7e-15;

/// A standard atomic weight as the Commission publishes it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum StandardWeight {
    /// Normal materials differ: every value between the two occurs. No value inside is preferred.
    Interval {
        /// Least atomic weight found in a normal material.
        low: f64,
        /// Greatest atomic weight found in a normal material.
        high: f64,
    },
    /// One value, with the decision uncertainty printed in brackets behind it.
    Value {
        /// The standard atomic weight.
        value: f64,
        /// The printed uncertainty: value - uncertainty to value + uncertainty covers normal materials.
        uncertainty: f64,
    },
    /// No isotope with a characteristic abundance in normal materials: there is no standard atomic weight.
    NoStable {
        /// Mass number of the longest-lived known isotope.
        mass_number: u16,
    },
}

/// An abridged value: at most five significant figures, one value also for the elements with an interval.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct AbridgedWeight {
    /// The value.
    pub value: f64,
    /// Its uncertainty: value - uncertainty to value + uncertainty covers normal materials.
    pub uncertainty: f64,
}

/// One element.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Element {
    /// Atomic number, 1 to 118.
    pub number: u8,
    /// Symbol of one or two letters.
    pub symbol: &'static str,
    /// English name with IUPAC spelling, in lower case.
    pub name: &'static str,
    /// The standard atomic weight in full.
    pub standard: StandardWeight,
    /// The abridged value (Table 2); `None` where there is no standard atomic weight.
    pub abridged: Option<AbridgedWeight>,
    /// The single value to use when the origin of the sample is not known; `None` where there is no
    /// standard atomic weight. For oxygen (15.999) and thallium (204.38) it lies just below the interval,
    /// by rounding; so it is published.
    pub conventional: Option<f64>,
}

/// An isotope that has its own symbol in formulas.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Isotope {
    /// Symbol of one letter.
    pub symbol: &'static str,
    /// English name in lower case.
    pub name: &'static str,
    /// Atomic number of its element.
    pub number: u8,
    /// Mass number.
    pub mass_number: u16,
    /// Mass of the neutral atom, in u.
    pub mass: f64,
    /// Standard uncertainty of the mass, in u.
    pub standard_uncertainty: f64,
}

/// Deuterium, hydrogen-2: 2.014 101 777 844(15) u, AME2020.
pub const DEUTERIUM_2020: Isotope = Isotope {
    symbol: "D",
    name: "deuterium",
    number: 1,
    mass_number: 2,
    mass: 2.014_101_777_844,
    standard_uncertainty: 1.5e-11,
};

/// Tritium, hydrogen-3: 3.016 049 281 32(8) u, AME2020.
pub const TRITIUM_2020: Isotope = Isotope {
    symbol: "T",
    name: "tritium",
    number: 1,
    mass_number: 3,
    mass: 3.016_049_281_32,
    standard_uncertainty: 8e-11,
};

/// The 118 elements in order of atomic number; [`STANDARD_ATOMIC_WEIGHTS_SOURCE`].
#[rustfmt::skip] // one line an element, so that it can be read against the published table
pub const STANDARD_ATOMIC_WEIGHTS_2024: [Element; 118] = [
    interval(1, "H", "hydrogen", [1.00784, 1.00811], [1.0080, 0.0002], 1.008),
    value(2, "He", "helium", [4.002602, 0.000002], [4.0026, 0.0001]),
    interval(3, "Li", "lithium", [6.938, 6.997], [6.94, 0.06], 6.94),
    value(4, "Be", "beryllium", [9.0121831, 0.0000005], [9.0122, 0.0001]),
    interval(5, "B", "boron", [10.806, 10.821], [10.81, 0.02], 10.81),
    interval(6, "C", "carbon", [12.0096, 12.0116], [12.011, 0.002], 12.011),
    interval(7, "N", "nitrogen", [14.00643, 14.00728], [14.007, 0.001], 14.007),
    interval(8, "O", "oxygen", [15.99903, 15.99977], [15.999, 0.001], 15.999),
    value(9, "F", "fluorine", [18.998403162, 0.000000005], [18.998, 0.001]),
    value(10, "Ne", "neon", [20.1797, 0.0006], [20.180, 0.001]),
    value(11, "Na", "sodium", [22.98976928, 0.00000002], [22.990, 0.001]),
    interval(12, "Mg", "magnesium", [24.304, 24.307], [24.305, 0.002], 24.305),
    value(13, "Al", "aluminium", [26.9815384, 0.0000003], [26.982, 0.001]),
    interval(14, "Si", "silicon", [28.084, 28.086], [28.085, 0.001], 28.085),
    value(15, "P", "phosphorus", [30.973761998, 0.000000005], [30.974, 0.001]),
    interval(16, "S", "sulfur", [32.059, 32.076], [32.06, 0.02], 32.06),
    interval(17, "Cl", "chlorine", [35.446, 35.457], [35.45, 0.01], 35.45),
    interval(18, "Ar", "argon", [39.792, 39.963], [39.95, 0.16], 39.95),
    value(19, "K", "potassium", [39.0983, 0.0001], [39.098, 0.001]),
    value(20, "Ca", "calcium", [40.078, 0.004], [40.078, 0.004]),
    value(21, "Sc", "scandium", [44.955907, 0.000004], [44.956, 0.001]),
    value(22, "Ti", "titanium", [47.867, 0.001], [47.867, 0.001]),
    value(23, "V", "vanadium", [50.9415, 0.0001], [50.942, 0.001]),
    value(24, "Cr", "chromium", [51.9961, 0.0006], [51.996, 0.001]),
    value(25, "Mn", "manganese", [54.938043, 0.000002], [54.938, 0.001]),
    value(26, "Fe", "iron", [55.845, 0.002], [55.845, 0.002]),
    value(27, "Co", "cobalt", [58.933194, 0.000003], [58.933, 0.001]),
    value(28, "Ni", "nickel", [58.6934, 0.0004], [58.693, 0.001]),
    value(29, "Cu", "copper", [63.546, 0.003], [63.546, 0.003]),
    value(30, "Zn", "zinc", [65.38, 0.02], [65.38, 0.02]),
    value(31, "Ga", "gallium", [69.723, 0.001], [69.723, 0.001]),
    value(32, "Ge", "germanium", [72.630, 0.008], [72.630, 0.008]),
    value(33, "As", "arsenic", [74.921595, 0.000006], [74.922, 0.001]),
    value(34, "Se", "selenium", [78.971, 0.008], [78.971, 0.008]),
    interval(35, "Br", "bromine", [79.901, 79.907], [79.904, 0.003], 79.904),
    value(36, "Kr", "krypton", [83.798, 0.002], [83.798, 0.002]),
    value(37, "Rb", "rubidium", [85.4678, 0.0003], [85.468, 0.001]),
    value(38, "Sr", "strontium", [87.62, 0.01], [87.62, 0.01]),
    value(39, "Y", "yttrium", [88.905838, 0.000002], [88.906, 0.001]),
    value(40, "Zr", "zirconium", [91.222, 0.003], [91.222, 0.003]),
    value(41, "Nb", "niobium", [92.90637, 0.00001], [92.906, 0.001]),
    value(42, "Mo", "molybdenum", [95.95, 0.01], [95.95, 0.01]),
    none(43, "Tc", "technetium", 97),
    value(44, "Ru", "ruthenium", [101.07, 0.02], [101.07, 0.02]),
    value(45, "Rh", "rhodium", [102.90549, 0.00002], [102.91, 0.01]),
    value(46, "Pd", "palladium", [106.42, 0.01], [106.42, 0.01]),
    value(47, "Ag", "silver", [107.8682, 0.0002], [107.87, 0.01]),
    value(48, "Cd", "cadmium", [112.414, 0.004], [112.41, 0.01]),
    value(49, "In", "indium", [114.818, 0.001], [114.82, 0.01]),
    value(50, "Sn", "tin", [118.710, 0.007], [118.71, 0.01]),
    value(51, "Sb", "antimony", [121.760, 0.001], [121.76, 0.01]),
    value(52, "Te", "tellurium", [127.60, 0.03], [127.60, 0.03]),
    value(53, "I", "iodine", [126.90447, 0.00003], [126.90, 0.01]),
    value(54, "Xe", "xenon", [131.293, 0.006], [131.29, 0.01]),
    value(55, "Cs", "caesium", [132.90545196, 0.00000006], [132.91, 0.01]),
    value(56, "Ba", "barium", [137.327, 0.007], [137.33, 0.01]),
    value(57, "La", "lanthanum", [138.90547, 0.00007], [138.91, 0.01]),
    value(58, "Ce", "cerium", [140.116, 0.001], [140.12, 0.01]),
    value(59, "Pr", "praseodymium", [140.90766, 0.00001], [140.91, 0.01]),
    value(60, "Nd", "neodymium", [144.242, 0.003], [144.24, 0.01]),
    none(61, "Pm", "promethium", 145),
    value(62, "Sm", "samarium", [150.36, 0.02], [150.36, 0.02]),
    value(63, "Eu", "europium", [151.964, 0.001], [151.96, 0.01]),
    value(64, "Gd", "gadolinium", [157.249, 0.002], [157.25, 0.01]),
    value(65, "Tb", "terbium", [158.925354, 0.000007], [158.93, 0.01]),
    value(66, "Dy", "dysprosium", [162.500, 0.001], [162.50, 0.01]),
    value(67, "Ho", "holmium", [164.930329, 0.000005], [164.93, 0.01]),
    value(68, "Er", "erbium", [167.259, 0.003], [167.26, 0.01]),
    value(69, "Tm", "thulium", [168.934219, 0.000005], [168.93, 0.01]),
    value(70, "Yb", "ytterbium", [173.045, 0.010], [173.05, 0.02]),
    value(71, "Lu", "lutetium", [174.96669, 0.00005], [174.97, 0.01]),
    value(72, "Hf", "hafnium", [178.486, 0.006], [178.49, 0.01]),
    value(73, "Ta", "tantalum", [180.94788, 0.00002], [180.95, 0.01]),
    value(74, "W", "tungsten", [183.84, 0.01], [183.84, 0.01]),
    value(75, "Re", "rhenium", [186.207, 0.001], [186.21, 0.01]),
    value(76, "Os", "osmium", [190.23, 0.03], [190.23, 0.03]),
    value(77, "Ir", "iridium", [192.217, 0.002], [192.22, 0.01]),
    value(78, "Pt", "platinum", [195.084, 0.009], [195.08, 0.02]),
    value(79, "Au", "gold", [196.966570, 0.000004], [196.97, 0.01]),
    value(80, "Hg", "mercury", [200.592, 0.003], [200.59, 0.01]),
    interval(81, "Tl", "thallium", [204.382, 204.385], [204.38, 0.01], 204.38),
    interval(82, "Pb", "lead", [206.14, 207.94], [207.2, 1.1], 207.2),
    value(83, "Bi", "bismuth", [208.98040, 0.00001], [208.98, 0.01]),
    none(84, "Po", "polonium", 209),
    none(85, "At", "astatine", 210),
    none(86, "Rn", "radon", 222),
    none(87, "Fr", "francium", 223),
    none(88, "Ra", "radium", 226),
    none(89, "Ac", "actinium", 227),
    value(90, "Th", "thorium", [232.0377, 0.0004], [232.04, 0.01]),
    value(91, "Pa", "protactinium", [231.03588, 0.00001], [231.04, 0.01]),
    value(92, "U", "uranium", [238.02891, 0.00003], [238.03, 0.01]),
    none(93, "Np", "neptunium", 237),
    none(94, "Pu", "plutonium", 244),
    none(95, "Am", "americium", 243),
    none(96, "Cm", "curium", 247),
    none(97, "Bk", "berkelium", 247),
    none(98, "Cf", "californium", 251),
    none(99, "Es", "einsteinium", 252),
    none(100, "Fm", "fermium", 257),
    none(101, "Md", "mendelevium", 258),
    none(102, "No", "nobelium", 259),
    none(103, "Lr", "lawrencium", 262),
    none(104, "Rf", "rutherfordium", 267),
    none(105, "Db", "dubnium", 270),
    none(106, "Sg", "seaborgium", 269),
    none(107, "Bh", "bohrium", 270),
    none(108, "Hs", "hassium", 270),
    none(109, "Mt", "meitnerium", 278),
    none(110, "Ds", "darmstadtium", 281),
    none(111, "Rg", "roentgenium", 281),
    none(112, "Cn", "copernicium", 285),
    none(113, "Nh", "nihonium", 286),
    none(114, "Fl", "flerovium", 289),
    none(115, "Mc", "moscovium", 289),
    none(116, "Lv", "livermorium", 293),
    none(117, "Ts", "tennessine", 293),
    none(118, "Og", "oganesson", 294),
];

const fn interval(
    number: u8,
    symbol: &'static str,
    name: &'static str,
    [low, high]: [f64; 2],
    [value, uncertainty]: [f64; 2],
    conventional: f64,
) -> Element {
    Element {
        number,
        symbol,
        name,
        standard: StandardWeight::Interval { low, high },
        abridged: Some(AbridgedWeight { value, uncertainty }),
        conventional: Some(conventional),
    }
}

/// Where the standard atomic weight is one value, the conventional value is the same.
const fn value(
    number: u8,
    symbol: &'static str,
    name: &'static str,
    [value, uncertainty]: [f64; 2],
    [abridged, abridged_uncertainty]: [f64; 2],
) -> Element {
    Element {
        number,
        symbol,
        name,
        standard: StandardWeight::Value { value, uncertainty },
        abridged: Some(AbridgedWeight { value: abridged, uncertainty: abridged_uncertainty }),
        conventional: Some(value),
    }
}

const fn none(number: u8, symbol: &'static str, name: &'static str, mass_number: u16) -> Element {
    Element {
        number,
        symbol,
        name,
        standard: StandardWeight::NoStable { mass_number },
        abridged: None,
        conventional: None,
    }
}

/// The table in memory once, so that references to its rows live as long as the program.
static ELEMENTS: [Element; 118] = STANDARD_ATOMIC_WEIGHTS_2024;

/// The element with this atomic number.
///
/// ```
/// use overwater::reference::elements::{StandardWeight, by_number};
/// let oxygen = by_number(8).unwrap();
/// assert_eq!(oxygen.symbol, "O");
/// assert_eq!(oxygen.standard, StandardWeight::Interval { low: 15.99903, high: 15.99977 });
/// ```
#[must_use]
pub fn by_number(number: u8) -> Option<&'static Element> {
    ELEMENTS.get(usize::from(number).checked_sub(1)?)
}

/// The element with this symbol, written as in formulas (`Na`, not `na` or `NA`).
///
/// The isotopes `D` and `T` are not elements and are not found.
///
/// ```
/// use overwater::reference::elements::by_symbol;
/// assert_eq!(by_symbol("Na").unwrap().conventional, Some(22.98976928));
/// assert!(by_symbol("na").is_none());
/// ```
#[must_use]
pub fn by_symbol(symbol: &str) -> Option<&'static Element> {
    let place = match symbol.as_bytes() {
        [first] => place_of(*first, None),
        [first, second] => place_of(*first, Some(*second)),
        _ => None,
    };
    by_number(place?)
}

/// Place of deuterium in [`place_of`], behind the elements.
pub(crate) const PLACE_D: u8 = 119;
/// Place of tritium in [`place_of`].
pub(crate) const PLACE_T: u8 = 120;

/// The atomic number that belongs to the letters of a symbol, or the place of `D` or `T` behind them.
pub(crate) fn place_of(first: u8, second: Option<u8>) -> Option<u8> {
    let row = PLACES.get(usize::from(first.checked_sub(b'A')?))?;
    let column = match second {
        None => 0,
        Some(letter) => usize::from(letter.checked_sub(b'a')?) + 1,
    };
    row.get(column).copied().filter(|place| *place != 0)
}

/// First letter, then none or second letter: one read finds a symbol, and nothing else is found.
static PLACES: [[u8; 27]; 26] = places();

#[expect(
    clippy::indexing_slicing,
    reason = "runs in the compiler only, where a wrong index is a compile error"
)]
const fn places() -> [[u8; 27]; 26] {
    let mut table = [[0; 27]; 26];
    let mut i = 0;
    while i < STANDARD_ATOMIC_WEIGHTS_2024.len() {
        let element = STANDARD_ATOMIC_WEIGHTS_2024[i];
        let letters = element.symbol.as_bytes();
        let column = if letters.len() == 1 { 0 } else { letters[1] - b'a' + 1 };
        table[(letters[0] - b'A') as usize][column as usize] = element.number;
        i += 1;
    }
    table[(b'D' - b'A') as usize][0] = PLACE_D;
    table[(b'T' - b'A') as usize][0] = PLACE_T;
    table
}

#[cfg(test)]
mod tests {
    use super::*;
    use std::collections::HashSet;

    #[test]
    fn the_table_is_in_order_with_118_different_symbols_and_names() {
        let table = STANDARD_ATOMIC_WEIGHTS_2024;
        let numbers: Vec<u8> = table.iter().map(|e| e.number).collect();
        assert_eq!(numbers, (1..=118).collect::<Vec<u8>>());
        let symbols: HashSet<&str> = table.iter().map(|e| e.symbol).collect();
        let names: HashSet<&str> = table.iter().map(|e| e.name).collect();
        assert_eq!((symbols.len(), names.len()), (118, 118));
    }

    #[test]
    fn intervals_uncertainties_and_single_values_fit_together() {
        let mut outside = Vec::new();
        let (mut intervals, mut values, mut without) = (0, 0, 0);
        for element in STANDARD_ATOMIC_WEIGHTS_2024 {
            match element.standard {
                StandardWeight::Interval { low, high } => {
                    intervals += 1;
                    assert!(low < high, "{}", element.symbol);
                    let abridged = element.abridged.unwrap();
                    // The abridged value with its uncertainty covers the whole interval.
                    assert!(abridged.value - abridged.uncertainty <= low + 1e-12, "{}", element.symbol);
                    assert!(abridged.value + abridged.uncertainty >= high - 1e-12, "{}", element.symbol);
                    assert_eq!(element.conventional, Some(abridged.value), "{}", element.symbol);
                    if !(low..=high).contains(&abridged.value) {
                        outside.push(element.symbol);
                    }
                }
                StandardWeight::Value { value, uncertainty } => {
                    values += 1;
                    let abridged = element.abridged.unwrap();
                    assert!(uncertainty > 0.0 && uncertainty <= abridged.uncertainty, "{}", element.symbol);
                    assert!((value - abridged.value).abs() <= abridged.uncertainty, "{}", element.symbol);
                    assert_eq!(element.conventional, Some(value), "{}", element.symbol);
                }
                StandardWeight::NoStable { mass_number } => {
                    without += 1;
                    assert!(u16::from(element.number) * 2 < mass_number, "{}", element.symbol);
                    assert_eq!((element.abridged, element.conventional), (None, None));
                }
            }
        }
        assert_eq!((intervals, values, without), (14, 70, 34));
        assert_eq!(outside, ["O", "Tl"], "outside their interval by rounding, as published");
    }

    #[test]
    fn the_revisions_of_2024_are_in() {
        let weight = |symbol| by_symbol(symbol).unwrap().standard;
        assert_eq!(weight("Zr"), StandardWeight::Value { value: 91.222, uncertainty: 0.003 });
        assert_eq!(weight("Gd"), StandardWeight::Value { value: 157.249, uncertainty: 0.002 });
        assert_eq!(weight("Lu"), StandardWeight::Value { value: 174.96669, uncertainty: 0.00005 });
    }

    #[test]
    fn exactly_the_symbols_are_found() {
        for element in STANDARD_ATOMIC_WEIGHTS_2024 {
            assert_eq!(by_symbol(element.symbol), Some(&element));
            assert_eq!(by_number(element.number), Some(&element));
        }
        let mut found = 0;
        for first in 0..=255 {
            found += usize::from(place_of(first, None).is_some());
            for second in 0..=255 {
                found += usize::from(place_of(first, Some(second)).is_some());
            }
        }
        assert_eq!(found, 118 + 2);
        assert_eq!((place_of(b'D', None), place_of(b'T', None)), (Some(119), Some(120)));
        for wrong in ["", "n", "na", "NA", "D", "T", "Xx", "Naa", "É"] {
            assert_eq!(by_symbol(wrong), None, "{wrong}");
        }
        assert_eq!((by_number(0), by_number(119)), (None, None));
    }

    #[test]
    fn isotopes_weigh_about_their_mass_number() {
        for isotope in [DEUTERIUM_2020, TRITIUM_2020] {
            assert_eq!(isotope.mass.round(), f64::from(isotope.mass_number));
            assert_eq!(isotope.number, 1);
        }
        // Deuteron + electron - binding energy 13.6 eV (1.46e-8 u); deuteron from CODATA 2022.
        let atom = 2.013_553_212_544 + ELECTRON_MASS_2022 - 1.46e-8;
        assert!((DEUTERIUM_2020.mass - atom).abs() < 1e-10);
        // The same for the triton, 3.015 500 715 97 u.
        let atom = 3.015_500_715_97 + ELECTRON_MASS_2022 - 1.46e-8;
        assert!((TRITIUM_2020.mass - atom).abs() < 3e-10);
    }
}
