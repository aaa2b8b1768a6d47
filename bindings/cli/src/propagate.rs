//! `overwater propagate`.

use std::path::Path;

use overwater_exchange::propagation::propagate;
use overwater_exchange::{propagation_from_json, propagation_from_toml};

use crate::WIDTH;
use crate::files::{self, Message};
use crate::table;

/// Prints a result with its uncertainty budget, as text or JSON.
pub(crate) fn run(file: &Path, json: bool) -> Result<(), Message> {
    let text = files::read(file)?;
    let is_json = file.extension().is_some_and(|ending| ending.eq_ignore_ascii_case("json"));
    let request = if is_json { propagation_from_json(&text) } else { propagation_from_toml(&text) };
    let request = request.map_err(|refusal| refusal.show(&file.display().to_string(), &text))?;
    let answer = propagate(&request).map_err(|refusal| table::say(file, &refusal))?;
    if json {
        return files::print_json(&answer);
    }
    files::print(&overwater_sheet::propagation(&answer, WIDTH))
}
