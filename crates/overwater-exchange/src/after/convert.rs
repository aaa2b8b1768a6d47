//! From the core's results to answers.

use overwater::burn::air::{Check, RoomAir, Unit};
use overwater::burn::aqueous::InWater;
use overwater::burn::tidying::Tidying;
use overwater::plan::{AfterAnswer, AfterBurn};
use overwater::reference::exposure_limits::AveragedOver;

use super::answer::*;

impl From<&InWater> for InWaterAnswer {
    fn from(from: &InWater) -> Self {
        InWaterAnswer {
            product: from.product.formula.to_owned(),
            reaction: from.reaction.clone(),
            reaction_unicode: from.reaction_unicode.clone(),
            amount_mmol: from.amount_mmol,
            dissolved_mmol: from.dissolved_mmol,
            concentration_mol_per_dm3: from.concentration_mol_per_dm3,
            pressure_kpa: from.pressure_kpa,
            ph: from.ph,
            ph_ideal: from.ph_ideal,
            ph_without_peroxide: from.ph_without_peroxide,
            neutral_ph: from.neutral_ph,
            ionic_strength_mol_per_dm3: from.ionic_strength,
            dilute: from.is_dilute,
            universal_indicator: from.universal_indicator.to_owned(),
            litmus: from.litmus.to_owned(),
            note: from.product.note.to_owned(),
        }
    }
}

impl From<&Check> for LimitAnswer {
    fn from(from: &Check) -> Self {
        let limit = from.limit;
        LimitAnswer {
            country: limit.body.country().to_owned(),
            document: limit.document.to_owned(),
            name: limit.name.to_owned(),
            averaged_over: match limit.averaged_over {
                AveragedOver::Instant => "any moment".to_owned(),
                AveragedOver::Minutes(minutes) => format!("{minutes} min"),
                AveragedOver::Hours(hours) => format!("{hours} h"),
            },
            unit: match from.unit {
                Unit::Ppm => "ppm",
                Unit::MilligramPerCubicMetre => "mg/m3",
            }
            .to_owned(),
            allowed: from.allowed,
            verified: limit.verified,
            found: from.found,
            exceeded: from.is_exceeded(),
            minutes_until_below: from.minutes_until_below,
            air_needed_m3: from.air_needed_m3,
        }
    }
}

impl From<&RoomAir> for RoomAirAnswer {
    fn from(from: &RoomAir) -> Self {
        let (quarter, day) = (from.share_over_15_min, from.share_over_8_h);
        RoomAirAnswer {
            name: from.airborne.name.to_owned(),
            released_mmol: from.released_mmol,
            released_cm3: from.released_cm3,
            peak_ppm: from.peak_ppm,
            peak_mg_per_m3: from.peak_mg_per_m3,
            mean_15_min_ppm: from.peak_ppm.map(|peak| peak * quarter),
            mean_15_min_mg_per_m3: from.peak_mg_per_m3 * quarter,
            mean_8_h_ppm: from.peak_ppm.map(|peak| peak * day),
            mean_8_h_mg_per_m3: from.peak_mg_per_m3 * day,
            fume_cupboard: from.needs_fume_cupboard(),
            advice: from.advice().to_owned(),
            limits: from.checks.iter().map(Into::into).collect(),
        }
    }
}

impl From<&Tidying> for TidyingAnswer {
    fn from(from: &Tidying) -> Self {
        TidyingAnswer {
            reagent: from.neutraliser.map(|with| with.reagent.to_owned()),
            reagent_mmol: from.neutraliser.map(|with| with.amount_mmol),
            reagent_cm3: from.neutraliser.map(|with| with.volume_cm3),
            text: from.text.to_owned(),
        }
    }
}

impl From<&AfterAnswer> for AfterProductAnswer {
    fn from(from: &AfterAnswer) -> Self {
        AfterProductAnswer {
            role: from.role.words().to_owned(),
            product: from.product.clone(),
            product_unicode: from.product_unicode.clone(),
            product_mmol: from.product_mmol,
            product_g: from.product_g,
            gas: from.is_gas,
            heat_kj: from.heat_kj,
            left_g: from.left_g,
            oxygen_mmol: from.gas.oxygen_mmol,
            made_mmol: from.gas.made_mmol,
            volume_cm3: from.gas.volume_cm3,
            water_rise_cm3: from.gas.water_rise_cm3,
            in_water: from.in_water.as_ref().map(Into::into),
            air_of_one: from.air_of_one.as_ref().map(Into::into),
            air_of_all: from.air_of_all.as_ref().map(Into::into),
            tidying: (&from.tidying).into(),
        }
    }
}

impl From<&AfterBurn> for AfterBurnAnswer {
    fn from(from: &AfterBurn) -> Self {
        AfterBurnAnswer {
            vessel: from.vessel.clone(),
            oxygen_mmol: from.oxygen_mmol,
            nitrogen_mmol: from.nitrogen_mmol,
            sample_mmol: from.sample_mmol,
            water_cm3: from.water_cm3,
            flame_c: from.flame_c,
            answers: from.answers.iter().map(Into::into).collect(),
        }
    }
}
