//! The list of sources as it is sent.

use overwater::provenance::{Entry, entries, matching};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

use crate::FORMAT;

/// Every constant, coefficient, table and equation in use, or those that match a text.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct SourcesAnswer {
    /// The format of the answer; 1.
    pub format: u32,
    /// The version of the library that gave it.
    pub library_version: String,
    /// The entries: constants, coefficients, tables, equations.
    pub entries: Vec<SourceEntry>,
}

/// One constant, coefficient, table or equation.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct SourceEntry {
    /// "constant", "coefficient", "table" or "equation".
    pub kind: String,
    /// A stable name for programs.
    pub id: String,
    /// Its symbol.
    pub symbol: String,
    /// What it is.
    pub name: String,
    /// Its value; nothing for a table or an equation.
    pub value: Option<f64>,
    /// Its unit.
    pub unit: String,
    /// Its standard uncertainty in the same unit; 0 where exact, nothing where the source gives none.
    pub standard_uncertainty: Option<f64>,
    /// Where it holds.
    pub range: String,
    /// Where it comes from.
    pub source: String,
    /// The year of the edition used.
    pub year: Option<u16>,
}

/// The entries that hold a text; all of them for an empty one.
#[must_use]
pub fn sources(text: &str) -> SourcesAnswer {
    let found = if text.is_empty() { entries() } else { matching(text) };
    SourcesAnswer {
        format: FORMAT,
        library_version: env!("CARGO_PKG_VERSION").to_owned(),
        entries: found.into_iter().map(Into::into).collect(),
    }
}

impl From<Entry> for SourceEntry {
    fn from(entry: Entry) -> Self {
        SourceEntry {
            kind: entry.kind.word().to_owned(),
            id: entry.id,
            symbol: entry.symbol,
            name: entry.name,
            value: entry.value,
            unit: entry.unit,
            standard_uncertainty: entry.standard_uncertainty,
            range: entry.range,
            source: entry.source.text.to_owned(),
            year: entry.source.year,
        }
    }
}
