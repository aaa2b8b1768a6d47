//! Gases, each by its number.
//! Written by `cargo run -p overwater-c --example generate` from the catalogue of the core.

#![allow(clippy::too_many_arguments)] // Each column has its stride.

use overwater::gas;

use crate::array::array_of_gas;
use crate::error::ow_error;
use crate::scalar::scalar_of_gas;

/// Second virial coefficient in cm3/mol.
///
/// gas: OW_GAS_... of one of oxygen, nitrogen, air, hydrogen, carbon dioxide, carbon monoxide, methane,
///   ethane, ethene, ethyne, propane, butane, dinitrogen oxide, nitrogen monoxide, sulfur dioxide, hydrogen
///   sulfide, hydrogen chloride, ammonia, chlorine, helium, argon; else OW_CANNOT_BE_MET.
/// temperature_c: temperature, 0 to 100 degC; butane: 5 to 100 degC (liquid water at atmospheric pressure).
/// Source: fit of this library to the reference equation of state of the gas, evaluated with CoolProp 8.0.0;
///   CRC Handbook of Chemistry and Physics, Virial coefficients of selected gases, after Dymond, Marsh,
///   Wilhoit and Wong, Landolt-Bornstein IV/21A (2002), as carried by chemicals 1.5.2.
/// Since 0.1.0.
///
/// # Safety
/// The rules for pointers at the top of the header.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ow_second_virial(
    gas: i32,
    temperature_c: f64,
    second_virial_cm3_per_mol: *mut f64,
    error: *mut ow_error,
) -> i32 {
    // SAFETY: passed on.
    unsafe {
        scalar_of_gas(
            gas::virial::SecondVirialCoefficient::of,
            gas,
            [temperature_c],
            second_virial_cm3_per_mol,
            error,
        )
    }
}

/// `ow_second_virial` over `count` rows; a row out of range gives NaN. Strides are in bytes. Since 0.1.0.
///
/// # Safety
/// The rules for pointers at the top of the header.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ow_second_virial_array(
    gas: i32,
    count: usize,
    temperature_c: *const f64,
    temperature_c_stride: isize,
    second_virial_cm3_per_mol: *mut f64,
    second_virial_cm3_per_mol_stride: isize,
    error: *mut ow_error,
) -> i32 {
    // SAFETY: passed on.
    unsafe {
        array_of_gas(
            gas::virial::SecondVirialCoefficient::of,
            "second_virial",
            gas,
            count,
            [(temperature_c, temperature_c_stride)],
            (second_virial_cm3_per_mol, second_virial_cm3_per_mol_stride),
            error,
        )
    }
}

/// Compressibility factor.
///
/// gas: OW_GAS_... of one of oxygen, nitrogen, air, hydrogen, carbon dioxide, carbon monoxide, methane,
///   ethane, ethene, ethyne, propane, butane, dinitrogen oxide, nitrogen monoxide, sulfur dioxide, hydrogen
///   sulfide, hydrogen chloride, ammonia, chlorine, helium, argon; else OW_CANNOT_BE_MET.
/// temperature_c: temperature, 0 to 100 degC; butane: 5 to 100 degC (liquid water at atmospheric pressure).
/// pressure_kpa: pressure at the place, 0.001 to 120 kPa (where two terms of the virial series are enough).
/// Source: virial equation of Kamerlingh Onnes, cut behind the second coefficient.
/// Since 0.1.0.
///
/// # Safety
/// The rules for pointers at the top of the header.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ow_compressibility(
    gas: i32,
    temperature_c: f64,
    pressure_kpa: f64,
    compressibility: *mut f64,
    error: *mut ow_error,
) -> i32 {
    // SAFETY: passed on.
    unsafe {
        scalar_of_gas(
            |gas| gas::virial::Compressibility::of(gas, gas::virial::Series::Density),
            gas,
            [temperature_c, pressure_kpa],
            compressibility,
            error,
        )
    }
}

/// `ow_compressibility` over `count` rows; a row out of range gives NaN. Strides are in bytes. Since 0.1.0.
///
/// # Safety
/// The rules for pointers at the top of the header.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ow_compressibility_array(
    gas: i32,
    count: usize,
    temperature_c: *const f64,
    temperature_c_stride: isize,
    pressure_kpa: *const f64,
    pressure_kpa_stride: isize,
    compressibility: *mut f64,
    compressibility_stride: isize,
    error: *mut ow_error,
) -> i32 {
    // SAFETY: passed on.
    unsafe {
        array_of_gas(
            |gas| gas::virial::Compressibility::of(gas, gas::virial::Series::Density),
            "compressibility",
            gas,
            count,
            [(temperature_c, temperature_c_stride), (pressure_kpa, pressure_kpa_stride)],
            (compressibility, compressibility_stride),
            error,
        )
    }
}

