//! The page to print.

mod axis;
mod chart;
mod course;
mod jars;
mod labels;
mod numbers;
mod oxygen;
mod plot;
mod rate;
mod run;
mod schedule;
#[cfg(test)]
mod tests;

use minijinja::syntax::SyntaxConfig;
use minijinja::value::Serde;
use minijinja::{Environment, Error, Output, State, UndefinedBehavior, Value, context};
use overwater_exchange::answer::{BurnAnswer, GasAnswer, PlanAnswer, VesselFillingAnswer};
use serde::Serialize;

use chart::Labelling;
pub use rate::rate_page;
pub use run::run_page;

/// A vessel with all that is known of it, which the answer keeps in separate lists of one order.
#[derive(Debug, Serialize)]
struct Row<'a> {
    filling: &'a VesselFillingAnswer,
    gas: Option<&'a GasAnswer>,
    burn: Option<&'a BurnAnswer>,
}

/// The preparation sheet as one HTML page: it prints on A4, and needs neither network nor script.
///
/// The page is well-formed as XML too, takes the colours of the place where it is shown, and prints black on white.
///
/// ```
/// let answer = overwater_exchange::plan_toml(
///     "format = 1\nstock.strength = \"20 vol\"\n[[vessels]]\nburn = \"sulfur\"\n",
/// )?;
/// let page = overwater_sheet::page(&answer);
/// // One jar of 250 cm3 at 20 degC and 101.325 kPa holds 10.1 mmol of dry gas.
/// assert!(page.contains("10.1"));
/// # Ok::<(), Box<overwater_exchange::Refusal>>(())
/// ```
#[must_use]
pub fn page(plan: &PlanAnswer) -> String {
    render(plan).unwrap_or_else(|error| unwritten(plan, &error))
}

/// What every page is made with.
fn environment() -> Result<Environment<'static>, Error> {
    let mut environment = Environment::new();
    environment.set_undefined_behavior(UndefinedBehavior::Strict);
    environment.set_syntax(SyntaxConfig::builder().trim_blocks(true).lstrip_blocks(true).build()?);
    environment.set_formatter(write_escaped);
    environment.add_template("sheet.css", include_str!("page/sheet.css"))?;
    Ok(environment)
}

fn render(plan: &PlanAnswer) -> Result<String, Error> {
    let mut environment = environment()?;
    environment.add_filter("sig", numbers::sig);
    environment.add_filter("dec", numbers::dec);
    environment.add_filter("given", numbers::given);
    environment.add_filter("full", numbers::full);
    environment.add_filter("percent", numbers::percent);
    environment.add_filter("unit", |figure: String, unit: String| numbers::with_unit(&figure, &unit));
    environment.add_filter("units", |text: String| crate::typeset(&text));
    environment.add_filter("counted", counted);
    environment.add_template("sheet.html", include_str!("page/sheet.html"))?;

    let (figure, labelling) = chart::draw(&oxygen::chart(&plan.filling));
    environment.get_template("sheet.html")?.render(context! {
        plan => Value::from(Serde(plan)),
        rows => Value::from(Serde(rows(plan))),
        figure => Value::from_safe_string(figure),
        figure_is_numbered => labelling == Labelling::Numbers,
        filling_table => oxygen::TABLE,
        timeline => Value::from(Serde(timeline(plan))),
        timeline_table => schedule::TABLE,
        jars => jars(plan),
    })
}

/// What the page says of the schedule that was found.
#[derive(Debug, Serialize)]
struct Timeline {
    advised: String,
    trust: String,
    lines: Vec<crate::timeline::Line>,
    figure: String,
    is_numbered: bool,
}

fn timeline(plan: &PlanAnswer) -> Option<Timeline> {
    let found = plan.schedule.found.as_ref()?;
    let (figure, is_numbered) = schedule::figure(found);
    Some(Timeline {
        advised: crate::timeline::advised(found),
        trust: crate::timeline::trust(found),
        lines: crate::timeline::lines(found),
        figure,
        is_numbered,
    })
}

/// Each burn with its figure and what is to be said of what it leaves.
fn jars(plan: &PlanAnswer) -> Vec<Value> {
    let pairs = plan.burns.iter().zip(&plan.after).enumerate();
    pairs
        .map(|(index, (burn, after))| {
            let figure = jars::draw(after, &burn.formula, burn.sample_g, index + 1);
            context! {
                vessel => burn.vessel.clone(),
                sample => burn.sample.clone(),
                sample_g => burn.sample_g,
                figure => Value::from_safe_string(figure),
                lines => crate::after::lines(after),
            }
        })
        .collect()
}

/// The vessels in order, each with its gas and its burn.
fn rows(plan: &PlanAnswer) -> Vec<Row<'_>> {
    let mut burns = plan.burns.iter();
    let mut gas = plan.gas.vessels.iter();
    let row = |filling| Row { filling, gas: gas.next(), burn: with_burn(filling, &mut burns) };
    plan.filling.vessels.iter().map(row).collect()
}

fn with_burn<'a>(
    filling: &VesselFillingAnswer,
    burns: &mut impl Iterator<Item = &'a BurnAnswer>,
) -> Option<&'a BurnAnswer> {
    filling.burn.as_ref().and_then(|_| burns.next())
}

/// Writes a value; text is escaped, whichever template it stands in, unless this crate made it.
fn write_escaped(out: &mut Output<'_>, _: &mut State<'_, '_>, value: &Value) -> Result<(), Error> {
    let text = value.to_string();
    out.write_str(&if value.is_safe() { text } else { numbers::escape(&text) })?;
    Ok(())
}

/// A count with its noun: `3|counted("jar", "jars")`.
fn counted(count: u32, one: String, many: String) -> String {
    numbers::with_unit(&count.to_string(), if count == 1 { &one } else { &many })
}

/// What is shown if the template fails, which the tests rule out for every shape of answer that they know.
fn unwritten(plan: &PlanAnswer, error: &Error) -> String {
    let (deference, error) = (numbers::escape(&plan.deference), numbers::escape(&error.to_string()));
    format!(
        "<!DOCTYPE html>\n<html lang=\"en\"><head><meta charset=\"utf-8\"/><title>Preparation sheet</title></head>\
         <body><h1>Preparation sheet</h1><p>{deference}</p>\
         <p>The sheet could not be written: {error}. The answer itself is not affected.</p></body></html>\n"
    )
}
