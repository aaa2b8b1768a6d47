//! Fits against certified values of the NIST Statistical Reference Datasets, against general-purpose libraries, and what
//! must hold for any readings.

use overwater::Result;
use overwater::readings::arrhenius::{WorstLines, arrhenius};
use overwater::readings::bootstrap::{Draw, Plan, bootstrap};
use overwater::readings::curve::{FirstOrder, Known, first_order};
use overwater::readings::decay::exponential;
use overwater::readings::half_life::{Between, CONSTANT_WITHIN, half_lives};
use overwater::readings::line::{Line, StraightLine, lines, polynomial, with_intercept};
use overwater::readings::michaelis_menten::saturation;
use overwater::readings::model::{Fit, Method, Model, Parameter, fit};
use overwater::readings::order::{AnyOrder, from_curve};
use overwater::readings::series::{Demands, Names, Series};
use overwater::readings::{arrhenius, rate_law};
use overwater::reference::constants::{MOLAR_GAS_2019, MOLAR_GAS_CLASSROOM};
use overwater::scalar::Scalar;
use overwater::units::{Dimensioned, Temperature};
use overwater_testkit::compare::{Tolerance, assert_close, assert_prints};
use overwater_testkit::data::{Row, Table};
use proptest::prelude::*;

const NAMES: Names = Names { x: "x", y: "y" };

fn table(name: &str) -> Table {
    Table::read(format!("{}/data/{name}.csv", env!("CARGO_MANIFEST_DIR")))
}

fn rows<'t>(table: &'t Table, column: &'static str, value: &'t str) -> Vec<Row<'t>> {
    let found: Vec<Row<'t>> = table.rows().filter(|row| row.text(column) == value).collect();
    assert!(!found.is_empty(), "no rows of {value}");
    found
}

fn readings(table: &Table, column: &'static str, set: &str) -> (Vec<f64>, Vec<f64>) {
    rows(table, column, set).iter().map(|row| (row.number("x"), row.number("y"))).unzip()
}

fn series<'a>(x: &'a [f64], y: &'a [f64]) -> Series<'a> {
    Series::new(NAMES, x, y, &Demands::rows(2)).unwrap()
}

/// How many digits agree: -log10 of the relative difference, at most 15.
fn digits(got: f64, certified: f64) -> f64 {
    (-((got - certified) / certified).abs().log10()).min(15.0)
}

#[track_caller]
fn assert_digits(path: &str, got: f64, certified: f64, least: f64) {
    let agree = digits(got, certified);
    println!("{path}: {agree:.1} digits");
    assert!(agree >= least, "{path}: got {got:e}, certified {certified:e}: {agree:.1} digits of {least}");
}

fn certified_line(set: &str, line: &Line, digits: f64) {
    let certified = table("nist_linear_certified");
    let mut compared = 0;
    for row in rows(&certified, "dataset", set) {
        let name = row.text("name");
        let (value, error) = match name {
            "b0" => (line.intercept, line.intercept_error),
            "b1" => (line.slope, line.slope_error),
            "residual_sd" => (line.residual_sd, f64::NAN),
            "r_squared" => (line.r_squared, f64::NAN),
            "degrees_of_freedom" => (line.degrees_of_freedom as f64, f64::NAN),
            other => panic!("{other}"),
        };
        assert_digits(&format!("{set} {name}"), value, row.number("certified"), digits);
        if let Some(expected) = row.optional("standard_deviation") {
            assert_digits(&format!("{set} error of {name}"), error, expected, digits);
        }
        compared += 1;
    }
    assert!(compared >= 4, "{set}");
}

/// NIST Statistical Reference Datasets, linear regression: Norris to 12 digits, NoInt1 and NoInt2 to 14.
#[test]
fn certified_straight_lines() {
    let data = table("nist_linear_data");
    let (x, y) = readings(&data, "dataset", "Norris");
    assert_eq!(x.len(), 36);
    certified_line("Norris", &lines(&series(&x, &y)).unwrap().with_intercept, 12.0);
    for (set, count) in [("NoInt1", 11), ("NoInt2", 3)] {
        let (x, y) = readings(&data, "dataset", set);
        assert_eq!(x.len(), count);
        certified_line(set, &lines(&series(&x, &y)).unwrap().through_origin, 14.0);
    }
}

