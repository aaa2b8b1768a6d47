//! Two columns of readings, and what is wrong with them.
//!
//! Nothing is mended here: a finding names the row, and the caller decides. [`findings`] lists them all; a
//! [`Series`] refuses the first.

use std::fmt;

use crate::{Code, Error, Result};

/// The most rows that are taken: what a logger gives in a day at one reading a second.
pub const MOST_ROWS: usize = 100_000;

/// What the two columns are called, quantity first, unit last: the names that an error repeats.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Names {
    /// The column that is chosen or waited for, such as `time_s`.
    pub x: &'static str,
    /// The column that is read, such as `volume_cm3`.
    pub y: &'static str,
}

/// Volume of gas against time.
pub const VOLUME_AGAINST_TIME: Names = Names { x: "time_s", y: "volume_cm3" };
/// Mass against time.
pub const MASS_AGAINST_TIME: Names = Names { x: "time_s", y: "mass_g" };
/// Concentration against time.
pub const CONCENTRATION_AGAINST_TIME: Names = Names { x: "time_s", y: "concentration_mol_per_dm3" };

/// What the caller asks of the readings, beyond being finite numbers.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Demands {
    /// How many rows are needed.
    pub at_least: usize,
    /// Each x later than the one before: no row out of order, none repeated.
    pub increasing: bool,
    /// How far y may fall from one row to the next; nothing where falling is no fault.
    pub may_fall_by: Option<f64>,
    /// x and y must both be greater than zero, because logarithms or reciprocals are taken.
    pub positive: bool,
}

impl Demands {
    /// So many rows that do not all have the same x.
    #[must_use]
    pub const fn rows(at_least: usize) -> Demands {
        Demands { at_least, increasing: false, may_fall_by: None, positive: false }
    }

    /// Gas collected over time: rows in order of time, and a volume that does not fall by more than a misreading.
    #[must_use]
    pub const fn collected(at_least: usize, misreading: f64) -> Demands {
        Demands { at_least, increasing: true, may_fall_by: Some(misreading), positive: false }
    }
}

/// Something wrong with the readings. Rows are counted from 0.
#[derive(Debug, Clone, Copy, PartialEq)]
#[non_exhaustive]
pub enum Finding {
    /// The two columns do not have the same length.
    Unequal {
        /// Rows in the column x.
        x: usize,
        /// Rows in the column y.
        y: usize,
    },
    /// A number is NaN or infinite.
    NotANumber {
        /// The row.
        row: usize,
        /// Which column.
        column: &'static str,
        /// The value.
        value: f64,
    },
    /// A number that must be greater than zero is not.
    NotPositive {
        /// The row.
        row: usize,
        /// Which column.
        column: &'static str,
        /// The value.
        value: f64,
    },
    /// Fewer rows than are needed.
    TooFew {
        /// How many are needed.
        needed: usize,
        /// How many there are.
        given: usize,
    },
    /// More rows than [`MOST_ROWS`].
    TooMany {
        /// How many there are.
        given: usize,
    },
    /// All x are the same.
    AllEqual {
        /// The value that they have.
        value: f64,
    },
    /// The same x as in the row before.
    Repeated {
        /// The later row.
        row: usize,
        /// The value that both have.
        value: f64,
    },
    /// A smaller x than in the row before.
    OutOfOrder {
        /// The later row.
        row: usize,
        /// Its value.
        value: f64,
        /// The value before it.
        before: f64,
    },
    /// y falls from one row to the next by more than is allowed.
    Falls {
        /// The later row.
        row: usize,
        /// Its value.
        value: f64,
        /// The value before it.
        before: f64,
    },
}

