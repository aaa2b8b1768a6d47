//! What is answered of products in water, in the air, and to be tidied up.

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// A product of a burn in water.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct InWaterAnswer {
    /// The product.
    pub product: String,
    /// Its reaction with water, balanced; nothing where there is none.
    pub reaction: Option<String>,
    /// The same with subscripts.
    pub reaction_unicode: Option<String>,
    /// Amount of the product (mmol).
    pub amount_mmol: f64,
    /// How much of it is dissolved (mmol).
    pub dissolved_mmol: f64,
    /// Concentration of what is dissolved, counted as the product (mol/dm3).
    pub concentration_mol_per_dm3: f64,
    /// Pressure of a gas over the water (kPa).
    pub pressure_kpa: Option<f64>,
    /// pH with activity coefficients: about what a meter shows.
    pub ph: f64,
    /// pH without them, as school problems take it.
    pub ph_ideal: f64,
    /// pH when the hydrogen peroxide has gone; nothing where there is none.
    pub ph_without_peroxide: Option<f64>,
    /// pH of the water itself at this temperature.
    pub neutral_ph: f64,
    /// Ionic strength (mol/dm3).
    pub ionic_strength_mol_per_dm3: f64,
    /// Whether that is within the range of the activity coefficients.
    pub dilute: bool,
    /// The colour of universal indicator (common practice).
    pub universal_indicator: String,
    /// The colour of litmus (common practice).
    pub litmus: String,
    /// What to know beside the pH.
    pub note: String,
}

/// One limit against the room.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct LimitAnswer {
    /// The country.
    pub country: String,
    /// The document and its edition: look the figure up there where it is not verified.
    pub document: String,
    /// The name that the document gives it.
    pub name: String,
    /// What it is averaged over: "15 min", "8 h", or "any moment".
    pub averaged_over: String,
    /// "ppm" or "mg/m3".
    pub unit: String,
    /// The limit.
    pub allowed: f64,
    /// Whether it was read in its source; from memory otherwise.
    pub verified: bool,
    /// What the room comes to, over the same time.
    pub found: f64,
    /// Whether that is above the limit.
    pub exceeded: bool,
    /// Minutes until the air is below the figure; nothing where it never is.
    pub minutes_until_below: Option<f64>,
    /// Air that takes all of it at the figure (m3).
    pub air_needed_m3: f64,
}

/// A product let out into a room, well mixed.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct RoomAirAnswer {
    /// What was let out, in words.
    pub name: String,
    /// Amount let out (mmol).
    pub released_mmol: f64,
    /// The same as a volume of gas (cm3); nothing for a smoke.
    pub released_cm3: Option<f64>,
    /// At the start (ppm by volume); nothing for a smoke.
    pub peak_ppm: Option<f64>,
    /// At the start (mg/m3).
    pub peak_mg_per_m3: f64,
    /// Mean over the first 15 minutes (ppm).
    pub mean_15_min_ppm: Option<f64>,
    /// Mean over the first 15 minutes (mg/m3).
    pub mean_15_min_mg_per_m3: f64,
    /// Mean over the first 8 hours (ppm).
    pub mean_8_h_ppm: Option<f64>,
    /// Mean over the first 8 hours (mg/m3).
    pub mean_8_h_mg_per_m3: f64,
    /// Whether any limit, verified or not, is exceeded.
    pub fume_cupboard: bool,
    /// What to do, in words.
    pub advice: String,
    /// The limits.
    pub limits: Vec<LimitAnswer>,
}

/// How to tidy up.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct TidyingAnswer {
    /// What neutralises it; nothing where nothing need be.
    pub reagent: Option<String>,
    /// Amount of that for all of the product (mmol).
    pub reagent_mmol: Option<f64>,
    /// The same as a solution of 0.5 mol/dm3 (cm3).
    pub reagent_cm3: Option<f64>,
    /// What to do.
    pub text: String,
}

/// What is left by one of the answers to what a sample makes.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct AfterProductAnswer {
    /// Whose answer it is.
    pub role: String,
    /// The product.
    pub product: String,
    /// The product with subscripts.
    pub product_unicode: String,
    /// How much of it (mmol), as far as the oxygen goes.
    pub product_mmol: f64,
    /// The same (g).
    pub product_g: f64,
    /// Whether it is a gas.
    pub gas: bool,
    /// Heat given out (kJ).
    pub heat_kj: f64,
    /// Sample left over (g).
    pub left_g: f64,
    /// Oxygen left (mmol).
    pub oxygen_mmol: f64,
    /// Gases that the burn made (mmol).
    pub made_mmol: f64,
    /// Volume of the moist gas, cooled (cm3).
    pub volume_cm3: f64,
    /// How much the water rises (below 0: falls) in a jar opened under water (cm3).
    pub water_rise_cm3: f64,
    /// The product in the water of the jar.
    pub in_water: Option<InWaterAnswer>,
    /// All of this jar let out into the room.
    pub air_of_one: Option<RoomAirAnswer>,
    /// The same jar of every group at once.
    pub air_of_all: Option<RoomAirAnswer>,
    /// How to tidy up.
    pub tidying: TidyingAnswer,
}

/// One burn, over.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct AfterBurnAnswer {
    /// The vessel's name.
    pub vessel: String,
    /// Oxygen at the start (mmol).
    pub oxygen_mmol: f64,
    /// The rest of the dry gas at the start (mmol).
    pub nitrogen_mmol: f64,
    /// Amount of the sample at the start (mmol).
    pub sample_mmol: f64,
    /// Water put in to test the product (cm3).
    pub water_cm3: f64,
    /// Temperature of the flame at the sample, no heat lost (degC).
    pub flame_c: Option<f64>,
    /// What is left, by each of the answers.
    pub answers: Vec<AfterProductAnswer>,
}
