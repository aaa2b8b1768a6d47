//! Row after row through the chain.

use std::collections::BTreeMap;
use std::collections::btree_map::Entry;
use std::io::Read;

use overwater::gas::collected::DryAmount;
use overwater::readings::reduction::{Collector, Corrections};
use overwater::readings::{Experiment, Practical, Quantity, Row};
use overwater::scalar::{Formula, Symbol};
use overwater::symbols;
use overwater::{Code, Error};

use super::answer::{
    BadRowAnswer, ConstantAnswer, CorrectionAnswer, ReductionAnswer, RowAnswer, SummaryAnswer, ValueAnswer,
};
use super::columns::{Column, LABELS, column, school};
use super::prepared::{Prepared, collector_name, prepare};
use super::request::{CellRequest, ReductionRequest};
use super::slope::{SLOPE, Slope};
use super::table::{Batch, Table};
use super::uncertainty::Uncertainties;
use crate::calculation::{result_name, steps};
use crate::lines::finite;
use crate::table::BadCell;
use crate::{FORMAT, Refusal};

/// Rows of a table that an answer keeps one by one; the summary is over all. Of rows that are at hand it keeps every one.
pub const KEPT_ROWS: usize = 200;

/// The molar volume that is often used for any gas in a room (dm3/mol).
const ROOM_MOLAR_VOLUME: f64 = 24.0;

/// Works out rows that are at hand. Rows without a result are listed in the answer, and lose nothing of the others.
/// `working` asks for the worked solution of a row, from 1.
///
/// # Errors
/// Everything in the request beside the rows that is refused, and `missing` where there is no row.
pub fn reduce(request: &ReductionRequest, working: Option<u64>) -> Result<ReductionAnswer, Box<Refusal>> {
    let mut run = Run::new(request, working, usize::MAX)?;
    let columns = columns(request, &mut run.prepared)?;
    let label_name = LABELS.into_iter().find(|name| columns.contains_key(name));
    for (index, cells) in request.rows.iter().enumerate() {
        let mut row = run.prepared.shared;
        let mut label = None;
        let mut wrong = None;
        for (name, cell) in cells {
            let result =
                match (columns.get(name.as_str()), cell) {
                    (Some(Column::Reading(quantity, unit)), CellRequest::Number(number)) => {
                        match row.get(*quantity) {
                            Some(_) => Err(Error::new(Code::GivenTwice, "")
                                .advice("give each quantity once, in one unit")),
                            None => {
                                row.set(*quantity, Some(school(*quantity, unit, *number)));
                                Ok(())
                            }
                        }
                    }
                    (Some(Column::Reading(..)), CellRequest::Text(text)) => {
                        Err(Error::new(Code::Syntax, "").value(format!("{text:?}")).advice("write a number"))
                    }
                    (Some(Column::Label), cell) if label_name == Some(name.as_str()) => {
                        label = Some(match cell {
                            CellRequest::Text(text) => text.clone(),
                            CellRequest::Number(number) => number.to_string(),
                        });
                        Ok(())
                    }
                    (Some(Column::Label | Column::Note) | None, _) => Ok(()),
                };
            if let Err(error) = result {
                wrong.get_or_insert((name.clone(), error));
            }
        }
        let row = match wrong {
            Some((column, error)) => Err(Box::new(BadCell { column, error })),
            None => Ok(row),
        };
        run.row(index as u64 + 1, None, label, row, |_| None);
    }
    run.finish()
}

/// What the names in the rows stand for. A name that nearly stands for a reading is refused; those that stand for nothing
/// are noted, as in a table.
fn columns<'r>(
    request: &'r ReductionRequest,
    prepared: &mut Prepared,
) -> Result<BTreeMap<&'r str, Column>, Error> {
    let mut known = BTreeMap::new();
    for (index, cells) in request.rows.iter().enumerate() {
        for name in cells.keys().map(String::as_str) {
            if let Entry::Vacant(entry) = known.entry(name) {
                let within = format!("rows[{index}]");
                let column = column(name).map_err(|error| error.within(&within))?;
                if let Column::Reading(_, unit) = &column {
                    prepared.kelvin(unit, &format!("{within}.{name}"))?;
                }
                entry.insert(column);
            }
        }
    }
    let label = LABELS.into_iter().find(|name| known.contains_key(name));
    let unused: Vec<&str> = known
        .iter()
        .filter(|(name, column)| match column {
            Column::Reading(..) => false,
            Column::Label => Some(**name) != label,
            Column::Note => true,
        })
        .map(|(name, _)| *name)
        .collect();
    if !unused.is_empty() {
        prepared.notes.push(format!("columns not used: {}", unused.join(", ")));
    }
    Ok(known)
}

