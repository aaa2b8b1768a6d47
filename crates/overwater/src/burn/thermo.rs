//! Heat capacity, enthalpy and entropy of the species of a flame, by the NASA Glenn equations.
//!
//! McBride, Zehe and Gordon, NASA/TP-2002-211556 (2002), equations 1 to 3 of the nine-constant form:
//!
//! ```text
//! Cp/R    = a1/T² + a2/T + a3 + a4 T + a5 T² + a6 T³ + a7 T⁴
//! H/(R T) = -a1/T² + a2 ln T/T + a3 + a4 T/2 + a5 T²/3 + a6 T³/4 + a7 T⁴/5 + b1/T
//! S/R     = -a1/(2 T²) - a2/T + a3 ln T + a4 T + a5 T²/2 + a6 T³/3 + a7 T⁴/4 + b2
//! ```
//!
//! H is the enthalpy of formation at 298.15 K and what is needed from there to T; S is at the standard pressure of
//! 100 kPa; R is the 8.31451 J/(mol K) that the fits were made with. Phases are species of their own: whoever crosses a
//! melting point changes the species. With these, methane in air without dissociation burns at 2326 K. In pure oxygen
//! the flames of magnesium, aluminium, sulfur and phosphorus dissociate or boil their oxides: complete combustion
//! gives an upper bound there.

use crate::bounds::{self, Bound};
use crate::reference::nasa9::{MOLAR_GAS_OF_THE_FIT, Phase, Range, SPECIES_2002, Species};
use crate::scalar::{Formula, Scalar, Symbol};
use crate::symbols;
use crate::units::{Dimensioned, MolarEnergy, MolarEntropy, Temperature};
use crate::{Code, Error, Result, nearest};

/// Heat capacity at constant pressure.
#[inline(always)]
pub fn heat_capacity<S: Scalar>(temperature: Temperature<S>, range: &Range) -> MolarEntropy<S> {
    let [a1, a2, a3, a4, a5, a6, a7] = range.a;
    let t = temperature.si();
    let inverse = S::number(1.0) / t;
    let sum = (inverse * a1 + a2) * inverse + ((((t * a7 + a6) * t + a5) * t + a4) * t + a3);
    MolarEntropy::new(sum * MOLAR_GAS_OF_THE_FIT).checkpoint(&symbols::MOLAR_HEAT_CAPACITY)
}

/// Enthalpy, with that of formation at 298.15 K.
#[inline(always)]
pub fn enthalpy<S: Scalar>(temperature: Temperature<S>, range: &Range) -> MolarEnergy<S> {
    let [a1, a2, a3, a4, a5, a6, a7] = range.a;
    let t = temperature.si();
    let inverse = S::number(1.0) / t;
    let series = (((t * (a7 / 5.0) + a6 / 4.0) * t + a5 / 3.0) * t + a4 / 2.0) * t + a3;
    let sum = series * t - inverse * a1 + t.ln() * a2 + range.b1;
    MolarEnergy::new(sum * MOLAR_GAS_OF_THE_FIT).checkpoint(&symbols::MOLAR_ENTHALPY)
}

/// Entropy at the standard pressure.
#[inline(always)]
pub fn entropy<S: Scalar>(temperature: Temperature<S>, range: &Range) -> MolarEntropy<S> {
    let [a1, a2, a3, a4, a5, a6, a7] = range.a;
    let t = temperature.si();
    let inverse = S::number(1.0) / t;
    let series = (((t * (a7 / 4.0) + a6 / 3.0) * t + a5 / 2.0) * t + a4) * t;
    let sum = series + t.ln() * a3 - (inverse * (a1 / 2.0) + a2) * inverse + range.b2;
    MolarEntropy::new(sum * MOLAR_GAS_OF_THE_FIT).checkpoint(&symbols::MOLAR_ENTROPY)
}

