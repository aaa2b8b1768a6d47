//! Portions and times that fill the vessels soonest within limits.

use super::given::{Addition, Run};
use super::outcome::{Happening, RunResult};
use super::simulation::simulate;
use super::stand::Bench;
use crate::{Code, Error, Result};

/// What must not be exceeded.
#[derive(Debug, Clone, PartialEq)]
pub struct Limits {
    /// Least mean flow while vessels fill (cm3/s).
    pub least_flow_cm3_per_s: f64,
    /// Greatest flow at any time (cm3/s).
    pub greatest_flow_cm3_per_s: f64,
    /// Highest temperature of the flask (degC).
    pub top_temperature_c: f64,
    /// What must be left of the funnel stem (cm).
    pub stem_margin_cm: f64,
    /// Most of the flask that liquid and froth may take up.
    pub froth_share: f64,
    /// How many times more active than stated the catalyst may turn out without breaking the limits on flow, heat, stem
    /// and froth: 2, as bottles differ (common practice, no source), 1 after a trial with the same bottle.
    pub activity_factor: f64,
    /// Least fraction of oxygen of each vessel, in order; those not named have none.
    pub oxygen_fractions: Vec<f64>,
    /// How much time is given up to save one portion (s): of two schedules within the limits the one is taken whose
    /// length and portions, each counted so, come to less; 0 for the soonest whatever it asks of the person.
    pub portion_counts_s: f64,
}

impl Default for Limits {
    /// 1 to 6 cm3/s, 60 degC, 2 cm of stem, two thirds of the flask, bottles that differ by a factor of 2, 15 s for
    /// a portion: common practice, no source.
    fn default() -> Self {
        Limits {
            least_flow_cm3_per_s: 1.0,
            greatest_flow_cm3_per_s: 6.0,
            top_temperature_c: 60.0,
            stem_margin_cm: 2.0,
            froth_share: 2.0 / 3.0,
            activity_factor: 2.0,
            oxygen_fractions: Vec::new(),
            portion_counts_s: 15.0,
        }
    }
}

/// A schedule, and the run that shows that it holds.
#[derive(Debug, Clone, PartialEq)]
pub struct Advice {
    /// The additions.
    pub additions: Vec<Addition>,
    /// When the delivery tube comes out of the water: as soon as the last vessel is full (s).
    pub tube_out_s: f64,
    /// The run with these additions, to that time.
    pub result: RunResult,
}

/// A limit, by what breaks it and what would help.
struct Limit {
    name: &'static str,
    help: &'static str,
}

impl Limit {
    /// Whether longer intervals only make it worse.
    fn worse_with_time(&self) -> bool {
        [SLOW.name, COOLING.name, AMOUNT.name, PURITY.name, SEAL.name].contains(&self.name)
    }
}

const FLOW: Limit = Limit {
    name: "limits.greatest_flow_cm3_per_s",
    help: "the gas comes too fast even in small portions: take weaker peroxide, less catalyst or more water in the flask",
};
const SLOW: Limit = Limit {
    name: "limits.least_flow_cm3_per_s",
    help: "the gas comes too slowly: take more catalyst or stronger peroxide",
};
const HOT: Limit = Limit {
    name: "limits.top_temperature_c",
    help: "the flask gets too hot: take more water in the flask or weaker peroxide",
};
const STEM: Limit = Limit {
    name: "limits.stem_margin_cm",
    help: "liquid rises too far in the stem: take a longer stem, a shallower outlet or a wider tube",
};
const FROTH: Limit = Limit {
    name: "limits.froth_share",
    help: "froth comes too high: take a larger flask, stronger peroxide or granules instead of powder",
};
const PURITY: Limit = Limit {
    name: "limits.oxygen_fractions",
    help: "a vessel holds too much air: throw more gas away first, or take a smaller flask",
};
const COOLING: Limit = Limit {
    name: "run.tube_rise_cm",
    help: "the flask cools between portions and draws water or air in: take a faster catalyst or portions closer together",
};
const SEAL: Limit = Limit {
    name: "run.heel_cm3",
    help: "gas escapes by the funnel whose tip is not covered: take more water in the flask",
};
const AMOUNT: Limit = Limit {
    name: "run.vessels",
    help: "the flask cannot hold the peroxide that fills all vessels: take stronger peroxide, a larger flask or fewer vessels",
};

