//! The answer to a lesson. Units stand in the names of the keys; numbers are given to their full length, and rounded
//! only where they are shown.

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

use crate::after::answer::AfterBurnAnswer;
use crate::request::{FunnelRequest, KindRequest};
use crate::schedule::ScheduleAnswer;

/// Everything that follows from a lesson.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct PlanAnswer {
    /// The format of the answer; 1.
    pub format: u32,
    /// The version of the library that gave it.
    pub library_version: String,
    /// The lesson's title.
    pub title: Option<String>,
    /// The day of the lesson.
    pub date: Option<String>,
    /// The place: temperature and pressure.
    pub place: PlaceAnswer,
    /// The stock and the strength it is run at.
    pub stock: StockAnswer,
    /// What to order and set out.
    pub requisition: RequisitionAnswer,
    /// How much gas.
    pub gas: GasBudgetAnswer,
    /// What to reject, and how much oxygen each vessel holds.
    pub filling: FillingAnswer,
    /// Heat, steam and portions.
    pub additions: AdditionsAnswer,
    /// What to add and to fill when, simulated, or the limit that no schedule keeps.
    pub schedule: ScheduleAnswer,
    /// Pressure in the flask, the funnel stem.
    pub back_pressure: BackPressureAnswer,
    /// Water running back.
    pub suck_back: SuckBackAnswer,
    /// The burns.
    pub burns: Vec<BurnAnswer>,
    /// What is left of each burn, in the same order.
    pub after: Vec<AfterBurnAnswer>,
    /// What comes before every word on tidying up.
    pub disposal_deference: String,
    /// What to be careful of.
    pub cautions: Vec<CautionAnswer>,
    /// What comes before every caution here.
    pub deference: String,
    /// What was taken because the lesson did not say.
    pub assumptions: Vec<AssumptionAnswer>,
    /// The constants that were put in.
    pub constants: Vec<ConstantAnswer>,
    /// The published relations that were used.
    pub relations: Vec<RelationAnswer>,
}

/// The place.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct PlaceAnswer {
    /// Temperature of room, trough and stock (degC).
    pub temperature_c: f64,
    /// Pressure at the place (kPa).
    pub pressure_kpa: f64,
    /// The sea-level pressure it was worked out from (kPa).
    pub sea_level_pressure_kpa: Option<f64>,
    /// The altitude it was worked out with (m).
    pub altitude_m: Option<f64>,
    /// Volume of the room (m3).
    pub room_volume_m3: f64,
    /// Air changes per hour.
    pub air_changes_per_hour: f64,
}

/// A strength in the scales in use.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct StrengthAnswer {
    /// Amount concentration (mol/dm3).
    pub concentration_mol_per_dm3: f64,
    /// Volume strength under the plan's convention (vol).
    pub volume_strength_vol: f64,
    /// Grams in 100 cm3.
    pub percent_w_v: f64,
}

/// What a volume strength would mean under another convention.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct ConventionAnswer {
    /// The convention.
    pub convention: String,
    /// The concentration it would mean (mol/dm3).
    pub concentration_mol_per_dm3: f64,
}

/// How to find out how strong the stock is.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct AssayDesignAnswer {
    /// Stock to pipette (cm3).
    pub sample_cm3: f64,
    /// Volumetric flask (cm3).
    pub made_up_to_cm3: f64,
    /// Diluted sample to titrate (cm3).
    pub aliquot_cm3: f64,
    /// Concentration of the permanganate (mol/dm3).
    pub permanganate_mol_per_dm3: f64,
    /// Titre if the label is true (cm3).
    pub expected_titre_cm3: f64,
    /// Tolerances of the glassware, added (%).
    pub glassware_percent: f64,
}

/// The stock and the strength to run at.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct StockAnswer {
    /// The convention that volume strengths go by.
    pub convention: String,
    /// Whether the lesson gave it.
    pub convention_was_given: bool,
    /// What the label means under every convention; empty for a label in another scale.
    pub readings: Vec<ConventionAnswer>,
    /// The strength of the label.
    pub label: StrengthAnswer,
    /// The strength that is counted on: that of the assay where there is one.
    pub strength: StrengthAnswer,
    /// The strength found by the assay, as a fraction of the label's.
    pub fraction_of_label: Option<f64>,
    /// Days between opening and the lesson.
    pub days_open: Option<i32>,
    /// How to find out how strong the stock is.
    pub assay_design: Option<AssayDesignAnswer>,
    /// The strength to run at.
    pub run: StrengthAnswer,
}

/// How to dilute the stock.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct DilutionAnswer {
    /// Stock to measure (cm3).
    pub stock_cm3: f64,
    /// Volume to make it up to with purified water (cm3).
    pub made_up_to_cm3: f64,
}

/// The samples of one kind.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct SampleAnswer {
    /// Name of the sample.
    pub name: String,
    /// The form in which it is used.
    pub form: String,
    /// Mass of each (g).
    pub mass_g: f64,
    /// How many.
    pub count: u32,
}

