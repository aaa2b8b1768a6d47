//! One run: initial rates, curve, half-lives, order, lines, amount of gas.

use overwater::readings::bootstrap::{Bootstrap, bootstrap};
use overwater::readings::curve::{FirstOrder, Growth, Known};
use overwater::readings::decay::{Decay, Exponentially};
use overwater::readings::half_life::{Between, half_lives};
use overwater::readings::initial_rate::{
    Course, Estimate, InitialRate, initial_rate_from, initial_rate_of_fall,
};
use overwater::readings::line::{Lines, lines};
use overwater::readings::model::{Fit, Method, Model};
use overwater::readings::order::from_curve;
use overwater::readings::rate_law;
use overwater::readings::series::{Demands, Names, Series};
use overwater::units::significant;
use overwater::{Error, Result};

use super::answer::{
    CurveAnswer, CurveOrderAnswer, EstimateAnswer, HalfLifeAnswer, HalfLivesAnswer, MeasureAnswer,
    PointAnswer, RunAnswer, TriedOrderAnswer,
};
use super::columns::Kind;
use super::gas::GasFactor;
use super::prepared::Prepared;
use super::rows::Rows;
use super::runs::{Run, names};
use crate::lines::{Axes, finite, lines_answer, per};

/// Half-lives are read down to where what is left is this many standard deviations of the readings.
const ABOVE_THE_SCATTER: f64 = 3.0;
/// The order is read from a curve down to where this share of the first value is left.
const LEFT_FOR_THE_ORDER: f64 = 0.05;
/// A start is said where it differs from 0 by more than this many standard errors.
const START_IN_ERRORS: f64 = 2.0;

/// A curve of either kind.
enum Curve {
    Growth(Growth),
    Decay(Decay),
}

impl Curve {
    fn at(&self, time: f64) -> f64 {
        match self {
            Curve::Growth(growth) => growth.at(time),
            Curve::Decay(decay) => decay.at(time),
        }
    }

    fn end(&self) -> f64 {
        match self {
            Curve::Growth(growth) => growth.end(),
            Curve::Decay(decay) => decay.end(),
        }
    }

    fn fit(&self) -> &Fit<3> {
        match self {
            Curve::Growth(growth) => &growth.fit,
            Curve::Decay(decay) => &decay.fit,
        }
    }
}

/// What one run says, with what the others are compared by.
pub(super) struct Worked {
    pub(super) answer: RunAnswer,
    pub(super) concentration: Option<f64>,
    /// Rate constant and its standard error.
    pub(super) rate_constant: Option<(f64, Option<f64>)>,
}

/// Works out one run.
pub(super) fn work_out(prepared: &Prepared, rows: &Rows, run: &Run) -> Result<Worked> {
    let followed = prepared.followed;
    let names = names(rows, followed);
    let series = Series::new(names, &run.x, &run.y, &Demands::rows(4))?;
    let units = Units { time: rows.unit(Kind::Time).text, reading: rows.unit(followed).text };
    let known = known(prepared, rows, run);
    let mut warnings = run.warnings.clone();

    let (curve, three, window) = if followed.falls() {
        let found = initial_rate_of_fall(&series, known.end)?;
        let three = estimates(&found);
        (found.curve.map(Curve::Decay), three, found.window)
    } else {
        let found = initial_rate_from(&series, known.end, known.start)?;
        let three = estimates(&found);
        (found.curve.map(Curve::Growth), three, found.window)
    };
    let drawn = match &curve {
        Ok(curve) => drawn(prepared, &series, curve, &mut warnings)?,
        Err(_) => None,
    };
    let start = run.x.first().copied().unwrap_or_default();
    let initial_rates: Vec<EstimateAnswer> = three
        .into_iter()
        .map(|(way, estimate)| {
            let interval = drawn
                .as_ref()
                .filter(|_| way == "whole_curve")
                .map(|drawn| drawn.interval_of(|numbers| initial_slope(followed, numbers, start)));
            estimate_answer(way, &estimate, interval, &units)
        })
        .collect();

    let half_lives = read_half_lives(prepared, &series, &curve, &units);
    let order = curve_order(&series, known.end, followed);
    let lines = first_lines(followed, names, run, window)?;
    let causes = lines.warning.filter(|_| !followed.falls()).map_or(&[][..], |warning| warning.may_mean());
    let stem = followed.stem().replace('_', " ");
    let gone = format!("{stem} used up");
    let axes = Axes {
        x: "time",
        x_unit: units.time,
        y: if followed.falls() { &gone } else { &stem },
        y_unit: units.reading,
    };
    let gas = GasFactor::of(prepared, rows, run)?;
    if let Ok(curve) = &curve {
        warn(&units, curve, followed, run, known, &mut warnings);
    }
    let rate = initial_rates.iter().find(|rate| rate.way == "whole_curve").or(initial_rates.first());
    let gas = gas.zip(rate).map(|(gas, rate)| gas.answer(&rate.rate, units.time));
    let concentration = run.first.get(Kind::InitialConcentration);
    let points = run
        .numbers
        .iter()
        .zip(series.rows())
        .map(|(row, (x, y))| PointAnswer {
            row: *row,
            x,
            y,
            fitted: curve.as_ref().ok().map(|curve| curve.at(x)),
        })
        .collect();
    let rate_constant = curve.as_ref().ok().map(rate_constant);
    let (curve, no_curve) = match curve {
        Ok(curve) => (Some(curve_answer(&curve, drawn.as_ref(), &units)), None),
        Err(error) => (None, Some(error.to_string())),
    };
    let (half_lives, no_half_lives) = split(half_lives);
    let (order, no_order) = split(order);
    Ok(Worked {
        answer: RunAnswer {
            run: run.label.clone(),
            temperature_k: run.temperature_k,
            initial_concentration: concentration.map(|value| MeasureAnswer {
                value,
                unit: rows.unit(Kind::InitialConcentration).text.to_owned(),
                standard_error: None,
                interval: None,
            }),
            time_unit: units.time.to_owned(),
            reading_unit: units.reading.to_owned(),
            initial_rates,
            curve,
            no_curve,
            half_lives,
            no_half_lives,
            order,
            no_order,
            lines: lines_answer(&lines, &axes, causes),
            gas,
            warnings,
            points,
        },
        concentration,
        rate_constant,
    })
}

