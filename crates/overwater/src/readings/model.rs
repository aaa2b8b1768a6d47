//! Fits of any curve: a model is written once over [`Scalar`], and its derivatives follow from dual numbers.
//!
//! The sum Σ w (y - model)² is made as small as it gets; see [`fit`] for how, and for what the errors mean.

use super::least_squares::{Covariance, solve};
use super::minimise::{self, Attempt, Goal};
use super::series::Series;
use crate::scalar::Scalar;
use crate::{Code, Error, Result};

/// A curve with `P` numbers to be fitted.
///
/// ```
/// use overwater::readings::model::{Model, Parameter, fit};
/// use overwater::readings::series::{Demands, Names, Series};
/// use overwater::scalar::Scalar;
///
/// /// y = a/x.
/// struct Hyperbola;
/// impl Model<1> for Hyperbola {
///     const NAMES: [&'static str; 1] = ["a"];
///     fn value<S: Scalar>(&self, x: S, [a]: [S; 1]) -> S {
///         a / x
///     }
/// }
/// let names = Names { x: "volume_cm3", y: "pressure_kpa" };
/// let series = Series::new(names, &[10.0, 20.0, 40.0], &[200.0, 100.0, 50.0], &Demands::rows(2))?;
/// let fitted = fit(&Hyperbola, &series, [Parameter::Free(1.0)])?;
/// assert!((fitted.parameters[0] - 2000.0).abs() < 1e-9);
/// # Ok::<(), overwater::Error>(())
/// ```
pub trait Model<const P: usize>: Sync {
    /// What the fitted numbers are called, for refusals.
    const NAMES: [&'static str; P];

    /// The curve at `x`. Mark it `#(inline(always))`: only then does the compiler work on several rows together.
    fn value<S: Scalar>(&self, x: S, parameters: [S; P]) -> S;
}

/// How one of the numbers of a model enters the fit.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Parameter {
    /// It is fitted, from this starting value.
    Free(f64),
    /// It is known.
    Fixed(f64),
}

impl Parameter {
    pub(super) fn value(self) -> f64 {
        match self {
            Parameter::Free(value) | Parameter::Fixed(value) => value,
        }
    }

    pub(super) fn is_free(self) -> bool {
        matches!(self, Parameter::Free(_))
    }
}

/// How the smallest sum was found.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Method {
    /// Full steps from the starting values, each of which made the sum smaller.
    GaussNewton,
    /// Steps held inside a region of trust first, because a full step went astray.
    LevenbergMarquardt,
}

/// How far the fit came.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Convergence {
    /// How the smallest sum was found.
    pub method: Method,
    /// How often the curve was computed for all rows.
    pub evaluations: usize,
    /// Bates and Watts' relative offset at the end: the step still to be taken, in units of the scatter of the fitted
    /// numbers. 0.001 means that they are off by a thousandth of their standard errors.
    pub relative_offset: f64,
}

/// A fitted curve.
#[derive(Debug, Clone, PartialEq)]
pub struct Fit<const P: usize> {
    /// The fitted and the fixed numbers, in the order of the model.
    pub parameters: [f64; P],
    /// Which of them were fitted.
    pub free: [bool; P],
    /// Their standard errors; 0 for a fixed one, NaN without degrees of freedom.
    pub standard_errors: [f64; P],
    /// Their covariance; 0 for fixed ones.
    pub covariance: Covariance,
    /// y less the fitted y, row by row.
    pub residuals: Vec<f64>,
    /// The standard deviation of the residuals.
    pub residual_sd: f64,
    /// The weighted sum of their squares.
    pub sum_of_squares: f64,
    /// Rows less numbers fitted.
    pub degrees_of_freedom: usize,
    /// How far the fit came.
    pub convergence: Convergence,
}

/// How small the relative offset must be. Rounding allows no less where the residuals themselves are small.
const CONVERGED: f64 = 1e-10;

