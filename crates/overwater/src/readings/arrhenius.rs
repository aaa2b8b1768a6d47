//! Activation energy from rate constants (or rates) at several temperatures.
//!
//! k = A exp(-E_a/(R T)) (Arrhenius), so that ln k against 1/T is a straight line with the slope -E_a/R and the intercept
//! ln A. Temperatures in kelvin; E_a comes in kJ/mol; A has the unit of the rate constants.

use super::line::{Line, with_intercept};
use super::series::{Series, at};
use crate::scalar::{Constant, Scalar};
use crate::units::{Dimensionless, MolarEnergy, MolarEntropy, Temperature};
use crate::{Code, Error, Result};

/// The temperatures that are taken, in K. Below them they are probably degrees Celsius.
pub const TEMPERATURE_K: (f64, f64) = (200.0, 3000.0);

/// E_a = -slope R, from the slope of ln k against 1/T.
///
/// ```
/// use overwater::readings::arrhenius::from_slope;
/// use overwater::reference::constants::MOLAR_GAS_CLASSROOM;
/// use overwater::units::{Dimensioned, Temperature};
/// // IB Diploma Chemistry, May 2013, HL paper 2 TZ2, question 2, mark scheme: -6.20e3 K with R = 8.31 is 51.5 kJ/mol.
/// let energy = from_slope(Temperature::new(-6.20e3_f64), &MOLAR_GAS_CLASSROOM);
/// assert_eq!(format!("{:.1}", energy.si() / 1e3), "51.5");
/// ```
#[inline(always)]
pub fn from_slope<S: Scalar>(slope: Temperature<S>, gas: &'static Constant) -> MolarEnergy<S> {
    -(slope * MolarEntropy::new(S::constant(gas)))
}

/// E_a = R ln(k₂/k₁) T₁ T₂/(T₂ - T₁): the straight line through two points.
///
/// ```
/// use overwater::readings::arrhenius::from_two_points;
/// use overwater::reference::constants::MOLAR_GAS_2019;
/// use overwater::units::{Dimensioned, Temperature};
/// // OpenStax, Chemistry 2e, section 12.5: 1.66 at 650 K and 7.39 at 700 K make 1.1e2 kJ/mol.
/// let [low, high] = [650.0, 700.0].map(Temperature::new);
/// let energy = from_two_points(1.66_f64, low, 7.39, high, &MOLAR_GAS_2019);
/// assert_eq!(format!("{:.1e}", energy.si() / 1e3), "1.1e2");
/// ```
#[inline(always)]
pub fn from_two_points<S: Scalar>(
    first_constant: S,
    first: Temperature<S>,
    second_constant: S,
    second: Temperature<S>,
    gas: &'static Constant,
) -> MolarEnergy<S> {
    let logarithm = Dimensionless::new((second_constant / first_constant).ln());
    let slope: Temperature<S> = first * second / (second - first) * logarithm;
    MolarEntropy::new(S::constant(gas)) * slope
}

/// What the worst lines are drawn through.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum WorstLines<'a> {
    /// Through the ends of the error bars of the hottest and the coldest point: from the top of one to the bottom of the
    /// other, and the other way round. The bars are shares of k, one for each row: 0.05 for 5 % either way.
    ErrorBars(&'a [f64]),
    /// The same with bars as long as the scatter: one residual standard deviation above and below the best line at the
    /// hottest and the coldest point.
    Scatter,
}

/// Activation energies of the worst lines, in kJ/mol.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Range {
    /// Of the shallowest line.
    pub least_kj_per_mol: f64,
    /// Of the steepest line.
    pub greatest_kj_per_mol: f64,
}

/// What the rate constants say.
#[derive(Debug, Clone, PartialEq)]
pub struct Arrhenius {
    /// E_a in kJ/mol.
    pub activation_energy_kj_per_mol: f64,
    /// Its standard error; NaN for two points.
    pub activation_energy_error: f64,
    /// ln A; A itself overflows for steep lines, and its error is not symmetric.
    pub ln_pre_exponential: f64,
    /// The standard error of ln A.
    pub ln_pre_exponential_error: f64,
    /// The covariance of E_a (kJ/mol) and ln A.
    pub covariance: f64,
    /// Their correlation: close to 1, because the intercept lies far outside the readings. Errors of both must never be
    /// combined as if they were independent.
    pub correlation: f64,
    /// E_a of the shallowest and the steepest line.
    pub worst: Range,
    /// The line of ln k against 1/T (slope in K).
    pub line: Line,
    gas: &'static Constant,
}

