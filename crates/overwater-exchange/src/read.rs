//! Reading a request from text, with a refusal that names the key and the place.

use overwater::{Code, Error, nearest};
use serde::de::DeserializeOwned;

use crate::after::{InWaterRequest, RoomAirRequest};
use crate::burn::request::BurnRequest;
use crate::calculation::CalculationRequest;
use crate::chemistry::{BalanceRequest, FormulaRequest};
use crate::columns::ColumnsRequest;
use crate::peroxide::{AssayDesignRequest, DilutionRequest, StrengthRequest};
use crate::propagation::request::PropagationRequest;
use crate::rate::request::RateRequest;
use crate::reduction::request::ReductionRequest;
use crate::refusal::{Refusal, syntax};
use crate::request::LessonRequest;
use crate::respond::listing::{ListRequest, VersionRequest};
use crate::run::request::{CalibrationRequest, RunRequest};
use crate::strict::{InOrder, ZERO_CHARACTER};
use crate::{FORMAT, locate};

/// The longest request that is read, in bytes: room for a hundred thousand rows of readings, and for nothing that would fill
/// the memory.
pub const GREATEST_BYTES: usize = 1 << 23;

/// Reads a lesson written in TOML.
///
/// # Errors
/// `too_large`, `syntax`, `unknown_name` for an unknown key (with the nearest known one), `missing`, and `contradiction`
/// for a format that this version does not speak.
pub fn lesson_from_toml(text: &str) -> Result<LessonRequest, Box<Refusal>> {
    toml_text(text)
}

fn toml_text<T: Document>(text: &str) -> Result<T, Box<Refusal>> {
    refuse_long(text)?;
    let deserializer = toml::Deserializer::parse(text).map_err(|error| {
        let span = error.span().map(|range| (range.start, range.end));
        Refusal::new(syntax(one_line(error.message())), text, span)
    })?;
    let lesson = read(deserializer, text, |error: &toml::de::Error| Failure {
        message: error.message().to_owned(),
        span: error.span().map(|range| (range.start, range.end)),
        is_syntax: false,
    })?;
    check_format(lesson, text)
}

/// Reads readings, or the options for a table of them, written in TOML.
///
/// # Errors
/// As for [`lesson_from_toml`].
pub fn reduction_from_toml(text: &str) -> Result<ReductionRequest, Box<Refusal>> {
    toml_text(text)
}

/// Reads readings, or the options for a table of them, written in JSON.
///
/// # Errors
/// As for [`lesson_from_toml`].
pub fn reduction_from_json(text: &str) -> Result<ReductionRequest, Box<Refusal>> {
    json_text(text)
}

/// Reads readings against time, or the options for a table of them, written in TOML.
///
/// # Errors
/// As for [`lesson_from_toml`].
pub fn rate_from_toml(text: &str) -> Result<RateRequest, Box<Refusal>> {
    toml_text(text)
}

/// Reads readings against time, or the options for a table of them, written in JSON.
///
/// # Errors
/// As for [`lesson_from_toml`].
pub fn rate_from_json(text: &str) -> Result<RateRequest, Box<Refusal>> {
    json_text(text)
}

/// Reads a formula with uncertain inputs, written in TOML.
///
/// # Errors
/// As for [`lesson_from_toml`].
pub fn propagation_from_toml(text: &str) -> Result<PropagationRequest, Box<Refusal>> {
    toml_text(text)
}

/// Reads a formula with uncertain inputs, written in JSON.
///
/// # Errors
/// As for [`lesson_from_toml`].
pub fn propagation_from_json(text: &str) -> Result<PropagationRequest, Box<Refusal>> {
    json_text(text)
}

/// Reads a preparation to be simulated, written in TOML.
///
/// # Errors
/// As for [`lesson_from_toml`].
pub fn run_from_toml(text: &str) -> Result<RunRequest, Box<Refusal>> {
    toml_text(text)
}

/// Reads a preparation to be simulated, written in JSON.
///
/// # Errors
/// As for [`lesson_from_toml`].
pub fn run_from_json(text: &str) -> Result<RunRequest, Box<Refusal>> {
    json_text(text)
}

/// Reads the readings of a trial run, written in TOML.
///
/// # Errors
/// As for [`lesson_from_toml`].
pub fn calibration_from_toml(text: &str) -> Result<CalibrationRequest, Box<Refusal>> {
    toml_text(text)
}

