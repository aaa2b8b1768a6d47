//! The potentials of the elements by a primal-dual interior point method.
//!
//! Mehrotra-like path following (Nocedal and Wright, Numerical Optimization, 2nd edition (2006), chapters 14 and 19): every
//! step solves the optimality conditions, of which the products of multiplier and slack are held at a common value that
//! goes to zero.

use super::system::{Atoms, MOST_ELEMENTS};
use crate::scalar::Scalar;
use nalgebra::SMatrix;

type Square = SMatrix<f64, MOST_ELEMENTS, MOST_ELEMENTS>;

/// What is solved; the amounts of the elements add up to 1.
pub(super) struct Conditions<'a> {
    pub(super) elements: Atoms,
    /// How many of the places are elements.
    pub(super) kinds: usize,
    pub(super) gas_atoms: &'a [Atoms],
    /// G/RT + ln(p/p°).
    pub(super) gas_gibbs: &'a [f64],
    pub(super) condensed_atoms: &'a [Atoms],
    pub(super) condensed_gibbs: &'a [f64],
}

/// A solution.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Point {
    pub(super) potentials: Atoms,
    /// Moles of gas for each mole of atoms.
    pub(super) gas: f64,
    /// Mole fractions of the gases.
    pub(super) fractions: Vec<f64>,
    /// Moles of each condensed phase for each mole of atoms.
    pub(super) condensed: Vec<f64>,
}

/// Where to start from: the potentials, the moles of gas and of each condensed phase of a state near by.
pub(super) struct Start<'a> {
    pub(super) potentials: &'a Atoms,
    pub(super) gas: f64,
    pub(super) condensed: Vec<f64>,
}

/// The gas at some potentials: the logarithm of the sum of what would be mole fractions, and the mean atoms.
struct Gas {
    log_sum: f64,
    mean: Atoms,
}

/// A condition with its multiplier, its slack, and by how much both miss it.
#[derive(Debug, Clone, Copy)]
struct Condition {
    moles: f64,
    slack: f64,
    missed: f64,
    more_moles: f64,
    more_slack: f64,
}

impl Condition {
    fn new(moles: f64, value: f64, least_slack: f64) -> Self {
        let slack = (-value).max(least_slack);
        Condition { moles, slack, missed: value + slack, more_moles: 0.0, more_slack: 0.0 }
    }

    /// What the other conditions leave of the right-hand side, for each unit of its gradient.
    fn pull(&self, aim: f64) -> f64 {
        (aim + self.moles * self.missed) / self.slack
    }

    /// The step that goes with a change of its value by `rise`.
    fn follow(&mut self, aim: f64, rise: f64) {
        self.more_slack = -self.missed - rise;
        self.more_moles = (aim - self.moles * (self.slack + self.more_slack)) / self.slack;
    }

    fn gap(&self) -> f64 {
        self.moles * self.slack
    }
}

impl Conditions<'_> {
    fn gas(&self, potentials: &Atoms, shares: &mut Vec<f64>) -> Gas {
        shares.clear();
        shares.extend(self.gas_atoms.iter().zip(self.gas_gibbs).map(|(a, g)| a.dot(potentials) - g));
        let greatest = shares.iter().copied().fold(f64::NEG_INFINITY, f64::max);
        for share in shares.iter_mut() {
            *share = Scalar::exp(*share - greatest);
        }
        let sum: f64 = shares.iter().sum();
        let mut mean = Atoms::zeros();
        for (share, atoms) in shares.iter_mut().zip(self.gas_atoms) {
            *share /= sum;
            mean += atoms * *share;
        }
        Gas { log_sum: greatest + Scalar::ln(sum), mean }
    }

    /// Potentials, all the same, that leave every condition a slack of one at least.
    fn far_inside(&self) -> Atoms {
        let many = Scalar::ln(self.gas_gibbs.len().max(1) as f64);
        let gases = self.gas_atoms.iter().zip(self.gas_gibbs).map(|(a, g)| (g - many - 1.0) / a.sum());
        let condensed = self.condensed_atoms.iter().zip(self.condensed_gibbs);
        let least = gases.chain(condensed.map(|(a, g)| (g - 1.0) / a.sum())).fold(f64::INFINITY, f64::min);
        let mut filled = Atoms::zeros();
        filled.iter_mut().take(self.kinds).for_each(|place| *place = least);
        filled
    }
}

/// Enough for any mixture; 15 to 30 are usual, 5 to 10 from a state near by.
const MOST_STEPS: usize = 120;
/// After so many, rounding stands in the way.
const USUAL_STEPS: usize = 60;
/// The sum of products of multiplier and slack at the end; it is not sought much smaller, or rounding takes over.
const SMALL: f64 = 1e-8;
/// What is missing of any condition at the end.
const CLOSE: f64 = 1e-9;
/// What may be missing where rounding allows no less.
const CLOSE_ENOUGH: f64 = 1e-6;
/// How much of the way to the nearest boundary a step may go.
const SHORT_OF_BOUNDARY: f64 = 0.995;
/// The least slack and the least multiplier of a start from a state near by.
const NEAR_BY: f64 = 1e-3;
/// The greatest logarithm of the sum of mole fractions that a step may lead to.
const MOST_LOG_SUM: f64 = 1.0;
/// What keeps the matrix regular, for each unit of its trace.
const RIDGE: f64 = 1e-15;

