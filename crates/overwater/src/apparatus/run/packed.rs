//! How a state becomes the plain numbers that the integrator sees, with or without its derivatives.

use super::model::{STATES, State, Valued};
use crate::scalar::Sensitivities;

/// Packed into the numbers that the integrator sees: the value, and its derivatives behind it.
pub(super) trait Packed: Valued {
    const NUMBERS: usize;
    fn unpack(numbers: &[f64]) -> Self;
    fn pack(self, numbers: &mut [f64]);
    fn input(value: f64, index: usize, scale: f64) -> Self;
}

impl Packed for f64 {
    const NUMBERS: usize = 1;
    #[inline(always)]
    fn unpack(numbers: &[f64]) -> Self {
        numbers.first().copied().unwrap_or(f64::NAN)
    }
    #[inline(always)]
    fn pack(self, numbers: &mut [f64]) {
        numbers.fill(self);
    }
    fn input(value: f64, _: usize, _: f64) -> Self {
        value
    }
}

impl<const N: usize> Packed for Sensitivities<N> {
    const NUMBERS: usize = N + 1;
    fn unpack(numbers: &[f64]) -> Self {
        let mut derivatives = [0.0; N];
        for (derivative, number) in derivatives.iter_mut().zip(numbers.iter().skip(1)) {
            *derivative = *number;
        }
        Sensitivities::new(numbers.first().copied().unwrap_or(f64::NAN), derivatives)
    }
    fn pack(self, numbers: &mut [f64]) {
        let all = std::iter::once(Sensitivities::value(&self)).chain(self.derivatives());
        for (number, value) in numbers.iter_mut().zip(all) {
            *number = value;
        }
    }
    fn input(value: f64, index: usize, scale: f64) -> Self {
        let mut derivatives = [0.0; N];
        if let Some(derivative) = derivatives.get_mut(index) {
            *derivative = scale;
        }
        Sensitivities::new(value, derivatives)
    }
}

pub(super) fn unpack<S: Packed, const M: usize>(numbers: &[f64; M]) -> State<S> {
    let mut chunks = numbers.chunks_exact(S::NUMBERS);
    State::from_array(std::array::from_fn::<S, STATES, _>(|_| {
        chunks.next().map_or_else(|| S::number(f64::NAN), S::unpack)
    }))
}

pub(super) fn pack<S: Packed, const M: usize>(state: &State<S>) -> [f64; M] {
    let mut numbers = [0.0; M];
    for (chunk, value) in numbers.chunks_exact_mut(S::NUMBERS).zip(state.array()) {
        value.pack(chunk);
    }
    numbers
}
