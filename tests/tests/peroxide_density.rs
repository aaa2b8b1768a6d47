//! Density and strength of peroxide solutions against the tables, and labels in per cent by mass.

use overwater::Code;
use overwater::bounds;
use overwater::peroxide::density::{
    ConcentrationFromMass, MassFromConcentration, PeroxideDensity, Scales, density, mass_fraction,
};
use overwater::peroxide::label::Label;
use overwater::peroxide::strength::VolumeConvention;
use overwater::plan::lesson::{Lesson, Stock, Vessel};
use overwater::reference::peroxide::{DECOMPOSITION_HEAT_1982, DECOMPOSITION_HEAT_LIQUID};
use overwater::scalar::Formula;
use overwater::units::{Concentration, Dimensioned, Temperature};
use overwater_testkit::data::rows;

const DENSITIES: &str = include_str!("../data/peroxide_density.csv");
const STRENGTHS: &str = include_str!("../data/peroxide_strengths.csv");
const COLUMNS_C: [f64; 9] = [0.0, 10.0, 15.0, 18.0, 20.0, 25.0, 30.0, 40.0, 50.0];

fn number(text: &str) -> f64 {
    text.parse().unwrap_or_else(|_| panic!("{text}"))
}

#[test]
fn the_table_of_densities_to_its_last_digit() {
    let table = rows(DENSITIES);
    assert_eq!(table.len(), 27);
    let (mut through_the_door, mut old) = (0, 0);
    for row in table {
        let percent = number(row[0]);
        for (celsius, expected) in COLUMNS_C.into_iter().zip(&row[1..10]) {
            let found = density(percent / 100.0, Temperature::new(celsius + 273.15)).si() / 1000.0;
            assert!((found - number(expected)).abs() < 5.001e-5, "{percent} % at {celsius}: {found}");
            if (1.0..=40.0).contains(&percent) {
                let door = PeroxideDensity.number([percent, celsius]).unwrap();
                assert!((door / found - 1.0).abs() < 1e-14);
                through_the_door += 1;
            }
        }
        if !row[10].is_empty() {
            // International Critical Tables: within what the documentation says.
            let found: f64 = density(percent / 100.0, Temperature::new(18.0 + 273.15)).si() / 1000.0;
            let most = if percent < 60.0 { 0.001_8 } else { 0.002_6 };
            assert!((found - number(row[10])).abs() < most, "{percent} %: {found}");
            assert!((found / number(row[10]) - 1.0).abs() < 0.002, "{percent} %: {found}");
            old += 1;
        }
    }
    assert!((through_the_door, old) == (19 * 9, 14), "{through_the_door} {old}");
}

#[test]
fn the_table_of_strengths_to_its_last_digit() {
    let twenty = Temperature::new(293.15);
    let table = rows(STRENGTHS);
    assert_eq!(table.len(), 14);
    for row in table {
        let volumes = number(row[0]);
        for (molar_volume, expected) in
            [(22.413_969_54, row[1]), (22.392, row[2]), (22.710_954_64, row[3]), (24.0, row[4])]
        {
            let convention = VolumeConvention::Stated { molar_volume_dm3_per_mol: molar_volume };
            let found = convention.concentration(volumes).si() / 1000.0;
            // The column of real oxygen was made with its molar volume to more figures.
            let last = if row[2] == expected { 1.6e-4 } else { 5.001e-5 };
            assert!((found - number(expected)).abs() < last, "{volumes} vol at {molar_volume}: {found}");
        }
        let convention = VolumeConvention::ZeroDegreesOneAtmosphere;
        let scales = Scales::of(convention.concentration(volumes), twenty, convention);
        // The other program weighs peroxide with 34.0147 g/mol, 2 parts in 100 000 more than the conventional weights.
        for (found, printed) in [(scales.percent_w_v, row[5]), (scales.percent_w_w, row[6])] {
            let last = 5.01e-4 + 2.1e-5 * found;
            assert!((found - number(printed)).abs() < last, "{volumes}: {scales:?}");
        }
        assert!((scales.volume_strength_vol / volumes - 1.0).abs() < 1e-14);
        let by_parts = scales.percent_w_w * scales.density_g_per_cm3;
        assert!((by_parts / scales.percent_w_v - 1.0).abs() < 1e-13, "{volumes}: {scales:?}");
    }
}

#[test]
fn the_inverse_reaches_the_last_bits_at_every_strength() {
    for celsius in [0.0, 20.0, 55.0, 96.0] {
        let temperature = Temperature::new(celsius + 273.15);
        for step in 0..=996 {
            let fraction = f64::from(step) / 1000.0;
            let concentration = fraction * density(fraction, temperature).si() / 34.014e-3;
            let back = mass_fraction(Concentration::new(concentration), temperature);
            assert!((back - fraction).abs() < 4e-16 + 4e-16 * fraction, "{fraction} at {celsius}: {back}");
        }
        for percent in [0.02, 3.0, 6.0, 30.0, 40.0] {
            let concentration = ConcentrationFromMass.evaluate([percent, celsius]);
            if (0.005..=14.0).contains(&concentration) {
                let back = MassFromConcentration.number([concentration, celsius]).unwrap();
                assert!((back / percent - 1.0).abs() < 1e-14, "{percent}: {back}");
            }
        }
    }
}

