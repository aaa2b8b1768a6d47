//! What `reduce` and `rate` have in common: readings from a table or from a document, and complaints about rows.

use std::fs::File;
use std::io::{self, Read};
use std::path::Path;

use overwater_exchange::Refusal;
use overwater_exchange::reduction::answer::BadRowAnswer;

use crate::files::{self, Message};

/// Bad rows that are named in a message.
const NAMED: usize = 10;

/// A request that is read from TOML or JSON.
pub(crate) type Reader<T> = fn(&str) -> Result<T, Box<Refusal>>;

/// How a request is read from either language.
pub(crate) struct Readers<T> {
    pub(crate) toml: Reader<T>,
    pub(crate) json: Reader<T>,
}

/// Where readings come from.
pub(crate) enum Source<T> {
    /// A document that holds its rows.
    Document(T),
    /// A table, and the options that go with it.
    Table(T, Box<dyn Read>),
}

/// Opens a file of readings, with the options that go with a table; `otherwise` are those of a table without.
pub(crate) fn open<T>(
    file: &Path,
    options: Option<&Path>,
    readers: &Readers<T>,
    otherwise: T,
) -> Result<Source<T>, Message> {
    let ending = file.extension().map(|ending| ending.to_string_lossy().to_lowercase()).unwrap_or_default();
    if ending == "toml" || ending == "json" {
        if options.is_some() {
            return Err(
                "error: --options goes with a table; TOML and JSON hold their own options [given_twice]"
                    .to_owned(),
            );
        }
        return Ok(Source::Document(document(
            file,
            if ending == "json" { readers.json } else { readers.toml },
        )?));
    }
    let request = match options {
        Some(options) => document(options, readers.toml)?,
        None => otherwise,
    };
    let source: Box<dyn Read> = if file == Path::new("-") {
        Box::new(io::stdin().lock())
    } else {
        let opened = File::open(file);
        Box::new(opened.map_err(|error| {
            format!(
                "error: {}: cannot be read ({error}); give the path of a table of readings",
                file.display()
            )
        })?)
    };
    Ok(Source::Table(request, source))
}

fn document<T>(file: &Path, reader: Reader<T>) -> Result<T, Message> {
    let text = files::read(file)?;
    reader(&text).map_err(|refusal| refusal.show(&file.display().to_string(), &text))
}

/// A refusal that points to no place in a document.
pub(crate) fn say(file: &Path, refusal: &Refusal) -> Message {
    format!("error: {}: {refusal} [{}]", file.display(), refusal.code)
}

/// What is wrong with rows, the first of them named.
pub(crate) fn complaints(file: &Path, bad: &[BadRowAnswer], in_all: u64) -> Message {
    let shown = file.display();
    let named = bad.iter().take(NAMED);
    let mut lines: Vec<String> = named
        .map(|BadRowAnswer { message, code, .. }| format!("error: {shown}: {message} [{code}]"))
        .collect();
    if in_all > NAMED as u64 {
        lines.push(format!("error: {shown}: {in_all} rows in all have no result"));
    }
    lines.join("\n")
}

/// How to go on all the same.
pub(crate) const KEEP_GOOD: &str = "\nto work out the other rows all the same, add --keep-good";

/// Significant figures of what is printed.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Figures {
    /// So many.
    Number(u8),
    /// As many as the data have.
    Data,
}

/// Reads `--figures`.
pub(crate) fn figures(text: &str) -> Result<Figures, String> {
    if text == "data" {
        return Ok(Figures::Data);
    }
    match text.parse() {
        Ok(number) if (1..=15).contains(&number) => Ok(Figures::Number(number)),
        _ => Err("a number from 1 to 15, or data".to_owned()),
    }
}
