//! From a plan to the run of one preparation, and to a schedule that can be followed with a stop-watch.

use crate::apparatus::run::{Advice, Happening, Limits, Point, Run, RunVessel, advise, simulate};
use crate::plan::lesson::{Funnel, Kind, Lesson};
use crate::plan::{Plan, defaults};
use crate::{Error, Result};

/// How far the top of a standing vessel is above the trough's surface [cm]: a jar of 150 mm, a tube of 150 mm; common
/// practice, no source.
const HEIGHT_CM: f64 = 15.0;

/// The preparation that a plan describes, with the catalyst's typical activity and nothing added yet.
///
/// A free volume that the lesson gives itself is not used: the run works it out from flask, liquid and tube.
#[must_use]
pub fn preparation(lesson: &Lesson, plan: &Plan) -> Run {
    let apparatus = &lesson.apparatus;
    let given = |value: Option<f64>, default: &defaults::Default| value.unwrap_or(default.value);
    let flask_cm3 = given(apparatus.flask_cm3, &defaults::FLASK);
    let vessels = plan.filling.vessels.iter().map(|vessel| RunVessel {
        name: if vessel.name.is_empty() { Kind::words(vessel.kind).to_owned() } else { vessel.name.clone() },
        volume_cm3: vessel.to_cm3 - vessel.from_cm3,
        height_cm: HEIGHT_CM,
    });
    Run {
        flask_cm3,
        // 50 cm2 for 250 cm3, and flasks of one shape: the area goes with the power 2/3 of the volume.
        area_cm2: 50.0 * (flask_cm3 / 250.0).powf(2.0 / 3.0),
        heel_cm3: plan.additions.heel_cm3,
        seal_cm3: plan.additions.heel_cm3.min(25.0),
        catalyst_g: given(lesson.catalyst.mass_g, &defaults::CATALYST_MASS),
        room_c: plan.place.temperature_c,
        pressure_kpa: plan.place.pressure_kpa,
        tube_bore_mm: given(apparatus.tube_bore_mm, &defaults::TUBE_BORE),
        tube_length_cm: given(apparatus.tube_length_cm, &defaults::TUBE_LENGTH),
        outlet_depth_cm: given(apparatus.outlet_depth_cm, &defaults::OUTLET_DEPTH),
        stem_length_cm: plan.back_pressure.stem_length_cm,
        open_funnel: apparatus.funnel.unwrap_or_default() == Funnel::Open,
        rejected_cm3: plan.filling.rejected_cm3,
        vessels: vessels.collect(),
        ..Run::default()
    }
}

/// What to do at one time.
#[derive(Debug, Clone, PartialEq)]
pub enum Action {
    /// Pour in a portion (cm3).
    Add {
        /// How much (cm3).
        volume_cm3: f64,
    },
    /// Put the vessel of this name over the outlet.
    Fill {
        /// Its name.
        vessel: String,
    },
    /// The last vessel is full: take the tube out of the water.
    TubeOut,
}

/// One line of the timeline.
#[derive(Debug, Clone, PartialEq)]
pub struct Step {
    /// When, from the first portion (s).
    pub time_s: f64,
    /// What to do.
    pub action: Action,
}

/// A schedule for a plan: what is added when, the timeline of everything that is to be done, and the course of it.
#[derive(Debug, Clone, PartialEq)]
pub struct Schedule {
    /// The limits that it keeps.
    pub limits: Limits,
    /// Portions, and the run that shows that they keep the limits.
    pub advice: Advice,
    /// When the first vessel is put over the outlet (s).
    pub filling_begins_s: f64,
    /// What to do, in order.
    pub steps: Vec<Step>,
    /// The state at equal times and after each portion, to be drawn.
    pub course: Vec<Point>,
}

/// Equal stretches that the course is drawn in.
const STRETCHES: u32 = 120;

