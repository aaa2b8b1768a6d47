//! Distributions carried through a model by drawing (JCGM 101:2008).
//!
//! Draw k of input v depends on the seed, v and k only: it is word k of stream v of ChaCha8 under the seed, turned into a
//! value by the inverse of the input's distribution function. The result is therefore the same for any number of threads.

use std::sync::atomic::{AtomicUsize, Ordering};

use rand::{Rng, SeedableRng};
use rand_chacha::ChaCha8Rng;

use super::correlation::{Correlation, Matrix};
use super::coverage::{check_level, student_quantile};
use super::input::{Distribution, Input};
use super::model::MeasurementModel;
use super::normal::normal_quantile;
use crate::{Code, Error, Result};

/// Draws that are worked on together, and the length of a sequence of the adaptive procedure (JCGM 101:2008, 7.9.4).
pub const BLOCK: usize = 10_000;
/// The fewest and the most draws.
pub const DRAWS: (usize, usize) = (BLOCK, 20_000_000);
/// The share of draws without a result before the whole is refused.
pub const MAY_FAIL: f64 = 0.001;

/// When to stop.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Stop {
    /// After so many draws, rounded up to whole blocks.
    After(usize),
    /// When value, standard uncertainty and both ends of the interval are stable to this many significant figures of the
    /// standard uncertainty, 1 or 2 (JCGM 101:2008, 7.9.4), or after the most draws.
    WhenStable {
        /// Significant figures of the standard uncertainty.
        figures: u8,
        /// The most draws.
        most: usize,
    },
}

/// What is asked for.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Plan {
    /// The coverage probability.
    pub coverage: f64,
    /// Any number; the same one gives the same answer.
    pub seed: u64,
    /// When to stop.
    pub stop: Stop,
    /// Threads to work on, 1 to 64. The answer does not depend on it.
    pub threads: usize,
}

impl Default for Plan {
    /// 95 %, seed 1, stable to two figures or ten million draws, one thread.
    fn default() -> Plan {
        Plan { coverage: 0.95, seed: 1, stop: Stop::WhenStable { figures: 2, most: 10_000_000 }, threads: 1 }
    }
}

/// What the draws came to.
#[derive(Debug, Clone, PartialEq)]
pub struct MonteCarlo {
    /// The mean of the results.
    pub value: f64,
    /// Their standard deviation.
    pub standard_uncertainty: f64,
    /// The shortest interval that holds the share asked for (JCGM 101:2008, 5.3.4).
    pub shortest: [f64; 2],
    /// The interval with as much below as above it (JCGM 101:2008, 5.3.3).
    pub symmetric: [f64; 2],
    /// How many draws were made.
    pub draws: usize,
    /// How many of them have no result and are left out.
    pub failed: usize,
    /// Whether the adaptive procedure came to rest; nothing where it was not asked for.
    pub stable: Option<bool>,
    /// What was asked for.
    pub plan: Plan,
}

/// Draws from the inputs and carries them through the model.
///
/// Correlated inputs are drawn from a multivariate normal distribution (JCGM 101:2008, 6.4.8): they must be normal.
///
/// # Errors
/// `out_of_range` for the plan, those of the inputs and correlations, `contradiction` for a correlated input that is not normal
/// or where more than [`MAY_FAIL`] of the draws have no result (an uncertainty reaches beyond the range of the formula).
pub fn monte_carlo(
    model: &impl MeasurementModel,
    inputs: &[Input],
    correlations: &[Correlation],
    plan: Plan,
) -> Result<MonteCarlo> {
    let most = check(&plan)?;
    for input in inputs {
        input.check()?;
    }
    let matrix = Matrix::new(inputs, correlations)?;
    for (index, input) in inputs.iter().enumerate() {
        if matrix.is_correlated(index) && input.distribution != Distribution::Normal {
            return Err(Error::new(Code::Contradiction, input.name.clone())
                .value(input.distribution.name())
                .allowed("normal, for an input that is correlated with another")
                .advice("give its standard uncertainty, or leave the correlation to the rules of the GUM"));
        }
    }
    // A model that refuses the best values has no uncertainty to speak of.
    model.value(&inputs.iter().map(|input| input.value).collect::<Vec<f64>>())?;
    let source = Source { model, inputs, matrix: &matrix, seed: plan.seed };
    let mut all = Draws::default();
    let blocks = most.div_ceil(BLOCK);
    let mut next = 0;
    let mut stable = None;
    // Where nothing may end it early, each thread is given its whole share at once.
    let at_once = match plan.stop {
        Stop::After(_) => blocks,
        Stop::WhenStable { .. } => plan.threads,
    };
    'drawing: while next < blocks {
        let last = (next + at_once).min(blocks);
        for block in source.blocks(next..last, plan.threads) {
            all.take(&block)?;
            if let Stop::WhenStable { figures, .. } = plan.stop {
                all.summarise(&block, plan.coverage);
                stable = Some(all.are_stable(figures));
                if stable == Some(true) {
                    break 'drawing;
                }
            }
        }
        next = last;
    }
    all.conclude(plan, stable)
}

