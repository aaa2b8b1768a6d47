//! Intervals without a formula: the fit is repeated on readings drawn from the readings.
//!
//! What is drawn depends on the seed and the number of the replicate only, never on the number of threads: the generator
//! of a replicate is xoshiro256++, its state filled by SplitMix64 from both. Rows are drawn by the upper half of the
//! product of 64 random bits and the number of rows.

use rand::rngs::Xoshiro256PlusPlus;
use rand::{Rng, SeedableRng};

use super::minimise::{Goal, gauss_newton, minimise};
use super::model::{Fit, Model};
use super::series::Series;
use crate::{Code, Error, Result};

/// What is drawn.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Draw {
    /// The x stay; residuals, centred and made larger by √(rows/degrees of freedom), are put on the fitted curve in a new
    /// order, each as often as chance has it. For readings whose scatter is the same everywhere (or, with weights, goes
    /// as 1/√weight).
    Residuals,
    /// Whole rows, with their weights. Nothing is supposed of the scatter, but few rows make wild replicates.
    Pairs,
}

/// What is asked for.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Plan {
    /// What is drawn.
    pub draw: Draw,
    /// How often, from [`FEWEST`] to [`MOST`].
    pub replicates: usize,
    /// The share of the replicates inside the intervals, 0.5 to 0.999.
    pub level: f64,
    /// Any number; the same one gives the same answer.
    pub seed: u64,
    /// How many threads to work on, 1 to 64. The answer does not depend on it.
    pub threads: usize,
}

impl Default for Plan {
    /// 1000 times the residuals, 95 %, seed 1, one thread.
    fn default() -> Plan {
        Plan { draw: Draw::Residuals, replicates: 1000, level: 0.95, seed: 1, threads: 1 }
    }
}

/// The fewest replicates: fewer say nothing about the ends of an interval.
pub const FEWEST: usize = 20;
/// The most replicates.
pub const MOST: usize = 100_000;
/// The share of replicates that may fail to converge before the whole is refused.
pub const MAY_FAIL: f64 = 0.1;

/// The middle share of the replicates of one number.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Interval {
    /// Its lower end.
    pub lower: f64,
    /// Its upper end.
    pub upper: f64,
    /// The standard deviation of the replicates.
    pub standard_deviation: f64,
}

/// The replicates and what follows from them.
#[derive(Debug, Clone, PartialEq)]
pub struct Bootstrap<const P: usize> {
    /// For each number of the model; a fixed one has an interval of no length.
    pub intervals: [Interval; P],
    /// The numbers of each replicate that converged, in order of the replicates.
    pub replicates: Vec<[f64; P]>,
    /// How many did not converge, and are left out.
    pub failed: usize,
    /// What was asked for.
    pub plan: Plan,
}

impl<const P: usize> Bootstrap<P> {
    /// The interval of anything computed from the fitted numbers, such as a half-life or an initial rate.
    #[must_use]
    pub fn interval_of(&self, value: impl Fn(&[f64; P]) -> f64) -> Interval {
        interval(self.replicates.iter().map(value).collect(), self.plan.level)
    }
}

/// The relative offset at which a replicate has converged: a hundred-thousandth of a standard error.
const NEAR_ENOUGH: f64 = 1e-5;

