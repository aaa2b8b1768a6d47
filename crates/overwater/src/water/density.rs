//! Density of liquid water at atmospheric pressure.
//!
//! IAPWS SR6-08(2011), properties of liquid water at 0.1 MPa, equation 4:
//!
//! ```text
//! v = (R T_R/p0) (a5 + a6 α^4 + a7 α^5 + a8 α^7 + a9 α^8 + a10 α^9 + b5 β + b6 β² + ... + b10 β^6)
//! α = T_R/(T_a - T),   β = T_R/(T - T_b),   ρ = 1/v
//! ```
//!
//! Range of the source: 253.15 K to 383.15 K; this library takes 0 to 100 degC. Stated uncertainty: 0.001 % (from
//! memory). Within 0.0001 % of IAPWS-95 at 101.325 kPa, of which 0.00006 % is the difference of the pressures.
//!
//! By choice: the older equation of Kell ([`kell`]) and the recommended table of 2001 with its terms for dissolved air
//! and for pressure ([`tanaka`]). Along the saturation line: [`saturated`](super::saturated).

pub mod kell;
pub mod tanaka;

use crate::bounds::{self, Bound};
use crate::reference::sources;
use crate::reference::water::{VOLUME_2008_A, VOLUME_2008_B, VOLUME_2008_POLES, VOLUME_2008_REDUCING};
use crate::scalar::{Formula, PropertyUncertainty, Scalar, Symbol};
use crate::symbols;
use crate::units::{Dimensioned, MassDensity, Temperature};

/// Density of water at a temperature: IAPWS SR6-08.
#[inline(always)]
pub fn liquid_density<S: Scalar>(temperature: Temperature<S>) -> MassDensity<S> {
    let [gas, reducing, pressure] = VOLUME_2008_REDUCING;
    let [hot, cold] = VOLUME_2008_POLES;
    let [a5, a6, a7, a8, a9, a10] = VOLUME_2008_A;
    let [b5, b6, b7, b8, b9, b10] = VOLUME_2008_B;
    let t = temperature.si();
    let alpha = (S::number(reducing) / (S::number(hot) - t)).checkpoint(&symbols::VOLUME_ALPHA);
    let beta = (S::number(reducing) / (t - cold)).checkpoint(&symbols::VOLUME_BETA);

    // Short chains side by side (Estrin); the compiler forms each power once.
    let hot =
        ((alpha * a7 + a6) + ((alpha.power(2) * a10 + alpha * a9) + a8) * alpha.power(3)) * alpha.power(4);
    let cold =
        ((beta * b6 + b5) + ((beta * b8 + b7) + (beta * b10 + b9) * beta.power(2)) * beta.power(2)) * beta;
    let volume = (hot + cold) + a5;
    MassDensity::new(S::number(pressure / (gas * reducing)) / volume).checkpoint(&symbols::WATER_DENSITY)
}

/// What IAPWS states for the density at 0.1 MPa.
static IAPWS_STATED: PropertyUncertainty =
    PropertyUncertainty::from_limits(1e-5, "0.001 %, from memory", &sources::IAPWS_SR6_08);

/// `water_density(temperature_c)` in g/cm3, from 0 to 100 degC.
///
/// ```
/// use overwater::scalar::Formula;
/// use overwater::water::density::WaterDensity;
/// // IAPWS-95 gives 0.9970476 g/cm3 at 25 degC and 101.325 kPa.
/// assert!((WaterDensity.number([25.0])? - 0.997_047_6).abs() < 1e-6);
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

    fn property_uncertainty(&self) -> Option<&'static PropertyUncertainty> {
        Some(&IAPWS_STATED)
    }

    #[inline(always)]
    fn evaluate<S: Scalar>(&self, [temperature]: [S; 1]) -> S {
        let temperature = temperature.enter(&symbols::TEMPERATURE);
        liquid_density(Temperature::new(temperature)).leave(&symbols::WATER_DENSITY)
    }
}

/// Where a density of water is taken from.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
#[non_exhaustive]
pub enum DensitySource {
    /// IAPWS SR6-08(2011).
    #[default]
    Iapws2008,
    /// Kell 1975, as older handbooks print it.
    Kell1975,
    /// Tanaka et al. 2001, air-free water.
    Tanaka2001,
}

impl DensitySource {
    /// Every source.
    pub const ALL: [DensitySource; 3] =
        [DensitySource::Iapws2008, DensitySource::Kell1975, DensitySource::Tanaka2001];

    /// The temperatures it holds for.
    #[must_use]
    pub const fn range(self) -> &'static Bound {
        match self {
            DensitySource::Iapws2008 | DensitySource::Kell1975 => &bounds::TEMPERATURE_C,
            DensitySource::Tanaka2001 => &bounds::TANAKA_TEMPERATURE_C,
        }
    }

    /// The symbol of the density, which names the published work.
    #[must_use]
    pub const fn symbol(self) -> &'static Symbol {
        match self {
            DensitySource::Iapws2008 => &symbols::WATER_DENSITY,
            DensitySource::Kell1975 => &symbols::WATER_DENSITY_KELL,
            DensitySource::Tanaka2001 => &symbols::WATER_DENSITY_TANAKA,
        }
    }

    /// Density at a temperature and 101.325 kPa.
    #[inline(always)]
    pub fn density<S: Scalar>(self, temperature: Temperature<S>) -> MassDensity<S> {
        match self {
            DensitySource::Iapws2008 => liquid_density(temperature),
            DensitySource::Kell1975 => kell::density(temperature),
            DensitySource::Tanaka2001 => tanaka::density(temperature),
        }
    }
}

/// `water_density_from(temperature_c)` in g/cm3, from a source of choice and within the range of that source.
///
/// ```
/// use overwater::scalar::Formula;
/// use overwater::water::density::{DensitySource, WaterDensityFrom};
/// // Tanaka et al. 2001: 998.2067 kg/m3 at 20 degC.
/// let tanaka = WaterDensityFrom { source: DensitySource::Tanaka2001 };
/// assert!((tanaka.number([20.0])? - 0.998_206_7).abs() < 5e-8);
/// assert!(tanaka.number([40.1]).is_err());
/// # Ok::<(), overwater::Error>(())
/// ```
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub struct WaterDensityFrom {
    /// Where it is taken from.
    pub source: DensitySource,
}

impl Formula<1> for WaterDensityFrom {
    const NAME: &'static str = "water_density_from";

    fn inputs(&self) -> [&'static Bound; 1] {
        [self.source.range()]
    }

    fn output(&self) -> &'static Symbol {
        self.source.symbol()
    }

    fn property_uncertainty(&self) -> Option<&'static PropertyUncertainty> {
        match self.source {
            DensitySource::Iapws2008 => Some(&IAPWS_STATED),
            DensitySource::Kell1975 => None,
            DensitySource::Tanaka2001 => Some(&tanaka::STATED),
        }
    }

    #[inline(always)]
    fn evaluate<S: Scalar>(&self, [temperature]: [S; 1]) -> S {
        let temperature = temperature.enter(&symbols::TEMPERATURE);
        self.source.density(Temperature::new(temperature)).leave(self.source.symbol())
    }
}
