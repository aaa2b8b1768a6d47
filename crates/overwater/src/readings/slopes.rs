//! Eight numbers side by side, each with its derivative by every fitted number: what a Jacobian is filled with.

use std::ops::{Add, Div, Mul, Neg, Sub};

use crate::scalar::{Lanes, Scalar, Unity};

/// As [`crate::scalar::Sensitivities`], for eight rows at a time.
#[derive(Debug, Clone, Copy)]
pub(super) struct Slopes<const P: usize> {
    pub(super) value: Lanes,
    pub(super) by: [Lanes; P],
}

impl<const P: usize> Slopes<P> {
    /// A number that does not depend on what is fitted.
    #[inline(always)]
    pub(super) fn constant(value: Lanes) -> Self {
        Slopes { value, by: [Lanes([0.0; 8]); P] }
    }

    /// The fitted number `index`, the same in every row.
    #[inline(always)]
    pub(super) fn input(value: f64, index: usize) -> Self {
        let mut input = Slopes::constant(Lanes([value; 8]));
        if let Some(own) = input.by.get_mut(index) {
            *own = Lanes([1.0; 8]);
        }
        input
    }

    /// The chain rule.
    #[inline(always)]
    fn chain(self, value: Lanes, slope: Lanes) -> Self {
        let mut by = self.by;
        for own in &mut by {
            *own = *own * slope;
        }
        Slopes { value, by }
    }

    /// Both derivatives, each times its factor, added.
    #[inline(always)]
    fn join(self, other: Self, value: Lanes, mine: Lanes, theirs: Lanes) -> Self {
        let mut by = self.by;
        for (own, add) in by.iter_mut().zip(other.by) {
            *own = *own * mine + add * theirs;
        }
        Slopes { value, by }
    }
}

impl<const P: usize> Add for Slopes<P> {
    type Output = Self;
    #[inline(always)]
    fn add(mut self, other: Self) -> Self {
        self.value = self.value + other.value;
        for (own, add) in self.by.iter_mut().zip(other.by) {
            *own = *own + add;
        }
        self
    }
}

impl<const P: usize> Sub for Slopes<P> {
    type Output = Self;
    #[inline(always)]
    fn sub(mut self, other: Self) -> Self {
        self.value = self.value - other.value;
        for (own, less) in self.by.iter_mut().zip(other.by) {
            *own = *own - less;
        }
        self
    }
}

impl<const P: usize> Mul for Slopes<P> {
    type Output = Self;
    #[inline(always)]
    fn mul(self, other: Self) -> Self {
        self.join(other, self.value * other.value, other.value, self.value)
    }
}

impl<const P: usize> Div for Slopes<P> {
    type Output = Self;
    #[inline(always)]
    fn div(self, other: Self) -> Self {
        let value = self.value / other.value;
        let reciprocal = Lanes([1.0; 8]) / other.value;
        self.join(other, value, reciprocal, -(value * reciprocal))
    }
}

impl<const P: usize> Add<f64> for Slopes<P> {
    type Output = Self;
    #[inline(always)]
    fn add(mut self, other: f64) -> Self {
        self.value = self.value + other;
        self
    }
}

impl<const P: usize> Sub<f64> for Slopes<P> {
    type Output = Self;
    #[inline(always)]
    fn sub(mut self, other: f64) -> Self {
        self.value = self.value - other;
        self
    }
}

impl<const P: usize> Mul<f64> for Slopes<P> {
    type Output = Self;
    #[inline(always)]
    fn mul(self, other: f64) -> Self {
        self.chain(self.value * other, Lanes([other; 8]))
    }
}

impl<const P: usize> Div<f64> for Slopes<P> {
    type Output = Self;
    #[inline(always)]
    fn div(self, other: f64) -> Self {
        self.chain(self.value / other, Lanes([1.0 / other; 8]))
    }
}

impl<const P: usize> Div<Unity> for Slopes<P> {
    type Output = Self;
    #[inline(always)]
    fn div(self, _: Unity) -> Self {
        self
    }
}

impl<const P: usize> Neg for Slopes<P> {
    type Output = Self;
    #[inline(always)]
    fn neg(mut self) -> Self {
        self.value = -self.value;
        for own in &mut self.by {
            *own = -*own;
        }
        self
    }
}

impl<const P: usize> Scalar for Slopes<P> {
    #[inline(always)]
    fn number(value: f64) -> Self {
        Slopes::constant(Lanes([value; 8]))
    }

    #[inline(always)]
    fn exp(self) -> Self {
        let value = self.value.exp();
        self.chain(value, value)
    }

    #[inline(always)]
    fn ln(self) -> Self {
        self.chain(self.value.ln(), Lanes([1.0; 8]) / self.value)
    }

    #[inline(always)]
    fn sqrt(self) -> Self {
        let root = self.value.sqrt();
        self.chain(root, Lanes([0.5; 8]) / root)
    }

    #[inline(always)]
    fn sin(self) -> Self {
        let sine = self.value.sin();
        let one = Lanes([1.0; 8]);
        self.chain(sine, ((one - sine) * (one + sine)).sqrt())
    }

    #[inline(always)]
    fn look_up<const M: usize>(self, find: impl Fn(f64) -> [f64; M]) -> [Self; M] {
        self.value.look_up(find).map(Slopes::constant)
    }

    #[inline(always)]
    fn where_within(mut self, tested: Self, least: f64, greatest: f64) -> Self {
        self.value = self.value.where_within(tested.value, least, greatest);
        for own in &mut self.by {
            *own = own.where_within(tested.value, least, greatest);
        }
        self
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::scalar::Sensitivities;

    /// A few operations that between them use every rule.
    fn everything<S: Scalar>(x: S, y: S) -> S {
        let kept = (x * y - x / (y + 2.5)).where_within(x, 0.0, 2.5);
        let [step] = x.look_up(|x| [x.floor()]);
        let kept = kept + (y / 7.0).sin() * step;
        (kept.exp() + (x * x + y * 0.5).ln() - (-y).power(3) / 7.0 + x.sqrt() * 3.0) - 1.0
    }

    #[test]
    fn eight_rows_agree_with_one_at_a_time() {
        let x: [f64; 8] = [0.1, 0.5, 0.9, 1.3, 1.7, 2.1, 2.5, 2.9];
        let y = 1.37;
        let rows = Slopes::<2> { value: Lanes(x), by: [Lanes([1.0; 8]), Lanes([0.0; 8])] };
        let wide = everything(rows, Slopes::input(y, 1));
        let mut compared = 0;
        for (row, x) in x.into_iter().enumerate() {
            let single = everything(Sensitivities::<2>::input(x, 0), Sensitivities::input(y, 1));
            let [by_x, by_y] = single.derivatives();
            if x > 2.5 {
                assert!(wide.value.0[row].is_nan() && wide.by[0].0[row].is_nan() && by_x.is_nan());
                continue;
            }
            assert_eq!(wide.value.0[row].to_bits(), single.value().to_bits());
            assert!((wide.by[0].0[row] / by_x - 1.0).abs() < 1e-14, "{x}");
            assert!((wide.by[1].0[row] / by_y - 1.0).abs() < 1e-14, "{x}");
            compared += 1;
        }
        assert_eq!(compared, 7);
        assert_eq!(Slopes::<1>::number(2.0).by[0].0, [0.0; 8]);
    }
}
