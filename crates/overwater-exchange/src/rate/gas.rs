//! The amount of dry gas that a volume or a loss of mass stands for.

use overwater::Result;
use overwater::chem::{Formula, Weights};
use overwater::conventions::Conventions;
use overwater::readings::reduction::{Chain, Collector};
use overwater::readings::{Experiment, Quantity, Row};
use overwater::symbols;
use overwater::units::{CUBIC_CENTIMETRE, GRAM, KILOPASCAL, ONE};

use super::answer::{GasAnswer, MeasureAnswer};
use super::columns::Kind;
use super::prepared::Prepared;
use super::request::RateRequest;
use super::rows::Rows;
use super::runs::{Run, kelvin};
use crate::lines::per;
use crate::reduction::answer::CorrectionAnswer;
use crate::reduction::request::{CollectorRequest, ConstantsRequest};
use crate::reduction::{collector, correction_answers};

/// Degrees Celsius are kelvin less this.
const ICE_POINT_K: f64 = 273.15;

/// The gas of all runs.
#[derive(Debug, Clone, Copy)]
pub(super) struct Gas {
    molar_mass_g_per_mol: f64,
    collector: Collector,
    conventions: Conventions,
}

impl Gas {
    /// What the options say of it.
    pub(super) fn of(request: &RateRequest, followed: Kind) -> Result<Option<Gas>> {
        let Some(text) = &request.gas else { return Ok(None) };
        let (conventions, weights) = match request.constants {
            ConstantsRequest::Exact => (Conventions::EXACT, Weights::Exact),
            ConstantsRequest::Classroom => (Conventions::CLASSROOM, Weights::Classroom),
        };
        let formula = Formula::parse(text).map_err(|error| error.within("gas"))?;
        let mass = formula.molar_mass(weights).map_err(|error| error.within("gas"))?;
        let by_mass = matches!(followed, Kind::Mass | Kind::MassLoss);
        let wanted = if by_mass { CollectorRequest::MassLoss } else { request.collector };
        Ok(Some(Gas {
            molar_mass_g_per_mol: mass.value_g_per_mol,
            collector: collector(wanted),
            conventions,
        }))
    }
}

/// The amount for one unit of the readings.
pub(super) struct GasFactor {
    amount_mmol_per_unit: f64,
    corrections: Vec<CorrectionAnswer>,
}

impl GasFactor {
    /// For a run, where gas, temperature and pressure are known. A loss of mass carries off vapour at the temperature of
    /// the liquid, which is that of the run unless another is given for the gas.
    pub(super) fn of(prepared: &Prepared, rows: &Rows, run: &Run) -> Result<Option<GasFactor>> {
        let followed = prepared.followed;
        let Some(gas) = prepared.gas.filter(|_| followed != Kind::Concentration) else { return Ok(None) };
        let by_mass = followed != Kind::Volume;
        let own = kelvin(rows, &run.first, Kind::GasTemperature);
        let temperature = own.or(run.temperature_k.filter(|_| by_mass));
        let pressure = run.first.get(Kind::Pressure);
        let (Some(temperature), Some(pressure)) = (temperature, pressure) else { return Ok(None) };
        let mut row = Row::new()
            .with(Quantity::Temperature, temperature - ICE_POINT_K)
            .with(Quantity::Pressure, KILOPASCAL.from_si(rows.unit(Kind::Pressure).to_si(pressure)));
        // The amount goes with the reading: any will do, and this one is within all bounds.
        let (quantity, school, reading) = if by_mass {
            (Quantity::MassLoss, GRAM, 1.0)
        } else {
            (Quantity::Volume, CUBIC_CENTIMETRE, 100.0)
        };
        row.set(quantity, Some(reading));
        row.set(Quantity::GasMolarMass, Some(gas.molar_mass_g_per_mol));
        row.set(
            Quantity::RelativeSaturation,
            run.first
                .get(Kind::RelativeSaturation)
                .map(|share| ONE.from_si(rows.unit(Kind::RelativeSaturation).to_si(share))),
        );
        let chain = Chain { collector: gas.collector, conventions: gas.conventions, ..Chain::default() };
        let experiment = Experiment { chain, ..Experiment::default() };
        let outcome = experiment.results(&row)?;
        let amount = outcome.get(&symbols::AMOUNT).unwrap_or(f64::NAN);
        let units = school.from_si(rows.unit(followed).to_si(1.0));
        Ok(Some(GasFactor {
            amount_mmol_per_unit: amount / reading * units,
            corrections: correction_answers(&experiment, &row)?,
        }))
    }

    /// With the initial rate.
    pub(super) fn answer(self, rate: &MeasureAnswer, time: &str) -> GasAnswer {
        let factor = self.amount_mmol_per_unit;
        GasAnswer {
            amount_mmol_per_unit: factor,
            initial_rate: MeasureAnswer {
                value: rate.value * factor,
                unit: per("mmol", time),
                standard_error: rate.standard_error.map(|error| error * factor),
                interval: rate.interval.map(|interval| interval.map(|end| end * factor)),
            },
            corrections: self.corrections,
        }
    }
}
