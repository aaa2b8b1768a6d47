//! Reading and printing, as a whole.

use proptest::prelude::*;

use super::*;
use crate::Code;

fn read(text: &str) -> Formula {
    Formula::parse(text).unwrap_or_else(|error| panic!("{text}: {error}"))
}

fn counted(text: &str) -> String {
    let formula = read(text);
    let mut parts: Vec<String> = formula.composition().iter().map(|(a, c)| format!("{a}{c}")).collect();
    if formula.charge() != 0 {
        parts.push(format!("{:+}", formula.charge()));
    }
    parts.extend(formula.state().map(|state| state.symbol().to_owned()));
    parts.join(" ")
}

fn refused(text: &str) -> (Code, (usize, usize)) {
    match Formula::parse(text) {
        Ok(formula) => panic!("{text} was read as {formula}"),
        Err(error) => {
            assert_eq!(error.parameter, "formula");
            (error.code, error.span.expect("a place"))
        }
    }
}

#[test]
fn atoms_are_counted() {
    for (text, counts) in [
        ("H2O2", "H2 O2"),
        ("NaCl", "Na1 Cl1"),
        ("CO", "C1 O1"),
        ("Co", "Co1"),
        ("C2H5OH", "C2 H6 O1"),
        ("Ca(OH)2", "Ca1 O2 H2"),
        ("Al2(SO4)3", "Al2 S3 O12"),
        ("K4[Fe(CN)6]", "K4 Fe1 C6 N6"),
        ("[Co(NH3)5Cl]Cl2", "Co1 N5 H15 Cl3"),
        ("((C2H4)3(OH)2)4", "C24 H56 O8"),
        ("CuSO4.5H2O", "Cu1 S1 O9 H10"),
        ("CuSO4·5H2O", "Cu1 S1 O9 H10"),
        ("CuSO4 · 5H2O", "Cu1 S1 O9 H10"),
        ("CuSO4 .5H2O", "Cu1 S1 O9 H10"),
        ("CuSO4. 5H2O", "Cu1 S1 O9 H10"),
        ("Zn(NO3)2.6H2O", "Zn1 N2 O12 H12"),
        ("CaSO4.0.5H2O", "Ca1 S1 O4.5 H1"),
        ("NaCl.2.5H2O", "Na1 Cl1 H5 O2.5"),
        ("3CdSO4.8H2O", "Cd3 S3 O20 H16"),
        ("2Na2CO3.3H2O2", "Na4 C2 O12 H6"),
        ("Al2O3·2SiO2·2H2O", "Al2 O9 Si2 H4"),
        ("KAl(SO4)2.12H2O", "K1 Al1 S2 O20 H24"),
        ("NaCl.H2O", "Na1 Cl1 H2 O1"),
        ("CaCl2.6NH3", "Ca1 Cl2 N6 H18"),
        ("Fe0.95O", "Fe0.95 O1"),
        ("YBa2Cu3O6.9", "Y1 Ba2 Cu3 O6.9"),
        ("Fe1.05O", "Fe1.05 O1"),
        ("La_1.85Sr0.15CuO4", "La1.85 Sr0.15 Cu1 O4"),
        ("CuSO_4.5H2O", "Cu1 S1 O5.5 H2"),
        ("D2O", "D2 O1"),
        ("HTO", "H1 T1 O1"),
        ("H₂O", "H2 O1"),
        ("SO₄²⁻", "S1 O4 -2"),
        ("Fe³⁺(aq)", "Fe1 +3 (aq)"),
        ("Na⁺", "Na1 +1"),
        ("I₃⁻", "I3 -1"),
        ("I₃-", "I3 -1"),
        ("I_3-", "I3 -1"),
        ("CuSO₄.5H₂O", "Cu1 S1 O9 H10"),
        ("Fe₀.₉₅O", "Fe0.95 O1"),
        ("Tc¹⁴⁺", "Tc1 +14"),
        ("Tc⁵⁰⁻", "Tc1 -50"),
        ("Na+", "Na1 +1"),
        ("Cl-", "Cl1 -1"),
        ("Cl−", "Cl1 -1"),
        ("MnO4-", "Mn1 O4 -1"),
        ("NH4+", "N1 H4 +1"),
        ("Al(OH)4-", "Al1 O4 H4 -1"),
        ("SO4^2-", "S1 O4 -2"),
        ("SO4^-2", "S1 O4 -2"),
        ("NO3^-(aq)", "N1 O3 -1 (aq)"),
        ("Hg2^2+", "Hg2 +2"),
        ("[Fe(CN)6]^4-", "Fe1 C6 N6 -4"),
        ("C60-", "C60 -1"),
        ("H2O(l)", "H2 O1 (l)"),
        ("H2O (g)", "H2 O1 (g)"),
        ("NaCl(s)", "Na1 Cl1 (s)"),
        ("CuSO4.5H2O(s)", "Cu1 S1 O9 H10 (s)"),
        ("  H2O\t", "H2 O1"),
        ("H1Cl1", "H1 Cl1"),
        ("e-", "-1"),
        ("e^-", "-1"),
        ("e⁻", "-1"),
        ("e−", "-1"),
    ] {
        assert_eq!(counted(text), counts, "{text}");
    }
}

