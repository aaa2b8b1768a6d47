//! Balanced equations from textbooks, impossible ones, ambiguous ones, and random ones.
//!
//! Conservation is counted here a second time, with a small reader of formulas that knows nothing of the library's.

use std::collections::BTreeMap;

use overwater::Code;
use overwater::chem::Reaction;
use proptest::prelude::*;

/// Reads a formula of the kind used below: symbols, whole numbers, brackets, a charge behind `^` or a plain sign.
fn count(formula: &str) -> BTreeMap<String, i128> {
    let (body, charge) = match formula.split_once('^') {
        Some((body, charge)) => {
            let (number, sign) = charge.split_at(charge.len() - 1);
            let number = if number.is_empty() { 1 } else { number.parse().unwrap() };
            (body, if sign == "+" { number } else { -number })
        }
        None => match formula.strip_suffix('+') {
            Some(body) => (body, 1),
            None => formula.strip_suffix('-').map_or((formula, 0), |body| (body, -1)),
        },
    };
    let mut stack = vec![BTreeMap::new()];
    let letters: Vec<char> = body.chars().filter(|_| body != "e").collect();
    let mut at = 0;
    while at < letters.len() {
        let mut unit = BTreeMap::new();
        match letters[at] {
            '(' | '[' => {
                stack.push(BTreeMap::new());
                at += 1;
                continue;
            }
            ')' | ']' => unit = stack.pop().unwrap(),
            first => {
                let mut symbol = first.to_string();
                while letters.get(at + 1).is_some_and(|c| c.is_lowercase()) {
                    at += 1;
                    symbol.push(letters[at]);
                }
                unit.insert(symbol, 1);
            }
        }
        at += 1;
        let digits: String = letters[at..].iter().take_while(|c| c.is_ascii_digit()).collect();
        at += digits.len();
        let times: i128 = if digits.is_empty() { 1 } else { digits.parse().unwrap() };
        for (symbol, number) in unit {
            *stack.last_mut().unwrap().entry(symbol).or_insert(0) += number * times;
        }
    }
    let mut total = stack.pop().unwrap();
    assert!(stack.is_empty(), "{formula}");
    if charge != 0 {
        total.insert("charge".to_owned(), charge);
    }
    total
}

/// Left minus right of everything, for species with these coefficients.
fn difference(left: &[&str], right: &[&str], coefficients: &[u64]) -> BTreeMap<String, i128> {
    assert_eq!(left.len() + right.len(), coefficients.len());
    let mut total = BTreeMap::new();
    for (index, (formula, coefficient)) in left.iter().chain(right).zip(coefficients).enumerate() {
        let sign = if index < left.len() { 1 } else { -1 };
        for (what, number) in count(formula) {
            *total.entry(what).or_insert(0) += sign * number * i128::from(*coefficient);
        }
    }
    total.retain(|_, number| *number != 0);
    total
}

fn gcd(a: u64, b: u64) -> u64 {
    if b == 0 { a } else { gcd(b, a % b) }
}

/// Splits `2H2 + O2 -> 2H2O` into its species and numbers.
fn split<'e>(equation: &'e str) -> (Vec<&'e str>, Vec<&'e str>, Vec<u64>) {
    let mut numbers = Vec::new();
    let (left, right) = equation.split_once(" -> ").unwrap();
    let mut species = |text: &'e str| -> Vec<&'e str> {
        text.split(" + ")
            .map(|term| {
                let digits = term.chars().take_while(char::is_ascii_digit).count();
                numbers.push(if digits == 0 { 1 } else { term[..digits].parse().unwrap() });
                &term[digits..]
            })
            .collect()
    };
    let (left, right) = (species(left), species(right));
    (left, right, numbers)
}