impl Species {
    /// The species of this name in the data file, such as `CH4`, `MgO(cr)` or `AL2O3(L)`.
    ///
    /// ```
    /// use overwater::reference::nasa9::Species;
    /// assert_eq!(Species::named("CO2")?.formation_j_per_mol, -393_510.0);
    /// assert!(Species::named("Mgo(cr)").unwrap_err().to_string().contains("MgO(cr)"));
    /// # Ok::<(), overwater::Error>(())
    /// ```
    ///
    /// # Errors
    /// `unknown_name`, with the nearest name where one is near.
    pub fn named(name: &str) -> Result<&'static Species> {
        SPECIES_2002.iter().find(|species| species.name == name).ok_or_else(|| {
            let names = || SPECIES_2002.iter().map(|species| species.name);
            let near =
                names().find(|known| known.eq_ignore_ascii_case(name)).or_else(|| nearest(name, names()));
            Error::new(Code::UnknownName, "species")
                .value(name)
                .allowed("a species of the NASA Glenn data")
                .advice(near.map_or_else(
                    || "write it as the data file does, for example CO2, MgO(cr) or AL2O3(L)".to_owned(),
                    |near| format!("did you mean {near}?"),
                ))
        })
    }

    /// The species of a formula in a phase that has data at a temperature; of several crystals the one whose range
    /// holds it.
    #[must_use]
    pub fn find(formula: &str, phase: Phase, temperature_k: f64) -> Option<&'static Species> {
        SPECIES_2002.iter().find(|species| {
            species.formula == Some(formula) && species.phase == phase && species.range(temperature_k).is_ok()
        })
    }

    /// The range that holds a temperature, in K; a join belongs to the lower one.
    ///
    /// # Errors
    /// `out_of_range` outside the data of the species, `not_a_number`.
    pub fn range(&self, temperature_k: f64) -> Result<&'static Range> {
        let bound = &bounds::SPECIES_TEMPERATURE_K;
        if !temperature_k.is_finite() {
            bound.check(temperature_k)?;
        }
        self.ranges
            .iter()
            .find(|range| temperature_k >= range.least_k && temperature_k <= range.greatest_k)
            .ok_or_else(|| {
                let least = self.ranges.first().map_or(f64::NAN, |range| range.least_k);
                let greatest = self.ranges.last().map_or(f64::NAN, |range| range.greatest_k);
                Error::new(Code::OutOfRange, bound.name)
                    .value(format!("{temperature_k} K"))
                    .allowed(format!("{least} to {greatest} K for {}", self.name))
                    .advice("take the phase that exists at this temperature")
            })
    }

    /// Heat capacity (J/(mol K)), enthalpy (kJ/mol) and entropy (J/(mol K)) at a temperature (K).
    ///
    /// ```
    /// use overwater::reference::nasa9::Species;
    /// // Methane at 298.15 K: -74.6 kJ/mol, 186.37 J/(mol K) (NASA Glenn).
    /// let [_, enthalpy, entropy] = Species::named("CH4")?.properties(298.15)?;
    /// assert!((enthalpy + 74.600).abs() < 5e-4 && (entropy - 186.37).abs() < 5e-3);
    /// # Ok::<(), overwater::Error>(())
    /// ```
    ///
    /// # Errors
    /// As [`range`](Species::range).
    pub fn properties(&self, temperature_k: f64) -> Result<[f64; 3]> {
        let range = self.range(temperature_k)?;
        let temperature = Temperature::new(temperature_k);
        Ok([
            heat_capacity(temperature, range).leave(&symbols::MOLAR_HEAT_CAPACITY),
            enthalpy(temperature, range).leave(&symbols::MOLAR_ENTHALPY),
            entropy(temperature, range).leave(&symbols::MOLAR_ENTROPY),
        ])
    }
}

/// Which of the three is wanted.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Property {
    /// Heat capacity, in J/(mol K).
    HeatCapacity,
    /// Enthalpy with that of formation, in kJ/mol.
    Enthalpy,
    /// Entropy, in J/(mol K).
    Entropy,
}

/// `species_property(temperature_k)` within one range of one species.
#[derive(Debug, Clone, Copy)]
pub struct SpeciesProperty {
    /// What is wanted.
    pub property: Property,
    /// Of which species, in which of its ranges.
    pub range: &'static Range,
}

impl Formula<1> for SpeciesProperty {
    const NAME: &'static str = "species_property";

    fn inputs(&self) -> [&'static Bound; 1] {
        [&bounds::SPECIES_TEMPERATURE_K]
    }

    fn output(&self) -> &'static Symbol {
        match self.property {
            Property::HeatCapacity => &symbols::MOLAR_HEAT_CAPACITY,
            Property::Enthalpy => &symbols::MOLAR_ENTHALPY,
            Property::Entropy => &symbols::MOLAR_ENTROPY,
        }
    }

    #[inline(always)]
    fn evaluate<S: Scalar>(&self, [temperature]: [S; 1]) -> S {
        let temperature = temperature.enter(&symbols::THERMODYNAMIC_TEMPERATURE);
        let temperature = Temperature::new(temperature.within(self.range.least_k, self.range.greatest_k));
        match self.property {
            Property::HeatCapacity => {
                heat_capacity(temperature, self.range).leave(&symbols::MOLAR_HEAT_CAPACITY)
            }
            Property::Enthalpy => enthalpy(temperature, self.range).leave(&symbols::MOLAR_ENTHALPY),
            Property::Entropy => entropy(temperature, self.range).leave(&symbols::MOLAR_ENTROPY),
        }
    }

    fn refusal(&self, [temperature]: [f64; 1]) -> Error {
        Error::new(Code::OutOfRange, bounds::SPECIES_TEMPERATURE_K.name)
            .value(format!("{temperature} K"))
            .allowed(format!("{} to {} K", self.range.least_k, self.range.greatest_k))
            .advice("take the range, or the phase, that holds this temperature")
    }
}