fn check(plan: &Plan) -> Result<usize> {
    check_level(plan.coverage)?;
    let out = |what: &'static str, value: String, allowed: String| {
        Err(Error::new(Code::OutOfRange, what)
            .value(value)
            .allowed(allowed)
            .advice("give a number in this range"))
    };
    if !(1..=64).contains(&plan.threads) {
        return out("threads", plan.threads.to_string(), "1 to 64".to_owned());
    }
    let (most, figures) = match plan.stop {
        Stop::After(draws) => (draws, 1),
        Stop::WhenStable { figures, most } => (most, figures),
    };
    if !(1..=2).contains(&figures) {
        return out("figures", figures.to_string(), "1 or 2".to_owned());
    }
    if !(DRAWS.0..=DRAWS.1).contains(&most) {
        return out("draws", most.to_string(), format!("{} to {}", DRAWS.0, DRAWS.1));
    }
    Ok(most)
}

/// Where the draws come from.
struct Source<'a, M> {
    model: &'a M,
    inputs: &'a [Input],
    matrix: &'a Matrix,
    seed: u64,
}

impl<M: MeasurementModel> Source<'_, M> {
    /// The results of some blocks, in order, shared out among threads; the next free thread takes the next block.
    fn blocks(&self, which: std::ops::Range<usize>, threads: usize) -> Vec<Vec<f64>> {
        let threads = threads.min(which.len());
        if threads <= 1 {
            return which.map(|block| self.block(block)).collect();
        }
        let next = AtomicUsize::new(which.start);
        let own = || {
            let take = || Some(next.fetch_add(1, Ordering::Relaxed)).filter(|block| *block < which.end);
            std::iter::from_fn(take).map(|block| (block, self.block(block))).collect::<Vec<_>>()
        };
        // A thread that stopped has no results: all of its draws count as failed.
        let mut all: Vec<Vec<f64>> = which.clone().map(|_| Vec::new()).collect();
        std::thread::scope(|scope| {
            let running: Vec<_> = (0..threads).map(|_| scope.spawn(own)).collect();
            for (block, results) in running.into_iter().flat_map(|thread| thread.join().unwrap_or_default()) {
                if let Some(place) = all.get_mut(block - which.start) {
                    *place = results;
                }
            }
        });
        all.iter_mut().filter(|block| block.is_empty()).for_each(|block| *block = vec![f64::NAN; BLOCK]);
        all
    }

    fn block(&self, block: usize) -> Vec<f64> {
        let mut columns: Vec<Vec<f64>> = Vec::with_capacity(self.inputs.len());
        let mut standard: Vec<Vec<f64>> = Vec::new();
        for (index, input) in self.inputs.iter().enumerate() {
            let mut drawn = if input.standard_uncertainty == 0.0 {
                vec![0.0; BLOCK]
            } else {
                self.standard(index, block, input)
            };
            if self.matrix.is_correlated(index) || !standard.is_empty() {
                // Independent numbers of this input and of those before it make the correlated ones.
                standard.resize_with(index, || vec![0.0; BLOCK]);
                standard.push(drawn);
                drawn = vec![0.0; BLOCK];
                for (weight, column) in self.matrix.root_row(index).iter().zip(&standard) {
                    if *weight != 0.0 {
                        drawn.iter_mut().zip(column).for_each(|(sum, number)| *sum += weight * number);
                    }
                }
            }
            let u = input.standard_uncertainty;
            drawn.iter_mut().for_each(|number| *number = input.value + u * *number);
            columns.push(drawn);
        }
        let mut results = vec![f64::NAN; BLOCK];
        self.model.fill(&columns, &mut results);
        results
    }

    /// Numbers of an input's distribution with mean 0 and standard uncertainty 1 (for Student's, scale 1).
    fn standard(&self, index: usize, block: usize, input: &Input) -> Vec<f64> {
        let mut generator = ChaCha8Rng::seed_from_u64(self.seed);
        generator.set_stream(index as u64);
        // Two words of 32 bits for each draw.
        generator.set_word_pos((block * BLOCK) as u128 * 2);
        let nu = input.degrees_of_freedom;
        let mut draw = || {
            let bits = generator.next_u64() >> 11;
            (bits as f64 + 0.5) / (1_u64 << 53) as f64
        };
        let numbers = (0..BLOCK).map(|_| draw());
        match input.distribution {
            Distribution::Normal => numbers.map(normal_quantile).collect(),
            Distribution::Rectangular => numbers.map(|p| (2.0 * p - 1.0) * 3.0_f64.sqrt()).collect(),
            Distribution::Triangular => numbers
                .map(|p| {
                    let tail = 6.0_f64.sqrt() * (1.0 - (2.0 * p.min(1.0 - p)).sqrt());
                    if p < 0.5 { -tail } else { tail }
                })
                .collect(),
            Distribution::Student => numbers.map(|p| student_quantile(p, nu)).collect(),
        }
    }
}

