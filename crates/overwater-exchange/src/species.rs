//! The species of the flames with their coefficients.

use overwater::chem::Formula;
use overwater::reference::nasa9::{MOLAR_GAS_OF_THE_FIT, Phase, SPECIES_2002, Species};
use overwater::reference::sources::NASA_GLENN_2002;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

use crate::FORMAT;

/// Species with their coefficients.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct SpeciesAnswer {
    /// The format of the answer; 1.
    pub format: u32,
    /// The version of the library that gave it.
    pub library_version: String,
    /// Where the coefficients come from.
    pub source: String,
    /// The molar gas constant that they go with, in J/(mol K).
    pub molar_gas_j_per_mol_k: f64,
    /// The species.
    pub species: Vec<OneSpecies>,
}

/// One species; phases of one substance are separate species.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct OneSpecies {
    /// Its name in the data file.
    pub name: String,
    /// Its formula; empty for air.
    pub formula: String,
    /// "gas", "liquid" or "solid".
    pub phase: String,
    /// Symbols of its atoms and how many of each.
    pub atoms: Vec<(String, f64)>,
    /// Ranges of temperature, in order.
    pub ranges: Vec<SpeciesRange>,
}

/// One range of temperature.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct SpeciesRange {
    /// Lower end (K).
    pub least_k: f64,
    /// Upper end (K).
    pub greatest_k: f64,
    /// a1 to a7: the coefficients of T^-2 to T^4 in Cp/R.
    pub a: [f64; 7],
    /// Constant of integration of H/R (K).
    pub b1: f64,
    /// Constant of integration of S/R.
    pub b2: f64,
}

/// Species whose name or formula holds a text, in any case.
///
/// ```
/// let found = overwater_exchange::species::species("MgO");
/// let names: Vec<&str> = found.species.iter().map(|one| one.name.as_str()).collect();
/// assert_eq!(names, ["MgO", "MgO(cr)", "MgO(L)"]);
/// ```
#[must_use]
pub fn species(text: &str) -> SpeciesAnswer {
    let wanted = text.to_lowercase();
    let holds = |species: &&Species| {
        species.name.to_lowercase().contains(&wanted)
            || species.formula.is_some_and(|formula| formula.to_lowercase().contains(&wanted))
    };
    SpeciesAnswer {
        format: FORMAT,
        library_version: env!("CARGO_PKG_VERSION").to_owned(),
        source: NASA_GLENN_2002.text.to_owned(),
        molar_gas_j_per_mol_k: MOLAR_GAS_OF_THE_FIT,
        species: SPECIES_2002.iter().filter(holds).map(one).collect(),
    }
}

fn one(species: &Species) -> OneSpecies {
    let formula = species.formula.unwrap_or_default();
    let parsed = Formula::parse(formula).ok();
    OneSpecies {
        name: species.name.to_owned(),
        formula: formula.to_owned(),
        phase: match species.phase {
            Phase::Gas => "gas",
            Phase::Liquid => "liquid",
            Phase::Crystal | Phase::Aqueous => "solid",
        }
        .to_owned(),
        atoms: parsed
            .iter()
            .flat_map(Formula::composition)
            .map(|(atom, count)| (atom.symbol().to_owned(), count.to_f64()))
            .collect(),
        ranges: species
            .ranges
            .iter()
            .map(|range| SpeciesRange {
                least_k: range.least_k,
                greatest_k: range.greatest_k,
                a: range.a,
                b1: range.b1,
                b2: range.b2,
            })
            .collect(),
    }
}
