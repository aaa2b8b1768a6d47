//! Coefficients of the equations for water.

use super::constants::constant;
use super::sources;
use crate::scalar::Constant;
use crate::units::{GRAM_PER_MOLE, KELVIN, KILOPASCAL, ONE};

const fn saturation(id: &'static str, text: &'static str, latex: &'static str, value: f64) -> Constant {
    constant(id, text, latex, "coefficient of the saturation equation", &ONE, value, &sources::IAPWS_SR1_86)
}

/// Critical temperature of water.
pub static CRITICAL_TEMPERATURE_1992: Constant = constant(
    "critical_temperature_1992",
    "T(crit)",
    r"T_\mathrm{c}",
    "critical temperature of water",
    &KELVIN,
    647.096,
    &sources::IAPWS_SR1_86,
);
/// Critical pressure of water.
pub static CRITICAL_PRESSURE_1992: Constant = constant(
    "critical_pressure_1992",
    "p(crit)",
    r"p_\mathrm{c}",
    "critical pressure of water",
    &KILOPASCAL,
    22_064.0,
    &sources::IAPWS_SR1_86,
);
/// Coefficients of the saturation equation, for the powers 1, 1.5, 3, 3.5, 4 and 7.5 of the distance from the
/// critical temperature. Range of the source: 273.16 K to 647.096 K.
pub static SATURATION_1992: [Constant; 6] = [
    saturation("saturation_1992_a1", "a₁", "a_1", -7.859_517_83),
    saturation("saturation_1992_a2", "a₂", "a_2", 1.844_082_59),
    saturation("saturation_1992_a3", "a₃", "a_3", -11.786_649_7),
    saturation("saturation_1992_a4", "a₄", "a_4", 22.680_741_1),
    saturation("saturation_1992_a5", "a₅", "a_5", -15.961_871_9),
    saturation("saturation_1992_a6", "a₆", "a_6", 1.801_225_02),
];

/// Coefficients n1 to n10 of the industrial formulation's saturation line; they serve here only as the start of
/// the inverse of the saturation equation.
pub static BACKWARD_SATURATION_1997: [f64; 10] = [
    0.116_705_214_527_67e4,
    -0.724_213_167_032_06e6,
    -0.170_738_469_400_92e2,
    0.120_208_247_024_70e5,
    -0.323_255_503_223_33e7,
    0.149_151_086_135_30e2,
    -0.482_326_573_615_91e4,
    0.405_113_405_420_57e6,
    -0.238_555_575_678_49,
    0.650_175_348_447_98e3,
];

/// Coefficients a0 to a5 (in kg/m3 and powers of degC) of Kell's equation for the density at 101.325 kPa.
/// Several public copies carry the digits of `b` transposed (16.897850e-3), which is wrong by up to 0.63 kg/m3.
/// Range of the source: 0 to 150 degC, on the temperature scale of 1968.
pub static DENSITY_1975: [f64; 6] =
    [999.839_52, 16.945_176, -7.987_040_1e-3, -46.170_461e-6, 105.563_02e-9, -280.542_53e-12];
/// Coefficient b of Kell's equation, per degC.
pub static DENSITY_1975_B: f64 = 16.879_850e-3;

/// Critical density of water, in kg/m3: IAPWS SR1-86(1992).
pub static CRITICAL_DENSITY_1992: f64 = 322.0;
/// Coefficients b1 to b6 of the density of the saturated liquid, for the powers 1, 2, 5, 16, 43 and 110 of the cube
/// root of the distance from the critical temperature: IAPWS SR1-86(1992), equation 2.
pub static SATURATED_LIQUID_1992: [f64; 6] =
    [1.992_740_64, 1.099_653_42, -0.510_839_303, -1.754_934_79, -45.517_035_2, -6.746_944_50e5];
/// Coefficients c1 to c6 of the logarithm of the density of the saturated vapour, for the powers 2, 4, 8, 18, 37 and
/// 71 of the sixth root of the distance from the critical temperature: IAPWS SR1-86(1992), equation 3.
pub static SATURATED_VAPOUR_1992: [f64; 6] =
    [-2.031_502_40, -2.683_029_40, -5.386_264_92, -17.299_160_5, -44.758_658_1, -63.920_106_3];

/// Specific gas constant of water in J/(kg K), reducing temperature in K and pressure in Pa of the volume at 0.1 MPa:
/// IAPWS SR6-08(2011), Table 1.
pub static VOLUME_2008_REDUCING: [f64; 3] = [461.518_05, 10.0, 0.1e6];
/// The temperatures Ta and Tb in K of the volume at 0.1 MPa: IAPWS SR6-08(2011), Table 2.
pub static VOLUME_2008_POLES: [f64; 2] = [593.0, 232.0];
/// Coefficients a5 to a10 of the volume at 0.1 MPa, for the powers 0, 4, 5, 7, 8 and 9 of α: IAPWS SR6-08(2011),
/// Table 2, equation 4.
pub static VOLUME_2008_A: [f64; 6] =
    [1.937_631_57e-2, 6.744_584_46e3, -2.225_216_04e5, 1.002_312_47e8, -1.635_521_18e9, 8.322_996_58e9];
/// Coefficients b5 to b10 of the volume at 0.1 MPa, for the powers 1 to 6 of β: IAPWS SR6-08(2011), Table 2,
/// equation 4.
pub static VOLUME_2008_B: [f64; 6] =
    [5.785_452_92e-3, -1.531_956_65e-2, 3.113_378_59e-2, -4.235_462_41e-2, 3.387_135_07e-2, -1.199_467_61e-2];

/// Coefficients a1 to a5 (degC, degC, degC2, degC, kg/m3) of the density of air-free water at 101.325 kPa: Tanaka et
/// al., Metrologia 38 (2001) 301, equation 1. Range of the source: 0 to 40 degC.
pub static DENSITY_2001: [f64; 5] = [-3.983_035, 301.797, 522_528.9, 69.348_81, 999.974_950];
/// What dissolved air adds, s0 + s1 t in kg/m3: Tanaka et al. 2001, equation 2, 0 to 25 degC (from memory).
pub static DISSOLVED_AIR_2001: [f64; 2] = [-4.612e-3, 0.106e-3];
/// Compressibility k0 + k1 t + k2 t² in 1/Pa: Tanaka et al. 2001, equations 3 and 4 (from memory; within 0.3 % of
/// IAPWS-95).
pub static COMPRESSIBILITY_2001: [f64; 3] = [50.74e-11, -0.326e-11, 0.004_16e-11];

/// Molar mass of water: 2 x 1.0080 + 15.999.
pub static WATER_MOLAR_MASS_2021: Constant = constant(
    "water_molar_mass_2021",
    "M(H₂O)",
    r"M_\mathrm{H_2O}",
    "molar mass of water",
    &GRAM_PER_MOLE,
    18.015,
    &sources::CIAAW_2021,
);
