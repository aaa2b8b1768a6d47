//! A comparison that says which value differs, by how much, and what would have been allowed.

use std::fmt;

/// How far a value may be from what is expected.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Tolerance<'t> {
    /// By so much, in the unit of the value.
    Absolute(f64),
    /// By this share of the expected value.
    Relative(f64),
    /// By so many steps between neighbouring double-precision numbers; 0 for the same bits.
    Ulps(u64),
    /// By half a unit of the last digit of a printed number: what rounding it leaves open.
    LastDigit(&'t str),
    /// By so many units of the last digit of a printed number.
    Units(f64, &'t str),
}

/// A value that is not what was expected.
#[derive(Debug, Clone, PartialEq)]
pub struct Difference {
    /// Which value: a path or a description.
    pub path: String,
    /// What was found.
    pub got: f64,
    /// What was expected.
    pub expected: f64,
    /// The tolerance in words.
    pub tolerance: String,
}

impl fmt::Display for Difference {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let Difference { path, got, expected, tolerance } = self;
        write!(f, "{path}: got {got:?}, expected {expected:?}, difference {}", short(got - expected))?;
        write!(
            f,
            " ({} of the expected value); allowed: {tolerance}",
            short((got - expected) / expected.abs())
        )
    }
}

/// At most six figures.
fn short(value: f64) -> String {
    let text = format!("{value:.5e}");
    match text.split_once('e') {
        Some((mantissa, exponent)) => {
            format!("{}e{exponent}", mantissa.trim_end_matches('0').trim_end_matches('.'))
        }
        None => text,
    }
}

/// The number that a text prints, and one unit of its last digit.
///
/// # Panics
/// When the text is not a decimal number.
#[must_use]
pub fn printed(text: &str) -> (f64, f64) {
    let Ok(value) = text.parse::<f64>() else {
        panic!("{text:?} is not a printed number");
    };
    let (mantissa, exponent) = match text.split_once(['e', 'E']) {
        Some((mantissa, exponent)) => (mantissa, exponent.parse::<i32>().unwrap_or(0)),
        None => (text, 0),
    };
    let places = mantissa.split_once('.').map_or(0, |(_, places)| places.len());
    let places = i32::try_from(places).unwrap_or(0);
    // A power of ten read from text is correctly rounded; one that is multiplied up need not be.
    let unit = format!("1e{}", exponent - places).parse().unwrap_or(f64::NAN);
    (value, unit)
}

/// How many steps apart two numbers lie on the line of all double-precision numbers.
#[must_use]
pub fn ulps_between(a: f64, b: f64) -> u64 {
    let place = |value: f64| {
        let bits = value.to_bits() as i64;
        if bits < 0 { i64::MIN.wrapping_sub(bits) } else { bits }
    };
    place(a).abs_diff(place(b))
}

/// Whether `got` is as near to `expected` as `tolerance` asks. A NaN is near to nothing.
///
/// # Errors
/// The difference, in words.
pub fn close(path: &str, got: f64, expected: f64, tolerance: Tolerance<'_>) -> Result<(), Difference> {
    let distance = (got - expected).abs();
    // Beside half a unit of a decimal digit, a double-precision number can be off by its own rounding.
    let rounding = 4.0 * f64::EPSILON * expected.abs();
    let (near, words) = match tolerance {
        Tolerance::Absolute(allowed) => (distance <= allowed, format!("{allowed:e} either way")),
        Tolerance::Relative(share) => {
            (distance <= share * expected.abs(), format!("{share:e} of the expected value"))
        }
        Tolerance::Ulps(steps) => {
            (!distance.is_nan() && ulps_between(got, expected) <= steps, format!("{steps} ulp"))
        }
        Tolerance::LastDigit(text) => {
            let allowed = 0.5 * printed(text).1;
            (distance <= allowed + rounding, format!("{allowed:e}, half a unit of the last digit of {text}"))
        }
        Tolerance::Units(units, text) => {
            let allowed = units * printed(text).1;
            (
                distance <= allowed + rounding,
                format!("{allowed:e}, {units} units of the last digit of {text}"),
            )
        }
    };
    if near {
        return Ok(());
    }
    Err(Difference { path: path.to_owned(), got, expected, tolerance: words })
}

/// Fails where `got` is not as near to `expected` as `tolerance` asks.
///
/// # Panics
/// With the path, both values, their difference and the tolerance.
#[track_caller]
pub fn assert_close(path: &str, got: f64, expected: f64, tolerance: Tolerance<'_>) {
    if let Err(difference) = close(path, got, expected, tolerance) {
        panic!("{difference}");
    }
}

