//! Readings against time to rates, through the door that every caller uses: published examples to their printed figures,
//! what must not matter, and figures of the trade.

use overwater::chem::{Formula, Reaction};
use overwater::peroxide::kinetics::first_order;
use overwater::readings::arrhenius::from_slope;
use overwater::reference::constants::MOLAR_GAS_CLASSROOM;
use overwater::units::{Dimensioned, Temperature};
use overwater_exchange::rate::answer::RateAnswer;
use overwater_exchange::rate::{rate, rate_table};
use overwater_exchange::reduction::answer::ReductionAnswer;
use overwater_exchange::reduction::{reduce, reduce_table};
use overwater_exchange::{rate_from_toml, reduction_from_toml};
use overwater_testkit::compare::{Tolerance, assert_close, assert_prints};
use proptest::prelude::*;

fn of(options: &str, table: &str) -> RateAnswer {
    rate_table(&rate_from_toml(&format!("format = 1\n{options}\n")).unwrap(), table.as_bytes()).unwrap()
}

const PLAIN: &str = "bootstrap = { replicates = 0 }";

/// OpenStax, Chemistry 2e, section 12.4 (kin-01): peroxide at 40 degC, k = 0.116 per hour.
#[test]
fn a_published_rate_constant() {
    let table = "time_h,concentration_mol_per_l\n0,1.000\n6,0.500\n12,0.250\n18,0.125\n24,0.0625\n";
    let answer = of(PLAIN, table);
    let curve = answer.runs[0].curve.as_ref().unwrap();
    assert_prints("k", curve.rate_constant.value, "0.116");
    assert_eq!((curve.rate_constant.unit.as_str(), curve.kind.as_str()), ("1/h", "decay"));
    assert_close("half-life", curve.half_life.value, 6.0, Tolerance::Relative(1e-9));
    let half_lives = answer.runs[0].half_lives.as_ref().unwrap();
    assert_eq!((half_lives.half_lives.len(), half_lives.constant), (4, Some(true)));
    let order = answer.runs[0].order.as_ref().unwrap();
    assert_eq!((order.best, order.readings), (Some(1), 5));
    assert_close("order", order.fitted.as_ref().unwrap().value, 1.0, Tolerance::Absolute(1e-6));
    // The same table with its end fitted comes to the same, and says nothing of an order.
    let fitted = of(&format!("fit_final_value = true\n{PLAIN}"), table);
    let end = &fitted.runs[0].curve.as_ref().unwrap().final_value;
    assert_close("end", end.value, 0.0, Tolerance::Absolute(1e-9));
    assert!(fitted.runs[0].no_order.as_ref().unwrap().contains("would decide the order"));
}

/// A first-order decay, forwards and backwards, in published figures.
#[test]
fn published_figures_of_a_first_order_decay() {
    // OCR A Level Chemistry A, mark scheme (kin-12): a half-life of 106 min and 5e-3 mol/dm3 start at 3.27e-5 mol/dm3/min. The
    // concentrations are those that this half-life leaves.
    let left = |minutes: f64| 0.005 * (-minutes * std::f64::consts::LN_2 / 106.0).exp();
    let rows: String =
        [0.0, 53.0, 106.0, 212.0, 318.0].map(|time| format!("{time},{}\n", left(time))).concat();
    let run = of(PLAIN, &format!("time_min,concentration_mol_per_dm3\n{rows}")).runs.remove(0);
    assert_prints("kin-12, half-life", run.curve.unwrap().half_life.value, "106");
    let whole_curve = run.initial_rates.iter().find(|estimate| estimate.way.contains("curve")).unwrap();
    assert_prints("kin-12", whole_curve.rate.value.abs(), "0.0000327");
    // OpenStax, Chemistry 2e, section 12.4 (kin-20): 80.0 % gone at 9.2e-3 per second takes 1.7e2 s (174.9 s unrounded).
    assert_close("kin-20", first_order(1.0, 9.2e-3, 174.939), 0.200, Tolerance::Absolute(1e-6));
    // OpenStax, Chemistry 2e, section 12.1 (kin-03): peroxide that falls at 3.20e-2 mol/L/h makes oxygen at 1.60e-2.
    let balanced = Reaction::parse("H2O2 -> H2O + O2").unwrap().balance().unwrap();
    let count = |side: &[overwater::chem::Species], formula: &str| {
        let wanted = Formula::parse(formula).unwrap();
        side.iter().find(|one| one.formula.equal_but_for_state(&wanted)).unwrap().coefficient as f64
    };
    let ratio = count(balanced.products(), "O2") / count(balanced.reactants(), "H2O2");
    assert_prints("kin-03", 3.20e-2 * ratio, "0.0160");
    // IB Diploma Chemistry, May 2013, HL paper 2 TZ2, mark scheme (kin-13): -6.20e3 K with R = 8.31 is 51.5 kJ/mol, and the
    // gradients accepted, -5.96e3 and -6.44e3 K, are 49.5 and 53.5.
    for (slope, printed) in [(-6.20e3, "51.5"), (-5.96e3, "49.5"), (-6.44e3, "53.5")] {
        let energy = from_slope(Temperature::new(slope), &MOLAR_GAS_CLASSROOM);
        assert_prints("kin-13", energy.si() / 1e3, printed);
    }
}

