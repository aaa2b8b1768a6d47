//! Density of liquid water and of its vapour where the two are in equilibrium.
//!
//! IAPWS SR1-86(1992), saturation properties of ordinary water substance, equations 2 and 3; Wagner and Pruss, J. Phys.
//! Chem. Ref. Data 22 (1993) 783:
//!
//! ```text
//! ρ'/ρ_c      = 1 + b1 τ^(1/3) + b2 τ^(2/3) + b3 τ^(5/3) + b4 τ^(16/3) + b5 τ^(43/3) + b6 τ^(110/3)
//! ln(ρ''/ρ_c) = c1 τ^(2/6) + c2 τ^(4/6) + c3 τ^(8/6) + c4 τ^(18/6) + c5 τ^(37/6) + c6 τ^(71/6)
//! τ = 1 - T/T_c
//! ```
//!
//! Range of the source: 273.16 K to 647.096 K; this library takes 0 to 100 degC. Within 0.0007 % (liquid) and 0.015 %
//! (vapour) of IAPWS-95 there.

use crate::bounds::{self, Bound};
use crate::reference::water::{
    CRITICAL_DENSITY_1992, CRITICAL_TEMPERATURE_1992, SATURATED_LIQUID_1992, SATURATED_VAPOUR_1992,
};
use crate::scalar::{Formula, Scalar, Symbol};
use crate::symbols;
use crate::units::{Dimensioned, MassDensity, Temperature};

/// Density of the saturated liquid.
#[inline(always)]
pub fn liquid_density<S: Scalar>(temperature: Temperature<S>) -> MassDensity<S> {
    let [b1, b2, b3, b4, b5, b6] = SATURATED_LIQUID_1992;
    let x = root(temperature, 3.0);
    let sum =
        x * b1 + x.power(2) * b2 + x.power(5) * b3 + x.power(16) * b4 + x.power(43) * b5 + x.power(110) * b6;
    MassDensity::new((sum + 1.0) * CRITICAL_DENSITY_1992).checkpoint(&symbols::SATURATED_LIQUID_DENSITY)
}

/// Density of the saturated vapour.
#[inline(always)]
pub fn vapour_density<S: Scalar>(temperature: Temperature<S>) -> MassDensity<S> {
    let [c1, c2, c3, c4, c5, c6] = SATURATED_VAPOUR_1992;
    let x = root(temperature, 6.0);
    let sum = x.power(2) * c1
        + x.power(4) * c2
        + x.power(8) * c3
        + x.power(18) * c4
        + x.power(37) * c5
        + x.power(71) * c6;
    MassDensity::new(sum.exp() * CRITICAL_DENSITY_1992).checkpoint(&symbols::SATURATED_VAPOUR_DENSITY)
}

/// A root of the distance from the critical temperature. The smallest number is added so that the critical point itself,
/// where the distance is 0, has a logarithm; nowhere else does it change a digit.
#[inline(always)]
fn root<S: Scalar>(temperature: Temperature<S>, degree: f64) -> S {
    let tau = S::number(1.0) - temperature.si().over(&CRITICAL_TEMPERATURE_1992);
    ((tau + f64::MIN_POSITIVE).ln() / degree).exp().checkpoint(&symbols::SATURATION_ROOT)
}

macro_rules! density {
    ($(#[$meta:meta])* $formula:ident, $name:literal, $function:ident, $symbol:ident) => {
        $(#[$meta])*
        #[derive(Debug, Clone, Copy, Default)]
        pub struct $formula;

        impl Formula<1> for $formula {
            const NAME: &'static str = $name;

            fn inputs(&self) -> [&'static Bound; 1] {
                [&bounds::TEMPERATURE_C]
            }

            fn output(&self) -> &'static Symbol {
                &symbols::$symbol
            }

            #[inline(always)]
            fn evaluate<S: Scalar>(&self, [temperature]: [S; 1]) -> S {
                let temperature = temperature.enter(&symbols::TEMPERATURE);
                $function(Temperature::new(temperature)).leave(&symbols::$symbol)
            }
        }
    };
}

density! {
    /// `saturated_liquid_density(temperature_c)` in g/cm3, from 0 to 100 degC.
    ///
    /// ```
    /// use overwater::scalar::Formula;
    /// use overwater::water::saturated::SaturatedLiquidDensity;
    /// // IAPWS SR1-86(1992), check value: 958.365 kg/m3 at 373.1243 K.
    /// assert!((SaturatedLiquidDensity.number([373.1243 - 273.15])? - 0.958_365).abs() < 5e-7);
    /// # Ok::<(), overwater::Error>(())
    /// ```
    SaturatedLiquidDensity, "saturated_liquid_density", liquid_density, SATURATED_LIQUID_DENSITY
}

density! {
    /// `saturated_vapour_density(temperature_c)` in kg/m3, from 0 to 100 degC.
    ///
    /// ```
    /// use overwater::scalar::Formula;
    /// use overwater::water::saturated::SaturatedVapourDensity;
    /// // IAPWS SR1-86(1992), check value: 0.597586 kg/m3 at 373.1243 K.
    /// assert!((SaturatedVapourDensity.number([373.1243 - 273.15])? - 0.597_586).abs() < 5e-7);
    /// # Ok::<(), overwater::Error>(())
    /// ```
    SaturatedVapourDensity, "saturated_vapour_density", vapour_density, SATURATED_VAPOUR_DENSITY
}
