//! Readings to results: the sizes and signs of the corrections, published examples through the practicals, and what must
//! not matter.

use overwater::chem::{Formula as Substance, Weights};
use overwater::conventions::Conventions;
use overwater::gas::collected::DryAmount;
use overwater::readings::reduction::{Chain, Collector, Correction, Corrections};
use overwater::readings::{Experiment, Outcome, Practical, Quantity, Reference, Row, WaterAfterBurning};
use overwater::scalar::{Formula, Marked, Notation, Script, Sensitivities, Symbol};
use overwater::symbols;
use overwater_exchange::reduction::answer::ReductionAnswer;
use overwater_exchange::reduction::{reduce, reduce_table};
use overwater_exchange::{reduction_from_json, reduction_from_toml};
use overwater_testkit::compare::{Tolerance, assert_close, assert_prints, assert_same_bits};
use proptest::prelude::*;

const ATMOSPHERE: f64 = 101.325;
/// Conventional millimetre of mercury [kPa].
const MMHG: f64 = 0.133_322_387_415;

fn row(readings: &[(Quantity, f64)]) -> Row<f64> {
    readings.iter().fold(Row::new(), |row, (quantity, value)| row.with(*quantity, *value))
}

fn collected(collector: Collector) -> Experiment {
    Experiment { chain: Chain { collector, ..Chain::default() }, ..Experiment::default() }
}

fn practical(practical: Practical) -> Experiment {
    Experiment { practical, ..Experiment::default() }
}

fn value(outcome: &Outcome<f64>, symbol: &Symbol) -> f64 {
    outcome.get(symbol).unwrap_or_else(|| panic!("no {} in {outcome:?}", symbol.id))
}

fn first(experiment: &Experiment, readings: &[(Quantity, f64)]) -> f64 {
    experiment.results(&row(readings)).unwrap().results[0].1
}

/// (change of the amount, change of the first result) if a correction is left out, in per cent.
fn size(experiment: &Experiment, readings: &[(Quantity, f64)], correction: Correction) -> (f64, f64) {
    let sizes = experiment.corrections(&row(readings)).unwrap();
    let found = sizes.iter().find(|size| size.correction == correction);
    let found = found.unwrap_or_else(|| panic!("{} is not among {sizes:?}", correction.name()));
    (found.amount_percent, found.result_percent)
}

fn molar_mass(formula: &str) -> f64 {
    Substance::parse(formula).unwrap().molar_mass(Weights::Exact).unwrap().value_g_per_mol
}

fn over_water(temperature: f64, pressure: f64) -> [(Quantity, f64); 3] {
    [(Quantity::Volume, 80.0), (Quantity::Temperature, temperature), (Quantity::Pressure, pressure)]
}

/// Figures of the trade, computed for a gas at 101.325 kPa (common practice, no source).
#[test]
fn vapour_left_out() {
    for (temperature, percent) in
        [(15.0, 1.7), (18.0, 2.1), (20.0, 2.4), (22.0, 2.7), (25.0, 3.2), (30.0, 4.4), (40.0, 7.9)]
    {
        let (amount, _) =
            size(&collected(Collector::OverWater), &over_water(temperature, ATMOSPHERE), Correction::Vapour);
        assert_close(&format!("at {temperature} degC"), amount, percent, Tolerance::Absolute(0.1));
    }
}

#[test]
fn level_left_out() {
    let mut readings = over_water(20.0, ATMOSPHERE).to_vec();
    readings.push((Quantity::InsideMinusOutside, 100.0));
    let (higher, _) = size(&collected(Collector::OverWater), &readings, Correction::Level);
    assert_close("10 cm of water, higher inside", higher, 0.97, Tolerance::Absolute(0.1));
    readings[3].1 = -100.0;
    let (lower, _) = size(&collected(Collector::OverWater), &readings, Correction::Level);
    assert_close("10 cm of water, lower inside", lower, -0.97, Tolerance::Absolute(0.1));
    // Read as mercury it is 13.6 times as much: 13.33 kPa by the definition of the millimetre of mercury.
    readings[3].1 = 100.0;
    let over_mercury = first(&collected(Collector::OverMercury), &readings);
    let without = readings[..3].to_vec();
    let dry = ATMOSPHERE - 2.339_193;
    let expected = first(&collected(Collector::OverWater), &without) * (dry - 100.0 * MMHG) / dry;
    assert_close("mercury", over_mercury, expected, Tolerance::Relative(1e-7));
}

