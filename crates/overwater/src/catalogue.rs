//! Every formula by its name, for callers that choose one while the program runs.

use std::borrow::Cow;

use crate::apparatus::purity::MeanOxygenFraction;
use crate::bounds::Bound;
use crate::burn::air::RoomConcentration;
use crate::conventions::Conventions;
use crate::gas::barometer::{SeaLevelPressure, StationPressure};
use crate::gas::collected::{DryAmount, DryAmountWithVapour, DryPressure, VolumeOverWater};
use crate::gas::column::{
    ColumnHeight, ColumnPressure, ColumnPressureAt, ConventionalColumn, ConventionalColumnPressure, Liquid,
    MercuryDensity,
};
use crate::gas::gravity::{Gravity, Gravity1980};
use crate::gas::ideal::IdealMolarVolume;
use crate::gas::low_level::{LowLevelSeaLevelPressure, LowLevelStationPressure};
use crate::gas::mercury_barometer::{MercuryBarometer, Scale};
use crate::gas::solubility::{DissolvedAmount, HenryConstant, OstwaldCoefficient, OxygenSaturation};
use crate::gas::species::Gas;
use crate::gas::virial::{Compressibility, RealDensity, RealMolarVolume, SecondVirialCoefficient, Series};
use crate::peroxide::assay::{AssayedConcentration, ExpectedTitre};
use crate::peroxide::density::{ConcentrationFromMass, MassFromConcentration, PeroxideDensity};
use crate::peroxide::dilution::StockVolume;
use crate::peroxide::heat::AdiabaticRise;
use crate::peroxide::strength::{ConcentrationFromVolumes, VolumesFromConcentration};
use crate::scalar::{Formula, PropertyUncertainty, Solution, Symbol};
use crate::water::brine::{
    BrineSource, DiluteBrineVapourPressure, SaturatedBrineDensity, SaturatedBrineHumidity,
    SaturatedBrineVapourPressure,
};
use crate::water::density::tanaka::TanakaDensity;
use crate::water::density::{DensitySource, WaterDensity, WaterDensityFrom};
use crate::water::enhancement::{EnhancementFactor, EnhancementSource, VapourPressureInAir};
use crate::water::ionisation::Pkw;
use crate::water::saturated::{SaturatedLiquidDensity, SaturatedVapourDensity};
use crate::water::vapour::ice::SublimationPressure;
use crate::water::vapour::{SaturationTemperature, VapourPressure, VapourPressureFrom, VapourSource};
use crate::{Code, Error, Result, nearest};

/// A formula whose number of inputs is not known when the program is compiled.
///
/// The methods are those of [`Formula`]; values stand in the order of [`inputs`](AnyFormula::inputs).
pub trait AnyFormula: Send + Sync {
    /// Its name.
    fn name(&self) -> &str;

    /// The rows of the bounds table that its inputs obey, in order.
    fn inputs(&self) -> Vec<&'static Bound>;

    /// What it gives, and in which unit.
    fn output(&self) -> &'static Symbol;

    /// How far the relation itself may be from nature, where its source says so.
    fn property_uncertainty(&self) -> Option<&'static PropertyUncertainty>;

    /// The number.
    ///
    /// # Errors
    /// As for [`Formula::number`], and `contradiction` for a wrong number of values.
    fn number(&self, values: &[f64]) -> Result<f64>;

    /// The number and its derivative by every input.
    ///
    /// # Errors
    /// As for [`AnyFormula::number`].
    fn sensitivities(&self, values: &[f64]) -> Result<(f64, Vec<f64>)>;

    /// The number and the worked solution that leads to it.
    ///
    /// # Errors
    /// As for [`AnyFormula::number`].
    fn working(&self, values: &[f64]) -> Result<(f64, Solution)>;

    /// Whole columns.
    ///
    /// # Errors
    /// As for [`Formula::fill`], and `contradiction` for a wrong number of columns.
    fn fill(&self, columns: &[&[f64]], results: &mut [f64]) -> Result<()>;
}

/// A formula under a name: its own, or that of one of several sources, settings or gases.
struct Named<F, const IN: usize> {
    name: Cow<'static, str>,
    formula: F,
}

fn own<F: Formula<IN> + 'static, const IN: usize>(formula: F) -> Box<dyn AnyFormula> {
    named(F::NAME, formula)
}

fn named<F: Formula<IN> + 'static, const IN: usize>(
    name: impl Into<Cow<'static, str>>,
    formula: F,
) -> Box<dyn AnyFormula> {
    Box::new(Named { name: name.into(), formula })
}

fn exactly<T: Copy, const IN: usize>(name: &str, values: &[T]) -> Result<[T; IN]> {
    values.try_into().map_err(|_| {
        Error::new(Code::Contradiction, name.to_owned())
            .value(format!("{} inputs", values.len()))
            .allowed(format!("{IN} inputs"))
            .advice("give one value for each input")
    })
}

impl<F: Formula<IN>, const IN: usize> AnyFormula for Named<F, IN> {
    fn name(&self) -> &str {
        &self.name
    }

