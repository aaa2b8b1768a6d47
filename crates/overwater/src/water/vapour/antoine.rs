//! The Antoine equation as chemistry textbooks print it.
//!
//! ```text
//! log10(p/mmHg) = A - B/(C + t)      (t in degC)
//! ```
//!
//! Range: 1 to 100 degC, as quoted with the coefficients.

use crate::reference::vapour::ANTOINE;
use crate::scalar::Scalar;
use crate::symbols;
use crate::units::{DEGREE_CELSIUS, Dimensioned, MILLIMETRE_OF_MERCURY, Pressure, Temperature};

/// Vapour pressure of water at a temperature.
#[inline(always)]
pub fn pressure<S: Scalar>(temperature: Temperature<S>) -> Pressure<S> {
    let [a, b, c] = ANTOINE;
    let t = temperature.si() - DEGREE_CELSIUS.zero;
    let millimetres = ((S::number(a) - S::number(b) / (t + c)) * std::f64::consts::LN_10).exp();
    Pressure::new(MILLIMETRE_OF_MERCURY.to_si(millimetres)).checkpoint(&symbols::VAPOUR_PRESSURE_ANTOINE)
}
