//! The sheet as text for a terminal.

use overwater::units::{decimals, significant};
use overwater_exchange::answer::{BurnAnswer, PlanAnswer, StrengthAnswer};
use overwater_exchange::request::FunnelRequest;

use crate::after::{self, capital};
use crate::layout::Layout;
use crate::timeline;

/// The preparation sheet as text, at most `width` columns wide (40 at least).
///
/// ```
/// let answer = overwater_exchange::plan_toml(overwater_exchange::TEMPLATE)?;
/// let sheet = overwater_sheet::terminal(&answer, 80);
/// assert!(sheet.lines().all(|line| line.chars().count() <= 80));
/// # Ok::<(), Box<overwater_exchange::Refusal>>(())
/// ```
#[must_use]
pub fn terminal(plan: &PlanAnswer, width: usize) -> String {
    let mut sheet = Layout::new(width);
    head(&mut sheet, plan);
    requisition(&mut sheet, plan);
    gas(&mut sheet, plan);
    filling(&mut sheet, plan);
    heat(&mut sheet, plan);
    pressure(&mut sheet, plan);
    burns(&mut sheet, plan);
    cautions(&mut sheet, plan);
    basis(&mut sheet, plan);
    sheet.finish()
}

fn cm3(value: f64) -> String {
    format!("{} cm3", significant(value, 3))
}

/// A volume that was rounded to what is measured out: as many figures as it has.
fn measured(value: f64) -> String {
    format!("{value} cm3")
}

fn percent(fraction: f64) -> String {
    format!("{} %", decimals(100.0 * fraction, 0))
}

fn strength(strength: &StrengthAnswer) -> String {
    format!(
        "{} vol ({} mol/dm3, {} % w/v)",
        significant(strength.volume_strength_vol, 3),
        significant(strength.concentration_mol_per_dm3, 4),
        significant(strength.percent_w_v, 3)
    )
}

fn head(sheet: &mut Layout, plan: &PlanAnswer) {
    let title = plan.title.as_deref().unwrap_or("Oxygen from hydrogen peroxide");
    sheet.title(title, plan.date.as_deref().unwrap_or_default());
    let place = &plan.place;
    let pressure = match (place.sea_level_pressure_kpa, place.altitude_m) {
        (Some(sea_level), Some(altitude)) => format!(
            "{} kPa here ({} kPa at sea level, {} m up)",
            decimals(place.pressure_kpa, 2),
            decimals(sea_level, 2),
            decimals(altitude, 0)
        ),
        _ => format!("{} kPa here", decimals(place.pressure_kpa, 2)),
    };
    let temperature = decimals(place.temperature_c, 1);
    let sets = match (plan.requisition.groups, plan.requisition.sets) {
        (1, 1) => "one preparation".to_owned(),
        (groups, sets) if groups == sets => format!("{groups} groups"),
        (groups, sets) => format!("{groups} group(s), {sets} sets"),
    };
    sheet.title(&format!("{temperature} degC, {pressure}; {sets}"), "");
}

