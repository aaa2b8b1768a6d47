//! What a reaction conserves: each kind of atom, and the charge.

use std::fmt;

use super::{Atom, Formula};

/// Something that is the same before and after a reaction.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Conserved {
    Atoms(Atom),
    Charge,
}

impl Conserved {
    /// Everything that these formulas have, atoms in order of first appearance and the charge last, each with
    /// the number of decimals that makes all amounts of it whole.
    pub(super) fn in_formulas<'f>(formulas: impl Iterator<Item = &'f Formula>) -> Vec<(Conserved, u8)> {
        let mut found: Vec<(Conserved, u8)> = Vec::with_capacity(8);
        let mut charged = false;
        for formula in formulas {
            charged |= formula.charge() != 0;
            for (atom, count) in formula.composition() {
                let atom = Conserved::Atoms(*atom);
                match found.iter_mut().find(|(known, _)| *known == atom) {
                    Some((_, decimals)) => *decimals = count.decimals().max(*decimals),
                    None => found.push((atom, count.decimals())),
                }
            }
        }
        if charged {
            found.push((Conserved::Charge, 0));
        }
        found
    }

    /// How much of it one formula unit has, times 10^`decimals`.
    pub(super) fn amount(self, formula: &Formula, decimals: u8) -> i128 {
        match self {
            Conserved::Charge => i128::from(formula.charge()),
            Conserved::Atoms(atom) => formula
                .count(atom)
                .and_then(|count| count.scaled(decimals))
                .and_then(|whole| i128::try_from(whole).ok())
                .unwrap_or(0),
        }
    }
}

impl fmt::Display for Conserved {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Conserved::Atoms(atom) => write!(f, "{atom}"),
            Conserved::Charge => f.write_str("the charge"),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn atoms_come_in_order_with_their_decimals_and_the_charge_last() {
        let formulas: Vec<Formula> =
            ["Fe0.95O", "Fe0.5+", "D2O"].iter().map(|text| Formula::parse(text).unwrap()).collect();
        let found = Conserved::in_formulas(formulas.iter());
        let shown: Vec<String> = found.iter().map(|(what, decimals)| format!("{what} {decimals}")).collect();
        assert_eq!(shown, ["Fe 2", "O 0", "D 0", "the charge 0"]);
        let amounts = |index: usize| -> Vec<i128> {
            found.iter().map(|(w, d)| w.amount(&formulas[index], *d)).collect()
        };
        assert_eq!(amounts(0), [95, 1, 0, 0]);
        assert_eq!(amounts(1), [50, 0, 0, 1]);
        assert_eq!(amounts(2), [0, 1, 2, 0]);
    }
}
