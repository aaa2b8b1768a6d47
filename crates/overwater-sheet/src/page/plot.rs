//! Points with lines through them, in one or more panels over one axis, as SVG. It has no colours of its own: lines are
//! `currentColor`, and are told apart by their dashes, which the legend names.

use std::fmt::Write;

use super::axis::ticks;
use super::numbers::{escape, full};

const WIDTH: f64 = 470.0;
const LEFT: f64 = 64.0;
const RIGHT: f64 = 458.0;
const LETTER: f64 = 12.0;
const LETTER_WIDTH: f64 = 6.3;
/// Between two panels.
const GAP: f64 = 14.0;
const BELOW: f64 = 60.0;
/// Room between the outermost point and the edge, as a share of the stretch.
const MARGIN: f64 = 0.04;

/// How a line is drawn.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Dash {
    Whole,
    Dashed,
}

impl Dash {
    fn style(self) -> &'static str {
        match self {
            Dash::Whole => r#"stroke-width="1.4""#,
            Dash::Dashed => r#"stroke-width="1.2" stroke-dasharray="6 4""#,
        }
    }
}

/// A line.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Trace {
    pub(super) dash: Dash,
    /// What the legend calls it; nothing where another line of the same kind has told.
    pub(super) name: &'static str,
    pub(super) points: Vec<(f64, f64)>,
}

/// One set of points with its lines.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Panel {
    pub(super) y_title: String,
    pub(super) height: f64,
    pub(super) points: Vec<(f64, f64)>,
    pub(super) traces: Vec<Trace>,
}

/// Panels one above the other.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Plot {
    /// What the ids in it begin with.
    pub(super) id: String,
    pub(super) title: String,
    /// The finding in words.
    pub(super) finding: String,
    /// The id of the table with the same data.
    pub(super) table: String,
    pub(super) x_title: String,
    pub(super) panels: Vec<Panel>,
}

/// The least and the greatest, with a margin.
fn stretch(values: impl Iterator<Item = f64>) -> (f64, f64) {
    let (mut least, mut greatest) = (f64::INFINITY, f64::NEG_INFINITY);
    for value in values.filter(|value| value.is_finite()) {
        least = least.min(value);
        greatest = greatest.max(value);
    }
    if least > greatest {
        return (0.0, 1.0);
    }
    let length = if greatest > least { greatest - least } else { greatest.abs().max(1.0) };
    (least - MARGIN * length, greatest + MARGIN * length)
}

/// The plot drawn.
pub(super) fn draw(plot: &Plot) -> String {
    let mut svg = String::new();
    // Writing to a text does not fail.
    let _ = write(plot, &mut svg);
    svg
}

