//! Successive half-lives, read from a falling column: whether they are the same, and what order that makes.
//!
//! A half-life is the time in which the value falls to half of what it was. For an order n it goes as c^(1-n), so that
//! a half-life and the one after it, which starts from half the value, have the ratio 2^(n-1) (rate law dc/dt = -k c^n,
//! integrated).

use super::series::Series;
use crate::{Code, Error, Result};

/// How values between two readings are found.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Between {
    /// On the straight line from one reading to the next.
    Straight,
    /// On the exponential from one reading to the next: exact for a reaction of the first order.
    Exponential,
}

/// One half-life.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct HalfLife {
    /// When it begins.
    pub begins: f64,
    /// How long it is.
    pub length: f64,
    /// The value at its beginning.
    pub from: f64,
}

/// All half-lives that the readings cover.
#[derive(Debug, Clone, PartialEq)]
pub struct HalfLives {
    /// One after the other, from the first reading.
    pub half_lives: Vec<HalfLife>,
    /// Their mean.
    pub mean: f64,
    /// The longest divided by the shortest.
    pub spread: f64,
    /// Whether the spread is within the criterion; nothing for a single half-life, which is the same as nothing else.
    pub constant: Option<bool>,
    /// For each pair of neighbours, the order that their ratio stands for: 1 + log₂(later/earlier).
    pub orders: Vec<f64>,
}

/// The longest half-life may exceed the shortest by this share. A mark scheme took readings of a half-life of 106 min
/// from 102 to 110 min (OCR, A Level Chemistry A, "How fast"): 110/102 = 1.08.
pub const CONSTANT_WITHIN: f64 = 0.08;

/// The most half-lives that are looked for: the value has then fallen to a thousandth.
pub const MOST: usize = 10;

/// Reads the half-lives of a value that falls towards zero (take the volume still to come, V∞ - V, for a gas that is
/// collected).
///
/// ```
/// use overwater::readings::half_life::{Between, CONSTANT_WITHIN, half_lives};
/// use overwater::readings::series::{Demands, Names, Series};
/// // OpenStax, Chemistry 2e, section 12.4: peroxide at 40 degC halves every 6 hours.
/// let names = Names { x: "time_h", y: "concentration_mol_per_dm3" };
/// let hours = [0.0, 6.0, 12.0, 18.0, 24.0];
/// let series = Series::new(names, &hours, &[1.0, 0.5, 0.25, 0.125, 0.0625], &Demands::rows(3))?;
/// let read = half_lives(&series, Between::Straight, CONSTANT_WITHIN)?;
/// assert_eq!((read.half_lives.len(), read.mean, read.constant), (4, 6.0, Some(true)));
/// assert_eq!(read.orders, [1.0, 1.0, 1.0]);
/// # Ok::<(), overwater::Error>(())
/// ```
///
/// # Errors
/// `missing` for fewer than two rows, `contradiction` where they are not in order, `out_of_range` for a value that is
/// not greater than zero before the last half-life is complete, `cannot_be_met` where the value never falls to half.
pub fn half_lives(series: &Series<'_>, between: Between, constant_within: f64) -> Result<HalfLives> {
    series.need_order(2)?;
    let (Some(&begin), Some(&first)) = (series.x().first(), series.y().first()) else {
        return Err(Error::new(Code::Missing, "rows"));
    };
    if first <= 0.0 {
        return Err(Error::new(Code::OutOfRange, super::series::at(0, series.names().y))
            .value(first.to_string())
            .allowed("greater than 0")
            .advice("give what is left, which falls towards zero"));
    }
    let mut found = Vec::new();
    let (mut begins, mut from) = (begin, first);
    while found.len() < MOST {
        let Some(ends) = first_at(series, 0.5 * from, begins, between) else { break };
        found.push(HalfLife { begins, length: ends - begins, from });
        (begins, from) = (ends, 0.5 * from);
    }
    if found.is_empty() {
        return Err(Error::new(Code::CannotBeMet, "half_life")
            .value(format!("{} falls from {first} to no less than half of it", series.names().y))
            .allowed("readings that fall to half of the first")
            .advice("take readings for longer, or fit a curve"));
    }
    let lengths = || found.iter().map(|half_life| half_life.length);
    let longest = lengths().fold(0.0, f64::max);
    let shortest = lengths().fold(f64::INFINITY, f64::min);
    let spread = longest / shortest;
    let orders = found.windows(2).filter_map(|pair| match pair {
        [earlier, later] => Some(1.0 + (later.length / earlier.length).log2()),
        _ => None,
    });
    Ok(HalfLives {
        mean: lengths().sum::<f64>() / found.len() as f64,
        spread,
        // A spread of exactly 1.08 is within 8 %: its rounding is not held against it.
        constant: (found.len() > 1).then_some(spread <= (1.0 + constant_within) * (1.0 + 1e-12)),
        orders: orders.collect(),
        half_lives: found,
    })
}

