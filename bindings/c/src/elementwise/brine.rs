//! Brine: humidity over it, its vapour pressure and density.
//! Written by `cargo run -p overwater-c --example generate` from the catalogue of the core.

#![allow(clippy::too_many_arguments)] // Each column has its stride.

use overwater::water;

use crate::array::array;
use crate::error::ow_error;
use crate::scalar::scalar;

/// Relative humidity over saturated brine in %.
///
/// temperature_c: temperature, 10 to 40 degC (range of the handbook's values for brine).
/// Uncertainty of the relation: relative humidity within 2 %.
/// Source: CRC Handbook of Chemistry and Physics, section 15, constant humidity solutions (Wexler).
/// Since 0.1.0.
///
/// # Safety
/// The rules for pointers at the top of the header.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ow_brine_humidity(
    temperature_c: f64,
    brine_humidity_percent: *mut f64,
    error: *mut ow_error,
) -> i32 {
    // SAFETY: passed on.
    unsafe {
        scalar(
            &water::brine::SaturatedBrineHumidity { source: water::brine::BrineSource::Crc },
            [temperature_c],
            brine_humidity_percent,
            error,
        )
    }
}

/// `ow_brine_humidity` over `count` rows; a row out of range gives NaN. Strides are in bytes. Since 0.1.0.
///
/// # Safety
/// The rules for pointers at the top of the header.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ow_brine_humidity_array(
    count: usize,
    temperature_c: *const f64,
    temperature_c_stride: isize,
    brine_humidity_percent: *mut f64,
    brine_humidity_percent_stride: isize,
    error: *mut ow_error,
) -> i32 {
    // SAFETY: passed on.
    unsafe {
        array(
            "brine_humidity",
            count,
            [(temperature_c, temperature_c_stride)],
            (brine_humidity_percent, brine_humidity_percent_stride),
            error,
        )
    }
}

/// Relative humidity over saturated brine, Greenspan in %.
///
/// temperature_c: temperature, 0 to 50 degC (where the cubic was compared).
/// Source: Greenspan, J. Res. Natl. Bur. Stand. 81A (1977) 89, from memory.
/// Since 0.1.0.
///
/// # Safety
/// The rules for pointers at the top of the header.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ow_brine_humidity_greenspan_1977(
    temperature_c: f64,
    brine_humidity_greenspan_percent: *mut f64,
    error: *mut ow_error,
) -> i32 {
    // SAFETY: passed on.
    unsafe {
        scalar(
            &water::brine::SaturatedBrineHumidity { source: water::brine::BrineSource::Greenspan1977 },
            [temperature_c],
            brine_humidity_greenspan_percent,
            error,
        )
    }
}

/// `ow_brine_humidity_greenspan_1977` over `count` rows; a row out of range gives NaN. Strides are in bytes. Since 0.1.0.
///
/// # Safety
/// The rules for pointers at the top of the header.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ow_brine_humidity_greenspan_1977_array(
    count: usize,
    temperature_c: *const f64,
    temperature_c_stride: isize,
    brine_humidity_greenspan_percent: *mut f64,
    brine_humidity_greenspan_percent_stride: isize,
    error: *mut ow_error,
) -> i32 {
    // SAFETY: passed on.
    unsafe {
        array(
            "brine_humidity_greenspan_1977",
            count,
            [(temperature_c, temperature_c_stride)],
            (brine_humidity_greenspan_percent, brine_humidity_greenspan_percent_stride),
            error,
        )
    }
}

/// Vapour pressure over saturated brine in kPa.
///
/// temperature_c: temperature, 10 to 40 degC (range of the handbook's values for brine).
/// Uncertainty of the relation: relative humidity within 2 %.
/// Source: CRC Handbook of Chemistry and Physics, section 15, constant humidity solutions (Wexler).
/// Since 0.1.0.
///
/// # Safety
/// The rules for pointers at the top of the header.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ow_brine_vapour_pressure(
    temperature_c: f64,
    brine_vapour_pressure_kpa: *mut f64,
    error: *mut ow_error,
) -> i32 {
    // SAFETY: passed on.
    unsafe {
        scalar(
            &water::brine::SaturatedBrineVapourPressure { source: water::brine::BrineSource::Crc },
            [temperature_c],
            brine_vapour_pressure_kpa,
            error,
        )
    }
}

/// `ow_brine_vapour_pressure` over `count` rows; a row out of range gives NaN. Strides are in bytes. Since 0.1.0.
///
/// # Safety
/// The rules for pointers at the top of the header.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ow_brine_vapour_pressure_array(
    count: usize,
    temperature_c: *const f64,
    temperature_c_stride: isize,
    brine_vapour_pressure_kpa: *mut f64,
    brine_vapour_pressure_kpa_stride: isize,
    error: *mut ow_error,
) -> i32 {
    // SAFETY: passed on.
    unsafe {
        array(
            "brine_vapour_pressure",
            count,
            [(temperature_c, temperature_c_stride)],
            (brine_vapour_pressure_kpa, brine_vapour_pressure_kpa_stride),
            error,
        )
    }
}