struct Units<'a> {
    time: &'a str,
    reading: &'a str,
}

/// Straight lines through the first readings; of what falls, through what has gone since the first of them.
fn first_lines(followed: Kind, names: Names, run: &Run, window: usize) -> Result<Lines> {
    let x = run.x.get(..window).unwrap_or_default();
    let y = run.y.get(..window).unwrap_or_default();
    if !followed.falls() {
        return lines(&Series::new(names, x, y, &Demands::rows(2))?);
    }
    let (first_x, first_y) = (x.first().copied().unwrap_or_default(), y.first().copied().unwrap_or_default());
    let passed: Vec<f64> = x.iter().map(|x| x - first_x).collect();
    let gone: Vec<f64> = y.iter().map(|y| first_y - y).collect();
    lines(&Series::new(names, &passed, &gone, &Demands::rows(2))?)
}

/// What is known of the curve beforehand.
#[derive(Clone, Copy)]
struct Beforehand {
    end: Known,
    start: Known,
}

fn known(prepared: &Prepared, rows: &Rows, run: &Run) -> Beforehand {
    let value = |kind: Kind, unit: overwater::units::Unit| {
        let own = rows.unit(kind);
        run.first.get(kind).map(|value| if own == unit { value } else { unit.from_si(own.to_si(value)) })
    };
    let last = Kind::FOLLOWED.iter().find(|(kind, _)| *kind == prepared.followed).map(|(_, last)| *last);
    let end = last.and_then(|last| value(last, rows.unit(prepared.followed)));
    let end = match end {
        Some(end) => Known::Value(end),
        None if prepared.followed == Kind::Concentration && !prepared.fit_final_value => Known::Value(0.0),
        None => Known::Fitted,
    };
    let start = value(Kind::Start, rows.unit(Kind::Time));
    Beforehand { end, start: start.map_or(Known::Fitted, Known::Value) }
}

fn estimates<C>(found: &InitialRate<C>) -> Vec<(&'static str, Estimate)> {
    let mut three = vec![("tangent", found.tangent)];
    three.extend(found.whole_curve.map(|whole| ("whole_curve", whole)));
    three.push(("first_two", found.first_two));
    three
}

/// The rate at the first reading, for numbers fitted to a drawn set of readings.
fn initial_slope(followed: Kind, numbers: &[f64; 3], start: f64) -> f64 {
    use overwater::scalar::{Scalar, Sensitivities};
    let time = Sensitivities::<1>::input(start, 0);
    let numbers = numbers.map(Sensitivities::number);
    let curve =
        if followed.falls() { -Exponentially.value(time, numbers) } else { FirstOrder.value(time, numbers) };
    curve.derivatives().first().copied().unwrap_or(f64::NAN)
}

