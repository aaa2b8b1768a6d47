//! Where in a document a path points.

use std::collections::BTreeMap;

use serde_json::value::RawValue;
use toml::Spanned;
use toml::de::{DeTable, DeValue};

/// The byte range of the value at `path` (as in `vessels[2].volume_cm3`), or of the innermost part of the path that the
/// document has; nothing where it has none of it.
pub(crate) fn in_toml(text: &str, path: &str) -> Option<(usize, usize)> {
    let document = DeTable::parse(text).ok()?;
    let mut found = None;
    let mut here = Here::Table(document.get_ref());
    for step in path.split(['.', '[']).map(|step| step.trim_end_matches(']')) {
        let next: Option<&Spanned<DeValue<'_>>> = match here {
            Here::Table(table) => table.get(step),
            Here::Value(DeValue::Table(table)) => table.get(step),
            Here::Value(DeValue::Array(array)) => {
                step.parse::<usize>().ok().and_then(|index| array.get(index))
            }
            Here::Value(_) => None,
        };
        let Some(next) = next else {
            break;
        };
        found = Some((next.span().start, next.span().end));
        here = Here::Value(next.get_ref());
    }
    found
}

enum Here<'a> {
    Table(&'a DeTable<'a>),
    Value(&'a DeValue<'a>),
}

/// The same in a JSON document.
pub(crate) fn in_json(text: &str, path: &str) -> Option<(usize, usize)> {
    let mut here: &RawValue = serde_json::from_str(text).ok()?;
    let mut found = None;
    for step in path.split(['.', '[']).map(|step| step.trim_end_matches(']')) {
        let inside = here.get();
        let next = match step.parse::<usize>() {
            Ok(index) => serde_json::from_str::<Vec<&RawValue>>(inside)
                .ok()
                .and_then(|items| items.get(index).copied()),
            Err(_) => serde_json::from_str::<BTreeMap<String, &RawValue>>(inside)
                .ok()
                .and_then(|entries| entries.get(step).copied()),
        };
        let Some(next) = next else {
            break;
        };
        let start = next.get().as_ptr().addr().checked_sub(text.as_ptr().addr())?;
        found = Some((start, start + next.get().len()));
        here = next;
    }
    found
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn paths_lead_to_their_values_in_json() {
        let text = r#"{"room": {"temperature_c": 99}, "vessels": [{}, {"volume_cm3": 0, "°": [1, [2, 3]]}]}"#;
        let at = |path: &str| in_json(text, path).map(|(start, end)| &text[start..end]);
        assert_eq!(at("room.temperature_c"), Some("99"));
        assert_eq!(at("vessels[1].volume_cm3"), Some("0"));
        assert_eq!(at("vessels[1].°[1][0]"), Some("2"));
        assert_eq!(at("room.volume_m3"), Some(r#"{"temperature_c": 99}"#));
        assert_eq!(at("stock"), None);
        assert_eq!(in_json("{", "a"), None);
    }

    const TEXT: &str = "[room]\ntemperature_c = 99\n[[vessels]]\n[[vessels]]\nvolume_cm3 = 0\n";

    fn at(path: &str) -> Option<&str> {
        in_toml(TEXT, path).map(|(start, end)| &TEXT[start..end])
    }

    #[test]
    fn paths_lead_to_their_values() {
        assert_eq!(at("room.temperature_c"), Some("99"));
        assert_eq!(at("vessels[1].volume_cm3"), Some("0"));
        assert_eq!(at("room.volume_m3"), Some("[room]"));
        assert_eq!(at("stock"), None);
        assert_eq!(in_toml("not toml", "a"), None);
    }
}
