//! Where every number comes from: each constant, coefficient, table and equation in use, with its source.

mod register;

use crate::catalogue;
use crate::scalar::{Constant, Source, Table};

/// What kind of thing an entry is.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum Kind {
    /// A constant of nature, of definition or of the trade.
    Constant,
    /// A coefficient of an equation.
    Coefficient,
    /// A table of published values.
    Table,
    /// An equation.
    Equation,
}

impl Kind {
    /// In one word.
    #[must_use]
    pub const fn word(self) -> &'static str {
        match self {
            Kind::Constant => "constant",
            Kind::Coefficient => "coefficient",
            Kind::Table => "table",
            Kind::Equation => "equation",
        }
    }
}

/// One entry.
#[derive(Debug, Clone, PartialEq)]
pub struct Entry {
    /// What kind of thing it is.
    pub kind: Kind,
    /// A stable name for programs; for data it carries the year of the edition.
    pub id: String,
    /// Its symbol; empty for a table.
    pub symbol: String,
    /// What it is.
    pub name: String,
    /// Its value; none for a table or an equation.
    pub value: Option<f64>,
    /// Its unit; of an equation that of its result.
    pub unit: String,
    /// Its standard uncertainty in the same unit: 0 where it is exact by definition, none where the source gives none.
    pub standard_uncertainty: Option<f64>,
    /// Where it holds.
    pub range: String,
    /// The published work, or what stands in its place.
    pub source: &'static Source,
}

/// Every entry: constants, coefficients, tables, equations.
///
/// ```
/// let entries = overwater::provenance::entries();
/// let r = entries.iter().find(|entry| entry.id == "molar_gas_2019").unwrap();
/// assert_eq!(r.value, Some(8.314_462_618_153_24));
/// assert_eq!(r.source.year, Some(2019));
/// ```
#[must_use]
pub fn entries() -> Vec<Entry> {
    let mut entries = register::data();
    for formula in catalogue::all() {
        let output = formula.output();
        let inputs: Vec<String> =
            formula.inputs().iter().map(|bound| format!("{} {}", bound.name, bound.range())).collect();
        let uncertainty = formula.property_uncertainty();
        entries.push(Entry {
            kind: Kind::Equation,
            id: formula.name().to_owned(),
            symbol: output.text.to_owned(),
            name: match uncertainty {
                Some(uncertainty) => format!("{} ({})", output.name, uncertainty.stated),
                None => output.name.to_owned(),
            },
            value: None,
            unit: output.unit.text.to_owned(),
            standard_uncertainty: None,
            range: inputs.join("; "),
            source: output.source.unwrap_or(&crate::reference::sources::DEFINITION),
        });
    }
    entries.sort_by(|a, b| (a.kind, &a.id).cmp(&(b.kind, &b.id)));
    entries
}

/// Entries of which the id, symbol, name, unit or source holds the text, in any case.
///
/// ```
/// let found = overwater::provenance::matching("kell");
/// assert!(!found.is_empty() && found.iter().all(|entry| entry.source.text.contains("Kell")));
/// ```
#[must_use]
pub fn matching(text: &str) -> Vec<Entry> {
    let wanted = text.to_lowercase();
    let holds = |part: &str| part.to_lowercase().contains(&wanted);
    let mut found = entries();
    found.retain(|entry| {
        [&entry.id, &entry.symbol, &entry.name, &entry.unit].into_iter().any(|part| holds(part))
            || holds(entry.source.text)
            || holds(entry.kind.word())
    });
    found
}

fn constant(constant: &'static Constant) -> Entry {
    Entry {
        kind: Kind::Constant,
        id: constant.symbol.id.to_owned(),
        symbol: constant.symbol.text.to_owned(),
        name: constant.symbol.name.to_owned(),
        value: Some(constant.value),
        unit: constant.symbol.unit.text.to_owned(),
        standard_uncertainty: constant.standard_uncertainty,
        range: String::new(),
        source: constant.symbol.source.unwrap_or(&crate::reference::sources::DEFINITION),
    }
}

/// The coefficients of an equation; `units` has one unit for each, or one for all.
fn coefficients(
    id: &'static str,
    name: &'static str,
    values: &[f64],
    units: &[&'static str],
    range: &'static str,
    source: &'static Source,
) -> Vec<Entry> {
    values
        .iter()
        .enumerate()
        .map(|(index, value)| Entry {
            kind: Kind::Coefficient,
            id: if values.len() == 1 { id.to_owned() } else { format!("{id}_{}", index + 1) },
            symbol: String::new(),
            name: name.to_owned(),
            value: Some(*value),
            unit: units.get(index).or(units.last()).copied().unwrap_or_default().to_owned(),
            standard_uncertainty: None,
            range: range.to_owned(),
            source,
        })
        .collect()
}

/// A table as a whole.
fn table(
    id: &'static str,
    name: String,
    unit: &'static str,
    range: String,
    source: &'static Source,
) -> Entry {
    Entry {
        kind: Kind::Table,
        id: id.to_owned(),
        symbol: String::new(),
        name,
        value: None,
        unit: unit.to_owned(),
        standard_uncertainty: None,
        range,
        source,
    }
}

/// A printed table of one quantity against another.
fn printed(id: &'static str, name: &'static str, printed: &'static Table) -> Entry {
    let ends = printed.entries.first().zip(printed.entries.last());
    let range = ends.map(|((from, _), (to, _))| format!("{from} to {to} {}", printed.argument.text));
    table(
        id,
        format!("{name}, {} entries", printed.entries.len()),
        printed.value.text,
        range.unwrap_or_default(),
        printed.source,
    )
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn no_two_entries_share_an_id_and_each_names_its_source() {
        let entries = entries();
        for pair in entries.windows(2) {
            assert!((pair[0].kind, &pair[0].id) < (pair[1].kind, &pair[1].id), "{} twice", pair[0].id);
        }
        for entry in &entries {
            assert!(!entry.name.is_empty() && !entry.source.text.is_empty(), "{entry:?}");
            assert!(entry.value.is_none_or(f64::is_finite), "{entry:?}");
        }
        for kind in [Kind::Constant, Kind::Coefficient, Kind::Table, Kind::Equation] {
            assert!(entries.iter().any(|entry| entry.kind == kind), "{kind:?}");
        }
    }
}
