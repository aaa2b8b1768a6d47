//! The conversation vectors through the library; `bindings/cli` and the bindings replay the same ones.

use std::collections::BTreeSet;

use overwater::Code;
use overwater_exchange::{respond, respond_with_status, task_names};
use overwater_testkit::vectors::{self, Vector};
use serde_json::Value;

fn answer(vector: &Vector) -> Value {
    serde_json::from_str(&vector.answer).unwrap_or_else(|error| panic!("{}: {error}", vector.name))
}

#[test]
fn every_answer_is_the_one_that_is_kept_to_the_byte() {
    let all = vectors::all();
    assert!(all.len() >= 60, "{} vectors", all.len());
    for vector in &all {
        let found = respond(&vector.request);
        assert!(found == vector.answer, "{}\nis   {found}\nkept {}", vector.name, vector.answer);
        assert_eq!(respond_with_status(&vector.request), (found, answer(vector)["error"].is_null()));
    }
}

#[test]
fn every_task_is_asked_well_and_badly_and_every_code_is_raised() {
    let (mut good, mut bad, mut codes) = (BTreeSet::new(), BTreeSet::new(), BTreeSet::new());
    for vector in &vectors::all() {
        let answer = answer(vector);
        let task = answer["task"].as_str().map(str::to_owned);
        match answer["error"]["code"].as_str() {
            None => good.extend(task),
            Some(code) => {
                codes.insert(code.to_owned());
                bad.extend(task);
            }
        }
    }
    for task in task_names() {
        assert!(good.contains(task), "{task} has no answer");
        assert!(bad.contains(task), "{task} has no error");
    }
    // JSON holds neither NaN nor infinities: as words of the language they are bad syntax, as texts of the wrong type.
    for code in Code::ALL.into_iter().filter(|code| *code != Code::NotANumber) {
        assert!(codes.contains(code.name()), "{} is not raised", code.name());
    }
}

/// The value at a path as in `request.vessels[2].burn`.
fn at<'a>(request: &'a Value, path: &str) -> Option<&'a Value> {
    path.split(['.', '[']).try_fold(request, |here, step| match step.strip_suffix(']') {
        Some(index) => here.get(index.parse::<usize>().ok()?),
        None => here.get(step),
    })
}

#[test]
fn an_error_leads_to_what_is_wrong_in_the_request() {
    let mut led = 0;
    for vector in vectors::all() {
        let answer = answer(&vector);
        let error = &answer["error"];
        let (Ok(request), Some(path)) =
            (serde_json::from_slice::<Value>(&vector.request), error["path"].as_str())
        else {
            continue;
        };
        if path.is_empty() {
            continue;
        }
        let outer = path.rfind(['.', '[']).map_or("", |end| &path[..end]);
        let missing = error["code"] == "missing";
        let found = if missing && !outer.is_empty() { at(&request, outer) } else { at(&request, path) };
        assert!(found.is_some() || (missing && outer.is_empty()), "{}: {path} leads nowhere", vector.name);
        // The place is that of the value: the text there begins as the value does.
        let place = &error["place"];
        let text = str::from_utf8(&vector.request).unwrap();
        let line = text.split('\n').nth(place["line"].as_u64().unwrap() as usize - 1).unwrap();
        let rest: String = line.chars().skip(place["column"].as_u64().unwrap() as usize - 1).collect();
        if let (Some(value), false) = (at(&request, path), missing) {
            let begins = match value {
                Value::Object(_) => rest.starts_with('{'),
                Value::Array(_) => rest.starts_with('['),
                // Inside a formula or an equation the place may be further on.
                Value::String(value) => {
                    rest.starts_with('"') || value.contains(rest.split('"').next().unwrap())
                }
                _ => rest.starts_with(['-', 't', 'f', 'n']) || rest.starts_with(|c: char| c.is_ascii_digit()),
            };
            assert!(begins, "{}: {path} is not at {rest}", vector.name);
            led += 1;
        }
    }
    assert!(led >= 20, "{led} errors point to a value");
}