/// NIST Statistical Reference Datasets, linear regression: Pontius (degree 2) to 11 digits and Filip (degree 10)
/// to 13.
#[test]
fn certified_polynomials() {
    let (data, certified) = (table("nist_linear_data"), table("nist_linear_certified"));
    for (set, degree, count, least) in [("Pontius", 2, 40, 11.0), ("Filip", 10, 82, 13.0)] {
        let (x, y) = readings(&data, "dataset", set);
        assert_eq!(x.len(), count);
        let found = polynomial(&series(&x, &y), degree).unwrap();
        let mut coefficients = 0;
        for row in rows(&certified, "dataset", set) {
            let (name, expected) = (row.text("name"), row.number("certified"));
            let path = format!("{set} {name}");
            match name {
                "residual_sd" => assert_digits(&path, found.residual_sd, expected, least),
                "r_squared" => assert_digits(&path, found.r_squared, expected, least),
                "degrees_of_freedom" => assert_eq!(found.degrees_of_freedom as f64, expected),
                power => {
                    let power: usize = power.strip_prefix('b').unwrap().parse().unwrap();
                    assert_digits(&path, found.coefficients[power], expected, least);
                    let error = found.covariance.standard_error(power);
                    assert_digits(
                        &format!("{set} error of {name}"),
                        error,
                        row.number("standard_deviation"),
                        least,
                    );
                    coefficients += 1;
                }
            }
        }
        assert_eq!(coefficients, degree + 1);
    }
}

