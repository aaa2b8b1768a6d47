//! Coefficients of the equations for water.

use super::constants::constant;
use super::sources;
use crate::scalar::Constant;
use crate::units::{KELVIN, KILOPASCAL, ONE};

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
