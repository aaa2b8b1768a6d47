//! A sample that burns in a jar: what it makes, what is left, how much heat, how hot, what the gas comes to.

pub mod answer;
mod convert;
pub mod request;

use overwater::apparatus::purity::MeanOxygenFraction;
use overwater::burn::{Fuel, Jar, NoAdvice, burnt, flames, sample_advice};
use overwater::reference::burns::FLAME_LIMIT_FRACTION;
use overwater::scalar::Formula;
use overwater::{Code, Error};

use crate::{FORMAT, Refusal};
use answer::{AdviceAnswer, SampleBurnAnswer};
use request::{BurnRequest, JarRequest};

/// Share of the oxygen that the advised mass uses up: enough is left for a bright end.
const SHARE: f64 = 0.25;

/// Works out a burn.
///
/// ```
/// use overwater_exchange::burn::burn;
/// let request = overwater_exchange::burn_from_toml("format = 1\nsample = \"sulfur\"\nmass_g = 0.10\n")?;
/// let answer = burn(&request)?;
/// // 0.10 g of sulfur gives 3.12 mmol of SO2 and 0.93 kJ (by hand).
/// assert!((answer.answers[0].made[0].amount_mmol - 3.12).abs() < 0.005);
/// assert!((answer.answers[0].heat_kj - 0.93).abs() < 0.005);
/// # Ok::<(), Box<overwater_exchange::Refusal>>(())
/// ```
///
/// # Errors
/// `unknown_name`, with the nearest name; `cannot_be_met` for what does not burn; `missing` without a mass where none is
/// advised; `out_of_range`; `given_twice` for a fraction and the volumes it would follow from.
pub fn burn(request: &BurnRequest) -> Result<SampleBurnAnswer, Box<Refusal>> {
    let fuel = Fuel::find(&request.sample)?;
    let mut assumed = Vec::new();
    let jar = jar(&request.jar, &mut assumed).map_err(|error| error.within("jar"))?;
    let inside = jar.contents().map_err(|error| error.within("jar"))?;
    let share = request.share_of_oxygen.unwrap_or(SHARE);
    let advice = sample_advice(&fuel, &jar, share, request.mass_per_length_g_per_m)?;
    let mass_g = match (request.mass_g, &advice) {
        (Some(mass_g), _) => mass_g,
        (None, Ok(advice)) => advice.mass_g,
        (None, Err(why)) => return Err(mass_needed(&fuel, *why).into()),
    };
    if request.mass_g.is_none() {
        assumed.push(format!("mass of the sample: what uses {share} of the oxygen"));
    }
    let answers = burnt(&fuel, mass_g, &jar)?;
    let mut cautions: Vec<String> = fuel.restriction.iter().map(|why| why.caution().to_owned()).collect();
    let goes_out = jar.oxygen_fraction < FLAME_LIMIT_FRACTION;
    if goes_out {
        cautions.push(format!(
            "The flame will go out: the jar holds {:.3} of oxygen, and most flames want at least {FLAME_LIMIT_FRACTION} \
             (common practice, no source). Burning magnesium, sodium and calcium go on in less.",
            jar.oxygen_fraction
        ));
    }
    if answers.iter().any(|answer| answer.share_of_oxygen > 1.0) {
        cautions.push(
            "More sample than the oxygen burns: some of it is left over hot, and may take fire again in the air."
                .to_owned(),
        );
    }
    let hot = flames(&fuel, mass_g, &jar);
    Ok(SampleBurnAnswer {
        format: FORMAT,
        library_version: env!("CARGO_PKG_VERSION").to_owned(),
        cautions,
        assumed,
        sample: convert::fuel(&fuel),
        jar: convert::jar(&jar, &inside),
        goes_out,
        flame_limit_fraction: FLAME_LIMIT_FRACTION,
        mass_g,
        mass_was_given: request.mass_g.is_some(),
        advice: advice.ok().map(|advice| AdviceAnswer {
            share_of_oxygen: advice.share,
            mass_g: advice.mass_g,
            length_cm: advice.length_cm,
        }),
        answers: answers.iter().map(convert::product).collect(),
        no_flames: hot.as_ref().err().map(ToString::to_string),
        flames: hot.ok().map(|flames| convert::flames(&flames)),
    })
}

fn mass_needed(fuel: &Fuel, why: NoAdvice) -> Error {
    let reason = match why {
        NoAdvice::NotForPupils => fuel.restriction.map_or("", overwater::burn::Restriction::caution),
        NoAdvice::GoesOut => "The jar holds less oxygen than most flames need: no sample is advised.",
    };
    Error::new(Code::Missing, "mass_g")
        .allowed("a mass in g")
        .advice(format!("{reason} Give a mass for the calculation alone"))
}

fn jar(request: &JarRequest, assumed: &mut Vec<String>) -> Result<Jar, Error> {
    let mut or = |given: Option<f64>, value: f64, words: &str| {
        given.unwrap_or_else(|| {
            assumed.push(words.to_owned());
            value
        })
    };
    let volume_cm3 = or(request.volume_cm3, 250.0, "jar of 250 cm3");
    let temperature_c = or(request.temperature_c, 20.0, "gas and water at 20 degC");
    let pressure_kpa = or(request.pressure_kpa, 101.325, "pressure 101.325 kPa");
    let oxygen_fraction = match (request.oxygen_fraction, request.rejected_cm3, request.free_volume_cm3) {
        (Some(fraction), None, None) => fraction,
        (None, Some(rejected), Some(free)) => MeanOxygenFraction.number([rejected, volume_cm3, free])?,
        (None, None, None) => or(None, 1.0, "pure oxygen: a first jar holds less, see rejected_cm3"),
        (Some(_), _, _) => {
            return Err(Error::new(Code::GivenTwice, "oxygen_fraction")
                .allowed("oxygen_fraction, or rejected_cm3 with free_volume_cm3")
                .advice("leave one of them out"));
        }
        (None, rejected, _) => {
            let missing = if rejected.is_none() { "rejected_cm3" } else { "free_volume_cm3" };
            return Err(Error::new(Code::Missing, missing)
                .allowed("rejected_cm3 with free_volume_cm3")
                .advice("both are needed to work out the fraction of oxygen"));
        }
    };
    Ok(Jar { volume_cm3, temperature_c, pressure_kpa, oxygen_fraction })
}
