//! `overwater answer`: the same bytes as the library, for every conversation vector.

// A test may stop at the first thing that is not as it should be.
#![allow(clippy::unwrap_used, clippy::indexing_slicing)]

mod support;

use overwater_exchange::GREATEST_BYTES;
use overwater_testkit::vectors;
use support::{file, overwater, piped, text};

#[test]
fn the_program_prints_the_bytes_that_are_kept() {
    for vector in vectors::all() {
        let output = piped("answer", &[], &vector.request);
        assert_eq!(text(&output.stdout), vector.answer.clone() + "\n", "{}", vector.name);
        assert!(output.stderr.is_empty(), "{}: {}", vector.name, text(&output.stderr));
        let refused = vector.answer.contains("\",\"error\":{") || vector.answer.contains("null,\"error\":{");
        assert_eq!(output.status.code(), Some(if refused { 2 } else { 0 }), "{}", vector.name);
    }
}

#[test]
fn a_file_is_read_as_standard_input_is() {
    let request = r#"{"format": 1, "task": "weigh", "request": {"format": 1, "formula": "H2O2"}}"#;
    let path = file("answer", "request.json", request);
    let output = overwater("answer", &[path.to_str().unwrap()]);
    assert_eq!(output.stdout, piped("answer", &[], request.as_bytes()).stdout);
    // Conventional atomic weights: 2 x 1.008 + 2 x 15.999.
    assert!(text(&output.stdout).contains("\"molar_mass_g_per_mol\":34.014"), "{}", text(&output.stdout));
}

#[test]
fn a_request_that_is_too_long_is_answered_without_reading_all_of_it() {
    let long = vec![b' '; GREATEST_BYTES + 5_000_000];
    let output = piped("answer", &[], &long);
    assert_eq!(output.status.code(), Some(2));
    assert!(text(&output.stdout).contains("\"code\":\"too_large\""), "{}", text(&output.stdout));
}

#[test]
fn a_file_that_is_not_there_is_no_answer() {
    let output = overwater("answer", &["no/such/file.json"]);
    assert_eq!((output.status.code(), output.stdout.len()), (Some(2), 0));
    assert!(text(&output.stderr).contains("cannot be read"), "{}", text(&output.stderr));
}

#[test]
fn the_schema_is_printed() {
    assert_eq!(text(&overwater("answer", &["--schema"]).stdout), overwater_exchange::schema());
}
