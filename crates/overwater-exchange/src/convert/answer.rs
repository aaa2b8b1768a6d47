//! From the core's plan to an answer.

use overwater::burn::tidying::DISPOSAL_DEFERENCE;
use overwater::caution::DEFERENCE;
use overwater::plan::lesson::{Funnel, Kind, Lesson};
use overwater::plan::{self as core, Plan};
use overwater::scalar::{Constant, Source};

use crate::FORMAT;
use crate::answer::*;
use crate::request::{FunnelRequest, KindRequest, LessonRequest};
use crate::schedule::ScheduleAnswer;

/// The answer to a lesson that has been planned.
pub(crate) fn plan(
    request: &LessonRequest,
    lesson: &Lesson,
    plan: &Plan,
    schedule: ScheduleAnswer,
) -> PlanAnswer {
    PlanAnswer {
        format: FORMAT,
        library_version: env!("CARGO_PKG_VERSION").to_owned(),
        title: request.title.clone(),
        date: lesson.date.map(|date| date.to_string()),
        place: (&plan.place).into(),
        stock: (&plan.stock).into(),
        requisition: (&plan.requisition).into(),
        gas: (&plan.gas).into(),
        filling: (&plan.filling).into(),
        additions: (&plan.additions).into(),
        schedule,
        back_pressure: (&plan.back_pressure).into(),
        suck_back: (&plan.suck_back).into(),
        burns: all(&plan.burns),
        after: all(&plan.after),
        disposal_deference: DISPOSAL_DEFERENCE.to_owned(),
        cautions: all(&plan.cautions),
        deference: DEFERENCE.to_owned(),
        assumptions: all(&plan.assumptions),
        constants: plan.constants.iter().copied().map(Into::into).collect(),
        relations: plan.relations.iter().copied().map(Into::into).collect(),
    }
}

fn all<'a, From, To>(from: &'a [From]) -> Vec<To>
where
    To: std::convert::From<&'a From>,
{
    from.iter().map(To::from).collect()
}

impl From<Kind> for KindRequest {
    fn from(kind: Kind) -> Self {
        match kind {
            Kind::Jar => KindRequest::Jar,
            Kind::Tube => KindRequest::Tube,
        }
    }
}

impl From<Funnel> for FunnelRequest {
    fn from(funnel: Funnel) -> Self {
        match funnel {
            Funnel::Open => FunnelRequest::Open,
            Funnel::Tap => FunnelRequest::Tap,
        }
    }
}

impl From<&core::Place> for PlaceAnswer {
    fn from(from: &core::Place) -> Self {
        PlaceAnswer {
            temperature_c: from.temperature_c,
            pressure_kpa: from.pressure_kpa,
            sea_level_pressure_kpa: from.sea_level.map(|(pressure, _)| pressure),
            altitude_m: from.sea_level.map(|(_, altitude)| altitude),
            room_volume_m3: from.room_volume_m3,
            air_changes_per_hour: from.air_changes_per_hour,
        }
    }
}

impl From<&core::Strength> for StrengthAnswer {
    fn from(from: &core::Strength) -> Self {
        StrengthAnswer {
            concentration_mol_per_dm3: from.concentration_mol_per_dm3,
            volume_strength_vol: from.volume_strength_vol,
            percent_w_v: from.percent_w_v,
        }
    }
}

impl From<&core::ConventionReading> for ConventionAnswer {
    fn from(from: &core::ConventionReading) -> Self {
        ConventionAnswer {
            convention: from.convention.clone(),
            concentration_mol_per_dm3: from.concentration_mol_per_dm3,
        }
    }
}

impl From<&overwater::peroxide::assay::AssayDesign> for AssayDesignAnswer {
    fn from(from: &overwater::peroxide::assay::AssayDesign) -> Self {
        AssayDesignAnswer {
            sample_cm3: from.sample_cm3,
            made_up_to_cm3: from.made_up_to_cm3,
            aliquot_cm3: from.aliquot_cm3,
            permanganate_mol_per_dm3: from.permanganate_mol_per_dm3,
            expected_titre_cm3: from.expected_titre_cm3,
            glassware_percent: from.glassware_percent,
        }
    }
}

