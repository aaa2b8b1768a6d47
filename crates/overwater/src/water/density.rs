//! Density of liquid water at atmospheric pressure.
//!
//! Kell, J. Chem. Eng. Data 20 (1975) 97, equation 16:
//!
//! ```text
//! ρ = (a0 + a1 t + a2 t² + a3 t³ + a4 t⁴ + a5 t⁵) / (1 + b t)      (kg/m3, degC)
//! ```
//!
//! Range of the source: 0 to 150 degC on the temperature scale of 1968, which this library does not tell apart:
//! together with the older maximum density of 999.972 kg/m3 that makes up to 0.014 kg/m3 (14 parts in a million)
//! against IAPWS-95.

use crate::bounds::{self, Bound};
use crate::reference::water::{DENSITY_1975, DENSITY_1975_B};
use crate::scalar::{Formula, Scalar, Symbol};
use crate::symbols;
use crate::units::{DEGREE_CELSIUS, Dimensioned, MassDensity, Temperature};

/// Density of water at a temperature.
#[inline(always)]
pub fn liquid_density<S: Scalar>(temperature: Temperature<S>) -> MassDensity<S> {
    let [a0, a1, a2, a3, a4, a5] = DENSITY_1975;
    let t = temperature.si() - DEGREE_CELSIUS.zero;
    let square = t * t;
    let numerator = ((t * a1 + a0) + square * (t * a3 + a2)) + square * square * (t * a5 + a4);
    MassDensity::new(numerator / (t * DENSITY_1975_B + 1.0)).checkpoint(&symbols::WATER_DENSITY)
}

/// `water_density(temperature_c)` in g/cm3, from 0 to 100 degC.
///
/// ```
/// use overwater::scalar::Formula;
/// use overwater::water::density::WaterDensity;
/// // IAPWS-95 gives 0.9970476 g/cm3 at 25 degC and 101.325 kPa; Kell stays within 14 parts in a million.
/// assert!((WaterDensity.number([25.0])? - 0.997_047_6).abs() < 14e-6);
/// # Ok::<(), overwater::Error>(())
/// ```
#[derive(Debug, Clone, Copy, Default)]
pub struct WaterDensity;

impl Formula<1> for WaterDensity {
    const NAME: &'static str = "water_density";

    fn inputs(&self) -> [&'static Bound; 1] {
        [&bounds::TEMPERATURE_C]
    }

    fn output(&self) -> &'static Symbol {
        &symbols::WATER_DENSITY
    }

    #[inline(always)]
    fn evaluate<S: Scalar>(&self, [temperature]: [S; 1]) -> S {
        let temperature = temperature.enter(&symbols::TEMPERATURE);
        liquid_density(Temperature::new(temperature)).leave(&symbols::WATER_DENSITY)
    }
}
