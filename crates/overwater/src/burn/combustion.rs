//! Combustion of a sample: the balanced equation, the oxygen, the products, the heat.

use crate::burn::Fuel;
use crate::burn::fuel::standard_state;
use crate::chem::{Balanced, Formula, Reaction, Weights};
use crate::reference::thermochemistry::Phase;
use crate::scalar::Scalar;
use crate::symbols;
use crate::units::{
    Dimensioned, Energy, GRAM_PER_MOLE, KILOJOULE_PER_MOLE, Mass, MolarEnergy, MolarWeight, Moles,
};
use crate::{Code, Error, Result};

/// One product of a combustion.
#[derive(Debug, Clone, PartialEq)]
pub struct Product {
    /// Its formula.
    pub formula: Formula,
    /// Its phase at room temperature.
    pub phase: Phase,
    /// Moles of it for each mole of sample.
    pub per_sample: f64,
    /// Molar mass, in g/mol.
    pub g_per_mol: f64,
}

/// A balanced combustion with what the amounts need.
#[derive(Debug, Clone, PartialEq)]
pub struct Combustion {
    /// The balanced equation.
    pub equation: Balanced,
    /// The same with the states at 298.15 K.
    pub equation_with_states: Balanced,
    /// The main product.
    pub product: Formula,
    /// Every product, the main one first.
    pub products: Vec<Product>,
    /// Moles of oxygen for each mole of sample.
    pub oxygen_per_sample: f64,
    /// Moles of the main product for each mole of sample.
    pub product_per_sample: f64,
    /// Molar mass of the sample, in g/mol.
    pub sample_g_per_mol: f64,
    /// Molar mass of the main product, in g/mol.
    pub product_g_per_mol: f64,
    /// Heat given out for each mole of sample at 298.15 K, water as a liquid, in kJ/mol.
    pub heat_kj_per_mol: f64,
}

impl Combustion {
    /// Balances the combustion of `sample` to `product`.
    ///
    /// ```
    /// use overwater::burn::Combustion;
    /// let iron = Combustion::new("Fe", "Fe3O4")?;
    /// assert_eq!(iron.equation.to_string(), "3Fe + 2O2 -> Fe3O4");
    /// // Iron burned in oxygen holds 72.4 % of iron by mass.
    /// assert!((3.0 * 55.845 / iron.product_g_per_mol - 0.724).abs() < 5e-4);
    /// # Ok::<(), overwater::Error>(())
    /// ```
    ///
    /// # Errors
    /// Those of [`Fuel::find`] and of [`Combustion::to`].
    pub fn new(sample: &str, product: &str) -> Result<Self> {
        Combustion::to(&Fuel::find(sample)?, &[product])
    }

    /// Balances the combustion of a fuel to several products, the main one first.
    ///
    /// ```
    /// use overwater::burn::{Combustion, Fuel};
    /// let ethane = Combustion::to(&Fuel::find("C2H6")?, &["CO2", "H2O"])?;
    /// assert_eq!(ethane.equation_with_states.to_string(), "2C2H6(g) + 7O2(g) -> 4CO2(g) + 6H2O(l)");
    /// // CRC Handbook, Heat of combustion (from memory): 1560.7 kJ/mol.
    /// assert!((ethane.heat_kj_per_mol - 1560.7).abs() < 0.5);
    /// # Ok::<(), overwater::Error>(())
    /// ```
    ///
    /// # Errors
    /// Those of molar masses and of balancing; `cannot_be_met` for a product without an enthalpy of formation.
    pub fn to(fuel: &Fuel, products: &[&str]) -> Result<Self> {
        let plain = |formula: &str, _: Phase| formula.to_owned();
        let with_state = |formula: &str, phase| format!("{formula}{}", letter(phase));
        let mut found = Vec::new();
        let mut formed_kj = 0.0;
        let mut sides = Vec::new();
        for text in products {
            let formula = Formula::parse(text)?;
            let state = standard_state(&formula, None).ok_or_else(|| {
                Error::new(Code::CannotBeMet, "product")
                    .value(*text)
                    .allowed("a product with an enthalpy of formation")
                    .advice("this substance is not in the tables")
            })?;
            sides.push((*text, state.phase));
            found.push((formula, state));
        }
        let balance = |write: &dyn Fn(&str, Phase) -> String| -> Result<Balanced> {
            let right: Vec<String> = sides.iter().map(|(text, phase)| write(text, *phase)).collect();
            let sample = write(&fuel.formula.to_string(), fuel.phase);
            let oxygen = write("O2", Phase::Gas);
            Reaction::parse(&format!("{sample} + {oxygen} -> {}", right.join(" + ")))?.balance()
        };
        let equation = balance(&plain)?;
        let number = |formula: &Formula| {
            equation
                .reactants()
                .iter()
                .chain(equation.products())
                .find(|species| species.formula.equal_but_for_state(formula))
                .map_or(f64::NAN, |species| species.coefficient as f64)
        };
        let of_sample = number(&fuel.formula);
        let products: Vec<Product> = found
            .into_iter()
            .map(|(formula, state)| {
                let per_sample = number(&formula) / of_sample;
                formed_kj += per_sample * state.formation_kj_per_mol;
                let g_per_mol = formula.molar_mass(Weights::Exact)?.value_g_per_mol;
                Ok(Product { formula, phase: state.phase, per_sample, g_per_mol })
            })
            .collect::<Result<_>>()?;
        let main = products.first().cloned().ok_or_else(|| {
            Error::new(Code::Missing, "product").allowed("at least one product").advice("name what it makes")
        })?;
        Ok(Combustion {
            oxygen_per_sample: number(&Formula::parse("O2")?) / of_sample,
            product_per_sample: main.per_sample,
            sample_g_per_mol: fuel.formula.molar_mass(Weights::Exact)?.value_g_per_mol,
            product_g_per_mol: main.g_per_mol,
            heat_kj_per_mol: fuel.formation_kj_per_mol - formed_kj,
            equation_with_states: balance(&with_state)?,
            product: main.formula,
            products,
            equation,
        })
    }

