//! A practical as it was carried out: the chain, what is asked for, and what comes out of a row of readings.

use crate::gas::virial;
use crate::scalar::{Scalar, Solution, Symbol, Tape, Working};
use crate::symbols;
use crate::units::{Dimensioned, Mass, MolarVolume, MolarWeight, Moles, Pressure, Temperature, Time, Volume};
use crate::{Code, Error, Result};

use super::eudiometry::{Volumes, composition};
use super::reaction_yield::{
    expected_amount, measured_molar_volume, purity, reaction_yield, solid_molar_mass,
};
use super::reduction::{Chain, Collector, Correction, Corrections, mass_loss};
use super::{Practical, Quantity, Row, effusion, timing, titration, weighing};

/// What a volume of dry gas is given at.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub enum Reference {
    /// Not asked for.
    #[default]
    None,
    /// A temperature and a pressure, both in the row.
    Conditions,
    /// A molar volume, in the row.
    MolarVolume,
}

/// A practical as it was carried out.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Experiment {
    /// From the reading to the amount.
    pub chain: Chain,
    /// What is asked for.
    pub practical: Practical,
    /// What volumes are given at.
    pub reference: Reference,
}

/// What came out of a row.
#[derive(Debug, Clone, PartialEq)]
pub struct Outcome<S> {
    /// The results in the units of their symbols; the first is what the practical is about.
    pub results: Vec<(&'static Symbol, S)>,
}

impl<S: Copy> Outcome<S> {
    /// A result by its symbol.
    #[must_use]
    pub fn get(&self, symbol: &Symbol) -> Option<S> {
        self.results.iter().find(|(own, _)| own.id == symbol.id).map(|(_, value)| *value)
    }
}

/// How much a correction matters in one row.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct CorrectionSize {
    /// Which.
    pub correction: Correction,
    /// Whether it was made.
    pub made: bool,
    /// The change of the amount of gas if it is left out, in per cent of the right amount; NaN without an amount.
    pub amount_percent: f64,
    /// The change of the first result if it is left out, in per cent of the right result.
    pub result_percent: f64,
}

impl Experiment {
    /// Everything that is asked for, in the same operations for every kind of number. Readings are not held to their
    /// bounds here.
    ///
    /// # Errors
    /// `missing` for a reading.
    pub fn evaluate<S: Scalar>(&self, row: &Row<S>) -> Result<Outcome<S>> {
        let mut results = Vec::with_capacity(4);
        let mut give = |symbol: &'static Symbol, value: S| results.push((symbol, value.leave(symbol)));
        let enter =
            |quantity: Quantity| -> Result<S> { Ok(row.need(quantity)?.enter(quantity.bound().symbol)) };
        match self.practical {
            Practical::CarbonateBackTitration => {
                let amount = titration::carbonate_amount(row)?;
                let molar_mass = MolarWeight::new(enter(Quantity::ReagentMolarMass)?);
                let mass = Mass::new(enter(Quantity::Mass)?);
                give(&symbols::PURITY, purity(amount, S::number(1.0), molar_mass, mass));
                give(&symbols::REAGENT_AMOUNT, amount.si());
            }
            Practical::TimeToVolume => {
                let time = Time::new(enter(Quantity::Time)?);
                let volume = Volume::new(enter(Quantity::Volume)?);
                give(&symbols::RECIPROCAL_TIME, timing::reciprocal_time(time));
                give(&symbols::MEAN_RATE, timing::mean_rate(volume, time).si());
                if row.get(Quantity::FinalVolume).is_some() {
                    let share = volume.si() / enter(Quantity::FinalVolume)?;
                    let share = share.checkpoint(&symbols::CONVERSION);
                    give(&symbols::CONVERSION, share);
                    give(&symbols::AVERAGE_BIAS, timing::average_bias(share));
                }
            }
            Practical::Eudiometry(water) => {
                let volumes = Volumes {
                    sample: Volume::new(enter(Quantity::SampleGas)?),
                    mixed: Volume::new(enter(Quantity::MixedGas)?),
                    burnt: Volume::new(enter(Quantity::BurntGas)?),
                    washed: Volume::new(enter(Quantity::WashedGas)?),
                };
                let [carbon, hydrogen, left] = composition(&volumes, water);
                give(&symbols::CARBON_NUMBER, carbon.within(0.0, f64::MAX));
                give(&symbols::HYDROGEN_NUMBER, hydrogen.within(0.0, f64::MAX));
                give(&symbols::OXYGEN_LEFT, left);
            }
            Practical::Effusion => {
                let molar_mass = effusion::effused_molar_mass(
                    Time::new(enter(Quantity::Time)?),
                    Time::new(enter(Quantity::KnownTime)?),
                    MolarWeight::new(enter(Quantity::KnownMolarMass)?),
                );
                give(&symbols::EFFUSED_MOLAR_MASS, molar_mass.si());
            }
            Practical::GasDensity => self.weighed(row, &mut give)?,
            _ => self.collected(row, &mut give)?,
        }
        Ok(Outcome { results })
    }