impl From<&core::StockReport> for StockAnswer {
    fn from(from: &core::StockReport) -> Self {
        StockAnswer {
            convention: from.convention.words(),
            convention_was_given: from.convention_was_given,
            readings: all(&from.readings),
            label: (&from.label).into(),
            strength: (&from.strength).into(),
            fraction_of_label: from.fraction_of_label,
            days_open: from.days_open,
            assay_design: from.assay_design.as_ref().map(Into::into),
            run: (&from.run).into(),
        }
    }
}

impl From<&core::Dilution> for DilutionAnswer {
    fn from(from: &core::Dilution) -> Self {
        DilutionAnswer { stock_cm3: from.stock_cm3, made_up_to_cm3: from.made_up_to_cm3 }
    }
}

impl From<&core::SampleLine> for SampleAnswer {
    fn from(from: &core::SampleLine) -> Self {
        SampleAnswer {
            name: from.name.to_owned(),
            form: from.form.to_owned(),
            mass_g: from.mass_g,
            count: from.count,
        }
    }
}

impl From<&core::Requisition> for RequisitionAnswer {
    fn from(from: &core::Requisition) -> Self {
        RequisitionAnswer {
            groups: from.groups,
            sets: from.sets,
            theory_cm3: from.theory_cm3,
            collection_efficiency_fraction: from.collection_efficiency_fraction,
            with_efficiency_cm3: from.with_efficiency_cm3,
            issue_cm3: from.issue_cm3,
            issue_in_all_cm3: from.issue_in_all_cm3,
            dilution: from.dilution.as_ref().map(Into::into),
            catalyst: from.catalyst.clone(),
            catalyst_g: from.catalyst_g,
            catalyst_in_all_g: from.catalyst_in_all_g,
            jars: from.jars,
            tubes: from.tubes,
            covers: from.covers,
            bungs: from.bungs,
            spoons: from.spoons,
            tongs: from.tongs,
            splints: from.splints,
            indicator_cm3: from.indicator_cm3,
            jar_water_cm3: from.jar_water_cm3,
            samples: all(&from.samples),
        }
    }
}

impl From<&core::VesselGas> for GasAnswer {
    fn from(from: &core::VesselGas) -> Self {
        GasAnswer { moist_cm3: from.moist_cm3, dry_cm3: from.dry_cm3, amount_mmol: from.amount_mmol }
    }
}

impl From<&core::GasBudget> for GasBudgetAnswer {
    fn from(from: &core::GasBudget) -> Self {
        GasBudgetAnswer {
            vapour_pressure_kpa: from.vapour_pressure_kpa,
            dry_pressure_kpa: from.dry_pressure_kpa,
            vessels: all(&from.vessels),
            rejected: (&from.rejected).into(),
            total: (&from.total).into(),
        }
    }
}

impl From<&core::VesselFilling> for VesselFillingAnswer {
    fn from(from: &core::VesselFilling) -> Self {
        VesselFillingAnswer {
            name: from.name.clone(),
            kind: from.kind.into(),
            from_cm3: from.from_cm3,
            to_cm3: from.to_cm3,
            oxygen_fraction: from.oxygen_fraction,
            wanted_fraction: from.wanted_fraction,
            good_enough: from.is_good_enough(),
            burn: from.burn.map(str::to_owned),
            suits: from.suits.iter().map(|name| (*name).to_owned()).collect(),
        }
    }
}

impl From<&core::OxygenBalance> for OxygenBalanceAnswer {
    fn from(from: &core::OxygenBalance) -> Self {
        OxygenBalanceAnswer {
            made_cm3: from.made_cm3,
            from_air_cm3: from.from_air_cm3,
            in_vessels_cm3: from.in_vessels_cm3,
            in_rejected_cm3: from.in_rejected_cm3,
            left_in_flask_cm3: from.left_in_flask_cm3,
        }
    }
}

impl From<&core::Filling> for FillingAnswer {
    fn from(from: &core::Filling) -> Self {
        FillingAnswer {
            free_volume_cm3: from.free_volume_cm3,
            rejected_cm3: from.rejected_cm3,
            rejected_was_given: from.rejected_was_given,
            least_rejected_cm3: from.least_rejected_cm3,
            vessels: all(&from.vessels),
            curve: from
                .curve
                .iter()
                .map(|&(passed_cm3, oxygen_fraction)| CurvePoint { passed_cm3, oxygen_fraction })
                .collect(),
            oxygen: (&from.oxygen).into(),
        }
    }
}

