//! The equation that older handbooks tabulate.
//!
//! Kell, J. Chem. Eng. Data 20 (1975) 97, equation 16:
//!
//! ```text
//! ρ = (a0 + a1 t + a2 t² + a3 t³ + a4 t⁴ + a5 t⁵) / (1 + b t)      (kg/m3, degC)
//! ```
//!
//! Range of the source: 0 to 150 degC on the temperature scale of 1968, which this library does not tell apart; it
//! takes 0 to 100 degC. Together with the older maximum density of 999.972 kg/m3 that makes up to 0.014 kg/m3 (15 parts
//! in a million) against IAPWS-95.

use crate::reference::water::{DENSITY_1975, DENSITY_1975_B};
use crate::scalar::Scalar;
use crate::symbols;
use crate::units::{DEGREE_CELSIUS, Dimensioned, MassDensity, Temperature};

/// Density of water at a temperature.
#[inline(always)]
pub fn density<S: Scalar>(temperature: Temperature<S>) -> MassDensity<S> {
    let [a0, a1, a2, a3, a4, a5] = DENSITY_1975;
    let t = temperature.si() - DEGREE_CELSIUS.zero;
    let square = t * t;
    let numerator = ((t * a1 + a0) + square * (t * a3 + a2)) + square * square * (t * a5 + a4);
    MassDensity::new(numerator / (t * DENSITY_1975_B + 1.0)).checkpoint(&symbols::WATER_DENSITY_KELL)
}