/// What each block came to, for the adaptive procedure, and all results.
#[derive(Default)]
struct Draws {
    results: Vec<f64>,
    drawn: usize,
    /// Mean, standard deviation and ends of the shortest interval of each block.
    of_blocks: Vec<[f64; 4]>,
}

impl Draws {
    fn take(&mut self, block: &[f64]) -> Result<()> {
        self.drawn += block.len();
        self.results.extend(block.iter().copied().filter(|result| result.is_finite()));
        let failed = self.drawn - self.results.len();
        if failed as f64 > MAY_FAIL * self.drawn.max(DRAWS.0) as f64 {
            return Err(Error::new(Code::Contradiction, "inputs")
                .value(format!("{failed} of {} draws without a result", self.drawn))
                .allowed(format!("at most {} %", 100.0 * MAY_FAIL))
                .advice("an uncertainty reaches beyond the range of the formula: is it half-width or standard uncertainty, \
                         and in the unit of its input?"));
        }
        Ok(())
    }

    fn summarise(&mut self, block: &[f64], coverage: f64) {
        let mut own: Vec<f64> = block.iter().copied().filter(|result| result.is_finite()).collect();
        let (mean, deviation) = moments(&own);
        sort_tails(&mut own, coverage);
        let [low, high] = shortest(&own, coverage);
        self.of_blocks.push([mean, deviation, low, high]);
    }

    /// Whether twice the standard deviation of each average over blocks is below the numerical tolerance of u.
    fn are_stable(&self, figures: u8) -> bool {
        let h = self.of_blocks.len() as f64;
        if self.of_blocks.len() < 2 {
            return false;
        }
        let (_, u) = moments(&self.results);
        let tolerance = numerical_tolerance(u, figures);
        (0..4).all(|which| {
            let values = || self.of_blocks.iter().filter_map(|block| block.get(which));
            let mean = values().sum::<f64>() / h;
            let square = values().map(|value| (value - mean) * (value - mean)).sum::<f64>() / (h * (h - 1.0));
            2.0 * square.sqrt() < tolerance
        })
    }

    fn conclude(mut self, plan: Plan, stable: Option<bool>) -> Result<MonteCarlo> {
        let (value, standard_uncertainty) = moments(&self.results);
        sort_tails(&mut self.results, plan.coverage);
        Ok(MonteCarlo {
            value,
            standard_uncertainty,
            shortest: shortest(&self.results, plan.coverage),
            symmetric: symmetric(&self.results, plan.coverage),
            draws: self.drawn,
            failed: self.drawn - self.results.len(),
            stable,
            plan,
        })
    }
}

/// Half a unit in the last of some significant figures (JCGM 101:2008, 7.9.2).
///
/// ```
/// use overwater::readings::uncertainty::monte_carlo::numerical_tolerance;
/// // Its two examples: u = 0.35 mg to two figures gives 0.005 mg; 2 K to one figure gives 0.5 K.
/// assert!((numerical_tolerance(0.35, 2) - 0.005).abs() < 1e-15);
/// assert!((numerical_tolerance(2.0, 1) - 0.5).abs() < 1e-15);
/// ```
#[must_use]
pub fn numerical_tolerance(standard_uncertainty: f64, figures: u8) -> f64 {
    if standard_uncertainty <= 0.0 {
        return f64::MIN_POSITIVE;
    }
    let rounded = format!("{standard_uncertainty:.*e}", usize::from(figures.max(1)) - 1);
    let power: i32 = rounded.split_once('e').and_then(|(_, power)| power.parse().ok()).unwrap_or(0);
    0.5 * 10.0_f64.powi(power - (i32::from(figures) - 1))
}

/// Mean and standard deviation.
fn moments(results: &[f64]) -> (f64, f64) {
    let count = results.len() as f64;
    let mean = results.iter().sum::<f64>() / count;
    let squares: f64 = results.iter().map(|result| (result - mean) * (result - mean)).sum();
    (mean, (squares / (count - 1.0)).sqrt())
}