/// OpenStax, Chemistry 2e, section 12.5 (kin-16 and kin-18): decomposition of HI, and 1.66 at 650 K with 7.39 at 700 K.
#[test]
fn published_activation_energies() {
    let table = "temperature_k,rate_constant_l_per_mol_s\n555,3.52e-7\n575,1.22e-6\n645,8.59e-5\n700,1.16e-3\n781,3.95e-2\n";
    let found = of("", table).arrhenius.unwrap();
    // The book takes two rounded points of its graph and gives 1.8e2; least squares through all five is 185.
    assert_prints("kin-16", found.activation_energy.value, "185");
    assert_prints("kin-16, as the book rounds, within a unit", found.activation_energy.value - 5.0, "1.8e2");
    let [low, high] = found.activation_energy.interval.unwrap();
    assert!(low < 185.3 && 185.3 < high && high - low < 15.0, "{low} {high}");
    let [shallow, steep] = found.worst_lines.unwrap();
    assert!(shallow < found.activation_energy.value && found.activation_energy.value < steep);
    assert!(found.correlation.unwrap() > 0.99 && found.covariance.unwrap() > 0.0);
    let two = of("", "temperature_k,rate_constant_l_per_mol_s\n650,1.66\n700,7.39\n").arrhenius.unwrap();
    assert_prints("kin-18", two.activation_energy.value, "1.1e2");
    assert_close("kin-18", two.activation_energy.value, 112.986, Tolerance::Absolute(5e-4));
    assert_eq!(
        (two.activation_energy.standard_error, two.worst_lines, two.activation_energy.interval),
        (None, None, None)
    );
}

/// 2 NO + O2: rates doubled by twice the oxygen (by hand).
#[test]
fn orders_from_rates_and_times() {
    let table = "initial_concentration_mol_per_dm3,rate_mol_per_dm3_s\n0.1,0.003\n0.2,0.012\n0.4,0.048\n";
    let found = of("", table).order.unwrap();
    assert_close("order", found.order.value, 2.0, Tolerance::Relative(1e-12));
    assert_close("k", found.rate_constant, 0.3, Tolerance::Relative(1e-12));
    assert_eq!(found.lines.slope_unit, "(mol/(dm3 s))/(mol/dm3)");
    // A hundred seconds, fifty, twenty-five: the first order, with a warning that 1/t is a mean.
    let times = of("", "initial_concentration_mol_per_dm3,time_taken_s\n0.1,100\n0.2,50\n0.4,25\n");
    assert_close("order", times.order.unwrap().order.value, 1.0, Tolerance::Relative(1e-12));
    assert!(times.notes[0].contains("10 % at a fifth, 28 % at a half"), "{:?}", times.notes);
}

/// An exponential rise with a scatter that repeats.
fn rise(last: f64, k: f64, start: f64, step: f64, rows: usize, scatter: f64) -> Vec<(f64, f64)> {
    let noise = [0.3, -0.2, 0.1, -0.4, 0.2, 0.0, -0.1];
    (0..rows)
        .map(|row| {
            let time = row as f64 * step;
            (time, last * (1.0 - (-k * (time - start)).exp()) + scatter * noise[row % noise.len()])
        })
        .collect()
}

