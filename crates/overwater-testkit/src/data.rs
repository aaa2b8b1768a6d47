//! Published values from a CSV file whose first lines, each after a `#`, name their source.

use std::fs;
use std::path::Path;

/// A table with named columns.
#[derive(Debug, Clone)]
pub struct Table {
    name: String,
    columns: Vec<String>,
    rows: Vec<(u64, Vec<String>)>,
}

/// One row of a [`Table`], which knows the line it stands in.
#[derive(Debug, Clone, Copy)]
pub struct Row<'t> {
    table: &'t Table,
    line: u64,
    fields: &'t [String],
}

impl Table {
    /// Reads a file.
    ///
    /// # Panics
    /// When it cannot be read, does not begin with a `#` line (which names the source), or is not a table.
    #[must_use]
    pub fn read(path: impl AsRef<Path>) -> Table {
        let path = path.as_ref();
        let name = path.file_name().unwrap_or(path.as_os_str()).to_string_lossy();
        match fs::read_to_string(path) {
            Ok(text) => Table::parse(&name, &text),
            Err(error) => panic!("{}: {error}", path.display()),
        }
    }

    /// Reads a text.
    ///
    /// # Panics
    /// When it does not begin with a `#` line (which names the source), or is not a table with rows.
    #[must_use]
    pub fn parse(name: &str, text: &str) -> Table {
        assert!(text.starts_with("# "), "{name}: the first line must name the source, after a #");
        let mut reader =
            csv::ReaderBuilder::new().comment(Some(b'#')).trim(csv::Trim::All).from_reader(text.as_bytes());
        let columns = match reader.headers() {
            Ok(headers) => headers.iter().map(str::to_owned).collect(),
            Err(error) => panic!("{name}: {error}"),
        };
        // The reader counts a comment before a record as part of it, so the lines are counted here; the first that
        // is not a comment holds the names of the columns.
        let lines = (1_u64..)
            .zip(text.lines())
            .filter(|(_, line)| !line.is_empty() && !line.starts_with('#'))
            .skip(1);
        let rows: Vec<_> = lines
            .zip(reader.records())
            .map(|((line, _), record)| match record {
                Ok(record) => (line, record.iter().map(str::to_owned).collect()),
                Err(error) => panic!("{name}: {error}"),
            })
            .collect();
        assert!(!rows.is_empty(), "{name}: there are no rows");
        Table { name: name.to_owned(), columns, rows }
    }

    /// The rows in order.
    pub fn rows(&self) -> impl Iterator<Item = Row<'_>> {
        self.rows.iter().map(|(line, fields)| Row { table: self, line: *line, fields })
    }

    /// How many rows there are.
    #[must_use]
    pub fn len(&self) -> usize {
        self.rows.len()
    }

    /// Never: a table without rows is refused when it is read.
    #[must_use]
    pub fn is_empty(&self) -> bool {
        self.rows.is_empty()
    }
}

impl<'t> Row<'t> {
    /// Where the row stands, as in `vapour_pressure.csv line 12`.
    #[must_use]
    pub fn place(&self) -> String {
        format!("{} line {}", self.table.name, self.line)
    }

    /// What stands in a column.
    ///
    /// # Panics
    /// When there is no such column.
    #[must_use]
    #[track_caller]
    pub fn text(&self, column: &str) -> &'t str {
        match self
            .table
            .columns
            .iter()
            .position(|name| name == column)
            .and_then(|index| self.fields.get(index))
        {
            Some(field) => field,
            None => panic!("{}: there is no column {column}", self.place()),
        }
    }

    /// The number in a column.
    ///
    /// # Panics
    /// When there is no such column, or no finite number in it.
    #[must_use]
    #[track_caller]
    pub fn number(&self, column: &str) -> f64 {
        match self.optional(column) {
            Some(value) => value,
            None => panic!("{}, column {column}: a number is missing", self.place()),
        }
    }

    /// The number in a column, or nothing where the column is empty.
    ///
    /// # Panics
    /// When there is no such column, or something other than a finite number in it.
    #[must_use]
    #[track_caller]
    pub fn optional(&self, column: &str) -> Option<f64> {
        match self.text(column) {
            "" => None,
            text => match text.parse::<f64>() {
                Ok(value) if value.is_finite() => Some(value),
                _ => panic!("{}, column {column}: {text:?} is not a number", self.place()),
            },
        }
    }
}

