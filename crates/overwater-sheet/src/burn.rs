//! A burn in a jar as text.

use overwater::units::significant;
use overwater_exchange::burn::answer::{FlameAnswer, ProductAnswer, SampleBurnAnswer};

use crate::layout::Layout;

/// Figures of masses, amounts and heats.
const FIGURES: usize = 3;
/// Gases of a flame that are listed.
const GASES: usize = 5;

/// What burns, the cautions first, what it makes, what is left, how hot, none wider than `width` columns.
#[must_use]
pub fn burn(answer: &SampleBurnAnswer, width: usize) -> String {
    let mut sheet = Layout::new(width);
    let sample = &answer.sample;
    sheet.title(
        &format!("Burning {} ({}, {})", sample.name, sample.formula_unicode, sample.phase),
        &format!("{} cm³", significant(answer.jar.volume_cm3, FIGURES)),
    );
    if !answer.cautions.is_empty() {
        sheet.heading("First of all");
        for caution in &answer.cautions {
            sheet.item("!", caution);
        }
    }
    let jar = &answer.jar;
    sheet.heading("The jar");
    sheet.pairs(&[
        (
            "gas",
            format!(
                "{} mmol of oxygen ({} % of the dry gas), {} mmol of other gas, {} mmol of water vapour",
                number(jar.oxygen_mmol),
                number(100.0 * jar.oxygen_fraction),
                number(jar.nitrogen_mmol),
                number(jar.vapour_mmol)
            ),
        ),
        ("at", format!("{} degC, {} kPa", jar.temperature_c, significant(jar.pressure_kpa, 6))),
        (
            "sample",
            format!("{} g{}", number(answer.mass_g), if answer.mass_was_given { "" } else { ", as advised" }),
        ),
        ("take", advice(answer)),
    ]);
    for product in &answer.answers {
        sheet.heading(&format!("What it makes, {}", product.role));
        sheet.pairs(&pairs(product));
    }
    sheet.heading("How hot at most, no heat lost, with dissociation");
    match &answer.flames {
        Some(flames) => {
            let rows =
                [("just enough gas", &flames.at_the_sample), ("all gas of the jar", &flames.whole_jar)];
            sheet.pairs(&rows.map(|(name, flame)| (name, hot(flame))));
        }
        None => sheet.paragraph(answer.no_flames.as_deref().unwrap_or_default()),
    }
    if !answer.assumed.is_empty() {
        sheet.heading("Assumed");
        sheet.paragraph(&answer.assumed.join("; "));
    }
    sheet.finish()
}

fn number(value: f64) -> String {
    significant(value, FIGURES)
}

fn advice(answer: &SampleBurnAnswer) -> String {
    let Some(advice) = &answer.advice else { return "no sample is advised".to_owned() };
    let length = match advice.length_cm {
        Some(length) => format!(", {} cm of the ribbon or wire that was weighed", number(length)),
        None => String::new(),
    };
    format!(
        "{} g uses {} % of the oxygen{length}",
        number(advice.mass_g),
        number(100.0 * advice.share_of_oxygen)
    )
}

fn pairs(product: &ProductAnswer) -> Vec<(&'static str, String)> {
    let mut pairs = vec![("equation", product.equation_unicode.clone())];
    if let Some(poor) = &product.poor_equation_unicode {
        pairs.push(("short of oxygen", format!("{poor} (by rule: hydrogen first, then carbon to CO)")));
    }
    let share = product.share_of_oxygen.map_or_else(
        || "there is no oxygen".to_owned(),
        |share| format!("the sample needs {} % of it: {}", number(100.0 * share), product.regime),
    );
    pairs.push(("oxygen", share));
    pairs.push((
        "most",
        format!(
            "{} g burn completely; {} g before most flames go out",
            number(product.most_g),
            number(product.before_going_out_g)
        ),
    ));
    let made: Vec<String> = product
        .made
        .iter()
        .map(|made| {
            format!(
                "{} mmol ({} g) of {}, {}",
                number(made.amount_mmol),
                number(made.mass_g),
                made.formula_unicode,
                made.phase
            )
        })
        .collect();
    pairs.push(("made", if made.is_empty() { "nothing".to_owned() } else { made.join("; ") }));
    if product.left_g > 0.0 {
        pairs.push(("left", format!("{} g of the sample", number(product.left_g))));
    }
    pairs.push((
        "heat",
        format!("{} kJ ({} kJ/mol)", number(product.heat_kj), significant(product.heat_kj_per_mol, 4)),
    ));
    let after = &product.after;
    pairs.push((
        "gas after",
        format!(
            "{} mmol of oxygen, {} mmol made, {} mmol of other gas: {} cm3 moist",
            number(after.oxygen_mmol),
            number(after.made_mmol),
            number(after.nitrogen_mmol + after.sample_mmol),
            number(after.volume_cm3)
        ),
    ));
    let washed = after.water_rise_washed_cm3.map_or_else(String::new, |cm3| {
        format!("; {} when water or alkali has taken up the acid gas", rise(cm3))
    });
    pairs.push(("under water", format!("the water {}{washed}", rise(after.water_rise_cm3))));
    pairs
}

/// A change of volume that nobody sees.
const SEEN_CM3: f64 = 0.05;

fn rise(cm3: f64) -> String {
    if cm3.abs() < SEEN_CM3 {
        return "stays where it is".to_owned();
    }
    format!("{} by {} cm3", if cm3 > 0.0 { "rises" } else { "falls" }, number(cm3.abs()))
}

fn hot(flame: &FlameAnswer) -> String {
    let plateau = if flame.changes_phase { " (a phase melts or boils there)" } else { "" };
    let total = flame.gas_mmol;
    let gases: Vec<String> = flame
        .gases
        .iter()
        .take(if total > 0.0 { GASES } else { 0 })
        .filter(|gas| gas.fraction >= 0.001)
        .map(|gas| format!("{} {} %", gas.formula_unicode, number(100.0 * gas.fraction)))
        .collect();
    let condensed: Vec<String> = flame
        .condensed
        .iter()
        .map(|phase| {
            format!("{} mmol of {} {}", number(phase.amount_mmol), phase.phase, phase.formula_unicode)
        })
        .collect();
    let mut text = format!(
        "{:.0} K ({:.0} degC){plateau}: {}",
        flame.temperature_k,
        flame.temperature_c,
        gases.join(", ")
    );
    if !condensed.is_empty() {
        text.push_str(&format!("; {}", condensed.join(", ")));
    }
    text
}
