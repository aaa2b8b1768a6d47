//! One preparation simulated as it is stated, and a catalyst's activity from a trial.

pub mod answer;
mod findings;
pub mod request;

use overwater::apparatus::run::{
    Addition, Happening, Limits, Run, RunVessel, SENSITIVE_TO, TrialReading, calibrate as fit,
    sensitivities as moves, simulate,
};
use overwater::peroxide::kinetics::{Law, TYPICAL_MANGANESE_DIOXIDE, half_life};
use overwater::peroxide::label::Label;
use overwater::plan::DEFAULT_CONVENTION;
use overwater::units::{DEGREE_CELSIUS, Dimensioned, MOLE_PER_CUBIC_DECIMETRE, Temperature};
use overwater::{Code, Error, bounds};

use crate::{FORMAT, Refusal};
use answer::{
    AssumedAnswer, CalibrationAnswer, EventAnswer, PointAnswer, RunAnswer, RunVesselAnswer, SensitivityAnswer,
};
use request::{AdditionRequest, CalibrationRequest, KineticsRequest, RunRequest};

/// States that are reported where the request does not say how many.
const REPORTED: f64 = 100.0;
/// Most states that are reported.
const MOST_REPORTED: f64 = 20_000.0;
/// How far the top of a vessel stands above the trough (cm); common practice, no source.
const HEIGHT_CM: f64 = 15.0;
/// 50 cm2 for 250 cm3, and flasks of one shape.
const USUAL_AREA_CM2: f64 = 50.0;
const USUAL_FLASK_CM3: f64 = 250.0;

/// Simulates a preparation as it is stated. What goes wrong in it is an answer, not a refusal.
///
/// ```
/// let request = overwater_exchange::run_from_toml(
///     "format = 1\nend_s = 600\nadditions = [{ time_s = 0, volume_cm3 = 5, strength = \"20 vol\" }]\n",
/// )?;
/// let answer = overwater_exchange::run::run(&request)?;
/// // 845 J at the most, into 30 cm3 of water and 40 J/K of glass: 5 K.
/// assert!(answer.top_temperature_c < 25.2 && answer.findings.is_empty());
/// # Ok::<(), Box<overwater_exchange::Refusal>>(())
/// ```
///
/// # Errors
/// What the core refuses, with the path of the key: a number out of its bounds, times out of order, liquid that does
/// not fit; `missing` and `given_twice` for the strength of an addition or for the law of the catalyst.
pub fn run(request: &RunRequest) -> Result<RunAnswer, Box<Refusal>> {
    let mut assumed = Vec::new();
    let run = read(request, &mut assumed)?;
    let result = simulate(&run)?;
    let sensitivities = if request.sensitivities { sensitivities(&run)? } else { Vec::new() };
    let names: Vec<String> = run.vessels.iter().map(|vessel| vessel.name.clone()).collect();
    let limits = Limits::default();
    let known = |value: f64| Some(value).filter(|value| value.is_finite());
    let mut begins = result.first(Happening::Rejected);
    let vessels = run.vessels.iter().zip(&result.vessels).map(|(vessel, outcome)| {
        let from_s = std::mem::replace(&mut begins, outcome.full_at_s);
        RunVesselAnswer {
            name: outcome.name.clone(),
            volume_cm3: vessel.volume_cm3,
            from_s,
            full_at_s: outcome.full_at_s,
            oxygen_fraction: from_s.and(known(outcome.oxygen_fraction)),
        }
    });
    Ok(RunAnswer {
        format: FORMAT,
        library_version: env!("CARGO_PKG_VERSION").to_owned(),
        title: request.title.clone(),
        assumed,
        findings: findings::findings(&run, &limits, &result),
        additions_s: run.additions.iter().map(|addition| addition.time_s).collect(),
        events: result
            .events
            .iter()
            .filter(|event| event.what != Happening::Rejected || run.rejected_cm3 > 0.0)
            .map(|event| EventAnswer::new(event, &names))
            .collect(),
        vessels: vessels.collect(),
        filled_at_s: result.filled_at_s,
        top_temperature_c: result.top_temperature_c,
        top_flow_cm3_per_s: result.top_flow_cm3_per_s,
        top_stem_rise_cm: result.top_stem_rise_cm,
        top_froth_cm3: result.top_froth_cm3,
        shrinkage_to_come: result.shrinkage_to_come,
        atom_balance: known(result.atom_balance),
        heat_balance: known(result.heat_balance),
        steps: result.steps as u32,
        reached_s: result.reached_s,
        greatest_flow_cm3_per_s: limits.greatest_flow_cm3_per_s,
        limit_temperature_c: limits.top_temperature_c,
        sensitivities,
        curve: result.points.iter().map(PointAnswer::from).collect(),
    })
}

