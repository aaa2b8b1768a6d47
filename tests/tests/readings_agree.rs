//! Every formula of the core, read in each of the five ways, says the same.
//!
//! Number, lanes, the real part of the sensitivities, the working and an unmarked script carry out the same
//! floating-point operations, so they are compared by their bits. Only two comparisons have a tolerance: the exact
//! derivative against a difference quotient, and a step that is written down in its school unit and read back.

use overwater::Code;
use overwater::apparatus::purity::MeanOxygenFraction;
use overwater::burn::air::RoomConcentration;
use overwater::gas::barometer::StationPressure;
use overwater::gas::collected::{DryAmount, DryAmountWithVapour};
use overwater::gas::ideal::IdealMolarVolume;
use overwater::peroxide::assay::{AssayedConcentration, ExpectedTitre};
use overwater::peroxide::dilution::StockVolume;
use overwater::peroxide::heat::AdiabaticRise;
use overwater::peroxide::strength::ConcentrationFromVolumes;
use overwater::scalar::{Formula, Notation, Script, Swap};
use overwater::water::density::WaterDensity;
use overwater::water::vapour::{SaturationTemperature, VapourPressure};
use overwater_testkit::compare::{Tolerance, assert_close, assert_same_bits};
use overwater_testkit::strategies::inputs;
use proptest::collection::vec;
use proptest::prelude::*;
use proptest::test_runner::{Config, TestRunner};

/// The step of a difference quotient for each input, and the size of the largest term that is rounded on the way.
type Smooth<const IN: usize> = ([f64; IN], f64);

/// What the checks must know about a formula beside the formula itself.
struct Case<F, const IN: usize> {
    formula: F,
    /// Inputs within their bounds, such that each of them by itself may be moved to either of its bounds and the
    /// formula still has a result.
    typical: [f64; IN],
    /// For inputs as given: the step of a difference quotient for each, small against the length over which the
    /// formula bends, and the size of the largest term that is rounded on the way, in the unit of the result. No
    /// steps where the formula is cut off so near by that a difference quotient would reach over the edge.
    smooth: fn([f64; IN]) -> Option<Smooth<IN>>,
}

fn run<const IN: usize, F: Formula<IN>>(formula: &F, check: impl Fn([f64; IN])) {
    let result = TestRunner::new(Config { failure_persistence: None, ..Config::default() }).run(
        &inputs(formula),
        |drawn| {
            check(drawn);
            Ok(())
        },
    );
    if let Err(error) = result {
        panic!("{}: {error}", F::NAME);
    }
}

/// Number, sensitivities, working and an empty script, over the whole range.
fn readings_have_the_same_bits<const IN: usize, F: Formula<IN>>(case: &Case<F, IN>) {
    let formula = &case.formula;
    run(formula, |drawn| {
        let empty = Script::new();
        let marked = formula.marked(drawn, &empty);
        let Ok(number) = formula.number(drawn) else {
            assert!(marked.is_nan(), "{}: refused, yet marked as {marked} for {drawn:?}", F::NAME);
            assert_eq!(formula.number(drawn).err(), formula.sensitivities(drawn).err());
            assert_eq!(formula.number(drawn).err(), formula.working(drawn).map(|_| ()).err());
            return;
        };
        assert_same_bits(&format!("{} marked for {drawn:?}", F::NAME), marked, number);
        let (real, _) = formula.sensitivities(drawn).unwrap();
        assert_same_bits(&format!("{} sensitivities for {drawn:?}", F::NAME), real, number);
        let (worked, solution) = formula.working(drawn).unwrap();
        assert_same_bits(&format!("{} working for {drawn:?}", F::NAME), worked, number);
        let steps = solution.steps(Notation::Text);
        let last = steps.last().unwrap();
        assert_eq!(last.symbol.id, formula.output().id, "{}: the last step is the result", F::NAME);
        assert_same_bits(&format!("{} last step for {drawn:?}", F::NAME), last.value, number);
    });
}

