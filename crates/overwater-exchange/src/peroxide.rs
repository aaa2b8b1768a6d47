//! Peroxide by itself: a strength in every scale, a dilution, the design of an assay.

use overwater::peroxide::assay::design;
use overwater::peroxide::dilution::StockVolume;
use overwater::peroxide::label::Label;
use overwater::peroxide::strength::VolumeConvention;
use overwater::plan::{
    ASSAY_PERMANGANATE_MOL_PER_DM3, ASSAY_TITRES_CM3, DEFAULT_CONVENTION, Strength, defaults,
};
use overwater::scalar::Formula;
use overwater::units::{CUBIC_DECIMETRE_PER_MOLE, DEGREE_CELSIUS, Dimensioned, Temperature};
use overwater::{Code, Error, bounds};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

use crate::answer::{AssayDesignAnswer, AssumptionAnswer, ConventionAnswer, StrengthAnswer};
use crate::calculation::{StepAnswer, steps};
use crate::{FORMAT, Refusal};

/// A strength that is wanted in the other scales.
#[derive(Debug, Clone, PartialEq, Default, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct StrengthRequest {
    /// The format of the request; 1.
    pub format: u32,
    /// The strength as on a label: "20 vol", "1.78 mol/dm3", "6 % w/v" or "30 % w/w".
    pub strength: String,
    /// What a volume strength is measured at, as in a lesson; "0 degC and 1 atm" where it is left out.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub convention: Option<String>,
    /// Density, for a strength in % w/w (g/cm3); computed where it is left out.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub density_g_per_cm3: Option<f64>,
    /// Temperature at which a density is computed (degC); 20 where it is left out.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub temperature_c: Option<f64>,
}

/// A strength in every scale.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct StrengthsAnswer {
    /// The format of the answer; 1.
    pub format: u32,
    /// The version of the library that gave it.
    pub library_version: String,
    /// The convention that the volume strength goes by.
    pub convention: String,
    /// The strength.
    pub strength: StrengthAnswer,
    /// The volume strength of the same solution under each convention.
    pub volume_strengths: Vec<VolumeStrengthAnswer>,
    /// What a label in volumes would mean under each convention; empty for a label in another scale.
    pub readings: Vec<ConventionAnswer>,
    /// What was taken because the request did not say.
    pub assumptions: Vec<AssumptionAnswer>,
}

/// A volume strength under a convention.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct VolumeStrengthAnswer {
    /// The convention.
    pub convention: String,
    /// The molar volume that it goes by (dm3/mol).
    pub molar_volume_dm3_per_mol: f64,
    /// The volume strength (vol).
    pub volume_strength_vol: f64,
}

/// A stock that is to be made weaker.
#[derive(Debug, Clone, PartialEq, Default, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct DilutionRequest {
    /// The format of the request; 1.
    pub format: u32,
    /// The strength of the stock, as on a label.
    pub stock: String,
    /// The strength wanted, as on a label.
    pub wanted: String,
    /// How much is wanted (cm3).
    pub made_up_to_cm3: f64,
    /// What volume strengths are measured at, as in a lesson; "0 degC and 1 atm" where it is left out.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub convention: Option<String>,
    /// Density of the stock, for a strength in % w/w (g/cm3); computed where it is left out.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub density_g_per_cm3: Option<f64>,
    /// Temperature at which a density is computed (degC); 20 where it is left out.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub temperature_c: Option<f64>,
}

/// How to dilute a stock.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct DilutedAnswer {
    /// The format of the answer; 1.
    pub format: u32,
    /// The version of the library that gave it.
    pub library_version: String,
    /// The convention that volume strengths go by.
    pub convention: String,
    /// The stock.
    pub stock: StrengthAnswer,
    /// What is made.
    pub wanted: StrengthAnswer,
    /// Stock to measure (cm3).
    pub stock_cm3: f64,
    /// Volume to make it up to with purified water (cm3).
    pub made_up_to_cm3: f64,
    /// The worked solution.
    pub steps: Vec<StepAnswer>,
    /// What was taken because the request did not say.
    pub assumptions: Vec<AssumptionAnswer>,
}

