//! What is brought together: the atoms and the enthalpy.

use crate::burn::Fuel;
use crate::chem::{Atom, Formula};
use crate::reference::nasa9::Species;
use crate::{Code, Error, Result};

/// Atoms and enthalpy of what burns.
///
/// ```
/// use overwater::burn::equilibrium::Mixture;
/// use overwater::reference::nasa9::Species;
/// let mut mixture = Mixture::default();
/// mixture.add_species(Species::named("O2")?, 2.0, 298.15)?;
/// assert!(mixture.enthalpy_j.abs() < 1e-3 && mixture.atoms().len() == 1);
/// # Ok::<(), overwater::Error>(())
/// ```
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Mixture {
    /// Moles of each kind of atom.
    atoms: Vec<(Atom, f64)>,
    /// Enthalpy with that of formation, in J.
    pub enthalpy_j: f64,
}

impl Mixture {
    /// Moles of each kind of atom.
    #[must_use]
    pub fn atoms(&self) -> &[(Atom, f64)] {
        &self.atoms
    }

    /// Adds an amount (mol) of a species of the NASA Glenn data at a temperature (K).
    ///
    /// # Errors
    /// `out_of_range` for an amount below 0 or a temperature outside the data.
    pub fn add_species(&mut self, species: &Species, amount_mol: f64, temperature_k: f64) -> Result<()> {
        let [_, enthalpy_kj, _] = species.properties(temperature_k)?;
        self.add(&Formula::parse(species.formula.unwrap_or_default())?, amount_mol, enthalpy_kj * 1000.0)
    }

    /// Adds an amount (mol) of a fuel at a temperature (K).
    ///
    /// # Errors
    /// `out_of_range` for an amount below 0.
    pub fn add_fuel(&mut self, fuel: &Fuel, amount_mol: f64, temperature_k: f64) -> Result<()> {
        self.add(&fuel.formula, amount_mol, fuel.enthalpy_j_per_mol(temperature_k))
    }

    fn add(&mut self, formula: &Formula, amount_mol: f64, enthalpy_j_per_mol: f64) -> Result<()> {
        if !amount_mol.is_finite() || amount_mol < 0.0 {
            let code = if amount_mol.is_finite() { Code::OutOfRange } else { Code::NotANumber };
            return Err(Error::new(code, "amount_mol")
                .value(format!("{amount_mol} mol of {formula}"))
                .allowed("0 mol or more")
                .advice("give the amount that is there"));
        }
        if amount_mol == 0.0 {
            return Ok(());
        }
        self.enthalpy_j += amount_mol * enthalpy_j_per_mol;
        for (atom, count) in formula.composition() {
            let more = amount_mol * count.to_f64();
            match self.atoms.iter_mut().find(|(known, _)| known == atom) {
                Some((_, amount)) => *amount += more,
                None => self.atoms.push((*atom, more)),
            }
        }
        Ok(())
    }
}
