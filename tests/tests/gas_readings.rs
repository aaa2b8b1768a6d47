//! Every reading of the formulas for gases, solubility, peroxide density, ionisation and species gives the same bits.

use overwater::burn::thermo::{Property, SpeciesProperty};
use overwater::gas::solubility::{
    BunsenCoefficient, DissolvedAmount, HenryConstant, HenryEquation, OstwaldCoefficient, OxygenSaturation,
    SaltingOutFactor,
};
use overwater::gas::species::Gas;
use overwater::gas::virial::{
    Compressibility, MoistMolarVolume, RealDensity, RealMolarVolume, SecondVirialCoefficient, Series,
};
use overwater::peroxide::density::{ConcentrationFromMass, MassFromConcentration, PeroxideDensity};
use overwater::reference::nasa9::SPECIES_2002;
use overwater::scalar::{Formula, Notation, Script};
use overwater::water::ionisation::Pkw;

const STEPS: u32 = 6;

/// Points of a grid over all bounds, ends included.
fn grid<const IN: usize>(formula: &impl Formula<IN>) -> Vec<[f64; IN]> {
    let bounds = formula.inputs();
    (0..(STEPS + 1).pow(IN as u32))
        .map(|mut index| {
            bounds.map(|bound| {
                let step = index % (STEPS + 1);
                index /= STEPS + 1;
                // The end itself, not a sum that rounds past it.
                if step == STEPS {
                    bound.greatest
                } else {
                    bound.least + (bound.greatest - bound.least) * f64::from(step) / f64::from(STEPS)
                }
            })
        })
        .collect()
}

/// How many of the grid's points have a result.
fn same_bits<const IN: usize, F: Formula<IN>>(formula: &F) -> usize {
    let points = grid(formula);
    let columns: [Vec<f64>; IN] =
        std::array::from_fn(|input| points.iter().map(|point| point[input]).collect());
    let mut filled = vec![0.0; points.len()];
    formula.fill(columns.each_ref().map(Vec::as_slice), &mut filled).unwrap();
    let mut results = 0;
    for (point, filled) in points.into_iter().zip(filled) {
        let Ok(number) = formula.number(point) else {
            assert!(filled.is_nan(), "{} {point:?}: {filled}", F::NAME);
            continue;
        };
        let bits = number.to_bits();
        let (value, slopes) = formula.sensitivities(point).unwrap();
        assert!(slopes.iter().all(|slope| slope.is_finite()), "{} {point:?}: {slopes:?}", F::NAME);
        let marked = formula.marked(point, &Script::new());
        for (reading, other) in [("columns", filled), ("slopes", value), ("marked", marked)] {
            assert_eq!(other.to_bits(), bits, "{} {point:?}: {reading} {other} and {number}", F::NAME);
        }
        if results % 20 == 0 {
            // Writing a solution out takes long.
            let (worked, solution) = formula.working(point).unwrap();
            assert!(!solution.steps(Notation::Text).is_empty(), "{}", F::NAME);
            assert_eq!(worked.to_bits(), bits, "{} {point:?}: working {worked} and {number}", F::NAME);
        }
        results += 1;
    }
    results
}

#[test]
fn real_gases() {
    let mut gases = 0;
    for gas in Gas::all() {
        let Ok(virial) = SecondVirialCoefficient::of(gas) else { continue };
        assert_eq!(same_bits(&virial), 7);
        for series in [Series::Density, Series::Pressure] {
            assert_eq!(same_bits(&Compressibility::of(gas, series).unwrap()), 49);
            assert_eq!(same_bits(&RealMolarVolume::of(gas, series).unwrap()), 49);
            assert_eq!(same_bits(&RealDensity::of(gas, series).unwrap()), 49);
        }
        if let Ok(moist) = MoistMolarVolume::of(gas) {
            assert!(same_bits(&moist) > 49, "{gas:?}");
        }
        gases += 1;
    }
    assert_eq!(gases, 21);
}

#[test]
fn solubility() {
    for gas in Gas::all() {
        for equation in [HenryEquation::of(gas), HenryEquation::iapws(gas), HenryEquation::reviewed(gas)] {
            let Ok(equation) = equation else { continue };
            assert_eq!(same_bits(&HenryConstant { equation }), 7);
            assert_eq!(same_bits(&OstwaldCoefficient { equation }), 7);
            assert_eq!(same_bits(&BunsenCoefficient { equation }), 7);
            assert_eq!(same_bits(&DissolvedAmount { equation }), 343);
        }
    }
    assert_eq!(same_bits(&OxygenSaturation), 343);
    let brine = SaltingOutFactor::of(Gas::Hydrogen, &[("Na+", 1), ("Cl-", 1)]).unwrap();
    assert_eq!(same_bits(&brine), 7);
}

#[test]
fn peroxide_water_and_species() {
    assert_eq!(same_bits(&PeroxideDensity), 49);
    assert_eq!(same_bits(&ConcentrationFromMass), 49);
    assert_eq!(same_bits(&MassFromConcentration), 49);
    assert_eq!(same_bits(&Pkw), 7);
    let mut points = 0;
    for range in SPECIES_2002.iter().flat_map(|species| species.ranges) {
        for property in [Property::HeatCapacity, Property::Enthalpy, Property::Entropy] {
            points += same_bits(&SpeciesProperty { property, range });
        }
    }
    assert!(points > 300, "{points}");
}
