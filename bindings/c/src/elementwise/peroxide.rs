//! Hydrogen peroxide: strength, dilution, assay, heat, density.
//! Written by `cargo run -p overwater-c --example generate` from the catalogue of the core.

#![allow(clippy::too_many_arguments)] // Each column has its stride.

use overwater::peroxide;

use crate::array::array;
use crate::error::ow_error;
use crate::scalar::scalar;

/// Volume strength in vol.
///
/// concentration_mol_per_dm3: concentration of peroxide, 0.005 to 14 mol/dm3 (stronger than about 40 % by
///   mass is not handled in schools).
/// molar_volume_dm3_per_mol: molar volume of a gas, 20 to 30 dm3/mol (room conditions anywhere).
/// Source: follows from definitions.
/// Since 0.1.0.
///
/// # Safety
/// The rules for pointers at the top of the header.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ow_volume_strength(
    concentration_mol_per_dm3: f64,
    molar_volume_dm3_per_mol: f64,
    volume_strength_vol: *mut f64,
    error: *mut ow_error,
) -> i32 {
    // SAFETY: passed on.
    unsafe {
        scalar(
            &peroxide::strength::VolumesFromConcentration,
            [concentration_mol_per_dm3, molar_volume_dm3_per_mol],
            volume_strength_vol,
            error,
        )
    }
}

/// `ow_volume_strength` over `count` rows; a row out of range gives NaN. Strides are in bytes. Since 0.1.0.
///
/// # Safety
/// The rules for pointers at the top of the header.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ow_volume_strength_array(
    count: usize,
    concentration_mol_per_dm3: *const f64,
    concentration_mol_per_dm3_stride: isize,
    molar_volume_dm3_per_mol: *const f64,
    molar_volume_dm3_per_mol_stride: isize,
    volume_strength_vol: *mut f64,
    volume_strength_vol_stride: isize,
    error: *mut ow_error,
) -> i32 {
    // SAFETY: passed on.
    unsafe {
        array(
            "volume_strength",
            count,
            [
                (concentration_mol_per_dm3, concentration_mol_per_dm3_stride),
                (molar_volume_dm3_per_mol, molar_volume_dm3_per_mol_stride),
            ],
            (volume_strength_vol, volume_strength_vol_stride),
            error,
        )
    }
}

/// Concentration of peroxide in mol/dm3.
///
/// volume_strength_vol: volume strength, 0.1 to 150 vol (stronger than about 40 % by mass is not handled in
///   schools).
/// molar_volume_dm3_per_mol: molar volume of a gas, 20 to 30 dm3/mol (room conditions anywhere).
/// Source: definition of volume strength with 2 H2O2 = 2 H2O + O2.
/// Since 0.1.0.
///
/// # Safety
/// The rules for pointers at the top of the header.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ow_peroxide_concentration(
    volume_strength_vol: f64,
    molar_volume_dm3_per_mol: f64,
    concentration_mol_per_dm3: *mut f64,
    error: *mut ow_error,
) -> i32 {
    // SAFETY: passed on.
    unsafe {
        scalar(
            &peroxide::strength::ConcentrationFromVolumes,
            [volume_strength_vol, molar_volume_dm3_per_mol],
            concentration_mol_per_dm3,
            error,
        )
    }
}

/// `ow_peroxide_concentration` over `count` rows; a row out of range gives NaN. Strides are in bytes. Since 0.1.0.
///
/// # Safety
/// The rules for pointers at the top of the header.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ow_peroxide_concentration_array(
    count: usize,
    volume_strength_vol: *const f64,
    volume_strength_vol_stride: isize,
    molar_volume_dm3_per_mol: *const f64,
    molar_volume_dm3_per_mol_stride: isize,
    concentration_mol_per_dm3: *mut f64,
    concentration_mol_per_dm3_stride: isize,
    error: *mut ow_error,
) -> i32 {
    // SAFETY: passed on.
    unsafe {
        array(
            "peroxide_concentration",
            count,
            [
                (volume_strength_vol, volume_strength_vol_stride),
                (molar_volume_dm3_per_mol, molar_volume_dm3_per_mol_stride),
            ],
            (concentration_mol_per_dm3, concentration_mol_per_dm3_stride),
            error,
        )
    }
}

