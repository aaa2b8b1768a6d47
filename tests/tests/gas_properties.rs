//! Real gases against reference equations of state, the handbook, humid air and the ideal gas.

use std::collections::BTreeMap;

use overwater::Code;
use overwater::bounds;
use overwater::chem::{Formula as Chemical, Weights};
use overwater::gas::ideal::IdealMolarVolume;
use overwater::gas::species::Gas;
use overwater::gas::virial::{
    Compressibility, MoistMolarVolume, RealDensity, RealMolarVolume, SecondVirialCoefficient, Series,
    WaterCross, air_water_virial, water_virial,
};
use overwater::reference::gases::{GASES_2021, SECOND_VIRIALS_2026};
use overwater::scalar::Formula;
use overwater::units::{Dimensioned, Temperature};
use overwater_testkit::data::rows;

const VOLUMES: &str = include_str!("../data/molar_volumes_reference_equations.csv");
const VIRIALS: &str = include_str!("../data/second_virial_reference_equations.csv");
const HUMID: &str = include_str!("../data/humid_air_molar_volumes.csv");

fn number(text: &str) -> f64 {
    text.parse().unwrap_or_else(|_| panic!("{text}"))
}

/// The permanent gases that the target of 0.01 % is set for.
const FINE: [Gas; 4] = [Gas::Oxygen, Gas::Nitrogen, Gas::Hydrogen, Gas::CarbonDioxide];

fn worst(series: Series) -> BTreeMap<Gas, f64> {
    let mut worst: BTreeMap<Gas, f64> = BTreeMap::new();
    for row in rows(VOLUMES) {
        let [gas, temperature, pressure, volume] = row[..] else { panic!("{row:?}") };
        let gas = Gas::read(gas).unwrap();
        let formula = RealMolarVolume::of(gas, series).unwrap();
        let found = formula.number([number(temperature), number(pressure)]).unwrap();
        let percent = (found / number(volume) - 1.0).abs() * 100.0;
        let most = worst.entry(gas).or_default();
        *most = most.max(percent);
    }
    worst
}

#[test]
fn molar_volumes_of_the_reference_equations() {
    let worst = worst(Series::Density);
    assert_eq!(worst.len(), 19);
    for (gas, percent) in &worst {
        println!("{:20} {percent:.5} %", gas.name());
        let target = if FINE.contains(gas) { 0.01 } else { 0.1 };
        assert!(*percent < target, "{gas:?}: {percent} %");
        // What the table promises is kept and not padded.
        let promised = gas.second_virial().unwrap().molar_volume_difference_percent.unwrap();
        assert!(
            *percent <= promised + 1e-6 && *percent > promised * 0.85,
            "{gas:?}: {percent} of {promised}"
        );
    }
    assert!(FINE.iter().all(|gas| worst[gas] < 0.003));
}

#[test]
fn the_textbook_series_is_worse_where_the_documentation_says_so() {
    let worst = worst(Series::Pressure);
    assert!((0.15..0.25).contains(&worst[&Gas::Butane]), "{}", worst[&Gas::Butane]);
    assert!(FINE.iter().all(|gas| worst[gas] < 0.01), "{worst:?}");
}

#[test]
fn second_virial_coefficients() {
    let mut compared = 0;
    for row in rows(VIRIALS) {
        let [gas, temperature, handbook, equation] = row[..] else { panic!("{row:?}") };
        let celsius = number(temperature) - 273.15;
        if gas == "H2O" {
            // Only within mixtures; the handbook is 7 to 11 % off here, as it says.
            let found = water_virial(Temperature::new(number(temperature))).si() * 1e6;
            assert!((found - number(equation)).abs() < 0.03, "{row:?}: {found}");
            compared += 1;
            continue;
        }
        let gas = Gas::read(gas).unwrap();
        let Ok(row_of_gas) = gas.second_virial() else { panic!("{gas:?} has no coefficient") };
        let formula = SecondVirialCoefficient::of(gas).unwrap();
        let celsius = if gas == Gas::Butane && celsius < 5.0 {
            let refused = formula.number([celsius]).unwrap_err();
            assert_eq!(refused.code, Code::OutOfRange);
            continue;
        } else {
            celsius.max(0.0)
        };
        let found = formula.number([celsius]).unwrap();
        match row_of_gas.fit_difference_cm3_per_mol {
            Some(difference) => {
                // Both are printed to 0.01 cm3/mol.
                assert!((found - number(equation)).abs() <= difference + 0.005_01, "{row:?}: {found}");
                match row_of_gas.handbook_difference_cm3_per_mol {
                    Some(most) => {
                        assert!((found - number(handbook)).abs() <= most + 0.005_01, "{row:?}: {found}");
                    }
                    None => assert_eq!(handbook, "", "{row:?}"),
                }
            }
            None => assert!((found - number(handbook)).abs() < 0.005_01, "{row:?}: {found}"),
        }
        compared += 1;
    }
    assert_eq!(compared, 21 * 8 - 1);
    let handbook_only: Vec<Gas> = SECOND_VIRIALS_2026
        .iter()
        .filter(|row| row.fit_difference_cm3_per_mol.is_none())
        .map(|row| row.gas)
        .collect();
    assert_eq!(handbook_only, [Gas::Ethyne, Gas::NitrogenMonoxide]);
    for row in &SECOND_VIRIALS_2026 {
        // What a worked solution names as the source is the row's own.
        let formula = SecondVirialCoefficient::of(row.gas).unwrap();
        assert_eq!(formula.output().source, Some(row.source), "{:?}", row.gas);
    }
}

