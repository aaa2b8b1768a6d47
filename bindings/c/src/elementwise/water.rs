//! Water: density, moist air above it, ionisation.
//! Written by `cargo run -p overwater-c --example generate` from the catalogue of the core.

#![allow(clippy::too_many_arguments)] // Each column has its stride.

use overwater::water;

use crate::array::array;
use crate::error::ow_error;
use crate::scalar::scalar;

/// Density of water in g/cm3.
///
/// temperature_c: temperature, 0 to 100 degC (liquid water at atmospheric pressure).
/// Uncertainty of the relation: 0.001 %, from memory.
/// Source: IAPWS SR6-08(2011), properties of liquid water at 0.1 MPa, equation 4.
/// Since 0.1.0.
///
/// # Safety
/// The rules for pointers at the top of the header.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ow_water_density(
    temperature_c: f64,
    water_density_g_per_cm3: *mut f64,
    error: *mut ow_error,
) -> i32 {
    // SAFETY: passed on.
    unsafe { scalar(&water::density::WaterDensity, [temperature_c], water_density_g_per_cm3, error) }
}

/// `ow_water_density` over `count` rows; a row out of range gives NaN. Strides are in bytes. Since 0.1.0.
///
/// # Safety
/// The rules for pointers at the top of the header.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ow_water_density_array(
    count: usize,
    temperature_c: *const f64,
    temperature_c_stride: isize,
    water_density_g_per_cm3: *mut f64,
    water_density_g_per_cm3_stride: isize,
    error: *mut ow_error,
) -> i32 {
    // SAFETY: passed on.
    unsafe {
        array(
            "water_density",
            count,
            [(temperature_c, temperature_c_stride)],
            (water_density_g_per_cm3, water_density_g_per_cm3_stride),
            error,
        )
    }
}

/// Density of water, Kell in g/cm3.
///
/// temperature_c: temperature, 0 to 100 degC (liquid water at atmospheric pressure).
/// Source: Kell, J. Chem. Eng. Data 20 (1975) 97, equation 16.
/// Since 0.1.0.
///
/// # Safety
/// The rules for pointers at the top of the header.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ow_water_density_kell_1975(
    temperature_c: f64,
    water_density_kell_g_per_cm3: *mut f64,
    error: *mut ow_error,
) -> i32 {
    // SAFETY: passed on.
    unsafe {
        scalar(
            &water::density::WaterDensityFrom { source: water::density::DensitySource::Kell1975 },
            [temperature_c],
            water_density_kell_g_per_cm3,
            error,
        )
    }
}

/// `ow_water_density_kell_1975` over `count` rows; a row out of range gives NaN. Strides are in bytes. Since 0.1.0.
///
/// # Safety
/// The rules for pointers at the top of the header.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ow_water_density_kell_1975_array(
    count: usize,
    temperature_c: *const f64,
    temperature_c_stride: isize,
    water_density_kell_g_per_cm3: *mut f64,
    water_density_kell_g_per_cm3_stride: isize,
    error: *mut ow_error,
) -> i32 {
    // SAFETY: passed on.
    unsafe {
        array(
            "water_density_kell_1975",
            count,
            [(temperature_c, temperature_c_stride)],
            (water_density_kell_g_per_cm3, water_density_kell_g_per_cm3_stride),
            error,
        )
    }
}

/// Density of water at a pressure in g/cm3.
///
/// temperature_c: temperature, 0 to 40 degC (range of the recommended table of 2001).
/// pressure_kpa: pressure at the place, 40 to 120 kPa (pressures from sea level to the highest schools).
/// Uncertainty of the relation: at most 0.0009 kg/m3 with a coverage factor of 2, from memory.
/// Source: Tanaka, Girard, Davis, Peuto and Bignell, Metrologia 38 (2001) 301.
/// Since 0.1.0.
///
/// # Safety
/// The rules for pointers at the top of the header.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ow_water_density_tanaka(
    temperature_c: f64,
    pressure_kpa: f64,
    water_density_at_pressure_g_per_cm3: *mut f64,
    error: *mut ow_error,
) -> i32 {
    // SAFETY: passed on.
    unsafe {
        scalar(
            &water::density::tanaka::TanakaDensity { air_saturated: false },
            [temperature_c, pressure_kpa],
            water_density_at_pressure_g_per_cm3,
            error,
        )
    }
}

