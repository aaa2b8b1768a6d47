//! Vapour pressure over brine, and the density of brine.
//!
//! Over a saturated solution of sodium chloride the air holds a fixed share of what pure water would give:
//!
//! ```text
//! p = RH p(H2O),   RH/% = A exp(B/T)      CRC Handbook, section 15 (Wexler): 10 to 40 degC, within 2 %
//! RH/% = r0 + r1 t + r2 t² + r3 t³        Greenspan 1977 (from memory): 0 to 50 degC
//! ```
//!
//! Over a dilute solution Raoult's law, with the salt counted as its ions, is an approximation:
//!
//! ```text
//! p = p(H2O)/(1 + i m M(H2O))      i ions from one formula of salt, m molality
//! ```
//!
//! For sodium chloride at 25 degC it is within 0.2 % of a Pitzer calculation up to 2 mol/kg; beyond that it goes astray
//! fast (8.8 % too high at saturation) and this library refuses.

use crate::bounds::{self, Bound};
use crate::reference::brine::{SATURATED_CRC, SATURATED_DENSITY, SATURATED_GREENSPAN_1977};
use crate::reference::sources;
use crate::reference::water::WATER_MOLAR_MASS_2021;
use crate::scalar::{Formula, PropertyUncertainty, Scalar, Symbol};
use crate::symbols;
use crate::units::{DEGREE_CELSIUS, Dimensioned, MassDensity, PERCENT, Pressure, Temperature};
use crate::water::vapour::saturation_pressure;

/// Where the humidity over saturated brine is taken from.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
#[non_exhaustive]
pub enum BrineSource {
    /// CRC Handbook, section 15.
    #[default]
    Crc,
    /// Greenspan 1977, from memory.
    Greenspan1977,
}

impl BrineSource {
    /// Every source.
    pub const ALL: [BrineSource; 2] = [BrineSource::Crc, BrineSource::Greenspan1977];

    /// The temperatures it holds for.
    #[must_use]
    pub const fn range(self) -> &'static Bound {
        match self {
            BrineSource::Crc => &bounds::BRINE_TEMPERATURE_C,
            BrineSource::Greenspan1977 => &bounds::GREENSPAN_TEMPERATURE_C,
        }
    }

    /// The symbol of the humidity, which names the published work.
    #[must_use]
    pub const fn symbol(self) -> &'static Symbol {
        match self {
            BrineSource::Crc => &symbols::BRINE_HUMIDITY,
            BrineSource::Greenspan1977 => &symbols::BRINE_HUMIDITY_GREENSPAN,
        }
    }

    /// Vapour pressure over saturated brine as a share of that over water.
    #[inline(always)]
    pub fn humidity<S: Scalar>(self, temperature: Temperature<S>) -> S {
        let percent = match self {
            BrineSource::Crc => {
                let [a, b] = SATURATED_CRC;
                (S::number(b) / temperature.si()).exp() * a
            }
            BrineSource::Greenspan1977 => {
                let [r0, r1, r2, r3] = SATURATED_GREENSPAN_1977;
                let t = temperature.si() - DEGREE_CELSIUS.zero;
                ((t * r3 + r2) * t + r1) * t + r0
            }
        };
        PERCENT.to_si(percent).checkpoint(self.symbol())
    }
}

/// What the handbook states for the humidity.
static CRC_STATED: PropertyUncertainty =
    PropertyUncertainty::from_limits(0.02, "relative humidity within 2 %", &sources::CRC_BRINE);

/// `brine_humidity(temperature_c)` in per cent: the relative humidity over saturated sodium chloride.
///
/// ```
/// use overwater::scalar::Formula;
/// use overwater::water::brine::SaturatedBrineHumidity;
/// // CRC Handbook, section 15: 69.20 exp(25/T) is 75.25 % at 25 degC.
/// assert!((SaturatedBrineHumidity::default().number([25.0])? - 75.25).abs() < 0.005);
/// # Ok::<(), overwater::Error>(())
/// ```
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub struct SaturatedBrineHumidity {
    /// Where it is taken from.
    pub source: BrineSource,
}

impl Formula<1> for SaturatedBrineHumidity {
    const NAME: &'static str = "brine_humidity";

    fn inputs(&self) -> [&'static Bound; 1] {
        [self.source.range()]
    }

    fn output(&self) -> &'static Symbol {
        self.source.symbol()
    }

    fn property_uncertainty(&self) -> Option<&'static PropertyUncertainty> {
        (self.source == BrineSource::Crc).then_some(&CRC_STATED)
    }

    #[inline(always)]
    fn evaluate<S: Scalar>(&self, [temperature]: [S; 1]) -> S {
        let temperature =
            temperature.enter(&symbols::TEMPERATURE).checkpoint(&symbols::THERMODYNAMIC_TEMPERATURE);
        self.source.humidity(Temperature::new(temperature)).leave(self.source.symbol())
    }
}

/// `brine_vapour_pressure(temperature_c)` in kPa, over saturated sodium chloride.
///
/// ```
/// use overwater::scalar::Formula;
/// use overwater::water::brine::SaturatedBrineVapourPressure;
/// // 75.36 % (CRC Handbook, section 15) of 2.3392 kPa (IAPWS) at 20 degC.
/// assert!((SaturatedBrineVapourPressure::default().number([20.0])? - 0.7536 * 2.3392).abs() < 2e-4);
/// # Ok::<(), overwater::Error>(())
/// ```
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub struct SaturatedBrineVapourPressure {
    /// Where the humidity is taken from.
    pub source: BrineSource,
}