/// The solution; nothing where the steps come to no end.
pub(super) fn solve(conditions: &Conditions<'_>, start: Option<Start<'_>>) -> Option<Point> {
    let mut shares = Vec::with_capacity(conditions.gas_atoms.len());
    let mut potentials = start.as_ref().map_or_else(|| conditions.far_inside(), |start| *start.potentials);
    let mut gas = conditions.gas(&potentials, &mut shares);
    let value = |potentials: &Atoms, (atoms, gibbs): (&Atoms, &f64)| atoms.dot(potentials) - gibbs;
    let phases = || conditions.condensed_atoms.iter().zip(conditions.condensed_gibbs);
    let (mut of_gas, mut condensed) = match start {
        Some(start) => (
            Condition::new(start.gas.max(NEAR_BY), gas.log_sum, NEAR_BY),
            phases()
                .zip(start.condensed)
                .map(|(phase, n)| Condition::new(n.max(NEAR_BY), value(&potentials, phase), NEAR_BY))
                .collect::<Vec<_>>(),
        ),
        None => (
            Condition::new(0.5, gas.log_sum, NEAR_BY),
            phases()
                .map(|phase| {
                    let value = value(&potentials, phase);
                    Condition::new(-0.1 / value, value, NEAR_BY)
                })
                .collect(),
        ),
    };
    let number = 1.0 + condensed.len() as f64;
    let mut centring = 0.1;
    for tried in 0..MOST_STEPS {
        let gap = of_gas.gap() + condensed.iter().map(Condition::gap).sum::<f64>();
        let mut missing = conditions.elements - gas.mean * of_gas.moles;
        let mut missed = of_gas.missed.abs();
        for (condition, atoms) in condensed.iter().zip(conditions.condensed_atoms) {
            missing -= atoms * condition.moles;
            missed = missed.max(condition.missed.abs());
        }
        let close = if tried < USUAL_STEPS { CLOSE } else { CLOSE_ENOUGH };
        if gap < SMALL && missing.amax() < close && missed < close {
            let condensed = condensed.iter().map(|condition| condition.moles).collect();
            return Some(Point { potentials, gas: of_gas.moles, fractions: shares, condensed });
        }
        let aim = (centring * gap).max(0.1 * SMALL) / number;
        // (n ∇²f + Σ (n/s) ∇f ∇f') Δπ = b - Σ pull ∇f
        let mut matrix = Square::zeros();
        for (share, atoms) in shares.iter().zip(conditions.gas_atoms) {
            matrix.ger(of_gas.moles * share, atoms, atoms, 1.0);
        }
        matrix.ger(of_gas.moles / of_gas.slack - of_gas.moles, &gas.mean, &gas.mean, 1.0);
        let mut right = conditions.elements - gas.mean * of_gas.pull(aim);
        for (condition, atoms) in condensed.iter().zip(conditions.condensed_atoms) {
            matrix.ger(condition.moles / condition.slack, atoms, atoms, 1.0);
            right -= atoms * condition.pull(aim);
        }
        let step = regular(&matrix, conditions.kinds, &right)?;
        of_gas.follow(aim, gas.mean.dot(&step));
        for (condition, atoms) in condensed.iter_mut().zip(conditions.condensed_atoms) {
            condition.follow(aim, atoms.dot(&step));
        }
        // As far as every slack and every multiplier stays positive.
        let (mut length, mut of_moles) = (1.0_f64, 1.0_f64);
        for condition in condensed.iter().chain([&of_gas]) {
            if condition.more_slack < 0.0 {
                length = length.min(-SHORT_OF_BOUNDARY * condition.slack / condition.more_slack);
            }
            if condition.more_moles < 0.0 {
                of_moles = of_moles.min(-SHORT_OF_BOUNDARY * condition.moles / condition.more_moles);
            }
        }
        let mut next = potentials + step * length;
        gas = conditions.gas(&next, &mut shares);
        while gas.log_sum > MOST_LOG_SUM.max(of_gas.missed) {
            length *= 0.5;
            if length < f64::EPSILON {
                return None;
            }
            next = potentials + step * length;
            gas = conditions.gas(&next, &mut shares);
        }
        potentials = next;
        let advance = |condition: &mut Condition, value: f64| {
            condition.slack += length * condition.more_slack;
            condition.moles += of_moles * condition.more_moles;
            condition.missed = value + condition.slack;
        };
        advance(&mut of_gas, gas.log_sum);
        for (condition, phase) in condensed.iter_mut().zip(phases()) {
            advance(condition, value(&potentials, phase));
        }
        let least = length.min(of_moles);
        centring = if least > 0.9 {
            0.01
        } else if least > 0.5 {
            0.1
        } else {
            0.4
        };
    }
    None
}

/// The solution of a symmetric system whose places beyond `kinds` are empty; with a growing ridge where it is singular.
fn regular(matrix: &Square, kinds: usize, right: &Atoms) -> Option<Atoms> {
    let mut ridge = RIDGE * matrix.trace();
    for _ in 0..8 {
        let mut filled = *matrix;
        let mut diagonal = filled.diagonal();
        for (index, place) in diagonal.iter_mut().enumerate() {
            *place += if index < kinds { ridge } else { 1.0 };
        }
        filled.set_diagonal(&diagonal);
        if let Some(factored) = filled.cholesky() {
            let step = factored.solve(right);
            return step.iter().all(|value| value.is_finite()).then_some(step);
        }
        ridge *= 100.0;
    }
    None
}