#[test]
fn no_byte_depends_on_the_order_of_the_keys_or_on_space() {
    fn turned(value: &Value, out: &mut String) {
        match value {
            Value::Object(entries) => {
                out.push_str("{\n");
                for (index, (key, value)) in entries.iter().rev().enumerate() {
                    out.push_str(if index == 0 { "" } else { " , " });
                    out.push_str(&Value::String(key.clone()).to_string());
                    out.push_str(" :\t");
                    turned(value, out);
                }
                out.push('}');
            }
            Value::Array(items) => {
                out.push('[');
                for (index, item) in items.iter().enumerate() {
                    out.push_str(if index == 0 { " " } else { ", " });
                    turned(item, out);
                }
                out.push(']');
            }
            other => out.push_str(&other.to_string()),
        }
    }
    let mut good = 0;
    for vector in vectors::all().iter().filter(|vector| answer(vector)["error"].is_null()) {
        let request: Value = serde_json::from_slice(&vector.request).unwrap();
        let mut text = String::new();
        turned(&request, &mut text);
        assert_eq!(respond(text.as_bytes()), vector.answer, "{}", vector.name);
        good += 1;
    }
    assert!(good >= 25, "{good}");
}

/// A number of the answer that is kept, by its path.
fn number(name: &str, pointer: &str) -> f64 {
    let vectors = vectors::all();
    let vector = vectors.iter().find(|vector| vector.name == name).unwrap_or_else(|| panic!("no {name}"));
    let answer = answer(vector);
    answer["answer"]
        .pointer(pointer)
        .and_then(Value::as_f64)
        .unwrap_or_else(|| panic!("{name}: no {pointer}"))
}

/// That every binding gives the same bytes says nothing of the numbers in them; these are known from elsewhere. The last
/// column is half a unit of the last digit as it is printed there.
#[test]
fn kept_answers_hold_the_numbers_that_are_known() {
    for (name, pointer, known, within) in [
        // Saturated water by IAPWS-95, as steam tables print it (from memory): 2.3393, 3.1699 and 101.42 kPa.
        ("calculate_columns-vapour-pressure", "/values/1", 2.3393, 5e-4),
        ("calculate_columns-vapour-pressure", "/values/2", 3.1699, 5e-4),
        ("calculate_columns-vapour-pressure", "/values/3", 101.42, 5e-3),
        // 20 x 500/100, arithmetic.
        ("dilute-hundred-volumes", "/stock_cm3", 100.0, 1e-9),
        // 1.5 x 250 x 34.014/(0.30 x 1110), arithmetic.
        ("dilute-across-scales", "/stock_cm3", 38.304, 5e-4),
        // 2 x 20/22.414, and that times 24.0/2 (arithmetic).
        ("strength-twenty-volumes", "/strength/concentration_mol_per_dm3", 1.7846, 5e-5),
        ("strength-twenty-volumes", "/volume_strengths/2/volume_strength_vol", 21.415, 5e-4),
        // 60/34.014, arithmetic.
        ("strength-by-volume-of-solution", "/strength/concentration_mol_per_dm3", 1.7640, 5e-5),
        // 1.7846 x 10 x 20/(250 x 0.02 x 2.5), arithmetic.
        ("design_assay-twenty-volumes", "/design/expected_titre_cm3", 28.554, 5e-4),
        // Conventional atomic weights of H and O: 2 x 1.008 + 2 x 15.999.
        ("weigh-peroxide", "/molar_mass_g_per_mol", 34.014, 1e-9),
        // Cu 63.5, S 32.1, O 16.0, H 1.0 (arithmetic).
        ("weigh-hydrate-classroom", "/molar_mass_g_per_mol", 249.6, 1e-9),
        // BIPM, The International System of Units, 9th edition.
        ("sources-gas-constant", "/entries/0/value", 8.314_462_618_153_24, 0.0),
        // 250 cm3 over water at 20 degC and 101.325 kPa: (101.325 - 2.339) x 250/(8.3145 x 293.15) mmol (arithmetic).
        ("plan-smallest", "/gas/vessels/0/amount_mmol", 10.153, 5e-4),
    ] {
        let found = number(name, pointer);
        assert!((found - known).abs() <= within, "{name}{pointer}: {found} is not {known}");
    }
}

#[test]
fn the_door_may_be_used_from_many_threads_at_once() {
    let all = vectors::all();
    let light: Vec<&Vector> = all.iter().filter(|vector| vector.answer.len() < 4_000).collect();
    assert!(light.len() > 60);
    std::thread::scope(|scope| {
        for start in 0..8 {
            let light = &light;
            scope.spawn(move || {
                for vector in light.iter().cycle().skip(start * 11).take(light.len()) {
                    assert_eq!(respond(&vector.request), vector.answer, "{}", vector.name);
                }
            });
        }
    });
}
