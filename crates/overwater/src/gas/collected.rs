//! Gas collected over water: the chain from the reading to the amount of dry gas.
//!
//! ```text
//! p(level) = ρ g Δh           Δh: water level inside less level outside
//! p(gas)   = p - p(level)     water standing higher inside means less pressure inside
//! p(dry)   = p(gas) - p(H2O)  the gas is saturated with vapour
//! n        = p(dry) V / (R T)
//! ```
//!
//! and back, from an amount to the volume that it takes over water.

use crate::bounds::{self, Bound};
use crate::conventions::{Conventions, IcePoint};
use crate::gas::{ideal, level};
use crate::scalar::{Formula, Scalar, Symbol};
use crate::symbols;
use crate::units::{Dimensioned, Length, Moles, Pressure, Temperature, Volume};
use crate::water::{density, vapour};
use crate::{Code, Error};

/// A reading of a gas over water.
#[derive(Debug, Clone, Copy)]
pub struct Reading<S> {
    /// Volume of the moist gas.
    pub volume: Volume<S>,
    /// Temperature of gas and water.
    pub temperature: Temperature<S>,
    /// The temperature that goes into the gas equation: the same, but for a text's own ice point.
    pub counted_temperature: Temperature<S>,
    /// Pressure at the place.
    pub pressure: Pressure<S>,
    /// Water level inside less level outside.
    pub inside_minus_outside: Length<S>,
}

/// Pressure of the moist gas: the barometer less the column that stands higher inside.
#[inline(always)]
fn moist_pressure<S: Scalar>(
    temperature: Temperature<S>,
    pressure: Pressure<S>,
    inside_minus_outside: Length<S>,
) -> Pressure<S> {
    let water = density::liquid_density(temperature);
    let column = level::column_pressure(inside_minus_outside, water).checkpoint(&symbols::LEVEL_PRESSURE);
    (pressure - column).checkpoint(&symbols::GAS_PRESSURE)
}

/// What is left of the pressure of the moist gas beside the vapour; NaN where nothing is.
#[inline(always)]
fn beside_vapour<S: Scalar>(moist: Pressure<S>, vapour: Pressure<S>) -> Pressure<S> {
    let dry = (moist - vapour).checkpoint(&symbols::DRY_PRESSURE);
    Pressure::new(dry.si().within(f64::MIN_POSITIVE, f64::MAX))
}

/// Pressure of the dry gas, of temperature, pressure and levels in school units.
#[inline(always)]
fn dry_pressure<S: Scalar>([temperature, pressure, level]: [S; 3]) -> (Temperature<S>, Pressure<S>) {
    let temperature =
        temperature.enter(&symbols::TEMPERATURE).checkpoint(&symbols::THERMODYNAMIC_TEMPERATURE);
    let temperature = Temperature::new(temperature);
    let pressure = Pressure::new(pressure.enter(&symbols::STATION_PRESSURE));
    let level = Length::new(level.enter(&symbols::LEVEL_DIFFERENCE));
    let moist = moist_pressure(temperature, pressure, level);
    (temperature, beside_vapour(moist, vapour::saturation_pressure(temperature)))
}

impl<S: Scalar> Reading<S> {
    /// Pressure of the moist gas: the barometer less the column that stands higher inside.
    #[inline(always)]
    pub fn gas_pressure(&self) -> Pressure<S> {
        moist_pressure(self.temperature, self.pressure, self.inside_minus_outside)
    }

    /// Amount of dry gas when the vapour has the pressure `vapour`; NaN where nothing is left beside the vapour.
    #[inline(always)]
    pub fn dry_amount(&self, vapour: Pressure<S>, conventions: &Conventions) -> Moles<S> {
        let dry = beside_vapour(self.gas_pressure(), vapour);
        ideal::amount(dry, self.volume, self.counted_temperature, conventions.gas_constant)
    }