fn read(request: &RunRequest, assumed: &mut Vec<AssumedAnswer>) -> Result<Run, Error> {
    let usual = Run::default();
    let mut take = |given: Option<f64>, usual: f64, key: &str, unit: &str, why: &str| {
        given.unwrap_or_else(|| {
            let taken = format!("{usual} {unit}").trim_end().to_owned();
            assumed.push(AssumedAnswer { key: key.to_owned(), taken, why: why.to_owned() });
            usual
        })
    };
    const BENCH: &str = "a usual flask with funnel and trough (common practice, no source)";
    const TYPICAL: &str = "typical manganese dioxide powder (common practice, no source); bottles differ by a factor \
                           of two, and a trial tells: overwater calibrate";
    const GLASS: &str = "common practice, no source";
    let flask_cm3 = take(request.flask_cm3, usual.flask_cm3, "flask_cm3", "cm3", BENCH);
    let heel_cm3 = take(request.heel_cm3, usual.heel_cm3, "heel_cm3", "cm3", BENCH);
    let catalyst_g = take(request.catalyst_g, usual.catalyst_g, "catalyst_g", "g", TYPICAL);
    let room_c = take(request.room_c, usual.room_c, "room_c", "degC", "an ordinary room");
    let pressure_kpa =
        take(request.pressure_kpa, usual.pressure_kpa, "pressure_kpa", "kPa", "one atmosphere");
    let tube_bore_mm = take(request.tube_bore_mm, usual.tube_bore_mm, "tube_bore_mm", "mm", BENCH);
    let tube_length_cm = take(request.tube_length_cm, usual.tube_length_cm, "tube_length_cm", "cm", BENCH);
    let outlet_depth_cm =
        take(request.outlet_depth_cm, usual.outlet_depth_cm, "outlet_depth_cm", "cm", BENCH);
    let tube_rise_cm = take(request.tube_rise_cm, usual.tube_rise_cm, "tube_rise_cm", "cm", BENCH);
    let stem_length_cm = take(request.stem_length_cm, usual.stem_length_cm, "stem_length_cm", "cm", BENCH);
    let tip_depth_cm = take(request.tip_depth_cm, usual.tip_depth_cm, "tip_depth_cm", "cm", BENCH);
    let heat_loss_w_per_k =
        take(request.heat_loss_w_per_k, usual.heat_loss_w_per_k, "heat_loss_w_per_k", "W/K", GLASS);
    let glass_j_per_k = take(request.glass_j_per_k, usual.glass_j_per_k, "glass_j_per_k", "J/K", GLASS);
    let bubble_rise_cm_per_s =
        take(request.bubble_rise_cm_per_s, usual.bubble_rise_cm_per_s, "bubble_rise_cm_per_s", "cm/s", GLASS);
    // Additions take their temperature from the room: what is wrong with it is said of the room.
    bounds::ROOM_TEMPERATURE_C
        .check(room_c)
        .map_err(|error| Error { parameter: "room_c".into(), ..error })?;
    let kinetics = kinetics(&request.kinetics, &mut take, TYPICAL)?;
    let end_s = bounds::RUN_END_S.check(request.end_s.unwrap_or(usual.end_s))?;
    let every_s = request.every_s.unwrap_or(end_s / REPORTED);
    if !(every_s > 0.0 && every_s <= end_s && end_s / every_s <= MOST_REPORTED) {
        let code = if every_s.is_finite() { Code::OutOfRange } else { Code::NotANumber };
        return Err(Error::new(code, "every_s")
            .value(format!("{every_s} s"))
            .allowed(format!("{} to {end_s} s", end_s / MOST_REPORTED))
            .advice("ask for fewer states"));
    }
    // What is left over by a rounding is no further state.
    let count = (end_s / every_s + 1e-9).floor() as u32;
    let area = USUAL_AREA_CM2 * (flask_cm3 / USUAL_FLASK_CM3).powf(2.0 / 3.0);
    Ok(Run {
        flask_cm3,
        area_cm2: request.area_cm2.unwrap_or(area),
        heel_cm3,
        seal_cm3: request.seal_cm3.unwrap_or(usual.seal_cm3),
        catalyst_g,
        kinetics,
        room_c,
        pressure_kpa,
        tube_bore_mm,
        tube_length_cm,
        outlet_depth_cm,
        tube_rise_cm,
        stem_length_cm,
        tip_depth_cm,
        open_funnel: request.open_funnel.unwrap_or(usual.open_funnel),
        bubble_rise_cm_per_s,
        heat_loss_w_per_k,
        glass_j_per_k,
        additions: request
            .additions
            .iter()
            .enumerate()
            .map(|(index, addition)| {
                read_addition(addition, room_c).map_err(|error| error.within(&format!("additions[{index}]")))
            })
            .collect::<Result<_, Error>>()?,
        rejected_cm3: request.rejected_cm3.unwrap_or(usual.rejected_cm3),
        vessels: request
            .vessels
            .iter()
            .enumerate()
            .map(|(index, vessel)| RunVessel {
                name: vessel.name.clone().unwrap_or_else(|| format!("vessel {}", index + 1)),
                volume_cm3: vessel.volume_cm3,
                height_cm: vessel.height_cm.unwrap_or(HEIGHT_CM),
            })
            .collect(),
        end_s,
        outputs_s: (0..=count).map(|index| (f64::from(index) * every_s).min(end_s)).collect(),
        rtol: request.rtol.unwrap_or(usual.rtol),
        most_steps: request.most_steps.map_or(usual.most_steps, |steps| steps as usize),
        dissolves: request.dissolves,
        ..usual
    })
}

