//! Why an equation has no balance, or more than one.

use std::fmt::Display;

use super::null_space::{Whole, null_space};
use crate::chem::conserved::Conserved;
use crate::chem::formula::excerpt;
use crate::chem::{Formula, Reaction, Term};
use crate::{Code, Error, Result};

fn refuse(reaction: &Reaction, code: Code, advice: String) -> Error {
    Error::new(code, "equation").value(excerpt(&reaction.to_string())).advice(advice)
}

fn formulas(reaction: &Reaction) -> impl Iterator<Item = &Formula> {
    reaction.reactants.iter().chain(&reaction.products).map(|term| &term.formula)
}

/// A species that stands twice could take any number.
pub(super) fn refuse_repeated(reaction: &Reaction) -> Result<()> {
    let has = |terms: &[Term], formula: &Formula| terms.iter().any(|term| term.formula == *formula);
    for (index, term) in reaction.reactants.iter().enumerate() {
        let formula = &term.formula;
        if has(reaction.reactants.get(index + 1..).unwrap_or_default(), formula) {
            return Err(twice_on_one_side(reaction, formula));
        }
        if has(&reaction.products, formula) {
            return Err(refuse(
                reaction,
                Code::Contradiction,
                format!(
                    "{formula} stands on both sides; leave it on the side where some of it is used up or formed, or write its states"
                ),
            ));
        }
    }
    for (index, term) in reaction.products.iter().enumerate() {
        if has(reaction.products.get(index + 1..).unwrap_or_default(), &term.formula) {
            return Err(twice_on_one_side(reaction, &term.formula));
        }
    }
    Ok(())
}

fn twice_on_one_side(reaction: &Reaction, formula: &Formula) -> Error {
    refuse(reaction, Code::GivenTwice, format!("{formula} stands twice on one side; write it once"))
}

/// Something of which all amounts have one sign can only be conserved by leaving it out.
pub(super) fn refuse_one_sided(
    reaction: &Reaction,
    conserved: &[(Conserved, u8)],
    entries: &[i128],
    columns: usize,
) -> Result<()> {
    let mut atoms = Vec::new();
    let mut charge = None;
    for ((what, _), row) in conserved.iter().zip(entries.chunks(columns)) {
        let (some_before, some_after) = (row.iter().any(|n| *n > 0), row.iter().any(|n| *n < 0));
        if some_before && some_after {
            continue;
        }
        match what {
            Conserved::Atoms(atom) => {
                atoms.push(format!(
                    "{atom} stands only on the {}",
                    if some_before { "left" } else { "right" }
                ));
            }
            Conserved::Charge => {
                charge = Some(
                    "the charge cannot balance: electrons (e-) or further ions such as H+ or OH- are missing"
                        .to_owned(),
                );
            }
        }
    }
    atoms.extend(charge);
    if atoms.is_empty() { Ok(()) } else { Err(refuse(reaction, Code::NoBalance, atoms.join("; "))) }
}

/// Only zeros solve the equations.
pub(super) fn nothing_balances(reaction: &Reaction, conserved: &[(Conserved, u8)]) -> Error {
    let mut entries: Vec<i128> = Vec::new();
    let columns = reaction.reactants.len() + reaction.products.len();
    let atoms: Vec<_> = conserved.iter().filter(|(what, _)| *what != Conserved::Charge).collect();
    for (what, decimals) in &atoms {
        entries.extend(reaction.reactants.iter().map(|term| what.amount(&term.formula, *decimals)));
        entries.extend(reaction.products.iter().map(|term| -what.amount(&term.formula, *decimals)));
    }
    let by_atoms = null_space(entries, columns).is_some_and(|basis| !basis.is_empty());
    if atoms.len() < conserved.len() && by_atoms {
        return refuse(
            reaction,
            Code::NoBalance,
            "the atoms can be balanced but the charge cannot: add electrons (e-) or ions such as H+ or OH-"
                .to_owned(),
        );
    }
    let names: Vec<String> = conserved.iter().map(|(what, _)| what.to_string()).collect();
    refuse(
        reaction,
        Code::NoBalance,
        format!("no numbers conserve {} together: a species is missing or wrong", names.join(", ")),
    )
}

/// One direction, in which a species has zero or the wrong sign.
pub(super) fn wrong_signs<T: Whole>(reaction: &Reaction, numbers: &[T]) -> Error {
    let pairs = || formulas(reaction).zip(numbers);
    let idle: Vec<String> =
        pairs().filter(|(_, n)| n.is_zero()).map(|(formula, _)| formula.to_string()).collect();
    let turned: Vec<String> = pairs()
        .filter(|(_, n)| !n.is_zero() && !n.is_positive())
        .map(|(formula, _)| formula.to_string())
        .collect();
    let mut advice = Vec::new();
    if !idle.is_empty() {
        advice.push(format!("it balances only without {}", idle.join(", ")));
    }
    if !turned.is_empty() {
        advice.push(format!("it balances only with {} on the other side", turned.join(", ")));
    }
    refuse(reaction, Code::NoBalance, advice.join("; "))
}

