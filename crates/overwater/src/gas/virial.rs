//! Real gases by the second virial coefficient.
//!
//! ```text
//! B(T) = Σ a(i) (298.15 K/T - 1)^(i-1)
//! p = (R T/V_m) (1 + B/V_m)                        the series in the density, cut behind B
//! Z = p V_m/(R T) = (1 + √(1 + 4 B p/(R T)))/2     what follows for the compressibility factor
//! Z = 1 + B p/(R T)                                the series in the pressure, cut behind B
//! ```
//!
//! The two series have the same slope at p = 0 and differ by (B p/(R T))². That of the density is the default: up to
//! 120 kPa it stays within 0.0030 % of the reference equations for the permanent gases and within 0.020 % for butane,
//! where that of the pressure, which textbooks print, is up to 0.20 % off. The worst difference of each gas stands in
//! [`SecondVirial::molar_volume_difference_percent`].
//!
//! Range: 0 to 100 degC and up to 120 kPa; butane from 5 degC, since below 4 degC it is a liquid under 120 kPa.
//!
//! A mixture with water vapour follows the quadratic rule, y being the fraction of water:
//!
//! ```text
//! B(mix) = y² B(H2O) + 2 y (1 - y) B(H2O, gas) + (1 - y)² B(gas)
//! ```

use crate::bounds::{self, Bound};
use crate::gas::ideal;
use crate::gas::species::{Gas, no_data};
use crate::reference::constants::MOLAR_GAS_2019;
use crate::reference::gases::{
    AIR_WATER_VIRIAL_2010, AIR_WATER_VIRIAL_UNCERTAINTY, SECOND_VIRIALS_2026, SecondVirial,
    WATER_CROSS_ESTIMATES, WATER_VIRIAL_1995,
};
use crate::scalar::{Constant, Formula, Scalar, Symbol};
use crate::symbols;
use crate::units::{Dimensioned, MassDensity, MolarEntropy, MolarVolume, MolarWeight, Pressure, Temperature};
use crate::water::vapour::saturation_pressure;
use crate::{Code, Error, Result};

/// Temperature at which the polynomials' variable is zero, in K.
const CENTRE_K: f64 = 298.15;
const CUBIC_CENTIMETRE: f64 = 1e-6;

/// Where the virial series is cut behind B.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub enum Series {
    /// p = (R T/V)(1 + B/V), solved for V.
    #[default]
    Density,
    /// Z = 1 + B p/(R T), as textbooks print it.
    Pressure,
}

impl Gas {
    /// The second virial coefficient's row.
    ///
    /// # Errors
    /// `cannot_be_met` for a gas that has none.
    pub fn second_virial(self) -> Result<&'static SecondVirial> {
        SECOND_VIRIALS_2026.iter().find(|row| row.gas == self).ok_or_else(|| {
            no_data(
                self,
                "a second virial coefficient",
                "take the ideal gas, or, for nitrogen dioxide, its mixture with N2O4",
            )
        })
    }
}

/// The polynomial in 298.15 K/T - 1, in SI units.
#[inline(always)]
fn polynomial<S: Scalar>(temperature: Temperature<S>, coefficients: &[f64; 6]) -> MolarVolume<S> {
    let [a1, a2, a3, a4, a5, a6] = *coefficients;
    let x = S::number(CENTRE_K) / temperature.si() - 1.0;
    let sum = ((((x * a6 + a5) * x + a4) * x + a3) * x + a2) * x + a1;
    MolarVolume::new(sum * CUBIC_CENTIMETRE)
}

/// Second virial coefficient of a gas.
#[inline(always)]
pub fn second_virial<S: Scalar>(temperature: Temperature<S>, virial: &SecondVirial) -> MolarVolume<S> {
    polynomial(temperature, &virial.coefficients).checkpoint(virial_symbol(virial))
}

/// The symbol, with the source: fitted here to an equation of state, or the handbook's.
fn virial_symbol(virial: &SecondVirial) -> &'static Symbol {
    if virial.fit_difference_cm3_per_mol.is_some() {
        &symbols::SECOND_VIRIAL
    } else {
        &symbols::SECOND_VIRIAL_HANDBOOK
    }
}