/// What to order and set out.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct RequisitionAnswer {
    /// Groups that each make the preparation.
    pub groups: u32,
    /// Sets put out, with the spare ones.
    pub sets: u32,
    /// Peroxide for one preparation, by theory (cm3).
    pub theory_cm3: f64,
    /// Collection efficiency that is counted on.
    pub collection_efficiency_fraction: f64,
    /// Peroxide for one preparation with that efficiency (cm3).
    pub with_efficiency_cm3: f64,
    /// The same rounded up to what is measured out (cm3).
    pub issue_cm3: f64,
    /// Peroxide for all sets (cm3).
    pub issue_in_all_cm3: f64,
    /// How to make it from the stock; nothing where the stock is run as it is.
    pub dilution: Option<DilutionAnswer>,
    /// The catalyst.
    pub catalyst: String,
    /// Catalyst for one preparation (g).
    pub catalyst_g: f64,
    /// Catalyst for all sets (g).
    pub catalyst_in_all_g: f64,
    /// Gas jars, with the spare ones.
    pub jars: u32,
    /// Boiling tubes.
    pub tubes: u32,
    /// Covers, one for each jar.
    pub covers: u32,
    /// Bungs, one for each tube.
    pub bungs: u32,
    /// Deflagrating spoons.
    pub spoons: u32,
    /// Tongs.
    pub tongs: u32,
    /// Splints.
    pub splints: u32,
    /// Indicator (cm3).
    pub indicator_cm3: f64,
    /// Water for the jars whose product is tested (cm3).
    pub jar_water_cm3: f64,
    /// Samples.
    pub samples: Vec<SampleAnswer>,
}

/// The gas in one vessel, rejected, or in all.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct GasAnswer {
    /// Volume of moist gas, as it stands in the vessel (cm3).
    pub moist_cm3: f64,
    /// Volume of the same gas dry, at 0 degC and 1 atm (cm3).
    pub dry_cm3: f64,
    /// Amount of dry gas (mmol).
    pub amount_mmol: f64,
}

/// The gas of one preparation.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct GasBudgetAnswer {
    /// Vapour pressure of water at the trough's temperature (kPa).
    pub vapour_pressure_kpa: f64,
    /// Pressure of the dry gas, levels equal (kPa).
    pub dry_pressure_kpa: f64,
    /// Each vessel in order.
    pub vessels: Vec<GasAnswer>,
    /// What is thrown away first.
    pub rejected: GasAnswer,
    /// All together.
    pub total: GasAnswer,
}

/// How one vessel is filled.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct VesselFillingAnswer {
    /// Its name.
    pub name: String,
    /// Jar or tube.
    pub kind: KindRequest,
    /// Gas that has passed when it begins to fill (cm3).
    pub from_cm3: f64,
    /// Gas that has passed when it is full (cm3).
    pub to_cm3: f64,
    /// Mean fraction of oxygen, by amount of dry gas.
    pub oxygen_fraction: f64,
    /// The fraction wanted.
    pub wanted_fraction: f64,
    /// Whether it holds the fraction wanted.
    pub good_enough: bool,
    /// What is burned in it; nothing for a splint.
    pub burn: Option<String>,
    /// The burns that its gas is good enough for, and the splint.
    pub suits: Vec<String>,
}

/// A point of the oxygen curve.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct CurvePoint {
    /// Gas that has passed (cm3).
    pub passed_cm3: f64,
    /// Fraction of oxygen in the gas that leaves.
    pub oxygen_fraction: f64,
}

/// Where the oxygen of one preparation goes, as volumes of moist gas (cm3).
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct OxygenBalanceAnswer {
    /// Oxygen made, without what is lost (cm3).
    pub made_cm3: f64,
    /// Oxygen of the air in flask and tube at the start (cm3).
    pub from_air_cm3: f64,
    /// Oxygen in the vessels (cm3).
    pub in_vessels_cm3: f64,
    /// Oxygen in what was rejected (cm3).
    pub in_rejected_cm3: f64,
    /// Oxygen left in flask and tube (cm3).
    pub left_in_flask_cm3: f64,
}

/// What to reject and what each vessel holds.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct FillingAnswer {
    /// Free volume of flask and tube (cm3).
    pub free_volume_cm3: f64,
    /// What to throw away first (cm3).
    pub rejected_cm3: f64,
    /// Whether the lesson said how much.
    pub rejected_was_given: bool,
    /// The least that reaches every fraction wanted (cm3).
    pub least_rejected_cm3: f64,
    /// Each vessel in order.
    pub vessels: Vec<VesselFillingAnswer>,
    /// Fraction of oxygen in the gas that leaves, against the volume that has passed.
    pub curve: Vec<CurvePoint>,
    /// Where the oxygen goes.
    pub oxygen: OxygenBalanceAnswer,
}

