//! The lesson as it is written down: TOML by a person, JSON by another program. Units stand in the names of the keys;
//! whatever has a default may be left out.

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// A lesson.
#[derive(Debug, Clone, PartialEq, Default, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct LessonRequest {
    /// The format of the request; 1.
    pub format: u32,
    /// A title for the sheet.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub title: Option<String>,
    /// The day of the lesson, as in "2026-12-03".
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub date: Option<String>,
    /// The room.
    #[serde(default)]
    pub room: RoomRequest,
    /// The barometer; the standard atmosphere where it is left out.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub barometer: Option<BarometerRequest>,
    /// The peroxide in stock.
    pub stock: StockRequest,
    /// How the preparation is run.
    #[serde(default)]
    pub run: RunRequest,
    /// The catalyst.
    #[serde(default)]
    pub catalyst: CatalystRequest,
    /// The apparatus.
    #[serde(default)]
    pub apparatus: ApparatusRequest,
    /// The vessels, in the order in which they are filled.
    pub vessels: Vec<VesselRequest>,
}

/// The room.
#[derive(Debug, Clone, PartialEq, Default, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields, default)]
pub struct RoomRequest {
    /// Temperature of room, trough and stock (degC).
    pub temperature_c: Option<f64>,
    /// Volume (m3).
    pub volume_m3: Option<f64>,
    /// Air changes per hour.
    pub air_changes_per_hour: Option<f64>,
}

/// The barometer: one pressure, either at the place or reduced to sea level together with the altitude.
#[derive(Debug, Clone, PartialEq, Default, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields, default)]
pub struct BarometerRequest {
    /// Pressure at the place (kPa).
    pub station_pressure_kpa: Option<f64>,
    /// Pressure at the place (hPa), which is the same as mbar.
    pub station_pressure_hpa: Option<f64>,
    /// Pressure at the place (mmHg).
    pub station_pressure_mmhg: Option<f64>,
    /// Pressure reduced to sea level, as in a weather report (kPa).
    pub sea_level_pressure_kpa: Option<f64>,
    /// Pressure reduced to sea level, as in a weather report (hPa).
    pub sea_level_pressure_hpa: Option<f64>,
    /// Height of the place above sea level (m).
    pub altitude_m: Option<f64>,
}

/// The bottle.
#[derive(Debug, Clone, PartialEq, Default, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct StockRequest {
    /// The strength as on the label: "20 vol", "1.78 mol/dm3", "6 % w/v" or "30 % w/w".
    pub strength: String,
    /// What a volume strength is measured at: "0 degC and 1 atm", "0 degC and 100 kPa", "24.0 dm3/mol",
    /// "25 degC and 1 atm", "25 degC and 100 kPa", or a molar volume such as "22.4 dm3/mol".
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub convention: Option<String>,
    /// Density, for a strength in % w/w (g/cm3); computed where it is not given.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub density_g_per_cm3: Option<f64>,
    /// The day the bottle was opened, as in "2026-05-04".
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub opened: Option<String>,
    /// A titration that says how strong it still is.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub assay: Option<AssayRequest>,
}

/// A titration with permanganate.
#[derive(Debug, Clone, PartialEq, Default, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct AssayRequest {
    /// Titre (cm3).
    pub titre_cm3: f64,
    /// Concentration of the permanganate (mol/dm3).
    pub permanganate_mol_per_dm3: f64,
    /// Stock taken (cm3).
    pub sample_cm3: f64,
    /// Volume it was made up to (cm3).
    pub made_up_to_cm3: f64,
    /// Volume titrated (cm3).
    pub aliquot_cm3: f64,
}

/// How the preparation is run.
#[derive(Debug, Clone, PartialEq, Default, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields, default)]
pub struct RunRequest {
    /// Strength to run at, in the form of a label: "20 vol".
    pub strength: Option<String>,
    /// Share of the oxygen made that is collected or rejected on purpose, 0 to 1.
    pub collection_efficiency_fraction: Option<f64>,
    /// Gas to throw away first (cm3); worked out where it is left out.
    pub rejected_cm3: Option<f64>,
    /// Groups that each make the preparation.
    pub groups: Option<u32>,
    /// Sets put out beyond those for the groups.
    pub spare_sets: Option<u32>,
    /// Jars in each set beyond those to be filled.
    pub spare_jars: Option<u32>,
}

/// The catalyst.
#[derive(Debug, Clone, PartialEq, Default, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields, default)]
pub struct CatalystRequest {
    /// What it is.
    pub substance: Option<String>,
    /// Its mass for one preparation (g).
    pub mass_g: Option<f64>,
}

/// How the funnel is made.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "snake_case")]
pub enum FunnelRequest {
    /// An open thistle funnel.
    Open,
    /// A funnel with a tap, closed between additions.
    Tap,
}

/// The apparatus.
#[derive(Debug, Clone, PartialEq, Default, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields, default)]
pub struct ApparatusRequest {
    /// Volume of the flask (cm3).
    pub flask_cm3: Option<f64>,
    /// Water in it at the start (cm3).
    pub heel_cm3: Option<f64>,
    /// Volume of air in flask and tube (cm3); worked out from the others where it is left out.
    pub free_volume_cm3: Option<f64>,
    /// The funnel.
    pub funnel: Option<FunnelRequest>,
    /// Length of the funnel stem above the liquid (cm).
    pub stem_length_cm: Option<f64>,
    /// Bore of the delivery tube (mm).
    pub tube_bore_mm: Option<f64>,
    /// Length of the delivery tube (cm).
    pub tube_length_cm: Option<f64>,
    /// Depth of its outlet under the trough's surface (cm).
    pub outlet_depth_cm: Option<f64>,
    /// Rate at which gas is to come (cm3/s).
    pub flow_cm3_per_s: Option<f64>,
    /// Volume of a jar (cm3).
    pub jar_cm3: Option<f64>,
    /// Volume of a tube (cm3).
    pub tube_cm3: Option<f64>,
}

/// Jar or tube.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "snake_case")]
pub enum KindRequest {
    /// A gas jar.
    #[default]
    Jar,
    /// A boiling tube.
    Tube,
}

/// A vessel to be filled.
#[derive(Debug, Clone, PartialEq, Default, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields, default)]
pub struct VesselRequest {
    /// A name for the sheet.
    pub name: Option<String>,
    /// Jar or tube.
    pub kind: KindRequest,
    /// Its volume, where it is not that of every jar or tube (cm3).
    pub volume_cm3: Option<f64>,
    /// What is burned in it, by name or formula; a glowing splint where it is left out.
    pub burn: Option<String>,
    /// Mass of the sample (g).
    pub sample_g: Option<f64>,
    /// The fraction of oxygen wanted, 0 to 1.
    pub wanted_oxygen_fraction: Option<f64>,
}
