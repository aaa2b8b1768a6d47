//! A gas in the air of a room.
//! Written by `cargo run -p overwater-c --example generate` from the catalogue of the core.

#![allow(clippy::too_many_arguments)] // Each column has its stride.

use overwater::burn;

use crate::array::array;
use crate::error::ow_error;
use crate::scalar::scalar;

/// Volume fraction in the air of the room, after the time in ppm.
///
/// amount_mmol: amount, 0.000001 to 100000 mmol (what school glassware and a room can hold).
/// room_volume_m3: volume of the room, 5 to 100000 m3 (from a store cupboard to a hall).
/// temperature_c: temperature, 0 to 45 degC (a room that people can work in).
/// pressure_kpa: pressure at the place, 40 to 120 kPa (pressures from sea level to the highest schools).
/// air_changes_per_hour: air changes per hour, 0 to 100 1/h (from a sealed room to a cleanroom).
/// time_s: time, 0 to 86400 s (up to a day).
/// Source: well-mixed room: what is in the air falls as exp(-air changes x time).
/// Since 0.1.0.
///
/// # Safety
/// The rules for pointers at the top of the header.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ow_room_concentration(
    amount_mmol: f64,
    room_volume_m3: f64,
    temperature_c: f64,
    pressure_kpa: f64,
    air_changes_per_hour: f64,
    time_s: f64,
    air_concentration_later_ppm: *mut f64,
    error: *mut ow_error,
) -> i32 {
    // SAFETY: passed on.
    unsafe {
        scalar(
            &burn::air::RoomConcentration,
            [amount_mmol, room_volume_m3, temperature_c, pressure_kpa, air_changes_per_hour, time_s],
            air_concentration_later_ppm,
            error,
        )
    }
}

/// `ow_room_concentration` over `count` rows; a row out of range gives NaN. Strides are in bytes. Since 0.1.0.
///
/// # Safety
/// The rules for pointers at the top of the header.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ow_room_concentration_array(
    count: usize,
    amount_mmol: *const f64,
    amount_mmol_stride: isize,
    room_volume_m3: *const f64,
    room_volume_m3_stride: isize,
    temperature_c: *const f64,
    temperature_c_stride: isize,
    pressure_kpa: *const f64,
    pressure_kpa_stride: isize,
    air_changes_per_hour: *const f64,
    air_changes_per_hour_stride: isize,
    time_s: *const f64,
    time_s_stride: isize,
    air_concentration_later_ppm: *mut f64,
    air_concentration_later_ppm_stride: isize,
    error: *mut ow_error,
) -> i32 {
    // SAFETY: passed on.
    unsafe {
        array(
            "room_concentration",
            count,
            [
                (amount_mmol, amount_mmol_stride),
                (room_volume_m3, room_volume_m3_stride),
                (temperature_c, temperature_c_stride),
                (pressure_kpa, pressure_kpa_stride),
                (air_changes_per_hour, air_changes_per_hour_stride),
                (time_s, time_s_stride),
            ],
            (air_concentration_later_ppm, air_concentration_later_ppm_stride),
            error,
        )
    }
}