#[test]
fn every_gas_asked_for_has_a_coefficient_and_the_others_say_that_they_have_none() {
    for name in "O2 N2 air H2 CO2 CO CH4 C2H4 C3H8 C4H10 N2O NO SO2 NH3 Cl2 H2S Ar He".split(' ') {
        assert!(Gas::read(name).unwrap().second_virial().is_ok(), "{name}");
    }
    let refused: Vec<Gas> = Gas::all().filter(|gas| gas.second_virial().is_err()).collect();
    assert_eq!(
        refused,
        [Gas::NitrogenDioxide, Gas::Ozone, Gas::Neon, Gas::Krypton, Gas::Xenon, Gas::SulfurHexafluoride]
    );
    let error = RealMolarVolume::of(Gas::Ozone, Series::Density).unwrap_err();
    assert_eq!(error.code, Code::CannotBeMet);
    assert!(error.to_string().contains("ozone"), "{error}");
}

#[test]
fn molar_masses_are_those_of_the_formulas() {
    for row in &GASES_2021 {
        let Some(formula) = row.formula else {
            assert_eq!(row.molar_mass.value, 28.96546, "CIPM-2007");
            continue;
        };
        let exact = Chemical::parse(formula).unwrap().molar_mass(Weights::Exact).unwrap().value_g_per_mol;
        assert!((row.molar_mass.value - exact).abs() < 1e-9, "{formula}: {exact}");
    }
}

/// The formulas of every gas that has data, with temperatures in the middle and at both ends.
fn each(mut check: impl FnMut(Gas, f64, f64)) {
    for row in &SECOND_VIRIALS_2026 {
        let least = if row.gas == Gas::Butane { 5.0 } else { 0.0 };
        for temperature in [least, 20.0, 37.5, 100.0] {
            for pressure in [0.001, 5.0, 101.325, 120.0] {
                check(row.gas, temperature, pressure);
            }
        }
    }
}

#[test]
fn the_limit_of_no_pressure_is_the_ideal_gas() {
    for row in &SECOND_VIRIALS_2026 {
        let factor = Compressibility::of(row.gas, Series::Density).unwrap();
        let virial = SecondVirialCoefficient::of(row.gas).unwrap().number([20.0]).unwrap();
        for pressure in [1e-3, 1e-2] {
            let distance = factor.number([20.0, pressure]).unwrap() - 1.0;
            // B p/(R T), in cm3/mol times kPa over 1000 J/mol.
            let slope = virial * pressure / (8.314_462_618 * 293.15) / 1e3;
            assert!((distance - slope).abs() < 1e-9, "{:?}: {distance} and {slope}", row.gas);
        }
    }
    // Helium and hydrogen are less compressible than the ideal gas, carbon dioxide and butane more.
    for (gas, above) in
        [(Gas::Helium, true), (Gas::Hydrogen, true), (Gas::CarbonDioxide, false), (Gas::Butane, false)]
    {
        let factor = Compressibility::of(gas, Series::Density).unwrap().number([20.0, 101.325]).unwrap();
        assert_eq!(factor > 1.0, above, "{gas:?}: {factor}");
    }
}

