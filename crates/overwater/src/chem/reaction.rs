//! Equations as they are written: what reacts, what is formed, and the numbers before them.

mod parse;

use std::fmt;
use std::str::FromStr;

use num_bigint::BigInt;
use num_traits::{ToPrimitive, Zero};

use super::conserved::Conserved;
use super::{Balanced, Count, Formula, Species};
use crate::{Code, Error, Result};

/// The longest text that is read as an equation, in bytes.
pub const MAX_EQUATION_BYTES: usize = 16_384;
/// The most species in an equation, both sides together.
pub const MAX_SPECIES: usize = 64;

/// The sign between the two sides.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Arrow {
    /// `->` or `→`.
    Forward,
    /// `=`.
    Equals,
    /// `⇌`.
    Reversible,
}

impl Arrow {
    /// How it is printed.
    #[must_use]
    pub const fn symbol(self) -> &'static str {
        match self {
            Arrow::Forward => "->",
            Arrow::Equals => "=",
            Arrow::Reversible => "⇌",
        }
    }
}

/// One species of an equation with the number before it.
#[derive(Debug, Clone, PartialEq, Eq, Hash)]
pub struct Term {
    /// The number before the formula, one where none is written.
    pub coefficient: Count,
    /// What it is.
    pub formula: Formula,
}

/// An equation as written, balanced or not.
///
/// Sides are joined by `->`, `→`, `=` or `⇌`; species by `+`. A `+` with a space before it joins, and so does one
/// with a formula directly behind it (`H2+O2`); any other `+` is a charge (`Na+ + Cl-`). A number before a species, whole or
/// decimal, is its coefficient and multiplies the whole of it: `3CdSO4·8H2O` is here three formula units of
/// `CdSO4·8H2O`; the adduct with its own number needs one more, `1 3CdSO4·8H2O`. The electron is `e-`.
///
/// ```
/// use overwater::chem::Reaction;
/// let reaction = Reaction::parse("H2O2 -> H2O + O2")?;
/// assert_eq!(reaction.balance()?.to_string(), "2H2O2 -> 2H2O + O2");
/// # Ok::<(), overwater::Error>(())
/// ```
#[derive(Debug, Clone, PartialEq, Eq, Hash)]
pub struct Reaction {
    pub(super) reactants: Vec<Term>,
    pub(super) products: Vec<Term>,
    pub(super) arrow: Arrow,
}

impl Reaction {
    /// Reads an equation.
    ///
    /// # Errors
    ///
    /// Those of [`Formula::parse`], with their place in the equation; `Missing` for an empty side or species;
    /// `Syntax` for no arrow or more than one, or a coefficient that cannot be read; `TooLarge` beyond
    /// [`MAX_EQUATION_BYTES`] or [`MAX_SPECIES`].
    pub fn parse(text: &str) -> Result<Self> {
        parse::parse(text)
    }

    /// What reacts, in order of writing.
    #[must_use]
    pub fn reactants(&self) -> &[Term] {
        &self.reactants
    }

    /// What is formed, in order of writing.
    #[must_use]
    pub fn products(&self) -> &[Term] {
        &self.products
    }

    /// The sign between the sides.
    #[must_use]
    pub const fn arrow(&self) -> Arrow {
        self.arrow
    }

    /// Whether the equation as written conserves every kind of atom and the charge.
    ///
    /// ```
    /// use overwater::chem::Reaction;
    /// assert!(Reaction::parse("2H2 + O2 -> 2H2O")?.is_balanced());
    /// assert!(!Reaction::parse("H2 + O2 -> H2O")?.is_balanced());
    /// # Ok::<(), overwater::Error>(())
    /// ```
    #[must_use]
    pub fn is_balanced(&self) -> bool {
        self.unequal().is_empty()
    }

    /// Checks the equation as written, number by number.
    ///
    /// # Errors
    ///
    /// `NoBalance`, whose advice lists what differs and how much of it stands on each side.
    ///
    /// ```
    /// use overwater::chem::Reaction;
    /// let error = Reaction::parse("H2 + O2 -> H2O")?.check().unwrap_err();
    /// assert!(error.advice.contains("O: 2 before, 1 after"));
    /// # Ok::<(), overwater::Error>(())
    /// ```
    pub fn check(&self) -> Result<()> {
        let unequal = self.unequal();
        if unequal.is_empty() {
            return Ok(());
        }
        let list: Vec<String> = unequal
            .iter()
            .map(|(what, before, after)| format!("{what}: {before} before, {after} after"))
            .collect();
        Err(Error::new(Code::NoBalance, "equation")
            .value(self.to_string())
            .allowed("the same number of each kind of atom, and the same charge, on both sides")
            .advice(format!("change the numbers before the formulas ({})", list.join("; "))))
    }

    /// The equation with the numbers as written, for those who know which of several balances they mean.
    ///
    /// # Errors
    ///
    /// `NoBalance` as [`Reaction::check`]; `CannotBeMet` when a coefficient is not whole.
    ///
    /// ```
    /// use overwater::chem::Reaction;
    /// let text = "5H2O2 + 2KMnO4 + 3H2SO4 -> K2SO4 + 2MnSO4 + 8H2O + 5O2";
    /// assert_eq!(Reaction::parse(text)?.as_written()?.to_string(), text);
    /// # Ok::<(), overwater::Error>(())
    /// ```
    pub fn as_written(&self) -> Result<Balanced> {
        self.check()?;
        let whole = |terms: &[Term]| -> Result<Vec<Species>> {
            terms
                .iter()
                .map(|term| match term.coefficient.whole() {
                    Some(coefficient) => Ok(Species { coefficient, formula: term.formula.clone() }),
                    None => Err(Error::new(Code::CannotBeMet, "equation")
                        .value(term.to_string())
                        .allowed("whole numbers before the formulas")
                        .advice("multiply the whole equation until every number is whole")),
                })
                .collect()
        };
        Ok(Balanced::new(whole(&self.reactants)?, whole(&self.products)?, self.arrow))
    }

