//! A curve over stretches of its axis, as SVG. It has no colours of its own: lines are `currentColor`, and stretches are
//! told apart by hatching, line style and label.

use std::fmt::Write;

use super::axis::ticks;
use super::labels::{self, Placed, ROWS, Wish};
use super::numbers::{escape, full};

const WIDTH: f64 = 720.0;
const LEFT: f64 = 58.0;
const RIGHT: f64 = 704.0;
const PLOT_HEIGHT: f64 = 160.0;
const ROW_HEIGHT: f64 = 17.0;
const BELOW: f64 = 64.0;
/// Height of letters in labels, and their mean width, taken generously.
const LETTER: f64 = 12.0;
const LETTER_WIDTH: f64 = 6.7;
/// A longer label is cut.
const LONGEST_LABEL: usize = 18;
/// About how many ticks an axis has.
const TICKS: f64 = 8.0;

/// An axis from 0 on.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Axis {
    /// Quantity and unit.
    pub(super) title: String,
    /// Where it ends.
    pub(super) high: f64,
}

/// A stretch that is hatched.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Stretch {
    pub(super) label: String,
    pub(super) from: f64,
    pub(super) to: f64,
}

/// A stretch with a value reached and a value wanted.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Level {
    pub(super) label: String,
    pub(super) from: f64,
    pub(super) to: f64,
    pub(super) reached: f64,
    pub(super) wanted: f64,
}

/// What the kinds of line mean.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Legend {
    pub(super) curve: &'static str,
    pub(super) reached: &'static str,
    pub(super) wanted: &'static str,
    pub(super) hatched: &'static str,
}

/// A chart.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Chart {
    /// What the ids in it begin with.
    pub(super) id: &'static str,
    pub(super) title: String,
    /// The finding in words.
    pub(super) finding: String,
    /// The id of the table with the same data.
    pub(super) table: &'static str,
    pub(super) x: Axis,
    pub(super) y: Axis,
    pub(super) curve: Vec<(f64, f64)>,
    pub(super) hatched: Option<Stretch>,
    pub(super) levels: Vec<Level>,
    pub(super) legend: Legend,
}

/// How the levels are labelled.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Labelling {
    /// By their names.
    Names,
    /// By their numbers, from 1.
    Numbers,
}

/// The chart drawn, and how its levels are labelled.
pub(super) fn draw(chart: &Chart) -> (String, Labelling) {
    let mut svg = String::new();
    let labelling = write(chart, &mut svg).unwrap_or(Labelling::Names);
    (svg, labelling)
}

fn cut(label: &str) -> String {
    if label.chars().count() <= LONGEST_LABEL {
        return label.to_owned();
    }
    label.chars().take(LONGEST_LABEL - 1).chain(['…']).collect()
}

fn width(label: &str) -> f64 {
    label.chars().map(|c| if c.is_ascii() { LETTER_WIDTH } else { LETTER }).sum()
}

/// The labels that are written, in their places: names where all find room, numbers otherwise.
fn labels(chart: &Chart, x: impl Fn(f64) -> f64) -> (Vec<(String, Placed, Option<f64>)>, Labelling) {
    let hatched = chart.hatched.iter().map(|stretch| (&stretch.label, stretch.from, stretch.to, None));
    let levels = chart.levels.iter().map(|level| (&level.label, level.from, level.to, Some(level.reached)));
    let all: Vec<_> = hatched.chain(levels).collect();
    let attempt = |labelling: Labelling| {
        let mut number = 0_usize;
        let texts: Vec<String> = all
            .iter()
            .map(|(label, _, _, level)| {
                number += usize::from(level.is_some());
                if level.is_some() && labelling == Labelling::Numbers {
                    number.to_string()
                } else {
                    cut(label)
                }
            })
            .collect();
        let wishes: Vec<Wish> = texts
            .iter()
            .zip(&all)
            .map(|(text, (_, from, to, _))| Wish { at: x((from + to) / 2.0), width: width(text) })
            .collect();
        let placed = labels::place(&wishes, LEFT - ROW_HEIGHT, WIDTH);
        let complete = placed.iter().all(Option::is_some);
        let written = texts.into_iter().zip(placed).zip(&all);
        let written: Vec<_> = written
            .filter_map(|((text, placed), (.., level))| placed.map(|placed| (text, placed, *level)))
            .collect();
        (written, complete)
    };
    let (names, complete) = attempt(Labelling::Names);
    if complete { (names, Labelling::Names) } else { (attempt(Labelling::Numbers).0, Labelling::Numbers) }
}

