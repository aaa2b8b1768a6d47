//! The factor from a standard uncertainty to an interval of a stated coverage.

use statrs::distribution::{ContinuousCDF, StudentsT};

use super::normal::normal_quantile;
use crate::{Code, Error, Result};

/// From here on Student's quantile is taken from its expansion: the library's own search is slow and wrong far out.
const MANY: f64 = 300.0;

/// The least and the greatest coverage that may be asked for.
pub const LEVELS: (f64, f64) = (0.5, 0.999);

/// Holds a coverage to [`LEVELS`].
///
/// # Errors
/// `out_of_range`, `not_a_number`.
pub fn check_level(level: f64) -> Result<f64> {
    if level >= LEVELS.0 && level <= LEVELS.1 {
        return Ok(level);
    }
    let code = if level.is_finite() { Code::OutOfRange } else { Code::NotANumber };
    Err(Error::new(code, "coverage")
        .value(level.to_string())
        .allowed(format!("{} to {}", LEVELS.0, LEVELS.1))
        .advice("give a probability, as 0.95 for 95 %"))
}

/// The quantile of Student's distribution with ν ≥ 1 degrees of freedom at a probability inside 0 to 1: below 300 by
/// search, from there by the expansion of Abramowitz and Stegun, Handbook of Mathematical Functions (1964), 26.7.5.
///
/// ```
/// use overwater::readings::uncertainty::coverage::student_quantile;
/// // JCGM 100:2008, Table G.2: t for 95 % and 10 degrees of freedom is 2.23, for 99 % and 16 it is 2.92.
/// assert!((student_quantile(0.975, 10.0) - 2.23).abs() < 0.005);
/// assert!((student_quantile(0.995, 16.0) - 2.92).abs() < 0.005);
/// ```
#[must_use]
pub fn student_quantile(probability: f64, degrees_of_freedom: f64) -> f64 {
    let nu = degrees_of_freedom;
    if nu < MANY {
        return StudentsT::new(0.0, 1.0, nu).map_or(f64::NAN, |student| student.inverse_cdf(probability));
    }
    let x = normal_quantile(probability);
    if nu.is_infinite() {
        return x;
    }
    let s = x * x;
    let g1 = (s + 1.0) * x / 4.0;
    let g2 = ((5.0 * s + 16.0) * s + 3.0) * x / 96.0;
    let g3 = (((3.0 * s + 19.0) * s + 17.0) * s - 15.0) * x / 384.0;
    let g4 = ((((79.0 * s + 776.0) * s + 1482.0) * s - 1920.0) * s - 945.0) * x / 92_160.0;
    x + (g1 + (g2 + (g3 + g4 / nu) / nu) / nu) / nu
}

/// The coverage factor k for a coverage probability, from effective degrees of freedom cut to a whole number (JCGM 100:2008,
/// G.4.1 and G.6.4).
///
/// # Errors
/// Those of [`check_level`]; `out_of_range` below 1 degree of freedom.
pub fn coverage_factor(level: f64, degrees_of_freedom: f64) -> Result<f64> {
    check_level(level)?;
    if degrees_of_freedom.is_nan() || degrees_of_freedom < 1.0 {
        return Err(Error::new(Code::OutOfRange, "effective degrees of freedom")
            .value(degrees_of_freedom.to_string())
            .allowed("1 or more")
            .advice("the largest contribution rests on too few repeats: read more often"));
    }
    Ok(student_quantile(0.5 + level / 2.0, degrees_of_freedom.floor()))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_table_of_the_guide() {
        // JCGM 100:2008, Table G.2 (t for 68.27, 90, 95, 95.45, 99, 99.73 %), from memory, two decimals.
        let levels = [0.6827, 0.90, 0.95, 0.9545, 0.99, 0.9973];
        for (nu, row) in [
            (1.0, [1.84, 6.31, 12.71, 13.97, 63.66, 235.78]),
            (5.0, [1.11, 2.02, 2.57, 2.65, 4.03, 5.51]),
            (20.0, [1.03, 1.72, 2.09, 2.13, 2.85, 3.42]),
            (50.0, [1.01, 1.68, 2.01, 2.05, 2.68, 3.16]),
            (f64::INFINITY, [1.0, 1.645, 1.96, 2.0, 2.576, 3.0]),
        ] {
            for (level, t) in levels.into_iter().zip(row) {
                let ours = student_quantile(0.5 + level / 2.0, nu);
                assert!((ours - t).abs() < 0.0051, "{nu} {level}: {ours}, not {t}");
            }
        }
    }

    #[test]
    fn search_and_expansion_meet_and_end_at_the_normal() {
        for probability in [0.75, 0.975, 0.995, 0.9995] {
            let below = student_quantile(probability, 299.999_999);
            let above = student_quantile(probability, 300.0);
            assert!((below - above).abs() < 1e-7, "{probability}: {below} {above}");
            let far = student_quantile(probability, 1e9);
            assert!((far - normal_quantile(probability)).abs() < 1e-8);
            assert!(far > normal_quantile(probability));
        }
        // scipy.stats.t.ppf(0.975, 1000) = 1.9623390808264078
        assert!((student_quantile(0.975, 1000.0) - 1.962_339_080_826_407_8).abs() < 1e-12);
    }

    #[test]
    fn degrees_of_freedom_are_cut_and_held() {
        assert_eq!(coverage_factor(0.99, 16.99).unwrap(), coverage_factor(0.99, 16.0).unwrap());
        assert_eq!(coverage_factor(0.95, 0.99).unwrap_err().code, Code::OutOfRange);
        assert!(coverage_factor(0.95, 1.0).is_ok());
        assert_eq!(coverage_factor(95.0, 5.0).unwrap_err().code, Code::OutOfRange);
        assert_eq!(check_level(0.5), Ok(0.5));
        assert_eq!(check_level(0.999), Ok(0.999));
        assert!(check_level(0.499_999).is_err() && check_level(0.999_001).is_err());
        assert_eq!(check_level(f64::NAN).unwrap_err().code, Code::NotANumber);
    }
}
