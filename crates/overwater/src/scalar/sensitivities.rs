//! A number together with its exact derivative by each of `N` inputs.

use std::ops::{Add, Div, Mul, Neg, Sub};

use num_dual::DualSVec64;

use super::{Scalar, Unity};

/// A number and its `N` derivatives (forward differentiation by dual numbers).
///
/// The real part goes through the same operations as a plain number: division and the elementary functions are
/// taken from this crate, since those of the dual-number library round differently in the last bit.
#[derive(Debug, Clone, Copy)]
pub struct Sensitivities<const N: usize>(DualSVec64<N>);

impl<const N: usize> Sensitivities<N> {
    /// The input number `index`, whose derivative by itself is 1; a constant where `index` is not below `N`.
    #[must_use]
    pub fn input(value: f64, index: usize) -> Self {
        let number = DualSVec64::from_re(value);
        Sensitivities(if index < N { number.derivative(index) } else { number })
    }

    /// A number with all its derivatives.
    #[must_use]
    pub fn new(value: f64, derivatives: [f64; N]) -> Self {
        Sensitivities(DualSVec64::new(value, num_dual::Derivative::some(derivatives.into())))
    }

    /// The number.
    #[must_use]
    pub fn value(&self) -> f64 {
        self.0.re
    }

    /// The derivatives, in the order of the inputs.
    #[must_use]
    pub fn derivatives(&self) -> [f64; N] {
        self.0.eps.0.map_or([0.0; N], Into::into)
    }

    /// The chain rule: a new value, and the derivatives times `slope`.
    #[inline(always)]
    fn chain(self, value: f64, slope: f64) -> Self {
        Sensitivities(DualSVec64::new(value, self.0.eps * slope))
    }
}

macro_rules! delegate {
    ($operator:ident, $method:ident, $sign:tt) => {
        impl<const N: usize> $operator for Sensitivities<N> {
            type Output = Self;
            #[inline(always)]
            fn $method(self, other: Self) -> Self {
                Sensitivities(self.0 $sign other.0)
            }
        }

        impl<const N: usize> $operator<f64> for Sensitivities<N> {
            type Output = Self;
            #[inline(always)]
            fn $method(self, other: f64) -> Self {
                Sensitivities(self.0 $sign other)
            }
        }
    };
}

delegate!(Add, add, +);
delegate!(Sub, sub, -);
delegate!(Mul, mul, *);

impl<const N: usize> Div for Sensitivities<N> {
    type Output = Self;
    #[inline(always)]
    fn div(self, other: Self) -> Self {
        let mut quotient = self.0 / other.0;
        quotient.re = self.0.re / other.0.re;
        Sensitivities(quotient)
    }
}

impl<const N: usize> Div<f64> for Sensitivities<N> {
    type Output = Self;
    #[inline(always)]
    fn div(self, other: f64) -> Self {
        Sensitivities(self.0 / other)
    }
}

impl<const N: usize> Div<Unity> for Sensitivities<N> {
    type Output = Self;
    #[inline(always)]
    fn div(self, _: Unity) -> Self {
        self
    }
}

impl<const N: usize> Neg for Sensitivities<N> {
    type Output = Self;
    #[inline(always)]
    fn neg(self) -> Self {
        Sensitivities(-self.0)
    }
}

impl<const N: usize> Scalar for Sensitivities<N> {
    #[inline(always)]
    fn number(value: f64) -> Self {
        Sensitivities(DualSVec64::from_re(value))
    }

    #[inline(always)]
    fn exp(self) -> Self {
        let value = Scalar::exp(self.0.re);
        self.chain(value, value)
    }

    #[inline(always)]
    fn ln(self) -> Self {
        self.chain(Scalar::ln(self.0.re), 1.0 / self.0.re)
    }

    #[inline(always)]
    fn sqrt(self) -> Self {
        let root = self.0.re.sqrt();
        self.chain(root, 0.5 / root)
    }

    /// The derivative is the cosine, taken as the square root of 1 - sin² = (1 - sin)(1 + sin).
    #[inline(always)]
    fn sin(self) -> Self {
        let sine = Scalar::sin(self.0.re);
        self.chain(sine, ((1.0 - sine) * (1.0 + sine)).sqrt())
    }

    #[inline(always)]
    fn look_up<const M: usize>(self, find: impl Fn(f64) -> [f64; M]) -> [Self; M] {
        find(self.0.re).map(Self::number)
    }

    #[inline(always)]
    fn where_within(self, tested: Self, least: f64, greatest: f64) -> Self {
        let value = self.0.re.where_within(tested.0.re, least, greatest);
        if value.is_nan() { self.chain(value, f64::NAN) } else { self }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    /// A few operations that between them use every rule.
    fn everything<S: Scalar>(x: S, y: S) -> S {
        ((x * y - x / (y + 2.5)).exp() + (x * x + y * 0.5).ln() - (-y).power(3) / 7.0 + x.sqrt() * 3.0) - 1.0
    }

    proptest! {
        #[test]
        fn real_part_is_the_number_to_the_bit(x in 0.1..3.0_f64, y in 0.1..3.0_f64) {
            let dual = everything(Sensitivities::<2>::input(x, 0), Sensitivities::<2>::input(y, 1));
            prop_assert_eq!(dual.value().to_bits(), everything(x, y).to_bits());
        }

        #[test]
        fn derivatives_agree_with_the_hand_derivation(x in 0.1..3.0_f64, y in 0.1..3.0_f64) {
            let dual = everything(Sensitivities::<2>::input(x, 0), Sensitivities::<2>::input(y, 1));
            let outer = f64::exp(x * y - x / (y + 2.5));
            let inner = x * x + y * 0.5;
            let by_x = outer * (y - 1.0 / (y + 2.5)) + 2.0 * x / inner + 1.5 / x.sqrt();
            let by_y = outer * (x + x / (y + 2.5).powi(2)) + 0.5 / inner + 3.0 * y * y / 7.0;
            let [dx, dy] = dual.derivatives();
            prop_assert!((dx / by_x - 1.0).abs() < 1e-12, "{dx} {by_x}");
            prop_assert!((dy / by_y - 1.0).abs() < 1e-12, "{dy} {by_y}");
        }
    }

    #[test]
    fn the_derivative_of_the_sine_is_the_cosine() {
        for degrees in [-80.0_f64, -30.0, 0.0, 1.0, 45.0, 89.0] {
            let x = degrees.to_radians();
            let sine = Scalar::sin(Sensitivities::<1>::input(x, 0));
            assert_eq!(sine.value().to_bits(), Scalar::sin(x).to_bits());
            assert!((sine.derivatives()[0] - x.cos()).abs() < 1e-14, "{degrees} degrees");
        }
    }

    #[test]
    fn a_constant_has_no_derivative_and_nan_spreads_to_the_derivatives() {
        assert_eq!(Sensitivities::<2>::number(4.0).derivatives(), [0.0, 0.0]);
        assert_eq!(Sensitivities::<2>::input(4.0, 1).derivatives(), [0.0, 1.0]);
        let outside = Sensitivities::<1>::input(4.0, 0).within(0.0, 3.0);
        assert!(outside.value().is_nan() && outside.derivatives()[0].is_nan());
        let inside = Sensitivities::<1>::input(3.0, 0).within(0.0, 3.0);
        assert_eq!((inside.value(), inside.derivatives()), (3.0, [1.0]));
    }
}
