//! Density of water against published values.

use overwater::scalar::Formula;
use overwater::water::density::{DensitySource, WaterDensityFrom};
use overwater_testkit::compare::{Tolerance, assert_close, assert_prints};
use overwater_testkit::data::Table;
use proptest::prelude::*;

/// Kell's equation, which older handbooks print; the default of the library is held to its own values elsewhere.
const KELL: WaterDensityFrom = WaterDensityFrom { source: DensitySource::Kell1975 };

fn table() -> Table {
    Table::read(format!("{}/data/density.csv", env!("CARGO_MANIFEST_DIR")))
}

/// In kg/m3.
fn density(celsius: f64) -> f64 {
    KELL.number([celsius]).unwrap() * 1000.0
}

/// Kell's equation 16 as an independent program computes it. With the transposed digits that several public copies carry
/// (16.897850e-3 in the denominator) it would be up to 0.63 kg/m3 off.
#[test]
fn kells_equation_to_the_printed_digits() {
    let table = table();
    assert_eq!(table.len(), 101);
    for row in table.rows() {
        assert_prints(&row.place(), density(row.number("t_c")), row.text("kell"));
    }
}

/// Kell keeps the older temperature scale and the older maximum of 999.972 kg/m3: 14.3 parts in a million from IAPWS-95 at
/// most, at 99 degC (0.0142 kg/m3).
#[test]
fn iapws_95_within_14_parts_in_a_million() {
    let mut worst = (0.0_f64, 0.0);
    let mut compared = 0;
    for row in table().rows() {
        let Some(expected) = row.optional("iapws95") else {
            assert!([0.0, 100.0].contains(&row.number("t_c")), "{}", row.place());
            continue;
        };
        compared += 1;
        let ours = density(row.number("t_c"));
        assert_close(&row.place(), ours, expected, Tolerance::Absolute(0.0143));
        let difference = (ours - expected).abs();
        if difference > worst.0 {
            worst = (difference, row.number("t_c"));
        }
    }
    assert_eq!(compared, 99);
    assert_eq!(worst.1, 99.0);
    assert_close("largest difference", worst.0, 0.0142, Tolerance::LastDigit("0.0142"));
}

/// OpenStax, Chemistry 2e (Flowers et al., 2019), Appendix E: densities in g/cm3 times 1000, as read. The rows at 0 and
/// 4 degC are on the older maximum, as Kell is; the others on the newer one, 0.003 kg/m3 higher.
#[test]
fn textbook_table() {
    for (celsius, printed) in [(0.0, "999.8395"), (4.0, "999.9720")] {
        assert_prints(&format!("{celsius} degC"), density(celsius), printed);
    }
    for (celsius, expected) in [
        (10.0, 999.7026),
        (15.0, 999.1026),
        (20.0, 998.2071),
        (22.0, 997.7735),
        (25.0, 997.0479),
        (30.0, 995.6502),
    ] {
        assert_close(
            &format!("{celsius} degC"),
            expected - density(celsius),
            0.0028,
            Tolerance::Absolute(0.0004),
        );
    }
}

/// Water is densest near 4 degC: 3.98 degC, 999.972 kg/m3 (Kell 1975).
#[test]
fn densest_near_four_degrees() {
    let slope = |celsius: f64| KELL.sensitivities([celsius]).unwrap().1[0];
    let (mut low, mut high) = (0.0, 10.0);
    for _ in 0..60 {
        let middle = (low + high) / 2.0;
        if slope(middle) > 0.0 { low = middle } else { high = middle }
    }
    assert_prints("temperature of the maximum", low, "3.98");
    assert_prints("the maximum", density(low), "999.972");
}

proptest! {
    #[test]
    fn rises_to_four_degrees_and_falls_from_there(celsius in 0.0..=99.0_f64, more in 0.01..=1.0_f64) {
        let (here, there) = (density(celsius), density(celsius + more));
        if celsius + more <= 3.98 {
            prop_assert!(there > here);
        } else if celsius >= 3.99 {
            prop_assert!(there < here);
        } else {
            // Across the top: less than the curve is flat there, 0.008 kg/m3 for each square kelvin.
            prop_assert!((there - here).abs() < 0.01);
        }
    }
}
