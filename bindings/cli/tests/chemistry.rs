//! `overwater weigh` and `overwater balance`.

// A test may stop at the first thing that is not as it should be.
#![allow(clippy::unwrap_used, clippy::indexing_slicing)]

use std::process::Command;

fn overwater(arguments: &[&str]) -> (Option<i32>, String, String) {
    let output = Command::new(env!("CARGO_BIN_EXE_overwater")).args(arguments).output().unwrap();
    let text = |bytes: Vec<u8>| String::from_utf8(bytes).unwrap();
    (output.status.code(), text(output.stdout), text(output.stderr))
}

#[test]
fn a_formula_is_weighed() {
    // Conventional atomic weights: 63.546 + 32.06 + 9 x 15.999 + 10 x 1.008 = 249.677.
    let (code, out, _) = overwater(&["weigh", "CuSO4.5H2O"]);
    assert_eq!(code, Some(0));
    assert!(out.starts_with("CuSO₄·5H₂O  249.67700 g/mol, standard uncertainty "), "{out}");
    assert!(out.contains("Cu x 1       25.45 % by mass  (copper)"), "{out}");
    let (_, out, _) = overwater(&["weigh", "NaCl", "--weights", "classroom", "--json"]);
    let answer: serde_json::Value = serde_json::from_str(&out).unwrap();
    assert!((answer["molar_mass_g_per_mol"].as_f64().unwrap() - 58.5).abs() < 1e-9);
}

#[test]
fn an_equation_is_balanced() {
    let (code, out, _) = overwater(&["balance", "MnO4- + H2O2 + H+ -> Mn^2+ + O2 + H2O"]);
    // Two independent balances: the peroxide may also decompose by itself.
    assert_eq!((code, out.as_str()), (Some(2), ""));
    let (code, out, _) = overwater(&["balance", "MnO4- + H+ + e- -> Mn^2+ + H2O"]);
    assert_eq!((code, out.as_str()), (Some(0), "MnO₄⁻ + 8 H⁺ + 5 e⁻ → Mn²⁺ + 4 H₂O\n"));
    let (_, out, _) = overwater(&["balance", "Fe + O2 -> Fe3O4", "--json"]);
    let answer: serde_json::Value = serde_json::from_str(&out).unwrap();
    assert_eq!(answer["equation"], "3Fe + 2O2 -> Fe3O4");
    assert_eq!(answer["reactants"][0]["coefficient"], "3");
}

#[test]
fn what_is_wrong_is_pointed_to() {
    let (code, out, message) = overwater(&["weigh", "NaXl"]);
    assert_eq!((code, out.as_str()), (Some(2), ""));
    assert!(
        message.contains("NaXl") && message.contains("^^") && message.contains("[unknown_name]"),
        "{message}"
    );
    let (code, _, message) = overwater(&["balance", "Fe -> Fe2O3"]);
    assert_eq!(code, Some(2));
    assert!(message.contains("[no_balance]") && message.contains('O'), "{message}");
}
