//! How uncertain a result of a row is, from how well its readings were read.

use overwater::readings::uncertainty::model::RowModel;
use overwater::readings::{Experiment, Quantity, Row};
use overwater::scalar::Symbol;
use overwater::{Code, Error};

use super::columns::{Column, column, school};
use super::request::UncertaintyRequest;
use crate::calculation::result_name;
use crate::propagation::answer::PropagationAnswer;
use crate::propagation::request::{CorrelationRequest, RuleSetRequest, UncertainRequest};
use crate::propagation::{Asked, carry};

/// Draws for each row, where their number is left open.
pub(crate) const DRAWS: usize = 100_000;

/// What is said of the readings of every row, in the units of the bounds table.
#[derive(Debug, Clone)]
pub(super) struct Uncertainties {
    request: UncertaintyRequest,
    readings: Vec<(Quantity, UncertainRequest)>,
    correlations: Vec<CorrelationRequest>,
    result: Option<String>,
}

impl Uncertainties {
    /// `accepted` is the result that is asked about where the request names none.
    ///
    /// # Errors
    /// `unknown_name` and `ambiguous` for a reading, `given_twice`, `missing`, `contradiction`.
    pub(super) fn read(request: &UncertaintyRequest, accepted: Option<&str>) -> Result<Self, Error> {
        let mut readings: Vec<(Quantity, UncertainRequest)> = Vec::new();
        for (name, said) in &request.readings {
            let path = format!("uncertainty.readings.{name}");
            let (quantity, unit) = reading(name, "uncertainty.readings")?;
            if readings.iter().any(|(own, _)| *own == quantity) {
                return Err(Error::new(Code::GivenTwice, path).advice("say it once, in one unit"));
            }
            if said.value.is_some() || !said.repeats.is_empty() {
                return Err(Error::new(Code::Contradiction, path)
                    .allowed("standard_uncertainty, half_width, division or last_digit")
                    .advice("the values are those of the rows: say how far each may be off"));
            }
            if *said == UncertainRequest::default() {
                return Err(Error::new(Code::Missing, path)
                    .allowed("standard_uncertainty, half_width, division or last_digit")
                    .advice(
                        "say how far the reading may be off, or leave it out: then it is taken as known",
                    ));
            }
            // A difference has no zero of its own: 1 K is 1 degC.
            let scale = |value: f64| school(quantity, &unit, value) - school(quantity, &unit, 0.0);
            readings.push((
                quantity,
                UncertainRequest {
                    standard_uncertainty: said.standard_uncertainty.map(scale),
                    half_width: said.half_width.map(scale),
                    division: said.division.map(scale),
                    last_digit: said.last_digit.map(scale),
                    ..said.clone()
                },
            ));
        }
        if readings.is_empty() {
            return Err(Error::new(Code::Missing, "uncertainty.readings")
                .advice("say of one reading at least how far it may be off"));
        }
        let correlations = request
            .correlations
            .iter()
            .map(|given| {
                let [one, other] = &given.between;
                let own = |name: &str| -> Result<String, Error> {
                    Ok(reading(name, "uncertainty.correlations")?.0.name().to_owned())
                };
                Ok(CorrelationRequest { between: [own(one)?, own(other)?], coefficient: given.coefficient })
            })
            .collect::<Result<_, Error>>()?;
        let result = request.result.clone().or_else(|| accepted.map(str::to_owned));
        Ok(Uncertainties { request: request.clone(), readings, correlations, result })
    }

    /// The uncertainty of a result of a row: the one that is asked about, or the first.
    ///
    /// # Errors
    /// `unknown_name` for a result, `missing` for a reading that the row does not have, what the rules refuse.
    pub(super) fn of(
        &self,
        experiment: &Experiment,
        row: &Row<f64>,
        results: &[(&'static Symbol, f64)],
    ) -> Result<PropagationAnswer, Error> {
        let wanted = self.result.as_deref();
        let found = results.iter().find(|(symbol, _)| wanted.is_none_or(|name| result_name(symbol) == name));
        let Some((symbol, _)) = found else {
            let known: Vec<String> = results.iter().map(|(symbol, _)| result_name(symbol)).collect();
            return Err(Error::new(Code::UnknownName, "uncertainty.result")
                .value(wanted.unwrap_or_default().to_owned())
                .allowed(known.join(", "))
                .advice("name a result of the practical"));
        };
        let quantities = self.readings.iter().map(|(quantity, _)| *quantity).collect();
        let model = RowModel::new(*experiment, *row, quantities, symbol)?;
        let inputs = self
            .readings
            .iter()
            .map(|(quantity, said)| {
                let value = Some(row.need(*quantity)?);
                Ok((quantity.bound(), UncertainRequest { value, ..said.clone() }))
            })
            .collect::<Result<Vec<_>, Error>>()?;
        let drawing = self.request.rules == RuleSetRequest::MonteCarlo;
        let asked = Asked {
            rules: self.request.rules,
            school_rules: self.request.school_rules.as_deref(),
            coverage: self.request.coverage,
            seed: self.request.seed,
            draws: self.request.draws.or(drawing.then_some(DRAWS)),
            correlations: &self.correlations,
        };
        let practical = experiment.practical.name().to_owned();
        carry(
            &model,
            &inputs,
            None,
            &asked,
            PropagationAnswer { formula: practical, ..PropagationAnswer::of(symbol) },
        )
    }
}

/// The quantity that a name stands for, with the unit at its end.
fn reading(name: &str, path: &'static str) -> Result<(Quantity, overwater::units::Unit), Error> {
    match column(name).map_err(|error| error.within(path))? {
        Column::Reading(quantity, unit) => Ok((quantity, unit)),
        Column::Label | Column::Note => Err(Error::new(Code::UnknownName, format!("{path}.{name}"))
            .advice("name a reading with its unit, as volume_cm3")),
    }
}
