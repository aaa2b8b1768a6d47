//! The quantile of the normal distribution, quick enough for millions of draws and the same on every processor.
//!
//! Wichura, The percentage points of the normal distribution, Applied Statistics 37 (1988) 477, algorithm AS 241 (PPND16).

use crate::scalar::Scalar;

const MIDDLE: [[f64; 8]; 2] = [
    [
        3.387_132_872_796_366_5,
        133.141_667_891_784_38,
        1_971.590_950_306_551_3,
        13_731.693_765_509_46,
        45_921.953_931_549_87,
        67_265.770_927_008_7,
        33_430.575_583_588_13,
        2_509.080_928_730_122_7,
    ],
    [
        1.0,
        42.313_330_701_600_91,
        687.187_007_492_057_9,
        5_394.196_021_424_751,
        21_213.794_301_586_597,
        39_307.895_800_092_71,
        28_729.085_735_721_943,
        5_226.495_278_852_854,
    ],
];
const TAIL: [[f64; 8]; 2] = [
    [
        1.423_437_110_749_683_5,
        4.630_337_846_156_546,
        5.769_497_221_460_691,
        3.647_848_324_763_204_5,
        1.270_458_252_452_368_4,
        0.241_780_725_177_450_6,
        0.022_723_844_989_269_184,
        7.745_450_142_783_414e-4,
    ],
    [
        1.0,
        2.053_191_626_637_759,
        1.676_384_830_183_803_8,
        0.689_767_334_985_1,
        0.148_103_976_427_480_08,
        0.015_198_666_563_616_457,
        5.475_938_084_995_345e-4,
        1.050_750_071_644_416_9e-9,
    ],
];
const FAR: [[f64; 8]; 2] = [
    [
        6.657_904_643_501_103,
        5.463_784_911_164_114,
        1.784_826_539_917_291_3,
        0.296_560_571_828_504_87,
        0.026_532_189_526_576_124,
        0.001_242_660_947_388_078_4,
        2.711_555_568_743_487_6e-5,
        2.010_334_399_292_288_1e-7,
    ],
    [
        1.0,
        0.599_832_206_555_888,
        0.136_929_880_922_735_8,
        0.014_875_361_290_850_615,
        7.868_691_311_456_133e-4,
        1.846_318_317_510_054_8e-5,
        1.421_511_758_316_446e-7,
        2.044_263_103_389_939_8e-15,
    ],
];

/// Up to here from the middle the first pair of polynomials holds.
const MIDDLE_HALF: f64 = 0.425;

/// The quantile of the standard normal distribution at a probability inside 0 to 1; NaN for others.
///
/// ```
/// use overwater::readings::uncertainty::normal::normal_quantile;
/// // The 97.5 % point of the usual tables.
/// assert!((normal_quantile(0.975) - 1.959_963_984_540_054).abs() < 1e-15);
/// ```
#[must_use]
pub fn normal_quantile(probability: f64) -> f64 {
    let from_middle = probability - 0.5;
    if from_middle.abs() <= MIDDLE_HALF {
        let r = MIDDLE_HALF * MIDDLE_HALF - from_middle * from_middle;
        return from_middle * ratio(&MIDDLE, r);
    }
    let r = Scalar::sqrt(-Scalar::ln(probability.min(1.0 - probability)));
    let size = if r <= 5.0 { ratio(&TAIL, r - 1.6) } else { ratio(&FAR, r - 5.0) };
    if from_middle > 0.0 { size } else { -size }
}

#[inline]
fn ratio([above, below]: &[[f64; 8]; 2], x: f64) -> f64 {
    let sum = |coefficients: &[f64; 8]| {
        coefficients.iter().rev().fold(0.0, |sum, coefficient| sum * x + coefficient)
    };
    sum(above) / sum(below)
}

#[cfg(test)]
mod tests {
    use super::*;
    use statrs::distribution::{ContinuousCDF, Normal};

    #[test]
    fn it_is_that_of_statrs_and_scipy() {
        // scipy.special.ndtri (SciPy 1.17.1).
        for (p, x) in [
            (0.5, 0.0),
            (1e-4, -3.719_016_485_455_68),
            (1e-20, -9.262_340_089_798_408),
            (1e-300, -37.047_096_299_361_2),
        ] {
            assert!(
                (normal_quantile(p) - x).abs() <= 4e-15 * f64::abs(x).max(1.0),
                "{p}: {}",
                normal_quantile(p)
            );
        }
        for k in 1..4000 {
            let p = f64::from(k) / 4000.0;
            let theirs = Normal::standard().inverse_cdf(p);
            assert!((normal_quantile(p) - theirs).abs() < 1e-13, "{p}");
            assert!((normal_quantile(1.0 - p) + normal_quantile(p)).abs() < 1e-12, "{p}");
        }
        assert!(
            normal_quantile(1.5).is_nan()
                && normal_quantile(-0.1).is_nan()
                && normal_quantile(f64::NAN).is_nan()
        );
    }
}
