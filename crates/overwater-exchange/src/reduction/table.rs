//! A table of readings, read as it comes: never more than a batch of rows is held.

use std::io::Read;

use csv::ByteRecord;
use overwater::readings::Quantity;
use overwater::units::Unit;
use overwater::{Code, Error};

use super::columns::{Column, column, school};
use super::prepared::Prepared;
use super::request::DecimalRequest;
use crate::Refusal;
use crate::table::{BadCell, Cells, line, text};

/// Rows that are held together.
pub(crate) const BATCH: usize = 4096;

/// Some rows, column by column.
#[derive(Debug, Default)]
pub(crate) struct Batch {
    pub(crate) columns: Vec<Vec<f64>>,
    pub(crate) labels: Vec<Option<String>>,
    pub(crate) lines: Vec<u64>,
    pub(crate) bad: Vec<Option<Box<BadCell>>>,
}

impl Batch {
    fn clear(&mut self, columns: usize) {
        self.columns.resize_with(columns, Vec::new);
        self.columns.iter_mut().for_each(Vec::clear);
        self.labels.clear();
        self.lines.clear();
        self.bad.clear();
    }

    pub(crate) fn len(&self) -> usize {
        self.lines.len()
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
        let mut table = Table { cells, readings: Vec::new(), label: None, notes: Vec::new() };
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
}
