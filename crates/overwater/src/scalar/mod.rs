//! One formula, many readings.
//!
//! Every formula of the trade is written once, as a function over `S: Scalar`. Choosing `S` chooses what is
//! read from it:
//!
//! | `S` | what is read |
//! |---|---|
//! | `f64` | the number |
//! | [`Lanes`] | eight numbers at a time, for columns |
//! | [`Sensitivities`] | the number and its exact derivative by every input |
//! | [`Working`] | the number and the worked solution that leads to it |
//! | [`Marked`] | the number that follows when a step is replaced, by a student's own value or by a known slip |
//!
//! All five carry out the same floating-point operations in the same order, so that they agree to the bit.

mod elementary;
mod formula;
mod lanes;
mod marked;
mod sensitivities;
mod symbol;
mod table;
mod uncertainty;
mod working;

use std::fmt::Debug;
use std::ops::{Add, Div, Mul, Neg, Sub};

pub use formula::Formula;
pub use lanes::{LANES, Lanes};
pub use marked::{Marked, Script, Swap};
pub use sensitivities::Sensitivities;
pub use symbol::{Constant, Source, Symbol};
pub use table::Table;
pub use uncertainty::PropertyUncertainty;
pub use working::{Notation, Solution, SolvedStep, Tape, Working};

/// The number one, as a type: dividing by it changes nothing, in no reading.
///
/// It is what takes the number out of a [`quantity::Quantity`] without leaving a trace in a worked solution.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Unity;

/// What a formula may do with its numbers.
///
/// Inside a formula all values are in SI base units (kelvin, pascal, cubic metre, mole, kilogram, second).
/// [`enter`](Scalar::enter) and [`leave`](Scalar::leave) convert from and to the school unit of a symbol.
pub trait Scalar:
    Copy
    + Debug
    + Neg<Output = Self>
    + Add<Output = Self>
    + Sub<Output = Self>
    + Mul<Output = Self>
    + Div<Output = Self>
    + Add<f64, Output = Self>
    + Sub<f64, Output = Self>
    + Mul<f64, Output = Self>
    + Div<f64, Output = Self>
    + Div<Unity, Output = Self>
{
    /// A bare number, such as a stoichiometric coefficient.
    fn number(value: f64) -> Self;

    /// A constant with its name and source, in SI units.
    #[inline(always)]
    fn constant(constant: &'static Constant) -> Self {
        Self::number(constant.si())
    }

    /// Divided by a constant: the product with its reciprocal, which costs no division.
    #[inline(always)]
    fn over(self, constant: &'static Constant) -> Self {
        self * (1.0 / constant.si())
    }

    /// Takes in a value given in the school unit of `symbol`.
    #[inline(always)]
    fn enter(self, symbol: &'static Symbol) -> Self {
        symbol.unit.to_si(self)
    }

    /// Gives out a value in the school unit of `symbol`.
    #[inline(always)]
    fn leave(self, symbol: &'static Symbol) -> Self {
        symbol.unit.from_si(self)
    }

    /// Names an intermediate result. Nothing for a plain number; a line of the solution for [`Working`]; the
    /// place where a value may be replaced for [`Marked`].
    #[inline(always)]
    fn checkpoint(self, _symbol: &'static Symbol) -> Self {
        self
    }

    /// Exponential function; at most 1 ulp from the true value, 0 below -708 and infinite above 709.78.
    fn exp(self) -> Self;

    /// Natural logarithm; at most 1 ulp from the true value, NaN for anything that is not a positive normal
    /// number.
    fn ln(self) -> Self;

    /// Square root, correctly rounded.
    fn sqrt(self) -> Self;

    /// Sine of an angle in radians from -π/2 to π/2, at most 1 ulp of 1 from the true value; NaN beyond.
    fn sin(self) -> Self;

    /// Numbers that go with this one stepwise, such as the entry of a table that it falls in. They stay the same
    /// in between, so that they have no derivative and leave no trace of how they were found.
    fn look_up<const N: usize>(self, find: impl Fn(f64) -> [f64; N]) -> [Self; N];

    /// The value itself where `tested` lies in the closed range, NaN elsewhere.
    fn where_within(self, tested: Self, least: f64, greatest: f64) -> Self;

    /// The value itself where it lies in the closed range, NaN elsewhere.
    #[inline(always)]
    fn within(self, least: f64, greatest: f64) -> Self {
        self.where_within(self, least, greatest)
    }

    /// A small whole power by repeated multiplication, the same products in every reading.
    #[inline(always)]
    fn power(self, exponent: u32) -> Self {
        raise(self, exponent)
    }
}

/// Binary powering from the lowest bit up.
#[inline(always)]
fn raise<S: Scalar>(base: S, exponent: u32) -> S {
    let mut result: Option<S> = None;
    let mut square = base;
    let mut rest = exponent;
    while rest > 0 {
        if rest & 1 == 1 {
            result = Some(match result {
                Some(product) => product * square,
                None => square,
            });
        }
        rest >>= 1;
        if rest > 0 {
            square = square * square;
        }
    }
    result.unwrap_or_else(|| S::number(1.0))
}

impl Div<Unity> for f64 {
    type Output = f64;
    #[inline(always)]
    fn div(self, _: Unity) -> f64 {
        self
    }
}

impl Scalar for f64 {
    #[inline(always)]
    fn number(value: f64) -> Self {
        value
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
        f64::sqrt(self)
    }

    #[inline(always)]
    fn sin(self) -> Self {
        elementary::sin(self)
    }

    #[inline(always)]
    fn look_up<const N: usize>(self, find: impl Fn(f64) -> [f64; N]) -> [Self; N] {
        find(self)
    }

    #[inline(always)]
    fn where_within(self, tested: Self, least: f64, greatest: f64) -> Self {
        if tested >= least && tested <= greatest { self } else { f64::NAN }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn powers_are_products() {
        for exponent in 0..12_u32 {
            let expected = (0..exponent).fold(1.0, |product, _| product * 3.0);
            assert_eq!(Scalar::power(3.0, exponent), expected, "3^{exponent}");
        }
    }

    #[test]
    fn within_keeps_both_ends_and_nothing_beyond_them() {
        assert_eq!(2.0.within(2.0, 3.0), 2.0);
        assert_eq!(3.0.within(2.0, 3.0), 3.0);
        assert!(2.0_f64.next_down().within(2.0, 3.0).is_nan());
        assert!(3.0_f64.next_up().within(2.0, 3.0).is_nan());
        assert!(f64::NAN.within(2.0, 3.0).is_nan());
    }
}
