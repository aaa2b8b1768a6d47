//! `overwater calculate` as a person and as a script meet it.

// A test may stop at the first thing that is not as it should be.
#![allow(clippy::unwrap_used, clippy::indexing_slicing)]

use std::io::Write;
use std::process::{Command, Output, Stdio};

fn calculate(arguments: &[&str], input: &str) -> Output {
    let mut child = Command::new(env!("CARGO_BIN_EXE_overwater"))
        .arg("calculate")
        .args(arguments)
        .stdin(Stdio::piped())
        .stdout(Stdio::piped())
        .stderr(Stdio::piped())
        .spawn()
        .unwrap();
    // A program that refuses at once does not read what it is given.
    let _ = child.stdin.take().unwrap().write_all(input.as_bytes());
    child.wait_with_output().unwrap()
}

fn out(output: &Output) -> String {
    String::from_utf8(output.stdout.clone()).unwrap()
}

fn complaint(output: &Output) -> String {
    String::from_utf8(output.stderr.clone()).unwrap()
}

fn refused(output: &Output) -> String {
    assert_eq!(output.status.code(), Some(2));
    assert!(output.stdout.is_empty() || output.stdout.starts_with(b"temperature_c"), "{}", out(output));
    complaint(output)
}

#[test]
fn a_number_with_its_unit() {
    // CRC Handbook: 2.3388 kPa at 20 degC.
    let output = calculate(&["vapour_pressure", "temperature_c=20"], "");
    assert_eq!(out(&output), "vapour_pressure_kpa = 2.33919 kPa\n");
}

#[test]
fn the_working_ends_in_the_number() {
    let inputs = ["volume_cm3=86.5", "temperature_c=21", "pressure_kpa=100.36", "inside_minus_outside_mm=12"];
    let mut arguments = vec!["dry_amount"];
    arguments.extend(inputs);
    arguments.push("--working");
    let text = out(&calculate(&arguments, ""));
    assert!(text.contains("  = p(gas) - p(H₂O)\n  = 100.24 kPa - 2.4881 kPa\n  = 97.754 kPa\n"), "{text}");
    assert!(text.ends_with("amount_mmol = 3.45740 mmol\n"), "{text}");
    arguments.pop();
    arguments.push("--json");
    let answer: serde_json::Value = serde_json::from_str(&out(&calculate(&arguments, ""))).unwrap();
    assert_eq!(answer["result"]["name"], "amount_mmol");
    assert_eq!(answer["inputs"].as_array().unwrap().len(), 4);
}

/// The worked example of the readings: 86.5 cm3 at 21 degC and 100.36 kPa, 3.4616 mmol with the levels equal.
#[test]
fn levels_of_which_nothing_is_said_are_equal_and_that_is_told() {
    let one = ["dry_amount", "volume_cm3=86.5", "temperature_c=21", "pressure_kpa=100.36"];
    let output = calculate(&one, "");
    assert_eq!(out(&output), "amount_mmol = 3.46155 mmol\n");
    assert_eq!(complaint(&output), "inside_minus_outside_mm is left out: taken as 0 mm\n");
    let said = calculate(&[one.as_slice(), &["inside_minus_outside_mm=0"]].concat(), "");
    assert_eq!((out(&said), complaint(&said)), (out(&output), String::new()));

    let table = "volume_cm3,temperature_c,pressure_kpa\n86.5,21,100.36\n";
    let output = calculate(&["dry_amount", "--table", "-"], table);
    assert!(out(&output).ends_with("86.5,21,100.36,3.461553969825142\n"), "{}", out(&output));
    assert_eq!(complaint(&output), "inside_minus_outside_mm is left out: taken as 0 mm\n");
    assert!(out(&calculate(&[], "")).contains("-2000 to 2000 mm; 0 where it is left out\n"));
}

#[test]
fn every_formula_is_listed_with_its_inputs() {
    let text = out(&calculate(&[], ""));
    assert!(
        text.contains(
            "vapour_pressure -> vapour_pressure_kpa\n    temperature_c: temperature, 0 to 100 degC\n"
        )
    );
    assert!(text.matches(" -> ").count() >= 13, "{text}");
}

#[test]
fn a_table_keeps_its_columns_and_a_row_that_has_no_result_spoils_no_other() {
    let rows: String = (0..10_000).map(|row| format!("r{row},{}\n", row % 120)).collect();
    let output =
        calculate(&["vapour_pressure", "--table", "-"], &format!("# readings\nname, temperature_c\n{rows}"));
    let text = out(&output);
    let lines: Vec<&str> = text.lines().collect();
    assert_eq!(lines.len(), 10_001);
    assert_eq!(lines[0], "name,temperature_c,vapour_pressure_kpa");
    let twenty = overwater::catalogue::find("vapour_pressure").unwrap().number(&[20.0]).unwrap();
    assert_eq!(lines[21], format!("r20,20,{twenty}"));
    assert_eq!(lines[9_021], format!("r9020,20,{twenty}"));
    assert_eq!(lines[102], "r101,101,");
    let said = String::from_utf8(output.stderr).unwrap();
    // 19 of every 120 temperatures lie above 100 degC.
    let outside = (0..10_000).filter(|row| row % 120 > 100).count();
    assert!(said.contains(&format!("{outside} row(s) have no result")), "{said}");
}

#[test]
fn names_and_numbers_that_are_wrong_are_refused_with_what_was_meant() {
    for (arguments, input, words) in [
        (vec!["vapor_pressure"], "", "did you mean vapour_pressure?"),
        (vec!["vapour_pressure", "temprature_c=20"], "", "did you mean temperature_c?"),
        (vec!["vapour_pressure"], "", "temperature_c is missing"),
        (vec!["vapour_pressure", "temperature_c"], "", "temperature_c=21.0"),
        (vec!["vapour_pressure", "temperature_c=20,5"], "", "[syntax]"),
        (vec!["vapour_pressure", "temperature_c=1", "temperature_c=2"], "", "given twice"),
        (vec!["vapour_pressure", "temperature_c=-5"], "", "0 to 100 degC"),
        (vec!["vapour_pressure", "temperature_c=nan"], "", "[not_a_number]"),
        (vec!["vapour_pressure", "--table", "-"], "temperatur_c\n20\n", "is it the column temperatur_c?"),
        (vec!["vapour_pressure", "--table", "-"], "temperature_c\n20,5\n", "2 fields"),
        (vec!["vapour_pressure", "--table", "-"], "temperature_c\nwarm\n", "line 2, column 1: \"warm\""),
        (vec!["vapour_pressure", "--table", "no-such-file.csv"], "", "cannot be read"),
    ] {
        let message = refused(&calculate(&arguments, input));
        assert!(message.contains(words), "{words:?} is not in: {message}");
    }
}
