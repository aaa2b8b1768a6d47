//! A schedule of portions for a lesson, as a timeline.

use overwater::Error;
use overwater::apparatus::run::Point;
use overwater::plan::schedule::{Action, Schedule, scheduled};
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

/// A vessel of a schedule.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct ScheduledVessel {
    /// Its name.
    pub name: String,
    /// When it is put over the outlet (s).
    pub from_s: f64,
    /// When it is full (s).
    pub full_at_s: f64,
    /// Fraction of oxygen in its dry gas.
    pub oxygen_fraction: f64,
}

/// The state at one time, to be drawn.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct CourseAnswer {
    /// From the first portion (s).
    pub time_s: f64,
    /// Gas leaving the flask (cm3/s).
    pub flow_cm3_per_s: f64,
    /// Liquid in the flask (degC).
    pub temperature_c: f64,
    /// Fraction of oxygen in the dry gas that leaves.
    pub oxygen_fraction: f64,
}

impl From<&Point> for CourseAnswer {
    fn from(point: &Point) -> Self {
        CourseAnswer {
            time_s: point.time_s,
            flow_cm3_per_s: point.flow_cm3_per_s,
            temperature_c: point.temperature_c,
            oxygen_fraction: point.oxygen_fraction,
        }
    }
}

/// What was kept to.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct LimitsAnswer {
    /// Least mean flow while vessels fill (cm3/s).
    pub least_flow_cm3_per_s: f64,
    /// Greatest flow (cm3/s).
    pub greatest_flow_cm3_per_s: f64,
    /// Highest temperature of the flask (degC).
    pub top_temperature_c: f64,
    /// Left of the funnel stem (cm).
    pub stem_margin_cm: f64,
    /// Most of the flask that liquid and froth take up.
    pub froth_share: f64,
    /// How many times more active the catalyst may be.
    pub activity_factor: f64,
}

/// Portions that keep the limits, what is to be done when, and what comes of it.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct ScheduleFound {
    /// How much is poured each time (cm3).
    pub portion_cm3: f64,
    /// How often.
    pub portions: u32,
    /// Time from one portion to the next; nothing for a single portion (s).
    pub interval_s: Option<f64>,
    /// When the delivery tube comes out of the water (s).
    pub tube_out_s: f64,
    /// Highest temperature of the flask (degC).
    pub top_temperature_c: f64,
    /// Greatest flow (cm3/s).
    pub top_flow_cm3_per_s: f64,
    /// Highest rise in the funnel stem (cm).
    pub top_stem_rise_cm: f64,
    /// What was kept to.
    pub limits: LimitsAnswer,
    /// What to do, in order.
    pub steps: Vec<ScheduleStep>,
    /// The vessels, in order.
    pub vessels: Vec<ScheduledVessel>,
    /// Flow, temperature and oxygen against time.
    pub course: Vec<CourseAnswer>,
}

/// Which limit no schedule keeps.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct InTheWay {
    /// The limit, by its name.
    pub limit: String,
    /// What happens, and what would help.
    pub help: String,
}

/// A schedule within the usual limits, or what stands in its way.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct ScheduleAnswer {
    /// The schedule; nothing where none keeps the limits.
    pub found: Option<ScheduleFound>,
    /// What stands in the way, where there is none.
    pub in_the_way: Option<InTheWay>,
}

/// The schedule of one preparation of a lesson, with the catalyst's typical activity.
///
/// ```
/// let lesson = overwater_exchange::lesson_from_toml("format = 1\nstock.strength = \"20 vol\"\n[[vessels]]\n")?;
/// let found = overwater_exchange::schedule::schedule(&lesson)?.found.unwrap();
/// // What a school preparation is kept to.
/// assert!(found.top_flow_cm3_per_s <= 6.0 && found.top_temperature_c <= 60.0);
/// # Ok::<(), Box<overwater_exchange::Refusal>>(())
/// ```
///
/// # Errors
/// What the plan of the lesson is refused for. That no schedule keeps the limits is an answer.
pub fn schedule(request: &LessonRequest) -> Result<ScheduleAnswer, Box<Refusal>> {
    let lesson = convert::lesson(request)?;
    let (_, found) = scheduled(&lesson)?;
    Ok(found.into())
}

impl From<Result<Schedule, Error>> for ScheduleAnswer {
    fn from(found: Result<Schedule, Error>) -> Self {
        match found {
            Ok(found) => ScheduleAnswer { found: Some(found.into()), in_the_way: None },
            Err(error) => ScheduleAnswer {
                found: None,
                in_the_way: Some(InTheWay { limit: error.parameter.into_owned(), help: error.advice.into() }),
            },
        }
    }
}

impl From<Schedule> for ScheduleFound {
    fn from(found: Schedule) -> Self {
        let result = &found.advice.result;
        let additions = &found.advice.additions;
        let mut from_s = found.filling_begins_s;
        let vessels = result.vessels.iter().map(|vessel| {
            let full_at_s = vessel.full_at_s.unwrap_or(found.advice.tube_out_s);
            let begins = std::mem::replace(&mut from_s, full_at_s);
            ScheduledVessel {
                name: vessel.name.clone(),
                from_s: begins,
                full_at_s,
                oxygen_fraction: vessel.oxygen_fraction,
            }
        });
        let limits = &found.limits;
        ScheduleFound {
            portion_cm3: additions.first().map_or(0.0, |portion| portion.volume_cm3),
            portions: additions.len() as u32,
            interval_s: additions.get(1).map(|portion| portion.time_s),
            tube_out_s: found.advice.tube_out_s,
            top_temperature_c: result.top_temperature_c,
            top_flow_cm3_per_s: result.top_flow_cm3_per_s,
            top_stem_rise_cm: result.top_stem_rise_cm,
            limits: LimitsAnswer {
                least_flow_cm3_per_s: limits.least_flow_cm3_per_s,
                greatest_flow_cm3_per_s: limits.greatest_flow_cm3_per_s,
                top_temperature_c: limits.top_temperature_c,
                stem_margin_cm: limits.stem_margin_cm,
                froth_share: limits.froth_share,
                activity_factor: limits.activity_factor,
            },
            vessels: vessels.collect(),
            course: found.course.iter().map(CourseAnswer::from).collect(),
            steps: found
                .steps
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
        }
    }
}
