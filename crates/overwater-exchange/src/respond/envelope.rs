//! What stands around a request, an answer and an error.

use overwater::{Code, Error};
use schemars::JsonSchema;
use serde::de::DeserializeOwned;
use serde::{Deserialize, Serialize};
use serde_json::Value;

use crate::read::{Document, json_value};
use crate::refusal::INTERNAL;
use crate::{FORMAT, Refusal, locate};

/// What is asked.
#[derive(Debug, Clone, PartialEq, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub(super) struct Asked<Request> {
    /// The format of the envelope; 1.
    pub(super) format: u32,
    /// The name of the task.
    pub(super) task: String,
    /// The task's own document, as it would stand in a file.
    pub(super) request: Request,
}

#[derive(Debug, Serialize)]
struct Answered<'a, Answer> {
    format: u32,
    library_version: &'a str,
    task: &'a str,
    answer: Answer,
}

/// The answer where a request is refused.
#[derive(Debug, Serialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub(super) struct Refused<'a> {
    /// The format of the envelope; 1.
    format: u32,
    /// The version of the library that gave it.
    library_version: &'a str,
    /// The name of the task; nothing where the request names none.
    task: Option<&'a str>,
    /// What was refused, where, why, and what to do instead.
    error: &'a Refusal,
}

/// Reads the envelope of a task.
pub(super) fn open<Request: Document + Serialize>(text: &str) -> Result<Request, Box<Refusal>> {
    let asked: Asked<Request> = json_value(text)?;
    for (path, format) in [("format", asked.format), ("request.format", asked.request.format())] {
        if format != FORMAT {
            let error = Error::new(Code::Contradiction, path)
                .value(format.to_string())
                .allowed(FORMAT.to_string())
                .advice(format!("this version reads format {FORMAT} only"));
            return Err(Refusal::new(error, text, locate::in_json(text, path)));
        }
    }
    let written: Asked<Value> = json_value(text)?;
    let read = serde_json::to_value(&asked.request).map_err(|error| internal(&error.to_string()))?;
    match list_for_object(&written.request, &read, "request".to_owned()) {
        Some(path) => {
            let error =
                Error::new(Code::Syntax, path.clone()).advice("a list stands where an object is needed");
            Err(Refusal::new(error, text, locate::in_json(text, &path)))
        }
        None => Ok(asked.request),
    }
}

/// The path of a list that was read as an object, its values taken in the order of the keys: the reader allows that, but a
/// number without its key has no unit.
fn list_for_object(written: &Value, read: &Value, path: String) -> Option<String> {
    match (written, read) {
        (Value::Array(_), Value::Object(_)) => Some(path),
        (Value::Array(written), Value::Array(read)) => {
            written.iter().zip(read).enumerate().find_map(|(index, (written, read))| {
                list_for_object(written, read, format!("{path}[{index}]"))
            })
        }
        (Value::Object(written), Value::Object(read)) => written
            .iter()
            .find_map(|(key, written)| list_for_object(written, read.get(key)?, format!("{path}.{key}"))),
        _ => None,
    }
}

/// Writes an answer. A number that is not finite has no place in JSON, and a bare `null` would not say why it is missing,
/// so such an answer is refused with the path of the number.
pub(super) fn answered<Answer>(task: &str, answer: &Answer) -> Result<String, Box<Refusal>>
where
    Answer: Serialize + DeserializeOwned,
{
    let written = serde_json::to_string(answer).map_err(|error| internal(&error.to_string()))?;
    let mut reader = serde_json::Deserializer::from_str(&written);
    if let Err(error) = serde_path_to_error::deserialize::<_, Answer>(&mut reader) {
        return Err(Error::new(Code::NotANumber, format!("answer.{}", error.path()))
            .advice("the values given lead to no finite number here")
            .into());
    }
    let answer = serde_json::value::RawValue::from_string(written);
    let answer = answer.map_err(|error| internal(&error.to_string()))?;
    let whole = Answered { format: FORMAT, library_version: env!("CARGO_PKG_VERSION"), task, answer };
    serde_json::to_string(&whole).map_err(|error| internal(&error.to_string()))
}

/// Writes a refusal.
pub(super) fn refused(task: Option<&str>, refusal: &Refusal) -> String {
    let whole = Refused { format: FORMAT, library_version: env!("CARGO_PKG_VERSION"), task, error: refusal };
    // Texts and whole numbers only: writing them cannot fail.
    serde_json::to_string(&whole).unwrap_or_default()
}

/// A fault of the library.
pub(super) fn internal(message: &str) -> Box<Refusal> {
    Box::new(Refusal {
        code: INTERNAL.to_owned(),
        path: String::new(),
        value: String::new(),
        allowed: String::new(),
        advice: "this is a fault of the library: please report the request that shows it".to_owned(),
        message: message.to_owned(),
        place: None,
        span: None,
    })
}
