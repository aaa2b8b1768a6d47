//! `overwater sources`.

use overwater_exchange::provenance::{SourcesAnswer, sources};

use crate::WIDTH;
use crate::files::{self, Message};

/// Prints the entries that hold `text`, as text, CSV or JSON.
pub(crate) fn run(text: &str, as_csv: bool, json: bool) -> Result<(), Message> {
    let answer = sources(text);
    if answer.entries.is_empty() {
        return Err(format!("error: nothing in the list of sources holds {text:?} [unknown_name]"));
    }
    if json {
        return files::print_json(&answer);
    }
    files::print(&if as_csv { table(&answer)? } else { overwater_sheet::sources(&answer, WIDTH) })
}

fn table(answer: &SourcesAnswer) -> Result<String, Message> {
    let wrong = |error: &dyn std::fmt::Display| format!("error: the table cannot be written ({error})");
    let mut writer = csv::Writer::from_writer(Vec::new());
    for entry in &answer.entries {
        writer.serialize(entry).map_err(|error| wrong(&error))?;
    }
    let bytes = writer.into_inner().map_err(|error| wrong(&error))?;
    String::from_utf8(bytes).map_err(|error| wrong(&error))
}