#[test]
fn refusals_say_what_and_where() {
    use Code::{Ambiguous, Missing, Syntax, TooLarge, UnknownName};
    for (text, code, span) in [
        ("", Missing, (0, 0)),
        ("  ", Missing, (0, 2)),
        ("NaXl", UnknownName, (2, 4)),
        ("COqasza", UnknownName, (1, 7)),
        ("Sodium", UnknownName, (0, 6)),
        ("nacl", UnknownName, (0, 4)),
        ("H2o", UnknownName, (2, 3)),
        ("e", UnknownName, (0, 1)),
        ("He2e-", UnknownName, (3, 4)),
        ("2H2O", Syntax, (0, 1)),
        ("Ca(OH", Syntax, (2, 5)),
        ("Ca(OH]2", Syntax, (2, 6)),
        ("CaOH)2", Syntax, (4, 5)),
        ("Ca()2", Syntax, (2, 4)),
        ("(CaCl2.2H2O)3", Syntax, (0, 6)),
        ("H0", Syntax, (1, 2)),
        ("H02", Syntax, (1, 3)),
        ("H0.0O", Syntax, (1, 4)),
        ("H_O", Syntax, (1, 2)),
        ("CuSO4.", Syntax, (6, 6)),
        ("CuSO4..5H2O", Syntax, (6, 6)),
        (".H2O", Syntax, (0, 0)),
        ("FeO.5", Syntax, (5, 5)),
        ("H2 O", Syntax, (2, 3)),
        ("H2₃O", Syntax, (2, 5)),
        ("H2O!", Syntax, (3, 4)),
        ("H2Oé", Syntax, (3, 5)),
        ("H2O(s)g", UnknownName, (6, 7)),
        ("H2O(s)2", Syntax, (6, 7)),
        ("(aq)", Syntax, (0, 0)),
        ("+", Syntax, (0, 0)),
        ("Ca++", Syntax, (2, 4)),
        ("Ca^2", Syntax, (2, 4)),
        ("Ca^", Syntax, (2, 3)),
        ("Ca^0+", Syntax, (2, 5)),
        ("Ca²", Syntax, (2, 4)),
        ("Na+Cl", Syntax, (3, 4)),
        ("e+", Syntax, (1, 2)),
        ("e^2-", Syntax, (1, 4)),
        ("2e-", UnknownName, (1, 2)),
        ("Ca^1000+", TooLarge, (2, 8)),
        ("Ca^99999999999999999999+", TooLarge, (2, 24)),
        ("H9999999999999999", TooLarge, (1, 17)),
        ("H99999999999999999999", TooLarge, (1, 21)),
        ("(H999999999)9999999", TooLarge, (11, 19)),
        ("H999999999999999H999999999999999", TooLarge, (0, 32)),
        ("H0.0000000000001", TooLarge, (1, 16)),
        ("La1.85Sr0.15CuO4", Ambiguous, (2, 6)),
        ("Al2O3.2SiO2.2H2O", Ambiguous, (4, 7)),
        ("Na2CO3.1.5H2O2", Ambiguous, (5, 8)),
        ("Fe3+", Ambiguous, (2, 4)),
        ("O2-", Ambiguous, (1, 3)),
        ("SO42-", Ambiguous, (2, 5)),
        ("[Fe(CN)6]3-", Ambiguous, (9, 11)),
    ] {
        assert_eq!(refused(text), (code, span), "{text}");
    }
}

