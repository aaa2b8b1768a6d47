//! More of the simulation of a preparation: what catalyst cannot change, oxygen that dissolves, schedules that a person can
//! follow, and the doors.

use overwater::apparatus::run::{Addition, Happening, Limits, Run, RunVessel, advise, simulate};
use overwater::apparatus::suck_back;
use overwater::peroxide::kinetics::{Kinetics, Law};
use overwater::units::{Pressure, Temperature};
use overwater_exchange::run::{calibrate, run as answer};
use overwater_exchange::{calibration_from_toml, run_from_json, run_from_toml};
use proptest::prelude::*;

fn portions(count: u32, interval_s: f64, volume_cm3: f64, concentration_mol_per_dm3: f64) -> Vec<Addition> {
    let one = |index| Addition {
        time_s: f64::from(index) * interval_s,
        over_s: 0.0,
        volume_cm3,
        concentration_mol_per_dm3,
        temperature_c: 20.0,
    };
    (0..count).map(one).collect()
}

fn vessel(volume_cm3: f64) -> RunVessel {
    RunVessel { name: "jar".to_owned(), volume_cm3, height_cm: 15.0 }
}

/// Thirteen portions of 5 cm3 of 20 vol, every half minute; a boiling tube and four jars.
fn lesson() -> Run {
    Run {
        additions: portions(13, 30.0, 5.0, 1.785),
        rejected_cm3: 200.0,
        vessels: [55.0, 250.0, 250.0, 250.0, 250.0].map(vessel).to_vec(),
        ..Run::default()
    }
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 40, failure_persistence: None, ..ProptestConfig::default() })]

    /// All peroxide gives its gas whatever the catalyst; only what the warm flask keeps back can differ, and that is at
    /// most what its gas loses when it cools from the hottest to the room.
    #[test]
    fn catalyst_does_not_change_how_much_gas_comes(
        catalyst_g in 0.3..1.5_f64,
        factor in 1.2..4.0_f64,
        concentration in 0.5..2.7_f64,
        loss in 0.05..0.5_f64,
        glass in 0.0..100.0_f64,
    ) {
        let run = Run {
            catalyst_g,
            additions: portions(8, 20.0, 5.0, concentration),
            heat_loss_w_per_k: loss,
            glass_j_per_k: glass,
            stem_length_cm: 150.0,
            // Followed until all is spent: neither water nor air comes back.
            open_funnel: false,
            tube_rise_cm: 200.0,
            kinetics: Kinetics { k_at_20: 1e-3, activation: 50_000.0, law: Law::Power { order: 1.0 } },
            end_s: 6000.0,
            outputs_s: vec![6000.0],
            ..Run::default()
        };
        let less = simulate(&run).unwrap();
        let more = simulate(&Run { catalyst_g: catalyst_g * factor, ..run.clone() }).unwrap();
        for result in [&less, &more] {
            prop_assert!(result.first(Happening::Spent).is_some(), "{:?}", result.events);
        }
        let top = less.top_temperature_c.max(more.top_temperature_c);
        let shrinkage = suck_back::shrinkage::<f64>(
            Temperature::new(top + 273.15),
            Temperature::new(293.15),
            Pressure::new(101_325.0),
        );
        let kept = 250.0 * shrinkage;
        let apart = (less.points[0].collected_cm3 - more.points[0].collected_cm3).abs();
        prop_assert!(apart <= kept, "{} {}", apart, kept);
        // And it is all there: half a mole for each of peroxide, at the molar volume in the trough, with the air that the
        // liquid drives out, less what is kept back.
        let made = 0.5 * 40.0 * concentration * 8.314_462_618 * 293.15 / (101.325 - 2.339) + 40.0;
        let out = less.points[0].collected_cm3;
        prop_assert!(out <= made * 1.01 + kept && out >= made * 0.99 - 2.0 * kept, "{} {} {}", out, made, kept);
    }

    #[test]
    fn a_hotter_room_never_lowers_the_top_temperature(
        room in 5.0..35.0_f64,
        warmer in 0.5..10.0_f64,
        concentration in 0.5..2.7_f64,
        catalyst_g in 0.1..2.0_f64,
        heel in 25.0..80.0_f64,
    ) {
        let at = |room_c: f64| {
            let mut additions = portions(8, 25.0, 5.0, concentration);
            additions.iter_mut().for_each(|addition| addition.temperature_c = room_c);
            let run = Run { room_c, additions, catalyst_g, heel_cm3: heel, stem_length_cm: 150.0, ..Run::default() };
            simulate(&run).unwrap().top_temperature_c
        };
        prop_assert!(at(room + warmer) >= at(room) - 1e-6);
    }
}

