//! Cautions of the burns.

use super::{Caution, Rule, caution};
use crate::plan::{Lesson, Plan};
use crate::units::significant;

pub(super) const RULES: [Rule; 12] = [
    sulfur,
    magnesium,
    sodium,
    calcium,
    phosphorus,
    iron,
    too_much_sample,
    air_of_the_room,
    cover,
    oil,
    peroxide_in_the_residue,
    unmixed_air,
];

/// Heat that lifts a cover or drives a bung out of a closed vessel, common practice, no source: 1 kJ kept by 250 cm3 of
/// gas would warm it by more than 1000 K.
const LIFTS_COVER_KJ: f64 = 0.2;

/// The masses of a sample and where it is burned; nothing where it is not.
fn burned(plan: &Plan, formula: &str) -> Option<String> {
    let masses: Vec<String> = plan
        .burns
        .iter()
        .filter(|burn| burn.formula == formula)
        .map(|burn| format!("{} g in {}", significant(burn.sample_g, 2), burn.vessel))
        .collect();
    (!masses.is_empty()).then(|| masses.join(", "))
}

fn sulfur(_: &Lesson, plan: &Plan) -> Option<Caution> {
    caution(
        "sulfur_dioxide",
        "burning sulfur",
        "Sulfur dioxide is toxic and brings on asthma: burn the sulfur and open the jar in a fume cupboard, keep the \
         cover on, leave a little water in the jar, and burn off the spoon there too.",
        burned(plan, "S")?,
    )
}

fn magnesium(_: &Lesson, plan: &Plan) -> Option<Caution> {
    caution(
        "bright_flame",
        "burning magnesium",
        "Do not look straight at the flame: watch it through dark glass or to one side. Keep the ribbon off the glass.",
        burned(plan, "Mg")?,
    )
}

fn sodium(_: &Lesson, plan: &Plan) -> Option<Caution> {
    caution(
        "sodium",
        "burning sodium",
        "A demonstration behind a screen: a piece no larger than a rice grain, oil wiped off, on a dry spoon in a dry \
         jar. No water until the metal is gone; the product is caustic. Remains go into propan-2-ol, never into water.",
        burned(plan, "Na")?,
    )
}

fn calcium(_: &Lesson, plan: &Plan) -> Option<Caution> {
    caution(
        "calcium",
        "burning calcium",
        "A demonstration behind a screen, with a dry jar: the metal gives hydrogen with water, and the oxide is caustic \
         and gets hot when it is wetted.",
        burned(plan, "Ca")?,
    )
}

fn phosphorus(_: &Lesson, plan: &Plan) -> Option<Caution> {
    caution(
        "phosphorus",
        "burning phosphorus",
        "Red phosphorus only, by the teacher, in a fume cupboard: the fume is strongly acid, and what is left on the \
         spoon may hold white phosphorus. Burn it off completely.",
        burned(plan, "P")?,
    )
}

fn iron(_: &Lesson, plan: &Plan) -> Option<Caution> {
    caution(
        "molten_drops",
        "burning iron",
        "Have 1 to 2 cm of water or sand in the jar: molten oxide at about 1600 degC cracks bare glass.",
        burned(plan, "Fe")?,
    )
}

fn air_of_the_room(_: &Lesson, plan: &Plan) -> Option<Caution> {
    let mut above = Vec::new();
    for burn in &plan.after {
        let airs = burn.answers.iter().flat_map(|answer| [&answer.air_of_all, &answer.air_of_one]);
        let worst = airs.flatten().find(|air| air.needs_fume_cupboard());
        if let Some((air, check)) = worst.and_then(|air| Some((air, air.tightest()?))) {
            above.push(format!(
                "{} of {} would come to {} times a limit ({})",
                air.airborne.name,
                burn.vessel,
                significant(check.found / check.allowed, 2),
                check.limit.document
            ));
        }
    }
    (!above.is_empty()).then_some(())?;
    caution(
        "room_air",
        "air of the room",
        "Open these jars in a fume cupboard only, one after another, or burn less: let out into the room they would bring \
         its air above a limit for people at work.",
        above.join("; "),
    )
}

fn unmixed_air(_: &Lesson, plan: &Plan) -> Option<Caution> {
    let airs =
        plan.after.iter().flat_map(|burn| &burn.answers).filter_map(|answer| answer.air_of_one.as_ref());
    let gas = airs.filter(|air| air.airborne.is_gas && air.airborne.product == "SO2").find_map(|air| {
        let needed = air.checks.iter().map(|check| check.air_needed_m3).reduce(f64::max)?;
        Some(format!(
            "{} cm3 of {} takes {} cubic metres of air to come below the lowest limit listed",
            significant(air.released_cm3?, 2),
            air.airborne.name,
            significant(needed, 2)
        ))
    })?;
    caution(
        "near_the_jar",
        "beside the jar",
        "Means of the whole room say nothing of the air beside an open jar, where there is far more: no one bends over \
         it, and those with asthma stand back.",
        gas,
    )
}

fn cover(_: &Lesson, plan: &Plan) -> Option<Caution> {
    let hot: Vec<String> = plan
        .after
        .iter()
        .filter_map(|burn| {
            let heat = burn.answers.iter().map(|answer| answer.heat_kj).reduce(f64::max)?;
            (heat > LIFTS_COVER_KJ).then(|| format!("{} kJ in {}", significant(heat, 2), burn.vessel))
        })
        .collect();
    (!hot.is_empty()).then_some(())?;
    caution(
        "loose_cover",
        "covers",
        "Hold the cover loosely while it burns, never clamp or stopper the vessel: hot gas must get out. Let the jar cool \
         before it is opened.",
        hot.join(", "),
    )
}

fn oil(_: &Lesson, plan: &Plan) -> Option<Caution> {
    caution(
        "oil_on_metal",
        "oil on sodium",
        "Blot the oil off with dry filter paper just before the burn: oil burns with soot, adds carbon dioxide and water \
         to the jar, and spoils the test of the product. The paper goes into propan-2-ol with the crumbs.",
        burned(plan, "Na")?,
    )
}

fn peroxide_in_the_residue(_: &Lesson, plan: &Plan) -> Option<Caution> {
    let with_peroxide: Vec<String> = plan
        .after
        .iter()
        .flat_map(|burn| burn.answers.iter().map(move |answer| (burn, answer)))
        .filter(|(_, answer)| {
            answer.in_water.as_ref().is_some_and(|water| water.ph_without_peroxide.is_some())
        })
        .map(|(burn, answer)| {
            format!("up to {} g of {} in {}", significant(answer.product_g, 2), answer.product, burn.vessel)
        })
        .collect();
    (!with_peroxide.is_empty()).then_some(())?;
    caution(
        "peroxide_in_residue",
        "peroxide in the residue",
        "The pale yellow solid sets fire to paper, cloth, wood and other fuels: keep it on metal or glass and scrape \
         nothing into a bin. Water on it gets hot and foams with oxygen.",
        with_peroxide.join(", "),
    )
}

fn too_much_sample(_: &Lesson, plan: &Plan) -> Option<Caution> {
    let vessels: Vec<&str> = plan
        .burns
        .iter()
        .filter(|burn| burn.has_too_much_sample())
        .map(|burn| burn.vessel.as_str())
        .collect();
    (!vessels.is_empty()).then_some(())?;
    caution(
        "too_much_sample",
        "sample masses",
        "Take less: some of the sample will be left over hot, and the vessel's oxygen will be used up.",
        format!("more than the oxygen of {} can burn", vessels.join(", ")),
    )
}
