//! A printed table, read as a person reads it: straight lines between the entries, nothing beyond the ends.

use super::{Scalar, Source};
use crate::units::Unit;

/// A printed table of one quantity against another, arguments ascending.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Table {
    /// Argument and value as printed.
    pub entries: &'static [(f64, f64)],
    /// Unit of the arguments.
    pub argument: &'static Unit,
    /// Unit of the values.
    pub value: &'static Unit,
    /// Where it is printed.
    pub source: &'static Source,
}

impl Table {
    /// The value at an argument, both in SI base units: the printed entry where there is one, on the straight line
    /// between its two neighbours elsewhere, NaN beyond the ends.
    #[inline(always)]
    pub fn read<S: Scalar>(&self, argument: S) -> S {
        let [start, value, slope] = argument.look_up(|x| self.line(x).unwrap_or([f64::NAN; 3]));
        (argument - start) * slope + value
    }

    /// Start, value at the start and slope of the line that `x` falls on.
    fn line(&self, x: f64) -> Option<[f64; 3]> {
        let si = |entry: &(f64, f64)| (self.argument.to_si(entry.0), self.value.to_si(entry.1));
        let after = self.entries.partition_point(|entry| si(entry).0 <= x);
        let (start, value) = si(self.entries.get(after.checked_sub(1)?)?);
        let next = self.entries.get(after).map(si);
        // The last entry itself is in the table; its slope is that of the line that ends there.
        let ((from, low), (to, high)) = match next {
            Some(next) => ((start, value), next),
            None if x == start => (si(self.entries.get(after.checked_sub(2)?)?), (start, value)),
            None => return None,
        };
        Some([start, value, (high - low) / (to - from)])
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::scalar::{Lanes, Sensitivities};
    use crate::units;

    static WHERE: Source = Source { text: "made up for this test", year: Some(2026) };
    static TABLE: Table = Table {
        entries: &[(0.0, 5.0), (10.0, 7.0), (40.0, 1.0)],
        argument: &units::DEGREE_CELSIUS,
        value: &units::KILOPASCAL,
        source: &WHERE,
    };

    #[test]
    fn entries_lines_and_ends() {
        for (t, kilopascals) in [(0.0, 5.0), (5.0, 6.0), (10.0, 7.0), (25.0, 4.0), (40.0, 1.0)] {
            let found: f64 = TABLE.read(t + 273.15);
            assert!((found - 1e3 * kilopascals).abs() < 1e-9, "{t} degC: {found}");
        }
        assert!(TABLE.read(273.15_f64.next_down()).is_nan());
        assert!(TABLE.read(313.15_f64.next_up()).is_nan());
        assert!(TABLE.read(f64::NAN).is_nan());
        let lanes = TABLE.read(Lanes([273.15, 298.15, 400.0]));
        assert_eq!(lanes.0[..2], [TABLE.read(273.15_f64), TABLE.read(298.15_f64)]);
        assert!(lanes.0[2].is_nan());
    }

    #[test]
    fn the_slope_is_that_of_the_line() {
        for (t, slope) in [(5.0, 200.0), (25.0, -200.0), (40.0, -200.0)] {
            let read = TABLE.read(Sensitivities::<1>::input(t + 273.15, 0));
            assert!((read.derivatives()[0] - slope).abs() < 1e-9, "{t} degC");
        }
    }
}
