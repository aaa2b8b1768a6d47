//! School units, and the printing of numbers with a sensible number of figures.
//!
//! Inside a formula everything is in SI base units, with dimensions checked when the program is compiled (the
//! quantity types named here). A [`Unit`] is what a person reads and writes.

use quantity::{Quantity, SIUnit};

use crate::scalar::{Scalar, Symbol, Unity};

pub use quantity::{
    Dimensionless, Energy, Length, Mass, MassDensity, MolarEnergy, MolarEntropy, MolarVolume, MolarWeight,
    Moles, Pressure, Temperature, Time, Volume,
};

/// Amount of substance per volume.
pub type Concentration<S = f64> = quantity::Density<S>;
/// Volume per time.
pub type VolumeFlow<S = f64> = Quantity<S, SIUnit<-1, 3, 0, 0, 0, 0, 0>>;
/// Dynamic viscosity.
pub type Viscosity<S = f64> = quantity::Viscosity<S>;
/// Force per length.
pub type SurfaceTension<S = f64> = quantity::SurfaceTension<S>;
/// Energy per mass and temperature.
pub type SpecificHeat<S = f64> = quantity::SpecificEntropy<S>;
/// Length per time squared.
pub type Acceleration<S = f64> = quantity::Acceleration<S>;

/// A unit that a person reads and writes: `SI value = (value + zero) x si`.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Unit {
    /// As printed, for example `cm3`.
    pub text: &'static str,
    /// As printed where superscripts are at hand, for example `cm³`.
    pub pretty: &'static str,
    /// In LaTeX.
    pub latex: &'static str,
    /// How many SI base units one unit is.
    pub si: f64,
    /// What is added before multiplying; 273.15 for degrees Celsius, 0 for all others.
    pub zero: f64,
}

impl Unit {
    const fn new(text: &'static str, pretty: &'static str, latex: &'static str, si: f64) -> Unit {
        Unit { text, pretty, latex, si, zero: 0.0 }
    }

    /// As the last part of a name: `kpa`, `mol_per_dm3`, `c`; nothing for a plain number.
    ///
    /// ```
    /// use overwater::units::{DEGREE_CELSIUS, JOULE_PER_MOLE_KELVIN, MOLE_PER_CUBIC_DECIMETRE};
    /// assert_eq!(MOLE_PER_CUBIC_DECIMETRE.suffix(), "mol_per_dm3");
    /// assert_eq!(DEGREE_CELSIUS.suffix(), "c");
    /// assert_eq!(JOULE_PER_MOLE_KELVIN.suffix(), "j_per_mol_k");
    /// ```
    #[must_use]
    pub fn suffix(&self) -> String {
        match self.text {
            "degC" => "c".to_owned(),
            "%" => "percent".to_owned(),
            "1/h" => "per_hour".to_owned(),
            "1/s" => "per_s".to_owned(),
            text => text.replace('/', "_per_").replace(['(', ')'], "").replace(' ', "_").to_lowercase(),
        }
    }

    /// From this unit to SI base units.
    #[inline(always)]
    pub fn to_si<S: Scalar>(&self, value: S) -> S {
        let shifted = if self.zero == 0.0 { value } else { value + self.zero };
        if self.si == 1.0 { shifted } else { shifted * self.si }
    }

    /// From SI base units to this unit.
    #[inline(always)]
    pub fn from_si<S: Scalar>(&self, value: S) -> S {
        let scaled = if self.si == 1.0 { value } else { value / self.si };
        if self.zero == 0.0 { scaled } else { scaled - self.zero }
    }
}

/// Square centimetre.
pub const SQUARE_CENTIMETRE: Unit = Unit::new("cm2", "cm²", r"\mathrm{cm^2}", 1e-4);
/// Centimetre per second.
pub const CENTIMETRE_PER_SECOND: Unit = Unit::new("cm/s", "cm/s", r"\mathrm{cm\,s^{-1}}", 1e-2);
/// Watt per kelvin.
pub const WATT_PER_KELVIN: Unit = Unit::new("W/K", "W/K", r"\mathrm{W\,K^{-1}}", 1.0);
/// Joule per kelvin.
pub const JOULE_PER_KELVIN: Unit = Unit::new("J/K", "J/K", r"\mathrm{J\,K^{-1}}", 1.0);
/// Joule per mole.
pub const JOULE_PER_MOLE: Unit = Unit::new("J/mol", "J/mol", r"\mathrm{J\,mol^{-1}}", 1.0);
/// Mole per cubic metre.
pub const MOLE_PER_CUBIC_METRE: Unit = Unit::new("mol/m3", "mol/m³", r"\mathrm{mol\,m^{-3}}", 1.0);
/// No unit: a plain number.
pub const ONE: Unit = Unit::new("", "", "", 1.0);
/// Kelvin.
pub const KELVIN: Unit = Unit::new("K", "K", r"\mathrm{K}", 1.0);
/// Degree Celsius.
pub const DEGREE_CELSIUS: Unit =
    Unit { text: "degC", pretty: "°C", latex: r"{}^\circ\mathrm{C}", si: 1.0, zero: 273.15 };
