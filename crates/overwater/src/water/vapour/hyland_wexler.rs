//! The equation of the air-conditioning trade.
//!
//! Hyland and Wexler, ASHRAE Trans. 89(2A) (1983) 500; ASHRAE Handbook Fundamentals, chapter 1, equation 6:
//!
//! ```text
//! ln p = C8/T + C9 + C10 T + C11 T² + C12 T³ + C13 ln T      (Pa, K)
//! ```
//!
//! Range of the source: 0 to 200 degC; this library takes 0 to 100 degC.

use crate::reference::vapour::HYLAND_WEXLER_1983;
use crate::scalar::Scalar;
use crate::symbols;
use crate::units::{Dimensioned, Pressure, Temperature};

/// Vapour pressure of water at a temperature.
#[inline(always)]
pub fn pressure<S: Scalar>(temperature: Temperature<S>) -> Pressure<S> {
    let [c8, c9, c10, c11, c12, c13] = HYLAND_WEXLER_1983;
    let t = temperature.si();
    let exponent = S::number(c8) / t + (((t * c12 + c11) * t + c10) * t + c9) + t.ln() * c13;
    Pressure::new(exponent.exp()).checkpoint(&symbols::VAPOUR_PRESSURE_HYLAND_WEXLER)
}
