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

/// The gas at some potentials: the logarithm of the sum of what would be mole fractions, their shares, the mean atoms.
struct Gas {
    log_sum: f64,
    shares: Vec<f64>,
    mean: Atoms,
}

impl Conditions<'_> {
    fn gas(&self, potentials: &Atoms, mut shares: Vec<f64>) -> Gas {
        shares.clear();
        shares.extend(self.gas_atoms.iter().zip(self.gas_gibbs).map(|(a, g)| a.dot(potentials) - g));
        let greatest = shares.iter().copied().fold(f64::NEG_INFINITY, f64::max);
        for share in &mut shares {
            *share = Scalar::exp(*share - greatest);
        }
        let sum: f64 = shares.iter().sum();
        let mut mean = Atoms::zeros();
        for (share, atoms) in shares.iter_mut().zip(self.gas_atoms) {
            *share /= sum;
            mean += atoms * *share;
        }
        Gas { log_sum: greatest + Scalar::ln(sum), shares, mean }
    }

    fn slacks(&self, potentials: &Atoms, slacks: &mut Vec<f64>) {
        slacks.clear();
        let both = self.condensed_atoms.iter().zip(self.condensed_gibbs);
        slacks.extend(both.map(|(a, g)| g - a.dot(potentials)));
    }

    /// Potentials, all the same but for a shift, that leave every condition a slack of one at least.
    fn start(&self) -> Atoms {
        let many = Scalar::ln(self.gas_gibbs.len().max(1) as f64);
        let gases = self.gas_atoms.iter().zip(self.gas_gibbs).map(|(a, g)| (g - many - 1.0) / a.sum());
        let condensed = self.condensed_atoms.iter().zip(self.condensed_gibbs);
        let least = gases.chain(condensed.map(|(a, g)| (g - 1.0) / a.sum())).fold(f64::INFINITY, f64::min);
        self.fill(least)
    }

    fn fill(&self, value: f64) -> Atoms {
        let mut filled = Atoms::zeros();
        filled.iter_mut().take(self.kinds).for_each(|place| *place = value);
        filled
    }
}

/// Enough for any mixture; 15 to 40 are usual.
const MOST_STEPS: usize = 200;
/// The sum of products of multiplier and slack, and the greatest amount of an element that is missing, at the end.
const SMALL: f64 = 1e-11;
/// How much of the way to the nearest boundary a step may go.
const SHORT_OF_BOUNDARY: f64 = 0.995;

/// The solution; nothing where the steps come to no end.
pub(super) fn solve(conditions: &Conditions<'_>, _start: Option<&Point>) -> Option<Point> {
    let mut potentials = conditions.start();
    let mut gas = conditions.gas(&potentials, Vec::with_capacity(conditions.gas_atoms.len()));
    let mut slacks = Vec::with_capacity(conditions.condensed_atoms.len());
    let mut next_slacks = Vec::with_capacity(conditions.condensed_atoms.len());
    conditions.slacks(&potentials, &mut slacks);
    let mut moles = 0.5;
    let mut condensed: Vec<f64> = slacks.iter().map(|slack| 0.1 / slack).collect();
    let mut spare = Vec::with_capacity(conditions.gas_atoms.len());
    let number = 1.0 + slacks.len() as f64;
    let mut centring = 0.3;
    for _ in 0..MOST_STEPS {
        let slack = -gas.log_sum;
        let gap = moles * slack + condensed.iter().zip(&slacks).map(|(n, s)| n * s).sum::<f64>();
        let mut missing = conditions.elements - gas.mean * moles;
        for (n, a) in condensed.iter().zip(conditions.condensed_atoms) {
            missing -= a * *n;
        }
        if gap < SMALL && missing.amax() < SMALL {
            gas.shares.shrink_to_fit();
            return Some(Point { potentials, gas: moles, fractions: gas.shares, condensed });
        }
        let aim = centring * gap / number;
        // (n ∇²f + Σ (n/s) ∇f ∇f') Δπ = b - Σ (aim/s) ∇f
        let mut matrix = Square::identity();
        for index in 0..conditions.kinds {
            matrix[(index, index)] = 0.0;
        }
        for (share, atoms) in gas.shares.iter().zip(conditions.gas_atoms) {
            matrix.ger(moles * share, atoms, atoms, 1.0);
        }
        matrix.ger(moles / slack - moles, &gas.mean, &gas.mean, 1.0);
        let mut right = conditions.elements - gas.mean * (aim / slack);
        for ((n, s), atoms) in condensed.iter().zip(&slacks).zip(conditions.condensed_atoms) {
            matrix.ger(n / s, atoms, atoms, 1.0);
            right -= atoms * (aim / s);
        }
        let ridge = 1e-15 * matrix.trace();
        for index in 0..conditions.kinds {
            matrix[(index, index)] += ridge;
        }
        let step = matrix.cholesky()?.solve(&right);
        // Multipliers.
        let more_gas = (aim - moles * slack + moles * gas.mean.dot(&step)) / slack;
        let more: Vec<f64> = condensed
            .iter()
            .zip(&slacks)
            .zip(conditions.condensed_atoms)
            .map(|((n, s), a)| (aim - n * s + n * a.dot(&step)) / s)
            .collect();
        let mut length = 1.0_f64;
        for (s, a) in slacks.iter().zip(conditions.condensed_atoms) {
            let less = a.dot(&step);
            if less > 0.0 {
                length = length.min(SHORT_OF_BOUNDARY * s / less);
            }
        }
        let mut of_multipliers = 1.0_f64;
        for (n, d) in std::iter::once((&moles, &more_gas)).chain(condensed.iter().zip(&more)) {
            if *d < 0.0 {
                of_multipliers = of_multipliers.min(-SHORT_OF_BOUNDARY * n / d);
            }
        }
        // The gas condition is curved: halve until its slack stays.
        let mut next = potentials + step * length;
        let mut next_gas = conditions.gas(&next, spare);
        while -next_gas.log_sum < (1.0 - SHORT_OF_BOUNDARY) * slack {
            length *= 0.5;
            if length < 1e-12 {
                return None;
            }
            next = potentials + step * length;
            next_gas = conditions.gas(&next, next_gas.shares);
        }
        potentials = next;
        spare = std::mem::replace(&mut gas, next_gas).shares;
        conditions.slacks(&potentials, &mut next_slacks);
        std::mem::swap(&mut slacks, &mut next_slacks);
        let both = length.min(of_multipliers);
        moles += of_multipliers * more_gas;
        for (n, d) in condensed.iter_mut().zip(&more) {
            *n += of_multipliers * d;
        }
        centring = if both > 0.9 {
            0.05
        } else if both > 0.5 {
            0.2
        } else {
            0.5
        };
    }
    None
}
