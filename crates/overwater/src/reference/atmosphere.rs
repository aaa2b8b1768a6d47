//! The standard atmosphere.

use super::constants::constant;
use super::sources;
use crate::scalar::Constant;
use crate::units::{KELVIN, KELVIN_PER_METRE, METRE, ONE};

/// Temperature at sea level.
pub static SEA_LEVEL_TEMPERATURE_1975: Constant = constant(
    "sea_level_temperature_1975",
    "T(sea)",
    r"T_\mathrm{sea}",
    "temperature of the standard atmosphere at sea level",
    &KELVIN,
    288.15,
    &sources::ISO_2533,
);
/// Fall of temperature with height.
pub static LAPSE_RATE_1975: Constant = constant(
    "lapse_rate_1975",
    "L",
    "L",
    "fall of temperature with height",
    &KELVIN_PER_METRE,
    0.006_5,
    &sources::ISO_2533,
);
/// Gravity over the gas constant of air and the lapse rate: 9.80665 / (287.05287 x 0.0065).
pub static PRESSURE_EXPONENT_1975: Constant = constant(
    "pressure_exponent_1975",
    "k",
    "k",
    "exponent g/(R(air) L) of the standard atmosphere",
    &ONE,
    9.806_65 / (287.052_87 * 0.006_5),
    &sources::ISO_2533,
);
/// Nominal radius of the Earth.
pub static EARTH_RADIUS_1975: Constant = constant(
    "earth_radius_1975",
    "r",
    "r",
    "nominal radius of the Earth",
    &METRE,
    6_356_766.0,
    &sources::ISO_2533,
);
