//! Exact balancing of an equation.
//!
//! Each kind of atom, and the charge, gives one linear equation in whole numbers between the coefficients. The
//! null space of these equations is found by elimination without fractions: a single direction in it, with every
//! entry positive, is the balance.

mod explain;
mod null_space;

use std::fmt;

use num_bigint::BigInt;

use self::null_space::{Whole, null_space};
use super::conserved::Conserved;
use super::reaction::{write_sides, write_species};
use super::{Arrow, Formula, Reaction, Term};
use crate::Result;

/// One species of a balanced equation.
#[derive(Debug, Clone, PartialEq, Eq, Hash)]
pub struct Species {
    /// The number before the formula, at least one.
    pub coefficient: u64,
    /// What it is.
    pub formula: Formula,
}

/// A balanced equation.
///
/// Made by [`Reaction::balance`] with the smallest whole numbers, or by [`Reaction::as_written`] with the
/// numbers that were given.
#[derive(Debug, Clone, PartialEq, Eq, Hash)]
pub struct Balanced {
    reactants: Vec<Species>,
    products: Vec<Species>,
    arrow: Arrow,
}

impl Balanced {
    pub(super) fn new(reactants: Vec<Species>, products: Vec<Species>, arrow: Arrow) -> Self {
        Balanced { reactants, products, arrow }
    }

    /// What reacts, in order of writing.
    #[must_use]
    pub fn reactants(&self) -> &[Species] {
        &self.reactants
    }

    /// What is formed, in order of writing.
    #[must_use]
    pub fn products(&self) -> &[Species] {
        &self.products
    }

    /// The sign between the sides.
    #[must_use]
    pub const fn arrow(&self) -> Arrow {
        self.arrow
    }

    /// The coefficients, reactants first, in order of writing.
    #[must_use]
    pub fn coefficients(&self) -> Vec<u64> {
        self.reactants.iter().chain(&self.products).map(|species| species.coefficient).collect()
    }

    /// The equation with subscripts and superscripts and a true arrow.
    ///
    /// ```
    /// use overwater::chem::Reaction;
    /// let balanced = Reaction::parse("H2O2 -> H2O + O2")?.balance()?;
    /// assert_eq!(balanced.unicode(), "2 H₂O₂ → 2 H₂O + O₂");
    /// # Ok::<(), overwater::Error>(())
    /// ```
    #[must_use]
    pub fn unicode(&self) -> String {
        let side = |species: &[Species]| {
            let terms: Vec<String> = species
                .iter()
                .map(|Species { coefficient, formula }| match coefficient {
                    1 => formula.unicode(),
                    _ => format!("{coefficient} {}", formula.unicode()),
                })
                .collect();
            terms.join(" + ")
        };
        let arrow = match self.arrow {
            Arrow::Forward => "→",
            Arrow::Equals => "=",
            Arrow::Reversible => "⇌",
        };
        format!("{} {arrow} {}", side(&self.reactants), side(&self.products))
    }

    /// Counts every kind of atom and the charge again, in whole numbers of any size.
    #[must_use]
    pub fn is_balanced(&self) -> bool {
        let species = || self.reactants.iter().map(|s| (s, 1)).chain(self.products.iter().map(|s| (s, -1)));
        Conserved::in_formulas(species().map(|(s, _)| &s.formula)).into_iter().all(|(what, decimals)| {
            let total: BigInt = species()
                .map(|(s, sign)| BigInt::from(s.coefficient) * sign * what.amount(&s.formula, decimals))
                .sum();
            total == BigInt::ZERO
        })
    }
}

impl Reaction {
    /// Finds the smallest whole numbers that balance the equation. Numbers already written are not looked at.
    ///
    /// Species are the same when structure, charge and state are the same: `H2O(l) -> H2O(g)` is balanced, but a
    /// species that stands twice in the very same form is refused, because it could take any number.
    ///
    /// # Errors
    ///
    /// - `GivenTwice`: a species stands twice on one side.
    /// - `Contradiction`: a species stands on both sides.
    /// - `NoBalance`: no positive numbers do; the advice says which atom stands on one side only, whether it is
    ///   the charge, which species has no part in it or belongs to the other side.
    /// - `ManyBalances`: several independent balances exist; the advice lists as many equations as there are, from
    ///   which all others are sums. Where there are two, these are the extreme ones, without negative numbers; where
    ///   there are more, whether any sum of them is positive throughout is not looked at.
    /// - `TooLarge`: a coefficient is above 2^64 - 1.
    ///
    /// ```
    /// use overwater::chem::Reaction;
    /// let reaction = Reaction::parse("MnO4- + H+ + e- -> Mn^2+ + H2O")?;
    /// assert_eq!(reaction.balance()?.to_string(), "MnO4- + 8H+ + 5e- -> Mn^2+ + 4H2O");
    /// # Ok::<(), overwater::Error>(())
    /// ```
    pub fn balance(&self) -> Result<Balanced> {
        explain::refuse_repeated(self)?;
        let formulas = || self.reactants.iter().chain(&self.products).map(|term| &term.formula);
        let conserved = Conserved::in_formulas(formulas());
        let columns = self.reactants.len() + self.products.len();
        let mut entries: Vec<i128> = Vec::with_capacity(columns * conserved.len());
        for (what, decimals) in &conserved {
            entries.extend(self.reactants.iter().map(|term| what.amount(&term.formula, *decimals)));
            entries.extend(self.products.iter().map(|term| -what.amount(&term.formula, *decimals)));
        }
        explain::refuse_one_sided(self, &conserved, &entries, columns)?;
        match null_space(entries.clone(), columns) {
            Some(basis) => self.choose(&basis, &conserved),
            // A number left the 128 bits: once more with numbers of any size.
            None => {
                let entries = entries.into_iter().map(BigInt::from).collect();
                self.choose(&null_space(entries, columns).unwrap_or_default(), &conserved)
            }
        }
    }

    fn choose<T: Whole>(&self, basis: &[Vec<T>], conserved: &[(Conserved, u8)]) -> Result<Balanced> {
        match basis {
            [only] if only.iter().all(Whole::is_positive) => self.with_coefficients(only),
            [] => Err(explain::nothing_balances(self, conserved)),
            [only] => Err(explain::wrong_signs(self, only)),
            several => Err(explain::several(self, several)),
        }
    }

    fn with_coefficients<T: Whole>(&self, numbers: &[T]) -> Result<Balanced> {
        let mut numbers = numbers.iter();
        let mut side = |terms: &[Term]| -> Result<Vec<Species>> {
            terms
                .iter()
                .zip(numbers.by_ref())
                .map(|(term, number)| match number.to_u64() {
                    Some(coefficient) => Ok(Species { coefficient, formula: term.formula.clone() }),
                    None => Err(explain::too_large(self, number)),
                })
                .collect()
        };
        let reactants = side(&self.reactants)?;
        let products = side(&self.products)?;
        Ok(Balanced::new(reactants, products, self.arrow))
    }
}

impl fmt::Display for Species {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write_species(f, self.coefficient, self.coefficient == 1, &self.formula)
    }
}

impl fmt::Display for Balanced {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write_sides(f, &self.reactants, self.arrow, &self.products)
    }
}

#[cfg(test)]
mod tests;