/// The trade gives the fall of pressure as a share of the sea-level pressure, (p0 - p)/p0; a correction's size is here a
/// share of the right amount, which is n(without)/n - 1.
#[test]
fn sea_level_pressure_not_reduced() {
    for (altitude, percent) in
        [(50.0, 0.6), (100.0, 1.2), (150.0, 1.8), (200.0, 2.4), (300.0, 3.5), (400.0, 4.7)]
    {
        let readings = [
            (Quantity::Volume, 80.0),
            (Quantity::Temperature, 20.0),
            (Quantity::SeaLevelPressure, ATMOSPHERE),
            (Quantity::Altitude, altitude),
        ];
        let mut dry = collected(Collector::OverWater);
        dry.chain.corrections = dry.chain.corrections.without(Correction::Vapour);
        let right = first(&dry, &readings);
        dry.chain.corrections = dry.chain.corrections.without(Correction::Altitude);
        let share = 100.0 * (1.0 - right / first(&dry, &readings));
        assert_close(&format!("{altitude} m, of p0"), share, percent, Tolerance::Absolute(0.1));
        let (own, _) = size(&collected(Collector::OverWater), &readings, Correction::Altitude);
        // With the vapour pressure 2.339 kPa: (p0 - pw)/(p - pw) - 1.
        let station = ATMOSPHERE * right / first(&dry, &readings);
        let expected = 100.0 * ((ATMOSPHERE - 2.339_193) / (station - 2.339_193) - 1.0);
        assert_close(&format!("{altitude} m, of n"), own, expected, Tolerance::Absolute(1e-4));
    }
}

#[test]
fn a_room_molar_volume_on_wet_gas() {
    for (temperature, pressure, percent) in
        [(20.0, 101.3, 2.6), (22.0, 99.0, 6.1), (25.0, 98.0, 8.9), (15.0, 104.0, -2.4)]
    {
        let text = format!(
            "format = 1\n[[rows]]\nvolume_cm3 = 80\ntemperature_c = {temperature}\npressure_kpa = {pressure}\n"
        );
        let answer = reduce(&reduction_from_toml(&text).unwrap(), None).unwrap();
        let found = answer.rows[0].corrections.iter().find(|found| found.name.starts_with("24_dm3")).unwrap();
        let path = format!("{temperature} degC, {pressure} kPa");
        assert_close(&path, found.amount_percent.unwrap(), percent, Tolerance::Absolute(0.1));
    }
}

#[test]
fn vapour_carried_off_with_a_loss_of_mass() {
    for (gas, figures) in [
        ("O2", &[(20.0, 1.3), (40.0, 4.4), (60.0, 13.8)][..]),
        ("CO2", &[(20.0, 1.0), (40.0, 3.2), (60.0, 10.0)][..]),
        ("H2", &[(20.0, 21.0)][..]),
    ] {
        for (temperature, percent) in figures {
            let readings = [
                (Quantity::MassLoss, 0.5),
                (Quantity::Temperature, *temperature),
                (Quantity::Pressure, ATMOSPHERE),
                (Quantity::GasMolarMass, molar_mass(gas)),
            ];
            let (amount, _) = size(&collected(Collector::MassLoss), &readings, Correction::CarriedVapour);
            // 14 and 21 are printed whole.
            let tolerance = if *percent > 20.0 { 0.5 } else { 0.1 };
            assert_close(&format!("{gas} {temperature}"), amount, *percent, Tolerance::Absolute(tolerance));
        }
    }
}

