//! Straight lines with and without intercept, side by side, and polynomials.
//!
//! Equation: y = intercept + slope x, and y = slope x, each by least squares (minimum of Σ w (y - fitted)²), with
//! Householder's QR decomposition. Units are those of the columns.
//!
//! Standard errors come from the scatter: s² = Σ w (y - fitted)²/(rows - numbers fitted), covariance = s² (XᵀWX)⁻¹.
//! Weights say how readings compare with each other, so that multiplying all by one number changes nothing but s.

use super::least_squares::{Covariance, Solved, solve};
use super::model::Model;
use super::series::Series;
use super::student::two_sided;
use crate::scalar::Scalar;
use crate::{Code, Error, Result};

/// A straight line as a model, for a bootstrap: intercept, slope.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct StraightLine;

impl Model<2> for StraightLine {
    const NAMES: [&'static str; 2] = ["intercept", "slope"];

    #[inline(always)]
    fn value<S: Scalar>(&self, x: S, [intercept, slope]: [S; 2]) -> S {
        intercept + slope * x
    }
}

/// What the share explained is compared with.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum About {
    /// R² = 1 - Σ w (y - fitted)²/Σ w (y - mean)².
    Mean,
    /// R² = 1 - Σ w (y - fitted)²/Σ w y²: the definition for a line without intercept. It is close to 1 even for poor
    /// lines and must not be compared with the other.
    Zero,
}

/// A straight line.
#[derive(Debug, Clone, PartialEq)]
pub struct Line {
    /// The slope.
    pub slope: f64,
    /// Its standard error; NaN without degrees of freedom.
    pub slope_error: f64,
    /// The intercept; 0 for a line through the origin.
    pub intercept: f64,
    /// Its standard error; 0 for a line through the origin.
    pub intercept_error: f64,
    /// The covariance of slope and intercept; 0 for a line through the origin.
    pub covariance: f64,
    /// The standard deviation of the residuals, s.
    pub residual_sd: f64,
    /// The weighted sum of their squares.
    pub sum_of_squares: f64,
    /// R², by the definition that `about` names; NaN where all y are the same.
    pub r_squared: f64,
    /// Which definition.
    pub about: About,
    /// Rows less numbers fitted.
    pub degrees_of_freedom: usize,
    /// y less the fitted y, row by row.
    pub residuals: Vec<f64>,
}

impl Line {
    /// The fitted y at `x`.
    #[must_use]
    pub fn at(&self, x: f64) -> f64 {
        self.intercept + self.slope * x
    }

    /// The standard error of the fitted y at `x`.
    #[must_use]
    pub fn error_at(&self, x: f64) -> f64 {
        let variance =
            self.intercept_error.powi(2) + 2.0 * x * self.covariance + (x * self.slope_error).powi(2);
        variance.max(0.0).sqrt()
    }
}

/// The intercept differs from zero by more than the scatter explains.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct InterceptWarning {
    /// The intercept.
    pub intercept: f64,
    /// Its standard error.
    pub standard_error: f64,
    /// The probability of an intercept this far from zero if the true one were zero (Student's distribution,
    /// two-sided).
    pub probability: f64,
}

impl InterceptWarning {
    /// What it may mean when y is gas collected and x is what it is collected from, in several portions: each line a
    /// possible cause.
    #[must_use]
    pub fn may_mean_of_portions(&self) -> &'static [&'static str] {
        if self.intercept > 0.0 {
            &[
                "air counted as gas: the liquid added and the bung pushed in drive out their own volume",
                "the flask warmed, and its air expanded into the collector",
                "the scale of the collector read too high by the same volume each time",
            ]
        } else {
            &[
                "gas dissolved in the liquid (carbon dioxide most of all), which fills up before any comes over",
                "gas was lost before the bung was in; a loss that is the same each time leaves the slope right",
                "a film of oxide or oil that weighs the same on each piece",
            ]
        }
    }

    /// What it may mean when y is gas collected (or mass lost) and x is time: each line a possible cause.
    #[must_use]
    pub fn may_mean(&self) -> &'static [&'static str] {
        if self.intercept > 0.0 {
            &[
                "the clock was started late, after gas had already come over",
                "air counted as gas: the liquid added and the bung pushed in drive out their own volume",
                "the flask warmed, and its air expanded into the collector",
            ]
        } else {
            &[
                "gas dissolved in the liquid before any came over (carbon dioxide most of all)",
                "gas was lost before the bung was in; a loss that is the same each time leaves the slope right",
                "the clock was started before the reaction was under way",
            ]
        }
    }
}

