//! Solubility of gases in water.
//!
//! Three sources: the equation of IAPWS for fourteen gases (uncertainty about 1 to 2 % near room temperature, from memory),
//! that of Benson and Krause for oxygen (0.1 %), and the reviews in Sander's compilation for the rest (two figures and
//! one temperature term; how far the reviews lie apart stands in each row).

use super::gases::Gas;
use crate::bounds::Bound;
use crate::symbols;

/// A row of IAPWS G7-04, Table 2.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct IapwsHenry {
    /// The gas.
    pub gas: Gas,
    /// Lower end of the range of the source, in K.
    pub least_k: f64,
    /// Upper end of the range of the source, in K.
    pub greatest_k: f64,
    /// Coefficient A.
    pub a: f64,
    /// Coefficient B.
    pub b: f64,
    /// Coefficient C.
    pub c: f64,
    /// The part of the range that is taken here: liquid water at atmospheric pressure.
    pub temperature: Bound,
}

const fn from(least_c: f64) -> Bound {
    Bound {
        name: "temperature_c",
        symbol: &symbols::TEMPERATURE,
        least: least_c,
        greatest: 100.0,
        why: "the measurements behind IAPWS G7-04, and liquid water at atmospheric pressure",
    }
}

/// IAPWS G7-04, Table 2, in its order of gases as far as it goes.
pub static HENRY_2004: [IapwsHenry; 14] = [
    IapwsHenry {
        gas: Gas::Helium,
        least_k: 273.21,
        greatest_k: 553.18,
        a: -3.528_39,
        b: 7.129_83,
        c: 4.477_7,
        temperature: from(0.06),
    },
    IapwsHenry {
        gas: Gas::Argon,
        least_k: 273.19,
        greatest_k: 568.36,
        a: -8.409_54,
        b: 4.295_87,
        c: 10.527_79,
        temperature: from(0.04),
    },
    IapwsHenry {
        gas: Gas::Hydrogen,
        least_k: 273.15,
        greatest_k: 636.09,
        a: -4.732_84,
        b: 6.089_54,
        c: 6.060_66,
        temperature: from(0.0),
    },
    IapwsHenry {
        gas: Gas::Nitrogen,
        least_k: 278.12,
        greatest_k: 636.46,
        a: -9.675_78,
        b: 4.721_62,
        c: 11.705_85,
        temperature: from(4.97),
    },
    IapwsHenry {
        gas: Gas::Oxygen,
        least_k: 274.15,
        greatest_k: 616.52,
        a: -9.448_33,
        b: 4.438_22,
        c: 11.420_05,
        temperature: from(1.0),
    },
    IapwsHenry {
        gas: Gas::CarbonMonoxide,
        least_k: 278.15,
        greatest_k: 588.67,
        a: -10.528_62,
        b: 5.132_59,
        c: 12.014_21,
        temperature: from(5.0),
    },
    IapwsHenry {
        gas: Gas::CarbonDioxide,
        least_k: 274.19,
        greatest_k: 642.66,
        a: -8.554_45,
        b: 4.011_95,
        c: 9.523_45,
        temperature: from(1.04),
    },
    IapwsHenry {
        gas: Gas::HydrogenSulfide,
        least_k: 273.15,
        greatest_k: 533.09,
        a: -4.514_99,
        b: 5.235_38,
        c: 4.421_26,
        temperature: from(0.0),
    },
    IapwsHenry {
        gas: Gas::Methane,
        least_k: 275.46,
        greatest_k: 633.11,
        a: -10.447_08,
        b: 4.664_91,
        c: 12.129_86,
        temperature: from(2.31),
    },
    IapwsHenry {
        gas: Gas::Ethane,
        least_k: 275.44,
        greatest_k: 473.46,
        a: -19.675_63,
        b: 4.512_22,
        c: 20.625_67,
        temperature: from(2.29),
    },
    IapwsHenry {
        gas: Gas::SulfurHexafluoride,
        least_k: 283.14,
        greatest_k: 505.55,
        a: -16.561_18,
        b: 2.152_89,
        c: 20.354_4,
        temperature: from(9.99),
    },
    IapwsHenry {
        gas: Gas::Neon,
        least_k: 273.2,
        greatest_k: 543.36,
        a: -3.183_01,
        b: 5.314_48,
        c: 5.437_74,
        temperature: from(0.05),
    },
    IapwsHenry {
        gas: Gas::Krypton,
        least_k: 273.19,
        greatest_k: 525.56,
        a: -8.973_58,
        b: 3.615_08,
        c: 11.299_63,
        temperature: from(0.04),
    },
    IapwsHenry {
        gas: Gas::Xenon,
        least_k: 273.22,
        greatest_k: 574.85,
        a: -14.216_35,
        b: 4.000_41,
        c: 15.609_99,
        temperature: from(0.07),
    },
];

