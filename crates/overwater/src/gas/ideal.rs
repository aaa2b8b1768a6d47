//! The ideal gas.
//!
//! At school pressures and temperatures oxygen, hydrogen and nitrogen follow it within 0.1 %, carbon dioxide within
//! 0.6 %.

use crate::bounds::{self, Bound};
use crate::reference::constants::MOLAR_GAS_2019;
use crate::scalar::{Constant, Formula, Scalar, Symbol};
use crate::symbols;
use crate::units::{Dimensioned, MolarEntropy, MolarVolume, Moles, Pressure, Temperature, Volume};

/// n = p V / (R T).
#[inline(always)]
pub fn amount<S: Scalar>(
    pressure: Pressure<S>,
    volume: Volume<S>,
    temperature: Temperature<S>,
    gas_constant: &'static Constant,
) -> Moles<S> {
    let r = MolarEntropy::new(S::constant(gas_constant));
    (pressure * volume / (r * temperature)).checkpoint(&symbols::AMOUNT)
}

/// V = n R T / p.
#[inline(always)]
pub fn volume<S: Scalar>(
    amount: Moles<S>,
    pressure: Pressure<S>,
    temperature: Temperature<S>,
    gas_constant: &'static Constant,
) -> Volume<S> {
    let r = MolarEntropy::new(S::constant(gas_constant));
    (amount * r * temperature / pressure).checkpoint(&symbols::GAS_VOLUME)
}

/// R T / p.
#[inline(always)]
pub fn molar_volume<S: Scalar>(
    pressure: Pressure<S>,
    temperature: Temperature<S>,
    gas_constant: &'static Constant,
) -> MolarVolume<S> {
    let r = MolarEntropy::new(S::constant(gas_constant));
    (r * temperature / pressure).checkpoint(&symbols::MOLAR_VOLUME)
}

/// `molar_volume(temperature_c, pressure_kpa)` in dm3/mol.
///
/// ```
/// use overwater::gas::ideal::IdealMolarVolume;
/// use overwater::scalar::Formula;
/// // CODATA 2018/2022: 22.413 969 54 dm3/mol at 0 degC and 101.325 kPa, 22.710 954 64 at 100 kPa.
/// assert!((IdealMolarVolume.number([0.0, 101.325])? - 22.413_969_54).abs() < 1e-8);
/// assert!((IdealMolarVolume.number([0.0, 100.0])? - 22.710_954_64).abs() < 1e-8);
/// # Ok::<(), overwater::Error>(())
/// ```
#[derive(Debug, Clone, Copy, Default)]
pub struct IdealMolarVolume;

impl Formula<2> for IdealMolarVolume {
    const NAME: &'static str = "molar_volume";

    fn inputs(&self) -> [&'static Bound; 2] {
        [&bounds::TEMPERATURE_C, &bounds::PRESSURE_KPA]
    }

    fn output(&self) -> &'static Symbol {
        &symbols::MOLAR_VOLUME
    }

    #[inline(always)]
    fn evaluate<S: Scalar>(&self, [temperature, pressure]: [S; 2]) -> S {
        let temperature =
            temperature.enter(&symbols::TEMPERATURE).checkpoint(&symbols::THERMODYNAMIC_TEMPERATURE);
        let pressure = pressure.enter(&symbols::STATION_PRESSURE);
        molar_volume(Pressure::new(pressure), Temperature::new(temperature), &MOLAR_GAS_2019)
            .leave(&symbols::MOLAR_VOLUME)
    }
}