/// The first limit of flow, heat, stem and froth that a run breaks.
fn dangerous(run: &Run, limits: &Limits, result: &RunResult) -> Option<&'static Limit> {
    let had = |what| result.first(what).is_some();
    if result.top_temperature_c > limits.top_temperature_c || had(Happening::Boiling) {
        return Some(&HOT);
    }
    if had(Happening::StemOvertopped) || result.top_stem_rise_cm > run.stem_length_cm - limits.stem_margin_cm
    {
        return Some(&STEM);
    }
    if result.top_flow_cm3_per_s > limits.greatest_flow_cm3_per_s {
        return Some(&FLOW);
    }
    if had(Happening::FrothAtBung) || result.top_froth_cm3 > limits.froth_share * run.flask_cm3 {
        return Some(&FROTH);
    }
    (had(Happening::StepBound) || had(Happening::BoiledDry)).then_some(&HOT)
}

/// The first limit that a run breaks.
fn broken(run: &Run, limits: &Limits, result: &RunResult) -> Option<&'static Limit> {
    let had = |what| result.first(what).is_some();
    let start = result.first(Happening::Rejected).unwrap_or(0.0);
    let volume: f64 = run.vessels.iter().map(|vessel| vessel.volume_cm3).sum();
    if let Some(limit) = dangerous(run, limits, result) {
        return Some(limit);
    }
    if had(Happening::TipCovered) {
        return Some(&SEAL);
    }
    if had(Happening::SuckBack) || had(Happening::AirThroughFunnel) {
        return Some(&COOLING);
    }
    let Some(end) = result.filled_at_s else { return Some(&AMOUNT) };
    if end > start && volume / (end - start) < limits.least_flow_cm3_per_s {
        return Some(&SLOW);
    }
    let short = |(least, vessel): (&f64, &super::VesselOutcome)| {
        vessel.oxygen_fraction.is_nan() || vessel.oxygen_fraction < *least
    };
    limits.oxygen_fractions.iter().zip(&result.vessels).any(short).then_some(&PURITY)
}

/// Portions that can be measured out (cm3).
const PORTIONS: [f64; 7] = [10.0, 5.0, 4.0, 3.0, 2.0, 1.0, 0.5];
/// Times between portions that can be followed with a stop-watch (s).
const INTERVALS: [f64; 14] =
    [10.0, 15.0, 20.0, 25.0, 30.0, 35.0, 40.0, 45.0, 50.0, 60.0, 80.0, 100.0, 120.0, 180.0];
/// More would not be followed by anybody.
const MOST_PORTIONS: usize = 120;

/// How long a schedule takes, with what its portions count for (s).
fn cost(advice: &Advice, limits: &Limits) -> f64 {
    advice.tube_out_s + limits.portion_counts_s * advice.additions.len() as f64
}

