//! Exponential and logarithm without branches, written once for one number and for many.
//!
//! Only additions, multiplications, one division (in the logarithm) and whole-number operations on the bits:
//! so every processor gives the same bits, and the compiler can work on several numbers at once.

use std::ops::{Add, Div, Mul, Sub};

/// One number, or several side by side.
pub(super) trait Plain:
    Copy
    + Add<Output = Self>
    + Sub<Output = Self>
    + Mul<Output = Self>
    + Div<Output = Self>
    + Add<f64, Output = Self>
    + Sub<f64, Output = Self>
    + Mul<f64, Output = Self>
{
    /// Works on the bits of each number.
    fn on_bits(self, change: impl Fn(u64) -> u64) -> Self;

    /// `then` where `self` lies in the closed range, `otherwise` elsewhere (also for NaN).
    fn choose_within(self, least: f64, greatest: f64, then: Self, otherwise: Self) -> Self;

    /// The same number in every place.
    fn everywhere(value: f64) -> Self;
}

impl Plain for f64 {
    #[inline(always)]
    fn on_bits(self, change: impl Fn(u64) -> u64) -> Self {
        f64::from_bits(change(self.to_bits()))
    }

    #[inline(always)]
    fn choose_within(self, least: f64, greatest: f64, then: Self, otherwise: Self) -> Self {
        if self >= least && self <= greatest { then } else { otherwise }
    }

    #[inline(always)]
    fn everywhere(value: f64) -> Self {
        value
    }
}

/// Adding 1.5 x 2^52 rounds to a whole number and leaves it in the low bits.
const ROUNDING: f64 = 6_755_399_441_055_744.0;
/// ln 2 in two parts; the first has 32 trailing zero bits, so that its product with an exponent is exact.
const LN_2_HIGH: f64 = f64::from_bits(0x3FE6_2E42_FEE0_0000);
const LN_2_LOW: f64 = f64::from_bits(0x3DEA_39EF_3579_3C76);

/// The largest argument whose exponential is finite, and the least that the scaling in two steps can reach: below
/// it the result, less than 4e-308, is given as 0.
const EXP_GREATEST: f64 = 709.782_712_893_384;
const EXP_LEAST: f64 = -708.0;

/// e^x: reduction by multiples of ln 2, the Taylor polynomial of degree 13 on (-ln2/2, ln2/2), scaling.
#[inline(always)]
pub(super) fn exp<P: Plain>(x: P) -> P {
    let shifted = x * std::f64::consts::LOG2_E + ROUNDING;
    let whole = shifted - ROUNDING;
    let high_part = x - whole * LN_2_HIGH;
    let low_part = whole * LN_2_LOW;
    let r = high_part - low_part;

    // The polynomial from r^2/2! on, in pairs (Estrin), so that the products do not wait for each other.
    let square = r * r;
    let fourth = square * square;
    let eighth = fourth * fourth;
    let c23 = r * (1.0 / 6.0) + 0.5;
    let c45 = r * (1.0 / 120.0) + (1.0 / 24.0);
    let c67 = r * (1.0 / 5_040.0) + (1.0 / 720.0);
    let c89 = r * (1.0 / 362_880.0) + (1.0 / 40_320.0);
    let c1011 = r * (1.0 / 39_916_800.0) + (1.0 / 3_628_800.0);
    let c1213 = r * (1.0 / 6_227_020_800.0) + (1.0 / 479_001_600.0);
    let low = c45 * square + c23;
    let middle = c89 * square + c67;
    let high = c1213 * square + c1011;
    let tail = high * eighth + (middle * fourth + low);
    // r is rounded; its two parts are not, and the smaller is added to what is small anyway. With r itself the error
    // came to 1.0014 ulp.
    let mantissa = ((tail * square - low_part) + high_part) + 1.0;

    // 2^(n-1) and then 2, because 2^1024 itself is not a finite number.
    let scale = shifted.on_bits(|bits| bits.wrapping_add(1022).wrapping_shl(52));
    let inside = mantissa * scale * 2.0;
    let beyond = x.choose_within(f64::NEG_INFINITY, EXP_LEAST, P::everywhere(0.0), x * f64::INFINITY);
    x.choose_within(EXP_LEAST, EXP_GREATEST, inside, beyond)
}

/// The bits of sqrt(1/2), which is where the mantissa's range is cut.
const HALF_ROOT_BITS: u64 = 0x3FE6_A09E_667F_3BCD;
const EXPONENT_BITS: u64 = 0xFFF0_0000_0000_0000;

