//! From the core's results to the answer.

use overwater::burn::equilibrium::Flame;
use overwater::burn::{BurntAnswer, Contents, Flames, Fuel, Jar};
use overwater::chem::Formula;
use overwater::reference::nasa9::Species;
use overwater::reference::thermochemistry::Phase;
use overwater::units::DEGREE_CELSIUS;

use super::answer::{
    AfterAnswer, CondensedAnswer, FlameAnswer, FlamesAnswer, FractionAnswer, FuelAnswer, JarAnswer,
    MadeAnswer, ProductAnswer,
};

/// Mole fractions below this are not listed.
const LEAST_FRACTION: f64 = 1e-6;

const fn words(phase: Phase) -> &'static str {
    match phase {
        Phase::Gas => "gas",
        Phase::Liquid => "liquid",
        Phase::Crystal => "solid",
        Phase::Aqueous => "dissolved",
    }
}

pub(super) fn fuel(fuel: &Fuel) -> FuelAnswer {
    FuelAnswer {
        name: fuel.name.to_owned(),
        formula: fuel.formula.to_string(),
        formula_unicode: fuel.formula.unicode(),
        phase: words(fuel.phase).to_owned(),
        formation_kj_per_mol: fuel.formation_kj_per_mol,
        source: fuel.source.text.to_owned(),
    }
}

pub(super) fn jar(jar: &Jar, inside: &Contents) -> JarAnswer {
    JarAnswer {
        volume_cm3: jar.volume_cm3,
        temperature_c: jar.temperature_c,
        pressure_kpa: jar.pressure_kpa,
        oxygen_fraction: jar.oxygen_fraction,
        oxygen_mmol: 1000.0 * inside.oxygen_mol,
        nitrogen_mmol: 1000.0 * inside.nitrogen_mol,
        vapour_mmol: 1000.0 * inside.vapour_mol,
    }
}

pub(super) fn product(answer: &BurntAnswer) -> ProductAnswer {
    let poor = answer.poor.as_ref();
    ProductAnswer {
        role: answer.role.words().to_owned(),
        equation: answer.combustion.equation_with_states.to_string(),
        equation_unicode: answer.combustion.equation_with_states.unicode(),
        poor_equation: poor.map(|poor| poor.equation_with_states.to_string()),
        poor_equation_unicode: poor.map(|poor| poor.equation_with_states.unicode()),
        regime: answer.regime.words().to_owned(),
        share_of_oxygen: Some(answer.share_of_oxygen).filter(|share| share.is_finite()),
        most_g: answer.most_g,
        before_going_out_g: answer.before_going_out_g,
        left_g: answer.left_g,
        made: answer
            .made
            .iter()
            .map(|made| MadeAnswer {
                formula: made.formula.clone(),
                formula_unicode: made.formula_unicode.clone(),
                phase: words(made.phase).to_owned(),
                amount_mmol: made.amount_mmol,
                mass_g: made.mass_g,
            })
            .collect(),
        heat_kj_per_mol: answer.combustion.heat_kj_per_mol,
        heat_kj: answer.heat_kj,
        after: AfterAnswer {
            oxygen_mmol: answer.after.oxygen_mmol,
            nitrogen_mmol: answer.after.nitrogen_mmol,
            made_mmol: answer.after.made_mmol,
            sample_mmol: answer.after.sample_mmol,
            volume_cm3: answer.after.volume_cm3,
            water_rise_cm3: answer.after.water_rise_cm3,
            water_rise_washed_cm3: answer.after.water_rise_washed_cm3,
        },
    }
}

pub(super) fn flames(flames: &Flames) -> FlamesAnswer {
    FlamesAnswer { at_the_sample: flame(&flames.at_the_sample), whole_jar: flame(&flames.whole_jar) }
}

fn flame(flame: &Flame) -> FlameAnswer {
    let there = &flame.equilibrium;
    let mut gases: Vec<FractionAnswer> = there
        .fractions
        .iter()
        .filter(|(_, fraction)| *fraction >= LEAST_FRACTION)
        .map(|(species, fraction)| FractionAnswer {
            name: species.name.to_owned(),
            formula_unicode: unicode(species),
            fraction: *fraction,
        })
        .collect();
    gases.sort_by(|a, b| b.fraction.total_cmp(&a.fraction));
    FlameAnswer {
        temperature_k: flame.temperature_k,
        temperature_c: DEGREE_CELSIUS.from_si(flame.temperature_k),
        changes_phase: flame.changes_phase,
        gas_mmol: 1000.0 * there.gas_mol,
        gases,
        condensed: there
            .condensed
            .iter()
            .map(|(species, amount)| CondensedAnswer {
                name: species.name.to_owned(),
                formula_unicode: unicode(species),
                phase: words(species.phase).to_owned(),
                amount_mmol: 1000.0 * amount,
            })
            .collect(),
    }
}

fn unicode(species: &Species) -> String {
    let formula = species.formula.unwrap_or(species.name);
    Formula::parse(formula).map_or_else(|_| formula.to_owned(), |formula| formula.unicode())
}