/// Second virial coefficient of water vapour.
#[inline(always)]
pub fn water_virial<S: Scalar>(temperature: Temperature<S>) -> MolarVolume<S> {
    polynomial(temperature, &WATER_VIRIAL_1995)
}

/// Second virial coefficient between water and air, IAPWS G8-10 equation 7.
#[inline(always)]
pub fn air_water_virial<S: Scalar>(temperature: Temperature<S>) -> MolarVolume<S> {
    let logarithm = (temperature.si() / 100.0).ln();
    let [first, second, third] = AIR_WATER_VIRIAL_2010.map(|(c, d)| (logarithm * d).exp() * c);
    MolarVolume::new((first + second + third) * CUBIC_CENTIMETRE)
}

/// Compressibility factor Z = p V/(R T) from a second virial coefficient; NaN where the series in the density has no
/// solution, B p/(R T) < -1/4.
#[inline(always)]
pub fn compressibility<S: Scalar>(
    pressure: Pressure<S>,
    temperature: Temperature<S>,
    virial: MolarVolume<S>,
    series: Series,
) -> S {
    let r = MolarEntropy::new(S::constant(&MOLAR_GAS_2019));
    let reduced = (virial * pressure / (r * temperature)).into_value();
    let factor = match series {
        Series::Density => {
            let square = reduced * 4.0 + 1.0;
            (square.within(0.0, f64::MAX).sqrt() + 1.0) * 0.5
        }
        Series::Pressure => reduced + 1.0,
    };
    factor.checkpoint(&symbols::COMPRESSIBILITY)
}

/// Molar volume Z R T/p.
#[inline(always)]
pub fn molar_volume<S: Scalar>(
    pressure: Pressure<S>,
    temperature: Temperature<S>,
    virial: MolarVolume<S>,
    series: Series,
) -> MolarVolume<S> {
    let factor = compressibility(pressure, temperature, virial, series);
    let volume =
        ideal::molar_volume(pressure, temperature, &MOLAR_GAS_2019) * quantity::Dimensionless::new(factor);
    volume.checkpoint(&symbols::REAL_MOLAR_VOLUME)
}

/// Density M/V.
#[inline(always)]
pub fn density<S: Scalar>(molar_volume: MolarVolume<S>, molar_mass: &'static Constant) -> MassDensity<S> {
    (MolarWeight::new(S::constant(molar_mass)) / molar_volume).checkpoint(&symbols::GAS_DENSITY)
}

/// The quadratic rule for a gas with a fraction of water vapour.
#[inline(always)]
pub fn mixture_virial<S: Scalar>(
    water_fraction: S,
    gas: MolarVolume<S>,
    cross: MolarVolume<S>,
    water: MolarVolume<S>,
) -> MolarVolume<S> {
    let gas_fraction = S::number(1.0) - water_fraction;
    let both = water_fraction * gas_fraction * 2.0;
    let sum = water_fraction * water_fraction * water.si()
        + both * cross.si()
        + gas_fraction * gas_fraction * gas.si();
    MolarVolume::new(sum).checkpoint(&symbols::MIXTURE_VIRIAL)
}

#[inline(always)]
fn enter<S: Scalar>(temperature: S, pressure: S) -> (Temperature<S>, Pressure<S>) {
    let temperature =
        temperature.enter(&symbols::TEMPERATURE).checkpoint(&symbols::THERMODYNAMIC_TEMPERATURE);
    (Temperature::new(temperature), Pressure::new(pressure.enter(&symbols::STATION_PRESSURE)))
}

/// The temperatures that the coefficients hold for.
pub(crate) fn temperature_bound(gas: Gas) -> &'static Bound {
    if gas == Gas::Butane { &bounds::BUTANE_TEMPERATURE_C } else { &bounds::TEMPERATURE_C }
}

/// `second_virial(temperature_c)` in cm3/mol; its derivative by the temperature is
/// [`sensitivities`](Formula::sensitivities).
///
/// ```
/// use overwater::gas::species::Gas;
/// use overwater::gas::virial::SecondVirialCoefficient;
/// use overwater::scalar::Formula;
/// // Reference equation of Span and Wagner for CO2 at 0 degC: -150.3 cm3/mol (CoolProp 8.0.0).
/// let carbon_dioxide = SecondVirialCoefficient::of(Gas::CarbonDioxide)?;
/// assert!((carbon_dioxide.number([0.0])? + 150.3).abs() < 0.05);
/// # Ok::<(), overwater::Error>(())
/// ```
#[derive(Debug, Clone, Copy)]
pub struct SecondVirialCoefficient {
    virial: &'static SecondVirial,
}

