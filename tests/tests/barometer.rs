//! Pressure at a height against the standard atmosphere and against what a weather report makes of it.

use overwater::gas::barometer::StationPressure;
use overwater::scalar::{Formula, Script, Swap};
use overwater_testkit::compare::{Tolerance, assert_close, assert_prints, ulps_between};
use proptest::prelude::*;

/// Nominal radius of the Earth, ISO 2533:1975.
const RADIUS: f64 = 6_356_766.0;

fn station(sea_level_kpa: f64, altitude_m: f64) -> f64 {
    StationPressure.number([sea_level_kpa, altitude_m]).unwrap()
}

/// ISO 2533:1975 and ICAO Doc 7488/3 (1993), tables of the standard atmosphere, in Pa at geopotential heights (from
/// memory; a public program of the same atmosphere agrees to all digits).
#[test]
fn standard_atmosphere() {
    for (geopotential, pascal) in
        [(0.0, "101325"), (500.0, "95460.8"), (1000.0, "89874.6"), (2000.0, "79495.2"), (5000.0, "54019.9")]
    {
        let altitude = RADIUS * geopotential / (RADIUS - geopotential);
        assert_prints(&format!("{geopotential} m"), station(101.325, altitude) * 1000.0, pascal);
    }
}

/// A school 145 m up on a day with 1021 hPa reduced to sea level: 100.36 kPa (computed by hand from the same equation:
/// 102.1 (1 - 0.0065 x 144.997/288.15)^5.25588).
#[test]
fn a_school_at_145_metres() {
    assert_prints("station pressure", station(102.1, 145.0), "100.36");
    let script = Script::new();
    StationPressure.marked([102.1, 145.0], &script);
    let height = script.steps().into_iter().find(|(symbol, _)| symbol.id == "geopotential_height").unwrap().1;
    assert_prints("geopotential height", height, "144.997");
}

/// How much too high a pressure reduced to sea level is when it is used as it stands, in per cent of itself and in per
/// cent of the right one (computed). A map of the trade that prints 0.6, 1.2, 1.8, 2.4, 3.5 and 4.7 mixes the two at 200 m.
#[test]
fn a_weather_report_used_as_it_stands() {
    for (altitude, of_itself, of_the_right_one) in [
        (50.0, "0.6", "0.6"),
        (100.0, "1.2", "1.2"),
        (150.0, "1.8", "1.8"),
        (200.0, "2.3", "2.4"),
        (300.0, "3.5", "3.6"),
        (400.0, "4.7", "4.9"),
    ] {
        let right = station(101.325, altitude);
        assert_prints(&format!("{altitude} m"), 100.0 * (1.0 - right / 101.325), of_itself);
        assert_prints(&format!("{altitude} m"), 100.0 * (101.325 / right - 1.0), of_the_right_one);
    }
    // 100 m are 1.2 kPa (computed).
    assert_prints("100 m", 101.325 - station(101.325, 100.0), "1.2");
}

/// The height taken with the wrong sign is a slip that shows: above the pressure at sea level instead of below it.
#[test]
fn height_with_the_wrong_sign() {
    let script = Script::new().swap("altitude", Swap::Slip(|height| -height));
    let slipped = StationPressure.marked([102.1, 145.0], &script);
    assert_close("slipped", slipped, station(102.1, -145.0), Tolerance::Ulps(0));
    assert!(slipped > 102.1 && station(102.1, 145.0) < 102.1);
}

proptest! {
    #[test]
    fn sea_level_is_left_as_it_is(kpa in 85.0..=110.0_f64) {
        // Only the change of the unit to pascal and back is rounded.
        prop_assert!(ulps_between(station(kpa, 0.0), kpa) <= 1);
    }

    #[test]
    fn higher_is_less(kpa in 85.0..=110.0_f64, altitude in -450.0..=5499.0_f64) {
        prop_assert!(station(kpa, altitude + 1.0) < station(kpa, altitude));
    }

    /// The pressure falls by its own weight: dp/dz = -p g/(R(air) T), here from the derivative by dual numbers.
    #[test]
    fn falls_by_the_weight_of_the_air(kpa in 85.0..=110.0_f64, altitude in -450.0..=5500.0_f64) {
        let (pressure, [_, slope]) = StationPressure.sensitivities([kpa, altitude]).unwrap();
        let height = RADIUS * altitude / (RADIUS + altitude);
        let stretch = (RADIUS / (RADIUS + altitude)).powi(2);
        let weight = pressure * 9.806_65 / (287.052_87 * (288.15 - 0.006_5 * height));
        prop_assert!((slope / (-weight * stretch) - 1.0).abs() < 1e-12, "{} against {}", slope, weight);
    }
}
