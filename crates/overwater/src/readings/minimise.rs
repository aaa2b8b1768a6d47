//! The search for the smallest sum of squares. Everything that the crate levenberg-marquardt (and the older nalgebra
//! that it speaks) is used for stays in this file.

use levenberg_marquardt::{LeastSquaresProblem, LevenbergMarquardt};
use nalgebra_of_the_minimiser::{DMatrix, DVector, Dyn, VecStorage};

use super::model::{Method, Model};
use super::series::Series;
use super::slopes::Slopes;
use crate::scalar::{LANES, Lanes};

/// What is to be reached.
pub(super) struct Goal<'a, const P: usize> {
    pub(super) series: &'a Series<'a>,
    /// Which numbers are fitted.
    pub(super) free: [bool; P],
    /// The relative offset at which the search ends.
    pub(super) tolerance: f64,
}

/// What was reached.
#[derive(Debug, Clone, Copy)]
pub(super) struct Attempt<const P: usize> {
    pub(super) parameters: [f64; P],
    pub(super) sum_of_squares: f64,
    pub(super) relative_offset: f64,
    pub(super) evaluations: usize,
    pub(super) method: Method,
    pub(super) converged: bool,
}

/// Full steps first; where they go astray, the region of trust with four sizes of the first step.
pub(super) fn minimise<M: Model<P>, const P: usize>(
    model: &M,
    goal: &Goal<'_, P>,
    start: [f64; P],
) -> Attempt<P> {
    let mut best = gauss_newton(model, goal, start);
    if best.converged {
        return best;
    }
    let mut evaluations = best.evaluations;
    for step_bound in [10.0, 1.0, 100.0, 0.1] {
        let (near, used) = levenberg_marquardt(model, goal, start, step_bound);
        evaluations += used;
        let mut attempt = gauss_newton(model, goal, near);
        evaluations += attempt.evaluations;
        attempt.method = Method::LevenbergMarquardt;
        attempt.evaluations = evaluations;
        if attempt.converged {
            return attempt;
        }
        best = attempt;
    }
    best
}

/// More full steps than any fit that is worth its name takes.
const MOST_STEPS: usize = 50;

/// How much larger than before a sum may be by rounding alone.
const NOT_LARGER: f64 = 1.0 + 1e-10;

/// Full Gauss-Newton steps by the normal equations of the scaled Jacobian. Their rounding slows the search but does
/// not move the solution, which is where the gradient is zero.
pub(super) fn gauss_newton<M: Model<P>, const P: usize>(
    model: &M,
    goal: &Goal<'_, P>,
    start: [f64; P],
) -> Attempt<P> {
    let fitted = goal.free.iter().filter(|free| **free).count();
    let beyond = goal.series.len().saturating_sub(fitted).max(1) as f64;
    let mut attempt = Attempt {
        parameters: start,
        sum_of_squares: f64::INFINITY,
        relative_offset: f64::INFINITY,
        evaluations: 0,
        method: Method::GaussNewton,
        converged: false,
    };
    let mut parameters = start;
    for _ in 0..MOST_STEPS {
        let normal = Normal::of(model, goal.series, parameters);
        attempt.evaluations += 1;
        let sum = normal.sum_of_squares;
        if !sum.is_finite() || sum > attempt.sum_of_squares * NOT_LARGER {
            return attempt;
        }
        attempt.parameters = parameters;
        attempt.sum_of_squares = sum;
        if fitted == 0 {
            attempt.relative_offset = 0.0;
            attempt.converged = true;
            return attempt;
        }
        let Some(step) = normal.step(&goal.free) else { return attempt };
        let reduction: f64 = step.iter().zip(normal.gradient).map(|(s, g)| s * g).sum();
        attempt.relative_offset = (reduction.max(0.0) / fitted as f64).sqrt() / (sum / beyond).sqrt();
        for (parameter, step) in parameters.iter_mut().zip(step) {
            *parameter -= step;
        }
        // The residuals are differences and carry the rounding of y.
        let rounding = 16.0 * f64::EPSILON * (normal.size / sum).sqrt();
        // Without a sum there is nothing left to reduce: 0/0.
        if sum == 0.0 || attempt.relative_offset <= goal.tolerance.max(rounding) {
            let last = Normal::of(model, goal.series, parameters).sum_of_squares;
            attempt.evaluations += 1;
            if last <= sum * NOT_LARGER {
                attempt.parameters = parameters;
                attempt.sum_of_squares = last;
            }
            if sum == 0.0 {
                attempt.relative_offset = 0.0;
            }
            attempt.converged = true;
            return attempt;
        }
    }
    attempt
}

/// The normal equations: JᵀWJ, JᵀWr with r = model - y, ΣWr², and ΣWy² as the size of it all.
struct Normal<const P: usize> {
    product: [[f64; P]; P],
    gradient: [f64; P],
    sum_of_squares: f64,
    size: f64,
}

impl<const P: usize> Normal<P> {
    fn of<M: Model<P>>(model: &M, series: &Series<'_>, parameters: [f64; P]) -> Normal<P> {
        pulp::Arch::new().dispatch(Summing { model, series, parameters })
    }

