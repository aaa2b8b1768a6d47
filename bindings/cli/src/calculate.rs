//! `overwater calculate`.

use std::collections::BTreeMap;
use std::fs::File;
use std::io::{self, Read, Write};
use std::path::Path;

use overwater::catalogue::{self, AnyFormula};
use overwater::nearest;
use overwater::units::significant;
use overwater_exchange::FORMAT;
use overwater_exchange::calculation::{
    CalculationAnswer, CalculationRequest, calculate, in_order, result_name,
};

use crate::files::{self, Message};

/// Every formula with its inputs and what they accept.
pub(crate) fn list() -> String {
    let mut text = String::new();
    for formula in catalogue::all() {
        text.push_str(&format!("{} -> {}\n", formula.name(), result_name(formula.output())));
        for bound in formula.inputs() {
            let unsaid = bound.where_unsaid().map(|value| format!("; {value} where it is left out"));
            let unsaid = unsaid.unwrap_or_default();
            text.push_str(&format!("    {}: {}, {}{unsaid}\n", bound.name, bound.symbol.name, bound.range()));
        }
    }
    text
}

/// One set of values.
pub(crate) fn one(formula: &str, inputs: &[String], working: bool, json: bool) -> Result<(), Message> {
    let mut values = BTreeMap::<String, f64>::new();
    for input in inputs {
        let (name, value) = pair(input)?;
        if values.insert(name.to_owned(), value).is_some() {
            return Err(format!("error: {name} was given twice [given_twice]"));
        }
    }
    let request = CalculationRequest { format: FORMAT, formula: formula.to_owned(), inputs: values };
    let answer = calculate(&request).map_err(|refusal| format!("error: {refusal} [{}]", refusal.code))?;
    if json {
        return files::print_json(&answer);
    }
    for input in answer.inputs.iter().filter(|input| !request.inputs.contains_key(&input.name)) {
        tell_unsaid(&input.name, input.value, &input.unit);
    }
    files::print(&if working { solution(&answer) } else { number(&answer) })
}

/// Says what was taken for an input that was left out.
fn tell_unsaid(name: &str, value: f64, unit: &str) {
    let _ = writeln!(io::stderr(), "{name} is left out: taken as {value} {unit}");
}

fn pair(input: &str) -> Result<(&str, f64), Message> {
    let wrong =
        || format!("error: {input:?} cannot be read; write an input as in temperature_c=21.0 [syntax]");
    let (name, value) = input.split_once('=').ok_or_else(wrong)?;
    Ok((name, value.parse().map_err(|_| wrong())?))
}

fn number(answer: &CalculationAnswer) -> String {
    let result = &answer.result;
    let value = significant(result.value, 6);
    format!("{} = {value} {}", result.name, result.unit).trim_end().to_owned() + "\n"
}

fn solution(answer: &CalculationAnswer) -> String {
    let mut text = String::new();
    for step in &answer.steps {
        text.push_str(&format!("{} ({})\n", step.symbol, step.words));
        text.push_str(&format!("  = {}\n  = {}\n  = {}\n", step.relation, step.numbers, step.result));
        if !step.source.is_empty() {
            text.push_str(&format!("    [{}]\n", step.source));
        }
    }
    text.push_str(&number(answer));
    text
}

/// Rows that are worked out together; the file is never held as a whole.
const BATCH: usize = 4096;