#[test]
fn both_readings_are_shown_and_both_read() {
    for (text, first, second) in [
        ("La1.85Sr0.15CuO4", "La1·85Sr0.15CuO4", "La_1.85Sr0.15CuO4"),
        ("Al2O3.2SiO2", "Al2O3·2SiO2", "Al2O_3.2SiO2"),
        ("Na2CO3.1.5H2O2", "Na2CO3·1.5H2O2", "Na2CO_3.1.5H2O2"),
        ("Fe3+", "Fe^3+", "Fe3^+"),
        ("SO42-", "SO4^2-", "SO42^-"),
        (" [Fe(CN)6]3- ", "[Fe(CN)6]^3-", "[Fe(CN)6]3^-"),
    ] {
        let advice = Formula::parse(text).unwrap_err().advice;
        assert!(advice.contains(&format!("write {first} ")), "{advice}");
        assert!(advice.contains(&format!(" {second} ")), "{advice}");
        assert_ne!(read(first), read(second));
    }
}

#[test]
fn inside_brackets_a_dot_is_a_decimal_point_or_refused() {
    assert_eq!(counted("(Fe0.5Ni0.5)2O3"), "Fe1 Ni1 O3");
    let error = Formula::parse("(La1.85Sr0.15)CuO4").unwrap_err();
    assert_eq!((error.code, error.span), (Code::Ambiguous, Some((3, 7))));
    assert!(error.advice.contains("write (La_1.85Sr0.15)CuO4 for"), "{}", error.advice);
    assert!(!error.advice.contains('·'), "{}", error.advice);
    assert_eq!(counted("(La_1.85Sr0.15)CuO4"), "La1.85 Sr0.15 Cu1 O4");
}

#[test]
fn the_caret_points_at_the_unknown_symbol() {
    let error = Formula::parse("Na2Xl3").unwrap_err();
    assert_eq!(error.caret("Na2Xl3").as_deref(), Some("Na2Xl3\n   ^^"));
    assert_eq!(&*error.value, "Na2Xl3");
    assert!(error.advice.contains("Cl"), "{}", error.advice);
}

#[test]
fn limits_are_where_they_are_said_to_be() {
    let nested = |depth: usize| format!("{}H{}", "(".repeat(depth), ")".repeat(depth));
    assert_eq!(counted(&nested(MAX_NESTING)), "H1");
    assert_eq!(refused(&nested(MAX_NESTING + 1)), (Code::TooLarge, (MAX_NESTING, MAX_NESTING + 1)));
    assert_eq!(counted(&"H".repeat(MAX_FORMULA_BYTES)), "H4096");
    assert_eq!(refused(&"H".repeat(MAX_FORMULA_BYTES + 1)).0, Code::TooLarge);
    assert_eq!(counted("Ca^999+"), "Ca1 +999");
    assert_eq!(counted("H999999999999999"), "H999999999999999");
    let long = format!("{}Xl", "H".repeat(1000));
    assert_eq!(Formula::parse(&long).unwrap_err().value.len(), 123);
}

#[test]
fn spelling_does_not_matter_but_structure_does() {
    assert_eq!(read("CuSO4.5H2O"), read("CuSO₄ · 5H₂O"));
    assert_eq!(read("SO4^2-"), read("SO₄²⁻"));
    assert_eq!(read("Fe0.950O"), read("Fe0.95O1"));
    assert_ne!(read("C2H5OH"), read("C2H6O"));
    assert_ne!(read("H2O(l)"), read("H2O"));
    assert_eq!(read("H2O(l)").without_state(), read("H2O"));
    assert!(!read("H2O").equal_but_for_state(&read("H2O2")));
    assert!(!read("MnO4^2-").equal_but_for_state(&read("MnO4-")));
    assert!(!read("3CdSO4·8H2O").equal_but_for_state(&read("2CdSO4·8H2O")));
    assert!(read("e-").is_electron() && !read("H+").is_electron());
    assert_eq!("H2O".parse::<Formula>(), Formula::parse("H2O"));
    assert_eq!(read("H2O").count(Atom::from_number(8).unwrap()), Some(Count::ONE));
    assert_eq!(read("H2O").count(Atom::D), None);
}

/// A formula as a tree, made without the reader.
#[derive(Debug, Clone)]
enum Tree {
    Atoms(Atom, Count),
    Group(Vec<Tree>, bool, Count),
}

