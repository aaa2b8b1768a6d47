//! How strong the stock is, and what strength to run at.

use jiff::Unit;

use crate::peroxide::assay::{AssayDesign, AssayedConcentration, design};
use crate::peroxide::label::Label;
use crate::peroxide::strength::{VolumeConvention, mass_concentration};
use crate::plan::lesson::{Lesson, Stock};
use crate::plan::{DEFAULT_CONVENTION, Place, defaults, given::Given};
use crate::scalar::Formula;
use crate::units::{
    Concentration, Dimensioned, GRAM_PER_CUBIC_CENTIMETRE, MOLE_PER_CUBIC_DECIMETRE, PERCENT, significant,
};
use crate::{Code, Error, Result};

impl Stock {
    /// A bottle of which only the label is known.
    #[must_use]
    pub fn labelled(label: Label) -> Self {
        Stock { label, convention: None, density_g_per_cm3: None, opened: None, assay: None }
    }
}

/// A strength in the scales in use.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Strength {
    /// Amount concentration (mol/dm3).
    pub concentration_mol_per_dm3: f64,
    /// Volume strength under the lesson's convention (vol).
    pub volume_strength_vol: f64,
    /// Grams in 100 cm3.
    pub percent_w_v: f64,
}

impl Strength {
    /// A concentration in every scale; the volume strength goes by `convention`.
    ///
    /// ```
    /// use overwater::peroxide::strength::VolumeConvention;
    /// use overwater::plan::Strength;
    /// let convention = VolumeConvention::ZeroDegreesOneAtmosphere;
    /// let strength = Strength::new(convention.concentration(20.0), convention);
    /// // Arithmetic: 2 x 20/22.414 mol/dm3, times 34.014 g/mol and a tenth of a dm3.
    /// assert!((strength.concentration_mol_per_dm3 - 1.7846).abs() < 5e-5);
    /// assert!((strength.percent_w_v - 6.070).abs() < 5e-4);
    /// ```
    #[must_use]
    pub fn new(concentration: Concentration<f64>, convention: VolumeConvention) -> Self {
        let grams_per_cm3 = mass_concentration(concentration).si() / GRAM_PER_CUBIC_CENTIMETRE.si;
        Strength {
            concentration_mol_per_dm3: concentration.si() / MOLE_PER_CUBIC_DECIMETRE.si,
            volume_strength_vol: convention.volume_strength(concentration),
            percent_w_v: grams_per_cm3 / PERCENT.si,
        }
    }

    /// The concentration with its dimension.
    #[must_use]
    pub fn concentration(&self) -> Concentration<f64> {
        Concentration::new(self.concentration_mol_per_dm3 * MOLE_PER_CUBIC_DECIMETRE.si)
    }
}

/// What a volume strength would be under another convention.
#[derive(Debug, Clone, PartialEq)]
pub struct ConventionReading {
    /// The convention in words.
    pub convention: String,
    /// The concentration it would mean (mol/dm3).
    pub concentration_mol_per_dm3: f64,
}

/// The stock and the strength to run at.
#[derive(Debug, Clone, PartialEq)]
pub struct StockReport {
    /// The convention that volume strengths go by here.
    pub convention: VolumeConvention,
    /// Whether the convention was given in the lesson.
    pub convention_was_given: bool,
    /// What the label means under every convention; empty for a label in another scale.
    pub readings: Vec<ConventionReading>,
    /// The strength of the label.
    pub label: Strength,
    /// The strength that is counted on: that of the assay where there is one.
    pub strength: Strength,
    /// The strength found by the assay, as a fraction of the label's.
    pub fraction_of_label: Option<f64>,
    /// Days between opening and the lesson, where both are given.
    pub days_open: Option<i32>,
    /// How to find out how strong the stock is.
    pub assay_design: Option<AssayDesign>,
    /// The strength to run at.
    pub run: Strength,
}

/// The permanganate that an assay is designed for where nobody says (common practice, no source).
pub const ASSAY_PERMANGANATE_MOL_PER_DM3: f64 = 0.02;

/// The titres that the design of an assay aims at where nobody says (common practice, no source).
pub const ASSAY_TITRES_CM3: (f64, f64) = (15.0, 30.0);

