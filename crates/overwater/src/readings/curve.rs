//! Gas that comes ever more slowly: growth of the first order towards a final volume.
//!
//! V(t) = V∞ (1 - exp(-k (t - t₀))), with the final volume V∞ and the start t₀ each fitted or known. The rate law of
//! the first order, integrated, with the volume of gas in proportion to what has reacted. Units are those of the
//! columns; k has the reciprocal unit of the time.

use super::model::{Fit, Model, Parameter, fit};
use super::series::Series;
use crate::scalar::Scalar;
use crate::{Code, Error, Result};

/// The model: final value, rate constant, start.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct FirstOrder;

impl Model<3> for FirstOrder {
    const NAMES: [&'static str; 3] = ["final_value", "rate_constant", "start"];

    #[inline(always)]
    fn value<S: Scalar>(&self, time: S, [last, rate_constant, start]: [S; 3]) -> S {
        last - last * (-(rate_constant * (time - start))).exp()
    }
}

/// Whether a number is fitted, or known beforehand.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Known {
    /// It is fitted; where to start is taken from the readings.
    Fitted,
    /// It is this.
    Value(f64),
}

impl Known {
    pub(super) fn parameter(self, start: f64) -> Parameter {
        match self {
            Known::Fitted => Parameter::Free(start),
            Known::Value(value) => Parameter::Fixed(value),
        }
    }
}

/// A growth of the first order.
#[derive(Debug, Clone, PartialEq)]
pub struct Growth {
    /// Final value, rate constant and start, with their errors.
    pub fit: Fit<3>,
}

impl Growth {
    /// The final value, V∞.
    #[must_use]
    pub fn final_value(&self) -> f64 {
        self.fit.parameters[0]
    }

    /// The rate constant, k.
    #[must_use]
    pub fn rate_constant(&self) -> f64 {
        self.fit.parameters[1]
    }

    /// When it began, t₀.
    #[must_use]
    pub fn start(&self) -> f64 {
        self.fit.parameters[2]
    }

    /// The curve at a time.
    #[must_use]
    pub fn at(&self, time: f64) -> f64 {
        FirstOrder.value(time, self.fit.parameters)
    }

    /// The rate at the start, k V∞, and its standard error, with the correlation of the two.
    #[must_use]
    pub fn initial_rate(&self) -> (f64, f64) {
        let [last, rate_constant, _] = self.fit.parameters;
        let variance = self.fit.covariance.variance_of(&[rate_constant, last, 0.0]);
        (rate_constant * last, variance.max(0.0).sqrt())
    }

    /// The half-life, ln 2/k, and its standard error.
    #[must_use]
    pub fn half_life(&self) -> (f64, f64) {
        let half_life = super::rate_law::half_life(self.rate_constant());
        (half_life, half_life * self.fit.standard_errors[1] / self.rate_constant())
    }

    /// The share of the final value that is reached at a time.
    #[must_use]
    pub fn conversion(&self, time: f64) -> f64 {
        self.at(time) / self.final_value()
    }
}

/// Fits a growth of the first order.
///
/// ```
/// use overwater::readings::curve::{Known, first_order};
/// use overwater::readings::series::{Demands, Names, Series};
/// // NIST Statistical Reference Datasets, nonlinear regression, BoxBOD: certified b1 = 2.1380940889E+02 with standard
/// // deviation 1.2354515176E+01, b2 = 5.4723748542E-01 with 1.0455993237E-01.
/// let names = Names { x: "time_d", y: "oxygen_mg_per_l" };
/// let time = [1.0, 2.0, 3.0, 5.0, 7.0, 10.0];
/// let series = Series::new(names, &time, &[109.0, 149.0, 149.0, 191.0, 213.0, 224.0], &Demands::rows(3))?;
/// let growth = first_order(&series, Known::Fitted, Known::Value(0.0))?;
/// assert!((growth.final_value() / 2.1380940889e2 - 1.0).abs() < 1e-10);
/// assert!((growth.rate_constant() / 5.4723748542e-1 - 1.0).abs() < 1e-10);
/// assert!((growth.fit.standard_errors[1] / 1.0455993237e-1 - 1.0).abs() < 1e-9);
/// # Ok::<(), overwater::Error>(())
/// ```
///
/// # Errors
/// Those of [`fit`]; `cannot_be_met` where the best rate constant is not greater than zero: the readings do not bend
/// towards a final value.
pub fn first_order(series: &Series<'_>, final_value: Known, start: Known) -> Result<Growth> {
    let fixed = match final_value {
        Known::Fitted => None,
        Known::Value(value) => Some(value),
    };
    let Exponential { end, lead, rate_constant } = Exponential::of(series, fixed);
    let first = series.x().iter().fold(f64::INFINITY, |least, x| least.min(*x));
    let began = (-lead / end).ln() / rate_constant;
    let began = if began.is_finite() { began } else { first };
    let guesses = [final_value.parameter(end), Parameter::Free(rate_constant), start.parameter(began)];
    let fit = fit(&FirstOrder, series, guesses)?;
    if fit.parameters[1] > 0.0 { Ok(Growth { fit }) } else { Err(not_bending(series, fit.parameters[1])) }
}

