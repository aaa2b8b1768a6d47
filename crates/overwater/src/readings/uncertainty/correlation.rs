//! Inputs that go together: correlation coefficients by name, and the matrix that they make.

use crate::{Code, Error, Result, nearest};

use super::input::Input;

/// How two inputs go together.
#[derive(Debug, Clone, PartialEq)]
pub struct Correlation {
    /// The names of the two.
    pub between: [String; 2],
    /// Their correlation coefficient, -1 to 1.
    pub coefficient: f64,
}

impl Correlation {
    /// Two inputs and their coefficient.
    #[must_use]
    pub fn new(one: impl Into<String>, other: impl Into<String>, coefficient: f64) -> Correlation {
        Correlation { between: [one.into(), other.into()], coefficient }
    }
}

/// The correlations of all inputs with all.
#[derive(Debug, Clone, PartialEq)]
pub struct Matrix {
    rows: Vec<Vec<f64>>,
    /// The lower triangle L with L Lᵀ the matrix.
    root: Vec<Vec<f64>>,
}

/// A pivot this far below 0 is more than rounding.
const ROUNDING: f64 = 1e-10;

impl Matrix {
    /// The matrix of these inputs.
    ///
    /// # Errors
    /// `unknown_name` for a name that no input has, `given_twice`, `out_of_range` for a coefficient beyond -1 or 1,
    /// `contradiction` where the coefficients cannot all hold together (the matrix is not positive semidefinite).
    pub fn new(inputs: &[Input], correlations: &[Correlation]) -> Result<Matrix> {
        let count = inputs.len();
        let mut rows: Vec<Vec<f64>> =
            (0..count).map(|i| (0..count).map(|j| if i == j { 1.0 } else { 0.0 }).collect()).collect();
        let mut given: Vec<[usize; 2]> = Vec::new();
        for correlation in correlations {
            let [one, other] = &correlation.between;
            let (i, j) = (place(inputs, one)?, place(inputs, other)?);
            let pair = [i.min(j), i.max(j)];
            let name = format!("correlation of {one} with {other}");
            if i == j || given.contains(&pair) {
                return Err(
                    Error::new(Code::GivenTwice, name).advice("name two different inputs, each pair once")
                );
            }
            let r = correlation.coefficient;
            if !(-1.0..=1.0).contains(&r) {
                let code = if r.is_nan() { Code::NotANumber } else { Code::OutOfRange };
                return Err(Error::new(code, name)
                    .value(r.to_string())
                    .allowed("-1 to 1")
                    .advice("give the correlation coefficient, not the covariance"));
            }
            given.push(pair);
            for (row, column) in [(i, j), (j, i)] {
                if let Some(cell) = rows.get_mut(row).and_then(|row| row.get_mut(column)) {
                    *cell = r;
                }
            }
        }
        let root = root(&rows).ok_or_else(|| {
            Error::new(Code::Contradiction, "correlations")
                .allowed("coefficients that can all hold together (a positive semidefinite matrix)")
                .advice("if A goes with B and B with C, A must go with C: check the coefficients")
        })?;
        Ok(Matrix { rows, root })
    }

    /// The coefficient of two inputs by their places; 0 beyond the last.
    #[must_use]
    pub fn at(&self, row: usize, column: usize) -> f64 {
        self.rows.get(row).and_then(|row| row.get(column)).copied().unwrap_or(0.0)
    }

    /// Whether an input goes together with any other.
    #[must_use]
    pub fn is_correlated(&self, row: usize) -> bool {
        (0..self.rows.len()).any(|column| column != row && self.at(row, column) != 0.0)
    }

    /// A row of the lower triangle L with L Lᵀ the matrix: what makes correlated numbers out of independent ones.
    #[must_use]
    pub fn root_row(&self, row: usize) -> &[f64] {
        self.root.get(row).map_or(&[], Vec::as_slice)
    }
}

