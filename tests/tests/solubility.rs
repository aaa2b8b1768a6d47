//! Gases in water against the published check values and tables.

use overwater::Code;
use overwater::bounds;
use overwater::gas::solubility::{
    BunsenCoefficient, DissolvedAmount, HenryConstant, HenryEquation, OstwaldCoefficient, OxygenSaturation,
    SaltingOutFactor, iapws_fugacity, oxygen_fugacity,
};
use overwater::gas::species::Gas;
use overwater::reference::henry::{HENRY_2004, HENRY_2015, SALTING_OUT_GASES_1993, SALTING_OUT_IONS_1993};
use overwater::reference::over_water::{OVER_WATER, OverWater};
use overwater::scalar::Formula;
use overwater::units::{Dimensioned, Temperature};
use overwater_testkit::data::rows;

const OXYGEN: &str = include_str!("../data/oxygen_in_water.csv");

fn number(text: &str) -> f64 {
    text.parse().unwrap_or_else(|_| panic!("{text}"))
}

/// ln(k/GPa) at 300, 400, 500 and 600 K: the check table of IAPWS G7-04 (from memory).
const CHECK_2004: [(&str, [f64; 4]); 14] = [
    ("He", [2.6576, 2.1660, 1.1973, -0.1993]),
    ("Ne", [2.5134, 2.3512, 1.5952, 0.4659]),
    ("Ar", [1.4061, 1.8079, 1.1536, 0.0423]),
    ("Kr", [0.8210, 1.4902, 0.9798, 0.0006]),
    ("Xe", [0.2792, 1.1430, 0.5033, -0.7081]),
    ("H2", [1.9702, 1.8464, 1.0513, -0.1848]),
    ("N2", [2.1716, 2.3509, 1.4842, 0.1647]),
    ("O2", [1.5024, 1.8832, 1.1630, -0.0276]),
    ("CO", [1.7652, 1.9939, 1.1250, -0.2382]),
    ("CO2", [-1.7508, -0.5450, -0.6524, -1.3489]),
    ("H2S", [-2.8784, -1.7083, -1.6074, -2.1319]),
    ("CH4", [1.4034, 1.7946, 1.0342, -0.2209]),
    ("C2H6", [1.1418, 1.8495, 0.8274, -0.8141]),
    ("SF6", [3.1445, 3.6919, 2.6749, 1.2402]),
];

#[test]
fn the_check_table_of_iapws_to_its_last_digit() {
    assert_eq!(HENRY_2004.len(), CHECK_2004.len());
    for (formula, expected) in CHECK_2004 {
        let gas = Gas::read(formula).unwrap();
        let row = HENRY_2004.iter().find(|row| row.gas == gas).unwrap();
        for (temperature, expected) in [300.0, 400.0, 500.0, 600.0].into_iter().zip(expected) {
            let found = (iapws_fugacity(Temperature::new(temperature), row).si() / 1e9_f64).ln();
            assert!((found - expected).abs() < 5.001e-5, "{formula} at {temperature} K: {found}");
        }
    }
}

#[test]
fn oxygen_by_each_equation() {
    let table = rows(OXYGEN);
    assert_eq!(table.len(), 41);
    let best = HenryConstant::of(Gas::Oxygen).unwrap();
    assert_eq!(best.equation, HenryEquation::BensonKrause);
    let iapws = HenryConstant { equation: HenryEquation::iapws(Gas::Oxygen).unwrap() };
    let reviewed = HenryConstant { equation: HenryEquation::reviewed(Gas::Oxygen).unwrap() };
    let years = [best, iapws, reviewed].map(|formula| formula.output().source.unwrap().year);
    assert_eq!(years, [1979, 2004, 2015].map(Some));
    let mut published = 0;
    for row in table {
        let [temperature, saturation, standard, henry_1979, henry_2004] = row[..] else { panic!("{row:?}") };
        let celsius = number(temperature);
        let found = OxygenSaturation.number([celsius, 101.325, 0.0]).unwrap();
        assert!((found - number(saturation)).abs() < 5.001e-4, "{row:?}: {found}");
        if !standard.is_empty() {
            assert!((found - number(standard)).abs() < 0.001_1, "{row:?}: {found}");
            published += 1;
        }
        let found = best.number([celsius]).unwrap();
        // Five figures, at the density of water at saturation, 5 parts in 100 000 less than at 1 atm.
        assert!((found / number(henry_1979) - 1.0).abs() < 9.5e-5, "{row:?}: {found}");
        if celsius >= 2.0 {
            let found = iapws.number([celsius]).unwrap();
            assert!((found / number(henry_2004) - 1.0).abs() < 9.5e-5, "{row:?}: {found}");
        }
    }
    assert_eq!(published, 9);
}

