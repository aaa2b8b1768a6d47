//! How fast peroxide decomposes on a catalyst.
//!
//! ```text
//! r    = k(T) m cⁿ                 power law: m mass of catalyst, c concentration, n order
//! r    = k(T) m c / (K + c)        saturating (Michaelis and Menten), for enzymes
//! k(T) = k(20 degC) exp(-E/R (1/T - 1/293.15 K))
//! ```
//!
//! In SI units r is in mol/s, m in kg, c in mol/m3, K in mol/m3 and E in J/mol. For order 1 the liquid of volume V
//! decays with the constant k m/V, whose half-life is ln 2 V/(k m).

use crate::reference::constants::MOLAR_GAS_2019;
use crate::scalar::Scalar;

pub use crate::reference::flask::STATED_AT_K;

/// How the rate depends on the concentration.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Law {
    /// c to the power of the order.
    Power {
        /// Order of the reaction, from 0.5 to 2.
        order: f64,
    },
    /// c/(K + c).
    Saturating {
        /// Concentration K at which the rate is half of its greatest (mol/m3).
        half: f64,
    },
}

/// Catalysed decomposition: the rate constant at 20 degC, its activation energy, and the law.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Kinetics<S = f64> {
    /// k at 20 degC; m3/(kg s) for order 1, mol/(kg s) for the saturating law.
    pub k_at_20: S,
    /// Activation energy (J/mol).
    pub activation: S,
    /// The law.
    pub law: Law,
}

/// exp(-E/R (1/T - 1/T₀)): how many times faster than at T₀ (Arrhenius).
///
/// ```
/// use overwater::peroxide::kinetics::arrhenius;
/// // 50 kJ/mol: 1.97 times as fast at 30 degC as at 20 degC, exp(50000/8.314463 x (1/293.15 - 1/303.15)).
/// assert!((arrhenius(50_000.0, 303.15, 293.15) - 1.967).abs() < 1e-3);
/// ```
#[inline(always)]
pub fn arrhenius<S: Scalar>(activation: S, temperature: S, stated_at: f64) -> S {
    let difference = S::number(1.0) / temperature - 1.0 / stated_at;
    (-(activation * difference).over(&MOLAR_GAS_2019)).exp()
}

impl<S: Scalar> Kinetics<S> {
    /// Rate of the decomposition of H2O2 (mol/s) at a temperature (K), a mass of catalyst (kg) and a concentration
    /// (mol/m3). NaN for a concentration that is not above 0 where the order is not 1.
    #[inline(always)]
    pub fn rate(&self, temperature: S, catalyst: S, concentration: S) -> S {
        let k = self.k_at_20 * arrhenius(self.activation, temperature, STATED_AT_K);
        k * catalyst
            * match self.law {
                Law::Power { order: 1.0 } => concentration,
                Law::Power { order } => (concentration.ln() * order).exp(),
                Law::Saturating { half } => concentration / (concentration + half),
            }
    }
}

/// Half-life of a first-order decay with the constant `k`: ln 2/k.
///
/// ```
/// use overwater::peroxide::kinetics::half_life;
/// // OpenStax Chemistry 2e (2019), section 12.4: a half-life of 6.00 h belongs to 3.21e-5 per second.
/// assert!((half_life(3.21e-5_f64) / 3600.0 - 6.00).abs() < 0.005);
/// ```
#[inline(always)]
pub fn half_life<S: Scalar>(k: S) -> S {
    S::number(std::f64::consts::LN_2) / k
}

/// What is left of a first-order decay after a time: c₀ exp(-k t).
#[inline(always)]
pub fn first_order<S: Scalar>(start: S, k: S, time: S) -> S {
    start * (-(k * time)).exp()
}

/// A published range of activation energies.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct ActivationRange {
    /// The catalyst.
    pub catalyst: &'static str,
    /// Least value found (kJ/mol).
    pub least: f64,
    /// Greatest value found (kJ/mol).
    pub greatest: f64,
    /// Where these come from.
    pub source: &'static str,
}

/// Activation energies as they are cited: ranges, since sources disagree. Numbers marked "from memory" have not been
/// read in the work that is named.
pub static ACTIVATION_RANGES: [ActivationRange; 5] = [
    ActivationRange {
        catalyst: "none",
        least: 75.0,
        greatest: 76.0,
        source: "Bodner, Purdue University lecture demonstration 19.6 (75); 76 from memory",
    },
    ActivationRange {
        catalyst: "iodide",
        least: 56.0,
        greatest: 56.1,
        source: "Liebhafsky and Mohammad, J. Am. Chem. Soc. 55 (1933) 3977: 13.4 kcal/mol, from memory",
    },
    ActivationRange {
        catalyst: "manganese dioxide",
        least: 40.0,
        greatest: 85.0,
        source: "Elprince and Mohamed, Soil Sci. Soc. Am. J. 56 (1992) 1784: 82 +/- 3 for birnessite; 40 to 60 is common \
                 practice, no source",
    },
    ActivationRange {
        catalyst: "platinum",
        least: 49.0,
        greatest: 49.0,
        source: "Bodner, Purdue University lecture demonstration 19.6",
    },
    ActivationRange {
        catalyst: "catalase",
        least: 5.0,
        greatest: 25.0,
        source: "Bodner, Purdue University lecture demonstration 19.6: below 8; 23 in many textbooks, from memory",
    },
];

/// A typical starting value for powdered manganese dioxide: k = 5e-4 m3/(kg s) at 20 degC, so that 0.4 g in 30 cm3
/// halves the peroxide in 100 s; 50 kJ/mol; order 1. Common practice, no source: bottles differ by a factor of two and
/// more, and only [`calibrate`](crate::apparatus::run::calibrate) knows yours.
pub static TYPICAL_MANGANESE_DIOXIDE: Kinetics =
    Kinetics { k_at_20: 5e-4, activation: 50_000.0, law: Law::Power { order: 1.0 } };

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn typical_powder_halves_the_peroxide_in_a_hundred_seconds() {
        let k = TYPICAL_MANGANESE_DIOXIDE.rate(293.15, 0.4e-3, 1000.0) / (1000.0 * 30e-6);
        assert!((half_life(k) - 103.97).abs() < 0.01, "{}", half_life(k));
    }

    #[test]
    fn the_laws_meet_where_they_must() {
        let at = |law, c| Kinetics { k_at_20: 2.0, activation: 0.0, law }.rate(300.0, 3.0, c);
        assert!((at(Law::Power { order: 2.0 }, 5.0) - 150.0).abs() < 1e-12);
        assert_eq!(at(Law::Power { order: 1.0 }, 5.0), 30.0);
        // At c = K half of the greatest rate, 2 x 3 / 2.
        assert_eq!(at(Law::Saturating { half: 7.0 }, 7.0), 3.0);
        assert!(at(Law::Power { order: 0.5 }, -1.0).is_nan());
    }

    #[test]
    fn ranges_are_ranges() {
        for range in ACTIVATION_RANGES {
            assert!(range.least <= range.greatest && range.least > 0.0 && !range.source.is_empty());
        }
    }
}