/// "86.5 cm3 over water, 21.0 degC, weather report 1021 hPa, 145 m up": figures of the trade, all computed.
#[test]
fn one_reading_with_everything() {
    let readings = [
        (Quantity::Volume, 86.5),
        (Quantity::Temperature, 21.0),
        (Quantity::SeaLevelPressure, 102.1),
        (Quantity::Altitude, 145.0),
    ];
    let experiment = collected(Collector::OverWater);
    assert_prints("n", first(&experiment, &readings), "3.461");
    let (altitude, _) = size(&experiment, &readings, Correction::Altitude);
    let (vapour, _) = size(&experiment, &readings, Correction::Vapour);
    assert_prints("altitude", altitude, "1.8");
    assert_prints("vapour", vapour, "2.5");
}

/// The signs that a scheme for butane over water asks for, with the size of each.
#[test]
fn which_way_the_molar_mass_goes() {
    let experiment = practical(Practical::GasMolarMass);
    let mut readings = over_water(20.0, ATMOSPHERE).to_vec();
    readings.extend([
        (Quantity::MassBefore, 17.850),
        (Quantity::MassAfter, 17.658),
        (Quantity::InsideMinusOutside, 100.0),
    ]);
    // Vapour ignored: n too high by 2.4 %, M too low by 2.3 %.
    let (amount, result) = size(&experiment, &readings, Correction::Vapour);
    assert_close("n", amount, 2.39, Tolerance::Absolute(0.01));
    assert_close("M", result, -2.33, Tolerance::Absolute(0.01));
    // Water higher inside, pressure taken as that of the room: M too low; lower inside: M too high.
    assert!(size(&experiment, &readings, Correction::Level).1 < -0.9);
    readings[5].1 = -100.0;
    assert!(size(&experiment, &readings, Correction::Level).1 > 0.9);
    // Gas escaped: V too low, M too high. Lighter left wet: mass after too high, M too low.
    let given = row(&readings);
    let slope = |wanted: Quantity| {
        let duals = given.map(|quantity, value| {
            if quantity == wanted {
                Sensitivities::<1>::input(value, 0)
            } else {
                overwater::scalar::Scalar::number(value)
            }
        });
        let outcome = experiment.evaluate(&duals).unwrap();
        let molar_mass = outcome.results[0].1;
        molar_mass.derivatives()[0] / molar_mass.value()
    };
    assert_close("d ln M/d V", slope(Quantity::Volume), -1.0 / 80.0, Tolerance::Relative(1e-12));
    assert_close("d ln M/d m", slope(Quantity::MassAfter), -1.0 / 0.192, Tolerance::Relative(1e-10));
}

/// A. Scott, Phil. Trans. R. Soc. A 184 (1893) pp. 553-554: volumes in arbitrary units, reduced to 0 degC and 760 mm. The
/// page's dry pressures and the vapour pressure of 13.0 mm at 15.4 degC; the gas moist over mercury. 288.4 K is 15.4 + 273.
#[test]
fn scott_1893() {
    let mut experiment = collected(Collector::OverMercury);
    experiment.reference = Reference::Conditions;
    let reduced = |volume: f64, dry: f64, column: f64| {
        let readings = [
            (Quantity::Volume, volume),
            (Quantity::Temperature, 288.4 - 273.15),
            (Quantity::Pressure, (dry + 13.0 + column) * MMHG),
            (Quantity::InsideMinusOutside, column),
            (Quantity::VapourPressure, 13.0 * MMHG),
            (Quantity::ReferenceTemperature, 273.0 - 273.15),
            (Quantity::ReferencePressure, 760.0 * MMHG),
        ];
        value(&experiment.results(&row(&readings)).unwrap(), &symbols::REFERENCE_VOLUME)
    };
    // Whatever the mercury stands higher inside, the barometer stands higher by: the result is the same.
    for column in [-20.0, 0.0, 12.5] {
        let oxygen = reduced(3881.0, 737.8, column);
        let hydrogen = reduced(3823.5, 739.2, column);
        assert_close("oxygen", oxygen, 3566.4, Tolerance::Absolute(0.051));
        // Cut off in the source: 3520.28.
        assert_close("hydrogen", hydrogen, 3520.2, Tolerance::Absolute(0.1));
    }
    assert_prints("ratio of the volumes", 7034.2 / 3514.3, "2.0016");
}

