//! Molar mass with its uncertainty, and mass fractions.
//!
//! M = sum over elements of n A, minus z m(e), with n the number of atoms, A the atomic weight, z the charge
//! number and m(e) the mass of the electron in u. The molar mass constant is taken as 1 g/mol exactly
//! (CODATA 2022: 1.000 000 001 05(31) g/mol, which no weighing can tell apart).
//!
//! # Uncertainty
//!
//! A published interval, or a value with its printed uncertainty, says where the atomic weight of a normal
//! material lies and prefers nothing inside: a rectangular distribution, so the standard uncertainty is the
//! half-width divided by sqrt(3) (Possolo, van der Veen, Meija and Hibbert, "Interpreting and propagating the
//! uncertainty of the standard atomic weights", Pure Appl. Chem. 90 (2018) 395-424; from memory).
//! Atoms of one element in different places of a formula come from one source: their uncertainties add.
//! Different elements are independent: theirs add in quadrature. The electron's is far below all of them.

use super::{Atom, Formula};
use crate::reference::elements::{ELECTRON_MASS_2022, StandardWeight};
use crate::{Code, Error, Result};

/// Which atomic weights are used.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Weights {
    /// The standard atomic weights in full; for the fourteen elements with an interval the conventional value.
    /// Standard uncertainty: half the interval, or the printed uncertainty, divided by sqrt(3).
    Exact,
    /// The abridged values, at most five figures. Standard uncertainty: the printed one divided by sqrt(3).
    Abridged,
    /// The conventional value rounded to one decimal, halves up: H 1.0, C 12.0, O 16.0, Cl 35.5, Cu 63.5. The
    /// mass of electrons is 0.0 to that precision, so ions weigh what their atoms weigh. Standard uncertainty:
    /// that of `Exact` with that of rounding, 0.05/sqrt(3), in quadrature.
    Classroom,
    /// As `Exact`, and for an element without a standard atomic weight (technetium, radium, ...) the mass
    /// number of its longest-lived isotope. Its standard uncertainty is then 0.5/sqrt(3), that of a whole
    /// number; that the sample is this isotope is on the word of whoever asks.
    ExactOrMassNumber,
}

/// A molar mass with its standard uncertainty.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct MolarMass {
    /// Molar mass, in g/mol.
    pub value_g_per_mol: f64,
    /// Standard uncertainty, one standard deviation, in g/mol.
    pub standard_uncertainty_g_per_mol: f64,
}

impl MolarMass {
    /// Standard uncertainty divided by the molar mass; NaN where the molar mass is zero.
    #[must_use]
    pub fn relative_standard_uncertainty(&self) -> f64 {
        self.standard_uncertainty_g_per_mol / self.value_g_per_mol
    }
}

/// The share of one kind of atom in the mass of a substance.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct MassFraction {
    /// Which atom.
    pub atom: Atom,
    /// Its mass divided by the mass of the whole, 0 to 1.
    pub value: f64,
    /// Standard uncertainty from the atomic weights, one standard deviation.
    pub standard_uncertainty: f64,
}

impl Formula {
    /// Molar mass of the formula unit with its standard uncertainty.
    ///
    /// # Errors
    ///
    /// `CannotBeMet` when an element has no standard atomic weight and `weights` is not
    /// [`Weights::ExactOrMassNumber`].
    ///
    /// Hydrogen peroxide from the abridged weights 1.0080 and 15.999 (IUPAC 2021, Table 2):
    ///
    /// ```
    /// use overwater::chem::{Formula, Weights};
    /// let peroxide = Formula::parse("H2O2")?;
    /// let mass = peroxide.molar_mass(Weights::Abridged)?;
    /// assert!((mass.value_g_per_mol - 34.014).abs() < 1e-12);
    /// assert_eq!(peroxide.molar_mass(Weights::Classroom)?.value_g_per_mol, 34.0);
    /// # Ok::<(), overwater::Error>(())
    /// ```
    pub fn molar_mass(&self, weights: Weights) -> Result<MolarMass> {
        let (mut value, mut variance) = (0.0, 0.0);
        for (atom, count) in self.composition() {
            let number = count.to_f64();
            let weight = weight(*atom, weights)?;
            value += number * weight.in_steps;
            variance += (number * weight.half_width).powi(2);
        }
        value = match weights {
            // Tenths were summed, so that one division rounds and 249.6 is the double nearest to 249.6.
            Weights::Classroom => value / STEPS_PER_UNIT,
            _ => value - f64::from(self.charge()) * ELECTRON_MASS_2022,
        };
        Ok(MolarMass { value_g_per_mol: value, standard_uncertainty_g_per_mol: (variance / 3.0).sqrt() })
    }

