//! From a reading to the amount of dry gas, for each way of collecting it, with corrections that can be left out one by
//! one.
//!
//! ```text
//! over water    n = (p - ρ g Δh - p(H2O)) V / (R T)
//! syringe       n = (p - φ p(H2O)) V / (R T)            φ: relative saturation, 0 to 1
//! mass loss     n = Δm / (M(gas) + M(H2O) p(H2O)/(p - p(H2O)))
//! ```
//!
//! The first is [`collected`](crate::gas::collected). The last takes the gas to leave saturated with vapour at the
//! temperature of the liquid. The first two take the gas as ideal, or, where that is asked for, divide by its
//! compressibility factor Z at its own pressure: [`virial`]. Its forces with the vapour are left out.

use crate::conventions::Conventions;
use crate::gas::collected::Reading;
use crate::gas::species::Gas;
use crate::gas::{barometer, ideal, level, virial};
use crate::reference::constants::MERCURY_DENSITY;
use crate::reference::gases::SecondVirial;
use crate::reference::water::WATER_MOLAR_MASS_2021;
use crate::scalar::{Scalar, Symbol};
use crate::units::{
    Dimensioned, Length, Mass, MassDensity, MolarVolume, MolarWeight, Moles, Pressure, Temperature, Volume,
};
use crate::water::vapour;
use crate::{Result, symbols};

use super::{Quantity, Row};

/// How the gas was collected.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub enum Collector {
    /// In an inverted vessel over water; the gas is saturated with vapour.
    #[default]
    OverWater,
    /// The same over mercury with a little water on it: the level difference is one of mercury, at 0 degC.
    OverMercury,
    /// In a syringe, at the pressure of the room.
    Syringe,
    /// Not at all: it was let go and the loss of mass was read.
    MassLoss,
}

/// What may be left out.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Correction {
    /// Reduction of a sea-level pressure to the place.
    Altitude,
    /// The column between the levels.
    Level,
    /// The vapour in the gas.
    Vapour,
    /// The vapour that a gas carries off, when the loss of mass is read.
    CarriedVapour,
    /// The air that a weighed gas displaces.
    Buoyancy,
    /// The difference of a named gas from an ideal one.
    RealGas,
}

impl Correction {
    /// Every correction.
    pub const ALL: [Correction; 6] = [
        Correction::Altitude,
        Correction::Level,
        Correction::Vapour,
        Correction::CarriedVapour,
        Correction::Buoyancy,
        Correction::RealGas,
    ];

    /// Its name for programs.
    #[must_use]
    pub const fn name(self) -> &'static str {
        match self {
            Correction::Altitude => "altitude",
            Correction::Level => "level",
            Correction::Vapour => "vapour",
            Correction::CarriedVapour => "carried_vapour",
            Correction::Buoyancy => "buoyancy",
            Correction::RealGas => "real_gas",
        }
    }
}

/// The corrections that are made.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Corrections {
    left_out: u8,
}

impl Corrections {
    /// All of them.
    pub const ALL: Corrections = Corrections { left_out: 0 };

    /// All but the one that schools do not make: a gas is taken as ideal.
    pub const USUAL: Corrections = Corrections::ALL.without(Correction::RealGas);

    /// The same with one more of them.
    #[must_use]
    pub const fn with(self, correction: Correction) -> Self {
        Corrections { left_out: self.left_out & !(1 << correction as u8) }
    }

    /// The same without one of them.
    #[must_use]
    pub const fn without(self, correction: Correction) -> Self {
        Corrections { left_out: self.left_out | (1 << correction as u8) }
    }

    /// Whether a correction is made.
    #[must_use]
    pub const fn makes(self, correction: Correction) -> bool {
        self.left_out & (1 << correction as u8) == 0
    }
}

impl Default for Corrections {
    fn default() -> Self {
        Corrections::USUAL
    }
}

/// A collector, what is corrected, and the constants to put in.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Chain {
    /// How the gas was collected.
    pub collector: Collector,
    /// What is corrected.
    pub corrections: Corrections,
    /// The constants to put in.
    pub conventions: Conventions,
    /// The gas, where it is known: then it can be taken as it is and not as ideal. The real gas goes by the constants of
    /// today, whatever the conventions.
    pub gas: Option<Gas>,
}