impl Finding {
    /// The same as a refusal.
    #[must_use]
    pub fn error(&self, names: Names) -> Error {
        match *self {
            Finding::Unequal { x, y } => Error::new(Code::Contradiction, names.y)
                .value(format!("{y} rows"))
                .allowed(format!("{x} rows, as many as {} has", names.x))
                .advice("give columns of one length"),
            Finding::NotANumber { row, column, value } => Error::new(Code::NotANumber, at(row, column))
                .value(value.to_string())
                .allowed("a finite number")
                .advice("leave the row out where nothing was read"),
            Finding::NotPositive { row, column, value } => Error::new(Code::OutOfRange, at(row, column))
                .value(value.to_string())
                .allowed("greater than 0")
                .advice("a logarithm or a reciprocal is taken: leave the row out, or measure from another zero"),
            Finding::TooFew { needed, given } => Error::new(Code::Missing, "rows")
                .value(format!("{given} rows"))
                .allowed(format!("{needed} or more"))
                .advice("take more readings"),
            Finding::TooMany { given } => Error::new(Code::TooLarge, "rows")
                .value(format!("{given} rows"))
                .allowed(format!("{MOST_ROWS} or fewer"))
                .advice("take every second or every tenth reading"),
            Finding::AllEqual { value } => Error::new(Code::Contradiction, names.x)
                .value(format!("{value} in every row"))
                .allowed("at least two different values")
                .advice("nothing can be said about a slope when x does not change"),
            Finding::Repeated { row, value } => Error::new(Code::Contradiction, at(row, names.x))
                .value(value.to_string())
                .allowed("greater than in the row before")
                .advice("the same value stands in the row before: keep one of the two, or their mean"),
            Finding::OutOfOrder { row, value, before } => Error::new(Code::Contradiction, at(row, names.x))
                .value(value.to_string())
                .allowed(format!("greater than {before}, the row before"))
                .advice("put the rows in order, or correct the misread value"),
            Finding::Falls { row, value, before } => Error::new(Code::Contradiction, at(row, names.y))
                .value(value.to_string())
                .allowed(format!("not below {before}, the row before"))
                .advice("collected gas does not go back: look for a leak, gas that dissolves, cooling or a misreading"),
        }
    }
}

impl fmt::Display for Finding {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        self.error(Names { x: "x", y: "y" }).fmt(f)
    }
}

/// The path of a value, as in `rows[3].time_s`.
pub(super) fn at(row: usize, column: &str) -> String {
    format!("rows[{row}].{column}")
}

/// Everything that is wrong, in order of the rows; what makes the others meaningless (unequal columns, too many rows)
/// alone.
#[must_use]
pub fn findings(names: Names, x: &[f64], y: &[f64], demands: &Demands) -> Vec<Finding> {
    if x.len() != y.len() {
        return vec![Finding::Unequal { x: x.len(), y: y.len() }];
    }
    if x.len() > MOST_ROWS {
        return vec![Finding::TooMany { given: x.len() }];
    }
    let mut found = Vec::new();
    if x.len() < demands.at_least {
        found.push(Finding::TooFew { needed: demands.at_least, given: x.len() });
    }
    let mut last: Option<(f64, f64)> = None;
    for (row, (&x, &y)) in x.iter().zip(y).enumerate() {
        for (column, value) in [(names.x, x), (names.y, y)] {
            if !value.is_finite() {
                found.push(Finding::NotANumber { row, column, value });
            } else if demands.positive && value <= 0.0 {
                found.push(Finding::NotPositive { row, column, value });
            }
        }
        if let Some((before_x, before_y)) = last {
            if demands.increasing && x == before_x {
                found.push(Finding::Repeated { row, value: x });
            } else if demands.increasing && x < before_x {
                found.push(Finding::OutOfOrder { row, value: x, before: before_x });
            }
            if demands.may_fall_by.is_some_and(|allowed| before_y - y > allowed) {
                found.push(Finding::Falls { row, value: y, before: before_y });
            }
        }
        last = Some((x, y));
    }
    if let [first, second, rest @ ..] = x
        && first.is_finite()
        && first == second
        && rest.iter().all(|value| value == first)
    {
        found.push(Finding::AllEqual { value: *first });
    }
    found
}

/// Readings that can be worked with: two columns of one length, finite, with at least two different x.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Series<'a> {
    names: Names,
    x: &'a [f64],
    y: &'a [f64],
    weights: Option<&'a [f64]>,
}

