//! Barometers, altitude, gravity.
//! Written by `cargo run -p overwater-c --example generate` from the catalogue of the core.

#![allow(clippy::too_many_arguments)] // Each column has its stride.

use overwater::gas;

use crate::array::array;
use crate::error::ow_error;
use crate::scalar::scalar;

/// Pressure at the place in kPa.
///
/// sea_level_pressure_kpa: pressure reduced to sea level, 85 to 110 kPa (the lowest and highest ever
///   reported, rounded outwards).
/// altitude_m: height above sea level, -450 to 5500 m (the lowest and the highest places where people live).
/// Source: ISO 2533:1975 standard atmosphere, troposphere (also ICAO Doc 7488/3).
/// Since 0.1.0.
///
/// # Safety
/// The rules for pointers at the top of the header.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ow_station_pressure(
    sea_level_pressure_kpa: f64,
    altitude_m: f64,
    station_pressure_kpa: *mut f64,
    error: *mut ow_error,
) -> i32 {
    // SAFETY: passed on.
    unsafe {
        scalar(
            &gas::barometer::StationPressure,
            [sea_level_pressure_kpa, altitude_m],
            station_pressure_kpa,
            error,
        )
    }
}

/// `ow_station_pressure` over `count` rows; a row out of range gives NaN. Strides are in bytes. Since 0.1.0.
///
/// # Safety
/// The rules for pointers at the top of the header.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ow_station_pressure_array(
    count: usize,
    sea_level_pressure_kpa: *const f64,
    sea_level_pressure_kpa_stride: isize,
    altitude_m: *const f64,
    altitude_m_stride: isize,
    station_pressure_kpa: *mut f64,
    station_pressure_kpa_stride: isize,
    error: *mut ow_error,
) -> i32 {
    // SAFETY: passed on.
    unsafe {
        array(
            "station_pressure",
            count,
            [(sea_level_pressure_kpa, sea_level_pressure_kpa_stride), (altitude_m, altitude_m_stride)],
            (station_pressure_kpa, station_pressure_kpa_stride),
            error,
        )
    }
}

/// Pressure reduced to sea level in kPa.
///
/// pressure_kpa: pressure at the place, 40 to 120 kPa (pressures from sea level to the highest schools).
/// altitude_m: height above sea level, -450 to 5500 m (the lowest and the highest places where people live).
/// Source: ISO 2533:1975 standard atmosphere, troposphere (also ICAO Doc 7488/3).
/// Since 0.1.0.
///
/// # Safety
/// The rules for pointers at the top of the header.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ow_sea_level_pressure(
    pressure_kpa: f64,
    altitude_m: f64,
    sea_level_pressure_kpa: *mut f64,
    error: *mut ow_error,
) -> i32 {
    // SAFETY: passed on.
    unsafe {
        scalar(&gas::barometer::SeaLevelPressure, [pressure_kpa, altitude_m], sea_level_pressure_kpa, error)
    }
}

/// `ow_sea_level_pressure` over `count` rows; a row out of range gives NaN. Strides are in bytes. Since 0.1.0.
///
/// # Safety
/// The rules for pointers at the top of the header.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ow_sea_level_pressure_array(
    count: usize,
    pressure_kpa: *const f64,
    pressure_kpa_stride: isize,
    altitude_m: *const f64,
    altitude_m_stride: isize,
    sea_level_pressure_kpa: *mut f64,
    sea_level_pressure_kpa_stride: isize,
    error: *mut ow_error,
) -> i32 {
    // SAFETY: passed on.
    unsafe {
        array(
            "sea_level_pressure",
            count,
            [(pressure_kpa, pressure_kpa_stride), (altitude_m, altitude_m_stride)],
            (sea_level_pressure_kpa, sea_level_pressure_kpa_stride),
            error,
        )
    }
}

