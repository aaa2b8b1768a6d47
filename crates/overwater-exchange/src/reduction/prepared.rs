//! A request, turned into the core's experiment and the readings that all rows share.

use overwater::chem::{Balanced, Formula, Reaction, Weights};
use overwater::conventions::Conventions;
use overwater::gas::species::Gas;
use overwater::readings::reduction::{Chain, Collector, Correction, Corrections};
use overwater::readings::{Experiment, Practical, Quantity, Reference, Row, WaterAfterBurning};
use overwater::units;
use overwater::{Code, Error};

use super::columns::{Column, column, school};
use super::request::{
    CollectorRequest, ConstantsRequest, CorrectionRequest, PracticalRequest, ReductionRequest,
};

/// What is the same for every row.
#[derive(Debug, Clone)]
pub(crate) struct Prepared {
    pub(crate) experiment: Experiment,
    pub(crate) shared: Row<f64>,
    pub(crate) accepted: Option<(String, f64)>,
    pub(crate) notes: Vec<String>,
}

fn practical(request: PracticalRequest) -> Practical {
    match request {
        PracticalRequest::Amount => Practical::Amount,
        PracticalRequest::MetalAndAcid => Practical::MetalAndAcid,
        PracticalRequest::MolarVolumeFromSlope => Practical::MolarVolumeFromSlope,
        PracticalRequest::MetalMolarMass => Practical::MetalMolarMass,
        PracticalRequest::CarbonatePurity => Practical::CarbonatePurity,
        PracticalRequest::CarbonateMolarMass => Practical::CarbonateMolarMass,
        PracticalRequest::CarbonateBackTitration => Practical::CarbonateBackTitration,
        PracticalRequest::GasMolarMass => Practical::GasMolarMass,
        PracticalRequest::VapourMolarMass => Practical::VapourMolarMass,
        PracticalRequest::MassLossRate => Practical::MassLossRate,
        PracticalRequest::TimeToVolume => Practical::TimeToVolume,
        PracticalRequest::EudiometryWaterLiquid => Practical::Eudiometry(WaterAfterBurning::Liquid),
        PracticalRequest::EudiometryWaterGas => Practical::Eudiometry(WaterAfterBurning::Gas),
        PracticalRequest::Effusion => Practical::Effusion,
        PracticalRequest::GasDensity => Practical::GasDensity,
    }
}

fn correction(request: CorrectionRequest) -> Correction {
    match request {
        CorrectionRequest::Altitude => Correction::Altitude,
        CorrectionRequest::Level => Correction::Level,
        CorrectionRequest::Vapour => Correction::Vapour,
        CorrectionRequest::CarriedVapour => Correction::CarriedVapour,
        CorrectionRequest::Buoyancy => Correction::Buoyancy,
        CorrectionRequest::RealGas => Correction::RealGas,
    }
}

/// The core's collector.
pub(crate) fn collector(request: CollectorRequest) -> Collector {
    match request {
        CollectorRequest::OverWater => Collector::OverWater,
        CollectorRequest::OverMercury => Collector::OverMercury,
        CollectorRequest::Syringe => Collector::Syringe,
        CollectorRequest::MassLoss => Collector::MassLoss,
    }
}

/// A collector's name for programs.
pub(crate) fn collector_name(collector: Collector) -> &'static str {
    match collector {
        Collector::OverWater => "over_water",
        Collector::OverMercury => "over_mercury",
        Collector::Syringe => "syringe",
        Collector::MassLoss => "mass_loss",
    }
}

