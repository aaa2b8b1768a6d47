//! Vapour pressure of water: the equation of IAPWS and its inverse by default, and by choice the equations and
//! tables that textbooks print, so that their figures can be reproduced.
//!
//! | source | range, degC | largest difference from IAPWS |
//! |---|---|---|
//! | [`iapws`] | 0 to 100 | |
//! | [`cipm`] | 5 to 30 | 0.003 % |
//! | [`hyland_wexler`] | 0 to 100 | 0.022 % |
//! | [`buck`], 1996 | 0 to 50 | 0.042 % |
//! | [`buck`], 1981 | 0 to 50 | 0.14 % |
//! | [`magnus`] | 0 to 60 | 0.31 % |
//! | [`antoine`] | 1 to 100 | 0.88 % |
//! | CRC Handbook, 73rd edition, [`tables`] | 0 to 100 | 0.10 % |
//! | OpenStax, Chemistry 2e, [`tables`] | 0 to 100 | 1.8 % between the entries, 0.34 % at them |
//!
//! Vapour pressure over ice is in [`ice`].

pub mod antoine;
pub mod buck;
pub mod cipm;
pub mod hyland_wexler;
pub mod iapws;
pub mod ice;
pub mod magnus;
pub mod tables;

use crate::bounds::{self, Bound};
use crate::reference::sources;
use crate::scalar::{Formula, PropertyUncertainty, Scalar, Source, Symbol};
use crate::symbols;
use crate::units::{Dimensioned, Pressure, Temperature};

pub(crate) use iapws::saturation_slope;
pub use iapws::{saturation_pressure, saturation_temperature};

/// What IAPWS states for the saturation pressure up to 373 K.
static IAPWS_STATED: PropertyUncertainty =
    PropertyUncertainty::from_limits(2e-4, "0.02 % up to 373 K, from memory", &sources::IAPWS_SR1_86);

/// Where a vapour pressure is taken from.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
#[non_exhaustive]
pub enum VapourSource {
    /// IAPWS SR1-86(1992).
    #[default]
    Iapws1992,
    /// CIPM-2007.
    Cipm2007,
    /// Hyland and Wexler 1983, as in the ASHRAE Handbook.
    HylandWexler1983,
    /// Buck 1981.
    Buck1981,
    /// Buck, revision of 1996.
    Buck1996,
    /// The Magnus form of the World Meteorological Organization.
    MagnusWmo,
    /// The Antoine equation in millimetres of mercury.
    Antoine,
    /// The table of the CRC Handbook, 73rd edition, in kPa, read in straight lines between its entries.
    Crc1992,
    /// The table of OpenStax, Chemistry 2e, in torr, read in straight lines between its entries.
    OpenStax2019,
}

impl VapourSource {
    /// Every source.
    pub const ALL: [VapourSource; 9] = [
        VapourSource::Iapws1992,
        VapourSource::Cipm2007,
        VapourSource::HylandWexler1983,
        VapourSource::Buck1981,
        VapourSource::Buck1996,
        VapourSource::MagnusWmo,
        VapourSource::Antoine,
        VapourSource::Crc1992,
        VapourSource::OpenStax2019,
    ];

    /// The temperatures it holds for.
    #[must_use]
    pub const fn range(self) -> &'static Bound {
        match self {
            VapourSource::Iapws1992 | VapourSource::HylandWexler1983 => &bounds::TEMPERATURE_C,
            VapourSource::Cipm2007 => &bounds::CIPM_TEMPERATURE_C,
            VapourSource::Buck1981 | VapourSource::Buck1996 => &bounds::BUCK_TEMPERATURE_C,
            VapourSource::MagnusWmo => &bounds::MAGNUS_TEMPERATURE_C,
            VapourSource::Antoine => &bounds::ANTOINE_TEMPERATURE_C,
            VapourSource::Crc1992 | VapourSource::OpenStax2019 => &bounds::TABLE_TEMPERATURE_C,
        }
    }

    /// The symbol of the pressure, which names the published work.
    #[must_use]
    pub const fn symbol(self) -> &'static Symbol {
        match self {
            VapourSource::Iapws1992 => &symbols::VAPOUR_PRESSURE,
            VapourSource::Cipm2007 => &symbols::VAPOUR_PRESSURE_CIPM,
            VapourSource::HylandWexler1983 => &symbols::VAPOUR_PRESSURE_HYLAND_WEXLER,
            VapourSource::Buck1981 => &symbols::VAPOUR_PRESSURE_BUCK_1981,
            VapourSource::Buck1996 => &symbols::VAPOUR_PRESSURE_BUCK_1996,
            VapourSource::MagnusWmo => &symbols::VAPOUR_PRESSURE_MAGNUS,
            VapourSource::Antoine => &symbols::VAPOUR_PRESSURE_ANTOINE,
            VapourSource::Crc1992 => &symbols::VAPOUR_PRESSURE_CRC,
            VapourSource::OpenStax2019 => &symbols::VAPOUR_PRESSURE_OPENSTAX,
        }
    }

    /// The published work.
    #[must_use]
    pub fn published(self) -> Option<&'static Source> {
        self.symbol().source
    }

    /// Vapour pressure at a temperature. The equations do not stop at the ends of their range by themselves; the
    /// tables give NaN there.
    #[inline(always)]
    pub fn pressure<S: Scalar>(self, temperature: Temperature<S>) -> Pressure<S> {
        match self {
            VapourSource::Iapws1992 => saturation_pressure(temperature),
            VapourSource::Cipm2007 => cipm::pressure(temperature),
            VapourSource::HylandWexler1983 => hyland_wexler::pressure(temperature),
            VapourSource::Buck1981 => buck::pressure_1981(temperature),
            VapourSource::Buck1996 => buck::pressure_1996(temperature),
            VapourSource::MagnusWmo => magnus::pressure(temperature),
            VapourSource::Antoine => antoine::pressure(temperature),
            VapourSource::Crc1992 => tables::crc_pressure(temperature),
            VapourSource::OpenStax2019 => tables::openstax_pressure(temperature),
        }
    }
}