/// Molar volume of the real gas in dm3/mol.
///
/// gas: OW_GAS_... of one of oxygen, nitrogen, air, hydrogen, carbon dioxide, carbon monoxide, methane,
///   ethane, ethene, ethyne, propane, butane, dinitrogen oxide, nitrogen monoxide, sulfur dioxide, hydrogen
///   sulfide, hydrogen chloride, ammonia, chlorine, helium, argon; else OW_CANNOT_BE_MET.
/// temperature_c: temperature, 0 to 100 degC; butane: 5 to 100 degC (liquid water at atmospheric pressure).
/// pressure_kpa: pressure at the place, 0.001 to 120 kPa (where two terms of the virial series are enough).
/// Source: virial equation of Kamerlingh Onnes, cut behind the second coefficient.
/// Since 0.1.0.
///
/// # Safety
/// The rules for pointers at the top of the header.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ow_real_molar_volume(
    gas: i32,
    temperature_c: f64,
    pressure_kpa: f64,
    real_molar_volume_dm3_per_mol: *mut f64,
    error: *mut ow_error,
) -> i32 {
    // SAFETY: passed on.
    unsafe {
        scalar_of_gas(
            |gas| gas::virial::RealMolarVolume::of(gas, gas::virial::Series::Density),
            gas,
            [temperature_c, pressure_kpa],
            real_molar_volume_dm3_per_mol,
            error,
        )
    }
}

/// `ow_real_molar_volume` over `count` rows; a row out of range gives NaN. Strides are in bytes. Since 0.1.0.
///
/// # Safety
/// The rules for pointers at the top of the header.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ow_real_molar_volume_array(
    gas: i32,
    count: usize,
    temperature_c: *const f64,
    temperature_c_stride: isize,
    pressure_kpa: *const f64,
    pressure_kpa_stride: isize,
    real_molar_volume_dm3_per_mol: *mut f64,
    real_molar_volume_dm3_per_mol_stride: isize,
    error: *mut ow_error,
) -> i32 {
    // SAFETY: passed on.
    unsafe {
        array_of_gas(
            |gas| gas::virial::RealMolarVolume::of(gas, gas::virial::Series::Density),
            "real_molar_volume",
            gas,
            count,
            [(temperature_c, temperature_c_stride), (pressure_kpa, pressure_kpa_stride)],
            (real_molar_volume_dm3_per_mol, real_molar_volume_dm3_per_mol_stride),
            error,
        )
    }
}

/// Density of the gas in g/dm3.
///
/// gas: OW_GAS_... of one of oxygen, nitrogen, air, hydrogen, carbon dioxide, carbon monoxide, methane,
///   ethane, ethene, ethyne, propane, butane, dinitrogen oxide, nitrogen monoxide, sulfur dioxide, hydrogen
///   sulfide, hydrogen chloride, ammonia, chlorine, helium, argon; else OW_CANNOT_BE_MET.
/// temperature_c: temperature, 0 to 100 degC; butane: 5 to 100 degC (liquid water at atmospheric pressure).
/// pressure_kpa: pressure at the place, 0.001 to 120 kPa (where two terms of the virial series are enough).
/// Source: virial equation of Kamerlingh Onnes, cut behind the second coefficient.
/// Since 0.1.0.
///
/// # Safety
/// The rules for pointers at the top of the header.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ow_gas_density(
    gas: i32,
    temperature_c: f64,
    pressure_kpa: f64,
    gas_density_g_per_dm3: *mut f64,
    error: *mut ow_error,
) -> i32 {
    // SAFETY: passed on.
    unsafe {
        scalar_of_gas(
            |gas| gas::virial::RealDensity::of(gas, gas::virial::Series::Density),
            gas,
            [temperature_c, pressure_kpa],
            gas_density_g_per_dm3,
            error,
        )
    }
}

/// `ow_gas_density` over `count` rows; a row out of range gives NaN. Strides are in bytes. Since 0.1.0.
///
/// # Safety
/// The rules for pointers at the top of the header.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ow_gas_density_array(
    gas: i32,
    count: usize,
    temperature_c: *const f64,
    temperature_c_stride: isize,
    pressure_kpa: *const f64,
    pressure_kpa_stride: isize,
    gas_density_g_per_dm3: *mut f64,
    gas_density_g_per_dm3_stride: isize,
    error: *mut ow_error,
) -> i32 {
    // SAFETY: passed on.
    unsafe {
        array_of_gas(
            |gas| gas::virial::RealDensity::of(gas, gas::virial::Series::Density),
            "gas_density",
            gas,
            count,
            [(temperature_c, temperature_c_stride), (pressure_kpa, pressure_kpa_stride)],
            (gas_density_g_per_dm3, gas_density_g_per_dm3_stride),
            error,
        )
    }
}