#[test]
fn oxygen_that_dissolves_is_the_upper_bound_by_solubility() {
    let plain = simulate(&lesson()).unwrap();
    let wet = simulate(&Run { dissolves: true, ..lesson() }).unwrap();
    // Water at 20 degC under air at one atmosphere holds 9.092 mg/dm3 of oxygen (Standard Methods 4500-O, from memory), of
    // which air has a share of 0.2095: what it takes up beside that under pure oxygen is 9.092 x 0.79/0.2095 = 34.3 mg/dm3,
    // 0.268 mmol in a jar of 250 cm3, which is 2.6 % of its 10.15 mmol.
    let per_jar: f64 = 9.092 * 0.79 / 0.2095 / 31.998 * 250.0 / 1000.0;
    let jar = 250e-6 * (101_325.0 - 2_339.2) / (8.314_462_618 * 293.15) * 1e3;
    assert!((per_jar / jar - 0.0264).abs() < 2e-4, "{per_jar} {jar}");
    // A jar is full when so much more has come: between the third and the fourth jar the gas is all but pure.
    let at = |time_s: f64| {
        let run = Run { dissolves: true, outputs_s: vec![time_s], ..lesson() };
        let point = simulate(&run).unwrap().points[0];
        point.oxygen_out_mmol + point.nitrogen_out_mmol
    };
    let (third, fourth) = (wet.vessels[3].full_at_s.unwrap(), wet.vessels[4].full_at_s.unwrap());
    let came = at(fourth) - at(third);
    assert!(((came - jar) / per_jar - 1.0).abs() < 5e-3, "{came} {jar} {per_jar}");
    for (dry, wet) in plain.vessels.iter().zip(&wet.vessels) {
        assert!(wet.full_at_s > dry.full_at_s, "{wet:?}");
    }
    // Of two equal jars of which one lost oxygen, the loser holds more air: x = (O - lost)/(O + N - lost).
    let [.., last] = wet.vessels.as_slice() else { panic!() };
    let nitrogen = (1.0 - last.oxygen_fraction) * jar;
    let before = 1.0 - nitrogen / (jar + per_jar);
    assert!(last.oxygen_fraction < before && nitrogen > 0.0, "{last:?} {before}");
}

#[test]
fn time_can_be_given_for_fewer_portions() {
    let soon = Limits { portion_counts_s: 0.0, ..Limits::default() };
    let easy = Limits { portion_counts_s: 60.0, ..Limits::default() };
    let run = Run { catalyst_g: 1.0, flask_cm3: 500.0, heel_cm3: 40.0, stem_length_cm: 30.0, ..lesson() };
    let soonest = advise(&run, 1.785, &soon).unwrap();
    let easiest = advise(&run, 1.785, &easy).unwrap();
    let usual = advise(&run, 1.785, &Limits::default()).unwrap();
    assert!(soonest.tube_out_s <= usual.tube_out_s && usual.tube_out_s <= easiest.tube_out_s);
    assert!(
        soonest.additions.len() > usual.additions.len() && usual.additions.len() >= easiest.additions.len()
    );
    for advice in [&soonest, &usual, &easiest] {
        assert!(advice.additions.iter().all(|addition| addition.time_s % 5.0 == 0.0));
        assert!(advice.result.top_flow_cm3_per_s <= 6.0);
    }
    let wrong = Limits { portion_counts_s: f64::NAN, ..Limits::default() };
    assert_eq!(advise(&run, 1.785, &wrong).unwrap_err().parameter, "limits.portion_counts_s");
}

#[test]
fn thirty_volumes_by_themselves_rise_by_about_sixty_kelvin() {
    // 2.677 mol/dm3 x 94.66 kJ/mol over about 4.1 J/(K cm3): 62 K; the trade counts with 60.
    let run = Run {
        heel_cm3: 1e-3,
        seal_cm3: 1e-3,
        additions: portions(1, 1.0, 50.0, 2.677),
        heat_loss_w_per_k: 0.0,
        glass_j_per_k: 0.0,
        dry: true,
        end_s: 20_000.0,
        ..Run::default()
    };
    let rise = simulate(&run).unwrap().top_temperature_c - 20.0;
    assert!((rise - 61.5).abs() < 1.0, "{rise}");
}