/// Volume of stock to measure in cm3.
///
/// stock_mol_per_dm3: concentration of the stock, 0.005 to 14 mol/dm3 (stronger than about 40 % by mass is
///   not handled in schools).
/// wanted_mol_per_dm3: concentration wanted, 0.005 to 14 mol/dm3 (stronger than about 40 % by mass is not
///   handled in schools).
/// made_up_to_cm3: volume made up to, 0.05 to 10000 cm3 (what school glassware and a room can hold).
/// Source: conservation of the amount of solute.
/// Since 0.1.0.
///
/// # Safety
/// The rules for pointers at the top of the header.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ow_stock_volume(
    stock_mol_per_dm3: f64,
    wanted_mol_per_dm3: f64,
    made_up_to_cm3: f64,
    stock_volume_cm3: *mut f64,
    error: *mut ow_error,
) -> i32 {
    // SAFETY: passed on.
    unsafe {
        scalar(
            &peroxide::dilution::StockVolume,
            [stock_mol_per_dm3, wanted_mol_per_dm3, made_up_to_cm3],
            stock_volume_cm3,
            error,
        )
    }
}

/// `ow_stock_volume` over `count` rows; a row out of range gives NaN. Strides are in bytes. Since 0.1.0.
///
/// # Safety
/// The rules for pointers at the top of the header.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ow_stock_volume_array(
    count: usize,
    stock_mol_per_dm3: *const f64,
    stock_mol_per_dm3_stride: isize,
    wanted_mol_per_dm3: *const f64,
    wanted_mol_per_dm3_stride: isize,
    made_up_to_cm3: *const f64,
    made_up_to_cm3_stride: isize,
    stock_volume_cm3: *mut f64,
    stock_volume_cm3_stride: isize,
    error: *mut ow_error,
) -> i32 {
    // SAFETY: passed on.
    unsafe {
        array(
            "stock_volume",
            count,
            [
                (stock_mol_per_dm3, stock_mol_per_dm3_stride),
                (wanted_mol_per_dm3, wanted_mol_per_dm3_stride),
                (made_up_to_cm3, made_up_to_cm3_stride),
            ],
            (stock_volume_cm3, stock_volume_cm3_stride),
            error,
        )
    }
}

/// Concentration of peroxide in mol/dm3.
///
/// titre_cm3: titre, 0.05 to 100 cm3 (one reading of a burette to two fillings of it).
/// permanganate_mol_per_dm3: concentration of permanganate, 0.0001 to 0.4 mol/dm3 (up to a saturated
///   solution).
/// sample_cm3: volume of stock taken, 0.05 to 1000 cm3 (what school glassware and a room can hold).
/// made_up_to_cm3: volume made up to, 0.05 to 10000 cm3 (what school glassware and a room can hold).
/// aliquot_cm3: volume titrated, 0.05 to 1000 cm3 (what school glassware and a room can hold).
/// Source: definition of volume strength with 2 H2O2 = 2 H2O + O2.
/// Since 0.1.0.
///
/// # Safety
/// The rules for pointers at the top of the header.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ow_assayed_concentration(
    titre_cm3: f64,
    permanganate_mol_per_dm3: f64,
    sample_cm3: f64,
    made_up_to_cm3: f64,
    aliquot_cm3: f64,
    concentration_mol_per_dm3: *mut f64,
    error: *mut ow_error,
) -> i32 {
    // SAFETY: passed on.
    unsafe {
        scalar(
            &peroxide::assay::AssayedConcentration,
            [titre_cm3, permanganate_mol_per_dm3, sample_cm3, made_up_to_cm3, aliquot_cm3],
            concentration_mol_per_dm3,
            error,
        )
    }
}

