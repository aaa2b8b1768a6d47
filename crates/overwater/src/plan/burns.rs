//! What is burned in each jar: the oxygen it uses and what it makes.

use crate::Result;
use crate::burn::{Role, oxygen_needed, product_formed, sample_for_oxygen};
use crate::plan::filling::Wanted;
use crate::plan::{Filling, GasBudget};
use crate::reference::burns::Holder;
use crate::units::{Dimensioned, GRAM, MILLIMOLE, Mass, Moles};

/// One answer to what a sample makes.
#[derive(Debug, Clone, PartialEq)]
pub struct BurnAnswer {
    /// Whose answer it is.
    pub role: Role,
    /// The balanced equation.
    pub equation: String,
    /// The same with subscripts.
    pub equation_unicode: String,
    /// The product.
    pub product: String,
    /// The product with subscripts.
    pub product_unicode: String,
    /// Mass of the product, if all of the sample burns (g).
    pub product_g: f64,
    /// Oxygen that the sample uses up (mmol).
    pub oxygen_used_mmol: f64,
    /// That oxygen as a share of what the vessel holds.
    pub share_of_oxygen: f64,
    /// The most of the sample that the vessel's oxygen burns (g).
    pub greatest_sample_g: f64,
}

/// One burn.
#[derive(Debug, Clone, PartialEq)]
pub struct BurnPlan {
    /// The vessel's name.
    pub vessel: String,
    /// The sample's name.
    pub sample: &'static str,
    /// The sample's formula.
    pub formula: &'static str,
    /// The form in which it is used.
    pub form: &'static str,
    /// What holds it.
    pub holder: Holder,
    /// Mass of the sample (g).
    pub sample_g: f64,
    /// Oxygen in the vessel (mmol).
    pub oxygen_mmol: f64,
    /// What it makes: what is favoured and what is usually credited, where these differ.
    pub answers: Vec<BurnAnswer>,
}

impl BurnPlan {
    /// Whether there is more sample than the vessel's oxygen burns, by any of the answers.
    #[must_use]
    pub fn has_too_much_sample(&self) -> bool {
        self.answers.iter().any(|answer| answer.share_of_oxygen > 1.0)
    }
}

pub(super) fn burns(vessels: &[Wanted], filling: &Filling, gas: &GasBudget) -> Result<Vec<BurnPlan>> {
    let mut plans = Vec::new();
    for ((vessel, filled), budget) in vessels.iter().zip(&filling.vessels).zip(&gas.vessels) {
        let (Some(sample), Some(sample_g)) = (&vessel.sample, vessel.sample_g) else {
            continue;
        };
        let oxygen_mmol = budget.amount_mmol * filled.oxygen_fraction;
        let mass = Mass::new(GRAM.to_si(sample_g));
        let answers = sample
            .answers()?
            .into_iter()
            .map(|answer| {
                let combustion = &answer.combustion;
                let used: f64 = oxygen_needed(combustion, mass).si() / MILLIMOLE.si;
                let most = sample_for_oxygen(combustion, Moles::new(oxygen_mmol * MILLIMOLE.si));
                BurnAnswer {
                    role: answer.role,
                    equation: combustion.equation.to_string(),
                    equation_unicode: combustion.equation.unicode(),
                    product: combustion.product.to_string(),
                    product_unicode: combustion.product.unicode(),
                    product_g: product_formed(combustion, mass).si() / GRAM.si,
                    oxygen_used_mmol: used,
                    share_of_oxygen: used / oxygen_mmol,
                    greatest_sample_g: most.si() / GRAM.si,
                }
            })
            .collect();
        plans.push(BurnPlan {
            vessel: vessel.name.clone(),
            sample: sample.name(),
            formula: sample.burn.formula,
            form: sample.burn.form,
            holder: sample.burn.holder,
            sample_g,
            oxygen_mmol,
            answers,
        });
    }
    Ok(plans)
}
