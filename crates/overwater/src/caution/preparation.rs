//! Cautions of the preparation: peroxide, heat, pressure, the first gas.
//!
//! Limits are common practice, no source, unless another source is named.

use super::{Caution, Rule, caution};
use crate::plan::lesson::Funnel;
use crate::plan::{Lesson, Plan};
use crate::units::{decimals, significant};

pub(super) const RULES: [Rule; 14] = [
    eyes,
    eye_damage,
    concentrated,
    old_stock,
    venting,
    catalyst,
    heat,
    boiling,
    froth,
    escape,
    first_gas,
    too_little_oxygen,
    splint,
    suck_back,
];

/// About 8 % by mass: from there peroxide solutions are classed as damaging to eyes (the EU's list of harmonised
/// classifications, from memory; under review since 2024).
const EYE_DAMAGE_PERCENT_W_V: f64 = 8.2;
/// From here a splash burns skin, and a spill on paper or cloth can start a fire.
const CONCENTRATED_PERCENT_W_V: f64 = 20.0;
const OLD_DAYS: i32 = 183;
const HOT_C: f64 = 60.0;
const FULL_FRACTION: f64 = 1.0 / 3.0;
const LEAST_MARGIN_CM: f64 = 5.0;

fn eyes(_: &Lesson, plan: &Plan) -> Option<Caution> {
    caution(
        "eye_protection",
        "eyes and hands",
        "Eye protection for everyone in the room from the first drop to the last rinse; goggles rather than glasses \
         for whoever adds peroxide or burns metals. Wipe up spills at once, rinse skin with plenty of water.",
        format!("peroxide of {} vol is poured", significant(plan.stock.run.volume_strength_vol, 3)),
    )
}

fn eye_damage(_: &Lesson, plan: &Plan) -> Option<Caution> {
    let strength = plan.stock.run.percent_w_v;
    (strength >= EYE_DAMAGE_PERCENT_W_V).then_some(())?;
    caution(
        "damages_eyes",
        "strength in use",
        "At this strength peroxide is classed as damaging to eyes; 20 vol is not. Run weaker if the vessels can still \
         be filled.",
        format!(
            "run at {} % w/v; the class changes near 8 % by mass (from memory: check the safety data sheet)",
            decimals(strength, 1)
        ),
    )
}

fn concentrated(_: &Lesson, plan: &Plan) -> Option<Caution> {
    let strength = plan.stock.strength.percent_w_v;
    (strength >= CONCENTRATED_PERCENT_W_V).then_some(())?;
    caution(
        "concentrated_stock",
        "stock solution",
        "Dilute the stock in the preparation room only, with gloves and goggles, pouring it into the water; keep it \
         off cloth, paper, wood and metals, and never pour any back into the bottle.",
        format!("the stock is {} % w/v", decimals(strength, 0)),
    )
}

fn old_stock(lesson: &Lesson, plan: &Plan) -> Option<Caution> {
    if plan.stock.fraction_of_label.is_some() {
        return None;
    }
    let because = match plan.stock.days_open {
        Some(days) if days > OLD_DAYS => format!("opened {days} days before the lesson, and not assayed"),
        Some(_) => return None,
        None if lesson.stock.as_ref().is_some_and(|stock| stock.opened.is_some()) => {
            "the day of opening is known but not that of the lesson, and there is no assay".to_owned()
        }
        None => "neither the day of opening nor an assay is known".to_owned(),
    };
    caution(
        "unknown_strength",
        "strength of the stock",
        "Assay the bottle, or make a trial run and measure the gas: an opened bottle may have lost a large part of \
         its strength, and no rate of loss can be relied on.",
        because,
    )
}

fn venting(_: &Lesson, plan: &Plan) -> Option<Caution> {
    caution(
        "vented_storage",
        "bottles",
        "Keep peroxide cool and dark in clean bottles with a vented cap, never in a tightly closed one. Label diluted \
         solution with strength, date and hazard.",
        match plan.requisition.dilution {
            Some(dilution) => {
                format!("{} cm3 of diluted solution is made", significant(dilution.made_up_to_cm3, 3))
            }
            None => "the stock is used as it is".to_owned(),
        },
    )
}

fn catalyst(_: &Lesson, plan: &Plan) -> Option<Caution> {
    caution(
        "catalyst_dust",
        "catalyst",
        "Weigh the catalyst without raising dust, and keep it from paper, sawdust, charcoal and other fuels. Recover \
         it at the end by filtering, washing and drying.",
        format!("{} g of {}", significant(plan.requisition.catalyst_in_all_g, 2), plan.requisition.catalyst),
    )
}

fn heat(_: &Lesson, plan: &Plan) -> Option<Caution> {
    let additions = &plan.additions;
    (additions.end_temperature_c >= HOT_C && !additions.boils).then_some(())?;
    caution(
        "hot_flask",
        "heat",
        "Add the peroxide in the portions advised and wait for the bubbling to slow before the next; stand the flask \
         in a bowl of cold water if it gets too hot to hold.",
        format!("all at once it would reach about {} degC", decimals(additions.end_temperature_c, 0)),
    )
}