/// b1 (1 - exp(-b2 x)).
struct Growth;
impl Model<2> for Growth {
    const NAMES: [&'static str; 2] = ["b1", "b2"];
    fn value<S: Scalar>(&self, x: S, [a, b]: [S; 2]) -> S {
        a - a * (-(b * x)).exp()
    }
}

/// b1 (x² + b2 x)/(x² + b3 x + b4).
struct Rational;
impl Model<4> for Rational {
    const NAMES: [&'static str; 4] = ["b1", "b2", "b3", "b4"];
    fn value<S: Scalar>(&self, x: S, [a, b, c, d]: [S; 4]) -> S {
        a * (x * x + b * x) / (x * x + c * x + d)
    }
}

/// exp(-b1 x)/(b2 + b3 x).
struct Ultrasound;
impl Model<3> for Ultrasound {
    const NAMES: [&'static str; 3] = ["b1", "b2", "b3"];
    fn value<S: Scalar>(&self, x: S, [a, b, c]: [S; 3]) -> S {
        (-(a * x)).exp() / (b + c * x)
    }
}

fn certified_curve<M: Model<P>, const P: usize>(model: &M, set: &str, least: f64) -> Vec<Method> {
    let (data, certified) = (table("nist_nonlinear_data"), table("nist_nonlinear_certified"));
    let (x, y) = readings(&data, "dataset", set);
    let certified = rows(&certified, "dataset", set);
    let numbers: Vec<&Row<'_>> = certified.iter().filter(|row| row.text("name").starts_with('b')).collect();
    assert_eq!(numbers.len(), P);
    let mut methods = Vec::new();
    for start in ["start_1", "start_2"] {
        let from: Vec<Parameter> = numbers.iter().map(|row| Parameter::Free(row.number(start))).collect();
        let found: Fit<P> = fit(model, &series(&x, &y), from.try_into().unwrap()).unwrap();
        println!("{set} {start}: {:?}", found.convergence);
        for (index, row) in numbers.iter().enumerate() {
            let path = format!("{set} {start} {}", row.text("name"));
            assert_digits(&path, found.parameters[index], row.number("certified"), least);
            let expected = row.number("standard_deviation");
            assert_digits(&format!("{path}, error"), found.standard_errors[index], expected, least);
        }
        for row in certified.iter().filter(|row| !row.text("name").starts_with('b')) {
            let got = match row.text("name") {
                "sum_of_squares" => found.sum_of_squares,
                "residual_sd" => found.residual_sd,
                "degrees_of_freedom" => found.degrees_of_freedom as f64,
                other => panic!("{other}"),
            };
            assert_digits(
                &format!("{set} {start} {}", row.text("name")),
                got,
                row.number("certified"),
                least,
            );
        }
        assert!(found.convergence.relative_offset < 1e-9);
        methods.push(found.convergence.method);
    }
    methods
}

/// NIST Statistical Reference Datasets, nonlinear regression: Misra1a, BoxBOD, MGH09 and Chwirut2, from both starting
/// points, to 10 of the 11 certified digits.
#[test]
fn certified_curves() {
    let mut methods = certified_curve(&Growth, "Misra1a", 10.0);
    methods.extend(certified_curve(&Growth, "BoxBOD", 10.0));
    methods.extend(certified_curve(&Rational, "MGH09", 10.0));
    methods.extend(certified_curve(&Ultrasound, "Chwirut2", 10.0));
    // Both ways of the search have been gone.
    assert!(
        methods.contains(&Method::GaussNewton) && methods.contains(&Method::LevenbergMarquardt),
        "{methods:?}"
    );
}

/// The growth of the first order with its own starting point: Misra1a and BoxBOD once more.
#[test]
fn certified_growth_from_its_own_start() {
    let (data, certified) = (table("nist_nonlinear_data"), table("nist_nonlinear_certified"));
    for set in ["Misra1a", "BoxBOD"] {
        let (x, y) = readings(&data, "dataset", set);
        let growth = first_order(&series(&x, &y), Known::Fitted, Known::Value(0.0)).unwrap();
        let expected = rows(&certified, "dataset", set);
        for index in [0, 1] {
            assert_eq!(expected[index].text("name"), ["b1", "b2"][index]);
            assert_digits(set, growth.fit.parameters[index], expected[index].number("certified"), 10.0);
            let error = expected[index].number("standard_deviation");
            assert_digits(set, growth.fit.standard_errors[index], error, 10.0);
        }
    }
}

/// Estimates and errors by name.
type Named = Vec<(&'static str, f64, f64)>;

fn named<M: Model<P>, const P: usize>(_: &M, fit: &Fit<P>) -> Named {
    (0..P).map(|index| (M::NAMES[index], fit.parameters[index], fit.standard_errors[index])).collect()
}

fn line_named(line: &Line) -> Named {
    vec![("b0", line.intercept, line.intercept_error), ("b1", line.slope, line.slope_error)]
}

fn our_fit(case: &str, series: &Series<'_>) -> Result<Named> {
    let growth = |end, start| first_order(series, end, start).map(|growth| named(&FirstOrder, &growth.fit));
    Ok(match case {
        "growth" | "growth_weighted" => growth(Known::Fitted, Known::Fitted)?,
        "growth_from_zero" => growth(Known::Fitted, Known::Value(0.0))?,
        "growth_known_end" => growth(Known::Value(69.0), Known::Fitted)?,
        "decay" => {
            named(&overwater::readings::decay::Exponentially, &exponential(series, Known::Fitted)?.fit)
        }
        "saturation" => {
            named(&overwater::readings::michaelis_menten::MichaelisMenten, &saturation(series)?.fit)
        }
        "order" => named(&AnyOrder, &from_curve(series)?.fitted?),
        "line" | "line_weighted" => line_named(&with_intercept(series)?),
        "parabola" => {
            let found = polynomial(series, 2)?;
            let names = ["b0", "b1", "b2"];
            (0..3).map(|i| (names[i], found.coefficients[i], found.covariance.standard_error(i))).collect()
        }
        "arrhenius" => line_named(&arrhenius(series, &MOLAR_GAS_2019, WorstLines::Scatter)?.line),
        other => panic!("{other}"),
    })
}

/// SciPy and NumPy, see the head of the file: estimates to 1e-8, standard errors to 1e-6.
#[test]
fn general_purpose_libraries_agree() {
    let (data, reference) = (table("fits_readings"), table("fits_reference"));
    let mut compared = 0;
    for row in reference.rows() {
        let set = rows(&data, "set", row.text("set"));
        let (x, y): (Vec<f64>, Vec<f64>) = set.iter().map(|r| (r.number("x"), r.number("y"))).unzip();
        let weights: Option<Vec<f64>> = set.iter().map(|r| r.optional("weight")).collect();
        let mut readings = series(&x, &y);
        if let Some(weights) = &weights {
            readings = readings.weighted(weights).unwrap();
        }
        let found = our_fit(row.text("case"), &readings).unwrap();
        let name = row.text("name");
        let (_, estimate, error) = found.iter().find(|number| number.0 == name).unwrap();
        let path = format!("{} {name}", row.text("case"));
        assert_close(&path, *estimate, row.number("estimate"), Tolerance::Relative(1e-8));
        assert_close(
            &format!("{path}, error"),
            *error,
            row.number("standard_error"),
            Tolerance::Relative(1e-6),
        );
        compared += 1;
    }
    assert_eq!(compared, reference.len());
    assert!(compared >= 27, "{compared}");
}

/// Published worked examples, each to its printed figures.
#[test]
fn worked_examples_of_rates() {
    // OpenStax, Chemistry 2e, section 12.4: peroxide at 40 degC, ln c against t.
    let hours = [0.0, 6.0, 12.0, 18.0, 24.0];
    let c = [1.0, 0.5, 0.25, 0.125, 0.0625];
    let found = from_curve(&series(&hours, &c)).unwrap();
    assert_prints("k by ln c against t", found.straightened[1].rate_constant, "0.116");
    assert_eq!(found.best(), Some(1));
    let k = exponential(&series(&hours, &c), Known::Value(0.0)).unwrap().rate_constant();
    assert_prints("k by the curve", k, "0.116");
    let halves = half_lives(&series(&hours, &c), Between::Straight, CONSTANT_WITHIN).unwrap();
    assert_eq!((halves.mean, halves.constant), (6.0, Some(true)));
    // OpenStax, Chemistry 2e, section 12.1: oxygen forms at half the rate at which peroxide disappears.
    assert_prints("rate of oxygen", rate_law::rate_of_other(3.20e-2, 2, 1), "0.0160");
    // OpenStax, Chemistry 2e, section 12.4: 80.0 % with k = 9.2e-3 per second.
    assert_prints("time to 80 %", rate_law::time_to(0.8, 9.2e-3), "1.7e2");
    // OCR, A Level Chemistry A, mark scheme of "How fast": half-life 106 min at 5e-3 mol/dm3.
    assert_prints("initial rate", rate_law::half_life(106.0) * 5e-3, "3.27e-5");
}

#[test]
fn worked_examples_of_activation_energies() {
    // IB Diploma Chemistry, May 2013, HL paper 2 TZ2, question 2: slope -6.20e3 K, R = 8.31; accepted 49.5 to 53.5.
    let energy = |slope: f64| arrhenius::from_slope(Temperature::new(slope), &MOLAR_GAS_CLASSROOM).si() / 1e3;
    assert_prints("slope", energy(-6.20e3), "51.5");
    assert_prints("accepted from", energy(-5.96e3), "49.5");
    assert_prints("accepted to", energy(-6.44e3), "53.5");
    // OpenStax, Chemistry 2e, section 12.5: two points.
    let [low, high] = [650.0, 700.0].map(Temperature::new);
    let two = arrhenius::from_two_points(1.66, low, 7.39, high, &MOLAR_GAS_2019).si() / 1e3;
    assert_prints("two points", two, "1.1e2");
    // The same section, five points. The book rounds 1/T before it takes a difference and prints 180; least squares
    // gives 185.308, within one unit of the last printed figure.
    let temperature = [555.0, 575.0, 645.0, 700.0, 781.0];
    let k = [3.52e-7, 1.22e-6, 8.59e-5, 1.16e-3, 3.95e-2];
    let found = arrhenius(&series(&temperature, &k), &MOLAR_GAS_2019, WorstLines::Scatter).unwrap();
    assert_close("five points", found.activation_energy_kj_per_mol, 180.0, Tolerance::Units(1.0, "1.8e2"));
    assert_prints("five points, unrounded", found.activation_energy_kj_per_mol, "185.308");
}

/// A growth with scatter, and the order in which its rows are shuffled.
fn growth() -> impl Strategy<Value = (Vec<f64>, Vec<f64>, Vec<usize>)> {
    let scatter = prop::collection::vec(-0.5..0.5_f64, 24);
    let order = Just((0..24).collect::<Vec<usize>>()).prop_shuffle();
    (40.0..90.0_f64, 0.015..0.04_f64, scatter, order).prop_map(|(last, k, scatter, order)| {
        let x: Vec<f64> = (0..24).map(|row| f64::from(row) * 8.0).collect();
        let y = x.iter().zip(&scatter).map(|(x, e)| last * (1.0 - (-k * x).exp()) + e).collect();
        (x, y, order)
    })
}

fn near(got: f64, expected: f64, share: f64) -> bool {
    (got - expected).abs() <= share * expected.abs()
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(64))]

