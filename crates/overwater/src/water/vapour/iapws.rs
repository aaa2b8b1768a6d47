//! The saturation equation of IAPWS and its inverse.
//!
//! IAPWS SR1-86(1992), revised supplementary release on saturation properties of ordinary water substance,
//! equation 1; Wagner and Pruss, J. Phys. Chem. Ref. Data 22 (1993) 783.
//!
//! ```text
//! ln(p/p_c) = (T_c/T) (a1 τ + a2 τ^1.5 + a3 τ^3 + a4 τ^3.5 + a5 τ^4 + a6 τ^7.5),   τ = 1 - T/T_c
//! ```
//!
//! Range of the source: 273.16 K to 647.096 K; this library takes 0 to 100 degC, which begins 0.01 K below the
//! triple point. Stated uncertainty: 0.02 % up to 373 K, 0.1 % near the critical point (from memory).

use crate::reference::water::{
    BACKWARD_SATURATION_1997, CRITICAL_PRESSURE_1992, CRITICAL_TEMPERATURE_1992, SATURATION_1992,
};
use crate::scalar::Scalar;
use crate::symbols;
use crate::units::{Dimensioned, Pressure, Temperature};

/// Vapour pressure of water at a temperature.
#[inline(always)]
pub fn saturation_pressure<S: Scalar>(temperature: Temperature<S>) -> Pressure<S> {
    let tau = reduced(temperature.si()).checkpoint(&symbols::REDUCED_TEMPERATURE);
    let exponent = S::constant(&CRITICAL_TEMPERATURE_1992) / temperature.si() * series(tau);
    let pressure = S::constant(&CRITICAL_PRESSURE_1992) * exponent.exp();
    Pressure::new(pressure).checkpoint(&symbols::VAPOUR_PRESSURE)
}

/// Temperature at which water has a given vapour pressure.
///
/// The industrial formulation's closed inverse is within 1 mK; two Newton steps on the logarithm of the saturation
/// equation bring it to the last bits. The number of steps is fixed, so that nothing can fail to end.
#[inline(always)]
pub fn saturation_temperature<S: Scalar>(pressure: Pressure<S>) -> Temperature<S> {
    let wanted = (pressure.si() / S::constant(&CRITICAL_PRESSURE_1992)).ln();
    // Each estimate is named: written out inside the next, they would fill a worked solution with a million characters.
    let first = first_guess(pressure.si()).checkpoint(&symbols::FIRST_TEMPERATURE);
    let second = newton_step(first, wanted).checkpoint(&symbols::SECOND_TEMPERATURE);
    Temperature::new(newton_step(second, wanted)).checkpoint(&symbols::TEMPERATURE)
}

/// d p/d T of the saturation line at a temperature, from the pressure there and the equation's own derivative: for
/// scalars that already carry a derivative, where a second one is wanted.
#[inline(always)]
pub(crate) fn saturation_slope<S: Scalar>(temperature: S, pressure: S) -> S {
    let tau = reduced(temperature);
    let reached = S::constant(&CRITICAL_TEMPERATURE_1992) / temperature * series(tau);
    -(pressure * (reached + slope_series(tau)) / temperature)
}

/// One step towards the temperature at which ln(p/p_c) has the value `wanted`.
#[inline(always)]
fn newton_step<S: Scalar>(temperature: S, wanted: S) -> S {
    let tau = reduced(temperature);
    let reached = S::constant(&CRITICAL_TEMPERATURE_1992) / temperature * series(tau);
    let slope = -(reached + slope_series(tau)) / temperature;
    temperature - (reached - wanted) / slope
}

#[inline(always)]
fn reduced<S: Scalar>(temperature: S) -> S {
    S::number(1.0) - temperature.over(&CRITICAL_TEMPERATURE_1992)
}

/// The sum of the equation, arranged so that each power is formed once.
#[inline(always)]
fn series<S: Scalar>(tau: S) -> S {
    let [a1, a2, a3, a4, a5, a6] = SATURATION_1992.each_ref().map(S::constant);
    let root = tau.sqrt();
    tau * (a1 + a2 * root) + tau.power(3) * ((a3 + a4 * root) + (a5 * tau + a6 * (root * tau.power(4))))
}

/// The sum of a(i) e(i) τ^(e(i) - 1), which the slope d ln p/dT = -(ln(p/p_c) + sum)/T needs.
#[inline(always)]
fn slope_series<S: Scalar>(tau: S) -> S {
    let [a1, a2, a3, a4, a5, a6] = SATURATION_1992.each_ref().map(S::constant);
    let root = tau.sqrt();
    (a1 + a2 * root * 1.5)
        + tau.power(2) * ((a3 * 3.0 + a4 * root * 3.5) + (a5 * tau * 4.0 + a6 * (root * tau.power(4)) * 7.5))
}

/// IAPWS-IF97, equation 31.
#[inline(always)]
fn first_guess<S: Scalar>(pressure: S) -> S {
    let [n1, n2, n3, n4, n5, n6, n7, n8, n9, n10] = BACKWARD_SATURATION_1997;
    let beta = (pressure / 1e6).sqrt().sqrt().checkpoint(&symbols::PRESSURE_ROOT);
    let square = beta * beta;
    let e = square + beta * n3 + n6;
    let f = square * n1 + beta * n4 + n7;
    let g = square * n2 + beta * n5 + n8;
    let d = g * 2.0 / (-f - (f * f - e * g * 4.0).sqrt());
    let sum = d + n10;
    (sum - (sum * sum - (d * n10 + n9) * 4.0).sqrt()) / 2.0
}
