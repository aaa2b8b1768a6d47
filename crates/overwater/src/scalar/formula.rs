//! The doors of a formula: the same lines, read in each of the five ways.

use super::{
    LANES, Lanes, Marked, PropertyUncertainty, Scalar, Script, Sensitivities, Solution, Symbol, Tape, Working,
};
use crate::bounds::Bound;
use crate::{Code, Error, Result};

/// A formula with `IN` inputs, in the school units that its bounds and its output symbol name.
///
/// Only [`evaluate`](Formula::evaluate) is written for a new formula; the readings follow from it.
pub trait Formula<const IN: usize>: Send + Sync {
    /// Its name, as in `vapour_pressure`.
    const NAME: &'static str;

    /// The rows of the bounds table that its inputs obey, in order.
    fn inputs(&self) -> [&'static Bound; IN];

    /// What it gives, and in which unit.
    fn output(&self) -> &'static Symbol;

    /// The formula itself. Inputs and result are in school units. Mark it `#(inline(always))`: only then does
    /// the compiler see all of it at once and work on several numbers together.
    fn evaluate<S: Scalar>(&self, inputs: [S; IN]) -> S;

    /// Why inputs that are each within their bounds give no result; asked only after that has happened.
    fn refusal(&self, _inputs: [f64; IN]) -> Error {
        Error::new(Code::Contradiction, Self::NAME).advice("these values together have no result")
    }

    /// How far the relation itself may be from nature, where its source says so; nothing where the source gives
    /// no figure. It does not count the uncertainty of the inputs.
    fn property_uncertainty(&self) -> Option<&'static PropertyUncertainty> {
        None
    }

    /// The number.
    ///
    /// # Errors
    /// `not_a_number` or `out_of_range` for the first input outside its bounds, and the formula's own
    /// [`refusal`](Formula::refusal) where the inputs together have no result.
    fn number(&self, inputs: [f64; IN]) -> Result<f64> {
        for (bound, value) in self.inputs().into_iter().zip(inputs) {
            bound.check(value)?;
        }
        let value = self.evaluate(inputs);
        if value.is_finite() { Ok(value) } else { Err(self.refusal(inputs)) }
    }

    /// The number and its derivative by every input, in the school units.
    ///
    /// # Errors
    /// As for [`number`](Formula::number).
    fn sensitivities(&self, inputs: [f64; IN]) -> Result<(f64, [f64; IN])> {
        self.number(inputs)?;
        let mut index = 0;
        let duals = inputs.map(|value| {
            let dual = Sensitivities::<IN>::input(value, index);
            index += 1;
            dual
        });
        let result = self.evaluate(duals);
        Ok((result.value(), result.derivatives()))
    }

    /// The number and the worked solution that leads to it.
    ///
    /// # Errors
    /// As for [`number`](Formula::number).
    fn working(&self, inputs: [f64; IN]) -> Result<(f64, Solution)> {
        self.number(inputs)?;
        let tape = Tape::new();
        let value = self.evaluate(inputs.map(|value| Working::input(&tape, value))).value();
        Ok((value, tape.solution()))
    }

    /// The number that follows when the steps named in `script` are replaced. What each named step came to is
    /// written down in the script. Inputs are not held to their bounds: a slip may leave them.
    fn marked(&self, inputs: [f64; IN], script: &Script) -> f64 {
        self.evaluate(inputs.map(|value| Marked::input(script, value))).value()
    }

    /// Whole columns: one result for each row. A row with an input outside its bounds, or without a result,
    /// gives NaN; the other rows are not touched by it.
    ///
    /// # Errors
    /// `contradiction` when the columns are not all as long as `results`; nothing is written then.
    fn fill(&self, columns: [&[f64]; IN], results: &mut [f64]) -> Result<()>
    where
        Self: Sized,
    {
        for (bound, column) in self.inputs().into_iter().zip(columns) {
            if column.len() != results.len() {
                return Err(Error::new(Code::Contradiction, bound.name)
                    .value(format!("{} rows", column.len()))
                    .allowed(format!("{} rows, as many as results are wanted", results.len()))
                    .advice("give columns of one length"));
            }
        }
        pulp::Arch::new().dispatch(Sweep { formula: self, columns, results });
        Ok(())
    }
}

/// The loop over rows, compiled once for each instruction set and chosen when the program runs.
struct Sweep<'a, F, const IN: usize> {
    formula: &'a F,
    columns: [&'a [f64]; IN],
    results: &'a mut [f64],
}

impl<F: Formula<IN>, const IN: usize> Sweep<'_, F, IN> {
    #[inline(always)]
    fn eight(&self, lanes: [Lanes; IN], bounds: &[&'static Bound; IN]) -> Lanes {
        let mut inputs = lanes;
        for (lane, bound) in inputs.iter_mut().zip(bounds) {
            *lane = lane.within(bound.least, bound.greatest);
        }
        self.formula.evaluate(inputs)
    }
}

impl<F: Formula<IN>, const IN: usize> pulp::WithSimd for Sweep<'_, F, IN> {
    type Output = ();

    #[inline(always)]
    fn with_simd<T: pulp::Simd>(mut self, _: T) {
        let bounds = self.formula.inputs();
        let results = std::mem::take(&mut self.results);
        let (whole, rest) = results.as_chunks_mut::<LANES>();
        let start = whole.len() * LANES;
        let columns = self.columns.map(|column| column.as_chunks::<LANES>().0);
        for (index, eight) in whole.iter_mut().enumerate() {
            let mut lanes = [Lanes([f64::NAN; LANES]); IN];
            // No `map`, for the reason given in `lanes`.
            for (lane, column) in lanes.iter_mut().zip(&columns) {
                if let Some(chunk) = column.get(index) {
                    lane.0 = *chunk;
                }
            }
            *eight = self.eight(lanes, &bounds).0;
        }
        let tail = self.columns.map(|column| Lanes::load(column.get(start..).unwrap_or_default()));
        for (result, value) in rest.iter_mut().zip(self.eight(tail, &bounds).0) {
            *result = value;
        }
    }
}
