//! The page of rates: the parts of the sheet with a figure to each.

use minijinja::value::Serde;
use minijinja::{Error, Value, context};
use overwater::readings::curve::FirstOrder;
use overwater::readings::decay::Exponentially;
use overwater::readings::model::Model;
use overwater::units::significant;
use overwater_exchange::rate::answer::{CurveAnswer, RateAnswer, RunAnswer, RunPointAnswer};

use super::plot::{Dash, Panel, Plot, Trace, draw};
use super::{environment, numbers};
use crate::rate::{Part, Tabled, parts, subtitle, title};

/// Runs that get a figure and a table of their readings.
const DRAWN_RUNS: usize = 24;
/// Points of a figure; of more every so many is drawn.
const DRAWN_POINTS: usize = 300;
/// Points that a curve is drawn through.
const CURVE_POINTS: u32 = 120;
/// How far a tangent is drawn: to where it has gone this share of the way up.
const TANGENT: f64 = 0.6;

/// A figure with the table of the same data.
#[derive(Debug, serde::Serialize)]
struct Figure {
    id: String,
    caption: String,
    svg: String,
    table: Option<Tabled>,
}

/// The rates as one HTML page: it prints on A4, and needs neither network nor script.
///
/// The page is well-formed as XML too, takes the colours of the place where it is shown, and prints black on white.
#[must_use]
pub fn rate_page(answer: &RateAnswer, figures: usize) -> String {
    render(answer, figures).unwrap_or_else(|error| {
        let error = numbers::escape(&error.to_string());
        format!(
            "<!DOCTYPE html>\n<html lang=\"en\"><head><meta charset=\"utf-8\"/><title>Rates</title></head>\
             <body><p>The page could not be written: {error}. The answer itself is not affected.</p></body></html>\n"
        )
    })
}

fn render(answer: &RateAnswer, figures: usize) -> Result<String, Error> {
    let mut environment = environment()?;
    environment.add_filter("cell", |text: String| numbers::in_text(&crate::typeset(&text)));
    environment.add_template("rate.html", include_str!("rate.html"))?;
    let parts = parts(answer, figures);
    environment.get_template("rate.html")?.render(context! {
        title => title(answer),
        subtitle => subtitle(answer),
        notes => &answer.notes,
        rows => format!("{} of {} rows", answer.rows_good, answer.rows_read),
        runs => Value::from(Serde(run_figures(answer, figures))),
        across => Value::from(Serde(across(answer, &parts))),
        parts => Value::from(Serde(&parts)),
        version => &answer.library_version,
    })
}

fn thinned<T: Clone>(values: &[T]) -> Vec<T> {
    let step = values.len().div_ceil(DRAWN_POINTS).max(1);
    values.iter().step_by(step).cloned().collect()
}

fn run_figures(answer: &RateAnswer, figures: usize) -> Vec<Figure> {
    let reading = answer.reading.replace('_', " ");
    let runs = answer.runs.iter().take(DRAWN_RUNS).enumerate();
    runs.map(|(index, run)| run_figure(run, &reading, index, figures)).collect()
}

fn run_figure(run: &RunAnswer, reading: &str, index: usize, figures: usize) -> Figure {
    let id = format!("run{index}");
    let points = thinned(&run.points);
    let measured: Vec<(f64, f64)> = points.iter().map(|point| (point.x, point.y)).collect();
    let mut traces = Vec::new();
    if let Some(curve) = &run.curve {
        traces.push(Trace {
            dash: Dash::Whole,
            name: "curve of the first order",
            points: sampled(run, curve),
        });
    }
    if let Some(points) = tangent(run) {
        traces.push(Trace { dash: Dash::Dashed, name: "tangent", points });
    }
    let unit = &run.reading_unit;
    let mut panels = vec![Panel {
        y_title: crate::typeset(&format!("{reading} / {unit}")),
        height: 190.0,
        points: measured,
        traces,
    }];
    let residuals: Vec<(f64, f64)> =
        points.iter().filter_map(|point| Some((point.x, point.y - point.fitted?))).collect();
    if !residuals.is_empty() {
        panels.push(Panel {
            y_title: crate::typeset(&format!("off / {unit}")),
            height: 70.0,
            points: residuals,
            traces: Vec::new(),
        });
    }
    let caption = caption(run, figures);
    let plot = Plot {
        id: id.clone(),
        title: format!("{reading} against time, run {}", run.run),
        finding: caption.clone(),
        table: format!("{id}-table"),
        x_title: format!("time / {}", run.time_unit),
        panels,
    };
    let rows = points.iter().map(|point| {
        vec![
            numbers::full(point.x),
            numbers::full(point.y),
            point.fitted.map_or_else(String::new, |fitted| significant(fitted, figures.max(4))),
            point.fitted.map_or_else(String::new, |fitted| significant(point.y - fitted, 2)),
        ]
    });
    let table = Tabled {
        header: vec![
            format!("time / {}", run.time_unit),
            format!("{reading} / {unit}"),
            "curve".to_owned(),
            "off".to_owned(),
        ],
        rows: rows.collect(),
    };
    Figure { id, caption, svg: draw(&plot), table: Some(table) }
}