#[test]
fn volume_density_and_factor_are_one_statement() {
    each(|gas, temperature, pressure| {
        let state = [temperature, pressure];
        let ideal = IdealMolarVolume.evaluate(state);
        for series in [Series::Density, Series::Pressure] {
            let factor = Compressibility::of(gas, series).unwrap().number(state).unwrap();
            let volume = RealMolarVolume::of(gas, series).unwrap().number(state).unwrap();
            let density = RealDensity::of(gas, series).unwrap().number(state).unwrap();
            let mass = gas.row().unwrap().molar_mass.value;
            assert!((volume / (factor * ideal) - 1.0).abs() < 1e-14, "{gas:?} {state:?}");
            assert!((density * volume / mass - 1.0).abs() < 1e-14, "{gas:?} {state:?}");
        }
        // p = (R T/V)(1 + B/V) undoes the density series.
        let volume = RealMolarVolume::of(gas, Series::Density).unwrap().number(state).unwrap();
        let virial = SecondVirialCoefficient::of(gas).unwrap().number([temperature]).unwrap() / 1e3;
        let back = 8.314_462_618_153_24 * (temperature + 273.15) / volume * (1.0 + virial / volume);
        assert!((back / pressure - 1.0).abs() < 1e-13, "{gas:?} {state:?}: {back}");
    });
}

#[test]
fn derivatives_are_slopes() {
    each(|gas, temperature, pressure| {
        // Central differences inside the range.
        let (t, p) = (temperature.clamp(6.0, 99.0), pressure.clamp(0.01, 119.0));
        let (step_t, step_p) = (1e-3, p * 1e-4);
        let virial = SecondVirialCoefficient::of(gas).unwrap();
        let (_, [slope]) = virial.sensitivities([t]).unwrap();
        let difference = (virial.evaluate([t + step_t]) - virial.evaluate([t - step_t])) / (2.0 * step_t);
        assert!((slope - difference).abs() < 1e-7 * (1.0 + slope.abs()), "{gas:?}: {slope} {difference}");
        let volume = RealMolarVolume::of(gas, Series::Density).unwrap();
        let (_, [by_t, by_p]) = volume.sensitivities([t, p]).unwrap();
        let d_t = (volume.evaluate([t + step_t, p]) - volume.evaluate([t - step_t, p])) / (2.0 * step_t);
        let d_p = (volume.evaluate([t, p + step_p]) - volume.evaluate([t, p - step_p])) / (2.0 * step_p);
        assert!((by_t / d_t - 1.0).abs() < 1e-7, "{gas:?}: {by_t} {d_t}");
        assert!((by_p / d_p - 1.0).abs() < 1e-6, "{gas:?}: {by_p} {d_p}");
        assert!(by_t > 0.0 && by_p < 0.0, "a gas expands with heat and shrinks under pressure");
    });
}

#[test]
fn attraction_weakens_with_temperature() {
    for row in SECOND_VIRIALS_2026.iter().filter(|row| row.gas != Gas::Helium) {
        let virial = SecondVirialCoefficient::of(row.gas).unwrap();
        let values: Vec<f64> = (5..=100).map(|t| virial.number([f64::from(t)]).unwrap()).collect();
        assert!(values.is_sorted_by(|a, b| a < b), "{:?}", row.gas);
    }
}

#[test]
fn ranges_end_where_they_say() {
    for row in &SECOND_VIRIALS_2026 {
        let temperature =
            if row.gas == Gas::Butane { &bounds::BUTANE_TEMPERATURE_C } else { &bounds::TEMPERATURE_C };
        let pressure = &bounds::REAL_GAS_PRESSURE_KPA;
        let volume = RealMolarVolume::of(row.gas, Series::Density).unwrap();
        assert_eq!(volume.inputs(), [temperature, pressure]);
        for (bound, place) in [(temperature, 0), (pressure, 1)] {
            for (limit, beyond) in
                [(bound.least, bound.least.next_down()), (bound.greatest, bound.greatest.next_up())]
            {
                let mut state = [20.0, 100.0];
                state[place] = limit;
                assert!(volume.number(state).is_ok(), "{:?} {state:?}", row.gas);
                state[place] = beyond;
                assert_eq!(
                    volume.number(state).unwrap_err().code,
                    Code::OutOfRange,
                    "{:?} {state:?}",
                    row.gas
                );
                let mut filled = [0.0];
                volume.fill([&[state[0]], &[state[1]]], &mut filled).unwrap();
                assert!(filled[0].is_nan(), "{:?} {state:?}", row.gas);
            }
        }
    }
    assert_eq!((bounds::BUTANE_TEMPERATURE_C.least, bounds::REAL_GAS_PRESSURE_KPA.greatest), (5.0, 120.0));
}

