//! The null space of a matrix of whole numbers, by elimination without fractions.
//!
//! Every row is divided by its greatest common divisor after each step, so numbers stay small; in 128 bits each
//! step is checked, and the caller repeats with numbers of any size when one does not fit.

use std::fmt;

use num_bigint::BigInt;
use num_integer::Integer;
use num_traits::{One, Signed, ToPrimitive, Zero};

/// Whole numbers that either fit or say that they do not.
pub(super) trait Whole: Clone + PartialEq + fmt::Display {
    fn zero() -> Self;
    fn one() -> Self;
    fn is_zero(&self) -> bool;
    fn is_positive(&self) -> bool;
    /// self * a - other * b; `None` when it does not fit.
    fn combine(&self, a: &Self, other: &Self, b: &Self) -> Option<Self>;
    /// Never negative.
    fn gcd(&self, other: &Self) -> Self;
    /// The quotient where the division leaves no rest.
    fn exact_div(&self, divisor: &Self) -> Self;
    fn to_u64(&self) -> Option<u64>;

    fn negative(&self) -> Option<Self> {
        Self::zero().combine(&Self::one(), self, &Self::one())
    }
}

impl Whole for i128 {
    fn zero() -> Self {
        0
    }
    fn one() -> Self {
        1
    }
    fn is_zero(&self) -> bool {
        *self == 0
    }
    fn is_positive(&self) -> bool {
        *self > 0
    }
    fn combine(&self, a: &Self, other: &Self, b: &Self) -> Option<Self> {
        let difference = self.checked_mul(*a)?.checked_sub(other.checked_mul(*b)?)?;
        // The least number has no opposite; kept out, so that signs and divisors need no check.
        (difference != i128::MIN).then_some(difference)
    }
    fn gcd(&self, other: &Self) -> Self {
        let (a, b) = (self.unsigned_abs(), other.unsigned_abs());
        match (u64::try_from(a), u64::try_from(b)) {
            // Nearly always: 64 bits divide many times faster.
            (Ok(a), Ok(b)) => i128::from(Integer::gcd(&a, &b)),
            _ => Integer::gcd(self, other),
        }
    }
    fn exact_div(&self, divisor: &Self) -> Self {
        match (i64::try_from(*self), i64::try_from(*divisor)) {
            (Ok(a), Ok(b)) => i128::from(a.checked_div(b).unwrap_or(0)),
            _ => self.checked_div(*divisor).unwrap_or(0),
        }
    }
    fn to_u64(&self) -> Option<u64> {
        u64::try_from(*self).ok()
    }
}

impl Whole for BigInt {
    fn zero() -> Self {
        Zero::zero()
    }
    fn one() -> Self {
        One::one()
    }
    fn is_zero(&self) -> bool {
        Zero::is_zero(self)
    }
    fn is_positive(&self) -> bool {
        Signed::is_positive(self)
    }
    fn combine(&self, a: &Self, other: &Self, b: &Self) -> Option<Self> {
        Some(self * a - other * b)
    }
    fn gcd(&self, other: &Self) -> Self {
        Integer::gcd(self, other)
    }
    fn exact_div(&self, divisor: &Self) -> Self {
        self / divisor
    }
    fn to_u64(&self) -> Option<u64> {
        ToPrimitive::to_u64(self)
    }
}