/// Fails where `got` does not round to the printed number.
///
/// # Panics
/// As [`assert_close`].
#[track_caller]
pub fn assert_prints(path: &str, got: f64, text: &str) {
    assert_close(path, got, printed(text).0, Tolerance::LastDigit(text));
}

/// Fails where two numbers do not have the same bits, or are not both NaN.
///
/// # Panics
/// As [`assert_close`].
#[track_caller]
pub fn assert_same_bits(path: &str, got: f64, expected: f64) {
    assert!(
        got.to_bits() == expected.to_bits() || (got.is_nan() && expected.is_nan()),
        "{path}: got {got:?} ({:016x}), expected the bits of {expected:?} ({:016x})",
        got.to_bits(),
        expected.to_bits()
    );
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_printed_number_has_a_value_and_a_last_digit() {
        for (text, value, unit) in [
            ("3.1690", 3.169, 1e-4),
            ("740", 740.0, 1.0),
            ("7.69e-4", 7.69e-4, 1e-6),
            ("1.30e3", 1300.0, 10.0),
            ("-2.5", -2.5, 0.1),
            ("0.10", 0.1, 0.01),
        ] {
            assert_eq!(printed(text), (value, unit), "{text}");
        }
    }

    #[test]
    #[should_panic(expected = "\"about 3\" is not a printed number")]
    fn words_are_not_a_printed_number() {
        let _ = printed("about 3");
    }

    /// The greatest distance that each tolerance lets pass, and one beyond it.
    #[test]
    fn each_tolerance_ends_where_it_says() {
        for (tolerance, near, far) in [
            (Tolerance::Absolute(0.25), 8.25, 8.251),
            (Tolerance::Relative(0.125), 9.0, 9.001),
            (Tolerance::Ulps(1), 8.0_f64.next_up(), 8.0_f64.next_up().next_up()),
            (Tolerance::Ulps(0), 8.0, 8.0_f64.next_up()),
            (Tolerance::LastDigit("8.0"), 8.05, 8.0501),
            (Tolerance::Units(2.0, "8.0"), 8.2, 8.2001),
        ] {
            assert_eq!(close("x", near, 8.0, tolerance), Ok(()), "{tolerance:?}");
            assert_eq!(
                close("x", 16.0 - near, 8.0, tolerance).is_ok(),
                !matches!(tolerance, Tolerance::Ulps(1))
            );
            assert!(close("x", far, 8.0, tolerance).is_err(), "{tolerance:?}");
            assert!(close("x", 16.0 - far, 8.0, tolerance).is_err(), "{tolerance:?}");
            assert!(close("x", f64::NAN, 8.0, tolerance).is_err(), "{tolerance:?}");
            assert!(close("x", 8.0, f64::NAN, tolerance).is_err(), "{tolerance:?}");
        }
    }

    #[test]
    fn steps_are_counted_across_zero_and_powers_of_two() {
        assert_eq!(ulps_between(1.0, 1.0), 0);
        assert_eq!(ulps_between(0.0, -0.0), 0);
        assert_eq!(ulps_between(0.0_f64.next_up(), 0.0_f64.next_down()), 2);
        assert_eq!(ulps_between(2.0_f64.next_down(), 2.0_f64.next_up()), 2);
        assert_eq!(ulps_between(-1.0, (-1.0_f64).next_up()), 1);
    }

    #[test]
    #[should_panic(expected = "vapour_pressure at 25 degC: got 3.294, expected 3.169, difference 1.25e-1 \
                    (3.94446e-2 of the expected value); allowed: 5e-5, half a unit of the last digit of 3.1690")]
    fn a_failure_names_the_path_both_values_and_the_tolerance() {
        assert_prints("vapour_pressure at 25 degC", 3.294, "3.1690");
    }

    #[test]
    fn what_rounds_to_the_printed_number_passes() {
        assert_prints("just below", 3.169_049_9, "3.1690");
        assert_prints("half-way", 740.5, "740");
    }

    #[test]
    #[should_panic(expected = "allowed: 5e-1 either way")]
    fn an_absolute_failure_says_so() {
        assert_close("x", 1.0, 2.0, Tolerance::Absolute(0.5));
    }

    #[test]
    fn the_same_bits_or_both_not_a_number() {
        assert_same_bits("x", 0.1 + 0.2, 0.300_000_000_000_000_04);
        assert_same_bits("x", f64::NAN, -f64::NAN);
    }

    #[test]
    #[should_panic(expected = "expected the bits of 0.3 (3fd3333333333333)")]
    fn other_bits_fail() {
        assert_same_bits("x", 0.1 + 0.2, 0.3);
    }

    #[test]
    #[should_panic(expected = "expected the bits of 0.0")]
    fn a_negative_zero_is_not_a_zero() {
        assert_same_bits("x", -0.0, 0.0);
    }
}
