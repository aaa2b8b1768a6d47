//! One formula over columns of values, and the formulas that there are.

use std::collections::BTreeMap;

use overwater::catalogue::{self, AnyFormula};
use overwater::{Code, Error};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

use crate::bounds::BoundEntry;
use crate::calculation::{in_order, result_name};
use crate::respond::listing::ListRequest;
use crate::{FORMAT, Refusal};

/// A formula with columns of values.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct ColumnsRequest {
    /// The format of the request; 1.
    pub format: u32,
    /// The formula's name, as in "dry_amount".
    pub formula: String,
    /// Inputs that are the same in every row.
    #[serde(default, skip_serializing_if = "BTreeMap::is_empty")]
    pub given: BTreeMap<String, f64>,
    /// The other inputs, each a column, all of one length; `null` where a value is missing.
    pub columns: BTreeMap<String, Vec<Option<f64>>>,
}

/// A column of results.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct ColumnsAnswer {
    /// The format of the answer; 1.
    pub format: u32,
    /// The version of the library that gave it.
    pub library_version: String,
    /// The formula's name.
    pub formula: String,
    /// The result's name, with the unit at the end.
    pub name: String,
    /// What it is.
    pub words: String,
    /// Its unit.
    pub unit: String,
    /// Where the relation comes from.
    pub source: String,
    /// A result for each row; `null` where there is none, with the reason below.
    pub values: Vec<Option<f64>>,
    /// The rows without a result.
    pub without_result: Vec<NoResult>,
}

/// Why a row has no result.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct NoResult {
    /// The row, from 1.
    pub row: u32,
    /// The kind of refusal, as in an error.
    pub code: String,
    /// The input that is wrong, or the formula where its inputs together have no result.
    pub name: String,
    /// The whole message in one sentence.
    pub message: String,
}

/// Every formula, or those that hold a text.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct FormulasAnswer {
    /// The format of the answer; 1.
    pub format: u32,
    /// The version of the library that gave it.
    pub library_version: String,
    /// The formulas.
    pub formulas: Vec<FormulaEntry>,
}

/// A formula.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct FormulaEntry {
    /// Its name.
    pub formula: String,
    /// The result's name, with the unit at the end.
    pub name: String,
    /// What the result is.
    pub words: String,
    /// The result's unit.
    pub unit: String,
    /// Where the relation comes from.
    pub source: String,
    /// Its inputs, in order.
    pub inputs: Vec<BoundEntry>,
}

/// Works out a formula row by row. A row without a result does not touch the others.
///
/// ```
/// use overwater_exchange::columns::{ColumnsRequest, calculate_columns};
/// let request = ColumnsRequest {
///     format: 1,
///     formula: "vapour_pressure".to_owned(),
///     given: Default::default(),
///     columns: [("temperature_c".to_owned(), vec![Some(20.0), Some(120.0), None])].into(),
/// };
/// let answer = calculate_columns(&request)?;
/// // CRC Handbook: 2.3388 kPa.
/// assert!((answer.values[0].unwrap() - 2.339).abs() < 5e-4);
/// assert_eq!((answer.values[1], answer.without_result[0].code.as_str()), (None, "out_of_range"));
/// assert_eq!((answer.values[2], answer.without_result[1].code.as_str()), (None, "missing"));
/// # Ok::<(), Box<overwater_exchange::Refusal>>(())
/// ```
///
/// # Errors
/// `unknown_name` and `missing` for names, `given_twice` for an input that is both given and a column, `contradiction` for
/// columns of different lengths.
pub fn calculate_columns(request: &ColumnsRequest) -> Result<ColumnsAnswer, Box<Refusal>> {
    let formula = catalogue::find(&request.formula)?;
    let rows = length(request)?;
    let mut all = request.columns.clone();
    for (name, value) in &request.given {
        if all.insert(name.clone(), vec![Some(*value); rows]).is_some() {
            return Err(Error::new(Code::GivenTwice, format!("columns.{name}"))
                .advice("it is given for every row: leave one of the two out")
                .into());
        }
    }
    let place = |name: &str| if request.given.contains_key(name) { "given" } else { "columns" };
    let ordered = in_order(&*formula, &all, |value| vec![Some(value); rows]).map_err(|error| {
        let place = place(&error.parameter);
        error.within(place)
    })?;
    let columns: Vec<Vec<f64>> = ordered
        .iter()
        .map(|(_, column)| column.iter().map(|value| value.unwrap_or(f64::NAN)).collect())
        .collect();
    let slices: Vec<&[f64]> = columns.iter().map(Vec::as_slice).collect();
    let mut results = vec![f64::NAN; rows];
    formula.fill(&slices, &mut results)?;
    let values: Vec<Option<f64>> =
        results.into_iter().map(|value| Some(value).filter(|v| v.is_finite())).collect();
    let without_result = values
        .iter()
        .enumerate()
        .filter(|(_, value)| value.is_none())
        .map(|(index, _)| {
            let row: Vec<Option<f64>> =
                ordered.iter().map(|(_, column)| column.get(index).copied().flatten()).collect();
            let error = reason(&*formula, &row);
            NoResult {
                row: u32::try_from(index + 1).unwrap_or(u32::MAX),
                code: error.code.name().to_owned(),
                message: error.to_string(),
                name: error.parameter.into_owned(),
            }
        })
        .collect();
    let output = formula.output();
    Ok(ColumnsAnswer {
        format: FORMAT,
        library_version: env!("CARGO_PKG_VERSION").to_owned(),
        formula: formula.name().to_owned(),
        name: result_name(output),
        words: output.name.to_owned(),
        unit: output.unit.text.to_owned(),
        source: source(&*formula),
        values,
        without_result,
    })
}

