//! The vapour pressure of water and of ice.
//! Written by `cargo run -p overwater-c --example generate` from the catalogue of the core.

#![allow(clippy::too_many_arguments)] // Each column has its stride.

use overwater::water;

use crate::array::array;
use crate::error::ow_error;
use crate::scalar::scalar;

/// Vapour pressure of water in kPa.
///
/// temperature_c: temperature, 0 to 100 degC (liquid water at atmospheric pressure).
/// Uncertainty of the relation: 0.02 % up to 373 K, from memory.
/// Source: IAPWS SR1-86(1992), saturation properties of ordinary water; Wagner and Pruss, J. Phys. Chem. Ref.
///   Data 22 (1993) 783, equation 1.
/// Since 0.1.0.
///
/// # Safety
/// The rules for pointers at the top of the header.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ow_vapour_pressure(
    temperature_c: f64,
    vapour_pressure_kpa: *mut f64,
    error: *mut ow_error,
) -> i32 {
    // SAFETY: passed on.
    unsafe {
        scalar(
            &water::vapour::VapourPressure { supercooled: false },
            [temperature_c],
            vapour_pressure_kpa,
            error,
        )
    }
}

/// `ow_vapour_pressure` over `count` rows; a row out of range gives NaN. Strides are in bytes. Since 0.1.0.
///
/// # Safety
/// The rules for pointers at the top of the header.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ow_vapour_pressure_array(
    count: usize,
    temperature_c: *const f64,
    temperature_c_stride: isize,
    vapour_pressure_kpa: *mut f64,
    vapour_pressure_kpa_stride: isize,
    error: *mut ow_error,
) -> i32 {
    // SAFETY: passed on.
    unsafe {
        array(
            "vapour_pressure",
            count,
            [(temperature_c, temperature_c_stride)],
            (vapour_pressure_kpa, vapour_pressure_kpa_stride),
            error,
        )
    }
}

/// Vapour pressure of water, CIPM in kPa.
///
/// temperature_c: temperature, 5 to 30 degC (range of CIPM-2007).
/// Source: CIPM-2007: Picard, Davis, Glaeser and Fujii, Metrologia 45 (2008) 149, appendix A1, from memory.
/// Since 0.1.0.
///
/// # Safety
/// The rules for pointers at the top of the header.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ow_vapour_pressure_cipm_2007(
    temperature_c: f64,
    vapour_pressure_cipm_kpa: *mut f64,
    error: *mut ow_error,
) -> i32 {
    // SAFETY: passed on.
    unsafe {
        scalar(
            &water::vapour::VapourPressureFrom { source: water::vapour::VapourSource::Cipm2007 },
            [temperature_c],
            vapour_pressure_cipm_kpa,
            error,
        )
    }
}

/// `ow_vapour_pressure_cipm_2007` over `count` rows; a row out of range gives NaN. Strides are in bytes. Since 0.1.0.
///
/// # Safety
/// The rules for pointers at the top of the header.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ow_vapour_pressure_cipm_2007_array(
    count: usize,
    temperature_c: *const f64,
    temperature_c_stride: isize,
    vapour_pressure_cipm_kpa: *mut f64,
    vapour_pressure_cipm_kpa_stride: isize,
    error: *mut ow_error,
) -> i32 {
    // SAFETY: passed on.
    unsafe {
        array(
            "vapour_pressure_cipm_2007",
            count,
            [(temperature_c, temperature_c_stride)],
            (vapour_pressure_cipm_kpa, vapour_pressure_cipm_kpa_stride),
            error,
        )
    }
}

/// Vapour pressure of water, Hyland-Wexler in kPa.
///
/// temperature_c: temperature, 0 to 100 degC (liquid water at atmospheric pressure).
/// Source: Hyland and Wexler, ASHRAE Trans. 89(2A) (1983) 500; ASHRAE Handbook Fundamentals, chapter 1,
///   equation 6.
/// Since 0.1.0.
///
/// # Safety
/// The rules for pointers at the top of the header.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ow_vapour_pressure_hyland_wexler_1983(
    temperature_c: f64,
    vapour_pressure_hyland_wexler_kpa: *mut f64,
    error: *mut ow_error,
) -> i32 {
    // SAFETY: passed on.
    unsafe {
        scalar(
            &water::vapour::VapourPressureFrom { source: water::vapour::VapourSource::HylandWexler1983 },
            [temperature_c],
            vapour_pressure_hyland_wexler_kpa,
            error,
        )
    }
}

