//! Air pressure, gravity and columns of liquid: published values to their printed digits, and what must hold between
//! them.

mod support;

use overwater::gas::barometer::{SeaLevelPressure, StationPressure};
use overwater::gas::column::{
    ColumnHeight, ColumnPressure, ColumnPressureAt, ConventionalColumn, ConventionalColumnPressure, Liquid,
    MercuryDensity,
};
use overwater::gas::gravity::{Gravity, Gravity1980};
use overwater::gas::level;
use overwater::gas::low_level::{LowLevelSeaLevelPressure, LowLevelStationPressure};
use overwater::gas::mercury_barometer::{MercuryBarometer, Scale};
use overwater::scalar::Formula;
use overwater::units::{Dimensioned, Length, MassDensity};
use overwater::water::density::WaterDensity;
use overwater_testkit::data::rows;
use proptest::prelude::*;
use support::{agrees, all_readings_agree, limits_are_kept};

const GRAVITY: &str = include_str!("../data/properties/gravity.csv");
const DENSITY: &str = include_str!("../data/properties/density.csv");

/// Conventional millimetre of mercury in kPa: 13595.1 kg/m3 x 9.80665 m/s2 x 1 mm.
const MMHG: f64 = 0.133_322_387_415;
const STANDARD: f64 = 9.806_65;

fn number(text: &str) -> f64 {
    text.parse().unwrap_or_else(|_| panic!("{text} is no number"))
}

/// Height above sea level of a geopotential height, with the nominal radius of ISO 2533.
fn geometric(geopotential: f64) -> f64 {
    6_356_766.0 * geopotential / (6_356_766.0 - geopotential)
}

#[test]
fn standard_atmosphere() {
    // ISO 2533:1975, pressures in hPa at geopotential heights in m.
    for (height, printed) in
        [(0.0, "1013.250"), (500.0, "954.608"), (1000.0, "898.746"), (2000.0, "794.952"), (5000.0, "540.199")]
    {
        let station = StationPressure.number([101.325, geometric(height)]).unwrap();
        agrees(10.0 * station, printed, &format!("{height} m"));
        let back = SeaLevelPressure.number([station, geometric(height)]).unwrap();
        assert!((back / 101.325 - 1.0).abs() < 4e-16, "{height} m: {back}");
    }
    // ISO 2533:1975 below the sea: 1074.78 hPa at -500 m (from memory).
    assert!(StationPressure.number([101.325, -450.0]).unwrap() > 106.0);
}

#[test]
fn reduction_for_low_stations() {
    // The hypsometric equation for dry air at 300 m: 2.2e-5 apart, because the guide's constant is 0.06 % smaller.
    let (altitude, temperature) = (300.0, 15.0);
    let station = LowLevelStationPressure.number([101.325, altitude, temperature, 0.0]).unwrap();
    let mean: f64 = temperature + 273.15 + 0.0065 * altitude / 2.0;
    let hypsometric = 101.325 * f64::exp(-STANDARD * altitude / (287.052_87 * mean));
    assert!((station / hypsometric - 1.0 - 2.2e-5).abs() < 1e-6, "{:e}", station / hypsometric - 1.0);
    // By hand, log10: 0.0148275 x 500/(283.15 + 1.625 + 8 x 0.12) = 0.025 946 24 with 8 hPa of vapour.
    let sea_level = LowLevelSeaLevelPressure.number([95.0, 500.0, 10.0, 0.8]).unwrap();
    assert!(((sea_level / 95.0).log10() - 0.025_946_24).abs() < 1e-8, "{}", (sea_level / 95.0).log10());
    // In the standard atmosphere itself the two relations meet, to the 0.06 % of the constant and the mean taken of the
    // temperature.
    for altitude in [-450.0, -100.0, 100.0, 400.0, 750.0] {
        let there = 15.0 - 0.0065 * altitude;
        let low = LowLevelStationPressure.number([101.325, altitude, there, 0.0]).unwrap();
        let standard = StationPressure.number([101.325, altitude]).unwrap();
        assert!((low / standard - 1.0).abs() < 8e-5, "{altitude} m: {low} {standard}");
    }
    // On a day 15 K warmer the standard atmosphere is 0.12 % low 200 m up.
    let warm = LowLevelStationPressure.number([101.325, 200.0, 15.0 - 1.3 + 15.0, 0.0]).unwrap();
    let standard = StationPressure.number([101.325, 200.0]).unwrap();
    assert!((100.0 * (warm / standard - 1.0) - 0.12).abs() < 0.005, "{}", warm / standard);
    // Vapour makes the air lighter: the pressure above falls less.
    let moist = LowLevelStationPressure.number([101.325, 500.0, 20.0, 2.0]).unwrap();
    assert!(moist > LowLevelStationPressure.number([101.325, 500.0, 20.0, 0.0]).unwrap());
}

