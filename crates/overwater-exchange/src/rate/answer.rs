//! What came out. Values are in the units of the table's own columns, and each says which.

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

use crate::lines::{LineAnswer, LinesAnswer};
use crate::reduction::answer::{BadRowAnswer, CorrectionAnswer};

/// What a table of readings against time, or of rates, says.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct RateAnswer {
    /// The format of the answer; 1.
    pub format: u32,
    /// The version of the library that gave it.
    pub library_version: String,
    /// The title, as given.
    pub title: Option<String>,
    /// The column that was followed: "volume", "mass", "mass_loss", "concentration"; or "rate", "rate_constant",
    /// "time_taken" for a table without curves.
    pub reading: String,
    /// What was taken as said and what was decided.
    pub notes: Vec<String>,
    /// Significant figures of the data: those of the column, of the ones that the results go by, whose greatest number is
    /// written with the fewest; none where the rows did not come as text.
    pub data_figures: Option<u32>,
    /// How many rows were read.
    pub rows_read: u64,
    /// How many of them were used.
    pub rows_good: u64,
    /// Each run, in the order of the table.
    pub runs: Vec<RunAnswer>,
    /// The order from the rates at several concentrations.
    pub order: Option<OrderAnswer>,
    /// Greatest rate and half-rate concentration of an enzyme.
    pub saturation: Option<SaturationAnswer>,
    /// Activation energy.
    pub arrhenius: Option<ArrheniusAnswer>,
    /// What is to be minded in the results over all runs.
    pub warnings: Vec<String>,
    /// The first rows that were not used.
    pub bad_rows: Vec<BadRowAnswer>,
    /// Runs without a result.
    pub bad_runs: Vec<BadRunAnswer>,
}

/// A run without a result.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct BadRunAnswer {
    /// Its label.
    pub run: String,
    /// The kind of refusal.
    pub code: String,
    /// Why, in one sentence.
    pub message: String,
}

/// A value with what it is uncertain by.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct MeasureAnswer {
    /// The value.
    pub value: f64,
    /// Its unit.
    pub unit: String,
    /// Its standard error by the scatter, in the linear approximation; none for a known value and without degrees of
    /// freedom.
    pub standard_error: Option<f64>,
    /// The interval of the bootstrap, lower and upper end; none where none was drawn.
    pub interval: Option<[f64; 2]>,
}

/// One run.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct RunAnswer {
    /// Its label.
    pub run: String,
    /// Temperature (K), where it is given.
    pub temperature_k: Option<f64>,
    /// Concentration at the start, where it is given.
    pub initial_concentration: Option<MeasureAnswer>,
    /// The unit of the times.
    pub time_unit: String,
    /// The unit of the readings.
    pub reading_unit: String,
    /// The initial rate, in up to three ways.
    pub initial_rates: Vec<EstimateAnswer>,
    /// The curve of the first order through all readings.
    pub curve: Option<CurveAnswer>,
    /// Why there is no curve.
    pub no_curve: Option<String>,
    /// Half-lives, read one after the other.
    pub half_lives: Option<HalfLivesAnswer>,
    /// Why there are none.
    pub no_half_lives: Option<String>,
    /// The order from this curve alone.
    pub order: Option<CurveOrderAnswer>,
    /// Why there is none.
    pub no_order: Option<String>,
    /// Straight lines through the first readings.
    pub lines: LinesAnswer,
    /// The amount of gas that the readings stand for.
    pub gas: Option<GasAnswer>,
    /// What is to be minded.
    pub warnings: Vec<String>,
    /// The readings that were used.
    pub points: Vec<PointAnswer>,
}

/// A reading with the curve beside it.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct PointAnswer {
    /// The row of the table, from 1.
    pub row: u64,
    /// The time.
    pub x: f64,
    /// The reading.
    pub y: f64,
    /// The curve at this time.
    pub fitted: Option<f64>,
}

/// One way to the initial rate.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct EstimateAnswer {
    /// "tangent", "whole_curve" or "first_two".
    pub way: String,
    /// The rate, greater than zero for what the reaction does.
    pub rate: MeasureAnswer,
    /// How many readings, from the first, it uses.
    pub readings: u64,
    /// The share of all that is to come reached by the last of them (%).
    pub conversion_percent: Option<f64>,
    /// How far the same recipe is off on the fitted curve itself (%): -10 reads 10 % low.
    pub bias_percent: Option<f64>,
    /// What it is worth, in words.
    pub worth: String,
}

/// A fitted curve of the first order.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct CurveAnswer {
    /// "growth", V = V(end) (1 - exp(-k (t - t0))), or "decay", y = y(end) + (y(0) - y(end)) exp(-k t).
    pub kind: String,
    /// The value in the end.
    pub final_value: MeasureAnswer,
    /// Whether it was fitted.
    pub final_value_fitted: bool,
    /// The rate constant.
    pub rate_constant: MeasureAnswer,
    /// When it began, for a growth.
    pub start: Option<MeasureAnswer>,
    /// Whether that was fitted.
    pub start_fitted: bool,
    /// The value at time 0, for a decay.
    pub first_value: Option<MeasureAnswer>,
    /// The half-life, ln 2/k.
    pub half_life: MeasureAnswer,
    /// The standard deviation of the residuals, in the unit of the readings.
    pub residual_standard_deviation: Option<f64>,
    /// Readings less numbers fitted.
    pub degrees_of_freedom: u64,
    /// How the smallest sum of squares was found, in words.
    pub method: String,
    /// How many refits of the bootstrap converged.
    pub replicates: u64,
}

