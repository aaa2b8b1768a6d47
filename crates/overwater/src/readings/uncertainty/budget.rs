//! The uncertainty budget: first order, by the Guide (JCGM 100:2008).

use std::borrow::Cow;

use super::correlation::{Correlation, Matrix};
use super::coverage::{check_level, coverage_factor};
use super::input::{Distribution, Input};
use super::model::MeasurementModel;
use crate::Result;

/// A line of the budget.
#[derive(Debug, Clone, PartialEq)]
pub struct Line {
    /// The input.
    pub name: Cow<'static, str>,
    /// Its value.
    pub value: f64,
    /// Its standard uncertainty.
    pub standard_uncertainty: f64,
    /// How it is spread.
    pub distribution: Distribution,
    /// Degrees of freedom of its uncertainty.
    pub degrees_of_freedom: f64,
    /// How much the result changes for one unit of it (∂y/∂x).
    pub sensitivity: f64,
    /// Sensitivity times standard uncertainty, with its sign.
    pub contribution: f64,
    /// Its share of the variance of the result; all shares add up to 1. What two correlated inputs have together counts half
    /// for each, so that a share may be negative.
    pub share: f64,
}

/// The budget of a result.
#[derive(Debug, Clone, PartialEq)]
pub struct Budget {
    /// The result.
    pub value: f64,
    /// Its combined standard uncertainty.
    pub standard_uncertainty: f64,
    /// A line for each input, in their order.
    pub lines: Vec<Line>,
    /// Effective degrees of freedom (Welch and Satterthwaite). Their formula is for independent inputs: where inputs with
    /// a finite number are correlated, it is the least number of any input.
    pub degrees_of_freedom: f64,
    /// The coverage probability asked for.
    pub coverage: f64,
    /// The coverage factor k.
    pub coverage_factor: f64,
    /// The expanded uncertainty U = k u.
    pub expanded_uncertainty: f64,
}

/// The budget of a model's result.
///
/// u² = Σᵢ Σⱼ cᵢ cⱼ uᵢ uⱼ rᵢⱼ (JCGM 100:2008, equation 16), with the slopes c from dual numbers.
///
/// ```
/// use overwater::catalogue;
/// use overwater::readings::uncertainty::{budget::budget, input::Input, model::FormulaModel};
/// let formula = catalogue::find("dry_amount")?;
/// let inputs = [
///     Input::rectangular("volume_cm3", 86.5, 0.5),
///     Input::normal("temperature_c", 21.0, 0.5),
///     Input::normal("pressure_kpa", 100.36, 0.1),
///     Input::exact("inside_minus_outside_mm", 0.0),
/// ];
/// let budget = budget(&FormulaModel::new(&*formula), &inputs, &[], 0.95)?;
/// // By hand: 0.29/86.5, 0.5 K with the vapour's 0.17 %/K besides 0.34 %/K, 0.1/97.87, root of the sum of squares.
/// assert!((budget.standard_uncertainty / budget.value - 0.0044).abs() < 0.0002);
/// # Ok::<(), overwater::Error>(())
/// ```
///
/// # Errors
/// Those of the model, of the inputs ([`Input::check`]), of the correlations ([`Matrix::new`]) and of the coverage.
pub fn budget(
    model: &impl MeasurementModel,
    inputs: &[Input],
    correlations: &[Correlation],
    coverage: f64,
) -> Result<Budget> {
    check_level(coverage)?;
    for input in inputs {
        input.check()?;
    }
    let matrix = Matrix::new(inputs, correlations)?;
    let values: Vec<f64> = inputs.iter().map(|input| input.value).collect();
    let (value, slopes) = model.slopes(&values)?;
    let contributions: Vec<f64> =
        slopes.iter().zip(inputs).map(|(slope, input)| slope * input.standard_uncertainty).collect();
    // Each row of the double sum, which is what an input has in the variance.
    let parts: Vec<f64> = contributions
        .iter()
        .enumerate()
        .map(|(i, own)| {
            own * contributions.iter().enumerate().map(|(j, other)| matrix.at(i, j) * other).sum::<f64>()
        })
        .collect();
    let variance = parts.iter().sum::<f64>().max(0.0);
    let standard_uncertainty = variance.sqrt();
    let degrees_of_freedom = effective(inputs, &contributions, variance, &matrix);
    let factor = coverage_factor(coverage, degrees_of_freedom)?;
    let lines = inputs
        .iter()
        .zip(slopes)
        .zip(contributions.iter().zip(parts))
        .map(|((input, sensitivity), (contribution, part))| Line {
            name: input.name.clone(),
            value: input.value,
            standard_uncertainty: input.standard_uncertainty,
            distribution: input.distribution,
            degrees_of_freedom: input.degrees_of_freedom,
            sensitivity,
            contribution: *contribution,
            share: if variance > 0.0 { part / variance } else { 0.0 },
        })
        .collect();
    Ok(Budget {
        value,
        standard_uncertainty,
        lines,
        degrees_of_freedom,
        coverage,
        coverage_factor: factor,
        expanded_uncertainty: factor * standard_uncertainty,
    })
}

/// The effective degrees of freedom (JCGM 100:2008, equation G.2b).
fn effective(inputs: &[Input], contributions: &[f64], variance: f64, matrix: &Matrix) -> f64 {
    let counted = || {
        let all = inputs.iter().zip(contributions).enumerate();
        all.filter(|(_, (input, contribution))| **contribution != 0.0 && input.degrees_of_freedom.is_finite())
    };
    if counted().any(|(index, _)| matrix.is_correlated(index)) {
        return counted().map(|(_, (input, _))| input.degrees_of_freedom).fold(f64::INFINITY, f64::min);
    }
    let sum: f64 = counted().map(|(_, (input, c))| c * c * c * c / input.degrees_of_freedom).sum();
    if sum == 0.0 { f64::INFINITY } else { variance * variance / sum }
}