    /// Everything that differs between the sides, with its amount before and after.
    fn unequal(&self) -> Vec<(Conserved, f64, f64)> {
        let formulas = self.reactants.iter().chain(&self.products).map(|term| &term.formula);
        let coefficient_decimals = self
            .reactants
            .iter()
            .chain(&self.products)
            .map(|term| term.coefficient.decimals())
            .max()
            .unwrap_or(0);
        let total = |terms: &[Term], what: Conserved, decimals: u8| -> BigInt {
            terms.iter().fold(BigInt::zero(), |sum, term| {
                let coefficient = term.coefficient.scaled(coefficient_decimals).unwrap_or(0);
                sum + BigInt::from(coefficient) * what.amount(&term.formula, decimals)
            })
        };
        Conserved::in_formulas(formulas)
            .into_iter()
            .filter_map(|(what, decimals)| {
                let (before, after) =
                    (total(&self.reactants, what, decimals), total(&self.products, what, decimals));
                let unit = 10_f64.powi(i32::from(decimals) + i32::from(coefficient_decimals));
                let shown = |sum: BigInt| sum.to_f64().unwrap_or(f64::INFINITY) / unit;
                (before != after).then(|| (what, shown(before), shown(after)))
            })
            .collect()
    }
}

impl FromStr for Reaction {
    type Err = Error;

    fn from_str(text: &str) -> Result<Self> {
        Reaction::parse(text)
    }
}

impl fmt::Display for Term {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write_species(f, self.coefficient, self.coefficient == Count::ONE, &self.formula)
    }
}

impl fmt::Display for Reaction {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write_sides(f, &self.reactants, self.arrow, &self.products)
    }
}

/// A coefficient and a formula, so that they read back: a formula that begins with a number stands apart.
pub(super) fn write_species(
    f: &mut fmt::Formatter<'_>,
    coefficient: impl fmt::Display,
    one: bool,
    formula: &Formula,
) -> fmt::Result {
    if formula.begins_with_a_number() {
        write!(f, "{coefficient} {formula}")
    } else if one {
        write!(f, "{formula}")
    } else {
        write!(f, "{coefficient}{formula}")
    }
}

pub(super) fn write_sides<T: fmt::Display>(
    f: &mut fmt::Formatter<'_>,
    left: &[T],
    arrow: Arrow,
    right: &[T],
) -> fmt::Result {
    let side = |f: &mut fmt::Formatter<'_>, terms: &[T]| {
        for (index, term) in terms.iter().enumerate() {
            write!(f, "{}{term}", if index > 0 { " + " } else { "" })?;
        }
        Ok(())
    };
    side(f, left)?;
    write!(f, " {} ", arrow.symbol())?;
    side(f, right)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn read(text: &str) -> Reaction {
        Reaction::parse(text).unwrap_or_else(|error| panic!("{text}: {error}"))
    }

    #[test]
    fn checks_count_atoms_and_charge() {
        for balanced in [
            "2H2O2 -> 2H2O + O2",
            "H2 + 0.5O2 -> H2O",
            "MnO4- + 8H+ + 5e- -> Mn^2+ + 4H2O",
            "0.5Fe0.9O -> 0.45Fe + 0.25O2",
            "3CuSO4.5H2O -> 3CuSO4 + 15H2O",
            "H2O + NaCl -> NaCl + H2O",
        ] {
            assert!(read(balanced).is_balanced(), "{balanced}");
            assert_eq!(read(balanced).check(), Ok(()));
        }
        for (text, advice) in [
            ("H2O2 -> H2O + O2", "(O: 2 before, 3 after)"),
            ("Fe^3+ + 2e- -> Fe^2+", "(the charge: 1 before, 2 after)"),
            ("0.5H2 + Na -> H2O", "(H: 1 before, 2 after; Na: 1 before, 0 after; O: 0 before, 1 after)"),
            ("Fe0.9O -> Fe + O", "(Fe: 0.9 before, 1 after)"),
        ] {
            let error = read(text).check().unwrap_err();
            assert_eq!((error.code, read(text).is_balanced()), (Code::NoBalance, false));
            assert!(error.advice.ends_with(advice), "{}", error.advice);
        }
    }

    #[test]
    fn as_written_keeps_the_numbers_and_wants_whole_ones() {
        assert_eq!(read("4H2 + 2O2 = 4H2O").as_written().unwrap().to_string(), "4H2 + 2O2 = 4H2O");
        assert_eq!(read("H2 + 0.5O2 -> H2O").as_written().unwrap_err().code, Code::CannotBeMet);
        assert_eq!(read("H2 + O2 -> H2O").as_written().unwrap_err().code, Code::NoBalance);
    }

    #[test]
    fn totals_do_not_overflow() {
        let text = "900000000000000H900000000000000 -> 900000000000000H900000000000000(g)";
        assert!(read(text).is_balanced());
        assert!(!read("900000000000000H900000000000000 -> 900000000000000H899999999999999").is_balanced());
    }
}
