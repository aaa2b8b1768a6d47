//! What to order, weigh and set out.

use crate::Result;
use crate::bounds;
use crate::peroxide::dilution::stock_volume;
use crate::peroxide::strength::solution_volume;
use crate::plan::filling::Wanted;
use crate::plan::given::Given;
use crate::plan::lesson::{Kind, Lesson};
use crate::plan::{GasBudget, StockReport, defaults};
use crate::reference::burns::Holder;
use crate::units::{CUBIC_CENTIMETRE, Dimensioned, MILLIMOLE, Moles, Volume};

/// How to dilute the stock.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Dilution {
    /// Stock to measure (cm3).
    pub stock_cm3: f64,
    /// Volume to make it up to with purified water (cm3).
    pub made_up_to_cm3: f64,
}

/// The samples of one kind.
#[derive(Debug, Clone, PartialEq)]
pub struct SampleLine {
    /// Name of the sample.
    pub name: &'static str,
    /// The form in which it is used.
    pub form: &'static str,
    /// Mass of each (g).
    pub mass_g: f64,
    /// How many.
    pub count: u32,
}

/// What to order and set out.
#[derive(Debug, Clone, PartialEq)]
pub struct Requisition {
    /// Groups that each make the preparation.
    pub groups: u32,
    /// Sets put out, with the spare ones.
    pub sets: u32,
    /// Peroxide for one preparation, by theory (cm3).
    pub theory_cm3: f64,
    /// Collection efficiency that is counted on.
    pub collection_efficiency_fraction: f64,
    /// Peroxide for one preparation with that efficiency (cm3).
    pub with_efficiency_cm3: f64,
    /// The same rounded up to what is measured out (cm3).
    pub issue_cm3: f64,
    /// Peroxide for all sets (cm3).
    pub issue_in_all_cm3: f64,
    /// How to make it from the stock; nothing where the stock is run as it is.
    pub dilution: Option<Dilution>,
    /// The catalyst.
    pub catalyst: String,
    /// Catalyst for one preparation (g).
    pub catalyst_g: f64,
    /// Catalyst for all sets (g).
    pub catalyst_in_all_g: f64,
    /// Gas jars, with the spare ones.
    pub jars: u32,
    /// Boiling tubes.
    pub tubes: u32,
    /// Covers, one for each jar.
    pub covers: u32,
    /// Bungs, one for each tube.
    pub bungs: u32,
    /// Deflagrating spoons.
    pub spoons: u32,
    /// Tongs.
    pub tongs: u32,
    /// Glowing splints.
    pub splints: u32,
    /// Indicator (cm3).
    pub indicator_cm3: f64,
    /// Water for the jars whose product is tested (cm3).
    pub jar_water_cm3: f64,
    /// Samples.
    pub samples: Vec<SampleLine>,
}