    #[inline(always)]
    fn enter([volume, temperature, pressure, inside_minus_outside]: [S; 4], ice_point: IcePoint) -> Self {
        let kelvin = |symbol: &'static Symbol| {
            Temperature::new(temperature.enter(symbol).checkpoint(&symbols::THERMODYNAMIC_TEMPERATURE))
        };
        let true_temperature = kelvin(&symbols::TEMPERATURE);
        Reading {
            volume: Volume::new(volume.enter(&symbols::VOLUME)),
            temperature: true_temperature,
            counted_temperature: match ice_point {
                IcePoint::Exact => true_temperature,
                IcePoint::Rounded => kelvin(ice_point.temperature()),
            },
            pressure: Pressure::new(pressure.enter(&symbols::STATION_PRESSURE)),
            inside_minus_outside: Length::new(inside_minus_outside.enter(&symbols::LEVEL_DIFFERENCE)),
        }
    }
}

fn only_vapour(pressure_kpa: f64, inside_minus_outside_mm: f64) -> Error {
    Error::new(Code::Contradiction, "pressure_kpa")
        .value(format!("{pressure_kpa} kPa with {inside_minus_outside_mm} mm between the levels"))
        .allowed("a pressure of the gas above the vapour pressure of water")
        .advice("nothing would be left beside the vapour: check the unit of the pressure and the temperature")
}

/// `dry_amount(volume_cm3, temperature_c, pressure_kpa, inside_minus_outside_mm)` in mmol.
///
/// ```
/// use overwater::gas::collected::DryAmount;
/// use overwater::scalar::Formula;
/// // 0.193 dm3 over water at 23.0 degC and 762 mmHg hold 7.74e-3 mol (Purdue University general chemistry help,
/// // gas over water, problem 3; the page itself slips to 7.69e-4).
/// let amount = DryAmount::default().number([193.0, 23.0, 762.0 * 0.133_322_387_415, 0.0])?;
/// assert!((amount - 7.74).abs() < 0.005);
/// # Ok::<(), overwater::Error>(())
/// ```
#[derive(Debug, Clone, Copy, Default)]
pub struct DryAmount {
    /// The constants to put in.
    pub conventions: Conventions,
}

impl Formula<4> for DryAmount {
    const NAME: &'static str = "dry_amount";

    fn inputs(&self) -> [&'static Bound; 4] {
        [&bounds::VOLUME_CM3, &bounds::TEMPERATURE_C, &bounds::PRESSURE_KPA, &bounds::INSIDE_MINUS_OUTSIDE_MM]
    }

    fn output(&self) -> &'static Symbol {
        &symbols::AMOUNT
    }

    #[inline(always)]
    fn evaluate<S: Scalar>(&self, [volume, temperature, pressure, level]: [S; 4]) -> S {
        let reading = Reading::enter([volume, temperature, pressure, level], self.conventions.ice_point);
        let vapour = vapour::saturation_pressure(reading.temperature);
        reading.dry_amount(vapour, &self.conventions).leave(&symbols::AMOUNT)
    }

    fn refusal(&self, [_, _, pressure, level]: [f64; 4]) -> Error {
        only_vapour(pressure, level)
    }
}

/// `dry_pressure(temperature_c, pressure_kpa, inside_minus_outside_mm)` in kPa.
///
/// ```
/// use overwater::gas::collected::DryPressure;
/// use overwater::scalar::Formula;
/// // 101.325 kPa less the 2.3388 kPa of vapour at 20 degC (CRC Handbook).
/// assert!((DryPressure.number([20.0, 101.325, 0.0])? - 98.986).abs() < 1e-3);
/// # Ok::<(), overwater::Error>(())
/// ```
#[derive(Debug, Clone, Copy, Default)]
pub struct DryPressure;

impl Formula<3> for DryPressure {
    const NAME: &'static str = "dry_pressure";

