//! What a number in a formula is called, in which unit it is shown, and where it comes from.

use crate::units::Unit;

/// The published work that a number or a relation comes from.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Source {
    /// Author, title, place, with the table, page or equation.
    pub text: &'static str,
    /// The year of the edition that was used; none for a law, a definition, or what has no single work to name.
    pub year: Option<u16>,
}

/// A quantity as the trade writes it: its symbol, its name, the unit it is shown in, and its relation's source.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Symbol {
    /// A short name for programs, in lower case with underscores; unique.
    pub id: &'static str,
    /// The symbol in plain text.
    pub text: &'static str,
    /// The symbol in LaTeX.
    pub latex: &'static str,
    /// The name in words.
    pub name: &'static str,
    /// The unit it is shown in.
    pub unit: &'static Unit,
    /// Where the relation that gives it comes from; nothing for an input.
    pub source: Option<&'static Source>,
}

/// A number that is not computed here: its symbol, value, standard uncertainty and source.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Constant {
    /// What it is and in which unit `value` is given.
    pub symbol: Symbol,
    /// The value, in the symbol's unit.
    pub value: f64,
    /// The standard uncertainty in the same unit; 0 where the value is exact by definition, none where the
    /// source gives none.
    pub standard_uncertainty: Option<f64>,
}

impl Constant {
    /// The value in SI base units.
    #[must_use]
    #[inline(always)]
    pub const fn si(&self) -> f64 {
        (self.value + self.symbol.unit.zero) * self.symbol.unit.si
    }
}