/// A schedule within the limits for a plan, and its timeline.
///
/// ```
/// use overwater::peroxide::label::Label;
/// use overwater::plan::lesson::{Lesson, Stock, Vessel};
/// use overwater::plan::schedule::{Action, schedule};
/// let lesson = Lesson {
///     stock: Some(Stock::labelled(Label::read("20 vol")?)),
///     vessels: vec![Vessel { burn: Some("sulfur".to_owned()), ..Vessel::default() }],
///     ..Lesson::default()
/// };
/// let plan = overwater::plan::plan(&lesson)?;
/// let found = schedule(&lesson, &plan)?;
/// let result = &found.advice.result;
/// assert!(result.top_flow_cm3_per_s <= 6.0 && result.top_temperature_c <= 60.0);
/// assert_eq!(found.steps.last().map(|step| &step.action), Some(&Action::TubeOut));
/// # Ok::<(), overwater::Error>(())
/// ```
///
/// # Errors
/// As for [`advise`]: the limit that cannot be met, and what would help.
pub fn schedule(lesson: &Lesson, plan: &Plan) -> Result<Schedule> {
    let run = preparation(lesson, plan);
    // A vessel that the plan itself says falls short of what is wanted is held only to the plan's figure.
    let wanted =
        plan.filling.vessels.iter().map(|vessel| vessel.wanted_fraction.min(vessel.oxygen_fraction) - SHORT);
    let limits = Limits { oxygen_fractions: wanted.collect(), ..Limits::default() };
    let strength = plan.stock.run.concentration_mol_per_dm3;
    let advice = advise(&run, strength, &limits).map_err(|error| Error::within(error, "schedule"))?;
    let mut steps: Vec<Step> = advice
        .additions
        .iter()
        .map(|portion| Step {
            time_s: portion.time_s,
            action: Action::Add { volume_cm3: portion.volume_cm3 },
        })
        .collect();
    let filling_begins_s = advice.result.first(Happening::Rejected).unwrap_or(0.0);
    let mut begins = Some(filling_begins_s);
    for vessel in &advice.result.vessels {
        if let Some(time_s) = begins {
            steps.push(Step { time_s, action: Action::Fill { vessel: vessel.name.clone() } });
        }
        begins = vessel.full_at_s;
    }
    steps.push(Step { time_s: advice.tube_out_s, action: Action::TubeOut });
    steps.sort_by(|one, other| one.time_s.total_cmp(&other.time_s));
    let course = course(run, &advice)?;
    Ok(Schedule { limits, advice, filling_begins_s, steps, course })
}

fn course(run: Run, advice: &Advice) -> Result<Vec<Point>> {
    let end_s = advice.tube_out_s;
    // The flow jumps with each portion: what it was before and what it is just after are both drawn.
    let after = advice.additions.iter().map(|portion| portion.time_s + JUST_AFTER_S);
    let mut outputs_s: Vec<f64> = (0..=STRETCHES)
        .map(|index| end_s * f64::from(index) / f64::from(STRETCHES))
        .chain(advice.additions.iter().map(|portion| portion.time_s))
        .chain(after)
        .filter(|time| *time <= end_s)
        .collect();
    outputs_s.sort_by(f64::total_cmp);
    outputs_s.dedup();
    Ok(simulate(&Run { additions: advice.additions.clone(), end_s, outputs_s, ..run })?.points)
}

const JUST_AFTER_S: f64 = 0.01;

/// A plan, and a schedule for it or the limit that stands in its way.
///
/// What the plan says of portions is said of those of the schedule, where there is one: there is one advice.
///
/// # Errors
/// As for [`plan`](crate::plan::plan).
pub fn scheduled(lesson: &Lesson) -> Result<(Plan, Result<Schedule>)> {
    let mut plan = crate::plan::plan(lesson)?;
    let found = schedule(lesson, &plan);
    if let Ok(found) = &found
        && let Some(first) = found.advice.additions.first()
    {
        let count = found.advice.additions.len() as u32;
        plan.additions.take_portions(&plan.place, plan.stock.run.concentration(), first.volume_cm3, count);
    }
    Ok((plan, found))
}

