//! The room's air after a jar is opened, and the limits for it.

use overwater::Code;
use overwater::burn::air::{
    Check, Release, Room, RoomAir, RoomConcentration, Source, Unit, mean_falling, release,
};
use overwater::reference::airborne::AIRBORNE;
use overwater::reference::exposure_limits::{AveragedOver, Body, EXPOSURE_LIMITS, Kind};
use overwater::scalar::Formula;
use overwater_testkit::strategies::inputs;
use proptest::prelude::*;

const ROOM: Room =
    Room { volume_m3: 200.0, air_changes_per_hour: 2.0, temperature_c: 20.0, pressure_kpa: 101.325 };

#[track_caller]
fn close(got: f64, expected: f64, tolerance: f64) {
    assert!((got - expected).abs() <= tolerance, "{got} is not {expected} within {tolerance}");
}

fn sulfur(mass_g: f64, how: Release, room: Room) -> RoomAir {
    release(&Source::new("SO2", mass_g * 64.064 / 32.065).unwrap(), how, room).unwrap()
}

fn check(air: &RoomAir, body: Body, kind: Kind) -> Check {
    *air.checks.iter().find(|check| check.limit.body == body && check.limit.kind == kind).unwrap()
}

#[test]
fn a_tenth_of_a_gram_of_sulfur() {
    // By hand: 0.10/32.06 = 3.12 mmol, x 24.06 dm3/mol = 75 cm3, 0.20 g; in 200 m3 0.375 ppm and 1.0 mg/m3. Mean over 15
    // minutes at 2 changes an hour (1 - e^-0.5)/0.5 = 0.787, over 8 hours (1 - e^-16)/16 = 0.0625.
    let air = sulfur(0.10, Release::ONE_JAR, ROOM);
    close(air.released_mmol, 3.12, 0.005);
    close(air.released_cm3.unwrap(), 75.0, 0.1);
    close(air.peak_ppm.unwrap(), 0.375, 0.001);
    close(air.peak_mg_per_m3, 1.0, 0.005);
    close(air.share_over_15_min, 0.787, 0.000_5);
    close(air.share_over_8_h, 0.0625, 1e-6);
    assert!(!air.needs_fume_cupboard() && air.advice().contains("fume cupboard stays"));
    let long = check(&air, Body::EuropeanUnion, Kind::LongTerm);
    assert!(long.limit.verified && long.unit == Unit::Ppm && long.allowed == 0.5);
    close(long.found, 0.375 * 0.0625, 1e-4);
    close(long.air_needed_m3, 150.0, 0.3);
    assert_eq!(long.minutes_until_below, Some(0.0));
    // What is from memory says so, and names the document.
    let british = check(&air, Body::Hse, Kind::ShortTerm);
    assert!(!british.limit.verified && british.limit.document.contains("EH40/2005"));
}

#[test]
fn eight_groups_at_once() {
    // 8 x 0.375 = 3.0 ppm at the start, 2.36 over 15 minutes: above 1 ppm. Below 1 ppm after ln 3 / 2 h = 33 minutes.
    let air = sulfur(0.10, Release { leak_fraction: 1.0, jars: 8 }, ROOM);
    close(air.peak_ppm.unwrap(), 3.0, 0.01);
    let short = check(&air, Body::EuropeanUnion, Kind::ShortTerm);
    close(short.found, 2.36, 0.01);
    assert!(short.is_exceeded() && air.needs_fume_cupboard());
    close(short.minutes_until_below.unwrap(), 33.0, 0.1);
    assert!(air.advice().contains("fume cupboard only"));
    assert!(air.tightest().unwrap().found / air.tightest().unwrap().allowed >= short.found / short.allowed);
    // A tenth of it escapes: a tenth of the concentration.
    let little = sulfur(0.10, Release { leak_fraction: 0.1, jars: 8 }, ROOM);
    close(little.peak_ppm.unwrap(), 0.300, 0.001);
    // Without ventilation it never comes down.
    let sealed =
        sulfur(0.10, Release { leak_fraction: 1.0, jars: 8 }, Room { air_changes_per_hour: 0.0, ..ROOM });
    assert_eq!(check(&sealed, Body::EuropeanUnion, Kind::ShortTerm).minutes_until_below, None);
    assert_eq!((sealed.share_over_15_min, sealed.share_over_8_h), (1.0, 1.0));
}

