//! The Magnus form.
//!
//! ```text
//! p = a exp(b t/(c + t))      (t in degC)
//! ```
//!
//! The coefficients here are those of WMO-No. 8, annex 4.B (from memory). Range over water: -45 to 60 degC (from memory);
//! this library takes 0 to 60 degC.

use crate::reference::vapour::MAGNUS_WMO_2008;
use crate::scalar::Scalar;
use crate::symbols;
use crate::units::{DEGREE_CELSIUS, Dimensioned, Pressure, Temperature};

/// Vapour pressure of water at a temperature.
#[inline(always)]
pub fn pressure<S: Scalar>(temperature: Temperature<S>) -> Pressure<S> {
    form(temperature, MAGNUS_WMO_2008).checkpoint(&symbols::VAPOUR_PRESSURE_MAGNUS)
}

/// The form with coefficients of choice, in Pa, 1 and degC.
#[inline(always)]
pub(super) fn form<S: Scalar>(temperature: Temperature<S>, [a, b, c]: [f64; 3]) -> Pressure<S> {
    let t = temperature.si() - DEGREE_CELSIUS.zero;
    Pressure::new((t * b / (t + c)).exp() * a)
}
