//! The pressure of a column of liquid.
//! Written by `cargo run -p overwater-c --example generate` from the catalogue of the core.

#![allow(clippy::too_many_arguments)] // Each column has its stride.

use overwater::gas;

use crate::array::array;
use crate::error::ow_error;
use crate::scalar::scalar;

/// Density of mercury in kg/m3.
///
/// temperature_c: temperature, 0 to 100 degC (range of the density of mercury).
/// Source: Sommer and Poziemski, Metrologia 30 (1994) 665, from memory.
/// Since 0.1.0.
///
/// # Safety
/// The rules for pointers at the top of the header.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ow_mercury_density(
    temperature_c: f64,
    mercury_density_kg_per_m3: *mut f64,
    error: *mut ow_error,
) -> i32 {
    // SAFETY: passed on.
    unsafe { scalar(&gas::column::MercuryDensity, [temperature_c], mercury_density_kg_per_m3, error) }
}

/// `ow_mercury_density` over `count` rows; a row out of range gives NaN. Strides are in bytes. Since 0.1.0.
///
/// # Safety
/// The rules for pointers at the top of the header.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ow_mercury_density_array(
    count: usize,
    temperature_c: *const f64,
    temperature_c_stride: isize,
    mercury_density_kg_per_m3: *mut f64,
    mercury_density_kg_per_m3_stride: isize,
    error: *mut ow_error,
) -> i32 {
    // SAFETY: passed on.
    unsafe {
        array(
            "mercury_density",
            count,
            [(temperature_c, temperature_c_stride)],
            (mercury_density_kg_per_m3, mercury_density_kg_per_m3_stride),
            error,
        )
    }
}

/// Pressure of the column in kPa.
///
/// column_mm: height of the column, -2000 to 2000 mm (taller than any school manometer).
/// liquid_density_g_per_cm3: density of the liquid, 0.5 to 14 g/cm3 (from the lightest oils to mercury).
/// gravity_m_per_s2: gravity at the place, 9.76 to 9.84 m/s2 (from high mountains at the equator to the
///   poles).
/// Source: hydrostatics: pressure of a liquid column is density x gravity x height.
/// Since 0.1.0.
///
/// # Safety
/// The rules for pointers at the top of the header.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ow_column_pressure(
    column_mm: f64,
    liquid_density_g_per_cm3: f64,
    gravity_m_per_s2: f64,
    column_pressure_kpa: *mut f64,
    error: *mut ow_error,
) -> i32 {
    // SAFETY: passed on.
    unsafe {
        scalar(
            &gas::column::ColumnPressure,
            [column_mm, liquid_density_g_per_cm3, gravity_m_per_s2],
            column_pressure_kpa,
            error,
        )
    }
}

/// `ow_column_pressure` over `count` rows; a row out of range gives NaN. Strides are in bytes. Since 0.1.0.
///
/// # Safety
/// The rules for pointers at the top of the header.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ow_column_pressure_array(
    count: usize,
    column_mm: *const f64,
    column_mm_stride: isize,
    liquid_density_g_per_cm3: *const f64,
    liquid_density_g_per_cm3_stride: isize,
    gravity_m_per_s2: *const f64,
    gravity_m_per_s2_stride: isize,
    column_pressure_kpa: *mut f64,
    column_pressure_kpa_stride: isize,
    error: *mut ow_error,
) -> i32 {
    // SAFETY: passed on.
    unsafe {
        array(
            "column_pressure",
            count,
            [
                (column_mm, column_mm_stride),
                (liquid_density_g_per_cm3, liquid_density_g_per_cm3_stride),
                (gravity_m_per_s2, gravity_m_per_s2_stride),
            ],
            (column_pressure_kpa, column_pressure_kpa_stride),
            error,
        )
    }
}

/// Height of the column in mm.
///
/// column_pressure_kpa: pressure of the column, -120 to 120 kPa (pressures from sea level to the highest
///   schools).
/// liquid_density_g_per_cm3: density of the liquid, 0.5 to 14 g/cm3 (from the lightest oils to mercury).
/// gravity_m_per_s2: gravity at the place, 9.76 to 9.84 m/s2 (from high mountains at the equator to the
///   poles).
/// Source: hydrostatics: pressure of a liquid column is density x gravity x height.
/// Since 0.1.0.
///
/// # Safety
/// The rules for pointers at the top of the header.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ow_column_height(
    column_pressure_kpa: f64,
    liquid_density_g_per_cm3: f64,
    gravity_m_per_s2: f64,
    column_mm: *mut f64,
    error: *mut ow_error,
) -> i32 {
    // SAFETY: passed on.
    unsafe {
        scalar(
            &gas::column::ColumnHeight,
            [column_pressure_kpa, liquid_density_g_per_cm3, gravity_m_per_s2],
            column_mm,
            error,
        )
    }
}