/// Where a relation comes from.
fn source(formula: &dyn AnyFormula) -> String {
    formula.output().source.map(|source| source.text.to_owned()).unwrap_or_default()
}

/// How many rows the columns have.
fn length(request: &ColumnsRequest) -> Result<usize, Error> {
    let mut columns = request.columns.iter();
    let Some((first, column)) = columns.next() else {
        return Err(Error::new(Code::Missing, "columns").advice("give at least one input as a column"));
    };
    match columns.find(|(_, other)| other.len() != column.len()) {
        None => Ok(column.len()),
        Some((name, other)) => Err(Error::new(Code::Contradiction, format!("columns.{name}"))
            .value(format!("{} rows", other.len()))
            .allowed(format!("{} rows, as many as {first} has", column.len()))
            .advice("give columns of one length")),
    }
}

/// Why a row has no result.
fn reason(formula: &dyn AnyFormula, row: &[Option<f64>]) -> Error {
    let values: Vec<f64> = row.iter().map(|value| value.unwrap_or(f64::NAN)).collect();
    let missing = row.iter().zip(formula.inputs()).find(|(value, _)| value.is_none());
    match (missing, formula.number(&values)) {
        (Some((_, bound)), _) => Error::new(Code::Missing, bound.name).allowed(bound.range()),
        (None, Err(error)) => error,
        (None, Ok(_)) => Error::new(Code::NotANumber, formula.name().to_owned()),
    }
}

/// The formulas whose name, result or inputs hold a text, in any case; all of them for an empty one.
///
/// # Errors
/// None.
pub fn formulas(request: &ListRequest) -> Result<FormulasAnswer, Box<Refusal>> {
    let wanted = request.text.to_lowercase();
    let entry = |formula: &dyn AnyFormula| FormulaEntry {
        formula: formula.name().to_owned(),
        name: result_name(formula.output()),
        words: formula.output().name.to_owned(),
        unit: formula.output().unit.text.to_owned(),
        source: source(formula),
        inputs: formula.inputs().into_iter().map(BoundEntry::from).collect(),
    };
    let holds = |entry: &FormulaEntry| {
        let own = [&entry.formula, &entry.name, &entry.words];
        let inputs = entry.inputs.iter().flat_map(|input| [&input.name, &input.quantity]);
        own.into_iter().chain(inputs).any(|text| text.to_lowercase().contains(&wanted))
    };
    Ok(FormulasAnswer {
        format: FORMAT,
        library_version: env!("CARGO_PKG_VERSION").to_owned(),
        formulas: catalogue::all().iter().map(|formula| entry(&**formula)).filter(holds).collect(),
    })
}