/// A stock that is to be assayed with permanganate.
#[derive(Debug, Clone, PartialEq, Default, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct AssayDesignRequest {
    /// The format of the request; 1.
    pub format: u32,
    /// How strong the stock is supposed to be, as on a label.
    pub strength: String,
    /// What a volume strength is measured at, as in a lesson; "0 degC and 1 atm" where it is left out.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub convention: Option<String>,
    /// Density, for a strength in % w/w (g/cm3); computed where it is left out.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub density_g_per_cm3: Option<f64>,
    /// Temperature at which a density is computed (degC); 20 where it is left out.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub temperature_c: Option<f64>,
    /// Concentration of the permanganate (mol/dm3); 0.02 where it is left out.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub permanganate_mol_per_dm3: Option<f64>,
    /// Least titre wanted (cm3); 15 where it is left out.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub least_titre_cm3: Option<f64>,
    /// Greatest titre wanted (cm3); 30 where it is left out.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub greatest_titre_cm3: Option<f64>,
}

/// The glassware of an assay.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct DesignedAnswer {
    /// The format of the answer; 1.
    pub format: u32,
    /// The version of the library that gave it.
    pub library_version: String,
    /// The convention that volume strengths go by.
    pub convention: String,
    /// What the stock is supposed to be.
    pub supposed: StrengthAnswer,
    /// What to pipette, make up to and titrate.
    pub design: AssayDesignAnswer,
    /// What was taken because the request did not say.
    pub assumptions: Vec<AssumptionAnswer>,
}

/// What labels go by, and what had to be taken for want of a word.
struct Bench {
    convention: VolumeConvention,
    temperature: Temperature<f64>,
    temperature_was_given: bool,
    assumptions: Vec<AssumptionAnswer>,
}

impl Bench {
    fn new(convention: Option<&str>, temperature_c: Option<f64>) -> Result<Bench, Error> {
        let temperature = temperature_c.unwrap_or(defaults::TEMPERATURE.value);
        let temperature = bounds::ROOM_TEMPERATURE_C.check(temperature)?;
        Ok(Bench {
            convention: convention.map_or(Ok(DEFAULT_CONVENTION), VolumeConvention::read)?,
            temperature: Temperature::new(DEGREE_CELSIUS.to_si(temperature)),
            temperature_was_given: temperature_c.is_some(),
            assumptions: match convention {
                Some(_) => Vec::new(),
                None => vec![AssumptionAnswer {
                    key: "convention".to_owned(),
                    taken: DEFAULT_CONVENTION.words(),
                    why: "the older standard conditions; a label in volumes rarely says".to_owned(),
                }],
            },
        })
    }

    fn assume(&mut self, key: &str, taken: String, why: &str) {
        self.assumptions.push(AssumptionAnswer { key: key.to_owned(), taken, why: why.to_owned() });
    }

    /// What a label under `key` stands for.
    fn read(
        &mut self,
        key: &'static str,
        text: &str,
        density: Option<f64>,
    ) -> Result<(Label, Strength), Error> {
        let label = Label::read(text).map_err(|error| Error { parameter: key.into(), ..error })?;
        let read = label.concentration(self.convention, density, self.temperature)?;
        if let Some(density) = read.computed_density_g_per_cm3 {
            let taken = format!("{density} g/cm3 for {key}");
            self.assume("density_g_per_cm3", taken, "computed from the strength and the temperature");
            if !self.temperature_was_given {
                let default = &defaults::TEMPERATURE;
                self.assume("temperature_c", format!("{} degC", default.value), default.why);
            }
        }
        Ok((label, Strength::new(read.concentration, self.convention)))
    }
}

/// Gives a strength in every scale, and under every convention.
///
/// ```
/// use overwater_exchange::peroxide::{StrengthRequest, strength};
/// let request = StrengthRequest { format: 1, strength: "20 vol".to_owned(), ..Default::default() };
/// let answer = strength(&request)?;
/// // Arithmetic: 2 x 20/22.414 mol/dm3.
/// assert!((answer.strength.concentration_mol_per_dm3 - 1.7846).abs() < 5e-5);
/// assert_eq!(answer.assumptions[0].key, "convention");
/// # Ok::<(), Box<overwater_exchange::Refusal>>(())
/// ```
///
/// # Errors
/// What [`Label::read`] and [`VolumeConvention::read`] refuse, and the bounds of density and temperature.
pub fn strength(request: &StrengthRequest) -> Result<StrengthsAnswer, Box<Refusal>> {
    let mut bench = Bench::new(request.convention.as_deref(), request.temperature_c)?;
    let (label, strength) = bench.read("strength", &request.strength, request.density_g_per_cm3)?;
    let concentration = strength.concentration();
    let mut readings = Vec::new();
    if let Label::Volumes { .. } = label {
        for convention in VolumeConvention::NAMED {
            let read = label.concentration(convention, None, bench.temperature)?.concentration;
            readings.push(ConventionAnswer {
                convention: convention.words(),
                concentration_mol_per_dm3: Strength::new(read, convention).concentration_mol_per_dm3,
            });
        }
    }
    Ok(StrengthsAnswer {
        format: FORMAT,
        library_version: env!("CARGO_PKG_VERSION").to_owned(),
        convention: bench.convention.words(),
        strength: (&strength).into(),
        volume_strengths: VolumeConvention::NAMED
            .into_iter()
            .map(|convention| VolumeStrengthAnswer {
                convention: convention.words(),
                molar_volume_dm3_per_mol: convention.molar_volume().si() / CUBIC_DECIMETRE_PER_MOLE.si,
                volume_strength_vol: convention.volume_strength(concentration),
            })
            .collect(),
        readings,
        assumptions: bench.assumptions,
    })
}