impl<'a> Series<'a> {
    /// Takes two columns.
    ///
    /// ```
    /// use overwater::readings::series::{Demands, Series, VOLUME_AGAINST_TIME};
    /// let refused = Series::new(
    ///     VOLUME_AGAINST_TIME,
    ///     &[0.0, 10.0, 20.0, 20.0],
    ///     &[0.0, 12.0, 19.0, 23.0],
    ///     &Demands::collected(3, 0.5),
    /// );
    /// assert_eq!(refused.unwrap_err().parameter, "rows[3].time_s");
    /// ```
    ///
    /// # Errors
    /// The first of the [`findings`]: `not_a_number`, `out_of_range`, `missing`, `too_large` or `contradiction`, with
    /// the row and the column as its parameter.
    pub fn new(names: Names, x: &'a [f64], y: &'a [f64], demands: &Demands) -> Result<Series<'a>> {
        match findings(names, x, y, demands).first() {
            Some(finding) => Err(finding.error(names)),
            None => Ok(Series { names, x, y, weights: None }),
        }
    }

    /// The same readings with a weight for each: the reciprocal of the square of its uncertainty, in any unit.
    ///
    /// # Errors
    /// `contradiction` for another number of weights than of rows; `not_a_number`, or `out_of_range` for a weight that
    /// is not greater than zero, with its row.
    pub fn weighted(self, weights: &'a [f64]) -> Result<Series<'a>> {
        if weights.len() != self.len() {
            return Err(Error::new(Code::Contradiction, "weight")
                .value(format!("{} rows", weights.len()))
                .allowed(format!("{} rows, one for each reading", self.len()))
                .advice("give one weight for each reading"));
        }
        for (row, &value) in weights.iter().enumerate() {
            if !value.is_finite() {
                return Err(Finding::NotANumber { row, column: "weight", value }.error(self.names));
            }
            if value <= 0.0 {
                return Err(Error::new(Code::OutOfRange, at(row, "weight"))
                    .value(value.to_string())
                    .allowed("greater than 0")
                    .advice("leave the row out instead of giving it no weight"));
            }
        }
        Ok(Series { weights: Some(weights), ..self })
    }

    /// Readings made from others that were looked through: what a fit is repeated on.
    pub(super) fn trusted(
        names: Names,
        x: &'a [f64],
        y: &'a [f64],
        weights: Option<&'a [f64]>,
    ) -> Series<'a> {
        Series { names, x, y, weights }
    }

    /// At least so many rows, for a calculation that needs more than the caller asked for.
    pub(super) fn need(&self, rows: usize) -> Result<()> {
        if self.len() < rows {
            return Err(Finding::TooFew { needed: rows, given: self.len() }.error(self.names));
        }
        let demands = Demands { at_least: rows, ..Demands::rows(rows) };
        findings(self.names, self.x, self.y, &demands).first().map_or(Ok(()), |f| Err(f.error(self.names)))
    }

    /// At least so many rows, in order of x.
    pub(super) fn need_order(&self, rows: usize) -> Result<()> {
        self.hold(&Demands { increasing: true, ..Demands::rows(rows) })
    }

    /// At least so many rows with x and y greater than zero.
    pub(super) fn need_positive(&self, rows: usize) -> Result<()> {
        self.hold(&Demands { positive: true, ..Demands::rows(rows) })
    }

    fn hold(&self, demands: &Demands) -> Result<()> {
        findings(self.names, self.x, self.y, demands).first().map_or(Ok(()), |f| Err(f.error(self.names)))
    }

    /// What the columns are called.
    #[must_use]
    pub fn names(&self) -> Names {
        self.names
    }

    /// The first column.
    #[must_use]
    pub fn x(&self) -> &'a [f64] {
        self.x
    }

    /// The second column.
    #[must_use]
    pub fn y(&self) -> &'a [f64] {
        self.y
    }

    /// The weights, where there are any.
    #[must_use]
    pub fn weights(&self) -> Option<&'a [f64]> {
        self.weights
    }

    /// How many rows there are.
    #[must_use]
    pub fn len(&self) -> usize {
        self.x.len()
    }

    /// Whether there are none.
    #[must_use]
    pub fn is_empty(&self) -> bool {
        self.x.is_empty()
    }

    /// The rows in order.
    pub fn rows(&self) -> impl Iterator<Item = (f64, f64)> + 'a {
        self.x.iter().copied().zip(self.y.iter().copied())
    }

    /// The weight of each row, 1 where none were given.
    pub(super) fn weight_of_each(&self) -> impl Iterator<Item = f64> + 'a {
        let weights = self.weights;
        (0..self.len()).map(move |row| weights.and_then(|w| w.get(row)).copied().unwrap_or(1.0))
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    const NAMES: Names = VOLUME_AGAINST_TIME;

    fn refusal(x: &[f64], y: &[f64], demands: &Demands) -> (Code, String) {
        let error = Series::new(NAMES, x, y, demands).unwrap_err();
        (error.code, error.parameter.into_owned())
    }

    #[test]
    fn every_fault_names_its_row() {
        let order = Demands::collected(2, 0.5);
        let nan = f64::NAN;
        for (x, y, code, parameter) in [
            (vec![0.0, 1.0, nan], vec![0.0, 1.0, 2.0], Code::NotANumber, "rows[2].time_s"),
            (vec![0.0, 1.0, 2.0], vec![0.0, f64::INFINITY, 2.0], Code::NotANumber, "rows[1].volume_cm3"),
            (vec![0.0], vec![0.0], Code::Missing, "rows"),
            (vec![], vec![], Code::Missing, "rows"),
            (vec![0.0, 1.0, 1.0], vec![0.0, 1.0, 2.0], Code::Contradiction, "rows[2].time_s"),
            (vec![0.0, 2.0, 1.0], vec![0.0, 1.0, 2.0], Code::Contradiction, "rows[2].time_s"),
            (vec![0.0, 1.0, 2.0], vec![0.0, 3.0, 2.0], Code::Contradiction, "rows[2].volume_cm3"),
            (vec![0.0, 1.0], vec![0.0, 1.0, 2.0], Code::Contradiction, "volume_cm3"),
        ] {
            assert_eq!(refusal(&x, &y, &order), (code, parameter.to_owned()), "{x:?} {y:?}");
        }
        let plain = Demands::rows(2);
        assert_eq!(
            refusal(&[3.0; 4], &[1.0, 2.0, 3.0, 4.0], &plain),
            (Code::Contradiction, "time_s".to_owned())
        );
        let positive = Demands { positive: true, ..plain };
        assert_eq!(
            refusal(&[1.0, 2.0], &[1.0, 0.0], &positive),
            (Code::OutOfRange, "rows[1].volume_cm3".to_owned())
        );
        let many = vec![0.0; MOST_ROWS + 1];
        assert_eq!(refusal(&many, &many, &plain), (Code::TooLarge, "rows".to_owned()));
    }

    #[test]
    fn what_was_not_asked_for_is_not_found() {
        assert!(Series::new(NAMES, &[0.0, 2.0, 1.0, 1.0], &[5.0, 3.0, -1.0, 0.0], &Demands::rows(2)).is_ok());
        let misread = Demands::collected(2, 0.5);
        assert!(Series::new(NAMES, &[0.0, 1.0, 2.0], &[0.0, 10.0, 9.5], &misread).is_ok());
        assert!(Series::new(NAMES, &[0.0, 1.0, 2.0], &[0.0, 10.0, 9.49], &misread).is_err());
    }

    #[test]
    fn all_findings_are_listed_in_order() {
        let found = findings(NAMES, &[0.0, 0.0, -1.0], &[0.0, f64::NAN, 1.0], &Demands::collected(4, 0.0));
        assert!(
            matches!(
                found[..],
                [
                    Finding::TooFew { needed: 4, given: 3 },
                    Finding::NotANumber { row: 1, column: "volume_cm3", .. },
                    Finding::Repeated { row: 1, .. },
                    Finding::OutOfOrder { row: 2, .. }
                ]
            ),
            "{found:?}"
        );
        assert_eq!(
            found[2].to_string(),
            "rows[1].x = 0 contradicts another value; allowed: greater than in the row before; \
             the same value stands in the row before: keep one of the two, or their mean"
        );
    }

    #[test]
    fn weights_are_one_for_each_row_and_greater_than_zero() {
        let series = Series::new(NAMES, &[0.0, 1.0], &[0.0, 1.0], &Demands::rows(2)).unwrap();
        assert_eq!(series.weighted(&[1.0]).unwrap_err().parameter, "weight");
        assert_eq!(series.weighted(&[1.0, 0.0]).unwrap_err().parameter, "rows[1].weight");
        assert_eq!(series.weighted(&[f64::NAN, 1.0]).unwrap_err().code, Code::NotANumber);
        assert_eq!(series.weighted(&[2.0, 3.0]).unwrap().weight_of_each().collect::<Vec<_>>(), [2.0, 3.0]);
        assert_eq!(series.weight_of_each().collect::<Vec<_>>(), [1.0, 1.0]);
    }
}
