//! Which gases may be collected over water.
//!
//! The solubilities are those of [`crate::reference::henry`] at 20 degC, one volume of water under the pure gas; the
//! reactions are those of Sander's compilation; what follows from them for a school is common practice, no source.

use super::gases::Gas;

/// Whether a gas is collected over water.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum OverWater {
    /// Little dissolves and nothing reacts.
    Suitable,
    /// A good part dissolves: only quickly, into little water, or over warm water or brine.
    Loses,
    /// Not over water.
    Never,
}

/// The verdict on one gas.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct OverWaterRow {
    /// The gas.
    pub gas: Gas,
    /// The verdict.
    pub verdict: OverWater,
    /// Why, and what is done instead.
    pub why: &'static str,
}

const fn row(gas: Gas, verdict: OverWater, why: &'static str) -> OverWaterRow {
    OverWaterRow { gas, verdict, why }
}

/// Every gas of [`crate::reference::gases`].
pub static OVER_WATER: [OverWaterRow; 27] = [
    row(Gas::Oxygen, OverWater::Suitable, "3 % of its volume of water"),
    row(Gas::Nitrogen, OverWater::Suitable, "under 2 % of its volume of water"),
    row(Gas::Air, OverWater::Suitable, "under 3 % of its volume of water"),
    row(Gas::Hydrogen, OverWater::Suitable, "2 % of its volume of water"),
    row(
        Gas::CarbonDioxide,
        OverWater::Loses,
        "nearly its own volume dissolves in water, and alkali takes all of it: collect quickly, or downward in air",
    ),
    row(Gas::CarbonMonoxide, OverWater::Suitable, "over 2 % of its volume of water; poisonous"),
    row(Gas::Methane, OverWater::Suitable, "4 % of its volume of water"),
    row(Gas::Ethane, OverWater::Suitable, "5 % of its volume of water"),
    row(Gas::Ethene, OverWater::Suitable, "a seventh of its volume of water"),
    row(
        Gas::Ethyne,
        OverWater::Loses,
        "about its own volume dissolves in water: collect over brine, or reject the first water",
    ),
    row(Gas::Propane, OverWater::Suitable, "4 % of its volume of water"),
    row(Gas::Butane, OverWater::Suitable, "4 % of its volume of water"),
    row(
        Gas::DinitrogenOxide,
        OverWater::Loses,
        "two thirds of its volume dissolve in cold water: collect over warm water",
    ),
    row(
        Gas::NitrogenMonoxide,
        OverWater::Suitable,
        "5 % of its volume of water; must not meet air, which turns it into nitrogen dioxide",
    ),
    row(
        Gas::NitrogenDioxide,
        OverWater::Never,
        "reacts, 2 NO2 + H2O = HNO2 + HNO3: collect downward in air, in a fume cupboard",
    ),
    row(
        Gas::SulfurDioxide,
        OverWater::Never,
        "some 35 volumes and more dissolve, SO2 + H2O = H+ + HSO3-: collect downward in air, in a fume cupboard",
    ),
    row(
        Gas::HydrogenSulfide,
        OverWater::Loses,
        "nearly 3 volumes dissolve: collect over warm water, in a fume cupboard",
    ),
    row(
        Gas::HydrogenChloride,
        OverWater::Never,
        "ionises completely and sucks the water back: collect downward in air, absorb with an inverted funnel",
    ),
    row(
        Gas::Ammonia,
        OverWater::Never,
        "well over 1000 volumes dissolve and suck the water back: collect upward in air",
    ),
    row(
        Gas::Chlorine,
        OverWater::Loses,
        "over 2 volumes dissolve, more by Cl2 + H2O = HOCl + H+ + Cl-: collect over brine, or downward in air",
    ),
    row(Gas::Ozone, OverWater::Loses, "a quarter of its volume of water, and it decomposes there"),
    row(Gas::Helium, OverWater::Suitable, "1 % of its volume of water"),
    row(Gas::Neon, OverWater::Suitable, "1 % of its volume of water"),
    row(Gas::Argon, OverWater::Suitable, "under 4 % of its volume of water"),
    row(Gas::Krypton, OverWater::Suitable, "under 7 % of its volume of water"),
    row(Gas::Xenon, OverWater::Suitable, "an eighth of its volume of water"),
    row(Gas::SulfurHexafluoride, OverWater::Suitable, "under 1 % of its volume of water"),
];