pub(crate) fn prepare(request: &ReductionRequest) -> Result<Prepared, Error> {
    let practical = practical(request.practical);
    let collector = match practical {
        // Vapour of a volatile liquid and gas that leaves a balance are collected in one way only.
        Practical::VapourMolarMass => Collector::Syringe,
        Practical::MassLossRate => Collector::MassLoss,
        _ => collector(request.collector),
    };
    let (conventions, weights) = match request.constants {
        ConstantsRequest::Exact => (Conventions::EXACT, Weights::Exact),
        ConstantsRequest::Classroom => (Conventions::CLASSROOM, Weights::Classroom),
    };
    let corrections =
        request.leave_out.iter().fold(Corrections::USUAL, |all, left_out| all.without(correction(*left_out)));
    let corrections = request.make.iter().fold(corrections, |made, more| made.with(correction(*more)));
    if let Some(both) = request.make.iter().find(|more| request.leave_out.contains(more)) {
        return Err(Error::new(Code::Contradiction, "make")
            .value(correction(*both).name())
            .advice("it stands in leave_out too: take it out of one of the two"));
    }
    let mut prepared = Prepared {
        experiment: Experiment {
            chain: Chain { collector, corrections, conventions, gas: None },
            practical,
            reference: Reference::None,
        },
        shared: Row::new(),
        accepted: None,
        notes: Vec::new(),
    };
    prepared.given(request)?;
    if practical == Practical::VapourMolarMass {
        prepared.put(Quantity::RelativeSaturation, 0.0, "practical")?;
    }
    prepared.reference(request)?;
    if practical == Practical::MolarVolumeFromSlope && prepared.experiment.reference == Reference::None {
        return Err(Error::new(Code::Missing, "reference")
            .allowed("temperature_c and pressure_kpa")
            .advice("say what conditions the molar volume is wanted at"));
    }
    prepared.chemistry(request, weights)?;
    prepared.real_gas(request)?;
    if request.accepted.len() > 1 {
        return Err(Error::new(Code::GivenTwice, "accepted").advice("give one accepted value"));
    }
    prepared.accepted = request.accepted.iter().next().map(|(name, value)| (name.clone(), *value));
    if let Some((name, value)) = &prepared.accepted
        && !(value.is_finite() && *value > 0.0)
    {
        return Err(Error::new(Code::OutOfRange, format!("accepted.{name}"))
            .value(value.to_string())
            .allowed("a number above 0"));
    }
    for left_out in &request.leave_out {
        prepared
            .notes
            .push(format!("not made, on request: the correction for {}", words(correction(*left_out))));
    }
    Ok(prepared)
}

/// A correction in words.
pub(crate) fn words(correction: Correction) -> &'static str {
    match correction {
        Correction::Altitude => "altitude",
        Correction::Level => "the level difference",
        Correction::Vapour => "water vapour",
        Correction::CarriedVapour => "vapour carried off",
        Correction::Buoyancy => "the air displaced",
        Correction::RealGas => "the gas not being ideal",
    }
}

impl Prepared {
    fn put(&mut self, quantity: Quantity, value: f64, path: &str) -> Result<(), Error> {
        if self.shared.get(quantity).is_some() {
            return Err(Error::new(Code::GivenTwice, path.to_owned())
                .value(quantity.name())
                .advice("give each quantity once, in one unit"));
        }
        quantity
            .bound()
            .check(value)
            .map_err(|error| Error { parameter: path.to_owned().into(), ..error })?;
        self.shared.set(quantity, Some(value));
        Ok(())
    }

    fn given(&mut self, request: &ReductionRequest) -> Result<(), Error> {
        for (name, value) in &request.given {
            let path = format!("given.{name}");
            match column(name).map_err(|error| error.within("given"))? {
                Column::Reading(quantity, unit) => {
                    self.kelvin(&unit, &path)?;
                    self.put(quantity, school(quantity, &unit, *value), &path)?;
                }
                Column::Label | Column::Note => {
                    return Err(Error::new(Code::UnknownName, path).advice("give readings only"));
                }
            }
        }
        Ok(())
    }

    /// Whoever adds 273 to degrees Celsius has not read kelvin.
    pub(crate) fn kelvin(&self, unit: &units::Unit, path: &str) -> Result<(), Error> {
        if *unit == units::KELVIN && self.experiment.chain.conventions != Conventions::EXACT {
            return Err(Error::new(Code::Contradiction, path.to_owned()).allowed("temperature_c").advice(
                "classroom constants add 273 to degrees Celsius: give those, or use exact constants",
            ));
        }
        Ok(())
    }

    fn reference(&mut self, request: &ReductionRequest) -> Result<(), Error> {
        let Some(reference) = request.reference else {
            return Ok(());
        };
        match (reference.temperature_c, reference.pressure_kpa, reference.molar_volume_dm3_per_mol) {
            (Some(temperature), Some(pressure), None) => {
                self.put(Quantity::ReferenceTemperature, temperature, "reference.temperature_c")?;
                self.put(Quantity::ReferencePressure, pressure, "reference.pressure_kpa")?;
                self.experiment.reference = Reference::Conditions;
                self.notes
                    .push(format!("volumes of dry gas are given at {temperature} degC and {pressure} kPa"));
            }
            (None, None, Some(volume)) => {
                self.put(Quantity::StatedMolarVolume, volume, "reference.molar_volume_dm3_per_mol")?;
                self.experiment.reference = Reference::MolarVolume;
                self.notes.push(format!("volumes of dry gas go by {volume} dm3/mol"));
            }
            (temperature, pressure, Some(_)) if temperature.is_some() || pressure.is_some() => {
                return Err(Error::new(Code::GivenTwice, "reference")
                    .advice("give a temperature and a pressure, or a molar volume"));
            }
            _ => {
                return Err(Error::new(Code::Missing, "reference")
                    .allowed("temperature_c and pressure_kpa, or molar_volume_dm3_per_mol")
                    .advice("\"STP\" and \"room conditions\" mean different things in different books"));
            }
        }
        Ok(())
    }