/// A column gives for each row what the number gives; a row that is not a number or out of range spoils only itself.
fn columns_have_the_bits_of_the_number<const IN: usize, F: Formula<IN>>(case: &Case<F, IN>) {
    const LONGEST: usize = 17;
    let formula = &case.formula;
    let rows = vec(inputs(formula), LONGEST);
    let spoiling = (0..LONGEST, 0..LONGEST, 0..IN, 0..IN, any::<bool>());
    let result = TestRunner::new(Config { failure_persistence: None, ..Config::default() }).run(
        &(rows, spoiling),
        |(mut rows, (missing, outside, column, other_column, above))| {
            let bound = formula.inputs()[other_column];
            rows[outside][other_column] =
                if above { bound.greatest.next_up() } else { bound.least.next_down() };
            rows[missing][column] = f64::NAN;
            for length in [0, 1, 7, 8, 9, LONGEST] {
                let columns: [Vec<f64>; IN] =
                    std::array::from_fn(|input| rows[..length].iter().map(|row| row[input]).collect());
                let mut results = vec![-1.0; length];
                formula.fill(columns.each_ref().map(Vec::as_slice), &mut results).unwrap();
                for (index, (row, result)) in rows.iter().zip(&results).enumerate() {
                    let number = formula.number(*row).unwrap_or(f64::NAN);
                    assert!(number.is_nan() || (index != missing && index != outside));
                    assert_same_bits(
                        &format!("{} row {index} of {length}, {row:?}", F::NAME),
                        *result,
                        number,
                    );
                }
            }
            Ok(())
        },
    );
    if let Err(error) = result {
        panic!("{}: {error}", F::NAME);
    }
}

/// Columns of different lengths are refused, and nothing is written.
fn columns_of_different_lengths_are_refused<const IN: usize, F: Formula<IN>>(case: &Case<F, IN>) {
    for odd in 0..IN {
        for length in [0, 2, 4] {
            let columns: [Vec<f64>; IN] =
                std::array::from_fn(|input| vec![case.typical[input]; if input == odd { length } else { 3 }]);
            let mut results = [-1.0; 3];
            let error = case.formula.fill(columns.each_ref().map(Vec::as_slice), &mut results).unwrap_err();
            assert_eq!(error.code, Code::Contradiction, "{}", F::NAME);
            assert_eq!(error.parameter, case.formula.inputs()[odd].name, "{}", F::NAME);
            assert_eq!(results, [-1.0; 3], "{}: something was written", F::NAME);
        }
    }
}

/// At each bound there is a result; one step beyond it there is an error from the number and NaN in a column.
fn bounds_are_closed<const IN: usize, F: Formula<IN>>(case: &Case<F, IN>) {
    let formula = &case.formula;
    let filled = |row: [f64; IN]| {
        let mut result = [-1.0];
        formula.fill(row.each_ref().map(std::slice::from_ref), &mut result).unwrap();
        result[0]
    };
    for (input, bound) in formula.inputs().into_iter().enumerate() {
        for (end, beyond) in
            [(bound.least, bound.least.next_down()), (bound.greatest, bound.greatest.next_up())]
        {
            let mut row = case.typical;
            row[input] = end;
            let number =
                formula.number(row).unwrap_or_else(|error| panic!("{} at {row:?}: {error}", F::NAME));
            assert_same_bits(&format!("{} at {row:?}", F::NAME), filled(row), number);
            row[input] = beyond;
            let error = formula.number(row).unwrap_err();
            assert_eq!(
                (error.code, error.parameter.as_ref()),
                (Code::OutOfRange, bound.name),
                "{} at {row:?}",
                F::NAME
            );
            assert!(formula.sensitivities(row).is_err() && formula.working(row).is_err());
            assert!(filled(row).is_nan(), "{} at {row:?}: {}", F::NAME, filled(row));
        }
        for bad in [f64::NAN, f64::INFINITY, f64::NEG_INFINITY] {
            let mut row = case.typical;
            row[input] = bad;
            assert_eq!(formula.number(row).unwrap_err().code, Code::NotANumber, "{} at {row:?}", F::NAME);
            assert!(filled(row).is_nan(), "{} at {row:?}", F::NAME);
        }
    }
}

/// The exact derivative against (8 (f(x+h) - f(x-h)) - (f(x+2h) - f(x-2h))) / 12h, the central difference freed of its
/// first error term.
///
/// Its own error is that of rounding, 1e-15 of the largest term over h, and that of the next term of the series, h^4/30
/// times the fifth derivative. The steps are 1/1000 of the length over which the formula bends (less for the steep vapour
/// pressure), so that the second is below 1e-12 of the derivative's own scale. Allowed is 1e-9 of the derivative and
/// 1e-13 of the largest term over h.
fn derivatives_agree_with_differences<const IN: usize, F: Formula<IN>>(case: &Case<F, IN>) {
    let formula = &case.formula;
    let compared = std::cell::Cell::new(0_u32);
    run(formula, |drawn| {
        let Some((steps, largest)) = (case.smooth)(drawn) else {
            return;
        };
        compared.set(compared.get() + 1);
        let (_, derivatives) = formula.sensitivities(drawn).unwrap();
        for (input, (step, exact)) in steps.into_iter().zip(derivatives).enumerate() {
            let at = |times: f64| {
                let mut moved = drawn;
                moved[input] += times * step;
                (moved[input], formula.evaluate(moved))
            };
            let ((right, above), (left, below)) = (at(1.0), at(-1.0));
            let ((far_right, far_above), (far_left, far_below)) = (at(2.0), at(-2.0));
            let near = (above - below) / (right - left);
            let far = (far_above - far_below) / (far_right - far_left);
            let quotient = (4.0 * near - far) / 3.0;
            let allowed = 1e-9 * exact.abs() + 1e-13 * largest / step;
            let path = format!("{} derivative by input {input} at {drawn:?}", F::NAME);
            assert_close(&path, exact, quotient, Tolerance::Absolute(allowed));
        }
    });
    assert!(compared.get() >= 100, "{}: only {} points were compared", F::NAME, compared.get());
}