/// `ow_water_density_tanaka` over `count` rows; a row out of range gives NaN. Strides are in bytes. Since 0.1.0.
///
/// # Safety
/// The rules for pointers at the top of the header.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ow_water_density_tanaka_array(
    count: usize,
    temperature_c: *const f64,
    temperature_c_stride: isize,
    pressure_kpa: *const f64,
    pressure_kpa_stride: isize,
    water_density_at_pressure_g_per_cm3: *mut f64,
    water_density_at_pressure_g_per_cm3_stride: isize,
    error: *mut ow_error,
) -> i32 {
    // SAFETY: passed on.
    unsafe {
        array(
            "water_density_tanaka",
            count,
            [(temperature_c, temperature_c_stride), (pressure_kpa, pressure_kpa_stride)],
            (water_density_at_pressure_g_per_cm3, water_density_at_pressure_g_per_cm3_stride),
            error,
        )
    }
}

/// Density of water at a pressure in g/cm3.
///
/// temperature_c: temperature, 0 to 25 degC (range of the term for dissolved air in the recommended table of
///   2001).
/// pressure_kpa: pressure at the place, 40 to 120 kPa (pressures from sea level to the highest schools).
/// Uncertainty of the relation: at most 0.0009 kg/m3 with a coverage factor of 2, from memory.
/// Source: Tanaka, Girard, Davis, Peuto and Bignell, Metrologia 38 (2001) 301.
/// Since 0.1.0.
///
/// # Safety
/// The rules for pointers at the top of the header.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ow_water_density_tanaka_air_saturated(
    temperature_c: f64,
    pressure_kpa: f64,
    water_density_at_pressure_g_per_cm3: *mut f64,
    error: *mut ow_error,
) -> i32 {
    // SAFETY: passed on.
    unsafe {
        scalar(
            &water::density::tanaka::TanakaDensity { air_saturated: true },
            [temperature_c, pressure_kpa],
            water_density_at_pressure_g_per_cm3,
            error,
        )
    }
}

/// `ow_water_density_tanaka_air_saturated` over `count` rows; a row out of range gives NaN. Strides are in bytes. Since 0.1.0.
///
/// # Safety
/// The rules for pointers at the top of the header.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ow_water_density_tanaka_air_saturated_array(
    count: usize,
    temperature_c: *const f64,
    temperature_c_stride: isize,
    pressure_kpa: *const f64,
    pressure_kpa_stride: isize,
    water_density_at_pressure_g_per_cm3: *mut f64,
    water_density_at_pressure_g_per_cm3_stride: isize,
    error: *mut ow_error,
) -> i32 {
    // SAFETY: passed on.
    unsafe {
        array(
            "water_density_tanaka_air_saturated",
            count,
            [(temperature_c, temperature_c_stride), (pressure_kpa, pressure_kpa_stride)],
            (water_density_at_pressure_g_per_cm3, water_density_at_pressure_g_per_cm3_stride),
            error,
        )
    }
}

/// Density of the saturated liquid in g/cm3.
///
/// temperature_c: temperature, 0 to 100 degC (liquid water at atmospheric pressure).
/// Source: IAPWS SR1-86(1992), saturation properties of ordinary water, equation 2.
/// Since 0.1.0.
///
/// # Safety
/// The rules for pointers at the top of the header.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ow_saturated_liquid_density(
    temperature_c: f64,
    saturated_liquid_density_g_per_cm3: *mut f64,
    error: *mut ow_error,
) -> i32 {
    // SAFETY: passed on.
    unsafe {
        scalar(
            &water::saturated::SaturatedLiquidDensity,
            [temperature_c],
            saturated_liquid_density_g_per_cm3,
            error,
        )
    }
}

