//! Rows of a table as numbers, each in the unit of its own column.

use std::collections::BTreeMap;
use std::io::Read;

use csv::ByteRecord;
use overwater::readings::series::MOST_ROWS;
use overwater::units::Unit;
use overwater::{Code, Error};

use super::columns::{Column, Entry, KINDS, Kind, column};
use super::request::RateRequest;
use crate::Refusal;
use crate::reduction::KEPT_ROWS;
use crate::reduction::answer::BadRowAnswer;
use crate::reduction::request::CellRequest;
use crate::table::{BadCell, Cells, line, text, written};

/// A row that was read.
#[derive(Debug, Clone)]
pub(crate) struct Row {
    /// From 1.
    pub(crate) number: u64,
    /// The line of the file, from 1.
    pub(crate) line: Option<u64>,
    /// The label of its run.
    pub(crate) run: Option<String>,
    values: [f64; KINDS],
}

impl Row {
    /// A value, where the row has one.
    pub(crate) fn get(&self, kind: Kind) -> Option<f64> {
        self.values.get(kind as usize).copied().filter(|value| !value.is_nan())
    }

    fn set(&mut self, kind: Kind, value: f64) {
        if let Some(place) = self.values.get_mut(kind as usize) {
            *place = value;
        }
    }
}

/// All rows, and what each kind of column is called.
#[derive(Debug, Default)]
pub(crate) struct Rows {
    pub(crate) rows: Vec<Row>,
    names: [Option<&'static Entry>; KINDS],
    given: BTreeMap<usize, f64>,
    /// The most figures that a column is written with.
    figures: [u32; KINDS],
    pub(crate) read: u64,
    pub(crate) bad: Vec<BadRowAnswer>,
    pub(crate) bad_count: u64,
    pub(crate) notes: Vec<String>,
}

impl Rows {
    /// The column of a kind.
    pub(crate) fn entry(&self, kind: Kind) -> Option<&'static Entry> {
        self.names.get(kind as usize).copied().flatten()
    }

    /// The name of a column, with its unit.
    pub(crate) fn name(&self, kind: Kind) -> &'static str {
        self.entry(kind).map_or("", |entry| entry.name)
    }

    /// The unit of a column.
    pub(crate) fn unit(&self, kind: Kind) -> Unit {
        self.entry(kind).map_or(overwater::units::ONE, Entry::unit)
    }

    /// Whether a kind is known for every row.
    pub(crate) fn has(&self, kind: Kind) -> bool {
        self.entry(kind).is_some()
    }

    /// The figures of the column that is written with the fewest, of those named; none where rows did not come as text.
    pub(crate) fn figures(&self, kinds: &[Kind]) -> Option<u32> {
        let of = |kind: &Kind| self.figures.get(*kind as usize).copied().filter(|figures| *figures > 0);
        kinds.iter().filter_map(of).min()
    }

    /// Puts down a row that is not used.
    pub(crate) fn refuse(&mut self, row: u64, line: Option<u64>, bad: BadCell) {
        self.bad_count += 1;
        // Rows that are at hand have no line, and are few enough to be told of one by one.
        if line.is_none() || self.bad.len() < KEPT_ROWS {
            let (column, code) = (bad.column.clone(), bad.error.code.name().to_owned());
            let message = bad.error_at(row, line).to_string();
            self.bad.push(BadRowAnswer { row, line, column, code, message });
        }
    }

    fn given(&mut self, request: &RateRequest) -> Result<(), Error> {
        for (name, value) in &request.given {
            let path = format!("given.{name}");
            let Column::Number(entry) = column(name).map_err(|error| error.within("given"))? else {
                return Err(Error::new(Code::UnknownName, path).advice("give numbers only"));
            };
            let followed = Kind::FOLLOWED.iter().any(|(kind, _)| *kind == entry.kind);
            if entry.kind == Kind::Time || followed || Kind::RATES.contains(&entry.kind) {
                return Err(Error::new(Code::Contradiction, path)
                    .allowed("what is the same in every row")
                    .advice("give readings as columns of the table"));
            }
            if !value.is_finite() {
                return Err(Error::new(Code::NotANumber, path).value(value.to_string()));
            }
            self.take(entry, &path)?;
            self.given.insert(entry.kind as usize, *value);
        }
        Ok(())
    }

    fn take(&mut self, entry: &'static Entry, path: &str) -> Result<(), Error> {
        let Some(place) = self.names.get_mut(entry.kind as usize) else { return Ok(()) };
        if let Some(other) = place {
            return Err(Error::new(Code::GivenTwice, path.to_owned())
                .advice(format!("{} gives the same quantity: leave one of them out", other.name)));
        }
        *place = Some(entry);
        Ok(())
    }

    fn empty_row(&self, number: u64, line: Option<u64>) -> Row {
        let mut row = Row { number, line, run: None, values: [f64::NAN; KINDS] };
        for (place, value) in &self.given {
            if let Some(own) = row.values.get_mut(*place) {
                *own = *value;
            }
        }
        row
    }

    fn push(&mut self, row: Row) -> Result<(), Error> {
        if self.rows.len() >= MOST_ROWS {
            return Err(Error::new(Code::TooLarge, "rows")
                .value(format!("more than {MOST_ROWS} rows"))
                .allowed(format!("at most {MOST_ROWS}"))
                .advice("take every tenth reading, or one run at a time"));
        }
        self.rows.push(row);
        Ok(())
    }
}

