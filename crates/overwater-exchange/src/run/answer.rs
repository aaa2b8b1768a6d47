//! What a simulated preparation, and a calibration, come to.

use overwater::apparatus::run::{Event, Happening, Point};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// The outcome of one preparation.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct RunAnswer {
    /// The format of the answer; 1.
    pub format: u32,
    /// The version of the library that gave it.
    pub library_version: String,
    /// What it is called.
    pub title: Option<String>,
    /// What was taken because the request did not say.
    pub assumed: Vec<AssumedAnswer>,
    /// What is wrong with it, the gravest first; empty where nothing is.
    pub findings: Vec<FindingAnswer>,
    /// When peroxide or water is added (s).
    pub additions_s: Vec<f64>,
    /// What happened, in order.
    pub events: Vec<EventAnswer>,
    /// The vessels.
    pub vessels: Vec<RunVesselAnswer>,
    /// When the last vessel was full (s).
    pub filled_at_s: Option<f64>,
    /// Highest temperature of the flask (degC).
    pub top_temperature_c: f64,
    /// Greatest flow (cm3/s).
    pub top_flow_cm3_per_s: f64,
    /// Highest rise in the funnel stem (cm).
    pub top_stem_rise_cm: f64,
    /// Greatest volume of liquid with its bubbles (cm3).
    pub top_froth_cm3: f64,
    /// Share of the flask's gas that is lost when it cools from the end to the room.
    pub shrinkage_to_come: f64,
    /// Greatest relative error of the balances of hydrogen, oxygen and nitrogen; nothing while something drips in.
    pub atom_balance: Option<f64>,
    /// Error of the heat balance, relative to the heat of all the peroxide; nothing while something drips in.
    pub heat_balance: Option<f64>,
    /// Steps of the integration.
    pub steps: u32,
    /// How far it went (s).
    pub reached_s: f64,
    /// Flow limit that findings go by (cm3/s).
    pub greatest_flow_cm3_per_s: f64,
    /// Temperature limit that findings go by (degC).
    pub limit_temperature_c: f64,
    /// How the outcome moves with each input, if asked for.
    pub sensitivities: Vec<SensitivityAnswer>,
    /// The state against time.
    pub curve: Vec<PointAnswer>,
}

/// A number that the request left out.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct AssumedAnswer {
    /// The key.
    pub key: String,
    /// What was taken, with its unit.
    pub taken: String,
    /// Why.
    pub why: String,
}

/// Something that is wrong with a preparation.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct FindingAnswer {
    /// A stable name.
    pub code: String,
    /// What is wrong.
    pub what: String,
    /// What would help.
    pub help: String,
}

/// Something that happened.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct EventAnswer {
    /// When (s).
    pub time_s: f64,
    /// A stable name.
    pub event: String,
    /// The vessel that is full, counted from 1.
    pub vessel: Option<u32>,
    /// In words.
    pub words: String,
}

/// What a vessel holds.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct RunVesselAnswer {
    /// Its name.
    pub name: String,
    /// Volume (cm3).
    pub volume_cm3: f64,
    /// When it was put over the outlet; nothing where it never was (s).
    pub from_s: Option<f64>,
    /// When it was full; nothing where it was not (s).
    pub full_at_s: Option<f64>,
    /// Fraction of oxygen in its dry gas; nothing where nothing came in.
    pub oxygen_fraction: Option<f64>,
}

/// How the outcome moves with one input.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct SensitivityAnswer {
    /// The input, with its unit; "relative" is for a change by a factor.
    pub input: String,
    /// Derivative of the time at which the last vessel is full; nothing where it is not (s).
    pub filled_at_s: Option<f64>,
    /// Derivative of the highest temperature (K).
    pub top_temperature_k: f64,
    /// Derivative of the oxygen fraction of each vessel; nothing for one that nothing came into.
    pub oxygen_fraction: Vec<Option<f64>>,
}

/// The state at one time.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct PointAnswer {
    /// Time (s).
    pub time_s: f64,
    /// Liquid and gas in the flask (degC).
    pub temperature_c: f64,
    /// Moist gas leaving, at the flask's temperature (cm3/s).
    pub flow_cm3_per_s: f64,
    /// Fraction of oxygen in the dry gas that leaves.
    pub oxygen_fraction: f64,
    /// Moist gas collected so far (cm3).
    pub collected_cm3: f64,
    /// Moist gas in the vessel that is being filled (cm3).
    pub in_vessel_cm3: f64,
    /// Rise of liquid in the funnel stem (cm).
    pub stem_rise_cm: f64,
    /// Pressure in the flask above the room's (Pa).
    pub back_pressure_pa: f64,
    /// Peroxide left (mmol).
    pub peroxide_mmol: f64,
    /// Water in the flask, with its vapour (mmol).
    pub water_mmol: f64,
    /// Oxygen in the free volume (mmol).
    pub oxygen_mmol: f64,
    /// Nitrogen in the free volume (mmol).
    pub nitrogen_mmol: f64,
    /// Oxygen that has left through the tube (mmol).
    pub oxygen_out_mmol: f64,
    /// Nitrogen that has left through the tube (mmol).
    pub nitrogen_out_mmol: f64,
    /// Oxygen that has escaped by the funnel (mmol).
    pub oxygen_lost_mmol: f64,
    /// Nitrogen that has escaped by the funnel (mmol).
    pub nitrogen_lost_mmol: f64,
    /// Vapour that has left (mmol).
    pub vapour_out_mmol: f64,
    /// Heat that has left (J).
    pub heat_out_j: f64,
}

