//! Pressure at a low place from a pressure reduced to sea level, and back, with the temperature and the vapour of the
//! air.
//!
//! WMO-No. 8, guide to instruments and methods of observation, part I, chapter 3, annex 3.A (from memory):
//!
//! ```text
//! log10(p0/p) = K h/(T + a h/2 + e C)      (h in m, T at the place in K, vapour pressure e in hPa)
//! ```
//!
//! Range of the source: stations below 750 m. Its K, 0.0148275 K/m, is 0.06 % below gravity over the gas constant of dry
//! air and ln 10: 2e-5 of the pressure at 300 m, 6e-5 at 750 m.

use crate::bounds::{self, Bound};
use crate::reference::atmosphere::LAPSE_RATE_1975;
use crate::reference::earth::{REDUCTION_WMO, VAPOUR_TERM_WMO};
use crate::scalar::{Formula, Scalar, Symbol};
use crate::symbols;
use crate::units::{Dimensioned, HECTOPASCAL, Length, Pressure, Temperature};

/// Pressure at a height from the pressure at sea level.
#[inline(always)]
pub fn station_pressure<S: Scalar>(
    sea_level: Pressure<S>,
    altitude: Length<S>,
    temperature: Temperature<S>,
    vapour: Pressure<S>,
) -> Pressure<S> {
    Pressure::new(sea_level.si() / ratio(altitude, temperature, vapour))
        .checkpoint(&symbols::STATION_PRESSURE_WMO)
}

/// Pressure at sea level from the pressure at a height.
#[inline(always)]
pub fn sea_level_pressure<S: Scalar>(
    station: Pressure<S>,
    altitude: Length<S>,
    temperature: Temperature<S>,
    vapour: Pressure<S>,
) -> Pressure<S> {
    Pressure::new(station.si() * ratio(altitude, temperature, vapour))
        .checkpoint(&symbols::SEA_LEVEL_PRESSURE_WMO)
}

/// The pressure at sea level over that at a height.
#[inline(always)]
fn ratio<S: Scalar>(altitude: Length<S>, temperature: Temperature<S>, vapour: Pressure<S>) -> S {
    let h = altitude.si();
    let warmer = S::constant(&LAPSE_RATE_1975) * h / 2.0;
    let moister = HECTOPASCAL.from_si(vapour.si()) * VAPOUR_TERM_WMO;
    let mean = (temperature.si() + warmer + moister).checkpoint(&symbols::MEAN_VIRTUAL_TEMPERATURE);
    (S::constant(&REDUCTION_WMO) * h / mean * std::f64::consts::LN_10).exp()
}

/// `low_level_station_pressure(sea_level_pressure_kpa, altitude_m, air_temperature_c, air_vapour_pressure_kpa)` in kPa,
/// up to 750 m.
///
/// ```
/// use overwater::gas::low_level::LowLevelStationPressure;
/// use overwater::scalar::Formula;
/// // By hand: 10^(-0.0148275 x 300/(288.15 + 0.975 + 10 x 0.12)) = 0.965 335 7.
/// let station = LowLevelStationPressure.number([100.0, 300.0, 15.0, 1.0])?;
/// assert!((station - 96.533_57).abs() < 5e-6);
/// # Ok::<(), overwater::Error>(())
/// ```
#[derive(Debug, Clone, Copy, Default)]
pub struct LowLevelStationPressure;

impl Formula<4> for LowLevelStationPressure {
    const NAME: &'static str = "low_level_station_pressure";

    fn inputs(&self) -> [&'static Bound; 4] {
        [
            &bounds::SEA_LEVEL_PRESSURE_KPA,
            &bounds::LOW_ALTITUDE_M,
            &bounds::AIR_TEMPERATURE_C,
            &bounds::AIR_VAPOUR_PRESSURE_KPA,
        ]
    }

    fn output(&self) -> &'static Symbol {
        &symbols::STATION_PRESSURE_WMO
    }

    #[inline(always)]
    fn evaluate<S: Scalar>(&self, [sea_level, altitude, temperature, vapour]: [S; 4]) -> S {
        let sea_level = Pressure::new(sea_level.enter(&symbols::SEA_LEVEL_PRESSURE));
        let altitude = Length::new(altitude.enter(&symbols::ALTITUDE));
        let temperature = Temperature::new(temperature.enter(&symbols::AIR_TEMPERATURE));
        let vapour = Pressure::new(vapour.enter(&symbols::AIR_VAPOUR_PRESSURE));
        station_pressure(sea_level, altitude, temperature, vapour).leave(&symbols::STATION_PRESSURE_WMO)
    }
}

/// `low_level_sea_level_pressure(pressure_kpa, altitude_m, air_temperature_c, air_vapour_pressure_kpa)` in kPa: the
/// inverse of [`LowLevelStationPressure`].
///
/// ```
/// use overwater::gas::low_level::LowLevelSeaLevelPressure;
/// use overwater::scalar::Formula;
/// let sea_level = LowLevelSeaLevelPressure.number([96.533_57, 300.0, 15.0, 1.0])?;
/// assert!((sea_level - 100.0).abs() < 1e-5);
/// # Ok::<(), overwater::Error>(())
/// ```
#[derive(Debug, Clone, Copy, Default)]
pub struct LowLevelSeaLevelPressure;

impl Formula<4> for LowLevelSeaLevelPressure {
    const NAME: &'static str = "low_level_sea_level_pressure";

    fn inputs(&self) -> [&'static Bound; 4] {
        [
            &bounds::PRESSURE_KPA,
            &bounds::LOW_ALTITUDE_M,
            &bounds::AIR_TEMPERATURE_C,
            &bounds::AIR_VAPOUR_PRESSURE_KPA,
        ]
    }

    fn output(&self) -> &'static Symbol {
        &symbols::SEA_LEVEL_PRESSURE_WMO
    }

    #[inline(always)]
    fn evaluate<S: Scalar>(&self, [station, altitude, temperature, vapour]: [S; 4]) -> S {
        let station = Pressure::new(station.enter(&symbols::STATION_PRESSURE));
        let altitude = Length::new(altitude.enter(&symbols::ALTITUDE));
        let temperature = Temperature::new(temperature.enter(&symbols::AIR_TEMPERATURE));
        let vapour = Pressure::new(vapour.enter(&symbols::AIR_VAPOUR_PRESSURE));
        sea_level_pressure(station, altitude, temperature, vapour).leave(&symbols::SEA_LEVEL_PRESSURE_WMO)
    }
}
