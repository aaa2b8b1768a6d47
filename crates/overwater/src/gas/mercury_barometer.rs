//! Pressure from a mercury barometer: its reading corrected for temperature and gravity.
//!
//! ```text
//! h = B (1 + α t)        the scale, true at 0 degC, has grown with its temperature t (degC)
//! p = ρ(Hg, t) g h
//! ```
//!
//! The expansion of mercury is that of its density (Sommer and Poziemski 1994, from memory), not a coefficient of its
//! own; 18.4e-6 per kelvin for a brass scale is from memory. Together they give the correction of -2.47 mm to 760 mm at
//! 20 degC that handbooks print (from memory). The capillary depression and the error of the instrument are not in it.

use crate::bounds::{self, Bound};
use crate::gas::column;
use crate::reference::earth::BRASS_EXPANSION;
use crate::scalar::{Formula, Scalar, Symbol};
use crate::symbols;
use crate::units::{Acceleration, DEGREE_CELSIUS, Dimensioned, Length, Pressure, Temperature};

/// What the scale is made of.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub enum Scale {
    /// Brass, true at 0 degC.
    #[default]
    Brass,
    /// A scale that does not grow, or one whose reading has been corrected already.
    True,
}

impl Scale {
    /// The true height of a reading.
    #[inline(always)]
    pub fn height<S: Scalar>(self, reading: Length<S>, temperature: Temperature<S>) -> Length<S> {
        match self {
            Scale::Brass => {
                let t = temperature.si() - DEGREE_CELSIUS.zero;
                let growth = S::constant(&BRASS_EXPANSION) * t + 1.0;
                Length::new(reading.si() * growth).checkpoint(&symbols::BAROMETER_HEIGHT)
            }
            Scale::True => reading,
        }
    }
}

/// Pressure that the mercury column of a barometer stands for.
#[inline(always)]
pub fn barometer_pressure<S: Scalar>(
    reading: Length<S>,
    temperature: Temperature<S>,
    gravity: Acceleration<S>,
    scale: Scale,
) -> Pressure<S> {
    let density = column::mercury_density(temperature);
    column::pressure(scale.height(reading, temperature), density, gravity)
        .checkpoint(&symbols::BAROMETER_PRESSURE)
}

/// `mercury_barometer(barometer_mm, temperature_c, gravity_m_per_s2)` in kPa.
///
/// ```
/// use overwater::gas::mercury_barometer::MercuryBarometer;
/// use overwater::scalar::Formula;
/// // 760 mm read at 20 degC on brass are 757.53 mm at 0 degC (handbook correction -2.47 mm, from memory).
/// let pressure = MercuryBarometer::default().number([760.0, 20.0, 9.806_65])?;
/// assert!((pressure / 0.133_322_387_415 - 757.53).abs() < 0.005);
/// # Ok::<(), overwater::Error>(())
/// ```
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub struct MercuryBarometer {
    /// The scale.
    pub scale: Scale,
}

impl Formula<3> for MercuryBarometer {
    const NAME: &'static str = "mercury_barometer";

    fn inputs(&self) -> [&'static Bound; 3] {
        [&bounds::BAROMETER_MM, &bounds::ROOM_TEMPERATURE_C, &bounds::GRAVITY_M_PER_S2]
    }

    fn output(&self) -> &'static Symbol {
        &symbols::BAROMETER_PRESSURE
    }

    #[inline(always)]
    fn evaluate<S: Scalar>(&self, [reading, temperature, gravity]: [S; 3]) -> S {
        let reading = Length::new(reading.enter(&symbols::BAROMETER_READING));
        let temperature = Temperature::new(temperature.enter(&symbols::TEMPERATURE));
        let gravity = Acceleration::new(gravity.enter(&symbols::GRAVITY));
        barometer_pressure(reading, temperature, gravity, self.scale).leave(&symbols::BAROMETER_PRESSURE)
    }
}
