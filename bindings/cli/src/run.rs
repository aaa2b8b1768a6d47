//! `overwater run` and `overwater calibrate`.

use std::path::Path;

use overwater_exchange::run::{calibrate as work_out, run as simulate};
use overwater_exchange::{
    Refusal, calibration_from_json, calibration_from_toml, point_into_toml, run_from_json, run_from_toml,
};

use crate::files::{self, Message};
use crate::table::{Reader, Readers};
use crate::{WIDTH, rows};

/// Simulates a preparation, and prints it as text, JSON or a table.
pub(crate) fn run(file: &Path, html: Option<&Path>, csv: bool, json: bool) -> Result<(), Message> {
    let readers = Readers { toml: run_from_toml, json: run_from_json };
    let answer = answered(file, &readers, |request| simulate(&request))?;
    if let Some(path) = html {
        files::write(path, &overwater_sheet::run_page(&answer))?;
    }
    if json {
        files::print_json(&answer)
    } else if csv {
        files::print(&rows::csv(&answer.curve)?)
    } else {
        files::print(&overwater_sheet::run(&answer, WIDTH))
    }
}

/// Prints how active a catalyst is.
pub(crate) fn calibrate(file: &Path, json: bool) -> Result<(), Message> {
    let readers = Readers { toml: calibration_from_toml, json: calibration_from_json };
    let answer = answered(file, &readers, |request| work_out(&request))?;
    if json {
        return files::print_json(&answer);
    }
    files::print(&overwater_sheet::calibration(&answer, WIDTH))
}

/// Reads a request and works it out; a refusal points into a document in TOML.
fn answered<T, A>(
    file: &Path,
    readers: &Readers<T>,
    work: impl FnOnce(T) -> Result<A, Box<Refusal>>,
) -> Result<A, Message> {
    let text = files::read(file)?;
    let is_json = file.extension().is_some_and(|ending| ending.eq_ignore_ascii_case("json"));
    let reader: Reader<T> = if is_json { readers.json } else { readers.toml };
    let point = |refusal: Box<Refusal>| if is_json { refusal } else { point_into_toml(*refusal, &text) };
    reader(&text)
        .and_then(|request| work(request).map_err(point))
        .map_err(|refusal| refusal.show(&file.display().to_string(), &text))
}
