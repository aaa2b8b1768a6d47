//! What is asked for. Units stand in the names of the keys; the names of readings are those of the columns of a table.

use std::collections::BTreeMap;

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// Readings, or the options that go with a table of them.
#[derive(Debug, Clone, PartialEq, Default, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct ReductionRequest {
    /// The format of the request; 1.
    pub format: u32,
    /// A title for the sheet.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub title: Option<String>,
    /// What is worked out; the amount of dry gas where it is left out.
    #[serde(default)]
    pub practical: PracticalRequest,
    /// How the gas was collected; over water where it is left out.
    #[serde(default)]
    pub collector: CollectorRequest,
    /// The gas, as a formula.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub gas: Option<String>,
    /// The reaction, as in "Mg + HCl -> MgCl2 + H2"; it is balanced here.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub reaction: Option<String>,
    /// The reagent that the yield goes by, as it stands in the reaction.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub reagent: Option<String>,
    /// The known gas of an effusion, as a formula.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub known_gas: Option<String>,
    /// Corrections that are not made.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub leave_out: Vec<CorrectionRequest>,
    /// Corrections that are made although they are not usual in schools: `real_gas`. Its size is told in any case.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub make: Vec<CorrectionRequest>,
    /// The constants to put in; the best ones where it is left out.
    #[serde(default)]
    pub constants: ConstantsRequest,
    /// What volumes of dry gas are given at.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub reference: Option<ReferenceRequest>,
    /// An accepted value, under the name of a result, as in `measured_molar_volume_dm3_per_mol = 24.0`.
    #[serde(default, skip_serializing_if = "BTreeMap::is_empty")]
    pub accepted: BTreeMap<String, f64>,
    /// The decimal sign of a table, where it cannot be told.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub decimal: Option<DecimalRequest>,
    /// The row whose worked solution is wanted, from 1.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub working: Option<u64>,
    /// Readings that are the same in every row.
    #[serde(default, skip_serializing_if = "BTreeMap::is_empty")]
    pub given: BTreeMap<String, f64>,
    /// The rows.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub rows: Vec<BTreeMap<String, CellRequest>>,
}

/// A cell of a row: a number, or the text of a label.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(untagged)]
pub enum CellRequest {
    /// A number.
    Number(f64),
    /// A text.
    Text(String),
}

/// What is worked out.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "snake_case")]
pub enum PracticalRequest {
    /// The amount of dry gas; the yield where there is a reaction.
    #[default]
    Amount,
    /// Amount, molar volume and yield of the gas from a metal and an acid.
    MetalAndAcid,
    /// Molar volume from the slope over several masses.
    MolarVolumeFromSlope,
    /// Molar mass of a metal from its hydrogen.
    MetalMolarMass,
    /// Purity of a carbonate from its gas.
    CarbonatePurity,
    /// Molar mass of a carbonate from its gas.
    CarbonateMolarMass,
    /// Purity of a carbonate by back titration.
    CarbonateBackTitration,
    /// Molar mass of a gas from the mass its container lost.
    GasMolarMass,
    /// Molar mass of a volatile liquid from its vapour.
    VapourMolarMass,
    /// Amount of gas against time from a balance.
    MassLossRate,
    /// Time to a fixed volume.
    TimeToVolume,
    /// Hydrocarbon burnt in a eudiometer, water condensed.
    EudiometryWaterLiquid,
    /// Hydrocarbon burnt in a eudiometer, water a gas.
    EudiometryWaterGas,
    /// Molar mass from effusion times.
    Effusion,
    /// Density and molar mass of a weighed gas.
    GasDensity,
}

/// How the gas was collected.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "snake_case")]
pub enum CollectorRequest {
    /// Over water.
    #[default]
    OverWater,
    /// Over mercury with a little water on it.
    OverMercury,
    /// In a syringe.
    Syringe,
    /// By loss of mass.
    MassLoss,
}

/// A correction.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "snake_case")]
pub enum CorrectionRequest {
    /// Reduction of a sea-level pressure to the place.
    Altitude,
    /// The column between the levels.
    Level,
    /// The vapour in the gas.
    Vapour,
    /// The vapour that a gas carries off.
    CarriedVapour,
    /// The air that a weighed gas displaces.
    Buoyancy,
    /// The difference of the gas from an ideal one.
    RealGas,
}

/// The constants to put in.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "snake_case")]
pub enum ConstantsRequest {
    /// The best ones.
    #[default]
    Exact,
    /// R = 8.31 J/(mol K), 273 K, molar masses to one decimal.
    Classroom,
}

/// What volumes of dry gas are given at: both conditions, or a molar volume.
#[derive(Debug, Clone, Copy, PartialEq, Default, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields, default)]
pub struct ReferenceRequest {
    /// Temperature (degC).
    pub temperature_c: Option<f64>,
    /// Pressure (kPa).
    pub pressure_kpa: Option<f64>,
    /// Molar volume (dm3/mol).
    pub molar_volume_dm3_per_mol: Option<f64>,
}

/// The decimal sign of a table.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "snake_case")]
pub enum DecimalRequest {
    /// As in 20.5.
    Point,
    /// As in 20,5.
    Comma,
}