fn write(chart: &Chart, svg: &mut String) -> Result<Labelling, std::fmt::Error> {
    let top = ROW_HEIGHT * ROWS as f64 + 4.0;
    let (placed, labelling) = labels(chart, |value| LEFT + (RIGHT - LEFT) * value / chart.x.high);
    // Rows that nothing stands in take no room.
    let used = placed.iter().map(|(_, label, _)| label.row + 1).max().unwrap_or(0);
    let spare = ROW_HEIGHT * (ROWS.saturating_sub(used)) as f64;
    let bottom = top + PLOT_HEIGHT;
    let x = |value: f64| LEFT + (RIGHT - LEFT) * value / chart.x.high;
    let y = |value: f64| bottom - PLOT_HEIGHT * value / chart.y.high;
    let id = chart.id;

    writeln!(
        svg,
        r#"<svg role="img" viewBox="0 {spare} {WIDTH} {}" aria-labelledby="{id}-title {id}-finding" aria-describedby="{}" fill="none" stroke="currentColor" font-size="{LETTER}">"#,
        bottom + BELOW - spare,
        chart.table,
    )?;
    writeln!(svg, r#"<title id="{id}-title">{}</title>"#, escape(&chart.title))?;
    writeln!(svg, r#"<desc id="{id}-finding">{}</desc>"#, escape(&chart.finding))?;
    writeln!(
        svg,
        r#"<defs><pattern id="{id}-hatch" width="7" height="7" patternUnits="userSpaceOnUse" patternTransform="rotate(45)"><path d="M0 0V7" stroke-width="1" opacity=".45"/></pattern></defs>"#
    )?;

    if let Some(stretch) = &chart.hatched {
        let (from, to) = (x(stretch.from), x(stretch.to));
        writeln!(
            svg,
            r#"<rect x="{from:.1}" y="{top:.1}" width="{:.1}" height="{PLOT_HEIGHT:.1}" fill="url(#{id}-hatch)" stroke="none"/>"#,
            to - from
        )?;
    }
    axes(chart, svg, (top, bottom), &x, &y)?;
    for level in &chart.levels {
        let (from, to) = (x(level.from), x(level.to));
        for edge in [from, to] {
            writeln!(
                svg,
                r#"<path d="M{edge:.1} {top:.1}V{bottom:.1}" stroke-width=".6" stroke-dasharray="1 3"/>"#
            )?;
        }
        let (reached, wanted) = (y(level.reached), y(level.wanted));
        writeln!(svg, r#"<path d="M{from:.1} {reached:.1}H{to:.1}" stroke-width="3.2"/>"#)?;
        writeln!(
            svg,
            r#"<path d="M{from:.1} {wanted:.1}H{to:.1}" stroke-width="1.2" stroke-dasharray="5 3"/>"#
        )?;
    }
    let points: Vec<String> = chart.curve.iter().map(|(a, b)| format!("{:.1},{:.1}", x(*a), y(*b))).collect();
    writeln!(svg, r#"<polyline points="{}" stroke-width="1.3"/>"#, points.join(" "))?;

    for (text, label, level) in &placed {
        let foot = top - 7.0 - ROW_HEIGHT * label.row as f64;
        if let Some(level) = level {
            let (at, to) = (label.leader, y(*level) - 2.0);
            writeln!(svg, r#"<path d="M{at:.1} {:.1}V{to:.1}" stroke-width=".6"/>"#, foot + 3.0)?;
        }
        let middle = (label.left + label.right) / 2.0;
        let text = escape(text);
        writeln!(svg, r#"<text x="{middle:.1}" y="{foot:.1}" text-anchor="middle">{text}</text>"#)?;
    }
    legend(chart, svg, bottom + 57.0)?;
    writeln!(svg, "</svg>")?;
    Ok(labelling)
}

fn axes(
    chart: &Chart,
    svg: &mut String,
    (top, bottom): (f64, f64),
    x: &impl Fn(f64) -> f64,
    y: &impl Fn(f64) -> f64,
) -> std::fmt::Result {
    writeln!(svg, r#"<path d="M{LEFT} {top:.1}V{bottom:.1}H{RIGHT}" stroke-width="1"/>"#)?;
    for tick in ticks(0.0, chart.x.high, TICKS) {
        let at = x(tick);
        writeln!(svg, r#"<path d="M{at:.1} {bottom:.1}v5" stroke-width="1"/>"#)?;
        let label = full(tick);
        writeln!(svg, r#"<text x="{at:.1}" y="{:.1}" text-anchor="middle">{label}</text>"#, bottom + 18.0)?;
    }
    for tick in ticks(0.0, chart.y.high, TICKS) {
        let at = y(tick);
        writeln!(svg, r#"<path d="M{LEFT} {at:.1}h-5" stroke-width="1"/>"#)?;
        let label = full(tick);
        writeln!(svg, r#"<text x="{}" y="{:.1}" text-anchor="end">{label}</text>"#, LEFT - 9.0, at + 4.0)?;
    }
    let middle = (LEFT + RIGHT) / 2.0;
    let title = escape(&chart.x.title);
    writeln!(svg, r#"<text x="{middle}" y="{:.1}" text-anchor="middle">{title}</text>"#, bottom + 35.0)?;
    let (middle, title) = ((top + bottom) / 2.0, escape(&chart.y.title));
    writeln!(
        svg,
        r#"<text transform="translate(15 {middle:.1}) rotate(-90)" text-anchor="middle">{title}</text>"#
    )
}

fn legend(chart: &Chart, svg: &mut String, foot: f64) -> std::fmt::Result {
    const SAMPLE: f64 = 30.0;
    let legend = &chart.legend;
    let entries = [
        (Some(r#"stroke-width="1.3""#), legend.curve),
        (Some(r#"stroke-width="3.2""#), legend.reached),
        (Some(r#"stroke-width="1.2" stroke-dasharray="5 3""#), legend.wanted),
        (None, legend.hatched),
    ];
    let mut left = LEFT;
    for (line, text) in entries {
        if line.is_none() && chart.hatched.is_none() {
            continue;
        }
        match line {
            Some(style) => {
                writeln!(svg, r#"<path d="M{left:.1} {:.1}h{SAMPLE}" {style}/>"#, foot - 4.0)?;
            }
            None => writeln!(
                svg,
                r#"<rect x="{left:.1}" y="{:.1}" width="{SAMPLE}" height="11" fill="url(#{}-hatch)" stroke-width=".6"/>"#,
                foot - 10.0,
                chart.id
            )?,
        }
        writeln!(svg, r#"<text x="{:.1}" y="{foot:.1}">{}</text>"#, left + SAMPLE + 6.0, escape(text))?;
        left += SAMPLE + 24.0 + width(text);
    }
    Ok(())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_long_label_is_cut_between_letters() {
        assert_eq!(cut("äöü"), "äöü");
        assert_eq!(cut(&"é".repeat(18)), "é".repeat(18));
        assert_eq!(cut(&"é".repeat(19)), "é".repeat(17) + "…");
    }
}
