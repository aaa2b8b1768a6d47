//! The course of a preparation as SVG: flow, temperature of the flask and oxygen in the gas against time, with the
//! stretch in which each vessel fills and the times at which peroxide is added.
//!
//! It has no colours: curves are told apart by the panel that they stand in, limits are dashed, vessels are barred and
//! named or numbered.

use std::fmt::Write;

use super::axis::ticks;
use super::numbers::{escape, full};
use crate::timeline::clock;

const WIDTH: f64 = 680.0;
const LEFT: f64 = 58.0;
const RIGHT: f64 = 668.0;
const LETTER: f64 = 12.0;
const LETTER_WIDTH: f64 = 6.4;
const BAR_TOP: f64 = 20.0;
const BAR: f64 = 18.0;
const PANEL: f64 = 92.0;
const GAP: f64 = 24.0;
/// Time between two ticks (s).
const STEPS: [f64; 12] =
    [1.0, 5.0, 10.0, 30.0, 60.0, 120.0, 300.0, 600.0, 1200.0, 3600.0, 10_800.0, 43_200.0];
const MOST_TICKS: f64 = 10.0;

/// A stretch of time in which a vessel fills.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Filling {
    pub(super) name: String,
    pub(super) from_s: f64,
    pub(super) to_s: f64,
}

/// One panel.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Curve {
    /// What it shows, with its unit.
    pub(super) title: &'static str,
    /// Where the axis begins; at the least value where nothing is said.
    pub(super) low: Option<f64>,
    /// Where it ends at least.
    pub(super) high: Option<f64>,
    /// A limit, drawn dashed where it is in reach.
    pub(super) limit: Option<f64>,
    pub(super) points: Vec<(f64, f64)>,
}

/// A preparation to be drawn.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Course {
    /// What the ids in it begin with.
    pub(super) id: &'static str,
    pub(super) title: String,
    /// The finding in words.
    pub(super) finding: String,
    /// The id of the table with the same data.
    pub(super) table: &'static str,
    pub(super) end_s: f64,
    pub(super) fillings: Vec<Filling>,
    /// When peroxide is added (s).
    pub(super) additions: Vec<f64>,
    pub(super) curves: Vec<Curve>,
}

/// The course drawn; and whether vessels are marked by their number, because a name did not fit.
pub(super) fn draw(course: &Course) -> (String, bool) {
    let mut svg = String::new();
    let numbered = course.fillings.iter().any(|filling| {
        let room = (filling.to_s - filling.from_s) / course.end_s * (RIGHT - LEFT);
        LETTER_WIDTH * (filling.name.chars().count() as f64 + 1.0) > room
    });
    // Writing to a text does not fail.
    let _ = write(course, numbered, &mut svg);
    (svg, numbered)
}

