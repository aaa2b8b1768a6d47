//! The doors that take text, each with what must hold whatever comes in. The targets of the fuzzer and the short test that
//! runs everywhere share them.
#![allow(dead_code, reason = "each target goes through one door")]

use overwater::Code;
use overwater::chem::{Formula, MAX_FORMULA_BYTES, Reaction, Weights};
use overwater_exchange::rate::rate_table;
use overwater_exchange::rate::request::{BootstrapRequest, RateRequest};
use overwater_exchange::reduction::reduce_table;
use overwater_exchange::reduction::request::ReductionRequest;
use overwater_exchange::{
    FORMAT, plan_toml, propagation_from_toml, rate_from_toml, reduction_from_toml, respond_with_status,
};

/// Draws or refits that a request may ask for here. More are allowed, and take as long as their number says; what they do
/// is no other than what few of them do.
const MOST_DRAWS: u64 = 20_000;

/// Whether a request asks for few draws, as far as can be seen.
fn draws_little(request: &serde_json::Value) -> bool {
    let number = |value: &serde_json::Value| value.as_f64().map_or(0, |number| number as u64);
    let drawing = |asked: &serde_json::Value| {
        asked["rules"] != "monte_carlo" || (1..=MOST_DRAWS).contains(&number(&asked["draws"]))
    };
    let asked = &request["request"];
    let rows = asked["rows"].as_array().map_or(1, |rows| rows.len().max(1) as u64);
    let refits = number(&asked["bootstrap"]["replicates"]);
    drawing(asked) && drawing(&asked["uncertainty"]) && refits.saturating_mul(rows) <= MOST_DRAWS
}

/// A request in JSON: the answer is JSON too, and never a fault of the library.
pub fn exchange(bytes: &[u8]) {
    if serde_json::from_slice(bytes).is_ok_and(|request| !draws_little(&request)) {
        return;
    }
    let (text, good) = respond_with_status(bytes);
    let answer: serde_json::Value = serde_json::from_str(&text).expect("an answer is JSON");
    assert_eq!(answer["format"], FORMAT);
    assert_eq!(answer["answer"].is_object(), good);
    assert_eq!(answer["error"].is_object(), !good);
    assert_ne!(answer["error"]["code"], "internal", "{text}");
}

/// A chemical formula, or an equation: what is printed is read again as the same, and balances again to the same.
pub fn formula(bytes: &[u8]) {
    let Ok(text) = str::from_utf8(bytes) else { return };
    match Formula::parse(text) {
        Ok(formula) => {
            for printed in [formula.to_string(), formula.unicode()] {
                match Formula::parse(&printed) {
                    Ok(again) => {
                        assert_eq!(again.composition(), formula.composition(), "{printed:?}");
                        assert_eq!(again.charge(), formula.charge(), "{printed:?}");
                    }
                    // A subscript takes three bytes where a figure takes one.
                    Err(error) => assert!(
                        error.code == Code::TooLarge && printed.len() > MAX_FORMULA_BYTES,
                        "{printed:?}: {error}"
                    ),
                }
            }
            if let Ok(mass) = formula.molar_mass(Weights::Exact) {
                assert!(mass.value_g_per_mol >= 0.0 && mass.value_g_per_mol.is_finite());
            }
        }
        Err(error) => inside(text, error.span),
    }
    match Reaction::parse(text).and_then(|reaction| reaction.balance()) {
        Ok(balanced) => {
            let printed = balanced.to_string();
            let again = Reaction::parse(&printed).and_then(|reaction| reaction.balance());
            match again {
                Ok(again) => assert_eq!(again.to_string(), printed),
                // A balance may need greater numbers than are read.
                Err(error) => assert_eq!(error.code, Code::TooLarge, "{printed:?}: {error}"),
            }
        }
        Err(error) => inside(text, error.span),
    }
}

/// The place of an error lies in the text, between two characters.
fn inside(text: &str, span: Option<(usize, usize)>) {
    if let Some((start, end)) = span {
        assert!(text.get(start..end).is_some(), "{start}..{end} of {text:?}");
    }
}

/// A lesson in TOML, and the other documents: a refusal can be shown.
pub fn lesson(bytes: &[u8]) {
    let Ok(text) = str::from_utf8(bytes) else { return };
    if let Err(refusal) = plan_toml(text) {
        assert!(refusal.show("lesson.toml", text).starts_with("error"));
    }
    let others =
        [reduction_from_toml(text).err(), rate_from_toml(text).err(), propagation_from_toml(text).err()];
    for refusal in others.into_iter().flatten() {
        assert!(refusal.show("options.toml", text).starts_with("error"));
    }
}

/// A table of readings, reduced and followed in time: no row is lost count of.
pub fn table(bytes: &[u8]) {
    let request = ReductionRequest { format: FORMAT, ..ReductionRequest::default() };
    if let Ok(answer) = reduce_table(&request, bytes, None) {
        assert!(answer.rows_good <= answer.rows_read);
        assert_eq!(answer.rows_good == answer.rows_read, answer.bad_rows.is_empty());
    }
    let bootstrap = BootstrapRequest { replicates: 0, ..BootstrapRequest::default() };
    let request = RateRequest { format: FORMAT, bootstrap, ..RateRequest::default() };
    if let Ok(answer) = rate_table(&request, bytes) {
        assert!(answer.rows_good <= answer.rows_read);
    }
}