/// The plan counts with a free volume that does not change; in the run liquid takes up some of it and the gas is warm.
const SHORT: f64 = 0.02;

#[cfg(test)]
mod tests {
    use super::*;
    use crate::peroxide::label::Label;
    use crate::plan::lesson::{Stock, Vessel};

    #[test]
    fn a_lesson_becomes_a_timeline() {
        let vessel = |burn: &str| Vessel { burn: Some(burn.to_owned()), ..Vessel::default() };
        let lesson = Lesson {
            stock: Some(Stock::labelled(Label::read("20 vol").unwrap())),
            vessels: vec![vessel("sulfur"), vessel("magnesium"), vessel("iron")],
            ..Lesson::default()
        };
        let plan = crate::plan::plan(&lesson).unwrap();
        let run = preparation(&lesson, &plan);
        assert_eq!((run.flask_cm3, run.heel_cm3, run.stem_length_cm), (250.0, 25.0, 25.0));
        assert!((run.vessels[2].volume_cm3 - 250.0).abs() < 1e-9);
        let found = schedule(&lesson, &plan).unwrap();
        let (advice, timeline) = (&found.advice, &found.steps);
        let fills = timeline.iter().filter(|step| matches!(step.action, Action::Fill { .. })).count();
        assert_eq!(fills, 3);
        assert_eq!(timeline.len(), advice.additions.len() + 4);
        assert!(timeline.is_sorted_by(|one, other| one.time_s <= other.time_s));
        // Portions at whole tens or fives of seconds, all alike.
        assert!(advice.additions.iter().all(|portion| portion.time_s % 5.0 == 0.0));
        assert!(advice.additions.windows(2).all(|pair| pair[0].volume_cm3 == pair[1].volume_cm3));
        assert_eq!(found.course.last().unwrap().time_s, advice.tube_out_s);
        assert!(
            found.course.iter().all(|point| point.flow_cm3_per_s <= found.limits.greatest_flow_cm3_per_s)
        );
        let asked: Vec<f64> = plan.filling.vessels.iter().map(|v| v.wanted_fraction).collect();
        for (vessel, wanted) in advice.result.vessels.iter().zip(asked) {
            assert!(vessel.oxygen_fraction > wanted - 0.021, "{vessel:?} {wanted}");
        }
    }

    #[test]
    fn the_plan_and_the_schedule_advise_the_same_portions() {
        let lesson = Lesson {
            stock: Some(Stock::labelled(Label::read("20 vol").unwrap())),
            vessels: vec![Vessel::default(); 3],
            ..Lesson::default()
        };
        let (plan, found) = scheduled(&lesson).unwrap();
        let portions = found.unwrap().advice.additions;
        assert_eq!(plan.additions.portion_cm3, portions[0].volume_cm3);
        assert_eq!(plan.additions.portions as usize, portions.len());
        // The heat of one portion onto the heel, by the plan's own formula: 1.785 mol/dm3 warm water by about 40 K.
        let share = portions[0].volume_cm3 / (portions[0].volume_cm3 + 25.0);
        assert!((plan.additions.rise_per_portion_k / share - 40.4).abs() < 0.5, "{:?}", plan.additions);
    }

    #[test]
    fn a_short_stem_is_named() {
        let mut lesson = Lesson {
            stock: Some(Stock::labelled(Label::read("30 vol").unwrap())),
            vessels: vec![Vessel::default()],
            ..Lesson::default()
        };
        lesson.apparatus.stem_length_cm = Some(8.0);
        let plan = crate::plan::plan(&lesson).unwrap();
        let error = schedule(&lesson, &plan).unwrap_err();
        assert_eq!(error.parameter, "schedule.limits.stem_margin_cm");
        assert!(error.advice.contains("longer stem"), "{error}");
    }
}
