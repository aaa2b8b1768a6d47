//! The gas of a jar before and after a burn.

use crate::Result;
use crate::bounds;
use crate::gas::collected::DryAmount;
use crate::gas::ideal;
use crate::reference::constants::MOLAR_GAS_2019;
use crate::scalar::{Formula, Scalar};
use crate::units::{
    CUBIC_CENTIMETRE, DEGREE_CELSIUS, Dimensioned, KILOPASCAL, Moles, Pressure, Temperature, Volume,
};
use crate::water::vapour::saturation_pressure;

/// A jar of gas collected over water, levels equal.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Jar {
    /// Volume of the moist gas, in cm3.
    pub volume_cm3: f64,
    /// Temperature of gas and water, in degrees Celsius.
    pub temperature_c: f64,
    /// Pressure at the place, in kPa.
    pub pressure_kpa: f64,
    /// Mole fraction of oxygen in the dry gas; the rest is taken as nitrogen.
    pub oxygen_fraction: f64,
}

/// What is in a jar, dry, in mol.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Contents {
    /// Oxygen.
    pub oxygen_mol: f64,
    /// The rest, taken as nitrogen.
    pub nitrogen_mol: f64,
    /// Water vapour.
    pub vapour_mol: f64,
}

impl Jar {
    /// Checks every number against its bounds.
    ///
    /// # Errors
    /// `out_of_range`, `not_a_number`.
    pub fn check(&self) -> Result<()> {
        bounds::VOLUME_CM3.check(self.volume_cm3)?;
        bounds::ROOM_TEMPERATURE_C.check(self.temperature_c)?;
        bounds::PRESSURE_KPA.check(self.pressure_kpa)?;
        bounds::JAR_OXYGEN_FRACTION.check(self.oxygen_fraction)?;
        Ok(())
    }

    /// The temperature in K.
    #[must_use]
    pub fn temperature_k(&self) -> f64 {
        DEGREE_CELSIUS.to_si(self.temperature_c)
    }

    /// What is in it.
    ///
    /// ```
    /// use overwater::burn::Jar;
    /// // 250 cm3 over water at 20 degC and 1 atm hold 10.15 mmol (ideal gas, vapour 2.339 kPa, by hand).
    /// let jar =
    ///     Jar { volume_cm3: 250.0, temperature_c: 20.0, pressure_kpa: 101.325, oxygen_fraction: 1.0 };
    /// assert!((jar.contents()?.oxygen_mol - 10.15e-3).abs() < 5e-6);
    /// # Ok::<(), overwater::Error>(())
    /// ```
    ///
    /// # Errors
    /// Those of [`Jar::check`].
    pub fn contents(&self) -> Result<Contents> {
        self.check()?;
        let dry =
            DryAmount::default().number([self.volume_cm3, self.temperature_c, self.pressure_kpa, 0.0])?;
        let dry_mol = dry / 1000.0;
        let vapour = saturation_pressure(Temperature::new(self.temperature_k()));
        let vapour_mol = ideal::amount(
            vapour,
            Volume::new(CUBIC_CENTIMETRE.to_si(self.volume_cm3)),
            Temperature::new(self.temperature_k()),
            &MOLAR_GAS_2019,
        );
        Ok(Contents {
            oxygen_mol: dry_mol * self.oxygen_fraction,
            nitrogen_mol: dry_mol * (1.0 - self.oxygen_fraction),
            vapour_mol: vapour_mol.si(),
        })
    }

    /// Volume (cm3) of an amount (mol) of dry gas when it stands moist over the jar's water.
    #[must_use]
    pub fn moist_cm3(&self, dry_mol: f64) -> f64 {
        let temperature = Temperature::new(self.temperature_k());
        let pressure = Pressure::new(KILOPASCAL.to_si(self.pressure_kpa));
        moist_volume(Moles::new(dry_mol), temperature, pressure).si() / CUBIC_CENTIMETRE.si
    }
}

/// V = n R T / (p - p(H2O)): volume of a dry amount that stands moist over water.
#[inline(always)]
pub fn moist_volume<S: Scalar>(
    dry: Moles<S>,
    temperature: Temperature<S>,
    pressure: Pressure<S>,
) -> Volume<S> {
    ideal::volume(dry, pressure - saturation_pressure(temperature), temperature, &MOLAR_GAS_2019)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_was_collected_fills_the_jar_again() {
        for fraction in [0.0, 0.21, 0.864, 1.0] {
            let jar =
                Jar { volume_cm3: 250.0, temperature_c: 20.0, pressure_kpa: 98.0, oxygen_fraction: fraction };
            let inside = jar.contents().unwrap();
            let dry = inside.oxygen_mol + inside.nitrogen_mol;
            assert!((jar.moist_cm3(dry) - 250.0).abs() < 1e-9);
            assert!((inside.oxygen_mol - fraction * dry).abs() < 1e-15);
            // Dalton: vapour over dry gas as their pressures.
            let vapour_kpa = 98.0 * inside.vapour_mol / (dry + inside.vapour_mol);
            assert!((vapour_kpa - 2.3393).abs() < 1e-3, "{vapour_kpa}");
        }
    }
}
