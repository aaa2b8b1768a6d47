//! A request, looked through.

use overwater::readings::bootstrap::{Draw, Plan};
use overwater::readings::half_life::CONSTANT_WITHIN;
use overwater::{Code, Error, Result};

use super::columns::Kind;
use super::gas::Gas;
use super::request::{ArrheniusFromRequest, DrawRequest, RateFromRequest, RateRequest, WorstLinesRequest};
use super::rows::Rows;

/// By how much of the whole change a reading may go back: two readings of 1 % of what a syringe holds (common practice).
const MAY_GO_BACK: f64 = 0.02;

/// What is the same for every run.
pub(super) struct Prepared {
    /// What is followed, or what stands for a rate.
    pub(super) followed: Kind,
    pub(super) fit_final_value: bool,
    pub(super) michaelis_menten: bool,
    pub(super) rate_from: Option<RateFromRequest>,
    pub(super) arrhenius_from: Option<ArrheniusFromRequest>,
    pub(super) worst_lines: WorstLinesRequest,
    pub(super) may_go_back: f64,
    pub(super) half_lives_within: f64,
    pub(super) bootstrap: Option<Plan>,
    pub(super) gas: Option<Gas>,
}

fn share(percent: Option<f64>, otherwise: f64, name: &'static str, greatest: f64) -> Result<f64> {
    match percent {
        None => Ok(otherwise),
        Some(percent) if (0.0..=greatest).contains(&percent) => Ok(percent / 100.0),
        Some(percent) => Err(Error::new(Code::OutOfRange, name)
            .value(format!("{percent} %"))
            .allowed(format!("0 to {greatest} %"))
            .advice("give a share in per cent")),
    }
}

pub(super) fn prepare(request: &RateRequest, rows: &Rows) -> Result<Prepared> {
    let followed = followed(rows)?;
    let asked = request.bootstrap;
    let bootstrap = (asked.replicates > 0).then(|| Plan {
        draw: match asked.draw {
            DrawRequest::Residuals => Draw::Residuals,
            DrawRequest::Pairs => Draw::Pairs,
        },
        replicates: asked.replicates as usize,
        level: asked.level_percent / 100.0,
        seed: asked.seed.0,
        threads: 1,
    });
    if request.fit_final_value && last_of(followed).is_some_and(|last| rows.has(last)) {
        return Err(Error::new(Code::Contradiction, "fit_final_value")
            .value("true")
            .advice(format!("{} is given: leave one of the two out", last_name(rows, followed))));
    }
    Ok(Prepared {
        followed,
        fit_final_value: request.fit_final_value,
        michaelis_menten: request.michaelis_menten,
        rate_from: request.rate_from,
        arrhenius_from: request.arrhenius_from,
        worst_lines: request.worst_lines,
        may_go_back: share(request.may_go_back_percent, MAY_GO_BACK, "may_go_back_percent", 100.0)?,
        half_lives_within: share(
            request.half_lives_within_percent,
            CONSTANT_WITHIN,
            "half_lives_within_percent",
            1000.0,
        )?,
        bootstrap,
        gas: Gas::of(request, followed)?,
    })
}

fn last_of(followed: Kind) -> Option<Kind> {
    Kind::FOLLOWED.iter().find(|(kind, _)| *kind == followed).map(|(_, last)| *last)
}

fn last_name(rows: &Rows, followed: Kind) -> &'static str {
    last_of(followed).map_or("", |last| rows.name(last))
}

/// The one column that is followed in time, or the one that stands for a rate.
fn followed(rows: &Rows) -> Result<Kind> {
    let timed: Vec<Kind> =
        Kind::FOLLOWED.iter().map(|(kind, _)| *kind).filter(|kind| rows.has(*kind)).collect();
    let rates: Vec<Kind> = Kind::RATES.into_iter().filter(|kind| rows.has(*kind)).collect();
    match (timed.as_slice(), rates.as_slice()) {
        ([kind], []) if rows.has(Kind::Time) => Ok(*kind),
        ([kind], []) => Err(Error::new(Code::Missing, "time")
            .allowed("a column time_s, time_min or time_h")
            .advice(format!("say when each {} was read", kind.stem().replace('_', " ")))),
        ([], [kind]) if !rows.has(Kind::Time) => Ok(*kind),
        ([], []) => Err(Error::new(Code::Missing, "readings")
            .allowed(
                "with a column of times, one of volume_cm3, mass_g, mass_loss_g, concentration_mol_per_dm3; without, one of \
                 rate_cm3_per_s, rate_constant_per_s, time_taken_s; each in other units too",
            )
            .advice("name the columns after what is read, with the unit at the end")),
        _ => {
            let found: Vec<&str> = timed.iter().chain(&rates).map(|kind| rows.name(*kind)).collect();
            let advice = if timed.contains(&Kind::Concentration) && timed.len() > 1 {
                "a concentration that the run began with is called initial_concentration"
            } else {
                "leave all but one out; rates that are known stand in a table without times"
            };
            Err(Error::new(Code::GivenTwice, found.join(", ")).allowed("one column of readings").advice(advice))
        }
    }
}
