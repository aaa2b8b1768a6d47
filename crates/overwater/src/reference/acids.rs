//! Dissociation constants of acids and solubility products at 25 degC and zero ionic strength.
//!
//! From the handbook (after Perrin 1982). The enthalpies are those of the thermodynamic data file of PHREEQC; with them
//! d ln K/d(1/T) = -dH/R. HS- (19) and Ca(OH)2 (another compilation is a factor of 4 away) are poorly known.

use super::sources;
use crate::scalar::Source;

/// What a constant belongs to.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Step {
    /// Loss of the first, second or third proton.
    Proton(u8),
    /// Dissolving of a solid.
    Solubility,
}

/// An equilibrium constant.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct EquilibriumConstant {
    /// The species that gives the proton, or the solid.
    pub species: &'static str,
    /// The reaction, as usually written.
    pub reaction: &'static str,
    /// What it belongs to.
    pub step: Step,
    /// -log10 of the constant at 25 degC.
    pub pk_25: f64,
    /// The same in the data file of PHREEQC, for comparison.
    pub pk_25_phreeqc: Option<f64>,
    /// Enthalpy of the reaction, in kJ/mol (PHREEQC).
    pub enthalpy_kj_per_mol: Option<f64>,
    /// Whether `pk_25` was read in a text; from memory otherwise.
    pub verified: bool,
    /// Where `pk_25` comes from.
    pub source: &'static Source,
}

/// Every constant, by species and step.
pub static EQUILIBRIUM_CONSTANTS_25C: [EquilibriumConstant; 17] = [
    EquilibriumConstant {
        species: "SO2(aq) / H2SO3",
        reaction: "SO2 + H2O = H+ + HSO3-",
        step: Step::Proton(1),
        pk_25: 1.85,
        pk_25_phreeqc: None,
        enthalpy_kj_per_mol: None,
        verified: true,
        source: &sources::CRC_ACIDS,
    },
    EquilibriumConstant {
        species: "HSO3-",
        reaction: "HSO3- = H+ + SO3 2-",
        step: Step::Proton(2),
        pk_25: 7.2,
        pk_25_phreeqc: None,
        enthalpy_kj_per_mol: None,
        verified: true,
        source: &sources::CRC_ACIDS,
    },
    EquilibriumConstant {
        species: "HSO4-",
        reaction: "HSO4- = H+ + SO4 2-",
        step: Step::Proton(2),
        pk_25: 1.99,
        pk_25_phreeqc: None,
        enthalpy_kj_per_mol: None,
        verified: true,
        source: &sources::CRC_ACIDS,
    },
    EquilibriumConstant {
        species: "CO2(aq) / H2CO3*",
        reaction: "CO2 + H2O = H+ + HCO3-",
        step: Step::Proton(1),
        pk_25: 6.35,
        pk_25_phreeqc: Some(6.352),
        enthalpy_kj_per_mol: Some(9.11),
        verified: true,
        source: &sources::CRC_ACIDS,
    },
    EquilibriumConstant {
        species: "HCO3-",
        reaction: "HCO3- = H+ + CO3 2-",
        step: Step::Proton(2),
        pk_25: 10.33,
        pk_25_phreeqc: Some(10.329),
        enthalpy_kj_per_mol: Some(14.9),
        verified: true,
        source: &sources::CRC_ACIDS,
    },
    EquilibriumConstant {
        species: "H3PO4",
        reaction: "H3PO4 = H+ + H2PO4-",
        step: Step::Proton(1),
        pk_25: 2.16,
        pk_25_phreeqc: Some(2.168),
        enthalpy_kj_per_mol: Some(-8.81),
        verified: true,
        source: &sources::CRC_ACIDS,
    },
    EquilibriumConstant {
        species: "H2PO4-",
        reaction: "H2PO4- = H+ + HPO4 2-",
        step: Step::Proton(2),
        pk_25: 7.21,
        pk_25_phreeqc: Some(7.207),
        enthalpy_kj_per_mol: Some(4.14),
        verified: true,
        source: &sources::CRC_ACIDS,
    },
    EquilibriumConstant {
        species: "HPO4 2-",
        reaction: "HPO4 2- = H+ + PO4 3-",
        step: Step::Proton(3),
        pk_25: 12.32,
        pk_25_phreeqc: Some(12.346),
        enthalpy_kj_per_mol: Some(14.77),
        verified: false,
        source: &sources::HANDBOOK_MEMORY,
    },
    EquilibriumConstant {
        species: "HNO2",
        reaction: "HNO2 = H+ + NO2-",
        step: Step::Proton(1),
        pk_25: 3.25,
        pk_25_phreeqc: None,
        enthalpy_kj_per_mol: None,
        verified: true,
        source: &sources::CRC_ACIDS,
    },
    EquilibriumConstant {
        species: "HNO3",
        reaction: "HNO3 = H+ + NO3-",
        step: Step::Proton(1),
        pk_25: -1.4,
        pk_25_phreeqc: None,
        enthalpy_kj_per_mol: None,
        verified: false,
        source: &sources::HANDBOOK_MEMORY,
    },
    EquilibriumConstant {
        species: "NH4+",
        reaction: "NH4+ = H+ + NH3",
        step: Step::Proton(1),
        pk_25: 9.25,
        pk_25_phreeqc: Some(9.252),
        enthalpy_kj_per_mol: Some(52.22),
        verified: true,
        source: &sources::CRC_ACIDS,
    },
    EquilibriumConstant {
        species: "H2S",
        reaction: "H2S = H+ + HS-",
        step: Step::Proton(1),
        pk_25: 7.05,
        pk_25_phreeqc: Some(6.994),
        enthalpy_kj_per_mol: Some(22.18),
        verified: true,
        source: &sources::CRC_ACIDS,
    },
    EquilibriumConstant {
        species: "HS-",
        reaction: "HS- = H+ + S 2-",
        step: Step::Proton(2),
        pk_25: 19.0,
        pk_25_phreeqc: None,
        enthalpy_kj_per_mol: None,
        verified: true,
        source: &sources::CRC_ACIDS,
    },
    EquilibriumConstant {
        species: "H2O2",
        reaction: "H2O2 = H+ + HO2-",
        step: Step::Proton(1),
        pk_25: 11.62,
        pk_25_phreeqc: None,
        enthalpy_kj_per_mol: None,
        verified: true,
        source: &sources::CRC_ACIDS,
    },
    EquilibriumConstant {
        species: "HOCl",
        reaction: "HOCl = H+ + OCl-",
        step: Step::Proton(1),
        pk_25: 7.4,
        pk_25_phreeqc: None,
        enthalpy_kj_per_mol: None,
        verified: true,
        source: &sources::CRC_ACIDS,
    },
    EquilibriumConstant {
        species: "Mg(OH)2(s)",
        reaction: "Mg(OH)2 = Mg2+ + 2 OH-",
        step: Step::Solubility,
        pk_25: 11.25,
        pk_25_phreeqc: Some(11.16),
        enthalpy_kj_per_mol: None,
        verified: false,
        source: &sources::HANDBOOK_MEMORY,
    },
    EquilibriumConstant {
        species: "Ca(OH)2(s)",
        reaction: "Ca(OH)2 = Ca2+ + 2 OH-",
        step: Step::Solubility,
        pk_25: 5.3,
        pk_25_phreeqc: None,
        enthalpy_kj_per_mol: None,
        verified: false,
        source: &sources::HANDBOOK_MEMORY,
    },
];
