//! Balancing and its refusals; published equations are checked in the tests of the workspace.

use super::*;
use crate::{Code, Error};

fn balanced(text: &str) -> String {
    let balanced = Reaction::parse(text).unwrap().balance().unwrap_or_else(|error| panic!("{text}: {error}"));
    assert!(balanced.is_balanced(), "{balanced}");
    balanced.to_string()
}

fn refused(text: &str) -> Error {
    let error = Reaction::parse(text).unwrap().balance().unwrap_err();
    assert_eq!(error.parameter, "equation");
    assert!(!error.value.is_empty());
    error
}

#[test]
fn smallest_whole_numbers_are_found() {
    assert_eq!(balanced("H2O2 -> H2O + O2"), "2H2O2 -> 2H2O + O2");
    assert_eq!(balanced("4H2 + 4O2 = 4H2O"), "2H2 + O2 = 2H2O");
    assert_eq!(balanced("Fe^3+ + e- ⇌ Fe^2+"), "Fe^3+ + e- ⇌ Fe^2+");
    assert_eq!(balanced("H2O(l) -> H2O(g)"), "H2O(l) -> H2O(g)");
    assert_eq!(balanced("H2O + D2O -> HDO"), "H2O + D2O -> 2HDO");
    assert_eq!(balanced("Fe0.95O + H2 -> Fe + H2O"), "20Fe0.95O + 20H2 -> 19Fe + 20H2O");
    assert_eq!(balanced("1 3CdSO4.8H2O -> CdSO4 + H2O"), "1 3CdSO4·8H2O -> 3CdSO4 + 8H2O");
    let numbers = Reaction::parse("N2 + H2 -> NH3").unwrap().balance().unwrap();
    assert_eq!(numbers.coefficients(), [1, 3, 2]);
    assert_eq!((numbers.reactants().len(), numbers.products()[0].coefficient), (2, 2));
    assert_eq!(numbers.arrow(), Arrow::Forward);
}

#[test]
fn a_wrong_equation_is_not_balanced() {
    let mut equation = Reaction::parse("H2 + Cl2 -> HCl").unwrap().balance().unwrap();
    assert!(equation.is_balanced());
    equation.products[0].coefficient = 3;
    assert!(!equation.is_balanced());
    let mut ions = Reaction::parse("Fe^3+ + e- -> Fe^2+").unwrap().balance().unwrap();
    ions.reactants[1].coefficient = 2;
    assert!(!ions.is_balanced(), "the charge counts too");
}

#[test]
fn why_there_is_no_balance() {
    for (text, advice) in [
        ("Fe + O2 -> Fe2O3 + Na", "Na stands only on the right"),
        ("NaCl + H2O -> Na + H2O2", "Cl stands only on the left"),
        ("H2 + O2 + Cl2 -> H2O + Na", "Cl stands only on the left; Na stands only on the right"),
        ("MnO4- + H2O -> MnO2 + H2O2", "the charge cannot balance"),
        ("MnO4- -> Mn^2+ + O2", "the charge cannot balance"),
        ("H2O2 -> H2O", "no numbers conserve H, O together"),
        ("H2O + Na -> NaOH", "no numbers conserve H, O, Na together"),
        ("H2O + O2 -> H2", "O stands only on the left"),
        ("CO2 + O2 -> CO", "it balances only with O2 on the other side"),
        ("Fe^3+ + Cl- -> FeCl2", "the atoms can be balanced but the charge cannot"),
        ("H2 + O2 + NaCl -> H2O + Na2Cl", "it balances only without NaCl, Na2Cl"),
        ("C + O2 + NaCl -> CO + CO2 + Na2Cl", "it balances only without NaCl, Na2Cl"),
    ] {
        let Err(error) = Reaction::parse(text).unwrap().balance() else { panic!("{text} was balanced") };
        assert_eq!(error.code, Code::NoBalance, "{text}: {error}");
        assert!(error.advice.contains(advice), "{text}: {error}");
    }
}

#[test]
fn repeated_species_are_refused() {
    let error = refused("H2O + SO3 -> H2O + H2SO4");
    assert_eq!(error.code, Code::Contradiction);
    assert!(error.advice.starts_with("H2O stands on both sides"), "{error}");
    for text in ["H2 + O2 + H2 -> H2O", "H2 + O2 -> H2O + H2O"] {
        let error = refused(text);
        assert_eq!(error.code, Code::GivenTwice, "{text}");
        assert!(error.advice.contains(if text.starts_with("H2 + O2 + H2") {
            "H2 stands"
        } else {
            "H2O stands"
        }));
    }
}

#[test]
fn several_balances_are_counted_and_listed() {
    let error = refused("H2O2 + KMnO4 + H2SO4 -> K2SO4 + MnSO4 + H2O + O2");
    assert_eq!(error.code, Code::ManyBalances);
    assert!(error.advice.contains("2 independent balances"), "{error}");
    assert!(error.advice.contains("2H2O2 -> 2H2O + O2"), "{error}");
    assert!(error.advice.contains("4KMnO4 + 6H2SO4 -> 2K2SO4 + 4MnSO4 + 6H2O + 5O2"), "{error}");
    // C + O2 -> CO2, 2C + O2 -> 2CO
    let error = refused("C + O2 -> CO + CO2");
    assert!(error.advice.contains("2C + O2 -> 2CO") && error.advice.contains("C + O2 -> CO2"), "{error}");
}

#[test]
fn two_directions_without_a_positive_sum_are_no_balance() {
    // x CO2 + y H2O -> u CO + v H2 + w CH4: oxygen 2x + y = u and carbon x = u + w leave x + y + w = 0.
    let error = refused("CO2 + H2O -> CO + H2 + CH4");
    assert_eq!(error.code, Code::NoBalance, "{error}");
    assert!(error.advice.contains("on the other side"), "{error}");
}

#[test]
fn numbers_beyond_128_bits_are_balanced_too() {
    // Three kinds of atom in large numbers: products in the elimination leave 128 bits, the answer does not.
    let a = [99_999_999_999_989_u64, 99_999_999_999_947, 99_999_999_999_883];
    let b = [99_999_999_999_877_u64, 98_999_999_999_809, 97_999_999_999_863];
    let c = [88_888_888_888_887_u64, 77_777_777_777_779, 66_666_666_666_671];
    let sum = [0, 1, 2].map(|i| a[i] + 2 * b[i] + 3 * c[i]);
    let [a, b, c, sum] = [a, b, c, sum].map(|n| format!("H{}O{}N{}", n[0], n[1], n[2]));
    let reaction = Reaction::parse(&format!("{a} + {b} + {c} -> {sum}")).unwrap();
    let balanced = reaction.balance().unwrap();
    assert_eq!(balanced.coefficients(), [1, 2, 3, 1]);
    assert!(balanced.is_balanced());
}

#[test]
fn coefficients_beyond_64_bits_are_refused() {
    // HaOb + HcNd + ... with large numbers that share no divisor multiply up.
    let text = "H999999999999989O999999999999947 + H999999999999883 -> H2 + O2";
    let error = refused(&format!("{text} + O999999999999877"));
    assert_eq!(error.code, Code::ManyBalances, "{error}");
    let error = refused("H999999999999989O999999999999947 -> H999999999999883 + O999999999999877");
    assert_eq!(error.code, Code::TooLarge, "{error}");
    assert!(error.advice.contains("check the numbers"), "{error}");
}
