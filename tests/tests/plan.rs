//! The plan of a whole lesson: figures worked out by hand, and what must hold for every lesson.

use overwater::caution::DEFERENCE;
use overwater::peroxide::label::Label;
use overwater::plan::lesson::{Apparatus, Assay, Barometer, Kind, Lesson, Run, Stock, Vessel};
use overwater::plan::{defaults, plan};
use proptest::prelude::*;

/// Four jars of 250 cm3 and a boiling tube of 55, 300 cm3 rejected, at 20 degC and 101.325 kPa, from a well-mixed free
/// volume of 235 cm3.
fn demonstration(strength: &str) -> Lesson {
    let jar = |burn: &str| Vessel { burn: Some(burn.to_owned()), ..Vessel::default() };
    Lesson {
        stock: Some(Stock::labelled(Label::read(strength).unwrap())),
        run: Run { rejected_cm3: Some(300.0), ..Run::default() },
        apparatus: Apparatus { free_volume_cm3: Some(235.0), flask_cm3: Some(250.0), ..Apparatus::default() },
        vessels: vec![
            jar("sulfur"),
            jar("magnesium"),
            jar("sodium"),
            jar("iron"),
            Vessel { kind: Kind::Tube, ..Vessel::default() },
        ],
        ..Lesson::default()
    }
}

fn close(got: f64, expected: f64, tolerance: f64, what: &str) {
    assert!((got - expected).abs() <= tolerance, "{what}: {got} is not {expected} within {tolerance}");
}

#[test]
fn gas_and_peroxide_of_a_demonstration() {
    // By hand: (101.325 - 2.339) kPa x 1355 cm3 / (8.3145 x 293.15) = 55.0 mmol; 20 vol is 40/22.414 mol/dm3, of which
    // 2 x 55.0 mmol take 61.7 cm3; at 85 % 72.6 cm3, measured out as 80.
    let plan = plan(&demonstration("20 vol")).unwrap();
    assert_eq!(plan.gas.total.moist_cm3, 1355.0);
    close(plan.gas.total.amount_mmol, 55.0, 0.05, "amount");
    close(plan.requisition.theory_cm3, 61.7, 0.05, "theory");
    close(plan.requisition.with_efficiency_cm3, 72.6, 0.05, "with efficiency");
    assert_eq!(plan.requisition.issue_cm3, 80.0);
    // Dry at 0 degC and 1 atm it is what "20 vol" says: 20 cm3 from each cm3.
    close(plan.gas.total.dry_cm3 / plan.requisition.theory_cm3, 20.0, 1e-9, "volumes from one volume");
    close(plan.gas.vessels[0].amount_mmol, 10.15, 0.005, "one jar");
}

#[test]
fn thirty_volumes_need_two_thirds_of_the_liquid() {
    // By hand: 41.1 cm3, 48.4 at 85 %.
    let mut lesson = demonstration("30 vol");
    lesson.run.strength = Some(Label::read("30 vol").unwrap());
    let plan = plan(&lesson).unwrap();
    close(plan.requisition.theory_cm3, 41.1, 0.05, "theory");
    close(plan.requisition.with_efficiency_cm3, 48.4, 0.05, "with efficiency");
}

#[test]
fn oxygen_in_four_jars_after_three_hundred_rejected() {
    // Closed form of the well-mixed flask: 0.864, 0.953, 0.984, 0.994.
    let plan = plan(&demonstration("20 vol")).unwrap();
    for (vessel, expected) in plan.filling.vessels.iter().zip([0.864, 0.953, 0.984, 0.994]) {
        close(vessel.oxygen_fraction, expected, 0.000_5, &vessel.name);
    }
    assert_eq!(plan.filling.vessels[0].from_cm3, 300.0);
    assert_eq!(plan.filling.vessels[3].to_cm3, 1300.0);
}

#[test]
fn heat_of_the_whole_amount() {
    // By hand: 1.785 mol/dm3 x 94.66 kJ/mol over 4.17 kJ/(dm3 K) = 40 K for 20 vol, 61 K for 30 vol.
    let rise = |strength: &str| {
        let mut lesson = demonstration(strength);
        lesson.run.strength = Some(Label::read(strength).unwrap());
        plan(&lesson).unwrap().additions.rise_by_itself_k
    };
    close(rise("20 vol"), 40.5, 0.5, "20 vol");
    close(rise("30 vol"), 60.7, 0.5, "30 vol");
}

