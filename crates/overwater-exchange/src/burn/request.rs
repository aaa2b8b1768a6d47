//! What is asked for.

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// A sample that burns in a jar of gas.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct BurnRequest {
    /// The format of the request; 1.
    pub format: u32,
    /// The sample, by name or formula, as in "sulfur", "Mg" or "C2H5OH".
    pub sample: String,
    /// Its mass (g); the mass that is advised where it is left out.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub mass_g: Option<f64>,
    /// Share of the jar's oxygen that the advised mass uses up; 0.25 where it is left out.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub share_of_oxygen: Option<f64>,
    /// Mass of ribbon or wire for each metre, as weighed (g/m); without it no length is advised.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub mass_per_length_g_per_m: Option<f64>,
    /// The jar.
    #[serde(default)]
    pub jar: JarRequest,
}

/// A jar of gas collected over water.
#[derive(Debug, Clone, PartialEq, Default, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct JarRequest {
    /// Its volume (cm3); 250 where it is left out.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub volume_cm3: Option<f64>,
    /// Temperature of gas and water (degC); 20 where it is left out.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub temperature_c: Option<f64>,
    /// Pressure at the place (kPa); 101.325 where it is left out.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub pressure_kpa: Option<f64>,
    /// Mole fraction of oxygen in the dry gas; 1 where nothing is said of it.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub oxygen_fraction: Option<f64>,
    /// Instead of the fraction: gas thrown away before the jar was filled (cm3), with `free_volume_cm3`.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub rejected_cm3: Option<f64>,
    /// Free volume of flask and tube (cm3).
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub free_volume_cm3: Option<f64>,
}
