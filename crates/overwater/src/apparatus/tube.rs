//! The delivery tube: what it holds and how much it resists.

use crate::reference::constants::{MOLAR_GAS_2019, OXYGEN_VISCOSITY, STANDARD_ATMOSPHERE_1954};
use crate::reference::flask::{BLASIUS, OXYGEN_MOLAR_MASS, STATED_AT_K};
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

/// Density of oxygen at 20 degC and one atmosphere by the ideal gas: M p/(R T), with 31.998 g/mol.
fn oxygen_density() -> f64 {
    OXYGEN_MOLAR_MASS * STANDARD_ATMOSPHERE_1954.si() / (MOLAR_GAS_2019.si() * STATED_AT_K)
}

/// Pressure drop of a turbulent flow in a smooth tube: f l/d ρ u²/2 with Blasius' f = 0.316 Re^(-1/4), for Reynolds
/// numbers from about 4000 to 100000 (Blasius 1913; the coefficient from memory).
#[must_use]
pub fn turbulent_friction(flow: VolumeFlow<f64>, bore: Length<f64>, length: Length<f64>) -> f64 {
    let (bore, length) = (bore.si(), length.si());
    let speed = flow.si() / (std::f64::consts::FRAC_PI_4 * bore * bore);
    let reynolds = oxygen_density() * speed * bore / OXYGEN_VISCOSITY.si();
    if reynolds <= 0.0 {
        return 0.0;
    }
    BLASIUS / reynolds.sqrt().sqrt() * length / bore * oxygen_density() * speed * speed / 2.0
}

/// Pressure drop along the tube: the greater of the laminar and the turbulent one, which cross near a Reynolds number
/// of 1200; between there and 4000 that is cautious (Pa).
#[must_use]
pub fn drop(flow: VolumeFlow<f64>, bore: Length<f64>, length: Length<f64>) -> f64 {
    friction(flow, bore, length).si().max(turbulent_friction(flow, bore, length))
}

/// The flow at which the tube takes up a pressure drop: the inverse of [`drop`]; 0 where there is nothing to drive it
/// (m3/s).
#[must_use]
pub fn flow_for_drop(pressure: f64, bore: Length<f64>, length: Length<f64>) -> f64 {
    if pressure.is_nan() || pressure <= 0.0 {
        return 0.0;
    }
    let unit = VolumeFlow::new(1.0);
    let laminar = pressure / friction(unit, bore, length).si();
    // The turbulent drop goes with the power 7/4.
    let turbulent = (pressure / turbulent_friction(unit, bore, length)).powf(4.0 / 7.0);
    laminar.min(turbulent)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_flow_for_a_drop_undoes_the_drop() {
        for (bore, pressure) in [(5e-3, 5.0), (5e-3, 1400.0), (2e-3, 900.0), (0.5e-3, 50.0)] {
            let flow = flow_for_drop(pressure, Length::new(bore), Length::new(0.8));
            let back = drop(VolumeFlow::new(flow), Length::new(bore), Length::new(0.8));
            assert!((back / pressure - 1.0).abs() < 1e-9, "{bore} {pressure} {back}");
        }
        assert_eq!(flow_for_drop(-3.0, Length::new(5e-3), Length::new(0.8)), 0.0);
        // Blasius by hand: 100 cm3/s in 5 mm, u = 5.093 m/s, Re = 1.330 x 5.093 x 0.005/20.3e-6 = 1668,
        // f = 0.316/6.391 = 0.04945, drop = 0.04945 x 160 x 1.330 x 25.94/2 = 136.5 Pa.
        let drop = turbulent_friction(VolumeFlow::new(1e-4), Length::new(5e-3), Length::new(0.8));
        assert!((drop - 136.5).abs() < 0.3, "{drop}");
    }

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
