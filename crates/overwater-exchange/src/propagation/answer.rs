//! What is answered.

use overwater::readings::uncertainty::budget::Line;
use overwater::readings::uncertainty::school::SchoolLine;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

use crate::seed::Seed;

/// A result with its uncertainty and where that comes from.
#[derive(Debug, Clone, PartialEq, Default, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct PropagationAnswer {
    /// The format of the answer; 1.
    pub format: u32,
    /// The version of the library that gave it.
    pub library_version: String,
    /// The formula's name.
    pub formula: String,
    /// The rule set: "gum", "monte_carlo" or "school".
    pub rules: String,
    /// What the rule set rests on, with its year.
    pub rules_source: String,
    /// Which school rules, with their year.
    pub school_rules: Option<String>,
    /// The result's name, with the unit at the end.
    pub name: String,
    /// Its symbol.
    pub symbol: String,
    /// What it is.
    pub words: String,
    /// Its unit.
    pub unit: String,
    /// The result.
    pub value: f64,
    /// Its standard uncertainty; nothing by school rules.
    pub standard_uncertainty: Option<f64>,
    /// Effective degrees of freedom; nothing where they are infinite.
    pub degrees_of_freedom: Option<f64>,
    /// The coverage probability.
    pub coverage: Option<f64>,
    /// The coverage factor.
    pub coverage_factor: Option<f64>,
    /// The coverage factor times the standard uncertainty.
    pub expanded_uncertainty: Option<f64>,
    /// The half-width by school rules, unrounded.
    pub half_width: Option<f64>,
    /// What the draws came to.
    pub drawn: Option<DrawnAnswer>,
    /// Result and uncertainty as they are written down: expanded by the GUM, standard by drawing, half-width in schools.
    pub stated: StatedAnswer,
    /// The budget; by first order also where the uncertainty is found by drawing.
    pub lines: Vec<LineAnswer>,
}

/// A result and its uncertainty, rounded to the same place.
#[derive(Debug, Clone, PartialEq, Default, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct StatedAnswer {
    /// The result.
    pub value: String,
    /// The uncertainty.
    pub uncertainty: String,
}

/// What the draws came to.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct DrawnAnswer {
    /// The shortest interval of the coverage.
    pub shortest: [f64; 2],
    /// The interval with as much below as above.
    pub symmetric: [f64; 2],
    /// How many draws were made.
    pub draws: f64,
    /// How many of them have no result.
    pub without_result: f64,
    /// The seed; the same one gives the same answer.
    pub seed: Seed,
    /// How the drawing ended.
    pub behaviour: Behaviour,
}

/// How the drawing ended.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "snake_case")]
pub enum Behaviour {
    /// After as many draws as were asked for.
    AsMany,
    /// When the result was stable to two figures of its uncertainty.
    Stable,
    /// After the most draws, before it was stable.
    NotStable,
}

/// A line of the budget.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct LineAnswer {
    /// The input; "relation" for the relation itself.
    pub name: String,
    /// Its value.
    pub value: f64,
    /// Its standard uncertainty, or its half-width by school rules.
    pub uncertainty: f64,
    /// "normal", "rectangular", "triangular", "student", or "half-width".
    pub kind: String,
    /// Degrees of freedom; nothing where they are infinite or unknown to the rules.
    pub degrees_of_freedom: Option<f64>,
    /// How much the result changes for one unit of it; nothing by school rules.
    pub sensitivity: Option<f64>,
    /// What it adds, in the unit of the result.
    pub contribution: f64,
    /// Its share of the whole (of the variance by the GUM, of the half-width in schools); they add up to 1.
    pub share: f64,
}

impl LineAnswer {
    pub(super) fn gum(line: &Line) -> LineAnswer {
        LineAnswer {
            name: line.name.clone().into_owned(),
            value: line.value,
            uncertainty: line.standard_uncertainty,
            kind: line.distribution.name().to_owned(),
            degrees_of_freedom: Some(line.degrees_of_freedom).filter(|number| number.is_finite()),
            sensitivity: Some(line.sensitivity),
            contribution: line.contribution,
            share: line.share,
        }
    }

    pub(super) fn school(line: &SchoolLine) -> LineAnswer {
        LineAnswer {
            name: line.name.clone().into_owned(),
            value: line.value,
            uncertainty: line.half_width,
            kind: "half-width".to_owned(),
            degrees_of_freedom: None,
            sensitivity: None,
            contribution: line.contribution,
            share: line.share,
        }
    }
}
