//! The order of a reaction: from initial rates at several concentrations, or from one curve.

use super::line::{Line, with_intercept};
use super::model::{Fit, Model, Parameter, fit};
use super::series::Series;
use crate::Result;
use crate::scalar::Scalar;

/// An order from initial rates.
#[derive(Debug, Clone, PartialEq)]
pub struct OrderFromRates {
    /// The order: the slope of ln rate against ln concentration.
    pub order: f64,
    /// Its standard error; NaN for two rates.
    pub standard_error: f64,
    /// The rate constant, in the units of the columns: rate = k c^order.
    pub rate_constant: f64,
    /// The line through the logarithms.
    pub line: Line,
}

/// The order from the initial rates (y) at several concentrations (x): a straight line through the logarithms, every
/// one with the same weight, which is right when the rates are uncertain by the same share.
///
/// ```
/// use overwater::readings::order::from_rates;
/// use overwater::readings::series::{Demands, Names, Series};
/// // By hand: twice the concentration, four times the rate.
/// let names = Names { x: "concentration_mol_per_dm3", y: "rate_mol_per_dm3_s" };
/// let series = Series::new(names, &[0.1, 0.2, 0.4], &[0.003, 0.012, 0.048], &Demands::rows(2))?;
/// let order = from_rates(&series)?;
/// assert!((order.order - 2.0).abs() < 1e-12 && (order.rate_constant - 0.3).abs() < 1e-12);
/// # Ok::<(), overwater::Error>(())
/// ```
///
/// # Errors
/// `out_of_range` for a concentration or a rate that is not greater than zero, with its row; `missing` for fewer than
/// two rows; `contradiction` where all concentrations are the same.
pub fn from_rates(series: &Series<'_>) -> Result<OrderFromRates> {
    series.need_positive(2)?;
    let x: Vec<f64> = series.x().iter().map(|x| x.ln()).collect();
    let y: Vec<f64> = series.y().iter().map(|y| y.ln()).collect();
    let line = with_intercept(&Series::trusted(series.names(), &x, &y, series.weights()))?;
    Ok(OrderFromRates {
        order: line.slope,
        standard_error: line.slope_error,
        rate_constant: line.intercept.exp(),
        line,
    })
}

/// c(t) = c₀ (1 + (n - 1) k t)^(-1/(n - 1)): the rate law of order n, integrated, with k the share that disappears in
/// unit time at the start. It passes smoothly through the first order, where it is c₀ exp(-k t).
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct AnyOrder;

impl Model<3> for AnyOrder {
    const NAMES: [&'static str; 3] = ["first_value", "initial_share", "order"];

    #[inline(always)]
    fn value<S: Scalar>(&self, time: S, [first, share, order]: [S; 3]) -> S {
        let passed = share * time;
        let z = (order - 1.0) * passed;
        first * (-(passed * log_share(z))).exp()
    }
}

/// ln(1 + z)/z, without loss at z = 0: with w = 1 + z and y = w^(1/8) - 1 = z/((√w + 1)(w^¼ + 1)(w^⅛ + 1)), ln(1 + z) is
/// 8 ln(1 + y), and that is 16 s (1 + s²/3 + s⁴/5 + ...) with s = y/(2 + y). Twelve terms leave 1e-15 for w from 0.01 to
/// 100.
#[inline(always)]
fn log_share<S: Scalar>(z: S) -> S {
    let root = (z + 1.0).sqrt();
    let fourth = root.sqrt();
    let eighth = fourth.sqrt();
    let below = (root + 1.0) * (fourth + 1.0) * (eighth + 1.0);
    let s = (eighth - 1.0) / (eighth + 1.0);
    let square = s * s;
    let mut sum = S::number(1.0 / 23.0);
    for odd in [21.0, 19.0, 17.0, 15.0, 13.0, 11.0, 9.0, 7.0, 5.0, 3.0, 1.0] {
        sum = sum * square + 1.0 / odd;
    }
    sum * 16.0 / ((eighth + 1.0) * below)
}

/// One of the usual straight lines, with how well it tells of the readings themselves.
#[derive(Debug, Clone, PartialEq)]
pub struct Straightened {
    /// The order that the line is straight for: 0 for c, 1 for ln c, 2 for 1/c, each against t.
    pub order: u8,
    /// The line through the straightened values.
    pub line: Line,
    /// The rate constant that its slope gives.
    pub rate_constant: f64,
    /// The root mean square distance of the readings from the line bent back, in units of the readings: the only figure
    /// by which the three may be compared. NaN where the line bent back leaves what is possible.
    pub misses_by: f64,
}

/// An order from one curve.
#[derive(Debug, Clone, PartialEq)]
pub struct OrderFromCurve {
    /// The straight lines for the orders 0, 1 and 2.
    pub straightened: [Straightened; 3],
    /// The curves of the orders 0, 1 and 2 fitted to the readings as they are: same readings, same number of fitted
    /// numbers, so that their sums of squares compare fairly. The refusal where one cannot be fitted.
    pub curves: [Result<Fit<3>>; 3],
    /// The curve with the order fitted too.
    pub fitted: Result<Fit<3>>,
}

impl OrderFromCurve {
    /// Which of 0, 1 and 2 leaves the smallest sum of squares; nothing where none could be fitted.
    #[must_use]
    pub fn best(&self) -> Option<u8> {
        let sums = self
            .curves
            .iter()
            .zip(0_u8..)
            .filter_map(|(fit, order)| fit.as_ref().ok().map(|fit| (fit.sum_of_squares, order)));
        sums.min_by(|a, b| a.0.total_cmp(&b.0)).map(|(_, order)| order)
    }

