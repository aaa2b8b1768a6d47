//! A refusal as callers see it: the core's error with a path into the document and, where there is a document, the
//! place in it.

use annotate_snippets::{AnnotationKind, Level, Renderer, Snippet};
use overwater::{Code, Error};
use schemars::{JsonSchema, Schema, SchemaGenerator, json_schema};
use serde::{Deserialize, Serialize};

/// Where in a document a refusal points.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct Place {
    /// Line, from 1.
    pub line: u32,
    /// Column, from 1, in characters.
    pub column: u32,
}

/// What was refused, in what document, why, and what to do instead.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct Refusal {
    /// The kind of refusal: a stable name.
    #[schemars(schema_with = "codes")]
    pub code: String,
    /// Path of the key, as in `vessels[2].volume_cm3`; empty for the document as a whole.
    pub path: String,
    /// The value as it was given, with its unit.
    pub value: String,
    /// What would have been accepted.
    pub allowed: String,
    /// What to do instead.
    pub advice: String,
    /// The whole message in one sentence.
    pub message: String,
    /// Where it is in the document, where that is known.
    pub place: Option<Place>,
    /// The byte range in the document, for a caret.
    #[serde(skip)]
    pub span: Option<(usize, usize)>,
}

/// The code of a refusal that is the library's own fault; it is none of the core's.
pub const INTERNAL: &str = "internal";

fn codes(_: &mut SchemaGenerator) -> Schema {
    let names: Vec<&str> = Code::ALL.iter().map(|code| code.name()).chain([INTERNAL]).collect();
    json_schema!({ "description": "The kind of refusal: a stable name.", "type": "string", "enum": names })
}

impl From<Error> for Refusal {
    fn from(error: Error) -> Self {
        Refusal {
            code: error.code.name().to_owned(),
            message: error.to_string(),
            path: error.parameter.into_owned(),
            value: error.value.into(),
            allowed: error.allowed.into(),
            advice: error.advice.into(),
            place: None,
            span: None,
        }
    }
}

impl From<Error> for Box<Refusal> {
    fn from(error: Error) -> Self {
        Box::new(error.into())
    }
}

impl Refusal {
    /// A refusal that points into a document.
    pub(crate) fn new(error: Error, text: &str, span: Option<(usize, usize)>) -> Box<Self> {
        Box::new(Refusal::from(error).at(text, span))
    }

    /// The same, pointing into a document.
    pub(crate) fn at(self, text: &str, span: Option<(usize, usize)>) -> Self {
        let place = span.map(|(start, _)| place(text, start));
        Refusal { place, span, ..self }
    }

    /// The refusal as a person reads it: the message, the name of the document, and the line with carets under what is
    /// wrong, where that is known.
    #[must_use]
    pub fn show(&self, document: &str, text: &str) -> String {
        let title = format!("{} [{}]", self.message, self.code);
        let Some((start, end)) = self.span.filter(|(start, end)| text.get(*start..*end).is_some()) else {
            return format!("error: {document}: {title}");
        };
        // At least one character, so that there is a caret.
        let next = text.get(start..).and_then(|rest| rest.chars().next()).map_or(0, char::len_utf8);
        let snippet = Snippet::source(text)
            .path(document)
            .annotation(AnnotationKind::Primary.span(start..end.max(start + next)));
        let report = [Level::ERROR.primary_title(&title).element(snippet)];
        Renderer::plain().render(&report).to_string()
    }
}

impl std::fmt::Display for Refusal {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.write_str(&self.message)
    }
}

impl std::error::Error for Refusal {}

fn place(text: &str, byte: usize) -> Place {
    let before = text.get(..byte).unwrap_or_default();
    let line = before.matches('\n').count();
    let column = before.rsplit('\n').next().unwrap_or_default().chars().count();
    let number = |count: usize| u32::try_from(count + 1).unwrap_or(u32::MAX);
    Place { line: number(line), column: number(column) }
}

/// The core's error for a document that cannot be read at all.
pub(crate) fn syntax(advice: impl Into<String>) -> Error {
    Error::new(Code::Syntax, "").advice(advice)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn places_count_lines_and_characters_from_one() {
        assert_eq!(place("abc", 0), Place { line: 1, column: 1 });
        assert_eq!(place("a\n°x = 1", 4), Place { line: 2, column: 2 });
    }

    #[test]
    fn a_caret_stands_under_a_whole_character() {
        let error = || Error::new(Code::Syntax, "x");
        for (text, place) in [("x = ²1", (4, 4)), ("x = 1", (5, 5)), ("", (0, 0)), ("x = ²", (4, 6))] {
            let shown = Refusal::new(error(), text, Some(place)).show("lesson.toml", text);
            assert!(shown.contains("lesson.toml:1:"), "{shown}");
            assert!(shown.contains('^'), "{shown}");
        }
    }

    #[test]
    fn a_known_place_is_shown_with_a_caret() {
        let error = Error::new(Code::OutOfRange, "room.temperature_c").value("99 degC");
        let text = "[room]\ntemperature_c = 99\n";
        let shown = Refusal::new(error, text, Some((23, 25))).show("lesson.toml", text);
        assert!(shown.contains("lesson.toml:2:17"), "{shown}");
        assert!(shown.contains("^^"), "{shown}");
        assert!(shown.contains("room.temperature_c = 99 degC is out of range"), "{shown}");
    }
}