/// Writes the tree in one of the spellings and counts its atoms by recursion.
fn spell(trees: &[Tree], unicode: bool, factor: Count, text: &mut String, totals: &mut Vec<(Atom, Count)>) {
    let number = |count: Count, text: &mut String| {
        if count == Count::ONE {
        } else if unicode {
            text.extend(count.to_string().chars().map(|c| match c.to_digit(10) {
                Some(digit) => char::from_u32(0x2080 + digit).unwrap(),
                None => c,
            }));
        } else {
            text.push_str(&format!("_{count}"));
        }
    };
    for tree in trees {
        match tree {
            Tree::Atoms(atom, count) => {
                text.push_str(atom.symbol());
                number(*count, text);
                let total = count.checked_mul(factor).unwrap();
                match totals.iter_mut().find(|(kind, _)| kind == atom) {
                    Some((_, sum)) => *sum = sum.checked_add(total).unwrap(),
                    None => totals.push((*atom, total)),
                }
            }
            Tree::Group(inside, square, count) => {
                text.push(if *square { '[' } else { '(' });
                spell(inside, unicode, factor.checked_mul(*count).unwrap(), text, totals);
                text.push(if *square { ']' } else { ')' });
                number(*count, text);
            }
        }
    }
}

fn any_count() -> impl Strategy<Value = Count> {
    prop_oneof![
        3 => Just(Count::ONE),
        4 => (2_u64..30).prop_map(|n| Count::new(n, 0).unwrap()),
        1 => (1_u64..400).prop_map(|n| Count::new(n, 2).unwrap()),
    ]
}

fn any_atom() -> impl Strategy<Value = Atom> {
    prop_oneof![20 => (1_u8..=118).prop_map(|z| Atom::from_number(z).unwrap()), 1 => Just(Atom::D), 1 => Just(Atom::T)]
}

fn any_trees() -> impl Strategy<Value = Vec<Tree>> {
    let leaf = (any_atom(), any_count()).prop_map(|(atom, count)| Tree::Atoms(atom, count));
    let tree = leaf.prop_recursive(3, 16, 4, |inner| {
        (prop::collection::vec(inner, 1..4), any::<bool>(), any_count())
            .prop_map(|(inside, square, count)| Tree::Group(inside, square, count))
    });
    prop::collection::vec(tree, 1..5)
}

proptest! {
    #[test]
    fn printed_formulas_read_back_equal(
        parts in prop::collection::vec((any_count(), any_trees()), 1..4),
        charge in -12_i32..=12,
        state in prop::option::of(prop::sample::select(State::ALL.to_vec())),
        unicode in any::<bool>(),
    ) {
        let mut text = String::new();
        let mut totals = Vec::new();
        for (index, (coefficient, trees)) in parts.iter().enumerate() {
            let coefficient = if parts.len() == 1 { Count::ONE } else { *coefficient };
            if index > 0 {
                text.push('·');
            }
            if coefficient != Count::ONE {
                text.push_str(&coefficient.to_string());
            }
            spell(trees, unicode, coefficient, &mut text, &mut totals);
        }
        if charge != 0 {
            text.push_str(&format!("^{}{}", charge.abs(), if charge > 0 { '+' } else { '-' }));
        }
        text.push_str(state.map_or("", State::symbol));
        let formula = read(&text);
        prop_assert_eq!(formula.composition(), &totals[..]);
        prop_assert_eq!((formula.charge(), formula.state()), (charge, state));
        prop_assert_eq!(&read(&formula.to_string()), &formula);
        prop_assert_eq!(&read(&formula.unicode()), &formula);
    }

    #[test]
    fn whatever_is_read_prints_to_something_equal(text in "(H|O|Na|Fe|Cl|C|S|\\(|\\)|\\[|\\]|[0-9]|\\.|·| |\\^|\\+|-|₂|²|⁻|_|H2O|\\(aq\\)|e){1,9}") {
        match Formula::parse(&text) {
            Ok(formula) => {
                prop_assert_eq!(&read(&formula.to_string()), &formula);
                prop_assert_eq!(&read(&formula.unicode()), &formula);
            }
            Err(error) => {
                let (start, end) = error.span.unwrap();
                prop_assert!(start <= end && end <= text.len());
                prop_assert!(text.get(start..end).is_some(), "{:?} in {:?}", error.span, text);
                prop_assert!(!error.advice.is_empty());
            }
        }
    }

    #[test]
    fn any_text_is_read_or_refused_with_a_place(text in "\\PC{0,40}") {
        if let Err(error) = Formula::parse(&text) {
            let (start, end) = error.span.unwrap();
            prop_assert!(text.get(start..end).is_some());
        } else {
            prop_assert!(text.starts_with(|c: char| c.is_whitespace() || c.is_ascii()));
        }
    }
}