impl Arrhenius {
    /// A, in the unit of the rate constants.
    #[must_use]
    pub fn pre_exponential(&self) -> f64 {
        self.ln_pre_exponential.exp()
    }

    /// The rate constant at a temperature, and the standard error of its logarithm.
    #[must_use]
    pub fn rate_constant_at(&self, temperature_k: f64) -> (f64, f64) {
        let x = 1.0 / temperature_k;
        (self.line.at(x).exp(), self.line.error_at(x))
    }

    /// The gas constant that was used.
    #[must_use]
    pub fn gas_constant(&self) -> &'static Constant {
        self.gas
    }
}

/// The columns 1/T and ln k, as a bootstrap of the line needs them.
///
/// # Errors
/// `out_of_range` for a temperature outside [`TEMPERATURE_K`] or a rate constant that is not greater than zero, with its
/// row; `missing` for fewer than two rows; `contradiction` where all temperatures are the same.
pub fn straightened(series: &Series<'_>) -> Result<(Vec<f64>, Vec<f64>)> {
    series.need_positive(2)?;
    let (least, greatest) = TEMPERATURE_K;
    for (row, temperature) in series.x().iter().enumerate() {
        if !(least..=greatest).contains(temperature) {
            return Err(Error::new(Code::OutOfRange, at(row, series.names().x))
                .value(format!("{temperature} K"))
                .allowed(format!("{least} to {greatest} K"))
                .advice("give temperatures in kelvin: degrees Celsius + 273.15"));
        }
    }
    Ok((series.x().iter().map(|t| 1.0 / t).collect(), series.y().iter().map(|k| k.ln()).collect()))
}

/// Works out the activation energy from temperatures in kelvin (x) and rate constants, or rates at the same
/// concentrations (y). Weights, if any, are those of ln k: the reciprocal of the square of the relative uncertainty.
///
/// ```
/// use overwater::readings::arrhenius::{WorstLines, arrhenius};
/// use overwater::readings::series::{Demands, Names, Series};
/// use overwater::reference::constants::MOLAR_GAS_2019;
/// // OpenStax, Chemistry 2e, section 12.5, decomposition of HI. The book takes two rounded points of its graph and gives
/// // 180 kJ/mol; least squares through all five gives 185.
/// let names = Names { x: "temperature_k", y: "rate_constant_l_per_mol_s" };
/// let temperature = [555.0, 575.0, 645.0, 700.0, 781.0];
/// let constant = [3.52e-7, 1.22e-6, 8.59e-5, 1.16e-3, 3.95e-2];
/// let series = Series::new(names, &temperature, &constant, &Demands::rows(2))?;
/// let found = arrhenius(&series, &MOLAR_GAS_2019, WorstLines::Scatter)?;
/// assert_eq!(format!("{:.0}", found.activation_energy_kj_per_mol), "185");
/// # Ok::<(), overwater::Error>(())
/// ```
///
/// # Errors
/// Those of [`straightened`]; `contradiction` for another number of error bars than of rows, `out_of_range` for one that
/// is not from 0 to below 1.
pub fn arrhenius(series: &Series<'_>, gas: &'static Constant, worst: WorstLines<'_>) -> Result<Arrhenius> {
    let (x, y) = straightened(series)?;
    let line = with_intercept(&Series::trusted(series.names(), &x, &y, series.weights()))?;
    let per_slope = -gas.si() / 1e3;
    let worst = worst_slopes(series, &x, &y, &line, worst)?.map(|slope| slope * per_slope);
    let [a, b] = worst;
    Ok(Arrhenius {
        activation_energy_kj_per_mol: line.slope * per_slope,
        activation_energy_error: line.slope_error * per_slope.abs(),
        ln_pre_exponential: line.intercept,
        ln_pre_exponential_error: line.intercept_error,
        covariance: line.covariance * per_slope,
        correlation: -line.covariance / (line.slope_error * line.intercept_error),
        worst: Range { least_kj_per_mol: a.min(b), greatest_kj_per_mol: a.max(b) },
        line,
        gas,
    })
}