    /// The full step, by Cholesky's decomposition with each column scaled to length 1; 0 for what is fixed. Nothing
    /// where the columns are dependent.
    fn step(&self, free: &[bool; P]) -> Option<[f64; P]> {
        let mut scale = [1.0; P];
        for (index, (scale, row)) in scale.iter_mut().zip(&self.product).enumerate() {
            let square = *row.get(index)?;
            if *free.get(index)? {
                if square <= 0.0 || !square.is_finite() {
                    return None;
                }
                *scale = square.sqrt();
            }
        }
        // The lower triangle; a fixed number has a row of its own with 1 on the diagonal and 0 on the right.
        let mut lower = [[0.0; P]; P];
        let mut solution = [0.0; P];
        for i in 0..P {
            let own = *free.get(i)?;
            let mut right = if own { *self.gradient.get(i)? / *scale.get(i)? } else { 0.0 };
            for j in 0..=i {
                let together = own && *free.get(j)?;
                let mut entry = match (together, i == j) {
                    (true, _) => *self.product.get(i)?.get(j)? / (*scale.get(i)? * *scale.get(j)?),
                    (false, true) => 1.0,
                    (false, false) => 0.0,
                };
                for k in 0..j {
                    entry -= *lower.get(i)?.get(k)? * *lower.get(j)?.get(k)?;
                }
                if i == j {
                    if entry <= 1e-14 || !entry.is_finite() {
                        return None;
                    }
                    entry = entry.sqrt();
                } else {
                    entry /= *lower.get(j)?.get(j)?;
                }
                *lower.get_mut(i)?.get_mut(j)? = entry;
            }
            for k in 0..i {
                right -= *lower.get(i)?.get(k)? * *solution.get(k)?;
            }
            *solution.get_mut(i)? = right / *lower.get(i)?.get(i)?;
        }
        for i in (0..P).rev() {
            let mut value = *solution.get(i)?;
            for k in i + 1..P {
                value -= *lower.get(k)?.get(i)? * *solution.get(k)?;
            }
            *solution.get_mut(i)? = value / *lower.get(i)?.get(i)?;
        }
        for (value, scale) in solution.iter_mut().zip(scale) {
            *value /= scale;
        }
        Some(solution)
    }
}

/// Eight rows: x, y, weights. Missing rows at the end repeat the last x with weight 0.
#[inline(always)]
fn eight(series: &Series<'_>, start: usize) -> (Lanes, Lanes, Lanes) {
    let end = (start + LANES).min(series.len());
    let x = series.x().get(start..end).unwrap_or_default();
    let y = series.y().get(start..end).unwrap_or_default();
    let mut lanes = ([f64::NAN; LANES], [0.0; LANES], [0.0; LANES]);
    let last = x.last().copied().unwrap_or(f64::NAN);
    for place in &mut lanes.0 {
        *place = last;
    }
    for (place, value) in lanes.0.iter_mut().zip(x) {
        *place = *value;
    }
    for (place, value) in lanes.1.iter_mut().zip(y) {
        *place = *value;
    }
    match series.weights() {
        Some(weights) => {
            for (place, value) in lanes.2.iter_mut().zip(weights.get(start..end).unwrap_or_default()) {
                *place = *value;
            }
        }
        None => {
            for (place, _) in lanes.2.iter_mut().zip(x) {
                *place = 1.0;
            }
        }
    }
    (Lanes(lanes.0), Lanes(lanes.1), Lanes(lanes.2))
}

#[inline(always)]
fn inputs<const P: usize>(parameters: [f64; P]) -> [Slopes<P>; P] {
    let mut index = 0;
    parameters.map(|value| {
        let input = Slopes::input(value, index);
        index += 1;
        input
    })
}

#[inline(always)]
fn total(lanes: Lanes) -> f64 {
    let [a, b, c, d, e, f, g, h] = lanes.0;
    ((a + e) + (b + f)) + ((c + g) + (d + h))
}

struct Summing<'a, M, const P: usize> {
    model: &'a M,
    series: &'a Series<'a>,
    parameters: [f64; P],
}

impl<M: Model<P>, const P: usize> pulp::WithSimd for Summing<'_, M, P> {
    type Output = Normal<P>;

    #[inline(always)]
    fn with_simd<T: pulp::Simd>(self, _: T) -> Normal<P> {
        let parameters = inputs(self.parameters);
        let zero = Lanes([0.0; LANES]);
        let (mut product, mut gradient) = ([[zero; P]; P], [zero; P]);
        let (mut squares, mut size) = (zero, zero);
        let mut start = 0;
        while start < self.series.len() {
            let (x, y, weight) = eight(self.series, start);
            let curve = self.model.value(Slopes::constant(x), parameters);
            let residual = curve.value - y;
            let weighted = residual * weight;
            squares = squares + weighted * residual;
            size = size + y * y * weight;
            for (i, row) in product.iter_mut().enumerate() {
                let Some(mine) = curve.by.get(i) else { break };
                for (entry, other) in row.iter_mut().zip(&curve.by).take(i + 1) {
                    *entry = *entry + *mine * *other * weight;
                }
            }
            for (entry, mine) in gradient.iter_mut().zip(&curve.by) {
                *entry = *entry + *mine * weighted;
            }
            start += LANES;
        }
        Normal {
            product: product.map(|row| row.map(total)),
            gradient: gradient.map(total),
            sum_of_squares: total(squares),
            size: total(size),
        }
    }
}