/// Pressure at a low place in kPa.
///
/// sea_level_pressure_kpa: pressure reduced to sea level, 85 to 110 kPa (the lowest and highest ever
///   reported, rounded outwards).
/// altitude_m: height above sea level, -450 to 750 m (the reduction for low stations holds below 750 m).
/// air_temperature_c: temperature of the outside air, -50 to 50 degC (weather where people live).
/// air_vapour_pressure_kpa: pressure of the vapour in the outside air, 0 to 6 kPa (from dry air to a dew
///   point of 36 degC).
/// Source: WMO-No. 8, guide to instruments and methods of observation, part I, chapter 3, annex 3.A, from
///   memory.
/// Since 0.1.0.
///
/// # Safety
/// The rules for pointers at the top of the header.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ow_low_level_station_pressure(
    sea_level_pressure_kpa: f64,
    altitude_m: f64,
    air_temperature_c: f64,
    air_vapour_pressure_kpa: f64,
    station_pressure_wmo_kpa: *mut f64,
    error: *mut ow_error,
) -> i32 {
    // SAFETY: passed on.
    unsafe {
        scalar(
            &gas::low_level::LowLevelStationPressure,
            [sea_level_pressure_kpa, altitude_m, air_temperature_c, air_vapour_pressure_kpa],
            station_pressure_wmo_kpa,
            error,
        )
    }
}

/// `ow_low_level_station_pressure` over `count` rows; a row out of range gives NaN. Strides are in bytes. Since 0.1.0.
///
/// # Safety
/// The rules for pointers at the top of the header.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ow_low_level_station_pressure_array(
    count: usize,
    sea_level_pressure_kpa: *const f64,
    sea_level_pressure_kpa_stride: isize,
    altitude_m: *const f64,
    altitude_m_stride: isize,
    air_temperature_c: *const f64,
    air_temperature_c_stride: isize,
    air_vapour_pressure_kpa: *const f64,
    air_vapour_pressure_kpa_stride: isize,
    station_pressure_wmo_kpa: *mut f64,
    station_pressure_wmo_kpa_stride: isize,
    error: *mut ow_error,
) -> i32 {
    // SAFETY: passed on.
    unsafe {
        array(
            "low_level_station_pressure",
            count,
            [
                (sea_level_pressure_kpa, sea_level_pressure_kpa_stride),
                (altitude_m, altitude_m_stride),
                (air_temperature_c, air_temperature_c_stride),
                (air_vapour_pressure_kpa, air_vapour_pressure_kpa_stride),
            ],
            (station_pressure_wmo_kpa, station_pressure_wmo_kpa_stride),
            error,
        )
    }
}

/// Pressure reduced to sea level from a low place in kPa.
///
/// pressure_kpa: pressure at the place, 40 to 120 kPa (pressures from sea level to the highest schools).
/// altitude_m: height above sea level, -450 to 750 m (the reduction for low stations holds below 750 m).
/// air_temperature_c: temperature of the outside air, -50 to 50 degC (weather where people live).
/// air_vapour_pressure_kpa: pressure of the vapour in the outside air, 0 to 6 kPa (from dry air to a dew
///   point of 36 degC).
/// Source: WMO-No. 8, guide to instruments and methods of observation, part I, chapter 3, annex 3.A, from
///   memory.
/// Since 0.1.0.
///
/// # Safety
/// The rules for pointers at the top of the header.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ow_low_level_sea_level_pressure(
    pressure_kpa: f64,
    altitude_m: f64,
    air_temperature_c: f64,
    air_vapour_pressure_kpa: f64,
    sea_level_pressure_wmo_kpa: *mut f64,
    error: *mut ow_error,
) -> i32 {
    // SAFETY: passed on.
    unsafe {
        scalar(
            &gas::low_level::LowLevelSeaLevelPressure,
            [pressure_kpa, altitude_m, air_temperature_c, air_vapour_pressure_kpa],
            sea_level_pressure_wmo_kpa,
            error,
        )
    }
}