pub(super) fn not_bending(series: &Series<'_>, rate_constant: f64) -> Error {
    Error::new(Code::CannotBeMet, "rate_constant")
        .value(rate_constant.to_string())
        .allowed("greater than 0")
        .advice(format!(
            "{} does not level off: fix the final value, take readings for longer, or fit a straight line",
            series.names().y
        ))
}

/// y = end + lead exp(-rate_constant x): where a fit starts from.
pub(super) struct Exponential {
    pub(super) end: f64,
    pub(super) lead: f64,
    pub(super) rate_constant: f64,
}

/// Sums about the means.
struct Sums {
    xx: f64,
    xy: f64,
    x: f64,
    y: f64,
}

impl Sums {
    fn of(pairs: impl Iterator<Item = (f64, f64)> + Clone) -> Sums {
        let (mut count, mut x, mut y) = (0.0, 0.0, 0.0);
        for (a, b) in pairs.clone() {
            count += 1.0;
            x += a;
            y += b;
        }
        let (x, y) = (x / count, y / count);
        let (mut xx, mut xy) = (0.0, 0.0);
        for (a, b) in pairs {
            xx += (a - x) * (a - x);
            xy += (a - x) * (b - y);
        }
        Sums { xx, xy, x, y }
    }

    fn slope(&self) -> f64 {
        self.xy / self.xx
    }
}

