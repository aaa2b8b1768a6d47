//! A table of readings, read as it comes: never more than a batch of rows is held.

use std::io::Read;

use csv::ByteRecord;
use overwater::readings::Quantity;
use overwater::units::Unit;
use overwater::{Code, Error};

use super::columns::{Column, column, school};
use super::prepared::Prepared;
use super::request::DecimalRequest;
use super::run::KEPT_ROWS;
use crate::Refusal;
use crate::table::{BadCell, Cells, line, text, written};

/// Rows that are held together.
pub(crate) const BATCH: usize = 4096;

/// Some rows, column by column.
#[derive(Debug, Default)]
pub(crate) struct Batch {
    pub(crate) columns: Vec<Vec<f64>>,
    pub(crate) labels: Vec<Option<String>>,
    pub(crate) lines: Vec<u64>,
    pub(crate) bad: Vec<Option<Box<BadCell>>>,
    /// Significant figures of the readings, of the first rows only.
    pub(crate) figures: Vec<u32>,
}

impl Batch {
    fn clear(&mut self, columns: usize) {
        self.columns.resize_with(columns, Vec::new);
        self.columns.iter_mut().for_each(Vec::clear);
        self.labels.clear();
        self.lines.clear();
        self.bad.clear();
        self.figures.clear();
    }

    pub(crate) fn len(&self) -> usize {
        self.lines.len()
    }
}

/// Readings of which only the difference counts.
const DIFFERENCES: [(Quantity, Quantity); 2] =
    [(Quantity::MassBefore, Quantity::MassAfter), (Quantity::MassFilled, Quantity::MassWithAir)];

/// The figures that a reading gives to a result: as written; of a temperature those of its kelvin; of two masses those of
/// their difference; none of what only corrects, or is zero.
fn figures(reading: &Reading, cell: &[u8], other: Option<&[u8]>) -> Option<u32> {
    let (figures, places) = written(cell);
    let number = |cell: &[u8]| -> Option<f64> {
        let value: f64 = str::from_utf8(cell).ok()?.trim().replace(',', ".").parse().ok()?;
        Some(value).filter(|value| value.is_finite())
    };
    let before_the_point = |value: f64| value.abs().max(1.0).log10().floor() as u32 + 1;
    match reading.quantity {
        Quantity::Altitude
        | Quantity::InsideMinusOutside
        | Quantity::VapourPressure
        | Quantity::RelativeSaturation
        | Quantity::MoleRatio => None,
        Quantity::Temperature => Some(before_the_point(reading.unit.to_si(number(cell)?)) + places),
        _ => match other {
            None => Some(figures).filter(|figures| *figures > 0),
            Some(other) => {
                let difference = (number(cell)? - number(other)?).abs();
                let places = places.min(written(other).1);
                let text = format!("{difference:.*}", places as usize);
                Some(written(text.as_bytes()).0).filter(|figures| *figures > 0)
            }
        },
    }
}

struct Reading {
    place: usize,
    name: String,
    quantity: Quantity,
    unit: Unit,
}

pub(crate) struct Table<R: Read> {
    cells: Cells<R>,
    readings: Vec<Reading>,
    label: Option<usize>,
    /// Rows whose figures are still to be counted: those that an answer keeps.
    to_count: usize,
    pub(crate) notes: Vec<String>,
}

impl<R: Read> Table<R> {
    pub(crate) fn open(
        source: R,
        prepared: &Prepared,
        decimal: Option<DecimalRequest>,
    ) -> Result<Self, Box<Refusal>> {
        let cells = Cells::open(source, decimal)?;
        let header = cells.header().to_vec();
        let mut table =
            Table { cells, readings: Vec::new(), label: None, to_count: KEPT_ROWS, notes: Vec::new() };
        let mut unused = Vec::new();
        for (place, name) in header.iter().enumerate() {
            table.take(place, name, prepared, &mut unused)?;
        }
        if !unused.is_empty() {
            table.notes.push(format!("columns not used: {}", unused.join(", ")));
        }
        let places: Vec<usize> = table.readings.iter().map(|reading| reading.place).collect();
        table.notes.extend(table.cells.tell_decimal(&places)?.map(str::to_owned));
        Ok(table)
    }

    fn take(
        &mut self,
        place: usize,
        name: &str,
        prepared: &Prepared,
        unused: &mut Vec<String>,
    ) -> Result<(), Error> {
        match column(name)
            .map_err(|error| Error { parameter: format!("column {}", error.parameter).into(), ..error })?
        {
            Column::Label if self.label.is_none() => self.label = Some(place),
            Column::Label | Column::Note => {
                unused.push(if name.is_empty() { "(no name)".to_owned() } else { name.to_owned() })
            }
            Column::Reading(quantity, unit) => {
                let path = format!("column {name}");
                prepared.kelvin(&unit, &path)?;
                let other = self.readings.iter().find(|reading| reading.quantity == quantity);
                let shared = prepared.shared.get(quantity).is_some();
                if other.is_some() || shared {
                    let with = other.map_or("the options", |reading| reading.name.as_str());
                    return Err(Error::new(Code::GivenTwice, path)
                        .advice(format!("{with} gives the same quantity: leave one of them out")));
                }
                self.readings.push(Reading { place, name: name.to_owned(), quantity, unit });
            }
        }
        Ok(())
    }

    /// The quantities of the columns of a batch.
    pub(crate) fn quantities(&self) -> Vec<Quantity> {
        self.readings.iter().map(|reading| reading.quantity).collect()
    }

    /// The column of a quantity as it is called in the table.
    pub(crate) fn name(&self, quantity: &str) -> Option<&str> {
        self.readings
            .iter()
            .find(|reading| reading.quantity.name() == quantity)
            .map(|reading| reading.name.as_str())
    }

    /// Reads the next rows.
    pub(crate) fn batch(&mut self, batch: &mut Batch) -> Result<(), Error> {
        batch.clear(self.readings.len());
        let mut record = ByteRecord::new();
        while batch.len() < BATCH && self.cells.next(&mut record)? {
            self.row(&record, batch);
            if self.to_count > 0 {
                self.to_count -= 1;
                batch.figures.push(self.figures(&record));
            }
        }
        Ok(())
    }

    fn row(&self, record: &ByteRecord, batch: &mut Batch) {
        let mut bad = self.cells.misfit(record);
        for (reading, values) in self.readings.iter().zip(&mut batch.columns) {
            let value = match self.cells.number(record.get(reading.place).unwrap_or_default()) {
                Ok(value) => school(reading.quantity, &reading.unit, value),
                Err(error) => {
                    bad.get_or_insert_with(|| Box::new(BadCell { column: reading.name.clone(), error }));
                    f64::NAN
                }
            };
            values.push(value);
        }
        if let Some(place) = self.label {
            batch.labels.push(Some(text(record, place)));
        }
        batch.lines.push(line(record));
        batch.bad.push(bad);
    }

    /// The figures of the reading that is written with the fewest.
    fn figures(&self, record: &ByteRecord) -> u32 {
        let cell = |reading: &Reading| record.get(reading.place).unwrap_or_default();
        let all = self.readings.iter().filter_map(|reading| {
            let other = self.readings.iter().find(|other| {
                DIFFERENCES.contains(&(reading.quantity, other.quantity))
                    || DIFFERENCES.contains(&(other.quantity, reading.quantity))
            });
            figures(reading, cell(reading), other.map(cell))
        });
        all.min().unwrap_or_default()
    }
}