/// `ow_low_level_sea_level_pressure` over `count` rows; a row out of range gives NaN. Strides are in bytes. Since 0.1.0.
///
/// # Safety
/// The rules for pointers at the top of the header.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ow_low_level_sea_level_pressure_array(
    count: usize,
    pressure_kpa: *const f64,
    pressure_kpa_stride: isize,
    altitude_m: *const f64,
    altitude_m_stride: isize,
    air_temperature_c: *const f64,
    air_temperature_c_stride: isize,
    air_vapour_pressure_kpa: *const f64,
    air_vapour_pressure_kpa_stride: isize,
    sea_level_pressure_wmo_kpa: *mut f64,
    sea_level_pressure_wmo_kpa_stride: isize,
    error: *mut ow_error,
) -> i32 {
    // SAFETY: passed on.
    unsafe {
        array(
            "low_level_sea_level_pressure",
            count,
            [
                (pressure_kpa, pressure_kpa_stride),
                (altitude_m, altitude_m_stride),
                (air_temperature_c, air_temperature_c_stride),
                (air_vapour_pressure_kpa, air_vapour_pressure_kpa_stride),
            ],
            (sea_level_pressure_wmo_kpa, sea_level_pressure_wmo_kpa_stride),
            error,
        )
    }
}

/// Gravity at the place in m/s2.
///
/// latitude_deg: latitude, -90 to 90 deg (from pole to pole).
/// altitude_m: height above sea level, -450 to 5500 m (the lowest and the highest places where people live).
/// Source: NIMA TR8350.2, World Geodetic System 1984, equations 4-1 and 4-3, from memory.
/// Since 0.1.0.
///
/// # Safety
/// The rules for pointers at the top of the header.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ow_gravity(
    latitude_deg: f64,
    altitude_m: f64,
    gravity_m_per_s2: *mut f64,
    error: *mut ow_error,
) -> i32 {
    // SAFETY: passed on.
    unsafe { scalar(&gas::gravity::Gravity, [latitude_deg, altitude_m], gravity_m_per_s2, error) }
}

/// `ow_gravity` over `count` rows; a row out of range gives NaN. Strides are in bytes. Since 0.1.0.
///
/// # Safety
/// The rules for pointers at the top of the header.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ow_gravity_array(
    count: usize,
    latitude_deg: *const f64,
    latitude_deg_stride: isize,
    altitude_m: *const f64,
    altitude_m_stride: isize,
    gravity_m_per_s2: *mut f64,
    gravity_m_per_s2_stride: isize,
    error: *mut ow_error,
) -> i32 {
    // SAFETY: passed on.
    unsafe {
        array(
            "gravity",
            count,
            [(latitude_deg, latitude_deg_stride), (altitude_m, altitude_m_stride)],
            (gravity_m_per_s2, gravity_m_per_s2_stride),
            error,
        )
    }
}

/// Gravity at sea level, series of 1980 in m/s2.
///
/// latitude_deg: latitude, -90 to 90 deg (from pole to pole).
/// Source: Moritz, Geodetic Reference System 1980, Bull. Geod. 54 (1980) 395, from memory.
/// Since 0.1.0.
///
/// # Safety
/// The rules for pointers at the top of the header.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ow_gravity_1980(
    latitude_deg: f64,
    gravity_1980_m_per_s2: *mut f64,
    error: *mut ow_error,
) -> i32 {
    // SAFETY: passed on.
    unsafe { scalar(&gas::gravity::Gravity1980, [latitude_deg], gravity_1980_m_per_s2, error) }
}

/// `ow_gravity_1980` over `count` rows; a row out of range gives NaN. Strides are in bytes. Since 0.1.0.
///
/// # Safety
/// The rules for pointers at the top of the header.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ow_gravity_1980_array(
    count: usize,
    latitude_deg: *const f64,
    latitude_deg_stride: isize,
    gravity_1980_m_per_s2: *mut f64,
    gravity_1980_m_per_s2_stride: isize,
    error: *mut ow_error,
) -> i32 {
    // SAFETY: passed on.
    unsafe {
        array(
            "gravity_1980",
            count,
            [(latitude_deg, latitude_deg_stride)],
            (gravity_1980_m_per_s2, gravity_1980_m_per_s2_stride),
            error,
        )
    }
}