/// Columns of a table.
pub(crate) fn table(formula: &str, path: &Path) -> Result<(), Message> {
    let formula = catalogue::find(formula).map_err(|error| format!("error: {error}"))?;
    let source: Box<dyn Read> = if path == Path::new("-") {
        Box::new(io::stdin().lock())
    } else {
        Box::new(
            File::open(path)
                .map_err(|error| format!("error: {}: cannot be read ({error})", path.display()))?,
        )
    };
    let shown = path.display().to_string();
    let mut reader = csv::ReaderBuilder::new().trim(csv::Trim::All).comment(Some(b'#')).from_reader(source);
    let header = reader.headers().map_err(|error| format!("error: {shown}: {error}"))?.clone();
    let places = places(&*formula, &header).map_err(|error| format!("error: {shown}: {error}"))?;

    for (bound, place) in formula.inputs().into_iter().zip(&places) {
        if let Place::Unsaid(value) = place {
            tell_unsaid(bound.name, *value, bound.symbol.unit.text);
        }
    }

    let mut writer = csv::Writer::from_writer(io::stdout().lock());
    let lost = |error: &dyn std::fmt::Display| format!("error: standard output: {error}");
    let result = result_name(formula.output());
    writer.write_record(header.iter().chain([result.as_str()])).map_err(|error| lost(&error))?;
    let mut batch: Vec<csv::StringRecord> = Vec::with_capacity(BATCH);
    let mut records = reader.records();
    let mut without_result = 0;
    loop {
        batch.clear();
        for record in records.by_ref().take(BATCH) {
            batch.push(record.map_err(|error| format!("error: {shown}: {error}"))?);
        }
        if batch.is_empty() {
            break;
        }
        let results =
            work_out(&*formula, &places, &batch).map_err(|error| format!("error: {shown}: {error}"))?;
        for (record, value) in batch.iter().zip(results) {
            without_result += usize::from(value.is_nan());
            let value = if value.is_nan() { String::new() } else { value.to_string() };
            writer.write_record(record.iter().chain([value.as_str()])).map_err(|error| lost(&error))?;
        }
    }
    writer.flush().map_err(|error| lost(&error))?;
    if without_result > 0 {
        let _ = writeln!(
            io::stderr(),
            "{shown}: {without_result} row(s) have no result, because an input is missing or outside its range"
        );
    }
    Ok(())
}

/// Where the values of an input come from.
#[derive(Clone, Copy)]
enum Place {
    /// The column at this place.
    Column(usize),
    /// No column: what is taken where nothing is said.
    Unsaid(f64),
}

/// Where each input comes from.
fn places(formula: &dyn AnyFormula, header: &csv::StringRecord) -> Result<Vec<Place>, Message> {
    let columns: BTreeMap<String, Place> = header
        .iter()
        .enumerate()
        .filter(|(_, name)| formula.inputs().iter().any(|bound| bound.name == *name))
        .map(|(index, name)| (name.to_owned(), Place::Column(index)))
        .collect();
    match in_order(formula, &columns, Place::Unsaid) {
        Ok(found) => Ok(found.into_iter().map(|(_, place)| place).collect()),
        Err(error) => {
            let near = nearest(&error.parameter, header.iter());
            let hint = near.map(|name| format!("; is it the column {name}?")).unwrap_or_default();
            Err(format!("{error}{hint} [{}]", error.code.name()))
        }
    }
}

fn work_out(
    formula: &dyn AnyFormula,
    places: &[Place],
    batch: &[csv::StringRecord],
) -> Result<Vec<f64>, Message> {
    let columns: Vec<Vec<f64>> = places
        .iter()
        .map(|place| match place {
            Place::Column(index) => batch.iter().map(|record| field(record, *index)).collect(),
            Place::Unsaid(value) => Ok(vec![*value; batch.len()]),
        })
        .collect::<Result<_, _>>()?;
    let slices: Vec<&[f64]> = columns.iter().map(Vec::as_slice).collect();
    let mut results = vec![f64::NAN; batch.len()];
    formula.fill(&slices, &mut results).map_err(|error| error.to_string())?;
    Ok(results)
}

/// A blank cell has no result; anything else that is no number is refused with its place.
fn field(record: &csv::StringRecord, place: usize) -> Result<f64, Message> {
    match record.get(place).unwrap_or_default() {
        "" => Ok(f64::NAN),
        text => text.parse().map_err(|_| {
            let line = record.position().map_or(0, csv::Position::line);
            format!(
                "line {line}, column {}: {text:?} is not a number with a decimal point [syntax]",
                place + 1
            )
        }),
    }
}