    fn inputs(&self) -> Vec<&'static Bound> {
        self.formula.inputs().to_vec()
    }

    fn output(&self) -> &'static Symbol {
        self.formula.output()
    }

    fn property_uncertainty(&self) -> Option<&'static PropertyUncertainty> {
        self.formula.property_uncertainty()
    }

    fn number(&self, values: &[f64]) -> Result<f64> {
        self.formula.number(exactly(&self.name, values)?)
    }

    fn sensitivities(&self, values: &[f64]) -> Result<(f64, Vec<f64>)> {
        let (value, slopes) = self.formula.sensitivities(exactly(&self.name, values)?)?;
        Ok((value, slopes.to_vec()))
    }

    fn working(&self, values: &[f64]) -> Result<(f64, Solution)> {
        self.formula.working(exactly(&self.name, values)?)
    }

    fn fill(&self, columns: &[&[f64]], results: &mut [f64]) -> Result<()> {
        self.formula.fill(exactly(&self.name, columns)?, results)
    }
}

/// The name of a gas's formula, as in "second_virial_carbon_dioxide".
///
/// ```
/// use overwater::catalogue;
/// assert_eq!(catalogue::of_gas("second_virial", "carbon dioxide"), "second_virial_carbon_dioxide");
/// assert!(catalogue::find("second_virial_carbon_dioxide").is_ok());
/// ```
#[must_use]
pub fn of_gas(family: &str, gas: &str) -> String {
    format!("{family}_{}", gas.replace([' ', '-'], "_"))
}

/// Every formula, with the best constants.
#[must_use]
pub fn all() -> Vec<Box<dyn AnyFormula>> {
    let mut formulas = vec![
        own(VapourPressure { supercooled: false }),
        named("vapour_pressure_cipm_2007", VapourPressureFrom { source: VapourSource::Cipm2007 }),
        named(
            "vapour_pressure_hyland_wexler_1983",
            VapourPressureFrom { source: VapourSource::HylandWexler1983 },
        ),
        named("vapour_pressure_buck_1981", VapourPressureFrom { source: VapourSource::Buck1981 }),
        named("vapour_pressure_buck_1996", VapourPressureFrom { source: VapourSource::Buck1996 }),
        named("vapour_pressure_magnus_wmo", VapourPressureFrom { source: VapourSource::MagnusWmo }),
        named("vapour_pressure_antoine", VapourPressureFrom { source: VapourSource::Antoine }),
        named("vapour_pressure_crc_1992", VapourPressureFrom { source: VapourSource::Crc1992 }),
        named("vapour_pressure_openstax_2019", VapourPressureFrom { source: VapourSource::OpenStax2019 }),
        own(SaturationTemperature),
        own(SublimationPressure),
        own(WaterDensity),
        named("water_density_kell_1975", WaterDensityFrom { source: DensitySource::Kell1975 }),
        own(TanakaDensity { air_saturated: false }),
        named("water_density_tanaka_air_saturated", TanakaDensity { air_saturated: true }),
        own(SaturatedLiquidDensity),
        own(SaturatedVapourDensity),
        named(
            "enhancement_factor_greenspan_1976",
            EnhancementFactor { source: EnhancementSource::Greenspan1976 },
        ),
        named("enhancement_factor_hardy_1998", EnhancementFactor { source: EnhancementSource::Hardy1998 }),
        named("enhancement_factor_buck_1996", EnhancementFactor { source: EnhancementSource::Buck1996 }),
        named("enhancement_factor_cipm_2007", EnhancementFactor { source: EnhancementSource::Cipm2007 }),
        own(VapourPressureInAir { source: EnhancementSource::Greenspan1976 }),
        own(SaturatedBrineHumidity { source: BrineSource::Crc }),
        named("brine_humidity_greenspan_1977", SaturatedBrineHumidity { source: BrineSource::Greenspan1977 }),
        own(SaturatedBrineVapourPressure { source: BrineSource::Crc }),
        named(
            "brine_vapour_pressure_greenspan_1977",
            SaturatedBrineVapourPressure { source: BrineSource::Greenspan1977 },
        ),
        own(DiluteBrineVapourPressure),
        own(SaturatedBrineDensity),
        own(IdealMolarVolume),
        own(StationPressure),
        own(SeaLevelPressure),
        own(LowLevelStationPressure),
        own(LowLevelSeaLevelPressure),
        own(Gravity),
        own(Gravity1980),
        own(MercuryDensity),
        own(ColumnPressure),
        own(ColumnHeight),
        named("water_column_pressure", ColumnPressureAt { liquid: Liquid::Water }),
        named("mercury_column_pressure", ColumnPressureAt { liquid: Liquid::Mercury }),
        named("conventional_mm_of_water", ConventionalColumnPressure { column: ConventionalColumn::Water }),
        named(
            "conventional_mm_of_mercury",
            ConventionalColumnPressure { column: ConventionalColumn::Mercury },
        ),
        named("torr", ConventionalColumnPressure { column: ConventionalColumn::Torr }),
        named("mercury_barometer_brass_scale", MercuryBarometer { scale: Scale::Brass }),
        named("mercury_barometer_true_scale", MercuryBarometer { scale: Scale::True }),
        own(DryAmount { conventions: Conventions::EXACT }),
        own(DryAmountWithVapour { conventions: Conventions::EXACT }),
        own(DryPressure),
        own(VolumeOverWater),
        own(ConcentrationFromVolumes),
        own(VolumesFromConcentration),
        own(StockVolume),
        own(AssayedConcentration),
        own(ExpectedTitre),
        own(AdiabaticRise),
        own(MeanOxygenFraction),
        own(PeroxideDensity),
        own(ConcentrationFromMass),
        own(MassFromConcentration),
        own(OxygenSaturation),
        own(Pkw),
        own(RoomConcentration),
    ];
    for gas in Gas::all() {
        let of_gas = |formula: &str| format!("{formula}_{}", gas.name().replace([' ', '-'], "_"));
        if let Ok(formula) = SecondVirialCoefficient::of(gas) {
            formulas.push(named(of_gas("second_virial"), formula));
        }
        if let Ok(formula) = Compressibility::of(gas, Series::Density) {
            formulas.push(named(of_gas("compressibility"), formula));
        }
        if let Ok(formula) = RealMolarVolume::of(gas, Series::Density) {
            formulas.push(named(of_gas("real_molar_volume"), formula));
        }
        if let Ok(formula) = RealDensity::of(gas, Series::Density) {
            formulas.push(named(of_gas("gas_density"), formula));
        }
        if let Ok(formula) = HenryConstant::of(gas) {
            formulas.push(named(of_gas("henry_constant"), formula));
        }
        if let Ok(formula) = OstwaldCoefficient::of(gas) {
            formulas.push(named(of_gas("ostwald_coefficient"), formula));
        }
        if let Ok(formula) = DissolvedAmount::of(gas) {
            formulas.push(named(of_gas("dissolved_amount"), formula));
        }
    }
    formulas
}

