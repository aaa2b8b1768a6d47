//! What an uncertainty is carried through: numbers in, a number out, and its slopes.

use crate::catalogue::AnyFormula;
use crate::readings::{Experiment, Quantity, Row};
use crate::scalar::{PropertyUncertainty, Sensitivities, Symbol};
use crate::{Code, Error, Result};

use super::input::Input;

/// A measurement model (JCGM 100:2008, 4.1): inputs in an order, one result.
pub trait MeasurementModel: Sync {
    /// The result.
    ///
    /// # Errors
    /// Those of the formula behind it.
    fn value(&self, inputs: &[f64]) -> Result<f64>;

    /// The result and its derivative by every input.
    ///
    /// # Errors
    /// Those of the formula behind it.
    fn slopes(&self, inputs: &[f64]) -> Result<(f64, Vec<f64>)>;

    /// A result for each row of the columns; NaN where there is none.
    fn fill(&self, columns: &[Vec<f64>], results: &mut [f64]) {
        let mut row = Vec::with_capacity(columns.len());
        for (index, result) in results.iter_mut().enumerate() {
            row.clear();
            row.extend(columns.iter().map(|column| column.get(index).copied().unwrap_or(f64::NAN)));
            *result = self.value(&row).unwrap_or(f64::NAN);
        }
    }
}

/// A formula of the catalogue. Where its source states how far the relation itself may be off, the model has one more
/// input, the last: a factor of 1 on the result, with that uncertainty ([`FormulaModel::relation`]).
pub struct FormulaModel<'a> {
    formula: &'a dyn AnyFormula,
}

/// The name of the input that stands for the relation itself.
pub const RELATION: &str = "relation";

impl<'a> FormulaModel<'a> {
    /// The model of a formula.
    #[must_use]
    pub fn new(formula: &'a dyn AnyFormula) -> Self {
        FormulaModel { formula }
    }

    /// The input that stands for the relation itself, where its source states an uncertainty: to be put last.
    #[must_use]
    pub fn relation(&self) -> Option<Input> {
        let PropertyUncertainty { relative_standard, .. } = self.formula.property_uncertainty()?;
        Some(Input::normal(RELATION, 1.0, *relative_standard))
    }

    fn split<'b>(&self, inputs: &'b [f64]) -> (&'b [f64], f64) {
        match (self.formula.property_uncertainty(), inputs.split_last()) {
            (Some(_), Some((factor, own))) => (own, *factor),
            _ => (inputs, 1.0),
        }
    }
}

impl MeasurementModel for FormulaModel<'_> {
    fn value(&self, inputs: &[f64]) -> Result<f64> {
        let (own, factor) = self.split(inputs);
        Ok(self.formula.number(own)? * factor)
    }

    fn slopes(&self, inputs: &[f64]) -> Result<(f64, Vec<f64>)> {
        let (own, factor) = self.split(inputs);
        let (value, mut slopes) = self.formula.sensitivities(own)?;
        slopes.iter_mut().for_each(|slope| *slope *= factor);
        if own.len() < inputs.len() {
            slopes.push(value);
        }
        Ok((value * factor, slopes))
    }

    fn fill(&self, columns: &[Vec<f64>], results: &mut [f64]) {
        let (own, factors) = match (self.formula.property_uncertainty(), columns.split_last()) {
            (Some(_), Some((factors, own))) => (own, Some(factors)),
            _ => (columns, None),
        };
        let columns: Vec<&[f64]> = own.iter().map(Vec::as_slice).collect();
        if self.formula.fill(&columns, results).is_err() {
            results.fill(f64::NAN);
        }
        for (result, factor) in results.iter_mut().zip(factors.into_iter().flatten()) {
            *result *= factor;
        }
    }
}

/// One result of a row of readings, as a function of some of its quantities; the others stay as they are.
pub struct RowModel {
    experiment: Experiment,
    row: Row<f64>,
    quantities: Vec<Quantity>,
    result: &'static Symbol,
}

/// How many slopes are worked out together.
const TOGETHER: usize = 8;

impl RowModel {
    /// The model of one result of a row.
    ///
    /// # Errors
    /// Those of [`Experiment::results`]; `missing` for a quantity that the row does not have, or a result that the
    /// practical does not give.
    pub fn new(
        experiment: Experiment,
        row: Row<f64>,
        quantities: Vec<Quantity>,
        result: &'static Symbol,
    ) -> Result<RowModel> {
        for quantity in &quantities {
            row.need(*quantity)?;
        }
        if experiment.results(&row)?.get(result).is_none() {
            return Err(Error::new(Code::Missing, result.id).advice("this practical does not give it"));
        }
        Ok(RowModel { experiment, row, quantities, result })
    }

    fn with(&self, inputs: &[f64]) -> Row<f64> {
        let mut row = self.row;
        for (quantity, value) in self.quantities.iter().zip(inputs) {
            row.set(*quantity, Some(*value));
        }
        row
    }
}

impl MeasurementModel for RowModel {
    fn value(&self, inputs: &[f64]) -> Result<f64> {
        let outcome = self.experiment.results(&self.with(inputs))?;
        Ok(outcome.get(self.result).unwrap_or(f64::NAN))
    }

    fn slopes(&self, inputs: &[f64]) -> Result<(f64, Vec<f64>)> {
        let value = self.value(inputs)?;
        let row = self.with(inputs);
        let mut slopes = Vec::with_capacity(inputs.len());
        for some in self.quantities.chunks(TOGETHER) {
            let duals = row.map(|quantity, value| match some.iter().position(|own| *own == quantity) {
                Some(place) => Sensitivities::<TOGETHER>::input(value, place),
                None => Sensitivities::new(value, [0.0; TOGETHER]),
            });
            let result = self.experiment.evaluate(&duals)?.get(self.result);
            let derivatives = result.map_or([f64::NAN; TOGETHER], |dual| dual.derivatives());
            slopes.extend(derivatives.into_iter().take(some.len()));
        }
        Ok((value, slopes))
    }
}