/// McPherson and Henderson 1906, chapter on oxygen: cut off in the source (442.96).
#[test]
fn reduced_to_zero_and_760() {
    let mut experiment = collected(Collector::OverWater);
    experiment.reference = Reference::Conditions;
    let readings = [
        (Quantity::Volume, 500.0),
        (Quantity::Temperature, 20.0),
        (Quantity::Pressure, 740.0 * MMHG),
        (Quantity::VapourPressure, 17.4 * MMHG),
        (Quantity::ReferenceTemperature, 0.0),
        (Quantity::ReferencePressure, 760.0 * MMHG),
    ];
    let outcome = experiment.results(&row(&readings)).unwrap();
    assert_close("V", value(&outcome, &symbols::REFERENCE_VOLUME), 442.96, Tolerance::Absolute(0.005));
}

/// OpenStax, Chemistry 2e, section 9.3: chloroform and cyclopropane.
#[test]
fn molar_masses_of_vapours() {
    let mut experiment = practical(Practical::VapourMolarMass);
    experiment.chain.collector = Collector::Syringe;
    for (mass, volume, temperature, pressure, printed) in [
        (0.494, 129.0, 99.6, 742.1 * MMHG, "120"),
        (1.56, 1000.0, 323.0 - 273.15, 0.984 * ATMOSPHERE, "42.0"),
    ] {
        let readings = [
            (Quantity::MassLoss, mass),
            (Quantity::Volume, volume),
            (Quantity::Temperature, temperature),
            (Quantity::Pressure, pressure),
            (Quantity::RelativeSaturation, 0.0),
        ];
        assert_prints(printed, first(&experiment, &readings), printed);
    }
}

/// OpenStax, Chemistry 2e, section 9.4 exercises.
#[test]
fn effusion() {
    let effusion = |time: f64, known: f64, molar_mass: f64| {
        let readings =
            [(Quantity::Time, time), (Quantity::KnownTime, known), (Quantity::KnownMolarMass, molar_mass)];
        first(&practical(Practical::Effusion), &readings)
    };
    assert_prints("8.97 times as slow as hydrogen", effusion(8.97, 1.0, 2.016), "162");
    // Neon takes 95.3 s where xenon takes 243 s: 20.2 g/mol.
    assert_prints("neon", effusion(95.3, 243.0, 131.3), "20.2");
    // Oxygen takes 4 times as long as hydrogen (3.984 with their real masses).
    assert_prints("oxygen", effusion(3.984, 1.0, 2.016), "32.00");
}

/// Metals from their hydrogen: 0.0243 g of magnesium give 1 mmol.
#[test]
fn metals_and_carbonates() {
    let amount = first(&collected(Collector::OverWater), &over_water(20.0, ATMOSPHERE));
    let mut readings = over_water(20.0, ATMOSPHERE).to_vec();
    readings.extend([(Quantity::Mass, 0.2), (Quantity::MoleRatio, 0.5)]);
    // Two lithium for each hydrogen: M = m/(2 n).
    let lithium = first(&practical(Practical::MetalMolarMass), &readings);
    assert_close("M", lithium, 0.2 / (2.0 * amount * 1e-3), Tolerance::Relative(1e-14));
    readings.push((Quantity::ReagentMolarMass, molar_mass("CaCO3")));
    readings[4].1 = 1.0;
    readings[3].1 = 0.5;
    let purity = first(&practical(Practical::CarbonatePurity), &readings);
    // n M/m by hand.
    assert_close("w", purity, 100.0 * amount * 1e-3 * molar_mass("CaCO3") / 0.5, Tolerance::Relative(1e-14));
    let carbonate = first(&practical(Practical::CarbonateMolarMass), &readings);
    assert_close("M", carbonate, 0.5 / (amount * 1e-3), Tolerance::Relative(1e-14));
}

