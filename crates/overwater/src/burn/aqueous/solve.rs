//! The pH at which the charges of a solution add up to nothing.
//!
//! The unknown is x = ln a(H+). At fixed activity coefficients ln(positive/negative charges) grows with x, so that there
//! is one root, which Newton's method finds in few steps (for a strong acid or base the function is a straight line), held
//! between brackets. The activity coefficients follow from the ionic strength found, until they stand still.

use std::f64::consts::LN_10;

use super::balance::{Charges, Mixture, charges, davies, saturation};
use super::constants::{Acid, Constants, Hydroxide};
use crate::reference::davies::DAVIES_GREATEST_1962;
use crate::scalar::Scalar;
use crate::{Code, Error, Result};

/// Where the root is looked for: from pH 20 to pH -4.
const LEAST: f64 = -20.0 * LN_10;
const GREATEST: f64 = 4.0 * LN_10;
const MOST_ROUNDS: usize = 100;
const MOST_STEPS: usize = 100;
const NEWTON_STEPS: usize = 30;
/// From here on a step of Newton's method is good enough to look at the activity coefficients again.
const SMALL_STEP: f64 = 0.3;
/// Change of ln a(H+) and of the activity coefficient below which they stand still.
/// What is left after the last step is less than a tenth of it.
const STILL: f64 = 1e-8;

/// Whether activity coefficients are counted.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Activity {
    /// By Davies's equation: about what a pH meter shows.
    Davies,
    /// All 1: pH as -lg of the concentration, as school problems take it.
    Ideal,
}

/// A solution at equilibrium.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Equilibrium {
    /// -lg of the activity of hydrogen ions.
    pub ph: f64,
    /// Ionic strength (mol/dm3).
    pub ionic_strength: f64,
    /// Whether that is within the range of Davies's equation.
    pub is_dilute: bool,
    /// Activity coefficient of an ion of one charge.
    pub activity_coefficient: f64,
    /// How much of each hydroxide is dissolved (mol/dm3), in the order of [`Hydroxide::ALL`].
    pub dissolved: [f64; Hydroxide::ALL.len()],
}

impl Equilibrium {
    /// The solution of a mixture.
    ///
    /// ```
    /// use overwater::burn::aqueous::{Acid, Activity, Constants, Equilibrium, Mixture};
    /// use overwater::units::Temperature;
    /// // Hydrochloric acid would be 1.00; phosphoric acid of 0.1 mol/dm3 with pKa 2.16, by the quadratic formula: 1.637.
    /// let constants = Constants::at(Temperature::new(298.15));
    /// let mixture = Mixture::water().with_acid(Acid::Phosphoric, 0.1);
    /// let solution = Equilibrium::of(&mixture, &constants, Activity::Ideal)?;
    /// assert!((solution.ph - 1.637).abs() < 0.001);
    /// # Ok::<(), overwater::Error>(())
    /// ```
    ///
    /// # Errors
    /// `cannot_be_met` where no pH from -4 to 20 makes the charges add up, as for concentrations that are not numbers.
    pub fn of(mixture: &Mixture<f64>, constants: &Constants<f64>, activity: Activity) -> Result<Self> {
        let mut x = first_guess(mixture, constants);
        let mut g = 1.0;
        for _ in 0..MOST_ROUNDS {
            let (root, step, strength) = at_fixed_coefficient(mixture, constants, x, g)?;
            let counted = strength.min(DAVIES_GREATEST_1962.value);
            let next = match activity {
                Activity::Davies => davies(counted),
                Activity::Ideal => 1.0,
            };
            let is_still = (next - g).abs() < STILL && step.abs() < STILL;
            (x, g) = (root, next);
            if is_still {
                let a = Scalar::exp(x);
                return Ok(Equilibrium {
                    ph: -x / LN_10,
                    ionic_strength: strength,
                    is_dilute: strength <= DAVIES_GREATEST_1962.value,
                    activity_coefficient: g,
                    dissolved: dissolved(mixture, constants, a, g)
                        .map(|amount| amount.map_or(0.0, |[amount, _]| amount)),
                });
            }
        }
        Err(no_solution())
    }

    /// The share of an acid that is uncharged, of all that is dissolved of it.
    #[must_use]
    pub fn uncharged_share(&self, acid: Acid, constants: &Constants<f64>) -> f64 {
        let g = self.activity_coefficient;
        let activity = Scalar::exp(-self.ph * LN_10);
        let mut weight = 1.0;
        let mut sum = 1.0;
        let mut now = f64::from(acid.charge());
        for constant in constants.of(acid) {
            weight *= constant / activity * g.powf(2.0 * now - 1.0);
            now -= 1.0;
            sum += weight;
        }
        1.0 / sum
    }
}

fn no_solution() -> Error {
    Error::new(Code::CannotBeMet, "mixture")
        .allowed("concentrations of 0 or more")
        .advice("no pH makes the charges of this solution add up; give amounts that fit into the water")
}

/// Strong acid or base, or water: what the root would be if nothing else were there.
fn first_guess(mixture: &Mixture<f64>, constants: &Constants<f64>) -> f64 {
    let hydroxides: f64 = mixture.hydroxides.iter().flatten().sum();
    let metal = mixture.univalent + hydroxides * 2.0;
    let hydroxide = 0.5 * (metal + (metal * metal + constants.water * 4.0).sqrt());
    Scalar::ln(constants.water / hydroxide).clamp(LEAST, GREATEST)
}

#[inline(always)]
fn dissolved(
    mixture: &Mixture<f64>,
    constants: &Constants<f64>,
    activity: f64,
    g: f64,
) -> [Option<[f64; 2]>; Hydroxide::ALL.len()] {
    let mut found = [None; Hydroxide::ALL.len()];
    for ((place, held), product) in found.iter_mut().zip(&mixture.hydroxides).zip(&constants.hydroxides) {
        if let Some(held) = held {
            let most = saturation(*product, constants.water, activity, g);
            *place = Some(if most < *held { [most, most * 2.0] } else { [*held, 0.0] });
        }
    }
    found
}

/// The root at a fixed activity coefficient, the last step that led to it, and the ionic strength there.
fn at_fixed_coefficient(
    mixture: &Mixture<f64>,
    constants: &Constants<f64>,
    start: f64,
    g: f64,
) -> Result<(f64, f64, f64)> {
    let (mut low, mut high) = (LEAST, GREATEST);
    let mut x = start;
    for count in 0..MOST_STEPS {
        let activity = Scalar::exp(x);
        let solids = dissolved(mixture, constants, activity, g);
        let found = charges(mixture, constants, activity, g, &solids);
        let Charges { positive, negative, positive_slope, negative_slope, twice_strength } = found;
        let excess = Scalar::ln(positive / negative);
        if excess > 0.0 {
            high = x;
        } else {
            low = x;
        }
        let newton = x - excess / (positive_slope / positive + negative_slope / negative);
        // Where a solid just dissolves the function has a corner, about which Newton's method may go to and fro.
        let is_newton = count < NEWTON_STEPS && newton >= low && newton <= high;
        let next = if is_newton { newton } else { 0.5 * (low + high) };
        let step = next - x;
        x = next;
        if !step.is_finite() {
            return Err(no_solution());
        }
        if step.abs() < SMALL_STEP {
            return Ok((x, step, 0.5 * twice_strength));
        }
    }
    Err(no_solution())
}