fn write(course: &Course, numbered: bool, svg: &mut String) -> std::fmt::Result {
    let end = if course.end_s > 0.0 { course.end_s } else { 1.0 };
    let x = |time: f64| LEFT + (RIGHT - LEFT) * (time / end).clamp(0.0, 1.0);
    let top = BAR_TOP + BAR + GAP;
    let bottom = top + course.curves.len() as f64 * (PANEL + GAP) - GAP;
    let id = course.id;
    writeln!(
        svg,
        r#"<svg role="img" viewBox="0 0 {WIDTH} {:.0}" aria-labelledby="{id}-title {id}-finding" aria-describedby="{}" fill="none" stroke="currentColor" font-size="{LETTER}">"#,
        bottom + 62.0,
        course.table
    )?;
    writeln!(svg, r#"<title id="{id}-title">{}</title>"#, escape(&course.title))?;
    writeln!(svg, r#"<desc id="{id}-finding">{}</desc>"#, escape(&course.finding))?;
    write_fillings(svg, course, numbered, &x, bottom)?;
    for (index, curve) in course.curves.iter().enumerate() {
        write_curve(svg, curve, top + index as f64 * (PANEL + GAP), &x)?;
    }
    let step = STEPS.into_iter().find(|step| end / step <= MOST_TICKS).unwrap_or(86_400.0);
    for index in 0..=(end / step).floor() as u32 {
        let time = f64::from(index) * step;
        let at = x(time);
        writeln!(svg, r#"<path d="M{at:.1} {bottom:.1}v5" stroke-width="1"/>"#)?;
        let label = clock(time);
        writeln!(svg, r#"<text x="{at:.1}" y="{:.1}" text-anchor="middle">{label}</text>"#, bottom + 18.0)?;
    }
    for time in &course.additions {
        let at = x(*time);
        writeln!(
            svg,
            r#"<path d="M{at:.1} {:.1}l-3.2 7h6.4z" fill="currentColor" stroke="none"/>"#,
            bottom + 23.0
        )?;
    }
    let foot = bottom + 52.0;
    writeln!(svg, r#"<path d="M{LEFT} {:.1}l-3.2 7h6.4z" fill="currentColor" stroke="none"/>"#, foot - 9.0)?;
    writeln!(svg, r#"<text x="{:.1}" y="{foot:.1}">peroxide is added</text>"#, LEFT + 8.0)?;
    if course.curves.iter().any(|curve| curve.limit.is_some()) {
        let left = LEFT + 140.0;
        writeln!(
            svg,
            r#"<path d="M{left:.1} {:.1}h26" stroke-width="1.2" stroke-dasharray="6 4"/>"#,
            foot - 4.0
        )?;
        writeln!(svg, r#"<text x="{:.1}" y="{foot:.1}">limit</text>"#, left + 31.0)?;
    }
    writeln!(svg, r#"<text x="{RIGHT}" y="{foot:.1}" text-anchor="end">time / min:s</text>"#)?;
    writeln!(svg, "</svg>")
}

/// A bar for each vessel above the panels, and lines down through them where one ends.
fn write_fillings(
    svg: &mut String,
    course: &Course,
    numbered: bool,
    x: &impl Fn(f64) -> f64,
    bottom: f64,
) -> std::fmt::Result {
    if course.fillings.is_empty() {
        return Ok(());
    }
    let foot = BAR_TOP + BAR;
    writeln!(svg, r#"<text x="{:.1}" y="{:.1}" text-anchor="end">filling</text>"#, LEFT - 8.0, foot - 5.0)?;
    for (index, filling) in course.fillings.iter().enumerate() {
        let (from, to) = (x(filling.from_s), x(filling.to_s));
        writeln!(
            svg,
            r#"<rect x="{from:.1}" y="{BAR_TOP}" width="{:.1}" height="{BAR}" stroke-width="1"/>"#,
            to - from
        )?;
        for edge in [from, to] {
            writeln!(
                svg,
                r#"<path d="M{edge:.1} {foot}V{bottom:.1}" stroke-width=".8" stroke-dasharray="1 3"/>"#
            )?;
        }
        let label = if numbered { (index + 1).to_string() } else { escape(&filling.name) };
        let middle = (from + to) / 2.0;
        writeln!(svg, r#"<text x="{middle:.1}" y="{:.1}" text-anchor="middle">{label}</text>"#, foot - 5.0)?;
    }
    Ok(())
}

fn write_curve(svg: &mut String, curve: &Curve, top: f64, x: &impl Fn(f64) -> f64) -> std::fmt::Result {
    let bottom = top + PANEL;
    let values = || curve.points.iter().map(|point| point.1).filter(|value| value.is_finite());
    let least = values().fold(f64::INFINITY, f64::min);
    let greatest = values().fold(f64::NEG_INFINITY, f64::max);
    let low = curve.low.unwrap_or(if least.is_finite() { least.floor() } else { 0.0 });
    let high = curve.high.unwrap_or(f64::NEG_INFINITY).max(greatest);
    let high = if high > low { high + 0.04 * (high - low) } else { low + 1.0 };
    let y = |value: f64| bottom - PANEL * (value - low) / (high - low);
    writeln!(svg, r#"<text x="{LEFT}" y="{:.1}">{}</text>"#, top - 4.0, escape(curve.title))?;
    writeln!(svg, r#"<path d="M{LEFT} {top:.1}V{bottom:.1}H{RIGHT}" stroke-width="1"/>"#)?;
    for tick in ticks(low, high, 4.0) {
        let at = y(tick);
        writeln!(svg, r#"<path d="M{LEFT} {at:.1}h-5" stroke-width="1"/>"#)?;
        let (left, foot) = (LEFT - 8.0, at + 4.0);
        writeln!(svg, r#"<text x="{left}" y="{foot:.1}" text-anchor="end">{}</text>"#, full(tick))?;
    }
    if let Some(limit) = curve.limit.filter(|limit| (low..=high).contains(limit)) {
        let at = y(limit);
        writeln!(svg, r#"<path d="M{LEFT} {at:.1}H{RIGHT}" stroke-width="1.2" stroke-dasharray="6 4"/>"#)?;
    }
    let points: Vec<String> = curve
        .points
        .iter()
        .filter(|(_, value)| value.is_finite())
        .map(|(time, value)| format!("{:.1},{:.1}", x(*time), y(*value)))
        .collect();
    writeln!(svg, r#"<polyline points="{}" stroke-width="1.4"/>"#, points.join(" "))
}

#[cfg(test)]
mod tests {
    use super::*;

    fn course(names: &[&str]) -> Course {
        let fill = |(index, name): (usize, &&str)| Filling {
            name: (*name).to_owned(),
            from_s: 100.0 * index as f64,
            to_s: 100.0 * (index as f64 + 1.0),
        };
        Course {
            id: "course",
            title: "A & B".to_owned(),
            finding: "Nothing".to_owned(),
            table: "t",
            end_s: 400.0,
            fillings: names.iter().enumerate().map(fill).collect(),
            additions: vec![0.0, 200.0],
            curves: vec![Curve {
                title: "flow / cm³/s",
                low: Some(0.0),
                high: None,
                limit: Some(6.0),
                points: vec![(0.0, 0.0), (200.0, 5.0), (400.0, 10.0)],
            }],
        }
    }

    #[test]
    fn points_stand_where_their_values_are() {
        let (svg, numbered) = draw(&course(&["tube", "jar 1"]));
        assert!(!numbered && svg.contains(">jar 1<") && svg.contains("A &amp; B"), "{svg}");
        // 610 px for 400 s; 92 px for 10.4 cm3/s, from y = 62 to 154.
        assert!(svg.contains(r#"<polyline points="58.0,154.0 363.0,109.8 668.0,65.5""#), "{svg}");
        // The limit of 6 at 154 - 92 x 6/10.4, dashed.
        assert!(
            svg.contains(r#"<path d="M58 100.9H668" stroke-width="1.2" stroke-dasharray="6 4"/>"#),
            "{svg}"
        );
        assert!(svg.contains(">6:00<") && svg.contains(">0:00<"), "{svg}");
        // Two additions and the sample of the legend.
        assert_eq!(svg.matches("l-3.2 7h6.4z").count(), 3);
    }

    #[test]
    fn names_that_do_not_fit_become_numbers() {
        let (svg, numbered) = draw(&course(&["tube", "a jar with a very long name indeed"]));
        assert!(numbered && svg.contains(">2<") && !svg.contains("indeed"), "{svg}");
    }

    #[test]
    fn a_course_without_points_is_still_a_figure() {
        let (svg, _) = draw(&Course { end_s: 0.0, curves: Vec::new(), fillings: Vec::new(), ..course(&[]) });
        assert!(!svg.contains("NaN") && svg.ends_with("</svg>\n"), "{svg}");
    }
}
