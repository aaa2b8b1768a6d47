//! Gravity, mercury, and the reduction of air pressure to sea level.

use super::constants::constant;
use super::sources;
use crate::scalar::Constant;
use crate::units::{KELVIN_PER_METRE, PER_KELVIN};

/// Gravity at the equator of the World Geodetic System 1984, m/s2: NIMA TR8350.2 (2000), from memory; its published
/// values at equator and pole are reproduced.
pub static EQUATORIAL_GRAVITY_1984: f64 = 9.780_325_335_9;
/// The constant k of the closed formula for gravity: NIMA TR8350.2 (2000), equation 4-1.
pub static GRAVITY_1984_K: f64 = 0.001_931_852_652_41;
/// Square of the first eccentricity: World Geodetic System 1984.
pub static ECCENTRICITY_SQUARED_1984: f64 = 0.006_694_379_990_13;
/// Semi-major axis, m: World Geodetic System 1984.
pub static SEMI_MAJOR_AXIS_1984: f64 = 6_378_137.0;
/// Flattening: World Geodetic System 1984.
pub static FLATTENING_1984: f64 = 0.003_352_810_664_747_48;
/// ω² a² b/(G M): World Geodetic System 1984.
pub static GRAVITY_1984_M: f64 = 0.003_449_786_506_84;
/// Gravity at the equator (m/s2) and the two coefficients of the International Gravity Formula of 1980: Moritz, Bull.
/// Geod. 54 (1980) 395, from memory.
pub static GRAVITY_1980: [f64; 3] = [9.780_327, 0.005_302_4, 0.000_005_8];

/// Density of mercury at 20 degC (kg/m3, Cook, NPL 1961) and the coefficients A (1/degC) and B (1/degC2) of its
/// expansion: Sommer and Poziemski, Metrologia 30 (1994) 665, from memory; within 0.016 kg/m3 of handbook values at 0,
/// 20 and 25 degC. Range of the source: 0 to 100 degC.
pub static MERCURY_1994: [f64; 3] = [13_545.854, 18_115.0e-8, 0.8e-8];
/// Density of the conventional mercury, kg/m3: ISO 80000-4.
pub static CONVENTIONAL_MERCURY: f64 = 13_595.1;

/// Expansion of brass.
pub static BRASS_EXPANSION: Constant = constant(
    "brass_expansion",
    "α(brass)",
    r"\alpha_\mathrm{brass}",
    "linear expansion of brass",
    &PER_KELVIN,
    18.4e-6,
    &sources::HANDBOOK_MEMORY,
);

/// The constant of the reduction to sea level: WMO-No. 8, part I, chapter 3, annex 3.A, from memory; two public code
/// bases that name the guide carry the same. Gravity over the gas constant of dry air and ln 10 is 0.06 % larger.
pub static REDUCTION_WMO: Constant = constant(
    "reduction_wmo",
    "K(p)",
    r"K_p",
    "constant of the reduction to sea level",
    &KELVIN_PER_METRE,
    0.014_827_5,
    &sources::WMO_8,
);
/// What each hectopascal of vapour adds to the temperature of the column, K/hPa: WMO-No. 8, from memory.
pub static VAPOUR_TERM_WMO: f64 = 0.12;