pub(super) fn requisition(
    lesson: &Lesson,
    gas: &GasBudget,
    stock: &StockReport,
    vessels: &[Wanted],
    given: &mut Given,
) -> Result<Requisition> {
    let run = &lesson.run;
    let groups = given.count(run.groups, &defaults::GROUPS, 1, MOST_SETS)?;
    let sets = groups + given.count(run.spare_sets, &defaults::SPARE_SETS, 0, MOST_SETS)?;
    let spare_jars = given.count(run.spare_jars, &defaults::SPARE_JARS, 0, MOST_SETS)?;
    let efficiency = given.number(
        run.collection_efficiency_fraction,
        &defaults::EFFICIENCY,
        &bounds::COLLECTION_EFFICIENCY_FRACTION,
    )?;
    let catalyst_g = given.number(lesson.catalyst.mass_g, &defaults::CATALYST_MASS, &bounds::MASS_G)?;
    let catalyst = lesson.catalyst.substance.clone().unwrap_or_else(|| {
        given.assume("catalyst.substance", CATALYST, "the usual one; granules foam less than powder");
        CATALYST.to_owned()
    });

    let oxygen = Moles::new(gas.total.amount_mmol * MILLIMOLE.si);
    let theory_cm3 = solution_volume(oxygen, stock.run.concentration()).si() / CUBIC_CENTIMETRE.si;
    let with_efficiency_cm3 = theory_cm3 / efficiency;
    let issue_cm3 = round_up(with_efficiency_cm3, &defaults::MEASURING_STEPS_CM3);
    let issue_in_all_cm3 = issue_cm3 * f64::from(sets);
    let dilute = stock.run.concentration_mol_per_dm3 < stock.strength.concentration_mol_per_dm3;
    let dilution = dilute.then(|| {
        let made_up_to_cm3 = round_up(issue_in_all_cm3, &defaults::MAKING_UP_STEPS_CM3);
        let made_up = Volume::new(made_up_to_cm3 * CUBIC_CENTIMETRE.si);
        let stock_cm3 = stock_volume(stock.strength.concentration(), stock.run.concentration(), made_up);
        Dilution { stock_cm3: stock_cm3.si() / CUBIC_CENTIMETRE.si, made_up_to_cm3 }
    });

    let count =
        |wanted: &dyn Fn(&Wanted) -> bool| vessels.iter().filter(|vessel| wanted(vessel)).map(|_| sets).sum();
    let held_by = |holder: Holder| {
        count(&|vessel| vessel.sample.as_ref().is_some_and(|sample| sample.burn.holder == holder))
    };
    let jars = count(&|vessel| vessel.kind == Kind::Jar) + spare_jars * sets;
    let tubes = count(&|vessel| vessel.kind == Kind::Tube);
    let burned = count(&|vessel| vessel.sample.is_some());
    Ok(Requisition {
        groups,
        sets,
        theory_cm3,
        collection_efficiency_fraction: efficiency,
        with_efficiency_cm3,
        issue_cm3,
        issue_in_all_cm3,
        dilution,
        catalyst,
        catalyst_g,
        catalyst_in_all_g: catalyst_g * f64::from(sets),
        jars,
        tubes,
        covers: jars,
        bungs: tubes,
        spoons: held_by(Holder::Spoon),
        tongs: held_by(Holder::Tongs),
        splints: count(&|vessel| vessel.sample.is_none()),
        indicator_cm3: f64::from(burned) * defaults::INDICATOR_CM3,
        jar_water_cm3: f64::from(burned) * defaults::WATER_IN_JAR_CM3,
        samples: samples(vessels, sets),
    })
}

fn samples(vessels: &[Wanted], sets: u32) -> Vec<SampleLine> {
    let mut lines: Vec<SampleLine> = Vec::new();
    for vessel in vessels {
        let (Some(sample), Some(mass_g)) = (&vessel.sample, vessel.sample_g) else {
            continue;
        };
        match lines.iter_mut().find(|line| line.name == sample.name() && line.mass_g == mass_g) {
            Some(line) => line.count += sets,
            None => {
                lines.push(SampleLine { name: sample.name(), form: sample.burn.form, mass_g, count: sets })
            }
        }
    }
    lines
}

const MOST_SETS: u32 = 100;
const CATALYST: &str = "manganese(IV) oxide";

/// Rounds a volume up in the steps that its size calls for.
fn round_up(volume_cm3: f64, steps: &[(f64, f64)]) -> f64 {
    let step = steps.iter().find(|(up_to, _)| volume_cm3 <= *up_to).map_or(1.0, |(_, step)| *step);
    // A volume that is a whole number of steps but for the last bits stays where it is.
    ((volume_cm3 / step) - 1e-9).ceil() * step
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn volumes_are_rounded_up_to_what_is_measured() {
        for (volume, expected) in [
            (0.2, 0.5),
            (9.6, 10.0),
            (10.0, 10.0),
            (48.4, 50.0),
            (50.000_000_000_01, 50.0),
            (72.6, 80.0),
            (251.0, 300.0),
            (1001.0, 1100.0),
        ] {
            assert_eq!(round_up(volume, &defaults::MEASURING_STEPS_CM3), expected, "{volume}");
        }
        for (volume, expected) in [(12.0, 20.0), (90.0, 100.0), (501.0, 600.0), (1200.0, 1500.0)] {
            assert_eq!(round_up(volume, &defaults::MAKING_UP_STEPS_CM3), expected, "{volume}");
        }
    }
}