#[test]
fn gravity_table() {
    let rows = rows(GRAVITY);
    assert_eq!(rows.len(), 19);
    for row in rows {
        let [latitude, wgs84, igf1980, above] = row[..] else { panic!("{row:?}") };
        let at = number(latitude);
        for sign in [1.0, -1.0] {
            let what = format!("{latitude} degrees");
            agrees(Gravity.number([sign * at, 0.0]).unwrap(), wgs84, &what);
            agrees(Gravity1980.number([sign * at]).unwrap(), igf1980, &what);
            agrees(Gravity.number([sign * at, 100.0]).unwrap(), above, &what);
        }
    }
    // World Geodetic System 1984; at the poles the rounded constants come out one unit higher in the last place.
    agrees(Gravity.number([0.0, 0.0]).unwrap(), "9.7803253359", "equator");
    for pole in [90.0, -90.0] {
        assert!((Gravity.number([pole, 0.0]).unwrap() - 9.832_184_937_8).abs() < 1e-10);
    }
    // The rule of 3.086e-6 m/s2 for each metre, over a kilometre at 51.5 degrees.
    let fall = Gravity.number([51.5, 0.0]).unwrap() - Gravity.number([51.5, 1000.0]).unwrap();
    assert!((fall / 3.086e-3 - 1.0).abs() < 2e-3, "{fall}");
    // Standard gravity is that at about 45.5 degrees.
    assert!(
        Gravity.number([45.0, 0.0]).unwrap() < STANDARD && Gravity.number([46.0, 0.0]).unwrap() > STANDARD
    );
}

#[test]
fn mercury() {
    for row in rows(DENSITY) {
        let [t, .., density] = row[..] else { panic!("{row:?}") };
        agrees(MercuryDensity.number([number(t)]).unwrap(), density, &format!("{t} degC"));
    }
    // Handbook values in kg/m3 (from memory).
    for (t, density) in [(0.0, 13_595.08), (20.0, 13_545.87), (25.0, 13_533.6)] {
        assert!((MercuryDensity.number([t]).unwrap() - density).abs() < 0.03, "{t} degC");
    }
    // The conventional millimetre of mercury is that of mercury at 0 degC, to 3 parts in a million.
    let pressure = ColumnPressureAt { liquid: Liquid::Mercury }.number([760.0, 0.0, STANDARD]).unwrap();
    assert!((pressure / (760.0 * MMHG) - 1.0).abs() < 3e-6, "{pressure}");
}