/// ln x: x = 2^k m with m from sqrt(1/2) to sqrt(2), then the series of 2 artanh((m-1)/(m+1)).
#[inline(always)]
pub(super) fn ln<P: Plain>(x: P) -> P {
    let exponent = x.on_bits(|bits| {
        let offset = bits.wrapping_sub(HALF_ROOT_BITS);
        // A logical shift after adding the bias, because wide arithmetic shifts are missing on many processors.
        let biased = offset.wrapping_add(1023 << 52) >> 52;
        biased.wrapping_sub(1023).wrapping_add(ROUNDING.to_bits())
    }) - ROUNDING;
    let mantissa = x.on_bits(|bits| {
        let offset = bits.wrapping_sub(HALF_ROOT_BITS);
        bits.wrapping_sub(offset & EXPONENT_BITS)
    });

    let f = mantissa - 1.0;
    let s = f / (f + 2.0);
    let z = s * s;
    let w = z * z;
    let odd = ((((w * (2.0 / 23.0) + (2.0 / 19.0)) * w + (2.0 / 15.0)) * w + (2.0 / 11.0)) * w + (2.0 / 7.0))
        * w
        + (2.0 / 3.0);
    let even = (((w * (2.0 / 21.0) + (2.0 / 17.0)) * w + (2.0 / 13.0)) * w + (2.0 / 9.0)) * w + (2.0 / 5.0);
    let series = (even * z + odd) * z;
    // f is exact; what is added to it is arranged so that only small terms are rounded.
    let half_square = f * f * 0.5;
    let small = half_square - (s * (half_square + series) + exponent * LN_2_LOW);
    let inside = exponent * LN_2_HIGH - (small - f);
    x.choose_within(f64::MIN_POSITIVE, f64::MAX, inside, P::everywhere(f64::NAN))
}

/// sin x for |x| up to π/2, where the Taylor polynomial of degree 23 is complete to less than half an ulp.
#[inline(always)]
pub(super) fn sin<P: Plain>(x: P) -> P {
    let square = x * x;
    let fourth = square * square;
    // The coefficients of x^3, x^7, ... and of x^5, x^9, ... apart, so that the two sums do not wait for each other.
    let odd = ((((fourth * (-1.0 / 25_852_016_738_884_976_640_000.0) + (-1.0 / 121_645_100_408_832_000.0))
        * fourth
        + (-1.0 / 1_307_674_368_000.0))
        * fourth
        + (-1.0 / 39_916_800.0))
        * fourth
        + (-1.0 / 5_040.0))
        * fourth
        + (-1.0 / 6.0);
    let even = (((fourth * (1.0 / 51_090_942_171_709_440_000.0) + (1.0 / 355_687_428_096_000.0)) * fourth
        + (1.0 / 6_227_020_800.0))
        * fourth
        + (1.0 / 362_880.0))
        * fourth
        + (1.0 / 120.0);
    let inside = (even * square + odd) * square * x + x;
    x.choose_within(-QUARTER_TURN, QUARTER_TURN, inside, P::everywhere(f64::NAN))
}

/// π/2.
const QUARTER_TURN: f64 = std::f64::consts::FRAC_PI_2;

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn exact_points() {
        assert_eq!(exp(0.0), 1.0);
        assert_eq!(ln(1.0), 0.0);
        assert_eq!(ln(2.0), std::f64::consts::LN_2);
    }

    #[test]
    fn ends_of_the_exponential() {
        assert!(exp(EXP_GREATEST).is_finite());
        assert!(exp(EXP_GREATEST) > 1.797e308);
        assert_eq!(exp(EXP_GREATEST.next_up()), f64::INFINITY);
        assert!(exp(EXP_LEAST).is_normal());
        assert_eq!(exp(EXP_LEAST.next_down()), 0.0);
        assert_eq!(exp(f64::NEG_INFINITY), 0.0);
        assert_eq!(exp(f64::INFINITY), f64::INFINITY);
        assert!(exp(f64::NAN).is_nan());
    }

    #[test]
    fn ends_of_the_logarithm() {
        assert!(ln(0.0).is_nan());
        assert!(ln(-1.0).is_nan());
        assert!(ln(f64::NAN).is_nan());
        assert!(ln(f64::INFINITY).is_nan());
        assert!(ln(f64::MIN_POSITIVE.next_down()).is_nan());
        assert!((ln(f64::MIN_POSITIVE) - -708.396_418_532_264_1).abs() < 2e-13);
        assert!((ln(f64::MAX) - 709.782_712_893_384).abs() < 2e-13);
    }

    #[test]
    fn sines() {
        for step in -90..=90_i32 {
            let x = f64::from(step).to_radians();
            assert!((sin(x) - x.sin()).abs() <= 2.3e-16, "{step} degrees: {}", sin(x) - x.sin());
        }
        assert_eq!(sin(0.0), 0.0);
        assert_eq!(sin(1e-9), 1e-9);
        assert_eq!(sin(-QUARTER_TURN), -1.0);
        assert!(sin(QUARTER_TURN.next_up()).is_nan());
        assert!(sin(-QUARTER_TURN.next_up()).is_nan());
        assert!(sin(f64::NAN).is_nan());
    }
}
