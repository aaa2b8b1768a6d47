//! What is answered.

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// A burn in a jar.
#[derive(Debug, Clone, PartialEq, Default, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct SampleBurnAnswer {
    /// The format of the answer; 1.
    pub format: u32,
    /// The version of the library that gave it.
    pub library_version: String,
    /// What must be read before anything else; empty where nothing stands in the way of a school burn.
    pub cautions: Vec<String>,
    /// What was assumed because it was not given.
    pub assumed: Vec<String>,
    /// The sample.
    pub sample: FuelAnswer,
    /// The jar and what is in it.
    pub jar: JarAnswer,
    /// Whether the jar holds less oxygen than most flames need.
    pub goes_out: bool,
    /// The fraction of oxygen below which most flames go out (common practice).
    pub flame_limit_fraction: f64,
    /// Mass of the sample (g).
    pub mass_g: f64,
    /// Whether it was given.
    pub mass_was_given: bool,
    /// How much to take; nothing where none is advised.
    pub advice: Option<AdviceAnswer>,
    /// What it makes: what is favoured and what is usually credited, where these differ.
    pub answers: Vec<ProductAnswer>,
    /// How hot it gets; nothing where that cannot be worked out.
    pub flames: Option<FlamesAnswer>,
    /// Why it cannot be worked out.
    pub no_flames: Option<String>,
}

/// A fuel.
#[derive(Debug, Clone, PartialEq, Default, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct FuelAnswer {
    /// Its name.
    pub name: String,
    /// Its formula.
    pub formula: String,
    /// The same with subscripts.
    pub formula_unicode: String,
    /// "solid", "liquid" or "gas".
    pub phase: String,
    /// Enthalpy of formation at 298.15 K (kJ/mol).
    pub formation_kj_per_mol: f64,
    /// Where that comes from.
    pub source: String,
}

/// A jar and what is in it.
#[derive(Debug, Clone, PartialEq, Default, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct JarAnswer {
    /// Its volume (cm3).
    pub volume_cm3: f64,
    /// Temperature of gas and water (degC).
    pub temperature_c: f64,
    /// Pressure at the place (kPa).
    pub pressure_kpa: f64,
    /// Mole fraction of oxygen in the dry gas.
    pub oxygen_fraction: f64,
    /// Oxygen (mmol).
    pub oxygen_mmol: f64,
    /// The rest of the dry gas, taken as nitrogen (mmol).
    pub nitrogen_mmol: f64,
    /// Water vapour (mmol).
    pub vapour_mmol: f64,
}

/// How much to take.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct AdviceAnswer {
    /// Share of the oxygen that it uses up.
    pub share_of_oxygen: f64,
    /// Mass (g).
    pub mass_g: f64,
    /// Length of ribbon or wire (cm); nothing where the mass for each metre was not given.
    pub length_cm: Option<f64>,
}

/// One answer to what the sample makes.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct ProductAnswer {
    /// Whose answer it is: "favoured by excess oxygen", "usually credited" or "favoured and credited".
    pub role: String,
    /// The balanced equation of complete combustion, with states.
    pub equation: String,
    /// The same with subscripts.
    pub equation_unicode: String,
    /// The equation for too little oxygen, where some of the sample follows it.
    pub poor_equation: Option<String>,
    /// The same with subscripts.
    pub poor_equation_unicode: Option<String>,
    /// "oxygen left over", "just enough oxygen" or "oxygen runs out".
    pub regime: String,
    /// Oxygen that the whole sample uses by complete combustion, as a share of the jar's; nothing without oxygen.
    pub share_of_oxygen: Option<f64>,
    /// The most of the sample that the jar's oxygen burns completely (g).
    pub most_g: f64,
    /// The most that burns before oxygen has fallen to where most flames go out (g).
    pub before_going_out_g: f64,
    /// Sample left (g).
    pub left_g: f64,
    /// What is made.
    pub made: Vec<MadeAnswer>,
    /// Heat given out for each mole of sample by complete combustion (kJ/mol).
    pub heat_kj_per_mol: f64,
    /// Heat given out (kJ).
    pub heat_kj: f64,
    /// The gas after it, cooled to the temperature of the water.
    pub after: AfterAnswer,
}

/// Something made.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct MadeAnswer {
    /// Its formula.
    pub formula: String,
    /// The same with subscripts.
    pub formula_unicode: String,
    /// "solid", "liquid" or "gas", at room temperature.
    pub phase: String,
    /// Amount (mmol).
    pub amount_mmol: f64,
    /// Mass (g).
    pub mass_g: f64,
}

/// The gas of the jar after the burn.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct AfterAnswer {
    /// Oxygen (mmol).
    pub oxygen_mmol: f64,
    /// What was not oxygen before (mmol).
    pub nitrogen_mmol: f64,
    /// Gases that the burn made (mmol).
    pub made_mmol: f64,
    /// Sample that is a gas and was not burned (mmol).
    pub sample_mmol: f64,
    /// Volume of the moist gas (cm3).
    pub volume_cm3: f64,
    /// How much the water rises (below 0: falls) in a jar opened under water, before any gas dissolves (cm3).
    pub water_rise_cm3: f64,
    /// The same when the acid gases that were made have been taken up by water or alkali; nothing where none was made (cm3).
    pub water_rise_washed_cm3: Option<f64>,
}

/// The two flames of a jar; both lose no heat, and are upper bounds.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct FlamesAnswer {
    /// The sample with just the gas that holds the oxygen it needs.
    pub at_the_sample: FlameAnswer,
    /// The sample with all the gas of the jar.
    pub whole_jar: FlameAnswer,
}

/// A flame.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct FlameAnswer {
    /// Temperature (K).
    pub temperature_k: f64,
    /// Temperature (degC).
    pub temperature_c: f64,
    /// Whether a phase melts or boils at just this temperature.
    pub changes_phase: bool,
    /// Gas (mmol).
    pub gas_mmol: f64,
    /// Mole fractions in the gas from 1e-6 up, the greatest first.
    pub gases: Vec<FractionAnswer>,
    /// Condensed phases (mmol).
    pub condensed: Vec<CondensedAnswer>,
}

/// A gas of a flame.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct FractionAnswer {
    /// Its name in the NASA Glenn data.
    pub name: String,
    /// Its formula with subscripts.
    pub formula_unicode: String,
    /// Mole fraction in the gas.
    pub fraction: f64,
}

/// A condensed phase of a flame.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct CondensedAnswer {
    /// Its name in the NASA Glenn data.
    pub name: String,
    /// Its formula with subscripts.
    pub formula_unicode: String,
    /// "solid" or "liquid".
    pub phase: String,
    /// Amount (mmol).
    pub amount_mmol: f64,
}
