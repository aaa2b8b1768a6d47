//! The recommended table of the weighing laboratories, with its terms for dissolved air and for pressure.
//!
//! Tanaka, Girard, Davis, Peuto and Bignell, Metrologia 38 (2001) 301, equations 1 to 4 (2 to 4 from memory):
//!
//! ```text
//! ρ = a5 (1 - (t + a1)² (t + a2)/(a3 (t + a4)))      (kg/m3, degC; air-free, 101.325 kPa)
//! ρ(air) = ρ + s0 + s1 t                             (saturated with air)
//! ρ(p) = ρ (1 + (k0 + k1 t + k2 t²) (p - 101325 Pa))
//! ```
//!
//! Range of the source: 0 to 40 degC; 0 to 25 degC for dissolved air.

use crate::bounds::{self, Bound};
use crate::reference::constants::STANDARD_ATMOSPHERE_1954;
use crate::reference::sources;
use crate::reference::water::{COMPRESSIBILITY_2001, DENSITY_2001, DISSOLVED_AIR_2001};
use crate::scalar::{Formula, PropertyUncertainty, Scalar, Symbol};
use crate::symbols;
use crate::units::{DEGREE_CELSIUS, Dimensioned, MassDensity, Pressure, Temperature};

/// What the source states.
pub(super) static STATED: PropertyUncertainty = PropertyUncertainty::from_expanded(
    0.9e-6,
    "at most 0.0009 kg/m3 with a coverage factor of 2, from memory",
    &sources::TANAKA_2001,
);

/// Density of air-free water at a temperature and 101.325 kPa.
#[inline(always)]
pub fn density<S: Scalar>(temperature: Temperature<S>) -> MassDensity<S> {
    let [a1, a2, a3, a4, a5] = DENSITY_2001;
    let t = temperature.si() - DEGREE_CELSIUS.zero;
    let from_maximum = t + a1;
    let fall = from_maximum * from_maximum * (t + a2) / ((t + a4) * a3);
    MassDensity::new((S::number(1.0) - fall) * a5).checkpoint(&symbols::WATER_DENSITY_TANAKA)
}

/// What saturation with air adds to the density.
#[inline(always)]
pub fn dissolved_air<S: Scalar>(temperature: Temperature<S>) -> MassDensity<S> {
    let [s0, s1] = DISSOLVED_AIR_2001;
    MassDensity::new((temperature.si() - DEGREE_CELSIUS.zero) * s1 + s0)
}

/// The factor that another pressure than 101.325 kPa puts on the density.
#[inline(always)]
pub fn pressure_factor<S: Scalar>(temperature: Temperature<S>, pressure: Pressure<S>) -> S {
    let [k0, k1, k2] = COMPRESSIBILITY_2001;
    let t = temperature.si() - DEGREE_CELSIUS.zero;
    ((t * k2 + k1) * t + k0) * (pressure.si() - S::constant(&STANDARD_ATMOSPHERE_1954)) + 1.0
}

/// `water_density_tanaka(temperature_c, pressure_kpa)` in g/cm3, air-free from 0 to 40 degC or saturated with air from
/// 0 to 25 degC.
///
/// ```
/// use overwater::scalar::Formula;
/// use overwater::water::density::tanaka::TanakaDensity;
/// // Tanaka et al. 2001: 998.2067 kg/m3 at 20 degC, air-free; s0 + s1 t = -0.002492 kg/m3 for water saturated with air.
/// let air_free = TanakaDensity { air_saturated: false }.number([20.0, 101.325])?;
/// assert!((air_free - 0.998_206_7).abs() < 5e-8);
/// let aerated = TanakaDensity { air_saturated: true }.number([20.0, 101.325])?;
/// assert!((aerated - air_free + 0.000_002_492).abs() < 1e-12);
/// # Ok::<(), overwater::Error>(())
/// ```
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub struct TanakaDensity {
    /// Whether the water is saturated with air, as in an open trough.
    pub air_saturated: bool,
}

impl Formula<2> for TanakaDensity {
    const NAME: &'static str = "water_density_tanaka";

    fn inputs(&self) -> [&'static Bound; 2] {
        let temperature =
            if self.air_saturated { &bounds::AERATED_TEMPERATURE_C } else { &bounds::TANAKA_TEMPERATURE_C };
        [temperature, &bounds::PRESSURE_KPA]
    }

    fn output(&self) -> &'static Symbol {
        &symbols::WATER_DENSITY_AT_PRESSURE
    }

    fn property_uncertainty(&self) -> Option<&'static PropertyUncertainty> {
        Some(&STATED)
    }

    #[inline(always)]
    fn evaluate<S: Scalar>(&self, [temperature, pressure]: [S; 2]) -> S {
        let temperature = Temperature::new(temperature.enter(&symbols::TEMPERATURE));
        let pressure = Pressure::new(pressure.enter(&symbols::STATION_PRESSURE));
        let air_free = density(temperature);
        let water = if self.air_saturated { air_free + dissolved_air(temperature) } else { air_free };
        MassDensity::new(water.si() * pressure_factor(temperature, pressure))
            .checkpoint(&symbols::WATER_DENSITY_AT_PRESSURE)
            .leave(&symbols::WATER_DENSITY_AT_PRESSURE)
    }
}