fn requisition(sheet: &mut Layout, plan: &PlanAnswer) {
    let (need, stock) = (&plan.requisition, &plan.stock);
    sheet.heading("1  To fetch and to make");
    let each = if need.sets > 1 { " for each set" } else { "" };
    let mut pairs = vec![
        ("peroxide", format!("{}{each}, at {}", measured(need.issue_cm3), strength(&stock.run))),
        (
            "",
            format!(
                "theory {}; {} where {} is collected; rounded up",
                cm3(need.theory_cm3),
                cm3(need.with_efficiency_cm3),
                percent(need.collection_efficiency_fraction)
            ),
        ),
    ];
    if need.sets > 1 {
        pairs.push(("", format!("{} in all", measured(need.issue_in_all_cm3))));
    }
    pairs.push(match &need.dilution {
        Some(dilution) => (
            "dilution",
            format!(
                "{} of stock, made up to {} with purified water",
                cm3(dilution.stock_cm3),
                measured(dilution.made_up_to_cm3)
            ),
        ),
        None => ("dilution", "none: the stock is used as it is".to_owned()),
    });
    let of_stock = match stock.fraction_of_label {
        Some(fraction) => {
            format!("{}, by assay: {} of its label", strength(&stock.strength), percent(fraction))
        }
        None => format!("{}, by its label", strength(&stock.strength)),
    };
    pairs.push(("stock", of_stock));
    if let Some(design) = &stock.assay_design {
        pairs.push((
            "assay",
            format!(
                "pipette {} to {}; titrate {} with {} mol/dm3 KMnO4: {} if the label is true",
                cm3(design.sample_cm3),
                cm3(design.made_up_to_cm3),
                cm3(design.aliquot_cm3),
                decimals(design.permanganate_mol_per_dm3, 4),
                cm3(design.expected_titre_cm3)
            ),
        ));
    }
    let catalyst = match need.sets {
        1 => format!("{} g of {}", significant(need.catalyst_g, 2), need.catalyst),
        _ => format!(
            "{} g of {}{each}, {} g in all",
            significant(need.catalyst_g, 2),
            need.catalyst,
            significant(need.catalyst_in_all_g, 2)
        ),
    };
    pairs.push(("catalyst", catalyst));
    let things = [
        (need.jars, "gas jar", "gas jars"),
        (need.covers, "cover", "covers"),
        (need.tubes, "boiling tube", "boiling tubes"),
        (need.bungs, "bung", "bungs"),
        (need.spoons, "deflagrating spoon", "deflagrating spoons"),
        (need.tongs, "pair of tongs", "pairs of tongs"),
        (need.splints, "splint", "splints"),
    ];
    let things: Vec<String> = things
        .iter()
        .filter(|(count, ..)| *count > 0)
        .map(|(count, one, many)| format!("{count} {}", if *count == 1 { one } else { many }))
        .collect();
    pairs.push(("glass and tools", things.join(", ")));
    for (index, sample) in need.samples.iter().enumerate() {
        pairs.push((
            if index == 0 { "samples" } else { "" },
            format!(
                "{} x {} g of {} ({})",
                sample.count,
                significant(sample.mass_g, 2),
                sample.name,
                sample.form
            ),
        ));
    }
    if need.indicator_cm3 > 0.0 {
        pairs.push((
            "tests",
            format!(
                "{} of indicator, {} of water in the jars",
                measured(need.indicator_cm3),
                measured(need.jar_water_cm3)
            ),
        ));
    }
    sheet.pairs(&pairs);
}

fn gas(sheet: &mut Layout, plan: &PlanAnswer) {
    sheet.heading("2  Gas for one preparation");
    let row = |name: &str, gas: &overwater_exchange::answer::GasAnswer| {
        vec![
            name.to_owned(),
            significant(gas.moist_cm3, 4),
            significant(gas.dry_cm3, 3),
            significant(gas.amount_mmol, 3),
        ]
    };
    let mut rows = vec![row("rejected", &plan.gas.rejected)];
    for (vessel, gas) in plan.filling.vessels.iter().zip(&plan.gas.vessels) {
        rows.push(row(&vessel.name, gas));
    }
    rows.push(row("in all", &plan.gas.total));
    sheet.columns(&["", "moist / cm3", "dry at 0 degC, 1 atm / cm3", "amount / mmol"], rows, 1);
    sheet.paragraph(&format!(
        "Levels equal: vapour {} kPa, dry gas {} kPa.",
        significant(plan.gas.vapour_pressure_kpa, 4),
        decimals(plan.gas.dry_pressure_kpa, 2)
    ));
}

fn filling(sheet: &mut Layout, plan: &PlanAnswer) {
    let filling = &plan.filling;
    sheet.heading("3  What to reject, and the oxygen in each vessel");
    let how =
        if filling.rejected_was_given { "as the lesson says" } else { "so that every vessel is good enough" };
    sheet.paragraph(&format!(
        "Throw away the first {} ({how}; flask and tube hold {} of air), then fill in this order:",
        cm3(filling.rejected_cm3),
        cm3(filling.free_volume_cm3)
    ));
    let rows = filling
        .vessels
        .iter()
        .map(|vessel| {
            vec![
                vessel.name.clone(),
                vessel.burn.clone().unwrap_or_else(|| "splint".to_owned()),
                if vessel.good_enough { "yes" } else { "NO" }.to_owned(),
                percent(vessel.oxygen_fraction),
                percent(vessel.wanted_fraction),
                format!("{} - {}", decimals(vessel.from_cm3, 0), decimals(vessel.to_cm3, 0)),
            ]
        })
        .collect();
    sheet.columns(&["vessel", "for", "reached", "oxygen", "wanted", "gas passed / cm3"], rows, 3);
}

