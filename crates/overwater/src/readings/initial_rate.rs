//! The initial rate in three ways, side by side: a tangent, the whole curve, the first two readings.
//!
//! Each comes with what it is worth: the conversion reached by the last reading that it uses, and its bias, which is
//! what the same recipe makes of the fitted curve itself instead of the readings. Units are y per x.

use super::curve::{Growth, Known, first_order};
use super::decay::{Decay, exponential};
use super::line::polynomial;
use super::series::{Demands, Series};
use crate::{Code, Error, Result};

/// The readings that the tangent is drawn along: those up to this share of the rise from the first reading to the
/// highest, and at least [`LEAST_IN_WINDOW`].
pub const WINDOW: f64 = 1.0 / 3.0;
/// The least number of readings in the window: one more than the parabola has coefficients.
pub const LEAST_IN_WINDOW: usize = 4;
/// The degree of the local polynomial.
pub const DEGREE: usize = 2;

/// One way to the initial rate.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Estimate {
    /// The rate.
    pub rate: f64,
    /// Its standard error, from the scatter; nothing for two readings, which do not scatter.
    pub standard_error: Option<f64>,
    /// How many readings, from the first, it uses.
    pub readings: usize,
    /// The share of the final value reached by the last of them; nothing where no curve could be fitted.
    pub conversion: Option<f64>,
    /// What the same recipe makes of the fitted curve, divided by the curve's own initial rate: 0.90 reads 10 % low.
    /// Nothing where no curve could be fitted.
    pub bias: Option<f64>,
}

/// A curve through all readings.
pub trait Course {
    /// The curve at a time.
    fn at(&self, time: f64) -> f64;
    /// Its slope at a time, and the standard error of it.
    fn slope_at(&self, time: f64) -> (f64, f64);
    /// Where it goes in the end.
    fn end(&self) -> f64;
}

impl Course for Growth {
    fn at(&self, time: f64) -> f64 {
        Growth::at(self, time)
    }

    fn slope_at(&self, time: f64) -> (f64, f64) {
        let (last, k, passed) = (self.final_value(), self.rate_constant(), time - self.start());
        let left = (-k * passed).exp();
        let factors = [k * left, last * left * (1.0 - k * passed), last * k * k * left];
        (last * k * left, self.fit.covariance.variance_of(&factors).max(0.0).sqrt())
    }

    fn end(&self) -> f64 {
        self.final_value()
    }
}

impl Course for Decay {
    fn at(&self, time: f64) -> f64 {
        Decay::at(self, time)
    }

    fn slope_at(&self, time: f64) -> (f64, f64) {
        let (fall, k) = (self.first_value() - self.final_value(), self.rate_constant());
        let left = (-k * time).exp();
        let factors = [-k * left, k * left, -fall * left * (1.0 - k * time)];
        (-k * fall * left, self.fit.covariance.variance_of(&factors).max(0.0).sqrt())
    }

    fn end(&self) -> f64 {
        self.final_value()
    }
}

/// The three ways.
#[derive(Debug, Clone, PartialEq)]
pub struct InitialRate<C = Growth> {
    /// The slope, at the first reading, of a parabola through the readings of the window.
    pub tangent: Estimate,
    /// k (V∞ - V) at the first reading, from the growth (or decay) of the first order through all readings.
    pub whole_curve: Option<Estimate>,
    /// The slope between the first two readings.
    pub first_two: Estimate,
    /// The curve, where one could be fitted; the refusal where not.
    pub curve: Result<C>,
    /// How many readings, from the first, are in the window.
    pub window: usize,
}

/// Works out all three.
///
/// The rate is that at the first reading, which is taken to be the start. `final_value` may be known or fitted.
///
/// ```
/// use overwater::readings::curve::Known;
/// use overwater::readings::initial_rate::initial_rate;
/// use overwater::readings::series::{Demands, Series, VOLUME_AGAINST_TIME};
/// // V = 60 cm3 (1 - exp(-t/50 s)): 1.2 cm3/s at the start. The first two readings reach 33 % and give 0.82 of it, by
/// // X/(-ln(1 - X)).
/// let time = [0.0, 20.0, 40.0, 60.0, 80.0, 120.0, 160.0, 240.0];
/// let volume = time.map(|t: f64| 60.0 * (1.0 - (-t / 50.0).exp()));
/// let series = Series::new(VOLUME_AGAINST_TIME, &time, &volume, &Demands::collected(4, 0.5))?;
/// let rates = initial_rate(&series, Known::Fitted)?;
/// assert!((rates.whole_curve.unwrap().rate - 1.2).abs() < 1e-9);
/// assert_eq!(format!("{:.2}", rates.first_two.bias.unwrap()), "0.82");
/// # Ok::<(), overwater::Error>(())
/// ```
///
/// # Errors
/// `missing` for fewer than four rows, `contradiction` where they are not in order of x. A curve that cannot be fitted is
/// no error: the other two remain.
pub fn initial_rate(series: &Series<'_>, final_value: Known) -> Result<InitialRate> {
    initial_rate_from(series, final_value, Known::Fitted)
}