/// `ow_saturated_liquid_density` over `count` rows; a row out of range gives NaN. Strides are in bytes. Since 0.1.0.
///
/// # Safety
/// The rules for pointers at the top of the header.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ow_saturated_liquid_density_array(
    count: usize,
    temperature_c: *const f64,
    temperature_c_stride: isize,
    saturated_liquid_density_g_per_cm3: *mut f64,
    saturated_liquid_density_g_per_cm3_stride: isize,
    error: *mut ow_error,
) -> i32 {
    // SAFETY: passed on.
    unsafe {
        array(
            "saturated_liquid_density",
            count,
            [(temperature_c, temperature_c_stride)],
            (saturated_liquid_density_g_per_cm3, saturated_liquid_density_g_per_cm3_stride),
            error,
        )
    }
}

/// Density of the saturated vapour in kg/m3.
///
/// temperature_c: temperature, 0 to 100 degC (liquid water at atmospheric pressure).
/// Source: IAPWS SR1-86(1992), saturation properties of ordinary water, equation 3.
/// Since 0.1.0.
///
/// # Safety
/// The rules for pointers at the top of the header.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ow_saturated_vapour_density(
    temperature_c: f64,
    saturated_vapour_density_kg_per_m3: *mut f64,
    error: *mut ow_error,
) -> i32 {
    // SAFETY: passed on.
    unsafe {
        scalar(
            &water::saturated::SaturatedVapourDensity,
            [temperature_c],
            saturated_vapour_density_kg_per_m3,
            error,
        )
    }
}

/// `ow_saturated_vapour_density` over `count` rows; a row out of range gives NaN. Strides are in bytes. Since 0.1.0.
///
/// # Safety
/// The rules for pointers at the top of the header.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ow_saturated_vapour_density_array(
    count: usize,
    temperature_c: *const f64,
    temperature_c_stride: isize,
    saturated_vapour_density_kg_per_m3: *mut f64,
    saturated_vapour_density_kg_per_m3_stride: isize,
    error: *mut ow_error,
) -> i32 {
    // SAFETY: passed on.
    unsafe {
        array(
            "saturated_vapour_density",
            count,
            [(temperature_c, temperature_c_stride)],
            (saturated_vapour_density_kg_per_m3, saturated_vapour_density_kg_per_m3_stride),
            error,
        )
    }
}

/// Enhancement factor.
///
/// temperature_c: temperature, 0 to 100 degC (liquid water at atmospheric pressure).
/// pressure_kpa: pressure at the place, 40 to 120 kPa (pressures from sea level to the highest schools).
/// Source: Greenspan, J. Res. Natl. Bur. Stand. 80A (1976) 41.
/// Since 0.1.0.
///
/// # Safety
/// The rules for pointers at the top of the header.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ow_enhancement_factor_greenspan_1976(
    temperature_c: f64,
    pressure_kpa: f64,
    enhancement: *mut f64,
    error: *mut ow_error,
) -> i32 {
    // SAFETY: passed on.
    unsafe {
        scalar(
            &water::enhancement::EnhancementFactor {
                source: water::enhancement::EnhancementSource::Greenspan1976,
            },
            [temperature_c, pressure_kpa],
            enhancement,
            error,
        )
    }
}

/// `ow_enhancement_factor_greenspan_1976` over `count` rows; a row out of range gives NaN. Strides are in bytes. Since 0.1.0.
///
/// # Safety
/// The rules for pointers at the top of the header.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ow_enhancement_factor_greenspan_1976_array(
    count: usize,
    temperature_c: *const f64,
    temperature_c_stride: isize,
    pressure_kpa: *const f64,
    pressure_kpa_stride: isize,
    enhancement: *mut f64,
    enhancement_stride: isize,
    error: *mut ow_error,
) -> i32 {
    // SAFETY: passed on.
    unsafe {
        array(
            "enhancement_factor_greenspan_1976",
            count,
            [(temperature_c, temperature_c_stride), (pressure_kpa, pressure_kpa_stride)],
            (enhancement, enhancement_stride),
            error,
        )
    }
}