/// Solubility of oxygen by Henry's law in mol/(m3 Pa).
///
/// gas: OW_GAS_... of one of oxygen, nitrogen, hydrogen, carbon dioxide, carbon monoxide, methane, ethane,
///   ethene, ethyne, propane, butane, dinitrogen oxide, nitrogen monoxide, nitrogen dioxide, sulfur dioxide,
///   hydrogen sulfide, ammonia, chlorine, ozone, helium, neon, argon, krypton, xenon, sulfur hexafluoride;
///   else OW_CANNOT_BE_MET.
/// temperature_c: temperature, 0 to 50 degC; oxygen: 0 to 60 degC; nitrogen: 4.97 to 100 degC; carbon
///   dioxide: 1.04 to 100 degC; carbon monoxide: 5 to 100 degC; methane: 2.31 to 100 degC; ethane: 2.29 to
///   100 degC; helium: 0.06 to 100 degC; neon: 0.05 to 100 degC; xenon: 0.07 to 100 degC; sulfur
///   hexafluoride: 9.99 to 100 degC; hydrogen, hydrogen sulfide: 0 to 100 degC; argon, krypton: 0.04 to 100
///   degC (the range of the measurements).
/// Source: Benson, Krause and Peterson, J. Solution Chem. 8 (1979) 655: Henry constant of oxygen (from
///   memory; IAPWS G7-04 within 1.1 %); IAPWS G7-04, Guideline on the Henry's constant and vapor-liquid
///   distribution constant for gases in H2O and D2O, equation 3 and Table 2; Fernandez-Prini, Alvarez and
///   Harvey, J. Phys. Chem. Ref. Data 32 (2003) 903; Sander, Compilation of Henry's law constants (version
///   4.0), Atmos. Chem. Phys. 15 (2015) 4399, rows of the literature reviews.
/// Since 0.1.0.
///
/// # Safety
/// The rules for pointers at the top of the header.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ow_henry_constant(
    gas: i32,
    temperature_c: f64,
    henry_constant_oxygen_mol_per_m3_pa: *mut f64,
    error: *mut ow_error,
) -> i32 {
    // SAFETY: passed on.
    unsafe {
        scalar_of_gas(
            gas::solubility::HenryConstant::of,
            gas,
            [temperature_c],
            henry_constant_oxygen_mol_per_m3_pa,
            error,
        )
    }
}

/// `ow_henry_constant` over `count` rows; a row out of range gives NaN. Strides are in bytes. Since 0.1.0.
///
/// # Safety
/// The rules for pointers at the top of the header.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ow_henry_constant_array(
    gas: i32,
    count: usize,
    temperature_c: *const f64,
    temperature_c_stride: isize,
    henry_constant_oxygen_mol_per_m3_pa: *mut f64,
    henry_constant_oxygen_mol_per_m3_pa_stride: isize,
    error: *mut ow_error,
) -> i32 {
    // SAFETY: passed on.
    unsafe {
        array_of_gas(
            gas::solubility::HenryConstant::of,
            "henry_constant",
            gas,
            count,
            [(temperature_c, temperature_c_stride)],
            (henry_constant_oxygen_mol_per_m3_pa, henry_constant_oxygen_mol_per_m3_pa_stride),
            error,
        )
    }
}

/// Volumes of gas in one volume of water (Ostwald).
///
/// gas: OW_GAS_... of one of oxygen, nitrogen, hydrogen, carbon dioxide, carbon monoxide, methane, ethane,
///   ethene, ethyne, propane, butane, dinitrogen oxide, nitrogen monoxide, nitrogen dioxide, sulfur dioxide,
///   hydrogen sulfide, ammonia, chlorine, ozone, helium, neon, argon, krypton, xenon, sulfur hexafluoride;
///   else OW_CANNOT_BE_MET.
/// temperature_c: temperature, 0 to 50 degC; oxygen: 0 to 60 degC; nitrogen: 4.97 to 100 degC; carbon
///   dioxide: 1.04 to 100 degC; carbon monoxide: 5 to 100 degC; methane: 2.31 to 100 degC; ethane: 2.29 to
///   100 degC; helium: 0.06 to 100 degC; neon: 0.05 to 100 degC; xenon: 0.07 to 100 degC; sulfur
///   hexafluoride: 9.99 to 100 degC; hydrogen, hydrogen sulfide: 0 to 100 degC; argon, krypton: 0.04 to 100
///   degC (the range of the measurements).
/// Source: Henry's law, with the solubility written as a volume of gas.
/// Since 0.1.0.
///
/// # Safety
/// The rules for pointers at the top of the header.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ow_ostwald_coefficient(
    gas: i32,
    temperature_c: f64,
    ostwald_coefficient: *mut f64,
    error: *mut ow_error,
) -> i32 {
    // SAFETY: passed on.
    unsafe {
        scalar_of_gas(
            gas::solubility::OstwaldCoefficient::of,
            gas,
            [temperature_c],
            ostwald_coefficient,
            error,
        )
    }
}