/// `ow_vapour_pressure_hyland_wexler_1983` over `count` rows; a row out of range gives NaN. Strides are in bytes. Since 0.1.0.
///
/// # Safety
/// The rules for pointers at the top of the header.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ow_vapour_pressure_hyland_wexler_1983_array(
    count: usize,
    temperature_c: *const f64,
    temperature_c_stride: isize,
    vapour_pressure_hyland_wexler_kpa: *mut f64,
    vapour_pressure_hyland_wexler_kpa_stride: isize,
    error: *mut ow_error,
) -> i32 {
    // SAFETY: passed on.
    unsafe {
        array(
            "vapour_pressure_hyland_wexler_1983",
            count,
            [(temperature_c, temperature_c_stride)],
            (vapour_pressure_hyland_wexler_kpa, vapour_pressure_hyland_wexler_kpa_stride),
            error,
        )
    }
}

/// Vapour pressure of water, Buck 1981 in kPa.
///
/// temperature_c: temperature, 0 to 50 degC (range of Buck's equations).
/// Source: Buck, J. Appl. Meteorol. 20 (1981) 1527, from memory.
/// Since 0.1.0.
///
/// # Safety
/// The rules for pointers at the top of the header.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ow_vapour_pressure_buck_1981(
    temperature_c: f64,
    vapour_pressure_buck_1981_kpa: *mut f64,
    error: *mut ow_error,
) -> i32 {
    // SAFETY: passed on.
    unsafe {
        scalar(
            &water::vapour::VapourPressureFrom { source: water::vapour::VapourSource::Buck1981 },
            [temperature_c],
            vapour_pressure_buck_1981_kpa,
            error,
        )
    }
}

/// `ow_vapour_pressure_buck_1981` over `count` rows; a row out of range gives NaN. Strides are in bytes. Since 0.1.0.
///
/// # Safety
/// The rules for pointers at the top of the header.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ow_vapour_pressure_buck_1981_array(
    count: usize,
    temperature_c: *const f64,
    temperature_c_stride: isize,
    vapour_pressure_buck_1981_kpa: *mut f64,
    vapour_pressure_buck_1981_kpa_stride: isize,
    error: *mut ow_error,
) -> i32 {
    // SAFETY: passed on.
    unsafe {
        array(
            "vapour_pressure_buck_1981",
            count,
            [(temperature_c, temperature_c_stride)],
            (vapour_pressure_buck_1981_kpa, vapour_pressure_buck_1981_kpa_stride),
            error,
        )
    }
}

/// Vapour pressure of water, Buck 1996 in kPa.
///
/// temperature_c: temperature, 0 to 50 degC (range of Buck's equations).
/// Source: Buck Research CR-1A user manual, appendix 1 (revision of 1996).
/// Since 0.1.0.
///
/// # Safety
/// The rules for pointers at the top of the header.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ow_vapour_pressure_buck_1996(
    temperature_c: f64,
    vapour_pressure_buck_1996_kpa: *mut f64,
    error: *mut ow_error,
) -> i32 {
    // SAFETY: passed on.
    unsafe {
        scalar(
            &water::vapour::VapourPressureFrom { source: water::vapour::VapourSource::Buck1996 },
            [temperature_c],
            vapour_pressure_buck_1996_kpa,
            error,
        )
    }
}

/// `ow_vapour_pressure_buck_1996` over `count` rows; a row out of range gives NaN. Strides are in bytes. Since 0.1.0.
///
/// # Safety
/// The rules for pointers at the top of the header.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ow_vapour_pressure_buck_1996_array(
    count: usize,
    temperature_c: *const f64,
    temperature_c_stride: isize,
    vapour_pressure_buck_1996_kpa: *mut f64,
    vapour_pressure_buck_1996_kpa_stride: isize,
    error: *mut ow_error,
) -> i32 {
    // SAFETY: passed on.
    unsafe {
        array(
            "vapour_pressure_buck_1996",
            count,
            [(temperature_c, temperature_c_stride)],
            (vapour_pressure_buck_1996_kpa, vapour_pressure_buck_1996_kpa_stride),
            error,
        )
    }
}

