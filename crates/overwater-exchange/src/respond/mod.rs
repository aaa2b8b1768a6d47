//! One request in JSON to one answer in JSON: the door that every language without Rust's types goes through.
//!
//! ```json
//! {"format": 1, "task": "weigh", "request": {"format": 1, "formula": "H2O2"}}
//! {"format": 1, "library_version": "0.1.0", "task": "weigh", "answer": {"format": 1, "formula": "H2O2"}}
//! {"format": 1, "library_version": "0.1.0", "task": "weigh", "error": {"code": "syntax", "path": "request.formula"}}
//! ```
//!
//! The envelope and what it carries have a format each. `request` is the very document that a file would hold, so a file
//! that the program reads goes into an envelope as it is; the two numbers grow independently. A refusal is an answer too:
//! its path begins at the envelope, and its place is a line and a column of the request. A number in an answer is finite;
//! one that is not there is `null`, and the field's description, or a code beside it, says why.

mod envelope;
mod guard;
pub mod listing;
mod schema;
mod tasks;
mod work;

use overwater::{Code, Error, nearest};
use serde::de::IgnoredAny;

use crate::read::{check_json, json_value};
use crate::refusal::{Refusal, syntax};
use crate::strict::task_of;
use crate::{GREATEST_BYTES, locate};
use envelope::Asked;
pub use schema::schema;
pub use tasks::names;

/// Answers a request. Whatever the bytes are, a text comes back: an answer, or an error in the one shape. The same request
/// gives the same bytes everywhere.
///
/// ```
/// let request = br#"{"format": 1, "task": "weigh", "request": {"format": 1, "formula": "H2O2"}}"#;
/// let answer = overwater_exchange::respond(request);
/// // Conventional atomic weights: 2 x 1.008 + 2 x 15.999.
/// assert!(answer.contains(r#""molar_mass_g_per_mol":34.014"#), "{answer}");
/// let refused = overwater_exchange::respond(b"{\"format\": 1,\n nonsense}");
/// assert!(refused.contains(r#""place":{"line":2,"column":2}"#), "{refused}");
/// ```
#[must_use]
pub fn respond(request: &[u8]) -> String {
    respond_with_status(request).0
}

/// The same, and whether it is an answer (true) or an error (false).
#[must_use]
pub fn respond_with_status(request: &[u8]) -> (String, bool) {
    let mut task = None;
    let answer = guard::guarded(|| {
        let text = readable(request)?;
        check_json(text)?;
        task = task_of(text);
        answer(text, task.as_deref())
    });
    match answer {
        Ok(answer) => (answer, true),
        Err(refusal) => (envelope::refused(task.as_deref(), &refusal), false),
    }
}

/// The request as a text. A longer one is refused by its size alone.
fn readable(request: &[u8]) -> Result<&str, Box<Refusal>> {
    if request.len() > GREATEST_BYTES {
        return Err(Error::new(Code::TooLarge, "")
            .value(format!("more than {GREATEST_BYTES} bytes"))
            .allowed(format!("at most {GREATEST_BYTES} bytes"))
            .advice("send long tables of readings in parts")
            .into());
    }
    str::from_utf8(request).map_err(|error| {
        let good = request.get(..error.valid_up_to()).unwrap_or_default();
        let error = syntax("the request is not UTF-8 text from here on: send UTF-8");
        Refusal::new(error, &String::from_utf8_lossy(good), Some((good.len(), good.len())))
    })
}

fn answer(text: &str, task: Option<&str>) -> Result<String, Box<Refusal>> {
    let Some(name) = task else {
        if !text.trim_start().starts_with('{') {
            let error = syntax("a request is an object with format, task and request");
            return Err(Refusal::new(error, text, Some((0, 0))));
        }
        // The reader says what is missing, or of the wrong kind.
        let read: Asked<IgnoredAny> = json_value(text)?;
        return Err(Error::new(Code::Missing, "task").value(read.task).into());
    };
    let Some(task) = tasks::TASKS.iter().find(|task| task.name() == name) else {
        let error = Error::new(Code::UnknownName, "task")
            .value(format!("\"{name}\""))
            .allowed(names().collect::<Vec<_>>().join(", "));
        let error = match nearest(name, names()) {
            Some(near) => error.advice(format!("did you mean {near}?")),
            None => error,
        };
        return Err(Refusal::new(error, text, locate::in_json(text, "task")));
    };
    task.answer(text)
}

#[cfg(test)]
mod tests;
