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
