//! How often the interval of each rule set holds the true value: 10,000 simulated experiments for each, as a page.
//!
//! `cargo run --release -p overwater-tests --example coverage`. Ends with 1 where the intervals of the GUM or of the Monte Carlo
//! method hold it in other than 95 % ± 0.7 % of the experiments.

use std::process::ExitCode;

use overwater::readings::uncertainty::budget::budget;
use overwater::readings::uncertainty::input::Input;
use overwater::readings::uncertainty::model::{FormulaModel, MeasurementModel};
use overwater::readings::uncertainty::monte_carlo::{BLOCK, Plan, Stop, monte_carlo};
use overwater::readings::uncertainty::normal::normal_quantile;
use overwater::readings::uncertainty::school::{HALF_DIVISION_2026, Reading, SchoolInput, add_up};
use overwater::{Result, catalogue};
use rand::{Rng, SeedableRng};
use rand_chacha::ChaCha8Rng;

const EXPERIMENTS: usize = 10_000;
const TRUE: [f64; 4] = [86.5, 21.0, 100.36, 12.0];
const NAMES: [&str; 4] = ["volume_cm3", "temperature_c", "pressure_kpa", "inside_minus_outside_mm"];
/// Half a division of each scale.
const HALF: [f64; 4] = [0.5, 0.5, 0.1, 1.0];

fn uniform(generator: &mut ChaCha8Rng) -> f64 {
    ((generator.next_u64() >> 11) as f64 + 0.5) / (1_u64 << 53) as f64
}

/// The share of experiments, in per cent, whose interval holds the true amount.
fn coverage(
    seed: u64,
    mut error: impl FnMut(&mut ChaCha8Rng, f64) -> f64,
    mut interval: impl FnMut(&[f64; 4], u64) -> Result<[f64; 2]>,
    truth: f64,
) -> Result<f64> {
    let mut generator = ChaCha8Rng::seed_from_u64(seed);
    let mut held = 0;
    for experiment in 0..EXPERIMENTS {
        let mut read = TRUE;
        for (value, half) in read.iter_mut().zip(HALF) {
            *value += error(&mut generator, half);
        }
        let [low, high] = interval(&read, experiment as u64)?;
        held += usize::from(low <= truth && truth <= high);
    }
    Ok(100.0 * held as f64 / EXPERIMENTS as f64)
}

fn page() -> Result<(String, bool)> {
    let formula = catalogue::find("dry_amount")?;
    let model = FormulaModel::new(&*formula);
    let truth = model.value(&TRUE)?;
    let root = 3.0_f64.sqrt();
    let normal = |generator: &mut ChaCha8Rng, half: f64| half / root * normal_quantile(uniform(generator));
    let within = |generator: &mut ChaCha8Rng, half: f64| half * (2.0 * uniform(generator) - 1.0);
    let inputs = |read: &[f64; 4]| {
        let mut inputs = NAMES.map(|name| Input::exact(name, 0.0));
        for ((input, value), half) in inputs.iter_mut().zip(read).zip(HALF) {
            (input.value, input.standard_uncertainty) = (*value, half / root);
        }
        inputs
    };
    let gum = |read: &[f64; 4], _: u64| {
        let found = budget(&model, &inputs(read), &[], 0.95)?;
        Ok([found.value - found.expanded_uncertainty, found.value + found.expanded_uncertainty])
    };
    let drawn = |read: &[f64; 4], seed: u64| {
        let plan = Plan { seed, stop: Stop::After(BLOCK), ..Plan::default() };
        Ok(monte_carlo(&model, &inputs(read), &[], plan)?.symmetric)
    };
    let school = |read: &[f64; 4], _: u64| {
        let inputs: Vec<SchoolInput> = NAMES
            .into_iter()
            .zip(read)
            .zip(HALF)
            .map(|((name, value), half)| SchoolInput {
                name: name.into(),
                value: *value,
                reading: Reading::HalfWidth(half),
            })
            .collect();
        let found = add_up(&model, &inputs, &HALF_DIVISION_2026)?;
        Ok([found.value - found.half_width, found.value + found.half_width])
    };
    let rows = [
        ("GUM, first order, 95 %", "normal", coverage(1, normal, gum, truth)?, true),
        ("Monte Carlo, 95 %", "normal", coverage(2, normal, drawn, truth)?, true),
        (
            "GUM, first order, 95 %",
            "all alike within half a division",
            coverage(3, within, gum, truth)?,
            false,
        ),
        (
            "school, percentages added",
            "all alike within half a division",
            coverage(4, within, school, truth)?,
            false,
        ),
        ("school, percentages added", "normal", coverage(5, normal, school, truth)?, false),
    ];
    let mut text = String::from(
        "# How often does the interval hold the true value?\n\nPrinted by `cargo run --release -p overwater-tests --example coverage`; \
         the tests print it anew and compare. For each\nrow 10,000 experiments were simulated: the amount of gas in a eudiometer reading \
         (86.5 cm³, 21.0 °C, 100.36 kPa, water\n12 mm higher inside) with errors in volume (0.5 cm³), temperature (0.5 °C), pressure \
         (0.1 kPa) and level (1 mm), either\nall alike within these limits or normal with the same standard deviation (limit/√3).\n\n\
         | rule set | errors | interval holds the true value |\n|---|---|---|\n",
    );
    for (rules, errors, percent, _) in rows {
        text.push_str(&format!("| {rules} | {errors} | {percent:.1} % |\n"));
    }
    text.push_str(
        "\nThe first two are what 95 % promises, within the 0.4 % (two standard errors) that 10,000 experiments can tell. Where all\n\
         errors stay within limits, the first-order interval, which takes their sum as normal, holds a little more. The school sum\n\
         is the worst case, all errors at their limits in one direction: it is nearly always right, and wider than it need be.\n",
    );
    let right = rows.iter().all(|(.., percent, promised)| !promised || (percent - 95.0).abs() <= 0.7);
    Ok((text, right))
}

fn main() -> ExitCode {
    match page() {
        Ok((text, right)) => {
            print!("{text}");
            if right { ExitCode::SUCCESS } else { ExitCode::FAILURE }
        }
        Err(error) => {
            eprintln!("{error}");
            ExitCode::FAILURE
        }
    }
}