fn write(plot: &Plot, svg: &mut String) -> std::fmt::Result {
    let all = || plot.panels.iter().flat_map(|panel| &panel.points);
    let (low, high) = stretch(all().map(|point| point.0));
    let x = |value: f64| LEFT + (RIGHT - LEFT) * (value - low) / (high - low);
    let height: f64 = plot.panels.iter().map(|panel| panel.height + GAP).sum::<f64>();
    let id = &plot.id;
    writeln!(
        svg,
        r#"<svg role="img" viewBox="0 0 {WIDTH} {:.0}" aria-labelledby="{id}-title {id}-finding" aria-describedby="{}" fill="none" stroke="currentColor" font-size="{LETTER}">"#,
        height + BELOW,
        plot.table,
    )?;
    writeln!(svg, r#"<title id="{id}-title">{}</title>"#, escape(&plot.title))?;
    writeln!(svg, r#"<desc id="{id}-finding">{}</desc>"#, escape(&plot.finding))?;
    let mut top = GAP;
    for (index, panel) in plot.panels.iter().enumerate() {
        write_panel(svg, panel, id, index, top, &x, (low, high))?;
        top += panel.height + GAP;
    }
    let bottom = top - GAP;
    for tick in ticks(low, high, 6.0) {
        let at = x(tick);
        writeln!(svg, r#"<path d="M{at:.1} {bottom:.1}v5" stroke-width="1"/>"#)?;
        writeln!(
            svg,
            r#"<text x="{at:.1}" y="{:.1}" text-anchor="middle">{}</text>"#,
            bottom + 18.0,
            full(tick)
        )?;
    }
    let middle = (LEFT + RIGHT) / 2.0;
    let title = escape(&plot.x_title);
    writeln!(svg, r#"<text x="{middle}" y="{:.1}" text-anchor="middle">{title}</text>"#, bottom + 34.0)?;
    legend(svg, plot, bottom + 54.0)?;
    writeln!(svg, "</svg>")
}

fn write_panel(
    svg: &mut String,
    panel: &Panel,
    id: &str,
    index: usize,
    top: f64,
    x: &impl Fn(f64) -> f64,
    (from, to): (f64, f64),
) -> std::fmt::Result {
    let bottom = top + panel.height;
    let (low, high) = stretch(panel.points.iter().map(|point| point.1));
    let y = |value: f64| bottom - panel.height * (value - low) / (high - low);
    writeln!(svg, r#"<path d="M{LEFT} {top:.1}V{bottom:.1}H{RIGHT}" stroke-width="1"/>"#)?;
    for tick in ticks(low, high, (panel.height / 28.0).max(4.0)) {
        let at = y(tick);
        writeln!(svg, r#"<path d="M{LEFT} {at:.1}h-5" stroke-width="1"/>"#)?;
        writeln!(
            svg,
            r#"<text x="{}" y="{:.1}" text-anchor="end">{}</text>"#,
            LEFT - 8.0,
            at + 4.0,
            full(tick)
        )?;
    }
    if low < 0.0 && high > 0.0 {
        writeln!(svg, r#"<path d="M{LEFT} {:.1}H{RIGHT}" stroke-width=".5"/>"#, y(0.0))?;
    }
    // Lines end at the edges of the panel.
    writeln!(
        svg,
        r#"<clipPath id="{id}-panel{index}"><rect x="{LEFT}" y="{top:.1}" width="{:.1}" height="{:.1}"/></clipPath>"#,
        RIGHT - LEFT,
        panel.height
    )?;
    writeln!(svg, r#"<g clip-path="url(#{id}-panel{index})">"#)?;
    for trace in &panel.traces {
        let points: Vec<String> = trace
            .points
            .iter()
            .filter(|(a, b)| (from..=to).contains(a) && b.is_finite())
            .map(|(a, b)| format!("{:.1},{:.1}", x(*a), y(*b)))
            .collect();
        writeln!(svg, r#"<polyline points="{}" {}/>"#, points.join(" "), trace.dash.style())?;
    }
    writeln!(svg, "</g>")?;
    for (a, b) in &panel.points {
        writeln!(svg, r#"<circle cx="{:.1}" cy="{:.1}" r="2.6" stroke-width="1.1"/>"#, x(*a), y(*b))?;
    }
    let (middle, title) = ((top + bottom) / 2.0, escape(&panel.y_title));
    writeln!(
        svg,
        r#"<text transform="translate(13 {middle:.1}) rotate(-90)" text-anchor="middle">{title}</text>"#
    )
}

fn legend(svg: &mut String, plot: &Plot, foot: f64) -> std::fmt::Result {
    const SAMPLE: f64 = 26.0;
    let mut left = LEFT;
    let named = plot.panels.iter().flat_map(|panel| &panel.traces).filter(|trace| !trace.name.is_empty());
    for trace in named {
        writeln!(svg, r#"<path d="M{left:.1} {:.1}h{SAMPLE}" {}/>"#, foot - 4.0, trace.dash.style())?;
        writeln!(svg, r#"<text x="{:.1}" y="{foot:.1}">{}</text>"#, left + SAMPLE + 5.0, escape(trace.name))?;
        left += SAMPLE + 22.0 + LETTER_WIDTH * trace.name.chars().count() as f64;
    }
    Ok(())
}
