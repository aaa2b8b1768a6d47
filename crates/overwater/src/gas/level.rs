//! Pressure of a column of water under standard gravity; [`column`](mod@super::column) takes other liquids and places.

use crate::gas::column;
use crate::reference::constants::STANDARD_GRAVITY_1901;
use crate::scalar::Scalar;
use crate::units::{Acceleration, Length, MassDensity, Pressure};

#[inline(always)]
fn standard_gravity<S: Scalar>() -> Acceleration<S> {
    Acceleration::new(S::constant(&STANDARD_GRAVITY_1901))
}

/// ρ g h.
#[inline(always)]
pub fn column_pressure<S: Scalar>(height: Length<S>, density: MassDensity<S>) -> Pressure<S> {
    column::pressure(height, density, standard_gravity())
}

/// The height of the column that a pressure holds up: p / (ρ g).
#[inline(always)]
pub fn column_height<S: Scalar>(pressure: Pressure<S>, density: MassDensity<S>) -> Length<S> {
    column::height(pressure, density, standard_gravity())
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::Dimensioned;

    #[test]
    fn a_millimetre_of_water() {
        // One centimetre of water at 1 g/cm3 is 98.0665 Pa by definition of the conventional unit.
        let pressure = column_pressure(Length::new(0.01), MassDensity::new(1000.0));
        assert!((pressure.si() - 98.066_5_f64).abs() < 1e-9);
        assert!((column_height(pressure, MassDensity::new(1000.0)).si() - 0.01_f64).abs() < 1e-15);
    }
}