/// The probability below which an intercept is called different from zero.
pub const SIGNIFICANT: f64 = 0.05;

/// An intercept below this share of the largest fitted or read value is rounding, whatever the scatter.
const ROUNDING: f64 = 1e-12;

/// Both lines through the same readings.
#[derive(Debug, Clone, PartialEq)]
pub struct Lines {
    /// y = intercept + slope x.
    pub with_intercept: Line,
    /// y = slope x.
    pub through_origin: Line,
    /// Where the line through the origin contradicts the readings.
    pub warning: Option<InterceptWarning>,
}

/// Fits both lines.
///
/// ```
/// use overwater::readings::line::lines;
/// use overwater::readings::series::{Demands, Names, Series};
/// // NIST Statistical Reference Datasets, linear regression, NoInt2: certified slope 0.727272727272727, standard
/// // deviation of it 0.420827318078432E-01, R² 0.993348115299335.
/// let names = Names { x: "x", y: "y" };
/// let series = Series::new(names, &[4.0, 5.0, 6.0], &[3.0, 4.0, 4.0], &Demands::rows(3))?;
/// let line = lines(&series)?.through_origin;
/// assert!((line.slope - 0.727_272_727_272_727).abs() < 1e-15);
/// assert!((line.slope_error - 0.042_082_731_807_843_2).abs() < 1e-15);
/// # Ok::<(), overwater::Error>(())
/// ```
///
/// # Errors
/// `missing` for fewer than two rows, `contradiction` where all x are the same.
pub fn lines(series: &Series<'_>) -> Result<Lines> {
    series.need(2)?;
    let with_intercept = with_intercept(series)?;
    let through_origin = through_origin(series)?;
    let warning = warning(series, &with_intercept);
    Ok(Lines { with_intercept, through_origin, warning })
}

/// Only the line with intercept.
///
/// # Errors
/// As [`lines`].
pub fn with_intercept(series: &Series<'_>) -> Result<Line> {
    let fit = polynomial(series, 1)?;
    let [intercept, slope] = fit.coefficients[..] else { return Err(undetermined(series)) };
    Ok(Line {
        slope,
        slope_error: fit.covariance.standard_error(1),
        intercept,
        intercept_error: fit.covariance.standard_error(0),
        covariance: fit.covariance.get(0, 1),
        residual_sd: fit.residual_sd,
        sum_of_squares: fit.sum_of_squares,
        r_squared: fit.r_squared,
        about: About::Mean,
        degrees_of_freedom: fit.degrees_of_freedom,
        residuals: fit.residuals,
    })
}

/// Only the line through the origin.
///
/// # Errors
/// As [`lines`], and `contradiction` where all x are zero.
pub fn through_origin(series: &Series<'_>) -> Result<Line> {
    series.need(2)?;
    let scale = series.x().iter().fold(0.0_f64, |largest, x| largest.max(x.abs()));
    let column: Vec<f64> = series.x().iter().map(|x| x / scale).collect();
    let solved = solve(&[column], series.y(), series.weights()).ok_or_else(|| undetermined(series))?;
    let degrees_of_freedom = series.len() - 1;
    let variance = solved.sum_of_squares / degrees_of_freedom as f64;
    let slope = solved.coefficients.first().copied().unwrap_or(f64::NAN) / scale;
    let slope_error = solved.plain_covariance(variance).standard_error(0) / scale;
    let total: f64 = series.y().iter().zip(series.weight_of_each()).map(|(y, w)| w * y * y).sum();
    Ok(Line {
        slope,
        slope_error,
        intercept: 0.0,
        intercept_error: 0.0,
        covariance: 0.0,
        residual_sd: variance.sqrt(),
        sum_of_squares: solved.sum_of_squares,
        r_squared: share_explained(solved.sum_of_squares, total),
        about: About::Zero,
        degrees_of_freedom,
        residuals: solved.residuals,
    })
}