/// `ow_assayed_concentration` over `count` rows; a row out of range gives NaN. Strides are in bytes. Since 0.1.0.
///
/// # Safety
/// The rules for pointers at the top of the header.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ow_assayed_concentration_array(
    count: usize,
    titre_cm3: *const f64,
    titre_cm3_stride: isize,
    permanganate_mol_per_dm3: *const f64,
    permanganate_mol_per_dm3_stride: isize,
    sample_cm3: *const f64,
    sample_cm3_stride: isize,
    made_up_to_cm3: *const f64,
    made_up_to_cm3_stride: isize,
    aliquot_cm3: *const f64,
    aliquot_cm3_stride: isize,
    concentration_mol_per_dm3: *mut f64,
    concentration_mol_per_dm3_stride: isize,
    error: *mut ow_error,
) -> i32 {
    // SAFETY: passed on.
    unsafe {
        array(
            "assayed_concentration",
            count,
            [
                (titre_cm3, titre_cm3_stride),
                (permanganate_mol_per_dm3, permanganate_mol_per_dm3_stride),
                (sample_cm3, sample_cm3_stride),
                (made_up_to_cm3, made_up_to_cm3_stride),
                (aliquot_cm3, aliquot_cm3_stride),
            ],
            (concentration_mol_per_dm3, concentration_mol_per_dm3_stride),
            error,
        )
    }
}

/// Titre in cm3.
///
/// concentration_mol_per_dm3: concentration of peroxide, 0.005 to 14 mol/dm3 (stronger than about 40 % by
///   mass is not handled in schools).
/// permanganate_mol_per_dm3: concentration of permanganate, 0.0001 to 0.4 mol/dm3 (up to a saturated
///   solution).
/// sample_cm3: volume of stock taken, 0.05 to 1000 cm3 (what school glassware and a room can hold).
/// made_up_to_cm3: volume made up to, 0.05 to 10000 cm3 (what school glassware and a room can hold).
/// aliquot_cm3: volume titrated, 0.05 to 1000 cm3 (what school glassware and a room can hold).
/// Source: follows from definitions.
/// Since 0.1.0.
///
/// # Safety
/// The rules for pointers at the top of the header.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ow_expected_titre(
    concentration_mol_per_dm3: f64,
    permanganate_mol_per_dm3: f64,
    sample_cm3: f64,
    made_up_to_cm3: f64,
    aliquot_cm3: f64,
    titre_cm3: *mut f64,
    error: *mut ow_error,
) -> i32 {
    // SAFETY: passed on.
    unsafe {
        scalar(
            &peroxide::assay::ExpectedTitre,
            [concentration_mol_per_dm3, permanganate_mol_per_dm3, sample_cm3, made_up_to_cm3, aliquot_cm3],
            titre_cm3,
            error,
        )
    }
}

/// `ow_expected_titre` over `count` rows; a row out of range gives NaN. Strides are in bytes. Since 0.1.0.
///
/// # Safety
/// The rules for pointers at the top of the header.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ow_expected_titre_array(
    count: usize,
    concentration_mol_per_dm3: *const f64,
    concentration_mol_per_dm3_stride: isize,
    permanganate_mol_per_dm3: *const f64,
    permanganate_mol_per_dm3_stride: isize,
    sample_cm3: *const f64,
    sample_cm3_stride: isize,
    made_up_to_cm3: *const f64,
    made_up_to_cm3_stride: isize,
    aliquot_cm3: *const f64,
    aliquot_cm3_stride: isize,
    titre_cm3: *mut f64,
    titre_cm3_stride: isize,
    error: *mut ow_error,
) -> i32 {
    // SAFETY: passed on.
    unsafe {
        array(
            "expected_titre",
            count,
            [
                (concentration_mol_per_dm3, concentration_mol_per_dm3_stride),
                (permanganate_mol_per_dm3, permanganate_mol_per_dm3_stride),
                (sample_cm3, sample_cm3_stride),
                (made_up_to_cm3, made_up_to_cm3_stride),
                (aliquot_cm3, aliquot_cm3_stride),
            ],
            (titre_cm3, titre_cm3_stride),
            error,
        )
    }
}

