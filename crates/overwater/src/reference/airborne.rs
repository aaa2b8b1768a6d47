//! Which products of a burn get into the air, and under which number their limits are listed.
//!
//! A smoke is counted whole, as if none of it settled: an upper bound. CAS registry numbers as in the table of limits.

/// A product in the air.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Airborne {
    /// The product's formula.
    pub product: &'static str,
    /// Its name, in words.
    pub name: &'static str,
    /// CAS registry number of what its limits are listed as.
    pub cas: &'static str,
    /// The formula that it is counted as, and how many of them one of the product makes.
    pub counted_as: (&'static str, f64),
    /// Whether it is a gas at room temperature; a smoke otherwise.
    pub is_gas: bool,
}

const fn gas(product: &'static str, name: &'static str, cas: &'static str) -> Airborne {
    Airborne { product, name, cas, counted_as: (product, 1.0), is_gas: true }
}

const fn smoke(
    product: &'static str,
    name: &'static str,
    cas: &'static str,
    counted_as: (&'static str, f64),
) -> Airborne {
    Airborne { product, name, cas, counted_as, is_gas: false }
}

/// The products that get into the air. The oxides of sodium are counted as the hydroxide that moist air makes of them.
pub static AIRBORNE: [Airborne; 9] = [
    gas("SO2", "sulfur dioxide", "7446-09-5"),
    gas("CO2", "carbon dioxide", "124-38-9"),
    gas("CO", "carbon monoxide", "630-08-0"),
    smoke("MgO", "magnesium oxide smoke", "1309-48-4", ("MgO", 1.0)),
    smoke("P4O10", "phosphorus oxide smoke", "1314-56-3", ("P4O10", 1.0)),
    smoke("CaO", "calcium oxide smoke", "1305-78-8", ("CaO", 1.0)),
    smoke("ZnO", "zinc oxide smoke", "1314-13-2", ("ZnO", 1.0)),
    smoke("Na2O2", "sodium oxide smoke, as the hydroxide", "1310-73-2", ("NaOH", 2.0)),
    smoke("Na2O", "sodium oxide smoke, as the hydroxide", "1310-73-2", ("NaOH", 2.0)),
];