/// Looks for equal portions of one solution at equal, round times that fill the vessels within the limits, soon and with
/// few portions ([`Limits::portion_counts_s`]). The additions of `run` and its length are not used; what is returned has been simulated with the run's own tolerance.
///
/// # Errors
/// `cannot_be_met` names the limit that stands in the way of most of the schedules, and what would help; errors of the run itself as for
/// [`Run::check`].
pub fn advise(run: &Run, concentration_mol_per_dm3: f64, limits: &Limits) -> Result<Advice> {
    let numbers = [
        ("limits.least_flow_cm3_per_s", limits.least_flow_cm3_per_s),
        ("limits.greatest_flow_cm3_per_s", limits.greatest_flow_cm3_per_s),
        ("limits.top_temperature_c", limits.top_temperature_c),
        ("limits.stem_margin_cm", limits.stem_margin_cm),
        ("limits.froth_share", limits.froth_share),
        ("limits.activity_factor", limits.activity_factor),
        ("limits.portion_counts_s", limits.portion_counts_s),
    ];
    for (name, value) in
        numbers.into_iter().chain(limits.oxygen_fractions.iter().map(|f| ("limits.oxygen_fractions", *f)))
    {
        if !value.is_finite() {
            return Err(Error::new(Code::NotANumber, name).value(value.to_string()));
        }
    }
    if run.vessels.is_empty() {
        return Err(Error::new(Code::Missing, "run.vessels").advice("say which vessels are to be filled"));
    }
    let portion = |time_s, volume_cm3| Addition {
        time_s,
        over_s: 0.0,
        volume_cm3,
        concentration_mol_per_dm3,
        temperature_c: run.room_c,
    };
    let bare = Run { additions: vec![portion(0.0, 0.5)], end_s: 1e5, outputs_s: Vec::new(), ..run.clone() };
    bare.check()?;
    if concentration_mol_per_dm3 <= 0.0 {
        return Err(Error::new(Code::OutOfRange, "concentration_mol_per_dm3").value("0 mol/dm3"));
    }
    // The depth of the outlet alone stands higher in the stem than it may: no flow is slow enough.
    if Bench::new(run, 0.0).still_rise_cm() > run.stem_length_cm - limits.stem_margin_cm {
        return Err(Error::new(Code::CannotBeMet, STEM.name).advice(STEM.help));
    }
    let wanted: f64 = run.rejected_cm3 + run.vessels.iter().map(|vessel| vessel.volume_cm3).sum::<f64>();
    // Gas from one cm3 at 24 dm3/mol, roughly: only how many portions are tried hangs on it.
    let gas_per_cm3 = concentration_mol_per_dm3 / 2.0 * 24.0;
    let mut best: Option<Advice> = None;
    let mut met: Vec<(usize, &'static Limit)> = Vec::new();
    let mut meet = |limit: &'static Limit| match met.iter_mut().find(|(_, known)| known.name == limit.name) {
        Some((count, _)) => *count += 1,
        None => met.push((1, limit)),
    };
    for volume in PORTIONS {
        let most = ((0.95 * run.flask_cm3 - run.heel_cm3) / volume).floor().max(0.0) as usize;
        let needed = (wanted / (gas_per_cm3 * volume) * 1.15).ceil() as usize + 2;
        let count = needed.min(most).min(MOST_PORTIONS);
        if count == 0 {
            meet(&AMOUNT);
            continue;
        }
        for interval in INTERVALS {
            let least_count = wanted / (gas_per_cm3 * volume);
            let least_cost = (least_count - 1.0) * interval + least_count * limits.portion_counts_s;
            if best.as_ref().is_some_and(|best| cost(best, limits) <= least_cost * 0.8) {
                break;
            }
            // Even with all of the gas, far below the least mean flow.
            if gas_per_cm3 * volume * 1.3 < limits.least_flow_cm3_per_s * interval {
                meet(&SLOW);
                break;
            }
            let additions: Vec<Addition> =
                (0..count).map(|index| portion(index as f64 * interval, volume)).collect();
            let end_s = (count as f64 * interval + 600.0).min(1e5);
            let tried =
                Run { additions, end_s, rtol: run.rtol.max(1e-6), outputs_s: Vec::new(), ..run.clone() };
            let first = simulate(&tried)?;
            let Some(full) = first.filled_at_s else {
                let limit = broken(&tried, limits, &first).unwrap_or(&AMOUNT);
                meet(limit);
                if limit.worse_with_time() {
                    break;
                }
                continue;
            };
            // What comes after the last vessel is full is not added, and the tube is out of the water.
            let mut additions = tried.additions;
            additions.retain(|addition| addition.time_s < full);
            let last = Run { additions, end_s: full + 0.01, rtol: run.rtol, ..tried };
            let result = simulate(&last)?;
            let mut limit = broken(&last, limits, &result);
            if limit.is_none() && limits.activity_factor > 1.0 {
                let mut lively = last.clone();
                lively.kinetics.k_at_20 *= limits.activity_factor;
                limit = dangerous(&lively, limits, &simulate(&lively)?);
            }
            match limit {
                Some(limit) => {
                    meet(limit);
                    if limit.worse_with_time() {
                        break;
                    }
                }
                None => {
                    let found = Advice { additions: last.additions, tube_out_s: last.end_s, result };
                    if best.as_ref().is_none_or(|best| cost(&found, limits) < cost(best, limits)) {
                        best = Some(found);
                    }
                    // Longer intervals with this portion only take longer.
                    break;
                }
            }
        }
    }
    best.ok_or_else(|| {
        let limit = met.iter().max_by_key(|(count, _)| *count).map_or(&AMOUNT, |(_, limit)| *limit);
        Error::new(Code::CannotBeMet, limit.name).advice(limit.help)
    })
}
