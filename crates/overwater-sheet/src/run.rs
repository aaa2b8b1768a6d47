//! A simulated preparation, and a calibration, as text.

use overwater::units::{decimals, significant};
use overwater_exchange::run::answer::{CalibrationAnswer, PointAnswer, RunAnswer};

use crate::layout::Layout;
use crate::timeline::clock;

/// States that are printed.
const PRINTED: usize = 13;

/// What to call it.
pub(crate) fn title(answer: &RunAnswer) -> &str {
    answer.title.as_deref().unwrap_or("Oxygen from hydrogen peroxide, simulated")
}

/// One sentence: how it went.
pub(crate) fn verdict(answer: &RunAnswer) -> String {
    match answer.findings.len() {
        0 => "Nothing goes wrong in it.".to_owned(),
        1 => "One thing goes wrong.".to_owned(),
        count => format!("{count} things go wrong."),
    }
}

/// Findings: what, and what would help.
pub(crate) fn findings(answer: &RunAnswer) -> Vec<(String, String)> {
    answer.findings.iter().map(|found| (found.what.clone(), found.help.clone())).collect()
}

/// Events: the stop-watch, the second to a hundredth, and what.
pub(crate) fn events(answer: &RunAnswer) -> Vec<[String; 3]> {
    answer
        .events
        .iter()
        .map(|event| [clock(event.time_s), decimals(event.time_s, 2), event.words.clone()])
        .collect()
}

/// Vessels: name, volume, when it begins and is full, oxygen.
pub(crate) fn vessels(answer: &RunAnswer) -> Vec<[String; 5]> {
    let time = |time: Option<f64>| time.map_or_else(|| "never".to_owned(), clock);
    answer
        .vessels
        .iter()
        .map(|vessel| {
            [
                vessel.name.clone(),
                significant(vessel.volume_cm3, 3),
                time(vessel.from_s),
                time(vessel.full_at_s),
                vessel.oxygen_fraction.map_or_else(|| "none".to_owned(), |fraction| decimals(fraction, 3)),
            ]
        })
        .collect()
}

/// The greatest values, and what the balances are worth.
pub(crate) fn greatest(answer: &RunAnswer) -> Vec<(&'static str, String)> {
    let balance = |value: Option<f64>| {
        value.map_or_else(|| "not taken while something drips in".to_owned(), |value| format!("{value:.0e}"))
    };
    vec![
        ("hottest", format!("{} degC", decimals(answer.top_temperature_c, 1))),
        ("fastest", format!("{} cm3/s", decimals(answer.top_flow_cm3_per_s, 2))),
        ("highest in the stem", format!("{} cm", decimals(answer.top_stem_rise_cm, 1))),
        ("liquid with its bubbles", format!("{} cm3 at the most", significant(answer.top_froth_cm3, 3))),
        (
            "cooling to come",
            format!("{} % of the gas in the flask", decimals(100.0 * answer.shrinkage_to_come, 0)),
        ),
        (
            "balances",
            format!(
                "atoms off by {}, heat by {}",
                balance(answer.atom_balance),
                balance(answer.heat_balance)
            ),
        ),
        ("followed", format!("{} s in {} steps", significant(answer.reached_s, 4), answer.steps)),
    ]
}

pub(crate) const STATES: [&str; 6] =
    ["time", "flask / degC", "gas / cm3/s", "oxygen", "collected / cm3", "peroxide / mmol"];

/// Some of the states, at about equal times, the last among them.
pub(crate) fn states(answer: &RunAnswer) -> Vec<Vec<String>> {
    let step = answer.curve.len().saturating_sub(1).div_ceil(PRINTED - 1).max(1);
    let mut points: Vec<&PointAnswer> = answer.curve.iter().step_by(step).collect();
    if let Some(last) = answer.curve.last()
        && points.last().is_none_or(|point| point.time_s < last.time_s)
    {
        points.push(last);
    }
    let row = |point: &&PointAnswer| {
        vec![
            clock(point.time_s),
            decimals(point.temperature_c, 1),
            decimals(point.flow_cm3_per_s, 2),
            decimals(point.oxygen_fraction, 3),
            decimals(point.collected_cm3, 0),
            decimals(point.peroxide_mmol.max(0.0), 1),
        ]
    };
    points.iter().map(row).collect()
}

/// How the outcome moves with the inputs.
pub(crate) fn sensitivities(answer: &RunAnswer) -> Vec<Vec<String>> {
    let row = |one: &overwater_exchange::run::answer::SensitivityAnswer| {
        let last = one.oxygen_fraction.last().copied().flatten();
        vec![
            one.input.clone(),
            one.filled_at_s.map_or_else(|| "-".to_owned(), |value| significant(value, 3)),
            significant(one.top_temperature_k, 3),
            last.map_or_else(|| "-".to_owned(), |value| significant(value, 3)),
        ]
    };
    answer.sensitivities.iter().map(row).collect()
}

pub(crate) const MOVES: [&str; 4] =
    ["for each unit of", "all full at / s", "hottest / K", "oxygen of the last"];