fn drawn(
    prepared: &Prepared,
    series: &Series<'_>,
    curve: &Curve,
    warnings: &mut Vec<String>,
) -> Result<Option<Bootstrap<3>>> {
    let Some(plan) = &prepared.bootstrap else { return Ok(None) };
    let drawn = match curve {
        Curve::Growth(growth) => bootstrap(&FirstOrder, series, &growth.fit, plan),
        Curve::Decay(decay) => bootstrap(&Exponentially, series, &decay.fit, plan),
    };
    match drawn {
        Ok(drawn) => Ok(Some(drawn)),
        Err(error) if error.code == overwater::Code::OutOfRange => Err(error.within("bootstrap")),
        Err(error) => {
            warnings.push(format!("no intervals by refitting: {error}"));
            Ok(None)
        }
    }
}

fn measure(value: f64, unit: &str, error: Option<f64>, interval: Option<[f64; 2]>) -> MeasureAnswer {
    MeasureAnswer { value, unit: unit.to_owned(), standard_error: error.and_then(finite), interval }
}

fn estimate_answer(
    way: &str,
    estimate: &Estimate,
    interval: Option<overwater::readings::bootstrap::Interval>,
    units: &Units<'_>,
) -> EstimateAnswer {
    let unit = per(units.reading, units.time);
    EstimateAnswer {
        way: way.to_owned(),
        rate: measure(
            estimate.rate,
            &unit,
            estimate.standard_error,
            interval.map(|interval| [interval.lower, interval.upper]),
        ),
        readings: estimate.readings as u64,
        conversion_percent: estimate.conversion.map(|share| 100.0 * share),
        bias_percent: estimate.bias.map(|bias| 100.0 * (bias - 1.0)),
        worth: worth(way, estimate),
    }
}

/// What a way to the initial rate is worth, in words.
fn worth(way: &str, estimate: &Estimate) -> String {
    let reached = estimate.conversion.map_or_else(String::new, |share| {
        format!(", which reach {} % of the whole", significant(100.0 * share, 2))
    });
    let off = estimate.bias.map_or_else(String::new, |bias| {
        let percent = 100.0 * (bias - 1.0);
        match percent {
            p if p.abs() < 0.05 => "; the recipe itself is right on such a curve".to_owned(),
            p if p < 0.0 => {
                format!("; the recipe itself reads {} % low on such a curve", significant(-p, 2))
            }
            p => format!("; the recipe itself reads {} % high on such a curve", significant(p, 2)),
        }
    });
    match way {
        "tangent" => format!("parabola through the first {} readings{reached}{off}", estimate.readings),
        "first_two" => {
            format!("slope between two readings{reached}: their scatter goes straight into it{off}")
        }
        _ => format!("all {} readings, if the reaction is of the first order", estimate.readings),
    }
}

fn split<T>(result: Result<T>) -> (Option<T>, Option<String>) {
    match result {
        Ok(value) => (Some(value), None),
        Err(error) => (None, Some(error.to_string())),
    }
}

fn rate_constant(curve: &Curve) -> (f64, Option<f64>) {
    let fit = curve.fit();
    match curve {
        Curve::Growth(growth) => (growth.rate_constant(), finite(fit.standard_errors[1])),
        Curve::Decay(decay) => (decay.rate_constant(), finite(fit.standard_errors[2])),
    }
}

fn curve_answer(curve: &Curve, drawn: Option<&Bootstrap<3>>, units: &Units<'_>) -> CurveAnswer {
    let fit = curve.fit();
    let per_time = per("", units.time);
    let number = |index: usize, unit: &str| {
        let free = fit.free.get(index).copied().unwrap_or(false);
        let interval = drawn.filter(|_| free).and_then(|drawn| drawn.intervals.get(index));
        measure(
            fit.parameters.get(index).copied().unwrap_or(f64::NAN),
            unit,
            fit.standard_errors.get(index).copied().filter(|_| free),
            interval.map(|interval| [interval.lower, interval.upper]),
        )
    };
    let (growth, k, half_life) = match curve {
        Curve::Growth(growth) => (true, 1, growth.half_life()),
        Curve::Decay(decay) => (false, 2, decay.half_life()),
    };
    let interval = drawn.map(|drawn| {
        let interval =
            drawn.interval_of(|numbers| rate_law::half_life(numbers.get(k).copied().unwrap_or(f64::NAN)));
        [interval.lower, interval.upper]
    });
    let end = if growth { 0 } else { 1 };
    CurveAnswer {
        kind: if growth { "growth" } else { "decay" }.to_owned(),
        final_value: number(end, units.reading),
        final_value_fitted: fit.free.get(end).copied().unwrap_or(false),
        rate_constant: number(k, &per_time),
        start: growth.then(|| number(2, units.time)),
        start_fitted: growth && fit.free[2],
        first_value: (!growth).then(|| number(0, units.reading)),
        half_life: measure(half_life.0, units.time, Some(half_life.1), interval),
        residual_standard_deviation: finite(fit.residual_sd),
        degrees_of_freedom: fit.degrees_of_freedom as u64,
        method: format!(
            "{}, {} evaluations",
            match fit.convergence.method {
                Method::GaussNewton => "Gauss-Newton",
                Method::LevenbergMarquardt => "Levenberg-Marquardt",
            },
            fit.convergence.evaluations
        ),
        replicates: drawn.map_or(0, |drawn| drawn.replicates.len() as u64),
    }
}