/// A basis of all x with A x = 0, for A given row by row. Each vector has no common divisor and at least as many
/// positive entries as negative ones. `None` when a number does not fit.
pub(super) fn null_space<T: Whole>(mut entries: Vec<T>, columns: usize) -> Option<Vec<Vec<T>>> {
    if columns == 0 {
        return Some(Vec::new());
    }
    let mut rows: Vec<&mut [T]> = entries.chunks_mut(columns).collect();
    // Column of the pivot of each row that has one.
    let mut pivots: Vec<usize> = Vec::with_capacity(rows.len());
    for column in 0..columns {
        let done = pivots.len();
        let Some(found) = (done..rows.len())
            .find(|row| rows.get(*row).and_then(|r| r.get(column)).is_some_and(|e| !e.is_zero()))
        else {
            continue;
        };
        rows.swap(done, found);
        let (above, rest) = rows.split_at_mut_checked(done)?;
        let (pivot_row, below) = rest.split_first_mut()?;
        for row in above.iter_mut().chain(below) {
            eliminate(row, pivot_row, column)?;
        }
        pivots.push(column);
    }
    (0..columns)
        .filter(|column| !pivots.contains(column))
        .map(|free| direction(&rows, &pivots, free, columns))
        .collect()
}

/// Makes the entry of `row` in this column zero.
fn eliminate<T: Whole>(row: &mut [T], pivot_row: &[T], column: usize) -> Option<()> {
    let (entry, pivot) = (row.get(column)?, pivot_row.get(column)?);
    if entry.is_zero() {
        return Some(());
    }
    let common = pivot.gcd(entry);
    let (by, times) = (pivot.exact_div(&common), entry.exact_div(&common));
    for (entry, pivot) in row.iter_mut().zip(pivot_row) {
        if !(entry.is_zero() && pivot.is_zero()) {
            *entry = entry.combine(&by, pivot, &times)?;
        }
    }
    divide_by_content(row);
    Some(())
}

fn divide_by_content<T: Whole>(row: &mut [T]) {
    let one = T::one();
    let mut content = T::zero();
    for entry in row.iter().filter(|entry| !entry.is_zero()) {
        content = content.gcd(entry);
        if content == one {
            return;
        }
    }
    if content.is_positive() {
        for entry in row {
            *entry = entry.exact_div(&content);
        }
    }
}