impl SecondVirialCoefficient {
    /// That of a gas.
    ///
    /// # Errors
    /// `cannot_be_met` for a gas without one.
    pub fn of(gas: Gas) -> Result<Self> {
        Ok(SecondVirialCoefficient { virial: gas.second_virial()? })
    }
}

impl Formula<1> for SecondVirialCoefficient {
    const NAME: &'static str = "second_virial";

    fn inputs(&self) -> [&'static Bound; 1] {
        [temperature_bound(self.virial.gas)]
    }

    fn output(&self) -> &'static Symbol {
        virial_symbol(self.virial)
    }

    #[inline(always)]
    fn evaluate<S: Scalar>(&self, [temperature]: [S; 1]) -> S {
        let temperature =
            temperature.enter(&symbols::TEMPERATURE).checkpoint(&symbols::THERMODYNAMIC_TEMPERATURE);
        second_virial(Temperature::new(temperature), self.virial).leave(virial_symbol(self.virial))
    }
}

/// `compressibility(temperature_c, pressure_kpa)`, the factor Z = p V/(R T).
///
/// ```
/// use overwater::gas::species::Gas;
/// use overwater::gas::virial::{Compressibility, Series};
/// use overwater::scalar::Formula;
/// // At 25 degC and 101.325 kPa Z - 1 is about -0.5 % for CO2 and +0.06 % for H2.
/// let carbon_dioxide = Compressibility::of(Gas::CarbonDioxide, Series::Density)?;
/// assert!((carbon_dioxide.number([25.0, 101.325])? - 0.9949).abs() < 5e-5);
/// let hydrogen = Compressibility::of(Gas::Hydrogen, Series::Density)?;
/// assert!((hydrogen.number([25.0, 101.325])? - 1.0006).abs() < 5e-5);
/// # Ok::<(), overwater::Error>(())
/// ```
#[derive(Debug, Clone, Copy)]
pub struct Compressibility {
    virial: &'static SecondVirial,
    series: Series,
}

impl Compressibility {
    /// That of a gas.
    ///
    /// # Errors
    /// `cannot_be_met` for a gas without a second virial coefficient.
    pub fn of(gas: Gas, series: Series) -> Result<Self> {
        Ok(Compressibility { virial: gas.second_virial()?, series })
    }
}

impl Formula<2> for Compressibility {
    const NAME: &'static str = "compressibility";

    fn inputs(&self) -> [&'static Bound; 2] {
        [temperature_bound(self.virial.gas), &bounds::REAL_GAS_PRESSURE_KPA]
    }

    fn output(&self) -> &'static Symbol {
        &symbols::COMPRESSIBILITY
    }

    #[inline(always)]
    fn evaluate<S: Scalar>(&self, [temperature, pressure]: [S; 2]) -> S {
        let (temperature, pressure) = enter(temperature, pressure);
        let virial = second_virial(temperature, self.virial);
        compressibility(pressure, temperature, virial, self.series).leave(&symbols::COMPRESSIBILITY)
    }
}

/// `real_molar_volume(temperature_c, pressure_kpa)` in dm3/mol.
///
/// ```
/// use overwater::gas::species::Gas;
/// use overwater::gas::virial::{RealMolarVolume, Series};
/// use overwater::scalar::Formula;
/// // Oxygen at 0 degC and 101.325 kPa: 22.392 dm3/mol, against 22.414 for the ideal gas.
/// let oxygen = RealMolarVolume::of(Gas::Oxygen, Series::Density)?;
/// assert!((oxygen.number([0.0, 101.325])? - 22.392).abs() < 5e-4);
/// # Ok::<(), overwater::Error>(())
/// ```
#[derive(Debug, Clone, Copy)]
pub struct RealMolarVolume {
    virial: &'static SecondVirial,
    series: Series,
}