/// Repeats a fit. Each replicate starts from the fitted numbers and takes full Gauss-Newton steps, or goes the whole way
/// of [`super::model::fit`] where these go astray.
///
/// ```
/// use overwater::readings::bootstrap::{Plan, bootstrap};
/// use overwater::readings::line::StraightLine;
/// use overwater::readings::model::{Parameter, fit};
/// use overwater::readings::series::{Demands, Names, Series};
/// let x = [1.0, 2.0, 3.0, 4.0, 5.0, 6.0];
/// let names = Names { x: "x", y: "y" };
/// let series = Series::new(names, &x, &[2.1, 3.9, 6.2, 7.8, 10.1, 11.9], &Demands::rows(2))?;
/// let line = fit(&StraightLine, &series, [Parameter::Free(0.0), Parameter::Free(1.0)])?;
/// let [_, slope] = bootstrap(&StraightLine, &series, &line, &Plan::default())?.intervals;
/// assert!(slope.lower < line.parameters[1] && line.parameters[1] < slope.upper);
/// # Ok::<(), overwater::Error>(())
/// ```
///
/// # Errors
/// `out_of_range` for a plan outside its limits; `missing` without degrees of freedom; `cannot_be_met` where more than
/// [`MAY_FAIL`] of the replicates do not converge.
pub fn bootstrap<M: Model<P>, const P: usize>(
    model: &M,
    series: &Series<'_>,
    fit: &Fit<P>,
    plan: &Plan,
) -> Result<Bootstrap<P>> {
    plan.check()?;
    if fit.degrees_of_freedom == 0 || fit.residuals.len() != series.len() {
        return Err(Error::new(Code::Missing, "rows")
            .value(format!("{} rows", series.len()))
            .allowed("the rows that were fitted, more than the numbers fitted")
            .advice("take more readings: without scatter there is nothing to draw from"));
    }
    let source = Source::of(model, series, fit, plan);
    let outcomes = source.all();
    let replicates: Vec<[f64; P]> = outcomes.iter().copied().flatten().collect();
    let failed = plan.replicates - replicates.len();
    if failed as f64 > MAY_FAIL * plan.replicates as f64 {
        return Err(Error::new(Code::CannotBeMet, "replicates")
            .value(format!("{failed} of {} did not converge", plan.replicates))
            .allowed(format!("at most {} %", 100.0 * MAY_FAIL))
            .advice("draw residuals instead of rows, or take more readings"));
    }
    let intervals = std::array::from_fn(|index| {
        let values = replicates.iter().filter_map(|numbers| numbers.get(index).copied()).collect();
        interval(values, plan.level)
    });
    Ok(Bootstrap { intervals, replicates, failed, plan: *plan })
}

impl Plan {
    fn check(&self) -> Result<()> {
        let refuse = |name: &'static str, value: String, allowed: String| {
            Err(Error::new(Code::OutOfRange, name)
                .value(value)
                .allowed(allowed)
                .advice("keep the bootstrap within what it is good for"))
        };
        if !(FEWEST..=MOST).contains(&self.replicates) {
            return refuse("replicates", self.replicates.to_string(), format!("{FEWEST} to {MOST}"));
        }
        if !(0.5..=0.999).contains(&self.level) {
            return refuse("level", self.level.to_string(), "0.5 to 0.999".to_owned());
        }
        if !(1..=64).contains(&self.threads) {
            return refuse("threads", self.threads.to_string(), "1 to 64".to_owned());
        }
        Ok(())
    }
}

/// What replicates are made from.
struct Source<'a, M, const P: usize> {
    model: &'a M,
    series: &'a Series<'a>,
    fit: &'a Fit<P>,
    plan: &'a Plan,
    /// The fitted curve.
    curve: Vec<f64>,
    /// Residuals as they are drawn, all of one scatter.
    residuals: Vec<f64>,
    /// √weight of each row.
    roots: Vec<f64>,
}

/// What one replicate is written into, over and over.
#[derive(Default)]
struct Columns {
    x: Vec<f64>,
    y: Vec<f64>,
    weights: Vec<f64>,
}

impl<'a, M: Model<P>, const P: usize> Source<'a, M, P> {
    fn of(model: &'a M, series: &'a Series<'a>, fit: &'a Fit<P>, plan: &'a Plan) -> Self {
        let roots: Vec<f64> = series.weight_of_each().map(f64::sqrt).collect();
        let curve = series.y().iter().zip(&fit.residuals).map(|(y, residual)| y - residual).collect();
        let rows = series.len() as f64;
        let larger = (rows / fit.degrees_of_freedom as f64).sqrt();
        let mut residuals: Vec<f64> = fit.residuals.iter().zip(&roots).map(|(r, root)| r * root).collect();
        let mean = residuals.iter().sum::<f64>() / rows;
        for residual in &mut residuals {
            *residual = (*residual - mean) * larger;
        }
        Source { model, series, fit, plan, curve, residuals, roots }
    }

