//! A schedule as a timeline that is followed with a stop-watch.

use overwater::units::{decimals, significant};
use overwater_exchange::schedule::{ScheduleAnswer, ScheduleFound, ScheduleStep};
use serde::Serialize;

use crate::layout::Layout;

/// Minutes and seconds, as a stop-watch shows them; the second that has begun.
pub(crate) fn clock(time_s: f64) -> String {
    // A rounding below a second is that second.
    let seconds = (time_s.max(0.0) + 1e-6).floor() as u64;
    format!("{}:{:02}", seconds / 60, seconds % 60)
}

/// One line of the timeline.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub(crate) struct Line {
    /// The stop-watch.
    pub(crate) clock: String,
    /// What to do.
    pub(crate) text: String,
}

/// A number without a fraction that is nought.
fn plain(value: f64) -> String {
    significant(value, 6).parse::<f64>().map_or_else(|_| value.to_string(), |value| value.to_string())
}

/// The timeline, a line for each time at which something is to be done with a vessel or the tube; portions that follow
/// each other at equal times stand in one line between.
pub(crate) fn lines(found: &ScheduleFound) -> Vec<Line> {
    let mut lines: Vec<Line> = Vec::new();
    let mut portions: Vec<f64> = Vec::new();
    for step in &found.steps {
        let (time_s, text) = match step {
            ScheduleStep::Add { time_s, .. } => {
                portions.push(*time_s);
                continue;
            }
            ScheduleStep::Fill { time_s, vessel } => (time_s, format!("{vessel} over the outlet")),
            ScheduleStep::TubeOut { time_s } => (time_s, "all full: TUBE OUT of the water".to_owned()),
        };
        lines.extend(added(&mut portions, found.portion_cm3));
        lines.push(Line { clock: clock(*time_s), text });
    }
    lines.extend(added(&mut portions, found.portion_cm3));
    lines
}

/// Portions between two other things to do: at most so many times in a line.
const TIMES: usize = 6;

fn added(times: &mut Vec<f64>, portion_cm3: f64) -> Vec<Line> {
    let lines = times
        .chunks(TIMES)
        .filter_map(|times| {
            let (first, later) = times.split_first()?;
            let also = match later {
                [] => String::new(),
                later => {
                    format!(
                        ", again at {}",
                        later.iter().map(|time| clock(*time)).collect::<Vec<_>>().join(", ")
                    )
                }
            };
            Some(Line { clock: clock(*first), text: format!("add {} cm3{also}", plain(portion_cm3)) })
        })
        .collect();
    times.clear();
    lines
}

/// What is advised, in a sentence.
pub(crate) fn advised(found: &ScheduleFound) -> String {
    let portion = plain(found.portion_cm3);
    match found.interval_s {
        Some(interval) => format!(
            "{} portions of {portion} cm3, one every {} s, in {}",
            found.portions,
            plain(interval),
            clock(found.tube_out_s)
        ),
        None => format!("one portion of {portion} cm3, in {}", clock(found.tube_out_s)),
    }
}

/// How far the timeline is to be trusted.
pub(crate) fn trust(found: &ScheduleFound) -> String {
    let limits = &found.limits;
    format!(
        "Simulated with typical manganese dioxide: at most {} degC and {} cm3/s, where {} degC and {} cm3/s are allowed, \
         also with a catalyst {} times as active. Bottles differ: try it out, fill by what comes and not by the clock \
         alone, and wait longer where the bubbling has not slackened.",
        decimals(found.top_temperature_c, 0),
        decimals(found.top_flow_cm3_per_s, 1),
        plain(limits.top_temperature_c),
        plain(limits.greatest_flow_cm3_per_s),
        plain(limits.activity_factor)
    )
}

/// The timeline and what goes with it, under a heading that stands already.
pub(crate) fn write(sheet: &mut Layout, schedule: &ScheduleAnswer) {
    if let Some(way) = &schedule.in_the_way {
        sheet.paragraph(&format!("NO schedule of portions keeps the limits ({}): {}.", way.limit, way.help));
    }
    if let Some(found) = &schedule.found {
        for line in lines(found) {
            sheet.item(&line.clock, &line.text);
        }
        sheet.paragraph(&trust(found));
    }
}