/// Pascal.
pub const PASCAL: Unit = Unit::new("Pa", "Pa", r"\mathrm{Pa}", 1.0);
/// Kilopascal.
pub const KILOPASCAL: Unit = Unit::new("kPa", "kPa", r"\mathrm{kPa}", 1_000.0);
/// Hectopascal, the same as the millibar.
pub const HECTOPASCAL: Unit = Unit::new("hPa", "hPa", r"\mathrm{hPa}", 100.0);
/// Conventional millimetre of mercury: 13595.1 kg/m3 x 9.80665 m/s2 x 1 mm.
pub const MILLIMETRE_OF_MERCURY: Unit = Unit::new("mmHg", "mmHg", r"\mathrm{mmHg}", 133.322_387_415);
/// Cubic centimetre.
pub const CUBIC_CENTIMETRE: Unit = Unit::new("cm3", "cm³", r"\mathrm{cm^3}", 1e-6);
/// Cubic decimetre.
pub const CUBIC_DECIMETRE: Unit = Unit::new("dm3", "dm³", r"\mathrm{dm^3}", 1e-3);
/// Cubic decimetre per mole.
pub const CUBIC_DECIMETRE_PER_MOLE: Unit = Unit::new("dm3/mol", "dm³/mol", r"\mathrm{dm^3\,mol^{-1}}", 1e-3);
/// Millimetre.
pub const MILLIMETRE: Unit = Unit::new("mm", "mm", r"\mathrm{mm}", 1e-3);
/// Centimetre.
pub const CENTIMETRE: Unit = Unit::new("cm", "cm", r"\mathrm{cm}", 1e-2);
/// Metre.
pub const METRE: Unit = Unit::new("m", "m", r"\mathrm{m}", 1.0);
/// Millimole.
pub const MILLIMOLE: Unit = Unit::new("mmol", "mmol", r"\mathrm{mmol}", 1e-3);
/// Mole.
pub const MOLE: Unit = Unit::new("mol", "mol", r"\mathrm{mol}", 1.0);
/// Mole per cubic decimetre.
pub const MOLE_PER_CUBIC_DECIMETRE: Unit = Unit::new("mol/dm3", "mol/dm³", r"\mathrm{mol\,dm^{-3}}", 1_000.0);
/// Gram.
pub const GRAM: Unit = Unit::new("g", "g", r"\mathrm{g}", 1e-3);
/// Gram per mole.
pub const GRAM_PER_MOLE: Unit = Unit::new("g/mol", "g/mol", r"\mathrm{g\,mol^{-1}}", 1e-3);
/// Gram per cubic centimetre.
pub const GRAM_PER_CUBIC_CENTIMETRE: Unit = Unit::new("g/cm3", "g/cm³", r"\mathrm{g\,cm^{-3}}", 1_000.0);
/// Kilogram per cubic metre.
pub const KILOGRAM_PER_CUBIC_METRE: Unit = Unit::new("kg/m3", "kg/m³", r"\mathrm{kg\,m^{-3}}", 1.0);
/// Volume strength of peroxide: volumes of oxygen from one volume of solution.
pub const VOLUMES: Unit = Unit::new("vol", "vol", r"\mathrm{vol}", 1.0);
/// Per cent.
pub const PERCENT: Unit = Unit::new("%", "%", r"\%", 0.01);
/// Joule per mole and kelvin.
pub const JOULE_PER_MOLE_KELVIN: Unit =
    Unit::new("J/(mol K)", "J/(mol K)", r"\mathrm{J\,mol^{-1}\,K^{-1}}", 1.0);
/// Joule per kilogram and kelvin.
pub const JOULE_PER_KILOGRAM_KELVIN: Unit =
    Unit::new("J/(kg K)", "J/(kg K)", r"\mathrm{J\,kg^{-1}\,K^{-1}}", 1.0);
