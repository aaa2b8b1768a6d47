//! `overwater propagate`.

// A test may stop at the first thing that is not as it should be.
#![allow(clippy::unwrap_used, clippy::indexing_slicing)]

use std::io::Write;
use std::process::{Command, Stdio};

fn propagate(text: &str, arguments: &[&str]) -> (Option<i32>, String, String) {
    let mut child = Command::new(env!("CARGO_BIN_EXE_overwater"))
        .args(["propagate", "-"])
        .args(arguments)
        .stdin(Stdio::piped())
        .stdout(Stdio::piped())
        .stderr(Stdio::piped())
        .spawn()
        .unwrap();
    child.stdin.take().unwrap().write_all(text.as_bytes()).unwrap();
    let output = child.wait_with_output().unwrap();
    let text = |bytes: Vec<u8>| String::from_utf8(bytes).unwrap();
    (output.status.code(), text(output.stdout), text(output.stderr))
}

const EXAMPLE: &str = include_str!("../../../examples/collected-gas-uncertainty.toml");

#[test]
fn the_example_gives_its_budget() {
    let (code, text, _) = propagate(EXAMPLE, &[]);
    assert_eq!(code, Some(0));
    assert_eq!(text, include_str!("../../../examples/collected-gas-uncertainty.txt"));
    assert!(text.lines().all(|line| line.chars().count() <= 80));
}

#[test]
fn the_three_rule_sets_are_named_and_not_mixed() {
    let by = |rules: &str, more: &str| {
        let text = EXAMPLE.replace("rules = \"gum\"", &format!("rules = \"{rules}\"\n{more}"));
        propagate(&text.replace("standard_uncertainty", "half_width"), &["--json"])
    };
    for (rules, source) in [("gum", "JCGM 100:2008"), ("monte_carlo", "JCGM 101:2008"), ("school", "2026")] {
        let (code, json, message) = by(rules, "");
        assert_eq!(code, Some(0), "{message}");
        let answer: serde_json::Value = serde_json::from_str(&json).unwrap();
        assert_eq!(answer["rules"], rules);
        assert!(answer["rules_source"].as_str().unwrap().contains(source));
        let shares: f64 =
            answer["lines"].as_array().unwrap().iter().map(|line| line["share"].as_f64().unwrap()).sum();
        assert!((shares - 1.0).abs() < 1e-12);
        assert_eq!(answer["half_width"].is_null(), rules != "school");
        assert_eq!(answer["drawn"].is_null(), rules != "monte_carlo");
        assert_eq!(answer["expanded_uncertainty"].is_null(), rules != "gum");
    }
    for (rules, more, key) in [
        ("gum", "seed = 3", "seed"),
        ("gum", "draws = 20000", "draws"),
        ("gum", "school_rules = \"half_division_2026\"", "school_rules"),
        ("school", "coverage = 0.9", "coverage"),
        ("school", "seed = 1", "seed"),
    ] {
        let (code, out, message) = by(rules, more);
        assert_eq!((code, out.as_str()), (Some(2), ""), "{rules} {more}");
        assert!(message.contains(key) && message.contains("not mixed"), "{message}");
    }
    let (code, _, message) = propagate(&EXAMPLE.replace("\"gum\"", "\"school\""), &[]);
    assert_eq!(code, Some(2));
    assert!(message.contains("pressure_kpa.standard_uncertainty"), "{message}");
}

#[test]
fn the_seed_decides_the_draws() {
    let with = |seed: u64| {
        let text = EXAMPLE
            .replace("rules = \"gum\"", &format!("rules = \"monte_carlo\"\ndraws = 20000\nseed = {seed}"));
        propagate(&text, &["--json"]).1
    };
    assert_eq!(with(7), with(7));
    assert_ne!(with(7).replace("\"seed\": 7", ""), with(8).replace("\"seed\": 8", ""));
}

#[test]
fn bad_input_is_refused_by_name() {
    for (from, to, parts) in [
        ("dry_amount", "dry_amont", &["unknown_name", "did you mean dry_amount?"][..]),
        ("volume_cm3", "volum_cm3", &["unknown_name", "did you mean volume_cm3?"]),
        ("half_width = 0.5", "half_width = -0.5", &["temperature_c = -0.5", "an uncertainty of 0 or more"]),
        ("half_width = 0.5", "half_width = nan", &["temperature_c", "not_a_number"]),
        ("half_width = 0.5", "half_width = 0.5, division = 1.0", &["temperature_c", "given_twice"]),
        ("half_width = 0.5", "half_width = 0.5, readings = 2", &["temperature_c.readings", "contradiction"]),
        ("half_width = 0.5", "half_wide = 0.5", &["half_wide", "did you mean half_width?"]),
        ("half_width = 0.5", "half_width = \"0.5\"", &["half_width"]),
        ("readings = 2", "readings = 3", &["volume_cm3.readings = 3", "1, or 2"]),
        ("value = 21.0, ", "", &["temperature_c is missing", "give the value"]),
        ("value = 21.0", "value = 121.0", &["temperature_c = 121 degC", "0 to 100 degC"]),
        ("[12.0, 11.0, 13.0, 12.0]", "[12.0]", &["inside_minus_outside_mm", "2 or more"]),
        (
            "standard_uncertainty = 0.10",
            "standard_uncertainty = 0.10, degrees_of_freedom = 0.5",
            &["1 or more degrees"],
        ),
        ("rules = \"gum\"", "rules = \"best\"", &["best"]),
        ("rules = \"gum\"", "coverage = 95.0", &["coverage = 95", "0.5 to 0.999"]),
        ("format = 1", "format = 2", &["format"]),
    ] {
        assert!(EXAMPLE.contains(from), "{from}");
        let (code, out, message) = propagate(&EXAMPLE.replacen(from, to, 1), &[]);
        assert_eq!((code, out.as_str()), (Some(2), ""), "{to}: {message}");
        for part in parts {
            assert!(message.contains(part), "{to}: {message}");
        }
    }
    let together = |between: &str, coefficient: f64| {
        let more = format!("\n[[correlations]]\nbetween = {between}\ncoefficient = {coefficient}\n");
        propagate(&format!("{EXAMPLE}{more}"), &[])
    };
    assert_eq!(together("[\"volume_cm3\", \"temperature_c\"]", 0.5).0, Some(0));
    assert!(together("[\"volume_cm3\", \"temperature_c\"]", 1.5).2.contains("-1 to 1"));
    assert!(together("[\"volume_cm3\", \"temp\"]", 0.5).2.contains("unknown_name"));
}
