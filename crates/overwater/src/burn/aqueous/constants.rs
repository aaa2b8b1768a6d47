//! The equilibrium constants of a solution at its temperature.
//!
//! ```text
//! ln K(T) = -pK(25 degC) ln 10 - ΔH/R (1/T - 1/298.15 K)          van 't Hoff, ΔH taken as constant
//! ```
//!
//! Where no ΔH is known K stays at its value of 25 degC: so for sulfur dioxide, sulfate, hydrogen peroxide and the two
//! hydroxides. That of water is the equation of IAPWS, at every temperature. Molal and molar scales differ by less than
//! 0.005 in pH from 0 to 45 degC and are not told apart.

use std::f64::consts::LN_10;

pub use crate::reference::products_in_water::{Acid, Hydroxide};

use crate::reference::acids::{EQUILIBRIUM_CONSTANTS_25C, EquilibriumConstant};
use crate::reference::constants::MOLAR_GAS_2019;
use crate::reference::water_ionisation::IONISATION_2024;
use crate::scalar::Scalar;
use crate::units::{Dimensioned, KILOJOULE_PER_MOLE, Temperature};
use crate::water::density::liquid_density;
use crate::water::ionisation::pkw;

/// Most steps in which an acid of this table gives its protons.
pub const STEPS: usize = 3;
/// Temperature at which the table states its constants, in K.
const STATED_AT_K: f64 = 298.15;

impl Acid {
    /// Every acid, in the order of [`Constants::acids`].
    pub const ALL: [Acid; 5] = [
        Acid::SulfurDioxide,
        Acid::HydrogenSulfate,
        Acid::CarbonDioxide,
        Acid::Phosphoric,
        Acid::HydrogenPeroxide,
    ];

    /// The charge of the form with all its protons.
    #[must_use]
    pub const fn charge(self) -> i8 {
        match self {
            Acid::HydrogenSulfate => -1,
            _ => 0,
        }
    }

    /// Its steps by the names of the table.
    const fn steps(self) -> &'static [&'static str] {
        match self {
            Acid::SulfurDioxide => &["SO2(aq) / H2SO3", "HSO3-"],
            Acid::HydrogenSulfate => &["HSO4-"],
            Acid::CarbonDioxide => &["CO2(aq) / H2CO3*", "HCO3-"],
            Acid::Phosphoric => &["H3PO4", "H2PO4-", "HPO4 2-"],
            Acid::HydrogenPeroxide => &["H2O2"],
        }
    }
}

impl Hydroxide {
    /// Every hydroxide, in the order of [`Constants::hydroxides`].
    pub const ALL: [Hydroxide; 2] = [Hydroxide::Magnesium, Hydroxide::Calcium];

    const fn name(self) -> &'static str {
        match self {
            Hydroxide::Magnesium => "Mg(OH)2(s)",
            Hydroxide::Calcium => "Ca(OH)2(s)",
        }
    }
}

/// The constants that a charge balance needs, on the scale of mol/dm3, at ionic strength 0.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Constants<S> {
    /// Of water.
    pub water: S,
    /// Of each acid, step by step; 0 where it has no such step.
    pub acids: [[S; STEPS]; Acid::ALL.len()],
    /// Solubility products.
    pub hydroxides: [S; Hydroxide::ALL.len()],
}

impl<S: Scalar> Constants<S> {
    /// The constants at a temperature.
    ///
    /// ```
    /// use overwater::burn::aqueous::{Acid, Constants};
    /// use overwater::units::Temperature;
    /// let at_25 = Constants::at(Temperature::new(298.15_f64));
    /// // CRC Handbook: pK of phosphoric acid 2.16, 7.21.
    /// let [first, second, _] = at_25.of(Acid::Phosphoric);
    /// assert!((first.log10() + 2.16).abs() < 1e-12 && (second.log10() + 7.21).abs() < 1e-12);
    /// ```
    #[must_use]
    pub fn at(temperature: Temperature<S>) -> Self {
        let water = (pkw(temperature, liquid_density(temperature), &IONISATION_2024) * -LN_10).exp();
        let named = |name: &str| {
            let row = EQUILIBRIUM_CONSTANTS_25C.iter().find(|row| row.species == name);
            row.map_or_else(|| S::number(0.0), |row| constant(row, temperature))
        };
        let acids = Acid::ALL.map(|acid| {
            let mut steps = [S::number(0.0); STEPS];
            for (step, name) in steps.iter_mut().zip(acid.steps()) {
                *step = named(name);
            }
            steps
        });
        Constants { water, acids, hydroxides: Hydroxide::ALL.map(|solid| named(solid.name())) }
    }

    /// Those of one acid, step by step.
    #[must_use]
    pub fn of(&self, acid: Acid) -> [S; STEPS] {
        let found = Acid::ALL.iter().zip(&self.acids).find(|(known, _)| **known == acid);
        found.map_or([S::number(0.0); STEPS], |(_, steps)| *steps)
    }
}

/// A constant at a temperature, by van 't Hoff's equation.
pub fn constant<S: Scalar>(row: &EquilibriumConstant, temperature: Temperature<S>) -> S {
    let at_25 = S::number(-row.pk_25 * LN_10);
    match row.enthalpy_kj_per_mol {
        None => at_25.exp(),
        Some(enthalpy) => {
            let kelvin = enthalpy * KILOJOULE_PER_MOLE.si / MOLAR_GAS_2019.si();
            let distance = S::number(1.0) / temperature.si() - 1.0 / STATED_AT_K;
            (at_25 - distance * kelvin).exp()
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_step_is_found_in_the_table_and_grows_weaker() {
        let at_25 = Constants::at(Temperature::new(298.15));
        for acid in Acid::ALL {
            let steps = at_25.of(acid);
            for (index, constant) in steps.iter().enumerate() {
                assert_eq!(*constant > 0.0, index < acid.steps().len(), "{acid:?} {index}");
            }
            assert!(steps.windows(2).all(|pair| pair[0] > pair[1] || pair[1] == 0.0), "{acid:?}");
        }
        assert!(at_25.hydroxides.iter().all(|product| *product > 0.0));
        assert!((at_25.water.log10() + 13.995).abs() < 1e-3);
    }

    #[test]
    fn an_endothermic_step_grows_stronger_with_temperature() {
        // Carbonic acid: pK 6.35 at 25 degC, 6.43 by van 't Hoff's equation with 9.11 kJ/mol at 10 degC (by hand:
        // 9110/8.3145/ln 10 x (1/283.15 - 1/298.15) = 0.0846); the measured value is 6.464 (from memory).
        let cold = Constants::at(Temperature::new(283.15));
        let warm = Constants::at(Temperature::new(298.15));
        let [cold, ..] = cold.of(Acid::CarbonDioxide);
        let [warm, ..] = warm.of(Acid::CarbonDioxide);
        assert!(((warm / cold).log10() - 0.084_6).abs() < 5e-4, "{}", (warm / cold).log10());
    }
}