/// Enhancement factor, Hardy.
///
/// temperature_c: temperature, 0 to 100 degC (liquid water at atmospheric pressure).
/// pressure_kpa: pressure at the place, 40 to 120 kPa (pressures from sea level to the highest schools).
/// Source: Hardy, Third International Symposium on Humidity and Moisture, NPL 1998.
/// Since 0.1.0.
///
/// # Safety
/// The rules for pointers at the top of the header.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ow_enhancement_factor_hardy_1998(
    temperature_c: f64,
    pressure_kpa: f64,
    enhancement_hardy: *mut f64,
    error: *mut ow_error,
) -> i32 {
    // SAFETY: passed on.
    unsafe {
        scalar(
            &water::enhancement::EnhancementFactor {
                source: water::enhancement::EnhancementSource::Hardy1998,
            },
            [temperature_c, pressure_kpa],
            enhancement_hardy,
            error,
        )
    }
}

/// `ow_enhancement_factor_hardy_1998` over `count` rows; a row out of range gives NaN. Strides are in bytes. Since 0.1.0.
///
/// # Safety
/// The rules for pointers at the top of the header.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ow_enhancement_factor_hardy_1998_array(
    count: usize,
    temperature_c: *const f64,
    temperature_c_stride: isize,
    pressure_kpa: *const f64,
    pressure_kpa_stride: isize,
    enhancement_hardy: *mut f64,
    enhancement_hardy_stride: isize,
    error: *mut ow_error,
) -> i32 {
    // SAFETY: passed on.
    unsafe {
        array(
            "enhancement_factor_hardy_1998",
            count,
            [(temperature_c, temperature_c_stride), (pressure_kpa, pressure_kpa_stride)],
            (enhancement_hardy, enhancement_hardy_stride),
            error,
        )
    }
}

/// Enhancement factor, Buck.
///
/// temperature_c: temperature, 0 to 50 degC (range of Buck's equations).
/// pressure_kpa: pressure at the place, 40 to 120 kPa (pressures from sea level to the highest schools).
/// Source: Buck Research CR-1A user manual, appendix 1 (revision of 1996).
/// Since 0.1.0.
///
/// # Safety
/// The rules for pointers at the top of the header.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ow_enhancement_factor_buck_1996(
    temperature_c: f64,
    pressure_kpa: f64,
    enhancement_buck: *mut f64,
    error: *mut ow_error,
) -> i32 {
    // SAFETY: passed on.
    unsafe {
        scalar(
            &water::enhancement::EnhancementFactor {
                source: water::enhancement::EnhancementSource::Buck1996,
            },
            [temperature_c, pressure_kpa],
            enhancement_buck,
            error,
        )
    }
}

/// `ow_enhancement_factor_buck_1996` over `count` rows; a row out of range gives NaN. Strides are in bytes. Since 0.1.0.
///
/// # Safety
/// The rules for pointers at the top of the header.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ow_enhancement_factor_buck_1996_array(
    count: usize,
    temperature_c: *const f64,
    temperature_c_stride: isize,
    pressure_kpa: *const f64,
    pressure_kpa_stride: isize,
    enhancement_buck: *mut f64,
    enhancement_buck_stride: isize,
    error: *mut ow_error,
) -> i32 {
    // SAFETY: passed on.
    unsafe {
        array(
            "enhancement_factor_buck_1996",
            count,
            [(temperature_c, temperature_c_stride), (pressure_kpa, pressure_kpa_stride)],
            (enhancement_buck, enhancement_buck_stride),
            error,
        )
    }
}

/// Enhancement factor, CIPM.
///
/// temperature_c: temperature, 5 to 30 degC (range of CIPM-2007).
/// pressure_kpa: pressure at the place, 60 to 110 kPa (range of CIPM-2007).
/// Source: CIPM-2007: Picard, Davis, Glaeser and Fujii, Metrologia 45 (2008) 149, appendix A1, from memory.
/// Since 0.1.0.
///
/// # Safety
/// The rules for pointers at the top of the header.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ow_enhancement_factor_cipm_2007(
    temperature_c: f64,
    pressure_kpa: f64,
    enhancement_cipm: *mut f64,
    error: *mut ow_error,
) -> i32 {
    // SAFETY: passed on.
    unsafe {
        scalar(
            &water::enhancement::EnhancementFactor {
                source: water::enhancement::EnhancementSource::Cipm2007,
            },
            [temperature_c, pressure_kpa],
            enhancement_cipm,
            error,
        )
    }
}

