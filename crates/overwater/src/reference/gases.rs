//! The gases that are collected or burned in schools: names, molar masses, second virial coefficients.
//!
//! # Second virial coefficients
//!
//! All have the form of the handbook's table, `B = sum of a(i) (298.15 K/T - 1)^(i - 1)` in cm3/mol.
//!
//! * With a reference equation of state: the coefficients are this library's own least-squares fit (2026) to the second
//!   virial coefficient of that equation, evaluated with CoolProp 8.0.0 every 2.5 K from 273.15 to 373.15 K.
//!   `fit_difference` is the fit's largest difference from it. The handbook's own polynomials are rounded to whole
//!   cm3/mol and up to 4 cm3/mol off for carbon dioxide, which is 0.02 % of the molar volume.
//! * Nitrogen monoxide and ethyne have no such equation in that package: theirs are the handbook's polynomials, with no
//!   second source; the corresponding-states equation of Tsonopoulos (1974) lies up to 15 cm3/mol (NO, at 100 degC) and
//!   75 cm3/mol (C2H2, at 100 degC) away, 0.05 % and 0.25 % of the molar volume at 101.325 kPa.
//!
//! Nitrogen dioxide and ozone have none here: the first is a mixture with N2O4, the second decomposes.

use super::constants::constant;
use super::sources;
use crate::scalar::{Constant, Source};
use crate::units::GRAM_PER_MOLE;

/// A gas.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord)]
#[non_exhaustive]
pub enum Gas {
    /// Oxygen, O2.
    Oxygen,
    /// Nitrogen, N2.
    Nitrogen,
    /// Air, dry.
    Air,
    /// Hydrogen, H2.
    Hydrogen,
    /// Carbon dioxide, CO2.
    CarbonDioxide,
    /// Carbon monoxide, CO.
    CarbonMonoxide,
    /// Methane, CH4.
    Methane,
    /// Ethane, C2H6.
    Ethane,
    /// Ethene, C2H4.
    Ethene,
    /// Ethyne, C2H2.
    Ethyne,
    /// Propane, C3H8.
    Propane,
    /// Butane, C4H10.
    Butane,
    /// Dinitrogen oxide, N2O.
    DinitrogenOxide,
    /// Nitrogen monoxide, NO.
    NitrogenMonoxide,
    /// Nitrogen dioxide, NO2.
    NitrogenDioxide,
    /// Sulfur dioxide, SO2.
    SulfurDioxide,
    /// Hydrogen sulfide, H2S.
    HydrogenSulfide,
    /// Hydrogen chloride, HCl.
    HydrogenChloride,
    /// Ammonia, NH3.
    Ammonia,
    /// Chlorine, Cl2.
    Chlorine,
    /// Ozone, O3.
    Ozone,
    /// Helium, He.
    Helium,
    /// Neon, Ne.
    Neon,
    /// Argon, Ar.
    Argon,
    /// Krypton, Kr.
    Krypton,
    /// Xenon, Xe.
    Xenon,
    /// Sulfur hexafluoride, SF6.
    SulfurHexafluoride,
}

/// What a gas is called and what a mole of it weighs.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct GasRow {
    /// The gas.
    pub gas: Gas,
    /// Its formula; none for air.
    pub formula: Option<&'static str>,
    /// Its names; the first is the one that is printed.
    pub names: &'static [&'static str],
    /// Its molar mass from the conventional atomic weights of 2021.
    pub molar_mass: Constant,
}

const fn molar_mass(id: &'static str, text: &'static str, latex: &'static str, value: f64) -> Constant {
    constant(id, text, latex, "molar mass of the gas", &GRAM_PER_MOLE, value, &sources::CIAAW_2021)
}