impl RealMolarVolume {
    /// That of a gas.
    ///
    /// # Errors
    /// `cannot_be_met` for a gas without a second virial coefficient.
    pub fn of(gas: Gas, series: Series) -> Result<Self> {
        Ok(RealMolarVolume { virial: gas.second_virial()?, series })
    }
}

impl Formula<2> for RealMolarVolume {
    const NAME: &'static str = "real_molar_volume";

    fn inputs(&self) -> [&'static Bound; 2] {
        [temperature_bound(self.virial.gas), &bounds::REAL_GAS_PRESSURE_KPA]
    }

    fn output(&self) -> &'static Symbol {
        &symbols::REAL_MOLAR_VOLUME
    }

    #[inline(always)]
    fn evaluate<S: Scalar>(&self, [temperature, pressure]: [S; 2]) -> S {
        let (temperature, pressure) = enter(temperature, pressure);
        let virial = second_virial(temperature, self.virial);
        molar_volume(pressure, temperature, virial, self.series).leave(&symbols::REAL_MOLAR_VOLUME)
    }
}

/// `gas_density(temperature_c, pressure_kpa)` in g/dm3.
///
/// ```
/// use overwater::gas::species::Gas;
/// use overwater::gas::virial::{RealDensity, Series};
/// use overwater::scalar::Formula;
/// // 31.998 g/mol over 22.392 dm3/mol: 1.429 g/dm3.
/// let oxygen = RealDensity::of(Gas::Oxygen, Series::Density)?;
/// assert!((oxygen.number([0.0, 101.325])? - 1.429).abs() < 5e-4);
/// # Ok::<(), overwater::Error>(())
/// ```
#[derive(Debug, Clone, Copy)]
pub struct RealDensity {
    virial: &'static SecondVirial,
    molar_mass: &'static Constant,
    series: Series,
}

impl RealDensity {
    /// That of a gas.
    ///
    /// # Errors
    /// `cannot_be_met` for a gas without a second virial coefficient.
    pub fn of(gas: Gas, series: Series) -> Result<Self> {
        let virial = gas.second_virial()?;
        let row = gas.row().ok_or_else(|| no_data(gas, "a molar mass", "give its molar mass"))?;
        Ok(RealDensity { virial, molar_mass: &row.molar_mass, series })
    }
}

impl Formula<2> for RealDensity {
    const NAME: &'static str = "gas_density";

    fn inputs(&self) -> [&'static Bound; 2] {
        [temperature_bound(self.virial.gas), &bounds::REAL_GAS_PRESSURE_KPA]
    }

    fn output(&self) -> &'static Symbol {
        &symbols::GAS_DENSITY
    }

    #[inline(always)]
    fn evaluate<S: Scalar>(&self, [temperature, pressure]: [S; 2]) -> S {
        let (temperature, pressure) = enter(temperature, pressure);
        let virial = second_virial(temperature, self.virial);
        let volume = molar_volume(pressure, temperature, virial, self.series);
        density(volume, self.molar_mass).leave(&symbols::GAS_DENSITY)
    }
}

/// The second virial coefficient between water and a gas.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum WaterCross {
    /// IAPWS G8-10 for air, with its dependence on temperature.
    Air,
    /// An estimate near 20 degC, from memory.
    Estimate {
        /// In cm3/mol.
        value_cm3_per_mol: f64,
        /// In cm3/mol.
        uncertainty_cm3_per_mol: f64,
    },
}

impl WaterCross {
    /// That of a gas.
    ///
    /// # Errors
    /// `cannot_be_met` for a gas for which there is not even an estimate.
    pub fn of(gas: Gas) -> Result<WaterCross> {
        if gas == Gas::Air {
            return Ok(WaterCross::Air);
        }
        WATER_CROSS_ESTIMATES
            .iter()
            .find(|row| row.gas == gas)
            .map(|row| WaterCross::Estimate {
                value_cm3_per_mol: row.value_cm3_per_mol,
                uncertainty_cm3_per_mol: row.uncertainty_cm3_per_mol,
            })
            .ok_or_else(|| {
                no_data(
                    gas,
                    "a second virial coefficient with water",
                    "take the dry gas at its own partial pressure, which neglects the attraction between the two",
                )
            })
    }