fn warning(series: &Series<'_>, line: &Line) -> Option<InterceptWarning> {
    let largest = series.y().iter().fold(0.0_f64, |largest, y| largest.max(y.abs()));
    if line.degrees_of_freedom == 0 || line.intercept.abs() <= ROUNDING * largest {
        return None;
    }
    let probability = two_sided(line.intercept / line.intercept_error, line.degrees_of_freedom);
    (probability < SIGNIFICANT).then_some(InterceptWarning {
        intercept: line.intercept,
        standard_error: line.intercept_error,
        probability,
    })
}

/// A polynomial y = Σ coefficient x^power.
#[derive(Debug, Clone, PartialEq)]
pub struct Polynomial {
    /// From the constant upwards.
    pub coefficients: Vec<f64>,
    /// Of the coefficients.
    pub covariance: Covariance,
    /// The standard deviation of the residuals; NaN without degrees of freedom.
    pub residual_sd: f64,
    /// The weighted sum of their squares.
    pub sum_of_squares: f64,
    /// R² about the mean ([`About::Mean`]); NaN where all y are the same.
    pub r_squared: f64,
    /// Rows less coefficients.
    pub degrees_of_freedom: usize,
    /// y less the fitted y, row by row.
    pub residuals: Vec<f64>,
}

impl Polynomial {
    /// The fitted y at `x`.
    #[must_use]
    pub fn at(&self, x: f64) -> f64 {
        self.coefficients.iter().rev().fold(0.0, |sum, coefficient| sum * x + coefficient)
    }

    /// The slope of the tangent at `x`, and its standard error.
    #[must_use]
    pub fn slope_at(&self, x: f64) -> (f64, f64) {
        let factors: Vec<f64> = (0..self.coefficients.len())
            .map(|power| if power == 0 { 0.0 } else { power as f64 * x.powi(exponent(power - 1)) })
            .collect();
        let slope = factors.iter().zip(&self.coefficients).map(|(factor, c)| factor * c).sum();
        (slope, self.covariance.variance_of(&factors).max(0.0).sqrt())
    }
}

/// The highest degree that is fitted: beyond it the coefficients mean nothing in double precision.
pub const HIGHEST_DEGREE: usize = 12;

/// Fits a polynomial of a stated degree.
///
/// The decomposition works on x moved and scaled into -1 to 1, and the coefficients are carried back: 13 digits of the
/// set Filip (degree 10) of the NIST Statistical Reference Datasets.
///
/// # Errors
/// `out_of_range` for a degree above [`HIGHEST_DEGREE`], `missing` for fewer rows than coefficients, `contradiction`
/// where the x do not determine the coefficients (fewer different values than coefficients).
pub fn polynomial(series: &Series<'_>, degree: usize) -> Result<Polynomial> {
    if degree > HIGHEST_DEGREE {
        return Err(Error::new(Code::OutOfRange, "degree")
            .value(degree.to_string())
            .allowed(format!("0 to {HIGHEST_DEGREE}"))
            .advice("fit a lower degree, or a curve with a meaning"));
    }
    let order = degree + 1;
    series.need(order.max(2))?;
    let (least, greatest) =
        series.x().iter().fold((f64::INFINITY, f64::NEG_INFINITY), |(l, g), x| (l.min(*x), g.max(*x)));
    let (centre, half) = (0.5 * (least + greatest), 0.5 * (greatest - least));
    let scaled: Vec<f64> = series.x().iter().map(|x| (x - centre) / half).collect();
    let mut columns = vec![vec![1.0; series.len()]];
    for power in 0..degree {
        let next = columns.get(power).map(|last| last.iter().zip(&scaled).map(|(a, b)| a * b).collect());
        columns.extend(next);
    }
    let solved = solve(&columns, series.y(), series.weights()).ok_or_else(|| undetermined(series))?;
    Ok(carried_back(series, &solved, centre, half))
}