/// What is still to come, at the first readings of a series.
fn still_to_come(
    series: &Series<'_>,
    end: f64,
    followed: Kind,
    least: impl Fn(f64) -> f64,
) -> (Vec<f64>, Vec<f64>) {
    let left = |y: f64| if followed.falls() { y - end } else { end - y };
    let least = least(series.y().first().map_or(f64::NAN, |y| left(*y)));
    series.rows().map(|(x, y)| (x, left(y))).take_while(|(_, left)| *left > 0.0 && *left >= least).unzip()
}

fn to_come_names(names: Names) -> Names {
    Names { x: names.x, y: "what is still to come" }
}

fn read_half_lives(
    prepared: &Prepared,
    series: &Series<'_>,
    curve: &Result<Curve>,
    units: &Units<'_>,
) -> Result<HalfLivesAnswer> {
    let curve = curve.as_ref().map_err(Clone::clone)?;
    let scatter = curve.fit().residual_sd;
    let floor = if scatter.is_finite() { ABOVE_THE_SCATTER * scatter } else { 0.0 };
    let (x, y) = still_to_come(series, curve.end(), prepared.followed, |_| floor);
    let left = Series::new(to_come_names(series.names()), &x, &y, &Demands::rows(2))?;
    let read = half_lives(&left, Between::Exponential, prepared.half_lives_within)?;
    Ok(HalfLivesAnswer {
        half_lives: read
            .half_lives
            .iter()
            .map(|one| HalfLifeAnswer { begins: one.begins, length: one.length })
            .collect(),
        mean: read.mean,
        unit: units.time.to_owned(),
        spread: read.spread,
        constant: read.constant,
        constant_within_percent: 100.0 * prepared.half_lives_within,
        orders: read.orders,
    })
}

fn curve_order(series: &Series<'_>, end: Known, followed: Kind) -> Result<CurveOrderAnswer> {
    let Known::Value(end) = end else {
        return Err(Error::new(overwater::Code::Missing, format!("final_{}", followed.stem()))
            .advice("an end that is fitted as one of the first order would decide the order: read the final value and give it"));
    };
    let (x, y) = still_to_come(series, end, followed, |first| LEFT_FOR_THE_ORDER * first);
    let left = Series::new(to_come_names(series.names()), &x, &y, &Demands::rows(4))?;
    let found = from_curve(&left)?;
    let words = ["c", "ln c", "1/c"];
    let tried = found
        .straightened
        .iter()
        .zip(&found.curves)
        .zip(words)
        .map(|((line, curve), straight)| TriedOrderAnswer {
            order: u32::from(line.order),
            straight: straight.to_owned(),
            r_squared: finite(line.line.r_squared),
            misses_by: finite(line.misses_by),
            residual_standard_deviation: curve.as_ref().ok().and_then(|curve| finite(curve.residual_sd)),
        })
        .collect();
    Ok(CurveOrderAnswer {
        tried,
        best: found.best().map(u32::from),
        fitted: found.order().map(|(order, error)| measure(order, "", Some(error), None)),
        readings: left.len() as u64,
    })
}

fn warn(
    units: &Units<'_>,
    curve: &Curve,
    followed: Kind,
    run: &Run,
    known: Beforehand,
    warnings: &mut Vec<String>,
) {
    let fit = curve.fit();
    if let Curve::Growth(growth) = curve
        && known.start == Known::Fitted
        && growth.start().abs() > START_IN_ERRORS * fit.standard_errors[2]
    {
        let begins = significant(growth.start().abs(), 2);
        warnings.push(if growth.start() > 0.0 {
            format!(
                "the curve begins {begins} {} after the clock: gas that dissolves first, a slow start, or a clock started early",
                units.time
            )
        } else {
            format!(
                "the curve begins {begins} {} before the clock: a clock started late, or air driven out by the liquid or the bung",
                units.time
            )
        });
    }
    let last = run.x.last().copied().unwrap_or_default();
    let first = run.x.first().copied().unwrap_or_default();
    let reached = (curve.at(last) - curve.at(first)) / (curve.end() - curve.at(first));
    if known.end == Known::Fitted && reached < 0.75 {
        warnings.push(format!(
            "the readings end at {} % of the fitted final {}: it is not well determined, and the rate constant with it; \
             read on, or give the final value",
            significant(100.0 * reached, 2),
            followed.stem().replace('_', " ")
        ));
    }
}
