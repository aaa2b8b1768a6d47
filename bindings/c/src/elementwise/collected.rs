//! Gas collected over water, and what dissolves in the water.
//! Written by `cargo run -p overwater-c --example generate` from the catalogue of the core.

#![allow(clippy::too_many_arguments)] // Each column has its stride.

use overwater::{apparatus, conventions, gas};

use crate::array::array;
use crate::error::ow_error;
use crate::scalar::scalar;

/// Molar volume of a gas in dm3/mol.
///
/// temperature_c: temperature, 0 to 100 degC (liquid water at atmospheric pressure).
/// pressure_kpa: pressure at the place, 40 to 120 kPa (pressures from sea level to the highest schools).
/// Source: ideal gas equation.
/// Since 0.1.0.
///
/// # Safety
/// The rules for pointers at the top of the header.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ow_molar_volume(
    temperature_c: f64,
    pressure_kpa: f64,
    molar_volume_dm3_per_mol: *mut f64,
    error: *mut ow_error,
) -> i32 {
    // SAFETY: passed on.
    unsafe {
        scalar(&gas::ideal::IdealMolarVolume, [temperature_c, pressure_kpa], molar_volume_dm3_per_mol, error)
    }
}

/// `ow_molar_volume` over `count` rows; a row out of range gives NaN. Strides are in bytes. Since 0.1.0.
///
/// # Safety
/// The rules for pointers at the top of the header.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ow_molar_volume_array(
    count: usize,
    temperature_c: *const f64,
    temperature_c_stride: isize,
    pressure_kpa: *const f64,
    pressure_kpa_stride: isize,
    molar_volume_dm3_per_mol: *mut f64,
    molar_volume_dm3_per_mol_stride: isize,
    error: *mut ow_error,
) -> i32 {
    // SAFETY: passed on.
    unsafe {
        array(
            "molar_volume",
            count,
            [(temperature_c, temperature_c_stride), (pressure_kpa, pressure_kpa_stride)],
            (molar_volume_dm3_per_mol, molar_volume_dm3_per_mol_stride),
            error,
        )
    }
}

/// Amount in mmol.
///
/// volume_cm3: volume, 0.01 to 1000000 cm3 (what school glassware and a room can hold).
/// temperature_c: temperature, 0 to 100 degC (liquid water at atmospheric pressure).
/// pressure_kpa: pressure at the place, 40 to 120 kPa (pressures from sea level to the highest schools).
/// inside_minus_outside_mm: water level inside less level outside, -2000 to 2000 mm (taller than any school
///   gas jar or eudiometer).
/// Source: ideal gas equation.
/// Since 0.1.0.
///
/// # Safety
/// The rules for pointers at the top of the header.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ow_dry_amount(
    volume_cm3: f64,
    temperature_c: f64,
    pressure_kpa: f64,
    inside_minus_outside_mm: f64,
    amount_mmol: *mut f64,
    error: *mut ow_error,
) -> i32 {
    // SAFETY: passed on.
    unsafe {
        scalar(
            &gas::collected::DryAmount { conventions: conventions::Conventions::EXACT },
            [volume_cm3, temperature_c, pressure_kpa, inside_minus_outside_mm],
            amount_mmol,
            error,
        )
    }
}

/// `ow_dry_amount` over `count` rows; a row out of range gives NaN. Strides are in bytes. Since 0.1.0.
///
/// # Safety
/// The rules for pointers at the top of the header.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ow_dry_amount_array(
    count: usize,
    volume_cm3: *const f64,
    volume_cm3_stride: isize,
    temperature_c: *const f64,
    temperature_c_stride: isize,
    pressure_kpa: *const f64,
    pressure_kpa_stride: isize,
    inside_minus_outside_mm: *const f64,
    inside_minus_outside_mm_stride: isize,
    amount_mmol: *mut f64,
    amount_mmol_stride: isize,
    error: *mut ow_error,
) -> i32 {
    // SAFETY: passed on.
    unsafe {
        array(
            "dry_amount",
            count,
            [
                (volume_cm3, volume_cm3_stride),
                (temperature_c, temperature_c_stride),
                (pressure_kpa, pressure_kpa_stride),
                (inside_minus_outside_mm, inside_minus_outside_mm_stride),
            ],
            (amount_mmol, amount_mmol_stride),
            error,
        )
    }
}

