//! `overwater rate`.

use std::io::{self, Write};
use std::path::Path;

use overwater_exchange::rate::answer::RateAnswer;
use overwater_exchange::rate::request::RateRequest;
use overwater_exchange::rate::{rate, rate_table};
use overwater_exchange::{FORMAT, rate_from_json, rate_from_toml};
use overwater_sheet::{rate_page, rates};

use crate::WIDTH;
use crate::files::{self, Message};
use crate::table::{self, Figures, Readers, Source, complaints, say};

/// What is to be printed.
pub(crate) struct Wanted<'a> {
    pub(crate) keep_good: bool,
    pub(crate) json: bool,
    pub(crate) html: Option<&'a Path>,
    pub(crate) figures: Figures,
}

pub(crate) fn run(file: &Path, options: Option<&Path>, wanted: &Wanted<'_>) -> Result<(), Message> {
    let readers = Readers { toml: rate_from_toml, json: rate_from_json };
    let plain = RateRequest { format: FORMAT, ..RateRequest::default() };
    let answer = match table::open(file, options, &readers, plain)? {
        Source::Document(request) => rate(&request),
        Source::Table(request, source) => rate_table(&request, source),
    };
    let answer = answer.map_err(|refusal| say(file, &refusal))?;
    let wrong = wrong(file, &answer);
    let nothing = answer.runs.is_empty() && answer.order.is_none() && answer.arrhenius.is_none();
    if !wrong.is_empty() && (!wanted.keep_good || nothing) {
        return Err(format!("{wrong}{}", if wanted.keep_good { "" } else { table::KEEP_GOOD }));
    }
    let figures = match wanted.figures {
        Figures::Number(number) => usize::from(number),
        Figures::Data => answer.data_figures.map(|figures| figures as usize).ok_or_else(|| {
            format!(
                "error: {}: --figures data needs a table, where numbers stand as written [missing]",
                file.display()
            )
        })?,
    };
    if let Some(path) = wanted.html {
        files::write(path, &rate_page(&answer, figures))?;
    }
    if wanted.json {
        files::print_json(&answer)?;
    } else {
        files::print(&rates(&answer, WIDTH, figures))?;
    }
    if !wrong.is_empty() {
        let _ = writeln!(io::stderr(), "{wrong}");
    }
    Ok(())
}

/// Rows and runs without a result.
fn wrong(file: &Path, answer: &RateAnswer) -> Message {
    let rows = answer.rows_read.saturating_sub(answer.rows_good);
    let mut lines = Vec::new();
    if rows > 0 {
        lines.push(complaints(file, &answer.bad_rows, rows));
    }
    for bad in &answer.bad_runs {
        lines.push(format!("error: {}: {} [{}]", file.display(), bad.message, bad.code));
    }
    lines.join("\n")
}