/// Vapour pressure of water, Magnus in kPa.
///
/// temperature_c: temperature, 0 to 60 degC (range of the Magnus form over water).
/// Source: WMO-No. 8, guide to instruments and methods of observation, annex 4.B, from memory.
/// Since 0.1.0.
///
/// # Safety
/// The rules for pointers at the top of the header.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ow_vapour_pressure_magnus_wmo(
    temperature_c: f64,
    vapour_pressure_magnus_kpa: *mut f64,
    error: *mut ow_error,
) -> i32 {
    // SAFETY: passed on.
    unsafe {
        scalar(
            &water::vapour::VapourPressureFrom { source: water::vapour::VapourSource::MagnusWmo },
            [temperature_c],
            vapour_pressure_magnus_kpa,
            error,
        )
    }
}

/// `ow_vapour_pressure_magnus_wmo` over `count` rows; a row out of range gives NaN. Strides are in bytes. Since 0.1.0.
///
/// # Safety
/// The rules for pointers at the top of the header.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ow_vapour_pressure_magnus_wmo_array(
    count: usize,
    temperature_c: *const f64,
    temperature_c_stride: isize,
    vapour_pressure_magnus_kpa: *mut f64,
    vapour_pressure_magnus_kpa_stride: isize,
    error: *mut ow_error,
) -> i32 {
    // SAFETY: passed on.
    unsafe {
        array(
            "vapour_pressure_magnus_wmo",
            count,
            [(temperature_c, temperature_c_stride)],
            (vapour_pressure_magnus_kpa, vapour_pressure_magnus_kpa_stride),
            error,
        )
    }
}

/// Vapour pressure of water, Antoine in kPa.
///
/// temperature_c: temperature, 1 to 100 degC (range of the Antoine equation).
/// Source: Antoine equation for water, 1 to 100 degC, constants as commonly quoted.
/// Since 0.1.0.
///
/// # Safety
/// The rules for pointers at the top of the header.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ow_vapour_pressure_antoine(
    temperature_c: f64,
    vapour_pressure_antoine_kpa: *mut f64,
    error: *mut ow_error,
) -> i32 {
    // SAFETY: passed on.
    unsafe {
        scalar(
            &water::vapour::VapourPressureFrom { source: water::vapour::VapourSource::Antoine },
            [temperature_c],
            vapour_pressure_antoine_kpa,
            error,
        )
    }
}

/// `ow_vapour_pressure_antoine` over `count` rows; a row out of range gives NaN. Strides are in bytes. Since 0.1.0.
///
/// # Safety
/// The rules for pointers at the top of the header.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ow_vapour_pressure_antoine_array(
    count: usize,
    temperature_c: *const f64,
    temperature_c_stride: isize,
    vapour_pressure_antoine_kpa: *mut f64,
    vapour_pressure_antoine_kpa_stride: isize,
    error: *mut ow_error,
) -> i32 {
    // SAFETY: passed on.
    unsafe {
        array(
            "vapour_pressure_antoine",
            count,
            [(temperature_c, temperature_c_stride)],
            (vapour_pressure_antoine_kpa, vapour_pressure_antoine_kpa_stride),
            error,
        )
    }
}

/// Vapour pressure of water, CRC in kPa.
///
/// temperature_c: temperature, 0 to 100 degC (first and last entry of the table).
/// Source: CRC Handbook of Chemistry and Physics, 73rd edition, vapor pressure of water.
/// Since 0.1.0.
///
/// # Safety
/// The rules for pointers at the top of the header.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ow_vapour_pressure_crc_1992(
    temperature_c: f64,
    vapour_pressure_crc_kpa: *mut f64,
    error: *mut ow_error,
) -> i32 {
    // SAFETY: passed on.
    unsafe {
        scalar(
            &water::vapour::VapourPressureFrom { source: water::vapour::VapourSource::Crc1992 },
            [temperature_c],
            vapour_pressure_crc_kpa,
            error,
        )
    }
}

/// `ow_vapour_pressure_crc_1992` over `count` rows; a row out of range gives NaN. Strides are in bytes. Since 0.1.0.
///
/// # Safety
/// The rules for pointers at the top of the header.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ow_vapour_pressure_crc_1992_array(
    count: usize,
    temperature_c: *const f64,
    temperature_c_stride: isize,
    vapour_pressure_crc_kpa: *mut f64,
    vapour_pressure_crc_kpa_stride: isize,
    error: *mut ow_error,
) -> i32 {
    // SAFETY: passed on.
    unsafe {
        array(
            "vapour_pressure_crc_1992",
            count,
            [(temperature_c, temperature_c_stride)],
            (vapour_pressure_crc_kpa, vapour_pressure_crc_kpa_stride),
            error,
        )
    }
}

