//! How likely it is that a number differs from zero by chance.

/// The probability that |T| of Student's distribution exceeds `t`, by the finite sums for whole degrees of freedom
/// (Abramowitz and Stegun, Handbook of Mathematical Functions, 1964, equations 26.7.3 and 26.7.4). Good to 1e-15
/// absolutely, so that a probability below that is given as 0. NaN without degrees of freedom.
pub(super) fn two_sided(t: f64, degrees_of_freedom: usize) -> f64 {
    if degrees_of_freedom == 0 || t.is_nan() {
        return f64::NAN;
    }
    let nu = degrees_of_freedom as f64;
    let cosine_squared = nu / (nu + t * t);
    let sine = (1.0 - cosine_squared).sqrt();
    let odd = degrees_of_freedom % 2 == 1;
    // The terms 1, c²/2, ... for an even number; c, 2/3 c³, ... for an odd one.
    let mut term = if odd { cosine_squared.sqrt() } else { 1.0 };
    let mut sum = 0.0;
    let first = if odd { 3 } else { 2 };
    for step in (first..=degrees_of_freedom).step_by(2) {
        sum += term;
        let k = step as f64;
        term *= cosine_squared * (k - 1.0) / k;
    }
    let inside = if odd {
        let angle = (t.abs() / nu.sqrt()).atan();
        std::f64::consts::FRAC_2_PI * (angle + sine * sum)
    } else {
        sine * sum
    };
    (1.0 - inside).clamp(0.0, 1.0)
}

#[cfg(test)]
mod tests {
    use super::*;

    /// The two-sided 5 % points of the usual tables, to their printed digits.
    #[test]
    fn five_per_cent_points() {
        for (nu, t) in [
            (1, 12.706_205),
            (2, 4.302_653),
            (3, 3.182_446),
            (10, 2.228_139),
            (34, 2.032_245),
            (1000, 1.962_339),
        ] {
            assert!((two_sided(t, nu) - 0.05).abs() < 1e-7, "{nu}: {}", two_sided(t, nu));
            assert!((two_sided(-t, nu) - 0.05).abs() < 1e-7);
        }
        assert_eq!(two_sided(0.0, 5), 1.0);
        assert_eq!(two_sided(f64::INFINITY, 5), 0.0);
        assert!(two_sided(1.0, 0).is_nan() && two_sided(f64::NAN, 3).is_nan());
    }
}
