//! Rows put together to runs, in order of time, with what does not belong taken out and said.

use overwater::readings::series::{Finding, Names};
use overwater::{Code, Error};

use super::columns::Kind;
use super::rows::{Row, Rows};
use crate::table::BadCell;

/// Temperatures within a run that differ by more than this are said, in K.
const STEADY_WITHIN_K: f64 = 1.0;

/// A run.
#[derive(Debug, Clone)]
pub(crate) struct Run {
    pub(crate) label: String,
    pub(crate) numbers: Vec<u64>,
    pub(crate) x: Vec<f64>,
    pub(crate) y: Vec<f64>,
    /// One row of it, for what is the same in all.
    pub(crate) first: Row,
    pub(crate) temperature_k: Option<f64>,
    pub(crate) warnings: Vec<String>,
}

/// The names of the two columns of a run.
pub(crate) fn names(rows: &Rows, followed: Kind) -> Names {
    Names { x: rows.name(Kind::Time), y: rows.name(followed) }
}

/// A temperature of a row in kelvin.
pub(crate) fn kelvin(rows: &Rows, row: &Row, kind: Kind) -> Option<f64> {
    row.get(kind).map(|value| rows.unit(kind).to_si(value))
}

/// What tells runs apart: their label, or where there is none what they were done at.
fn key(row: &Row) -> (Option<&str>, [u64; 2]) {
    let at = |kind: Kind| row.get(kind).map_or(0, f64::to_bits);
    match &row.run {
        Some(label) => (Some(label), [0, 0]),
        None => (None, [at(Kind::Temperature), at(Kind::InitialConcentration)]),
    }
}

fn label(rows: &Rows, row: &Row, index: usize) -> String {
    let at = |kind: Kind| row.get(kind).map(|value| format!("{value} {}", rows.unit(kind).text));
    match &row.run {
        Some(label) if !label.is_empty() => label.clone(),
        Some(_) => (index + 1).to_string(),
        None => {
            let parts: Vec<String> =
                [at(Kind::Temperature), at(Kind::InitialConcentration)].into_iter().flatten().collect();
            if parts.is_empty() { (index + 1).to_string() } else { parts.join(", ") }
        }
    }
}

/// The rows of each run, in the order of the table.
fn grouped(rows: &mut Rows) -> Vec<Vec<Row>> {
    let mut places = std::collections::HashMap::new();
    let mut runs: Vec<Vec<Row>> = Vec::new();
    for row in std::mem::take(&mut rows.rows) {
        let (label, bits) = key(&row);
        let place = *places.entry((label.map(str::to_owned), bits)).or_insert(runs.len());
        match runs.get_mut(place) {
            Some(run) => run.push(row),
            None => runs.push(vec![row]),
        }
    }
    runs
}

/// Puts runs together. Rows that go back in time, stand twice, or in which what is followed goes back by more than
/// `may_go_back` (a share of the whole change) are put down as bad.
pub(crate) fn runs(rows: &mut Rows, followed: Kind, may_go_back: f64) -> Vec<Run> {
    let groups = grouped(rows);
    let mut found = Vec::new();
    for (index, group) in groups.iter().enumerate() {
        if let Some(first) = group.first() {
            let label = label(rows, first, index);
            found.push(run(rows, followed, may_go_back, label, first, group));
        }
    }
    found
}

fn run(rows: &mut Rows, followed: Kind, may_go_back: f64, label: String, first: &Row, group: &[Row]) -> Run {
    let names = names(rows, followed);
    let mut run = Run {
        label,
        numbers: Vec::new(),
        x: Vec::new(),
        y: Vec::new(),
        first: first.clone(),
        temperature_k: None,
        warnings: Vec::new(),
    };
    let values = || group.iter().filter_map(|row| row.get(followed));
    let whole = values().fold(f64::NEG_INFINITY, f64::max) - values().fold(f64::INFINITY, f64::min);
    let (mut back, mut temperatures) = (Vec::new(), Vec::new());
    for row in group {
        let (Some(x), Some(y)) = (row.get(Kind::Time), row.get(followed)) else { continue };
        let before = run.x.last().copied().zip(run.y.last().copied());
        let found = match before {
            Some((before, _)) if x == before => Some((names.x, Finding::Repeated { row: 0, value: x })),
            Some((before, _)) if x < before => {
                Some((names.x, Finding::OutOfOrder { row: 0, value: x, before }))
            }
            _ => None,
        };
        if let Some((column, finding)) = found {
            rows.refuse(
                row.number,
                row.line,
                BadCell { column: column.to_owned(), error: finding.error(names) },
            );
            continue;
        }
        if let Some((_, before)) = before {
            let by = if followed.falls() { y - before } else { before - y };
            if by > may_go_back * whole {
                rows.refuse(row.number, row.line, goes_back(rows, followed, y, before));
                continue;
            }
            if by > 0.0 {
                back.push(row.number.to_string());
            }
        }
        if let Some(other) = differs(rows, &run, row) {
            rows.refuse(row.number, row.line, other);
            continue;
        }
        temperatures.extend(kelvin(rows, row, Kind::Temperature));
        run.numbers.push(row.number);
        run.x.push(x);
        run.y.push(y);
    }
    if !back.is_empty() {
        let way = if followed.falls() { "rises" } else { "falls" };
        run.warnings.push(format!(
            "{} {way} at row(s) {}, within what a misreading does",
            followed.stem().replace('_', " "),
            back.join(", ")
        ));
    }
    if !temperatures.is_empty() {
        let mean = temperatures.iter().sum::<f64>() / temperatures.len() as f64;
        let least = temperatures.iter().copied().fold(f64::INFINITY, f64::min);
        let greatest = temperatures.iter().copied().fold(f64::NEG_INFINITY, f64::max);
        // A mean of equal numbers is that number to the bit.
        run.temperature_k = Some(if least == greatest { least } else { mean });
        if greatest - least > STEADY_WITHIN_K {
            run.warnings.push(format!(
                "the temperature goes from {least:.1} to {greatest:.1} K: the mean is used, and no single rate constant \
                 holds for the run"
            ));
        }
    }
    run
}

fn goes_back(rows: &Rows, followed: Kind, value: f64, before: f64) -> BadCell {
    let names = names(rows, followed);
    let unit = rows.unit(followed).text;
    let error = if followed.falls() {
        Error::new(Code::Contradiction, "").value(format!("{value} {unit}")).allowed(format!("not above {before} {unit}, the row before")).advice(
            "what is used up does not come back: look for a misreading, a draught on the balance, or a column that is not what its name says",
        )
    } else {
        Finding::Falls { row: 0, value, before }.error(names)
    };
    BadCell { column: names.y.to_owned(), error }
}

/// What a run was begun with is the same in all of its rows.
fn differs(rows: &Rows, run: &Run, row: &Row) -> Option<BadCell> {
    let same = [
        Kind::InitialConcentration,
        Kind::Start,
        Kind::FinalVolume,
        Kind::FinalMass,
        Kind::FinalMassLoss,
        Kind::FinalConcentration,
    ];
    let kind = same.into_iter().find(|kind| run.first.get(*kind) != row.get(*kind))?;
    let value = |row: &Row| row.get(kind).map_or_else(|| "blank".to_owned(), |value| value.to_string());
    Some(BadCell {
        column: rows.name(kind).to_owned(),
        error: Error::new(Code::Contradiction, "")
            .value(value(row))
            .allowed(format!("{}, as in the first row of run {}", value(&run.first), run.label))
            .advice("give rows of different runs different labels"),
    })
}
