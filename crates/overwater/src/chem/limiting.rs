//! What runs out first, what is formed, what is left; yield.

use super::{Balanced, Formula, Species};
use crate::{Code, Error, Result};

/// Two reactants that run out together within this relative difference both count as limiting: far above the
/// rounding of a division, far below anything that is weighed.
const TOGETHER: f64 = 1e-12;

/// An amount of one species.
#[derive(Debug, Clone, PartialEq)]
pub struct SpeciesAmount {
    /// What it is.
    pub formula: Formula,
    /// How much of it, in mol.
    pub amount_mol: f64,
}

/// What happens when given amounts react until one of them has run out.
#[derive(Debug, Clone, PartialEq)]
pub struct Limiting {
    /// The reactants that run out first: one, or several where they run out together.
    pub limiting: Vec<Formula>,
    /// Extent of the reaction: amount of the limiting reactant divided by its coefficient, in mol.
    pub extent_mol: f64,
    /// What is left of each reactant, in order of writing; exactly zero for the limiting ones, in mol.
    pub left: Vec<SpeciesAmount>,
    /// What is formed of each product, in order of writing, in mol.
    pub produced: Vec<SpeciesAmount>,
}

impl Balanced {
    /// Which reactant runs out first, and what is then formed and left.
    ///
    /// Each reactant is given once by its formula, with or without its state, and its amount in mol, 0 or more.
    ///
    /// # Errors
    ///
    /// Those of [`Formula::parse`]; `UnknownName` for what is no reactant; `Ambiguous` for one that stands there
    /// in several states; `GivenTwice`; `Missing`; `NotANumber` and `OutOfRange` for an amount.
    ///
    /// ```
    /// use overwater::chem::Reaction;
    /// let equation = Reaction::parse("Mg + HCl -> MgCl2 + H2")?.balance()?;
    /// let outcome = equation.limiting(&[("Mg", 0.010), ("HCl", 0.015)])?;
    /// assert_eq!(outcome.limiting[0].to_string(), "HCl");
    /// assert_eq!(outcome.produced[1].amount_mol, 0.0075);
    /// # Ok::<(), overwater::Error>(())
    /// ```
    pub fn limiting(&self, amounts_mol: &[(&str, f64)]) -> Result<Limiting> {
        let mut given: Vec<Option<f64>> = vec![None; self.reactants().len()];
        for (text, amount) in amounts_mol {
            let path = || format!("amounts_mol[{text}]");
            let index = self.reactant(text)?;
            if !amount.is_finite() {
                return Err(Error::new(Code::NotANumber, path())
                    .value(amount.to_string())
                    .advice("give an amount in mol"));
            }
            if *amount < 0.0 {
                return Err(Error::new(Code::OutOfRange, path())
                    .value(format!("{amount} mol"))
                    .allowed("0 mol or more")
                    .advice("give the amount that is there at the start"));
            }
            if let Some(place) = given.get_mut(index) {
                if place.is_some() {
                    return Err(Error::new(Code::GivenTwice, path()).advice("give each reactant once"));
                }
                *place = Some(*amount);
            }
        }
        let mut extents = Vec::with_capacity(given.len());
        for (species, amount) in self.reactants().iter().zip(&given) {
            let Some(amount) = amount else {
                return Err(Error::new(Code::Missing, format!("amounts_mol[{}]", species.formula))
                    .advice("give the amount of every reactant in mol"));
            };
            extents.push(amount / coefficient(species));
        }
        let extent = extents.iter().copied().fold(f64::INFINITY, f64::min);
        let runs_out = |own: f64| own - extent <= TOGETHER * own;
        let reactants = || self.reactants().iter().zip(&extents);
        Ok(Limiting {
            limiting: reactants()
                .filter(|(_, own)| runs_out(**own))
                .map(|(s, _)| s.formula.clone())
                .collect(),
            extent_mol: extent,
            left: reactants()
                .map(|(species, own)| SpeciesAmount {
                    formula: species.formula.clone(),
                    amount_mol: if runs_out(*own) { 0.0 } else { (own - extent) * coefficient(species) },
                })
                .collect(),
            produced: self
                .products()
                .iter()
                .map(|species| SpeciesAmount {
                    formula: species.formula.clone(),
                    amount_mol: extent * coefficient(species),
                })
                .collect(),
        })
    }