    /// A gas that is named and has a second virial coefficient can be taken as it is, except with classroom constants.
    fn real_gas(&mut self, request: &ReductionRequest) -> Result<(), Error> {
        let wanted = request.make.contains(&CorrectionRequest::RealGas);
        let refuse = |error: Error| if wanted { Err(error) } else { Ok(()) };
        let chain = &mut self.experiment.chain;
        if chain.collector == Collector::MassLoss || request.constants == ConstantsRequest::Classroom {
            return refuse(
                Error::new(Code::Contradiction, "make")
                    .value("real_gas")
                    .allowed("a volume of gas, and exact constants"),
            );
        }
        let Some(text) = request.gas.as_deref() else {
            return refuse(Error::new(Code::Missing, "gas").advice("real_gas needs the formula of the gas"));
        };
        match Gas::read(text).and_then(|gas| gas.second_virial().map(|_| gas)) {
            Ok(gas) => {
                chain.gas = Some(gas);
                if wanted {
                    self.notes.push(format!(
                        "{} is taken as a real gas, by its second virial coefficient",
                        gas.name()
                    ));
                }
                Ok(())
            }
            Err(error) => refuse(error),
        }
    }

    fn chemistry(&mut self, request: &ReductionRequest, weights: Weights) -> Result<(), Error> {
        let mass = |text: &str, path: &str| -> Result<f64, Error> {
            let formula = Formula::parse(text).map_err(|error| error.within(path))?;
            Ok(formula.molar_mass(weights).map_err(|error| error.within(path))?.value_g_per_mol)
        };
        if let Some(gas) = &request.gas {
            self.put(Quantity::GasMolarMass, mass(gas, "gas")?, "gas")?;
        }
        if let Some(gas) = &request.known_gas {
            self.put(Quantity::KnownMolarMass, mass(gas, "known_gas")?, "known_gas")?;
        }
        // The molar mass of a metal or carbonate that is measured is not put in.
        let measured =
            matches!(self.experiment.practical, Practical::MetalMolarMass | Practical::CarbonateMolarMass);
        if let Some(reagent) = request.reagent.as_deref().filter(|_| !measured) {
            self.put(Quantity::ReagentMolarMass, mass(reagent, "reagent")?, "reagent")?;
        }
        let Some(text) = &request.reaction else {
            return Ok(());
        };
        let needed = |value: &Option<String>, key: &'static str| {
            value.clone().ok_or_else(|| {
                Error::new(Code::Missing, key)
                    .advice("a reaction needs the gas and the reagent that the yield goes by")
            })
        };
        let (gas, reagent) = (needed(&request.gas, "gas")?, needed(&request.reagent, "reagent")?);
        let balanced = Reaction::parse(text)
            .and_then(|reaction| reaction.balance())
            .map_err(|error| error.within("reaction"))?;
        let ratio =
            coefficient(&balanced, &gas, true, "gas")? / coefficient(&balanced, &reagent, false, "reagent")?;
        self.put(Quantity::MoleRatio, ratio, "reaction")?;
        self.notes.push(format!("{}: {ratio} mol of {gas} for each mol of {reagent}", balanced.unicode()));
        Ok(())
    }
}

/// The number before a species.
fn coefficient(balanced: &Balanced, text: &str, product: bool, path: &'static str) -> Result<f64, Error> {
    let formula = Formula::parse(text).map_err(|error| error.within(path))?;
    let side = if product { balanced.products() } else { balanced.reactants() };
    let found = side.iter().find(|species| species.formula.equal_but_for_state(&formula));
    match found {
        // A coefficient that no double holds exactly is larger than any molecule needs.
        Some(species) => Ok(species.coefficient as f64),
        None => {
            let known: Vec<String> = side.iter().map(|species| species.formula.to_string()).collect();
            Err(Error::new(Code::UnknownName, path)
                .value(format!("\"{text}\""))
                .allowed(known.join(", "))
                .advice("name a species of the reaction"))
        }
    }
}
