//! What indicators show at a pH, in words.

use crate::reference::products_in_water::{LITMUS, UNIVERSAL_INDICATOR};

fn colour(chart: &'static [(f64, &'static str)], ph: f64) -> &'static str {
    chart.iter().find(|(below, _)| ph < *below).or(chart.last()).map_or("", |(_, words)| words)
}

/// The colour of universal indicator; common practice, no source: makers' charts differ by about one unit.
///
/// ```
/// use overwater::burn::aqueous::universal_indicator;
/// assert_eq!(universal_indicator(7.0), "green");
/// assert_eq!(universal_indicator(1.3), "deep red");
/// ```
#[must_use]
pub fn universal_indicator(ph: f64) -> &'static str {
    colour(&UNIVERSAL_INDICATOR, ph)
}

/// The colour of litmus, which changes between pH 5 and 8; common practice, no source.
///
/// ```
/// use overwater::burn::aqueous::litmus;
/// assert_eq!((litmus(4.0), litmus(10.0)), ("red", "blue"));
/// ```
#[must_use]
pub fn litmus(ph: f64) -> &'static str {
    colour(&LITMUS, ph)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn colours_change_at_the_limits_of_the_chart() {
        for chart in [&UNIVERSAL_INDICATOR[..], &LITMUS[..]] {
            assert!(chart.windows(2).all(|pair| pair[0].0 < pair[1].0));
            for pair in chart.windows(2) {
                assert_eq!(colour(chart, pair[0].0.next_down()), pair[0].1);
                assert_eq!(colour(chart, pair[0].0), pair[1].1);
            }
        }
        assert_eq!(universal_indicator(15.0), "violet");
        assert_eq!(litmus(7.0), "purple, between its colours");
    }
}