/// From powers of (x - centre)/half to powers of x.
fn carried_back(series: &Series<'_>, solved: &Solved, centre: f64, half: f64) -> Polynomial {
    let order = solved.coefficients.len();
    let mut transform = vec![0.0; order * order];
    // Column by column: the coefficients of ((x - centre)/half)^power, each from the one before.
    let mut expanded = vec![1.0];
    for power in 0..order {
        for (row, value) in expanded.iter().enumerate() {
            if let Some(place) = transform.get_mut(row * order + power) {
                *place = *value;
            }
        }
        let mut next = vec![0.0; expanded.len() + 1];
        for (row, value) in expanded.iter().enumerate() {
            if let Some(place) = next.get_mut(row) {
                *place -= value * centre / half;
            }
            if let Some(place) = next.get_mut(row + 1) {
                *place += value / half;
            }
        }
        expanded = next;
    }
    let coefficients = transform
        .chunks(order)
        .map(|row| row.iter().zip(&solved.coefficients).map(|(factor, c)| factor * c).sum())
        .collect();
    let degrees_of_freedom = series.len() - order;
    let variance =
        if degrees_of_freedom == 0 { f64::NAN } else { solved.sum_of_squares / degrees_of_freedom as f64 };
    Polynomial {
        coefficients,
        covariance: solved.covariance(&transform, variance),
        residual_sd: variance.sqrt(),
        sum_of_squares: solved.sum_of_squares,
        r_squared: share_explained(solved.sum_of_squares, sum_about_the_mean(series)),
        degrees_of_freedom,
        residuals: solved.residuals.clone(),
    }
}

/// R²; nothing can be explained where nothing varies.
pub(super) fn share_explained(left: f64, total: f64) -> f64 {
    if total > 0.0 { 1.0 - left / total } else { f64::NAN }
}

/// Σ w (y - mean)².
pub(super) fn sum_about_the_mean(series: &Series<'_>) -> f64 {
    let weighted = || series.y().iter().zip(series.weight_of_each());
    let mean = weighted().map(|(y, w)| w * y).sum::<f64>() / series.weight_of_each().sum::<f64>();
    weighted().map(|(y, w)| w * (y - mean) * (y - mean)).sum()
}

fn exponent(power: usize) -> i32 {
    i32::try_from(power).unwrap_or(i32::MAX)
}