/// Every gas.
pub static GASES_2021: [GasRow; 27] = [
    GasRow {
        gas: Gas::Oxygen,
        formula: Some("O2"),
        names: &["oxygen"],
        molar_mass: molar_mass("molar_mass_oxygen_2021", "M(O₂)", r"M_\mathrm{O_2}", 31.998),
    },
    GasRow {
        gas: Gas::Nitrogen,
        formula: Some("N2"),
        names: &["nitrogen"],
        molar_mass: molar_mass("molar_mass_nitrogen_2021", "M(N₂)", r"M_\mathrm{N_2}", 28.014),
    },
    GasRow {
        gas: Gas::Air,
        formula: None,
        names: &["air", "dry air"],
        molar_mass: constant(
            "molar_mass_air_2007",
            "M(air)",
            r"M_\mathrm{air}",
            "molar mass of dry air",
            &GRAM_PER_MOLE,
            28.965_46,
            &sources::CIPM_2007,
        ),
    },
    GasRow {
        gas: Gas::Hydrogen,
        formula: Some("H2"),
        names: &["hydrogen"],
        molar_mass: molar_mass("molar_mass_hydrogen_2021", "M(H₂)", r"M_\mathrm{H_2}", 2.016),
    },
    GasRow {
        gas: Gas::CarbonDioxide,
        formula: Some("CO2"),
        names: &["carbon dioxide"],
        molar_mass: molar_mass("molar_mass_carbon_dioxide_2021", "M(CO₂)", r"M_\mathrm{CO_2}", 44.009),
    },
    GasRow {
        gas: Gas::CarbonMonoxide,
        formula: Some("CO"),
        names: &["carbon monoxide"],
        molar_mass: molar_mass("molar_mass_carbon_monoxide_2021", "M(CO)", r"M_\mathrm{CO}", 28.01),
    },
    GasRow {
        gas: Gas::Methane,
        formula: Some("CH4"),
        names: &["methane", "natural gas (as methane)"],
        molar_mass: molar_mass("molar_mass_methane_2021", "M(CH₄)", r"M_\mathrm{CH_4}", 16.043),
    },
    GasRow {
        gas: Gas::Ethane,
        formula: Some("C2H6"),
        names: &["ethane"],
        molar_mass: molar_mass("molar_mass_ethane_2021", "M(C₂H₆)", r"M_\mathrm{C_2H_6}", 30.07),
    },
    GasRow {
        gas: Gas::Ethene,
        formula: Some("C2H4"),
        names: &["ethene", "ethylene"],
        molar_mass: molar_mass("molar_mass_ethene_2021", "M(C₂H₄)", r"M_\mathrm{C_2H_4}", 28.054),
    },
    GasRow {
        gas: Gas::Ethyne,
        formula: Some("C2H2"),
        names: &["ethyne", "acetylene"],
        molar_mass: molar_mass("molar_mass_ethyne_2021", "M(C₂H₂)", r"M_\mathrm{C_2H_2}", 26.038),
    },
    GasRow {
        gas: Gas::Propane,
        formula: Some("C3H8"),
        names: &["propane"],
        molar_mass: molar_mass("molar_mass_propane_2021", "M(C₃H₈)", r"M_\mathrm{C_3H_8}", 44.097),
    },
    GasRow {
        gas: Gas::Butane,
        formula: Some("C4H10"),
        names: &["butane", "n-butane"],
        molar_mass: molar_mass("molar_mass_butane_2021", "M(C₄H₁₀)", r"M_\mathrm{C_4H_10}", 58.124),
    },
    GasRow {
        gas: Gas::DinitrogenOxide,
        formula: Some("N2O"),
        names: &["dinitrogen oxide", "nitrous oxide"],
        molar_mass: molar_mass("molar_mass_dinitrogen_oxide_2021", "M(N₂O)", r"M_\mathrm{N_2O}", 44.013),
    },
    GasRow {
        gas: Gas::NitrogenMonoxide,
        formula: Some("NO"),
        names: &["nitrogen monoxide", "nitric oxide"],
        molar_mass: molar_mass("molar_mass_nitrogen_monoxide_2021", "M(NO)", r"M_\mathrm{NO}", 30.006),
    },
    GasRow {
        gas: Gas::NitrogenDioxide,
        formula: Some("NO2"),
        names: &["nitrogen dioxide"],
        molar_mass: molar_mass("molar_mass_nitrogen_dioxide_2021", "M(NO₂)", r"M_\mathrm{NO_2}", 46.005),
    },
    GasRow {
        gas: Gas::SulfurDioxide,
        formula: Some("SO2"),
        names: &["sulfur dioxide", "sulphur dioxide"],
        molar_mass: molar_mass("molar_mass_sulfur_dioxide_2021", "M(SO₂)", r"M_\mathrm{SO_2}", 64.058),
    },
    GasRow {
        gas: Gas::HydrogenSulfide,
        formula: Some("H2S"),
        names: &["hydrogen sulfide", "hydrogen sulphide"],
        molar_mass: molar_mass("molar_mass_hydrogen_sulfide_2021", "M(H₂S)", r"M_\mathrm{H_2S}", 34.076),
    },
    GasRow {
        gas: Gas::HydrogenChloride,
        formula: Some("HCl"),
        names: &["hydrogen chloride"],
        molar_mass: molar_mass("molar_mass_hydrogen_chloride_2021", "M(HCl)", r"M_\mathrm{HCl}", 36.458),
    },
    GasRow {
        gas: Gas::Ammonia,
        formula: Some("NH3"),
        names: &["ammonia"],
        molar_mass: molar_mass("molar_mass_ammonia_2021", "M(NH₃)", r"M_\mathrm{NH_3}", 17.031),
    },
    GasRow {
        gas: Gas::Chlorine,
        formula: Some("Cl2"),
        names: &["chlorine"],
        molar_mass: molar_mass("molar_mass_chlorine_2021", "M(Cl₂)", r"M_\mathrm{Cl_2}", 70.9),
    },
    GasRow {
        gas: Gas::Ozone,
        formula: Some("O3"),
        names: &["ozone"],
        molar_mass: molar_mass("molar_mass_ozone_2021", "M(O₃)", r"M_\mathrm{O_3}", 47.997),
    },
    GasRow {
        gas: Gas::Helium,
        formula: Some("He"),
        names: &["helium"],
        molar_mass: molar_mass("molar_mass_helium_2021", "M(He)", r"M_\mathrm{He}", 4.002_602),
    },
    GasRow {
        gas: Gas::Neon,
        formula: Some("Ne"),
        names: &["neon"],
        molar_mass: molar_mass("molar_mass_neon_2021", "M(Ne)", r"M_\mathrm{Ne}", 20.179_7),
    },
    GasRow {
        gas: Gas::Argon,
        formula: Some("Ar"),
        names: &["argon"],
        molar_mass: molar_mass("molar_mass_argon_2021", "M(Ar)", r"M_\mathrm{Ar}", 39.95),
    },
    GasRow {
        gas: Gas::Krypton,
        formula: Some("Kr"),
        names: &["krypton"],
        molar_mass: molar_mass("molar_mass_krypton_2021", "M(Kr)", r"M_\mathrm{Kr}", 83.798),
    },
    GasRow {
        gas: Gas::Xenon,
        formula: Some("Xe"),
        names: &["xenon"],
        molar_mass: molar_mass("molar_mass_xenon_2021", "M(Xe)", r"M_\mathrm{Xe}", 131.293),
    },
    GasRow {
        gas: Gas::SulfurHexafluoride,
        formula: Some("SF6"),
        names: &["sulfur hexafluoride"],
        molar_mass: molar_mass(
            "molar_mass_sulfur_hexafluoride_2021",
            "M(SF₆)",
            r"M_\mathrm{SF_6}",
            146.050_418_972,
        ),
    },
];

