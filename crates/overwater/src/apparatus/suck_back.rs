//! Water running back when the flask cools.
//!
//! Warm moist gas shrinks on cooling, both because it is warmer and because its steam condenses. At constant pressure
//! the share that is lost between `hot` and `cold` is
//!
//! ```text
//! s = 1 - (p - p_w(hot)) T(cold) / ((p - p_w(cold)) T(hot))
//! ```

use crate::scalar::Scalar;
use crate::symbols;
use crate::units::{Pressure, Temperature};
use crate::water::vapour::saturation_pressure;

/// Share of steam in gas saturated with vapour: p(H2O)/p.
#[inline(always)]
pub fn steam_share<S: Scalar>(temperature: Temperature<S>, pressure: Pressure<S>) -> S {
    (saturation_pressure(temperature) / pressure).into_value().checkpoint(&symbols::STEAM_SHARE)
}

/// Share of the moist gas that is lost on cooling from `hot` to `cold`.
#[inline(always)]
pub fn shrinkage<S: Scalar>(hot: Temperature<S>, cold: Temperature<S>, pressure: Pressure<S>) -> S {
    let dry_hot = pressure - saturation_pressure(hot);
    let dry_cold = pressure - saturation_pressure(cold);
    let kept = (dry_hot * cold / (dry_cold * hot)).into_value();
    (S::number(1.0) - kept).checkpoint(&symbols::SHRINKAGE)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::reference::constants::STANDARD_ATMOSPHERE_1954;

    #[test]
    fn shrinkage_and_steam_at_one_atmosphere() {
        let atmosphere = Pressure::new(STANDARD_ATMOSPHERE_1954.si());
        let at = |celsius: f64| Temperature::new(celsius + 273.15);
        // With the handbook's 19.94 and 2.339 kPa: 1 - (81.38 x 293.15)/(98.99 x 333.15) = 0.277.
        assert!((shrinkage(at(60.0), at(20.0), atmosphere) - 0.277).abs() < 5e-4);
        assert_eq!(shrinkage(at(20.0), at(20.0), atmosphere), 0.0);
        // 7.38 and 19.94 kPa of 101.325: 7.3 % and 19.7 %.
        assert!((steam_share(at(40.0), atmosphere) - 0.073).abs() < 5e-4);
        assert!((steam_share(at(60.0), atmosphere) - 0.197).abs() < 5e-4);
    }
}
