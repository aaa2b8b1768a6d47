//! Every formula by its name, for callers that choose one while the program runs.

use crate::apparatus::purity::MeanOxygenFraction;
use crate::bounds::Bound;
use crate::conventions::Conventions;
use crate::gas::barometer::StationPressure;
use crate::gas::collected::{DryAmount, DryAmountWithVapour};
use crate::gas::ideal::IdealMolarVolume;
use crate::peroxide::assay::{AssayedConcentration, ExpectedTitre};
use crate::peroxide::dilution::StockVolume;
use crate::peroxide::heat::AdiabaticRise;
use crate::peroxide::strength::ConcentrationFromVolumes;
use crate::scalar::{Formula, Solution, Symbol};
use crate::water::density::WaterDensity;
use crate::water::vapour::{SaturationTemperature, VapourPressure};
use crate::{Code, Error, Result, nearest};

/// A formula whose number of inputs is not known when the program is compiled.
///
/// The methods are those of [`Formula`]; values stand in the order of [`inputs`](AnyFormula::inputs).
pub trait AnyFormula: Sync {
    /// Its name.
    fn name(&self) -> &'static str;

    /// The rows of the bounds table that its inputs obey, in order.
    fn inputs(&self) -> Vec<&'static Bound>;

    /// What it gives, and in which unit.
    fn output(&self) -> &'static Symbol;

    /// The number.
    ///
    /// # Errors
    /// As for [`Formula::number`], and `contradiction` for a wrong number of values.
    fn number(&self, values: &[f64]) -> Result<f64>;

    /// The number and its derivative by every input.
    ///
    /// # Errors
    /// As for [`AnyFormula::number`].
    fn sensitivities(&self, values: &[f64]) -> Result<(f64, Vec<f64>)>;

    /// The number and the worked solution that leads to it.
    ///
    /// # Errors
    /// As for [`AnyFormula::number`].
    fn working(&self, values: &[f64]) -> Result<(f64, Solution)>;

    /// Whole columns.
    ///
    /// # Errors
    /// As for [`Formula::fill`], and `contradiction` for a wrong number of columns.
    fn fill(&self, columns: &[&[f64]], results: &mut [f64]) -> Result<()>;
}

struct Entry<F, const IN: usize>(F);

fn exactly<T: Copy, const IN: usize>(name: &'static str, values: &[T]) -> Result<[T; IN]> {
    values.try_into().map_err(|_| {
        Error::new(Code::Contradiction, name)
            .value(format!("{} inputs", values.len()))
            .allowed(format!("{IN} inputs"))
            .advice("give one value for each input")
    })
}

impl<F: Formula<IN>, const IN: usize> AnyFormula for Entry<F, IN> {
    fn name(&self) -> &'static str {
        F::NAME
    }

    fn inputs(&self) -> Vec<&'static Bound> {
        self.0.inputs().to_vec()
    }

    fn output(&self) -> &'static Symbol {
        self.0.output()
    }

    fn number(&self, values: &[f64]) -> Result<f64> {
        self.0.number(exactly(F::NAME, values)?)
    }

    fn sensitivities(&self, values: &[f64]) -> Result<(f64, Vec<f64>)> {
        let (value, slopes) = self.0.sensitivities(exactly(F::NAME, values)?)?;
        Ok((value, slopes.to_vec()))
    }

    fn working(&self, values: &[f64]) -> Result<(f64, Solution)> {
        self.0.working(exactly(F::NAME, values)?)
    }

    fn fill(&self, columns: &[&[f64]], results: &mut [f64]) -> Result<()> {
        self.0.fill(exactly(F::NAME, columns)?, results)
    }
}

/// Every formula, with the best constants.
pub static ALL: [&dyn AnyFormula; 13] = [
    &Entry(VapourPressure { supercooled: false }),
    &Entry(SaturationTemperature),
    &Entry(WaterDensity),
    &Entry(IdealMolarVolume),
    &Entry(StationPressure),
    &Entry(DryAmount { conventions: Conventions::EXACT }),
    &Entry(DryAmountWithVapour { conventions: Conventions::EXACT }),
    &Entry(ConcentrationFromVolumes),
    &Entry(StockVolume),
    &Entry(AssayedConcentration),
    &Entry(ExpectedTitre),
    &Entry(AdiabaticRise),
    &Entry(MeanOxygenFraction),
];

/// Finds a formula by its name.
///
/// ```
/// let formula = overwater::catalogue::find("vapour_pressure")?;
/// // CRC Handbook: 2.3388 kPa at 20 degC.
/// assert!((formula.number(&[20.0])? - 2.339).abs() < 5e-4);
/// # Ok::<(), overwater::Error>(())
/// ```
///
/// # Errors
/// `unknown_name`, with the nearest name that is known.
pub fn find(name: &str) -> Result<&'static dyn AnyFormula> {
    ALL.into_iter().find(|formula| formula.name() == name).ok_or_else(|| {
        let names = ALL.map(AnyFormula::name);
        let error = Error::new(Code::UnknownName, "formula").value(name).allowed(names.join(", "));
        match nearest(name, names) {
            Some(near) => error.advice(format!("did you mean {near}?")),
            None => error,
        }
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_formula_is_found_by_its_own_name_and_takes_its_number_of_inputs() {
        for (index, formula) in ALL.into_iter().enumerate() {
            assert_eq!(find(formula.name()).unwrap().name(), formula.name());
            assert!(ALL.iter().skip(index + 1).all(|other| other.name() != formula.name()));
            let inputs = formula.inputs();
            let middle: Vec<f64> = inputs.iter().map(|bound| bound.least).collect();
            let error = formula.number(&middle[1..]).unwrap_err();
            assert_eq!(error.code, Code::Contradiction);
            assert_eq!(&*error.allowed, format!("{} inputs", inputs.len()));
        }
        let error = find("vapor_pressure").err().unwrap();
        assert_eq!(&*error.advice, "did you mean vapour_pressure?");
    }

    #[test]
    fn the_doors_are_those_of_the_formula() {
        let erased = find("dry_amount").unwrap();
        let (plain, values) = (DryAmount::default(), [86.5, 21.0, 100.36, 12.0]);
        let number = plain.number(values).unwrap();
        assert_eq!(erased.number(&values), Ok(number));
        let (value, slopes) = erased.sensitivities(&values).unwrap();
        assert_eq!((value, slopes), (number, plain.sensitivities(values).unwrap().1.to_vec()));
        assert_eq!(erased.working(&values).unwrap().0, number);
        let mut results = [0.0; 2];
        let columns = values.map(|value| [value; 2]);
        let columns: Vec<&[f64]> = columns.iter().map(|column| column.as_slice()).collect();
        erased.fill(&columns, &mut results).unwrap();
        assert_eq!(results, [number; 2]);
    }
}
