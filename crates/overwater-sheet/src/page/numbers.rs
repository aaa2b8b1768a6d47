//! Numbers and words as the page shows them.

use overwater::units::{decimals, significant};

/// Most figures that a number somebody gave is shown with.
const MOST_FIGURES: usize = 6;
/// Keeps a figure and its unit on one line.
const NO_BREAK: char = '\u{a0}';

/// To so many significant figures.
pub(super) fn sig(value: f64, figures: usize) -> String {
    typeset(&significant(value, figures))
}

/// To so many decimal places.
pub(super) fn dec(value: f64, places: usize) -> String {
    if value.is_finite() { typeset(&decimals(value, places)) } else { UNKNOWN.to_owned() }
}

/// A number that somebody gave, or that was rounded to be measured: all of its figures, but at least so many.
pub(super) fn given(value: f64, figures: usize) -> String {
    let whole = (figures..MOST_FIGURES)
        .map(|figures| significant(value, figures))
        .find(|text| text.parse::<f64>().is_ok_and(|shown| (shown - value).abs() <= value.abs() * SAME));
    typeset(&whole.unwrap_or_else(|| significant(value, MOST_FIGURES)))
}

/// A fraction in per cent, to so many significant figures.
pub(super) fn percent(fraction: f64, figures: usize) -> String {
    format!("{}{NO_BREAK}%", sig(fraction * 100.0, figures))
}

/// A constant with every figure that its source prints.
pub(super) fn full(value: f64) -> String {
    let exponent = if value == 0.0 { 0.0 } else { value.abs().log10().floor() };
    if (-3.0..6.0).contains(&exponent) { typeset(&value.to_string()) } else { typeset(&format!("{value:e}")) }
}

/// A figure and its unit, which stay together.
pub(super) fn with_unit(figure: &str, unit: &str) -> String {
    format!("{figure}{NO_BREAK}{unit}")
}

/// A text as HTML and as XML, without the control characters that neither may hold.
pub(super) fn escape(text: &str) -> String {
    let mut escaped = String::with_capacity(text.len());
    for c in text.chars() {
        match c {
            '<' => escaped.push_str("&lt;"),
            '>' => escaped.push_str("&gt;"),
            '&' => escaped.push_str("&amp;"),
            '"' => escaped.push_str("&quot;"),
            '\'' => escaped.push_str("&#39;"),
            '\t' | '\n' | '\r' => escaped.push(' '),
            c if c.is_control() || matches!(c, '\u{fffe}' | '\u{ffff}') => {}
            c => escaped.push(c),
        }
    }
    escaped
}

/// Relative difference below which two numbers differ by rounding only.
const SAME: f64 = 1e-9;
const UNKNOWN: &str = "not known";

/// A printed number with a true minus sign and with its power of ten written out.
fn typeset(number: &str) -> String {
    if number.contains("NaN") || number.contains("inf") {
        return UNKNOWN.to_owned();
    }
    let (mantissa, exponent) = number.split_once('e').unwrap_or((number, ""));
    let mantissa = mantissa.replace('-', "\u{2212}");
    if exponent.is_empty() {
        return mantissa;
    }
    let power: String = exponent.chars().map(superscript).collect();
    format!("{mantissa}{NO_BREAK}×{NO_BREAK}10{power}")
}

/// A text with the numbers in it as they are shown: true minus signs, powers of ten written out.
pub(super) fn in_text(text: &str) -> String {
    let shown = |word: &str| {
        let number = word.trim_end_matches([',', ';']);
        if number.parse::<f64>().is_ok_and(f64::is_finite) {
            typeset(number) + word.get(number.len()..).unwrap_or_default()
        } else {
            word.to_owned()
        }
    };
    text.split(' ').map(shown).collect::<Vec<_>>().join(" ")
}

fn superscript(c: char) -> char {
    match c {
        '-' => '⁻',
        '0' => '⁰',
        '1' => '¹',
        '2' => '²',
        '3' => '³',
        '4' => '⁴',
        '5' => '⁵',
        '6' => '⁶',
        '7' => '⁷',
        '8' => '⁸',
        '9' => '⁹',
        other => other,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_given_number_keeps_its_figures_and_gets_the_least() {
        for (value, figures, expected) in [
            (90.0, 2, "90"),
            (0.1, 2, "0.10"),
            (0.125, 2, "0.125"),
            (1615.0, 3, "1615"),
            (12.000_000_000_000_002, 2, "12"),
            (1.0 / 3.0, 2, "0.333333"),
            (0.0, 2, "0"),
            (123_456.0, 2, "123456"),
        ] {
            assert_eq!(given(value, figures), expected, "{value} to {figures}");
        }
    }

    #[test]
    fn powers_of_ten_minus_signs_and_gaps_are_typeset() {
        assert_eq!(sig(4.12e-5, 2), "4.1\u{a0}×\u{a0}10⁻⁵");
        assert_eq!(full(2.03e-5), "2.03\u{a0}×\u{a0}10⁻⁵");
        assert_eq!(full(8.314_462_618_153_24), "8.31446261815324");
        assert_eq!(full(4180.0), "4180");
        assert_eq!(full(0.0728), "0.0728");
        assert_eq!(full(0.0), "0");
        assert_eq!(full(2.5e12), "2.5\u{a0}×\u{a0}10¹²");
        assert_eq!(dec(-18.36, 1), "\u{2212}18.4");
        assert_eq!(dec(-0.04, 1), "0.0");
        assert_eq!(sig(f64::NAN, 3), "not known");
        assert_eq!(dec(f64::INFINITY, 1), "not known");
        assert_eq!(percent(0.108_88, 2), "11\u{a0}%");
        assert_eq!(with_unit("20.8", "cm³"), "20.8\u{a0}cm³");
    }

    #[test]
    fn numbers_in_a_text_are_typeset_and_words_left_alone() {
        assert_eq!(
            in_text("-1.5e-4 ± 2e-5, -0.3; - reads low, e5 inf 3"),
            "\u{2212}1.5\u{a0}×\u{a0}10⁻⁴ ± 2\u{a0}×\u{a0}10⁻⁵, \u{2212}0.3; - reads low, e5 inf 3"
        );
    }

    #[test]
    fn nothing_of_a_text_is_taken_for_markup() {
        assert_eq!(
            escape("<a b=\"c\">&'</a>\0\u{1b}\n\u{85}é🔥"),
            "&lt;a b=&quot;c&quot;&gt;&amp;&#39;&lt;/a&gt; é🔥"
        );
    }
}