fn heat(sheet: &mut Layout, plan: &PlanAnswer) {
    let additions = &plan.additions;
    sheet.heading("4  Heat, and what to add when: from the first portion");
    let rise = |kelvin: f64| format!("+{} K", decimals(kelvin, 0));
    let at_once = if additions.boils {
        format!("it boils (at {} degC)", decimals(additions.boiling_point_c, 1))
    } else {
        format!(
            "{} to {} degC, and {} of the gas is steam",
            rise(additions.rise_at_once_k),
            decimals(additions.end_temperature_c, 0),
            percent(additions.steam_share_at_once)
        )
    };
    let advised = match &plan.schedule.found {
        Some(found) => timeline::advised(found),
        None => "NONE: see below".to_owned(),
    };
    let portion = match plan.schedule.found {
        Some(_) => "each portion".to_owned(),
        None => format!("{} at once", measured(additions.portion_cm3)),
    };
    sheet.pairs(&[
        ("advised", format!("{advised}, onto {} of water in the flask", measured(additions.heel_cm3))),
        (
            &portion,
            format!(
                "{}, {} of the gas is steam, {} of gas",
                rise(additions.rise_per_portion_k),
                percent(additions.steam_share_per_portion),
                cm3(additions.gas_per_portion_cm3)
            ),
        ),
        (
            "all at once",
            format!("{at_once} (by itself, without the water: {})", rise(additions.rise_by_itself_k)),
        ),
        ("flask", format!("{} full of liquid at the end", percent(additions.flask_filled_fraction))),
    ]);
    timeline::write(sheet, &plan.schedule);
}

fn pressure(sheet: &mut Layout, plan: &PlanAnswer) {
    let (back, suck) = (&plan.back_pressure, &plan.suck_back);
    sheet.heading("5  Pressure in the flask, funnel, and water running back");
    let margin = if back.margin_cm > 0.0 {
        format!("{} cm are left before gas escapes", decimals(back.margin_cm, 1))
    } else {
        "it OVERFLOWS: gas escapes through the funnel".to_owned()
    };
    let reaches = match (suck.reaches_flask, suck.funnel) {
        (false, _) => "it does not reach the flask",
        (true, FunnelRequest::Open) => "it REACHES the flask unless the funnel lets air in first",
        (true, FunnelRequest::Tap) => "it REACHES the flask while the tap is closed",
    };
    sheet.pairs(&[
        (
            "back pressure",
            format!(
                "{} kPa at {} cm3/s: depth {}, friction {}, bubble {} kPa",
                decimals(back.total_kpa, 2),
                significant(back.flow_cm3_per_s, 2),
                decimals(back.depth_kpa, 2),
                significant(back.friction_kpa, 2),
                decimals(back.bubble_kpa, 2)
            ),
        ),
        (
            "funnel stem",
            format!(
                "liquid stands {} cm up a stem of {} cm: {margin}",
                decimals(back.stem_rise_cm, 1),
                decimals(back.stem_length_cm, 0)
            ),
        ),
        (
            "cooling",
            format!(
                "from {} degC the gas shrinks by {}: {} of water is drawn in, the tube holds {}: {reaches}",
                decimals(suck.from_c, 0),
                percent(suck.shrinkage),
                cm3(suck.drawn_cm3),
                cm3(suck.tube_cm3)
            ),
        ),
    ]);
}

fn burns(sheet: &mut Layout, plan: &PlanAnswer) {
    if plan.burns.is_empty() {
        return;
    }
    sheet.heading("6  The burns");
    for (index, burn) in plan.burns.iter().enumerate() {
        one_burn(sheet, burn);
        if let Some(after) = plan.after.get(index) {
            let lines = after::lines(after);
            let pairs: Vec<(&str, String)> =
                lines.iter().map(|(name, text)| (name.as_str(), text.clone())).collect();
            sheet.pairs(&pairs);
        }
    }
    sheet.paragraph(&format!(
        "Catalyst: filter {} off, wash, dry and weigh it; it is as heavy as before and can be used again. {}",
        plan.requisition.catalyst, plan.disposal_deference
    ));
}

