//! `overwater plan`.

use std::path::Path;

use overwater_exchange::schedule::schedule;
use overwater_exchange::{Refusal, lesson_from_json, lesson_from_toml, plan, plan_toml};

use crate::WIDTH;
use crate::files::{self, Message};

pub(crate) fn run(file: &Path, html: Option<&Path>, json: bool) -> Result<(), Message> {
    let text = files::read(file)?;
    let is_json = file.extension().is_some_and(|extension| extension.eq_ignore_ascii_case("json"));
    let planned =
        if is_json { lesson_from_json(&text).and_then(|lesson| plan(&lesson)) } else { plan_toml(&text) };
    let answer = planned.map_err(|refusal| show(&refusal, file, &text, json))?;
    let printed = if json {
        let whole = serde_json::to_string_pretty(&answer);
        whole.map_err(|error| format!("error: the answer cannot be written as JSON ({error})"))? + "\n"
    } else {
        overwater_sheet::terminal(&answer, WIDTH)
    };
    if let Some(path) = html {
        files::write(path, &overwater_sheet::page(&answer))?;
    }
    files::print(&printed)
}

/// Simulates the preparation and prints portions by the stop-watch, or what stands in their way.
pub(crate) fn timeline(file: &Path, json: bool) -> Result<(), Message> {
    let text = files::read(file)?;
    let is_json = file.extension().is_some_and(|extension| extension.eq_ignore_ascii_case("json"));
    let request = if is_json { lesson_from_json(&text) } else { lesson_from_toml(&text) };
    let schedule = request.and_then(|request| schedule(&request));
    let schedule = schedule.map_err(|refusal| show(&refusal, file, &text, json))?;
    if json {
        return files::print_json(&schedule);
    }
    files::print(&overwater_sheet::timeline(&schedule, WIDTH))
}

/// A person gets the message on standard error; a program that asked for JSON gets the refusal on standard output as
/// well.
fn show(refusal: &Refusal, file: &Path, text: &str, json: bool) -> Message {
    if json && let Ok(refusal) = serde_json::to_string_pretty(refusal) {
        // Where standard output is gone, the message on standard error is still there.
        let _ = files::print(&(refusal + "\n"));
    }
    refusal.show(&file.display().to_string(), text)
}
