//! Numbers as tables print them.

/// Value and uncertainty of a number in concise notation: the digits in brackets count in the last places of the
/// value, unless they have a point of their own.
///
/// # Panics
///
/// When the text is no such number.
#[must_use]
pub fn concise(text: &str) -> (f64, f64) {
    let (value, bracket) = text.split_once('(').expect("a bracket");
    let bracket = bracket.strip_suffix(')').expect("a closing bracket");
    let decimals = value.split_once('.').map_or(0, |(_, decimals)| decimals.len());
    let uncertainty = if bracket.contains('.') {
        bracket.parse()
    } else {
        // As a text, so that the double nearest to the decimal number comes out.
        format!("{bracket}e-{decimals}").parse()
    };
    (value.parse().expect("a number"), uncertainty.expect("digits"))
}

/// A decimal number as a whole number of millionths.
///
/// # Panics
///
/// When the text is no plain decimal number with at most six decimals.
#[must_use]
pub fn millionths(text: &str) -> i128 {
    let (whole, decimals) = text.split_once('.').unwrap_or((text, ""));
    assert!(decimals.len() <= 6, "{text}");
    format!("{whole}{decimals:0<6}").parse().expect("digits")
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn concise_notation_counts_in_the_last_places() {
        assert_eq!(concise("4.002602(2)"), (4.002602, 0.000002));
        assert_eq!(concise("1.0080(2)"), (1.008, 0.0002));
        assert_eq!(concise("39.95(16)"), (39.95, 0.16));
        assert_eq!(concise("207.2(1.1)"), (207.2, 1.1));
        assert_eq!(concise("132.90545196(6)"), (132.90545196, 0.00000006));
        assert_eq!(concise("12(3)"), (12.0, 3.0));
    }

    #[test]
    fn decimals_become_whole_millionths() {
        assert_eq!(millionths("1.0080"), 1_008_000);
        assert_eq!(millionths("0.95"), 950_000);
        assert_eq!(millionths("10"), 10_000_000);
        assert_eq!(millionths("53.05275"), 53_052_750);
    }
}
