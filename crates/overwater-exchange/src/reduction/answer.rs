//! What came out.

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

use crate::calculation::StepAnswer;
use crate::lines::LinesAnswer;
use crate::propagation::answer::PropagationAnswer;

/// The results of readings.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct ReductionAnswer {
    /// The format of the answer; 1.
    pub format: u32,
    /// The version of the library that gave it.
    pub library_version: String,
    /// The title, as given.
    pub title: Option<String>,
    /// The practical's name.
    pub practical: String,
    /// The collector's name.
    pub collector: String,
    /// What was taken as said and what was decided: the balanced reaction, conditions, the decimal sign, columns not used.
    pub notes: Vec<String>,
    /// How many rows were read.
    pub rows_read: u64,
    /// How many of them have a result.
    pub rows_good: u64,
    /// The rows one by one; of a table that is read from a file the first 200.
    pub rows: Vec<RowAnswer>,
    /// Each result over all good rows.
    pub summary: Vec<SummaryAnswer>,
    /// The slope over all rows, where the practical goes by it.
    pub slope: Option<SlopeAnswer>,
    /// The rows that have no result; of a table that is read from a file the first 200.
    pub bad_rows: Vec<BadRowAnswer>,
    /// The worked solution of the row that was asked for.
    pub working: Vec<StepAnswer>,
    /// The constants of the worked solution.
    pub constants: Vec<ConstantAnswer>,
}

/// A result that is the slope over all rows.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct SlopeAnswer {
    /// Its name, with the unit at the end.
    pub name: String,
    /// What it is.
    pub words: String,
    /// With and without intercept.
    pub lines: LinesAnswer,
    /// Deviation of the slope with intercept from the accepted value (%).
    pub percent_error: Option<f64>,
    /// Deviation of the slope through the origin from the accepted value (%).
    pub percent_error_through_origin: Option<f64>,
}

/// A constant that was put in.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct ConstantAnswer {
    /// Its symbol.
    pub symbol: String,
    /// What it is.
    pub words: String,
    /// Its value.
    pub value: f64,
    /// Its unit.
    pub unit: String,
    /// Where it comes from.
    pub source: String,
}

/// The results of a row.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct RowAnswer {
    /// The row, from 1.
    pub row: u64,
    /// Its label.
    pub label: Option<String>,
    /// The results, the one that the practical is about first.
    pub results: Vec<ValueAnswer>,
    /// Deviation from the accepted value (%).
    pub percent_error: Option<f64>,
    /// What each correction is worth.
    pub corrections: Vec<CorrectionAnswer>,
    /// How uncertain the result is that was asked about, with its budget.
    pub uncertainty: Option<PropagationAnswer>,
    /// A molecular formula, where the results give one.
    pub formula: Option<String>,
    /// Significant figures of the row's least precise reading in the table, small corrections aside; none where it did not
    /// come as text.
    pub data_figures: Option<u32>,
}

/// A result.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct ValueAnswer {
    /// Its name, with the unit at the end.
    pub name: String,
    /// Its symbol.
    pub symbol: String,
    /// What it is.
    pub words: String,
    /// Its value.
    pub value: f64,
    /// Its unit.
    pub unit: String,
}

/// What a correction is worth: the change if it is left out, with its sign.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct CorrectionAnswer {
    /// Its name; `24_dm3_for_the_gas_as_read` is no correction but what 24.0 dm3/mol, used for the gas as read, would
    /// make of the amount.
    pub name: String,
    /// Whether it was made.
    pub made: bool,
    /// Change of the amount of gas if it is left out (%).
    pub amount_percent: Option<f64>,
    /// Change of the first result if it is left out (%).
    pub result_percent: f64,
}

/// A result over all good rows.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct SummaryAnswer {
    /// Its name, with the unit at the end.
    pub name: String,
    /// Its symbol.
    pub symbol: String,
    /// What it is.
    pub words: String,
    /// Its unit.
    pub unit: String,
    /// How many rows.
    pub count: u64,
    /// Mean.
    pub mean: f64,
    /// Standard deviation of a row, from count - 1; none for one row.
    pub standard_deviation: Option<f64>,
    /// The least.
    pub least: f64,
    /// The greatest.
    pub greatest: f64,
    /// Deviation of the mean from the accepted value (%).
    pub percent_error: Option<f64>,
}

/// A row without a result.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct BadRowAnswer {
    /// The row, from 1.
    pub row: u64,
    /// The line of the file, from 1; none for rows that are not lines.
    pub line: Option<u64>,
    /// The column or key.
    pub column: String,
    /// The kind of refusal.
    pub code: String,
    /// Why, in one sentence with row and column.
    pub message: String,
}
