//! The list of sources as text.

use overwater_exchange::provenance::{SourceEntry, SourcesAnswer};

use crate::layout::Layout;

/// The entries one below the other, grouped by kind, none wider than `width` columns: what each is, its value with its
/// uncertainty, where it holds, and where it comes from.
#[must_use]
pub fn sources(answer: &SourcesAnswer, width: usize) -> String {
    let mut sheet = Layout::new(width);
    for (kind, heading) in [
        ("constant", "Constants"),
        ("coefficient", "Coefficients"),
        ("table", "Tables"),
        ("equation", "Equations"),
    ] {
        let of_kind: Vec<&SourceEntry> = answer.entries.iter().filter(|entry| entry.kind == kind).collect();
        if of_kind.is_empty() {
            continue;
        }
        sheet.heading(&format!("{heading} ({})", of_kind.len()));
        for entry in of_kind {
            sheet.item("-", &words(entry));
        }
    }
    sheet.finish()
}

fn words(entry: &SourceEntry) -> String {
    let mut text = entry.id.clone();
    if !entry.symbol.is_empty() {
        text.push_str(&format!(" {}", entry.symbol));
    }
    if let Some(value) = entry.value {
        text.push_str(&format!(" = {}", every_digit(value)));
        match entry.standard_uncertainty {
            Some(0.0) => text.push_str(" (exact)"),
            Some(uncertainty) => text.push_str(&format!(" ± {}", every_digit(uncertainty))),
            None => {}
        }
    }
    if !entry.unit.is_empty() {
        text.push_str(&format!(" {}", entry.unit));
    }
    text.push_str(&format!(": {}", entry.name));
    if !entry.range.is_empty() {
        text.push_str(&format!("; {}", entry.range));
    }
    let year = entry.year.map(|year| format!(" ({year})")).unwrap_or_default();
    text.push_str(&format!(" [{}{year}]", entry.source));
    text
}

/// A number with all of its digits, in powers of ten where it is small or large.
fn every_digit(value: f64) -> String {
    let plain = value == 0.0 || (1e-3..1e7).contains(&value.abs());
    if plain { value.to_string() } else { format!("{value:e}") }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_part_of_an_entry_is_said() {
        let answer = overwater_exchange::provenance::sources("molar_gas_2019");
        let text = sources(&answer, 200);
        assert!(
            text.contains(
                "molar_gas_2019 R = 8.31446261815324 (exact) J/(mol K): molar gas constant [BIPM, The International \
                 System of Units, 9th edition: defining constants (2019)]"
            ),
            "{text}"
        );
        let text = sources(&overwater_exchange::provenance::sources("density_1975_6"), 200);
        assert!(text.contains("density_1975_6 = -2.8054253e-10 kg/(m³ °C⁵)"), "{text}");
    }

    #[test]
    fn the_whole_list_fits_the_width() {
        let text = sources(&overwater_exchange::provenance::sources(""), 80);
        assert!(text.lines().all(|line| line.chars().count() <= 80));
        for heading in ["Constants (", "Coefficients (", "Tables (", "Equations ("] {
            assert!(text.contains(heading), "{heading}");
        }
    }
}