    fn inputs(&self) -> [&'static Bound; 3] {
        [&bounds::TEMPERATURE_C, &bounds::PRESSURE_KPA, &bounds::INSIDE_MINUS_OUTSIDE_MM]
    }

    fn output(&self) -> &'static Symbol {
        &symbols::DRY_PRESSURE
    }

    #[inline(always)]
    fn evaluate<S: Scalar>(&self, inputs: [S; 3]) -> S {
        dry_pressure(inputs).1.leave(&symbols::DRY_PRESSURE)
    }

    fn refusal(&self, [_, pressure, level]: [f64; 3]) -> Error {
        only_vapour(pressure, level)
    }
}

/// `volume_over_water(amount_mmol, temperature_c, pressure_kpa, inside_minus_outside_mm)` in cm3: the volume that an amount
/// of gas takes together with its vapour.
///
/// ```
/// use overwater::gas::collected::VolumeOverWater;
/// use overwater::scalar::Formula;
/// // 7.74 mmol at 23.0 degC and 762 mmHg take 193 cm3 (Purdue University general chemistry help, gas over water,
/// // problem 3).
/// let volume = VolumeOverWater.number([7.74, 23.0, 762.0 * 0.133_322_387_415, 0.0])?;
/// assert!((volume - 193.0).abs() < 0.1);
/// # Ok::<(), overwater::Error>(())
/// ```
#[derive(Debug, Clone, Copy, Default)]
pub struct VolumeOverWater;

impl Formula<4> for VolumeOverWater {
    const NAME: &'static str = "volume_over_water";

    fn inputs(&self) -> [&'static Bound; 4] {
        [
            &bounds::AMOUNT_MMOL,
            &bounds::TEMPERATURE_C,
            &bounds::PRESSURE_KPA,
            &bounds::INSIDE_MINUS_OUTSIDE_MM,
        ]
    }

    fn output(&self) -> &'static Symbol {
        &symbols::GAS_VOLUME
    }

    #[inline(always)]
    fn evaluate<S: Scalar>(&self, [amount, temperature, pressure, level]: [S; 4]) -> S {
        let amount = Moles::new(amount.enter(&symbols::AMOUNT));
        let (temperature, dry) = dry_pressure([temperature, pressure, level]);
        ideal::volume(amount, dry, temperature, Conventions::EXACT.gas_constant).leave(&symbols::GAS_VOLUME)
    }

    fn refusal(&self, [_, _, pressure, level]: [f64; 4]) -> Error {
        only_vapour(pressure, level)
    }
}

/// The same with the vapour pressure given, as textbooks print it:
/// `dry_amount(volume_cm3, temperature_c, pressure_kpa, inside_minus_outside_mm, vapour_pressure_kpa)` in mmol.
#[derive(Debug, Clone, Copy, Default)]
pub struct DryAmountWithVapour {
    /// The constants to put in.
    pub conventions: Conventions,
}

impl Formula<5> for DryAmountWithVapour {
    const NAME: &'static str = "dry_amount_with_vapour";

    fn inputs(&self) -> [&'static Bound; 5] {
        [
            &bounds::VOLUME_CM3,
            &bounds::TEMPERATURE_C,
            &bounds::PRESSURE_KPA,
            &bounds::INSIDE_MINUS_OUTSIDE_MM,
            &bounds::STATED_VAPOUR_PRESSURE_KPA,
        ]
    }

