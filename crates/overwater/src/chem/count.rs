//! How many: a whole number, or a decimal one where the formula says so, held exactly.

use std::fmt;

/// A positive number of atoms, groups or formula units, exact: 2, 0.95, 6.5.
///
/// Greatest value 10^15 (below which a double holds every whole number), at most 12 decimals.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub struct Count {
    /// The number without its decimal point; no trailing zeros unless it is whole.
    digits: u64,
    /// How many of the digits stand behind the point.
    decimals: u8,
}

const MAX_DIGITS: u64 = 1_000_000_000_000_000;
const MAX_DECIMALS: u8 = 12;

impl Count {
    /// One: what is meant when nothing is written.
    pub const ONE: Count = Count { digits: 1, decimals: 0 };

    /// `digits` / 10^`decimals`; `None` when it is zero or cannot be held.
    ///
    /// ```
    /// use overwater::chem::Count;
    /// assert_eq!(Count::new(95, 2).unwrap().to_string(), "0.95");
    /// assert_eq!(Count::new(20, 1), Count::new(2, 0));
    /// ```
    #[must_use]
    pub const fn new(digits: u64, decimals: u8) -> Option<Self> {
        let (mut digits, mut decimals) = (digits, decimals);
        while decimals > 0 && digits.is_multiple_of(10) && digits > 0 {
            digits /= 10;
            decimals -= 1;
        }
        if digits == 0 || digits > MAX_DIGITS || decimals > MAX_DECIMALS {
            return None;
        }
        Some(Count { digits, decimals })
    }

    /// The number as a double: exact when whole, else the nearest.
    #[must_use]
    pub fn to_f64(self) -> f64 {
        // Both are exact doubles, so the one division rounds once.
        let digits = self.digits as f64;
        if self.decimals == 0 { digits } else { digits / ten_to(self.decimals) as f64 }
    }

    /// The whole number, when it is one.
    ///
    /// ```
    /// use overwater::chem::Count;
    /// assert_eq!(Count::new(4, 0).unwrap().whole(), Some(4));
    /// assert_eq!(Count::new(95, 2).unwrap().whole(), None);
    /// ```
    #[must_use]
    pub const fn whole(self) -> Option<u64> {
        if self.decimals == 0 { Some(self.digits) } else { None }
    }

    /// How many decimals are needed to write it.
    #[must_use]
    pub const fn decimals(self) -> u8 {
        self.decimals
    }

    /// The number times 10^`decimals` as a whole number; `None` when it is not whole or cannot be held.
    #[must_use]
    pub fn scaled(self, decimals: u8) -> Option<u128> {
        let missing = decimals.checked_sub(self.decimals)?;
        10_u128.checked_pow(u32::from(missing))?.checked_mul(u128::from(self.digits))
    }

    /// The product; `None` when it cannot be held exactly.
    #[must_use]
    pub const fn checked_mul(self, other: Count) -> Option<Count> {
        match self.digits.checked_mul(other.digits) {
            Some(digits) => Count::new(digits, self.decimals + other.decimals),
            None => None,
        }
    }

    /// The sum; `None` when it cannot be held exactly.
    #[must_use]
    pub fn checked_add(self, other: Count) -> Option<Count> {
        let decimals = self.decimals.max(other.decimals);
        let digits = self.scaled(decimals)?.checked_add(other.scaled(decimals)?)?;
        Count::new(u64::try_from(digits).ok()?, decimals)
    }
}

const fn ten_to(decimals: u8) -> u64 {
    10_u64.pow(decimals as u32)
}

impl fmt::Display for Count {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        if self.decimals == 0 {
            return write!(f, "{}", self.digits);
        }
        let unit = ten_to(self.decimals);
        let width = usize::from(self.decimals);
        write!(f, "{}.{:0width$}", self.digits / unit, self.digits % unit)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn count(digits: u64, decimals: u8) -> Count {
        Count::new(digits, decimals).unwrap()
    }

    #[test]
    fn is_held_without_trailing_zeros() {
        assert_eq!(count(9500, 4), count(95, 2));
        assert_eq!(count(300, 2), count(3, 0));
        assert_eq!(count(300, 0).whole(), Some(300));
        assert_eq!(Count::new(0, 0), None);
        assert_eq!(Count::new(0, 3), None);
    }

    #[test]
    fn stays_inside_what_a_double_holds() {
        assert_eq!(count(MAX_DIGITS, 0).whole(), Some(1_000_000_000_000_000));
        assert_eq!(Count::new(MAX_DIGITS + 1, 0), None);
        assert_eq!(Count::new(1, 12).map(Count::decimals), Some(12));
        assert_eq!(Count::new(1, 13), None);
    }

    #[test]
    fn adds_and_multiplies_exactly() {
        assert_eq!(count(1, 1).checked_add(count(2, 1)), Count::new(3, 1));
        assert_eq!(count(95, 2).checked_add(count(5, 2)), Some(Count::ONE));
        assert_eq!(count(25, 2).checked_mul(count(4, 0)), Some(Count::ONE));
        assert_eq!(count(15, 1).checked_mul(count(3, 0)), Count::new(45, 1));
        assert_eq!(count(MAX_DIGITS, 0).checked_add(Count::ONE), None);
        assert_eq!(count(MAX_DIGITS, 0).checked_mul(count(2, 0)), None);
        assert_eq!(count(1, 7).checked_mul(count(1, 7)), None);
    }

    #[test]
    fn scales_for_whole_number_work() {
        assert_eq!(count(95, 2).scaled(2), Some(95));
        assert_eq!(count(95, 2).scaled(3), Some(950));
        assert_eq!(count(95, 2).scaled(1), None);
        assert_eq!(count(3, 0).scaled(2), Some(300));
        assert_eq!(count(MAX_DIGITS, 0).scaled(12), Some(10_u128.pow(27)));
        assert_eq!(count(MAX_DIGITS, 0).scaled(40), None);
    }

    #[test]
    fn prints_and_converts() {
        assert_eq!(count(1005, 3).to_string(), "1.005");
        assert_eq!(count(5, 3).to_string(), "0.005");
        assert_eq!(count(12, 0).to_string(), "12");
        assert_eq!(count(95, 2).to_f64(), 0.95);
        assert_eq!(count(12, 0).to_f64(), 12.0);
    }
}