impl Chain {
    /// Amount of dry gas. NaN where nothing is left beside the vapour.
    ///
    /// # Errors
    /// `missing` for a reading that the collector needs.
    #[inline(always)]
    pub fn amount<S: Scalar>(&self, row: &Row<S>) -> Result<Moles<S>> {
        match self.collector {
            Collector::MassLoss => {
                let molar_mass = row.need(Quantity::GasMolarMass)?.enter(&symbols::GAS_MOLAR_MASS);
                let molar_mass = MolarWeight::new(molar_mass);
                let moist = if self.corrections.makes(Correction::CarriedVapour) {
                    let temperature = self.temperatures(row)?.0;
                    let vapour = self.vapour_pressure(row, temperature)?;
                    carried_mass(molar_mass, self.pressure(row)?, vapour)
                } else {
                    molar_mass
                };
                Ok((mass_loss(row)? / moist).checkpoint(&symbols::AMOUNT))
            }
            Collector::OverWater | Collector::OverMercury | Collector::Syringe => {
                let volume = Volume::new(row.need(Quantity::Volume)?.enter(&symbols::VOLUME));
                let (temperature, counted) = self.temperatures(row)?;
                let gas = self.gas_pressure(row, temperature)?;
                let dry = if self.corrections.makes(Correction::Vapour) {
                    (gas - self.vapour_pressure(row, temperature)?).checkpoint(&symbols::DRY_PRESSURE)
                } else {
                    gas
                };
                let dry = Pressure::new(dry.si().within(f64::MIN_POSITIVE, f64::MAX));
                Ok(self.moles(dry, volume, counted))
            }
        }
    }

    /// The gas that is not taken as ideal, with its second virial coefficient.
    pub(super) fn real_gas(&self) -> Option<&'static SecondVirial> {
        let gas = self.gas.filter(|_| self.corrections.makes(Correction::RealGas))?;
        gas.second_virial().ok()
    }

    /// V over the molar volume of the gas, ideal or real.
    #[inline(always)]
    pub(super) fn moles<S: Scalar>(
        &self,
        pressure: Pressure<S>,
        volume: Volume<S>,
        temperature: Temperature<S>,
    ) -> Moles<S> {
        match self.real_gas() {
            None => ideal::amount(pressure, volume, temperature, self.conventions.gas_constant),
            Some(_) => {
                (volume / self.molar_volume(pressure, temperature)).checkpoint(&symbols::REAL_GAS_AMOUNT)
            }
        }
    }

    /// Molar volume of the gas, ideal or real.
    #[inline(always)]
    pub(super) fn molar_volume<S: Scalar>(
        &self,
        pressure: Pressure<S>,
        temperature: Temperature<S>,
    ) -> MolarVolume<S> {
        match self.real_gas() {
            None => ideal::molar_volume(pressure, temperature, self.conventions.gas_constant),
            Some(row) => {
                let second = virial::second_virial(temperature, row);
                virial::molar_volume(pressure, temperature, second, virial::Series::Density)
            }
        }
    }

    /// Temperature for the properties of water, and the one that goes into the gas equation.
    #[inline(always)]
    pub(super) fn temperatures<S: Scalar>(&self, row: &Row<S>) -> Result<(Temperature<S>, Temperature<S>)> {
        let reading = row.need(Quantity::Temperature)?;
        let kelvin = |symbol: &'static Symbol| {
            Temperature::new(reading.enter(symbol).checkpoint(&symbols::THERMODYNAMIC_TEMPERATURE))
        };
        let exact = kelvin(&symbols::TEMPERATURE);
        let own = self.conventions.ice_point.temperature();
        let counted = if own.unit.zero == symbols::TEMPERATURE.unit.zero { exact } else { kelvin(own) };
        Ok((exact, counted))
    }

    /// Pressure at the place.
    #[inline(always)]
    pub(super) fn pressure<S: Scalar>(&self, row: &Row<S>) -> Result<Pressure<S>> {
        let Some(sea_level) = row.get(Quantity::SeaLevelPressure) else {
            return Ok(Pressure::new(row.need(Quantity::Pressure)?.enter(&symbols::STATION_PRESSURE)));
        };
        let sea_level = Pressure::new(sea_level.enter(&symbols::SEA_LEVEL_PRESSURE));
        let altitude = row.need(Quantity::Altitude)?;
        if !self.corrections.makes(Correction::Altitude) {
            return Ok(sea_level);
        }
        Ok(barometer::station_pressure(sea_level, Length::new(altitude.enter(&symbols::ALTITUDE))))
    }

    /// Pressure of the moist gas.
    #[inline(always)]
    fn gas_pressure<S: Scalar>(&self, row: &Row<S>, temperature: Temperature<S>) -> Result<Pressure<S>> {
        let pressure = self.pressure(row)?;
        let height = match row.get(Quantity::InsideMinusOutside) {
            Some(height)
                if self.corrections.makes(Correction::Level) && self.collector != Collector::Syringe =>
            {
                Length::new(height.enter(&symbols::LEVEL_DIFFERENCE))
            }
            _ => return Ok(pressure),
        };
        if self.collector == Collector::OverMercury {
            let mercury = MassDensity::new(S::constant(&MERCURY_DENSITY));
            let column = level::column_pressure(height, mercury).checkpoint(&symbols::LEVEL_PRESSURE);
            return Ok((pressure - column).checkpoint(&symbols::GAS_PRESSURE));
        }
        let reading = Reading {
            volume: Volume::new(S::number(0.0)),
            temperature,
            counted_temperature: temperature,
            pressure,
            inside_minus_outside: height,
        };
        Ok(reading.gas_pressure())
    }

    /// The vapour in the gas: as stated, or that of water at the temperature, times the relative saturation in a
    /// syringe.
    #[inline(always)]
    fn vapour_pressure<S: Scalar>(&self, row: &Row<S>, temperature: Temperature<S>) -> Result<Pressure<S>> {
        let saturated = match row.get(Quantity::VapourPressure) {
            Some(stated) => Pressure::new(stated.enter(&symbols::VAPOUR_PRESSURE)),
            None => vapour::saturation_pressure(temperature),
        };
        if self.collector != Collector::Syringe {
            return Ok(saturated);
        }
        let share = row.need(Quantity::RelativeSaturation)?.enter(&symbols::RELATIVE_SATURATION);
        Ok(Pressure::new(saturated.si() * share).checkpoint(&symbols::SATURATED_VAPOUR_PRESSURE))
    }
}

