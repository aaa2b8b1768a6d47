//! `overwater sources`.

use overwater_exchange::provenance::sources;

use crate::files::{self, Message};
use crate::{WIDTH, rows};

/// Prints the entries that hold `text`, as text, CSV or JSON.
pub(crate) fn run(text: &str, as_csv: bool, json: bool) -> Result<(), Message> {
    let answer = sources(text);
    if answer.entries.is_empty() {
        return Err(format!("error: nothing in the list of sources holds {text:?} [unknown_name]"));
    }
    if json {
        return files::print_json(&answer);
    }
    files::print(&if as_csv { rows::csv(&answer.entries)? } else { overwater_sheet::sources(&answer, WIDTH) })
}