/// Standard Methods 4500-O and every limnology text: 14.621, 9.092, 8.263 and 6.412 mg/dm3 (from memory).
#[test]
fn the_four_saturations_that_everybody_prints() {
    for (celsius, expected) in [(0.0, 14.621), (20.0, 9.092), (25.0, 8.263), (40.0, 6.412)] {
        let found = OxygenSaturation.number([celsius, 101.325, 0.0]).unwrap();
        assert!((found - expected).abs() <= 0.001, "{celsius}: {found}");
        assert!((found / expected - 1.0).abs() < 0.003);
    }
}

#[test]
fn pressure_and_salt_drive_oxygen_out() {
    // Where the departure from ideality is small the factor of pressure is (p - p_w)/(1 - p_w), here with 2.339 kPa.
    let at = |pressure: f64, salinity: f64| OxygenSaturation.number([20.0, pressure, salinity]).unwrap();
    let factor = at(0.9 * 101.325, 0.0) / at(101.325, 0.0);
    assert!((factor / ((0.9 * 101.325 - 2.339) / (101.325 - 2.339)) - 1.0).abs() < 2e-4, "{factor}");
    // Sea water of salinity 35 at 20 degC: 7.4 mg/dm3 (Benson and Krause; 18.5 % less than fresh water).
    assert!((at(101.325, 35.0) - 7.41).abs() < 0.02, "{}", at(101.325, 35.0));
    let salted: Vec<f64> = (0..=40).map(|salinity| at(101.325, f64::from(salinity))).collect();
    assert!(salted.is_sorted_by(|a, b| a > b));
    let pressed: Vec<f64> = (40..=120).map(|pressure| at(f64::from(pressure), 0.0)).collect();
    assert!(pressed.is_sorted_by(|a, b| a < b));
}

/// Oxygen under air by Henry's law, 20.946 % of the dry pressure: within 0.3 % of the equation for aerated water.
#[test]
fn henry_and_saturation_agree() {
    for celsius in [0.0, 10.0, 20.0, 30.0, 40.0] {
        let water = overwater::water::vapour::VapourPressure::default().number([celsius]).unwrap();
        let partial = 0.209_46 * (101.325 - water);
        let amount = DissolvedAmount::of(Gas::Oxygen).unwrap().number([celsius, partial, 1000.0]).unwrap();
        let saturation = OxygenSaturation.number([celsius, 101.325, 0.0]).unwrap();
        assert!((amount * 31.998 / saturation - 1.0).abs() < 0.003, "{celsius}: {amount}");
    }
}

/// The gases that both IAPWS and the reviews have, at 25 degC: within 3 %, the reviews having two figures.
#[test]
fn the_reviews_and_iapws_agree() {
    let mut both = 0;
    for row in &HENRY_2015 {
        let reviewed = HenryConstant { equation: HenryEquation::reviewed(row.gas).unwrap() };
        let at_25 = reviewed.number([25.0]).unwrap();
        assert!((at_25 / row.solubility_298 - 1.0).abs() < 1e-12, "{:?}", row.gas);
        assert!(row.reviews.0 <= row.solubility_298 && row.solubility_298 <= row.reviews.1, "{:?}", row.gas);
        if let Ok(equation) = HenryEquation::iapws(row.gas) {
            let iapws = HenryConstant { equation }.number([25.0]).unwrap();
            assert!((iapws / at_25 - 1.0).abs() < 0.03, "{:?}: {iapws} and {at_25}", row.gas);
            both += 1;
        }
    }
    assert_eq!((both, HENRY_2015.len()), (10, 21));
}

fn every_equation() -> Vec<(Gas, HenryEquation)> {
    Gas::all()
        .flat_map(|gas| {
            [HenryEquation::of(gas), HenryEquation::iapws(gas), HenryEquation::reviewed(gas)]
                .into_iter()
                .filter_map(move |equation| equation.ok().map(|equation| (gas, equation)))
        })
        .collect()
}

