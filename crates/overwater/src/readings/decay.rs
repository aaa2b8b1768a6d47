//! What falls by the same share in equal times: exponential decay of a mass or a concentration.
//!
//! m(t) = m_end + (m_start - m_end) exp(-k t). For a flask on a balance m_end is what is left when all gas has gone; for
//! a concentration it is usually known to be 0. Units are those of the columns.

use super::curve::{Exponential, Known, not_bending};
use super::model::{Fit, Model, Parameter, fit};
use super::series::Series;
use crate::Result;
use crate::scalar::Scalar;

/// The model: value at time 0, value in the end, rate constant.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Exponentially;

impl Model<3> for Exponentially {
    const NAMES: [&'static str; 3] = ["first_value", "final_value", "rate_constant"];

    #[inline(always)]
    fn value<S: Scalar>(&self, time: S, [first, last, rate_constant]: [S; 3]) -> S {
        last + (first - last) * (-(rate_constant * time)).exp()
    }
}

/// An exponential decay.
#[derive(Debug, Clone, PartialEq)]
pub struct Decay {
    /// First value, final value and rate constant, with their errors.
    pub fit: Fit<3>,
}

impl Decay {
    /// The value at time 0.
    #[must_use]
    pub fn first_value(&self) -> f64 {
        self.fit.parameters[0]
    }

    /// The value in the end.
    #[must_use]
    pub fn final_value(&self) -> f64 {
        self.fit.parameters[1]
    }

    /// The rate constant.
    #[must_use]
    pub fn rate_constant(&self) -> f64 {
        self.fit.parameters[2]
    }

    /// The curve at a time.
    #[must_use]
    pub fn at(&self, time: f64) -> f64 {
        Exponentially.value(time, self.fit.parameters)
    }

    /// The rate of loss at time 0, k (m_start - m_end), and its standard error.
    #[must_use]
    pub fn initial_rate(&self) -> (f64, f64) {
        let [first, last, rate_constant] = self.fit.parameters;
        let variance = self.fit.covariance.variance_of(&[rate_constant, -rate_constant, first - last]);
        (rate_constant * (first - last), variance.max(0.0).sqrt())
    }

    /// The half-life, ln 2/k, and its standard error.
    #[must_use]
    pub fn half_life(&self) -> (f64, f64) {
        let half_life = super::rate_law::half_life(self.rate_constant());
        (half_life, half_life * self.fit.standard_errors[2] / self.rate_constant())
    }
}

/// Fits an exponential decay.
///
/// ```
/// use overwater::readings::curve::Known;
/// use overwater::readings::decay::exponential;
/// use overwater::readings::series::{Demands, Names, Series};
/// // OpenStax, Chemistry 2e, section 12.4: peroxide at 40 degC, read every 6 hours; k = 0.116 per hour.
/// let names = Names { x: "time_h", y: "concentration_mol_per_dm3" };
/// let hours = [0.0, 6.0, 12.0, 18.0, 24.0];
/// let series = Series::new(names, &hours, &[1.0, 0.5, 0.25, 0.125, 0.0625], &Demands::rows(3))?;
/// let decay = exponential(&series, Known::Value(0.0))?;
/// assert_eq!(format!("{:.3}", decay.rate_constant()), "0.116");
/// # Ok::<(), overwater::Error>(())
/// ```
///
/// # Errors
/// Those of [`fit`]; `cannot_be_met` where the best rate constant is not greater than zero.
pub fn exponential(series: &Series<'_>, final_value: Known) -> Result<Decay> {
    let fixed = match final_value {
        Known::Fitted => None,
        Known::Value(value) => Some(value),
    };
    let Exponential { end, lead, rate_constant } = Exponential::of(series, fixed);
    let guesses = [Parameter::Free(end + lead), final_value.parameter(end), Parameter::Free(rate_constant)];
    let fit = fit(&Exponentially, series, guesses)?;
    if fit.parameters[2] > 0.0 { Ok(Decay { fit }) } else { Err(not_bending(series, fit.parameters[2])) }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::readings::series::{Demands, MASS_AGAINST_TIME};

    #[test]
    fn exact_readings_give_back_what_they_were_made_from() {
        let x: Vec<f64> = (0..16).map(|row| f64::from(row) * 15.0).collect();
        let y: Vec<f64> = x.iter().map(|t| 183.2 + 1.7 * (-0.011 * t).exp()).collect();
        let series = Series::new(MASS_AGAINST_TIME, &x, &y, &Demands::rows(3)).unwrap();
        for end in [Known::Fitted, Known::Value(183.2)] {
            let decay = exponential(&series, end).unwrap();
            for (got, expected) in [
                (decay.first_value(), 184.9),
                (decay.final_value(), 183.2),
                (decay.rate_constant(), 0.011),
                (decay.initial_rate().0, 0.0187),
                (decay.half_life().0, 63.013_380_050_9),
                (decay.at(1e4), 183.2),
            ] {
                assert!((got / expected - 1.0).abs() < 1e-9, "{got} {expected}");
            }
        }
    }

    #[test]
    fn a_rising_column_is_no_decay_towards_zero() {
        let x = [0.0, 1.0, 2.0, 3.0];
        let y = [1.0, 2.0, 4.0, 8.0];
        let series = Series::new(MASS_AGAINST_TIME, &x, &y, &Demands::rows(3)).unwrap();
        assert_eq!(exponential(&series, Known::Value(0.0)).unwrap_err().parameter, "rate_constant");
    }
}
