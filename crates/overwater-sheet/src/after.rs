//! Products in water and in the air, in words.

use overwater::units::{decimals, significant};
use overwater_exchange::after::answer::{
    AfterBurnAnswer, AfterProductAnswer, InWaterAnswer, LimitAnswer, RoomAirAnswer, TidyingAnswer,
};

use crate::layout::Layout;

/// Figures of amounts.
const FIGURES: usize = 3;

/// A product in water as text.
#[must_use]
pub fn in_water(answer: &InWaterAnswer, width: usize) -> String {
    let mut sheet = Layout::new(width);
    sheet.title(&format!("{} in water", answer.product), "");
    if let Some(reaction) = &answer.reaction_unicode {
        sheet.paragraph(reaction);
    }
    let mut pairs = vec![
        (
            "dissolved",
            format!(
                "{} of {} mmol: {} mol/dm3",
                significant(answer.dissolved_mmol, FIGURES),
                significant(answer.amount_mmol, FIGURES),
                significant(answer.concentration_mol_per_dm3, FIGURES)
            ),
        ),
        ("pH", ph(answer)),
        ("universal", format!("{} (makers' charts differ by about one unit)", answer.universal_indicator)),
        ("litmus", answer.litmus.clone()),
        ("note", answer.note.clone()),
    ];
    if let Some(pressure) = answer.pressure_kpa {
        pairs.insert(1, ("gas over it", format!("{} kPa", significant(pressure, FIGURES))));
    }
    sheet.pairs(&pairs);
    sheet.finish()
}

/// The pH, and what else it may be said to be.
fn ph(answer: &InWaterAnswer) -> String {
    let mut text = decimals(answer.ph, 1);
    if decimals(answer.ph_ideal, 1) != text {
        text.push_str(&format!(
            " ({} if concentrations are taken for activities)",
            decimals(answer.ph_ideal, 1)
        ));
    }
    if let Some(after) = answer.ph_without_peroxide {
        text.push_str(&format!("; {} when the peroxide has gone", decimals(after, 1)));
    }
    if !answer.dilute {
        text.push_str("; too concentrated for more than a rough figure");
    }
    text
}

/// A product in the air of a room as text.
#[must_use]
pub fn room_air(answer: &RoomAirAnswer, width: usize) -> String {
    let mut sheet = Layout::new(width);
    sheet.title(&format!("{} in the air of the room, well mixed", answer.name), "");
    let row = |ppm: Option<f64>, mg: f64| {
        let mg = format!("{} mg/m3", significant(mg, FIGURES));
        ppm.map_or(mg.clone(), |ppm| format!("{} ppm, {mg}", significant(ppm, FIGURES)))
    };
    let mut pairs = vec![
        ("let out", amount(answer)),
        ("at the start", row(answer.peak_ppm, answer.peak_mg_per_m3)),
        ("over 15 min", row(answer.mean_15_min_ppm, answer.mean_15_min_mg_per_m3)),
        ("over 8 h", row(answer.mean_8_h_ppm, answer.mean_8_h_mg_per_m3)),
        ("so", answer.advice.clone()),
    ];
    if answer.peak_ppm.is_none() {
        pairs.push(("counted", "as if none of the smoke settled".to_owned()));
    }
    sheet.pairs(&pairs);
    sheet.heading("Limits for people at work");
    for row in &answer.limits {
        sheet.item(if row.verified { "-" } else { "?" }, &limit(row));
    }
    sheet.paragraph(
        "?: the figure is from memory; look it up in the document before it is relied on. Limits for people at \
         work are not made for children or for people with asthma. The employer's risk assessment and local rules come \
         first.",
    );
    sheet.finish()
}

fn amount(answer: &RoomAirAnswer) -> String {
    let mmol = format!("{} mmol", significant(answer.released_mmol, FIGURES));
    answer.released_cm3.map_or(mmol.clone(), |cm3| format!("{mmol}, {} cm3", significant(cm3, FIGURES)))
}

fn limit(limit: &LimitAnswer) -> String {
    let below = match limit.minutes_until_below {
        Some(0.0) => "below it from the start".to_owned(),
        Some(minutes) => format!("below it after {} min", decimals(minutes, 0)),
        None => "never below it without ventilation".to_owned(),
    };
    format!(
        "{}: {} of {} {} {}{}; {below} ({} in {})",
        limit.country,
        significant(limit.found, 2),
        limit.allowed,
        limit.unit,
        over(limit),
        if limit.exceeded { ", ABOVE it" } else { "" },
        limit.name,
        limit.document
    )
}

