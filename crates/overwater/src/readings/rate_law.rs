//! Laws of the first order, as generic formulas: half-life, time to a conversion, average against initial rate, and
//! rates of the other substances of a reaction.
//!
//! They hold in any consistent units: a rate constant has the reciprocal unit of the time.

use crate::scalar::Scalar;

/// Half-life of a reaction of the first order, ln 2/k; and, the other way round, the rate constant of a half-life.
///
/// ```
/// use overwater::readings::rate_law::half_life;
/// use overwater::units::significant;
/// // Rate = k c at c = 0.005 mol/dm3 with a half-life of 106 min: OCR, A Level Chemistry A, mark scheme of "How fast":
/// // 3.27e-5 mol/dm3/min.
/// assert_eq!(significant(half_life(106.0_f64) * 0.005, 3), "3.27e-5");
/// ```
#[inline(always)]
pub fn half_life<S: Scalar>(rate_constant: S) -> S {
    S::number(std::f64::consts::LN_2) / rate_constant
}

/// Time until a share `conversion` has reacted, -ln(1 - conversion)/k. NaN for a share of 1 or more, which is never
/// reached.
///
/// ```
/// use overwater::readings::rate_law::time_to;
/// // OpenStax, Chemistry 2e, section 12.4: 80.0 % with k = 9.2e-3 per second takes 1.7e2 s.
/// assert_eq!(format!("{:.1e}", time_to(0.8_f64, 9.2e-3)), "1.7e2");
/// ```
#[inline(always)]
pub fn time_to<S: Scalar>(conversion: S, rate_constant: S) -> S {
    -((-conversion + 1.0).ln() / rate_constant)
}

/// The average rate up to a conversion X, as a share of the initial rate, for the first order: X/(-ln(1 - X)). It is
/// what "one over the time to a fixed volume" gives away.
///
/// ```
/// use overwater::readings::rate_law::average_over_initial;
/// // By arithmetic: 0.95, 0.90 and 0.72 at 10, 20 and 50 % conversion.
/// let shares = [0.1, 0.2, 0.5].map(|conversion| format!("{:.2}", average_over_initial(conversion)));
/// assert_eq!(shares, ["0.95", "0.90", "0.72"]);
/// ```
#[inline(always)]
pub fn average_over_initial<S: Scalar>(conversion: S) -> S {
    -(conversion / (-conversion + 1.0).ln())
}

/// The rate at which one substance forms or disappears, from that of another and their coefficients in the equation.
///
/// ```
/// use overwater::readings::rate_law::rate_of_other;
/// // OpenStax, Chemistry 2e, section 12.1: 2 H2O2 -> 2 H2O + O2; peroxide falls by 3.20e-2 mol/L/h, oxygen forms at
/// // 1.60e-2.
/// assert_eq!(format!("{:.2e}", rate_of_other(3.20e-2_f64, 2, 1)), "1.60e-2");
/// ```
#[inline(always)]
pub fn rate_of_other<S: Scalar>(rate: S, its_coefficient: u32, other_coefficient: u32) -> S {
    rate * f64::from(other_coefficient) / f64::from(its_coefficient)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::scalar::Sensitivities;

    #[test]
    fn conversions_beyond_all_are_never_reached() {
        assert!(time_to(1.0_f64, 1.0).is_nan() && average_over_initial(1.0_f64).is_nan());
        assert!((time_to(0.5_f64, 2.0) - half_life(2.0)).abs() < 1e-15);
        assert_eq!(rate_of_other(3.0_f64, 2, 5), 7.5);
    }

    #[test]
    fn a_longer_half_life_means_a_smaller_constant() {
        // dt/dk = -t/k.
        let dual = half_life(Sensitivities::<1>::input(0.02, 0));
        assert!((dual.derivatives()[0] + dual.value() / 0.02).abs() < 1e-9);
    }
}