#[test]
fn portions_on_a_heel_of_twenty_five() {
    // By hand: 5 cm3 of 20 vol in 30 cm3 warm it by 40.5/6 = 6.7 K, of 30 vol by 10.1 K.
    for (strength, rise) in [("20 vol", 6.7), ("30 vol", 10.1)] {
        let mut lesson = demonstration(strength);
        lesson.run.strength = Some(Label::read(strength).unwrap());
        let additions = plan(&lesson).unwrap().additions;
        assert_eq!(additions.portion_cm3, 5.0);
        close(additions.rise_per_portion_k, rise, 0.1, strength);
        assert_eq!(additions.portions, (additions.peroxide_cm3 / 5.0).ceil() as u32);
    }
    // 100 vol would warm 30 cm3 by 34 K with 5 cm3: the portion is made smaller.
    let mut lesson = demonstration("100 vol");
    lesson.run.strength = Some(Label::read("100 vol").unwrap());
    let additions = plan(&lesson).unwrap().additions;
    assert!(additions.portion_cm3 < 5.0 && additions.rise_per_portion_k <= defaults::PORTION_RISE_K);
}

#[test]
fn a_class_of_eight_groups() {
    // By hand: 8 x (2 x 60 + 60) = 1440 cm3 take 65.5 cm3 of 20 vol, 77 at 85 %; 10 cm3 a group, 90 with a spare set.
    let tube = || Vessel { kind: Kind::Tube, volume_cm3: Some(60.0), ..Vessel::default() };
    let lesson = Lesson {
        stock: Some(Stock::labelled(Label::read("20 vol").unwrap())),
        run: Run { rejected_cm3: Some(60.0), groups: Some(8), spare_sets: Some(1), ..Run::default() },
        apparatus: Apparatus { free_volume_cm3: Some(60.0), ..Apparatus::default() },
        vessels: vec![tube(), tube()],
        ..Lesson::default()
    };
    let need = plan(&lesson).unwrap().requisition;
    close(8.0 * need.theory_cm3, 65.5, 0.1, "theory");
    close(8.0 * need.with_efficiency_cm3, 77.0, 0.5, "with efficiency");
    assert_eq!((need.issue_cm3, need.issue_in_all_cm3), (10.0, 90.0));
    assert_eq!((need.sets, need.tubes, need.splints), (9, 18, 18));
}

#[test]
fn an_assay_overrides_the_label_and_the_weather_report_is_brought_up_to_the_place() {
    // 10.0 to 250, 25.0 cm3 titrated with 28.40 cm3 of 0.0200 mol/dm3: 1.42 mol/dm3, 15.9 vol, 80 % of the label; 61.7 cm3
    // of 20 vol become 77.5 cm3 (arithmetic).
    let mut lesson = demonstration("20 vol");
    if let Some(stock) = &mut lesson.stock {
        stock.assay = Some(Assay {
            titre_cm3: 28.40,
            permanganate_mol_per_dm3: 0.0200,
            sample_cm3: 10.0,
            made_up_to_cm3: 250.0,
            aliquot_cm3: 25.0,
        });
    }
    let planned = plan(&lesson).unwrap();
    close(planned.stock.strength.concentration_mol_per_dm3, 1.42, 1e-9, "concentration");
    close(planned.stock.strength.volume_strength_vol, 15.9, 0.05, "volumes");
    close(planned.stock.fraction_of_label.unwrap(), 0.80, 0.005, "of the label");
    close(planned.requisition.theory_cm3, 77.5, 0.05, "theory");
    // 1021 hPa at sea level are 100.36 kPa at 145 m (standard atmosphere).
    lesson.barometer = Some(Barometer::SeaLevel { pressure_kpa: 102.1, altitude_m: 145.0 });
    close(plan(&lesson).unwrap().place.pressure_kpa, 100.36, 0.005, "pressure");
}

#[test]
fn dilution_from_a_stronger_stock() {
    // 100 cm3 of 20 vol from 96 vol take 20/96 of it: 20.8 cm3.
    let mut lesson = demonstration("96 vol");
    lesson.run.strength = Some(Label::read("20 vol").unwrap());
    let dilution = plan(&lesson).unwrap().requisition.dilution.unwrap();
    assert_eq!(dilution.made_up_to_cm3, 100.0);
    close(dilution.stock_cm3, 20.83, 0.005, "stock");
    assert_eq!(plan(&demonstration("20 vol")).unwrap().requisition.dilution, None);
}