fn lines(rows: &[(f64, f64)], prefix: &str) -> String {
    rows.iter().map(|(x, y)| format!("{prefix}{x},{y}\n")).collect()
}

#[test]
fn runs_at_several_concentrations_give_an_order() {
    let mut table = String::from("run,initial_concentration_mol_per_dm3,time_s,volume_cm3\n");
    for (label, concentration) in [("a", 0.2), ("b", 0.4), ("c", 0.8)] {
        // The same k, the end in proportion: first order.
        table.push_str(&lines(
            &rise(100.0 * concentration, 0.02, 0.0, 10.0, 15, 0.0),
            &format!("{label},{concentration},"),
        ));
    }
    let answer = of(PLAIN, &table);
    let order = answer.order.as_ref().unwrap();
    assert_eq!((answer.runs.len(), order.from.as_str()), (3, "whole_curve"));
    assert_close("order", order.order.value, 1.0, Tolerance::Relative(1e-8));
    assert!(answer.arrhenius.is_none() && answer.saturation.is_none());
    // The slope between the first two readings is low by the same share in each: the same order.
    let two = of(&format!("rate_from = \"first_two\"\n{PLAIN}"), &table).order.unwrap();
    assert_close("order", two.order.value, 1.0, Tolerance::Relative(1e-12));
    assert_close(
        "low",
        two.rate_constant / order.rate_constant,
        (1.0 - (-0.2_f64).exp()) / 0.2,
        Tolerance::Relative(1e-6),
    );
}

#[test]
fn what_changes_in_two_ways_is_not_put_together() {
    let mut table = String::from("run,temperature_c,initial_concentration_mol_per_dm3,time_s,volume_cm3\n");
    for (label, celsius, c) in [("a", 20, 0.2), ("b", 30, 0.4)] {
        table.push_str(&lines(&rise(60.0, 0.02, 0.0, 10.0, 12, 0.1), &format!("{label},{celsius},{c},")));
    }
    let answer = of(PLAIN, &table);
    assert!(answer.order.is_none() && answer.arrhenius.is_none());
    assert!(answer.warnings[0].contains("both change"), "{:?}", answer.warnings);
}

/// The curve's start and end, free and known.
#[test]
fn what_is_known_beforehand_is_not_fitted() {
    let table = format!("time_s,volume_cm3\n{}", lines(&rise(60.0, 0.02, 5.0, 10.0, 20, 0.5), ""));
    let free = of("", &table).runs.remove(0).curve.unwrap();
    assert!(free.final_value_fitted && free.start_fitted && free.replicates > 900);
    assert_close("end", free.final_value.value, 60.0, Tolerance::Absolute(0.5));
    assert_close("start", free.start.as_ref().unwrap().value, 5.0, Tolerance::Absolute(0.3));
    assert!(free.rate_constant.interval.unwrap()[0] < 0.02 && free.rate_constant.interval.unwrap()[1] > 0.02);
    let known = of("[given]\nfinal_volume_dm3 = 0.060\nstart_min = 0.0833333333333333333", &table);
    let known = known.runs[0].curve.as_ref().unwrap();
    assert!(!known.final_value_fitted && !known.start_fitted);
    assert_close("end", known.final_value.value, 60.0, Tolerance::Relative(1e-14));
    assert_close("start", known.start.as_ref().unwrap().value, 5.0, Tolerance::Relative(1e-14));
    assert_eq!(
        (known.final_value.standard_error, known.start.as_ref().unwrap().standard_error),
        (None, None)
    );
    assert!(known.rate_constant.standard_error < free.rate_constant.standard_error);
    assert_eq!((free.degrees_of_freedom, known.degrees_of_freedom), (17, 19));
}

