//! `overwater species`.

use overwater_exchange::species::species;

use crate::files::{self, Message};

/// Prints species, one a line, or with their coefficients as JSON.
pub(crate) fn run(text: &str, json: bool) -> Result<(), Message> {
    let answer = species(text);
    if json {
        return files::print_json(&answer);
    }
    let mut lines = String::new();
    for one in &answer.species {
        let least = one.ranges.first().map_or(f64::NAN, |range| range.least_k);
        let greatest = one.ranges.last().map_or(f64::NAN, |range| range.greatest_k);
        lines.push_str(&format!("{:<18} {:<7} {least} to {greatest} K\n", one.name, one.phase));
    }
    lines.push_str(&answer.source);
    files::print(&(lines + "\n"))
}