/// Fits a model.
///
/// Full Gauss-Newton steps are taken while each makes the sum smaller. Where one does not, the
/// Levenberg-Marquardt algorithm (of MINPACK, with steps held inside a region of trust, at most 100 curves for each
/// number fitted and four sizes of the first step) brings the numbers near before the full steps are taken again. What
/// has converged is judged by the relative offset of Bates and Watts (Technometrics 23 (1981) 179), not by the sum.
///
/// Standard errors are those of the linear approximation at the solution: covariance = s² (JᵀWJ)⁻¹ by QR
/// decomposition of the Jacobian J. They are too small where the curve bends strongly within them; compare
/// [`super::bootstrap`].
///
/// # Errors
/// `missing` for fewer rows than numbers to fit, `not_a_number` for a starting value that is none, `contradiction`
/// where the readings do not determine all numbers, `cannot_be_met` where no minimum was reached.
pub fn fit<M: Model<P>, const P: usize>(
    model: &M,
    series: &Series<'_>,
    start: [Parameter; P],
) -> Result<Fit<P>> {
    let free = start.map(Parameter::is_free);
    let number_free = free.iter().filter(|free| **free).count();
    series.need(number_free.max(2))?;
    for (name, parameter) in M::NAMES.iter().zip(&start) {
        if !parameter.value().is_finite() {
            return Err(Error::new(Code::NotANumber, *name)
                .value(parameter.value().to_string())
                .advice("start from a finite number"));
        }
    }
    let goal = Goal { series, free, tolerance: CONVERGED };
    let attempt = minimise::minimise(model, &goal, start.map(Parameter::value));
    finished(model, series, free, attempt)
}

