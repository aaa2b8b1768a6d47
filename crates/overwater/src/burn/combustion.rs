//! Complete combustion of a sample to one product.

use crate::Result;
use crate::chem::{Balanced, Formula, Reaction, Weights};
use crate::scalar::Scalar;
use crate::units::{Dimensioned, GRAM_PER_MOLE, Mass, MolarWeight, Moles};

/// A balanced combustion with what the amounts need.
#[derive(Debug, Clone, PartialEq)]
pub struct Combustion {
    /// The balanced equation.
    pub equation: Balanced,
    /// The product.
    pub product: Formula,
    /// Moles of oxygen for each mole of sample.
    pub oxygen_per_sample: f64,
    /// Moles of product for each mole of sample.
    pub product_per_sample: f64,
    /// Molar mass of the sample, in g/mol.
    pub sample_g_per_mol: f64,
    /// Molar mass of the product, in g/mol.
    pub product_g_per_mol: f64,
}

impl Combustion {
    /// Balances the combustion of `sample` to `product`.
    ///
    /// ```
    /// use overwater::burn::Combustion;
    /// let iron = Combustion::new("Fe", "Fe3O4")?;
    /// assert_eq!(iron.equation.to_string(), "3Fe + 2O2 -> Fe3O4");
    /// # Ok::<(), overwater::Error>(())
    /// ```
    ///
    /// # Errors
    /// Those of reading the formulas, of their molar masses and of balancing.
    pub fn new(sample: &str, product: &str) -> Result<Self> {
        let equation = Reaction::parse(&format!("{sample} + O2 -> {product}"))?.balance()?;
        let (sample, product) = (Formula::parse(sample)?, Formula::parse(product)?);
        let of = |formula: &Formula| {
            equation
                .reactants()
                .iter()
                .chain(equation.products())
                .find(|species| species.formula.equal_but_for_state(formula))
                .map_or(f64::NAN, |species| species.coefficient as f64)
        };
        let oxygen = Formula::parse("O2")?;
        Ok(Combustion {
            oxygen_per_sample: of(&oxygen) / of(&sample),
            product_per_sample: of(&product) / of(&sample),
            sample_g_per_mol: sample.molar_mass(Weights::Exact)?.value_g_per_mol,
            product_g_per_mol: product.molar_mass(Weights::Exact)?.value_g_per_mol,
            equation,
            product,
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