/// When the value first comes down to `level`, not before `after`.
fn first_at(series: &Series<'_>, level: f64, after: f64, between: Between) -> Option<f64> {
    let mut before: Option<(f64, f64)> = None;
    for (x, y) in series.rows() {
        if y <= level && x >= after {
            let Some((x0, y0)) = before else { return Some(x) };
            let share = match between {
                Between::Straight => (y0 - level) / (y0 - y),
                Between::Exponential if y > 0.0 => (y0 / level).ln() / (y0 / y).ln(),
                // An exponential never comes down to zero.
                Between::Exponential => (y0 - level) / (y0 - y),
            };
            return Some(x0 + share * (x - x0));
        }
        before = Some((x, y));
    }
    None
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::readings::series::{CONCENTRATION_AGAINST_TIME, Demands};

    fn read(c: impl Fn(f64) -> f64, between: Between) -> HalfLives {
        let time: Vec<f64> = (0..400).map(|row| f64::from(row) * 0.5).collect();
        let values: Vec<f64> = time.iter().map(|t| c(*t)).collect();
        let series = Series::new(CONCENTRATION_AGAINST_TIME, &time, &values, &Demands::rows(2)).unwrap();
        half_lives(&series, between, CONSTANT_WITHIN).unwrap()
    }

    #[test]
    fn each_order_has_its_own_ratio() {
        // Half-lives of 2 exp(-0.05 t): ln 2/0.05; of 2 - 0.01 t: 100, 50, 25, ...; of 2/(1 + 0.1 t): 10, 20, 40, ...
        let first = read(|t| 2.0 * (-0.05 * t).exp(), Between::Exponential);
        assert!(first.half_lives.iter().all(|h| (h.length - 13.862_943_611_198_9).abs() < 1e-9), "{first:?}");
        assert_eq!((first.half_lives.len(), first.constant), (10, Some(true)));
        let zeroth = read(|t| 2.0 - 0.01 * t, Between::Straight);
        assert!((zeroth.half_lives[1].length - 50.0).abs() < 1e-9 && zeroth.constant == Some(false));
        assert!(zeroth.orders[0].abs() < 1e-9, "{zeroth:?}");
        let second = read(|t| 2.0 / (1.0 + 0.1 * t), Between::Straight);
        assert!((second.orders[0] - 2.0).abs() < 1e-2 && second.constant == Some(false), "{second:?}");
        assert!((second.half_lives[1].begins - 10.0).abs() < 1e-2);
    }

    #[test]
    fn between_readings_that_are_far_apart_the_exponential_is_exact() {
        let time = [0.0, 10.0, 20.0, 30.0];
        let c = time.map(|t: f64| (-0.05 * t).exp());
        let series = Series::new(CONCENTRATION_AGAINST_TIME, &time, &c, &Demands::rows(2)).unwrap();
        let exact = half_lives(&series, Between::Exponential, CONSTANT_WITHIN).unwrap();
        assert!((exact.mean - 13.862_943_611_198_9).abs() < 1e-12);
        let ruler = half_lives(&series, Between::Straight, CONSTANT_WITHIN).unwrap();
        // By hand: 10 + 10 (0.60653 - 0.5)/(0.60653 - 0.36788) = 14.464.
        assert!((ruler.half_lives[0].length - 14.464).abs() < 1e-3, "{ruler:?}");
    }

    #[test]
    fn the_criterion_ends_where_it_says() {
        // A half-life of 102, then one of 110 (1.078), of 103 (1.010) and of 111 (1.088).
        for (second, constant) in [(212.0, true), (205.0, true), (213.0, false)] {
            let (time, c) = ([0.0, 102.0, second], [8.0, 4.0, 2.0]);
            let series = Series::new(CONCENTRATION_AGAINST_TIME, &time, &c, &Demands::rows(2)).unwrap();
            let read = half_lives(&series, Between::Straight, CONSTANT_WITHIN).unwrap();
            assert_eq!(read.constant, Some(constant), "{read:?}");
        }
    }

    #[test]
    fn what_has_no_half_life_is_refused() {
        let short =
            Series::new(CONCENTRATION_AGAINST_TIME, &[0.0, 1.0], &[1.0, 0.6], &Demands::rows(2)).unwrap();
        let error = half_lives(&short, Between::Straight, 0.08).unwrap_err();
        assert_eq!(error.code, Code::CannotBeMet);
        let zero =
            Series::new(CONCENTRATION_AGAINST_TIME, &[0.0, 1.0], &[0.0, 0.0], &Demands::rows(2)).unwrap();
        assert_eq!(half_lives(&zero, Between::Straight, 0.08).unwrap_err().code, Code::OutOfRange);
        let one =
            Series::new(CONCENTRATION_AGAINST_TIME, &[0.0, 1.0], &[1.0, 0.5], &Demands::rows(2)).unwrap();
        let read = half_lives(&one, Between::Exponential, 0.08).unwrap();
        assert_eq!((read.constant, read.orders.len(), read.half_lives[0].length), (None, 0, 1.0));
    }
}