/// Several independent directions.
pub(super) fn several<T: Whole>(reaction: &Reaction, basis: &[Vec<T>]) -> Error {
    let idle: Vec<String> = formulas(reaction)
        .enumerate()
        .filter(|(index, _)| basis.iter().all(|vector| vector.get(*index).is_none_or(Whole::is_zero)))
        .map(|(_, formula)| formula.to_string())
        .collect();
    if !idle.is_empty() {
        return refuse(reaction, Code::NoBalance, format!("it balances only without {}", idle.join(", ")));
    }
    let extreme = match basis {
        [a, b] => extreme_pair(a, b),
        _ => None,
    };
    match extreme {
        Some(Extremes::None) => refuse(
            reaction,
            Code::NoBalance,
            "no positive numbers do it: some species would have to stand on the other side".to_owned(),
        ),
        Some(Extremes::Pair(pair)) => list(reaction, &pair),
        None => list(reaction, basis),
    }
}

fn list<T: Whole>(reaction: &Reaction, basis: &[Vec<T>]) -> Error {
    let equations: Vec<String> = basis.iter().map(|numbers| equation(reaction, numbers)).collect();
    refuse(
        reaction,
        Code::ManyBalances,
        format!(
            "there are {} independent balances, {}; leave out a species, or write the numbers that you mean",
            basis.len(),
            equations.join(" and ")
        ),
    )
}

enum Extremes<T> {
    /// No balance has positive numbers for every species.
    None,
    /// Every balance without negative numbers is a sum of multiples of these two.
    Pair([Vec<T>; 2]),
}

/// The two edges of the positive part of a plane: on an edge some species has the number zero.
/// `None` when a number does not fit.
fn extreme_pair<T: Whole>(a: &[T], b: &[T]) -> Option<Extremes<T>> {
    let mut edges: Vec<Vec<T>> = Vec::new();
    for (x, y) in a.iter().zip(b) {
        let mut edge = a.iter().zip(b).map(|(p, q)| p.combine(y, q, x)).collect::<Option<Vec<T>>>()?;
        let content = edge.iter().fold(T::zero(), |content, n| content.gcd(n));
        if content.is_zero() {
            continue;
        }
        let negative = edge.iter().any(|n| !n.is_zero() && !n.is_positive());
        if negative && edge.iter().any(Whole::is_positive) {
            continue;
        }
        for n in &mut edge {
            *n = if negative { n.exact_div(&content).negative()? } else { n.exact_div(&content) };
        }
        if !edges.contains(&edge) {
            edges.push(edge);
        }
    }
    let pair: Option<[Vec<T>; 2]> = edges.try_into().ok();
    Some(match pair {
        // Only a sum in which every species takes part is a balance.
        Some(pair)
            if a.iter()
                .enumerate()
                .all(|(i, _)| pair.iter().any(|edge| edge.get(i).is_some_and(Whole::is_positive))) =>
        {
            Extremes::Pair(pair)
        }
        _ => Extremes::None,
    })
}

/// One direction as an equation: what has a negative number stands on the other side.
fn equation<T: Whole>(reaction: &Reaction, numbers: &[T]) -> String {
    let (mut left, mut right) = (Vec::new(), Vec::new());
    for (index, (formula, number)) in formulas(reaction).zip(numbers).enumerate() {
        if number.is_zero() {
            continue;
        }
        let is_reactant = index < reaction.reactants.len();
        let size = if number.is_positive() { Some(number.clone()) } else { number.negative() };
        let Some(size) = size else { continue };
        let text = species(&size, size == T::one(), formula);
        if is_reactant == number.is_positive() { left.push(text) } else { right.push(text) }
    }
    format!("{} {} {}", left.join(" + "), reaction.arrow.symbol(), right.join(" + "))
}

fn species(number: &impl Display, one: bool, formula: &Formula) -> String {
    match (formula.begins_with_a_number(), one) {
        (true, _) => format!("{number} {formula}"),
        (false, true) => formula.to_string(),
        (false, false) => format!("{number}{formula}"),
    }
}

pub(super) fn too_large(reaction: &Reaction, number: &impl Display) -> Error {
    refuse(
        reaction,
        Code::TooLarge,
        format!("a coefficient would be {number}; check the numbers inside the formulas"),
    )
    .allowed("coefficients up to 2^64 - 1")
}