/// `ow_column_height` over `count` rows; a row out of range gives NaN. Strides are in bytes. Since 0.1.0.
///
/// # Safety
/// The rules for pointers at the top of the header.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ow_column_height_array(
    count: usize,
    column_pressure_kpa: *const f64,
    column_pressure_kpa_stride: isize,
    liquid_density_g_per_cm3: *const f64,
    liquid_density_g_per_cm3_stride: isize,
    gravity_m_per_s2: *const f64,
    gravity_m_per_s2_stride: isize,
    column_mm: *mut f64,
    column_mm_stride: isize,
    error: *mut ow_error,
) -> i32 {
    // SAFETY: passed on.
    unsafe {
        array(
            "column_height",
            count,
            [
                (column_pressure_kpa, column_pressure_kpa_stride),
                (liquid_density_g_per_cm3, liquid_density_g_per_cm3_stride),
                (gravity_m_per_s2, gravity_m_per_s2_stride),
            ],
            (column_mm, column_mm_stride),
            error,
        )
    }
}

/// Pressure of the column in kPa.
///
/// column_mm: height of the column, -2000 to 2000 mm (taller than any school manometer).
/// temperature_c: temperature, 0 to 100 degC (liquid water at atmospheric pressure).
/// gravity_m_per_s2: gravity at the place, 9.76 to 9.84 m/s2 (from high mountains at the equator to the
///   poles).
/// Source: hydrostatics: pressure of a liquid column is density x gravity x height.
/// Since 0.1.0.
///
/// # Safety
/// The rules for pointers at the top of the header.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ow_water_column_pressure(
    column_mm: f64,
    temperature_c: f64,
    gravity_m_per_s2: f64,
    column_pressure_kpa: *mut f64,
    error: *mut ow_error,
) -> i32 {
    // SAFETY: passed on.
    unsafe {
        scalar(
            &gas::column::ColumnPressureAt { liquid: gas::column::Liquid::Water },
            [column_mm, temperature_c, gravity_m_per_s2],
            column_pressure_kpa,
            error,
        )
    }
}

/// `ow_water_column_pressure` over `count` rows; a row out of range gives NaN. Strides are in bytes. Since 0.1.0.
///
/// # Safety
/// The rules for pointers at the top of the header.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ow_water_column_pressure_array(
    count: usize,
    column_mm: *const f64,
    column_mm_stride: isize,
    temperature_c: *const f64,
    temperature_c_stride: isize,
    gravity_m_per_s2: *const f64,
    gravity_m_per_s2_stride: isize,
    column_pressure_kpa: *mut f64,
    column_pressure_kpa_stride: isize,
    error: *mut ow_error,
) -> i32 {
    // SAFETY: passed on.
    unsafe {
        array(
            "water_column_pressure",
            count,
            [
                (column_mm, column_mm_stride),
                (temperature_c, temperature_c_stride),
                (gravity_m_per_s2, gravity_m_per_s2_stride),
            ],
            (column_pressure_kpa, column_pressure_kpa_stride),
            error,
        )
    }
}

/// Pressure of the column in kPa.
///
/// column_mm: height of the column, -2000 to 2000 mm (taller than any school manometer).
/// temperature_c: temperature, 0 to 100 degC (range of the density of mercury).
/// gravity_m_per_s2: gravity at the place, 9.76 to 9.84 m/s2 (from high mountains at the equator to the
///   poles).
/// Source: hydrostatics: pressure of a liquid column is density x gravity x height.
/// Since 0.1.0.
///
/// # Safety
/// The rules for pointers at the top of the header.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ow_mercury_column_pressure(
    column_mm: f64,
    temperature_c: f64,
    gravity_m_per_s2: f64,
    column_pressure_kpa: *mut f64,
    error: *mut ow_error,
) -> i32 {
    // SAFETY: passed on.
    unsafe {
        scalar(
            &gas::column::ColumnPressureAt { liquid: gas::column::Liquid::Mercury },
            [column_mm, temperature_c, gravity_m_per_s2],
            column_pressure_kpa,
            error,
        )
    }
}