#[test]
fn what_is_to_be_minded_is_said() {
    let warnings = |rows: &[(f64, f64)]| {
        let answer = of(PLAIN, &format!("time_s,volume_cm3\n{}", lines(rows, "")));
        answer.runs[0].warnings.join("\n")
    };
    let late = warnings(&rise(60.0, 0.02, -12.0, 10.0, 20, 0.2));
    assert!(late.contains("12 s before the clock: a clock started late"), "{late}");
    let early = warnings(&rise(60.0, 0.02, 12.0, 10.0, 20, 0.2));
    assert!(early.contains("12 s after the clock"), "{early}");
    assert_eq!(warnings(&rise(60.0, 0.02, 0.0, 10.0, 20, 0.2)), "");
    let short = warnings(&rise(60.0, 0.02, 0.0, 2.0, 20, 0.0));
    assert!(short.contains("the readings end at 53 % of the fitted final volume"), "{short}");
    let drifting: String = rise(60.0, 0.02, 0.0, 10.0, 12, 0.1)
        .iter()
        .map(|(x, y)| format!("a,{},{x},{y}\n", 20.0 + x / 50.0))
        .collect();
    let answer = of(PLAIN, &format!("run,temperature_c,time_s,volume_cm3\n{drifting}"));
    assert!(answer.runs[0].warnings[0].contains("from 293.1 to 295.3 K"), "{:?}", answer.runs[0].warnings);
    assert_close("mean", answer.runs[0].temperature_k.unwrap(), 293.15 + 1.1, Tolerance::Absolute(1e-9));
}

/// An intercept that means something: gas that dissolves first, seen in the straight line through the first readings.
#[test]
fn an_intercept_is_said_with_what_it_may_mean() {
    let rows: Vec<(f64, f64)> = (1..=12).map(|i| (f64::from(i) * 10.0, f64::from(i) * 5.0 - 4.0)).collect();
    let answer = of(PLAIN, &format!("time_s,volume_cm3\n{}", lines(&rows, "")));
    let found = &answer.runs[0].lines;
    assert_close("slope", found.with_intercept.slope, 0.5, Tolerance::Relative(1e-12));
    assert_close("intercept", found.with_intercept.intercept, -4.0, Tolerance::Relative(1e-10));
    let warning = found.warning.as_ref().unwrap();
    assert!(warning.may_mean[0].contains("carbon dioxide most of all") && warning.probability < 1e-6);
    assert_close("through 0", found.through_origin.slope, 0.38, Tolerance::Absolute(0.02));
    let straight: Vec<(f64, f64)> = rows.iter().map(|(x, y)| (*x, y + 4.0)).collect();
    assert!(
        of(PLAIN, &format!("time_s,volume_cm3\n{}", lines(&straight, ""))).runs[0].lines.warning.is_none()
    );
}

/// The amount of dry gas in a cm3 over water at 20 degC and 101.325 kPa: (101.325 - 2.3392)/(R T) = 0.040611 mmol; what
/// leaves a balance with one mole of carbon dioxide at 20 degC is 44.009 + 18.015 x 2.3392/98.986 = 44.435 g.
#[test]
fn rates_as_amounts() {
    let volume = format!("time_s,volume_cm3\n{}", lines(&rise(60.0, 0.02, 0.0, 10.0, 12, 0.1), ""));
    let at = "[given]\ngas_temperature_c = 20\npressure_kpa = 101.325";
    let answer = of(&format!("gas = \"O2\"\n{PLAIN}\n{at}"), &volume);
    let gas = answer.runs[0].gas.as_ref().unwrap();
    assert_prints("mmol in a cm3", gas.amount_mmol_per_unit, "0.040611");
    let rate = answer.runs[0].initial_rates.iter().find(|rate| rate.way == "whole_curve").unwrap();
    assert_close(
        "rate",
        gas.initial_rate.value,
        rate.rate.value * gas.amount_mmol_per_unit,
        Tolerance::Relative(1e-14),
    );
    assert_eq!(gas.initial_rate.unit, "mmol/s");
    // Water vapour ignored: +2.4 % at 20 degC (common practice, no source).
    assert_close("vapour", gas.corrections[0].amount_percent.unwrap(), 2.4, Tolerance::Absolute(0.1));
    // Without the conditions nothing is guessed.
    let open = of(&format!("gas = \"O2\"\n{PLAIN}"), &volume);
    assert!(open.runs[0].gas.is_none() && open.notes[0].contains("gas_temperature_c"), "{:?}", open.notes);
    let rows: Vec<(f64, f64)> =
        rise(0.6, 0.02, 0.0, 10.0, 12, 0.002).iter().map(|(x, y)| (*x, 120.0 - y)).collect();
    let mass = format!("time_s,mass_g\n{}", lines(&rows, ""));
    let at = "[given]\ntemperature_c = 20\npressure_kpa = 101.325";
    let answer = of(&format!("gas = \"CO2\"\n{PLAIN}\n{at}"), &mass);
    let gas = answer.runs[0].gas.as_ref().unwrap();
    assert_close("mmol in a g", gas.amount_mmol_per_unit, 1e3 / 44.435, Tolerance::Relative(2e-5));
    // Vapour carried off with CO2: 1.0 % at 20 degC (common practice, no source).
    assert_eq!(gas.corrections[0].name, "carried_vapour");
    assert_close("carried", gas.corrections[0].amount_percent.unwrap(), 1.0, Tolerance::Absolute(0.1));
}

