//! A result and its uncertainty as they are written down.

/// A result with its uncertainty, both as text, rounded to the same place.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Stated {
    /// The result.
    pub value: String,
    /// The uncertainty.
    pub uncertainty: String,
}

/// Rounds an uncertainty to some significant figures and the result to the same place. Each is rounded once, from its exact
/// binary value; a value exactly half-way goes to the even digit. A result without uncertainty keeps all of its digits.
///
/// ```
/// use overwater::readings::uncertainty::stated::stated;
/// let text = |value, uncertainty, figures| {
///     let both = stated(value, uncertainty, figures);
///     (both.value, both.uncertainty)
/// };
/// // JCGM 100:2008, 7.2.2: 100.02147 g with 0.35 mg is stated as 100.02147(35) g.
/// assert_eq!(text(100.021_47, 0.000_35, 2), ("100.02147".to_owned(), "0.00035".to_owned()));
/// // A school result: 2 % of 8.01 g is 0.2 g, and the result is 8.0 g.
/// assert_eq!(text(8.01, 0.1602, 1), ("8.0".to_owned(), "0.2".to_owned()));
/// // What rounds up to a new place takes the result along; above the units, zeros stand for what is not known.
/// assert_eq!(text(1.234, 0.0096, 1), ("1.23".to_owned(), "0.01".to_owned()));
/// assert_eq!(text(1234.0, 96.0, 1), ("1200".to_owned(), "100".to_owned()));
/// ```
#[must_use]
pub fn stated(value: f64, uncertainty: f64, figures: usize) -> Stated {
    if !uncertainty.is_finite() || uncertainty <= 0.0 || !value.is_finite() {
        return Stated { value: value.to_string(), uncertainty: uncertainty.to_string() };
    }
    // Scientific notation rounds once and says which power of ten came out.
    let rounded = format!("{uncertainty:.*e}", figures.max(1) - 1);
    let power: i32 = rounded.split_once('e').and_then(|(_, power)| power.parse().ok()).unwrap_or(0);
    let last = power - (figures.max(1) as i32 - 1);
    Stated { value: to_place(value, last), uncertainty: to_place(uncertainty, last) }
}

/// A number rounded to the place 10^`last`.
fn to_place(value: f64, last: i32) -> String {
    if last <= 0 {
        return format!("{value:.*}", last.unsigned_abs() as usize);
    }
    let magnitude = if value == 0.0 { last } else { value.abs().log10().floor() as i32 };
    // One figure at least stands, so that 4 to the nearest ten is 0 and 6 is 10.
    if magnitude < last {
        let place = 10.0_f64.powi(last);
        return format!("{:.0}", (value / place).round_ties_even() * place);
    }
    let shown = format!("{value:.*e}", (magnitude - last) as usize);
    shown.parse::<f64>().map_or(shown, |number| format!("{number:.0}"))
}

#[cfg(test)]
mod tests {
    use super::*;

    fn text(value: f64, uncertainty: f64, figures: usize) -> String {
        let both = stated(value, uncertainty, figures);
        format!("{} ± {}", both.value, both.uncertainty)
    }

    #[test]
    fn half_way_goes_to_the_even_digit() {
        assert_eq!(text(2.5, 1.0, 1), "2 ± 1");
        assert_eq!(text(3.5, 1.0, 1), "4 ± 1");
        assert_eq!(text(0.5, 0.25, 1), "0.5 ± 0.2");
        assert_eq!(text(0.5, 0.75, 1), "0.5 ± 0.8");
    }

    #[test]
    fn large_small_negative_and_none() {
        assert_eq!(text(-123_456.0, 789.0, 2), "-123460 ± 790");
        assert_eq!(text(4.0, 96.0, 1), "0 ± 100");
        assert_eq!(text(-0.001_234, 0.000_056, 1), "-0.00123 ± 0.00006");
        assert_eq!(text(1.5, 0.0, 1), "1.5 ± 0");
        assert_eq!(text(0.0, 12.0, 1), "0 ± 10");
        // 95 is a tie of figures, and goes to the even digit: 100 (as 9 is odd).
        assert_eq!(text(99_999.0, 95.0, 1), "100000 ± 100");
    }
}
