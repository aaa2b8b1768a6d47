//! Pressure at the place from a pressure reduced to sea level, and back.
//!
//! ISO 2533:1975 standard atmosphere, troposphere:
//!
//! ```text
//! p = p0 (1 - L h/T(sea))^k,   h = r z/(r + z),   k = g/(R(air) L)
//! ```
//!
//! Range of the source: -2 to 11 km. The air is taken as standard: on a day 15 K warmer than the standard the
//! pressure 200 m up is 0.12 % higher than this gives. Where the temperature of the air is known and the place is low,
//! [`low_level`](super::low_level) allows for it.

use crate::bounds::{self, Bound};
use crate::reference::atmosphere::{
    EARTH_RADIUS_1975, LAPSE_RATE_1975, PRESSURE_EXPONENT_1975, SEA_LEVEL_TEMPERATURE_1975,
};
use crate::scalar::{Formula, Scalar, Symbol};
use crate::symbols;
use crate::units::{Dimensioned, Length, Pressure};

/// Pressure at a height from the pressure at sea level.
#[inline(always)]
pub fn station_pressure<S: Scalar>(sea_level: Pressure<S>, altitude: Length<S>) -> Pressure<S> {
    Pressure::new(sea_level.si() * ratio(altitude)).checkpoint(&symbols::STATION_PRESSURE)
}

/// Pressure at sea level from the pressure at a height.
#[inline(always)]
pub fn sea_level_pressure<S: Scalar>(station: Pressure<S>, altitude: Length<S>) -> Pressure<S> {
    Pressure::new(station.si() / ratio(altitude)).checkpoint(&symbols::SEA_LEVEL_PRESSURE)
}

/// The pressure at a height over that at sea level.
#[inline(always)]
fn ratio<S: Scalar>(altitude: Length<S>) -> S {
    let z = altitude.si();
    let r = S::constant(&EARTH_RADIUS_1975);
    let height = (r * z / (r + z)).checkpoint(&symbols::GEOPOTENTIAL_HEIGHT);
    let cooler =
        S::number(1.0) - S::constant(&LAPSE_RATE_1975) * height / S::constant(&SEA_LEVEL_TEMPERATURE_1975);
    (S::constant(&PRESSURE_EXPONENT_1975) * cooler.ln()).exp()
}

/// `station_pressure(sea_level_pressure_kpa, altitude_m)` in kPa.
///
/// ```
/// use overwater::gas::barometer::StationPressure;
/// use overwater::scalar::Formula;
/// // ISO 2533:1975, table: 95.4608 kPa at a geopotential height of 500 m, 89.8746 kPa at 1000 m, which are
/// // 500.0393 m and 1000.1573 m above sea level.
/// assert!((StationPressure.number([101.325, 500.0393])? - 95.460_8).abs() < 5e-5);
/// assert!((StationPressure.number([101.325, 1000.1573])? - 89.874_6).abs() < 5e-5);
/// # Ok::<(), overwater::Error>(())
/// ```
#[derive(Debug, Clone, Copy, Default)]
pub struct StationPressure;

impl Formula<2> for StationPressure {
    const NAME: &'static str = "station_pressure";

    fn inputs(&self) -> [&'static Bound; 2] {
        [&bounds::SEA_LEVEL_PRESSURE_KPA, &bounds::ALTITUDE_M]
    }

    fn output(&self) -> &'static Symbol {
        &symbols::STATION_PRESSURE
    }

    #[inline(always)]
    fn evaluate<S: Scalar>(&self, [sea_level, altitude]: [S; 2]) -> S {
        let sea_level = Pressure::new(sea_level.enter(&symbols::SEA_LEVEL_PRESSURE));
        let altitude = Length::new(altitude.enter(&symbols::ALTITUDE));
        station_pressure(sea_level, altitude).leave(&symbols::STATION_PRESSURE)
    }
}

/// `sea_level_pressure(pressure_kpa, altitude_m)` in kPa: the inverse of [`StationPressure`].
///
/// ```
/// use overwater::gas::barometer::SeaLevelPressure;
/// use overwater::scalar::Formula;
/// // ISO 2533:1975, table: 79.4952 kPa at a geopotential height of 2000 m, 2000.6294 m above sea level.
/// assert!((SeaLevelPressure.number([79.4952, 2000.6294])? - 101.325).abs() < 1e-4);
/// # Ok::<(), overwater::Error>(())
/// ```
#[derive(Debug, Clone, Copy, Default)]
pub struct SeaLevelPressure;

impl Formula<2> for SeaLevelPressure {
    const NAME: &'static str = "sea_level_pressure";

    fn inputs(&self) -> [&'static Bound; 2] {
        [&bounds::PRESSURE_KPA, &bounds::ALTITUDE_M]
    }

    fn output(&self) -> &'static Symbol {
        &symbols::SEA_LEVEL_PRESSURE
    }

    #[inline(always)]
    fn evaluate<S: Scalar>(&self, [station, altitude]: [S; 2]) -> S {
        let station = Pressure::new(station.enter(&symbols::STATION_PRESSURE));
        let altitude = Length::new(altitude.enter(&symbols::ALTITUDE));
        sea_level_pressure(station, altitude).leave(&symbols::SEA_LEVEL_PRESSURE)
    }
}