/// Amount in mmol.
///
/// volume_cm3: volume, 0.01 to 1000000 cm3 (what school glassware and a room can hold).
/// temperature_c: temperature, 0 to 100 degC (liquid water at atmospheric pressure).
/// pressure_kpa: pressure at the place, 40 to 120 kPa (pressures from sea level to the highest schools).
/// inside_minus_outside_mm: water level inside less level outside, -2000 to 2000 mm (taller than any school
///   gas jar or eudiometer).
/// vapour_pressure_kpa: vapour pressure of water, 0 to 101.4 kPa (0 for a gas that is dry, up to the vapour
///   pressure at 100 degC).
/// Source: ideal gas equation.
/// Since 0.1.0.
///
/// # Safety
/// The rules for pointers at the top of the header.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ow_dry_amount_with_vapour(
    volume_cm3: f64,
    temperature_c: f64,
    pressure_kpa: f64,
    inside_minus_outside_mm: f64,
    vapour_pressure_kpa: f64,
    amount_mmol: *mut f64,
    error: *mut ow_error,
) -> i32 {
    // SAFETY: passed on.
    unsafe {
        scalar(
            &gas::collected::DryAmountWithVapour { conventions: conventions::Conventions::EXACT },
            [volume_cm3, temperature_c, pressure_kpa, inside_minus_outside_mm, vapour_pressure_kpa],
            amount_mmol,
            error,
        )
    }
}

/// `ow_dry_amount_with_vapour` over `count` rows; a row out of range gives NaN. Strides are in bytes. Since 0.1.0.
///
/// # Safety
/// The rules for pointers at the top of the header.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ow_dry_amount_with_vapour_array(
    count: usize,
    volume_cm3: *const f64,
    volume_cm3_stride: isize,
    temperature_c: *const f64,
    temperature_c_stride: isize,
    pressure_kpa: *const f64,
    pressure_kpa_stride: isize,
    inside_minus_outside_mm: *const f64,
    inside_minus_outside_mm_stride: isize,
    vapour_pressure_kpa: *const f64,
    vapour_pressure_kpa_stride: isize,
    amount_mmol: *mut f64,
    amount_mmol_stride: isize,
    error: *mut ow_error,
) -> i32 {
    // SAFETY: passed on.
    unsafe {
        array(
            "dry_amount_with_vapour",
            count,
            [
                (volume_cm3, volume_cm3_stride),
                (temperature_c, temperature_c_stride),
                (pressure_kpa, pressure_kpa_stride),
                (inside_minus_outside_mm, inside_minus_outside_mm_stride),
                (vapour_pressure_kpa, vapour_pressure_kpa_stride),
            ],
            (amount_mmol, amount_mmol_stride),
            error,
        )
    }
}

/// Pressure of the dry gas in kPa.
///
/// temperature_c: temperature, 0 to 100 degC (liquid water at atmospheric pressure).
/// pressure_kpa: pressure at the place, 40 to 120 kPa (pressures from sea level to the highest schools).
/// inside_minus_outside_mm: water level inside less level outside, -2000 to 2000 mm (taller than any school
///   gas jar or eudiometer).
/// Source: Dalton's law of partial pressures.
/// Since 0.1.0.
///
/// # Safety
/// The rules for pointers at the top of the header.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ow_dry_pressure(
    temperature_c: f64,
    pressure_kpa: f64,
    inside_minus_outside_mm: f64,
    dry_pressure_kpa: *mut f64,
    error: *mut ow_error,
) -> i32 {
    // SAFETY: passed on.
    unsafe {
        scalar(
            &gas::collected::DryPressure,
            [temperature_c, pressure_kpa, inside_minus_outside_mm],
            dry_pressure_kpa,
            error,
        )
    }
}

