//! `overwater bounds`.

use overwater_exchange::bounds::bounds;

use crate::files::{self, Message};
use crate::{WIDTH, rows};

/// Prints the rows of the bounds table that hold `text`, as text, CSV or JSON.
pub(crate) fn run(text: &str, as_csv: bool, json: bool) -> Result<(), Message> {
    let answer = bounds(text);
    if answer.bounds.is_empty() {
        return Err(format!("error: nothing in the bounds table holds {text:?} [unknown_name]"));
    }
    if json {
        return files::print_json(&answer);
    }
    files::print(&if as_csv { rows::csv(&answer.bounds)? } else { overwater_sheet::bounds(&answer, WIDTH) })
}