#[test]
fn derivatives_are_slopes_through_the_inverse_too() {
    let step = 1e-4;
    let (_, [by_percent, by_t]) = PeroxideDensity.sensitivities([30.0, 20.0]).unwrap();
    let difference =
        |a: [f64; 2], b: [f64; 2]| (PeroxideDensity.evaluate(a) - PeroxideDensity.evaluate(b)) / (2.0 * step);
    assert!((by_percent / difference([30.0 + step, 20.0], [30.0 - step, 20.0]) - 1.0).abs() < 1e-6);
    assert!((by_t / difference([30.0, 20.0 + step], [30.0, 20.0 - step]) - 1.0).abs() < 1e-6);
    let (percent, [by_c, by_t]) = MassFromConcentration.sensitivities([8.0, 20.0]).unwrap();
    let (_, [c_by_percent, c_by_t]) = ConcentrationFromMass.sensitivities([percent, 20.0]).unwrap();
    // The slopes of a function and of its inverse are reciprocal; at fixed strength both move with the temperature.
    assert!((by_c * c_by_percent - 1.0).abs() < 1e-12, "{by_c} {c_by_percent}");
    assert!((by_t + c_by_t / c_by_percent).abs() < 1e-12, "{by_t}");
}

#[test]
fn a_stronger_and_a_colder_solution_is_denser() {
    for celsius in [5.0, 20.0, 60.0] {
        let values: Vec<f64> =
            (1..=40).map(|percent| PeroxideDensity.number([f64::from(percent), celsius]).unwrap()).collect();
        assert!(values.is_sorted_by(|a, b| a < b));
        let strengths: Vec<f64> = (1..=30)
            .map(|percent| ConcentrationFromMass.number([f64::from(percent), celsius]).unwrap())
            .collect();
        assert!(strengths.is_sorted_by(|a, b| a < b));
    }
    let cooled: Vec<f64> = (0..=96).map(|t| PeroxideDensity.number([30.0, f64::from(t)]).unwrap()).collect();
    assert!(cooled.is_sorted_by(|a, b| a > b));
}

#[test]
fn ranges_end_where_they_say() {
    fn ends(formula: &impl Formula<2>, inside: [f64; 2]) {
        for (index, bound) in formula.inputs().into_iter().enumerate() {
            for (limit, beyond) in
                [(bound.least, bound.least.next_down()), (bound.greatest, bound.greatest.next_up())]
            {
                let mut inputs = inside;
                inputs[index] = limit;
                assert!(formula.number(inputs).is_ok(), "{inputs:?}");
                inputs[index] = beyond;
                assert_eq!(formula.number(inputs).unwrap_err().code, Code::OutOfRange, "{inputs:?}");
            }
        }
    }
    ends(&PeroxideDensity, [30.0, 20.0]);
    ends(&ConcentrationFromMass, [30.0, 20.0]);
    ends(&MassFromConcentration, [3.0, 20.0]);
    assert_eq!((bounds::PEROXIDE_TEMPERATURE_C.least, bounds::PEROXIDE_TEMPERATURE_C.greatest), (0.0, 96.0));
}

fn lesson(density_g_per_cm3: Option<f64>, temperature_c: Option<f64>) -> Lesson {
    let mut lesson = Lesson {
        stock: Some(Stock { density_g_per_cm3, ..Stock::labelled(Label::read("30 % w/w").unwrap()) }),
        vessels: vec![Vessel { burn: Some("sulfur".to_owned()), ..Vessel::default() }],
        ..Lesson::default()
    };
    lesson.room.temperature_c = temperature_c;
    lesson
}

#[test]
fn a_lesson_with_a_label_in_per_cent_by_mass_needs_no_density_and_says_so() {
    let plan = overwater::plan::plan(&lesson(None, None)).unwrap();
    let assumption = plan.assumptions.iter().find(|taken| taken.key == "stock.density_g_per_cm3").unwrap();
    // Laliberte 2009, 30 % at 20 degC: 1.1126 g/cm3.
    assert_eq!(assumption.taken, "density computed: 1.113 g/cm3");
    assert!(assumption.why.contains("20 degC"), "{}", assumption.why);
    // 0.3 x 1112.6/34.014 mol/dm3.
    assert!((plan.stock.label.concentration_mol_per_dm3 - 9.813).abs() < 5e-4);

    let cold = overwater::plan::plan(&lesson(None, Some(10.0))).unwrap();
    let assumption = cold.assumptions.iter().find(|taken| taken.key == "stock.density_g_per_cm3").unwrap();
    assert_eq!(assumption.taken, "density computed: 1.118 g/cm3");

    let given = overwater::plan::plan(&lesson(Some(1.11), None)).unwrap();
    assert!(given.assumptions.iter().all(|taken| taken.key != "stock.density_g_per_cm3"));
    assert!((given.stock.label.concentration_mol_per_dm3 - 9.790).abs() < 5e-4);

    let mut wanted = lesson(Some(1.11), None);
    wanted.run.strength = Some(Label::read("6 % w/w").unwrap());
    let plan = overwater::plan::plan(&wanted).unwrap();
    let assumption = plan.assumptions.iter().find(|taken| taken.key == "run.strength").unwrap();
    assert_eq!(assumption.taken, "density computed: 1.020 g/cm3");
}

/// Dissolved: 285.830 - 191.17; liquid: 285.830 - 187.78; apart by the heat of dilution.
#[test]
fn the_two_heats_of_decomposition() {
    assert!((DECOMPOSITION_HEAT_1982.value - (285.830 - 191.17)).abs() < 1e-9);
    assert!((DECOMPOSITION_HEAT_LIQUID.value - (285.830 - 187.78)).abs() < 1e-9);
    assert!((DECOMPOSITION_HEAT_LIQUID.value - DECOMPOSITION_HEAT_1982.value - 3.39).abs() < 1e-9);
}
