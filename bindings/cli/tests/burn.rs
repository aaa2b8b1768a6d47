//! `overwater burn` and `overwater species`.

// A test may stop at the first thing that is not as it should be.
#![allow(clippy::unwrap_used, clippy::indexing_slicing)]

use std::process::Command;

fn overwater(arguments: &[&str]) -> (Option<i32>, String, String) {
    let output = Command::new(env!("CARGO_BIN_EXE_overwater")).args(arguments).output().unwrap();
    let text = |bytes: Vec<u8>| String::from_utf8(bytes).unwrap();
    (output.status.code(), text(output.stdout), text(output.stderr))
}

fn answer(arguments: &[&str]) -> serde_json::Value {
    let (code, out, message) = overwater(&[&["burn"], arguments, &["--json"]].concat());
    assert_eq!(code, Some(0), "{message}");
    serde_json::from_str(&out).unwrap()
}

const EXAMPLE: &str = concat!(env!("CARGO_MANIFEST_DIR"), "/../../examples/sulfur-burn.toml");

#[test]
fn the_example_gives_its_sheet() {
    let (code, text, message) = overwater(&["burn", "--request", EXAMPLE]);
    assert_eq!(code, Some(0), "{message}");
    assert_eq!(text, include_str!("../../../examples/sulfur-burn.txt"));
    assert!(text.lines().all(|line| line.chars().count() <= 80), "{text}");
}

#[test]
fn options_and_request_give_the_same_answer() {
    let by_options = answer(&[
        "sulfur",
        "--mass-g",
        "0.10",
        "--jar-cm3",
        "250",
        "--temperature-c",
        "20",
        "--pressure-kpa",
        "101.325",
        "--rejected-cm3",
        "300",
        "--free-volume-cm3",
        "235",
    ]);
    let by_request = answer(&["--request", EXAMPLE]);
    assert_eq!(by_options, by_request);
    assert!(by_options["assumed"].as_array().unwrap().is_empty());
    // A well-mixed free volume of 235 cm3, 300 cm3 thrown away: 0.864 of oxygen (closed form).
    assert!((by_options["jar"]["oxygen_fraction"].as_f64().unwrap() - 0.864).abs() < 5e-4);
}

#[test]
fn what_was_assumed_is_said() {
    let plain = answer(&["Mg"]);
    let assumed = plain["assumed"].to_string();
    for words in ["250 cm3", "20 degC", "101.325 kPa", "pure oxygen", "0.25 of the oxygen"] {
        assert!(assumed.contains(words), "{words}: {assumed}");
    }
    // A quarter of the 0.494 g that 10.15 mmol burn; no length without a weighed mass for each metre.
    assert!((plain["advice"]["mass_g"].as_f64().unwrap() - 0.1234).abs() < 1e-4);
    assert!(plain["advice"]["length_cm"].is_null());
    let ribbon = answer(&["Mg", "--mass-per-length-g-per-m", "0.51"]);
    let length = ribbon["advice"]["length_cm"].as_f64().unwrap();
    assert!((length - 24.2).abs() < 0.05, "{length}");
}

#[test]
fn what_pupils_must_not_burn_is_worked_out_with_the_caution_first() {
    for (sample, words) in
        [("K", "alkali metals"), ("P4", "white phosphorus"), ("H2", "explodes"), ("hexane", "explodes")]
    {
        let (code, text, message) = overwater(&["burn", sample, "--mass-g", "0.01"]);
        assert_eq!(code, Some(0), "{message}");
        let caution = text.find("First of all").unwrap();
        assert!(caution < text.find("The jar").unwrap() && text.contains("no sample is advised"), "{text}");
        let json = answer(&[sample, "--mass-g", "0.01"]);
        assert!(json["cautions"][0].as_str().unwrap().contains(words), "{sample}");
        assert!(json["advice"].is_null());
        let (code, out, message) = overwater(&["burn", sample]);
        assert_eq!((code, out.as_str()), (Some(2), ""), "{sample}");
        assert!(message.contains(words) && message.contains("[missing]"), "{message}");
    }
    assert!(answer(&["Na"])["cautions"].as_array().unwrap().is_empty());
}

#[test]
fn a_jar_with_too_little_oxygen_says_that_the_flame_goes_out() {
    let poor = answer(&["C", "--mass-g", "0.01", "--oxygen-fraction", "0.14"]);
    assert_eq!(poor["goes_out"], true);
    let caution = poor["cautions"][0].as_str().unwrap();
    assert!(caution.contains("go out") && caution.contains("0.15") && caution.contains("common practice"));
    assert!(poor["advice"].is_null());
    assert_eq!(answer(&["C", "--oxygen-fraction", "0.16"])["goes_out"], false);
    let too_much = answer(&["S", "--mass-g", "0.5"]);
    assert!(too_much["cautions"][0].as_str().unwrap().contains("left over hot"));
}

#[test]
fn refusals_say_what_to_do_and_print_nothing() {
    for (arguments, words) in [
        (&["sulfer"][..], "did you mean sulfur?"),
        (&["CO2"], "does not burn"),
        (&["S", "--mass-g", "0"], "mass_g = 0 g is out of range"),
        (&["S", "--mass-g=-1"], "out of range"),
        (&["S", "--oxygen-fraction", "1.2"], "jar.oxygen_fraction = 1.2 is out of range"),
        (&["S", "--share-of-oxygen", "0"], "share_of_oxygen"),
        (&["Mg", "--mass-per-length-g-per-m", "0"], "mass_per_length_g_per_m"),
        (
            &["S", "--oxygen-fraction", "0.9", "--rejected-cm3", "300", "--free-volume-cm3", "200"],
            "[given_twice]",
        ),
    ] {
        let (code, out, message) = overwater(&[&["burn"], arguments].concat());
        assert_eq!((code, out.as_str()), (Some(2), ""), "{arguments:?}");
        assert!(message.contains(words), "{arguments:?}: {message}");
    }
    let (code, ..) = overwater(&["burn"]);
    assert_eq!(code, Some(2));
}

#[test]
fn species_have_their_coefficients() {
    let (code, text, _) = overwater(&["species", "so2"]);
    assert_eq!(code, Some(0));
    assert!(
        text.starts_with("SO2 ") && text.contains("200 to 6000 K") && text.contains("TP-2002-211556"),
        "{text}"
    );
    let (_, json, _) = overwater(&["species", "mgo(cr)", "--json"]);
    let answer: serde_json::Value = serde_json::from_str(&json).unwrap();
    assert_eq!(answer["molar_gas_j_per_mol_k"], 8.31451);
    assert_eq!(answer["species"][0]["atoms"], serde_json::json!([["Mg", 1.0], ["O", 1.0]]));
    assert_eq!(answer["species"][0]["ranges"][0]["a"].as_array().unwrap().len(), 7);
}