/// The covariance, by QR decomposition of the Jacobian at the solution.
fn finished<M: Model<P>, const P: usize>(
    model: &M,
    series: &Series<'_>,
    free: [bool; P],
    attempt: Attempt<P>,
) -> Result<Fit<P>> {
    let names = || {
        let fitted: Vec<&str> =
            M::NAMES.iter().zip(free).filter(|(_, f)| *f).map(|(name, _)| *name).collect();
        fitted.join(", ")
    };
    let mut residuals = vec![0.0; series.len()];
    let columns = minimise::jacobian(model, series, attempt.parameters, &mut residuals);
    let fitted: Vec<Vec<f64>> =
        columns.into_iter().zip(free).filter(|(_, free)| *free).map(|(column, _)| column).collect();
    let order = fitted.len();
    let finite = attempt.sum_of_squares.is_finite();
    let solved = if finite && order > 0 { solve(&fitted, &residuals, series.weights()) } else { None };
    if order > 0 && finite && solved.is_none() {
        return Err(Error::new(Code::Contradiction, "rows")
            .value(format!("{} rows", series.len()))
            .allowed(format!("readings that determine each of {}", names()))
            .advice("fix one of them, or take readings over a longer stretch of the curve"));
    }
    if !attempt.converged || (order > 0 && solved.is_none()) {
        return Err(Error::new(Code::CannotBeMet, "fit")
            .value(format!("no smallest sum of squares after {} evaluations", attempt.evaluations))
            .allowed(format!("readings that the curve can follow, for {}", names()))
            .advice("look at a plot; fix a number that is known, or take readings over a longer stretch"));
    }
    let degrees_of_freedom = series.len() - order;
    let variance =
        if degrees_of_freedom == 0 { f64::NAN } else { attempt.sum_of_squares / degrees_of_freedom as f64 };
    let small = solved.map(|solved| solved.plain_covariance(variance));
    let places: Vec<usize> = (0..P).filter(|index| free.get(*index).copied().unwrap_or(false)).collect();
    let mut values = vec![0.0; P * P];
    for (i, row) in places.iter().enumerate() {
        for (j, column) in places.iter().enumerate() {
            if let (Some(value), Some(small)) = (values.get_mut(row * P + column), &small) {
                *value = small.get(i, j);
            }
        }
    }
    let covariance = Covariance::new(P, values);
    Ok(Fit {
        parameters: attempt.parameters,
        free,
        standard_errors: std::array::from_fn(|index| covariance.standard_error(index)),
        covariance,
        residuals,
        residual_sd: variance.sqrt(),
        sum_of_squares: attempt.sum_of_squares,
        degrees_of_freedom,
        convergence: Convergence {
            method: attempt.method,
            evaluations: attempt.evaluations,
            relative_offset: attempt.relative_offset,
        },
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::readings::line::{self, StraightLine};
    use crate::readings::series::{Demands, VOLUME_AGAINST_TIME};

    /// The same number twice: no readings tell them apart.
    struct Twice;
    impl Model<2> for Twice {
        const NAMES: [&'static str; 2] = ["a", "b"];
        fn value<S: Scalar>(&self, x: S, [a, b]: [S; 2]) -> S {
            (a + b) * x
        }
    }

    /// 1 + exp(a): its minimum over readings of 0 lies at minus infinity.
    struct Away;
    impl Model<1> for Away {
        const NAMES: [&'static str; 1] = ["a"];
        fn value<S: Scalar>(&self, _: S, [a]: [S; 1]) -> S {
            a.exp() + 1.0
        }
    }

    const X: [f64; 11] = [0.0, 1.0, 2.0, 3.0, 4.0, 5.0, 6.0, 7.0, 8.0, 9.0, 10.0];
    const Y: [f64; 11] = [1.2, 2.9, 5.1, 7.2, 8.8, 11.1, 13.3, 14.9, 17.1, 18.8, 21.2];

    fn series() -> Series<'static> {
        Series::new(VOLUME_AGAINST_TIME, &X, &Y, &Demands::rows(2)).unwrap()
    }

    #[test]
    fn a_straight_line_is_what_linear_least_squares_gives() {
        let weights: Vec<f64> = X.iter().map(|x| 1.0 + x).collect();
        for series in [series(), series().weighted(&weights).unwrap()] {
            let curve = fit(&StraightLine, &series, [Parameter::Free(50.0), Parameter::Free(-3.0)]).unwrap();
            let line = line::with_intercept(&series).unwrap();
            for (got, expected) in [
                (curve.parameters[0], line.intercept),
                (curve.parameters[1], line.slope),
                (curve.standard_errors[0], line.intercept_error),
                (curve.standard_errors[1], line.slope_error),
                (curve.covariance.get(0, 1), line.covariance),
                (curve.residual_sd, line.residual_sd),
                (curve.residuals[3], line.residuals[3]),
            ] {
                assert!((got / expected - 1.0).abs() < 1e-11, "{got} {expected}");
            }
            assert!(curve.convergence.relative_offset < 1e-9);
            assert_eq!(curve.convergence.method, Method::GaussNewton);
        }
    }

    #[test]
    fn a_fixed_number_stays_and_has_no_error() {
        let curve = fit(&StraightLine, &series(), [Parameter::Fixed(0.0), Parameter::Free(1.0)]).unwrap();
        let line = line::through_origin(&series()).unwrap();
        assert_eq!((curve.parameters[0], curve.standard_errors[0]), (0.0, 0.0));
        assert!((curve.parameters[1] / line.slope - 1.0).abs() < 1e-13);
        assert!((curve.standard_errors[1] / line.slope_error - 1.0).abs() < 1e-12);
        assert_eq!(curve.degrees_of_freedom, 10);
        let both = fit(&StraightLine, &series(), [Parameter::Fixed(1.0), Parameter::Fixed(2.0)]).unwrap();
        assert_eq!(both.degrees_of_freedom, 11);
        assert!((both.residuals[0] - 0.2).abs() < 1e-15);
    }

    #[test]
    fn what_cannot_be_fitted_is_refused() {
        let error = fit(&Twice, &series(), [Parameter::Free(1.0); 2]).unwrap_err();
        assert_eq!(error.code, Code::Contradiction);
        assert!(error.allowed.contains("a, b"), "{error}");
        let error =
            fit(&StraightLine, &series(), [Parameter::Free(f64::NAN), Parameter::Free(0.0)]).unwrap_err();
        assert_eq!((error.code, error.parameter.as_ref()), (Code::NotANumber, "intercept"));
        let zeros = [0.0; 11];
        let flat = Series::new(VOLUME_AGAINST_TIME, &X, &zeros, &Demands::rows(2)).unwrap();
        let error = fit(&Away, &flat, [Parameter::Free(0.0)]).unwrap_err();
        assert!(matches!(error.code, Code::CannotBeMet | Code::Contradiction), "{error}");
        assert!(fit(&Away, &flat, [Parameter::Free(1000.0)]).is_err());
    }
}