/// The second virial coefficient of a gas.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SecondVirial {
    /// The gas.
    pub gas: Gas,
    /// a1 to a6, in cm3/mol.
    pub coefficients: [f64; 6],
    /// The equation of state that was fitted, or the handbook.
    pub equation: &'static str,
    /// Who worked the equation out, or the handbook.
    pub source: &'static Source,
    /// Largest difference of the fit from B of the equation, 0 to 100 degC, in cm3/mol; none for the handbook's own.
    pub fit_difference_cm3_per_mol: Option<f64>,
    /// Largest difference of the molar volume from the equation's own, up to 120 kPa, in per cent; none for the
    /// handbook's own.
    pub molar_volume_difference_percent: Option<f64>,
    /// Largest difference between the handbook's polynomial and these coefficients, 0 to 100 degC, in cm3/mol: a
    /// measure of how well B is known, where the handbook has the gas.
    pub handbook_difference_cm3_per_mol: Option<f64>,
}

/// Every gas that has one, fitted 2026.
pub static SECOND_VIRIALS_2026: [SecondVirial; 21] = [
    SecondVirial {
        gas: Gas::Oxygen,
        coefficients: [-15.855_6, -63.168_7, -12.193_4, 0.0, 0.0, 0.0],
        equation: "Schmidt and Wagner, Fluid Phase Equilib. 19 (1985) 175; Stewart, Jacobsen and Wagner, J. Phys. Chem. Ref. Data 20 (1991) 917",
        source: &sources::COOLPROP_8,
        fit_difference_cm3_per_mol: Some(0.0027),
        molar_volume_difference_percent: Some(0.0015),
        handbook_difference_cm3_per_mol: Some(0.22),
    },
    SecondVirial {
        gas: Gas::Nitrogen,
        coefficients: [-4.908_8, -57.879_9, -10.979_7, 0.0, 0.0, 0.0],
        equation: "Span et al., J. Phys. Chem. Ref. Data 29 (2000) 1361",
        source: &sources::COOLPROP_8,
        fit_difference_cm3_per_mol: Some(0.0029),
        molar_volume_difference_percent: Some(0.001),
        handbook_difference_cm3_per_mol: Some(1.1),
    },
    SecondVirial {
        gas: Gas::Air,
        coefficients: [-8.120_8, -58.476_1, -11.009_6, 0.0, 0.0, 0.0],
        equation: "Lemmon et al., J. Phys. Chem. Ref. Data 29 (2000) 331",
        source: &sources::COOLPROP_8,
        fit_difference_cm3_per_mol: Some(0.0029),
        molar_volume_difference_percent: Some(0.0012),
        handbook_difference_cm3_per_mol: None,
    },
    SecondVirial {
        gas: Gas::Hydrogen,
        coefficients: [14.542_5, -5.916_4, -2.827_4, 0.0, 0.0, 0.0],
        equation: "Leachman et al., J. Phys. Chem. Ref. Data 38 (2009) 721",
        source: &sources::COOLPROP_8,
        fit_difference_cm3_per_mol: Some(0.0024),
        molar_volume_difference_percent: Some(0.00021),
        handbook_difference_cm3_per_mol: Some(1.6),
    },
    SecondVirial {
        gas: Gas::CarbonDioxide,
        coefficients: [-123.012_2, -282.887_9, -160.495_2, -68.959, 0.0, 0.0],
        equation: "Span and Wagner, J. Phys. Chem. Ref. Data 25 (1996) 1509",
        source: &sources::COOLPROP_8,
        fit_difference_cm3_per_mol: Some(0.0025),
        molar_volume_difference_percent: Some(0.0021),
        handbook_difference_cm3_per_mol: Some(4.2),
    },
    SecondVirial {
        gas: Gas::CarbonMonoxide,
        coefficients: [-8.873_7, -65.751_3, -11.001_4, 0.0, 0.0, 0.0],
        equation: "Lemmon and Span, J. Chem. Eng. Data 51 (2006) 785",
        source: &sources::COOLPROP_8,
        fit_difference_cm3_per_mol: Some(0.0047),
        molar_volume_difference_percent: Some(0.00077),
        handbook_difference_cm3_per_mol: Some(2.0),
    },
    SecondVirial {
        gas: Gas::Methane,
        coefficients: [-42.909_7, -113.595_3, -23.898_4, 0.0, 0.0, 0.0],
        equation: "Setzmann and Wagner, J. Phys. Chem. Ref. Data 20 (1991) 1061",
        source: &sources::COOLPROP_8,
        fit_difference_cm3_per_mol: Some(0.0002),
        molar_volume_difference_percent: Some(0.0014),
        handbook_difference_cm3_per_mol: Some(0.25),
    },
    SecondVirial {
        gas: Gas::Ethane,
        coefficients: [-184.976_5, -382.847_3, -137.047, -17.770_3, 0.0, 0.0],
        equation: "Bucker and Wagner, J. Phys. Chem. Ref. Data 35 (2006) 205",
        source: &sources::COOLPROP_8,
        fit_difference_cm3_per_mol: Some(0.0014),
        molar_volume_difference_percent: Some(0.0029),
        handbook_difference_cm3_per_mol: Some(1.6),
    },
    SecondVirial {
        gas: Gas::Ethene,
        coefficients: [-140.054_3, -294.616_6, -104.128_2, -28.548, 0.0, 0.0],
        equation: "Smukala, Span and Wagner, J. Phys. Chem. Ref. Data 29 (2000) 1053",
        source: &sources::COOLPROP_8,
        fit_difference_cm3_per_mol: Some(0.0019),
        molar_volume_difference_percent: Some(0.003),
        handbook_difference_cm3_per_mol: Some(0.24),
    },
    SecondVirial {
        gas: Gas::Ethyne,
        coefficients: [-216.0, -375.0, -716.0, 0.0, 0.0, 0.0],
        equation: "handbook polynomial, no second source",
        source: &sources::CRC_VIRIAL,
        fit_difference_cm3_per_mol: None,
        molar_volume_difference_percent: None,
        handbook_difference_cm3_per_mol: None,
    },
    SecondVirial {
        gas: Gas::Propane,
        coefficients: [-390.593, -837.616_3, -501.963_6, -172.411_1, 0.0, 0.0],
        equation: "Lemmon, McLinden and Wagner, J. Chem. Eng. Data 54 (2009) 3141",
        source: &sources::COOLPROP_8,
        fit_difference_cm3_per_mol: Some(0.008),
        molar_volume_difference_percent: Some(0.0051),
        handbook_difference_cm3_per_mol: Some(4.7),
    },
    SecondVirial {
        gas: Gas::Butane,
        coefficients: [-712.396, -1_664.967_9, -1_247.217, -555.774_5, 0.0, 0.0],
        equation: "Bucker and Wagner, J. Phys. Chem. Ref. Data 35 (2006) 929",
        source: &sources::COOLPROP_8,
        fit_difference_cm3_per_mol: Some(0.0095),
        molar_volume_difference_percent: Some(0.02),
        handbook_difference_cm3_per_mol: Some(45.0),
    },
    SecondVirial {
        gas: Gas::DinitrogenOxide,
        coefficients: [-133.273, -285.974_6, -123.086_9, -39.347_9, 0.0, 0.0],
        equation: "Lemmon and Span, J. Chem. Eng. Data 51 (2006) 785",
        source: &sources::COOLPROP_8,
        fit_difference_cm3_per_mol: Some(0.0017),
        molar_volume_difference_percent: Some(0.0018),
        handbook_difference_cm3_per_mol: Some(4.2),
    },
    SecondVirial {
        gas: Gas::NitrogenMonoxide,
        coefficients: [-12.0, -119.0, 89.0, -73.0, 0.0, 0.0],
        equation: "handbook polynomial, no second source",
        source: &sources::CRC_VIRIAL,
        fit_difference_cm3_per_mol: None,
        molar_volume_difference_percent: None,
        handbook_difference_cm3_per_mol: None,
    },
    SecondVirial {
        gas: Gas::SulfurDioxide,
        coefficients: [-406.624_6, -1_132.314_2, -1_285.960_3, -635.211_4, 498.811_2, 0.0],
        equation: "Gao et al., J. Chem. Eng. Data 61 (2016) 2859",
        source: &sources::COOLPROP_8,
        fit_difference_cm3_per_mol: Some(0.0042),
        molar_volume_difference_percent: Some(0.0032),
        handbook_difference_cm3_per_mol: None,
    },
    SecondVirial {
        gas: Gas::HydrogenSulfide,
        coefficients: [-185.723_3, -400.383_4, -249.451_6, -112.346_1, 0.0, 0.0],
        equation: "Lemmon and Span, J. Chem. Eng. Data 51 (2006) 785",
        source: &sources::COOLPROP_8,
        fit_difference_cm3_per_mol: Some(0.0025),
        molar_volume_difference_percent: Some(0.0011),
        handbook_difference_cm3_per_mol: None,
    },
    SecondVirial {
        gas: Gas::HydrogenChloride,
        coefficients: [-145.62, -314.294_1, -251.641_7, -191.346_7, 0.0, 0.0],
        equation: "Thol et al., J. Chem. Eng. Data 63 (2018) 2533",
        source: &sources::COOLPROP_8,
        fit_difference_cm3_per_mol: Some(0.0012),
        molar_volume_difference_percent: Some(0.0021),
        handbook_difference_cm3_per_mol: Some(2.7),
    },
    SecondVirial {
        gas: Gas::Ammonia,
        coefficients: [-254.918_3, -761.394_5, -1_091.260_4, -1_297.538_2, -834.680_6, 0.0],
        equation: "Gao et al., J. Phys. Chem. Ref. Data (2020 in the package)",
        source: &sources::COOLPROP_8,
        fit_difference_cm3_per_mol: Some(0.0041),
        molar_volume_difference_percent: Some(0.0051),
        handbook_difference_cm3_per_mol: Some(56.0),
    },
    SecondVirial {
        gas: Gas::Chlorine,
        coefficients: [-306.019, -696.898_6, -465.609_9, -33.663_5, 0.0, 0.0],
        equation: "Thol et al., AIChE J. (2021)",
        source: &sources::COOLPROP_8,
        fit_difference_cm3_per_mol: Some(0.0022),
        molar_volume_difference_percent: Some(0.0011),
        handbook_difference_cm3_per_mol: Some(21.0),
    },
    SecondVirial {
        gas: Gas::Helium,
        coefficients: [11.845_2, 1.240_1, -1.660_4, 0.0, 0.0, 0.0],
        equation: "Ortiz-Vega et al., J. Phys. Chem. Ref. Data (2019 in the package)",
        source: &sources::COOLPROP_8,
        fit_difference_cm3_per_mol: Some(0.0013),
        molar_volume_difference_percent: Some(3.4e-05),
        handbook_difference_cm3_per_mol: Some(0.68),
    },
    SecondVirial {
        gas: Gas::Argon,
        coefficients: [-15.553_7, -60.674_5, -11.343_9, 0.0, 0.0, 0.0],
        equation: "Tegeler, Span and Wagner, J. Phys. Chem. Ref. Data 28 (1999) 779",
        source: &sources::COOLPROP_8,
        fit_difference_cm3_per_mol: Some(0.0017),
        molar_volume_difference_percent: Some(0.0009),
        handbook_difference_cm3_per_mol: Some(0.53),
    },
];