    /// The fitted order and its standard error.
    #[must_use]
    pub fn order(&self) -> Option<(f64, f64)> {
        let fit = self.fitted.as_ref().ok()?;
        Some((fit.parameters[2], fit.standard_errors[2]))
    }
}

/// The order from concentration (or what is left of any measure of it) against time.
///
/// The usual way, to straighten the curve for each order and take the line with the best R², compares three R² of three
/// different quantities; taking logarithms or reciprocals also gives the last and smallest readings, which are the least
/// certain, the most to say. So each line is bent back and compared with the readings, and the three curves and one of
/// free order are fitted to the readings themselves.
///
/// # Errors
/// `out_of_range` for a value that is not greater than zero, with its row; `missing` for fewer than four rows;
/// `contradiction` where they are not in order of time.
pub fn from_curve(series: &Series<'_>) -> Result<OrderFromCurve> {
    series.need_order(4)?;
    for (row, y) in series.y().iter().enumerate() {
        if *y <= 0.0 {
            let column = series.names().y;
            return Err(super::series::Finding::NotPositive { row, column, value: *y }.error(series.names()));
        }
    }
    let straightened = [
        straighten(series, 0, |c| c, |y| y)?,
        straighten(series, 1, f64::ln, f64::exp)?,
        straighten(series, 2, |c| 1.0 / c, |y| if y > 0.0 { 1.0 / y } else { f64::NAN })?,
    ];
    let [zeroth, first, second] = &straightened;
    let guesses = [
        (zeroth.line.intercept, zeroth.rate_constant / zeroth.line.intercept),
        (first.line.intercept.exp(), first.rate_constant),
        (1.0 / second.line.intercept, second.rate_constant / second.line.intercept),
    ];
    let mut order = 0.0;
    let curves = guesses.map(|(first, share)| {
        let fit =
            fit(&AnyOrder, series, [Parameter::Free(first), Parameter::Free(share), Parameter::Fixed(order)]);
        order += 1.0;
        fit
    });
    let best = curves
        .iter()
        .filter_map(|fit| fit.as_ref().ok())
        .min_by(|a, b| a.sum_of_squares.total_cmp(&b.sum_of_squares));
    let start = best.map_or([first.line.intercept.exp(), first.rate_constant, 1.0], |fit| fit.parameters);
    let fitted = fit(&AnyOrder, series, start.map(Parameter::Free));
    Ok(OrderFromCurve { straightened, curves, fitted })
}

fn straighten(
    series: &Series<'_>,
    order: u8,
    to: impl Fn(f64) -> f64,
    back: impl Fn(f64) -> f64,
) -> Result<Straightened> {
    let y: Vec<f64> = series.y().iter().map(|y| to(*y)).collect();
    let line = with_intercept(&Series::trusted(series.names(), series.x(), &y, series.weights()))?;
    let squares: f64 = series.rows().map(|(x, y)| (back(line.at(x)) - y).powi(2)).sum();
    let rate_constant = if order == 2 { line.slope } else { -line.slope };
    Ok(Straightened { order, rate_constant, misses_by: (squares / series.len() as f64).sqrt(), line })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::Code;
    use crate::readings::series::{CONCENTRATION_AGAINST_TIME, Demands};

    #[test]
    fn the_logarithm_passes_through_zero() {
        for z in [-0.99, -0.5, -1e-3, -1e-9, 1e-12, 1e-9, 1e-3, 0.5, 5.0, 60.0] {
            let z: f64 = z;
            assert!((log_share(z) / (z.ln_1p() / z) - 1.0).abs() < 4e-15, "{z}");
        }
        assert_eq!(log_share(0.0), 1.0);
        // -1/2 at zero, from the series 1 - z/2 + z²/3.
        let dual = log_share(crate::scalar::Sensitivities::<1>::input(0.0, 0));
        assert!((dual.derivatives()[0] + 0.5).abs() < 1e-15);
    }

    fn curve(c: impl Fn(f64) -> f64) -> OrderFromCurve {
        let time: Vec<f64> = (0..13).map(|row| f64::from(row) * 10.0).collect();
        let values: Vec<f64> = time.iter().map(|t| c(*t)).collect();
        let series = Series::new(CONCENTRATION_AGAINST_TIME, &time, &values, &Demands::rows(4)).unwrap();
        from_curve(&series).unwrap()
    }

    #[test]
    fn each_order_is_found_from_its_own_curve() {
        let zeroth = curve(|t| 0.5 - 0.003 * t);
        let first = curve(|t| 0.5 * (-0.02 * t).exp());
        let second = curve(|t| 1.0 / (2.0 + 0.05 * t));
        let half = curve(|t| (0.7 - 0.003 * t) * (0.7 - 0.003 * t));
        for (found, best, order, k) in
            [(zeroth, Some(0), 0.0, 0.003), (first, Some(1), 1.0, 0.02), (second, Some(2), 2.0, 0.05)]
        {
            assert_eq!(found.best(), best);
            let (fitted, error) = found.order().unwrap();
            assert!((fitted - order).abs() < 1e-7 && error < 1e-6, "{fitted} {error}");
            let own = &found.straightened[usize::from(best.unwrap())];
            assert!((own.rate_constant / k - 1.0).abs() < 1e-9 && own.misses_by < 1e-12, "{own:?}");
            let worse = found.straightened.iter().filter(|other| other.order != own.order);
            assert!(
                worse.clone().count() == 2
                    && worse.into_iter().all(|other| other.misses_by.is_nan() || other.misses_by >= 1e-3)
            );
        }
        assert!((half.order().unwrap().0 - 0.5).abs() < 1e-7);
    }

    #[test]
    fn rates_that_scatter_have_an_error() {
        // ln-ln by hand: x = ln 1, ln 2, ln 4; y = 0, ln 2 + 0.1, ln 4 + 0: slope 1, residuals -1/30, 2/30, -1/30.
        let rates = [1.0, 2.0 * 0.1_f64.exp(), 4.0];
        let series =
            Series::new(CONCENTRATION_AGAINST_TIME, &[1.0, 2.0, 4.0], &rates, &Demands::rows(2)).unwrap();
        let order = from_rates(&series).unwrap();
        assert!((order.order - 1.0).abs() < 1e-13);
        let expected = (6.0_f64 / 900.0).sqrt() / (2.0_f64.sqrt() * std::f64::consts::LN_2);
        assert!((order.standard_error / expected - 1.0).abs() < 1e-12);
    }

    #[test]
    fn logarithms_of_nothing_are_refused() {
        let series =
            Series::new(CONCENTRATION_AGAINST_TIME, &[1.0, 2.0], &[1.0, 0.0], &Demands::rows(2)).unwrap();
        assert_eq!(from_rates(&series).unwrap_err().parameter, "rows[1].concentration_mol_per_dm3");
        let time = [0.0, 1.0, 2.0, 3.0];
        let series =
            Series::new(CONCENTRATION_AGAINST_TIME, &time, &[1.0, 0.5, -0.1, 0.2], &Demands::rows(2))
                .unwrap();
        let error = from_curve(&series).unwrap_err();
        assert_eq!(
            (error.code, error.parameter.as_ref()),
            (Code::OutOfRange, "rows[2].concentration_mol_per_dm3")
        );
    }
}