/// Replacing a step by the value that it has changes nothing: not a bit where the change is made in SI units; where
/// the value goes through its school unit and back, two roundings (of 273.15 K and more for degrees Celsius).
fn a_step_swapped_for_itself_changes_nothing<const IN: usize, F: Formula<IN>>(case: &Case<F, IN>) {
    let formula = &case.formula;
    run(formula, |drawn| {
        let (Some((_, largest)), Ok(number)) = ((case.smooth)(drawn), formula.number(drawn)) else {
            return;
        };
        let seen = Script::new();
        formula.marked(drawn, &seen);
        for (symbol, value) in seen.steps() {
            let same = Script::new().swap(symbol.id, Swap::Slip(|right| right));
            let path = format!("{} with {} as it is, for {drawn:?}", F::NAME, symbol.id);
            assert_same_bits(&path, formula.marked(drawn, &same), number);
            let own = Script::new().swap(symbol.id, Swap::Own(value));
            let allowed = Tolerance::Absolute(32.0 * f64::EPSILON * largest);
            assert_close(&path, formula.marked(drawn, &own), number, allowed);
        }
    });
}

/// The working is short enough to be written down.
fn the_working_fits_on_a_page<const IN: usize, F: Formula<IN>>(case: &Case<F, IN>) {
    for notation in [Notation::Text, Notation::Latex] {
        for step in case.formula.working(case.typical).unwrap().1.steps(notation) {
            let longest = step.relation.len().max(step.numbers.len());
            assert!(longest > 0 && longest < 4000, "{} {}: {longest} bytes", F::NAME, step.symbol.id);
        }
    }
}

/// Every named input and step matters: another value in its place changes the result, if only in the tenth figure where
/// the step is an estimate that later steps improve.
fn every_step_matters<const IN: usize, F: Formula<IN>>(case: &Case<F, IN>) {
    let formula = &case.formula;
    let number = formula.number(case.typical).unwrap();
    let seen = Script::new();
    formula.marked(case.typical, &seen);
    assert!(seen.steps().len() > IN, "{}: fewer steps than inputs and a result", F::NAME);
    for (symbol, value) in seen.steps() {
        let other = Script::new().swap(symbol.id, Swap::Own(value * 0.95));
        let changed = formula.marked(case.typical, &other);
        assert!((changed / number - 1.0).abs() > 1e-9, "{}: {} does not matter", F::NAME, symbol.id);
        if std::ptr::eq(symbol, formula.output()) {
            assert_close(symbol.id, changed, value * 0.95, Tolerance::Relative(1e-13));
        }
    }
}

macro_rules! formulas {
    ($($name:ident: $case:expr;)*) => {
        $(
            mod $name {
                use super::*;

                #[test]
                fn readings_have_the_same_bits() {
                    super::readings_have_the_same_bits(&$case);
                }

                #[test]
                fn columns_have_the_bits_of_the_number() {
                    super::columns_have_the_bits_of_the_number(&$case);
                }

                #[test]
                fn columns_of_different_lengths_are_refused() {
                    super::columns_of_different_lengths_are_refused(&$case);
                }

                #[test]
                fn bounds_are_closed() {
                    super::bounds_are_closed(&$case);
                }

                #[test]
                fn derivatives_agree_with_differences() {
                    super::derivatives_agree_with_differences(&$case);
                }

                #[test]
                fn a_step_swapped_for_itself_changes_nothing() {
                    super::a_step_swapped_for_itself_changes_nothing(&$case);
                }

                #[test]
                fn the_working_fits_on_a_page() {
                    super::the_working_fits_on_a_page(&$case);
                }

                #[test]
                fn every_step_matters() {
                    super::every_step_matters(&$case);
                }
            }
        )*
    };
}

/// p V / (R T) in mmol, without any correction: the largest term of a dry amount.
fn whole_amount([volume, temperature, pressure]: [f64; 3]) -> f64 {
    pressure * volume / (8.314 * (temperature + 273.15))
}

/// Products and quotients bend over the length of the input itself.
fn shares<const IN: usize>(drawn: [f64; IN]) -> [f64; IN] {
    drawn.map(|value| 1e-3 * value)
}