/// 50.0 cm3 of 1.00 mol/dm3 acid, 22.0 cm3 of 1.00 mol/dm3 alkali: 14 mmol of carbonate, 1.4012 g of CaCO3.
#[test]
fn back_titration() {
    let mut readings = vec![
        (Quantity::AcidConcentration, 1.0),
        (Quantity::AcidVolume, 50.0),
        (Quantity::AlkaliConcentration, 1.0),
        (Quantity::Titre, 22.0),
        (Quantity::Mass, 1.5),
        (Quantity::ReagentMolarMass, 100.086),
    ];
    let experiment = practical(Practical::CarbonateBackTitration);
    assert_prints("w", first(&experiment, &readings), "93.414");
    // 25.0 of 250 cm3 titrated with a tenth of the concentration: the same acid is left.
    readings[2].1 = 0.1;
    readings.extend([(Quantity::MadeUpTo, 250.0), (Quantity::Aliquot, 25.0)]);
    assert_prints("w", first(&experiment, &readings), "93.414");
    readings[3].1 = 51.0;
    let error = experiment.results(&row(&readings)).unwrap_err();
    assert_eq!((error.code.name(), &*error.parameter), ("contradiction", "titre_cm3"));
}

/// 10 cm3 of ethane with 50 of oxygen: 35 used, 20 of CO2 made, 15 left; as steam the water takes 30.
#[test]
fn eudiometry() {
    for (water, burnt) in [(WaterAfterBurning::Liquid, 35.0), (WaterAfterBurning::Gas, 65.0)] {
        let readings = [
            (Quantity::SampleGas, 10.0),
            (Quantity::MixedGas, 60.0),
            (Quantity::BurntGas, burnt),
            (Quantity::WashedGas, burnt - 20.0),
        ];
        let outcome = practical(Practical::Eudiometry(water)).results(&row(&readings)).unwrap();
        assert_eq!(value(&outcome, &symbols::CARBON_NUMBER), 2.0);
        assert_eq!(value(&outcome, &symbols::HYDROGEN_NUMBER), 6.0);
        assert_close("left", value(&outcome, &symbols::OXYGEN_LEFT), 15.0, Tolerance::Relative(1e-12));
    }
}

/// The average is below the initial rate: 5 % at a tenth, 10 % at a fifth, 28 % at a half (computed, first order).
#[test]
fn time_to_a_volume() {
    for (volume, bias) in [(10.0, -5.1), (20.0, -10.4), (50.0, -27.9)] {
        let readings = [(Quantity::Volume, volume), (Quantity::Time, 40.0), (Quantity::FinalVolume, 100.0)];
        let outcome = practical(Practical::TimeToVolume).results(&row(&readings)).unwrap();
        assert_close("1/t", value(&outcome, &symbols::RECIPROCAL_TIME), 0.025, Tolerance::Relative(1e-15));
        assert_close("V/t", value(&outcome, &symbols::MEAN_RATE), volume / 40.0, Tolerance::Relative(1e-14));
        assert_close("bias", value(&outcome, &symbols::AVERAGE_BIAS), bias, Tolerance::Absolute(0.05));
    }
}