/// Heat, steam and portions.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct AdditionsAnswer {
    /// Peroxide that is added in one preparation (cm3).
    pub peroxide_cm3: f64,
    /// Water in the flask at the start (cm3).
    pub heel_cm3: f64,
    /// Rise if the solution decomposes all at once by itself, no heat lost (K).
    pub rise_by_itself_k: f64,
    /// Rise if all is added at once to the water in the flask, no heat lost (K).
    pub rise_at_once_k: f64,
    /// Temperature that this would lead to (degC); above the boiling point it boils instead.
    pub end_temperature_c: f64,
    /// Temperature at which water boils at the place (degC).
    pub boiling_point_c: f64,
    /// Whether it would boil.
    pub boils: bool,
    /// Share of steam in the leaving gas at the end temperature; 1 where it boils.
    pub steam_share_at_once: f64,
    /// Portion of the schedule; where there is none, the largest that heat alone allows (cm3).
    pub portion_cm3: f64,
    /// Portions.
    pub portions: u32,
    /// Rise with the first portion, no heat lost (K).
    pub rise_per_portion_k: f64,
    /// Share of steam in the leaving gas after the first portion.
    pub steam_share_per_portion: f64,
    /// Moist gas from one portion (cm3).
    pub gas_per_portion_cm3: f64,
    /// Share of the flask that is filled with liquid at the end.
    pub flask_filled_fraction: f64,
}

/// Pressure in the flask above that of the room, and what it does in the funnel stem.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct BackPressureAnswer {
    /// Rate at which gas comes (cm3/s).
    pub flow_cm3_per_s: f64,
    /// Water over the outlet (kPa).
    pub depth_kpa: f64,
    /// Friction in the tube (kPa).
    pub friction_kpa: f64,
    /// Excess pressure in a bubble (kPa).
    pub bubble_kpa: f64,
    /// All together (kPa).
    pub total_kpa: f64,
    /// How far the liquid stands in the stem above the liquid in the flask (cm).
    pub stem_rise_cm: f64,
    /// Length of the stem above the liquid (cm).
    pub stem_length_cm: f64,
    /// What is left of the stem before gas escapes through the funnel (cm).
    pub margin_cm: f64,
}

/// Water running back when the flask cools.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct SuckBackAnswer {
    /// Temperature from which the flask is taken to cool (degC).
    pub from_c: f64,
    /// Share of the moist gas that is lost.
    pub shrinkage: f64,
    /// Water that the cooling flask would draw in (cm3).
    pub drawn_cm3: f64,
    /// What the delivery tube holds (cm3).
    pub tube_cm3: f64,
    /// Whether that reaches the flask while the tube's end is under water.
    pub reaches_flask: bool,
    /// The funnel.
    pub funnel: FunnelRequest,
}

/// One answer to what a sample makes.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct BurnAnswerRow {
    /// Whose answer it is: "favoured by excess oxygen", "usually credited" or "favoured and credited".
    pub role: String,
    /// The balanced equation.
    pub equation: String,
    /// The same with subscripts.
    pub equation_unicode: String,
    /// The product.
    pub product: String,
    /// The product with subscripts.
    pub product_unicode: String,
    /// Mass of the product, if all of the sample burns (g).
    pub product_g: f64,
    /// Oxygen that the sample uses up (mmol).
    pub oxygen_used_mmol: f64,
    /// That oxygen as a share of what the vessel holds.
    pub share_of_oxygen: f64,
    /// The most of the sample that the vessel's oxygen burns (g).
    pub greatest_sample_g: f64,
}

/// One burn.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct BurnAnswer {
    /// The vessel's name.
    pub vessel: String,
    /// The sample's name.
    pub sample: String,
    /// The sample's formula.
    pub formula: String,
    /// The form in which it is used.
    pub form: String,
    /// Mass of the sample (g).
    pub sample_g: f64,
    /// Oxygen in the vessel (mmol).
    pub oxygen_mmol: f64,
    /// What it makes: what is favoured and what is usually credited, where these differ.
    pub answers: Vec<BurnAnswerRow>,
}

/// Something to be careful of, and the fact that raised it.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct CautionAnswer {
    /// A stable name for programs.
    pub id: String,
    /// What it is about.
    pub topic: String,
    /// What to do.
    pub text: String,
    /// The fact in this plan that raised it.
    pub because: String,
}

/// What was taken because the lesson did not say.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct AssumptionAnswer {
    /// The key in the lesson that would change it.
    pub key: String,
    /// What was taken, with its unit.
    pub taken: String,
    /// Why.
    pub why: String,
}

/// A constant that was put in.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct ConstantAnswer {
    /// A stable name for programs, with the year of its edition.
    pub id: String,
    /// Its symbol.
    pub symbol: String,
    /// Its name.
    pub name: String,
    /// Its value.
    pub value: f64,
    /// Its unit.
    pub unit: String,
    /// Its standard uncertainty in the same unit; 0 where it is exact by definition, nothing where the source gives none.
    pub standard_uncertainty: Option<f64>,
    /// Where it comes from.
    pub source: String,
    /// The year of the edition used.
    pub year: Option<u16>,
}

/// A published relation that was used.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct RelationAnswer {
    /// Where it comes from.
    pub source: String,
    /// The year of the edition used; nothing for a law.
    pub year: Option<u16>,
}