    /// The mass fraction of each kind of atom, in order of first appearance; none for the electron.
    ///
    /// The fractions of a neutral substance add up to 1; in an ion the missing or extra electrons are the rest.
    ///
    /// # Errors
    ///
    /// As [`Formula::molar_mass`].
    ///
    /// ```
    /// use overwater::chem::{Formula, Weights};
    /// let water = Formula::parse("H2O")?.mass_fractions(Weights::Abridged)?;
    /// // 15.999 / 18.015
    /// assert!((water[1].value - 0.888093).abs() < 5e-7);
    /// # Ok::<(), overwater::Error>(())
    /// ```
    pub fn mass_fractions(&self, weights: Weights) -> Result<Vec<MassFraction>> {
        let steps = if weights == Weights::Classroom { STEPS_PER_UNIT } else { 1.0 };
        let whole = self.molar_mass(weights)?;
        let total = whole.value_g_per_mol;
        let total_variance = whole.standard_uncertainty_g_per_mol.powi(2);
        self.composition()
            .iter()
            .map(|(atom, count)| {
                let weight = weight(*atom, weights)?;
                let number = count.to_f64();
                let value = number * weight.in_steps / steps / total;
                // d(value) = ((1 - value) dm - value d(rest)) / total, m being the mass of this kind.
                let own_variance = (number * weight.half_width).powi(2) / 3.0;
                let rest_variance = (total_variance - own_variance).max(0.0);
                let variance = (1.0 - value).powi(2) * own_variance + value.powi(2) * rest_variance;
                Ok(MassFraction { atom: *atom, value, standard_uncertainty: variance.sqrt() / total })
            })
            .collect()
    }
}

/// Classroom weights are whole numbers of tenths.
const STEPS_PER_UNIT: f64 = 10.0;
const SQRT_3: f64 = 1.732_050_807_568_877_2;

struct Weight {
    /// The weight, in tenths for the classroom, else in whole units.
    in_steps: f64,
    /// Half-width of the rectangular distribution that has the standard uncertainty.
    half_width: f64,
}

#[inline]
fn weight(atom: Atom, weights: Weights) -> Result<Weight> {
    let exact = match exact(atom) {
        Some(weight) => weight,
        None => return without_standard_weight(atom, weights),
    };
    Ok(match weights {
        Weights::Exact | Weights::ExactOrMassNumber => exact,
        Weights::Abridged => match atom.element().and_then(|element| element.abridged) {
            Some(abridged) => Weight { in_steps: abridged.value, half_width: abridged.uncertainty },
            None => exact,
        },
        Weights::Classroom => Weight {
            in_steps: (exact.in_steps * STEPS_PER_UNIT).round(),
            half_width: exact.half_width.hypot(0.5 / STEPS_PER_UNIT),
        },
    })
}

#[inline]
fn exact(atom: Atom) -> Option<Weight> {
    let Some(element) = atom.element() else {
        let isotope = atom.isotope()?;
        return Some(Weight { in_steps: isotope.mass, half_width: isotope.standard_uncertainty * SQRT_3 });
    };
    let half_width = match element.standard {
        StandardWeight::Interval { low, high } => (high - low) / 2.0,
        StandardWeight::Value { uncertainty, .. } => uncertainty,
        StandardWeight::NoStable { .. } => return None,
    };
    Some(Weight { in_steps: element.conventional?, half_width })
}

