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

/// Heat given out for each mole of pure liquid peroxide that decomposes, H2O2(l) = H2O(l) + 1/2 O2(g), at 25 degC:
/// 285.830 - 187.78. It differs from [`DECOMPOSITION_HEAT_1982`] by the heat of dilution to infinite dilution,
/// 3.39 kJ/mol. How the heat goes from one to the other with concentration could not be sourced, so nothing is
/// interpolated here: every solution lies between the two, and the dilute one is what a school has.
pub static DECOMPOSITION_HEAT_LIQUID: Constant = constant(
    "decomposition_heat_liquid",
    "q(l)",
    r"q_\mathrm{l}",
    "heat of decomposition of pure liquid peroxide",
    &KILOJOULE_PER_MOLE,
    98.05,
    &sources::NASA_GLENN_2002,
);

/// Coefficients c0, c1 (kg/m3), c2, c3 (per degC) and c4 (degC) of the density of peroxide solutions: Laliberte, J. Chem.
/// Eng. Data 54 (2009) 1725, as carried by chemicals 1.5.2. Range of the source: 0 to 96 degC, mass fraction 0 to 0.996.
pub static DENSITY_2009: [f64; 5] = [
    1_245.678_584_625_09,
    1_565.312_936_877_29,
    0.986_168_814_056_093,
    0.002_714_352_110_059_42,
    200.774_931_560_52,
];