/// Works out a table as it is read; only a batch of rows is held. Everything else as for [`reduce`].
///
/// # Errors
/// As for [`reduce`], and the header of the table.
pub fn reduce_table(
    request: &ReductionRequest,
    source: impl Read,
    working: Option<u64>,
) -> Result<ReductionAnswer, Box<Refusal>> {
    if !request.rows.is_empty() {
        return Err(Error::new(Code::GivenTwice, "rows").advice("the rows are those of the table").into());
    }
    let mut run = Run::new(request, working, KEPT_ROWS)?;
    let mut table = Table::open(source, &run.prepared, request.decimal)?;
    let quantities = table.quantities();
    let mut batch = Batch::default();
    let mut amounts = Vec::new();
    let mut number = 0;
    loop {
        table.batch(&mut batch)?;
        if batch.len() == 0 {
            break;
        }
        let whole = number >= KEPT_ROWS as u64 && run.amounts(&quantities, &batch, &mut amounts);
        for index in 0..batch.len() {
            number += 1;
            if whole && let Some(amount) = amounts.get(index).filter(|amount| amount.is_finite()) {
                run.plain(*amount);
                continue;
            }
            let mut row = run.prepared.shared;
            for (quantity, values) in quantities.iter().zip(&batch.columns) {
                row.set(*quantity, values.get(index).copied());
            }
            let row = match batch.bad.get_mut(index).and_then(Option::take) {
                Some(bad) => Err(bad),
                None => Ok(row),
            };
            let label = batch.labels.get_mut(index).and_then(Option::take);
            let kept = run.answer_rows.len();
            run.row(number, batch.lines.get(index).copied(), label, row, |name| table.name(name));
            // A row that was kept is the last one.
            if let Some(answer) = run.answer_rows.get_mut(kept) {
                answer.data_figures = batch.figures.get(index).copied();
            }
        }
    }
    run.prepared.notes.append(&mut table.notes);
    run.finish()
}

/// What is gathered while the rows go by.
struct Run {
    prepared: Prepared,
    /// How many rows the answer keeps.
    kept: usize,
    title: Option<String>,
    answer_rows: Vec<RowAnswer>,
    bad: Vec<BadRowAnswer>,
    read: u64,
    good: u64,
    sums: Vec<Sum>,
    wanted: Option<u64>,
    worked: Option<Row<f64>>,
    /// Mass at the start, where it is that of the first row.
    start: Option<f64>,
    last_time: f64,
    uncertainties: Option<Uncertainties>,
    /// The points of the line, where the practical goes by its slope.
    slope: Option<Slope>,
}

/// Welford's running mean and sum of squares.
struct Sum {
    symbol: &'static Symbol,
    count: u64,
    mean: f64,
    squares: f64,
    least: f64,
    greatest: f64,
}

impl Sum {
    fn new(symbol: &'static Symbol) -> Self {
        Sum { symbol, count: 0, mean: 0.0, squares: 0.0, least: f64::INFINITY, greatest: f64::NEG_INFINITY }
    }

    fn add(&mut self, value: f64) {
        self.count += 1;
        let off = value - self.mean;
        self.mean += off / self.count as f64;
        self.squares += off * (value - self.mean);
        self.least = self.least.min(value);
        self.greatest = self.greatest.max(value);
    }
}