/// Works out how to dilute a stock.
///
/// # Errors
/// As for [`strength`]; `cannot_be_met` for a stock that is weaker than what is wanted.
pub fn dilute(request: &DilutionRequest) -> Result<DilutedAnswer, Box<Refusal>> {
    let mut bench = Bench::new(request.convention.as_deref(), request.temperature_c)?;
    let (_, stock) = bench.read("stock", &request.stock, request.density_g_per_cm3)?;
    let (_, wanted) = bench.read("wanted", &request.wanted, None)?;
    bounds::MADE_UP_TO_CM3.check(request.made_up_to_cm3)?;
    let inputs = [stock.concentration_mol_per_dm3, wanted.concentration_mol_per_dm3, request.made_up_to_cm3];
    let (stock_cm3, solution) =
        StockVolume.working(inputs).map_err(|error| Error { parameter: "wanted".into(), ..error })?;
    Ok(DilutedAnswer {
        format: FORMAT,
        library_version: env!("CARGO_PKG_VERSION").to_owned(),
        convention: bench.convention.words(),
        stock: (&stock).into(),
        wanted: (&wanted).into(),
        stock_cm3,
        made_up_to_cm3: request.made_up_to_cm3,
        steps: steps(&solution),
        assumptions: bench.assumptions,
    })
}

/// Chooses the glassware for an assay.
///
/// # Errors
/// As for [`strength`]; `cannot_be_met` where no glassware brings the titre into the range wanted.
pub fn design_assay(request: &AssayDesignRequest) -> Result<DesignedAnswer, Box<Refusal>> {
    let mut bench = Bench::new(request.convention.as_deref(), request.temperature_c)?;
    let (_, supposed) = bench.read("strength", &request.strength, request.density_g_per_cm3)?;
    let (least, greatest) = ASSAY_TITRES_CM3;
    let usual = [
        (
            "permanganate_mol_per_dm3",
            request.permanganate_mol_per_dm3,
            ASSAY_PERMANGANATE_MOL_PER_DM3,
            "mol/dm3",
        ),
        ("least_titre_cm3", request.least_titre_cm3, least, "cm3"),
        ("greatest_titre_cm3", request.greatest_titre_cm3, greatest, "cm3"),
    ];
    let [permanganate, least, greatest] = usual.map(|(key, given, usual, unit)| {
        given.unwrap_or_else(|| {
            bench.assume(key, format!("{usual} {unit}"), "usual in schools (common practice, no source)");
            usual
        })
    });
    let name = |key: &'static str| move |error: Error| Error { parameter: key.into(), ..error };
    bounds::PERMANGANATE_MOL_PER_DM3.check(permanganate)?;
    bounds::TITRE_CM3.check(least).map_err(name("least_titre_cm3"))?;
    bounds::TITRE_CM3.check(greatest).map_err(name("greatest_titre_cm3"))?;
    let found =
        design(supposed.concentration_mol_per_dm3, permanganate, least, greatest).map_err(|error| {
            let cannot = error.code == Code::CannotBeMet;
            let mut refusal: Box<Refusal> = error.into();
            // The core speaks of the titre, which no key gives; it follows from the strength.
            if cannot {
                refusal.path = "strength".to_owned();
            }
            refusal
        })?;
    Ok(DesignedAnswer {
        format: FORMAT,
        library_version: env!("CARGO_PKG_VERSION").to_owned(),
        convention: bench.convention.words(),
        supposed: (&supposed).into(),
        design: (&found).into(),
        assumptions: bench.assumptions,
    })
}
