//! The schema of everything that is asked and answered, in JSON Schema 2020-12.

use schemars::generate::SchemaSettings;
use serde_json::{Map, Value, json};

use super::envelope::Refused;
use super::tasks::TASKS;
use crate::FORMAT;

/// The schema, as JSON with a line end: a document is a request, an answer, or an error.
///
/// ```
/// let schema = overwater_exchange::schema();
/// assert!(schema.contains("https://json-schema.org/draft/2020-12/schema"));
/// assert!(schema.ends_with("}\n"));
/// ```
#[must_use]
pub fn schema() -> String {
    let mut asked = SchemaSettings::draft2020_12().for_deserialize().into_generator();
    let mut answered = SchemaSettings::draft2020_12().for_serialize().into_generator();
    let version = json!({ "description": "The version of the library.", "type": "string" });
    let mut requests = Vec::new();
    let mut answers = Vec::new();
    for task in TASKS {
        let name = json!({ "const": task.name() });
        let request = [("format", json!({ "const": FORMAT })), ("task", name.clone())];
        let answer =
            [("format", json!({ "const": FORMAT })), ("library_version", version.clone()), ("task", name)];
        let document = task.request_schema(&mut asked).to_value();
        requests.push(object(task.about(), request.into_iter().chain([("request", document)])));
        let document = task.answer_schema(&mut answered).to_value();
        answers.push(object(task.about(), answer.into_iter().chain([("answer", document)])));
    }
    let error = answered.subschema_for::<Refused<'_>>().to_value();
    let mut parts = asked.take_definitions(true);
    parts.extend(answered.take_definitions(true));
    parts.insert("AnyRequest".to_owned(), json!({ "oneOf": requests }));
    parts.insert("AnyAnswer".to_owned(), json!({ "oneOf": answers }));
    let reference = |name: &str| json!({ "$ref": format!("#/$defs/{name}") });
    let whole = json!({
        "$schema": "https://json-schema.org/draft/2020-12/schema",
        "title": "Requests, answers and errors of overwater",
        "description": "A document is one of the three.",
        "oneOf": [reference("AnyRequest"), reference("AnyAnswer"), error],
        "$defs": sorted(parts),
    });
    // Values that are built here can always be written.
    serde_json::to_string_pretty(&whole).unwrap_or_default() + "\n"
}

/// The schema of an object that has just these keys.
fn object(about: &str, properties: impl Iterator<Item = (&'static str, Value)>) -> Value {
    let properties: Map<String, Value> = properties.map(|(key, schema)| (key.to_owned(), schema)).collect();
    let required: Vec<&String> = properties.keys().collect();
    json!({
        "description": about,
        "type": "object",
        "required": required,
        "properties": properties,
        "additionalProperties": false,
    })
}

/// The same with the names in order, however the library that holds them orders them.
fn sorted(parts: Map<String, Value>) -> Value {
    let sorted: std::collections::BTreeMap<String, Value> = parts.into_iter().collect();
    json!(sorted)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_name_stands_for_one_thing_in_requests_and_in_answers() {
        let mut asked = SchemaSettings::draft2020_12().for_deserialize().into_generator();
        let mut answered = SchemaSettings::draft2020_12().for_serialize().into_generator();
        for task in TASKS {
            task.request_schema(&mut asked);
            task.answer_schema(&mut answered);
        }
        let (asked, answered) = (asked.take_definitions(true), answered.take_definitions(true));
        let mut shared = 0;
        for (name, schema) in &asked {
            if let Some(other) = answered.get(name) {
                assert_eq!(schema, other, "{name}");
                shared += 1;
            }
        }
        assert!(shared > 0, "enumerations are shared");
    }

    #[test]
    fn the_schema_is_the_one_that_is_kept() {
        let kept = include_str!("../../schema.json");
        assert!(
            kept == schema(),
            "schema.json is stale; if the change is meant: cargo run -q -- answer --schema > \
             crates/overwater-exchange/schema.json"
        );
    }
}