impl Run {
    fn new(request: &ReductionRequest, wanted: Option<u64>, kept: usize) -> Result<Self, Box<Refusal>> {
        let prepared = prepare(request)?;
        let accepted =
            prepared.accepted.as_ref().map(|(name, _)| name.as_str()).filter(|name| *name != SLOPE);
        let uncertainties = match &request.uncertainty {
            Some(asked) => Some(Uncertainties::read(asked, accepted)?),
            None => None,
        };
        let by_slope = prepared.experiment.practical == Practical::MolarVolumeFromSlope;
        Ok(Run {
            slope: by_slope.then(Slope::default),
            uncertainties,
            prepared,
            kept,
            title: request.title.clone(),
            answer_rows: Vec::new(),
            bad: Vec::new(),
            read: 0,
            good: 0,
            sums: Vec::new(),
            wanted,
            worked: None,
            start: None,
            last_time: f64::NEG_INFINITY,
        })
    }

    /// Dry amounts of a whole batch by the columns' door, where nothing else is asked for and nothing is left out.
    fn amounts(&self, quantities: &[Quantity], batch: &Batch, amounts: &mut Vec<f64>) -> bool {
        let experiment = &self.prepared.experiment;
        let plain = experiment.practical == Practical::Amount
            && experiment.chain.collector == Collector::OverWater
            && experiment.chain.corrections == Corrections::USUAL
            && self.sums.len() == 1;
        let known = |quantity: Quantity| {
            quantities.contains(&quantity) || self.prepared.shared.get(quantity).is_some()
        };
        if !plain || known(Quantity::SeaLevelPressure) || known(Quantity::VapourPressure) {
            return false;
        }
        let rows = batch.len();
        let column = |quantity: Quantity, otherwise: Option<f64>| -> Option<std::borrow::Cow<'_, [f64]>> {
            match quantities.iter().position(|own| *own == quantity) {
                Some(place) => batch.columns.get(place).map(|values| values.as_slice().into()),
                None => {
                    self.prepared.shared.get(quantity).or(otherwise).map(|value| vec![value; rows].into())
                }
            }
        };
        let (Some(volume), Some(temperature), Some(pressure), Some(level)) = (
            column(Quantity::Volume, None),
            column(Quantity::Temperature, None),
            column(Quantity::Pressure, None),
            column(Quantity::InsideMinusOutside, Some(0.0)),
        ) else {
            return false;
        };
        amounts.clear();
        amounts.resize(rows, f64::NAN);
        let formula = DryAmount { conventions: experiment.chain.conventions };
        let filled = formula.fill([&volume, &temperature, &pressure, &level], amounts).is_ok();
        // A row with a cell that is not used here may still be bad.
        for (amount, bad) in amounts.iter_mut().zip(&batch.bad) {
            if bad.is_some() {
                *amount = f64::NAN;
            }
        }
        filled
    }

    fn plain(&mut self, amount: f64) {
        self.read += 1;
        self.good += 1;
        if let Some(sum) = self.sums.first_mut() {
            sum.add(amount);
        }
    }

    fn row<'n>(
        &mut self,
        number: u64,
        line: Option<u64>,
        label: Option<String>,
        row: Result<Row<f64>, Box<BadCell>>,
        name: impl Fn(&str) -> Option<&'n str>,
    ) {
        self.read += 1;
        let worked = row.and_then(|row| {
            self.one(number, label, row).map_err(|error| {
                let column = name(&error.parameter).unwrap_or(&error.parameter).to_owned();
                Box::new(BadCell { column, error })
            })
        });
        match worked {
            Ok(Some(answer)) => {
                self.good += 1;
                if self.answer_rows.len() < self.kept {
                    self.answer_rows.push(answer);
                }
            }
            Ok(None) => {}
            Err(bad) => {
                if self.bad.len() < self.kept {
                    let (column, code) = (bad.column.clone(), bad.error.code.name().to_owned());
                    let message = bad.error_at(number, line).to_string();
                    self.bad.push(BadRowAnswer { row: number, line, column, code, message });
                }
            }
        }
    }

    /// One row; nothing for the row that only says what the mass was at the start.
    fn one(
        &mut self,
        number: u64,
        label: Option<String>,
        mut row: Row<f64>,
    ) -> Result<Option<RowAnswer>, Error> {
        let experiment = self.prepared.experiment;
        if experiment.practical == Practical::MassLossRate && self.mass_at_start(&mut row)? {
            return Ok(None);
        }
        let outcome = experiment.results(&row)?;
        let answer = self.answer(number, label, &row, &outcome.results)?;
        self.add(&outcome.results);
        if let Some(slope) = &mut self.slope {
            slope.push(&outcome)?;
        }
        if self.wanted == Some(number) {
            self.worked = Some(row);
        }
        Ok(Some(answer))
    }

    fn add(&mut self, results: &[(&'static Symbol, f64)]) {
        for (symbol, value) in results {
            let known = self.sums.iter().position(|sum| sum.symbol.id == symbol.id);
            let place = known.unwrap_or_else(|| {
                self.sums.push(Sum::new(symbol));
                self.sums.len() - 1
            });
            if let Some(sum) = self.sums.get_mut(place) {
                sum.add(*value);
            }
        }
    }

    fn answer(
        &self,
        number: u64,
        label: Option<String>,
        row: &Row<f64>,
        outcome: &[(&'static Symbol, f64)],
    ) -> Result<RowAnswer, Error> {
        if self.answer_rows.len() >= self.kept {
            return Ok(RowAnswer {
                row: number,
                label: None,
                results: Vec::new(),
                percent_error: None,
                corrections: Vec::new(),
                uncertainty: None,
                formula: None,
                data_figures: None,
            });
        }
        let results: Vec<ValueAnswer> =
            outcome.iter().map(|(symbol, value)| value_answer(symbol, *value)).collect();
        let percent_error = match &self.prepared.accepted {
            None => None,
            Some((name, _)) if self.slope.is_some() && name == SLOPE => None,
            Some((name, accepted)) => {
                let own = results.iter().find(|result| result.name == *name).ok_or_else(|| {
                    let known: Vec<&str> = results.iter().map(|result| result.name.as_str()).collect();
                    Error::new(Code::UnknownName, format!("accepted.{name}"))
                        .allowed(known.join(", "))
                        .advice("give the accepted value under the name of a result")
                })?;
                Some(100.0 * (own.value / accepted - 1.0))
            }
        };
        let mut corrections = correction_answers(&self.prepared.experiment, row)?;
        corrections.extend(self.room_molar_volume(row, outcome));
        Ok(RowAnswer {
            row: number,
            label,
            results,
            percent_error,
            corrections,
            uncertainty: match &self.uncertainties {
                Some(own) => Some(own.of(&self.prepared.experiment, row, outcome)?),
                None => None,
            },
            formula: formula(outcome),
            data_figures: None,
        })
    }

    /// What 24.0 dm3/mol, used for the gas as read, would have made of the amount.
    fn room_molar_volume(
        &self,
        row: &Row<f64>,
        results: &[(&'static Symbol, f64)],
    ) -> Option<CorrectionAnswer> {
        let chain = self.prepared.experiment.chain;
        if chain.collector == Collector::MassLoss || self.prepared.experiment.practical != Practical::Amount {
            return None;
        }
        let amount = results.iter().find(|(symbol, _)| symbol.id == symbols::AMOUNT.id)?.1;
        let percent = 100.0 * (row.get(Quantity::Volume)? / ROOM_MOLAR_VOLUME / amount - 1.0);
        Some(CorrectionAnswer {
            name: "24_dm3_for_the_gas_as_read".to_owned(),
            made: true,
            amount_percent: Some(percent),
            result_percent: percent,
        })
    }

    /// The mass at the start is that of the first row, where no other is given; times must rise.
    fn mass_at_start(&mut self, row: &mut Row<f64>) -> Result<bool, Error> {
        if let Some(time) = row.get(Quantity::Time) {
            if time <= self.last_time {
                return Err(Error::new(Code::Contradiction, Quantity::Time.name())
                    .value(format!("{time} s"))
                    .allowed(format!("a time after that of the row before, {} s", self.last_time))
                    .advice("put the rows in the order of their times, each time once"));
            }
            self.last_time = time;
        }
        if row.get(Quantity::MassLoss).is_some() || row.get(Quantity::MassBefore).is_some() {
            return Ok(false);
        }
        if self.start.is_none() {
            row.check()?;
            self.start = Some(row.need(Quantity::MassAfter)?);
            self.prepared.notes.push("the first row's mass is that at the start".to_owned());
            self.good += 1;
            return Ok(true);
        }
        row.set(Quantity::MassBefore, self.start);
        Ok(false)
    }

    fn finish(self) -> Result<ReductionAnswer, Box<Refusal>> {
        if self.read == 0 {
            return Err(Error::new(Code::Missing, "rows").advice("there is no row of readings").into());
        }
        let experiment = self.prepared.experiment;
        let mut constants = Vec::new();
        let mut working = Vec::new();
        if let Some(wanted) = self.wanted {
            let Some(row) = self.worked else {
                return Err(Error::new(Code::CannotBeMet, "working")
                    .value(format!("row {wanted}"))
                    .allowed(format!("a row with a result, of {}", self.read))
                    .advice("ask for another row")
                    .into());
            };
            let solution = experiment.working(&row)?;
            working = steps(&solution);
            constants = solution
                .constants()
                .into_iter()
                .map(|constant| ConstantAnswer {
                    symbol: constant.symbol.text.to_owned(),
                    words: constant.symbol.name.to_owned(),
                    value: constant.value,
                    unit: constant.symbol.unit.text.to_owned(),
                    source: constant.symbol.source.map(|source| source.text.to_owned()).unwrap_or_default(),
                })
                .collect();
        }
        let accepted = self.prepared.accepted;
        let slope = match &self.slope {
            Some(slope) => Some(slope.answer(accepted.as_ref())?),
            None => None,
        };
        let summary = self
            .sums
            .iter()
            .map(|sum| {
                let name = result_name(sum.symbol);
                let accepted = accepted.as_ref().filter(|(own, _)| *own == name);
                SummaryAnswer {
                    symbol: sum.symbol.text.to_owned(),
                    words: sum.symbol.name.to_owned(),
                    unit: sum.symbol.unit.text.to_owned(),
                    count: sum.count,
                    mean: sum.mean,
                    standard_deviation: (sum.count > 1)
                        .then(|| (sum.squares / (sum.count - 1) as f64).sqrt()),
                    least: sum.least,
                    greatest: sum.greatest,
                    percent_error: accepted.map(|(_, accepted)| 100.0 * (sum.mean / accepted - 1.0)),
                    name,
                }
            })
            .collect();
        Ok(ReductionAnswer {
            format: FORMAT,
            library_version: env!("CARGO_PKG_VERSION").to_owned(),
            title: self.title,
            practical: experiment.practical.name().to_owned(),
            collector: collector_name(experiment.chain.collector).to_owned(),
            notes: self.prepared.notes,
            rows_read: self.read,
            rows_good: self.good,
            rows: self.answer_rows,
            summary,
            slope,
            bad_rows: self.bad,
            working,
            constants,
        })
    }
}

/// What each correction is worth in a row.
pub(crate) fn correction_answers(
    experiment: &Experiment,
    row: &Row<f64>,
) -> Result<Vec<CorrectionAnswer>, Error> {
    let sizes = experiment.corrections(row)?.into_iter().map(|size| CorrectionAnswer {
        name: size.correction.name().to_owned(),
        made: size.made,
        amount_percent: finite(size.amount_percent),
        result_percent: size.result_percent,
    });
    Ok(sizes.collect())
}

fn value_answer(symbol: &'static Symbol, value: f64) -> ValueAnswer {
    ValueAnswer {
        name: result_name(symbol),
        symbol: symbol.text.to_owned(),
        words: symbol.name.to_owned(),
        value,
        unit: symbol.unit.text.to_owned(),
    }
}

/// The hydrocarbon that is nearest to the numbers of its atoms.
fn formula(results: &[(&'static Symbol, f64)]) -> Option<String> {
    let rounded = |wanted: &Symbol| -> Option<i64> {
        let value = results.iter().find(|(symbol, _)| symbol.id == wanted.id)?.1.round();
        // Both are held to below a million by the bounds of the volumes.
        (1.0..1e6).contains(&value).then_some(value as i64)
    };
    let (carbon, hydrogen) = (rounded(&symbols::CARBON_NUMBER)?, rounded(&symbols::HYDROGEN_NUMBER)?);
    let part = |element: &str, number: i64| {
        if number == 1 { element.to_owned() } else { format!("{element}{number}") }
    };
    Some(format!("{}{}", part("C", carbon), part("H", hydrogen)))
}