    #[test]
    fn the_order_of_rows_changes_nothing((x, y, order) in growth()) {
        let (u, v): (Vec<f64>, Vec<f64>) = order.iter().map(|row| (x[*row], y[*row])).unzip();
        let one = first_order(&series(&x, &y), Known::Fitted, Known::Fitted).unwrap().fit;
        let other = first_order(&series(&u, &v), Known::Fitted, Known::Fitted).unwrap().fit;
        for index in 0..2 {
            prop_assert!(near(other.parameters[index], one.parameters[index], 1e-10));
            prop_assert!(near(other.standard_errors[index], one.standard_errors[index], 1e-8));
        }
        prop_assert!((other.parameters[2] - one.parameters[2]).abs() < 1e-8 * one.standard_errors[2]);
        let one = with_intercept(&series(&x, &y)).unwrap();
        let other = with_intercept(&series(&u, &v)).unwrap();
        prop_assert!(near(other.slope, one.slope, 1e-12) && near(other.slope_error, one.slope_error, 1e-12));
    }

    #[test]
    fn other_units_give_the_same_in_other_units(
        (x, y, _) in growth(), minutes in 0.001..100.0_f64, litres in 0.0001..1000.0_f64
    ) {
        let u: Vec<f64> = x.iter().map(|x| x * minutes).collect();
        let v: Vec<f64> = y.iter().map(|y| y * litres).collect();
        let one = first_order(&series(&x, &y), Known::Fitted, Known::Fitted).unwrap().fit;
        let other = first_order(&series(&u, &v), Known::Fitted, Known::Fitted).unwrap().fit;
        for (index, scale) in [(0, litres), (1, 1.0 / minutes)] {
            prop_assert!(near(other.parameters[index], one.parameters[index] * scale, 1e-10));
            prop_assert!(near(other.standard_errors[index], one.standard_errors[index] * scale, 1e-8));
        }
        prop_assert!((other.parameters[2] - one.parameters[2] * minutes).abs() < 1e-8 * other.standard_errors[2]);
        let one = lines(&series(&x, &y)).unwrap();
        let other = lines(&series(&u, &v)).unwrap();
        prop_assert!(near(other.with_intercept.slope, one.with_intercept.slope * litres / minutes, 1e-12));
        prop_assert!(near(other.through_origin.slope, one.through_origin.slope * litres / minutes, 1e-12));
        prop_assert!(near(other.with_intercept.r_squared, one.with_intercept.r_squared, 1e-12));
        prop_assert_eq!(other.warning.is_some(), one.warning.is_some());
    }

