//! What is in a solution, and how its charges add up at a given activity of hydrogen ions.
//!
//! ```text
//! [H+] + Σ z [cation] = [OH-] + Σ z [anion]          the charges add up to nothing
//! lg γ(z) = -A z² (√I/(1 + √I) - 0.3 I)              Davies; an uncharged species has γ = 1
//! I = ½ Σ z² c                                       ionic strength
//! ```
//!
//! Davies's equation is used at every ionic strength, not only above 0.001 mol/dm3: a switch there would let the pH jump
//! by 0.02. It is trusted to 0.5 mol/dm3; beyond, its value at 0.5 is kept.

use std::f64::consts::LN_10;

use super::constants::{Acid, Constants, Hydroxide};
use crate::reference::davies::{DAVIES_A_1962, DAVIES_LINEAR_1962};
use crate::scalar::Scalar;
use crate::symbols;

/// One acid with all the forms that it takes in the solution, and as a gas over it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Held<S> {
    /// So much in all (mol for each dm3 of solution), in water and as gas. `gas_ratio` is the amount in the gas over the
    /// amount of the uncharged form in the water: V(gas)/(V(water) H R T); 0 without a gas space.
    Total {
        /// Concentration of all forms together (mol/dm3).
        concentration: S,
        /// Gas over the uncharged form.
        gas_ratio: S,
    },
    /// The uncharged form at a fixed concentration (mol/dm3), as under a gas whose pressure does not change.
    Saturated {
        /// Concentration of the uncharged form (mol/dm3).
        concentration: S,
    },
}

/// What a solution holds, in mol/dm3.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Mixture<S> {
    /// Ions of one positive charge that do nothing else, less ions of one negative charge: Na+, K+, Li+, NH4 salts no.
    pub univalent: S,
    /// Each acid, in the order of [`Acid::ALL`].
    pub acids: [Option<Held<S>>; Acid::ALL.len()],
    /// Each hydroxide, dissolved or not, in the order of [`Hydroxide::ALL`].
    pub hydroxides: [Option<S>; Hydroxide::ALL.len()],
}

impl<S: Scalar> Mixture<S> {
    /// Water with nothing in it.
    #[must_use]
    pub fn water() -> Self {
        Mixture {
            univalent: S::number(0.0),
            acids: [None; Acid::ALL.len()],
            hydroxides: [None; Hydroxide::ALL.len()],
        }
    }

    /// The same with so much of an acid in it, and no gas over it.
    #[must_use]
    pub fn with_acid(self, acid: Acid, concentration: S) -> Self {
        self.holding(acid, Held::Total { concentration, gas_ratio: S::number(0.0) })
    }

    /// The same with an acid held in this way.
    #[must_use]
    pub fn holding(mut self, acid: Acid, held: Held<S>) -> Self {
        for (place, known) in self.acids.iter_mut().zip(Acid::ALL) {
            if known == acid {
                *place = Some(held);
            }
        }
        self
    }

    /// The same with so much alkali metal in it.
    #[must_use]
    pub fn with_univalent(self, concentration: S) -> Self {
        Mixture { univalent: self.univalent + concentration, ..self }
    }

    /// The same with so much of a hydroxide, dissolved or not.
    #[must_use]
    pub fn with_hydroxide(mut self, solid: Hydroxide, concentration: S) -> Self {
        for (place, known) in self.hydroxides.iter_mut().zip(Hydroxide::ALL) {
            if known == solid {
                *place = Some(concentration);
            }
        }
        self
    }
}

/// Activity coefficient of an ion of one charge; that of an ion of charge z is its power z².
#[inline(always)]
pub fn davies<S: Scalar>(ionic_strength: S) -> S {
    let root = ionic_strength.sqrt();
    let term = root / (root + 1.0) - ionic_strength * DAVIES_LINEAR_1962.value;
    (term * (-LN_10 * DAVIES_A_1962.value)).exp().checkpoint(&symbols::ACTIVITY_COEFFICIENT)
}

/// The charges of a solution at one activity of hydrogen ions.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Charges<S> {
    /// All positive charges (mol/dm3).
    pub positive: S,
    /// All negative charges, without their sign (mol/dm3).
    pub negative: S,
    /// How fast the positive ones grow with ln a(H+).
    pub positive_slope: S,
    /// How fast the negative ones shrink with ln a(H+).
    pub negative_slope: S,
    /// Twice the ionic strength (mol/dm3).
    pub twice_strength: S,
}

