//! `overwater bounds`.

// A test may stop at the first thing that is not as it should be.
#![allow(clippy::unwrap_used, clippy::indexing_slicing)]

use std::process::Command;

fn bounds(arguments: &[&str]) -> (Option<i32>, String, String) {
    let output =
        Command::new(env!("CARGO_BIN_EXE_overwater")).arg("bounds").args(arguments).output().unwrap();
    let text = |bytes: Vec<u8>| String::from_utf8(bytes).unwrap();
    (output.status.code(), text(output.stdout), text(output.stderr))
}

#[test]
fn the_table_is_text_csv_and_json() {
    let (code, text, _) = bounds(&["pressure_kpa"]);
    assert_eq!(code, Some(0));
    assert!(text.contains("pressure_kpa: pressure at the place, 40 to 120 kPa"), "{text}");
    let (_, table, _) = bounds(&["altitude_m", "--csv"]);
    assert_eq!(
        table,
        "name,quantity,least,greatest,unit,where_unsaid,why\n\
         altitude_m,height above sea level,-450.0,5500.0,m,,the lowest and the highest places where people live\n\
         altitude_m,height above sea level,-450.0,750.0,m,,the reduction for low stations holds below 750 m\n"
    );
    let (_, json, _) = bounds(&["--json"]);
    let answer: serde_json::Value = serde_json::from_str(&json).unwrap();
    assert_eq!(answer["bounds"].as_array().unwrap().len(), overwater::bounds::ALL.len());
}

#[test]
fn nothing_found_is_said() {
    let (code, out, message) = bounds(&["no such thing"]);
    assert_eq!((code, out.as_str()), (Some(2), ""));
    assert_eq!(message, "error: nothing in the bounds table holds \"no such thing\" [unknown_name]\n");
}
