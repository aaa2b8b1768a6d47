//! The schedule on the page: the timeline, and the figure of its course.

use overwater_exchange::schedule::{CourseAnswer, ScheduleFound};

use super::course::{Course, Curve, Filling, draw};
use super::numbers::dec;
use crate::timeline::clock;

/// The id of the table that holds the timeline.
pub(super) const TABLE: &str = "timeline-table";

/// The figure, and whether vessels are marked by their number.
pub(super) fn figure(found: &ScheduleFound) -> (String, bool) {
    let limits = &found.limits;
    let curve = |value: fn(&CourseAnswer) -> f64| -> Vec<(f64, f64)> {
        found.course.iter().map(|point| (point.time_s, value(point))).collect()
    };
    draw(&Course {
        id: "course",
        title: "Flow, temperature of the flask and oxygen against time".to_owned(),
        finding: finding(found),
        table: TABLE,
        end_s: found.tube_out_s,
        fillings: found
            .vessels
            .iter()
            .map(|vessel| Filling {
                name: vessel.name.clone(),
                from_s: vessel.from_s,
                to_s: vessel.full_at_s,
            })
            .collect(),
        additions: found
            .steps
            .iter()
            .filter_map(|step| match step {
                overwater_exchange::schedule::ScheduleStep::Add { time_s, .. } => Some(*time_s),
                _ => None,
            })
            .collect(),
        curves: curves(
            curve(|point| point.flow_cm3_per_s),
            curve(|point| point.temperature_c),
            curve(|point| point.oxygen_fraction),
            limits.greatest_flow_cm3_per_s,
            limits.top_temperature_c,
        ),
    })
}

/// The three panels.
pub(super) fn curves(
    flow: Vec<(f64, f64)>,
    temperature: Vec<(f64, f64)>,
    oxygen: Vec<(f64, f64)>,
    greatest_flow: f64,
    top_temperature: f64,
) -> Vec<Curve> {
    vec![
        Curve {
            title: "gas leaving / cm³/s",
            low: Some(0.0),
            high: Some(greatest_flow),
            limit: Some(greatest_flow),
            points: flow,
        },
        Curve {
            title: "flask / °C",
            low: None,
            high: Some(top_temperature),
            limit: Some(top_temperature),
            points: temperature,
        },
        Curve {
            title: "fraction of oxygen in the gas",
            low: Some(0.0),
            high: Some(1.0),
            limit: None,
            points: oxygen,
        },
    ]
}

/// What the figure shows, in words.
fn finding(found: &ScheduleFound) -> String {
    let mut sentences = vec![format!(
        "Gas leaves at no more than {} cm³/s and the flask comes to no more than {} °C.",
        dec(found.top_flow_cm3_per_s, 1),
        dec(found.top_temperature_c, 0)
    )];
    if let (Some(first), Some(last)) = (found.course.first(), found.course.last()) {
        sentences.push(format!(
            "The fraction of oxygen in the gas rises from {} to {}.",
            dec(first.oxygen_fraction, 2),
            dec(last.oxygen_fraction, 2)
        ));
    }
    let filled: Vec<String> = found
        .vessels
        .iter()
        .map(|vessel| {
            format!("{} fills from {} to {}", vessel.name, clock(vessel.from_s), clock(vessel.full_at_s))
        })
        .collect();
    sentences.push(format!("{}.", filled.join("; ")));
    sentences.join(" ")
}