/// The documents that hold their own rows say the same as a table.
#[test]
fn rows_at_hand_are_those_of_a_table() {
    let rows = rise(60.0, 0.02, 2.0, 10.0, 12, 0.3);
    let table = of(PLAIN, &format!("run,time_s,volume_cm3\n{}", lines(&rows, "A,")));
    let held: String = rows
        .iter()
        .map(|(x, y)| format!("[[rows]]\nrun = \"A\"\ntime_s = {x:?}\nvolume_cm3 = {y:?}\n"))
        .collect();
    let mut document = rate(&rate_from_toml(&format!("format = 1\n{PLAIN}\n{held}")).unwrap()).unwrap();
    assert_eq!(document.data_figures, None);
    document.data_figures = table.data_figures;
    assert_eq!(document, table);
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(48))]

    /// Minutes for seconds, dm3 for cm3: the same in other units; kelvin for degrees Celsius: the same activation energy.
    #[test]
    fn units_do_not_matter(last in 20.0..90.0_f64, k in 0.01..0.05_f64, start in -3.0..3.0_f64) {
        let mut tables = [
            String::from("run,temperature_c,time_s,volume_cm3\n"),
            String::from("run,temperature_k,time_min,volume_dm3\n"),
        ];
        for (run, warmer) in [(1, 0.0), (2, 12.0), (3, 21.0_f64)] {
            let k = k * (0.05 * warmer).exp();
            for (time, volume) in rise(last, k, start, 0.15 / k, 16, 0.4) {
                let celsius = 15.0 + warmer;
                tables[0].push_str(&format!("{run},{celsius},{time},{volume}\n"));
                tables[1].push_str(&format!("{run},{},{},{}\n", celsius + 273.15, time / 60.0, volume / 1e3));
            }
        }
        let [one, other] = tables.map(|table| of(PLAIN, &table));
        for (one, other) in one.runs.iter().zip(&other.runs) {
            let (a, b) = (one.curve.as_ref().unwrap(), other.curve.as_ref().unwrap());
            for (a, b) in [
                (a.rate_constant.value * 60.0, b.rate_constant.value),
                (a.rate_constant.standard_error.unwrap() * 60.0, b.rate_constant.standard_error.unwrap()),
                (a.final_value.value / 1e3, b.final_value.value),
                (a.half_life.value / 60.0, b.half_life.value),
            ] {
                prop_assert!((a / b - 1.0).abs() < 1e-7, "{} {}", a, b);
            }
            for (a, b) in one.initial_rates.iter().zip(&other.initial_rates) {
                prop_assert!((a.rate.value * 60.0 / 1e3 / b.rate.value - 1.0).abs() < 1e-7);
                prop_assert!((a.bias_percent.unwrap() - b.bias_percent.unwrap()).abs() < 1e-5);
            }
            prop_assert_eq!(&b.rate_constant.unit, "1/min");
            prop_assert_eq!(&other.initial_rates[0].rate.unit, "dm3/min");
        }
        let energy = |answer: &RateAnswer| answer.arrhenius.as_ref().unwrap().activation_energy.value;
        prop_assert!((energy(&one) / energy(&other) - 1.0).abs() < 1e-7);
    }

    /// Runs in another order, and rows of runs mixed with each other: each run says the same.
    #[test]
    fn the_order_of_the_runs_does_not_matter(last in 20.0..90.0_f64, k in 0.01..0.05_f64) {
        let runs: Vec<Vec<String>> = [(1, 15), (2, 25), (3, 35)]
            .into_iter()
            .map(|(run, celsius)| {
                rise(last, k * f64::from(run), 0.0, 4.0, 14, 0.3)
                    .iter()
                    .map(|(x, y)| format!("{run},{celsius},{x},{y}\n"))
                    .collect()
            })
            .collect();
        let head = "run,temperature_c,time_s,volume_cm3\n";
        let straight: String = runs.iter().flatten().cloned().collect();
        let mixed: String = (0..14).flat_map(|row| [2, 0, 1].map(|run| runs[run][row].clone())).collect();
        let few = "bootstrap = { replicates = 20 }";
        let (one, other) = (of(few, &format!("{head}{straight}")), of(few, &format!("{head}{mixed}")));
        for run in &one.runs {
            let twin = other.runs.iter().find(|twin| twin.run == run.run).unwrap();
            prop_assert_eq!(&run.curve, &twin.curve);
            prop_assert_eq!(&run.initial_rates, &twin.initial_rates);
        }
        let energy = |answer: &RateAnswer| answer.arrhenius.as_ref().unwrap().activation_energy.value;
        prop_assert!((energy(&one) / energy(&other) - 1.0).abs() < 1e-12);
    }

    #[test]
    fn the_order_of_known_rates_does_not_matter(a in 0.5..20.0_f64, b in 0.2..5.0_f64, turn in 0..6_usize) {
        let rows: Vec<String> =
            [0.5, 1.0, 2.0, 4.0, 8.0, 16.0].iter().map(|s| format!("{s},{}\n", a * s / (b + s) + 0.01 * s)).collect();
        let head = "initial_concentration_mmol_per_dm3,rate_cm3_per_min\n";
        let mut turned = rows.clone();
        turned.rotate_left(turn);
        let options = format!("michaelis_menten = true\n{PLAIN}");
        let [one, other] = [rows, turned].map(|rows| of(&options, &format!("{head}{}", rows.concat())));
        let (a, b) = (one.saturation.unwrap(), other.saturation.unwrap());
        prop_assert!((a.greatest_rate.value / b.greatest_rate.value - 1.0).abs() < 1e-9);
        prop_assert!((a.half_rate_concentration.value / b.half_rate_concentration.value - 1.0).abs() < 1e-9);
        prop_assert!((one.order.unwrap().order.value / other.order.unwrap().order.value - 1.0).abs() < 1e-12);
    }
}