impl Exponential {
    /// Since dy/dx = k (end - y), y is a linear function of x and of the area under the curve so far, whose
    /// coefficients hold k and the end; the area by trapezia. No start for the fit could be had from readings alone
    /// with less.
    pub(super) fn of(series: &Series<'_>, end: Option<f64>) -> Exponential {
        let mut rows: Vec<(f64, f64)> = series.rows().collect();
        if !rows.is_sorted_by(|a, b| a.0 <= b.0) {
            rows.sort_by(|a, b| a.0.total_cmp(&b.0));
        }
        let (Some(first), Some(last)) = (rows.first().copied(), rows.last().copied()) else {
            return Exponential { end: 1.0, lead: -1.0, rate_constant: 1.0 };
        };
        let mut area = 0.0;
        let mut before = first;
        let areas: Vec<f64> = rows
            .iter()
            .map(|&(x, y)| {
                area += 0.5 * (x - before.0) * (y + before.1);
                before = (x, y);
                area
            })
            .collect();
        let x = || rows.iter().map(|row| row.0);
        let y = || rows.iter().map(|row| row.1);
        let rate_constant = match end {
            Some(end) => {
                let missing = x().zip(&areas).map(|(x, area)| end * (x - first.0) - area);
                Sums::of(missing.zip(y())).slope()
            }
            None => {
                // y on x and area: the normal equations about the means, for the coefficient of the area.
                let on_area = Sums::of(areas.iter().copied().zip(y()));
                let on_x = Sums::of(x().zip(y()));
                let cross = Sums::of(x().zip(areas.iter().copied())).xy;
                -(on_x.xx * on_area.xy - cross * on_x.xy) / (on_x.xx * on_area.xx - cross * cross)
            }
        };
        let length = last.0 - first.0;
        let sensible = rate_constant.is_finite() && rate_constant * length > 1e-3;
        let rate_constant = if sensible { rate_constant } else { 1.0 / length };
        let fallen = || x().map(|x| (-(rate_constant * (x - first.0))).exp());
        let (end, lead) = match end {
            Some(end) => {
                let square: f64 = fallen().map(|e| e * e).sum();
                (end, fallen().zip(y()).map(|(e, y)| e * (y - end)).sum::<f64>() / square)
            }
            None => {
                let sums = Sums::of(fallen().zip(y()));
                let lead = sums.slope();
                (sums.y - lead * sums.x, lead)
            }
        };
        Exponential { end, lead: lead * (rate_constant * first.0).exp(), rate_constant }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::readings::series::{Demands, VOLUME_AGAINST_TIME};
    use proptest::prelude::*;

    fn times(count: usize, step: f64) -> Vec<f64> {
        (0..count).map(|row| row as f64 * step).collect()
    }

    proptest! {
        #[test]
        fn exact_readings_give_back_what_they_were_made_from(
            last in 5.0..200.0_f64, k in 0.005..0.08_f64, start in -5.0..5.0_f64
        ) {
            let x = times(31, 4.0);
            let y: Vec<f64> = x.iter().map(|t| FirstOrder.value(*t, [last, k, start])).collect();
            let series = Series::new(VOLUME_AGAINST_TIME, &x, &y, &Demands::rows(3)).unwrap();
            for (end, begin) in [
                (Known::Fitted, Known::Fitted),
                (Known::Value(last), Known::Fitted),
                (Known::Fitted, Known::Value(start)),
                (Known::Value(last), Known::Value(start)),
            ] {
                let growth = first_order(&series, end, begin).unwrap();
                prop_assert!((growth.final_value() / last - 1.0).abs() < 1e-9, "{growth:?}");
                prop_assert!((growth.rate_constant() / k - 1.0).abs() < 1e-9, "{growth:?}");
                prop_assert!((growth.start() - start).abs() < 1e-8, "{growth:?}");
                let (rate, _) = growth.initial_rate();
                prop_assert!((rate / (k * last) - 1.0).abs() < 1e-9);
            }
        }
    }

    #[test]
    fn what_is_read_from_the_curve() {
        let x = times(21, 10.0);
        let noise = [0.3, -0.2, 0.1, -0.4, 0.2, 0.0, 0.3, -0.1, -0.2];
        let y: Vec<f64> = x
            .iter()
            .zip(noise.iter().cycle())
            .map(|(t, e)| FirstOrder.value(*t, [80.0, 0.02, 3.0]) + e)
            .collect();
        let series = Series::new(VOLUME_AGAINST_TIME, &x, &y, &Demands::rows(3)).unwrap();
        let growth = first_order(&series, Known::Fitted, Known::Fitted).unwrap();
        let (half_life, error) = growth.half_life();
        assert!((half_life * growth.rate_constant() - std::f64::consts::LN_2).abs() < 1e-15);
        assert!((error / half_life - growth.fit.standard_errors[1] / growth.rate_constant()).abs() < 1e-15);
        assert!((growth.conversion(growth.start() + half_life) - 0.5).abs() < 1e-14);
        // The two are strongly correlated: the error of the product is far less than with independent ones.
        let (rate, error) = growth.initial_rate();
        let [last, k, _] = growth.fit.standard_errors;
        let apart =
            rate * ((last / growth.final_value()).powi(2) + (k / growth.rate_constant()).powi(2)).sqrt();
        assert!(growth.fit.covariance.correlation(0, 1) < -0.5);
        assert!(error < apart, "{error} {apart}");
    }

    #[test]
    fn a_straight_line_has_no_final_value() {
        let x = times(9, 10.0);
        let bent: Vec<f64> = x.iter().map(|t| t * t).collect();
        let series = Series::new(VOLUME_AGAINST_TIME, &x, &bent, &Demands::rows(3)).unwrap();
        let error = first_order(&series, Known::Fitted, Known::Value(0.0)).unwrap_err();
        assert!(matches!(error.code, Code::CannotBeMet | Code::Contradiction), "{error}");
        let straight: Vec<f64> = x.iter().map(|t| 2.0 * t).collect();
        let series = Series::new(VOLUME_AGAINST_TIME, &x, &straight, &Demands::rows(3)).unwrap();
        assert!(first_order(&series, Known::Fitted, Known::Value(0.0)).is_err());
    }
}