#[test]
fn rejection_is_worked_out_where_it_is_not_given() {
    let mut lesson = demonstration("20 vol");
    lesson.run.rejected_cm3 = None;
    let filling = plan(&lesson).unwrap().filling;
    assert!(!filling.rejected_was_given);
    assert!(filling.vessels.iter().all(|vessel| vessel.is_good_enough()), "{filling:?}");
    assert!(filling.rejected_cm3 >= filling.free_volume_cm3);
    // Ten cm3 less would not do, unless it is the free volume that decides.
    lesson.run.rejected_cm3 = Some(filling.rejected_cm3 - 10.0);
    let less = plan(&lesson).unwrap().filling;
    assert!(
        less.vessels.iter().any(|vessel| !vessel.is_good_enough())
            || less.rejected_cm3 < filling.free_volume_cm3
    );
}

#[test]
fn burns_take_their_share_of_the_oxygen() {
    // By hand for a jar of pure oxygen (10.15 mmol): 0.10 g of S uses 31 %, of Mg 20 %, 0.05 g of Na 5 % (Na2O) or 11 %
    // (Na2O2), 0.20 g of Fe 24 %; here divided by the fraction that the jar holds.
    let plan = plan(&demonstration("20 vol")).unwrap();
    for (vessel, product, share) in [
        ("jar 1", "SO2", 0.307),
        ("jar 2", "MgO", 0.203),
        ("jar 3", "Na2O2", 0.107),
        ("jar 3", "Na2O", 0.054),
        ("jar 4", "Fe3O4", 0.235),
    ] {
        let burn = plan.burns.iter().find(|burn| burn.vessel == vessel).unwrap();
        let answer = burn.answers.iter().find(|answer| answer.product == product).unwrap();
        let fraction = burn.oxygen_mmol / 10.15;
        close(answer.share_of_oxygen * fraction, share, 0.000_6, product);
        close(answer.greatest_sample_g * answer.share_of_oxygen, burn.sample_g, 1e-12, product);
    }
}

#[test]
fn each_caution_is_raised_by_its_fact_and_only_then() {
    let ids = |lesson: &Lesson| -> Vec<&'static str> {
        plan(lesson).unwrap().cautions.iter().map(|caution| caution.id).collect()
    };
    let usual = ids(&demonstration("20 vol"));
    for id in [
        "eye_protection",
        "unknown_strength",
        "vented_storage",
        "catalyst_dust",
        "splint_is_no_proof",
        "water_runs_back",
        "sulfur_dioxide",
        "bright_flame",
        "sodium",
        "molten_drops",
        "loose_cover",
        "oil_on_metal",
        "peroxide_in_residue",
        "near_the_jar",
    ] {
        assert!(usual.contains(&id), "{id} is not in {usual:?}");
    }
    for id in [
        "damages_eyes",
        "concentrated_stock",
        "boils",
        "funnel_overflows",
        "phosphorus",
        "too_much_sample",
        "room_air",
    ] {
        assert!(!usual.contains(&id), "{id} is in {usual:?}");
    }
    let changed = |change: &dyn Fn(&mut Lesson)| {
        let mut lesson = demonstration("100 vol");
        lesson.run.strength = Some(Label::read("20 vol").unwrap());
        change(&mut lesson);
        ids(&lesson)
    };
    assert!(changed(&|_| ()).contains(&"concentrated_stock"));
    let strong = |lesson: &mut Lesson| lesson.run.strength = Some(Label::read("100 vol").unwrap());
    assert!(changed(&strong).contains(&"damages_eyes"));
    let dry = |lesson: &mut Lesson| {
        strong(lesson);
        lesson.apparatus.heel_cm3 = Some(5.0);
    };
    assert!(changed(&dry).contains(&"boils") && !changed(&dry).contains(&"hot_flask"));
    let thirty = |lesson: &mut Lesson| {
        lesson.run.strength = Some(Label::read("30 vol").unwrap());
        lesson.apparatus.heel_cm3 = Some(5.0);
    };
    assert!(changed(&thirty).contains(&"hot_flask"));
    assert!(changed(&|l| l.apparatus.stem_length_cm = Some(12.0)).contains(&"funnel_overflows"));
    assert!(changed(&|l| l.apparatus.flask_cm3 = Some(150.0)).contains(&"full_flask"));
    let early = |lesson: &mut Lesson| lesson.run.rejected_cm3 = Some(100.0);
    assert!(changed(&early).contains(&"first_gas_is_air") && changed(&early).contains(&"too_little_oxygen"));
    let much = |lesson: &mut Lesson| lesson.vessels[0].sample_g = Some(2.0);
    assert!(changed(&much).contains(&"too_much_sample"));
    assert!(changed(&|l| l.vessels[0].burn = Some("red phosphorus".to_owned())).contains(&"phosphorus"));
    assert!(changed(&|l| l.vessels[0].burn = Some("Ca".to_owned())).contains(&"calcium"));
    // Eight groups bring 3 ppm of sulfur dioxide into the room; without sodium and sulfur nothing is said of either.
    assert!(changed(&|l| l.run.groups = Some(8)).contains(&"room_air"));
    let only_iron = |lesson: &mut Lesson| {
        lesson.vessels.truncate(1);
        lesson.vessels[0].burn = Some("iron".to_owned());
        lesson.vessels[0].sample_g = Some(0.01);
    };
    for id in ["oil_on_metal", "peroxide_in_residue", "near_the_jar", "loose_cover"] {
        assert!(!changed(&only_iron).contains(&id), "{id}");
    }
    // A bottle opened a month before is trusted, one opened a year before is not.
    let opened = |day: &str| {
        let mut lesson = demonstration("20 vol");
        lesson.date = "2026-12-03".parse().ok();
        if let Some(stock) = &mut lesson.stock {
            stock.opened = day.parse().ok();
        }
        ids(&lesson).contains(&"unknown_strength")
    };
    assert!(!opened("2026-11-03") && opened("2025-12-03"));
    assert!(DEFERENCE.contains("risk assessment") && DEFERENCE.contains("local rules"));
    // A long, wide delivery tube that holds more than the flask draws in is not warned of.
    let long = |lesson: &mut Lesson| {
        lesson.apparatus.tube_length_cm = Some(1000.0);
        lesson.apparatus.tube_bore_mm = Some(8.0);
    };
    assert!(!changed(&long).contains(&"water_runs_back"));
}