/// Pressure from the mercury barometer in kPa.
///
/// barometer_mm: reading of the mercury barometer, 300 to 850 mm (pressures from sea level to the highest
///   schools).
/// temperature_c: temperature, 0 to 45 degC (a room that people can work in).
/// gravity_m_per_s2: gravity at the place, 9.76 to 9.84 m/s2 (from high mountains at the equator to the
///   poles).
/// Source: hydrostatics: pressure of a liquid column is density x gravity x height.
/// Since 0.1.0.
///
/// # Safety
/// The rules for pointers at the top of the header.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ow_mercury_barometer_brass_scale(
    barometer_mm: f64,
    temperature_c: f64,
    gravity_m_per_s2: f64,
    barometer_pressure_kpa: *mut f64,
    error: *mut ow_error,
) -> i32 {
    // SAFETY: passed on.
    unsafe {
        scalar(
            &gas::mercury_barometer::MercuryBarometer { scale: gas::mercury_barometer::Scale::Brass },
            [barometer_mm, temperature_c, gravity_m_per_s2],
            barometer_pressure_kpa,
            error,
        )
    }
}

/// `ow_mercury_barometer_brass_scale` over `count` rows; a row out of range gives NaN. Strides are in bytes. Since 0.1.0.
///
/// # Safety
/// The rules for pointers at the top of the header.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ow_mercury_barometer_brass_scale_array(
    count: usize,
    barometer_mm: *const f64,
    barometer_mm_stride: isize,
    temperature_c: *const f64,
    temperature_c_stride: isize,
    gravity_m_per_s2: *const f64,
    gravity_m_per_s2_stride: isize,
    barometer_pressure_kpa: *mut f64,
    barometer_pressure_kpa_stride: isize,
    error: *mut ow_error,
) -> i32 {
    // SAFETY: passed on.
    unsafe {
        array(
            "mercury_barometer_brass_scale",
            count,
            [
                (barometer_mm, barometer_mm_stride),
                (temperature_c, temperature_c_stride),
                (gravity_m_per_s2, gravity_m_per_s2_stride),
            ],
            (barometer_pressure_kpa, barometer_pressure_kpa_stride),
            error,
        )
    }
}

/// Pressure from the mercury barometer in kPa.
///
/// barometer_mm: reading of the mercury barometer, 300 to 850 mm (pressures from sea level to the highest
///   schools).
/// temperature_c: temperature, 0 to 45 degC (a room that people can work in).
/// gravity_m_per_s2: gravity at the place, 9.76 to 9.84 m/s2 (from high mountains at the equator to the
///   poles).
/// Source: hydrostatics: pressure of a liquid column is density x gravity x height.
/// Since 0.1.0.
///
/// # Safety
/// The rules for pointers at the top of the header.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ow_mercury_barometer_true_scale(
    barometer_mm: f64,
    temperature_c: f64,
    gravity_m_per_s2: f64,
    barometer_pressure_kpa: *mut f64,
    error: *mut ow_error,
) -> i32 {
    // SAFETY: passed on.
    unsafe {
        scalar(
            &gas::mercury_barometer::MercuryBarometer { scale: gas::mercury_barometer::Scale::True },
            [barometer_mm, temperature_c, gravity_m_per_s2],
            barometer_pressure_kpa,
            error,
        )
    }
}

/// `ow_mercury_barometer_true_scale` over `count` rows; a row out of range gives NaN. Strides are in bytes. Since 0.1.0.
///
/// # Safety
/// The rules for pointers at the top of the header.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ow_mercury_barometer_true_scale_array(
    count: usize,
    barometer_mm: *const f64,
    barometer_mm_stride: isize,
    temperature_c: *const f64,
    temperature_c_stride: isize,
    gravity_m_per_s2: *const f64,
    gravity_m_per_s2_stride: isize,
    barometer_pressure_kpa: *mut f64,
    barometer_pressure_kpa_stride: isize,
    error: *mut ow_error,
) -> i32 {
    // SAFETY: passed on.
    unsafe {
        array(
            "mercury_barometer_true_scale",
            count,
            [
                (barometer_mm, barometer_mm_stride),
                (temperature_c, temperature_c_stride),
                (gravity_m_per_s2, gravity_m_per_s2_stride),
            ],
            (barometer_pressure_kpa, barometer_pressure_kpa_stride),
            error,
        )
    }
}
