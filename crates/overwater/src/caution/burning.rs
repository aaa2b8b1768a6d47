//! Cautions of the burns.

use super::{Caution, Rule, caution};
use crate::plan::{Lesson, Plan};
use crate::units::significant;

pub(super) const RULES: [Rule; 7] = [sulfur, magnesium, sodium, calcium, phosphorus, iron, too_much_sample];

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
