//! The delivery tube: what it holds and how much it resists.

use crate::reference::constants::OXYGEN_VISCOSITY;
use crate::scalar::Scalar;
use crate::symbols;
use crate::units::{Dimensioned, Length, Pressure, Viscosity, Volume, VolumeFlow};

/// Volume of a tube: π/4 d² l.
#[inline(always)]
pub fn volume<S: Scalar>(bore: Length<S>, length: Length<S>) -> Volume<S> {
    (bore * bore * length * std::f64::consts::FRAC_PI_4).checkpoint(&symbols::TUBE_VOLUME)
}

/// Pressure drop of a laminar flow: 128 μ l Q / (π d⁴). At 10 cm3/s in a bore of 2 mm the Reynolds number is still
/// below 450, so that a school tube is never turbulent.
#[inline(always)]
pub fn friction<S: Scalar>(flow: VolumeFlow<S>, bore: Length<S>, length: Length<S>) -> Pressure<S> {
    let viscosity = Viscosity::new(S::constant(&OXYGEN_VISCOSITY));
    let square = bore * bore;
    (viscosity * length * flow * (128.0 / std::f64::consts::PI) / (square * square))
        .checkpoint(&symbols::FRICTION_PRESSURE)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn friction_and_volume_of_ordinary_tubes() {
        // Poiseuille by hand for 0.8 m at 10 cm3/s: 11 Pa at 5 mm bore, 26 at 4, 82 at 3, 413 at 2.
        for (bore_mm, expected) in [(5.0, 10.6), (4.0, 25.8), (3.0, 81.7), (2.0, 413.5)] {
            let drop = friction(VolumeFlow::new(1e-5), Length::new(bore_mm * 1e-3), Length::new(0.8));
            assert!((drop.si() / expected - 1.0_f64).abs() < 5e-3, "{bore_mm} mm: {}", drop.si());
        }
        // 5 mm x 80 cm: 15.7 cm3.
        assert!((volume(Length::new(5e-3), Length::new(0.8)).si() - 15.708e-6_f64).abs() < 1e-9);
    }
}