/// Mass that leaves with one mole of dry gas: M + M(H2O) p(H2O)/(p - p(H2O)); NaN where the liquid boils.
#[inline(always)]
pub fn carried_mass<S: Scalar>(
    molar_mass: MolarWeight<S>,
    pressure: Pressure<S>,
    vapour: Pressure<S>,
) -> MolarWeight<S> {
    let dry = (pressure - vapour).checkpoint(&symbols::DRY_PRESSURE);
    let dry = dry.si().within(f64::MIN_POSITIVE, f64::MAX);
    let water = S::constant(&WATER_MOLAR_MASS_2021) * (vapour.si() / dry);
    MolarWeight::new(molar_mass.si() + water).checkpoint(&symbols::CARRIED_MASS)
}

/// The loss of mass as read, or the difference of two masses; NaN where nothing was lost.
///
/// # Errors
/// `missing` where neither is given.
#[inline(always)]
pub fn mass_loss<S: Scalar>(row: &Row<S>) -> Result<Mass<S>> {
    if let Some(loss) = row.get(Quantity::MassLoss) {
        return Ok(Mass::new(loss.enter(&symbols::MASS_LOSS)));
    }
    let (Some(before), Some(after)) = (row.get(Quantity::MassBefore), row.get(Quantity::MassAfter)) else {
        row.need(Quantity::MassLoss)?;
        return Ok(Mass::new(S::number(f64::NAN)));
    };
    let before = Mass::new(before.enter(&symbols::MASS_BEFORE));
    let loss = (before - Mass::new(after.enter(&symbols::MASS_AFTER))).checkpoint(&symbols::MASS_LOSS);
    Ok(Mass::new(loss.si().within(f64::MIN_POSITIVE, f64::MAX)))
}