/// Gram per metre.
pub const GRAM_PER_METRE: Unit = Unit::new("g/m", "g/m", r"\mathrm{g\,m^{-1}}", 1e-3);
/// Kilojoule.
pub const KILOJOULE: Unit = Unit::new("kJ", "kJ", r"\mathrm{kJ}", 1_000.0);
/// Kilojoule per mole.
pub const KILOJOULE_PER_MOLE: Unit = Unit::new("kJ/mol", "kJ/mol", r"\mathrm{kJ\,mol^{-1}}", 1_000.0);
/// Metre per second squared.
pub const METRE_PER_SECOND_SQUARED: Unit = Unit::new("m/s2", "m/s²", r"\mathrm{m\,s^{-2}}", 1.0);
/// Kelvin per metre.
pub const KELVIN_PER_METRE: Unit = Unit::new("K/m", "K/m", r"\mathrm{K\,m^{-1}}", 1.0);
/// Pascal second.
pub const PASCAL_SECOND: Unit = Unit::new("Pa s", "Pa s", r"\mathrm{Pa\,s}", 1.0);
/// Newton per metre.
pub const NEWTON_PER_METRE: Unit = Unit::new("N/m", "N/m", r"\mathrm{N\,m^{-1}}", 1.0);
/// Cubic centimetre per second.
pub const CUBIC_CENTIMETRE_PER_SECOND: Unit = Unit::new("cm3/s", "cm³/s", r"\mathrm{cm^3\,s^{-1}}", 1e-6);

/// Cubic metre.
pub const CUBIC_METRE: Unit = Unit::new("m3", "m³", r"\mathrm{m^3}", 1.0);
/// Second.
pub const SECOND: Unit = Unit::new("s", "s", r"\mathrm{s}", 1.0);
/// Once a second.
pub const PER_SECOND: Unit = Unit::new("1/s", "s⁻¹", r"\mathrm{s^{-1}}", 1.0);
/// Gram per cubic decimetre.
pub const GRAM_PER_CUBIC_DECIMETRE: Unit = Unit::new("g/dm3", "g/dm³", r"\mathrm{g\,dm^{-3}}", 1.0);
/// Minute.
pub const MINUTE: Unit = Unit::new("min", "min", r"\mathrm{min}", 60.0);
/// Parts in a million.
pub const PART_PER_MILLION: Unit = Unit::new("ppm", "ppm", r"\mathrm{ppm}", 1e-6);
/// Once an hour.
pub const PER_HOUR: Unit = Unit::new("1/h", "h⁻¹", r"\mathrm{h^{-1}}", 1.0 / 3600.0);

/// Torr: the standard atmosphere over 760. It is 1.4e-7 less than the conventional millimetre of mercury.
pub const TORR: Unit = Unit::new("torr", "Torr", r"\mathrm{Torr}", 101_325.0 / 760.0);
/// Conventional millimetre of water: 1000 kg/m3 x 9.80665 m/s2 x 1 mm.
pub const MILLIMETRE_OF_WATER: Unit = Unit::new("mmH2O", "mmH₂O", r"\mathrm{mmH_2O}", 9.806_65);
/// Degree of an angle.
pub const DEGREE: Unit = Unit::new("deg", "°", r"{}^\circ", std::f64::consts::PI / 180.0);
/// Once per kelvin.
pub const PER_KELVIN: Unit = Unit::new("1/K", "K⁻¹", r"\mathrm{K^{-1}}", 1.0);
/// Mole per kilogram of solvent.
pub const MOLE_PER_KILOGRAM: Unit = Unit::new("mol/kg", "mol/kg", r"\mathrm{mol\,kg^{-1}}", 1.0);

/// Cubic centimetre per mole.
pub const CUBIC_CENTIMETRE_PER_MOLE: Unit = Unit::new("cm3/mol", "cm³/mol", r"\mathrm{cm^3\,mol^{-1}}", 1e-6);
/// Milligram per cubic decimetre.
pub const MILLIGRAM_PER_CUBIC_DECIMETRE: Unit = Unit::new("mg/dm3", "mg/dm³", r"\mathrm{mg\,dm^{-3}}", 1e-3);
/// Mole per cubic metre and pascal, of a solubility.
pub const MOLE_PER_CUBIC_METRE_PASCAL: Unit =
    Unit::new("mol/(m3 Pa)", "mol/(m³ Pa)", r"\mathrm{mol\,m^{-3}\,Pa^{-1}}", 1.0);

/// Amount in a volume for each pascal of partial pressure (a Henry constant of solubility).
pub type Solubility<S = f64> = Quantity<S, SIUnit<2, -2, -1, 0, 0, 1, 0>>;

/// What the quantity types of this crate can do beside arithmetic.
pub trait Dimensioned<S: Scalar>: Sized {
    /// The number in SI base units.
    fn si(self) -> S;