/// Reads the readings of a trial run, written in JSON.
///
/// # Errors
/// As for [`lesson_from_toml`].
pub fn calibration_from_json(text: &str) -> Result<CalibrationRequest, Box<Refusal>> {
    json_text(text)
}

/// Reads a sample that burns in a jar, written in TOML.
///
/// # Errors
/// As for [`lesson_from_toml`].
pub fn burn_from_toml(text: &str) -> Result<BurnRequest, Box<Refusal>> {
    toml_text(text)
}

/// Reads a sample that burns in a jar, written in JSON.
///
/// # Errors
/// As for [`lesson_from_toml`].
pub fn burn_from_json(text: &str) -> Result<BurnRequest, Box<Refusal>> {
    json_text(text)
}

/// A document that says which format it speaks.
pub(crate) trait Document: DeserializeOwned {
    fn format(&self) -> u32;
}

macro_rules! documents {
    ($($request:ty),* $(,)?) => {
        $(impl Document for $request {
            fn format(&self) -> u32 {
                self.format
            }
        })*
    };
}

documents! {
    LessonRequest, ReductionRequest, RateRequest, PropagationRequest, CalculationRequest, FormulaRequest, BalanceRequest,
    ListRequest, VersionRequest, ColumnsRequest, StrengthRequest, DilutionRequest, AssayDesignRequest, RunRequest,
    CalibrationRequest, BurnRequest, InWaterRequest,
    RoomAirRequest,
}

/// Reads a lesson written in JSON.
///
/// # Errors
/// As for [`lesson_from_toml`].
pub fn lesson_from_json(text: &str) -> Result<LessonRequest, Box<Refusal>> {
    json_text(text)
}

fn json_text<T: Document>(text: &str) -> Result<T, Box<Refusal>> {
    check_json(text)?;
    check_format(json_value(text)?, text)
}

/// Refuses what is too long, no JSON, or has a key twice.
pub(crate) fn check_json(text: &str) -> Result<(), Box<Refusal>> {
    refuse_long(text)?;
    json_value::<InOrder>(text).map(|_| ())
}

/// A value from a text that holds nothing else.
pub(crate) fn json_value<T: DeserializeOwned>(text: &str) -> Result<T, Box<Refusal>> {
    let mut deserializer = serde_json::Deserializer::from_str(text);
    let failure = |error: &serde_json::Error| Failure {
        message: error.to_string(),
        span: byte_of(text, error.line(), error.column()).map(|start| (start, start)),
        is_syntax: !error.is_data(),
    };
    // Where the path is known, the place is that of the value, not how far the reader had come.
    let value = read(&mut deserializer, text, failure).map_err(|refusal| {
        match locate::in_json(text, &refusal.path) {
            Some(span) => Box::new(refusal.at(text, Some(span))),
            None => refusal,
        }
    })?;
    if let Err(error) = deserializer.end() {
        let failure = failure(&error);
        return Err(Refusal::new(unreadable(&failure.message), text, failure.span));
    }
    Ok(value)
}

struct Failure {
    message: String,
    span: Option<(usize, usize)>,
    is_syntax: bool,
}

fn read<'d, T, D>(
    deserializer: D,
    text: &str,
    failure: impl Fn(&D::Error) -> Failure,
) -> Result<T, Box<Refusal>>
where
    T: DeserializeOwned,
    D: serde::Deserializer<'d>,
{
    serde_path_to_error::deserialize(deserializer).map_err(|error| {
        let path = error.path().to_string();
        let path = if path == "." { String::new() } else { path };
        let failure = failure(error.inner());
        let error =
            if failure.is_syntax { unreadable(&failure.message) } else { explain(&failure.message, path) };
        Refusal::new(error, text, failure.span)
    })
}

fn refuse_long(text: &str) -> Result<(), Box<Refusal>> {
    if text.len() <= GREATEST_BYTES {
        return Ok(());
    }
    let error = Error::new(Code::TooLarge, "")
        .value(format!("{} bytes", text.len()))
        .allowed(format!("at most {GREATEST_BYTES} bytes"))
        .advice("is this the right file? long readings are read as a table (CSV)");
    Err(error.into())
}