fn reduced(options: &str, table: &str) -> ReductionAnswer {
    reduce_table(&reduction_from_toml(&format!("format = 1\n{options}\n")).unwrap(), table.as_bytes(), None)
        .unwrap()
}

/// Figures of the trade for a gas at 20 degC and about 1 atm, in per cent of the amount (common practice, no source): the
/// ideal gas gives so much too much.
#[test]
fn a_gas_that_is_not_ideal() {
    let table = "volume_cm3,temperature_c,pressure_kpa\n80,20,101.325\n";
    let dry = "collector = \"syringe\"\n";
    for (gas, percent) in
        [("O2", -0.07), ("H2", 0.06), ("N2", -0.02), ("CO2", -0.5), ("SO2", -1.8), ("C4H10", -3.2)]
    {
        let options = format!("gas = \"{gas}\"\n{dry}[given]\nrelative_saturation_fraction = 0");
        let answer = reduced(&options, table);
        let found = answer.rows[0].corrections.iter().find(|size| size.name == "real_gas").unwrap();
        assert_close(
            gas,
            found.amount_percent.unwrap(),
            percent,
            Tolerance::Absolute(if percent < -0.1 { 0.1 } else { 0.02 }),
        );
        assert!(!found.made);
        let made = reduced(&format!("make = [\"real_gas\"]\n{options}"), table);
        let (ideal, real) = (answer.rows[0].results[0].value, made.rows[0].results[0].value);
        assert_close(
            gas,
            100.0 * (ideal / real - 1.0),
            found.amount_percent.unwrap(),
            Tolerance::Absolute(1e-9),
        );
        assert!(made.rows[0].corrections.iter().any(|size| size.name == "real_gas" && size.made));
    }
}

