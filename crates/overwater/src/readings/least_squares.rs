//! Linear least squares by Householder's QR decomposition, and the covariance that follows from it.

use nalgebra::{DMatrix, DVector};

/// Variances and covariances of fitted numbers, in the order in which the fit names them.
#[derive(Debug, Clone, PartialEq)]
pub struct Covariance {
    order: usize,
    values: Vec<f64>,
}

impl Covariance {
    /// Row by row; missing entries are 0.
    pub(super) fn new(order: usize, mut values: Vec<f64>) -> Covariance {
        values.resize(order * order, 0.0);
        Covariance { order, values }
    }

    /// How many fitted numbers there are.
    #[must_use]
    pub fn order(&self) -> usize {
        self.order
    }

    /// The covariance of number `i` and number `j`; NaN where there is no such number.
    #[must_use]
    pub fn get(&self, i: usize, j: usize) -> f64 {
        if i >= self.order || j >= self.order {
            return f64::NAN;
        }
        self.values.get(i * self.order + j).copied().unwrap_or(f64::NAN)
    }

    /// The standard error of number `i`.
    #[must_use]
    pub fn standard_error(&self, i: usize) -> f64 {
        self.get(i, i).sqrt()
    }

    /// The correlation of number `i` and number `j`, from -1 to 1; NaN where one of them is certain.
    #[must_use]
    pub fn correlation(&self, i: usize, j: usize) -> f64 {
        self.get(i, j) / (self.standard_error(i) * self.standard_error(j))
    }

    /// The variance of the sum of the numbers, each times its `factors`.
    #[must_use]
    pub fn variance_of(&self, factors: &[f64]) -> f64 {
        let mut sum = 0.0;
        for (i, a) in factors.iter().enumerate() {
            for (j, b) in factors.iter().enumerate() {
                sum += a * b * self.get(i, j);
            }
        }
        sum
    }
}

/// A system that has been solved.
pub(super) struct Solved {
    pub(super) coefficients: Vec<f64>,
    /// The inverse of R: its product with its own transpose is the covariance for a residual variance of 1.
    inverse_r: DMatrix<f64>,
    /// y less the fitted y, without weights.
    pub(super) residuals: Vec<f64>,
    /// With weights.
    pub(super) sum_of_squares: f64,
}

impl Solved {
    /// The covariance of `transform` times the coefficients, for a residual variance of `variance`; `transform` has its
    /// rows one after the other.
    pub(super) fn covariance(&self, transform: &[f64], variance: f64) -> Covariance {
        let order = self.coefficients.len();
        let rows = DMatrix::from_row_slice(order, order, transform) * &self.inverse_r;
        let product = &rows * rows.transpose() * variance;
        Covariance::new(order, product.iter().copied().collect())
    }

    /// The same without a transformation.
    pub(super) fn plain_covariance(&self, variance: f64) -> Covariance {
        let product = &self.inverse_r * self.inverse_r.transpose() * variance;
        Covariance::new(self.coefficients.len(), product.iter().copied().collect())
    }
}

/// How small a diagonal element of R may be beside the length of its column: below it the columns are as good as
/// dependent, and no digit of the coefficients would be right.
const DEPENDENT: f64 = 1e-13;

/// Minimises the weighted sum of squares of y less the sum of the columns times their coefficients. Nothing where the
/// columns are dependent, or fewer rows than columns.
pub(super) fn solve(columns: &[Vec<f64>], y: &[f64], weights: Option<&[f64]>) -> Option<Solved> {
    let (rows, order) = (y.len(), columns.len());
    if rows < order || order == 0 || columns.iter().any(|column| column.len() != rows) {
        return None;
    }
    let roots: Option<Vec<f64>> = weights.map(|w| w.iter().map(|weight| weight.sqrt()).collect());
    let root = |row: usize| roots.as_ref().and_then(|r| r.get(row)).copied().unwrap_or(1.0);
    let entries = columns.iter().flat_map(|column| column.iter().enumerate().map(|(row, v)| v * root(row)));
    let design = DMatrix::from_iterator(rows, order, entries);
    let lengths: Vec<f64> = design.column_iter().map(|column| column.norm()).collect();
    let qr = design.qr();
    let mut rotated = DVector::from_iterator(rows, y.iter().enumerate().map(|(row, v)| v * root(row)));
    qr.q_tr_mul(&mut rotated);
    let r = qr.r();
    if r.diagonal().iter().zip(&lengths).any(|(d, length)| d.abs() <= DEPENDENT * length || !d.is_finite()) {
        return None;
    }
    let coefficients: Vec<f64> =
        r.solve_upper_triangular(&rotated.rows(0, order).into_owned())?.iter().copied().collect();
    let inverse_r = r.solve_upper_triangular(&DMatrix::identity(order, order))?;
    let mut residuals = y.to_vec();
    for (column, coefficient) in columns.iter().zip(&coefficients) {
        for (residual, entry) in residuals.iter_mut().zip(column) {
            *residual -= coefficient * entry;
        }
    }
    let sum_of_squares =
        residuals.iter().enumerate().map(|(row, residual)| (residual * root(row)).powi(2)).sum();
    Some(Solved { coefficients, inverse_r, residuals, sum_of_squares })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_plane_through_points_by_hand() {
        // Normal equations by hand: columns (1,1,1,1) and (0,1,2,3), y = 1, 3, 4, 4: slope 1, intercept 1.5, residuals
        // -0.5, 0.5, 0.5, -0.5; with variance 1 the covariance is (0.7, -0.3; -0.3, 0.2).
        let columns = [vec![1.0; 4], vec![0.0, 1.0, 2.0, 3.0]];
        let solved = solve(&columns, &[1.0, 3.0, 4.0, 4.0], None).unwrap();
        assert!((solved.coefficients[0] - 1.5).abs() < 1e-14 && (solved.coefficients[1] - 1.0).abs() < 1e-14);
        assert!((solved.sum_of_squares - 1.0).abs() < 1e-14);
        let covariance = solved.plain_covariance(1.0);
        for (i, j, expected) in [(0, 0, 0.7), (0, 1, -0.3), (1, 0, -0.3), (1, 1, 0.2)] {
            assert!((covariance.get(i, j) - expected).abs() < 1e-14, "{i} {j}");
        }
        assert!((covariance.correlation(0, 1) + 0.3 / 0.14_f64.sqrt()).abs() < 1e-14);
        assert!((covariance.variance_of(&[1.0, 2.0]) - (0.7 - 1.2 + 0.8)).abs() < 1e-14);
        assert!(covariance.get(2, 0).is_nan());
        let identity = solved.covariance(&[1.0, 0.0, 0.0, 1.0], 2.0);
        assert!((identity.get(0, 1) + 0.6).abs() < 1e-14);
    }

    #[test]
    fn dependent_columns_have_no_solution() {
        let columns = [vec![1.0; 3], vec![2.0; 3]];
        assert!(solve(&columns, &[1.0, 2.0, 3.0], None).is_none());
        assert!(solve(&[vec![1.0; 1], vec![2.0; 1]], &[1.0], None).is_none());
        assert!(solve(&[], &[], None).is_none());
    }
}
