//! From what was said of an input to the core's input, by either kind of rules.

use std::borrow::Cow;

use overwater::bounds::Bound;
use overwater::readings::uncertainty::input::{Distribution, Input};
use overwater::readings::uncertainty::school::{Reading, SchoolInput};
use overwater::{Code, Error};

use super::request::{SpreadRequest, UncertainRequest};

/// What was said of how uncertain a value is.
enum Said {
    Nothing,
    Standard(f64),
    HalfWidth(f64),
    Division(f64),
    LastDigit(f64),
    Repeats,
}

fn said(bound: &Bound, given: &UncertainRequest) -> Result<Said, Error> {
    let ways = [
        given.standard_uncertainty.map(Said::Standard),
        given.half_width.map(Said::HalfWidth),
        given.division.map(Said::Division),
        given.last_digit.map(Said::LastDigit),
        (!given.repeats.is_empty()).then_some(Said::Repeats),
    ];
    let mut found = ways.into_iter().flatten();
    let first = found.next().unwrap_or(Said::Nothing);
    if found.next().is_some() {
        return Err(Error::new(Code::GivenTwice, bound.name)
            .allowed("one of standard_uncertainty, half_width, division, last_digit, repeats")
            .advice("say in one way how uncertain it is"));
    }
    let scale = matches!(first, Said::Division(_) | Said::LastDigit(_));
    let stray = [
        ("readings", given.readings.is_some() && !scale),
        ("spread", given.spread.is_some() && !matches!(first, Said::HalfWidth(_))),
        ("degrees_of_freedom", given.degrees_of_freedom.is_some() && !matches!(first, Said::Standard(_))),
    ];
    if let Some((key, _)) = stray.iter().find(|(_, stray)| *stray) {
        return Err(Error::new(Code::Contradiction, format!("{}.{key}", bound.name))
            .allowed("readings with division or last_digit, spread with half_width, degrees_of_freedom with standard_uncertainty")
            .advice("leave it out"));
    }
    Ok(first)
}

fn value(bound: &Bound, given: &UncertainRequest) -> Result<f64, Error> {
    match (given.value, given.repeats.is_empty()) {
        (Some(_), false) => Err(Error::new(Code::GivenTwice, bound.name)
            .allowed("a value, or repeats whose mean is the value")
            .advice("leave one of them out")),
        (Some(value), true) => bound.check(value),
        (None, false) => bound.check(given.repeats.iter().sum::<f64>() / given.repeats.len() as f64),
        (None, true) => Err(Error::new(Code::Missing, bound.name)
            .allowed(bound.range())
            .advice(format!("give the value of the {}", bound.symbol.name))),
    }
}

fn not_negative(bound: &Bound, number: f64) -> Result<f64, Error> {
    if number.is_finite() && number >= 0.0 {
        return Ok(number);
    }
    let code = if number.is_finite() { Code::OutOfRange } else { Code::NotANumber };
    Err(Error::new(code, bound.name)
        .value(number.to_string())
        .allowed("an uncertainty of 0 or more")
        .advice("an uncertainty has no sign"))
}

fn readings(bound: &Bound, given: &UncertainRequest) -> Result<u8, Error> {
    match given.readings.unwrap_or(1) {
        number @ 1..=2 => Ok(number),
        other => Err(Error::new(Code::OutOfRange, format!("{}.readings", bound.name))
            .value(other.to_string())
            .allowed("1, or 2 for a difference")
            .advice("give repeats as repeats")),
    }
}

/// An input by the rules of the GUM: half a division or half a last digit either way is a rectangular distribution, and a
/// difference of two such readings a triangular one of twice the half-width (GUM 4.3.7, F.2.2.1, 4.3.9).
pub(super) fn input(bound: &'static Bound, given: &UncertainRequest) -> Result<Input, Error> {
    let best = value(bound, given)?;
    let name = bound.name;
    let scale = |division: f64| -> Result<Input, Error> {
        let half = not_negative(bound, division)? / 2.0;
        Ok(match readings(bound, given)? {
            1 => Input::rectangular(name, best, half),
            _ => Input::triangular(name, best, 2.0 * half),
        })
    };
    match said(bound, given)? {
        Said::Nothing => Ok(Input::exact(name, best)),
        Said::Standard(u) => {
            let input = Input::normal(name, best, not_negative(bound, u)?);
            Ok(match given.degrees_of_freedom {
                None => input,
                Some(number) => {
                    let input = input.with_degrees_of_freedom(number);
                    input.check()?;
                    Input { distribution: Distribution::Student, ..input }
                }
            })
        }
        Said::HalfWidth(half) => {
            let half = not_negative(bound, half)?;
            Ok(match given.spread {
                None | Some(SpreadRequest::Rectangular) => Input::rectangular(name, best, half),
                Some(SpreadRequest::Triangular) => Input::triangular(name, best, half),
            })
        }
        Said::Division(division) | Said::LastDigit(division) => scale(division),
        Said::Repeats => Input::repeats(name, &given.repeats),
    }
}

/// An input by school rules.
pub(super) fn school(bound: &'static Bound, given: &UncertainRequest) -> Result<SchoolInput, Error> {
    let best = value(bound, given)?;
    let reading = match said(bound, given)? {
        Said::Nothing => Reading::HalfWidth(0.0),
        Said::Standard(_) => {
            return Err(Error::new(Code::Contradiction, format!("{}.standard_uncertainty", bound.name))
                .allowed("half_width, division, last_digit or repeats, by school rules")
                .advice("school rules know half-widths only: rule sets are not mixed"));
        }
        Said::HalfWidth(half) => Reading::HalfWidth(half),
        Said::Division(division) => Reading::Scale { division, readings: readings(bound, given)? },
        Said::LastDigit(division) => Reading::Display { division, readings: readings(bound, given)? },
        Said::Repeats => Reading::Repeats(given.repeats.clone()),
    };
    Ok(SchoolInput { name: bound.name.into(), value: best, reading })
}

/// An input that is taken as known.
pub(super) fn known(name: Cow<'static, str>, value: f64) -> SchoolInput {
    SchoolInput { name, value, reading: Reading::HalfWidth(0.0) }
}