#[test]
fn ranges_end_where_they_say_and_the_rest_is_refused() {
    let all = every_equation();
    assert!(all.len() > 50);
    for (gas, equation) in all {
        let formula = HenryConstant { equation };
        let [bound] = formula.inputs();
        assert_eq!(bound, equation.temperature());
        assert!(formula.number([bound.least]).is_ok() && formula.number([bound.greatest]).is_ok(), "{gas:?}");
        for beyond in [bound.least.next_down(), bound.greatest.next_up()] {
            assert_eq!(formula.number([beyond]).unwrap_err().code, Code::OutOfRange, "{gas:?}");
        }
        if let HenryEquation::Iapws(row) = equation {
            // Never wider than the range of the source.
            assert!(row.temperature.least + 273.15 >= row.least_k - 1e-9, "{gas:?}");
            assert!(row.temperature.greatest + 273.15 <= row.greatest_k, "{gas:?}");
        }
    }
    for gas in [Gas::Air, Gas::HydrogenChloride] {
        assert_eq!(HenryConstant::of(gas).unwrap_err().code, Code::CannotBeMet);
    }
    for (bound, greatest) in [
        (&bounds::SANDER_TEMPERATURE_C, 50.0),
        (&bounds::BENSON_KRAUSE_TEMPERATURE_C, 60.0),
        (&bounds::DISSOLVED_OXYGEN_TEMPERATURE_C, 40.0),
    ] {
        assert_eq!((bound.least, bound.greatest), (0.0, greatest));
    }
    for (index, bound) in OxygenSaturation.inputs().into_iter().enumerate() {
        for beyond in [bound.least.next_down(), bound.greatest.next_up()] {
            let mut inputs = [20.0, 100.0, 10.0];
            inputs[index] = beyond;
            assert_eq!(OxygenSaturation.number(inputs).unwrap_err().code, Code::OutOfRange);
        }
    }
}

#[test]
fn gases_dissolve_less_in_warm_water_up_to_their_minimum() {
    for (gas, equation) in every_equation() {
        // Helium and hydrogen have their least solubility at 30 and 55 degC; below that all fall.
        let last = if gas == Gas::Helium { 20 } else { 40 };
        let formula = HenryConstant { equation };
        let values: Vec<f64> =
            (6..=last).map(|t| formula.number([f64::from(t)]).unwrap_or(f64::NAN)).collect();
        let values: Vec<f64> = values.into_iter().filter(|value| value.is_finite()).collect();
        assert!(values.len() > 10 && values.is_sorted_by(|a, b| a > b), "{gas:?} {equation:?}");
    }
}

#[test]
fn the_ways_to_write_a_solubility_are_one() {
    for gas in [Gas::Oxygen, Gas::CarbonDioxide, Gas::Ammonia] {
        let henry = HenryConstant::of(gas).unwrap();
        let ostwald = OstwaldCoefficient::of(gas).unwrap();
        let bunsen = BunsenCoefficient::of(gas).unwrap();
        for celsius in [5.0, 25.0, 40.0] {
            let h = henry.number([celsius]).unwrap();
            let r = 8.314_462_618_153_24;
            assert!((ostwald.number([celsius]).unwrap() / (h * r * (celsius + 273.15)) - 1.0).abs() < 1e-14);
            assert!((bunsen.number([celsius]).unwrap() / (h * r * 273.15) - 1.0).abs() < 1e-14);
            let (_, [slope]) = henry.sensitivities([celsius]).unwrap();
            let step = 1e-3;
            let difference =
                (henry.evaluate([celsius + step]) - henry.evaluate([celsius - step])) / (2.0 * step);
            assert!((slope / difference - 1.0).abs() < 1e-6, "{gas:?}: {slope} {difference}");
        }
    }
    // Bunsen coefficient of oxygen at 20 degC: 0.0310 (handbook, from memory).
    let found = BunsenCoefficient::of(Gas::Oxygen).unwrap().number([20.0]).unwrap();
    assert!((found - 0.0310).abs() < 1.5e-4, "{found}");
}

#[test]
fn what_is_lost_is_in_proportion() {
    let lost = DissolvedAmount::of(Gas::CarbonDioxide).unwrap();
    let whole = lost.number([20.0, 100.0, 200.0]).unwrap();
    assert!((lost.number([20.0, 50.0, 200.0]).unwrap() * 2.0 / whole - 1.0).abs() < 1e-14);
    assert!((lost.number([20.0, 100.0, 100.0]).unwrap() * 2.0 / whole - 1.0).abs() < 1e-14);
    assert_eq!(lost.number([20.0, 0.0, 100.0]).unwrap(), 0.0);
    assert_eq!(lost.number([20.0, 100.0, 0.0]).unwrap(), 0.0);
    assert_eq!(lost.number([20.0, -1e-300, 100.0]).unwrap_err().code, Code::OutOfRange);
    // Weiss, Mar. Chem. 2 (1974) 203 (from memory): 0.03916 mol/(kg atm) at 20 degC, so 7.72 mmol in 200 cm3 at 100 kPa.
    assert!((whole / 7.72 - 1.0).abs() < 0.012, "{whole}");
}