impl Formula<1> for SaturatedBrineVapourPressure {
    const NAME: &'static str = "brine_vapour_pressure";

    fn inputs(&self) -> [&'static Bound; 1] {
        [self.source.range()]
    }

    fn output(&self) -> &'static Symbol {
        &symbols::BRINE_VAPOUR_PRESSURE
    }

    fn property_uncertainty(&self) -> Option<&'static PropertyUncertainty> {
        (self.source == BrineSource::Crc).then_some(&CRC_STATED)
    }

    #[inline(always)]
    fn evaluate<S: Scalar>(&self, [temperature]: [S; 1]) -> S {
        let temperature = Temperature::new(
            temperature.enter(&symbols::TEMPERATURE).checkpoint(&symbols::THERMODYNAMIC_TEMPERATURE),
        );
        let pressure = saturation_pressure(temperature).si() * self.source.humidity(temperature);
        Pressure::new(pressure)
            .checkpoint(&symbols::BRINE_VAPOUR_PRESSURE)
            .leave(&symbols::BRINE_VAPOUR_PRESSURE)
    }
}

/// Vapour pressure over a dilute solution by Raoult's law: molality in mol/kg, `ions` from one formula of the solute.
#[inline(always)]
pub fn dilute_pressure<S: Scalar>(temperature: Temperature<S>, molality: S, ions: S) -> Pressure<S> {
    let solvent = S::number(1.0) + ions * molality * S::constant(&WATER_MOLAR_MASS_2021);
    Pressure::new(saturation_pressure(temperature).si() / solvent)
        .checkpoint(&symbols::DILUTE_VAPOUR_PRESSURE)
}

/// `dilute_brine_vapour_pressure(temperature_c, molality_mol_per_kg, ions)` in kPa: Raoult's law, an approximation.
///
/// ```
/// use overwater::scalar::Formula;
/// use overwater::water::brine::DiluteBrineVapourPressure;
/// // 1 mol/kg of sodium chloride, by hand: 3.1698 kPa/(1 + 2 x 1 x 0.018015) = 3.0596 kPa.
/// assert!((DiluteBrineVapourPressure.number([25.0, 1.0, 2.0])? - 3.0596).abs() < 5e-5);
/// # Ok::<(), overwater::Error>(())
/// ```
#[derive(Debug, Clone, Copy, Default)]
pub struct DiluteBrineVapourPressure;

impl Formula<3> for DiluteBrineVapourPressure {
    const NAME: &'static str = "dilute_brine_vapour_pressure";

    fn inputs(&self) -> [&'static Bound; 3] {
        [&bounds::TEMPERATURE_C, &bounds::MOLALITY_MOL_PER_KG, &bounds::IONS]
    }

    fn output(&self) -> &'static Symbol {
        &symbols::DILUTE_VAPOUR_PRESSURE
    }

    #[inline(always)]
    fn evaluate<S: Scalar>(&self, [temperature, molality, ions]: [S; 3]) -> S {
        let temperature = Temperature::new(
            temperature.enter(&symbols::TEMPERATURE).checkpoint(&symbols::THERMODYNAMIC_TEMPERATURE),
        );
        dilute_pressure(temperature, molality.enter(&symbols::MOLALITY), ions.enter(&symbols::IONS))
            .leave(&symbols::DILUTE_VAPOUR_PRESSURE)
    }
}

/// Density of saturated brine, on straight lines between computed values; NaN outside 10 to 40 degC.
#[inline(always)]
pub fn saturated_density<S: Scalar>(temperature: Temperature<S>) -> MassDensity<S> {
    MassDensity::new(SATURATED_DENSITY.read(temperature.si())).checkpoint(&symbols::BRINE_DENSITY)
}

/// `brine_density(temperature_c)` in g/cm3 of saturated sodium chloride, from 10 to 40 degC. The values are computed
/// with PHREEQC and its database pitzer.dat, not measured.
///
/// ```
/// use overwater::scalar::Formula;
/// use overwater::water::brine::SaturatedBrineDensity;
/// assert!((SaturatedBrineDensity.number([20.0])? - 1.199_96).abs() < 1e-12);
/// # Ok::<(), overwater::Error>(())
/// ```
#[derive(Debug, Clone, Copy, Default)]
pub struct SaturatedBrineDensity;

impl Formula<1> for SaturatedBrineDensity {
    const NAME: &'static str = "brine_density";

    fn inputs(&self) -> [&'static Bound; 1] {
        [&bounds::BRINE_TEMPERATURE_C]
    }

    fn output(&self) -> &'static Symbol {
        &symbols::BRINE_DENSITY
    }

    #[inline(always)]
    fn evaluate<S: Scalar>(&self, [temperature]: [S; 1]) -> S {
        let temperature = Temperature::new(temperature.enter(&symbols::TEMPERATURE));
        saturated_density(temperature).leave(&symbols::BRINE_DENSITY)
    }
}
