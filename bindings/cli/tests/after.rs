//! `overwater dissolve` and `overwater air`.

// A test may stop at the first thing that is not as it should be.
#![allow(clippy::unwrap_used, clippy::indexing_slicing)]

use std::process::Command;

fn run(arguments: &[&str]) -> (Option<i32>, String, String) {
    let output = Command::new(env!("CARGO_BIN_EXE_overwater")).args(arguments).output().unwrap();
    let text = |bytes: Vec<u8>| String::from_utf8(bytes).unwrap();
    (output.status.code(), text(output.stdout), text(output.stderr))
}

#[test]
fn a_product_in_water_says_its_reaction_its_ph_and_its_colours() {
    let (code, text, _) = run(&["dissolve", "Na2O2", "--mass-g", "0.0848", "--water-cm3", "20"]);
    assert_eq!(code, Some(0));
    for part in ["Na₂O₂ + 2 H₂O → 2 Na⁺ + 2 OH⁻ + H₂O₂", "12.9 when the peroxide has gone", "violet", "blue"]
    {
        let flowing = text.split_whitespace().collect::<Vec<_>>().join(" ");
        assert!(flowing.contains(part), "{part} is not in {text}");
    }
    assert!(text.lines().all(|line| line.chars().count() <= 80));
    let (_, json, _) = run(&["dissolve", "SO2", "--mass-g", "0.2", "--water-cm3", "20", "--json"]);
    let answer: serde_json::Value = serde_json::from_str(&json).unwrap();
    assert_eq!(answer["litmus"], "red");
    assert!((answer["ph"].as_f64().unwrap() - 1.4).abs() < 0.05, "{json}");
    // In a closed jar some of it stays gas.
    let jar = ["dissolve", "SO2", "--mass-g", "0.2", "--water-cm3", "20", "--gas-space-cm3", "230", "--json"];
    let closed: serde_json::Value = serde_json::from_str(&run(&jar).1).unwrap();
    assert!(closed["dissolved_mmol"].as_f64() < answer["dissolved_mmol"].as_f64());
}

#[test]
fn the_air_of_a_room_is_held_against_limits_that_say_whether_they_were_read() {
    let (code, text, _) = run(&["air", "SO2", "--mass-g", "0.2", "--jars", "8"]);
    assert_eq!(code, Some(0));
    for part in
        ["3.00 ppm", "over 15 min", "fume cupboard only", "ABOVE it", "? United Kingdom", "- European Union"]
    {
        assert!(text.contains(part), "{part} is not in {text}");
    }
    assert!(text.lines().all(|line| line.chars().count() <= 80));
    let (_, json, _) = run(&["air", "SO2", "--mass-g", "0.2", "--leak-fraction", "0.1", "--json"]);
    let answer: serde_json::Value = serde_json::from_str(&json).unwrap();
    assert_eq!(answer["fume_cupboard"], false);
    assert!((answer["peak_ppm"].as_f64().unwrap() - 0.0375).abs() < 2e-4, "{json}");
    let limits = answer["limits"].as_array().unwrap();
    assert!(limits.iter().any(|limit| limit["verified"] == true));
    assert!(limits.iter().any(|limit| limit["verified"] == false));
}

#[test]
fn nonsense_is_refused_and_nothing_printed() {
    for (arguments, part) in [
        (["dissolve", "S02", "--mass-g", "0.2", "--water-cm3", "20"], "did you mean SO2?"),
        (["dissolve", "SO2", "--mass-g", "0", "--water-cm3", "20"], "mass_g = 0 g is out of range"),
        (["air", "SO2", "--mass-g", "0.2", "--room-volume-m3", "1"], "room_volume_m3 = 1 m3 is out of range"),
        (["air", "Fe3O4", "--mass-g", "0.2", "--jars", "1"], "[unknown_name]"),
    ] {
        let (code, text, message) = run(&arguments);
        assert_eq!((code, text.as_str()), (Some(2), ""), "{arguments:?}");
        assert!(message.contains(part), "{part} is not in {message}");
    }
}