    /// Names this intermediate result; see [`Scalar::checkpoint`].
    fn checkpoint(self, symbol: &'static Symbol) -> Self;

    /// The number in the school unit of `symbol`.
    #[inline(always)]
    fn leave(self, symbol: &'static Symbol) -> S {
        self.si().leave(symbol)
    }
}

impl<S: Scalar, U> Dimensioned<S> for Quantity<S, U> {
    #[inline(always)]
    fn si(self) -> S {
        self.convert_into(Quantity::<Unity, U>::new(Unity))
    }

    #[inline(always)]
    fn checkpoint(self, symbol: &'static Symbol) -> Self {
        Quantity::new(self.si().checkpoint(symbol))
    }
}

/// A number rounded once, in decimal, to `figures` significant figures; ties go to the even digit of the exact
/// decimal value, which for a binary number is almost never a tie.
///
/// Written out in full between 0.001 and 1,000,000, in powers of ten (`1.6e-5`) elsewhere. Zeros before the
/// decimal point that are not significant are kept as place holders.
///
/// ```
/// use overwater::units::significant;
/// assert_eq!(significant(101.325, 4), "101.3");
/// assert_eq!(significant(1354.6, 3), "1350");
/// assert_eq!(significant(0.05, 2), "0.050");
/// assert_eq!(significant(9.996, 3), "10.0");
/// assert_eq!(significant(0.0, 3), "0");
/// ```
#[must_use]
pub fn significant(value: f64, figures: usize) -> String {
    if value == 0.0 {
        return "0".to_owned();
    }
    if !value.is_finite() {
        return value.to_string();
    }
    let scientific = format!("{:.*e}", figures.clamp(1, 17) - 1, value);
    let Some((mantissa, exponent)) = scientific.split_once('e') else {
        return scientific;
    };
    let Ok(exponent) = exponent.parse::<i32>() else {
        return scientific;
    };
    if !(-3..6).contains(&exponent) {
        return scientific;
    }
    let (sign, mantissa) = match mantissa.strip_prefix('-') {
        Some(rest) => ("-", rest),
        None => ("", mantissa),
    };
    let digits: String = mantissa.chars().filter(|c| *c != '.').collect();
    let Ok(places) = usize::try_from(exponent) else {
        let zeros = "0".repeat(usize::try_from(-exponent - 1).unwrap_or(0));
        return format!("{sign}0.{zeros}{digits}");
    };
    let before = places + 1;
    if digits.len() <= before {
        format!("{sign}{digits}{}", "0".repeat(before - digits.len()))
    } else {
        let (whole, fraction) = digits.split_at(before);
        format!("{sign}{whole}.{fraction}")
    }
}

/// A number with a fixed number of decimal places; never `-0`.
///
/// ```
/// use overwater::units::decimals;
/// assert_eq!(decimals(20.0, 1), "20.0");
/// assert_eq!(decimals(-0.04, 1), "0.0");
/// ```
#[must_use]
pub fn decimals(value: f64, places: usize) -> String {
    let text = format!("{value:.places$}");
    match text.strip_prefix('-') {
        Some(rest) if rest.chars().all(|c| c == '0' || c == '.') => rest.to_owned(),
        _ => text,
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    #[test]
    fn figures_are_counted_from_the_first_that_is_not_zero() {
        for (value, figures, expected) in [
            (55.0123, 3, "55.0"),
            (0.864_29, 3, "0.864"),
            (0.000_999_6, 3, "0.00100"),
            (0.000_412, 2, "4.1e-4"),
            (999_999.0, 2, "1.0e6"),
            (123_456.0, 2, "120000"),
            (-2.345, 2, "-2.3"),
            (1.0, 1, "1"),
            (740.5, 3, "740"),
            (728.5, 3, "728"),
        ] {
            assert_eq!(significant(value, figures), expected, "{value} to {figures}");
        }
        assert_eq!(significant(f64::NAN, 3), "NaN");
    }

    proptest! {
        #[test]
        fn printing_is_within_half_a_unit_of_the_last_figure(value in -1e12..1e12_f64, figures in 1..9_usize) {
            let printed: f64 = significant(value, figures).parse().unwrap();
            let unit = 10_f64.powf(value.abs().log10().floor() - figures as f64 + 1.0);
            prop_assert!((printed - value).abs() <= 0.5 * unit * (1.0 + 1e-9));
        }

        #[test]
        fn units_convert_there_and_back(value in -1e3..1e3_f64) {
            for unit in [ONE, DEGREE_CELSIUS, KILOPASCAL, CUBIC_CENTIMETRE, MILLIMOLE, PERCENT] {
                let back = unit.from_si(unit.to_si(value));
                prop_assert!((back - value).abs() <= 1e-12 * (1.0 + value.abs() + unit.zero));
            }
        }
    }
}
