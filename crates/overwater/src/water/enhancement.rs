//! Vapour of water in a gas under pressure: the enhancement factor.
//!
//! A gas that presses on the water and attracts its vapour holds more of it than empty space:
//!
//! ```text
//! p(vapour) = f(t, p) p(saturation)
//! f = exp(α (1 - e/p) + β (p/e - 1)),   ln β = B0 + B1 t + B2 t² + B3 t³,   α = A0 + A1 t + A2 t² + A3 t³
//! ```
//!
//! with e the saturation pressure: Greenspan, J. Res. Natl. Bur. Stand. 80A (1976) 41, for air, 0 to 100 degC, which two
//! independent models of moist air follow within 3e-4. Hardy 1998 has the same form for the temperature scale of 1990.
//! Two short forms: Buck 1996, f = 1 + a + p (b + c t²), and CIPM-2007, f = α + β p + γ t², both from memory.
//!
//! Below the saturation pressure water boils and nothing is left beside the vapour: NaN, and a refusal with the reason.
//! All this is for air. For other gases only the size at 20 degC can be told: [`estimate`].

use crate::bounds::{self, Bound};
use crate::reference::enhancement::{
    AT_20_DEGREES, BUCK_1996, CIPM_2007, Enhancement, GREENSPAN_1976, HARDY_1998,
};
use crate::scalar::{Formula, Scalar, Symbol};
use crate::units::{DEGREE_CELSIUS, Dimensioned, HECTOPASCAL, Pressure, Temperature};
use crate::water::vapour::saturation_pressure;
use crate::{Code, Error, symbols};

/// Where an enhancement factor is taken from.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
#[non_exhaustive]
pub enum EnhancementSource {
    /// Greenspan 1976.
    #[default]
    Greenspan1976,
    /// Hardy 1998.
    Hardy1998,
    /// Buck, revision of 1996.
    Buck1996,
    /// CIPM-2007.
    Cipm2007,
}

impl EnhancementSource {
    /// Every source.
    pub const ALL: [EnhancementSource; 4] = [
        EnhancementSource::Greenspan1976,
        EnhancementSource::Hardy1998,
        EnhancementSource::Buck1996,
        EnhancementSource::Cipm2007,
    ];

    /// The temperatures and pressures it holds for.
    #[must_use]
    pub const fn range(self) -> [&'static Bound; 2] {
        match self {
            EnhancementSource::Greenspan1976 | EnhancementSource::Hardy1998 => {
                [&bounds::TEMPERATURE_C, &bounds::PRESSURE_KPA]
            }
            EnhancementSource::Buck1996 => [&bounds::BUCK_TEMPERATURE_C, &bounds::PRESSURE_KPA],
            EnhancementSource::Cipm2007 => [&bounds::CIPM_TEMPERATURE_C, &bounds::CIPM_PRESSURE_KPA],
        }
    }

    /// The symbol of the factor, which names the published work.
    #[must_use]
    pub const fn symbol(self) -> &'static Symbol {
        match self {
            EnhancementSource::Greenspan1976 => &symbols::ENHANCEMENT,
            EnhancementSource::Hardy1998 => &symbols::ENHANCEMENT_HARDY,
            EnhancementSource::Buck1996 => &symbols::ENHANCEMENT_BUCK,
            EnhancementSource::Cipm2007 => &symbols::ENHANCEMENT_CIPM,
        }
    }

    /// The factor at a temperature and a pressure of the moist air; NaN where the pressure is below that of the vapour.
    #[inline(always)]
    pub fn factor<S: Scalar>(
        self,
        temperature: Temperature<S>,
        pressure: Pressure<S>,
        saturation: Pressure<S>,
    ) -> S {
        let t = temperature.si() - DEGREE_CELSIUS.zero;
        let p = pressure.si();
        let factor = match self {
            EnhancementSource::Greenspan1976 => exponential(t, p, saturation.si(), &GREENSPAN_1976),
            EnhancementSource::Hardy1998 => exponential(t, p, saturation.si(), &HARDY_1998),
            EnhancementSource::Buck1996 => {
                let [a, b, c] = BUCK_1996;
                HECTOPASCAL.from_si(p) * (t * t * c + b) + (1.0 + a)
            }
            EnhancementSource::Cipm2007 => {
                let [alpha, beta, gamma] = CIPM_2007;
                p * beta + t * t * gamma + alpha
            }
        };
        factor.where_within(p - saturation.si(), 0.0, f64::MAX).checkpoint(self.symbol())
    }
}