/// Textbook equations with their smallest whole numbers; the copy is counted again below.
const PUBLISHED: &[&str] = &[
    // OpenStax, Chemistry 2e, section 4.1: text, examples and exercises (from memory).
    "CH4 + 2O2 -> CO2 + 2H2O",
    "2H2O -> 2H2 + O2",
    "2N2 + 5O2 -> 2N2O5",
    "2NH4NO3 -> 2N2 + 4H2O + O2",
    "2C2H6 + 7O2 -> 4CO2 + 6H2O",
    "PCl5 + H2O -> POCl3 + 2HCl",
    "3Cu + 8HNO3 -> 3Cu(NO3)2 + 4H2O + 2NO",
    "H2 + I2 -> 2HI",
    "4Fe + 3O2 -> 2Fe2O3",
    "2Na + 2H2O -> 2NaOH + H2",
    "(NH4)2Cr2O7 -> Cr2O3 + N2 + 4H2O",
    "P4 + 6Cl2 -> 4PCl3",
    "PtCl4 -> Pt + 2Cl2",
    "4Ag + 2H2S + O2 -> 2Ag2S + 2H2O",
    "P4 + 5O2 -> P4O10",
    "2Pb + 2H2O + O2 -> 2Pb(OH)2",
    "3Fe + 4H2O -> Fe3O4 + 4H2",
    "Sc2O3 + 3SO3 -> Sc2(SO4)3",
    "Ca3(PO4)2 + 4H3PO4 -> 3Ca(H2PO4)2",
    "2Al + 3H2SO4 -> Al2(SO4)3 + 3H2",
    "TiCl4 + 2H2O -> TiO2 + 4HCl",
    "CaCO3 + 2HCl -> CaCl2 + H2O + CO2",
    // Gas preparations in every school text.
    "2H2O2 -> 2H2O + O2",
    "2KClO3 -> 2KCl + 3O2",
    "2KMnO4 -> K2MnO4 + MnO2 + O2",
    "Mg + 2HCl -> MgCl2 + H2",
    "CaC2 + 2H2O -> Ca(OH)2 + C2H2",
    "2NH4Cl + Ca(OH)2 -> CaCl2 + 2H2O + 2NH3",
    "MnO2 + 4HCl -> MnCl2 + 2H2O + Cl2",
    "2KMnO4 + 16HCl -> 2KCl + 2MnCl2 + 8H2O + 5Cl2",
    "C6H12O6 + 6O2 -> 6CO2 + 6H2O",
    "4NH3 + 5O2 -> 4NO + 6H2O",
    "2Pb(NO3)2 -> 2PbO + 4NO2 + O2",
    "4FeS2 + 11O2 -> 2Fe2O3 + 8SO2",
    // Redox in ions.
    "2MnO4- + 5C2O4^2- + 16H+ -> 2Mn^2+ + 10CO2 + 8H2O",
    "MnO4- + 5Fe^2+ + 8H+ -> Mn^2+ + 5Fe^3+ + 4H2O",
    "Cr2O7^2- + 6Fe^2+ + 14H+ -> 2Cr^3+ + 6Fe^3+ + 7H2O",
    "2S2O3^2- + I2 -> S4O6^2- + 2I-",
    "H2O2 + 2I- + 2H+ -> I2 + 2H2O",
    "IO3- + 5I- + 6H+ -> 3I2 + 3H2O",
    "3Cl2 + 6OH- -> 5Cl- + ClO3- + 3H2O",
    "Cu + 2Ag+ -> Cu^2+ + 2Ag",
    // Half-equations.
    "MnO4- + 8H+ + 5e- -> Mn^2+ + 4H2O",
    "Cr2O7^2- + 14H+ + 6e- -> 2Cr^3+ + 7H2O",
    "H2O2 -> O2 + 2H+ + 2e-",
    "H2O2 + 2H+ + 2e- -> 2H2O",
    "O2 + 2H2O + 4e- -> 4OH-",
    "2H+ + 2e- -> H2",
    "NO3- + 4H+ + 3e- -> NO + 2H2O",
    "Al -> Al^3+ + 3e-",
    // A classic with large numbers.
    "10K4[Fe(CN)6] + 122KMnO4 + 299H2SO4 -> 162KHSO4 + 5Fe2(SO4)3 + 122MnSO4 + 60HNO3 + 60CO2 + 188H2O",
];