fn undetermined(series: &Series<'_>) -> Error {
    Error::new(Code::Contradiction, series.names().x)
        .value(format!("{} rows", series.len()))
        .allowed("at least as many different values as numbers are fitted")
        .advice("take readings at more different values")
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::readings::series::{Demands, VOLUME_AGAINST_TIME};

    fn series<'a>(x: &'a [f64], y: &'a [f64]) -> Series<'a> {
        Series::new(VOLUME_AGAINST_TIME, x, y, &Demands::rows(2)).unwrap()
    }

    /// 3 + 2 x with residuals of ±0.5 that leave slope and intercept alone: s² = 1/2, by hand.
    const X: [f64; 4] = [0.0, 1.0, 2.0, 3.0];
    const Y: [f64; 4] = [2.5, 5.5, 7.5, 8.5];

    #[test]
    fn a_line_by_hand() {
        let both = lines(&series(&X, &Y)).unwrap();
        let line = &both.with_intercept;
        for (got, expected) in [
            (line.slope, 2.0),
            (line.intercept, 3.0),
            (line.sum_of_squares, 1.0),
            (line.residual_sd, 0.5_f64.sqrt()),
            (line.slope_error, 0.1_f64.sqrt()),
            (line.intercept_error, 0.35_f64.sqrt()),
            (line.covariance, -0.15),
            (line.r_squared, 1.0 - 1.0 / 21.0),
            (line.at(10.0), 23.0),
            (line.error_at(1.5), 0.125_f64.sqrt()),
            (both.through_origin.slope, 46.0 / 14.0),
            (both.through_origin.r_squared, 1.0 - (165.0 - 46.0_f64.powi(2) / 14.0) / 165.0),
        ] {
            assert!((got - expected).abs() < 1e-13, "{got} {expected}");
        }
        assert_eq!((line.degrees_of_freedom, both.through_origin.degrees_of_freedom), (2, 3));
        assert_eq!((line.about, both.through_origin.about), (About::Mean, About::Zero));
    }

    #[test]
    fn an_intercept_that_the_scatter_does_not_explain_is_reported() {
        // t = 3/sqrt(0.35) = 5.07 with 2 degrees of freedom: p = 0.0368.
        let warning = lines(&series(&X, &Y)).unwrap().warning.unwrap();
        assert!((warning.probability - 0.036_76).abs() < 1e-4, "{}", warning.probability);
        assert!(warning.may_mean().iter().any(|cause| cause.contains("late")));
        let below: Vec<f64> = Y.iter().map(|y| y - 6.0).collect();
        let warning = lines(&series(&X, &below)).unwrap().warning.unwrap();
        assert!(warning.may_mean().iter().any(|cause| cause.contains("dissolved")));
        assert!(warning.may_mean().iter().any(|cause| cause.contains("before the bung")));
        let through: Vec<f64> = Y.iter().map(|y| y - 2.5).collect();
        assert_eq!(lines(&series(&X, &through)).unwrap().warning, None);
        let exact: Vec<f64> = X.iter().map(|x| 0.1 * x).collect();
        assert_eq!(lines(&series(&X, &exact)).unwrap().warning, None);
    }

    #[test]
    fn two_points_have_a_line_and_no_error() {
        let both = lines(&series(&[1.0, 3.0], &[2.0, 8.0])).unwrap();
        assert!((both.with_intercept.slope - 3.0).abs() < 1e-14);
        assert!(both.with_intercept.slope_error.is_nan() && both.with_intercept.residual_sd.is_nan());
        assert_eq!(both.warning, None);
    }

    #[test]
    fn weights_act_as_repeats() {
        let weights = [1.0, 2.0, 1.0, 3.0];
        let weighted = with_intercept(&series(&X, &Y).weighted(&weights).unwrap()).unwrap();
        let repeated_x = [0.0, 1.0, 1.0, 2.0, 3.0, 3.0, 3.0];
        let repeated_y = [2.5, 5.5, 5.5, 7.5, 8.5, 8.5, 8.5];
        let repeated = with_intercept(&series(&repeated_x, &repeated_y)).unwrap();
        assert!((weighted.slope - repeated.slope).abs() < 1e-13);
        assert!((weighted.intercept - repeated.intercept).abs() < 1e-13);
        assert!((weighted.r_squared - repeated.r_squared).abs() < 1e-13);
        let doubled = [2.0, 4.0, 2.0, 6.0];
        let same = with_intercept(&series(&X, &Y).weighted(&doubled).unwrap()).unwrap();
        assert!((same.slope_error / weighted.slope_error - 1.0).abs() < 1e-12);
        let origin = through_origin(&series(&X, &Y).weighted(&weights).unwrap()).unwrap();
        let repeated = through_origin(&series(&repeated_x, &repeated_y)).unwrap();
        assert!((origin.slope - repeated.slope).abs() < 1e-13);
    }

    #[test]
    fn polynomials_are_recovered_and_have_tangents() {
        let x = [1.0, 2.0, 3.0, 4.0, 5.0];
        let y = x.map(|x| 2.0 - 3.0 * x + 0.5 * x * x);
        let fit = polynomial(&series(&x, &y), 2).unwrap();
        for (got, expected) in fit.coefficients.iter().zip([2.0, -3.0, 0.5]) {
            assert!((got - expected).abs() < 1e-12);
        }
        assert!((fit.at(6.0) - 2.0).abs() < 1e-11);
        let (slope, error) = fit.slope_at(1.0);
        assert!((slope + 2.0).abs() < 1e-11 && error < 1e-10);
        assert_eq!(fit.degrees_of_freedom, 2);
    }

    #[test]
    fn what_is_not_determined_is_refused() {
        let few = series(&[1.0, 1.0, 2.0, 2.0], &[1.0, 2.0, 3.0, 4.0]);
        assert_eq!(polynomial(&few, 2).unwrap_err().code, Code::Contradiction);
        assert_eq!(polynomial(&few, 4).unwrap_err().code, Code::Missing);
        assert_eq!(polynomial(&few, 13).unwrap_err().parameter, "degree");
        let zero = Series::trusted(VOLUME_AGAINST_TIME, &[0.0, 0.0], &[1.0, 2.0], None);
        assert_eq!(lines(&zero).unwrap_err().code, Code::Contradiction);
        let flat = lines(&series(&X, &[5.0; 4])).unwrap().with_intercept;
        assert!(flat.slope.abs() < 1e-14 && flat.r_squared.is_nan(), "{flat:?}");
    }
}