impl From<&Point> for PointAnswer {
    fn from(point: &Point) -> Self {
        PointAnswer {
            time_s: point.time_s,
            temperature_c: point.temperature_c,
            flow_cm3_per_s: point.flow_cm3_per_s,
            oxygen_fraction: point.oxygen_fraction,
            collected_cm3: point.collected_cm3,
            in_vessel_cm3: point.in_vessel_cm3,
            stem_rise_cm: point.stem_rise_cm,
            back_pressure_pa: point.back_pressure_pa,
            peroxide_mmol: point.peroxide_mmol,
            water_mmol: point.water_mmol,
            oxygen_mmol: point.oxygen_mmol,
            nitrogen_mmol: point.nitrogen_mmol,
            oxygen_out_mmol: point.oxygen_out_mmol,
            nitrogen_out_mmol: point.nitrogen_out_mmol,
            oxygen_lost_mmol: point.oxygen_lost_mmol,
            nitrogen_lost_mmol: point.nitrogen_lost_mmol,
            vapour_out_mmol: point.vapour_out_mmol,
            heat_out_j: point.heat_out_j,
        }
    }
}

impl EventAnswer {
    /// An event in words; vessels are called by their names.
    pub(super) fn new(event: &Event, names: &[String]) -> Self {
        let vessel_full;
        let (name, words) = match event.what {
            Happening::Rejected => ("rejected", "the gas to throw away has passed"),
            Happening::VesselFull(index) => {
                let name = names.get(index).map_or("the vessel", String::as_str);
                vessel_full = format!("{name} is full");
                ("vessel_full", vessel_full.as_str())
            }
            Happening::StemOvertopped => {
                ("stem_overtopped", "liquid is pushed out of the funnel, and gas escapes there")
            }
            Happening::StemHolds => ("stem_holds", "the funnel stem holds again"),
            Happening::Boiling => ("boiling", "the liquid boils: three quarters of the gas are steam"),
            Happening::BoilingEnds => ("boiling_ends", "it no longer boils"),
            Happening::FrothAtBung => ("froth_at_bung", "froth reaches the bung"),
            Happening::Spent => ("spent", "the peroxide is spent"),
            Happening::WaterRises => ("water_rises", "the flask cools, and water rises in the delivery tube"),
            Happening::GasLeaves => ("gas_leaves", "gas leaves again"),
            Happening::SuckBack => ("suck_back", "trough water runs into the flask"),
            Happening::AirThroughFunnel => ("air_through_funnel", "air comes in through the funnel"),
            Happening::Hottest => ("hottest", "the flask stops getting hotter"),
            Happening::TipCovered => ("tip_covered", "liquid covers the tip of the funnel"),
            Happening::StepBound => ("step_bound", "the bound on steps is hit: what follows is not known"),
            Happening::BoiledDry => ("boiled_dry", "nearly all liquid has boiled away"),
        };
        let vessel = match event.what {
            Happening::VesselFull(index) => u32::try_from(index + 1).ok(),
            _ => None,
        };
        EventAnswer { time_s: event.time_s, event: name.to_owned(), vessel, words: words.to_owned() }
    }
}

/// How active a catalyst is.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct CalibrationAnswer {
    /// The format of the answer; 1.
    pub format: u32,
    /// The version of the library that gave it.
    pub library_version: String,
    /// Rate constant at 20 degC, for a law of order 1 (m3/(kg s)).
    pub k_at_20: f64,
    /// Its standard uncertainty, from the scatter of the readings (m3/(kg s)).
    pub standard_uncertainty: f64,
    /// Half the width of its 95 % interval (m3/(kg s)).
    pub half_width_95: f64,
    /// How many times as active as typical powder.
    pub of_typical: f64,
    /// Time in which the peroxide of the trial is halved, at 20 degC (s).
    pub half_life_s: f64,
    /// Gas when the reaction is over (cm3).
    pub final_volume_cm3: f64,
    /// Scatter of the readings about the curve (cm3).
    pub scatter_cm3: f64,
    /// Degrees of freedom.
    pub degrees_of_freedom: u32,
    /// Activation energy that readings away from 20 degC were carried over with (J/mol).
    pub activation_j_per_mol: f64,
    /// Whether the request gave it.
    pub activation_was_given: bool,
}
