//! What is asked for: one preparation with its additions, or the readings of a trial.

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// One preparation. What is left out is that of a flask of 250 cm3 with 25 cm3 of water and typical powder.
#[derive(Debug, Clone, PartialEq, Default, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct RunRequest {
    /// The format of the request; 1.
    pub format: u32,
    /// What it is called.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub title: Option<String>,
    /// Flask (cm3).
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub flask_cm3: Option<f64>,
    /// Area of the liquid in it; left out, that of a flask of its size (cm2).
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub area_cm2: Option<f64>,
    /// Water at the start (cm3).
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub heel_cm3: Option<f64>,
    /// Liquid that covers the tip of the funnel; 25 cm3 where it is left out (cm3).
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub seal_cm3: Option<f64>,
    /// Catalyst (g).
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub catalyst_g: Option<f64>,
    /// How fast it works; typical powder where it is left out.
    #[serde(default)]
    pub kinetics: KineticsRequest,
    /// Room, trough and flask at the start (degC).
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub room_c: Option<f64>,
    /// Pressure at the place (kPa).
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub pressure_kpa: Option<f64>,
    /// Bore of the delivery tube (mm).
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub tube_bore_mm: Option<f64>,
    /// Its length (cm).
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub tube_length_cm: Option<f64>,
    /// Depth of its outlet (cm).
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub outlet_depth_cm: Option<f64>,
    /// Its highest point above the trough's surface (cm).
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub tube_rise_cm: Option<f64>,
    /// Stem of the funnel above the liquid (cm).
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub stem_length_cm: Option<f64>,
    /// How deep its tip is under the liquid (cm).
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub tip_depth_cm: Option<f64>,
    /// Whether air can come in through the funnel.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub open_funnel: Option<bool>,
    /// How fast bubbles rise; about 2 where there is froth (cm/s).
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub bubble_rise_cm_per_s: Option<f64>,
    /// Heat lost for each kelvin above the room (W/K).
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub heat_loss_w_per_k: Option<f64>,
    /// Heat capacity of the glass (J/K).
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub glass_j_per_k: Option<f64>,
    /// What is added, in order of time.
    #[serde(default)]
    pub additions: Vec<AdditionRequest>,
    /// Gas driven out first and thrown away; none where it is left out (cm3).
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub rejected_cm3: Option<f64>,
    /// What is filled, in order.
    #[serde(default)]
    pub vessels: Vec<RunVesselRequest>,
    /// How long it is followed; 1200 s where it is left out (s).
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub end_s: Option<f64>,
    /// From one reported state to the next; a hundredth of the whole where it is left out (s).
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub every_s: Option<f64>,
    /// Relative tolerance of the integration; 1e-8 where it is left out.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub rtol: Option<f64>,
    /// Most steps of the integration; 20000 where it is left out.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub most_steps: Option<u32>,
    /// Whether oxygen dissolves in the water of the vessels, by its upper bound.
    #[serde(default)]
    pub dissolves: bool,
    /// Whether the answer holds how the outcome moves with each input.
    #[serde(default)]
    pub sensitivities: bool,
}

/// The law of the catalyst. Either an order, or a concentration of half the greatest rate; neither is order 1.
#[derive(Debug, Clone, Copy, PartialEq, Default, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct KineticsRequest {
    /// Rate constant at 20 degC: m3/(kg s) for order 1, mol/(kg s) for a saturating law.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub k_at_20: Option<f64>,
    /// Activation energy (J/mol).
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub activation_j_per_mol: Option<f64>,
    /// Order.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub order: Option<f64>,
    /// Concentration at which a saturating rate is half of its greatest (mol/m3).
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub half_mol_per_m3: Option<f64>,
}

/// What is added.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct AdditionRequest {
    /// When it begins (s).
    pub time_s: f64,
    /// Over how long it drips; left out, it is poured at once (s).
    #[serde(default)]
    pub over_s: f64,
    /// How much (cm3).
    pub volume_cm3: f64,
    /// Strength as on a label, as in "20 vol" (gas at 0 degC and 1 atm) or "1.8 mol/dm3"; or the next key.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub strength: Option<String>,
    /// Concentration of peroxide; 0 for water (mol/dm3).
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub concentration_mol_per_dm3: Option<f64>,
    /// Its temperature; the room's where it is left out (degC).
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub temperature_c: Option<f64>,
}

/// A vessel to fill.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct RunVesselRequest {
    /// Its name; its number where it is left out.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub name: Option<String>,
    /// Volume (cm3).
    pub volume_cm3: f64,
    /// How far its top stands above the trough's surface; 15 cm where it is left out (cm).
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub height_cm: Option<f64>,
}

/// The readings of one trial run.
#[derive(Debug, Clone, PartialEq, Default, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct CalibrationRequest {
    /// The format of the request; 1.
    pub format: u32,
    /// Catalyst of the trial (g).
    pub catalyst_g: f64,
    /// Liquid of the trial, water and peroxide (cm3).
    pub liquid_cm3: f64,
    /// Temperature of the flask wherever a reading has none (degC).
    pub temperature_c: f64,
    /// Activation energy; typical powder's where it is left out, and used only away from 20 degC (J/mol).
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub activation_j_per_mol: Option<f64>,
    /// What was read, in order of time.
    pub readings: Vec<ReadingRequest>,
}

/// One reading of a trial.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct ReadingRequest {
    /// Since the peroxide was added (s).
    pub time_s: f64,
    /// Gas since then (cm3).
    pub volume_cm3: f64,
    /// Temperature of the flask, if it was read (degC).
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub temperature_c: Option<f64>,
}