#[test]
fn published_equations_come_out_with_their_numbers() {
    for equation in PUBLISHED {
        let (left, right, numbers) = split(equation);
        assert_eq!(difference(&left, &right, &numbers), BTreeMap::new(), "{equation}: the copy itself");
        let bare = format!("{} -> {}", left.join(" + "), right.join(" + "));
        let balanced = Reaction::parse(&bare)
            .and_then(|r| r.balance())
            .unwrap_or_else(|error| panic!("{bare}: {error}"));
        assert_eq!(balanced.coefficients(), numbers, "{bare}");
        assert_eq!(balanced.to_string(), *equation);
        assert!(balanced.is_balanced());
        assert!(Reaction::parse(equation).unwrap().is_balanced());
        // Seven times as much of the first species spoils it.
        let spoiled =
            Reaction::parse(&format!("7{equation}")).unwrap_or_else(|error| panic!("7{equation}: {error}"));
        assert_eq!(spoiled.check().unwrap_err().code, Code::NoBalance, "{spoiled}");
    }
}

#[test]
fn the_permanganate_assay_of_peroxide_is_five_to_two() {
    let ions = Reaction::parse("MnO4- + H2O2 + H+ -> Mn^2+ + O2 + H2O").unwrap();
    // Peroxide may also decompose by itself, so the atoms leave the ratio open; the electrons fix it.
    assert_eq!(ions.balance().unwrap_err().code, Code::ManyBalances);
    let reduction = Reaction::parse("MnO4- + H+ + e- -> Mn^2+ + H2O").unwrap().balance().unwrap();
    let oxidation = Reaction::parse("H2O2 -> O2 + H+ + e-").unwrap().balance().unwrap();
    assert_eq!((reduction.reactants()[2].coefficient, oxidation.products()[2].coefficient), (5, 2));
    let whole = "2MnO4- + 5H2O2 + 6H+ -> 2Mn^2+ + 5O2 + 8H2O";
    assert_eq!(Reaction::parse(whole).unwrap().as_written().unwrap().coefficients(), [2, 5, 6, 2, 5, 8]);
    let wrong = "2MnO4- + 5H2O2 + 6H+ -> 2Mn^2+ + 4O2 + 8H2O";
    assert!(Reaction::parse(wrong).unwrap().check().unwrap_err().advice.contains("O: 18 before, 16 after"));
}

#[test]
fn impossible_equations_say_why() {
    for (equation, advice) in [
        ("H2O -> H2", "O stands only on the left"),
        ("Fe -> Fe2O3", "O stands only on the right"),
        ("H2O2 -> H2O", "no numbers conserve H, O together"),
        ("MnO4- + H+ -> Mn^2+ + H2O", "the atoms can be balanced but the charge cannot"),
        ("Fe^2+ -> Fe^3+", "the charge cannot"),
        ("Fe^3+ + e- -> Fe^2+ + Cl-", "Cl stands only on the right"),
        ("H2 + O2 -> H2O + O3 + N2", "N stands only on the right"),
        ("CO2 + O2 -> CO", "with O2 on the other side"),
    ] {
        let error = Reaction::parse(equation).unwrap().balance().unwrap_err();
        assert_eq!(error.code, Code::NoBalance, "{equation}: {error}");
        assert!(error.advice.contains(advice), "{equation}: {error}");
    }
}

#[test]
fn independent_balances_are_counted() {
    for (equation, how_many) in [
        ("H2O2 + KMnO4 + H2SO4 -> K2SO4 + MnSO4 + H2O + O2", 2),
        ("C + O2 -> CO + CO2", 2),
        ("NH3 + O2 -> NO + NO2 + H2O", 2),
        ("Fe + O2 -> FeO + Fe2O3 + Fe3O4", 3),
        ("KClO3 + HCl -> KCl + H2O + Cl2 + ClO2", 2),
    ] {
        let error = Reaction::parse(equation).unwrap().balance().unwrap_err();
        assert_eq!(error.code, Code::ManyBalances, "{equation}: {error}");
        assert!(error.advice.contains(&format!("{how_many} independent balances")), "{equation}: {error}");
        // Each listed equation is balanced itself.
        let list = error.advice.split_once("balances, ").unwrap().1.split_once("; leave").unwrap().0;
        let listed: Vec<&str> = list.split(" and ").collect();
        assert_eq!(listed.len(), how_many, "{list}");
        for one in listed {
            let (left, right, numbers) = split(one);
            assert_eq!(difference(&left, &right, &numbers), BTreeMap::new(), "{one}");
        }
    }
}