/// Adiabatic temperature rise in K.
///
/// concentration_mol_per_dm3: concentration of peroxide, 0.005 to 14 mol/dm3 (stronger than about 40 % by
///   mass is not handled in schools).
/// sample_cm3: volume of stock taken, 0.05 to 1000 cm3 (what school glassware and a room can hold).
/// liquid_cm3: volume of liquid, 0 to 100000 cm3 (what school glassware and a room can hold).
/// Source: first law: all heat stays in the liquid.
/// Since 0.1.0.
///
/// # Safety
/// The rules for pointers at the top of the header.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ow_adiabatic_rise(
    concentration_mol_per_dm3: f64,
    sample_cm3: f64,
    liquid_cm3: f64,
    temperature_rise_k: *mut f64,
    error: *mut ow_error,
) -> i32 {
    // SAFETY: passed on.
    unsafe {
        scalar(
            &peroxide::heat::AdiabaticRise,
            [concentration_mol_per_dm3, sample_cm3, liquid_cm3],
            temperature_rise_k,
            error,
        )
    }
}

/// `ow_adiabatic_rise` over `count` rows; a row out of range gives NaN. Strides are in bytes. Since 0.1.0.
///
/// # Safety
/// The rules for pointers at the top of the header.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ow_adiabatic_rise_array(
    count: usize,
    concentration_mol_per_dm3: *const f64,
    concentration_mol_per_dm3_stride: isize,
    sample_cm3: *const f64,
    sample_cm3_stride: isize,
    liquid_cm3: *const f64,
    liquid_cm3_stride: isize,
    temperature_rise_k: *mut f64,
    temperature_rise_k_stride: isize,
    error: *mut ow_error,
) -> i32 {
    // SAFETY: passed on.
    unsafe {
        array(
            "adiabatic_rise",
            count,
            [
                (concentration_mol_per_dm3, concentration_mol_per_dm3_stride),
                (sample_cm3, sample_cm3_stride),
                (liquid_cm3, liquid_cm3_stride),
            ],
            (temperature_rise_k, temperature_rise_k_stride),
            error,
        )
    }
}

/// Density of the peroxide solution, computed in g/cm3.
///
/// percent_w_w: grams of peroxide in 100 g, 0.02 to 40 % (stronger than about 40 % by mass is not handled in
///   schools).
/// temperature_c: temperature, 0 to 96 degC (the range of the measurements).
/// Uncertainty of the relation: 0.2 %, the largest difference from the older tables below 90 % by mass.
/// Source: Laliberte, J. Chem. Eng. Data 54 (2009) 1725: density of H2O2 solutions, 0 to 96 degC, mass
///   fraction 0 to 0.996, coefficients as carried by chemicals 1.5.2.
/// Since 0.1.0.
///
/// # Safety
/// The rules for pointers at the top of the header.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ow_peroxide_density(
    percent_w_w: f64,
    temperature_c: f64,
    peroxide_density_g_per_cm3: *mut f64,
    error: *mut ow_error,
) -> i32 {
    // SAFETY: passed on.
    unsafe {
        scalar(
            &peroxide::density::PeroxideDensity,
            [percent_w_w, temperature_c],
            peroxide_density_g_per_cm3,
            error,
        )
    }
}