#[cold]
fn without_standard_weight(atom: Atom, weights: Weights) -> Result<Weight> {
    let mass_number = match atom.element().map(|element| element.standard) {
        Some(StandardWeight::NoStable { mass_number }) => mass_number,
        _ => 0,
    };
    if weights == Weights::ExactOrMassNumber {
        return Ok(Weight { in_steps: f64::from(mass_number), half_width: 0.5 });
    }
    Err(Error::new(Code::CannotBeMet, "weights")
        .value(format!("{weights:?} for {}", atom.name()))
        .allowed("elements with a standard atomic weight")
        .advice(format!(
            "{} has none; ask for Weights::ExactOrMassNumber to use {mass_number}, the mass number of its \
             longest-lived isotope",
            atom.name()
        )))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::reference::elements::DEUTERIUM_2020;

    fn mass(text: &str, weights: Weights) -> MolarMass {
        Formula::parse(text).unwrap().molar_mass(weights).unwrap()
    }

    fn close(actual: f64, expected: f64) {
        assert!((actual - expected).abs() <= 1e-12 * expected.abs(), "{actual} is not {expected}");
    }

    #[test]
    fn the_three_tables_give_their_own_sums() {
        // 2 x 1.008 + 2 x 15.999
        close(mass("H2O2", Weights::Exact).value_g_per_mol, 34.014);
        // 39.0983 + 54.938043 + 4 x 15.999 and 39.098 + 54.938 + 4 x 15.999
        close(mass("KMnO4", Weights::Exact).value_g_per_mol, 158.032343);
        close(mass("KMnO4", Weights::Abridged).value_g_per_mol, 158.032);
        close(mass("KMnO4", Weights::ExactOrMassNumber).value_g_per_mol, 158.032343);
        // 39.1 + 54.9 + 64.0 and 63.5 + 32.1 + 64.0 + 90.0, to the last bit
        assert_eq!(mass("KMnO4", Weights::Classroom).value_g_per_mol, 158.0);
        assert_eq!(mass("CuSO4.5H2O", Weights::Classroom).value_g_per_mol, 249.6);
    }

    #[test]
    fn classroom_weights_are_the_usual_ones() {
        for (symbol, weight) in [
            ("H", 1.0),
            ("D", 2.0),
            ("T", 3.0),
            ("C", 12.0),
            ("N", 14.0),
            ("O", 16.0),
            ("Na", 23.0),
            ("Mg", 24.3),
            ("Al", 27.0),
            ("S", 32.1),
            ("Cl", 35.5),
            ("Ar", 40.0),
            ("K", 39.1),
            ("Ca", 40.1),
            ("Mn", 54.9),
            ("Fe", 55.8),
            ("Cu", 63.5),
            ("Zn", 65.4),
            ("Mo", 96.0),
            ("Ag", 107.9),
            ("Pb", 207.2),
        ] {
            assert_eq!(mass(symbol, Weights::Classroom).value_g_per_mol, weight, "{symbol}");
        }
    }

    #[test]
    fn uncertainties_are_rectangular() {
        let u = |text, weights| mass(text, weights).standard_uncertainty_g_per_mol;
        // Hydrogen 1.00784 to 1.00811, abridged 1.0080(2); iron 55.845(2).
        close(u("H", Weights::Exact), 0.000135 / 3.0_f64.sqrt());
        close(u("H", Weights::Abridged), 0.0002 / 3.0_f64.sqrt());
        close(u("Fe", Weights::Exact), 0.002 / 3.0_f64.sqrt());
        close(u("Fe", Weights::Classroom), (0.002_f64.powi(2) + 0.05_f64.powi(2)).sqrt() / 3.0_f64.sqrt());
        close(u("D", Weights::Exact), DEUTERIUM_2020.standard_uncertainty);
        close(mass("Fe", Weights::Exact).relative_standard_uncertainty(), 0.002 / 3.0_f64.sqrt() / 55.845);
    }

    #[test]
    fn one_element_adds_and_different_elements_add_in_quadrature() {
        let u = |text| mass(text, Weights::Exact).standard_uncertainty_g_per_mol;
        close(u("H6"), 6.0 * u("H"));
        close(u("HHHHHH"), 6.0 * u("H"));
        close(u("H2O2"), ((2.0 * u("H")).powi(2) + (2.0 * u("O")).powi(2)).sqrt());
        close(
            u("CH3COOH"),
            ((2.0 * u("C")).powi(2) + (4.0 * u("H")).powi(2) + (2.0 * u("O")).powi(2)).sqrt(),
        );
    }

    #[test]
    fn electrons_are_counted_except_in_the_classroom() {
        let value = |text, weights| mass(text, weights).value_g_per_mol;
        close(value("Na+", Weights::Exact), 22.98976928 - 5.485_799_090_441e-4);
        close(value("SO4^2-", Weights::Abridged), 32.06 + 4.0 * 15.999 + 2.0 * 5.485_799_090_441e-4);
        close(value("e-", Weights::Exact), 5.485_799_090_441e-4);
        assert_eq!(value("Na+", Weights::Classroom), 23.0);
        assert_eq!(value("e-", Weights::Classroom), 0.0);
        assert!(mass("e-", Weights::Classroom).relative_standard_uncertainty().is_nan());
    }

    #[test]
    fn elements_without_a_standard_weight_are_refused_unless_asked_for() {
        for weights in [Weights::Exact, Weights::Abridged, Weights::Classroom] {
            let error = Formula::parse("RaCl2").unwrap().molar_mass(weights).unwrap_err();
            assert_eq!(error.code, Code::CannotBeMet);
            assert!(error.value.contains("radium"), "{error}");
            assert!(error.advice.contains("ExactOrMassNumber") && error.advice.contains("226"), "{error}");
        }
        close(mass("RaCl2", Weights::ExactOrMassNumber).value_g_per_mol, 226.0 + 2.0 * 35.45);
        close(mass("Ra", Weights::ExactOrMassNumber).standard_uncertainty_g_per_mol, 0.5 / 3.0_f64.sqrt());
    }

    #[test]
    fn mass_fractions_add_up_and_carry_the_uncertainty() {
        for weights in [Weights::Exact, Weights::Abridged, Weights::Classroom] {
            let fractions = Formula::parse("CuSO4.5H2O").unwrap().mass_fractions(weights).unwrap();
            assert_eq!(fractions.len(), 4);
            close(fractions.iter().map(|f| f.value).sum(), 1.0);
        }
        let [h, o] = Formula::parse("H2O").unwrap().mass_fractions(Weights::Abridged).unwrap()[..] else {
            panic!()
        };
        close(h.value, 2.016 / 18.015);
        close(o.value, 15.999 / 18.015);
        // By differences: w = 2 A(H) / (2 A(H) + A(O)), each weight moved by its standard uncertainty.
        let w = |a_h: f64, a_o: f64| 2.0 * a_h / (2.0 * a_h + a_o);
        let (u_h, u_o) = (0.0002 / 3.0_f64.sqrt(), 0.001 / 3.0_f64.sqrt());
        let by_h = (w(1.008 + u_h, 15.999) - w(1.008 - u_h, 15.999)) / 2.0;
        let by_o = (w(1.008, 15.999 + u_o) - w(1.008, 15.999 - u_o)) / 2.0;
        let expected = by_h.hypot(by_o);
        assert!((h.standard_uncertainty / expected - 1.0).abs() < 1e-6);
        // Two fractions that add up to one are equally uncertain.
        assert!((o.standard_uncertainty / expected - 1.0).abs() < 1e-6);
        assert_eq!(Formula::parse("e-").unwrap().mass_fractions(Weights::Exact).unwrap(), []);
        let pure = Formula::parse("O2").unwrap().mass_fractions(Weights::Exact).unwrap()[0];
        assert_eq!((pure.value, pure.standard_uncertainty, pure.atom.symbol()), (1.0, 0.0, "O"));
    }
}