#[test]
fn every_default_that_is_used_is_listed() {
    let lesson = Lesson {
        stock: Some(Stock::labelled(Label::read("100 vol").unwrap())),
        vessels: vec![
            Vessel { burn: Some("sulfur".to_owned()), ..Vessel::default() },
            Vessel { kind: Kind::Tube, ..Vessel::default() },
        ],
        ..Lesson::default()
    };
    let assumptions = plan(&lesson).unwrap().assumptions;
    for default in defaults::ALL {
        assert!(
            assumptions.iter().any(|assumption| assumption.key == default.key),
            "{} is not in {assumptions:?}",
            default.key
        );
    }
    let convention = assumptions.iter().find(|assumption| assumption.key == "stock.convention").unwrap();
    assert!(convention.taken.contains("0 degC and 1 atm: 8.923 mol/dm3"), "{convention:?}");
    for other in
        ["8.806 at 0 degC and 100 kPa", "8.333 at 24.0 dm3/mol", "8.175 at 25 degC and 1 atm", "8.068"]
    {
        assert!(convention.why.contains(other), "{convention:?}");
    }
    // What was given is not listed.
    let given = plan(&demonstration("20 vol")).unwrap().assumptions;
    for key in ["apparatus.flask_cm3", "apparatus.free_volume_cm3", "run.rejected_cm3"] {
        assert!(given.iter().all(|assumption| assumption.key != key), "{key}");
    }
}

fn lessons() -> impl Strategy<Value = Lesson> {
    let vessel = (1.0..600.0_f64, 0..8_usize).prop_map(|(volume, burn)| {
        let burns = ["S", "C", "Mg", "Na", "Ca", "P", "Fe"];
        Vessel {
            volume_cm3: Some(volume),
            burn: burns.get(burn).map(|name| (*name).to_owned()),
            ..Vessel::default()
        }
    });
    let apparatus = (20.0..1000.0_f64, 20.0..45.0_f64).prop_map(|(free, depth)| Apparatus {
        flask_cm3: Some(5000.0),
        free_volume_cm3: Some(free),
        outlet_depth_cm: Some(depth),
        ..Apparatus::default()
    });
    let room = (5.0..40.0_f64, 85.0..105.0_f64);
    (prop::collection::vec(vessel, 1..8), apparatus, room, 5.0..110.0_f64, 0.3..1.0_f64).prop_map(
        |(vessels, apparatus, (temperature, pressure), volumes, efficiency)| {
            let mut lesson = Lesson {
                stock: Some(Stock::labelled(Label::Volumes { volume_strength_vol: volumes })),
                barometer: Some(Barometer::Station { pressure_kpa: pressure }),
                apparatus,
                vessels,
                run: Run { collection_efficiency_fraction: Some(efficiency), ..Run::default() },
                ..Lesson::default()
            };
            lesson.room.temperature_c = Some(temperature);
            lesson
        },
    )
}