/// The fields of a plain table in the order of its columns, for checks that take a row apart by position: no field holds
/// a comma, and lines after a `#` are passed over.
///
/// # Panics
/// When a row has not as many fields as the header.
#[must_use]
pub fn rows(text: &str) -> Vec<Vec<&str>> {
    let mut lines = text.lines().filter(|line| !line.starts_with('#') && !line.trim().is_empty());
    let columns = lines.next().map_or(0, |header| header.split(',').count());
    lines
        .map(|line| {
            let row: Vec<&str> = line.split(',').collect();
            assert_eq!(row.len(), columns, "{line}");
            row
        })
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    const TEXT: &str = "# A table of squares (arithmetic).\n# x, square\nx,square,note\n1,1.0,\n# aside\n2, 4.0 ,\"a, b\"\n3,,inf\n";

    #[test]
    fn fields_lose_comments_and_header() {
        assert_eq!(rows("# x\na,b\n1,2\n\n3,4\n"), [["1", "2"], ["3", "4"]]);
    }

    #[test]
    #[should_panic(expected = "1,2,3")]
    fn a_row_that_is_too_long_is_named() {
        let _ = rows("a,b\n1,2,3\n");
    }

    #[test]
    fn rows_are_read_by_column_and_know_their_line() {
        let table = Table::parse("squares.csv", TEXT);
        assert_eq!((table.len(), table.is_empty()), (3, false));
        let rows: Vec<Row<'_>> = table.rows().collect();
        assert_eq!((rows[1].number("x"), rows[1].number("square")), (2.0, 4.0));
        assert_eq!(rows[1].text("square"), "4.0");
        assert_eq!(rows[1].text("note"), "a, b");
        assert_eq!(rows[1].place(), "squares.csv line 6");
        assert_eq!(rows[2].optional("square"), None);
        assert_eq!(rows[0].optional("square"), Some(1.0));
    }

    #[test]
    #[should_panic(expected = "squares.csv line 7, column square: a number is missing")]
    fn a_missing_number_is_named_by_line_and_column() {
        let table = Table::parse("squares.csv", TEXT);
        let _ = table.rows().nth(2).map(|row| row.number("square"));
    }

    #[test]
    #[should_panic(expected = "squares.csv line 6, column note: \"a, b\" is not a number")]
    fn words_are_not_a_number() {
        let table = Table::parse("squares.csv", TEXT);
        let _ = table.rows().nth(1).map(|row| row.number("note"));
    }

    #[test]
    #[should_panic(expected = "squares.csv line 7, column note: \"inf\" is not a number")]
    fn infinity_is_not_a_number() {
        let table = Table::parse("squares.csv", TEXT);
        let _ = table.rows().nth(2).map(|row| row.optional("note"));
    }

    #[test]
    #[should_panic(expected = "squares.csv line 4: there is no column cube")]
    fn a_wrong_column_is_named() {
        let table = Table::parse("squares.csv", TEXT);
        let _ = table.rows().next().map(|row| row.text("cube"));
    }

    #[test]
    #[should_panic(expected = "squares.csv: the first line must name the source")]
    fn a_table_without_a_source_is_refused() {
        let _ = Table::parse("squares.csv", "x,square\n1,1\n");
    }

    #[test]
    #[should_panic(expected = "squares.csv: there are no rows")]
    fn a_table_without_rows_is_refused() {
        let _ = Table::parse("squares.csv", "# nothing\nx,square\n");
    }

    #[test]
    #[should_panic(expected = "squares.csv: CSV error: record 1 (line: 3")]
    fn a_row_that_is_too_long_is_refused() {
        let _ = Table::parse("squares.csv", "# nothing\nx,square\n1,2,3\n");
    }

    #[test]
    #[should_panic(expected = "no_such_file.csv")]
    fn a_file_that_is_not_there_is_named() {
        let _ = Table::read("no_such_file.csv");
    }
}
