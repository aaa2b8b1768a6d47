//! What is wrong with a preparation, in words, and what would help.

use overwater::apparatus::run::{Happening, Limits, Run, RunResult};
use overwater::units::significant;

use super::answer::FindingAnswer;

fn finding(code: &str, what: String, help: &str) -> FindingAnswer {
    FindingAnswer { code: code.to_owned(), what, help: help.to_owned() }
}

/// What is wrong, the gravest first.
pub(super) fn findings(run: &Run, limits: &Limits, result: &RunResult) -> Vec<FindingAnswer> {
    let when = |what| result.first(what).map(|time| format!("after {} s", significant(time, 3)));
    let events: [(Happening, &str, &str, &str); 8] = [
        (
            Happening::Boiling,
            "boils",
            "the flask boils",
            "add it in portions and wait in between; take weaker peroxide, more water in the flask or less catalyst",
        ),
        (
            Happening::BoiledDry,
            "boiled_dry",
            "nearly all liquid has boiled away, and the simulation ends",
            "add it in portions, and take more water in the flask",
        ),
        (
            Happening::StemOvertopped,
            "stem_overtopped",
            "liquid is pushed out of the top of the funnel, and gas escapes there",
            "take a longer stem, a shallower outlet, a wider tube, or let the gas come more slowly",
        ),
        (
            Happening::FrothAtBung,
            "froth_at_bung",
            "froth reaches the bung",
            "take a larger flask, smaller portions, or granules instead of powder",
        ),
        (
            Happening::SuckBack,
            "suck_back",
            "trough water runs into the warm flask",
            "take the delivery tube out of the water while gas still comes",
        ),
        (
            Happening::AirThroughFunnel,
            "air_through_funnel",
            "air is drawn in through the funnel as the flask cools, and the simulation ends",
            "take the delivery tube out of the water while gas still comes",
        ),
        (
            Happening::TipCovered,
            "funnel_not_covered",
            "until then the tip of the funnel is not under liquid, and all gas escapes there",
            "put more water into the flask at the start",
        ),
        (
            Happening::StepBound,
            "step_bound",
            "the bound on steps is hit, and what follows is not known",
            "allow more steps, a larger tolerance or a shorter time",
        ),
    ];
    let mut found: Vec<FindingAnswer> = events
        .into_iter()
        .filter_map(|(what, code, words, help)| {
            when(what).map(|time| finding(code, format!("{time}: {words}"), help))
        })
        .collect();
    if result.top_temperature_c > limits.top_temperature_c {
        let what = format!(
            "the flask comes to {} degC, more than {} degC",
            significant(result.top_temperature_c, 3),
            limits.top_temperature_c
        );
        found.push(finding("hot", what, "take more water in the flask, weaker peroxide or smaller portions"));
    }
    if result.top_flow_cm3_per_s > limits.greatest_flow_cm3_per_s {
        let what = format!(
            "gas comes at up to {} cm3/s, more than {} cm3/s",
            significant(result.top_flow_cm3_per_s, 3),
            limits.greatest_flow_cm3_per_s
        );
        found.push(finding(
            "fast",
            what,
            "take smaller portions, less catalyst or more time between portions",
        ));
    }
    let total: f64 = run.additions.iter().map(|addition| addition.volume_cm3).sum();
    if run.heel_cm3 + total < run.seal_cm3 {
        let what = format!(
            "the tip of the funnel would want {} cm3 of liquid to be covered and never gets them; the simulation \
             takes it as covered by {} cm3",
            run.seal_cm3,
            run.heel_cm3 + total
        );
        found.push(finding("funnel_not_covered", what, "put more water into the flask at the start"));
    }
    let empty = result.vessels.iter().filter(|vessel| vessel.full_at_s.is_none()).count();
    if empty > 0 {
        let what = format!(
            "{empty} of {} vessels are not full after {} s",
            result.vessels.len(),
            significant(result.reached_s, 3)
        );
        found.push(finding("not_filled", what, "add more peroxide, or follow it for longer"));
    }
    found
}
