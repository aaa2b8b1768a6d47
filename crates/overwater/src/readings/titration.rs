//! Back titration: a carbonate is dissolved in more acid than it needs, and the acid that is left is titrated.
//!
//! ```text
//! n(acid) = c V          n(left) = c(alkali) V(titre) V(made up)/V(aliquot)
//! n(CO3)  = (n(acid) - n(left))/2
//! ```
//!
//! Amounts of acid are amounts of hydrogen ions: the concentrations are those of an acid with one and an alkali with one
//! hydroxide. Carbonates with two charges: CO3 2- + 2 H+ = CO2 + H2O.

use crate::scalar::Scalar;
use crate::units::{Concentration, Dimensioned, Moles, Volume};
use crate::{Result, symbols};

use super::{Quantity, Row};

/// Amount of carbonate in the sample. NaN where no acid was used up.
///
/// # Errors
/// `missing` for a reading.
#[inline(always)]
pub fn carbonate_amount<S: Scalar>(row: &Row<S>) -> Result<Moles<S>> {
    let acid = row.need(Quantity::AcidConcentration)?.enter(&symbols::ACID_CONCENTRATION);
    let volume = row.need(Quantity::AcidVolume)?.enter(&symbols::ACID_VOLUME);
    let acid = (Concentration::new(acid) * Volume::new(volume)).checkpoint(&symbols::ACID_AMOUNT);
    let alkali = row.need(Quantity::AlkaliConcentration)?.enter(&symbols::ALKALI_CONCENTRATION);
    let titre = row.need(Quantity::Titre)?.enter(&symbols::TITRE);
    let titrated = Concentration::new(alkali) * Volume::new(titre);
    let left = match (row.get(Quantity::MadeUpTo), row.get(Quantity::Aliquot)) {
        (Some(made_up), Some(aliquot)) => {
            let share = made_up.enter(&symbols::MADE_UP_VOLUME) / aliquot.enter(&symbols::ALIQUOT);
            Moles::new(titrated.si() * share)
        }
        (Some(_), None) => {
            row.need(Quantity::Aliquot)?;
            titrated
        }
        (None, Some(_)) => {
            row.need(Quantity::MadeUpTo)?;
            titrated
        }
        (None, None) => titrated,
    }
    .checkpoint(&symbols::ACID_LEFT);
    let carbonate = ((acid - left).si() / 2.0).within(f64::MIN_POSITIVE, f64::MAX);
    Ok(Moles::new(carbonate).checkpoint(&symbols::REAGENT_AMOUNT))
}
