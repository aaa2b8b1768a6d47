//! Vapour pressure over ice.
//!
//! IAPWS R14-08(2011), pressure along the melting and sublimation curves of ordinary water substance, equation 6:
//!
//! ```text
//! ln(p/p_t) = (a1 θ^b1 + a2 θ^b2 + a3 θ^b3)/θ,   θ = T/T_t
//! ```
//!
//! Range of the source: 50 to 273.16 K; this library takes -100 to 0 degC.

use crate::bounds::{self, Bound};
use crate::reference::vapour::{SUBLIMATION_2008, TRIPLE_POINT_2008};
use crate::scalar::{Formula, Scalar, Symbol};
use crate::symbols;
use crate::units::{Dimensioned, Pressure, Temperature};

/// Vapour pressure of ice at a temperature.
#[inline(always)]
pub fn sublimation_pressure<S: Scalar>(temperature: Temperature<S>) -> Pressure<S> {
    let [triple, pressure] = TRIPLE_POINT_2008;
    let theta = temperature.si() / triple;
    let logarithm = theta.ln();
    let [first, second, third] = SUBLIMATION_2008.map(|(a, b)| (logarithm * b).exp() * a);
    Pressure::new(((first + second + third) / theta).exp() * pressure)
        .checkpoint(&symbols::SUBLIMATION_PRESSURE)
}

/// `sublimation_pressure(temperature_c)` in Pa, from -100 to 0 degC.
///
/// ```
/// use overwater::scalar::Formula;
/// use overwater::water::vapour::ice::SublimationPressure;
/// // IAPWS R14-08(2011), Table 3: 8.94735 Pa at 230 K.
/// assert!((SublimationPressure.number([230.0 - 273.15])? - 8.947_35).abs() < 5e-6);
/// # Ok::<(), overwater::Error>(())
/// ```
#[derive(Debug, Clone, Copy, Default)]
pub struct SublimationPressure;

impl Formula<1> for SublimationPressure {
    const NAME: &'static str = "sublimation_pressure";

    fn inputs(&self) -> [&'static Bound; 1] {
        [&bounds::ICE_TEMPERATURE_C]
    }

    fn output(&self) -> &'static Symbol {
        &symbols::SUBLIMATION_PRESSURE
    }

    #[inline(always)]
    fn evaluate<S: Scalar>(&self, [temperature]: [S; 1]) -> S {
        let temperature =
            temperature.enter(&symbols::TEMPERATURE).checkpoint(&symbols::THERMODYNAMIC_TEMPERATURE);
        sublimation_pressure(Temperature::new(temperature)).leave(&symbols::SUBLIMATION_PRESSURE)
    }
}
