//! The page of a simulated preparation.

use minijinja::{Error, Value, context};
use overwater_exchange::run::answer::{PointAnswer, RunAnswer};

use super::course::{Course, Filling, draw};
use super::numbers::dec;
use super::{environment, numbers, schedule};
use crate::run as words;
use crate::timeline::clock;

/// Points that each curve is drawn through; of more, every so many.
const DRAWN: usize = 400;

/// A simulated preparation as one HTML page: it prints on A4, and needs neither network nor script.
///
/// The page is well-formed as XML too, takes the colours of the place where it is shown, and prints black on white.
#[must_use]
pub fn run_page(answer: &RunAnswer) -> String {
    render(answer).unwrap_or_else(|error| {
        let error = numbers::escape(&error.to_string());
        format!(
            "<!DOCTYPE html>\n<html lang=\"en\"><head><meta charset=\"utf-8\"/><title>Simulated preparation</title></head>\
             <body><p>The page could not be written: {error}. The answer itself is not affected.</p></body></html>\n"
        )
    })
}

fn render(answer: &RunAnswer) -> Result<String, Error> {
    let mut environment = environment()?;
    environment.add_filter("cell", |text: String| numbers::in_text(&crate::typeset(&text)));
    environment.add_template("run.html", include_str!("run.html"))?;
    let (figure, numbered) = figure(answer);
    environment.get_template("run.html")?.render(context! {
        title => words::title(answer),
        verdict => words::verdict(answer),
        findings => words::findings(answer),
        figure => Value::from_safe_string(figure),
        numbered => numbered,
        events => words::events(answer),
        vessels => words::vessels(answer),
        greatest => words::greatest(answer),
        states => words::STATES,
        state_rows => words::states(answer),
        moves => words::MOVES,
        move_rows => words::sensitivities(answer),
        assumed => words::assumed(answer),
        caution => words::NOT,
        version => &answer.library_version,
    })
}

fn figure(answer: &RunAnswer) -> (String, bool) {
    let step = answer.curve.len().div_ceil(DRAWN).max(1);
    let curve = |value: fn(&PointAnswer) -> f64| -> Vec<(f64, f64)> {
        answer.curve.iter().step_by(step).map(|point| (point.time_s, value(point))).collect()
    };
    let fillings = answer.vessels.iter().filter_map(|vessel| {
        let from_s = vessel.from_s?;
        Some(Filling {
            name: vessel.name.clone(),
            from_s,
            to_s: vessel.full_at_s.unwrap_or(answer.reached_s),
        })
    });
    draw(&Course {
        id: "course",
        title: "Flow, temperature of the flask and oxygen against time".to_owned(),
        finding: finding(answer),
        table: "state-table",
        end_s: answer.reached_s,
        fillings: fillings.collect(),
        additions: answer.additions_s.clone(),
        curves: schedule::curves(
            curve(|point| point.flow_cm3_per_s),
            curve(|point| point.temperature_c),
            curve(|point| point.oxygen_fraction),
            answer.greatest_flow_cm3_per_s,
            answer.limit_temperature_c,
        ),
    })
}

/// What the figure shows, in words.
fn finding(answer: &RunAnswer) -> String {
    let filled = match answer.filled_at_s {
        Some(time) => format!("the last vessel is full after {}", clock(time)),
        None => "not every vessel is filled".to_owned(),
    };
    format!(
        "Gas comes at no more than {} cm³/s, the flask comes to no more than {} °C, {filled}. {}",
        dec(answer.top_flow_cm3_per_s, 1),
        dec(answer.top_temperature_c, 0),
        words::verdict(answer)
    )
}
