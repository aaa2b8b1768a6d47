//! The bounds table as it is sent.

use overwater::bounds::{ALL, Bound};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

use crate::FORMAT;

/// What is accepted for each quantity, or for those that match a text.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct BoundsAnswer {
    /// The format of the answer; 1.
    pub format: u32,
    /// The version of the library that gave it.
    pub library_version: String,
    /// A row for each quantity.
    pub bounds: Vec<BoundEntry>,
}

/// What is accepted for one quantity.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct BoundEntry {
    /// The parameter's name, its unit last.
    pub name: String,
    /// What it is.
    pub quantity: String,
    /// The least value accepted.
    pub least: f64,
    /// The greatest value accepted.
    pub greatest: f64,
    /// The unit of both.
    pub unit: String,
    /// What is taken where nothing is said of it; nothing where it must be given.
    pub where_unsaid: Option<f64>,
    /// Why just these limits.
    pub why: String,
}

/// The rows whose name, quantity or reason holds a text, in any case; all of them for an empty one.
#[must_use]
pub fn bounds(text: &str) -> BoundsAnswer {
    let wanted = text.to_lowercase();
    let holds = |row: &BoundEntry| {
        [&row.name, &row.quantity, &row.why].iter().any(|field| field.to_lowercase().contains(&wanted))
    };
    BoundsAnswer {
        format: FORMAT,
        library_version: env!("CARGO_PKG_VERSION").to_owned(),
        bounds: ALL.iter().map(|bound| BoundEntry::from(*bound)).filter(holds).collect(),
    }
}

impl From<&Bound> for BoundEntry {
    fn from(bound: &Bound) -> Self {
        BoundEntry {
            name: bound.name.to_owned(),
            quantity: bound.symbol.name.to_owned(),
            least: bound.least,
            greatest: bound.greatest,
            unit: bound.symbol.unit.text.to_owned(),
            where_unsaid: bound.where_unsaid(),
            why: bound.why.to_owned(),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_row_is_sent_with_all_that_it_says() {
        let all = bounds("").bounds;
        assert_eq!(all.len(), ALL.len());
        let first = all.first().expect("a row");
        assert_eq!(
            (first.name.as_str(), first.quantity.as_str(), first.least, first.greatest, first.unit.as_str()),
            ("temperature_c", "temperature", 0.0, 100.0, "degC")
        );
        assert_eq!(first.why, "liquid water at atmospheric pressure");
    }

    #[test]
    fn a_text_is_looked_for_in_name_quantity_and_reason_in_any_case() {
        let names = |text| bounds(text).bounds.into_iter().map(|row| row.name).collect::<Vec<_>>();
        assert_eq!(names("ALTITUDE_M"), ["altitude_m", "altitude_m"]);
        assert!(names("height above").contains(&"altitude_m".to_owned()));
        assert!(names("schools").contains(&"pressure_kpa".to_owned()));
        assert_eq!(names("no such thing"), [""; 0]);
    }
}
