//! Buck's equations.
//!
//! Buck, J. Appl. Meteorol. 20 (1981) 1527, equation e(w1), is of the Magnus form (from memory). The revision of 1996,
//! Buck Research CR-1A user manual, appendix 1, bends it:
//!
//! ```text
//! p = a exp((b - t/d) t/(c + t))      (t in degC)
//! ```
//!
//! Range of both: 0 to 50 degC (from memory).

use super::magnus;
use crate::reference::vapour::{BUCK_1981, BUCK_1996};
use crate::scalar::Scalar;
use crate::symbols;
use crate::units::{DEGREE_CELSIUS, Dimensioned, Pressure, Temperature};

/// Vapour pressure of water at a temperature, equation of 1981.
#[inline(always)]
pub fn pressure_1981<S: Scalar>(temperature: Temperature<S>) -> Pressure<S> {
    magnus::form(temperature, BUCK_1981).checkpoint(&symbols::VAPOUR_PRESSURE_BUCK_1981)
}

/// Vapour pressure of water at a temperature, equation of 1996.
#[inline(always)]
pub fn pressure_1996<S: Scalar>(temperature: Temperature<S>) -> Pressure<S> {
    let [a, b, c, d] = BUCK_1996;
    let t = temperature.si() - DEGREE_CELSIUS.zero;
    let exponent = (S::number(b) - t / d) * t / (t + c);
    Pressure::new(exponent.exp() * a).checkpoint(&symbols::VAPOUR_PRESSURE_BUCK_1996)
}