/// The form of Greenspan and Hardy.
#[inline(always)]
fn exponential<S: Scalar>(t: S, pressure: S, saturation: S, [a, b]: &[[f64; 4]; 2]) -> S {
    let cubic = |[c0, c1, c2, c3]: [f64; 4]| ((t * c3 + c2) * t + c1) * t + c0;
    let alpha = cubic(*a);
    let beta = cubic(*b).exp();
    let one = S::number(1.0);
    (alpha * (one - saturation / pressure) + beta * (pressure / saturation - one)).exp()
}

fn boils(temperature: f64, pressure: f64) -> Error {
    Error::new(Code::Contradiction, "pressure_kpa")
        .value(format!("{pressure} kPa at {temperature} degC"))
        .allowed("a pressure above the vapour pressure of water")
        .advice("water boils at this pressure: check the unit of the pressure and the temperature")
}

/// `enhancement_factor(temperature_c, pressure_kpa)` of moist air.
///
/// ```
/// use overwater::scalar::Formula;
/// use overwater::water::enhancement::EnhancementFactor;
/// // 1.0040 at 20 degC and 101.325 kPa, as by CIPM-2007.
/// assert!((EnhancementFactor::default().number([20.0, 101.325])? - 1.003_99).abs() < 5e-6);
/// # Ok::<(), overwater::Error>(())
/// ```
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub struct EnhancementFactor {
    /// Where it is taken from.
    pub source: EnhancementSource,
}

impl Formula<2> for EnhancementFactor {
    const NAME: &'static str = "enhancement_factor";

    fn inputs(&self) -> [&'static Bound; 2] {
        self.source.range()
    }

    fn output(&self) -> &'static Symbol {
        self.source.symbol()
    }

    #[inline(always)]
    fn evaluate<S: Scalar>(&self, [temperature, pressure]: [S; 2]) -> S {
        let temperature = Temperature::new(
            temperature.enter(&symbols::TEMPERATURE).checkpoint(&symbols::THERMODYNAMIC_TEMPERATURE),
        );
        let pressure = Pressure::new(pressure.enter(&symbols::STATION_PRESSURE));
        self.source.factor(temperature, pressure, saturation_pressure(temperature))
    }

    fn refusal(&self, [temperature, pressure]: [f64; 2]) -> Error {
        boils(temperature, pressure)
    }
}

/// `vapour_pressure_in_air(temperature_c, pressure_kpa)` in kPa: the saturation pressure with the enhancement of air.
///
/// ```
/// use overwater::scalar::Formula;
/// use overwater::water::enhancement::VapourPressureInAir;
/// // 2.3392 kPa over water alone at 20 degC (IAPWS), 0.40 % more in air at 101.325 kPa.
/// let moist = VapourPressureInAir::default().number([20.0, 101.325])?;
/// assert!((moist / 2.3392 - 1.0040).abs() < 5e-5);
/// # Ok::<(), overwater::Error>(())
/// ```
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub struct VapourPressureInAir {
    /// Where the enhancement is taken from.
    pub source: EnhancementSource,
}

impl Formula<2> for VapourPressureInAir {
    const NAME: &'static str = "vapour_pressure_in_air";

    fn inputs(&self) -> [&'static Bound; 2] {
        self.source.range()
    }

    fn output(&self) -> &'static Symbol {
        &symbols::MOIST_VAPOUR_PRESSURE
    }

    #[inline(always)]
    fn evaluate<S: Scalar>(&self, [temperature, pressure]: [S; 2]) -> S {
        let temperature = Temperature::new(
            temperature.enter(&symbols::TEMPERATURE).checkpoint(&symbols::THERMODYNAMIC_TEMPERATURE),
        );
        let pressure = Pressure::new(pressure.enter(&symbols::STATION_PRESSURE));
        let saturation = saturation_pressure(temperature);
        let factor = self.source.factor(temperature, pressure, saturation);
        Pressure::new(saturation.si() * factor)
            .checkpoint(&symbols::MOIST_VAPOUR_PRESSURE)
            .leave(&symbols::MOIST_VAPOUR_PRESSURE)
    }

    fn refusal(&self, [temperature, pressure]: [f64; 2]) -> Error {
        boils(temperature, pressure)
    }
}

/// The size of the enhancement in a gas at 20 degC and 101.325 kPa, as an estimate with its uncertainty; nothing for a
/// gas that there is no estimate for.
///
/// ```
/// use overwater::water::enhancement::estimate;
/// let carbon_dioxide = estimate("CO2").expect("is in the list");
/// assert_eq!((carbon_dioxide.factor, carbon_dioxide.factor_uncertainty), (1.0126, 0.0020));
/// ```
#[must_use]
pub fn estimate(gas: &str) -> Option<&'static Enhancement> {
    AT_20_DEGREES.iter().find(|estimate| estimate.gas == gas)
}