/// Each correction on and off by itself: leaving it out changes the result by the size that was told, and nothing else.
#[test]
fn corrections_are_left_out_one_by_one() {
    let table = "volume_cm3,temperature_c,inside_minus_outside_mm\n80,20,60\n";
    let given = "[given]\nsea_level_pressure_kpa = 102\naltitude_m = 200";
    let all = reduced(given, table);
    let right = all.rows[0].results[0].value;
    let mut tried = Vec::new();
    for size in all.rows[0].corrections.iter().filter(|size| !size.name.starts_with("24_dm3")) {
        let without = reduced(&format!("leave_out = [\"{}\"]\n{given}", size.name), table);
        let change = 100.0 * (without.rows[0].results[0].value / right - 1.0);
        assert_close(&size.name, change, size.amount_percent.unwrap(), Tolerance::Absolute(1e-9));
        let made: Vec<&str> =
            without.rows[0].corrections.iter().filter(|own| !own.made).map(|own| own.name.as_str()).collect();
        assert_eq!(made, [size.name.as_str()]);
        tried.push(size.name.clone());
    }
    assert_eq!(tried, ["altitude", "level", "vapour"]);
}

/// Every practical of the trade's list that goes by gas or titre has a name to be asked for: rows 1 to 7, 10 to 12, 15
/// and 16 here, row 8 and 9 by rates.
#[test]
fn the_practicals_of_the_trade() {
    for name in [
        "metal_and_acid",
        "metal_molar_mass",
        "molar_volume_from_slope",
        "carbonate_purity",
        "carbonate_molar_mass",
        "carbonate_back_titration",
        "gas_molar_mass",
        "vapour_molar_mass",
        "mass_loss_rate",
        "time_to_volume",
        "eudiometry_water_liquid",
        "eudiometry_water_gas",
        "effusion",
        "gas_density",
    ] {
        let request = reduction_from_toml(&format!("format = 1\npractical = \"{name}\"\n")).unwrap();
        // Without rows it gets as far as asking for them, or for what it goes by.
        let refused = reduce(&request, None).unwrap_err();
        assert_eq!(refused.code, "missing", "{name}: {refused}");
    }
}

/// A molar volume from a slope does not mind a loss that is the same each time; the line through the origin does.
#[test]
fn a_constant_loss_leaves_the_slope_right() {
    let options = "practical = \"molar_volume_from_slope\"\nreagent = \"Mg\"\ngas = \"H2\"\n\
                   reaction = \"Mg + HCl -> MgCl2 + H2\"\nreference = { temperature_c = 20.0, pressure_kpa = 101.325 }\n\
                   accepted = { molar_volume_slope_dm3_per_mol = 24.055 }\n\
                   [given]\ntemperature_c = 20\npressure_kpa = 101.325";
    let volume = |milligram: f64, lost: f64| {
        // n R T/(p - pw), with M(Mg) = 24.305 g/mol and pw = 2.33919 kPa.
        milligram / 24.305 * 8.314_462_618 * 293.15 / (101.325 - 2.339_193) - lost
    };
    let table = |lost: f64| {
        let rows = [20.0, 25.0, 30.0, 35.0, 40.0].map(|mg| format!("{mg},{}\n", volume(mg, lost)));
        format!("mass_mg,volume_cm3\n{}", rows.concat())
    };
    for lost in [0.0, 1.5] {
        let slope = reduced(options, &table(lost)).slope.unwrap();
        assert_close("slope", slope.lines.with_intercept.slope, 24.055, Tolerance::Relative(1e-4));
        assert_close("error", slope.percent_error.unwrap(), 0.0, Tolerance::Absolute(0.01));
        assert_eq!(slope.lines.slope_unit, "dm3/mol");
        if lost > 0.0 {
            assert!(slope.percent_error_through_origin.unwrap() < -3.0);
            assert!(slope.lines.warning.unwrap().may_mean[1].contains("leaves the slope right"));
        } else {
            assert!(slope.percent_error_through_origin.unwrap().abs() < 0.01);
        }
    }
}
