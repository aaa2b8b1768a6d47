//! Formulas and equations.

use overwater::chem::{Formula, Reaction, Weights};
use overwater::reference::elements::STANDARD_ATOMIC_WEIGHTS_SOURCE;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

use crate::{FORMAT, Refusal};

/// A formula to be weighed.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct FormulaRequest {
    /// The format of the request; 1.
    pub format: u32,
    /// The formula, as in "CuSO4.5H2O".
    pub formula: String,
    /// Which atomic weights to take.
    #[serde(default)]
    pub weights: WeightsRequest,
}

/// Which atomic weights to take.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "snake_case")]
pub enum WeightsRequest {
    /// The conventional values, with the uncertainty of the standard ones.
    #[default]
    Exact,
    /// The abridged values, to five figures.
    Abridged,
    /// To one decimal, as in a classroom: Cl 35.5.
    Classroom,
}

/// What a formula weighs.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct FormulaAnswer {
    /// The format of the answer; 1.
    pub format: u32,
    /// The version of the library that gave it.
    pub library_version: String,
    /// The formula as the library writes it.
    pub formula: String,
    /// The same with subscripts and superscripts.
    pub formula_unicode: String,
    /// The molar mass (g/mol).
    pub molar_mass_g_per_mol: f64,
    /// Its standard uncertainty (g/mol).
    pub standard_uncertainty_g_per_mol: f64,
    /// The charge, in units of the elementary charge.
    pub charge: i32,
    /// Where the atomic weights come from.
    pub source: String,
    /// The atoms, in the order of first writing.
    pub atoms: Vec<AtomAnswer>,
}

/// One kind of atom in a formula.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct AtomAnswer {
    /// Its symbol.
    pub symbol: String,
    /// Its name.
    pub name: String,
    /// How many there are.
    pub count: f64,
    /// Its share of the mass.
    pub mass_fraction: f64,
}

/// Weighs a formula.
///
/// ```
/// use overwater_exchange::chemistry::{FormulaRequest, formula};
/// let request = FormulaRequest { format: 1, formula: "H2O2".to_owned(), weights: Default::default() };
/// // Conventional atomic weights: 2 x 1.008 + 2 x 15.999.
/// assert!((formula(&request)?.molar_mass_g_per_mol - 34.014).abs() < 1e-9);
/// # Ok::<(), Box<overwater_exchange::Refusal>>(())
/// ```
///
/// # Errors
/// What the formula's reader refuses, with the place in it.
pub fn formula(request: &FormulaRequest) -> Result<FormulaAnswer, Box<Refusal>> {
    let weights = match request.weights {
        WeightsRequest::Exact => Weights::Exact,
        WeightsRequest::Abridged => Weights::Abridged,
        WeightsRequest::Classroom => Weights::Classroom,
    };
    let formula = Formula::parse(&request.formula).map_err(|error| refused(error, &request.formula))?;
    let mass = formula.molar_mass(weights)?;
    let fractions = formula.mass_fractions(weights)?;
    Ok(FormulaAnswer {
        format: FORMAT,
        library_version: env!("CARGO_PKG_VERSION").to_owned(),
        formula: formula.to_string(),
        formula_unicode: formula.unicode(),
        molar_mass_g_per_mol: mass.value_g_per_mol,
        standard_uncertainty_g_per_mol: mass.standard_uncertainty_g_per_mol,
        charge: formula.charge(),
        source: STANDARD_ATOMIC_WEIGHTS_SOURCE.to_owned(),
        atoms: formula
            .composition()
            .iter()
            .map(|(atom, count)| AtomAnswer {
                symbol: atom.symbol().to_owned(),
                name: atom.name().to_owned(),
                count: count.to_f64(),
                mass_fraction: fractions.iter().find(|f| f.atom == *atom).map_or(0.0, |f| f.value),
            })
            .collect(),
    })
}

/// An equation to be balanced.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct BalanceRequest {
    /// The format of the request; 1.
    pub format: u32,
    /// The equation, as in "H2O2 -> H2O + O2".
    pub equation: String,
}