/// A row of the reviews in Sander's compilation.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct ReviewedHenry {
    /// The gas.
    pub gas: Gas,
    /// Solubility at 298.15 K, in mol/(m3 Pa); two figures.
    pub solubility_298: f64,
    /// d ln(solubility)/d(1/T), in K.
    pub slope_k: f64,
    /// The least and the greatest solubility of the reviews.
    pub reviews: (f64, f64),
    /// How many reviews there are.
    pub number_of_reviews: u8,
    /// The review that was taken.
    pub review: &'static str,
    /// What the gas does with water beside dissolving.
    pub reaction: &'static str,
}

/// Sander, version 4.0 (2015): the row of the review named in each.
pub static HENRY_2015: [ReviewedHenry; 21] = [
    ReviewedHenry {
        gas: Gas::Oxygen,
        solubility_298: 1.3e-5,
        slope_k: 1_500.0,
        reviews: (1.2e-5, 1.3e-5),
        number_of_reviews: 6,
        review: "Sander et al. (2011)",
        reaction: "no reaction",
    },
    ReviewedHenry {
        gas: Gas::Hydrogen,
        solubility_298: 7.8e-6,
        slope_k: 530.0,
        reviews: (7.7e-6, 7.8e-6),
        number_of_reviews: 2,
        review: "Fernandez-Prini et al. (2003)",
        reaction: "no reaction",
    },
    ReviewedHenry {
        gas: Gas::Nitrogen,
        solubility_298: 6.4e-6,
        slope_k: 1_300.0,
        reviews: (5.4e-6, 6.5e-6),
        number_of_reviews: 7,
        review: "Sander et al. (2011)",
        reaction: "no reaction",
    },
    ReviewedHenry {
        gas: Gas::Helium,
        solubility_298: 3.9e-6,
        slope_k: 15.0,
        reviews: (3.8e-6, 3.9e-6),
        number_of_reviews: 3,
        review: "Fernandez-Prini et al. (2003)",
        reaction: "no reaction",
    },
    ReviewedHenry {
        gas: Gas::Argon,
        solubility_298: 1.4e-5,
        slope_k: 1_400.0,
        reviews: (1.4e-5, 1.4e-5),
        number_of_reviews: 4,
        review: "Fernandez-Prini et al. (2003)",
        reaction: "no reaction",
    },
    ReviewedHenry {
        gas: Gas::CarbonDioxide,
        solubility_298: 0.000_33,
        slope_k: 2_400.0,
        reviews: (0.000_33, 0.000_34),
        number_of_reviews: 9,
        review: "Sander et al. (2011)",
        reaction: "hydrates and ionises slightly: CO2 + H2O = H+ + HCO3- (pKa1 6.35); absorbed by alkali",
    },
    ReviewedHenry {
        gas: Gas::CarbonMonoxide,
        solubility_298: 9.7e-6,
        slope_k: 1_300.0,
        reviews: (9.4e-6, 9.7e-6),
        number_of_reviews: 5,
        review: "Sander et al. (2011)",
        reaction: "no reaction in cold water",
    },
    ReviewedHenry {
        gas: Gas::Methane,
        solubility_298: 1.4e-5,
        slope_k: 1_600.0,
        reviews: (1.4e-5, 1.5e-5),
        number_of_reviews: 7,
        review: "Sander et al. (2011)",
        reaction: "no reaction",
    },
    ReviewedHenry {
        gas: Gas::Ethane,
        solubility_298: 1.9e-5,
        slope_k: 2_400.0,
        reviews: (1.8e-5, 2.0e-5),
        number_of_reviews: 6,
        review: "Sander et al. (2011)",
        reaction: "no reaction",
    },
    ReviewedHenry {
        gas: Gas::Propane,
        solubility_298: 1.5e-5,
        slope_k: 2_700.0,
        reviews: (1.4e-5, 1.5e-5),
        number_of_reviews: 5,
        review: "Sander et al. (2011)",
        reaction: "no reaction",
    },
    ReviewedHenry {
        gas: Gas::Butane,
        solubility_298: 1.2e-5,
        slope_k: 3_100.0,
        reviews: (1.0e-5, 1.3e-5),
        number_of_reviews: 5,
        review: "Sander et al. (2011)",
        reaction: "no reaction",
    },
    ReviewedHenry {
        gas: Gas::Ethene,
        solubility_298: 5.9e-5,
        slope_k: 2_200.0,
        reviews: (3.5e-5, 5.9e-5),
        number_of_reviews: 5,
        review: "Sander et al. (2011)",
        reaction: "no reaction in water",
    },
    ReviewedHenry {
        gas: Gas::Ethyne,
        solubility_298: 0.000_41,
        slope_k: 1_700.0,
        reviews: (0.000_41, 0.000_41),
        number_of_reviews: 3,
        review: "Sander et al. (2011)",
        reaction: "no reaction in water (weak acid)",
    },
    ReviewedHenry {
        gas: Gas::DinitrogenOxide,
        solubility_298: 0.000_24,
        slope_k: 2_600.0,
        reviews: (0.000_18, 0.000_24),
        number_of_reviews: 5,
        review: "Sander et al. (2011)",
        reaction: "no reaction",
    },
    ReviewedHenry {
        gas: Gas::NitrogenMonoxide,
        solubility_298: 1.9e-5,
        slope_k: 1_600.0,
        reviews: (1.9e-5, 1.9e-5),
        number_of_reviews: 4,
        review: "Sander et al. (2011)",
        reaction: "no reaction with air-free water; oxidised by air to NO2 first",
    },
    ReviewedHenry {
        gas: Gas::NitrogenDioxide,
        solubility_298: 0.000_12,
        slope_k: 2_400.0,
        reviews: (9.9e-5, 0.000_14),
        number_of_reviews: 4,
        review: "Sander et al. (2011)",
        reaction: "reacts: 2NO2 + H2O -> HNO2 + HNO3; constant is for physical dissolution only",
    },
    ReviewedHenry {
        gas: Gas::Chlorine,
        solubility_298: 0.000_92,
        slope_k: 2_000.0,
        reviews: (0.000_9, 0.000_92),
        number_of_reviews: 3,
        review: "Sander et al. (2011)",
        reaction: "hydrolyses: Cl2 + H2O = HOCl + H+ + Cl-; constant is for physical dissolution only",
    },
    ReviewedHenry {
        gas: Gas::SulfurDioxide,
        solubility_298: 0.013,
        slope_k: 2_900.0,
        reviews: (0.012, 0.014),
        number_of_reviews: 6,
        review: "Sander et al. (2011)",
        reaction: "ionises: SO2 + H2O = H+ + HSO3- (pKa1 1.85); constant is for undissociated SO2(aq)",
    },
    ReviewedHenry {
        gas: Gas::HydrogenSulfide,
        solubility_298: 0.001,
        slope_k: 2_100.0,
        reviews: (0.001, 0.001),
        number_of_reviews: 7,
        review: "Sander et al. (2011)",
        reaction: "weak acid (pKa1 7.05)",
    },
    ReviewedHenry {
        gas: Gas::Ammonia,
        solubility_298: 0.59,
        slope_k: 4_200.0,
        reviews: (0.1, 0.6),
        number_of_reviews: 5,
        review: "Sander et al. (2011)",
        reaction: "weak base (pKa of NH4+ 9.25); extremely soluble",
    },
    ReviewedHenry {
        gas: Gas::Ozone,
        solubility_298: 0.000_1,
        slope_k: 2_800.0,
        reviews: (0.000_1, 0.000_13),
        number_of_reviews: 4,
        review: "Sander et al. (2011)",
        reaction: "decomposes slowly in water",
    },
];