/// 100 cm3 of carbon dioxide at 20 degC weigh 0.183 g and displace 0.12 g of air.
#[test]
fn a_weighed_gas() {
    let experiment = practical(Practical::GasDensity);
    let readings = [
        (Quantity::Volume, 100.0),
        (Quantity::Temperature, 20.0),
        (Quantity::Pressure, ATMOSPHERE),
        (Quantity::MassFilled, 142.5625),
        (Quantity::MassWithAir, 142.5000),
    ];
    let outcome = experiment.results(&row(&readings)).unwrap();
    // By hand: 0.0625 g + 28.9644 g/mol x 4.1571 mmol = 0.1829 g.
    assert_prints("density", value(&outcome, &symbols::WEIGHED_DENSITY), "1.829");
    assert_prints("M", value(&outcome, &symbols::MOLAR_MASS), "44.00");
    let lacking = Corrections::ALL.without(Correction::Buoyancy);
    let mut without = experiment;
    without.chain.corrections = lacking;
    let bare = without.results(&row(&readings)).unwrap();
    let air = value(&outcome, &symbols::WEIGHED_DENSITY) - value(&bare, &symbols::WEIGHED_DENSITY);
    assert_prints("air", air, "1.2");
    assert_close(
        "size",
        size(&experiment, &readings, Correction::Buoyancy).1,
        -65.8,
        Tolerance::Absolute(0.1),
    );
}

#[test]
fn the_chain_is_the_formula_of_the_columns() {
    for conventions in [Conventions::EXACT, Conventions::CLASSROOM] {
        let chain = Chain { conventions, ..Chain::default() };
        let experiment = Experiment { chain, ..Experiment::default() };
        let values = [86.5, 21.0, 100.36, 12.0];
        let readings = [
            (Quantity::Volume, values[0]),
            (Quantity::Temperature, values[1]),
            (Quantity::Pressure, values[2]),
            (Quantity::InsideMinusOutside, values[3]),
        ];
        let by_formula = DryAmount { conventions }.number(values).unwrap();
        assert_eq!(first(&experiment, &readings).to_bits(), by_formula.to_bits());
        let solution = experiment.working(&row(&readings)).unwrap();
        let last = solution.steps(Notation::Text).pop().unwrap();
        assert_eq!((last.symbol.id, last.value.to_bits()), ("amount", by_formula.to_bits()));
    }
}

/// A plain number, a worked solution, a derivative and a marking go through the same operations.
#[test]
fn every_practical_agrees_with_itself_in_every_reading() {
    let all = Quantity::ALL.iter().fold(Row::new(), |row, quantity| {
        let value = match quantity {
            Quantity::Volume => 80.0,
            Quantity::Temperature | Quantity::ReferenceTemperature => 20.0,
            Quantity::Pressure | Quantity::SeaLevelPressure | Quantity::ReferencePressure => 101.3,
            Quantity::Altitude => 100.0,
            Quantity::InsideMinusOutside => 30.0,
            Quantity::VapourPressure => 2.3,
            Quantity::RelativeSaturation => 0.5,
            Quantity::MassBefore | Quantity::MassFilled => 12.5,
            Quantity::MassAfter | Quantity::MassWithAir => 12.3,
            Quantity::MassLoss => 0.2,
            Quantity::FinalVolume => 100.0,
            Quantity::MixedGas => 60.0,
            Quantity::BurntGas => 50.0,
            Quantity::StatedMolarVolume => 24.0,
            Quantity::WashedGas => 15.0,
            Quantity::AcidConcentration => 3.0,
            Quantity::AlkaliConcentration => 1.0,
            _ => 10.0,
        };
        row.with(*quantity, value)
    });
    for practical in Practical::ALL {
        for collector in
            [Collector::OverWater, Collector::OverMercury, Collector::Syringe, Collector::MassLoss]
        {
            let chain = Chain { collector, ..Chain::default() };
            let experiment = Experiment { chain, practical, reference: Reference::Conditions };
            let plain = experiment.results(&all).unwrap();
            let script = Script::new();
            let marked = experiment.evaluate(&all.map(|_, value| Marked::input(&script, value))).unwrap();
            let duals =
                experiment.evaluate(&all.map(|_, value| Sensitivities::<1>::input(value, 0))).unwrap();
            assert!(!plain.results.is_empty());
            for (index, (symbol, value)) in plain.results.iter().enumerate() {
                let place = format!("{} {} {collector:?}", practical.name(), symbol.id);
                assert_same_bits(&place, marked.results[index].1.value(), *value);
                assert_same_bits(&place, duals.results[index].1.value(), *value);
            }
            let solution = experiment.working(&all).unwrap();
            let steps = solution.steps(Notation::Text);
            let worked = steps.iter().rev().find(|step| step.symbol.id == plain.results[0].0.id).unwrap();
            assert_same_bits(practical.name(), worked.value, plain.results[0].1);
        }
    }
}