    fn output(&self) -> &'static Symbol {
        &symbols::AMOUNT
    }

    #[inline(always)]
    fn evaluate<S: Scalar>(&self, [volume, temperature, pressure, level, vapour]: [S; 5]) -> S {
        let reading = Reading::enter([volume, temperature, pressure, level], self.conventions.ice_point);
        let vapour = Pressure::new(vapour.enter(&symbols::VAPOUR_PRESSURE));
        reading.dry_amount(vapour, &self.conventions).leave(&symbols::AMOUNT)
    }

    fn refusal(&self, [_, _, pressure, level, _]: [f64; 5]) -> Error {
        only_vapour(pressure, level)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::scalar::{Script, Swap};

    const READING: [f64; 4] = [86.5, 21.0, 100.36, 35.0];

    #[test]
    fn water_standing_higher_inside_lowers_the_amount() {
        let amount = DryAmount::default();
        let level = amount.number([86.5, 21.0, 100.36, 0.0]).unwrap();
        assert!(amount.number(READING).unwrap() < level);
        assert!(amount.number([86.5, 21.0, 100.36, -35.0]).unwrap() > level);
    }

    #[test]
    fn the_volume_of_an_amount_is_the_way_back() {
        let amount = DryAmount::default().number(READING).unwrap();
        let volume = VolumeOverWater.number([amount, 21.0, 100.36, 35.0]).unwrap();
        assert!((volume / 86.5 - 1.0).abs() < 1e-14, "{volume}");
        assert!(VolumeOverWater.number([amount, 21.0, 100.36, -35.0]).unwrap() < volume);
        let error = VolumeOverWater.number([1.0, 99.0, 90.0, 0.0]).unwrap_err();
        assert_eq!((error.code, &*error.value), (Code::Contradiction, "90 kPa with 0 mm between the levels"));
    }

    #[test]
    fn the_dry_pressure_is_that_of_the_chain() {
        let dry = DryPressure.number([21.0, 100.36, 35.0]).unwrap();
        // n = p V / (R T) by hand.
        let by_hand = dry * 86.5 / (8.314_462_618_153_24 * 294.15);
        assert!((by_hand / DryAmount::default().number(READING).unwrap() - 1.0).abs() < 1e-14);
        // 12 mm of water are 0.1175 kPa (998 kg/m3, 9.80665 m/s2), and lower the pressure inside.
        let lower = DryPressure.number([21.0, 100.36, 0.0]).unwrap()
            - DryPressure.number([21.0, 100.36, 12.0]).unwrap();
        assert!((lower - 0.1175).abs() < 1e-4, "{lower}");
        assert_eq!(DryPressure.number([99.0, 90.0, 0.0]).unwrap_err().code, Code::Contradiction);
    }

    #[test]
    fn nothing_beside_the_vapour_is_refused_with_the_reason() {
        let error = DryAmount::default().number([50.0, 99.0, 90.0, 0.0]).unwrap_err();
        assert_eq!(error.code, Code::Contradiction);
        assert!(error.to_string().contains("90 kPa"), "{error}");
        let mut result = [0.0; 2];
        DryAmount::default()
            .fill([&[50.0, 50.0], &[99.0, 20.0], &[90.0, 90.0], &[0.0, 0.0]], &mut result)
            .unwrap();
        assert!(result[0].is_nan() && result[1].is_finite());
    }

    #[test]
    fn a_forgotten_vapour_pressure_is_a_slip_of_the_same_formula() {
        let script = Script::new().swap("vapour_pressure", Swap::Slip(|_| 0.0));
        let slipped = DryAmount::default().marked(READING, &script);
        let with_none = DryAmountWithVapour::default().number([86.5, 21.0, 100.36, 35.0, 0.0]).unwrap();
        assert_eq!(slipped.to_bits(), with_none.to_bits());
        let names: Vec<&str> = script.steps().iter().map(|(symbol, _)| symbol.id).collect();
        assert!(names.ends_with(&["gas_pressure", "dry_pressure", "amount"]), "{names:?}");
    }

    #[test]
    fn a_students_own_value_is_carried_forward() {
        let script = Script::new().swap("dry_pressure", Swap::Own(50.0));
        let carried = DryAmount::default().marked(READING, &script);
        // n = p V / (R T) by hand, with the student's 50 kPa.
        let by_hand = 50.0 * 86.5 / (8.314_462_618_153_24 * 294.15);
        assert!((carried / by_hand - 1.0).abs() < 1e-14);
    }
}
