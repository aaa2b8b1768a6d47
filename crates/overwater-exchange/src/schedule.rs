//! A schedule of portions for a lesson, as a timeline.

use overwater::plan::schedule::{Action, schedule as find};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

use crate::request::LessonRequest;
use crate::{Refusal, convert};

/// What to do at one time.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields, rename_all = "snake_case", tag = "do")]
pub enum ScheduleStep {
    /// Pour in a portion.
    Add {
        /// When, from the first portion (s).
        time_s: f64,
        /// How much (cm3).
        volume_cm3: f64,
    },
    /// Put a vessel over the outlet.
    Fill {
        /// When (s).
        time_s: f64,
        /// Its name.
        vessel: String,
    },
    /// Take the tube out of the water.
    TubeOut {
        /// When (s).
        time_s: f64,
    },
}

/// A schedule within the usual limits, or what stands in its way.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct ScheduleAnswer {
    /// What to do, in order; empty where no schedule keeps the limits.
    pub steps: Vec<ScheduleStep>,
    /// Highest temperature of the flask (degC).
    pub top_temperature_c: Option<f64>,
    /// Greatest flow (cm3/s).
    pub top_flow_cm3_per_s: Option<f64>,
    /// Why there is none: the limit that cannot be met.
    pub limit: Option<String>,
    /// What would help.
    pub help: Option<String>,
}

/// The schedule of one preparation of a lesson, with the catalyst's typical activity.
///
/// # Errors
/// What the plan of the lesson is refused for. That no schedule keeps the limits is an answer.
pub fn schedule(request: &LessonRequest) -> Result<ScheduleAnswer, Box<Refusal>> {
    let lesson = convert::lesson(request)?;
    let plan = overwater::plan::plan(&lesson)?;
    Ok(match find(&lesson, &plan) {
        Ok((advice, steps)) => ScheduleAnswer {
            steps: steps
                .into_iter()
                .map(|step| {
                    let time_s = step.time_s;
                    match step.action {
                        Action::Add { volume_cm3 } => ScheduleStep::Add { time_s, volume_cm3 },
                        Action::Fill { vessel } => ScheduleStep::Fill { time_s, vessel },
                        Action::TubeOut => ScheduleStep::TubeOut { time_s },
                    }
                })
                .collect(),
            top_temperature_c: Some(advice.result.top_temperature_c),
            top_flow_cm3_per_s: Some(advice.result.top_flow_cm3_per_s),
            limit: None,
            help: None,
        },
        Err(error) => ScheduleAnswer {
            steps: Vec::new(),
            top_temperature_c: None,
            top_flow_cm3_per_s: None,
            limit: Some(error.parameter.into_owned()),
            help: Some(error.advice.into()),
        },
    })
}