/// What one acid adds to the charges: charge (negative), minus its slope, and the sum of z² c.
#[inline(always)]
fn of_acid<S: Scalar>(held: &Held<S>, charge: i8, steps: &[S; 3], over_activity: S, g: S) -> [S; 3] {
    let whole = f64::from(charge);
    let inverse = S::number(1.0) / g;
    let square = inverse * inverse;
    // From one step to the next the activity coefficients leave γ^(2z - 1), z being the charge before the step.
    let mut factor = if charge == 0 { inverse } else { inverse * square };
    let mut weight = S::number(1.0);
    let mut sum = weight;
    let mut charges = weight * whole;
    let mut squares = weight * (whole * whole);
    let mut now = whole;
    for constant in steps {
        weight = weight * *constant * over_activity * factor;
        factor = factor * square;
        now -= 1.0;
        sum = sum + weight;
        charges = charges + weight * now;
        squares = squares + weight * (now * now);
    }
    match *held {
        Held::Total { concentration, gas_ratio } => {
            let sum = sum + gas_ratio;
            let share = S::number(1.0) / sum;
            let mean = charges * share;
            let square = squares * share;
            [concentration * mean, concentration * (square - mean * mean), concentration * square]
        }
        Held::Saturated { concentration } => {
            [concentration * charges, concentration * (squares - charges * whole), concentration * squares]
        }
    }
}

/// The charges of a solution where the activity of hydrogen ions is `activity` and an ion of one charge has the activity
/// coefficient `g`. `dissolved` says how much of each hydroxide is in solution, and how fast that grows with ln a(H+).
#[inline(always)]
pub fn charges<S: Scalar>(
    mixture: &Mixture<S>,
    constants: &Constants<S>,
    activity: S,
    g: S,
    dissolved: &[Option<[S; 2]>; Hydroxide::ALL.len()],
) -> Charges<S> {
    let over_activity = S::number(1.0) / activity;
    let hydrogen = activity / g;
    let hydroxide = constants.water * over_activity / g;
    let mut positive = hydrogen + mixture.univalent;
    let mut positive_slope = hydrogen;
    let mut negative = hydroxide;
    let mut negative_slope = hydroxide;
    let mut twice_strength = hydrogen + hydroxide + mixture.univalent;
    for ((held, acid), steps) in mixture.acids.iter().zip(Acid::ALL).zip(&constants.acids) {
        if let Some(held) = held {
            let [charge, slope, squares] = of_acid(held, acid.charge(), steps, over_activity, g);
            negative = negative - charge;
            negative_slope = negative_slope + slope;
            twice_strength = twice_strength + squares;
        }
    }
    for [amount, slope] in dissolved.iter().flatten() {
        positive = positive + *amount * 2.0;
        positive_slope = positive_slope + *slope * 2.0;
        twice_strength = twice_strength + *amount * 4.0;
    }
    Charges { positive, negative, positive_slope, negative_slope, twice_strength }
}

/// The most of each hydroxide that stays dissolved: K a² / (Kw² γ⁴), which grows by 2 for each ln a(H+).
#[inline(always)]
pub fn saturation<S: Scalar>(solubility_product: S, water: S, activity: S, g: S) -> S {
    let over_hydroxide = activity / water;
    let square = g * g;
    solubility_product * over_hydroxide * over_hydroxide / (square * square)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::scalar::Sensitivities;
    use crate::units::Temperature;

    #[test]
    fn davies_gives_the_handbook_values() {
        // lg γ = -0.509 (0.2403 - 0.03) at I = 0.1, by hand: 0.7817; the limiting law alone gives 0.690.
        assert!((davies(0.1_f64) - 0.781_6).abs() < 5e-4);
        assert_eq!(davies(0.0_f64), 1.0);
    }

    #[test]
    fn slopes_are_the_derivatives_of_the_charges() {
        // The derivative by ln a, from dual numbers, of charges that are written without it.
        let one = |value: f64| Sensitivities::<1>::number(value);
        let constants = Constants::at(Temperature::new(one(298.15)));
        let gas = Held::Total { concentration: one(0.03), gas_ratio: one(0.4) };
        let mixture = Mixture::water()
            .with_univalent(one(0.02))
            .holding(Acid::SulfurDioxide, gas)
            .with_acid(Acid::HydrogenSulfate, one(0.01))
            .with_acid(Acid::Phosphoric, one(0.04))
            .holding(Acid::CarbonDioxide, Held::Saturated { concentration: one(0.03) });
        for ph in [1.0, 2.5, 4.0, 7.0, 9.0, 12.0, 13.5] {
            let x = Sensitivities::<1>::input(-ph * LN_10, 0);
            let activity = x.exp();
            let solid = saturation(constants.hydroxides[0], constants.water, activity, one(0.8));
            let dissolved = [Some([solid, solid * 2.0]), Some([one(1e-3), one(0.0)])];
            let found = charges(&mixture, &constants, activity, one(0.8), &dissolved);
            for (value, slope, sign) in
                [(found.positive, found.positive_slope, 1.0), (found.negative, found.negative_slope, -1.0)]
            {
                let [exact] = value.derivatives();
                assert!((sign * exact / slope.value() - 1.0).abs() < 1e-9, "pH {ph}: {exact} {slope:?}");
            }
        }
    }
}