/// Vapour pressure of water, OpenStax in kPa.
///
/// temperature_c: temperature, 0 to 100 degC (first and last entry of the table).
/// Source: OpenStax, Chemistry 2e, appendix E, water vapor pressure.
/// Since 0.1.0.
///
/// # Safety
/// The rules for pointers at the top of the header.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ow_vapour_pressure_openstax_2019(
    temperature_c: f64,
    vapour_pressure_openstax_kpa: *mut f64,
    error: *mut ow_error,
) -> i32 {
    // SAFETY: passed on.
    unsafe {
        scalar(
            &water::vapour::VapourPressureFrom { source: water::vapour::VapourSource::OpenStax2019 },
            [temperature_c],
            vapour_pressure_openstax_kpa,
            error,
        )
    }
}

/// `ow_vapour_pressure_openstax_2019` over `count` rows; a row out of range gives NaN. Strides are in bytes. Since 0.1.0.
///
/// # Safety
/// The rules for pointers at the top of the header.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ow_vapour_pressure_openstax_2019_array(
    count: usize,
    temperature_c: *const f64,
    temperature_c_stride: isize,
    vapour_pressure_openstax_kpa: *mut f64,
    vapour_pressure_openstax_kpa_stride: isize,
    error: *mut ow_error,
) -> i32 {
    // SAFETY: passed on.
    unsafe {
        array(
            "vapour_pressure_openstax_2019",
            count,
            [(temperature_c, temperature_c_stride)],
            (vapour_pressure_openstax_kpa, vapour_pressure_openstax_kpa_stride),
            error,
        )
    }
}

/// Temperature in degC.
///
/// vapour_pressure_kpa: vapour pressure of water, 0.6113 to 101.4 kPa (the vapour pressure of water from 0 to
///   100 degC).
/// Source: follows from definitions.
/// Since 0.1.0.
///
/// # Safety
/// The rules for pointers at the top of the header.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ow_saturation_temperature(
    vapour_pressure_kpa: f64,
    temperature_c: *mut f64,
    error: *mut ow_error,
) -> i32 {
    // SAFETY: passed on.
    unsafe { scalar(&water::vapour::SaturationTemperature, [vapour_pressure_kpa], temperature_c, error) }
}

/// `ow_saturation_temperature` over `count` rows; a row out of range gives NaN. Strides are in bytes. Since 0.1.0.
///
/// # Safety
/// The rules for pointers at the top of the header.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ow_saturation_temperature_array(
    count: usize,
    vapour_pressure_kpa: *const f64,
    vapour_pressure_kpa_stride: isize,
    temperature_c: *mut f64,
    temperature_c_stride: isize,
    error: *mut ow_error,
) -> i32 {
    // SAFETY: passed on.
    unsafe {
        array(
            "saturation_temperature",
            count,
            [(vapour_pressure_kpa, vapour_pressure_kpa_stride)],
            (temperature_c, temperature_c_stride),
            error,
        )
    }
}

/// Vapour pressure over ice in Pa.
///
/// temperature_c: temperature, -100 to 0 degC (ice at atmospheric pressure, well inside the range of the
///   source).
/// Source: IAPWS R14-08(2011), pressure along the melting and sublimation curves, equation 6.
/// Since 0.1.0.
///
/// # Safety
/// The rules for pointers at the top of the header.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ow_sublimation_pressure(
    temperature_c: f64,
    sublimation_pressure_pa: *mut f64,
    error: *mut ow_error,
) -> i32 {
    // SAFETY: passed on.
    unsafe {
        scalar(&water::vapour::ice::SublimationPressure, [temperature_c], sublimation_pressure_pa, error)
    }
}

/// `ow_sublimation_pressure` over `count` rows; a row out of range gives NaN. Strides are in bytes. Since 0.1.0.
///
/// # Safety
/// The rules for pointers at the top of the header.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ow_sublimation_pressure_array(
    count: usize,
    temperature_c: *const f64,
    temperature_c_stride: isize,
    sublimation_pressure_pa: *mut f64,
    sublimation_pressure_pa_stride: isize,
    error: *mut ow_error,
) -> i32 {
    // SAFETY: passed on.
    unsafe {
        array(
            "sublimation_pressure",
            count,
            [(temperature_c, temperature_c_stride)],
            (sublimation_pressure_pa, sublimation_pressure_pa_stride),
            error,
        )
    }
}