#[test]
fn columns() {
    // Conventional units: ISO 80000-4 and the torr of 101325/760 Pa.
    for (column, pascals) in [
        (ConventionalColumn::Water, 9.806_65),
        (ConventionalColumn::Mercury, 133.322_387_415),
        (ConventionalColumn::Torr, 133.322_368_421_052_63),
    ] {
        let found = ConventionalColumnPressure { column }.number([750.0]).unwrap();
        assert!((found / (0.75 * pascals) - 1.0).abs() < 1e-15, "{column:?}: {found}");
    }
    // Brine of 1.2 g/cm3 and oil of 0.92 g/cm3, by hand: ρ g h.
    for (density, kilopascals) in [(1.2, 1.176_798), (0.92, 0.902_211_8)] {
        let found = ColumnPressure.number([100.0, density, STANDARD]).unwrap();
        assert!((found / kilopascals - 1.0).abs() < 1e-14, "{density}: {found}");
    }
    // Water at its temperature is the column of its density, and the one of standard gravity that readings use.
    for t in [0.0, 4.0, 20.0, 99.0] {
        let density = WaterDensity.number([t]).unwrap();
        let at = ColumnPressureAt { liquid: Liquid::Water }.number([35.0, t, STANDARD]).unwrap();
        assert!((ColumnPressure.number([35.0, density, STANDARD]).unwrap() / at - 1.0).abs() < 1e-15);
        let used: f64 = level::column_pressure(Length::new(0.035), MassDensity::new(1e3 * density)).si();
        assert!((used / 1e3 / at - 1.0).abs() < 1e-15);
    }
    // 13.6 times as much for mercury.
    let ratio = |liquid| ColumnPressureAt { liquid }.number([10.0, 20.0, STANDARD]).unwrap();
    assert!((ratio(Liquid::Mercury) / ratio(Liquid::Water) - 13.570).abs() < 5e-4);
}

#[test]
fn mercury_barometer() {
    let barometer = MercuryBarometer::default();
    let millimetres = |t: f64| barometer.number([760.0, t, STANDARD]).unwrap() / MMHG;
    // Handbook corrections to 760 mm on brass, in mm (from memory).
    for (t, correction) in [(0.0, 0.0), (10.0, -1.24), (20.0, -2.47), (30.0, -3.71)] {
        assert!((millimetres(t) - 760.0 - correction).abs() < 0.01, "{t} degC: {}", millimetres(t));
    }
    // The classical formula with 181.8e-6 per kelvin for mercury and 18.4e-6 for brass (from memory).
    for t in [5.0, 15.0, 25.0, 35.0] {
        let classical = 760.0 * (1.0 - (181.8e-6 - 18.4e-6) * t / (1.0 + 181.8e-6 * t));
        assert!((millimetres(t) - classical).abs() < 0.006, "{t} degC: {} {classical}", millimetres(t));
    }
    // A scale that does not grow leaves the growth of brass out: 760 x 18.4e-6 x 20 x 0.9964 = 0.2787 mm.
    let without = MercuryBarometer { scale: Scale::True }.number([760.0, 20.0, STANDARD]).unwrap() / MMHG;
    assert!((millimetres(20.0) - without - 0.278_7).abs() < 0.000_1);
    // Gravity at the equator: 760 x (9.780325/9.80665 - 1) = -2.04 mm.
    let equator = Gravity.number([0.0, 0.0]).unwrap();
    let there = barometer.number([760.0, 0.0, equator]).unwrap() / MMHG;
    assert!((there - millimetres(0.0) + 2.04).abs() < 0.005, "{there}");
}

#[test]
fn limits_of_every_formula() {
    limits_are_kept(&StationPressure, [100.0, 100.0]);
    limits_are_kept(&SeaLevelPressure, [100.0, 100.0]);
    limits_are_kept(&LowLevelStationPressure, [100.0, 100.0, 15.0, 1.0]);
    limits_are_kept(&LowLevelSeaLevelPressure, [100.0, 100.0, 15.0, 1.0]);
    limits_are_kept(&Gravity, [50.0, 100.0]);
    limits_are_kept(&Gravity1980, [50.0]);
    limits_are_kept(&MercuryDensity, [20.0]);
    limits_are_kept(&ColumnPressure, [100.0, 1.0, STANDARD]);
    limits_are_kept(&ColumnHeight, [1.0, 1.0, STANDARD]);
    for liquid in [Liquid::Water, Liquid::Mercury] {
        limits_are_kept(&ColumnPressureAt { liquid }, [100.0, 20.0, STANDARD]);
    }
    for column in [ConventionalColumn::Water, ConventionalColumn::Mercury, ConventionalColumn::Torr] {
        limits_are_kept(&ConventionalColumnPressure { column }, [100.0]);
    }
    for scale in [Scale::Brass, Scale::True] {
        limits_are_kept(&MercuryBarometer { scale }, [760.0, 20.0, STANDARD]);
    }
}

