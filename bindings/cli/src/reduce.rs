//! `overwater reduce`.

use std::io::{self, Write};
use std::path::Path;

use clap::ValueEnum;
use overwater_exchange::reduction::answer::ReductionAnswer;
use overwater_exchange::reduction::request::ReductionRequest;
use overwater_exchange::reduction::{reduce, reduce_table};
use overwater_exchange::{FORMAT, reduction_from_json, reduction_from_toml};
use overwater_sheet::{self as sheet, WorkingFormat, results, working};

use crate::WIDTH;
use crate::files::{self, Message};
use crate::table::{self, Figures, Readers, Source, complaints, say};

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
    pub(crate) figures: Figures,
}

pub(crate) fn run(file: &Path, options: Option<&Path>, wanted: &Wanted) -> Result<(), Message> {
    let answer = answer(file, options, wanted)?;
    let bad = answer.rows_read.saturating_sub(answer.rows_good);
    let wrong = complaints(file, &answer.bad_rows, bad);
    if !answer.bad_rows.is_empty() && (!wanted.keep_good || answer.rows_good == 0) {
        return Err(format!("{wrong}{}", if wanted.keep_good { "" } else { table::KEEP_GOOD }));
    }
    if wanted.json {
        files::print_json(&answer)?;
    } else if wanted.working.is_some() {
        let format = match wanted.format {
            Format::Text => WorkingFormat::Text,
            Format::Markdown => WorkingFormat::Markdown,
            Format::Latex => WorkingFormat::Latex,
            Format::Html => WorkingFormat::Html,
        };
        files::print(&working(&answer.working, &answer.constants, format))?;
    } else {
        files::print(&results(&answer, WIDTH, figures(wanted, file, &answer)?))?;
    }
    if !answer.bad_rows.is_empty() {
        let _ = writeln!(io::stderr(), "{wrong}");
    }
    Ok(())
}

fn answer(file: &Path, options: Option<&Path>, wanted: &Wanted) -> Result<ReductionAnswer, Message> {
    let readers = Readers { toml: reduction_from_toml, json: reduction_from_json };
    let plain = ReductionRequest { format: FORMAT, ..ReductionRequest::default() };
    let answer = match table::open(file, options, &readers, plain)? {
        Source::Document(request) => reduce(&request, wanted.working.or(request.working)),
        Source::Table(request, source) => reduce_table(&request, source, wanted.working.or(request.working)),
    };
    answer.map_err(|refusal| say(file, &refusal))
}

/// How many figures are printed, row by row where the data decide.
fn figures(wanted: &Wanted, file: &Path, answer: &ReductionAnswer) -> Result<sheet::Figures, Message> {
    match wanted.figures {
        Figures::Number(number) => Ok(sheet::Figures::Number(usize::from(number))),
        Figures::Data if answer.rows.iter().all(|row| row.data_figures.is_some()) => Ok(sheet::Figures::Data),
        Figures::Data => Err(format!(
            "error: {}: --figures data needs a table, where numbers stand as written [missing]",
            file.display()
        )),
    }
}