/// How many steps of the sorted results an interval takes (JCGM 101:2008, 7.7.1).
fn steps(count: usize, coverage: f64) -> usize {
    ((coverage * count as f64).round() as usize).clamp(1, count.saturating_sub(1).max(1))
}

/// Sorts as many of the least and of the greatest as an interval of this coverage may end at; those between stay as they are.
fn sort_tails(results: &mut [f64], coverage: f64) {
    let q = steps(results.len(), coverage);
    let tail = results.len().saturating_sub(q);
    if results.len() < 2 || 2 * tail >= results.len() {
        return results.sort_unstable_by(f64::total_cmp);
    }
    let (low, _, rest) = results.select_nth_unstable_by(tail, f64::total_cmp);
    low.sort_unstable_by(f64::total_cmp);
    // The place q of all is the place q - tail - 1 of those after the one at `tail`.
    if q > tail {
        let (_, _, high) = rest.select_nth_unstable_by(q - tail - 1, f64::total_cmp);
        high.sort_unstable_by(f64::total_cmp);
    }
}

fn at(sorted: &[f64], index: usize) -> f64 {
    sorted.get(index).copied().unwrap_or(f64::NAN)
}

fn symmetric(sorted: &[f64], coverage: f64) -> [f64; 2] {
    let q = steps(sorted.len(), coverage);
    let first = (sorted.len().saturating_sub(q)) / 2;
    [at(sorted, first), at(sorted, first + q)]
}

fn shortest(sorted: &[f64], coverage: f64) -> [f64; 2] {
    let q = steps(sorted.len(), coverage);
    let mut best = [at(sorted, 0), at(sorted, q)];
    for (low, high) in sorted.iter().zip(sorted.iter().skip(q)) {
        if high - low < best[1] - best[0] {
            best = [*low, *high];
        }
    }
    best
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn intervals_of_sorted_numbers() {
        let sorted: Vec<f64> = (0..100).map(|k| f64::from(k) * f64::from(k)).collect();
        assert_eq!(shortest(&sorted, 0.5), [0.0, 2500.0]);
        assert_eq!(symmetric(&sorted, 0.5), [625.0, 5625.0]);
        assert_eq!(steps(100, 0.95), 95);
        assert_eq!(steps(2, 0.999), 1);
    }

    #[test]
    fn sorted_tails_give_the_intervals_of_a_full_sort() {
        for count in [1, 2, 3, 7, 20, 101, 1000] {
            for coverage in [0.5, 0.6827, 0.95, 0.99, 0.999] {
                let mut numbers: Vec<f64> =
                    (0..count).map(|k| f64::from((k * 7919 + 13) % 1009) - 400.0).collect();
                let mut sorted = numbers.clone();
                sorted.sort_unstable_by(f64::total_cmp);
                sort_tails(&mut numbers, coverage);
                // NaN where there is no second number to end at.
                let bits = |[low, high]: [f64; 2]| [low.to_bits(), high.to_bits()];
                assert_eq!(
                    bits(shortest(&numbers, coverage)),
                    bits(shortest(&sorted, coverage)),
                    "{count} {coverage}"
                );
                assert_eq!(
                    bits(symmetric(&numbers, coverage)),
                    bits(symmetric(&sorted, coverage)),
                    "{count} {coverage}"
                );
            }
        }
    }

    #[test]
    fn the_plan_is_held() {
        let refused = |plan: Plan| check(&plan).unwrap_err().parameter.into_owned();
        let usual = Plan::default();
        assert_eq!(refused(Plan { threads: 0, ..usual }), "threads");
        assert_eq!(refused(Plan { threads: 65, ..usual }), "threads");
        assert_eq!(refused(Plan { stop: Stop::After(BLOCK - 1), ..usual }), "draws");
        assert_eq!(refused(Plan { stop: Stop::After(DRAWS.1 + 1), ..usual }), "draws");
        assert_eq!(refused(Plan { stop: Stop::WhenStable { figures: 3, most: BLOCK }, ..usual }), "figures");
        assert_eq!(refused(Plan { coverage: 1.0, ..usual }), "coverage");
        assert_eq!(check(&Plan { stop: Stop::After(BLOCK), threads: 64, ..usual }), Ok(BLOCK));
    }

    #[test]
    fn tolerances() {
        assert!((numerical_tolerance(0.0996, 2) - 0.005).abs() < 1e-12);
        assert!((numerical_tolerance(0.099, 2) - 0.0005).abs() < 1e-12);
        assert!((numerical_tolerance(2.0, 2) - 0.05).abs() < 1e-12);
        assert_eq!(numerical_tolerance(0.0, 2), f64::MIN_POSITIVE);
    }
}