/// One burn, over, as lines of the sheet: the heading word and what follows.
pub(crate) fn lines(burn: &AfterBurnAnswer) -> Vec<(String, String)> {
    let mut lines = Vec::new();
    if let Some(flame) = burn.flame_c {
        lines.push((
            "flame".to_owned(),
            format!("at most {} degC at the sample, if no heat were lost", significant(flame, 2)),
        ));
    }
    for answer in &burn.answers {
        lines.push((answer.product_unicode.clone(), left(answer)));
        if let Some(water) = &answer.in_water {
            let reaction =
                water.reaction_unicode.as_ref().map(|text| format!("{text}: ")).unwrap_or_default();
            lines.push((
                "in water".to_owned(),
                format!(
                    "{reaction}in {} cm3 {} of {} mmol dissolves, pH {}; universal indicator {}, litmus {}; {}",
                    significant(burn.water_cm3, 2),
                    share(water),
                    significant(water.amount_mmol, FIGURES),
                    ph(water),
                    water.universal_indicator,
                    water.litmus,
                    water.note
                ),
            ));
        }
        let airs = [("one jar let out", &answer.air_of_one), ("every group's let out", &answer.air_of_all)];
        for (words, air) in airs {
            if let Some(air) = air {
                push_once(&mut lines, "room", format!("{words}: {}", in_room(air)));
            }
        }
        push_once(&mut lines, "tidy up", tidy(&answer.tidying));
    }
    lines
}

/// How much of a product dissolves.
fn share(water: &InWaterAnswer) -> String {
    match water.dissolved_mmol {
        dissolved if dissolved >= water.amount_mmol => "all".to_owned(),
        0.0 => "nothing".to_owned(),
        dissolved => significant(dissolved, FIGURES),
    }
}

/// What a limit is averaged over.
fn over(limit: &LimitAnswer) -> String {
    if limit.averaged_over == "any moment" {
        "at any moment".to_owned()
    } else {
        format!("over {}", limit.averaged_over)
    }
}

/// What two answers have in common is said once.
fn push_once(lines: &mut Vec<(String, String)>, name: &str, text: String) {
    if lines.iter().all(|(_, said)| *said != text) {
        lines.push((name.to_owned(), text));
    }
}

fn left(answer: &AfterProductAnswer) -> String {
    let mut text = format!(
        "{}: {} kJ given out; cooled, the jar holds {} mmol of oxygen",
        answer.role,
        significant(answer.heat_kj, 2),
        significant(answer.oxygen_mmol, FIGURES)
    );
    if answer.made_mmol > 0.0 {
        text.push_str(&format!(", {} mmol of gas made", significant(answer.made_mmol, FIGURES)));
    }
    let moved = answer.water_rise_cm3;
    text.push_str(&if moved.abs() < 0.5 {
        "; opened under water the level stays".to_owned()
    } else {
        let way = if moved > 0.0 { "rises" } else { "falls" };
        format!("; opened under water the level {way} by {} cm3", significant(moved.abs(), 2))
    });
    if answer.left_g > 0.0 {
        text.push_str(&format!("; {} g of the sample is left over", significant(answer.left_g, 2)));
    }
    text
}

fn in_room(air: &RoomAirAnswer) -> String {
    let peak = match air.peak_ppm {
        Some(ppm) => format!("{} ppm", significant(ppm, 2)),
        None => format!("{} mg/m3", significant(air.peak_mg_per_m3, 2)),
    };
    let mut text = format!("{} of {}, {peak} at the start", amount(air), air.name);
    let by_use = |a: &&LimitAnswer, b: &&LimitAnswer| (a.found / a.allowed).total_cmp(&(b.found / b.allowed));
    for (verified, words) in [(true, "read"), (false, "from memory, not verified")] {
        let tightest = air.limits.iter().filter(|limit| limit.verified == verified).max_by(by_use);
        if let Some(limit) = tightest {
            text.push_str(&format!(
                "; {} {} against {} {} ({}, {}; {words})",
                significant(limit.found, 2),
                over(limit),
                limit.allowed,
                limit.unit,
                limit.country,
                limit.document
            ));
        }
    }
    text.push_str(&format!(". {}", capital(&air.advice)));
    text
}

pub(crate) fn capital(text: &str) -> String {
    let mut letters = text.chars();
    letters.next().map(|first| first.to_uppercase().chain(letters).collect()).unwrap_or_default()
}

fn tidy(tidying: &TidyingAnswer) -> String {
    match (&tidying.reagent, tidying.reagent_mmol, tidying.reagent_cm3) {
        (Some(reagent), Some(mmol), Some(cm3)) => format!(
            "{} All of the product takes {} mmol of {reagent}: {} cm3 of 0.5 mol/dm3.",
            tidying.text,
            significant(mmol, 2),
            significant(cm3, 2)
        ),
        _ => tidying.text.clone(),
    }
}
