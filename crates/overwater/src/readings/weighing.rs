//! A gas is weighed in a vessel that was weighed full of air, or collapsed: either way the difference of the weighings is
//! less than the gas by the air whose place it takes.
//!
//! ```text
//! m(gas) = m(filled) - m(with air) + M(air) p V/(R T)
//! ```
//!
//! Air is taken as dry, M = 28.9644 g/mol (ISO 2533:1975); saturated air at 20 degC is 0.9 % lighter.

use crate::reference::constants::AIR_MOLAR_MASS_1975;
use crate::scalar::{Constant, Scalar};
use crate::symbols;
use crate::units::{
    Dimensioned, Mass, MassDensity, MolarEntropy, MolarWeight, Pressure, Temperature, Volume,
};

/// Mass of the air in a volume.
#[inline(always)]
pub fn displaced_air<S: Scalar>(
    volume: Volume<S>,
    pressure: Pressure<S>,
    temperature: Temperature<S>,
    gas_constant: &'static Constant,
) -> Mass<S> {
    let air = MolarWeight::new(S::constant(&AIR_MOLAR_MASS_1975));
    let r = MolarEntropy::new(S::constant(gas_constant));
    (air * (pressure * volume / (r * temperature))).checkpoint(&symbols::DISPLACED_AIR)
}

/// m/V.
#[inline(always)]
pub fn gas_density<S: Scalar>(mass: Mass<S>, volume: Volume<S>) -> MassDensity<S> {
    (mass / volume).checkpoint(&symbols::WEIGHED_DENSITY)
}