/// A simulated preparation as text, at most `width` columns wide (40 at least).
#[must_use]
pub fn run(answer: &RunAnswer, width: usize) -> String {
    let mut sheet = Layout::new(width);
    sheet.title(title(answer), "");
    sheet.heading("What goes wrong");
    sheet.paragraph(&verdict(answer));
    for (what, help) in findings(answer) {
        sheet.item("!", &format!("{what}. Would help: {help}."));
    }
    sheet.heading("What happens");
    for [clock, _, words] in events(answer) {
        sheet.item(&clock, &words);
    }
    if !answer.vessels.is_empty() {
        sheet.heading("Vessels");
        let rows = vessels(answer).into_iter().map(Vec::from).collect();
        sheet.columns(&["vessel", "volume / cm3", "from", "full", "oxygen"], rows, 1);
    }
    sheet.heading("Greatest values");
    sheet.pairs(&greatest(answer));
    sheet.heading("Course");
    sheet.columns(&STATES, states(answer), 1);
    if !answer.sensitivities.is_empty() {
        sheet.heading("How the outcome moves");
        sheet.columns(&MOVES, sensitivities(answer), 1);
    }
    if !answer.assumed.is_empty() {
        sheet.heading("Assumed");
        for (why, taken) in assumed(answer) {
            sheet.item("~", &format!("{taken}: {why}"));
        }
    }
    sheet.heading("What it is not");
    sheet.paragraph(NOT);
    sheet.finish()
}

/// What a simulation is not.
pub(crate) const NOT: &str = "A simulation is no risk assessment. The employer's risk assessment, local rules and licensed practice come first. Try a \
     preparation out in small, with eye protection, before it is run in front of anybody.";

/// What was assumed, together where the reason is the same.
pub(crate) fn assumed(answer: &RunAnswer) -> Vec<(String, String)> {
    let mut found: Vec<(String, String)> = Vec::new();
    for one in &answer.assumed {
        let text = format!("{} = {}", one.key, one.taken);
        match found.iter_mut().find(|(why, _)| *why == one.why) {
            Some((_, taken)) => *taken = format!("{taken}, {text}"),
            None => found.push((one.why.clone(), text)),
        }
    }
    found
}

/// A calibration as text, at most `width` columns wide (40 at least).
#[must_use]
pub fn calibration(answer: &CalibrationAnswer, width: usize) -> String {
    let mut sheet = Layout::new(width);
    sheet.heading("How active the catalyst is");
    let figures = |value: f64| significant(value, 2);
    let activation = format!(
        "{} kJ/mol, {}",
        significant(answer.activation_j_per_mol / 1000.0, 3),
        if answer.activation_was_given {
            "as given"
        } else {
            "typical (common practice, no source); used only away from 20 degC"
        }
    );
    sheet.pairs(&[
        (
            "k at 20 degC",
            format!(
                "{} m3/(kg s), standard uncertainty {}, 95 % within {} either way",
                significant(answer.k_at_20, 3),
                figures(answer.standard_uncertainty),
                figures(answer.half_width_95)
            ),
        ),
        ("that is", format!("{} times typical powder", significant(answer.of_typical, 3))),
        (
            "half-life",
            format!("{} s for the catalyst and liquid of the trial", significant(answer.half_life_s, 3)),
        ),
        ("gas in the end", format!("{} cm3", significant(answer.final_volume_cm3, 3))),
        (
            "scatter",
            format!(
                "{} cm3 about the curve, {} degrees of freedom",
                significant(answer.scatter_cm3, 2),
                answer.degrees_of_freedom
            ),
        ),
        ("activation energy", activation),
    ]);
    sheet.paragraph(&format!(
        "To use it: kinetics = {{ k_at_20 = {} }} in a run. The uncertainty is that of the scatter alone.",
        significant(answer.k_at_20, 4)
    ));
    sheet.finish()
}

#[cfg(test)]
mod tests {
    use super::*;

    fn answer(text: &str) -> RunAnswer {
        overwater_exchange::run::run(&overwater_exchange::run_from_toml(text).unwrap()).unwrap()
    }

    const QUIET: &str = "format = 1\nend_s = 600\nevery_s = 7\n\
                         additions = [{ time_s = 0, volume_cm3 = 5, strength = \"20 vol\" }]\n";

    #[test]
    fn a_quiet_run_says_that_nothing_goes_wrong_and_a_wild_one_what() {
        let text = run(&answer(QUIET), 80);
        assert!(text.contains("Nothing goes wrong"), "{text}");
        let wild = "format = 1\nadditions = [{ time_s = 0, volume_cm3 = 100, strength = \"100 vol\" }]\n";
        let text = run(&answer(wild), 80);
        assert!(text.contains("the flask boils") && text.contains("in portions"), "{text}");
        assert!(text.lines().all(|line| line.chars().count() <= 80), "{text}");
    }

    #[test]
    fn the_course_ends_with_the_last_state() {
        let answer = answer(QUIET);
        let rows = states(&answer);
        assert_eq!(rows.first().unwrap()[0], "0:00");
        // 85 whole steps of 7 s are 595 s.
        assert_eq!((answer.curve.len(), rows.last().unwrap()[0].as_str()), (86, "9:55"));
        assert!(rows.len() <= PRINTED + 1);
    }

    #[test]
    fn what_is_assumed_for_one_reason_stands_together() {
        let text = run(&answer(QUIET), 80);
        assert_eq!(text.matches("usual flask").count(), 1, "{text}");
        let words: Vec<&str> = text.split_whitespace().collect();
        assert!(words.join(" ").contains("stem_length_cm = 25 cm"), "{text}");
        assert!(!text.contains("throw away"), "nothing was to be thrown away: {text}");
    }
}