    /// Every replicate, in order; nothing for one that did not converge.
    fn all(&self) -> Vec<Option<[f64; P]>> {
        let mut outcomes = vec![None; self.plan.replicates];
        let share = self.plan.replicates.div_ceil(self.plan.threads);
        if self.plan.threads == 1 {
            self.some(0, &mut outcomes);
            return outcomes;
        }
        let mut undone = Vec::new();
        std::thread::scope(|scope| {
            for (index, part) in outcomes.chunks_mut(share).enumerate() {
                let thread = std::thread::Builder::new();
                if thread.spawn_scoped(scope, move || self.some(index * share, part)).is_err() {
                    undone.push(index);
                }
            }
        });
        // Where no thread can be had, as in a browser.
        for index in undone {
            if let Some(part) = outcomes.chunks_mut(share).nth(index) {
                self.some(index * share, part);
            }
        }
        outcomes
    }

    fn some(&self, first: usize, outcomes: &mut [Option<[f64; P]>]) {
        let mut columns = Columns::default();
        for (replicate, outcome) in (first..).zip(outcomes) {
            *outcome = self.one(replicate, &mut columns);
        }
    }

    fn one(&self, replicate: usize, columns: &mut Columns) -> Option<[f64; P]> {
        let mut random = generator(self.plan.seed, replicate);
        let rows = self.series.len();
        let names = self.series.names();
        columns.y.clear();
        let series = match self.plan.draw {
            Draw::Residuals => {
                for (curve, root) in self.curve.iter().zip(&self.roots) {
                    let drawn = self.residuals.get(below(&mut random, rows))?;
                    columns.y.push(curve + drawn / root);
                }
                Series::trusted(names, self.series.x(), &columns.y, self.series.weights())
            }
            Draw::Pairs => {
                columns.x.clear();
                columns.weights.clear();
                for _ in 0..rows {
                    let row = below(&mut random, rows);
                    columns.x.push(*self.series.x().get(row)?);
                    columns.y.push(*self.series.y().get(row)?);
                    if let Some(weights) = self.series.weights() {
                        columns.weights.push(*weights.get(row)?);
                    }
                }
                let weights = self.series.weights().map(|_| columns.weights.as_slice());
                Series::trusted(names, &columns.x, &columns.y, weights)
            }
        };
        let goal = Goal { series: &series, free: self.fit.free, tolerance: NEAR_ENOUGH };
        let quick = gauss_newton(self.model, &goal, self.fit.parameters);
        let attempt = if quick.converged { quick } else { minimise(self.model, &goal, self.fit.parameters) };
        let usable = attempt.converged && attempt.parameters.iter().all(|value| value.is_finite());
        usable.then_some(attempt.parameters)
    }
}

/// The generator of one replicate.
fn generator(seed: u64, replicate: usize) -> Xoshiro256PlusPlus {
    // SplitMix64 of the seed, moved on by the replicate, so that neighbouring seeds do not share replicates.
    let mut state = mixed(seed) ^ mixed(!(replicate as u64));
    let mut bytes = [0; 32];
    for word in bytes.chunks_exact_mut(8) {
        state = state.wrapping_add(0x9E37_79B9_7F4A_7C15);
        word.copy_from_slice(&mixed(state).to_le_bytes());
    }
    Xoshiro256PlusPlus::from_seed(bytes)
}

/// The finalising function of SplitMix64.
fn mixed(value: u64) -> u64 {
    let value = (value ^ (value >> 30)).wrapping_mul(0xBF58_476D_1CE4_E5B9);
    let value = (value ^ (value >> 27)).wrapping_mul(0x94D0_49BB_1331_11EB);
    value ^ (value >> 31)
}