#[test]
fn the_door_of_a_run_takes_what_the_core_takes_and_says_what_it_assumed() {
    let toml = include_str!("../../examples/all-at-once.toml");
    let from_toml = answer(&run_from_toml(toml).unwrap()).unwrap();
    let codes: Vec<&str> = from_toml.findings.iter().map(|finding| finding.code.as_str()).collect();
    assert_eq!(codes, ["stem_overtopped", "air_through_funnel", "fast", "not_filled"]);
    assert!(from_toml.atom_balance.unwrap() < 1e-10 && from_toml.heat_balance.unwrap() < 1e-6);
    assert!(
        from_toml.assumed.iter().any(|one| one.key == "kinetics.k_at_20" && one.why.contains("no source"))
    );
    assert!(!from_toml.assumed.iter().any(|one| one.key == "stem_length_cm"));
    // 30 vol at 0 degC and 1 atm is 2.677 mol/dm3: 30/22.414 x 2.
    let direct = Run {
        stem_length_cm: 8.0,
        catalyst_g: 1.0,
        rejected_cm3: 200.0,
        vessels: [55.0, 250.0, 250.0].map(vessel).to_vec(),
        additions: portions(1, 1.0, 60.0, 30.0 / 22.413_969_54 * 2.0),
        ..Run::default()
    };
    let result = simulate(&direct).unwrap();
    // The stem overtops before any gas flows: none comes to the trough, not even what the liquid displaces.
    assert!(from_toml.curve.iter().all(|point| point.collected_cm3 == 0.0 && point.oxygen_out_mmol == 0.0));
    assert!((from_toml.top_temperature_c - result.top_temperature_c).abs() < 1e-6);
    assert_eq!(from_toml.events.len(), result.events.len());
    // The same through JSON.
    let json = serde_json::to_string(&run_from_toml(toml).unwrap()).unwrap();
    assert_eq!(answer(&run_from_json(&json).unwrap()).unwrap(), from_toml);
    let whole = serde_json::to_string(&from_toml).unwrap();
    assert_eq!(
        serde_json::from_str::<overwater_exchange::run::answer::RunAnswer>(&whole).unwrap(),
        from_toml
    );
}

#[test]
fn sensitivities_come_through_the_door() {
    let text = "format = 1\nsensitivities = true\nrejected_cm3 = 20\nvessels = [{ volume_cm3 = 100 }]\n\
                additions = [{ time_s = 0, volume_cm3 = 10, strength = \"20 vol\" }]\n";
    let found = answer(&run_from_toml(text).unwrap()).unwrap();
    let by = |input: &str| found.sensitivities.iter().find(|one| one.input.starts_with(input)).unwrap();
    // Catalyst and rate constant act as one product: the same derivative to the last digits.
    let (k, catalyst) = (by("kinetics.k_at_20"), by("catalyst_g"));
    assert!((k.filled_at_s.unwrap() / catalyst.filled_at_s.unwrap() - 1.0).abs() < 1e-9);
    assert!(k.filled_at_s.unwrap() < 0.0 && by("heat_loss").top_temperature_k < 0.0);
}

#[test]
fn bad_requests_are_refused_by_the_path_of_the_key() {
    let run = "format = 1\nadditions = [{ time_s = 0, volume_cm3 = 5, strength = \"20 vol\" }]\n";
    let refused = |text: &str| {
        let refusal = run_from_toml(text).and_then(|request| answer(&request)).unwrap_err();
        (refusal.path, refusal.code)
    };
    let cases = [
        (format!("{run}tube_bore_mm = 0\n"), "tube_bore_mm", "out_of_range"),
        (format!("{run}stem_length_cm = -3\n"), "stem_length_cm", "out_of_range"),
        (format!("{run}kinetics = {{ k_at_20 = 0 }}\n"), "kinetics.k_at_20", "out_of_range"),
        (format!("{run}kinetics = {{ order = 2 }}\n"), "kinetics.k_at_20", "missing"),
        (
            format!("{run}kinetics = {{ k_at_20 = 1, order = 1, half_mol_per_m3 = 3 }}\n"),
            "kinetics.half_mol_per_m3",
            "given_twice",
        ),
        (format!("{run}room_c = nan\n"), "room_c", "not_a_number"),
        (format!("{run}every_s = 0\n"), "every_s", "out_of_range"),
        (format!("{run}every_s = nan\n"), "every_s", "not_a_number"),
        (format!("{run}every_s = 1e-9\n"), "every_s", "out_of_range"),
        (format!("{run}flask_cm3 = 30\n"), "additions[0].volume_cm3", "contradiction"),
        (run.replace("volume_cm3 = 5", "volume_cm3 = 500"), "additions[0].volume_cm3", "contradiction"),
        (run.replace("strength = \"20 vol\"", "temperature_c = 20"), "additions[0].strength", "missing"),
        (
            run.replace("strength", "concentration_mol_per_dm3 = 1, strength"),
            "additions[0].concentration_mol_per_dm3",
            "given_twice",
        ),
        (
            run.replace("}]", "}, { time_s = -1, volume_cm3 = 5, strength = \"20 vol\" }]"),
            "additions[1].time_s",
            "out_of_range",
        ),
        (
            run.replace("time_s = 0", "time_s = 9")
                .replace("}]", "}, { time_s = 1, volume_cm3 = 5, strength = \"20 vol\" }]"),
            "additions[1].time_s",
            "contradiction",
        ),
        (format!("{run}bore = 3\n"), "bore", "unknown_name"),
    ];
    for (text, path, code) in cases {
        assert_eq!(refused(&text), (path.to_owned(), code.to_owned()), "{text}");
    }
}

