//! How much work one request may ask for. A request may come from anywhere, so the time of an answer has a bound too; a
//! person at a command line, who sees the progress and can stop it, is not held to it.

use overwater::{Code, Error};

use crate::Refusal;
use crate::propagation::request::RuleSetRequest;
use crate::rate::request::RateRequest;
use crate::reduction::DRAWS;
use crate::reduction::request::ReductionRequest;

/// The most rows times draws, or rows times refits, of a request: some ten seconds to half a minute of one core.
const GREATEST: u64 = 100_000_000;

/// Refuses a reduction whose rows and draws are too many together.
pub(super) fn of_reduction(request: &ReductionRequest) -> Result<(), Box<Refusal>> {
    let Some(asked) = request.uncertainty.as_ref().filter(|asked| asked.rules == RuleSetRequest::MonteCarlo)
    else {
        return Ok(());
    };
    bounded(request.rows.len(), asked.draws.unwrap_or(DRAWS), "draws", "uncertainty.draws")
}

/// Refuses readings against time whose rows and refits are too many together.
pub(super) fn of_rate(request: &RateRequest) -> Result<(), Box<Refusal>> {
    bounded(request.rows.len(), request.bootstrap.replicates as usize, "refits", "bootstrap.replicates")
}

fn bounded(rows: usize, times: usize, what: &str, path: &'static str) -> Result<(), Box<Refusal>> {
    let (rows, times) = (rows as u64, times as u64);
    if rows.saturating_mul(times) <= GREATEST {
        return Ok(());
    }
    Err(Error::new(Code::TooLarge, path)
        .value(format!("{times} {what} for each of {rows} rows"))
        .allowed(format!("at most {GREATEST} {what} of rows in one request, here {}", GREATEST / rows))
        .advice(format!("ask for fewer {what}, or send the rows in parts"))
        .into())
}

#[cfg(test)]
mod tests {
    use super::super::respond_with_status;
    use super::*;

    #[test]
    fn the_bound_itself_is_allowed() {
        assert_eq!(bounded(1000, 100_000, "draws", "draws"), Ok(()));
        assert_eq!(bounded(0, usize::MAX, "draws", "draws"), Ok(()));
        let refused = bounded(1000, 100_001, "draws", "draws").unwrap_err();
        assert_eq!((refused.code.as_str(), refused.path.as_str()), ("too_large", "draws"));
        assert_eq!(refused.value, "100001 draws for each of 1000 rows");
        assert!(refused.allowed.ends_with("here 100000"), "{}", refused.allowed);
        assert!(bounded(usize::MAX, usize::MAX, "draws", "draws").is_err());
    }

    fn error(request: &str) -> serde_json::Value {
        let (text, good) = respond_with_status(request.as_bytes());
        assert!(!good, "{text}");
        serde_json::from_str::<serde_json::Value>(&text).unwrap()["error"].take()
    }

    #[test]
    fn a_request_with_too_many_draws_or_refits_is_refused_before_any_is_made() {
        let row = r#"{"volume_cm3": 45, "temperature_c": 20, "pressure_kpa": 100.9}"#;
        let rows = vec![row; 1001].join(",");
        let reduce = |more: &str| {
            format!(
                r#"{{"format": 1, "task": "reduce", "request": {{"format": 1, "rows": [{rows}], "uncertainty": {{
                   "rules": "monte_carlo", {more} "readings": {{"volume_cm3": {{"half_width": 0.5}}}}}}}}}}"#
            )
        };
        // 100 000 draws for each row, where the request does not say how many.
        let refused = error(&reduce(""));
        assert_eq!(
            (&refused["code"], &refused["path"]),
            (&"too_large".into(), &"request.uncertainty.draws".into())
        );
        assert_eq!(error(&reduce(r#""draws": 200000,"#))["place"]["line"], 2);
        let rows = vec![r#"{"time_s": 1, "volume_cm3": 2}"#; 10_001].join(",");
        let rate = format!(
            r#"{{"format": 1, "task": "rate", "request": {{"format": 1, "rows": [{rows}], "bootstrap": {{"replicates": 10000}}}}}}"#
        );
        assert_eq!(error(&rate)["path"], "request.bootstrap.replicates");
    }
}