fn table(text: &str) -> ReductionAnswer {
    reduce_table(&reduction_from_toml("format = 1\n").unwrap(), text.as_bytes(), None).unwrap()
}

#[test]
fn json_and_toml_rows_are_those_of_a_table() {
    let toml = "format = 1\n[[rows]]\ngroup = \"A\"\nvolume_cm3 = 45\ntemperature_k = 293.15\npressure_mbar = 1009.5\n";
    let json = r#"{"format": 1, "rows": [{"group": "A", "volume_dm3": 0.045, "temperature_c": 20, "pressure_kpa": 100.95}]}"#;
    let from_toml = reduce(&reduction_from_toml(toml).unwrap(), None).unwrap();
    let from_json = reduce(&reduction_from_json(json).unwrap(), None).unwrap();
    let from_table = table("group,volume_cm3,temperature_c,pressure_hpa\nA,45,20,1009.5\n");
    let amount = |answer: &ReductionAnswer| answer.rows[0].results[0].value;
    assert_close("toml", amount(&from_toml), amount(&from_table), Tolerance::Relative(1e-13));
    assert_close("json", amount(&from_json), amount(&from_table), Tolerance::Relative(1e-13));
    assert_eq!(from_toml.rows[0].label.as_deref(), Some("A"));
}

fn reduced(rows: &[String]) -> Result<ReductionAnswer, Box<overwater_exchange::Refusal>> {
    reduce(&reduction_from_json(&format!(r#"{{"format": 1, "rows": [{}]}}"#, rows.join(",")))?, None)
}

/// A row of the reduction's own kind, with more cells.
fn cells(more: &str) -> String {
    format!(r#"{{"volume_cm3": 45, "temperature_c": 20, "pressure_kpa": 100.9{more}}}"#)
}

#[test]
fn of_rows_that_are_at_hand_every_one_is_told_of() {
    let mut rows = vec![cells(""); 450];
    rows.extend(vec![cells("").replace("45", "-1"); 450]);
    let answer = reduced(&rows).unwrap();
    assert_eq!((answer.rows.len(), answer.bad_rows.len()), (450, 450));
    assert_eq!((answer.rows_read, answer.rows_good), (900, 450));
    assert_eq!(answer.rows[449].results, answer.rows[0].results);
    assert_eq!(answer.bad_rows[449].row, 900);
}

#[test]
fn a_name_that_nearly_stands_for_a_reading_is_refused_and_one_that_stands_for_nothing_is_noted() {
    let misspelt = cells("").replace("volume_cm3", "volum_cm3");
    let refusal = reduced(&[cells(""), misspelt]).unwrap_err();
    assert_eq!(
        (refusal.path.as_str(), refusal.advice.as_str()),
        ("rows[1].volum_cm3", "did you mean volume_cm3?")
    );
    let no_unit = cells("").replace("volume_cm3", "volume");
    assert_eq!(reduced(&[no_unit]).unwrap_err().code, "ambiguous");

    let labelled = cells(r#", "run": 7, "label": "A", "weather": "rain", "students": 2"#);
    let answer = reduced(&[labelled, cells(r#", "label": 3"#), cells("")]).unwrap();
    assert_eq!(answer.notes, ["columns not used: run, students, weather"]);
    let labels: Vec<Option<&str>> = answer.rows.iter().map(|row| row.label.as_deref()).collect();
    assert_eq!(labels, [Some("A"), Some("3"), None]);
    let wrong = reduced(&[cells("").replace("45", "\"45\"")]).unwrap();
    assert_eq!(
        (wrong.bad_rows[0].column.as_str(), wrong.bad_rows[0].code.as_str()),
        ("volume_cm3", "syntax")
    );
    let twice = reduced(&[cells(r#", "volume_ml": 45"#)]).unwrap();
    assert_eq!(
        (twice.bad_rows[0].column.as_str(), twice.bad_rows[0].code.as_str()),
        ("volume_ml", "given_twice")
    );
}

/// Past the rows that are kept, a whole batch goes through the columns' door: the same numbers.
#[test]
fn a_long_table_is_summed_as_a_short_one() {
    let line =
        |row: usize| format!("{},{},100.95\n", 40.0 + (row % 37) as f64 * 0.25, 18.0 + (row % 11) as f64);
    let rows = 20_000;
    let text: String = (0..rows).map(line).collect();
    let answer = table(&format!("volume_cm3,temperature_c,pressure_kpa\n{text}"));
    assert_eq!((answer.rows_read, answer.rows_good, answer.rows.len()), (20_000, 20_000, 200));
    let amounts: Vec<f64> = (0..rows)
        .map(|row| {
            let values = [40.0 + (row % 37) as f64 * 0.25, 18.0 + (row % 11) as f64, 100.95, 0.0];
            DryAmount::default().number(values).unwrap()
        })
        .collect();
    let mean = amounts.iter().sum::<f64>() / rows as f64;
    let squares: f64 = amounts.iter().map(|amount| (amount - mean).powi(2)).sum();
    assert_close("mean", answer.summary[0].mean, mean, Tolerance::Relative(1e-12));
    let deviation = answer.summary[0].standard_deviation.unwrap();
    assert_close("s", deviation, (squares / (rows - 1) as f64).sqrt(), Tolerance::Relative(1e-10));
}

proptest! {
    #[test]
    fn units_do_not_matter(
        volume in 5.0..500.0_f64, celsius in 1.0..60.0_f64, pressure in 85.0..108.0_f64, level in -150.0..150.0_f64,
    ) {
        let school = table(&format!(
            "volume_cm3,temperature_c,pressure_kpa,inside_minus_outside_mm\n{volume},{celsius},{pressure},{level}\n"
        ));
        for (head, values) in [
            ("volume_dm3,temperature_k,pressure_mmhg,inside_minus_outside_cm",
                [volume / 1e3, celsius + 273.15, pressure / MMHG, level / 10.0]),
            ("volume_l,temperature_c,pressure_hpa,inside_minus_outside_m",
                [volume / 1e3, celsius, pressure * 10.0, level / 1e3]),
            ("volume_ml,temperature_k,pressure_atm,inside_minus_outside_mm",
                [volume, celsius + 273.15, pressure / ATMOSPHERE, level]),
        ] {
            let cells = values.map(|value| value.to_string()).join(",");
            let other = table(&format!("{head}\n{cells}\n"));
            let (one, two) = (school.rows[0].results[0].value, other.rows[0].results[0].value);
            prop_assert!((one / two - 1.0).abs() < 1e-12, "{one} and {two} with {head}");
        }
    }

    #[test]
    fn the_order_of_the_rows_does_not_matter(
        rows in proptest::collection::vec((20.0..90.0_f64, 10.0..30.0_f64), 2..20), turn in 0..20_usize,
    ) {
        let text = |rows: &[(f64, f64)]| {
            let lines: String = rows.iter().map(|(volume, celsius)| format!("{volume},{celsius},100\n")).collect();
            table(&format!("volume_cm3,temperature_c,pressure_kpa\n{lines}"))
        };
        let mut turned = rows.clone();
        let by = turn % rows.len();
        turned.rotate_left(by);
        let (one, two) = (text(&rows), text(&turned));
        for index in 0..rows.len() {
            let other = &two.rows[(index + rows.len() - by) % rows.len()];
            prop_assert_eq!(&one.rows[index].results, &other.results);
        }
        prop_assert!((one.summary[0].mean / two.summary[0].mean - 1.0).abs() < 1e-13);
        prop_assert_eq!(one.summary[0].least, two.summary[0].least);
    }
}
