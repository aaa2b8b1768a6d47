//! A number whose steps may be replaced: what follows from a student's own value, or from a known slip.

use std::cell::RefCell;
use std::ops::{Add, Div, Mul, Neg, Sub};

use super::{Scalar, Symbol, Unity};

/// What is put in the place of a step.
#[derive(Debug, Clone, Copy)]
pub enum Swap {
    /// The student's own value, in the step's school unit: later steps follow from it.
    Own(f64),
    /// A slip: a change of the right value, both in SI base units.
    Slip(fn(f64) -> f64),
}

/// Which steps are replaced, and what every step came to.
#[derive(Debug, Default)]
pub struct Script {
    swaps: Vec<(&'static str, Swap)>,
    seen: RefCell<Vec<(&'static Symbol, f64)>>,
}

impl Script {
    /// A script that replaces nothing.
    #[must_use]
    pub fn new() -> Self {
        Script::default()
    }

    /// Replaces the input or step whose symbol has this `id`.
    #[must_use]
    pub fn swap(mut self, id: &'static str, swap: Swap) -> Self {
        self.swaps.push((id, swap));
        self
    }

    /// Every named input and step in the order met, with its value (after any replacement) in its school unit.
    #[must_use]
    pub fn steps(&self) -> Vec<(&'static Symbol, f64)> {
        self.seen.borrow().clone()
    }

    fn pass(&self, symbol: &'static Symbol, value: f64) -> f64 {
        let replaced =
            self.swaps.iter().filter(|(id, _)| *id == symbol.id).fold(value, |right, (_, swap)| match swap {
                Swap::Own(own) => symbol.unit.to_si(*own),
                Swap::Slip(change) => change(right),
            });
        self.seen.borrow_mut().push((symbol, symbol.unit.from_si(replaced)));
        replaced
    }
}

/// A number that carries a [`Script`] with it.
#[derive(Debug, Clone, Copy)]
pub struct Marked<'s> {
    value: f64,
    script: Option<&'s Script>,
}

impl<'s> Marked<'s> {
    /// An input under a script.
    #[must_use]
    pub fn input(script: &'s Script, value: f64) -> Self {
        Marked { value, script: Some(script) }
    }

    /// The number.
    #[must_use]
    pub fn value(&self) -> f64 {
        self.value
    }

    fn map(self, change: impl Fn(f64) -> f64) -> Self {
        Marked { value: change(self.value), script: self.script }
    }

    fn join(self, other: Self, combine: impl Fn(f64, f64) -> f64) -> Self {
        Marked { value: combine(self.value, other.value), script: self.script.or(other.script) }
    }
}

macro_rules! arithmetic {
    ($operator:ident, $method:ident, $sign:tt) => {
        impl $operator for Marked<'_> {
            type Output = Self;
            fn $method(self, other: Self) -> Self {
                self.join(other, |a, b| a $sign b)
            }
        }

        impl $operator<f64> for Marked<'_> {
            type Output = Self;
            fn $method(self, other: f64) -> Self {
                self.map(|a| a $sign other)
            }
        }
    };
}

arithmetic!(Add, add, +);
arithmetic!(Sub, sub, -);
arithmetic!(Mul, mul, *);
arithmetic!(Div, div, /);

impl Neg for Marked<'_> {
    type Output = Self;
    fn neg(self) -> Self {
        self.map(|a| -a)
    }
}

impl Div<Unity> for Marked<'_> {
    type Output = Self;
    fn div(self, _: Unity) -> Self {
        self
    }
}

impl Scalar for Marked<'_> {
    fn number(value: f64) -> Self {
        Marked { value, script: None }
    }

    fn enter(self, symbol: &'static Symbol) -> Self {
        let value = symbol.unit.to_si(self.value);
        Marked { value, script: self.script }.checkpoint(symbol)
    }

    fn leave(self, symbol: &'static Symbol) -> Self {
        self.map(|value| symbol.unit.from_si(value))
    }

    fn checkpoint(self, symbol: &'static Symbol) -> Self {
        match self.script {
            Some(script) => self.map(|value| script.pass(symbol, value)),
            None => self,
        }
    }

    fn exp(self) -> Self {
        self.map(Scalar::exp)
    }

    fn ln(self) -> Self {
        self.map(Scalar::ln)
    }

    fn sqrt(self) -> Self {
        self.map(f64::sqrt)
    }

    fn sin(self) -> Self {
        self.map(Scalar::sin)
    }

    fn look_up<const N: usize>(self, find: impl Fn(f64) -> [f64; N]) -> [Self; N] {
        find(self.value).map(Self::number)
    }

    fn where_within(self, tested: Self, least: f64, greatest: f64) -> Self {
        self.map(|value| value.where_within(tested.value, least, greatest))
    }
}