/// The solution in which this free column has a number and every other free column has zero.
fn direction<T: Whole>(rows: &[&mut [T]], pivots: &[usize], free: usize, columns: usize) -> Option<Vec<T>> {
    // The least number for the free column that every pivot divides.
    let mut number = T::one();
    for (row, column) in rows.iter().zip(pivots) {
        let (entry, pivot) = (row.get(free)?, row.get(*column)?);
        if !entry.is_zero() {
            let pivot = pivot.exact_div(&pivot.gcd(entry));
            let factor = pivot.exact_div(&number.gcd(&pivot));
            number = number.combine(&factor, &T::zero(), &T::zero())?;
        }
    }
    let mut solution = vec![T::zero(); columns];
    for (row, column) in rows.iter().zip(pivots) {
        let (entry, pivot) = (row.get(free)?, row.get(*column)?);
        let common = pivot.gcd(entry);
        let share = number.exact_div(&pivot.exact_div(&common));
        *solution.get_mut(*column)? = T::zero().combine(&T::zero(), &entry.exact_div(&common), &share)?;
    }
    *solution.get_mut(free)? = number;
    divide_by_content(&mut solution);
    let positive = solution.iter().filter(|entry| entry.is_positive()).count();
    let negative = solution.iter().filter(|entry| !entry.is_positive() && !entry.is_zero()).count();
    if negative > positive {
        for entry in &mut solution {
            *entry = entry.negative()?;
        }
    }
    Some(solution)
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    fn solve(rows: &[&[i128]]) -> Vec<Vec<i128>> {
        let columns = rows[0].len();
        let small = null_space(rows.concat(), columns).unwrap();
        let big = null_space(rows.concat().into_iter().map(BigInt::from).collect(), columns).unwrap();
        let same: Vec<Vec<BigInt>> =
            small.iter().map(|v| v.iter().map(|n| BigInt::from(*n)).collect()).collect();
        assert_eq!(same, big, "both kinds of number agree");
        small
    }

    #[test]
    fn small_matrices_have_known_null_spaces() {
        // H2O2 -> H2O + O2
        assert_eq!(solve(&[&[2, -2, 0], &[2, -1, -2]]), [[2, 2, 1]]);
        assert!(solve(&[&[1, 0], &[0, 1]]).is_empty());
        assert_eq!(solve(&[&[0, 0]]), [[1, 0], [0, 1]]);
        assert_eq!(solve(&[&[1, 1]]), [[-1, 1]]);
        assert_eq!(solve(&[&[6, -4, 0], &[0, 10, -15]]), [[2, 3, 2]]);
        assert_eq!(solve(&[&[0, 2, -3], &[0, 4, -6]]), [vec![1, 0, 0], vec![0, 3, 2]]);
        assert_eq!(solve(&[&[1, 1, 1]]).len(), 2);
        assert_eq!(null_space::<i128>(Vec::new(), 0), Some(Vec::new()));
        assert_eq!(solve(&[&[3, 2, 1], &[1, -1, 0]]), [[-1, -1, 5].map(|n: i128| -n)]);
    }

    #[test]
    fn numbers_that_do_not_fit_are_noticed() {
        assert_eq!(i128::MAX.combine(&1, &0, &0), Some(i128::MAX));
        assert_eq!(i128::MAX.combine(&2, &0, &0), None);
        assert_eq!(i128::MAX.combine(&-1, &1, &1), None, "the least number is kept out");
        assert_eq!(0.combine(&0, &i128::MAX, &2), None);
        let large = i128::MAX / 2;
        assert_eq!(null_space(vec![large, 3, 5, 7, large - 1, 11], 3), None);
        assert_eq!(Whole::gcd(&(large - large % 6), &-6), 6);
        assert_eq!(Whole::gcd(&0_i128, &-4), 4);
        assert_eq!(large.exact_div(&large), 1);
        assert_eq!((-12_i128).exact_div(&4), -3);
        assert_eq!((Whole::to_u64(&-1_i128), Whole::to_u64(&7_i128)), (None, Some(7)));
        assert_eq!((Whole::to_u64(&BigInt::from(-1)), Whole::to_u64(&BigInt::from(7))), (None, Some(7)));
        assert!(
            !Whole::is_positive(&0_i128)
                && !Whole::is_positive(&BigInt::from(0))
                && Whole::is_positive(&1_i128)
        );
    }

    proptest! {
        #[test]
        fn every_vector_solves_and_the_dimensions_add_up(
            columns in 1_usize..7,
            numbers in prop::collection::vec(-4_i128..=4, 36),
            height in 1_usize..6,
        ) {
            let rows: Vec<&[i128]> = numbers.chunks(columns).take(height).filter(|row| row.len() == columns).collect();
            prop_assume!(!rows.is_empty());
            let basis = solve(&rows);
            for vector in &basis {
                for row in &rows {
                    prop_assert_eq!(row.iter().zip(vector).map(|(a, x)| a * x).sum::<i128>(), 0);
                }
                prop_assert_eq!(vector.iter().fold(0, |g, n| Whole::gcd(&g, n)), 1);
            }
            prop_assert_eq!(basis.len(), columns - rank(&rows, columns));
        }
    }

    /// By floating point with the largest pivot: another way, good enough for such small numbers.
    fn rank(rows: &[&[i128]], columns: usize) -> usize {
        let mut rows: Vec<Vec<f64>> =
            rows.iter().map(|row| row.iter().map(|n| *n as f64).collect()).collect();
        let mut rank = 0;
        for column in 0..columns {
            let best =
                (rank..rows.len()).max_by(|a, b| rows[*a][column].abs().total_cmp(&rows[*b][column].abs()));
            let Some(best) = best.filter(|best| rows[*best][column].abs() > 1e-9) else {
                continue;
            };
            rows.swap(rank, best);
            for row in rank + 1..rows.len() {
                let factor = rows[row][column] / rows[rank][column];
                let pivot_row = rows[rank].clone();
                rows[row].iter_mut().zip(pivot_row).for_each(|(entry, pivot)| *entry -= factor * pivot);
            }
            rank += 1;
        }
        rank
    }
}
