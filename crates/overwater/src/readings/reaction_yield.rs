//! What a reagent can give, and how much of it came.

use crate::scalar::Scalar;
use crate::units::{Concentration, Dimensioned, Mass, MolarVolume, MolarWeight, Moles, Volume};
use crate::{Result, symbols};

use super::{Quantity, Row};

/// Amount of the reagent: m/M, or c V where a solution was measured.
///
/// # Errors
/// `missing` where neither pair is given.
#[inline(always)]
pub fn reagent_amount<S: Scalar>(row: &Row<S>) -> Result<Moles<S>> {
    let amount = match (row.get(Quantity::ReagentConcentration), row.get(Quantity::ReagentVolume)) {
        (Some(concentration), Some(volume)) => {
            Concentration::new(concentration.enter(&symbols::REAGENT_CONCENTRATION))
                * Volume::new(volume.enter(&symbols::REAGENT_VOLUME))
        }
        _ => {
            let mass = Mass::new(row.need(Quantity::Mass)?.enter(&symbols::MASS));
            let molar_mass = row.need(Quantity::ReagentMolarMass)?.enter(&symbols::REAGENT_MOLAR_MASS);
            mass / MolarWeight::new(molar_mass)
        }
    };
    Ok(amount.checkpoint(&symbols::REAGENT_AMOUNT))
}

/// Amount of gas that the reagent can give.
///
/// # Errors
/// `missing`, as for [`reagent_amount`], and for the mole ratio.
#[inline(always)]
pub fn expected_amount<S: Scalar>(row: &Row<S>) -> Result<Moles<S>> {
    let ratio = row.need(Quantity::MoleRatio)?.enter(&symbols::MOLE_RATIO);
    Ok(Moles::new(reagent_amount(row)?.si() * ratio).checkpoint(&symbols::EXPECTED_AMOUNT))
}

/// n/n(expected), shown in per cent.
#[inline(always)]
pub fn reaction_yield<S: Scalar>(amount: Moles<S>, expected: Moles<S>) -> S {
    (amount.si() / expected.si()).checkpoint(&symbols::YIELD)
}

/// Volume of the dry gas at the reference conditions, for each mole that the reagent can give.
#[inline(always)]
pub fn measured_molar_volume<S: Scalar>(volume: Volume<S>, expected: Moles<S>) -> MolarVolume<S> {
    (volume / expected).checkpoint(&symbols::MEASURED_MOLAR_VOLUME)
}

/// Molar mass of the solid that gave the gas: m r/n.
#[inline(always)]
pub fn solid_molar_mass<S: Scalar>(mass: Mass<S>, mole_ratio: S, amount: Moles<S>) -> MolarWeight<S> {
    MolarWeight::new(mass.si() * mole_ratio / amount.si()).checkpoint(&symbols::MOLAR_MASS)
}

/// Share of the sample that gave the gas: n M/(r m), shown in per cent.
#[inline(always)]
pub fn purity<S: Scalar>(amount: Moles<S>, mole_ratio: S, molar_mass: MolarWeight<S>, mass: Mass<S>) -> S {
    (amount.si() * molar_mass.si() / (mole_ratio * mass.si())).checkpoint(&symbols::PURITY)
}