#[test]
fn air_and_water() {
    // IAPWS G8-10, check values at 200, 300 and 400 K.
    for (temperature, expected) in
        [(200.0, -0.784_874_277_752e-4), (300.0, -0.295_672_747_428e-4), (400.0, -0.100_804_610_474e-4)]
    {
        let found: f64 = air_water_virial(Temperature::new(temperature)).si();
        assert!((found / expected - 1.0).abs() < 1e-11, "{temperature} K: {found:e}");
    }
    let air = MoistMolarVolume::of(Gas::Air).unwrap();
    let table = rows(HUMID);
    assert_eq!(table.len(), 30);
    for row in table {
        let [temperature, pressure, fraction, volume] = row[..] else { panic!("{row:?}") };
        let found = air.number([number(temperature), number(pressure), number(fraction)]).unwrap();
        // The other model has third coefficients too; water's shows in the fourth figure with 67 % of vapour at 80 degC.
        let near = match number(fraction) {
            little if little < 0.1 => 1e-5,
            much if much < 0.45 => 4e-5,
            _ => 1.5e-4,
        };
        assert!((found / number(volume) - 1.0).abs() < near, "{row:?}: {found}");
    }
    // Without vapour it is dry air.
    let dry = RealMolarVolume::of(Gas::Air, Series::Density).unwrap();
    assert_eq!(air.number([20.0, 101.325, 0.0]), dry.number([20.0, 101.325]));
}

#[test]
fn moist_gases_by_an_estimate_say_how_good_it_is() {
    let estimates: Vec<Gas> =
        Gas::all().filter(|gas| matches!(WaterCross::of(*gas), Ok(WaterCross::Estimate { .. }))).collect();
    assert_eq!(estimates, [Gas::Oxygen, Gas::Nitrogen, Gas::Hydrogen, Gas::CarbonDioxide, Gas::Methane]);
    for gas in estimates {
        let moist = MoistMolarVolume::of(gas).unwrap();
        assert_eq!(moist.inputs()[0], &bounds::ESTIMATED_MOIST_TEMPERATURE_C);
        assert_eq!(moist.number([35.0_f64.next_up(), 101.325, 0.02]).unwrap_err().code, Code::OutOfRange);
        assert_eq!(moist.number([5.0_f64.next_down(), 101.325, 0.001]).unwrap_err().code, Code::OutOfRange);
        let uncertainty = WaterCross::of(gas).unwrap().uncertainty_cm3_per_mol();
        assert!((8.0..=25.0).contains(&uncertainty), "{gas:?}");
        // 2 y (1 - y) u p/(R T) at 20 degC, 101.325 kPa, saturated: small beside everything that is measured.
        let y = 0.0231;
        let relative = 2.0 * y * (1.0 - y) * uncertainty * 1e-6 * 101_325.0 / (8.314_462_618 * 293.15);
        assert!(relative < 5e-5, "{gas:?}: {relative}");
    }
    assert_eq!(WaterCross::of(Gas::Air).unwrap().uncertainty_cm3_per_mol(), 3.0);
    assert_eq!(MoistMolarVolume::of(Gas::SulfurDioxide).unwrap_err().code, Code::CannotBeMet);
}

#[test]
fn more_vapour_than_saturates_the_gas_is_refused() {
    let air = MoistMolarVolume::of(Gas::Air).unwrap();
    // 2.339 kPa of vapour saturate air at 20 degC: 2.31 % of 101.325 kPa.
    assert!(air.number([20.0, 101.325, 0.0231]).is_ok());
    let error = air.number([20.0, 101.325, 0.024]).unwrap_err();
    assert_eq!((error.code, error.parameter.as_ref()), (Code::Contradiction, "water_fraction"));
    assert_eq!(air.number([20.0, 101.325, -f64::MIN_POSITIVE]).unwrap_err().code, Code::OutOfRange);
    assert!(air.number([100.0, 101.325, 0.7]).is_ok());
    assert_eq!(air.number([100.0, 101.325, 0.7_f64.next_up()]).unwrap_err().code, Code::OutOfRange);
}