/// A whole number below `bound`, each as likely as the others to one in 2^47.
fn below(random: &mut Xoshiro256PlusPlus, bound: usize) -> usize {
    ((u128::from(random.next_u64()) * bound as u128) >> 64) as usize
}

/// Quantiles by straight lines between the order statistics (definition 7 of Hyndman and Fan, Am. Stat. 50 (1996) 361).
fn interval(mut values: Vec<f64>, level: f64) -> Interval {
    values.sort_by(f64::total_cmp);
    let count = values.len();
    let quantile = |share: f64| {
        let place = share * (count as f64 - 1.0);
        let below = place.floor() as usize;
        let (Some(low), high) = (values.get(below), values.get(below + 1)) else { return f64::NAN };
        high.map_or(*low, |high| low + (place - below as f64) * (high - low))
    };
    let mean = values.iter().sum::<f64>() / count as f64;
    let squares: f64 = values.iter().map(|value| (value - mean) * (value - mean)).sum();
    Interval {
        lower: quantile(0.5 - 0.5 * level),
        upper: quantile(0.5 + 0.5 * level),
        standard_deviation: (squares / (count as f64 - 1.0)).sqrt(),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::readings::curve::{FirstOrder, Known, first_order};
    use crate::readings::line::StraightLine;
    use crate::readings::model::{Parameter, fit};
    use crate::readings::series::{Demands, VOLUME_AGAINST_TIME};

    fn readings() -> (Vec<f64>, Vec<f64>) {
        let x: Vec<f64> = (0..20).map(|row| f64::from(row) * 10.0).collect();
        let scatter = [0.4, -0.7, 0.2, 0.9, -0.3, -0.6, 0.1];
        let y = x.iter().zip(scatter.iter().cycle()).map(|(x, e)| 70.0 * (1.0 - (-0.02 * x).exp()) + e);
        let y = y.collect();
        (x, y)
    }

    #[test]
    fn any_number_of_threads_gives_the_same_bits() {
        let (x, y) = readings();
        let weights: Vec<f64> = x.iter().map(|x| 1.0 + 0.01 * x).collect();
        let series = Series::new(VOLUME_AGAINST_TIME, &x, &y, &Demands::rows(3)).unwrap();
        for series in [series, series.weighted(&weights).unwrap()] {
            let growth = first_order(&series, Known::Fitted, Known::Fitted).unwrap();
            for draw in [Draw::Residuals, Draw::Pairs] {
                let plan = Plan { draw, replicates: 203, ..Plan::default() };
                let one = bootstrap(&FirstOrder, &series, &growth.fit, &plan).unwrap();
                for threads in [2, 3, 7] {
                    let many =
                        bootstrap(&FirstOrder, &series, &growth.fit, &Plan { threads, ..plan }).unwrap();
                    assert_eq!(one.replicates, many.replicates, "{threads} threads");
                }
                assert_eq!(one.replicates.len() + one.failed, 203);
                let other = bootstrap(&FirstOrder, &series, &growth.fit, &Plan { seed: 2, ..plan }).unwrap();
                assert_ne!(one.replicates[0], other.replicates[0]);
            }
        }
    }

    /// For a straight line the standard deviation of the replicates is the standard error, to the noise of 4,000 draws.
    #[test]
    fn replicates_scatter_as_the_standard_error_says() {
        let (x, _) = readings();
        let scatter = [0.4, -0.7, 0.2, 0.9, -0.3, -0.6, 0.1];
        let y: Vec<f64> = x.iter().zip(scatter.iter().cycle()).map(|(x, e)| 2.0 + 0.3 * x + e).collect();
        let series = Series::new(VOLUME_AGAINST_TIME, &x, &y, &Demands::rows(2)).unwrap();
        let line = fit(&StraightLine, &series, [Parameter::Free(0.0), Parameter::Free(1.0)]).unwrap();
        let plan = Plan { replicates: 4000, ..Plan::default() };
        let drawn = bootstrap(&StraightLine, &series, &line, &plan).unwrap();
        assert_eq!(drawn.failed, 0);
        for (interval, error) in drawn.intervals.iter().zip(line.standard_errors) {
            assert!((interval.standard_deviation / error - 1.0).abs() < 0.05, "{interval:?} {error}");
            let width = (interval.upper - interval.lower) / (2.0 * 1.96 * error);
            assert!((width - 1.0).abs() < 0.07, "{width}");
        }
        let doubled = drawn.interval_of(|numbers| 2.0 * numbers[1]);
        assert!((doubled.upper - 2.0 * drawn.intervals[1].upper).abs() < 1e-12);
    }

    #[test]
    fn a_fixed_number_does_not_move() {
        let (x, y) = readings();
        let series = Series::new(VOLUME_AGAINST_TIME, &x, &y, &Demands::rows(3)).unwrap();
        let growth = first_order(&series, Known::Value(70.0), Known::Fitted).unwrap();
        let drawn = bootstrap(&FirstOrder, &series, &growth.fit, &Plan::default()).unwrap();
        assert_eq!((drawn.intervals[0].lower, drawn.intervals[0].upper), (70.0, 70.0));
        assert!(drawn.intervals[1].lower < drawn.intervals[1].upper);
    }

    #[test]
    fn plans_beyond_their_limits_are_refused() {
        let (x, y) = readings();
        let series = Series::new(VOLUME_AGAINST_TIME, &x, &y, &Demands::rows(3)).unwrap();
        let growth = first_order(&series, Known::Fitted, Known::Fitted).unwrap();
        let plan = Plan::default();
        for (plan, parameter) in [
            (Plan { replicates: FEWEST - 1, ..plan }, "replicates"),
            (Plan { replicates: MOST + 1, ..plan }, "replicates"),
            (Plan { level: 0.4999, ..plan }, "level"),
            (Plan { level: f64::NAN, ..plan }, "level"),
            (Plan { threads: 0, ..plan }, "threads"),
            (Plan { threads: 65, ..plan }, "threads"),
        ] {
            let error = bootstrap(&FirstOrder, &series, &growth.fit, &plan).unwrap_err();
            assert_eq!((error.code, error.parameter.as_ref()), (Code::OutOfRange, parameter));
        }
        let three = Series::new(VOLUME_AGAINST_TIME, &x[..3], &y[..3], &Demands::rows(3)).unwrap();
        let exact = first_order(&three, Known::Fitted, Known::Fitted).unwrap();
        assert_eq!(bootstrap(&FirstOrder, &three, &exact.fit, &plan).unwrap_err().code, Code::Missing);
    }

    #[test]
    fn quantiles_by_hand() {
        // 1 to 5 at 50 %: places 1 and 3 counted from 0.
        let found = interval(vec![5.0, 1.0, 4.0, 2.0, 3.0], 0.5);
        assert_eq!((found.lower, found.upper), (2.0, 4.0));
        assert!((found.standard_deviation - 2.5_f64.sqrt()).abs() < 1e-15);
    }

    /// The reference implementation of xoshiro256++ by Blackman and Vigna from the state 1, 2, 3, 4 begins with 41943041.
    #[test]
    fn the_generator_is_the_named_one_and_draws_evenly() {
        let mut bytes = [0_u8; 32];
        for (word, value) in bytes.chunks_exact_mut(8).zip(1_u64..) {
            word.copy_from_slice(&value.to_le_bytes());
        }
        assert_eq!(Xoshiro256PlusPlus::from_seed(bytes).next_u64(), 41_943_041);
        let mut counts = [0_u32; 7];
        for replicate in 0..1000 {
            let mut random = generator(5, replicate);
            for _ in 0..7 {
                counts[below(&mut random, 7)] += 1;
            }
        }
        // 1000 each, with a standard deviation of 29.
        assert!(counts.iter().all(|count| count.abs_diff(1000) < 120), "{counts:?}");
    }
}