fn check_format<T: Document>(lesson: T, text: &str) -> Result<T, Box<Refusal>> {
    if lesson.format() == FORMAT {
        return Ok(lesson);
    }
    let error = Error::new(Code::Contradiction, "format")
        .value(lesson.format().to_string())
        .allowed(FORMAT.to_string())
        .advice("this version reads format 1 only");
    Err(Refusal::new(error, text, None))
}

/// Turns the reader's words into the one error shape. Its words for an unknown key, an unknown word and a missing key
/// are fixed, and list what is known between back quotes.
fn explain(message: &str, path: String) -> Error {
    let quoted: Vec<&str> = message.split('`').skip(1).step_by(2).collect();
    if message.starts_with("unknown field") || message.starts_with("unknown variant") {
        let written = quoted.first().copied().unwrap_or_default().to_owned();
        let known = quoted.get(1..).unwrap_or_default();
        let what = if message.starts_with("unknown field") {
            // The path already ends in the key that is unknown.
            Error::new(Code::UnknownName, path)
        } else {
            Error::new(Code::UnknownName, path).value(format!("\"{written}\""))
        };
        let error = what.allowed(known.join(", "));
        return match nearest(&written, known.iter().copied()) {
            Some(name) => error.advice(format!("did you mean {name}?")),
            None => error,
        };
    }
    if message.starts_with("missing field") {
        let key = quoted.first().copied().unwrap_or_default().to_owned();
        let error = Error::new(Code::Missing, key.clone());
        let error = match key.as_str() {
            "format" => error.advice("begin with format = 1"),
            "stock" => error.advice("say what peroxide there is: [stock] with strength = \"20 vol\""),
            "vessels" => error.advice("say what is to be filled: [[vessels]] with burn = \"sulfur\""),
            _ => error,
        };
        return if path.is_empty() { error } else { error.within(&path) };
    }
    if message.starts_with("duplicate field") {
        let key = quoted.first().copied().unwrap_or_default();
        let path = match path.rsplit(['.']).next() {
            Some(last) if last == key => path,
            _ if path.is_empty() => key.to_owned(),
            _ => format!("{path}.{key}"),
        };
        return Error::new(Code::GivenTwice, path).advice("write the key once");
    }
    // The cells of a row are the only values that may be of two kinds.
    if message.starts_with("data did not match any variant of untagged enum CellRequest") {
        return Error::new(Code::Syntax, path)
            .allowed("a number or a text")
            .advice("leave out what is not known");
    }
    if message.starts_with(ZERO_CHARACTER) {
        return Error::new(Code::Syntax, path)
            .allowed("texts without the character U+0000")
            .advice("leave it out");
    }
    Error::new(Code::Syntax, path).advice(in_plain_words(message))
}

/// The reader's words with the place, which stands elsewhere, left out, and with types by what they are to a reader.
fn in_plain_words(message: &str) -> String {
    const TYPES: [(&str, &str); 12] = [
        ("f64", "a number"),
        ("i8", "a whole number"),
        ("i32", "a whole number"),
        ("i64", "a whole number"),
        ("u8", "a whole number, 0 or more"),
        ("u16", "a whole number, 0 or more"),
        ("u32", "a whole number, 0 or more"),
        ("u64", "a whole number, 0 or more"),
        ("usize", "a whole number, 0 or more"),
        ("a sequence", "a list"),
        ("a map", "an object"),
        ("a string", "a text"),
    ];
    let words = one_line(message);
    let words = words.rsplit_once(" at line ").map_or(words.as_str(), |(words, _)| words);
    let Some((found, expected)) = words.rsplit_once("expected ") else {
        return words.to_owned();
    };
    match TYPES.iter().find(|(name, _)| *name == expected) {
        Some((_, plain)) => format!("{found}expected {plain}"),
        None if expected.starts_with("struct ") => format!("{found}expected an object"),
        None => words.to_owned(),
    }
}

/// A text that breaks the rules of its language, or holds a number that no double reaches.
fn unreadable(message: &str) -> Error {
    if message.starts_with("number out of range") {
        return Error::new(Code::TooLarge, "")
            .value("a number")
            .allowed("numbers of at most 1.797e308 either way")
            .advice("write it with a smaller exponent");
    }
    syntax(in_plain_words(message))
}

fn one_line(message: &str) -> String {
    message.split_whitespace().collect::<Vec<_>>().join(" ")
}