/// One half-life.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct HalfLifeAnswer {
    /// When it begins.
    pub begins: f64,
    /// How long it is.
    pub length: f64,
}

/// Half-lives.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct HalfLivesAnswer {
    /// One after the other.
    pub half_lives: Vec<HalfLifeAnswer>,
    /// Their mean.
    pub mean: f64,
    /// The unit of all of these.
    pub unit: String,
    /// The longest divided by the shortest.
    pub spread: f64,
    /// Whether they count as the same; none for a single one.
    pub constant: Option<bool>,
    /// The longest may exceed the shortest by this much (%).
    pub constant_within_percent: f64,
    /// The order that each pair of neighbours stands for.
    pub orders: Vec<f64>,
}

/// A rate law of one order, tried on one curve.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct TriedOrderAnswer {
    /// The order: 0, 1 or 2.
    pub order: u32,
    /// What is plotted against time to make it straight.
    pub straight: String,
    /// R² of that line.
    pub r_squared: Option<f64>,
    /// The root mean square distance of the readings from that line bent back; none where it leaves what is possible.
    pub misses_by: Option<f64>,
    /// The standard deviation of the residuals of the curve fitted to the readings themselves.
    pub residual_standard_deviation: Option<f64>,
}

/// The order from one curve.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct CurveOrderAnswer {
    /// The orders 0, 1 and 2.
    pub tried: Vec<TriedOrderAnswer>,
    /// Which of them leaves the least scatter.
    pub best: Option<u32>,
    /// The order fitted.
    pub fitted: Option<MeasureAnswer>,
    /// How many readings were used: those with 5 % or more still to come.
    pub readings: u64,
}

/// The amount of gas that readings stand for.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct GasAnswer {
    /// Dry gas for each unit of the readings (mmol).
    pub amount_mmol_per_unit: f64,
    /// The initial rate as an amount.
    pub initial_rate: MeasureAnswer,
    /// What each correction is worth.
    pub corrections: Vec<CorrectionAnswer>,
}

/// A point of a comparison of runs.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct RunPointAnswer {
    /// The run, or the row of a table of rates.
    pub run: String,
    /// The concentration, or the temperature (K).
    pub x: f64,
    /// The rate, or the rate constant.
    pub y: f64,
    /// What is plotted along: ln x, or 1/x (1/K).
    pub plotted_x: f64,
    /// What is plotted up: ln y.
    pub plotted_y: f64,
    /// The line at this point.
    pub fitted: f64,
}

/// An order from several runs.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct OrderAnswer {
    /// Which rates: "tangent", "whole_curve", "first_two", or "given".
    pub from: String,
    /// The order.
    pub order: MeasureAnswer,
    /// The rate constant, rate/concentration^order, at the fitted order: its unit goes with that order.
    pub rate_constant: f64,
    /// The line of ln rate against ln concentration.
    pub line: LineAnswer,
    /// Rate against concentration, with and without intercept.
    pub lines: LinesAnswer,
    /// The points.
    pub points: Vec<RunPointAnswer>,
    /// Unit of the concentrations.
    pub concentration_unit: String,
    /// Unit of the rates.
    pub rate_unit: String,
}

/// Michaelis and Menten.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct SaturationAnswer {
    /// Which rates.
    pub from: String,
    /// The greatest rate.
    pub greatest_rate: MeasureAnswer,
    /// The concentration at half of it.
    pub half_rate_concentration: MeasureAnswer,
    /// The greatest rate by double reciprocals, for comparison only.
    pub double_reciprocal_greatest_rate: f64,
    /// The concentration at half of it by double reciprocals.
    pub double_reciprocal_half_rate_concentration: f64,
    /// The standard deviation of the residuals.
    pub residual_standard_deviation: Option<f64>,
}

/// Activation energy.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct ArrheniusAnswer {
    /// From which: "rate_constant", or one of the initial rates.
    pub from: String,
    /// Activation energy (kJ/mol).
    pub activation_energy: MeasureAnswer,
    /// ln A.
    pub ln_pre_exponential: MeasureAnswer,
    /// A; none where it overflows.
    pub pre_exponential: Option<f64>,
    /// The unit of A.
    pub pre_exponential_unit: String,
    /// Covariance of the activation energy (kJ/mol) and ln A; none for two points.
    pub covariance: Option<f64>,
    /// Their correlation.
    pub correlation: Option<f64>,
    /// The activation energies of the shallowest and the steepest line (kJ/mol).
    pub worst_lines: Option<[f64; 2]>,
    /// What those are drawn through, in words.
    pub worst_lines_through: String,
    /// The gas constant that was used (J/(mol K)).
    pub gas_constant: f64,
    /// The line of ln k against 1/T.
    pub line: LineAnswer,
    /// The points.
    pub points: Vec<RunPointAnswer>,
}