/// A balanced equation.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct BalanceAnswer {
    /// The format of the answer; 1.
    pub format: u32,
    /// The version of the library that gave it.
    pub library_version: String,
    /// The balanced equation.
    pub equation: String,
    /// The same with subscripts and superscripts.
    pub equation_unicode: String,
    /// What reacts.
    pub reactants: Vec<SpeciesAnswer>,
    /// What is formed.
    pub products: Vec<SpeciesAnswer>,
}

/// One species of a balanced equation.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct SpeciesAnswer {
    /// The number before the formula, as a text: it may be longer than other programs can count.
    pub coefficient: String,
    /// The formula.
    pub formula: String,
}

/// Balances an equation with the smallest whole numbers.
///
/// ```
/// use overwater_exchange::chemistry::{BalanceRequest, balance};
/// let request = BalanceRequest { format: 1, equation: "Fe + O2 -> Fe3O4".to_owned() };
/// assert_eq!(balance(&request)?.equation, "3Fe + 2O2 -> Fe3O4");
/// # Ok::<(), Box<overwater_exchange::Refusal>>(())
/// ```
///
/// # Errors
/// What the reader refuses, with the place; `no_balance` and `many_balances` with the reason.
pub fn balance(request: &BalanceRequest) -> Result<BalanceAnswer, Box<Refusal>> {
    let reaction = Reaction::parse(&request.equation).map_err(|error| refused(error, &request.equation))?;
    let balanced = reaction.balance().map_err(|error| refused(error, &request.equation))?;
    let side = |species: &[overwater::chem::Species]| {
        species
            .iter()
            .map(|species| SpeciesAnswer {
                coefficient: species.coefficient.to_string(),
                formula: species.formula.to_string(),
            })
            .collect()
    };
    Ok(BalanceAnswer {
        format: FORMAT,
        library_version: env!("CARGO_PKG_VERSION").to_owned(),
        equation: balanced.to_string(),
        equation_unicode: balanced.unicode(),
        reactants: side(balanced.reactants()),
        products: side(balanced.products()),
    })
}

/// The core's error with its place in the text.
fn refused(error: overwater::Error, text: &str) -> Box<Refusal> {
    let span = error.span;
    Refusal::new(error, text, span)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_wrong_symbol_is_pointed_to() {
        let request =
            FormulaRequest { format: 1, formula: "NaXl".to_owned(), weights: WeightsRequest::Exact };
        let refusal = formula(&request).unwrap_err();
        assert_eq!((refusal.code.as_str(), refusal.span), ("unknown_name", Some((2, 4))));
        assert!(refusal.show("formula", "NaXl").contains("^^"), "{}", refusal.show("formula", "NaXl"));
    }

    #[test]
    fn weights_are_chosen_by_name() {
        let mass = |weights| {
            let request = FormulaRequest { format: 1, formula: "NaCl".to_owned(), weights };
            formula(&request).unwrap().molar_mass_g_per_mol
        };
        // 22.98976928 + 35.45; 22.990 + 35.45; 23.0 + 35.5.
        assert!((mass(WeightsRequest::Exact) - 58.439_769_28).abs() < 1e-9);
        assert!((mass(WeightsRequest::Abridged) - 58.44).abs() < 1e-9);
        assert!((mass(WeightsRequest::Classroom) - 58.5).abs() < 1e-9);
    }

    #[test]
    fn mass_fractions_add_to_one() {
        let request =
            FormulaRequest { format: 1, formula: "CuSO4.5H2O".to_owned(), weights: WeightsRequest::Exact };
        let answer = formula(&request).unwrap();
        let sum: f64 = answer.atoms.iter().map(|atom| atom.mass_fraction).sum();
        assert!((sum - 1.0).abs() < 1e-14);
        let symbols: Vec<&str> = answer.atoms.iter().map(|atom| atom.symbol.as_str()).collect();
        assert_eq!(symbols.len(), 4);
        assert_eq!(answer.formula_unicode, "CuSO₄·5H₂O");
    }

    #[test]
    fn two_independent_balances_are_told() {
        let request = BalanceRequest {
            format: 1,
            equation: "H2O2 + KMnO4 + H2SO4 -> K2SO4 + MnSO4 + H2O + O2".to_owned(),
        };
        let refusal = balance(&request).unwrap_err();
        assert_eq!(refusal.code, "many_balances");
        assert!(refusal.advice.contains("2H2O2 -> 2H2O + O2"), "{}", refusal.advice);
    }
}