    #[test]
    fn exact_lines_and_orders_are_recovered(
        slope in 0.5..50.0_f64, intercept in -20.0..20.0_f64, order in 0.3..2.5_f64, share in 0.002..0.02_f64
    ) {
        let x: Vec<f64> = (0..12).map(|row| f64::from(row) * 5.0).collect();
        let y: Vec<f64> = x.iter().map(|x| intercept + slope * x).collect();
        let line = with_intercept(&series(&x, &y)).unwrap();
        prop_assert!(near(line.slope, slope, 1e-13) && (line.intercept - intercept).abs() < 1e-11);
        let c: Vec<f64> = x.iter().map(|t| AnyOrder.value(*t, [0.8, share, order])).collect();
        if c.iter().all(|c| *c > 0.0) {
            let found = from_curve(&series(&x, &c)).unwrap().order().unwrap().0;
            prop_assert!((found - order).abs() < 1e-6, "{} {}", found, order);
        }
    }

    #[test]
    fn one_thread_and_two_draw_the_same((x, y, _) in growth(), seed in any::<u64>()) {
        let readings = series(&x, &y);
        let fitted = first_order(&readings, Known::Fitted, Known::Value(0.0)).unwrap().fit;
        for draw in [Draw::Residuals, Draw::Pairs] {
            let plan = Plan { draw, replicates: 50, seed, ..Plan::default() };
            let one = bootstrap(&FirstOrder, &readings, &fitted, &plan).unwrap();
            let two = bootstrap(&FirstOrder, &readings, &fitted, &Plan { threads: 2, ..plan }).unwrap();
            prop_assert_eq!(&one.replicates, &two.replicates);
            prop_assert_eq!(one.intervals, two.intervals);
        }
    }
}

/// A bootstrap of the Arrhenius line, through the columns that the line is drawn through.
#[test]
fn an_activation_energy_has_a_bootstrap_interval() {
    let data = table("fits_readings");
    let (temperature, k) = readings(&data, "set", "arrhenius");
    let readings = series(&temperature, &k);
    let found = arrhenius(&readings, &MOLAR_GAS_2019, WorstLines::Scatter).unwrap();
    let (x, y) = arrhenius::straightened(&readings).unwrap();
    let line = series(&x, &y);
    let fitted = fit(&StraightLine, &line, [Parameter::Free(0.0), Parameter::Free(0.0)]).unwrap();
    assert_close("slope", fitted.parameters[1], found.line.slope, Tolerance::Relative(1e-9));
    let drawn =
        bootstrap(&StraightLine, &line, &fitted, &Plan { replicates: 4000, ..Plan::default() }).unwrap();
    let interval = drawn.interval_of(|numbers| -numbers[1] * MOLAR_GAS_2019.value / 1e3);
    let energy = found.activation_energy_kj_per_mol;
    assert!(interval.lower < energy && energy < interval.upper);
    assert!((interval.standard_deviation / found.activation_energy_error - 1.0).abs() < 0.1, "{interval:?}");
}
