//! The exponential and the logarithm against values computed to 60 digits.

use overwater::scalar::{LANES, Lanes, Scalar};
use overwater_testkit::compare::assert_same_bits;
use overwater_testkit::data::Table;

/// How far `got` lies from the true value, in steps of the double-precision numbers around it.
fn error_in_ulp(got: f64, nearest: f64, residual_ulp: f64) -> f64 {
    let ulp = nearest.abs().next_up() - nearest.abs();
    (got - nearest) / ulp - residual_ulp
}

fn each_argument(file: &str, least_rows: usize, check: impl Fn(&str, f64, f64, f64)) {
    let table = Table::read(format!("{}/data/{file}", env!("CARGO_MANIFEST_DIR")));
    assert!(table.len() >= least_rows, "{file} has lost rows");
    for row in table.rows() {
        let (argument, nearest, residual) =
            (row.number("argument"), row.number("nearest"), row.number("residual_ulp"));
        assert!(residual.abs() <= 0.5, "{}: not the nearest number", row.place());
        check(&row.place(), argument, nearest, residual);
    }
}

#[test]
fn exponential_is_within_one_ulp_of_the_true_value() {
    each_argument("exp.csv", 2000, |place, argument, nearest, residual| {
        let got = Scalar::exp(argument);
        let error = error_in_ulp(got, nearest, residual);
        assert!(error.abs() < 1.0, "{place}: exp({argument:?}) = {got:?} is {error} ulp off");
    });
}

#[test]
fn logarithm_is_within_one_ulp_of_the_true_value() {
    each_argument("ln.csv", 2000, |place, argument, nearest, residual| {
        let got = Scalar::ln(argument);
        let error = error_in_ulp(got, nearest, residual);
        assert!(error.abs() < 1.0, "{place}: ln({argument:?}) = {got:?} is {error} ulp off");
    });
}

#[test]
fn lanes_carry_the_bits_of_the_number() {
    each_argument("exp.csv", 2000, |place, argument, _, _| {
        let lanes = Scalar::exp(Lanes([argument; LANES]));
        assert_same_bits(place, lanes.0[LANES - 1], Scalar::exp(argument));
    });
    each_argument("ln.csv", 2000, |place, argument, _, _| {
        let lanes = Scalar::ln(Lanes([argument; LANES]));
        assert_same_bits(place, lanes.0[LANES - 1], Scalar::ln(argument));
    });
}

#[test]
fn the_measure_of_error_counts_steps() {
    // One step above a nearest number that lies a quarter of a step above the true value: 1.25 steps.
    assert_eq!(error_in_ulp(8.0_f64.next_up(), 8.0, -0.25), 1.25);
    assert_eq!(error_in_ulp(-8.0_f64.next_up(), -8.0, 0.25), -1.25);
    assert_eq!(error_in_ulp(8.0, 8.0, 0.5), -0.5);
}