const POOL: [&str; 26] = [
    "H2", "O2", "H2O", "H2O2", "CO2", "CO", "CH4", "C2H6", "NH3", "N2", "NO", "NO2", "HNO3", "Fe", "FeO",
    "Fe2O3", "Fe3O4", "H+", "OH-", "e-", "Fe^2+", "Fe^3+", "NO3-", "NH4+", "CO3^2-", "Fe(NO3)3",
];

proptest! {
    #![proptest_config(ProptestConfig::with_cases(400))]

    #[test]
    fn whatever_is_balanced_conserves_everything(picked in prop::sample::subsequence(POOL.to_vec(), 2..6).prop_shuffle(), cut in 1_usize..5) {
        let cut = cut.min(picked.len() - 1);
        let (left, right) = picked.split_at(cut);
        let text = format!("{} -> {}", left.join(" + "), right.join(" + "));
        match Reaction::parse(&text).unwrap().balance() {
            Ok(balanced) => {
                let numbers = balanced.coefficients();
                prop_assert_eq!(difference(left, right, &numbers), BTreeMap::new(), "{}", balanced);
                prop_assert!(numbers.iter().all(|n| *n > 0));
                prop_assert_eq!(numbers.iter().fold(0, |a, b| gcd(a, *b)), 1);
                prop_assert!(balanced.is_balanced());
                let again = Reaction::parse(&balanced.to_string()).unwrap();
                prop_assert_eq!(again.as_written().unwrap(), balanced);
            }
            Err(error) => prop_assert!(matches!(error.code, Code::NoBalance | Code::ManyBalances), "{}", error),
        }
    }

    /// Small numbers are tried one by one: where one set does it, balancing must not say that there is none.
    #[test]
    fn what_small_numbers_balance_is_not_refused(picked in prop::sample::subsequence(POOL.to_vec(), 3..5).prop_shuffle(), cut in 1_usize..4) {
        let cut = cut.min(picked.len() - 1);
        let (left, right) = picked.split_at(cut);
        let found = (0..8_u64.pow(picked.len() as u32)).map(|code| {
            (0..picked.len() as u32).map(|place| code / 8_u64.pow(place) % 8 + 1).collect::<Vec<u64>>()
        });
        let counts: Vec<_> = picked.iter().map(|formula| count(formula)).collect();
        let mut working: Vec<Vec<u64>> = found.filter(|numbers| {
            let mut total: BTreeMap<&str, i128> = BTreeMap::new();
            for (index, (counts, number)) in counts.iter().zip(numbers).enumerate() {
                let sign = if index < cut { 1 } else { -1 };
                for (what, n) in counts {
                    *total.entry(what).or_insert(0) += sign * n * i128::from(*number);
                }
            }
            total.values().all(|n| *n == 0)
        }).collect();
        working.retain(|numbers| numbers.iter().fold(0, |a, b| gcd(a, *b)) == 1);
        let text = format!("{} -> {}", left.join(" + "), right.join(" + "));
        let result = Reaction::parse(&text).unwrap().balance();
        match (working.len(), result) {
            (0, Ok(balanced)) => prop_assert!(balanced.coefficients().iter().any(|n| *n > 8), "{}", balanced),
            (0, Err(_)) => {}
            (1, Ok(balanced)) => prop_assert_eq!(&balanced.coefficients(), &working[0]),
            (_, Err(error)) => prop_assert_eq!(error.code, Code::ManyBalances, "{}: {:?}", text, working),
            (_, Ok(balanced)) => prop_assert!(false, "{} is one of {:?}", balanced, working),
        }
    }
}
