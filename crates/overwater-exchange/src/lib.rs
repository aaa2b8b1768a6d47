//! Typed request to typed answer: the narrow door through which every caller that is not Rust speaks to the core.
//!
//! A request is read from TOML or JSON into a type, checked, handed to the core, and the core's result is turned into an
//! answer that can be written as JSON. Unknown keys are refused, units stand in the names of the keys, and a refusal has
//! the same shape everywhere.

#![forbid(unsafe_code)]
#![deny(missing_docs)]

pub mod answer;
pub mod bounds;
pub mod calculation;
pub mod chemistry;
pub mod columns;
mod convert;
pub mod lines;
mod locate;
pub mod peroxide;
pub mod propagation;
pub mod provenance;
pub mod rate;
mod read;
pub mod reduction;
mod refusal;
pub mod request;
pub mod respond;
pub mod schedule;
pub mod seed;
mod strict;
mod table;
mod template;

pub use read::{
    GREATEST_BYTES, lesson_from_json, lesson_from_toml, propagation_from_json, propagation_from_toml,
    rate_from_json, rate_from_toml, reduction_from_json, reduction_from_toml,
};
pub use refusal::{INTERNAL, Place, Refusal};
pub use respond::{names as task_names, respond, respond_with_status, schema};
pub use template::TEMPLATE;

use answer::PlanAnswer;
use request::LessonRequest;

/// The format of requests and answers that this version speaks.
pub const FORMAT: u32 = 1;

/// Plans a lesson.
///
/// ```
/// let lesson = overwater_exchange::lesson_from_toml(
///     "format = 1\nstock.strength = \"20 vol\"\n[[vessels]]\nburn = \"sulfur\"\n",
/// )?;
/// let answer = overwater_exchange::plan(&lesson)?;
/// // One jar of 250 cm3 at 20 degC and 101.325 kPa holds 10.15 mmol.
/// assert!((answer.gas.vessels[0].amount_mmol - 10.15).abs() < 0.005);
/// # Ok::<(), Box<overwater_exchange::Refusal>>(())
/// ```
///
/// # Errors
/// Everything that the core refuses, with the path of the key.
pub fn plan(request: &LessonRequest) -> Result<PlanAnswer, Box<Refusal>> {
    let lesson = convert::lesson(request)?;
    let plan = overwater::plan::plan(&lesson)?;
    Ok(convert::plan(request, &lesson, &plan))
}

/// Plans a lesson written in TOML; a refusal by the core points to the key in the text.
///
/// # Errors
/// Those of [`lesson_from_toml`] and of [`plan`].
pub fn plan_toml(text: &str) -> Result<PlanAnswer, Box<Refusal>> {
    let lesson = lesson_from_toml(text)?;
    plan(&lesson).map_err(|refusal| {
        let span = locate::in_toml(text, &refusal.path);
        Box::new(refusal.at(text, span))
    })
}