proptest! {
    #[test]
    fn there_and_back(
        p in 86.0..109.0_f64,
        high in -449.0..5499.0_f64,
        low in -449.0..749.0_f64,
        t in -49.0..49.0_f64,
        e in 0.0..6.0_f64,
        h in -1999.0..1999.0_f64,
        density in 0.5..5.0_f64,
        g in 9.76..9.84_f64,
    ) {
        let station = StationPressure.evaluate([p, high]);
        prop_assert!((SeaLevelPressure.evaluate([station, high]) / p - 1.0).abs() < 4e-16);
        let station = LowLevelStationPressure.evaluate([p, low, t, e]);
        prop_assert!((LowLevelSeaLevelPressure.evaluate([station, low, t, e]) / p - 1.0).abs() < 4e-16);
        let pressure = ColumnPressure.number([h, density, g]).unwrap();
        prop_assert!((ColumnHeight.number([pressure, density, g]).unwrap() - h).abs() <= 1e-15 * h.abs());
    }

    #[test]
    fn readings(
        p in 86.0..109.0_f64,
        high in -449.0..5400.0_f64,
        low in -449.0..740.0_f64,
        t in 1.0..39.0_f64,
        e in 0.1..5.9_f64,
        h in 301.0..849.0_f64,
        density in 0.6..13.9_f64,
        g in 9.761..9.839_f64,
        latitude in 1.0..89.0_f64,
    ) {
        all_readings_agree(&StationPressure, [p, high]);
        all_readings_agree(&SeaLevelPressure, [p, high]);
        all_readings_agree(&LowLevelStationPressure, [p, low, t, e]);
        all_readings_agree(&LowLevelSeaLevelPressure, [p, low, t, e]);
        all_readings_agree(&Gravity, [latitude, high]);
        all_readings_agree(&Gravity, [-latitude, high]);
        all_readings_agree(&Gravity1980, [latitude]);
        all_readings_agree(&MercuryDensity, [t]);
        all_readings_agree(&ColumnPressure, [h, density, g]);
        all_readings_agree(&ColumnHeight, [p, density, g]);
        for liquid in [Liquid::Water, Liquid::Mercury] {
            all_readings_agree(&ColumnPressureAt { liquid }, [h, t, g]);
        }
        for column in [ConventionalColumn::Water, ConventionalColumn::Mercury, ConventionalColumn::Torr] {
            all_readings_agree(&ConventionalColumnPressure { column }, [h]);
        }
        for scale in [Scale::Brass, Scale::True] {
            all_readings_agree(&MercuryBarometer { scale }, [h, t, g]);
        }
    }

    #[test]
    fn pressure_falls_with_height_and_gravity_with_height_and_towards_the_equator(
        z in -449.0..5490.0_f64,
        latitude in 0.0..89.9_f64,
        step in 1e-2..1.0_f64,
    ) {
        prop_assert!(StationPressure.evaluate([100.0, z + step]) < StationPressure.evaluate([100.0, z]));
        // No more than 13 Pa a metre.
        prop_assert!(StationPressure.evaluate([101.325, z]) - StationPressure.evaluate([101.325, z + step]) < 0.013 * step);
        prop_assert!(Gravity.evaluate([latitude, z + step]) < Gravity.evaluate([latitude, z]));
        let poleward = (latitude + step).min(90.0);
        prop_assert!(Gravity.evaluate([poleward, z]) > Gravity.evaluate([latitude, z]));
        prop_assert!(Gravity1980.evaluate([poleward]) > Gravity1980.evaluate([latitude]));
        if z < 749.0 {
            let low = |z: f64| LowLevelStationPressure.evaluate([100.0, z, 15.0, 1.0]);
            prop_assert!(low(z + step) < low(z));
        }
    }
}