/// The same for water vapour, from the equation of state of 1995: a1 to a6 in cm3/mol, 0 to 100 degC. Largest
/// difference of the fit from B of the equation: 0.017 cm3/mol. The handbook's polynomial is 7 to 11 % off.
pub static WATER_VIRIAL_1995: [f64; 6] =
    [-1_240.864_9, -6_529.984_1, -18_549.380_1, -36_383.412, -50_438.774_4, -41_219.882_1];

/// Second virial coefficient between water and air, IAPWS G8-10 equation 7: the sum of c (T/100 K)^d in cm3/mol, as
/// (c, d). Range of the source: 130 to 2000 K.
pub static AIR_WATER_VIRIAL_2010: [(f64, f64); 3] =
    [(66.568_7, -0.237), (-238.834, -1.048), (-176.755, -3.183)];
/// Its uncertainty near room temperature, in cm3/mol.
pub const AIR_WATER_VIRIAL_UNCERTAINTY: f64 = 3.0;

/// A second virial coefficient between a gas and water that is only an estimate near 20 degC.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct CrossEstimate {
    /// The gas.
    pub gas: Gas,
    /// The coefficient, in cm3/mol.
    pub value_cm3_per_mol: f64,
    /// Its uncertainty, in cm3/mol.
    pub uncertainty_cm3_per_mol: f64,
}

/// Estimates from memory, no source: the size, not the digits, is to be trusted. At 20 degC and 101.325 kPa, with 2.3 % of
/// vapour, 10 cm3/mol are 2 parts in 100 000 of the molar volume of the moist gas.
pub static WATER_CROSS_ESTIMATES: [CrossEstimate; 5] = [
    CrossEstimate { gas: Gas::Oxygen, value_cm3_per_mol: -32.0, uncertainty_cm3_per_mol: 8.0 },
    CrossEstimate { gas: Gas::Nitrogen, value_cm3_per_mol: -32.0, uncertainty_cm3_per_mol: 8.0 },
    CrossEstimate { gas: Gas::Hydrogen, value_cm3_per_mol: -13.0, uncertainty_cm3_per_mol: 8.0 },
    CrossEstimate { gas: Gas::CarbonDioxide, value_cm3_per_mol: -205.0, uncertainty_cm3_per_mol: 25.0 },
    CrossEstimate { gas: Gas::Methane, value_cm3_per_mol: -63.0, uncertainty_cm3_per_mol: 12.0 },
];
