//! A table in a text, read row by row as it comes: separator, byte order mark, decimal sign, the width of a row.

mod number;

use std::collections::VecDeque;
use std::io::{Cursor, Read};

use csv::ByteRecord;
use overwater::{Code, Error};

use crate::Refusal;
use crate::reduction::request::DecimalRequest;
pub(crate) use number::written;
use number::{number, plain, shows_comma};

/// How much is looked at to tell the separator, in bytes.
const HEAD: u64 = 1 << 16;

/// Rows that are looked through for a decimal comma before any of them is read.
const LOOKED_THROUGH: usize = 4096;

/// A cell that cannot be read.
#[derive(Debug, Clone)]
pub(crate) struct BadCell {
    pub(crate) column: String,
    pub(crate) error: Error,
}

impl BadCell {
    /// The refusal with its row, and its line where it has one, in the place of the parameter.
    pub(crate) fn error_at(self, row: u64, line: Option<u64>) -> Error {
        let column = self.column;
        let place = match line {
            Some(line) => format!("row {row} (line {line}), column {column}"),
            None => format!("row {row}, {column}"),
        };
        Error { parameter: place.into(), ..self.error }
    }
}

/// A table under way.
pub(crate) struct Cells<R: Read> {
    reader: csv::Reader<std::io::Chain<Cursor<Vec<u8>>, R>>,
    header: Vec<String>,
    separator: u8,
    decimal: Option<DecimalRequest>,
    waiting: VecDeque<ByteRecord>,
}

pub(crate) fn unreadable(error: &csv::Error) -> Error {
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

impl<R: Read> Cells<R> {
    /// Reads as far as the header.
    pub(crate) fn open(mut source: R, decimal: Option<DecimalRequest>) -> Result<Self, Box<Refusal>> {
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
        let header = reader.headers().map_err(|error| unreadable(&error))?;
        let header = header.iter().map(|name| name.trim().to_owned()).collect();
        Ok(Cells { reader, header, separator, decimal, waiting: VecDeque::new() })
    }

    /// The names of the columns.
    pub(crate) fn header(&self) -> &[String] {
        &self.header
    }

    /// Where nobody said what the decimal sign is: looks through the first rows of the columns of numbers. A comma that
    /// can be nothing else is one, and the note says so.
    pub(crate) fn tell_decimal(&mut self, places: &[usize]) -> Result<Option<&'static str>, Error> {
        if self.decimal.is_some() {
            return Ok(None);
        }
        let mut record = ByteRecord::new();
        while self.waiting.len() < LOOKED_THROUGH && self.read(&mut record)? {
            self.waiting.push_back(record.clone());
        }
        let comma = self.waiting.iter().any(|record| {
            places.iter().any(|place| {
                record.get(*place).and_then(|cell| str::from_utf8(cell).ok()).is_some_and(shows_comma)
            })
        });
        if !comma {
            return Ok(None);
        }
        self.decimal = Some(DecimalRequest::Comma);
        Ok(Some("the commas in the table are decimal signs"))
    }

    fn read(&mut self, record: &mut ByteRecord) -> Result<bool, Error> {
        self.reader.read_byte_record(record).map_err(|error| unreadable(&error))
    }

    /// The next row; false at the end.
    #[inline]
    pub(crate) fn next(&mut self, record: &mut ByteRecord) -> Result<bool, Error> {
        match self.waiting.pop_front() {
            Some(waiting) => {
                *record = waiting;
                Ok(true)
            }
            None => self.read(record),
        }
    }

    /// What is wrong with a row as a whole.
    #[inline]
    pub(crate) fn misfit(&self, record: &ByteRecord) -> Option<Box<BadCell>> {
        if record.len() == self.header.len() {
            return None;
        }
        Some(Box::new(BadCell {
            column: "all columns".to_owned(),
            error: Error::new(Code::Syntax, "")
                .value(format!("{} cells", record.len()))
                .allowed(format!("{} cells, as many as the header has", self.header.len()))
                .advice(match self.separator {
                    b',' => "where decimals have a comma, separate the cells by semicolons",
                    _ => "separate the cells as in the header",
                }),
        }))
    }

    /// The number in a cell.
    #[inline]
    pub(crate) fn number(&self, cell: &[u8]) -> Result<f64, Error> {
        if self.decimal != Some(DecimalRequest::Comma)
            && let Some(value) = plain(cell)
        {
            return Ok(value);
        }
        match str::from_utf8(cell) {
            Ok(text) => number(text, self.decimal),
            Err(_) => Err(Error::new(Code::Syntax, "").advice("save the table as UTF-8 text")),
        }
    }
}

/// The text in a cell.
pub(crate) fn text(record: &ByteRecord, place: usize) -> String {
    String::from_utf8_lossy(record.get(place).unwrap_or_default()).trim().to_owned()
}

/// The line of the file that a row stands in, from 1.
pub(crate) fn line(record: &ByteRecord) -> u64 {
    record.position().map_or(0, csv::Position::line)
}