/// `ow_mercury_column_pressure` over `count` rows; a row out of range gives NaN. Strides are in bytes. Since 0.1.0.
///
/// # Safety
/// The rules for pointers at the top of the header.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ow_mercury_column_pressure_array(
    count: usize,
    column_mm: *const f64,
    column_mm_stride: isize,
    temperature_c: *const f64,
    temperature_c_stride: isize,
    gravity_m_per_s2: *const f64,
    gravity_m_per_s2_stride: isize,
    column_pressure_kpa: *mut f64,
    column_pressure_kpa_stride: isize,
    error: *mut ow_error,
) -> i32 {
    // SAFETY: passed on.
    unsafe {
        array(
            "mercury_column_pressure",
            count,
            [
                (column_mm, column_mm_stride),
                (temperature_c, temperature_c_stride),
                (gravity_m_per_s2, gravity_m_per_s2_stride),
            ],
            (column_pressure_kpa, column_pressure_kpa_stride),
            error,
        )
    }
}

/// Pressure of the column in kPa.
///
/// column_mm: height of the column, -2000 to 2000 mm (taller than any school manometer).
/// Source: hydrostatics: pressure of a liquid column is density x gravity x height.
/// Since 0.1.0.
///
/// # Safety
/// The rules for pointers at the top of the header.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ow_conventional_mm_of_water(
    column_mm: f64,
    column_pressure_kpa: *mut f64,
    error: *mut ow_error,
) -> i32 {
    // SAFETY: passed on.
    unsafe {
        scalar(
            &gas::column::ConventionalColumnPressure { column: gas::column::ConventionalColumn::Water },
            [column_mm],
            column_pressure_kpa,
            error,
        )
    }
}

/// `ow_conventional_mm_of_water` over `count` rows; a row out of range gives NaN. Strides are in bytes. Since 0.1.0.
///
/// # Safety
/// The rules for pointers at the top of the header.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ow_conventional_mm_of_water_array(
    count: usize,
    column_mm: *const f64,
    column_mm_stride: isize,
    column_pressure_kpa: *mut f64,
    column_pressure_kpa_stride: isize,
    error: *mut ow_error,
) -> i32 {
    // SAFETY: passed on.
    unsafe {
        array(
            "conventional_mm_of_water",
            count,
            [(column_mm, column_mm_stride)],
            (column_pressure_kpa, column_pressure_kpa_stride),
            error,
        )
    }
}

/// Pressure of the column in kPa.
///
/// column_mm: height of the column, -2000 to 2000 mm (taller than any school manometer).
/// Source: hydrostatics: pressure of a liquid column is density x gravity x height.
/// Since 0.1.0.
///
/// # Safety
/// The rules for pointers at the top of the header.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ow_conventional_mm_of_mercury(
    column_mm: f64,
    column_pressure_kpa: *mut f64,
    error: *mut ow_error,
) -> i32 {
    // SAFETY: passed on.
    unsafe {
        scalar(
            &gas::column::ConventionalColumnPressure { column: gas::column::ConventionalColumn::Mercury },
            [column_mm],
            column_pressure_kpa,
            error,
        )
    }
}

/// `ow_conventional_mm_of_mercury` over `count` rows; a row out of range gives NaN. Strides are in bytes. Since 0.1.0.
///
/// # Safety
/// The rules for pointers at the top of the header.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ow_conventional_mm_of_mercury_array(
    count: usize,
    column_mm: *const f64,
    column_mm_stride: isize,
    column_pressure_kpa: *mut f64,
    column_pressure_kpa_stride: isize,
    error: *mut ow_error,
) -> i32 {
    // SAFETY: passed on.
    unsafe {
        array(
            "conventional_mm_of_mercury",
            count,
            [(column_mm, column_mm_stride)],
            (column_pressure_kpa, column_pressure_kpa_stride),
            error,
        )
    }
}

/// Pressure of the column in kPa.
///
/// column_mm: height of the column, -2000 to 2000 mm (taller than any school manometer).
/// Source: hydrostatics: pressure of a liquid column is density x gravity x height.
/// Since 0.1.0.
///
/// # Safety
/// The rules for pointers at the top of the header.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ow_torr(column_mm: f64, column_pressure_kpa: *mut f64, error: *mut ow_error) -> i32 {
    // SAFETY: passed on.
    unsafe {
        scalar(
            &gas::column::ConventionalColumnPressure { column: gas::column::ConventionalColumn::Torr },
            [column_mm],
            column_pressure_kpa,
            error,
        )
    }
}

/// `ow_torr` over `count` rows; a row out of range gives NaN. Strides are in bytes. Since 0.1.0.
///
/// # Safety
/// The rules for pointers at the top of the header.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ow_torr_array(
    count: usize,
    column_mm: *const f64,
    column_mm_stride: isize,
    column_pressure_kpa: *mut f64,
    column_pressure_kpa_stride: isize,
    error: *mut ow_error,
) -> i32 {
    // SAFETY: passed on.
    unsafe {
        array(
            "torr",
            count,
            [(column_mm, column_mm_stride)],
            (column_pressure_kpa, column_pressure_kpa_stride),
            error,
        )
    }
}
