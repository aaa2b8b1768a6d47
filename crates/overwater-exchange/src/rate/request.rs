//! What is asked for. Units stand in the names of the keys; the names in `given` are those of the columns of a table.

use std::collections::BTreeMap;

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

use crate::reduction::request::{CellRequest, CollectorRequest, ConstantsRequest, DecimalRequest};
use crate::seed::Seed;

/// Readings against time, or rates; or the options that go with a table of them.
#[derive(Debug, Clone, PartialEq, Default, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct RateRequest {
    /// The format of the request; 1.
    pub format: u32,
    /// A title for the sheet.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub title: Option<String>,
    /// The gas, as a formula: with its temperature and pressure, rates are given as amounts too.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub gas: Option<String>,
    /// How a volume was collected; over water where it is left out.
    #[serde(default)]
    pub collector: CollectorRequest,
    /// The constants to put in; the best ones where it is left out.
    #[serde(default)]
    pub constants: ConstantsRequest,
    /// A concentration is taken to fall to zero unless its final value is given, or fitted by this.
    #[serde(default)]
    pub fit_final_value: bool,
    /// Rates against concentration as those of an enzyme (Michaelis and Menten).
    #[serde(default)]
    pub michaelis_menten: bool,
    /// Which initial rate is compared between runs; the whole curve's where every run has one, the tangent's elsewhere.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub rate_from: Option<RateFromRequest>,
    /// What the activation energy is worked out from; rate constants where every run has one, initial rates elsewhere.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub arrhenius_from: Option<ArrheniusFromRequest>,
    /// What the worst lines of the activation energy are drawn through; the scatter where it is left out.
    #[serde(default)]
    pub worst_lines: WorstLinesRequest,
    /// By how much of the whole change a reading may go back from one row to the next, as a misreading does; 2 % where it
    /// is left out.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub may_go_back_percent: Option<f64>,
    /// By how much the longest half-life may exceed the shortest for them to count as the same; 8 % where it is left out.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub half_lives_within_percent: Option<f64>,
    /// Intervals by refitting readings drawn from the readings.
    #[serde(default)]
    pub bootstrap: BootstrapRequest,
    /// The decimal sign of a table, where it cannot be told.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub decimal: Option<DecimalRequest>,
    /// What is the same in every row.
    #[serde(default, skip_serializing_if = "BTreeMap::is_empty")]
    pub given: BTreeMap<String, f64>,
    /// The rows.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub rows: Vec<BTreeMap<String, CellRequest>>,
}

/// Which initial rate.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "snake_case")]
pub enum RateFromRequest {
    /// The slope of a parabola through the first readings.
    Tangent,
    /// The slope of the whole curve at the first reading.
    WholeCurve,
    /// The slope between the first two readings.
    FirstTwo,
}

/// What an activation energy is worked out from.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "snake_case")]
pub enum ArrheniusFromRequest {
    /// Rate constants of the fitted curves.
    RateConstant,
    /// Initial rates, where all runs begin with the same.
    InitialRate,
}

/// What worst lines are drawn through.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "snake_case")]
pub enum WorstLinesRequest {
    /// One standard deviation of the residuals above and below the line, at its two ends.
    #[default]
    Scatter,
    /// One standard error above and below the coldest and the hottest rate.
    StandardErrors,
}

/// What is drawn.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "snake_case")]
pub enum DrawRequest {
    /// Residuals, put on the fitted curve in a new order.
    #[default]
    Residuals,
    /// Whole rows.
    Pairs,
}

/// Intervals by refitting.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields, default)]
pub struct BootstrapRequest {
    /// How often; 0 for no intervals.
    pub replicates: u32,
    /// The share of the refits inside the interval (%).
    pub level_percent: f64,
    /// Any whole number; the same one gives the same intervals.
    pub seed: Seed,
    /// What is drawn.
    pub draw: DrawRequest,
}

impl Default for BootstrapRequest {
    fn default() -> Self {
        BootstrapRequest {
            replicates: 1000,
            level_percent: 95.0,
            seed: Seed(1),
            draw: DrawRequest::Residuals,
        }
    }
}