    /// The place of a reactant among the reactants.
    fn reactant(&self, text: &str) -> Result<usize> {
        let formula = Formula::parse(text)?;
        let places = |same: &dyn Fn(&Formula) -> bool| -> Vec<usize> {
            self.reactants()
                .iter()
                .enumerate()
                .filter(|(_, s)| same(&s.formula))
                .map(|(index, _)| index)
                .collect()
        };
        let mut found = places(&|own| *own == formula);
        if found.is_empty() && formula.state().is_none() {
            found = places(&|own| own.equal_but_for_state(&formula));
        }
        let names: Vec<String> = self.reactants().iter().map(|s| s.formula.to_string()).collect();
        let refuse = |code| Error::new(code, "amounts_mol").value(text).allowed(names.join(", "));
        match found.as_slice() {
            [index] => Ok(*index),
            [] => Err(refuse(Code::UnknownName).advice("name the reactants as they stand in the equation")),
            _ => Err(refuse(Code::Ambiguous).advice("it stands there in several states: give the state too")),
        }
    }
}

fn coefficient(species: &Species) -> f64 {
    species.coefficient as f64
}

/// Yield in percent: 100 times the amount obtained divided by the greatest amount that could form.
///
/// Both in mol (or both in g). More than 100 is returned as it is: the product was wet or not pure.
///
/// # Errors
///
/// `NotANumber`; `OutOfRange` when `actual` is below 0 or `theoretical` is not above 0.
///
/// ```
/// use overwater::chem::percent_yield;
/// assert_eq!(percent_yield(0.6, 0.8)?, 75.0);
/// # Ok::<(), overwater::Error>(())
/// ```
pub fn percent_yield(actual: f64, theoretical: f64) -> Result<f64> {
    for (name, value) in [("actual", actual), ("theoretical", theoretical)] {
        if !value.is_finite() {
            return Err(Error::new(Code::NotANumber, name)
                .value(value.to_string())
                .advice("give an amount in mol"));
        }
    }
    if actual < 0.0 {
        return Err(Error::new(Code::OutOfRange, "actual")
            .value(actual.to_string())
            .allowed("0 or more")
            .advice("give the amount obtained"));
    }
    if theoretical <= 0.0 {
        return Err(Error::new(Code::OutOfRange, "theoretical")
            .value(theoretical.to_string())
            .allowed("above 0")
            .advice("give the amount that the limiting reactant could form"));
    }
    Ok(100.0 * actual / theoretical)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::chem::Reaction;

    fn equation(text: &str) -> Balanced {
        Reaction::parse(text).unwrap().balance().unwrap()
    }

    fn amounts(list: &[SpeciesAmount]) -> Vec<(String, f64)> {
        list.iter().map(|s| (s.formula.to_string(), s.amount_mol)).collect()
    }

    #[test]
    fn the_reactant_with_the_least_extent_limits() {
        // 2H2 + O2 -> 2H2O
        let outcome = equation("H2 + O2 -> H2O").limiting(&[("O2", 2.0), ("H2", 3.0)]).unwrap();
        assert_eq!(outcome.limiting, [Formula::parse("H2").unwrap()]);
        assert_eq!(outcome.extent_mol, 1.5);
        assert_eq!(amounts(&outcome.left), [("H2".into(), 0.0), ("O2".into(), 0.5)]);
        assert_eq!(amounts(&outcome.produced), [("H2O".into(), 3.0)]);
        // The excess is multiplied by its own coefficient.
        let outcome = equation("H2 + O2 -> H2O").limiting(&[("O2", 0.5), ("H2", 3.0)]).unwrap();
        assert_eq!(amounts(&outcome.left), [("H2".into(), 2.0), ("O2".into(), 0.0)]);
    }

    #[test]
    fn several_run_out_together() {
        // 0.3 / 3 is not the same double as 0.1.
        let outcome = equation("N2 + H2 -> NH3").limiting(&[("N2", 0.1), ("H2", 0.3)]).unwrap();
        assert_eq!(outcome.limiting.len(), 2);
        assert_eq!(amounts(&outcome.left), [("N2".into(), 0.0), ("H2".into(), 0.0)]);
        let outcome = equation("N2 + H2 -> NH3").limiting(&[("N2", 0.1), ("H2", 0.300001)]).unwrap();
        assert_eq!(outcome.limiting, [Formula::parse("N2").unwrap()]);
        let outcome = equation("N2 + H2 -> NH3").limiting(&[("N2", 0.0), ("H2", 1.0)]).unwrap();
        assert_eq!((outcome.extent_mol, outcome.limiting.len()), (0.0, 1));
        assert_eq!(outcome.left[1].amount_mol, 1.0);
    }

    #[test]
    fn states_may_be_left_out_where_clear() {
        let evaporation = equation("H2O(l) + CaC2(s) -> Ca(OH)2(aq) + C2H2(g)");
        let outcome = evaporation.limiting(&[("H2O", 1.0), ("CaC2(s)", 1.0)]).unwrap();
        assert_eq!(outcome.limiting[0].to_string(), "H2O(l)");
        let code = |text| evaporation.limiting(&[(text, 1.0), ("CaC2", 1.0)]).unwrap_err().code;
        assert_eq!(code("H2O(g)"), Code::UnknownName);
        assert_eq!(code("C2H2"), Code::UnknownName);
        assert_eq!(code("H2Xl"), Code::UnknownName);
        let two = Reaction::parse("H2O(l) + H2O(s) -> 2H2O(g)").unwrap().as_written().unwrap();
        assert_eq!(two.limiting(&[("H2O", 1.0)]).unwrap_err().code, Code::Ambiguous);
        assert_eq!(two.limiting(&[("H2O(l)", 1.0), ("H2O(s)", 2.0)]).unwrap().extent_mol, 1.0);
    }

    #[test]
    fn wrong_amounts_are_refused() {
        let water = equation("H2 + O2 -> H2O");
        let refused = |amounts: &[(&str, f64)]| {
            let error = water.limiting(amounts).unwrap_err();
            (error.code, error.parameter.into_owned())
        };
        assert_eq!(refused(&[("H2", 1.0)]), (Code::Missing, "amounts_mol[O2]".into()));
        assert_eq!(refused(&[("H2", 1.0), ("H2", 1.0)]), (Code::GivenTwice, "amounts_mol[H2]".into()));
        assert_eq!(refused(&[("H2", -1e-300)]), (Code::OutOfRange, "amounts_mol[H2]".into()));
        assert_eq!(refused(&[("H2", f64::NAN)]), (Code::NotANumber, "amounts_mol[H2]".into()));
        assert_eq!(refused(&[("H2", f64::INFINITY)]), (Code::NotANumber, "amounts_mol[H2]".into()));
        assert_eq!(refused(&[("N2", 1.0)]), (Code::UnknownName, "amounts_mol".into()));
    }

    #[test]
    fn yields_may_exceed_a_hundred_but_not_be_nonsense() {
        assert_eq!(percent_yield(3.0, 4.0), Ok(75.0));
        assert_eq!(percent_yield(0.0, 4.0), Ok(0.0));
        assert_eq!(percent_yield(5.0, 4.0), Ok(125.0));
        for (actual, theoretical, code, name) in [
            (-0.1, 1.0, Code::OutOfRange, "actual"),
            (1.0, 0.0, Code::OutOfRange, "theoretical"),
            (1.0, -1.0, Code::OutOfRange, "theoretical"),
            (f64::NAN, 1.0, Code::NotANumber, "actual"),
            (1.0, f64::INFINITY, Code::NotANumber, "theoretical"),
        ] {
            let error = percent_yield(actual, theoretical).unwrap_err();
            assert_eq!((error.code, error.parameter.as_ref()), (code, name));
        }
    }
}
