//! Rate of an enzyme against the concentration of its substrate.
//!
//! v = v_max s/(K_m + s) (Michaelis and Menten), fitted to the rates as they are. The straight line of 1/v against 1/s
//! (Lineweaver and Burk) is worked out beside it only to be compared: it gives the smallest, least certain rates the
//! most to say.

use super::line::{Line, with_intercept};
use super::model::{Fit, Model, Parameter, fit};
use super::series::Series;
use crate::scalar::Scalar;
use crate::{Code, Error, Result};

/// The model: greatest rate, concentration at half of it.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct MichaelisMenten;

impl Model<2> for MichaelisMenten {
    const NAMES: [&'static str; 2] = ["greatest_rate", "half_rate_concentration"];

    #[inline(always)]
    fn value<S: Scalar>(&self, concentration: S, [greatest, half]: [S; 2]) -> S {
        greatest * concentration / (half + concentration)
    }
}

/// What the double reciprocals give.
#[derive(Debug, Clone, PartialEq)]
pub struct DoubleReciprocal {
    /// The line of 1/v against 1/s.
    pub line: Line,
    /// 1/intercept.
    pub greatest_rate: f64,
    /// slope/intercept.
    pub half_rate_concentration: f64,
}

/// Both ways.
#[derive(Debug, Clone, PartialEq)]
pub struct Saturation {
    /// The fit to the rates: greatest rate and concentration at half of it.
    pub fit: Fit<2>,
    /// For comparison only.
    pub double_reciprocal: DoubleReciprocal,
}

impl Saturation {
    /// v_max.
    #[must_use]
    pub fn greatest_rate(&self) -> f64 {
        self.fit.parameters[0]
    }

    /// K_m.
    #[must_use]
    pub fn half_rate_concentration(&self) -> f64 {
        self.fit.parameters[1]
    }
}

/// Fits the rates (y) against the concentrations (x).
///
/// ```
/// use overwater::readings::michaelis_menten::saturation;
/// use overwater::readings::series::{Demands, Names, Series};
/// // By hand: v_max 8, K_m 3.
/// let names = Names { x: "concentration_mmol_per_dm3", y: "rate_cm3_per_min" };
/// let series = Series::new(names, &[1.0, 3.0, 5.0, 9.0], &[2.0, 4.0, 5.0, 6.0], &Demands::rows(3))?;
/// let found = saturation(&series)?;
/// assert!((found.greatest_rate() - 8.0).abs() < 1e-12);
/// assert!((found.half_rate_concentration() - 3.0).abs() < 1e-12);
/// # Ok::<(), overwater::Error>(())
/// ```
///
/// # Errors
/// `out_of_range` for a concentration or a rate that is not greater than zero, with its row (leave out the row 0, 0:
/// the curve passes through it anyway); those of [`fit`]; `cannot_be_met` where the rates do not level off.
pub fn saturation(series: &Series<'_>) -> Result<Saturation> {
    series.need_positive(3)?;
    let x: Vec<f64> = series.x().iter().map(|s| 1.0 / s).collect();
    let y: Vec<f64> = series.y().iter().map(|v| 1.0 / v).collect();
    let line = with_intercept(&Series::trusted(series.names(), &x, &y, series.weights()))?;
    // s/v against s: what is least certain weighs least, which makes the better start.
    let ratio: Vec<f64> = series.rows().map(|(s, v)| s / v).collect();
    let start = with_intercept(&Series::trusted(series.names(), series.x(), &ratio, None))?;
    let guess = [1.0 / start.slope, start.intercept / start.slope];
    let fit = fit(&MichaelisMenten, series, guess.map(Parameter::Free))?;
    if let Some(value) = fit.parameters.iter().find(|value| **value <= 0.0) {
        return Err(Error::new(Code::CannotBeMet, "greatest_rate")
            .value(value.to_string())
            .allowed("greater than 0")
            .advice("the rates do not level off: measure at higher concentrations"));
    }
    let double_reciprocal = DoubleReciprocal {
        greatest_rate: 1.0 / line.intercept,
        half_rate_concentration: line.slope / line.intercept,
        line,
    };
    Ok(Saturation { fit, double_reciprocal })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::readings::series::{Demands, Names};

    const NAMES: Names = Names { x: "concentration_mmol_per_dm3", y: "rate_cm3_per_min" };

    #[test]
    fn exact_rates_agree_both_ways_and_scatter_sets_them_apart() {
        let s = [0.5, 1.0, 2.0, 4.0, 8.0, 16.0];
        let v = s.map(|s| 12.0 * s / (2.5 + s));
        let series = Series::new(NAMES, &s, &v, &Demands::rows(3)).unwrap();
        let exact = saturation(&series).unwrap();
        assert!((exact.greatest_rate() - 12.0).abs() < 1e-11);
        assert!((exact.double_reciprocal.greatest_rate - 12.0).abs() < 1e-9);
        assert!((exact.double_reciprocal.half_rate_concentration - 2.5).abs() < 1e-9);
        // The smallest rate misread by a fifth moves the double reciprocal far more.
        let mut misread = v;
        misread[0] *= 0.8;
        let series = Series::new(NAMES, &s, &misread, &Demands::rows(3)).unwrap();
        let both = saturation(&series).unwrap();
        assert!((both.greatest_rate() - 12.0).abs() < 0.4, "{both:?}");
        assert!((both.double_reciprocal.greatest_rate - 12.0).abs() > 2.0, "{both:?}");
    }

    #[test]
    fn rates_that_do_not_level_off_are_refused() {
        let s = [1.0, 2.0, 3.0, 4.0];
        let series = Series::new(NAMES, &s, &[1.0, 2.2, 3.6, 5.3], &Demands::rows(3)).unwrap();
        assert!(saturation(&series).is_err());
        let zero = Series::new(NAMES, &[0.0, 1.0, 2.0], &[0.0, 1.0, 1.5], &Demands::rows(3)).unwrap();
        assert_eq!(saturation(&zero).unwrap_err().parameter, "rows[0].concentration_mmol_per_dm3");
    }
}