/// Reads a table.
pub(crate) fn of_table(request: &RateRequest, source: impl Read) -> Result<Rows, Box<Refusal>> {
    if !request.rows.is_empty() {
        return Err(Error::new(Code::GivenTwice, "rows").advice("the rows are those of the table").into());
    }
    let mut rows = Rows::default();
    rows.given(request)?;
    let mut cells = Cells::open(source, request.decimal)?;
    let mut numbers: Vec<(usize, &'static Entry)> = Vec::new();
    let (mut run, mut unused) = (None, Vec::new());
    for (place, name) in cells.header().iter().enumerate() {
        let path = format!("column {name}");
        match column(name).map_err(|error| Error { parameter: path.clone().into(), ..error })? {
            Column::Run if run.is_none() => run = Some(place),
            Column::Run | Column::Note if name.is_empty() => unused.push("(no name)".to_owned()),
            Column::Run | Column::Note => unused.push(name.clone()),
            Column::Number(entry) => {
                rows.take(entry, &path)?;
                numbers.push((place, entry));
            }
        }
    }
    if !unused.is_empty() {
        rows.notes.push(format!("columns not used: {}", unused.join(", ")));
    }
    let places: Vec<usize> = numbers.iter().map(|(place, _)| *place).collect();
    rows.notes.extend(cells.tell_decimal(&places)?.map(str::to_owned));
    let mut record = ByteRecord::new();
    while cells.next(&mut record)? {
        rows.read += 1;
        let mut row = rows.empty_row(rows.read, Some(line(&record)));
        row.run = run.map(|place| text(&record, place));
        let mut bad = cells.misfit(&record);
        for (place, entry) in &numbers {
            let cell = record.get(*place).unwrap_or_default();
            match cells.number(cell) {
                Ok(value) => {
                    row.set(entry.kind, value);
                    if let Some(figures) = rows.figures.get_mut(entry.kind as usize) {
                        *figures = written(cell).0.max(*figures);
                    }
                }
                Err(error) => {
                    bad.get_or_insert_with(|| Box::new(BadCell { column: entry.name.to_owned(), error }));
                }
            }
        }
        match bad {
            Some(bad) => rows.refuse(row.number, row.line, *bad),
            None => rows.push(row)?,
        }
    }
    Ok(rows)
}

/// Takes the rows of a request.
pub(crate) fn of_request(request: &RateRequest) -> Result<Rows, Box<Refusal>> {
    let mut rows = Rows::default();
    rows.given(request)?;
    // Columns are named alike in every row, so that all values of a kind have one unit.
    let mut names: BTreeMap<&str, Column> = BTreeMap::new();
    let mut unused = Vec::new();
    for (index, cells) in request.rows.iter().enumerate() {
        for name in cells.keys().filter(|name| !names.contains_key(name.as_str())).collect::<Vec<_>>() {
            let path = format!("rows[{index}].{name}");
            let found = column(name).map_err(|error| error.within(&format!("rows[{index}]")))?;
            match found {
                Column::Number(entry) => rows.take(entry, &path)?,
                Column::Run => {}
                Column::Note => unused.push(name.as_str()),
            }
            names.insert(name, found);
        }
    }
    if !unused.is_empty() {
        rows.notes.push(format!("columns not used: {}", unused.join(", ")));
    }
    for (index, cells) in request.rows.iter().enumerate() {
        rows.read += 1;
        let mut row = rows.empty_row(index as u64 + 1, None);
        let mut bad = None;
        for (name, found) in &names {
            let wrong = |error| Some(BadCell { column: (*name).to_owned(), error });
            match (found, cells.get(*name)) {
                (Column::Run, Some(CellRequest::Text(text))) => row.run = Some(text.clone()),
                (Column::Run, Some(CellRequest::Number(number))) => row.run = Some(number.to_string()),
                (Column::Number(entry), Some(CellRequest::Number(number))) if number.is_finite() => {
                    row.set(entry.kind, *number);
                }
                (Column::Number(_), Some(CellRequest::Number(number))) => {
                    bad = wrong(Error::new(Code::NotANumber, "").value(number.to_string()));
                }
                (Column::Number(_), Some(CellRequest::Text(text))) => {
                    bad = wrong(
                        Error::new(Code::Syntax, "").value(format!("{text:?}")).advice("write a number"),
                    );
                }
                (Column::Number(_), None) => {
                    bad = wrong(Error::new(Code::Missing, "").advice("other rows have it"));
                }
                (Column::Run, None) | (Column::Note, _) => {}
            }
        }
        match bad {
            Some(bad) => rows.refuse(row.number, None, bad),
            None => rows.push(row)?,
        }
    }
    Ok(rows)
}