fn kinetics(
    given: &KineticsRequest,
    take: &mut impl FnMut(Option<f64>, f64, &str, &str, &str) -> f64,
    why: &str,
) -> Result<overwater::peroxide::kinetics::Kinetics, Error> {
    let typical = &TYPICAL_MANGANESE_DIOXIDE;
    let law = match (given.order, given.half_mol_per_m3) {
        (Some(_), Some(_)) => {
            return Err(Error::new(Code::GivenTwice, "kinetics.half_mol_per_m3")
                .allowed("an order, or a concentration of half the greatest rate")
                .advice("a power law has an order, a saturating law has not: leave one out"));
        }
        (order, None) => Law::Power { order: order.unwrap_or(1.0) },
        (None, Some(half)) => Law::Saturating { half },
    };
    if given.k_at_20.is_none() && law != typical.law {
        return Err(Error::new(Code::Missing, "kinetics.k_at_20")
            .allowed("the rate constant that goes with this law")
            .advice("the typical constant is known for order 1 only"));
    }
    Ok(overwater::peroxide::kinetics::Kinetics {
        k_at_20: take(given.k_at_20, typical.k_at_20, "kinetics.k_at_20", "m3/(kg s)", why),
        activation: take(
            given.activation_j_per_mol,
            typical.activation,
            "kinetics.activation_j_per_mol",
            "J/mol",
            why,
        ),
        law,
    })
}

