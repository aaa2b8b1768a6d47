//! The species that some elements can form, and the equilibrium among them at a temperature and a pressure.

use super::Mixture;
use super::interior::{Conditions, Start, solve};
use crate::burn::thermo::{enthalpy, entropy};
use crate::chem::{Atom, Formula};
use crate::reference::constants::STANDARD_PRESSURE_1982;
use crate::reference::nasa9::{MOLAR_GAS_OF_THE_FIT, Phase, Range, SPECIES_2002, Species};
use crate::units::{Dimensioned, Temperature};
use crate::{Code, Error, Result};
use nalgebra::SVector;

/// The most kinds of atoms in one mixture.
pub(super) const MOST_ELEMENTS: usize = 8;
/// Atoms of each kind.
pub(super) type Atoms = SVector<f64, MOST_ELEMENTS>;

/// One species with its atoms, in the order of the system's elements.
#[derive(Debug, Clone)]
struct Member {
    species: &'static Species,
    atoms: Atoms,
}

/// The species of the NASA Glenn data that a set of elements can form.
#[derive(Debug, Clone)]
pub struct System {
    elements: Vec<Atom>,
    gases: Vec<Member>,
    condensed: Vec<Member>,
}

/// A composition of least Gibbs energy.
#[derive(Debug, Clone, PartialEq)]
pub struct Equilibrium {
    /// Temperature, in K.
    pub temperature_k: f64,
    /// Pressure, in kPa.
    pub pressure_kpa: f64,
    /// Amount of gas, in mol.
    pub gas_mol: f64,
    /// Mole fraction of each gas in the gas.
    pub fractions: Vec<(&'static Species, f64)>,
    /// Amount of each condensed phase that is there, in mol.
    pub condensed: Vec<(&'static Species, f64)>,
    /// Enthalpy with that of formation, in J.
    pub enthalpy_j: f64,
    /// Potentials of the elements, in the order of the system.
    pub(super) potentials: Atoms,
}

impl Equilibrium {
    /// Mole fraction in the gas of the species of this name; 0 where there is none.
    #[must_use]
    pub fn fraction(&self, name: &str) -> f64 {
        self.fractions.iter().find(|(species, _)| species.name == name).map_or(0.0, |(_, x)| *x)
    }

    /// Amount (mol) of the species of this name in the gas or as a condensed phase.
    #[must_use]
    pub fn amount_mol(&self, name: &str) -> f64 {
        let condensed = self.condensed.iter().find(|(species, _)| species.name == name);
        condensed.map_or_else(|| self.gas_mol * self.fraction(name), |(_, amount)| *amount)
    }

    /// Amount (mol) of all condensed phases with the formula of a species.
    fn of_formula(&self, wanted: &Species) -> f64 {
        let same = self.condensed.iter().filter(|(species, _)| species.formula == wanted.formula);
        same.map(|(_, amount)| amount).sum()
    }
}

impl System {
    /// All species that the atoms of a mixture can form.
    ///
    /// # Errors
    /// `cannot_be_met` for more than eight kinds of atoms, for none, and for atoms that no gas of the data holds or of
    /// whose oxide the data know nothing.
    pub fn of(mixture: &Mixture) -> Result<System> {
        let elements: Vec<Atom> = mixture.atoms().iter().map(|(atom, _)| *atom).collect();
        let refuse = |value: String, advice: &str| {
            Error::new(Code::CannotBeMet, "mixture")
                .value(value)
                .allowed("1 to 8 elements of the NASA Glenn data")
                .advice(advice)
        };
        if elements.is_empty() || elements.len() > MOST_ELEMENTS {
            return Err(refuse(format!("{} elements", elements.len()), "name what burns in what"));
        }
        let (mut gases, mut condensed) = (Vec::new(), Vec::new());
        for species in &SPECIES_2002 {
            let Some(atoms) = species.formula.and_then(|formula| atoms_of(formula, &elements)) else {
                continue;
            };
            let list = if species.phase == Phase::Gas { &mut gases } else { &mut condensed };
            list.push(Member { species, atoms });
        }
        let oxygen = elements.iter().position(|atom| atom.symbol() == "O");
        for (index, atom) in elements.iter().enumerate() {
            let mut all = gases.iter().chain(&condensed);
            let holds = |member: &Member, place: usize| member.atoms.get(place).is_some_and(|n| *n > 0.0);
            let held = all.clone().any(|member| holds(member, index));
            let oxide = oxygen.is_none_or(|o| all.any(|member| holds(member, index) && holds(member, o)));
            let inert = ["Ar", "He", "Ne", "Cl"].contains(&atom.symbol());
            if !held || !(oxide || inert) {
                return Err(refuse(
                    atom.name().to_owned(),
                    "the data hold no oxide of it, so that no flame temperature can be worked out",
                ));
            }
        }
        Ok(System { elements, gases, condensed })
    }

    /// The gases and condensed phases that are looked at.
    pub fn species(&self) -> impl Iterator<Item = &'static Species> {
        self.gases.iter().chain(&self.condensed).map(|member| member.species)
    }

    /// The equilibrium at a temperature (K) and a pressure (kPa).
    ///
    /// ```
    /// use overwater::burn::equilibrium::{Mixture, System};
    /// use overwater::reference::nasa9::Species;
    /// let mut steam = Mixture::default();
    /// steam.add_species(Species::named("H2O")?, 1.0, 298.15)?;
    /// let hot = System::of(&steam)?.at(&steam, 298.15, 100.0)?;
    /// // At 298.15 K and 1 bar water is a liquid.
    /// assert!((hot.amount_mol("H2O(L)") - 1.0).abs() < 1e-6);
    /// # Ok::<(), overwater::Error>(())
    /// ```
    ///
    /// # Errors
    /// `out_of_range` outside 200 to 6000 K, `cannot_be_met` where the search does not come to an end.
    pub fn at(&self, mixture: &Mixture, temperature_k: f64, pressure_kpa: f64) -> Result<Equilibrium> {
        self.near(mixture, temperature_k, pressure_kpa, None)
    }

    /// The same, started from another solution of the same system.
    pub(super) fn near(
        &self,
        mixture: &Mixture,
        temperature_k: f64,
        pressure_kpa: f64,
        start: Option<&Equilibrium>,
    ) -> Result<Equilibrium> {
        if !(LEAST_K..=GREATEST_K).contains(&temperature_k) {
            let code = if temperature_k.is_finite() { Code::OutOfRange } else { Code::NotANumber };
            return Err(Error::new(code, "temperature_k")
                .value(format!("{temperature_k} K"))
                .allowed(format!("{LEAST_K} to {GREATEST_K} K"))
                .advice("the data of most species end there"));
        }
        let mut elements = Atoms::zeros();
        for (place, atom) in elements.iter_mut().zip(&self.elements) {
            *place = mixture.atoms().iter().find(|(known, _)| known == atom).map_or(0.0, |(_, n)| *n);
        }
        let total = elements.sum();
        let pressure = (pressure_kpa * 1000.0 / STANDARD_PRESSURE_1982.si()).ln();
        let mut gas_gibbs = Vec::with_capacity(self.gases.len());
        let mut gas_enthalpy = Vec::with_capacity(self.gases.len());
        let mut gas_atoms = Vec::with_capacity(self.gases.len());
        let mut gases = Vec::with_capacity(self.gases.len());
        for member in &self.gases {
            let Some(range) = range_at(member.species, temperature_k) else { continue };
            let (h, g) = reduced(temperature_k, range);
            gas_gibbs.push(g + pressure);
            gas_enthalpy.push(h);
            gas_atoms.push(member.atoms);
            gases.push(member.species);
        }
        let mut condensed = Vec::with_capacity(self.condensed.len());
        let (mut condensed_gibbs, mut condensed_enthalpy, mut condensed_atoms) =
            (Vec::new(), Vec::new(), Vec::new());
        for member in &self.condensed {
            let Some(range) = range_at(member.species, temperature_k) else { continue };
            let (h, g) = reduced(temperature_k, range);
            condensed_gibbs.push(g);
            condensed_enthalpy.push(h);
            condensed_atoms.push(member.atoms);
            condensed.push(member.species);
        }
        let conditions = Conditions {
            elements: elements / total,
            kinds: self.elements.len(),
            gas_atoms: &gas_atoms,
            gas_gibbs: &gas_gibbs,
            condensed_atoms: &condensed_atoms,
            condensed_gibbs: &condensed_gibbs,
        };
        let start = start.map(|near| Start {
            potentials: &near.potentials,
            gas: near.gas_mol / total,
            condensed: condensed.iter().map(|species| near.of_formula(species) / total).collect(),
        });
        let point = solve(&conditions, start).or_else(|| solve(&conditions, None)).ok_or_else(|| {
            Error::new(Code::CannotBeMet, "equilibrium")
                .value(format!("{temperature_k} K, {pressure_kpa} kPa"))
                .allowed("a mixture whose equilibrium can be found")
                .advice("the search did not come to an end; change the amounts a little")
        })?;
        let rt = MOLAR_GAS_OF_THE_FIT * temperature_k;
        let gas_mol = point.gas * total;
        let sum = |amounts: &[f64], enthalpies: &[f64]| -> f64 {
            amounts.iter().zip(enthalpies).map(|(n, h)| n * h).sum()
        };
        let enthalpy_j = rt
            * total
            * (point.gas * sum(&point.fractions, &gas_enthalpy) + sum(&point.condensed, &condensed_enthalpy));
        Ok(Equilibrium {
            temperature_k,
            pressure_kpa,
            gas_mol,
            fractions: gases.into_iter().zip(point.fractions.iter().copied()).collect(),
            condensed: condensed
                .into_iter()
                .zip(point.condensed.iter().map(|n| n * total))
                .filter(|(_, n)| *n > ABSENT * total)
                .collect(),
            enthalpy_j,
            potentials: point.potentials,
        })
    }
}

/// The range of temperatures that most gases of the data share, in K.
pub(super) const LEAST_K: f64 = 200.0;
/// Its upper end, in K.
pub(super) const GREATEST_K: f64 = 6000.0;
/// Condensed phases of less than this share of the atoms are a remainder of the search.
const ABSENT: f64 = 1e-8;

fn range_at(species: &'static Species, temperature_k: f64) -> Option<&'static Range> {
    species.ranges.iter().find(|range| temperature_k >= range.least_k && temperature_k <= range.greatest_k)
}

/// H/RT and G/RT.
#[inline(always)]
fn reduced(temperature_k: f64, range: &Range) -> (f64, f64) {
    let temperature = Temperature::new(temperature_k);
    let h: f64 = enthalpy(temperature, range).si() / (MOLAR_GAS_OF_THE_FIT * temperature_k);
    let s: f64 = entropy(temperature, range).si() / MOLAR_GAS_OF_THE_FIT;
    (h, h - s)
}

/// The atoms of a formula in the order of the elements; nothing where it holds others.
fn atoms_of(formula: &str, elements: &[Atom]) -> Option<Atoms> {
    let formula = Formula::parse(formula).ok()?;
    let mut atoms = Atoms::zeros();
    for (atom, count) in formula.composition() {
        let index = elements.iter().position(|known| known == atom)?;
        *atoms.get_mut(index)? = count.to_f64();
    }
    (formula.charge() == 0).then_some(atoms)
}