/// Examples for whoever misspells one; all of them would fill a page.
const SOME: [&str; 3] = ["vapour_pressure", "dry_amount", "molar_volume"];

/// Finds a formula by its name.
///
/// ```
/// let formula = overwater::catalogue::find("vapour_pressure")?;
/// // CRC Handbook: 2.3388 kPa at 20 degC.
/// assert!((formula.number(&[20.0])? - 2.339).abs() < 5e-4);
/// # Ok::<(), overwater::Error>(())
/// ```
///
/// # Errors
/// `unknown_name`, with the nearest name that is known.
pub fn find(name: &str) -> Result<Box<dyn AnyFormula>> {
    all().into_iter().find(|formula| formula.name() == name).ok_or_else(|| {
        let known = all();
        let names: Vec<&str> = known.iter().map(|formula| formula.name()).collect();
        let error = Error::new(Code::UnknownName, "formula").value(name).allowed(format!(
            "one of {} formulas, as {}",
            names.len(),
            SOME.join(", ")
        ));
        match nearest(name, names) {
            Some(near) => error.advice(format!("did you mean {near}?")),
            None => error.advice("list them: `overwater calculate`, or the task formulas"),
        }
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_formula_is_found_by_its_own_name_and_takes_its_number_of_inputs() {
        let all = all();
        for (index, formula) in all.iter().enumerate() {
            assert_eq!(find(formula.name()).unwrap().name(), formula.name());
            assert!(all.iter().skip(index + 1).all(|other| other.name() != formula.name()));
            let inputs = formula.inputs();
            for (place, bound) in inputs.iter().enumerate() {
                let again = inputs.iter().skip(place + 1).any(|other| other.name == bound.name);
                assert!(!again, "{} has two inputs with the name {}", formula.name(), bound.name);
            }
            let middle: Vec<f64> = inputs.iter().map(|bound| bound.least).collect();
            let error = formula.number(&middle[1..]).unwrap_err();
            assert_eq!(error.code, Code::Contradiction);
            assert_eq!(&*error.allowed, format!("{} inputs", inputs.len()));
        }
        let error = find("vapor_pressure").err().unwrap();
        assert_eq!(&*error.advice, "did you mean vapour_pressure?");
    }

    #[test]
    fn the_doors_are_those_of_the_formula() {
        let erased = find("dry_amount").unwrap();
        let (plain, values) = (DryAmount::default(), [86.5, 21.0, 100.36, 12.0]);
        let number = plain.number(values).unwrap();
        assert_eq!(erased.number(&values), Ok(number));
        let (value, slopes) = erased.sensitivities(&values).unwrap();
        assert_eq!((value, slopes), (number, plain.sensitivities(values).unwrap().1.to_vec()));
        assert_eq!(erased.working(&values).unwrap().0, number);
        let mut results = [0.0; 2];
        let columns = values.map(|value| [value; 2]);
        let columns: Vec<&[f64]> = columns.iter().map(|column| column.as_slice()).collect();
        erased.fill(&columns, &mut results).unwrap();
        assert_eq!(results, [number; 2]);
    }
}