fn worst_slopes(
    series: &Series<'_>,
    x: &[f64],
    y: &[f64],
    line: &Line,
    worst: WorstLines<'_>,
) -> Result<[f64; 2]> {
    let points: Vec<(f64, f64, f64)> = match worst {
        WorstLines::ErrorBars(bars) => {
            if bars.len() != series.len() {
                return Err(Error::new(Code::Contradiction, "error_bar")
                    .value(format!("{} rows", bars.len()))
                    .allowed(format!("{} rows, one for each rate constant", series.len()))
                    .advice("give one error bar for each row"));
            }
            for (row, bar) in bars.iter().enumerate() {
                if !(0.0..1.0).contains(bar) {
                    let code = if bar.is_finite() { Code::OutOfRange } else { Code::NotANumber };
                    return Err(Error::new(code, at(row, "error_bar"))
                        .value(bar.to_string())
                        .allowed("from 0 to below 1, a share of the rate constant")
                        .advice("divide the uncertainty by the rate constant"));
                }
            }
            x.iter().zip(y).zip(bars).map(|((x, y), bar)| (*x, y + bar.ln_1p(), y + (-bar).ln_1p())).collect()
        }
        WorstLines::Scatter => {
            let s = line.residual_sd;
            x.iter().map(|x| (*x, line.at(*x) + s, line.at(*x) - s)).collect()
        }
    };
    let hottest = points.iter().min_by(|a, b| a.0.total_cmp(&b.0));
    let coldest = points.iter().max_by(|a, b| a.0.total_cmp(&b.0));
    let (Some(hot), Some(cold)) = (hottest, coldest) else {
        return Err(Error::new(Code::Missing, "rows"));
    };
    let run = cold.0 - hot.0;
    Ok([(cold.1 - hot.2) / run, (cold.2 - hot.1) / run])
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::readings::series::{Demands, Names};
    use crate::reference::constants::{MOLAR_GAS_2019, MOLAR_GAS_CLASSROOM};
    use crate::scalar::Sensitivities;
    use crate::units::Dimensioned;

    const NAMES: Names = Names { x: "temperature_k", y: "rate_constant_per_s" };
    const T: [f64; 5] = [290.0, 300.0, 310.0, 320.0, 330.0];

    fn constants(scatter: [f64; 5]) -> [f64; 5] {
        let mut k = [0.0; 5];
        for ((k, t), e) in k.iter_mut().zip(T).zip(scatter) {
            *k = 1e7 * (-50_000.0 / (8.31 * t) + e).exp();
        }
        k
    }

    #[test]
    fn exact_constants_give_back_what_they_were_made_from() {
        let k = constants([0.0; 5]);
        let series = Series::new(NAMES, &T, &k, &Demands::rows(2)).unwrap();
        let found = arrhenius(&series, &MOLAR_GAS_CLASSROOM, WorstLines::Scatter).unwrap();
        assert!((found.activation_energy_kj_per_mol - 50.0).abs() < 1e-10);
        assert!((found.pre_exponential() / 1e7 - 1.0).abs() < 1e-10);
        assert!((found.rate_constant_at(300.0).0 / k[1] - 1.0).abs() < 1e-12);
        assert_eq!(found.gas_constant().value, 8.31);
        let other = arrhenius(&series, &MOLAR_GAS_2019, WorstLines::Scatter).unwrap();
        assert!((other.activation_energy_kj_per_mol / 50.0 - 8.314_462_618_153_24 / 8.31).abs() < 1e-10);
        let [first, second] = [T[0], T[4]].map(Temperature::new);
        let two = from_two_points(k[0], first, k[4], second, &MOLAR_GAS_CLASSROOM).si();
        assert!((two - 50_000.0).abs() < 1e-7, "{two}");
    }

    #[test]
    fn errors_are_those_of_the_line_and_strongly_correlated() {
        let k = constants([0.02, -0.03, 0.01, 0.03, -0.03]);
        let series = Series::new(NAMES, &T, &k, &Demands::rows(2)).unwrap();
        let found = arrhenius(&series, &MOLAR_GAS_CLASSROOM, WorstLines::Scatter).unwrap();
        let error = found.line.slope_error * 8.31e-3;
        assert!((found.activation_energy_error / error - 1.0).abs() < 1e-14);
        // For a straight line it is the mean of x over its root mean square.
        let mean = T.iter().map(|t| 1.0 / t).sum::<f64>() / 5.0;
        let square = T.iter().map(|t| 1.0 / (t * t)).sum::<f64>() / 5.0;
        assert!((found.correlation - mean / square.sqrt()).abs() < 1e-12 && found.correlation > 0.998);
        let product = found.correlation * found.activation_energy_error * found.ln_pre_exponential_error;
        assert!((found.covariance / product - 1.0).abs() < 1e-12);
        // Bars of s at both ends turn the line by 2 s over the run of 1/T.
        let turn = 2.0 * found.line.residual_sd / (1.0 / 290.0 - 1.0 / 330.0) * 8.31e-3;
        let energy = found.activation_energy_kj_per_mol;
        assert!((found.worst.greatest_kj_per_mol - (energy + turn)).abs() < 1e-9);
        assert!((found.worst.least_kj_per_mol - (energy - turn)).abs() < 1e-9);
    }

    #[test]
    fn worst_lines_join_the_ends_of_the_bars() {
        let k = constants([0.0; 5]);
        let series = Series::new(NAMES, &T, &k, &Demands::rows(2)).unwrap();
        let bars = [0.10, 0.5, 0.5, 0.5, 0.05];
        let found = arrhenius(&series, &MOLAR_GAS_CLASSROOM, WorstLines::ErrorBars(&bars)).unwrap();
        let run = 1.0 / 290.0 - 1.0 / 330.0;
        // Steepest: 5 % more at 330 K, 10 % less at 290 K.
        let steepest = 50.0 + (f64::ln(1.05) - f64::ln(0.90)) / run * 8.31e-3;
        let shallowest = 50.0 - (f64::ln(1.10) - f64::ln(0.95)) / run * 8.31e-3;
        assert!((found.worst.greatest_kj_per_mol - steepest).abs() < 1e-9);
        assert!((found.worst.least_kj_per_mol - shallowest).abs() < 1e-9);
        for (bars, parameter) in
            [(vec![0.1; 4], "error_bar"), (vec![0.1, 0.1, 1.0, 0.1, 0.1], "rows[2].error_bar")]
        {
            let error = arrhenius(&series, &MOLAR_GAS_2019, WorstLines::ErrorBars(&bars)).unwrap_err();
            assert_eq!(error.parameter, parameter);
        }
    }

    #[test]
    fn degrees_celsius_are_refused() {
        let series = Series::new(NAMES, &[20.0, 30.0], &[1.0, 2.0], &Demands::rows(2)).unwrap();
        let error = arrhenius(&series, &MOLAR_GAS_2019, WorstLines::Scatter).unwrap_err();
        assert_eq!((error.code, error.parameter.as_ref()), (Code::OutOfRange, "rows[0].temperature_k"));
        assert!(error.advice.contains("kelvin"));
    }

    #[test]
    fn the_energy_of_two_points_goes_with_the_logarithm() {
        // dE/d(ln k2) = R T1 T2/(T2 - T1).
        let dual = |value, index| Sensitivities::<4>::input(value, index);
        let energy = from_two_points(
            dual(1.66, 0),
            Temperature::new(dual(650.0, 1)),
            dual(7.39, 2),
            Temperature::new(dual(700.0, 3)),
            &MOLAR_GAS_2019,
        )
        .si();
        let expected = 8.314_462_618_153_24 * 650.0 * 700.0 / 50.0 / 7.39;
        assert!((energy.derivatives()[2] / expected - 1.0).abs() < 1e-12);
    }
}