/// `ow_ostwald_coefficient` over `count` rows; a row out of range gives NaN. Strides are in bytes. Since 0.1.0.
///
/// # Safety
/// The rules for pointers at the top of the header.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ow_ostwald_coefficient_array(
    gas: i32,
    count: usize,
    temperature_c: *const f64,
    temperature_c_stride: isize,
    ostwald_coefficient: *mut f64,
    ostwald_coefficient_stride: isize,
    error: *mut ow_error,
) -> i32 {
    // SAFETY: passed on.
    unsafe {
        array_of_gas(
            gas::solubility::OstwaldCoefficient::of,
            "ostwald_coefficient",
            gas,
            count,
            [(temperature_c, temperature_c_stride)],
            (ostwald_coefficient, ostwald_coefficient_stride),
            error,
        )
    }
}

/// Gas lost into the water, at most in mmol.
///
/// gas: OW_GAS_... of one of oxygen, nitrogen, hydrogen, carbon dioxide, carbon monoxide, methane, ethane,
///   ethene, ethyne, propane, butane, dinitrogen oxide, nitrogen monoxide, nitrogen dioxide, sulfur dioxide,
///   hydrogen sulfide, ammonia, chlorine, ozone, helium, neon, argon, krypton, xenon, sulfur hexafluoride;
///   else OW_CANNOT_BE_MET.
/// temperature_c: temperature, 0 to 50 degC; oxygen: 0 to 60 degC; nitrogen: 4.97 to 100 degC; carbon
///   dioxide: 1.04 to 100 degC; carbon monoxide: 5 to 100 degC; methane: 2.31 to 100 degC; ethane: 2.29 to
///   100 degC; helium: 0.06 to 100 degC; neon: 0.05 to 100 degC; xenon: 0.07 to 100 degC; sulfur
///   hexafluoride: 9.99 to 100 degC; hydrogen, hydrogen sulfide: 0 to 100 degC; argon, krypton: 0.04 to 100
///   degC (the range of the measurements).
/// partial_pressure_kpa: partial pressure of the gas, 0 to 120 kPa (from none to the gas alone).
/// contact_water_cm3: volume of water in contact with the gas, 0 to 100000 cm3 (what school glassware and a
///   room can hold).
/// Source: Henry's law, with the solubility written as a volume of gas.
/// Since 0.1.0.
///
/// # Safety
/// The rules for pointers at the top of the header.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ow_dissolved_amount(
    gas: i32,
    temperature_c: f64,
    partial_pressure_kpa: f64,
    contact_water_cm3: f64,
    dissolved_amount_mmol: *mut f64,
    error: *mut ow_error,
) -> i32 {
    // SAFETY: passed on.
    unsafe {
        scalar_of_gas(
            gas::solubility::DissolvedAmount::of,
            gas,
            [temperature_c, partial_pressure_kpa, contact_water_cm3],
            dissolved_amount_mmol,
            error,
        )
    }
}

/// `ow_dissolved_amount` over `count` rows; a row out of range gives NaN. Strides are in bytes. Since 0.1.0.
///
/// # Safety
/// The rules for pointers at the top of the header.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ow_dissolved_amount_array(
    gas: i32,
    count: usize,
    temperature_c: *const f64,
    temperature_c_stride: isize,
    partial_pressure_kpa: *const f64,
    partial_pressure_kpa_stride: isize,
    contact_water_cm3: *const f64,
    contact_water_cm3_stride: isize,
    dissolved_amount_mmol: *mut f64,
    dissolved_amount_mmol_stride: isize,
    error: *mut ow_error,
) -> i32 {
    // SAFETY: passed on.
    unsafe {
        array_of_gas(
            gas::solubility::DissolvedAmount::of,
            "dissolved_amount",
            gas,
            count,
            [
                (temperature_c, temperature_c_stride),
                (partial_pressure_kpa, partial_pressure_kpa_stride),
                (contact_water_cm3, contact_water_cm3_stride),
            ],
            (dissolved_amount_mmol, dissolved_amount_mmol_stride),
            error,
        )
    }
}
