//! Several numbers side by side, for columns of readings.

// Plain loops and no `map` over the array: `map` is not always inlined, and code that is not inlined is compiled without
// the instruction set that `fill` chooses and does not work on several numbers at once (13 instead of 3 ns a value).

use std::array::from_fn;
use std::ops::{Add, Div, Mul, Neg, Sub};

use super::elementary::{self, Plain};
use super::{Scalar, Unity};

/// How many numbers are worked on together: eight were as fast as four and faster than sixteen or more on AVX2
/// and on AVX-512 (the bench `lanes` measures it).
pub const LANES: usize = 8;

/// `N` numbers, each operation carried out on all of them.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Lanes<const N: usize = LANES>(pub [f64; N]);

macro_rules! elementwise {
    ($operator:ident, $method:ident) => {
        impl<const N: usize> $operator for Lanes<N> {
            type Output = Self;
            #[inline(always)]
            fn $method(mut self, other: Self) -> Self {
                for (a, b) in self.0.iter_mut().zip(other.0) {
                    *a = <f64 as $operator>::$method(*a, b);
                }
                self
            }
        }

        impl<const N: usize> $operator<f64> for Lanes<N> {
            type Output = Self;
            #[inline(always)]
            fn $method(mut self, other: f64) -> Self {
                for a in &mut self.0 {
                    *a = <f64 as $operator>::$method(*a, other);
                }
                self
            }
        }
    };
}

elementwise!(Add, add);
elementwise!(Sub, sub);
elementwise!(Mul, mul);
elementwise!(Div, div);

impl<const N: usize> Neg for Lanes<N> {
    type Output = Self;
    #[inline(always)]
    fn neg(self) -> Self {
        let mut negative = self;
        for place in &mut negative.0 {
            *place = -*place;
        }
        negative
    }
}

impl<const N: usize> Div<Unity> for Lanes<N> {
    type Output = Self;
    #[inline(always)]
    fn div(self, _: Unity) -> Self {
        self
    }
}

impl<const N: usize> Plain for Lanes<N> {
    #[inline(always)]
    fn on_bits(self, change: impl Fn(u64) -> u64) -> Self {
        let mut changed = self;
        for place in &mut changed.0 {
            *place = place.on_bits(&change);
        }
        changed
    }

    #[inline(always)]
    fn choose_within(self, least: f64, greatest: f64, then: Self, otherwise: Self) -> Self {
        let mut chosen = then;
        for ((place, tested), other) in chosen.0.iter_mut().zip(self.0).zip(otherwise.0) {
            *place = tested.choose_within(least, greatest, *place, other);
        }
        chosen
    }

    #[inline(always)]
    fn everywhere(value: f64) -> Self {
        Lanes([value; N])
    }
}

impl<const N: usize> Scalar for Lanes<N> {
    #[inline(always)]
    fn number(value: f64) -> Self {
        Lanes([value; N])
    }

    #[inline(always)]
    fn exp(self) -> Self {
        elementary::exp(self)
    }

    #[inline(always)]
    fn ln(self) -> Self {
        elementary::ln(self)
    }

    #[inline(always)]
    fn sqrt(self) -> Self {
        let mut roots = self;
        for place in &mut roots.0 {
            *place = f64::sqrt(*place);
        }
        roots
    }

    #[inline(always)]
    fn sin(self) -> Self {
        elementary::sin(self)
    }

    #[inline(always)]
    fn look_up<const M: usize>(self, find: impl Fn(f64) -> [f64; M]) -> [Self; M] {
        let mut found = [Self::number(f64::NAN); M];
        for (row, value) in self.0.into_iter().enumerate() {
            for (lanes, number) in found.iter_mut().zip(find(value)) {
                if let Some(place) = lanes.0.get_mut(row) {
                    *place = number;
                }
            }
        }
        found
    }

    #[inline(always)]
    fn where_within(self, tested: Self, least: f64, greatest: f64) -> Self {
        tested.choose_within(least, greatest, self, Self::number(f64::NAN))
    }
}

impl<const N: usize> Lanes<N> {
    /// Takes up to `N` numbers from a column; places beyond its end hold NaN.
    #[must_use]
    #[inline(always)]
    pub fn load(column: &[f64]) -> Self {
        let mut rest = column.iter().copied();
        Lanes(from_fn(|_| rest.next().unwrap_or(f64::NAN)))
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    proptest! {
        #[test]
        fn every_operation_is_that_of_the_number(a: [f64; LANES], b: [f64; LANES], c: f64) {
            let same = |lanes: Lanes, number: &dyn Fn(f64, f64) -> f64| {
                (0..LANES).all(|i| {
                    let expected = number(a[i], b[i]);
                    lanes.0[i].to_bits() == expected.to_bits() || (lanes.0[i].is_nan() && expected.is_nan())
                })
            };
            let (x, y) = (Lanes(a), Lanes(b));
            prop_assert!(same(x + y, &|a, b| a + b));
            prop_assert!(same(x - y, &|a, b| a - b));
            prop_assert!(same(x * y, &|a, b| a * b));
            prop_assert!(same(x / y, &|a, b| a / b));
            prop_assert!(same(x + c, &|a, _| a + c));
            prop_assert!(same(x - c, &|a, _| a - c));
            prop_assert!(same(x * c, &|a, _| a * c));
            prop_assert!(same(x / c, &|a, _| a / c));
            prop_assert!(same(-x, &|a, _| -a));
            prop_assert!(same(x / Unity, &|a, _| a));
            prop_assert!(same(x.exp(), &|a, _| Scalar::exp(a)));
            prop_assert!(same(x.ln(), &|a, _| Scalar::ln(a)));
            prop_assert!(same(x.sqrt(), &|a, _| a.sqrt()));
            prop_assert!(same(x.sin(), &|a, _| Scalar::sin(a)));
            let halves = |a: f64| [a / 2.0, a.floor()];
            let [half, floor] = x.look_up(halves);
            prop_assert!(same(half, &|a, _| a / 2.0));
            prop_assert!(same(floor, &|a, _| a.floor()));
            prop_assert!(same(x.within(-1.0, 1e3), &|a, _| a.within(-1.0, 1e3)));
            prop_assert!(same(Lanes::number(c), &|_, _| c));
        }
    }

    #[test]
    fn a_short_column_is_filled_up_with_nan() {
        let lanes = Lanes::<4>::load(&[1.0, 2.0]);
        assert_eq!(lanes.0[..2], [1.0, 2.0]);
        assert!(lanes.0[2].is_nan() && lanes.0[3].is_nan());
    }
}