/// The byte at a line and column, both from 1, as the JSON reader counts them (columns in bytes).
fn byte_of(text: &str, line: usize, column: usize) -> Option<usize> {
    let start: usize = text.split_inclusive('\n').take(line.checked_sub(1)?).map(str::len).sum();
    let byte = start.saturating_add(column.saturating_sub(1)).min(text.len());
    (0..=byte).rev().find(|byte| text.is_char_boundary(*byte))
}

#[cfg(test)]
mod tests {
    use super::*;

    const GOOD: &str = "format = 1\n[stock]\nstrength = \"20 vol\"\n[[vessels]]\nburn = \"sulfur\"\n";

    fn refused(text: &str) -> Box<Refusal> {
        lesson_from_toml(text).unwrap_err()
    }

    #[test]
    fn toml_and_json_give_the_same_request() {
        let toml = lesson_from_toml(GOOD).unwrap();
        let json = r#"{"format": 1, "stock": {"strength": "20 vol"}, "vessels": [{"burn": "sulfur"}]}"#;
        assert_eq!(toml, lesson_from_json(json).unwrap());
        let written = serde_json::to_string(&toml).unwrap();
        assert_eq!(lesson_from_json(&written).unwrap(), toml);
    }

    #[test]
    fn an_unknown_key_names_its_path_and_the_nearest_known_key() {
        let refusal = refused(&format!("{GOOD}volum_cm3 = 3\n"));
        assert_eq!(refusal.code, "unknown_name");
        assert_eq!(refusal.path, "vessels[0].volum_cm3");
        assert_eq!(refusal.advice, "did you mean volume_cm3?");
        assert_eq!(refusal.place.unwrap().line, 6);
        let json = r#"{"format": 1, "stock": {"strenght": "20 vol"}, "vessels": []}"#;
        let refusal = lesson_from_json(json).unwrap_err();
        assert_eq!(
            (refusal.path.as_str(), refusal.advice.as_str()),
            ("stock.strenght", "did you mean strength?")
        );
    }

    #[test]
    fn what_is_missing_or_of_the_wrong_kind_is_named() {
        assert_eq!(refused("[stock]\nstrength = \"20 vol\"\nvessels = []").code, "unknown_name");
        let refusal = refused("format = 1\nvessels = []\n");
        assert_eq!((refusal.code.as_str(), refusal.path.as_str()), ("missing", "stock"));
        let refusal = refused("format = 1\nvessels = []\n[stock]\nopened = \"2026-01-01\"\n");
        assert_eq!((refusal.code.as_str(), refusal.path.as_str()), ("missing", "stock.strength"));
        let refusal = refused(&format!("{GOOD}kind = \"jug\"\n"));
        assert_eq!((refusal.code.as_str(), refusal.path.as_str()), ("unknown_name", "vessels[0].kind"));
        let refusal = refused(&format!("{GOOD}sample_g = \"0.1\"\n"));
        assert_eq!((refusal.code.as_str(), refusal.path.as_str()), ("syntax", "vessels[0].sample_g"));
        let refusal = refused(&GOOD.replace("format = 1", "format = 2"));
        assert_eq!((refusal.code.as_str(), refusal.path.as_str()), ("contradiction", "format"));
    }

    #[test]
    fn text_that_is_no_toml_or_json_is_refused_with_its_place() {
        let refusal = refused("format = 1\n[stock\n");
        assert_eq!((refusal.code.as_str(), refusal.place.unwrap().line), ("syntax", 2));
        let refusal = lesson_from_json("{\"format\": 1,\n nonsense}").unwrap_err();
        assert_eq!((refusal.code.as_str(), refusal.place.unwrap().line), ("syntax", 2));
        let refusal = lesson_from_json(&format!("{}{}", "[".repeat(10_000), "]".repeat(10_000))).unwrap_err();
        assert_eq!(refusal.code, "syntax");
        let trailing = r#"{"format": 1, "stock": {"strength": "20 vol"}, "vessels": []} x"#;
        assert_eq!(lesson_from_json(trailing).unwrap_err().code, "syntax");
    }

    #[test]
    fn a_text_that_is_too_long_is_not_read() {
        let long = " ".repeat(GREATEST_BYTES + 1);
        assert_eq!(refused(&long).code, "too_large");
        assert_eq!(lesson_from_json(&long).unwrap_err().code, "too_large");
    }
}