/// `ow_peroxide_density` over `count` rows; a row out of range gives NaN. Strides are in bytes. Since 0.1.0.
///
/// # Safety
/// The rules for pointers at the top of the header.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ow_peroxide_density_array(
    count: usize,
    percent_w_w: *const f64,
    percent_w_w_stride: isize,
    temperature_c: *const f64,
    temperature_c_stride: isize,
    peroxide_density_g_per_cm3: *mut f64,
    peroxide_density_g_per_cm3_stride: isize,
    error: *mut ow_error,
) -> i32 {
    // SAFETY: passed on.
    unsafe {
        array(
            "peroxide_density",
            count,
            [(percent_w_w, percent_w_w_stride), (temperature_c, temperature_c_stride)],
            (peroxide_density_g_per_cm3, peroxide_density_g_per_cm3_stride),
            error,
        )
    }
}

/// Concentration of peroxide in mol/dm3.
///
/// percent_w_w: grams of peroxide in 100 g, 0.02 to 40 % (stronger than about 40 % by mass is not handled in
///   schools).
/// temperature_c: temperature, 0 to 96 degC (the range of the measurements).
/// Source: definition of volume strength with 2 H2O2 = 2 H2O + O2.
/// Since 0.1.0.
///
/// # Safety
/// The rules for pointers at the top of the header.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ow_concentration_from_mass(
    percent_w_w: f64,
    temperature_c: f64,
    concentration_mol_per_dm3: *mut f64,
    error: *mut ow_error,
) -> i32 {
    // SAFETY: passed on.
    unsafe {
        scalar(
            &peroxide::density::ConcentrationFromMass,
            [percent_w_w, temperature_c],
            concentration_mol_per_dm3,
            error,
        )
    }
}

/// `ow_concentration_from_mass` over `count` rows; a row out of range gives NaN. Strides are in bytes. Since 0.1.0.
///
/// # Safety
/// The rules for pointers at the top of the header.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ow_concentration_from_mass_array(
    count: usize,
    percent_w_w: *const f64,
    percent_w_w_stride: isize,
    temperature_c: *const f64,
    temperature_c_stride: isize,
    concentration_mol_per_dm3: *mut f64,
    concentration_mol_per_dm3_stride: isize,
    error: *mut ow_error,
) -> i32 {
    // SAFETY: passed on.
    unsafe {
        array(
            "concentration_from_mass",
            count,
            [(percent_w_w, percent_w_w_stride), (temperature_c, temperature_c_stride)],
            (concentration_mol_per_dm3, concentration_mol_per_dm3_stride),
            error,
        )
    }
}

/// Grams of peroxide in 100 g in %.
///
/// concentration_mol_per_dm3: concentration of peroxide, 0.005 to 14 mol/dm3 (stronger than about 40 % by
///   mass is not handled in schools).
/// temperature_c: temperature, 0 to 96 degC (the range of the measurements).
/// Source: follows from definitions.
/// Since 0.1.0.
///
/// # Safety
/// The rules for pointers at the top of the header.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ow_mass_from_concentration(
    concentration_mol_per_dm3: f64,
    temperature_c: f64,
    percent_by_mass_percent: *mut f64,
    error: *mut ow_error,
) -> i32 {
    // SAFETY: passed on.
    unsafe {
        scalar(
            &peroxide::density::MassFromConcentration,
            [concentration_mol_per_dm3, temperature_c],
            percent_by_mass_percent,
            error,
        )
    }
}

/// `ow_mass_from_concentration` over `count` rows; a row out of range gives NaN. Strides are in bytes. Since 0.1.0.
///
/// # Safety
/// The rules for pointers at the top of the header.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ow_mass_from_concentration_array(
    count: usize,
    concentration_mol_per_dm3: *const f64,
    concentration_mol_per_dm3_stride: isize,
    temperature_c: *const f64,
    temperature_c_stride: isize,
    percent_by_mass_percent: *mut f64,
    percent_by_mass_percent_stride: isize,
    error: *mut ow_error,
) -> i32 {
    // SAFETY: passed on.
    unsafe {
        array(
            "mass_from_concentration",
            count,
            [
                (concentration_mol_per_dm3, concentration_mol_per_dm3_stride),
                (temperature_c, temperature_c_stride),
            ],
            (percent_by_mass_percent, percent_by_mass_percent_stride),
            error,
        )
    }
}