impl From<&core::Additions> for AdditionsAnswer {
    fn from(from: &core::Additions) -> Self {
        AdditionsAnswer {
            peroxide_cm3: from.peroxide_cm3,
            heel_cm3: from.heel_cm3,
            rise_by_itself_k: from.rise_by_itself_k,
            rise_at_once_k: from.rise_at_once_k,
            end_temperature_c: from.end_temperature_c,
            boiling_point_c: from.boiling_point_c,
            boils: from.boils,
            steam_share_at_once: from.steam_share_at_once,
            portion_cm3: from.portion_cm3,
            portions: from.portions,
            rise_per_portion_k: from.rise_per_portion_k,
            steam_share_per_portion: from.steam_share_per_portion,
            gas_per_portion_cm3: from.gas_per_portion_cm3,
            flask_filled_fraction: from.flask_filled_fraction,
        }
    }
}

impl From<&core::BackPressures> for BackPressureAnswer {
    fn from(from: &core::BackPressures) -> Self {
        BackPressureAnswer {
            flow_cm3_per_s: from.flow_cm3_per_s,
            depth_kpa: from.depth_kpa,
            friction_kpa: from.friction_kpa,
            bubble_kpa: from.bubble_kpa,
            total_kpa: from.total_kpa,
            stem_rise_cm: from.stem_rise_cm,
            stem_length_cm: from.stem_length_cm,
            margin_cm: from.margin_cm,
        }
    }
}

impl From<&core::SuckBack> for SuckBackAnswer {
    fn from(from: &core::SuckBack) -> Self {
        SuckBackAnswer {
            from_c: from.from_c,
            shrinkage: from.shrinkage,
            drawn_cm3: from.drawn_cm3,
            tube_cm3: from.tube_cm3,
            reaches_flask: from.reaches_flask,
            funnel: from.funnel.into(),
        }
    }
}

impl From<&core::BurnAnswer> for BurnAnswerRow {
    fn from(from: &core::BurnAnswer) -> Self {
        BurnAnswerRow {
            role: from.role.words().to_owned(),
            equation: from.equation.clone(),
            equation_unicode: from.equation_unicode.clone(),
            product: from.product.clone(),
            product_unicode: from.product_unicode.clone(),
            product_g: from.product_g,
            oxygen_used_mmol: from.oxygen_used_mmol,
            share_of_oxygen: from.share_of_oxygen,
            greatest_sample_g: from.greatest_sample_g,
        }
    }
}

impl From<&core::BurnPlan> for BurnAnswer {
    fn from(from: &core::BurnPlan) -> Self {
        BurnAnswer {
            vessel: from.vessel.clone(),
            sample: from.sample.to_owned(),
            formula: from.formula.to_owned(),
            form: from.form.to_owned(),
            sample_g: from.sample_g,
            oxygen_mmol: from.oxygen_mmol,
            answers: all(&from.answers),
        }
    }
}

impl From<&overwater::caution::Caution> for CautionAnswer {
    fn from(from: &overwater::caution::Caution) -> Self {
        CautionAnswer {
            id: from.id.to_owned(),
            topic: from.topic.to_owned(),
            text: from.text.clone(),
            because: from.because.clone(),
        }
    }
}

impl From<&core::Assumption> for AssumptionAnswer {
    fn from(from: &core::Assumption) -> Self {
        AssumptionAnswer { key: from.key.clone(), taken: from.taken.clone(), why: from.why.clone() }
    }
}

impl From<&Constant> for ConstantAnswer {
    fn from(from: &Constant) -> Self {
        ConstantAnswer {
            id: from.symbol.id.to_owned(),
            symbol: from.symbol.text.to_owned(),
            name: from.symbol.name.to_owned(),
            value: from.value,
            unit: from.symbol.unit.text.to_owned(),
            standard_uncertainty: from.standard_uncertainty,
            source: from.symbol.source.map(|source| source.text.to_owned()).unwrap_or_default(),
            year: from.symbol.source.and_then(|source| source.year),
        }
    }
}

impl From<&Source> for RelationAnswer {
    fn from(from: &Source) -> Self {
        RelationAnswer { source: from.text.to_owned(), year: from.year }
    }
}
