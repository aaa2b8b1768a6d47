use super::*;

/// The parts of an error that a program goes by.
fn refused(request: &[u8]) -> (String, String, Option<(u64, u64)>) {
    let (text, good) = respond_with_status(request);
    assert!(!good, "{text}");
    let answer: serde_json::Value = serde_json::from_str(&text).unwrap();
    let error = &answer["error"];
    let part = |key: &str| error[key].as_str().unwrap().to_owned();
    let place = error["place"].as_object();
    (part("code"), part("path"), place.map(|p| (p["line"].as_u64().unwrap(), p["column"].as_u64().unwrap())))
}

fn is(request: &str, code: &str, path: &str, place: Option<(u64, u64)>) {
    assert_eq!(refused(request.as_bytes()), (code.to_owned(), path.to_owned(), place), "{request}");
}

const WEIGH: &str = r#"{"format": 1, "task": "weigh", "request": {"format": 1, "formula": "H2O2"}}"#;

#[test]
fn the_envelope_is_checked_key_by_key() {
    assert!(respond_with_status(WEIGH.as_bytes()).1);
    is("[]", "syntax", "", Some((1, 1)));
    is(r#"[1, "weigh", {"format": 1, "formula": "H2O2"}]"#, "syntax", "", Some((1, 1)));
    is(r#"{"format": 1, "task": "weigh", "request": [1, "H2O2"]}"#, "syntax", "request", Some((1, 43)));
    is("{}", "missing", "format", Some((1, 2)));
    is(r#"{"format": 1}"#, "missing", "task", Some((1, 13)));
    is(r#"{"format": 1, "task": 3}"#, "syntax", "task", Some((1, 23)));
    is(r#"{"format": 1, "task": "weigh"}"#, "missing", "request", Some((1, 30)));
    is(&WEIGH.replace("weigh", "weihg"), "unknown_name", "task", Some((1, 23)));
    is(&WEIGH.replacen('1', "2", 1), "contradiction", "format", Some((1, 12)));
    is(
        &WEIGH.replace("{\"format\": 1, \"f", "{\"format\": 3, \"f"),
        "contradiction",
        "request.format",
        Some((1, 54)),
    );
    is(&WEIGH.replacen("\"task\"", "\"seed\": 1, \"task\"", 1), "unknown_name", "seed", Some((1, 23)));
}

#[test]
fn the_same_key_twice_is_refused_wherever_it_stands() {
    is(&WEIGH.replacen("\"task\"", "\"format\": 1, \"task\"", 1), "given_twice", "format", Some((1, 25)));
    let request = "{\"format\": 1, \"task\": \"calculate\", \"request\": {\"format\": 1, \"formula\": \"vapour_pressure\",\n\
                   \"inputs\": {\"temperature_c\": 20, \"temperature_c\": 21}}}";
    is(request, "given_twice", "request.inputs.temperature_c", Some((2, 50)));
}

#[test]
fn what_is_no_text_and_no_json_has_its_place() {
    assert_eq!(refused(b"{\"format\": 1,\n \"ta\xffsk\"}"), ("syntax".into(), String::new(), Some((2, 5))));
    assert_eq!(refused(b"\0"), ("syntax".into(), String::new(), Some((1, 1))));
    is("{\"format\": 1,\n nonsense}", "syntax", "", Some((2, 2)));
    is("", "syntax", "", Some((1, 1)));
    is(&format!("{}{}", "[".repeat(10_000), "]".repeat(10_000)), "syntax", "", Some((1, 128)));
    is(&(WEIGH.to_owned() + " x"), "syntax", "", Some((1, 77)));
    is(&WEIGH.replace("H2O2", "H2O2\\u0000"), "syntax", "request.formula", Some((1, 68)));
    is(&WEIGH.replace("\"H2O2\"", "NaN"), "syntax", "", Some((1, 68)));
    is(&WEIGH.replace("\"H2O2\"", "1e400"), "too_large", "", Some((1, 72)));
}

#[test]
fn a_request_that_is_too_long_is_refused_by_its_size_alone() {
    let long = vec![b'['; 100_000_000];
    let start = std::time::Instant::now();
    assert_eq!(refused(&long), ("too_large".into(), String::new(), None));
    assert!(start.elapsed().as_millis() < 50, "{:?}", start.elapsed());
    let mut longest = WEIGH.as_bytes().to_vec();
    longest.resize(GREATEST_BYTES, b' ');
    assert!(respond_with_status(&longest).1);
    longest.push(b' ');
    assert_eq!(refused(&longest).0, "too_large");
}

#[test]
fn what_the_core_refuses_points_to_the_value() {
    let formula = WEIGH.replace("H2O2", "NaXl");
    is(&formula, "unknown_name", "request.formula", Some((1, 71)));
    let inputs = "{\"format\": 1, \"task\": \"calculate\", \"request\": {\"format\": 1,\n \"formula\": \"vapour_pressure\", \
                  \"inputs\": {\"temperature_c\": 120}}}";
    is(inputs, "out_of_range", "request.inputs.temperature_c", Some((2, 60)));
    is(&inputs.replace("temperature_c", "temp_c"), "unknown_name", "request.inputs.temp_c", Some((2, 53)));
    is(
        &inputs.replace("\"temperature_c\": 120", ""),
        "missing",
        "request.inputs.temperature_c",
        Some((2, 42)),
    );
    is(&inputs.replace("vapour_", "vapor_"), "unknown_name", "request.formula", Some((2, 13)));
}

proptest::proptest! {
    /// Needs the feature `float_roundtrip` of the JSON reader: without it some numbers are off by a last bit.
    #[test]
    fn a_number_is_read_as_the_double_that_its_digits_are_nearest_to(number in proptest::num::f64::NORMAL) {
        let text = format!("{number:e}");
        proptest::prop_assert_eq!(serde_json::from_str::<f64>(&text).unwrap().to_bits(), number.to_bits());
        proptest::prop_assert_eq!(serde_json::to_string(&number).unwrap().parse::<f64>().unwrap().to_bits(), number.to_bits());
    }
}
