//! What is listed: sources, bounds, the cautions of a lesson, the tasks themselves.

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

use super::tasks::TASKS;
use crate::answer::CautionAnswer;
use crate::bounds::BoundsAnswer;
use crate::provenance::SourcesAnswer;
use crate::request::LessonRequest;
use crate::{FORMAT, Refusal};

/// What is wanted of a list.
#[derive(Debug, Clone, PartialEq, Default, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct ListRequest {
    /// The format of the request; 1.
    pub format: u32,
    /// Only entries that hold this text, in any case; all where it is left out.
    #[serde(default)]
    pub text: String,
}

/// The question which version answers.
#[derive(Debug, Clone, PartialEq, Default, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct VersionRequest {
    /// The format of the request; 1.
    pub format: u32,
}

/// What to be careful of in a lesson.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct CautionsAnswer {
    /// The format of the answer; 1.
    pub format: u32,
    /// What comes before every caution here.
    pub deference: String,
    /// The cautions, those of the preparation first.
    pub cautions: Vec<CautionAnswer>,
}

/// The library and what it does.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct VersionAnswer {
    /// The format of the answer; 1.
    pub format: u32,
    /// The version of the library.
    pub library_version: String,
    /// The longest request that is read, in bytes.
    pub greatest_bytes: u32,
    /// What can be asked for.
    pub tasks: Vec<TaskAnswer>,
}

/// A task.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct TaskAnswer {
    /// Its name, as it stands in a request.
    pub task: String,
    /// What it does.
    pub about: String,
}

pub(super) fn sources(request: &ListRequest) -> Result<SourcesAnswer, Box<Refusal>> {
    Ok(crate::provenance::sources(&request.text))
}

pub(super) fn bounds(request: &ListRequest) -> Result<BoundsAnswer, Box<Refusal>> {
    Ok(crate::bounds::bounds(&request.text))
}

pub(super) fn cautions(request: &LessonRequest) -> Result<CautionsAnswer, Box<Refusal>> {
    let plan = crate::plan(request)?;
    Ok(CautionsAnswer { format: FORMAT, deference: plan.deference, cautions: plan.cautions })
}

pub(super) fn version(_: &VersionRequest) -> Result<VersionAnswer, Box<Refusal>> {
    Ok(VersionAnswer {
        format: FORMAT,
        library_version: env!("CARGO_PKG_VERSION").to_owned(),
        greatest_bytes: u32::try_from(crate::GREATEST_BYTES).unwrap_or(u32::MAX),
        tasks: TASKS
            .iter()
            .map(|task| TaskAnswer { task: task.name().to_owned(), about: task.about().to_owned() })
            .collect(),
    })
}