/// Molar mass of water by which a fugacity over mole fraction becomes a solubility, in kg/mol: IAPWS G7-04.
pub static WATER_MOLAR_MASS_2004: f64 = 18.015_28e-3;

/// Benson, Krause and Peterson 1979: ln(k/atm) = a0 + a1/T + a2/T^2 for oxygen, k being fugacity over mole fraction.
/// From memory; within 0.1 % of the equation below and 1.1 % of IAPWS. Range of the source: 0 to 60 degC.
pub static OXYGEN_HENRY_1979: [f64; 3] = [3.718_14, 5_596.17, -1_049_668.0];
/// Benson and Krause 1980 and 1984: ln(DO) = c0 + c1/T + ... + c4/T^4, oxygen in mg/dm3 in fresh water under moist air
/// of 1 atm. From memory, reproduced by the tables of Standard Methods and by gsw. Range of the source: 0 to 40 degC.
pub static OXYGEN_SATURATION_1984: [f64; 5] =
    [-139.344_11, 1.575_701e5, -6.642_308e7, 1.243_8e10, -8.621_949e11];
/// The same: the logarithm falls by S (s0 + s1/T + s2/T^2) with the salinity S.
pub static OXYGEN_SALINITY_1984: [f64; 3] = [1.767_4e-2, -10.754, 2_140.7];
/// The same: theta = th0 + th1 t + th2 t^2 (t in degC, pressures in atm), the departure of air from ideality.
pub static OXYGEN_THETA_1984: [f64; 3] = [0.000_975, -1.426e-5, 6.436e-8];
/// The same: ln(p_w/atm) = w0 + w1/T + w2/T^2, the vapour pressure of water that the pressure factor goes by.
pub static OXYGEN_VAPOUR_1984: [f64; 3] = [11.857_1, -3_840.7, -216_961.0];