fn read_addition(given: &AdditionRequest, room_c: f64) -> Result<Addition, Error> {
    let temperature_c = given.temperature_c.unwrap_or(room_c);
    let concentration_mol_per_dm3 = match (&given.strength, given.concentration_mol_per_dm3) {
        (Some(_), Some(_)) => {
            return Err(Error::new(Code::GivenTwice, "concentration_mol_per_dm3")
                .allowed("a strength or a concentration")
                .advice("leave one of them out"));
        }
        (None, None) => {
            return Err(Error::new(Code::Missing, "strength")
                .allowed("a strength as in \"20 vol\", or concentration_mol_per_dm3")
                .advice("say how strong it is; concentration_mol_per_dm3 = 0 is water"));
        }
        (None, Some(concentration)) => concentration,
        (Some(text), None) => {
            let label = Label::read(text)?;
            bounds::ROOM_TEMPERATURE_C.check(temperature_c)?;
            let temperature = Temperature::new(DEGREE_CELSIUS.to_si(temperature_c));
            let of_label = label.concentration(DEFAULT_CONVENTION, None, temperature)?;
            MOLE_PER_CUBIC_DECIMETRE.from_si(of_label.concentration.si())
        }
    };
    Ok(Addition {
        time_s: given.time_s,
        over_s: given.over_s,
        volume_cm3: given.volume_cm3,
        concentration_mol_per_dm3,
        temperature_c,
    })
}

fn sensitivities(run: &Run) -> Result<Vec<SensitivityAnswer>, Error> {
    let found = moves(run)?;
    let known = |value: &f64| Some(*value).filter(|value| value.is_finite());
    let each = SENSITIVE_TO.iter().enumerate().map(|(index, input)| SensitivityAnswer {
        input: (*input).to_owned(),
        filled_at_s: found.filled_at_s.as_ref().and_then(|all| all.get(index)).and_then(known),
        top_temperature_k: found.top_temperature.get(index).copied().unwrap_or(f64::NAN),
        oxygen_fraction: found.oxygen_fraction.iter().map(|all| all.get(index).and_then(known)).collect(),
    });
    Ok(each.collect())
}

/// How active a catalyst is, from the readings of one trial.
///
/// ```
/// let readings: Vec<String> = (1..=10)
///     .map(|i| f64::from(i) * 30.0)
///     .map(|t| format!("{{ time_s = {t:?}, volume_cm3 = {:?} }}", 100.0 * (1.0 - (-0.01 * t).exp())))
///     .collect();
/// let request = overwater_exchange::calibration_from_toml(&format!(
///     "format = 1\ncatalyst_g = 0.4\nliquid_cm3 = 30\ntemperature_c = 20\nreadings = [{}]\n",
///     readings.join(", "),
/// ))?;
/// let answer = overwater_exchange::run::calibrate(&request)?;
/// // 0.01 per second x 30e-6 m3 / 0.4e-3 kg, and ln 2 / 0.01 per second.
/// assert!((answer.k_at_20 / 7.5e-4 - 1.0).abs() < 1e-6);
/// assert!((answer.half_life_s - 69.31).abs() < 0.01);
/// # Ok::<(), Box<overwater_exchange::Refusal>>(())
/// ```
///
/// # Errors
/// What the core refuses, with the reading that is wrong.
pub fn calibrate(request: &CalibrationRequest) -> Result<CalibrationAnswer, Box<Refusal>> {
    let typical = &TYPICAL_MANGANESE_DIOXIDE;
    let activation = request.activation_j_per_mol.unwrap_or(typical.activation);
    let readings: Vec<TrialReading> = request
        .readings
        .iter()
        .map(|reading| TrialReading {
            time_s: reading.time_s,
            volume_cm3: reading.volume_cm3,
            temperature_c: reading.temperature_c,
        })
        .collect();
    let found = fit(&readings, request.catalyst_g, request.liquid_cm3, activation, request.temperature_c)?;
    let decay = found.k_at_20 * (request.catalyst_g * 1e-3) / (request.liquid_cm3 * 1e-6);
    Ok(CalibrationAnswer {
        format: FORMAT,
        library_version: env!("CARGO_PKG_VERSION").to_owned(),
        k_at_20: found.k_at_20,
        standard_uncertainty: found.standard_uncertainty,
        half_width_95: found.half_width_95,
        of_typical: found.k_at_20 / typical.k_at_20,
        half_life_s: half_life(decay),
        final_volume_cm3: found.final_volume_cm3,
        scatter_cm3: found.scatter_cm3,
        degrees_of_freedom: found.degrees_of_freedom as u32,
        activation_j_per_mol: activation,
        activation_was_given: request.activation_j_per_mol.is_some(),
    })
}
