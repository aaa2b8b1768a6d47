//! A schedule as a timeline that is followed with a stop-watch.

use overwater::units::decimals;
use overwater_exchange::schedule::{ScheduleAnswer, ScheduleStep};

use crate::layout::Layout;

/// Minutes and seconds, as a stop-watch shows them; the second that has begun.
fn clock(time_s: f64) -> String {
    let seconds = time_s.max(0.0).floor() as u64;
    format!("{}:{:02}", seconds / 60, seconds % 60)
}

/// The timeline as text, at most `width` columns wide (40 at least).
#[must_use]
pub fn timeline(schedule: &ScheduleAnswer, width: usize) -> String {
    let mut sheet = Layout::new(width);
    sheet.heading("Timeline, from the first portion");
    if let (Some(limit), Some(help)) = (&schedule.limit, &schedule.help) {
        sheet.paragraph(&format!("NO schedule of portions keeps the limits ({limit}): {help}."));
        return sheet.finish();
    }
    for step in &schedule.steps {
        let (time_s, text) = match step {
            ScheduleStep::Add { time_s, volume_cm3 } => (time_s, format!("add {volume_cm3} cm3")),
            ScheduleStep::Fill { time_s, vessel } => (time_s, format!("{vessel} over the outlet")),
            ScheduleStep::TubeOut { time_s } => (time_s, "all full: TUBE OUT of the water".to_owned()),
        };
        sheet.item(&clock(*time_s), &text);
    }
    if let (Some(top), Some(flow)) = (schedule.top_temperature_c, schedule.top_flow_cm3_per_s) {
        sheet.paragraph(&format!(
            "Simulated with typical manganese dioxide: at most {} degC and {} cm3/s. Bottles differ by a factor of two: \
             try it out, and fill by what comes, not by the clock alone.",
            decimals(top, 0),
            decimals(flow, 1)
        ));
    }
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
        assert_eq!(["0:00", "0:59", "1:00", "10:05"], [0.0, 59.99, 60.0, 605.4].map(clock).map(String::leak));
    }

    #[test]
    fn a_timeline_begins_with_a_portion_and_ends_with_the_tube() {
        let text = of("format = 1\nstock.strength = \"20 vol\"\n[[vessels]]\nburn = \"sulfur\"\n");
        let lines: Vec<&str> = text.lines().map(str::trim).filter(|line| line.contains(':')).collect();
        assert!(lines[0].contains("0:00") && lines[0].contains("add "), "{text}");
        let tube = lines.iter().position(|line| line.contains("TUBE OUT")).unwrap();
        let fill = lines.iter().position(|line| line.contains("over the outlet")).unwrap();
        assert!(fill < tube && tube > 3, "{text}");
        assert!(text.lines().all(|line| line.chars().count() <= 80), "{text}");
    }

    #[test]
    fn what_stands_in_the_way_is_said_with_what_helps() {
        let text = of("format = 1\nstock.strength = \"20 vol\"\napparatus.stem_length_cm = 8\n[[vessels]]\n");
        assert!(text.contains("NO schedule") && text.contains("longer stem"), "{text}");
    }
}