formulas! {
    vapour_pressure: Case {
        formula: VapourPressure::default(),
        typical: [21.0],
        smooth: |[t]| Some(([0.05], VapourPressure::default().evaluate([t]) * 20.0)),
    };
    supercooled_vapour_pressure: Case {
        formula: VapourPressure { supercooled: true },
        typical: [-5.0],
        smooth: |[t]| Some(([0.05], VapourPressure { supercooled: true }.evaluate([t]) * 20.0)),
    };
    saturation_temperature: Case {
        formula: SaturationTemperature,
        typical: [2.5],
        smooth: |[p]| Some(([1e-3 * p], 373.15)),
    };
    water_density: Case {
        formula: WaterDensity,
        typical: [21.0],
        smooth: |_| Some(([0.1], 4.0)),
    };
    molar_volume: Case {
        formula: IdealMolarVolume,
        typical: [21.0, 100.0],
        smooth: |[t, p]| Some(([0.3, 1e-3 * p], 8.314 * (t + 273.15) / p)),
    };
    station_pressure: Case {
        formula: StationPressure,
        typical: [102.0, 150.0],
        smooth: |[p, _]| Some(([1e-3 * p, 10.0], 4.0 * p)),
    };
    dry_amount: Case {
        formula: DryAmount::default(),
        typical: [86.5, 21.0, 120.0, 35.0],
        smooth: |[v, t, p, level]| {
            let dry = DryAmount::default().evaluate([v, t, p, level]);
            let whole = whole_amount([v, t, p]);
            (dry > 0.03 * whole).then_some(([1e-3 * v, 0.05, 1e-3 * p, 1.0], 20.0 * whole))
        },
    };
    dry_amount_with_vapour: Case {
        formula: DryAmountWithVapour::default(),
        typical: [86.5, 21.0, 120.0, 35.0, 2.5],
        smooth: |[v, t, p, level, vapour]| {
            let dry = DryAmountWithVapour::default().evaluate([v, t, p, level, vapour]);
            let whole = whole_amount([v, t, p]);
            (dry > 0.03 * whole).then_some(([1e-3 * v, 0.1, 1e-3 * p, 1.0, 0.1], 4.0 * whole))
        },
    };
    peroxide_concentration: Case {
        formula: ConcentrationFromVolumes,
        typical: [20.0, 22.414],
        smooth: |drawn| Some((shares(drawn), ConcentrationFromVolumes.evaluate(drawn))),
    };
    stock_volume: Case {
        formula: StockVolume,
        typical: [14.0, 0.005, 500.0],
        smooth: |[stock, wanted, made_up]| {
            let volume = StockVolume.evaluate([stock, wanted, made_up]);
            (wanted < 0.99 * stock).then_some((shares([stock, wanted, made_up]), volume))
        },
    };
    assayed_concentration: Case {
        formula: AssayedConcentration,
        typical: [28.4, 0.02, 10.0, 250.0, 25.0],
        smooth: |drawn| Some((shares(drawn), AssayedConcentration.evaluate(drawn))),
    };
    expected_titre: Case {
        formula: ExpectedTitre,
        typical: [1.42, 0.02, 10.0, 250.0, 25.0],
        smooth: |drawn| Some((shares(drawn), ExpectedTitre.evaluate(drawn))),
    };
    adiabatic_rise: Case {
        formula: AdiabaticRise,
        typical: [1.785, 5.0, 25.0],
        smooth: |[concentration, solution, heel]| {
            let steps = [1e-3 * concentration, 1e-3 * solution, 1e-3 * (solution + heel)];
            Some((steps, AdiabaticRise.evaluate([concentration, solution, heel])))
        },
    };
    room_concentration: Case {
        formula: RoomConcentration,
        typical: [3.12, 200.0, 20.0, 101.325, 2.0, 900.0],
        smooth: |[n, v, t, p, changes, time]| {
            let start = RoomConcentration.evaluate([n, v, t, p, 0.0, 0.0]);
            let x = changes * time / 3600.0;
            (x > 1e-3 && x < 600.0).then_some(([1e-3 * n, 1e-3 * v, 0.3, 1e-3 * p, 1e-3 * changes / (1.0 + x), 1e-3 * time / (1.0 + x)], start))
        },
    };
    // 1 - exp(-vessel/free) is rounded to 1e-16, and is divided by vessel/free: for a vessel much smaller than the
    // free volume that rounding grows by their ratio, and once more in the derivative.
    oxygen_fraction: Case {
        formula: MeanOxygenFraction,
        typical: [300.0, 250.0, 235.0],
        smooth: |[_, vessel, free]| {
            let steps = [1e-3 * free, 1e-3 * vessel.min(free), 1e-3 * free];
            Some((steps, 1.0 + free / vessel))
        },
    };
}