fn boiling(_: &Lesson, plan: &Plan) -> Option<Caution> {
    plan.additions.boils.then_some(())?;
    caution(
        "boils",
        "heat",
        "Never add this amount at once: the flask would boil and throw hot peroxide out of the funnel. Add it in the \
         portions advised, wait in between, and cool the flask.",
        "all at once the heat is enough to bring the liquid to its boiling point".to_owned(),
    )
}

fn froth(_: &Lesson, plan: &Plan) -> Option<Caution> {
    let filled = plan.additions.flask_filled_fraction;
    (filled > FULL_FRACTION).then_some(())?;
    caution(
        "full_flask",
        "froth",
        "Take a larger flask, or pour it out half way: froth from a flask more than a third full reaches the bung and \
         the delivery tube.",
        format!("at the end the flask is {} % full", decimals(100.0 * filled, 0)),
    )
}

fn escape(_: &Lesson, plan: &Plan) -> Option<Caution> {
    let pressure = &plan.back_pressure;
    (pressure.margin_cm < LEAST_MARGIN_CM).then_some(())?;
    caution(
        "funnel_overflows",
        "funnel",
        "Raise the outlet, take a longer stem or a wider tube: when the stem fills to the top, gas drives peroxide \
         out of the funnel. A kinked tube does the same at once.",
        format!(
            "the liquid stands {} cm up a stem of {} cm",
            decimals(pressure.stem_rise_cm, 1),
            decimals(pressure.stem_length_cm, 0)
        ),
    )
}

fn first_gas(_: &Lesson, plan: &Plan) -> Option<Caution> {
    let filling = &plan.filling;
    (filling.rejected_cm3 < filling.free_volume_cm3).then_some(())?;
    caution(
        "first_gas_is_air",
        "gas to reject",
        "Throw away at least as much gas as flask and tube hold: the first gas over is air.",
        format!(
            "{} cm3 is rejected from a free volume of {} cm3",
            significant(filling.rejected_cm3, 3),
            significant(filling.free_volume_cm3, 3)
        ),
    )
}

fn too_little_oxygen(_: &Lesson, plan: &Plan) -> Option<Caution> {
    let poor: Vec<String> = plan
        .filling
        .vessels
        .iter()
        .filter(|vessel| !vessel.is_good_enough())
        .map(|vessel| {
            format!(
                "{} holds {} %, {} % is wanted",
                vessel.name,
                decimals(100.0 * vessel.oxygen_fraction, 0),
                decimals(100.0 * vessel.wanted_fraction, 0)
            )
        })
        .collect();
    (!poor.is_empty()).then_some(())?;
    let text = format!(
        "Reject at least {} cm3, fill the vessel later, or make the free volume smaller.",
        plan.filling.least_rejected_cm3.ceil()
    );
    caution("too_little_oxygen", "oxygen in the vessels", &text, poor.join("; "))
}

fn splint(_: &Lesson, plan: &Plan) -> Option<Caution> {
    let vessels: Vec<&str> = plan
        .filling
        .vessels
        .iter()
        .filter(|vessel| vessel.burn.is_none())
        .map(|vessel| vessel.name.as_str())
        .collect();
    (!vessels.is_empty()).then_some(())?;
    caution(
        "splint_is_no_proof",
        "glowing splint",
        "A splint that relights shows much more oxygen than in air, not pure oxygen: it relights from about a third \
         upward.",
        format!("the splint test in {}", vessels.join(", ")),
    )
}

fn suck_back(_: &Lesson, plan: &Plan) -> Option<Caution> {
    let back = &plan.suck_back;
    back.reaches_flask.then_some(())?;
    let text = match back.funnel {
        Funnel::Open => {
            "Take the delivery tube out of the water before the bubbling stops and the flask cools. The open funnel \
             may let air in first, but do not rely on it."
        }
        Funnel::Tap => {
            "Take the delivery tube out of the water, or open the tap, before the bubbling stops: with the tap closed \
             nothing else lets air in, and cold water runs into the hot flask."
        }
    };
    caution(
        "water_runs_back",
        "end of the preparation",
        text,
        format!(
            "cooling from {} degC would draw in {} cm3, and the tube holds {} cm3",
            decimals(back.from_c, 0),
            significant(back.drawn_cm3, 2),
            significant(back.tube_cm3, 2)
        ),
    )
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::peroxide::strength::{VolumeConvention, mass_concentration};
    use crate::units::Dimensioned;

    #[test]
    fn twenty_volumes_stays_below_the_change_of_class_and_thirty_does_not() {
        // 20 vol is 6.1 % w/v, 30 vol 9.1 % w/v (arithmetic with 22.414 dm3/mol and 34.014 g/mol).
        let percent = |volumes: f64| -> f64 {
            let concentration = VolumeConvention::ZeroDegreesOneAtmosphere.concentration(volumes);
            mass_concentration(concentration).si() / 10.0
        };
        assert!((percent(20.0) - 6.07).abs() < 0.005 && (percent(30.0) - 9.105).abs() < 0.005);
        assert!(percent(20.0) < EYE_DAMAGE_PERCENT_W_V && percent(30.0) > EYE_DAMAGE_PERCENT_W_V);
    }
}
