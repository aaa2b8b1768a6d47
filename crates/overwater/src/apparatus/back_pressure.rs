//! Pressure in the flask above that of the room, and the liquid it pushes up the funnel stem.
//!
//! ```text
//! p(back) = ρ g H + friction in the tube + 4 γ/d
//! ```
//!
//! H is the depth of the outlet; the last term is the excess pressure in a bubble as wide as the bore (one surface,
//! radius d/2: 2 γ/r). The liquid in the stem stands p(back)/(ρ g) above the liquid in the flask.

use crate::apparatus::tube;
use crate::gas::level;
use crate::reference::constants::WATER_SURFACE_TENSION;
use crate::scalar::Scalar;
use crate::symbols;
use crate::units::{Dimensioned, Length, MassDensity, Pressure, SurfaceTension, Temperature, VolumeFlow};
use crate::water::density::liquid_density;

/// The parts of the back pressure.
#[derive(Debug, Clone, Copy)]
pub struct BackPressure<S> {
    /// Water over the outlet.
    pub depth: Pressure<S>,
    /// Friction in the tube.
    pub friction: Pressure<S>,
    /// Excess pressure in a bubble.
    pub bubble: Pressure<S>,
    density: MassDensity<S>,
}

impl<S: Scalar> BackPressure<S> {
    /// The back pressure of a flow through a tube with its outlet at a depth under water.
    #[inline(always)]
    pub fn new(
        depth: Length<S>,
        bore: Length<S>,
        length: Length<S>,
        flow: VolumeFlow<S>,
        water_temperature: Temperature<S>,
    ) -> Self {
        let density = liquid_density(water_temperature);
        let tension = SurfaceTension::new(S::constant(&WATER_SURFACE_TENSION));
        BackPressure {
            depth: level::column_pressure(depth, density).checkpoint(&symbols::DEPTH_PRESSURE),
            friction: tube::friction(flow, bore, length),
            bubble: (tension * 4.0 / bore).checkpoint(&symbols::BUBBLE_PRESSURE),
            density,
        }
    }

    /// All together.
    #[inline(always)]
    pub fn total(&self) -> Pressure<S> {
        (self.depth + self.friction + self.bubble).checkpoint(&symbols::BACK_PRESSURE)
    }

    /// How far the liquid stands in the funnel stem above the liquid in the flask.
    #[inline(always)]
    pub fn stem_rise(&self) -> Length<S> {
        level::column_height(self.total(), self.density).checkpoint(&symbols::STEM_RISE)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_stem_stands_as_high_as_the_outlet_is_deep_and_a_little_more() {
        let back = BackPressure::<f64>::new(
            Length::new(0.10),
            Length::new(5e-3),
            Length::new(0.8),
            VolumeFlow::new(1e-5),
            Temperature::new(293.15),
        );
        // 10 cm of water at 20 degC: 998.2 x 9.80665 x 0.1 = 978.9 Pa; a bubble of 5 mm: 4 x 0.0728/0.005 = 58 Pa.
        assert!((back.depth.si() - 978.9).abs() < 0.05);
        assert!((back.bubble.si() - 58.24).abs() < 0.01);
        assert!((back.total().si() - (978.9 + 58.24 + 10.57)).abs() < 0.1);
        // 97.9 Pa for each centimetre.
        assert!((back.stem_rise().si() * 100.0 - back.total().si() / 97.89).abs() < 1e-3);
    }
}