#[test]
fn salting_out_adds_the_ions_up() {
    let of = |ions: &[(&str, u8)]| SaltingOutFactor::of(Gas::Oxygen, ions).unwrap().sechenov_dm3_per_mol();
    // Oxygen in sodium chloride: 0.1171 + 0.0334 = 0.1505 dm3/mol; measured 0.14 to 0.15 (from memory).
    assert!((of(&[("Na+", 1), ("Cl-", 1)]) - 0.1505).abs() < 1e-12);
    assert!((of(&[("Na+", 2), ("SO4-2", 1)]) - (2.0 * 0.1171 + 0.1185)).abs() < 1e-12);
    // For another gas its own parameter counts once for each ion: CO2, -0.0183.
    let carbon_dioxide = SaltingOutFactor::of(Gas::CarbonDioxide, &[("Ca+2", 1), ("Cl-", 2)]).unwrap();
    let by_hand = 0.1771 - 0.0183 + 2.0 * (0.0334 - 0.0183);
    assert!((carbon_dioxide.sechenov_dm3_per_mol() - by_hand).abs() < 1e-12);
    assert!((carbon_dioxide.number([2.0]).unwrap() / 10_f64.powf(2.0 * by_hand) - 1.0).abs() < 1e-13);
    assert_eq!(carbon_dioxide.number([0.0]).unwrap(), 1.0);
    assert!(carbon_dioxide.number([5.0]).is_ok());
    assert_eq!(carbon_dioxide.number([5.0_f64.next_up()]).unwrap_err().code, Code::OutOfRange);

    let error = SaltingOutFactor::of(Gas::Oxygen, &[("Mg2+", 1)]).unwrap_err();
    assert_eq!(error.code, Code::UnknownName);
    assert!(error.to_string().contains("Mg+2"), "{error}");
    assert_eq!(SaltingOutFactor::of(Gas::Ammonia, &[]).unwrap_err().code, Code::CannotBeMet);
    assert_eq!((SALTING_OUT_GASES_1993.len(), SALTING_OUT_IONS_1993.len()), (14, 37));
}

/// The verdicts against the volumes that dissolve in one volume of water at 20 degC.
#[test]
fn verdicts_follow_from_the_solubility_or_the_reaction() {
    for gas in Gas::all() {
        assert_eq!(OVER_WATER.iter().filter(|row| row.gas == gas).count(), 1, "{gas:?}");
        let verdict = gas.over_water().unwrap().verdict;
        let Ok(formula) = OstwaldCoefficient::of(gas) else {
            assert!(matches!(
                (gas, verdict),
                (Gas::Air, OverWater::Suitable) | (Gas::HydrogenChloride, OverWater::Never)
            ));
            continue;
        };
        let volumes = formula.number([20.0]).unwrap();
        match verdict {
            OverWater::Suitable => assert!(volumes < 0.2, "{gas:?}: {volumes}"),
            OverWater::Loses => assert!((0.2..5.0).contains(&volumes), "{gas:?}: {volumes}"),
            OverWater::Never => assert!(volumes > 30.0 || gas == Gas::NitrogenDioxide, "{gas:?}: {volumes}"),
        }
        println!("{} {volumes:.4}", gas.name());
    }
    for gas in [Gas::SulfurDioxide, Gas::Ammonia, Gas::HydrogenChloride, Gas::NitrogenDioxide] {
        assert_eq!(gas.over_water().unwrap().verdict, OverWater::Never);
    }
}

/// Benson, Krause and Peterson print k at 25 degC as 43 700 atm or so; IAPWS is within 1.1 % from 2 to 40 degC.
#[test]
fn the_equation_of_1979_is_near_that_of_2004() {
    let row = HENRY_2004.iter().find(|row| row.gas == Gas::Oxygen).unwrap();
    for celsius in 2..=40 {
        let temperature = Temperature::new(f64::from(celsius) + 273.15);
        let ratio = oxygen_fugacity(temperature).si() / iapws_fugacity(temperature, row).si();
        assert!((ratio - 1.0_f64).abs() < 0.011, "{celsius}: {ratio}");
    }
}
