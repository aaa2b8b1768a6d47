//! The time to a fixed volume, and what its reciprocal is worth.
//!
//! ```text
//! mean rate = V/t        mean rate / initial rate = X / (-ln(1 - X))     first order, X = V/V(end)
//! ```
//!
//! The mean over the first tenth is 5 % below the initial rate, over the first half 28 %.

use crate::scalar::Scalar;
use crate::symbols;
use crate::units::{Dimensioned, Time, Volume, VolumeFlow};

/// 1/t.
#[inline(always)]
pub fn reciprocal_time<S: Scalar>(time: Time<S>) -> S {
    (S::number(1.0) / time.si()).checkpoint(&symbols::RECIPROCAL_TIME)
}

/// V/t.
#[inline(always)]
pub fn mean_rate<S: Scalar>(volume: Volume<S>, time: Time<S>) -> VolumeFlow<S> {
    (volume / time).checkpoint(&symbols::MEAN_RATE)
}

/// By how much the mean rate differs from the initial rate of a first-order reaction, as a share of it; NaN unless
/// the volume is less than the final one.
///
/// ```
/// use overwater::readings::timing::average_bias;
/// // 0.1/0.105361 - 1, by hand.
/// assert!((average_bias(0.1_f64) + 0.050_878).abs() < 1e-6);
/// ```
#[inline(always)]
pub fn average_bias<S: Scalar>(conversion: S) -> S {
    let left = (-conversion + 1.0).within(f64::MIN_POSITIVE, 1.0);
    (conversion / -left.ln() - 1.0).checkpoint(&symbols::AVERAGE_BIAS)
}
