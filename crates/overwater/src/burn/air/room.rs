//! The air of a well-mixed room.
//!
//! ```text
//! c(0) = n R T / (p V)             volume fraction: the gas over the air of the room
//! c(t) = c(0) exp(-N t)            N: air changes in unit time
//! mean over t = c(0) (1 - exp(-N t)) / (N t)
//! ```
//!
//! All of the gas comes at once and mixes at once. Beside the jar, before it has mixed, there is far more; in a corner
//! that no draught reaches it stays for longer.

use crate::Result;
use crate::bounds::{self, Bound};
use crate::reference::constants::MOLAR_GAS_2019;
use crate::scalar::{Formula, Scalar, Symbol};
use crate::symbols;
use crate::units::{
    CUBIC_METRE, DEGREE_CELSIUS, Dimensioned, KILOPASCAL, Moles, PER_HOUR, Pressure, Temperature, Volume,
};

/// Volume fraction of an amount of gas in the air of a room.
#[inline(always)]
pub fn concentration<S: Scalar>(
    amount: Moles<S>,
    room: Volume<S>,
    temperature: Temperature<S>,
    pressure: Pressure<S>,
) -> S {
    let air = pressure.si() * room.si() / (temperature.si() * S::constant(&MOLAR_GAS_2019));
    (amount.si() / air).checkpoint(&symbols::AIR_CONCENTRATION)
}

/// What is left after a time: exp(-N t).
#[inline(always)]
pub fn falling<S: Scalar>(changes_per_second: S, seconds: S) -> S {
    (-(changes_per_second * seconds)).exp()
}

/// Halvings of the time, after which the series is exact to the last digit for up to 1000 air changes.
const HALVINGS: u32 = 16;

/// The mean of what is left over a time: (1 - exp(-x))/x with x = N t, and 1 for x = 0.
///
/// The quotient loses all its digits where x is small. So the time is halved until x is small, the mean over that piece
/// taken from its series, and built up again (to 1e-11 of itself, as the rounding of the first step is doubled each time): the mean over twice the time is (1 + exp(-x))/2 of that over x.
#[inline(always)]
pub fn mean_falling<S: Scalar>(changes_per_second: S, seconds: S) -> S {
    let x = changes_per_second * seconds / f64::from(1 << HALVINGS);
    let mut left = (-x).exp();
    // 1 - x/2 + x²/6 - x³/24 + x⁴/120 - x⁵/720
    let mut mean = ((((x / -720.0 + 1.0 / 120.0) * x - 1.0 / 24.0) * x + 1.0 / 6.0) * x - 0.5) * x + 1.0;
    for _ in 0..HALVINGS {
        mean = mean * (left + 1.0) * 0.5;
        left = left * left;
    }
    mean
}

/// Seconds until only a share is left; nothing where it never comes to that.
#[must_use]
pub fn time_to_fall(changes_per_second: f64, share: f64) -> Option<f64> {
    if share >= 1.0 {
        return Some(0.0);
    }
    let seconds = -Scalar::ln(share) / changes_per_second;
    seconds.is_finite().then_some(seconds)
}

/// A room.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Room {
    /// Volume (m3).
    pub volume_m3: f64,
    /// Air changes per hour.
    pub air_changes_per_hour: f64,
    /// Temperature (degC).
    pub temperature_c: f64,
    /// Pressure (kPa).
    pub pressure_kpa: f64,
}

impl Room {
    /// The room itself when all of it is accepted.
    ///
    /// # Errors
    /// `out_of_range` and `not_a_number`, by the table of bounds.
    pub fn check(self) -> Result<Self> {
        bounds::ROOM_VOLUME_M3.check(self.volume_m3)?;
        bounds::AIR_CHANGES_PER_HOUR.check(self.air_changes_per_hour)?;
        bounds::ROOM_TEMPERATURE_C.check(self.temperature_c)?;
        bounds::PRESSURE_KPA.check(self.pressure_kpa)?;
        Ok(self)
    }

    pub(super) fn changes_per_second(&self) -> f64 {
        PER_HOUR.to_si(self.air_changes_per_hour)
    }