#[test]
fn each_limit_is_compared_over_its_own_time_and_in_its_own_unit() {
    let air = sulfur(0.10, Release::ONE_JAR, ROOM);
    assert_eq!(air.checks.len(), EXPOSURE_LIMITS.iter().filter(|limit| limit.cas == "7446-09-5").count());
    for check in &air.checks {
        let over = match check.limit.averaged_over {
            AveragedOver::Instant => 1.0,
            AveragedOver::Minutes(15) => air.share_over_15_min,
            AveragedOver::Hours(8) => air.share_over_8_h,
            // (1 - e^-1)/1 and (1 - e^-20)/20, by hand.
            AveragedOver::Minutes(30) => 0.632_1,
            AveragedOver::Hours(10) => 0.05,
            other => panic!("{other:?}"),
        };
        close(check.found / air.peak_ppm.unwrap(), over, 1e-4);
    }
    // Magnesium oxide: 0.166 g in 200 m3 is 0.83 mg/m3; the British limit counts the metal, 60.3 % of it.
    let smoke = release(&Source::new("MgO", 0.1658).unwrap(), Release::ONE_JAR, ROOM).unwrap();
    close(smoke.peak_mg_per_m3, 0.829, 0.001);
    assert!(smoke.peak_ppm.is_none() && smoke.released_cm3.is_none());
    let metal = check(&smoke, Body::Hse, Kind::LongTerm);
    close(metal.found, 0.829 * 0.603 * 0.0625, 1e-4);
    let whole = check(&smoke, Body::Ontario, Kind::LongTerm);
    close(whole.found, 0.829 * 0.0625, 1e-4);
    // Sodium peroxide smoke is counted as the hydroxide: 0.0848 g become 0.0870 g.
    let sodium = release(&Source::new("Na2O2", 0.0848).unwrap(), Release::ONE_JAR, ROOM).unwrap();
    close(sodium.peak_mg_per_m3, 0.435, 0.001);
}

#[test]
fn every_product_that_gets_into_the_air_has_a_limit() {
    for row in &AIRBORNE {
        let air = release(&Source::new(row.product, 0.1).unwrap(), Release::ONE_JAR, ROOM).unwrap();
        assert!(!air.checks.is_empty(), "{}", row.product);
        assert_eq!(air.peak_ppm.is_some(), row.is_gas);
    }
}

#[test]
fn nonsense_is_refused() {
    let error = Source::new("SO3", 0.1).unwrap_err();
    assert_eq!(error.code, Code::UnknownName);
    assert!(error.to_string().contains("did you mean SO2?"), "{error}");
    assert_eq!(Source::new("SO2", 0.0).unwrap_err().code, Code::OutOfRange);
    let source = Source::new("SO2", 0.2).unwrap();
    for room in [
        Room { volume_m3: 0.0, ..ROOM },
        Room { air_changes_per_hour: -1.0, ..ROOM },
        Room { temperature_c: 90.0, ..ROOM },
        Room { pressure_kpa: 0.0, ..ROOM },
    ] {
        assert_eq!(release(&source, Release::ONE_JAR, room).unwrap_err().code, Code::OutOfRange);
    }
    for how in [Release { leak_fraction: 1.1, jars: 1 }, Release { leak_fraction: 0.5, jars: 0 }] {
        assert_eq!(release(&source, how, ROOM).unwrap_err().code, Code::OutOfRange);
    }
}

proptest! {
    #[test]
    fn linear_in_the_source_and_falling_as_the_exponential(
        drawn in inputs(&RoomConcentration),
        factor in 0.1..10.0_f64,
    ) {
        let [amount, room, celsius, pressure, changes, time] = drawn;
        let x = changes * time / 3600.0;
        // Beyond, nothing is left that a number holds to its last digit.
        prop_assume!(x < 600.0);
        let more = (amount * factor).clamp(1e-6, 1e5);
        let one = RoomConcentration.number(drawn).unwrap();
        let other = RoomConcentration.number([more, room, celsius, pressure, changes, time]).unwrap();
        prop_assert!((other * amount - one * more).abs() <= 1e-12 * (one * more).abs());
        let start = RoomConcentration.number([amount, room, celsius, pressure, changes, 0.0]).unwrap();
        let later = RoomConcentration.number(drawn).unwrap();
        prop_assert!((later / start / f64::exp(-x) - 1.0).abs() < 1e-9);
        // The mean lies between the end and the start, and is the integral over the time.
        let mean = start * mean_falling(changes / 3600.0, time);
        prop_assert!(mean >= later * (1.0 - 1e-10) && mean <= start * (1.0 + 1e-10));
        if x > 1e-3 {
            prop_assert!((mean * x / (start - later) - 1.0).abs() < 1e-9);
        }
    }
}