/// Vapour pressure over saturated brine in kPa.
///
/// temperature_c: temperature, 0 to 50 degC (where the cubic was compared).
/// Source: CRC Handbook of Chemistry and Physics, section 15, constant humidity solutions (Wexler).
/// Since 0.1.0.
///
/// # Safety
/// The rules for pointers at the top of the header.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ow_brine_vapour_pressure_greenspan_1977(
    temperature_c: f64,
    brine_vapour_pressure_kpa: *mut f64,
    error: *mut ow_error,
) -> i32 {
    // SAFETY: passed on.
    unsafe {
        scalar(
            &water::brine::SaturatedBrineVapourPressure { source: water::brine::BrineSource::Greenspan1977 },
            [temperature_c],
            brine_vapour_pressure_kpa,
            error,
        )
    }
}

/// `ow_brine_vapour_pressure_greenspan_1977` over `count` rows; a row out of range gives NaN. Strides are in bytes. Since 0.1.0.
///
/// # Safety
/// The rules for pointers at the top of the header.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ow_brine_vapour_pressure_greenspan_1977_array(
    count: usize,
    temperature_c: *const f64,
    temperature_c_stride: isize,
    brine_vapour_pressure_kpa: *mut f64,
    brine_vapour_pressure_kpa_stride: isize,
    error: *mut ow_error,
) -> i32 {
    // SAFETY: passed on.
    unsafe {
        array(
            "brine_vapour_pressure_greenspan_1977",
            count,
            [(temperature_c, temperature_c_stride)],
            (brine_vapour_pressure_kpa, brine_vapour_pressure_kpa_stride),
            error,
        )
    }
}

/// Vapour pressure over a dilute solution in kPa.
///
/// temperature_c: temperature, 0 to 100 degC (liquid water at atmospheric pressure).
/// molality_mol_per_kg: molality of the salt, 0 to 2 mol/kg (beyond 2 mol/kg Raoult's law goes astray fast).
/// ions: ions from one formula of the salt, 1 to 5 (1 for sugar, 2 for sodium chloride, 5 for aluminium
///   sulfate).
/// Source: Raoult's law, with the salt counted as its ions.
/// Since 0.1.0.
///
/// # Safety
/// The rules for pointers at the top of the header.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ow_dilute_brine_vapour_pressure(
    temperature_c: f64,
    molality_mol_per_kg: f64,
    ions: f64,
    dilute_vapour_pressure_kpa: *mut f64,
    error: *mut ow_error,
) -> i32 {
    // SAFETY: passed on.
    unsafe {
        scalar(
            &water::brine::DiluteBrineVapourPressure,
            [temperature_c, molality_mol_per_kg, ions],
            dilute_vapour_pressure_kpa,
            error,
        )
    }
}

/// `ow_dilute_brine_vapour_pressure` over `count` rows; a row out of range gives NaN. Strides are in bytes. Since 0.1.0.
///
/// # Safety
/// The rules for pointers at the top of the header.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ow_dilute_brine_vapour_pressure_array(
    count: usize,
    temperature_c: *const f64,
    temperature_c_stride: isize,
    molality_mol_per_kg: *const f64,
    molality_mol_per_kg_stride: isize,
    ions: *const f64,
    ions_stride: isize,
    dilute_vapour_pressure_kpa: *mut f64,
    dilute_vapour_pressure_kpa_stride: isize,
    error: *mut ow_error,
) -> i32 {
    // SAFETY: passed on.
    unsafe {
        array(
            "dilute_brine_vapour_pressure",
            count,
            [
                (temperature_c, temperature_c_stride),
                (molality_mol_per_kg, molality_mol_per_kg_stride),
                (ions, ions_stride),
            ],
            (dilute_vapour_pressure_kpa, dilute_vapour_pressure_kpa_stride),
            error,
        )
    }
}

/// Density of saturated brine in g/cm3.
///
/// temperature_c: temperature, 10 to 40 degC (range of the handbook's values for brine).
/// Source: computed with PHREEQC and its database pitzer.dat.
/// Since 0.1.0.
///
/// # Safety
/// The rules for pointers at the top of the header.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ow_brine_density(
    temperature_c: f64,
    brine_density_g_per_cm3: *mut f64,
    error: *mut ow_error,
) -> i32 {
    // SAFETY: passed on.
    unsafe { scalar(&water::brine::SaturatedBrineDensity, [temperature_c], brine_density_g_per_cm3, error) }
}

/// `ow_brine_density` over `count` rows; a row out of range gives NaN. Strides are in bytes. Since 0.1.0.
///
/// # Safety
/// The rules for pointers at the top of the header.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ow_brine_density_array(
    count: usize,
    temperature_c: *const f64,
    temperature_c_stride: isize,
    brine_density_g_per_cm3: *mut f64,
    brine_density_g_per_cm3_stride: isize,
    error: *mut ow_error,
) -> i32 {
    // SAFETY: passed on.
    unsafe {
        array(
            "brine_density",
            count,
            [(temperature_c, temperature_c_stride)],
            (brine_density_g_per_cm3, brine_density_g_per_cm3_stride),
            error,
        )
    }
}