/// `ow_enhancement_factor_cipm_2007` over `count` rows; a row out of range gives NaN. Strides are in bytes. Since 0.1.0.
///
/// # Safety
/// The rules for pointers at the top of the header.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ow_enhancement_factor_cipm_2007_array(
    count: usize,
    temperature_c: *const f64,
    temperature_c_stride: isize,
    pressure_kpa: *const f64,
    pressure_kpa_stride: isize,
    enhancement_cipm: *mut f64,
    enhancement_cipm_stride: isize,
    error: *mut ow_error,
) -> i32 {
    // SAFETY: passed on.
    unsafe {
        array(
            "enhancement_factor_cipm_2007",
            count,
            [(temperature_c, temperature_c_stride), (pressure_kpa, pressure_kpa_stride)],
            (enhancement_cipm, enhancement_cipm_stride),
            error,
        )
    }
}

/// Vapour pressure of water in air in kPa.
///
/// temperature_c: temperature, 0 to 100 degC (liquid water at atmospheric pressure).
/// pressure_kpa: pressure at the place, 40 to 120 kPa (pressures from sea level to the highest schools).
/// Source: Greenspan, J. Res. Natl. Bur. Stand. 80A (1976) 41.
/// Since 0.1.0.
///
/// # Safety
/// The rules for pointers at the top of the header.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ow_vapour_pressure_in_air(
    temperature_c: f64,
    pressure_kpa: f64,
    moist_vapour_pressure_kpa: *mut f64,
    error: *mut ow_error,
) -> i32 {
    // SAFETY: passed on.
    unsafe {
        scalar(
            &water::enhancement::VapourPressureInAir {
                source: water::enhancement::EnhancementSource::Greenspan1976,
            },
            [temperature_c, pressure_kpa],
            moist_vapour_pressure_kpa,
            error,
        )
    }
}

/// `ow_vapour_pressure_in_air` over `count` rows; a row out of range gives NaN. Strides are in bytes. Since 0.1.0.
///
/// # Safety
/// The rules for pointers at the top of the header.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ow_vapour_pressure_in_air_array(
    count: usize,
    temperature_c: *const f64,
    temperature_c_stride: isize,
    pressure_kpa: *const f64,
    pressure_kpa_stride: isize,
    moist_vapour_pressure_kpa: *mut f64,
    moist_vapour_pressure_kpa_stride: isize,
    error: *mut ow_error,
) -> i32 {
    // SAFETY: passed on.
    unsafe {
        array(
            "vapour_pressure_in_air",
            count,
            [(temperature_c, temperature_c_stride), (pressure_kpa, pressure_kpa_stride)],
            (moist_vapour_pressure_kpa, moist_vapour_pressure_kpa_stride),
            error,
        )
    }
}

/// Ionisation of water, -log10 of the molal constant.
///
/// temperature_c: temperature, 0 to 100 degC (liquid water at atmospheric pressure).
/// Source: IAPWS R11-24, Release on the ionization constant of H2O (edition from memory), after Arcis et al.,
///   J. Phys. Chem. Ref. Data 49 (2020) 033103.
/// Since 0.1.0.
///
/// # Safety
/// The rules for pointers at the top of the header.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ow_pkw(temperature_c: f64, pkw: *mut f64, error: *mut ow_error) -> i32 {
    // SAFETY: passed on.
    unsafe { scalar(&water::ionisation::Pkw, [temperature_c], pkw, error) }
}

/// `ow_pkw` over `count` rows; a row out of range gives NaN. Strides are in bytes. Since 0.1.0.
///
/// # Safety
/// The rules for pointers at the top of the header.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ow_pkw_array(
    count: usize,
    temperature_c: *const f64,
    temperature_c_stride: isize,
    pkw: *mut f64,
    pkw_stride: isize,
    error: *mut ow_error,
) -> i32 {
    // SAFETY: passed on.
    unsafe { array("pkw", count, [(temperature_c, temperature_c_stride)], (pkw, pkw_stride), error) }
}
