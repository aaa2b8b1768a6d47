//! Air still in the train: how much oxygen each vessel holds.
//!
//! The flask is taken as well mixed and the gas passes at constant pressure: after a volume `v` has left, the share of
//! air in what leaves is exp(-v/V(free)). A vessel filled between v1 and v2 holds on average
//!
//! ```text
//! x = 1 - x(air) V(free)/(v2 - v1) [exp(-v1/V(free)) - exp(-v2/V(free))]
//! ```
//!
//! Gas that pushes the air before it does better, gas that slips past it does worse: the assumption is cautious for
//! a flask with its outlet at the top. Fractions are by amount of dry gas.

use crate::bounds::{self, Bound};
use crate::reference::constants::AIR_NOT_OXYGEN;
use crate::scalar::{Formula, Scalar, Symbol};
use crate::symbols;
use crate::units::{Dimensioned, Volume};

/// Fraction of oxygen in the gas that leaves after `passed` has left.
#[inline(always)]
pub fn leaving_fraction<S: Scalar>(passed: Volume<S>, free: Volume<S>) -> S {
    let left = (-(passed / free).into_value()).exp();
    (S::number(1.0) - S::constant(&AIR_NOT_OXYGEN) * left).checkpoint(&symbols::OXYGEN_FRACTION)
}

/// Mean fraction of oxygen in a vessel filled after `before` has passed.
#[inline(always)]
pub fn mean_fraction<S: Scalar>(before: Volume<S>, vessel: Volume<S>, free: Volume<S>) -> S {
    let start = (-(before / free).into_value()).exp();
    let fill = (-(vessel / free).into_value()).exp();
    let air = start * (S::number(1.0) - fill) * (free / vessel).into_value();
    (S::number(1.0) - S::constant(&AIR_NOT_OXYGEN) * air).checkpoint(&symbols::OXYGEN_FRACTION)
}

/// How much must have passed before a vessel is filled, for its mean fraction to be `wanted`; below 0 where even the
/// first gas would do.
#[inline(always)]
pub fn passed_for_fraction<S: Scalar>(wanted: S, vessel: Volume<S>, free: Volume<S>) -> Volume<S> {
    let fill = (-(vessel / free).into_value()).exp();
    let first = S::constant(&AIR_NOT_OXYGEN) * (S::number(1.0) - fill) * (free / vessel).into_value();
    Volume::new(free.si() * (first / (S::number(1.0) - wanted)).ln()).checkpoint(&symbols::REJECTED_VOLUME)
}

/// `oxygen_fraction(rejected_cm3, volume_cm3, free_volume_cm3)`: the mean fraction in a vessel of `volume_cm3` filled
/// after `rejected_cm3` has passed.
///
/// ```
/// use overwater::apparatus::purity::MeanOxygenFraction;
/// use overwater::scalar::Formula;
/// // A well-mixed free volume of 235 cm3, 300 cm3 rejected, then 250 cm3 jars: 0.864, 0.953 (closed form).
/// let first = MeanOxygenFraction.number([300.0, 250.0, 235.0])?;
/// let second = MeanOxygenFraction.number([550.0, 250.0, 235.0])?;
/// assert!((first - 0.864).abs() < 5e-4 && (second - 0.953).abs() < 5e-4);
/// # Ok::<(), overwater::Error>(())
/// ```
#[derive(Debug, Clone, Copy, Default)]
pub struct MeanOxygenFraction;

impl Formula<3> for MeanOxygenFraction {
    const NAME: &'static str = "oxygen_fraction";

    fn inputs(&self) -> [&'static Bound; 3] {
        [&bounds::REJECTED_CM3, &bounds::VOLUME_CM3, &bounds::FREE_VOLUME_CM3]
    }

    fn output(&self) -> &'static Symbol {
        &symbols::OXYGEN_FRACTION
    }

    #[inline(always)]
    fn evaluate<S: Scalar>(&self, [before, vessel, free]: [S; 3]) -> S {
        let before = Volume::new(before.enter(&symbols::REJECTED_VOLUME));
        let vessel = Volume::new(vessel.enter(&symbols::VOLUME));
        let free = Volume::new(free.enter(&symbols::FREE_VOLUME));
        mean_fraction(before, vessel, free).leave(&symbols::OXYGEN_FRACTION)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    proptest! {
        #[test]
        fn the_mean_lies_between_the_first_and_the_last_gas(
            before in 0.0..2000.0_f64,
            vessel in 1.0..2000.0_f64,
            free in 20.0..2000.0_f64,
        ) {
            let mean = mean_fraction(Volume::new(before), Volume::new(vessel), Volume::new(free));
            let first = leaving_fraction(Volume::new(before), Volume::new(free));
            let last = leaving_fraction(Volume::new(before + vessel), Volume::new(free));
            prop_assert!(first <= mean + 1e-12 && mean <= last + 1e-12, "{first} {mean} {last}");
        }

        #[test]
        fn rejecting_what_is_asked_gives_the_fraction_wanted(
            wanted in 0.5..0.999_f64,
            vessel in 20.0..500.0_f64,
            free in 40.0..500.0_f64,
        ) {
            let passed = passed_for_fraction(wanted, Volume::new(vessel), Volume::new(free));
            let reached = mean_fraction(passed, Volume::new(vessel), Volume::new(free));
            prop_assert!((reached - wanted).abs() < 1e-12);
        }
    }
}
