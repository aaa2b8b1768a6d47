//! Hydrogen peroxide and its solutions.

use super::constants::constant;
use super::sources;
use crate::scalar::Constant;
use crate::units::{GRAM_PER_MOLE, JOULE_PER_KILOGRAM_KELVIN, KILOJOULE_PER_MOLE};

/// Molar mass of hydrogen peroxide from the conventional atomic weights.
pub static MOLAR_MASS_2021: Constant = constant(
    "peroxide_molar_mass_2021",
    "M(H₂O₂)",
    r"M_\mathrm{H_2O_2}",
    "molar mass of hydrogen peroxide",
    &GRAM_PER_MOLE,
    34.014,
    &sources::CIAAW_2021,
);
/// Heat given out for each mole of dissolved peroxide that decomposes, H2O2(aq) = H2O(l) + 1/2 O2(g), at infinite
/// dilution and 25 degC: 285.830 - 191.17. The often quoted 98.2 (196.4 for two) belongs to the pure liquid.
pub static DECOMPOSITION_HEAT_1982: Constant = constant(
    "decomposition_heat_1982",
    "q",
    "q",
    "heat of decomposition of dissolved peroxide",
    &KILOJOULE_PER_MOLE,
    94.66,
    &sources::NBS_1982,
);
/// Specific heat of the liquid, taken as that of water.
pub static SPECIFIC_HEAT: Constant = constant(
    "liquid_specific_heat",
    "cₚ",
    "c_p",
    "specific heat of the liquid, as water",
    &JOULE_PER_KILOGRAM_KELVIN,
    4_180.0,
    &sources::HANDBOOK_MEMORY,
);
