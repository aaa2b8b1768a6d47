//! What the checks of properties share.
#![allow(dead_code, reason = "each file of checks uses a part")]

use overwater::Code;
use overwater::scalar::{Formula, Script};

/// One unit in the last place of a number as printed.
pub fn last_place(printed: &str) -> f64 {
    let (mantissa, exponent) = printed.split_once('e').unwrap_or((printed, "0"));
    let decimals = mantissa.split_once('.').map_or(0, |(_, decimals)| decimals.len());
    format!("1e{}", exponent.parse::<i32>().expect("an exponent") - i32::try_from(decimals).expect("short"))
        .parse()
        .expect("a power of ten")
}

/// Asserts that a value rounds to the printed number, to its last digit.
pub fn agrees(value: f64, printed: &str, what: &str) {
    let expected: f64 = printed.parse().unwrap_or_else(|_| panic!("{what}: {printed} is no number"));
    let half = 0.5 * last_place(printed);
    assert!((value - expected).abs() <= half * (1.0 + 1e-6), "{what}: {value} is not {printed}");
}

/// Asserts that every limit of a formula is kept: at the limit a result, one unit in the last place beyond it a refusal
/// with the range and NaN in a column. `inside` is a row that has a result, and so has each row with one limit put in.
pub fn limits_are_kept<F: Formula<IN>, const IN: usize>(formula: &F, inside: [f64; IN]) {
    assert!(formula.number(inside).is_ok(), "{} of {inside:?}", F::NAME);
    for (index, bound) in formula.inputs().into_iter().enumerate() {
        let with = |value: f64| {
            let mut row = inside;
            row[index] = value;
            row
        };
        for limit in [bound.least, bound.greatest] {
            let at =
                formula.number(with(limit)).unwrap_or_else(|error| panic!("{} at {limit}: {error}", F::NAME));
            assert_eq!(column(formula, with(limit)).to_bits(), at.to_bits(), "{} at {limit}", F::NAME);
        }
        for beyond in [bound.least.next_down(), bound.greatest.next_up()] {
            let error = formula.number(with(beyond)).expect_err("it is out of range");
            assert_eq!(error.code, Code::OutOfRange, "{} at {beyond}", F::NAME);
            assert_eq!(error.parameter, bound.name, "{}", F::NAME);
            assert!(error.to_string().contains(&bound.range()), "{}: {error}", F::NAME);
            assert!(column(formula, with(beyond)).is_nan(), "{} at {beyond}", F::NAME);
        }
    }
}

fn column<F: Formula<IN>, const IN: usize>(formula: &F, row: [f64; IN]) -> f64 {
    let mut result = [0.0];
    formula
        .fill(std::array::from_fn(|index| std::slice::from_ref(&row[index])), &mut result)
        .expect("one row each");
    result[0]
}

/// Asserts that all five readings give the same bits, that the derivatives are those of the values, and that the worked
/// solution ends in the result.
pub fn all_readings_agree<F: Formula<IN>, const IN: usize>(formula: &F, row: [f64; IN]) {
    let value = formula.number(row).unwrap_or_else(|error| panic!("{} of {row:?}: {error}", F::NAME));
    let same = |other: f64, reading: &str| {
        assert_eq!(other.to_bits(), value.to_bits(), "{} of {row:?}, {reading}: {other} {value}", F::NAME);
    };
    same(column(formula, row), "column");
    same(formula.marked(row, &Script::new()), "marked");
    let (worked, solution) = formula.working(row).expect("it has a number");
    same(worked, "working");
    let steps = solution.steps(overwater::scalar::Notation::Text);
    if let Some(last) = steps.last() {
        assert_eq!(last.symbol.unit, formula.output().unit, "{}", F::NAME);
        assert!((last.value - value).abs() <= 1e-12 * value.abs(), "{} ends in {}", F::NAME, last.symbol.id);
    }
    let (dual, slopes) = formula.sensitivities(row).expect("it has a number");
    same(dual, "sensitivities");
    for (index, bound) in formula.inputs().into_iter().enumerate() {
        let step = 1e-5 * (bound.greatest - bound.least);
        let at = |shift: f64| {
            let mut moved = row;
            moved[index] += shift;
            formula.evaluate(moved)
        };
        let slope = (at(step) - at(-step)) / (2.0 * step);
        let scale = slopes[index].abs().max(1e-6 * value.abs() / (bound.greatest - bound.least));
        assert!((slope - slopes[index]).abs() <= 1e-4 * scale, "{}: {slope} {}", F::NAME, slopes[index]);
    }
}