struct Filling<'a, M, const P: usize> {
    model: &'a M,
    series: &'a Series<'a>,
    parameters: [f64; P],
    residuals: &'a mut [f64],
    columns: &'a mut [Vec<f64>; P],
}

impl<M: Model<P>, const P: usize> pulp::WithSimd for Filling<'_, M, P> {
    type Output = ();

    #[inline(always)]
    fn with_simd<T: pulp::Simd>(self, _: T) {
        let parameters = inputs(self.parameters);
        let mut start = 0;
        for chunk in self.residuals.chunks_mut(LANES) {
            let (x, y, _) = eight(self.series, start);
            let curve = self.model.value(Slopes::constant(x), parameters);
            for ((place, y), curve) in chunk.iter_mut().zip(y.0).zip(curve.value.0) {
                *place = y - curve;
            }
            for (column, by) in self.columns.iter_mut().zip(curve.by) {
                column.extend(by.0.into_iter().take(chunk.len()));
            }
            start += LANES;
        }
    }
}

/// The derivatives of the curve by each number, and y less the curve, row by row; without weights.
pub(super) fn jacobian<M: Model<P>, const P: usize>(
    model: &M,
    series: &Series<'_>,
    parameters: [f64; P],
    residuals: &mut [f64],
) -> [Vec<f64>; P] {
    let mut columns = std::array::from_fn(|_| Vec::with_capacity(series.len()));
    pulp::Arch::new().dispatch(Filling { model, series, parameters, residuals, columns: &mut columns });
    columns
}

/// The problem as the crate levenberg-marquardt wants it: only the numbers that are fitted.
struct Problem<'a, M, const P: usize> {
    model: &'a M,
    goal: &'a Goal<'a, P>,
    parameters: [f64; P],
    roots: Vec<f64>,
}

/// What stands for a residual that is not a number: so large that the step is taken back and made shorter.
const OUT_OF_BOUNDS: f64 = 1e150;

impl<M: Model<P>, const P: usize> LeastSquaresProblem<f64, Dyn, Dyn> for Problem<'_, M, P> {
    type ResidualStorage = VecStorage<f64, Dyn, nalgebra_of_the_minimiser::U1>;
    type JacobianStorage = VecStorage<f64, Dyn, Dyn>;
    type ParameterStorage = VecStorage<f64, Dyn, nalgebra_of_the_minimiser::U1>;

    fn set_params(&mut self, x: &DVector<f64>) {
        let free = self.parameters.iter_mut().zip(self.goal.free).filter(|(_, free)| *free);
        for ((parameter, _), value) in free.zip(x.iter()) {
            *parameter = *value;
        }
    }

    fn params(&self) -> DVector<f64> {
        let free = self.parameters.iter().zip(self.goal.free).filter(|(_, free)| *free);
        DVector::from_vec(free.map(|(parameter, _)| *parameter).collect())
    }

    fn residuals(&self) -> Option<DVector<f64>> {
        let mut values = vec![0.0; self.goal.series.len()];
        jacobian(self.model, self.goal.series, self.parameters, &mut values);
        for (value, root) in values.iter_mut().zip(&self.roots) {
            *value = if value.is_finite() { -*value * root } else { OUT_OF_BOUNDS };
        }
        Some(DVector::from_vec(values))
    }

    fn jacobian(&self) -> Option<DMatrix<f64>> {
        let rows = self.goal.series.len();
        let columns = jacobian(self.model, self.goal.series, self.parameters, &mut vec![0.0; rows]);
        let mut values = Vec::with_capacity(rows * P);
        for (column, _) in columns.iter().zip(self.goal.free).filter(|(_, free)| *free) {
            values.extend(column.iter().zip(&self.roots).map(|(value, root)| value * root));
        }
        let order = values.len().checked_div(rows)?;
        Some(DMatrix::from_vec(rows, order, values))
    }
}

/// Near to a minimum, and how often the curve was computed. It need not have converged: that is judged afterwards.
fn levenberg_marquardt<M: Model<P>, const P: usize>(
    model: &M,
    goal: &Goal<'_, P>,
    start: [f64; P],
    step_bound: f64,
) -> ([f64; P], usize) {
    let roots = goal.series.weight_of_each().map(f64::sqrt).collect();
    let problem = Problem { model, goal, parameters: start, roots };
    let (problem, report) = LevenbergMarquardt::new()
        .with_stepbound(step_bound)
        .with_ftol(1e-12)
        .with_xtol(1e-10)
        .with_gtol(1e-10)
        .with_patience(100)
        .minimize(problem);
    (problem.parameters, report.number_of_evaluations)
}