fn caption(run: &RunAnswer, figures: usize) -> String {
    let at = run.temperature_k.map_or_else(String::new, |t| format!(" at {} K", significant(t, 4)));
    let curve = match &run.curve {
        Some(curve) => format!(
            "; k = {} {}, half-life {} {}",
            significant(curve.rate_constant.value, figures),
            curve.rate_constant.unit,
            significant(curve.half_life.value, figures),
            curve.half_life.unit
        ),
        None => "; no curve of the first order".to_owned(),
    };
    let rate = run.initial_rates.first().map_or_else(String::new, |rate| {
        format!(": tangent {} {}", significant(rate.rate.value, figures), rate.rate.unit)
    });
    format!("Run {}{at}{rate}{curve}.", run.run)
}

/// The fitted curve, from the first reading to the last.
fn sampled(run: &RunAnswer, curve: &CurveAnswer) -> Vec<(f64, f64)> {
    let (Some(first), Some(last)) = (run.points.first(), run.points.last()) else { return Vec::new() };
    let (end, k) = (curve.final_value.value, curve.rate_constant.value);
    let value = |time: f64| match (&curve.start, &curve.first_value) {
        (Some(start), _) => FirstOrder.value(time, [end, k, start.value]),
        (None, Some(first)) => Exponentially.value(time, [first.value, end, k]),
        (None, None) => f64::NAN,
    };
    (0..=CURVE_POINTS)
        .map(|step| first.x + (last.x - first.x) * f64::from(step) / f64::from(CURVE_POINTS))
        .map(|time| (time, value(time)))
        .collect()
}

/// From the curve at the first reading (the reading itself where there is no curve) along the tangent's slope.
fn tangent(run: &RunAnswer) -> Option<Vec<(f64, f64)>> {
    let rate = run.initial_rates.iter().find(|rate| rate.way == "tangent")?.rate.value;
    let (first, last) = (run.points.first()?, run.points.last()?);
    let way = if last.y < first.y { -1.0 } else { 1.0 };
    let y = first.fitted.unwrap_or(first.y);
    let length = (TANGENT * (last.y - first.y).abs() / rate.abs()).min(last.x - first.x);
    Some(vec![(first.x, y), (first.x + length, y + way * rate * length)])
}

/// The plots over all runs.
fn across(answer: &RateAnswer, parts: &[Part]) -> Vec<Figure> {
    let mut found = Vec::new();
    let first_words =
        |id: &str| parts.iter().find(|part| part.id == id).and_then(|part| part.words.first().cloned());
    if let Some(arrhenius) = &answer.arrhenius {
        let y = if arrhenius.from == "rate_constant" { "ln k" } else { "ln rate" };
        let finding = first_words("arrhenius").unwrap_or_default();
        found.push(straight("arrhenius", "ln k against 1/T", finding, "1000 K/T", y, &arrhenius.points, 1e3));
    }
    if let Some(order) = &answer.order {
        let finding = first_words("order").unwrap_or_default();
        let title = "ln rate against ln concentration";
        found.push(straight("order", title, finding, "ln c", "ln rate", &order.points, 1.0));
    }
    found
}

fn straight(
    id: &str,
    title: &str,
    finding: String,
    x_title: &str,
    y_title: &str,
    points: &[RunPointAnswer],
    scale: f64,
) -> Figure {
    let points = thinned(points);
    let mut line: Vec<(f64, f64)> =
        points.iter().map(|point| (scale * point.plotted_x, point.fitted)).collect();
    line.sort_by(|a, b| a.0.total_cmp(&b.0));
    let plot = Plot {
        id: format!("{id}-plot"),
        title: title.to_owned(),
        finding: finding.clone(),
        // The part of the same name holds the same points.
        table: id.to_owned(),
        x_title: x_title.to_owned(),
        panels: vec![Panel {
            y_title: y_title.to_owned(),
            height: 230.0,
            points: points.iter().map(|point| (scale * point.plotted_x, point.plotted_y)).collect(),
            traces: vec![Trace { dash: Dash::Whole, name: "line of least squares", points: line }],
        }],
    };
    Figure { id: id.to_owned(), caption: finding, svg: draw(&plot), table: None }
}
