//! The equation that goes with the density of moist air.
//!
//! CIPM-2007, Picard et al., Metrologia 45 (2008) 149, equation A1.1 (from memory; confirmed within 0.003 % of IAPWS):
//!
//! ```text
//! p = exp(A T² + B T + C + D/T)      (Pa, K)
//! ```
//!
//! Range: 5 to 30 degC, that of the enhancement factor that belongs to it.

use crate::reference::vapour::CIPM_2007;
use crate::scalar::Scalar;
use crate::symbols;
use crate::units::{Dimensioned, Pressure, Temperature};

/// Vapour pressure of water at a temperature.
#[inline(always)]
pub fn pressure<S: Scalar>(temperature: Temperature<S>) -> Pressure<S> {
    let [a, b, c, d] = CIPM_2007;
    let t = temperature.si();
    let exponent = (t * a + b) * t + c + S::number(d) / t;
    Pressure::new(exponent.exp()).checkpoint(&symbols::VAPOUR_PRESSURE_CIPM)
}