fn place(inputs: &[Input], name: &str) -> Result<usize> {
    inputs.iter().position(|input| input.name == name).ok_or_else(|| {
        let names: Vec<&str> = inputs.iter().map(|input| input.name.as_ref()).collect();
        let error = Error::new(Code::UnknownName, "correlations").value(name).allowed(names.join(", "));
        match nearest(name, names.iter().copied()) {
            Some(near) => error.advice(format!("did you mean {near}?")),
            None => error.advice("name two inputs"),
        }
    })
}

/// Cholesky's triangle of a matrix that may be singular; nothing where it is not positive semidefinite.
fn root(rows: &[Vec<f64>]) -> Option<Vec<Vec<f64>>> {
    let mut triangle: Vec<Vec<f64>> = Vec::with_capacity(rows.len());
    for (i, row) in rows.iter().enumerate() {
        let mut own: Vec<f64> = Vec::with_capacity(i + 1);
        for (j, above) in triangle.iter().enumerate() {
            let rest = row.get(j)? - own.iter().zip(above).map(|(a, b)| a * b).sum::<f64>();
            let pivot = *above.last()?;
            if pivot == 0.0 && rest.abs() > ROUNDING.sqrt() {
                return None;
            }
            own.push(if pivot == 0.0 { 0.0 } else { rest / pivot });
        }
        let pivot = row.get(i)? - own.iter().map(|a| a * a).sum::<f64>();
        if pivot < -ROUNDING {
            return None;
        }
        own.push(if pivot < ROUNDING { 0.0 } else { pivot.sqrt() });
        triangle.push(own);
    }
    Some(triangle)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn three() -> Vec<Input> {
        ["a", "b", "c"].into_iter().map(|name| Input::normal(name, 1.0, 0.1)).collect()
    }

    #[test]
    fn the_triangle_gives_the_matrix_back() {
        let given = [Correlation::new("a", "b", 0.5), Correlation::new("c", "b", -0.25)];
        let matrix = Matrix::new(&three(), &given).unwrap();
        for i in 0..3 {
            for j in 0..3 {
                let product: f64 =
                    matrix.root_row(i).iter().zip(matrix.root_row(j)).map(|(a, b)| a * b).sum();
                assert!((product - matrix.at(i, j)).abs() < 1e-15, "{i} {j}");
            }
        }
        assert_eq!(
            (matrix.at(0, 1), matrix.at(1, 0), matrix.at(1, 2), matrix.at(0, 2)),
            (0.5, 0.5, -0.25, 0.0)
        );
        assert_eq!(matrix.at(3, 0), 0.0);
        assert!(matrix.is_correlated(0) && matrix.is_correlated(1));
        assert!(!Matrix::new(&three(), &[]).unwrap().is_correlated(0));
    }

    #[test]
    fn inputs_that_are_one_another_are_allowed() {
        let given =
            [("a", "b"), ("b", "c"), ("a", "c")].map(|(one, other)| Correlation::new(one, other, 1.0));
        let matrix = Matrix::new(&three(), &given).unwrap();
        assert_eq!(matrix.root_row(2), [1.0, 0.0, 0.0]);
    }

    #[test]
    fn what_cannot_hold_together_is_refused() {
        let refused = |given: &[(&str, &str, f64)]| {
            let given: Vec<Correlation> =
                given.iter().map(|(a, b, r)| Correlation::new(*a, *b, *r)).collect();
            Matrix::new(&three(), &given).unwrap_err()
        };
        assert_eq!(refused(&[("a", "b", 0.9), ("b", "c", 0.9), ("a", "c", -0.9)]).code, Code::Contradiction);
        assert_eq!(refused(&[("a", "b", 1.0), ("b", "c", 0.5)]).code, Code::Contradiction);
        assert_eq!(refused(&[("a", "b", 1.000_000_1)]).code, Code::OutOfRange);
        assert_eq!(refused(&[("a", "b", f64::NAN)]).code, Code::NotANumber);
        assert_eq!(refused(&[("a", "a", 0.5)]).code, Code::GivenTwice);
        assert_eq!(refused(&[("a", "b", 0.5), ("b", "a", 0.5)]).code, Code::GivenTwice);
        let unknown = refused(&[("a", "bb", 0.5)]);
        assert_eq!((unknown.code, &*unknown.advice), (Code::UnknownName, "did you mean b?"));
    }
}