pub(super) fn report(lesson: &Lesson, place: &Place, given: &mut Given) -> Result<StockReport> {
    let Some(stock) = &lesson.stock else {
        return Err(Error::new(Code::Missing, "stock")
            .allowed("a strength as on the label, for example strength = \"20 vol\"")
            .advice("say what peroxide there is"));
    };
    let convention = stock.convention.unwrap_or(DEFAULT_CONVENTION);
    let here = |error: Error| error.within("stock");
    let temperature = place.temperature();
    let of_label =
        stock.label.concentration(convention, stock.density_g_per_cm3, temperature).map_err(here)?;
    if let Some(density) = of_label.computed_density_g_per_cm3 {
        assume_density("stock.density_g_per_cm3", "the label", density, place, given);
    }
    let label = Strength::new(of_label.concentration, convention);
    let readings = readings(stock, convention, given);

    let assayed = stock.assay.map(|assay| {
        AssayedConcentration
            .number([
                assay.titre_cm3,
                assay.permanganate_mol_per_dm3,
                assay.sample_cm3,
                assay.made_up_to_cm3,
                assay.aliquot_cm3,
            ])
            .map_err(|error| error.within("stock.assay"))
    });
    let strength = match assayed.transpose()? {
        Some(found) => Strength::new(Concentration::new(found * MOLE_PER_CUBIC_DECIMETRE.si), convention),
        None => {
            given.assume(
                "stock.assay",
                format!("the label is still true: {} vol", significant(label.volume_strength_vol, 3)),
                "no assay was given; a fresh label may be off by 15 %, and open bottles grow weaker",
            );
            label
        }
    };

    let run = match lesson.run.strength {
        Some(wanted) => {
            let wanted = wanted
                .concentration(convention, None, temperature)
                .map_err(|error| Error { parameter: "run.strength".into(), ..error })?;
            if let Some(density) = wanted.computed_density_g_per_cm3 {
                assume_density("run.strength", "the strength wanted", density, place, given);
            }
            let run = Strength::new(wanted.concentration, convention);
            if run.concentration_mol_per_dm3 > strength.concentration_mol_per_dm3 * (1.0 + 1e-9) {
                return Err(Error::new(Code::CannotBeMet, "run.strength")
                    .value(format!("{} vol", significant(run.volume_strength_vol, 3)))
                    .allowed(format!("at most the stock's {} vol", significant(strength.volume_strength_vol, 3)))
                    .advice("a solution cannot be made stronger by diluting: take a stronger stock, or run weaker"));
            }
            run
        }
        None => {
            let usual = convention.concentration(defaults::RUN_STRENGTH.value);
            let dilute = usual.si() < strength.concentration().si();
            let run = if dilute { Strength::new(usual, convention) } else { strength };
            let taken = if dilute {
                (format!("{} vol", defaults::RUN_STRENGTH.value), defaults::RUN_STRENGTH.why)
            } else {
                ("the stock as it is".to_owned(), "it is not stronger than 20 vol")
            };
            given.assume(defaults::RUN_STRENGTH.key, taken.0, taken.1);
            run
        }
    };

    Ok(StockReport {
        convention,
        convention_was_given: stock.convention.is_some(),
        readings,
        label,
        strength,
        fraction_of_label: stock
            .assay
            .map(|_| strength.concentration_mol_per_dm3 / label.concentration_mol_per_dm3),
        days_open: days_open(lesson, stock)?,
        assay_design: design(
            label.concentration_mol_per_dm3,
            ASSAY_PERMANGANATE_MOL_PER_DM3,
            ASSAY_TITRES_CM3.0,
            ASSAY_TITRES_CM3.1,
        )
        .ok(),
        run,
    })
}

fn assume_density(key: &str, what: &str, density_g_per_cm3: f64, place: &Place, given: &mut Given) {
    given.assume(
        key,
        format!("density computed: {} g/cm3", significant(density_g_per_cm3, 4)),
        format!(
            "{what} is in % w/w and no density was given; at {} degC by the equation of Laliberte (2009), within 0.2 %",
            place.temperature_c
        ),
    );
}

fn readings(stock: &Stock, convention: VolumeConvention, given: &mut Given) -> Vec<ConventionReading> {
    let Label::Volumes { volume_strength_vol } = stock.label else {
        return Vec::new();
    };
    let readings: Vec<ConventionReading> = VolumeConvention::NAMED
        .into_iter()
        .map(|other| ConventionReading {
            convention: other.words(),
            concentration_mol_per_dm3: other.concentration(volume_strength_vol).si()
                / MOLE_PER_CUBIC_DECIMETRE.si,
        })
        .collect();
    if stock.convention.is_none() {
        let mol = |reading: &ConventionReading| significant(reading.concentration_mol_per_dm3, 4);
        let others: Vec<String> = readings
            .iter()
            .filter(|reading| reading.convention != convention.words())
            .map(|reading| format!("{} at {}", mol(reading), reading.convention))
            .collect();
        let here = readings.iter().find(|reading| reading.convention == convention.words());
        given.assume(
            "stock.convention",
            format!("{}: {} mol/dm3", convention.words(), here.map(mol).unwrap_or_default()),
            format!("the label does not say; it would be {} (mol/dm3)", others.join(", ")),
        );
    }
    readings
}

fn days_open(lesson: &Lesson, stock: &Stock) -> Result<Option<i32>> {
    let (Some(opened), Some(day)) = (stock.opened, lesson.date) else {
        return Ok(None);
    };
    let days = opened
        .until((Unit::Day, day))
        .map(|span| span.get_days())
        .map_err(|_| Error::new(Code::OutOfRange, "stock.opened").value(opened.to_string()))?;
    if days < 0 {
        return Err(Error::new(Code::Contradiction, "stock.opened")
            .value(opened.to_string())
            .allowed(format!("a day not after the lesson, {day}"))
            .advice("check the two dates"));
    }
    Ok(Some(days))
}
