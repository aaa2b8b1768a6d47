//! A table of readings, read as it comes: never more than a batch of rows is held.

use std::io::{Cursor, Read};

use overwater::readings::Quantity;
use overwater::units::Unit;
use overwater::{Code, Error};

use super::columns::{Column, column, school};
use super::number::{number, plain, shows_comma};
use super::prepared::Prepared;
use super::request::DecimalRequest;
use crate::Refusal;

/// Rows that are held together.
pub(crate) const BATCH: usize = 4096;

/// How much is looked at to tell the separator, in bytes.
const HEAD: u64 = 1 << 16;

/// A cell that cannot be read.
#[derive(Debug, Clone)]
pub(crate) struct BadCell {
    pub(crate) column: String,
    pub(crate) error: Error,
}

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
    reader: csv::Reader<std::io::Chain<Cursor<Vec<u8>>, R>>,
    readings: Vec<Reading>,
    label: Option<usize>,
    width: usize,
    separator: u8,
    decimal: Option<DecimalRequest>,
    told: bool,
    pub(crate) notes: Vec<String>,
}

fn unreadable(error: &csv::Error) -> Error {
    Error::new(Code::Syntax, "table").advice(error.to_string())
}

/// The separator: the first of tab and semicolon that the header has, else the comma.
fn separator(head: &[u8]) -> u8 {
    let header = head
        .split(|byte| *byte == b'\n')
        .find(|line| !line.starts_with(b"#") && !line.trim_ascii().is_empty())
        .unwrap_or_default();
    *[b'\t', b';'].iter().find(|byte| header.contains(byte)).unwrap_or(&b',')
}

impl<R: Read> Table<R> {
    pub(crate) fn open(
        mut source: R,
        prepared: &Prepared,
        decimal: Option<DecimalRequest>,
    ) -> Result<Self, Box<Refusal>> {
        let mut head = Vec::new();
        source
            .by_ref()
            .take(HEAD)
            .read_to_end(&mut head)
            .map_err(|error| Error::new(Code::Syntax, "table").advice(error.to_string()))?;
        if head.starts_with(b"\xef\xbb\xbf") {
            head.drain(..3);
        }
        let separator = separator(&head);
        let mut reader = csv::ReaderBuilder::new()
            .delimiter(separator)
            .comment(Some(b'#'))
            .flexible(true)
            .has_headers(true)
            .from_reader(Cursor::new(head).chain(source));
        let header = reader.headers().map_err(|error| unreadable(&error))?.clone();
        let mut table = Table {
            reader,
            readings: Vec::new(),
            label: None,
            width: header.len(),
            separator,
            decimal,
            told: decimal.is_some(),
            notes: Vec::new(),
        };
        let mut unused = Vec::new();
        for (place, name) in header.iter().enumerate() {
            table.take(place, name.trim(), prepared, &mut unused)?;
        }
        if !unused.is_empty() {
            table.notes.push(format!("columns not used: {}", unused.join(", ")));
        }
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
        if !self.told {
            return self.first(batch);
        }
        let mut record = csv::ByteRecord::new();
        while batch.len() < BATCH
            && self.reader.read_byte_record(&mut record).map_err(|error| unreadable(&error))?
        {
            self.row(&record, batch);
        }
        Ok(())
    }

    /// The first rows are looked through for a decimal comma before any of them is read.
    fn first(&mut self, batch: &mut Batch) -> Result<(), Error> {
        let mut records = Vec::new();
        let mut record = csv::ByteRecord::new();
        while records.len() < BATCH
            && self.reader.read_byte_record(&mut record).map_err(|error| unreadable(&error))?
        {
            records.push(record.clone());
        }
        let comma = records.iter().any(|record| {
            self.readings.iter().any(|reading| {
                record.get(reading.place).and_then(|cell| str::from_utf8(cell).ok()).is_some_and(shows_comma)
            })
        });
        if comma {
            self.decimal = Some(DecimalRequest::Comma);
            self.notes.push("the commas in the table are decimal signs".to_owned());
        }
        self.told = true;
        for record in &records {
            self.row(record, batch);
        }
        Ok(())
    }

    fn row(&self, record: &csv::ByteRecord, batch: &mut Batch) {
        let line = record.position().map_or(0, csv::Position::line);
        let mut bad = (record.len() != self.width).then(|| {
            Box::new(BadCell {
                column: "all columns".to_owned(),
                error: Error::new(Code::Syntax, "")
                    .value(format!("{} cells", record.len()))
                    .allowed(format!("{} cells, as many as the header has", self.width))
                    .advice(match self.separator {
                        b',' => "where decimals have a comma, separate the cells by semicolons",
                        _ => "separate the cells as in the header",
                    }),
            })
        });
        for (reading, values) in self.readings.iter().zip(&mut batch.columns) {
            let cell = record.get(reading.place).unwrap_or_default();
            let quick = if self.decimal == Some(DecimalRequest::Comma) { None } else { plain(cell) };
            let read = match quick {
                Some(value) => Ok(value),
                None => match str::from_utf8(cell) {
                    Ok(text) => number(text, self.decimal),
                    Err(_) => Err(Error::new(Code::Syntax, "").advice("save the table as UTF-8 text")),
                },
            };
            let value = match read {
                Ok(value) => school(reading.quantity, &reading.unit, value),
                Err(error) => {
                    bad.get_or_insert_with(|| Box::new(BadCell { column: reading.name.clone(), error }));
                    f64::NAN
                }
            };
            values.push(value);
        }
        if let Some(place) = self.label {
            let text = record.get(place).unwrap_or_default();
            batch.labels.push(Some(String::from_utf8_lossy(text).trim().to_owned()));
        }
        batch.lines.push(line);
        batch.bad.push(bad);
    }
}