/// `vapour_pressure(temperature_c)` in kPa, from 0 to 100 degC.
///
/// ```
/// use overwater::scalar::Formula;
/// use overwater::water::vapour::VapourPressure;
/// // IAPWS SR1-86(1992), check value at 373.1243 K: 0.101325 MPa.
/// let boiling = VapourPressure::default().number([373.1243 - 273.15])?;
/// assert!((boiling / 101.325 - 1.0).abs() < 1e-6);
/// # Ok::<(), overwater::Error>(())
/// ```
#[derive(Debug, Clone, Copy, Default)]
pub struct VapourPressure {
    /// Accept supercooled water down to -20 degC, where the equation is extrapolated; refused unless asked for.
    pub supercooled: bool,
}

impl Formula<1> for VapourPressure {
    const NAME: &'static str = "vapour_pressure";

    fn inputs(&self) -> [&'static Bound; 1] {
        [if self.supercooled { &bounds::SUPERCOOLED_TEMPERATURE_C } else { &bounds::TEMPERATURE_C }]
    }

    fn output(&self) -> &'static Symbol {
        &symbols::VAPOUR_PRESSURE
    }

    fn property_uncertainty(&self) -> Option<&'static PropertyUncertainty> {
        (!self.supercooled).then_some(&IAPWS_STATED)
    }

    #[inline(always)]
    fn evaluate<S: Scalar>(&self, [temperature]: [S; 1]) -> S {
        let temperature =
            temperature.enter(&symbols::TEMPERATURE).checkpoint(&symbols::THERMODYNAMIC_TEMPERATURE);
        saturation_pressure(Temperature::new(temperature)).leave(&symbols::VAPOUR_PRESSURE)
    }
}

/// `vapour_pressure_from(temperature_c)` in kPa, from a source of choice and within the range of that source.
///
/// ```
/// use overwater::scalar::Formula;
/// use overwater::water::vapour::{VapourPressureFrom, VapourSource};
/// // CRC Handbook, 73rd edition: 2.3388 kPa at 20 degC, 2.4877 kPa at 21 degC; half way lies half way.
/// let table = VapourPressureFrom { source: VapourSource::Crc1992 };
/// assert!((table.number([20.0])? - 2.338_8).abs() < 1e-12);
/// assert!((table.number([20.5])? - (2.338_8 + 2.487_7) / 2.0).abs() < 1e-12);
/// // OpenStax, Chemistry 2e, appendix E: 23.8 torr at 25 degC.
/// let table = VapourPressureFrom { source: VapourSource::OpenStax2019 };
/// assert!((table.number([25.0])? * 760.0 / 101.325 - 23.8).abs() < 1e-9);
/// # Ok::<(), overwater::Error>(())
/// ```
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub struct VapourPressureFrom {
    /// Where it is taken from.
    pub source: VapourSource,
}

impl Formula<1> for VapourPressureFrom {
    const NAME: &'static str = "vapour_pressure_from";

    fn inputs(&self) -> [&'static Bound; 1] {
        [self.source.range()]
    }

    fn output(&self) -> &'static Symbol {
        self.source.symbol()
    }

    fn property_uncertainty(&self) -> Option<&'static PropertyUncertainty> {
        (self.source == VapourSource::Iapws1992).then_some(&IAPWS_STATED)
    }

    #[inline(always)]
    fn evaluate<S: Scalar>(&self, [temperature]: [S; 1]) -> S {
        let temperature =
            temperature.enter(&symbols::TEMPERATURE).checkpoint(&symbols::THERMODYNAMIC_TEMPERATURE);
        self.source.pressure(Temperature::new(temperature)).leave(self.source.symbol())
    }
}

/// `saturation_temperature(vapour_pressure_kpa)` in degC: the inverse of [`VapourPressure`].
#[derive(Debug, Clone, Copy, Default)]
pub struct SaturationTemperature;

impl Formula<1> for SaturationTemperature {
    const NAME: &'static str = "saturation_temperature";

    fn inputs(&self) -> [&'static Bound; 1] {
        [&bounds::VAPOUR_PRESSURE_KPA]
    }

    fn output(&self) -> &'static Symbol {
        &symbols::TEMPERATURE
    }

    #[inline(always)]
    fn evaluate<S: Scalar>(&self, [pressure]: [S; 1]) -> S {
        let pressure = Pressure::new(pressure.enter(&symbols::VAPOUR_PRESSURE));
        saturation_temperature(pressure).leave(&symbols::TEMPERATURE)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::Code;
    use proptest::prelude::*;

    #[test]
    fn supercooled_water_is_refused_unless_asked_for() {
        let refused = VapourPressure::default().number([-0.01]).unwrap_err();
        assert_eq!(refused.code, Code::OutOfRange);
        // Over ice the pressure at -10 degC would be 0.2599 kPa; over supercooled water handbooks give 0.2865 kPa
        // (from memory).
        let cold = VapourPressure { supercooled: true }.number([-10.0]).unwrap();
        assert!((cold - 0.286_5).abs() < 0.000_3, "{cold}");
    }

    proptest! {
        #[test]
        fn the_inverse_undoes_the_equation(t in 0.0..=100.0_f64) {
            let pressure = VapourPressure::default().evaluate([t]);
            let back = SaturationTemperature.evaluate([pressure]);
            prop_assert!((back - t).abs() < 1e-12 * (t + 273.15), "{t} came back as {back}");
        }
    }
}