fn one_burn(sheet: &mut Layout, burn: &BurnAnswer) {
    sheet.paragraph(&format!(
        "{}: {} g of {}, with {} mmol of oxygen",
        burn.vessel,
        significant(burn.sample_g, 2),
        burn.sample,
        significant(burn.oxygen_mmol, 3)
    ));
    for answer in &burn.answers {
        sheet.item(
            "-",
            &format!(
                "{} ({}): uses {} mmol, {} of the jar's oxygen, and makes {} g of {}; at most {} g can burn",
                answer.equation_unicode,
                answer.role,
                significant(answer.oxygen_used_mmol, 3),
                percent(answer.share_of_oxygen),
                significant(answer.product_g, 2),
                answer.product_unicode,
                significant(answer.greatest_sample_g, 3)
            ),
        );
    }
}

fn cautions(sheet: &mut Layout, plan: &PlanAnswer) {
    sheet.heading("7  Cautions");
    sheet.paragraph(&plan.deference);
    for caution in &plan.cautions {
        sheet.item(
            "!",
            &format!("{}. {} (Because: {}.)", capital(&caution.topic), caution.text, caution.because),
        );
    }
}

fn basis(sheet: &mut Layout, plan: &PlanAnswer) {
    sheet.heading("8  Assumed, and where the figures come from");
    for assumption in &plan.assumptions {
        sheet.item("~", &format!("{} = {}: {}", assumption.key, assumption.taken, assumption.why));
    }
    let constants: Vec<Vec<String>> = plan
        .constants
        .iter()
        .map(|constant| {
            let value = format!("{} {}", constant.value, constant.unit);
            let year = constant.year.map(|year| format!(" ({year})")).unwrap_or_default();
            vec![constant.symbol.clone(), value.trim_end().to_owned(), format!("{}{year}", constant.source)]
        })
        .collect();
    sheet.columns(&["constant", "value", "source"], constants, 3);
    for relation in &plan.relations {
        let year = relation.year.map(|year| format!(" ({year})")).unwrap_or_default();
        sheet.item("·", &format!("{}{year}", relation.source));
    }
    sheet.paragraph(&format!("overwater {}, answer format {}.", plan.library_version, plan.format));
}

#[cfg(test)]
mod tests {
    use super::*;

    fn sheet(lesson: &str) -> String {
        terminal(&overwater_exchange::plan_toml(lesson).unwrap(), 80)
    }

    const SHORT: &str = "format = 1\nstock.strength = \"20 vol\"\n[[vessels]]\nburn = \"sodium\"\n";

    #[test]
    fn no_line_is_wider_than_the_sheet_whatever_the_lesson_holds() {
        let long = "x".repeat(300);
        let lesson = format!("{SHORT}name = \"{long}\"\n[catalyst]\nsubstance = \"{long} {long}\"\n");
        for width in [40, 60, 80, 132] {
            let answer = overwater_exchange::plan_toml(&lesson).unwrap();
            for line in terminal(&answer, width).lines() {
                assert!(line.chars().count() <= width, "{width}: {line}");
            }
        }
    }

    #[test]
    fn both_answers_for_sodium_are_named_as_what_they_are() {
        let sheet = sheet(SHORT);
        assert!(sheet.contains("2 Na + O₂ → Na₂O₂ (favoured by excess oxygen)"), "{sheet}");
        assert!(sheet.contains("4 Na + O₂ → 2 Na₂O (usually credited)"), "{sheet}");
    }

    #[test]
    fn what_goes_wrong_is_said_in_words() {
        let lesson = SHORT
            .replace("[[vessels]]", "[run]\nrejected_cm3 = 0\n[apparatus]\nstem_length_cm = 5\n[[vessels]]");
        let sheet = sheet(&lesson);
        assert!(sheet.contains("NO "), "{sheet}");
        assert!(sheet.contains("it OVERFLOWS"), "{sheet}");
        assert!(sheet.contains("it REACHES the flask"), "{sheet}");
        let strong = "format = 1\nstock.strength = \"100 vol\"\nrun.strength = \"100 vol\"\n\
                      apparatus.heel_cm3 = 5\n[[vessels]]\n";
        let answer = overwater_exchange::plan_toml(strong).unwrap();
        assert!(answer.additions.boils);
        assert!(terminal(&answer, 80).contains("it boils (at 100.0 °C)"));
    }

    #[test]
    fn one_is_written_in_the_singular() {
        let sheet = sheet(SHORT);
        assert!(sheet.contains("1 deflagrating spoon\n"), "{sheet}");
        assert!(sheet.contains("2 gas jars, 2 covers"), "{sheet}");
    }
}
