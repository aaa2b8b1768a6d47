//! Text for a terminal: headings, pairs, tables and paragraphs, none wider than the sheet.

use comfy_table::presets::NOTHING;
use comfy_table::{CellAlignment, ContentArrangement, Table};

use crate::typeset;

/// A sheet of text under construction.
pub(crate) struct Layout {
    text: String,
    width: usize,
}

const INDENT: usize = 3;

impl Layout {
    pub(crate) fn new(width: usize) -> Self {
        Layout { text: String::new(), width: width.max(40) }
    }

    pub(crate) fn finish(self) -> String {
        self.text
    }

    /// A line of its own, filled up with a second text at the right where both fit.
    pub(crate) fn title(&mut self, left: &str, right: &str) {
        let left = &typeset(left);
        let room = self.width.saturating_sub(left.chars().count() + right.chars().count());
        if right.is_empty() {
            self.lines(left, 0);
        } else if room == 0 {
            self.lines(left, 0);
            self.lines(right, 0);
        } else {
            self.line(&format!("{left}{}{right}", " ".repeat(room)));
        }
    }

    /// A heading with a rule under it.
    pub(crate) fn heading(&mut self, text: &str) {
        self.line("");
        self.lines(text, 0);
        self.line(&"─".repeat(text.chars().count().min(self.width)));
    }

    /// A paragraph.
    pub(crate) fn paragraph(&mut self, text: &str) {
        self.lines(text, INDENT);
    }

    /// An item of a list.
    pub(crate) fn item(&mut self, mark: &str, text: &str) {
        let first = format!("{}{mark} ", " ".repeat(INDENT));
        let later = " ".repeat(first.chars().count());
        let options = textwrap::Options::new(self.width).initial_indent(&first).subsequent_indent(&later);
        for line in textwrap::wrap(&typeset(text), options) {
            self.line(&line);
        }
    }

    /// Names and what they are, in two columns.
    pub(crate) fn pairs(&mut self, pairs: &[(&str, String)]) {
        let mut table = self.bare();
        for (name, value) in pairs {
            table.add_row([(*name).to_owned(), typeset(value)]);
        }
        self.table(table);
    }

    /// A table with a header; columns after the first `texts` stand to the right.
    pub(crate) fn columns(&mut self, header: &[&str], rows: Vec<Vec<String>>, texts: usize) {
        let mut table = self.bare();
        table.set_header(header.iter().map(|name| typeset(name)));
        for row in rows {
            table.add_row(row.iter().map(|cell| typeset(cell)));
        }
        for column in table.column_iter_mut().skip(texts) {
            column.set_cell_alignment(CellAlignment::Right);
        }
        self.table(table);
    }

    fn bare(&self) -> Table {
        let mut table = Table::new();
        table.load_style(NOTHING).set_content_arrangement(ContentArrangement::Dynamic);
        table.set_width(u16::try_from(self.width - INDENT + 1).unwrap_or(u16::MAX));
        table
    }

    fn table(&mut self, table: Table) {
        for line in table.lines() {
            // The table begins every line with one space of its own.
            self.line(&format!("{}{}", " ".repeat(INDENT - 1), line));
        }
    }

    fn lines(&mut self, text: &str, indent: usize) {
        let indent = " ".repeat(indent);
        let options = textwrap::Options::new(self.width).initial_indent(&indent).subsequent_indent(&indent);
        for line in textwrap::wrap(&typeset(text), options) {
            self.line(&line);
        }
    }

    fn line(&mut self, text: &str) {
        self.text.push_str(text.trim_end());
        self.text.push('\n');
    }
}
