//! Gravity at a latitude and a height.
//!
//! World Geodetic System 1984, NIMA TR8350.2 (2000), equations 4-1 and 4-3 (from memory; the published values at equator
//! and pole are reproduced):
//!
//! ```text
//! g0 = g_e (1 + k sin²φ)/√(1 - e² sin²φ)
//! g  = g0 (1 - (2/a)(1 + f + m - 2 f sin²φ) h + 3 h²/a²)
//! ```
//!
//! The older series, International Gravity Formula 1980 (from memory), g = g_e (1 + b1 sin²φ - b2 sin²2φ), is for the sea
//! level and differs by 2 parts in ten million.
//!
//! Both are the gravity of a smooth Earth. Hills and rock change the true value by some parts in a hundred thousand; a
//! column of water never shows that.

use crate::bounds::{self, Bound};
use crate::reference::earth::{
    ECCENTRICITY_SQUARED_1984, EQUATORIAL_GRAVITY_1984, FLATTENING_1984, GRAVITY_1980, GRAVITY_1984_K,
    GRAVITY_1984_M, SEMI_MAJOR_AXIS_1984,
};
use crate::scalar::{Formula, Scalar, Symbol};
use crate::symbols;
use crate::units::{Acceleration, Dimensioned, Length};

/// Gravity at a latitude in radians and a height.
#[inline(always)]
pub fn gravity<S: Scalar>(latitude: S, height: Length<S>) -> Acceleration<S> {
    let sine = latitude.sin();
    let square = sine * sine;
    let one = S::number(1.0);
    let at_sea_level = ((square * GRAVITY_1984_K + 1.0) * EQUATORIAL_GRAVITY_1984
        / (one - square * ECCENTRICITY_SQUARED_1984).sqrt())
    .checkpoint(&symbols::SEA_LEVEL_GRAVITY);
    let share = height.si() / SEMI_MAJOR_AXIS_1984;
    let first = S::number(1.0 + FLATTENING_1984 + GRAVITY_1984_M) - square * (2.0 * FLATTENING_1984);
    let fall = one - share * first * 2.0 + share * share * 3.0;
    Acceleration::new(at_sea_level * fall).checkpoint(&symbols::GRAVITY)
}

/// Gravity at sea level and a latitude in radians by the series of 1980.
#[inline(always)]
pub fn gravity_1980<S: Scalar>(latitude: S) -> Acceleration<S> {
    let [equator, b1, b2] = GRAVITY_1980;
    let sine = latitude.sin();
    let square = sine * sine;
    // sin²2φ = 4 sin²φ cos²φ
    let double = square * (S::number(1.0) - square) * 4.0;
    Acceleration::new((square * b1 - double * b2 + 1.0) * equator).checkpoint(&symbols::GRAVITY_1980)
}

/// `gravity(latitude_deg, altitude_m)` in m/s2; south is negative, which makes no difference.
///
/// ```
/// use overwater::gas::gravity::Gravity;
/// use overwater::scalar::Formula;
/// // World Geodetic System 1984: 9.7803253359 m/s2 at the equator, 9.8321849378 m/s2 at the poles.
/// assert!((Gravity.number([0.0, 0.0])? - 9.780_325_335_9).abs() < 1e-10);
/// assert!((Gravity.number([90.0, 0.0])? - 9.832_184_937_8).abs() < 1e-10);
/// # Ok::<(), overwater::Error>(())
/// ```
#[derive(Debug, Clone, Copy, Default)]
pub struct Gravity;

impl Formula<2> for Gravity {
    const NAME: &'static str = "gravity";

    fn inputs(&self) -> [&'static Bound; 2] {
        [&bounds::LATITUDE_DEG, &bounds::ALTITUDE_M]
    }

    fn output(&self) -> &'static Symbol {
        &symbols::GRAVITY
    }

    #[inline(always)]
    fn evaluate<S: Scalar>(&self, [latitude, altitude]: [S; 2]) -> S {
        let latitude = latitude.enter(&symbols::LATITUDE);
        gravity(latitude, Length::new(altitude.enter(&symbols::ALTITUDE))).leave(&symbols::GRAVITY)
    }
}

/// `gravity_1980(latitude_deg)` in m/s2, at sea level.
///
/// ```
/// use overwater::gas::gravity::Gravity1980;
/// use overwater::scalar::Formula;
/// // International Gravity Formula 1980: 9.780327 (1 + 0.0053024/2 - 0.0000058) = 9.806200 m/s2 at 45 degrees.
/// assert!((Gravity1980.number([45.0])? - 9.806_200).abs() < 5e-7);
/// # Ok::<(), overwater::Error>(())
/// ```
#[derive(Debug, Clone, Copy, Default)]
pub struct Gravity1980;

impl Formula<1> for Gravity1980 {
    const NAME: &'static str = "gravity_1980";

    fn inputs(&self) -> [&'static Bound; 1] {
        [&bounds::LATITUDE_DEG]
    }

    fn output(&self) -> &'static Symbol {
        &symbols::GRAVITY_1980
    }

    #[inline(always)]
    fn evaluate<S: Scalar>(&self, [latitude]: [S; 1]) -> S {
        gravity_1980(latitude.enter(&symbols::LATITUDE)).leave(&symbols::GRAVITY_1980)
    }
}
