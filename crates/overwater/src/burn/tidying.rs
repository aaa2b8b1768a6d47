//! What a jar holds when all is over, and what makes it harmless.
//!
//! Amounts follow from the equations; what is done with it is common practice, no source, and defers to the employer's
//! disposal rules.

use crate::Result;
use crate::reference::products_in_water::{Becomes, ProductInWater};

/// Concentration of the dilute alkali or acid that is reckoned with, in mol/dm3.
pub const DILUTE_MOL_PER_DM3: f64 = 0.5;

/// Printed with every list of what to tidy up.
pub const DISPOSAL_DEFERENCE: &str = "The employer's disposal rules and local rules for drains come first wherever they \
                                      differ.";

/// What neutralises a product.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Neutraliser {
    /// What is taken.
    pub reagent: &'static str,
    /// Amount of it for all of the product (mmol).
    pub amount_mmol: f64,
    /// The same as a solution of [`DILUTE_MOL_PER_DM3`] (cm3).
    pub volume_cm3: f64,
}

/// How to tidy up after a product.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Tidying {
    /// What neutralises it; nothing where nothing need be.
    pub neutraliser: Option<Neutraliser>,
    /// What to do.
    pub text: &'static str,
}

/// Moles of alkali (above 0) or of acid (below 0) for each mole of the product: to the sulfite, the sulfate, the hydrogen
/// phosphate; to the salt of a base. Carbonic acid and peroxide are left to themselves.
fn alkali_for_each(product: &ProductInWater) -> f64 {
    use crate::reference::products_in_water::Acid;
    let each = product.becomes.iter().map(|part| match *part {
        Becomes::Acid(Acid::SulfurDioxide | Acid::HydrogenSulfate | Acid::Phosphoric, count) => 2.0 * count,
        Becomes::Acid(Acid::CarbonDioxide | Acid::HydrogenPeroxide, _) => 0.0,
        Becomes::Alkali(count) => -count,
        Becomes::Hydroxide(_, count) => -2.0 * count,
    });
    each.sum()
}

/// How to tidy up after an amount of a product.
///
/// ```
/// use overwater::burn::tidying::tidying;
/// // 3.12 mmol of sulfur dioxide take 6.24 mmol of sodium hydroxide to sodium sulfite: 12.5 cm3 of 0.5 mol/dm3.
/// let alkali = tidying("SO2", 3.12)?.neutraliser.unwrap();
/// assert!((alkali.amount_mmol - 6.24).abs() < 1e-9 && (alkali.volume_cm3 - 12.48).abs() < 1e-9);
/// # Ok::<(), overwater::Error>(())
/// ```
///
/// # Errors
/// `unknown_name` for a product, with the nearest that is known.
pub fn tidying(product: &str, amount_mmol: f64) -> Result<Tidying> {
    let product = ProductInWater::named(product)?;
    let each = alkali_for_each(product);
    let reagent = if each > 0.0 { "sodium hydroxide" } else { "hydrochloric acid" };
    let neutraliser = (each != 0.0).then(|| {
        let amount = each.abs() * amount_mmol;
        Neutraliser { reagent, amount_mmol: amount, volume_cm3: amount / DILUTE_MOL_PER_DM3 }
    });
    Ok(Tidying { neutraliser, text: text(product.formula) })
}

fn text(formula: &str) -> &'static str {
    match formula {
        "SO2" => {
            "Open it in the fume cupboard, rinse with dilute alkali until no smell is left, then with water; burn the \
             spoon clean in the fume cupboard."
        }
        "CO2" | "H2O" => "Rinse with water.",
        "CO" => "Open it in the fume cupboard and leave it to air.",
        "P4O10" | "SO3" => {
            "Leave the closed jar until the smoke has settled into the water, rinse in the fume cupboard, neutralise \
             the washings with dilute alkali. A spoon that held phosphorus is burned clean in the fume cupboard."
        }
        "Na2O2" | "Na2O" | "NaOH" | "K2O" | "K2O2" | "KO2" | "KOH" | "Li2O" | "LiOH" => {
            "Make sure that no metal is left: unburned pieces go into propan-2-ol until nothing moves, never into \
             water. Then rinse with much water behind the screen and neutralise the washings with dilute acid."
        }
        "CaO" | "Ca(OH)2" => {
            "Let the jar cool, wet the oxide little by little as it gets hot, rinse, and neutralise the washings."
        }
        "MgO" | "Mg(OH)2" => {
            "Brush the white powder out dry into the bin for solids, or dissolve it in dilute acid."
        }
        _ => "Let it cool in the jar, then tip water or sand off; the solid goes into the bin for solids.",
    }
}