proptest! {
    // Each plan works out the flames and solutions of its burns, which have tests of their own.
    #![proptest_config(ProptestConfig { cases: 64, ..ProptestConfig::default() })]

    #[test]
    fn oxygen_is_conserved_from_the_bottle_to_the_jars_and_what_is_lost(lesson in lessons()) {
        let plan = plan(&lesson).unwrap();
        // In the gas: what was made and what the air brought is in vessels, in what was rejected and in the flask.
        let oxygen = plan.filling.oxygen;
        let inside = oxygen.made_cm3 + oxygen.from_air_cm3;
        let outside = oxygen.in_vessels_cm3 + oxygen.in_rejected_cm3 + oxygen.left_in_flask_cm3;
        prop_assert!((inside / outside - 1.0).abs() < 1e-12, "{inside} {outside}");
        prop_assert!((oxygen.made_cm3 / plan.gas.total.moist_cm3 - 1.0).abs() < 1e-14);
        // In the bottle: half the peroxide's amount is the oxygen collected or rejected, and the part that is lost.
        let peroxide_mmol = plan.requisition.with_efficiency_cm3 * plan.stock.run.concentration_mol_per_dm3;
        let lost = peroxide_mmol / 2.0 * (1.0 - plan.requisition.collection_efficiency_fraction);
        prop_assert!(((plan.gas.total.amount_mmol + lost) / (peroxide_mmol / 2.0) - 1.0).abs() < 1e-12);
        let parts: f64 = plan.gas.vessels.iter().map(|gas| gas.amount_mmol).sum();
        let sum = parts + plan.gas.rejected.amount_mmol;
        prop_assert!((sum / plan.gas.total.amount_mmol - 1.0).abs() < 1e-12);
    }

    #[test]
    fn twice_the_volumes_are_twice_the_amounts(lesson in lessons()) {
        let one = plan(&lesson).unwrap();
        let mut double = lesson.clone();
        for vessel in &mut double.vessels {
            vessel.volume_cm3 = vessel.volume_cm3.map(|volume| 2.0 * volume);
        }
        double.run.rejected_cm3 = Some(2.0 * one.filling.rejected_cm3);
        double.apparatus.free_volume_cm3 = double.apparatus.free_volume_cm3.map(|free| 2.0 * free);
        let two = plan(&double).unwrap();
        prop_assert!((two.gas.total.amount_mmol / one.gas.total.amount_mmol - 2.0).abs() < 1e-12);
        for (a, b) in one.filling.vessels.iter().zip(&two.filling.vessels) {
            prop_assert!((a.oxygen_fraction - b.oxygen_fraction).abs() < 1e-12);
        }
        let ratio = two.requisition.theory_cm3 / one.requisition.theory_cm3;
        prop_assert!((ratio - 2.0).abs() < 1e-12);
    }

    #[test]
    fn a_warmer_room_never_holds_more_gas(lesson in lessons(), warmer in 0.1..5.0_f64) {
        let cool = plan(&lesson).unwrap();
        let mut warm = lesson.clone();
        warm.room.temperature_c = warm.room.temperature_c.map(|t| t + warmer);
        warm.run.rejected_cm3 = Some(cool.filling.rejected_cm3);
        let warm = plan(&warm).unwrap();
        for (a, b) in cool.gas.vessels.iter().zip(&warm.gas.vessels) {
            prop_assert!(b.amount_mmol < a.amount_mmol);
        }
    }

    #[test]
    fn rejection_worked_out_satisfies_every_vessel(lesson in lessons()) {
        let filling = plan(&lesson).unwrap().filling;
        prop_assert!(filling.vessels.iter().all(|vessel| vessel.is_good_enough()));
        prop_assert!(filling.rejected_cm3 >= filling.least_rejected_cm3);
        prop_assert!(filling.rejected_cm3 < filling.least_rejected_cm3 + 10.0);
    }
}