/// The timeline as text, at most `width` columns wide (40 at least).
#[must_use]
pub fn timeline(schedule: &ScheduleAnswer, width: usize) -> String {
    let mut sheet = Layout::new(width);
    sheet.heading("Timeline, from the first portion");
    write(&mut sheet, schedule);
    sheet.finish()
}

#[cfg(test)]
mod tests {
    use super::*;

    fn of(lesson: &str) -> String {
        let request = overwater_exchange::lesson_from_toml(lesson).unwrap();
        timeline(&overwater_exchange::schedule::schedule(&request).unwrap(), 80)
    }

    #[test]
    fn a_stop_watch_shows_the_second_that_has_begun() {
        let shown = [0.0, 59.99, 60.0, 605.4, 29.999_999_99].map(clock);
        assert_eq!(shown, ["0:00", "0:59", "1:00", "10:05", "0:30"]);
    }

    #[test]
    fn portions_between_vessels_stand_together() {
        let mut times: Vec<f64> = (0..8).map(|index| f64::from(index) * 30.0).collect();
        let lines = added(&mut times, 5.0);
        assert!(times.is_empty());
        assert_eq!(lines.len(), 2);
        assert_eq!(lines[0].clock, "0:00");
        assert_eq!(lines[0].text, "add 5 cm3, again at 0:30, 1:00, 1:30, 2:00, 2:30");
        assert_eq!((lines[1].clock.as_str(), lines[1].text.as_str()), ("3:00", "add 5 cm3, again at 3:30"));
        assert_eq!(added(&mut vec![45.0], 0.5)[0].text, "add 0.5 cm3");
    }

    #[test]
    fn a_timeline_begins_with_a_portion_and_ends_with_the_tube() {
        let text = of("format = 1\nstock.strength = \"20 vol\"\n[[vessels]]\nburn = \"sulfur\"\n");
        let lines: Vec<&str> = text.lines().map(str::trim).filter(|line| line.contains(':')).collect();
        assert!(lines[0].contains("0:00") && lines[0].contains("add "), "{text}");
        let tube = lines.iter().position(|line| line.contains("TUBE OUT")).unwrap();
        let fill = lines.iter().position(|line| line.contains("over the outlet")).unwrap();
        assert!(fill > 0 && fill < tube, "{text}");
        assert!(text.lines().all(|line| line.chars().count() <= 80), "{text}");
    }

    #[test]
    fn every_portion_of_the_schedule_is_in_the_timeline_once() {
        let lesson = "format = 1\nstock.strength = \"20 vol\"\n[[vessels]]\n[[vessels]]\n[[vessels]]\n";
        let request = overwater_exchange::lesson_from_toml(lesson).unwrap();
        let found = overwater_exchange::schedule::schedule(&request).unwrap().found.unwrap();
        let said: Vec<String> = lines(&found)
            .iter()
            .filter(|line| line.text.starts_with("add "))
            .flat_map(|line| {
                let later = line.text.split("again at ").nth(1).map(str::to_owned).unwrap_or_default();
                let later: Vec<String> =
                    later.split(", ").filter(|time| !time.is_empty()).map(str::to_owned).collect();
                std::iter::once(line.clock.clone()).chain(later)
            })
            .collect();
        let interval = found.interval_s.unwrap();
        let expected: Vec<String> =
            (0..found.portions).map(|index| clock(f64::from(index) * interval)).collect();
        assert!(expected.len() > 4);
        assert_eq!(said, expected);
    }

    #[test]
    fn what_stands_in_the_way_is_said_with_what_helps() {
        let text = of("format = 1\nstock.strength = \"20 vol\"\napparatus.stem_length_cm = 8\n[[vessels]]\n");
        assert!(text.contains("NO schedule") && text.contains("longer stem"), "{text}");
    }
}