#[test]
fn a_run_that_hits_its_bound_says_so() {
    let text =
        "format = 1\nmost_steps = 5\nadditions = [{ time_s = 0, volume_cm3 = 5, strength = \"20 vol\" }]\n";
    let found = answer(&run_from_toml(text).unwrap()).unwrap();
    assert_eq!(found.findings[0].code, "step_bound");
    assert!(found.reached_s < 1200.0 && found.steps <= 5);
}

#[test]
fn a_trial_is_calibrated_through_the_door() {
    let found =
        calibrate(&calibration_from_toml(include_str!("../../examples/trial.toml")).unwrap()).unwrap();
    // The readings were drawn about 108 cm3 and 0.0085 per second at 22 degC; 50 kJ/mol: 1.149 times 20 degC.
    let truth = 0.0085 / 1.149 * 30e-6 / 0.4e-3;
    assert!((found.k_at_20 - truth).abs() < found.half_width_95, "{found:?} {truth}");
    assert!((found.final_volume_cm3 - 108.0).abs() < 1.0);
    assert_eq!(found.degrees_of_freedom, 13);

    let text = include_str!("../../examples/trial.toml");
    let refused = |text: &str| {
        let refusal = calibration_from_toml(text).and_then(|request| calibrate(&request)).unwrap_err();
        (refusal.path, refusal.code)
    };
    let nan = text.replacen("time_s = 60, volume_cm3 = ", "time_s = 60, volume_cm3 = nan # ", 1);
    let nan = nan.replacen("nan # ", "nan }, # ", 1);
    assert_eq!(refused(&nan), ("readings[2].volume_cm3".to_owned(), "not_a_number".to_owned()));
    let order = text.replacen("time_s = 60,", "time_s = 30,", 1);
    assert_eq!(refused(&order), ("readings[2].time_s".to_owned(), "contradiction".to_owned()));
    let none = text.replacen("catalyst_g = 0.4", "catalyst_g = 0", 1);
    assert_eq!(refused(&none), ("catalyst_g".to_owned(), "out_of_range".to_owned()));
}

/// A cold drip closes the flask at the very pressure at which it opens: it must be seen to open again when the gas comes.
#[test]
fn a_strong_cold_drip_boils_and_goes_no_hotter() {
    let drip = Addition {
        time_s: 3.0,
        over_s: 52.888,
        volume_cm3: 47.755,
        concentration_mol_per_dm3: 12.8088,
        temperature_c: 20.0,
    };
    let run = Run {
        flask_cm3: 518.02,
        heel_cm3: 15.0,
        seal_cm3: 15.0,
        catalyst_g: 0.250_756,
        kinetics: Kinetics { k_at_20: 6.5896e-4, activation: 52_925.5, law: Law::Power { order: 1.255_468 } },
        room_c: 28.718,
        pressure_kpa: 90.0,
        tube_bore_mm: 2.0,
        outlet_depth_cm: 3.0,
        stem_length_cm: 10.0,
        tip_depth_cm: 0.0,
        heat_loss_w_per_k: 0.05,
        glass_j_per_k: 7.109,
        additions: vec![drip],
        vessels: vec![vessel(55.0)],
        ..Run::default()
    };
    let result = simulate(&run).unwrap();
    assert!(result.first(Happening::GasLeaves).is_some(), "{:?}", result.events);
    // Water boils at 97 degC under 90.6 kPa.
    assert!(
        result.top_temperature_c > 85.0 && result.top_temperature_c < 97.0,
        "{}",
        result.top_temperature_c
    );
    assert!(result.top_flow_cm3_per_s > 10.0);
}