/// The same with a start that is known, or fitted as in [`initial_rate`].
///
/// # Errors
/// As for [`initial_rate`].
pub fn initial_rate_from(series: &Series<'_>, final_value: Known, start: Known) -> Result<InitialRate> {
    series.need_order(LEAST_IN_WINDOW)?;
    three_ways(series, first_order(series, final_value, start), 1.0)
}

/// The same for what falls, such as a mass or a concentration; the rates are those of the fall, greater than zero.
///
/// ```
/// use overwater::readings::curve::Known;
/// use overwater::readings::initial_rate::initial_rate_of_fall;
/// use overwater::readings::series::{CONCENTRATION_AGAINST_TIME, Demands, Series};
/// // c = 0.4 mol/dm3 exp(-t/50 s): 8e-3 mol/(dm3 s) at the start.
/// let time = [0.0, 20.0, 40.0, 60.0, 80.0, 120.0, 160.0, 240.0];
/// let concentration = time.map(|t: f64| 0.4 * (-t / 50.0).exp());
/// let series = Series::new(CONCENTRATION_AGAINST_TIME, &time, &concentration, &Demands::rows(4))?;
/// let rates = initial_rate_of_fall(&series, Known::Value(0.0))?;
/// assert!((rates.whole_curve.unwrap().rate - 8e-3).abs() < 1e-12);
/// assert_eq!(format!("{:.2}", rates.first_two.bias.unwrap()), "0.82");
/// # Ok::<(), overwater::Error>(())
/// ```
///
/// # Errors
/// As for [`initial_rate`].
pub fn initial_rate_of_fall(series: &Series<'_>, final_value: Known) -> Result<InitialRate<Decay>> {
    series.need_order(LEAST_IN_WINDOW)?;
    three_ways(series, exponential(series, final_value), -1.0)
}

/// `way` is 1 for what rises and -1 for what falls.
fn three_ways<C: Course>(series: &Series<'_>, curve: Result<C>, way: f64) -> Result<InitialRate<C>> {
    let course = curve.as_ref().ok();
    let window = window(series, way)?;
    let drawn = polynomial(&window, DEGREE)?;
    let start = series.x().first().copied().unwrap_or(f64::NAN);
    let (slope, error) = drawn.slope_at(start);
    let tangent = Estimate {
        rate: way * slope,
        standard_error: Some(error),
        ..worth(series, course, window.len(), |ideal| {
            let ideal =
                Series::trusted(series.names(), window.x(), ideal.get(..window.len())?, window.weights());
            polynomial(&ideal, DEGREE).ok().map(|drawn| drawn.slope_at(start).0)
        })
    };
    let between = |x: &[f64], y: &[f64]| match (x, y) {
        ([a, b, ..], [c, d, ..]) => Some((d - c) / (b - a)),
        _ => None,
    };
    let first_two = Estimate {
        rate: between(series.x(), series.y()).map_or(f64::NAN, |slope| way * slope),
        standard_error: None,
        ..worth(series, course, 2, |ideal| between(series.x(), ideal))
    };
    let whole_curve = course.map(|course| {
        let (slope, standard_error) = course.slope_at(start);
        Estimate {
            rate: way * slope,
            standard_error: Some(standard_error),
            bias: Some(1.0),
            ..worth(series, Some(course), series.len(), |_| None)
        }
    });
    Ok(InitialRate { tangent, whole_curve, first_two, curve, window: window.len() })
}

/// The first readings of a series.
fn window<'a>(series: &Series<'a>, way: f64) -> Result<Series<'a>> {
    let first = series.y().first().copied().unwrap_or(f64::NAN);
    let gone = |y: &f64| way * (y - first);
    let farthest = series.y().iter().map(gone).fold(0.0, f64::max);
    let inside = series.y().iter().take_while(|y| gone(y) <= WINDOW * farthest).count();
    let count = inside.max(LEAST_IN_WINDOW).min(series.len());
    let (Some(x), Some(y)) = (series.x().get(..count), series.y().get(..count)) else {
        return Err(Error::new(Code::Missing, "rows"));
    };
    let chosen = Series::new(series.names(), x, y, &Demands::rows(LEAST_IN_WINDOW))?;
    match series.weights().and_then(|weights| weights.get(..count)) {
        Some(weights) => chosen.weighted(weights),
        None => Ok(chosen),
    }
}

