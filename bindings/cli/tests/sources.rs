//! `overwater sources`.

// A test may stop at the first thing that is not as it should be.
#![allow(clippy::unwrap_used, clippy::indexing_slicing)]

use std::process::Command;

fn sources(arguments: &[&str]) -> (Option<i32>, String, String) {
    let output =
        Command::new(env!("CARGO_BIN_EXE_overwater")).arg("sources").args(arguments).output().unwrap();
    let text = |bytes: Vec<u8>| String::from_utf8(bytes).unwrap();
    (output.status.code(), text(output.stdout), text(output.stderr))
}

#[test]
fn the_list_is_text_csv_and_json() {
    let (code, text, _) = sources(&["gas constant"]);
    assert_eq!(code, Some(0));
    assert!(text.contains("molar_gas_2019 R = 8.31446261815324 (exact) J/(mol K)"), "{text}");
    let (_, table, _) = sources(&["--csv"]);
    let mut reader = csv::Reader::from_reader(table.as_bytes());
    let header = reader.headers().unwrap().clone();
    let columns: Vec<&str> = header.iter().collect();
    assert_eq!(
        columns,
        ["kind", "id", "symbol", "name", "value", "unit", "standard_uncertainty", "range", "source", "year"]
    );
    let rows: Vec<csv::StringRecord> = reader.records().map(Result::unwrap).collect();
    assert!(rows.len() > 200, "{}", rows.len());
    assert!(rows.iter().all(|row| !row[1].is_empty() && !row[8].is_empty()));
    let (_, json, _) = sources(&["--json"]);
    let answer: serde_json::Value = serde_json::from_str(&json).unwrap();
    assert_eq!(answer["entries"].as_array().unwrap().len(), rows.len());
}

#[test]
fn nothing_found_is_said() {
    let (code, out, message) = sources(&["no such thing"]);
    assert_eq!((code, out.as_str()), (Some(2), ""));
    assert!(message.contains("no such thing"), "{message}");
}