/// `ow_dry_pressure` over `count` rows; a row out of range gives NaN. Strides are in bytes. Since 0.1.0.
///
/// # Safety
/// The rules for pointers at the top of the header.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ow_dry_pressure_array(
    count: usize,
    temperature_c: *const f64,
    temperature_c_stride: isize,
    pressure_kpa: *const f64,
    pressure_kpa_stride: isize,
    inside_minus_outside_mm: *const f64,
    inside_minus_outside_mm_stride: isize,
    dry_pressure_kpa: *mut f64,
    dry_pressure_kpa_stride: isize,
    error: *mut ow_error,
) -> i32 {
    // SAFETY: passed on.
    unsafe {
        array(
            "dry_pressure",
            count,
            [
                (temperature_c, temperature_c_stride),
                (pressure_kpa, pressure_kpa_stride),
                (inside_minus_outside_mm, inside_minus_outside_mm_stride),
            ],
            (dry_pressure_kpa, dry_pressure_kpa_stride),
            error,
        )
    }
}

/// Volume of the gas in cm3.
///
/// amount_mmol: amount, 0.000001 to 100000 mmol (what school glassware and a room can hold).
/// temperature_c: temperature, 0 to 100 degC (liquid water at atmospheric pressure).
/// pressure_kpa: pressure at the place, 40 to 120 kPa (pressures from sea level to the highest schools).
/// inside_minus_outside_mm: water level inside less level outside, -2000 to 2000 mm (taller than any school
///   gas jar or eudiometer).
/// Source: ideal gas equation.
/// Since 0.1.0.
///
/// # Safety
/// The rules for pointers at the top of the header.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ow_volume_over_water(
    amount_mmol: f64,
    temperature_c: f64,
    pressure_kpa: f64,
    inside_minus_outside_mm: f64,
    gas_volume_cm3: *mut f64,
    error: *mut ow_error,
) -> i32 {
    // SAFETY: passed on.
    unsafe {
        scalar(
            &gas::collected::VolumeOverWater,
            [amount_mmol, temperature_c, pressure_kpa, inside_minus_outside_mm],
            gas_volume_cm3,
            error,
        )
    }
}

/// `ow_volume_over_water` over `count` rows; a row out of range gives NaN. Strides are in bytes. Since 0.1.0.
///
/// # Safety
/// The rules for pointers at the top of the header.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ow_volume_over_water_array(
    count: usize,
    amount_mmol: *const f64,
    amount_mmol_stride: isize,
    temperature_c: *const f64,
    temperature_c_stride: isize,
    pressure_kpa: *const f64,
    pressure_kpa_stride: isize,
    inside_minus_outside_mm: *const f64,
    inside_minus_outside_mm_stride: isize,
    gas_volume_cm3: *mut f64,
    gas_volume_cm3_stride: isize,
    error: *mut ow_error,
) -> i32 {
    // SAFETY: passed on.
    unsafe {
        array(
            "volume_over_water",
            count,
            [
                (amount_mmol, amount_mmol_stride),
                (temperature_c, temperature_c_stride),
                (pressure_kpa, pressure_kpa_stride),
                (inside_minus_outside_mm, inside_minus_outside_mm_stride),
            ],
            (gas_volume_cm3, gas_volume_cm3_stride),
            error,
        )
    }
}