/// Conversion and bias of a recipe that uses the first readings.
fn worth<C: Course>(
    series: &Series<'_>,
    course: Option<&C>,
    readings: usize,
    recipe: impl Fn(&[f64]) -> Option<f64>,
) -> Estimate {
    let last = series.x().get(readings.saturating_sub(1)).copied();
    let start = series.x().first().copied().unwrap_or(f64::NAN);
    let bias = course.and_then(|course| {
        let ideal: Vec<f64> = series.x().iter().map(|x| course.at(*x)).collect();
        Some(recipe(&ideal)? / course.slope_at(start).0)
    });
    let conversion = course.zip(last).map(|(course, last)| {
        // Of what was still to come at the first reading.
        (course.at(last) - course.at(start)) / (course.end() - course.at(start))
    });
    Estimate { rate: f64::NAN, standard_error: None, readings, conversion, bias }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::readings::rate_law::average_over_initial;
    use crate::readings::series::VOLUME_AGAINST_TIME;

    fn growth(time: &[f64], k: f64) -> Vec<f64> {
        time.iter().map(|t| 50.0 * (1.0 - (-k * t).exp())).collect()
    }

    /// Average for initial reads 0.95, 0.90 and 0.72 at 10, 20 and 50 % conversion.
    #[test]
    fn two_readings_are_low_by_what_the_law_says() {
        for (conversion, printed) in [(0.1, "0.95"), (0.2, "0.90"), (0.5, "0.72")] {
            let k = 0.01;
            let step = -f64::ln(1.0 - conversion) / k;
            let time: Vec<f64> = (0..8).map(|row| f64::from(row) * step).collect();
            let volume = growth(&time, k);
            let series = Series::new(VOLUME_AGAINST_TIME, &time, &volume, &Demands::rows(4)).unwrap();
            let rates = initial_rate(&series, Known::Fitted).unwrap();
            let (two, whole) = (rates.first_two, rates.whole_curve.unwrap());
            assert_eq!(format!("{:.2}", two.bias.unwrap()), printed);
            assert!((two.bias.unwrap() - average_over_initial(conversion)).abs() < 1e-8);
            assert!((two.conversion.unwrap() - conversion).abs() < 1e-8);
            assert!((two.rate / whole.rate - two.bias.unwrap()).abs() < 1e-8);
            assert!((whole.rate - 0.5).abs() < 1e-8);
            assert_eq!((two.readings, whole.readings, two.standard_error), (2, 8, None));
            // The parabola bends with the curve and is nearer.
            let tangent = rates.tangent;
            assert!((tangent.bias.unwrap() - 1.0).abs() < (two.bias.unwrap() - 1.0).abs());
            assert!((tangent.rate / 0.5 - tangent.bias.unwrap()).abs() < 1e-8);
        }
    }

    #[test]
    fn the_window_ends_at_a_third_of_the_rise() {
        let time: Vec<f64> = (0..41).map(f64::from).collect();
        let volume: Vec<f64> = time.iter().map(|t| 3.0 + t).collect();
        let series = Series::new(VOLUME_AGAINST_TIME, &time, &volume, &Demands::rows(4)).unwrap();
        let rates = initial_rate(&series, Known::Fitted).unwrap();
        // The rise is 40, so that readings up to 13.33 are inside: 14 of them.
        assert_eq!(rates.tangent.readings, 14);
        assert!((rates.tangent.rate - 1.0).abs() < 1e-12);
        assert!(rates.curve.is_err() && rates.whole_curve.is_none() && rates.tangent.bias.is_none());
        assert!((rates.first_two.rate - 1.0).abs() < 1e-15);
    }

    /// What falls is what rises, upside down, where first value and end are both fitted.
    #[test]
    fn a_fall_is_a_rise_upside_down() {
        let time: Vec<f64> = (0..20).map(|row| f64::from(row) * 12.0).collect();
        let scatter = [0.3, -0.2, 0.1, -0.4, 0.2];
        let up: Vec<f64> =
            growth(&time, 0.012).iter().zip(scatter.iter().cycle()).map(|(v, e)| v + e).collect();
        let down: Vec<f64> = up.iter().map(|v| 183.0 - v).collect();
        let rising = Series::new(VOLUME_AGAINST_TIME, &time, &up, &Demands::rows(4)).unwrap();
        let falling = Series::new(VOLUME_AGAINST_TIME, &time, &down, &Demands::rows(4)).unwrap();
        let rising = initial_rate(&rising, Known::Fitted).unwrap();
        let falling = initial_rate_of_fall(&falling, Known::Fitted).unwrap();
        let of =
            |e: Estimate| [e.rate, e.standard_error.unwrap_or(1.0), e.conversion.unwrap(), e.bias.unwrap()];
        for (up, down) in [
            (rising.tangent, falling.tangent),
            (rising.whole_curve.unwrap(), falling.whole_curve.unwrap()),
            (rising.first_two, falling.first_two),
        ] {
            assert_eq!(up.readings, down.readings);
            for (up, down) in of(up).into_iter().zip(of(down)) {
                assert!((up / down - 1.0).abs() < 1e-7 && up > 0.0, "{up} {down}");
            }
        }
        assert_eq!(rising.window, falling.window);
        assert_eq!(rising.window, rising.tangent.readings);
    }

    #[test]
    fn rows_out_of_order_are_refused() {
        let series =
            Series::new(VOLUME_AGAINST_TIME, &[0.0, 2.0, 1.0, 3.0], &[0.0, 2.0, 1.0, 3.0], &Demands::rows(4));
        let error = initial_rate(&series.unwrap(), Known::Fitted).unwrap_err();
        assert_eq!(error.parameter, "rows[2].time_s");
    }
}