/// A parameter of salting out.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SaltingOut<T> {
    /// The gas or the ion.
    pub of: T,
    /// The parameter at 298.2 K, in dm3/mol.
    pub h: f64,
}

const fn h<T: Copy>(of: T, h: f64) -> SaltingOut<T> {
    SaltingOut { of, h }
}

/// Schumpe 1993, the gases.
pub static SALTING_OUT_GASES_1993: [SaltingOut<Gas>; 14] = [
    h(Gas::Oxygen, 0.0),
    h(Gas::CarbonDioxide, -0.018_3),
    h(Gas::DinitrogenOxide, -0.011),
    h(Gas::Ethyne, -0.017_4),
    h(Gas::Ethene, 0.001_4),
    h(Gas::Helium, -0.036),
    h(Gas::Neon, -0.02),
    h(Gas::Argon, -0.009),
    h(Gas::Krypton, 0.003),
    h(Gas::Xenon, 0.005),
    h(Gas::Hydrogen, -0.024),
    h(Gas::Nitrogen, -0.008),
    h(Gas::NitrogenMonoxide, 0.004),
    h(Gas::Ethane, 0.011),
];

/// Schumpe 1993, the ions, named with the sign before the number of charges.
pub static SALTING_OUT_IONS_1993: [SaltingOut<&'static str>; 37] = [
    h("H+", 0.0),
    h("Li+", 0.069_1),
    h("Na+", 0.117_1),
    h("K+", 0.095_9),
    h("Rb+", 0.084_5),
    h("Cs+", 0.066),
    h("NH4+", 0.053_9),
    h("Mg+2", 0.176_5),
    h("Ca+2", 0.177_1),
    h("Ba+2", 0.202_1),
    h("Fe+2", 0.171_2),
    h("Co+2", 0.198_3),
    h("Ni+2", 0.203_9),
    h("Cu+2", 0.181),
    h("Mn+2", 0.162),
    h("Zn+2", 0.171_2),
    h("Cd+2", 0.220_1),
    h("Al+3", 0.225_3),
    h("Fe+3", 0.099_6),
    h("Cr+3", 0.059_5),
    h("OH-", 0.075_6),
    h("F-", 0.101_6),
    h("Cl-", 0.033_4),
    h("Br-", 0.013_7),
    h("I-", 0.002),
    h("NO3-", 0.005),
    h("ClO4-", 0.050_2),
    h("IO4-", 0.151_4),
    h("HCO3-", 0.137_2),
    h("HSO3-", 0.054_3),
    h("H2PO4-", 0.102_5),
    h("S2O3-2", 0.110_9),
    h("HPO4-2", 0.178_9),
    h("CO3-2", 0.166_6),
    h("SO3-2", 0.153_7),
    h("SO4-2", 0.118_5),
    h("PO4-3", 0.211_7),
];
