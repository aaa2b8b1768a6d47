//! `overwater reduce`.

use std::fs::File;
use std::io::{self, Read, Write};
use std::path::Path;

use clap::ValueEnum;
use overwater_exchange::reduction::answer::{BadRowAnswer, ReductionAnswer};
use overwater_exchange::reduction::request::ReductionRequest;
use overwater_exchange::reduction::{reduce, reduce_table};
use overwater_exchange::{FORMAT, Refusal, reduction_from_json, reduction_from_toml};
use overwater_sheet::{WorkingFormat, results, working};

use crate::files::{self, Message};

/// Columns of the sheet on a terminal.
const WIDTH: usize = 80;

/// Bad rows that are named in a message.
const NAMED: usize = 10;

/// How a worked solution is written.
#[derive(Debug, Clone, Copy, PartialEq, Eq, ValueEnum)]
pub(crate) enum Format {
    /// Plain text.
    Text,
    /// Markdown.
    Markdown,
    /// LaTeX.
    Latex,
    /// HTML.
    Html,
}

/// What is to be printed.
pub(crate) struct Wanted {
    pub(crate) keep_good: bool,
    pub(crate) json: bool,
    pub(crate) working: Option<u64>,
    pub(crate) format: Format,
    pub(crate) figures: usize,
}

pub(crate) fn run(file: &Path, options: Option<&Path>, wanted: &Wanted) -> Result<(), Message> {
    let answer = answer(file, options, wanted)?;
    let shown = file.display();
    if !answer.bad_rows.is_empty() && (!wanted.keep_good || answer.rows_good == 0) {
        let advice =
            if wanted.keep_good { "" } else { "\nto work out the other rows all the same, add --keep-good" };
        return Err(format!("{}{advice}", complaints(&shown.to_string(), &answer)));
    }
    if wanted.json {
        let whole = serde_json::to_string_pretty(&answer);
        let whole =
            whole.map_err(|error| format!("error: the answer cannot be written as JSON ({error})"))?;
        files::print(&(whole + "\n"))?;
    } else if wanted.working.is_some() {
        let format = match wanted.format {
            Format::Text => WorkingFormat::Text,
            Format::Markdown => WorkingFormat::Markdown,
            Format::Latex => WorkingFormat::Latex,
            Format::Html => WorkingFormat::Html,
        };
        files::print(&working(&answer.working, &answer.constants, format))?;
    } else {
        files::print(&results(&answer, WIDTH, wanted.figures))?;
    }
    if !answer.bad_rows.is_empty() {
        let _ = writeln!(io::stderr(), "{}", complaints(&shown.to_string(), &answer));
    }
    Ok(())
}

fn answer(file: &Path, options: Option<&Path>, wanted: &Wanted) -> Result<ReductionAnswer, Message> {
    let ending = file.extension().map(|ending| ending.to_string_lossy().to_lowercase()).unwrap_or_default();
    if ending == "toml" || ending == "json" {
        if options.is_some() {
            return Err(
                "error: --options goes with a table; TOML and JSON hold their own options [given_twice]"
                    .to_owned(),
            );
        }
        let request = document(file, &ending)?;
        return reduce(&request, wanted.working).map_err(|refusal| say(file, &refusal));
    }
    let request = match options {
        Some(options) => document(options, "toml")?,
        None => ReductionRequest { format: FORMAT, ..ReductionRequest::default() },
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
    reduce_table(&request, source, wanted.working).map_err(|refusal| say(file, &refusal))
}

fn document(file: &Path, ending: &str) -> Result<ReductionRequest, Message> {
    let text = files::read(file)?;
    let read = if ending == "json" { reduction_from_json(&text) } else { reduction_from_toml(&text) };
    read.map_err(|refusal| refusal.show(&file.display().to_string(), &text))
}

fn say(file: &Path, refusal: &Refusal) -> Message {
    format!("error: {}: {refusal} [{}]", file.display(), refusal.code)
}

fn complaints(shown: &str, answer: &ReductionAnswer) -> Message {
    let named = answer.bad_rows.iter().take(NAMED);
    let mut lines: Vec<String> = named
        .map(|BadRowAnswer { message, code, .. }| format!("error: {shown}: {message} [{code}]"))
        .collect();
    let bad = answer.rows_read.saturating_sub(answer.rows_good);
    if bad > NAMED as u64 {
        lines.push(format!("error: {shown}: {bad} rows in all have no result"));
    }
    lines.join("\n")
}