    fn sample_molar_mass<S: Scalar>(&self) -> MolarWeight<S> {
        MolarWeight::new(S::number(self.sample_g_per_mol * GRAM_PER_MOLE.si))
    }
}

/// Oxygen that a mass of sample uses up: n = m/M x ratio.
pub fn oxygen_needed<S: Scalar>(combustion: &Combustion, sample: Mass<S>) -> Moles<S> {
    sample / combustion.sample_molar_mass::<S>() * combustion.oxygen_per_sample
}

/// Mass of sample that an amount of oxygen burns.
pub fn sample_for_oxygen<S: Scalar>(combustion: &Combustion, oxygen: Moles<S>) -> Mass<S> {
    oxygen / combustion.oxygen_per_sample * combustion.sample_molar_mass::<S>()
}

/// Mass of the product that a mass of sample makes.
pub fn product_formed<S: Scalar>(combustion: &Combustion, sample: Mass<S>) -> Mass<S> {
    let amount: Moles<S> = sample / combustion.sample_molar_mass::<S>() * combustion.product_per_sample;
    let molar_mass = S::number(combustion.product_g_per_mol * GRAM_PER_MOLE.si);
    Mass::new(amount.si() * molar_mass)
}

/// Heat that a mass of sample gives out: q = m/M x (sum of H(formation) before less that after), at 298.15 K and with
/// water as a liquid.
pub fn heat_released<S: Scalar>(combustion: &Combustion, sample: Mass<S>) -> Energy<S> {
    let amount: Moles<S> = sample / combustion.sample_molar_mass::<S>();
    let per_mole = S::number(combustion.heat_kj_per_mol * KILOJOULE_PER_MOLE.si);
    (MolarEnergy::new(per_mole) * amount).checkpoint(&symbols::COMBUSTION_HEAT)
}

/// The state as it is written behind a formula.
const fn letter(phase: Phase) -> &'static str {
    match phase {
        Phase::Gas => "(g)",
        Phase::Liquid => "(l)",
        Phase::Crystal => "(s)",
        Phase::Aqueous => "(aq)",
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::GRAM;

    #[test]
    fn a_jar_of_oxygen_burns_at_most_so_much() {
        // 10.15 mmol, which a 250 cm3 jar holds moist at 20 degC and 1 atm (by hand: n x M / ratio).
        for (sample, product, most_g) in [
            ("S", "SO2", 0.325_4),
            ("Mg", "MgO", 0.493_4),
            ("Fe", "Fe3O4", 0.850_3),
            ("Na", "Na2O2", 0.466_7),
            ("Na", "Na2O", 0.933_4),
            ("C", "CO2", 0.121_9),
            ("P", "P4O10", 0.251_5),
            ("Ca", "CaO", 0.813_6),
        ] {
            let combustion = Combustion::new(sample, product).unwrap();
            let oxygen = Moles::new(10.15e-3);
            let most = sample_for_oxygen(&combustion, oxygen);
            assert!((most.si() / GRAM.si - most_g).abs() < 1e-4, "{sample}: {}", most.si() / GRAM.si);
            assert!((oxygen_needed(&combustion, most).si() - 10.15e-3).abs() < 1e-15);
        }
    }

    #[test]
    fn mass_of_the_product_is_that_of_sample_and_oxygen() {
        for (sample, product) in [("S", "SO2"), ("Fe", "Fe3O4"), ("Na", "Na2O2"), ("P", "P4O10")] {
            let combustion = Combustion::new(sample, product).unwrap();
            let mass = Mass::new(1e-4);
            let oxygen_g = oxygen_needed(&combustion, mass).si() * 31.998;
            let product_g = product_formed(&combustion, mass).si() / GRAM.si;
            assert!((product_g - 0.1 - oxygen_g).abs() < 1e-9, "{product}");
        }
    }
}