    /// Uncertainty near room temperature, in cm3/mol.
    #[must_use]
    pub fn uncertainty_cm3_per_mol(self) -> f64 {
        match self {
            WaterCross::Air => AIR_WATER_VIRIAL_UNCERTAINTY,
            WaterCross::Estimate { uncertainty_cm3_per_mol, .. } => uncertainty_cm3_per_mol,
        }
    }

    #[inline(always)]
    fn at<S: Scalar>(self, temperature: Temperature<S>) -> MolarVolume<S> {
        match self {
            WaterCross::Air => air_water_virial(temperature),
            WaterCross::Estimate { value_cm3_per_mol, .. } => {
                MolarVolume::new(S::number(value_cm3_per_mol * CUBIC_CENTIMETRE))
            }
        }
    }
}

/// How far above saturation a vapour may be stated, as a fraction: the enhancement by the gas is at most 1.3 % (carbon
/// dioxide, 20 degC), and a rounded fraction must still be taken.
const SUPERSATURATION: f64 = 0.02;

/// `moist_molar_volume(temperature_c, pressure_kpa, water_fraction)` in dm3 for each mole of gas and vapour together.
///
/// A fraction of water beyond saturation is refused: it would be dew. For air the humid-air model in CoolProp 8.0.0 is
/// within 1 part in 100 000 up to 10 % of vapour, 4 up to 45 % and 15 at 67 % (80 degC), where the third coefficient of
/// water shows.
///
/// ```
/// use overwater::gas::species::Gas;
/// use overwater::gas::virial::MoistMolarVolume;
/// use overwater::scalar::Formula;
/// // Air with 2 % of vapour at 20 degC and 101.325 kPa: 24.0447 dm3/mol by the humid-air model in CoolProp 8.0.0.
/// let air = MoistMolarVolume::of(Gas::Air)?;
/// assert!((air.number([20.0, 101.325, 0.02])? - 24.044_7).abs() < 2e-4);
/// # Ok::<(), overwater::Error>(())
/// ```
#[derive(Debug, Clone, Copy)]
pub struct MoistMolarVolume {
    virial: &'static SecondVirial,
    cross: WaterCross,
}

impl MoistMolarVolume {
    /// That of a gas with water vapour.
    ///
    /// # Errors
    /// `cannot_be_met` where B of the gas or between it and water is not known.
    pub fn of(gas: Gas) -> Result<Self> {
        Ok(MoistMolarVolume { virial: gas.second_virial()?, cross: WaterCross::of(gas)? })
    }
}

impl Formula<3> for MoistMolarVolume {
    const NAME: &'static str = "moist_molar_volume";

    fn inputs(&self) -> [&'static Bound; 3] {
        let temperature = match self.cross {
            WaterCross::Air => &bounds::TEMPERATURE_C,
            WaterCross::Estimate { .. } => &bounds::ESTIMATED_MOIST_TEMPERATURE_C,
        };
        [temperature, &bounds::REAL_GAS_PRESSURE_KPA, &bounds::WATER_FRACTION]
    }

    fn output(&self) -> &'static Symbol {
        &symbols::REAL_MOLAR_VOLUME
    }

    #[inline(always)]
    fn evaluate<S: Scalar>(&self, [temperature, pressure, fraction]: [S; 3]) -> S {
        let (temperature, pressure) = enter(temperature, pressure);
        let fraction = fraction.enter(&symbols::WATER_FRACTION);
        let left = saturation_pressure(temperature).si() * (1.0 + SUPERSATURATION) - fraction * pressure.si();
        let virial = mixture_virial(
            fraction,
            second_virial(temperature, self.virial),
            self.cross.at(temperature),
            water_virial(temperature),
        );
        let volume = molar_volume(pressure, temperature, virial, Series::Density);
        volume.si().where_within(left, 0.0, f64::MAX).leave(&symbols::REAL_MOLAR_VOLUME)
    }

    fn refusal(&self, [temperature, pressure, fraction]: [f64; 3]) -> Error {
        Error::new(Code::Contradiction, "water_fraction")
            .value(format!("{fraction} at {temperature} degC and {pressure} kPa"))
            .allowed("a pressure of the vapour up to its saturation pressure")
            .advice("the rest would be dew: give at most the fraction of a saturated gas")
    }
}