    /// The practicals that go by the amount of gas collected.
    fn collected<S: Scalar>(&self, row: &Row<S>, give: &mut impl FnMut(&'static Symbol, S)) -> Result<()> {
        let amount = self.chain.amount(row)?;
        let solid = || -> Result<(Mass<S>, S)> {
            let mass = row.need(Quantity::Mass)?.enter(&symbols::MASS);
            Ok((Mass::new(mass), row.need(Quantity::MoleRatio)?.enter(&symbols::MOLE_RATIO)))
        };
        match self.practical {
            Practical::MetalMolarMass | Practical::CarbonateMolarMass => {
                let (mass, ratio) = solid()?;
                give(&symbols::MOLAR_MASS, solid_molar_mass(mass, ratio, amount).si());
            }
            Practical::CarbonatePurity => {
                let (mass, ratio) = solid()?;
                let molar_mass = row.need(Quantity::ReagentMolarMass)?.enter(&symbols::REAGENT_MOLAR_MASS);
                give(&symbols::PURITY, purity(amount, ratio, MolarWeight::new(molar_mass), mass));
            }
            Practical::GasMolarMass | Practical::VapourMolarMass => {
                let molar_mass = (mass_loss(row)? / amount).checkpoint(&symbols::MOLAR_MASS);
                give(&symbols::MOLAR_MASS, molar_mass.si());
            }
            _ => {}
        }
        give(&symbols::AMOUNT, amount.si());
        if self.practical == Practical::MassLossRate {
            give(&symbols::ELAPSED_TIME, row.need(Quantity::Time)?.enter(&symbols::ELAPSED_TIME));
        }
        let volume = self.reference_volume(row, amount)?;
        if let Some(volume) = volume {
            give(&symbols::REFERENCE_VOLUME, volume.si());
        }
        let reagent = row.get(Quantity::MoleRatio).is_some();
        let measures_volume =
            matches!(self.practical, Practical::MetalAndAcid | Practical::MolarVolumeFromSlope);
        if measures_volume || (self.practical == Practical::Amount && reagent) {
            let expected = expected_amount(row)?;
            if self.practical == Practical::MolarVolumeFromSlope {
                give(&symbols::EXPECTED_AMOUNT, expected.si());
            }
            if let (Some(volume), true) = (volume, measures_volume) {
                give(&symbols::MEASURED_MOLAR_VOLUME, measured_molar_volume(volume, expected).si());
            }
            give(&symbols::YIELD, reaction_yield(amount, expected));
        }
        Ok(())
    }

    fn weighed<S: Scalar>(&self, row: &Row<S>, give: &mut impl FnMut(&'static Symbol, S)) -> Result<()> {
        let volume = Volume::new(row.need(Quantity::Volume)?.enter(&symbols::VOLUME));
        let (_, temperature) = self.chain.temperatures(row)?;
        let pressure = self.chain.pressure(row)?;
        let constant = self.chain.conventions.gas_constant;
        let filled = Mass::new(row.need(Quantity::MassFilled)?.enter(&symbols::MASS_FILLED));
        let with_air = Mass::new(row.need(Quantity::MassWithAir)?.enter(&symbols::MASS_WITH_AIR));
        let mut mass = filled - with_air;
        if self.chain.corrections.makes(Correction::Buoyancy) {
            mass = mass + weighing::displaced_air(volume, pressure, temperature, constant);
        }
        let mass = mass.checkpoint(&symbols::GAS_MASS);
        let mass = Mass::new(mass.si().within(f64::MIN_POSITIVE, f64::MAX));
        let density = weighing::gas_density(mass, volume);
        let amount = self.chain.moles(pressure, volume, temperature);
        let molar_mass = (mass / amount).checkpoint(&symbols::MOLAR_MASS);
        give(&symbols::MOLAR_MASS, molar_mass.si());
        give(&symbols::WEIGHED_DENSITY, density.si());
        give(&symbols::AMOUNT, amount.si());
        Ok(())
    }

    fn reference_volume<S: Scalar>(&self, row: &Row<S>, amount: Moles<S>) -> Result<Option<Volume<S>>> {
        let volume = match self.reference {
            Reference::None => return Ok(None),
            Reference::Conditions => {
                let temperature = row.need(Quantity::ReferenceTemperature)?;
                let temperature = Temperature::new(temperature.enter(&symbols::REFERENCE_TEMPERATURE));
                let pressure = row.need(Quantity::ReferencePressure)?;
                let pressure = Pressure::new(pressure.enter(&symbols::REFERENCE_PRESSURE));
                amount * self.chain.molar_volume(pressure, temperature)
            }
            Reference::MolarVolume => {
                let stated = row.need(Quantity::StatedMolarVolume)?;
                amount * MolarVolume::new(stated.enter(&symbols::STATED_MOLAR_VOLUME))
            }
        };
        Ok(Some(volume.checkpoint(&symbols::REFERENCE_VOLUME)))
    }

    /// The results of a row.
    ///
    /// # Errors
    /// `missing` for a reading, `not_a_number` and `out_of_range` for one outside its bounds, `contradiction` where
    /// readings that are each allowed have no result together.
    pub fn results(&self, row: &Row<f64>) -> Result<Outcome<f64>> {
        row.check()?;
        self.check_real_gas(row)?;
        let outcome = self.evaluate(row)?;
        match outcome.results.iter().find(|(_, value)| !value.is_finite()) {
            Some((symbol, _)) => Err(self.refusal(row, symbol)),
            None => Ok(outcome),
        }
    }

    /// The results of a row and the worked solution that leads to them.
    ///
    /// # Errors
    /// As for [`results`](Experiment::results).
    pub fn working(&self, row: &Row<f64>) -> Result<Solution> {
        self.results(row)?;
        let tape = Tape::new();
        self.evaluate(&row.map(|_, value| Working::input(&tape, value)))?;
        Ok(tape.solution())
    }

    /// How much each correction that this experiment knows matters in a row: the change if it is left out.
    ///
    /// # Errors
    /// As for [`results`](Experiment::results).
    pub fn corrections(&self, row: &Row<f64>) -> Result<Vec<CorrectionSize>> {
        let with = |corrections: Corrections| {
            let mut changed = *self;
            changed.chain.corrections = corrections;
            changed.results(row)
        };
        // The real gas is no part of what the others are judged by unless it is asked for.
        let real = self.chain.corrections.makes(Correction::RealGas);
        let complete = if real { Corrections::ALL } else { Corrections::USUAL };
        let mut sizes = Vec::new();
        for correction in Correction::ALL.into_iter().filter(|correction| self.knows(*correction, row)) {
            let right = with(complete.with(correction))?;
            let without = with(complete.without(correction))?;
            let change = |wrong: Option<f64>, right: Option<f64>| match (wrong, right) {
                (Some(wrong), Some(right)) => 100.0 * (wrong / right - 1.0),
                _ => f64::NAN,
            };
            let first = |outcome: &Outcome<f64>| outcome.results.first().map(|(_, value)| *value);
            sizes.push(CorrectionSize {
                correction,
                made: self.chain.corrections.makes(correction),
                amount_percent: change(without.get(&symbols::AMOUNT), right.get(&symbols::AMOUNT)),
                result_percent: change(first(&without), first(&right)),
            });
        }
        Ok(sizes)
    }

    /// Whether a correction has anything to correct.
    fn knows(&self, correction: Correction, row: &Row<f64>) -> bool {
        let by_volume = self.practical.collects_gas() && self.chain.collector != Collector::MassLoss;
        let by_loss = self.practical.collects_gas() && self.chain.collector == Collector::MassLoss;
        match correction {
            Correction::Altitude => {
                row.get(Quantity::SeaLevelPressure).is_some()
                    && (self.practical.collects_gas() || self.practical == Practical::GasDensity)
            }
            Correction::Level => {
                by_volume
                    && self.chain.collector != Collector::Syringe
                    && row.get(Quantity::InsideMinusOutside).is_some()
            }
            Correction::Vapour => by_volume && self.practical != Practical::VapourMolarMass,
            Correction::CarriedVapour => by_loss,
            Correction::Buoyancy => self.practical == Practical::GasDensity,
            Correction::RealGas => {
                (by_volume || self.practical == Practical::GasDensity)
                    && self.chain.gas.is_some_and(|gas| gas.second_virial().is_ok())
            }
        }
    }

    /// The second virial coefficient has limits of its own.
    fn check_real_gas(&self, row: &Row<f64>) -> Result<()> {
        let Some(gas) = self.chain.real_gas().filter(|_| self.knows(Correction::RealGas, row)) else {
            return Ok(());
        };
        let own = virial::temperature_bound(gas.gas);
        for quantity in [Quantity::Temperature, Quantity::ReferenceTemperature] {
            let Some(value) = row.get(quantity) else { continue };
            own.check(value).map_err(|error| {
                let error = error.advice("take the gas as ideal: leave out the correction real_gas");
                Error { parameter: quantity.name().into(), ..error }
            })?;
        }
        Ok(())
    }

    fn refusal(&self, row: &Row<f64>, symbol: &Symbol) -> Error {
        let at = |quantity: Quantity| row.get(quantity).unwrap_or(f64::NAN);
        if row.get(Quantity::MassAfter).is_some() && at(Quantity::MassAfter) >= at(Quantity::MassBefore) {
            return Error::new(Code::Contradiction, Quantity::MassAfter.name())
                .value(format!("{} g", at(Quantity::MassAfter)))
                .allowed(format!("less than mass_before_g = {} g", at(Quantity::MassBefore)))
                .advice("nothing has been lost: are the two masses exchanged?");
        }
        match self.practical {
            Practical::CarbonateBackTitration => Error::new(Code::Contradiction, Quantity::Titre.name())
                .value(format!("{} cm3", at(Quantity::Titre)))
                .allowed("an amount of alkali below that of the acid")
                .advice("no acid would have been used up: check the concentrations"),
            Practical::TimeToVolume => Error::new(Code::Contradiction, Quantity::Volume.name())
                .value(format!("{} cm3", at(Quantity::Volume)))
                .allowed("less than the final volume, in a time above 0")
                .advice("check the final volume and the time"),
            Practical::GasDensity => Error::new(Code::Contradiction, Quantity::MassFilled.name())
                .value(format!("{} g", at(Quantity::MassFilled)))
                .allowed("a gas with a mass above 0")
                .advice("are the two masses exchanged?"),
            Practical::Eudiometry(_) => Error::new(Code::Contradiction, Quantity::BurntGas.name())
                .value(format!("{} cm3", at(Quantity::BurntGas)))
                .allowed("volumes that leave carbon and hydrogen numbers of 0 or more")
                .advice("are the volumes in their right columns, and is the water liquid or a gas as said?"),
            Practical::Effusion => {
                Error::new(Code::Contradiction, symbol.id).advice("these readings together have no result")
            }
            _ => {
                let name = match row.get(Quantity::SeaLevelPressure) {
                    Some(_) => Quantity::SeaLevelPressure,
                    None => Quantity::Pressure,
                };
                Error::new(Code::Contradiction, name.name())
                    .value(format!("{} kPa", at(name)))
                    .allowed("a pressure of the gas above the vapour pressure of water")
                    .advice(
                        "nothing would be left beside the vapour: check the unit of the pressure and the temperature",
                    )
            }
        }
    }
}