/// Fraction of oxygen in the dry gas.
///
/// rejected_cm3: gas that has passed before, 0 to 100000 cm3 (what school glassware and a room can hold).
/// volume_cm3: volume, 0.01 to 1000000 cm3 (what school glassware and a room can hold).
/// free_volume_cm3: free volume of flask and tube, 1 to 20000 cm3 (from a small boiling tube to the largest
///   flask on a bench).
/// Source: well-mixed flask at constant pressure: the air left falls as exp(-volume passed / free volume).
/// Since 0.1.0.
///
/// # Safety
/// The rules for pointers at the top of the header.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ow_oxygen_fraction(
    rejected_cm3: f64,
    volume_cm3: f64,
    free_volume_cm3: f64,
    oxygen_fraction: *mut f64,
    error: *mut ow_error,
) -> i32 {
    // SAFETY: passed on.
    unsafe {
        scalar(
            &apparatus::purity::MeanOxygenFraction,
            [rejected_cm3, volume_cm3, free_volume_cm3],
            oxygen_fraction,
            error,
        )
    }
}

/// `ow_oxygen_fraction` over `count` rows; a row out of range gives NaN. Strides are in bytes. Since 0.1.0.
///
/// # Safety
/// The rules for pointers at the top of the header.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ow_oxygen_fraction_array(
    count: usize,
    rejected_cm3: *const f64,
    rejected_cm3_stride: isize,
    volume_cm3: *const f64,
    volume_cm3_stride: isize,
    free_volume_cm3: *const f64,
    free_volume_cm3_stride: isize,
    oxygen_fraction: *mut f64,
    oxygen_fraction_stride: isize,
    error: *mut ow_error,
) -> i32 {
    // SAFETY: passed on.
    unsafe {
        array(
            "oxygen_fraction",
            count,
            [
                (rejected_cm3, rejected_cm3_stride),
                (volume_cm3, volume_cm3_stride),
                (free_volume_cm3, free_volume_cm3_stride),
            ],
            (oxygen_fraction, oxygen_fraction_stride),
            error,
        )
    }
}

/// Oxygen in water under moist air in mg/dm3.
///
/// temperature_c: temperature, 0 to 40 degC (the range of the measurements).
/// pressure_kpa: pressure at the place, 40 to 120 kPa (pressures from sea level to the highest schools).
/// salinity: salinity on the practical scale, 0 to 40 (from fresh water to the saltiest sea of the
///   measurements).
/// Source: Benson and Krause, Limnol. Oceanogr. 25 (1980) 662 and 29 (1984) 620, form of Standard Methods
///   4500-O (from memory; gsw 3.6.23 within 0.025 %).
/// Since 0.1.0.
///
/// # Safety
/// The rules for pointers at the top of the header.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ow_oxygen_saturation(
    temperature_c: f64,
    pressure_kpa: f64,
    salinity: f64,
    oxygen_saturation_mg_per_dm3: *mut f64,
    error: *mut ow_error,
) -> i32 {
    // SAFETY: passed on.
    unsafe {
        scalar(
            &gas::solubility::OxygenSaturation,
            [temperature_c, pressure_kpa, salinity],
            oxygen_saturation_mg_per_dm3,
            error,
        )
    }
}

/// `ow_oxygen_saturation` over `count` rows; a row out of range gives NaN. Strides are in bytes. Since 0.1.0.
///
/// # Safety
/// The rules for pointers at the top of the header.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ow_oxygen_saturation_array(
    count: usize,
    temperature_c: *const f64,
    temperature_c_stride: isize,
    pressure_kpa: *const f64,
    pressure_kpa_stride: isize,
    salinity: *const f64,
    salinity_stride: isize,
    oxygen_saturation_mg_per_dm3: *mut f64,
    oxygen_saturation_mg_per_dm3_stride: isize,
    error: *mut ow_error,
) -> i32 {
    // SAFETY: passed on.
    unsafe {
        array(
            "oxygen_saturation",
            count,
            [
                (temperature_c, temperature_c_stride),
                (pressure_kpa, pressure_kpa_stride),
                (salinity, salinity_stride),
            ],
            (oxygen_saturation_mg_per_dm3, oxygen_saturation_mg_per_dm3_stride),
            error,
        )
    }
}