    /// Volume fraction of an amount in the air of the room.
    pub(super) fn fraction(&self, amount: Moles<f64>) -> f64 {
        concentration(
            amount,
            Volume::new(CUBIC_METRE.to_si(self.volume_m3)),
            Temperature::new(DEGREE_CELSIUS.to_si(self.temperature_c)),
            Pressure::new(KILOPASCAL.to_si(self.pressure_kpa)),
        )
    }
}

/// `room_concentration(amount_mmol, room_volume_m3, temperature_c, pressure_kpa, air_changes_per_hour, time_s)`: a gas
/// that was let out at once, after a time, in ppm by volume.
///
/// ```
/// use overwater::burn::air::RoomConcentration;
/// use overwater::scalar::Formula;
/// // 3.12 mmol of sulfur dioxide (0.10 g of sulfur) in 200 m3 at 20 degC: 0.375 ppm, by hand 3.12e-3 x 0.02406/200.
/// let at_once = RoomConcentration.number([3.12, 200.0, 20.0, 101.325, 2.0, 0.0])?;
/// assert!((at_once - 0.375).abs() < 5e-4);
/// # Ok::<(), overwater::Error>(())
/// ```
#[derive(Debug, Clone, Copy, Default)]
pub struct RoomConcentration;

/// The concentration at the start, the air changes in a second, and the time in seconds.
#[inline(always)]
fn enter<S: Scalar>([amount, room, temperature, pressure, changes, time]: [S; 6]) -> [S; 3] {
    let temperature =
        temperature.enter(&symbols::TEMPERATURE).checkpoint(&symbols::THERMODYNAMIC_TEMPERATURE);
    let start = concentration(
        Moles::new(amount.enter(&symbols::AMOUNT)),
        Volume::new(room.enter(&symbols::ROOM_VOLUME)),
        Temperature::new(temperature),
        Pressure::new(pressure.enter(&symbols::STATION_PRESSURE)),
    );
    [start, changes.enter(&symbols::AIR_CHANGES), time.enter(&symbols::ELAPSED_TIME)]
}

impl Formula<6> for RoomConcentration {
    const NAME: &'static str = "room_concentration";

    fn inputs(&self) -> [&'static Bound; 6] {
        [
            &bounds::AMOUNT_MMOL,
            &bounds::ROOM_VOLUME_M3,
            &bounds::ROOM_TEMPERATURE_C,
            &bounds::PRESSURE_KPA,
            &bounds::AIR_CHANGES_PER_HOUR,
            &bounds::ROOM_TIME_S,
        ]
    }

    fn output(&self) -> &'static Symbol {
        &symbols::AIR_CONCENTRATION_LATER
    }

    #[inline(always)]
    fn evaluate<S: Scalar>(&self, inputs: [S; 6]) -> S {
        let [start, changes, time] = enter(inputs);
        (start * falling(changes, time))
            .checkpoint(&symbols::AIR_CONCENTRATION_LATER)
            .leave(&symbols::AIR_CONCENTRATION_LATER)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_mean_is_the_closed_form_where_that_has_digits() {
        for x in [1e-300, 1e-9, 1e-3, 0.1, 0.5, 1.0, 2.0, 16.0, 200.0, 1000.0] {
            let closed = if x < 1e-200 { 1.0 } else { -f64::exp_m1(-x) / x };
            let found = mean_falling(x, 1.0);
            assert!((found / closed - 1.0).abs() < 1e-10, "{x}: {found} {closed}");
        }
        assert_eq!(mean_falling(0.0, 900.0), 1.0);
    }

    #[test]
    fn time_to_fall_turns_the_decay_around() {
        let changes = 2.0 / 3600.0;
        let seconds = time_to_fall(changes, 0.37).unwrap();
        assert!((falling(changes, seconds) - 0.37).abs() < 1e-12);
        assert_eq!(time_to_fall(changes, 1.5), Some(0.0));
        assert_eq!(time_to_fall(0.0, 0.5), None);
    }
}
