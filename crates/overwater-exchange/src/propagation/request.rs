//! What is asked for.

use std::collections::BTreeMap;

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

use crate::seed::Seed;

/// A formula with uncertain inputs.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct PropagationRequest {
    /// The format of the request; 1.
    pub format: u32,
    /// The formula's name, as in "dry_amount".
    pub formula: String,
    /// The rule set; that of the GUM where it is left out.
    #[serde(default)]
    pub rules: RuleSetRequest,
    /// Which school rules, with their year; "half_division_2026" where it is left out.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub school_rules: Option<String>,
    /// Coverage probability, 0.5 to 0.999; 0.95 where it is left out.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub coverage: Option<f64>,
    /// Seed of the draws; 1 where it is left out.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub seed: Option<Seed>,
    /// How many draws; as many as make the result stable where it is left out.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub draws: Option<usize>,
    /// Whether the relation's own uncertainty, where its source states one, is an input too.
    #[serde(default = "yes")]
    pub relation: bool,
    /// Its inputs; the unit stands at the end of each name.
    pub inputs: BTreeMap<String, UncertainRequest>,
    /// Inputs that go together.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub correlations: Vec<CorrelationRequest>,
}

fn yes() -> bool {
    true
}

/// A rule set.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "snake_case")]
pub enum RuleSetRequest {
    /// First order (JCGM 100:2008).
    #[default]
    Gum,
    /// By drawing (JCGM 101:2008).
    MonteCarlo,
    /// Percentages added.
    School,
}

/// A value and how uncertain it is; one way of saying so, or none for a value that is taken as known.
#[derive(Debug, Clone, PartialEq, Default, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct UncertainRequest {
    /// The value; left out with repeats.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub value: Option<f64>,
    /// Its standard uncertainty.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub standard_uncertainty: Option<f64>,
    /// Limits either way.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub half_width: Option<f64>,
    /// The smallest division of a scale with lines.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub division: Option<f64>,
    /// One unit of the last digit of a display.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub last_digit: Option<f64>,
    /// How many readings make the value: 2 for a difference; 1 where it is left out.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub readings: Option<u8>,
    /// Repeated readings, whose mean is the value.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub repeats: Vec<f64>,
    /// Degrees of freedom of a standard uncertainty.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub degrees_of_freedom: Option<f64>,
    /// How the values within a half-width are spread: "rectangular" where it is left out, or "triangular".
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub spread: Option<SpreadRequest>,
}

/// How the values within a half-width are spread.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "snake_case")]
pub enum SpreadRequest {
    /// All alike.
    Rectangular,
    /// The middle likeliest.
    Triangular,
}

/// Two inputs that go together.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct CorrelationRequest {
    /// Their names.
    pub between: [String; 2],
    /// Their correlation coefficient, -1 to 1.
    pub coefficient: f64,
}
