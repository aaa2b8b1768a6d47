//! Assay of peroxide by permanganate, and the design of one.
//!
//! ```text
//! 2 MnO4- + 5 H2O2 + 6 H+ = 2 Mn2+ + 5 O2 + 8 H2O
//! c(diluted) = 5/2 c(MnO4-) V(titre)/V(aliquot),   c = c(diluted) V(made up)/V(sample)
//! ```

use crate::bounds::{self, Bound};
use crate::reference::glassware::{ALIQUOTS, FLASKS, PIPETTES, TITRE_TOLERANCE_CM3};
use crate::scalar::{Formula, Scalar, Symbol};
use crate::symbols;
use crate::units::{Concentration, Dimensioned, Volume};
use crate::{Code, Error, Result};

/// Moles of peroxide for each mole of permanganate.
pub const PEROXIDE_PER_PERMANGANATE: f64 = 2.5;

/// `assayed_concentration(titre_cm3, permanganate_mol_per_dm3, sample_cm3, made_up_to_cm3, aliquot_cm3)` in mol/dm3.
///
/// ```
/// use overwater::peroxide::assay::AssayedConcentration;
/// use overwater::scalar::Formula;
/// // 10.0 cm3 made up to 250 cm3, 25.0 cm3 of it takes 28.40 cm3 of 0.0200 mol/dm3: 1.42 mol/dm3
/// // (arithmetic: 2.5 x 0.0200 x 28.40/25.0 x 25).
/// let c = AssayedConcentration.number([28.40, 0.0200, 10.0, 250.0, 25.0])?;
/// assert!((c - 1.42).abs() < 1e-12);
/// # Ok::<(), overwater::Error>(())
/// ```
#[derive(Debug, Clone, Copy, Default)]
pub struct AssayedConcentration;

impl Formula<5> for AssayedConcentration {
    const NAME: &'static str = "assayed_concentration";

    fn inputs(&self) -> [&'static Bound; 5] {
        [
            &bounds::TITRE_CM3,
            &bounds::PERMANGANATE_MOL_PER_DM3,
            &bounds::SAMPLE_CM3,
            &bounds::MADE_UP_TO_CM3,
            &bounds::ALIQUOT_CM3,
        ]
    }

    fn output(&self) -> &'static Symbol {
        &symbols::CONCENTRATION
    }

    #[inline(always)]
    fn evaluate<S: Scalar>(&self, [titre, permanganate, sample, made_up, aliquot]: [S; 5]) -> S {
        let titre = Volume::new(titre.enter(&symbols::TITRE));
        let permanganate = Concentration::new(permanganate.enter(&symbols::PERMANGANATE));
        let sample = Volume::new(sample.enter(&symbols::SAMPLE_VOLUME));
        let made_up = Volume::new(made_up.enter(&symbols::MADE_UP_VOLUME));
        let aliquot = Volume::new(aliquot.enter(&symbols::ALIQUOT));
        let diluted = (permanganate * PEROXIDE_PER_PERMANGANATE * titre / aliquot)
            .checkpoint(&symbols::ALIQUOT_CONCENTRATION);
        (diluted * made_up / sample).checkpoint(&symbols::CONCENTRATION).leave(&symbols::CONCENTRATION)
    }
}

/// `expected_titre(concentration_mol_per_dm3, permanganate_mol_per_dm3, sample_cm3, made_up_to_cm3, aliquot_cm3)` in
/// cm3: the assay read backwards.
#[derive(Debug, Clone, Copy, Default)]
pub struct ExpectedTitre;

impl Formula<5> for ExpectedTitre {
    const NAME: &'static str = "expected_titre";

    fn inputs(&self) -> [&'static Bound; 5] {
        [
            &bounds::CONCENTRATION_MOL_PER_DM3,
            &bounds::PERMANGANATE_MOL_PER_DM3,
            &bounds::SAMPLE_CM3,
            &bounds::MADE_UP_TO_CM3,
            &bounds::ALIQUOT_CM3,
        ]
    }

    fn output(&self) -> &'static Symbol {
        &symbols::TITRE
    }

    #[inline(always)]
    fn evaluate<S: Scalar>(&self, [concentration, permanganate, sample, made_up, aliquot]: [S; 5]) -> S {
        let concentration = Concentration::new(concentration.enter(&symbols::STOCK_CONCENTRATION));
        let permanganate = Concentration::new(permanganate.enter(&symbols::PERMANGANATE));
        let sample = Volume::new(sample.enter(&symbols::SAMPLE_VOLUME));
        let made_up = Volume::new(made_up.enter(&symbols::MADE_UP_VOLUME));
        let aliquot = Volume::new(aliquot.enter(&symbols::ALIQUOT));
        let diluted = (concentration * sample / made_up).checkpoint(&symbols::ALIQUOT_CONCENTRATION);
        let permanganate = permanganate * PEROXIDE_PER_PERMANGANATE;
        (diluted * aliquot / permanganate).checkpoint(&symbols::TITRE).leave(&symbols::TITRE)
    }
}

/// A design for an assay: what to pipette, what to make it up to, what to titrate, and the titre to expect.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct AssayDesign {
    /// Stock to pipette, in cm3.
    pub sample_cm3: f64,
    /// Volumetric flask, in cm3.
    pub made_up_to_cm3: f64,
    /// Diluted sample to titrate, in cm3.
    pub aliquot_cm3: f64,
    /// Concentration of the permanganate, in mol/dm3.
    pub permanganate_mol_per_dm3: f64,
    /// Titre if the stock is as strong as supposed, in cm3.
    pub expected_titre_cm3: f64,
    /// The tolerances of the glassware added, as a percentage of the result.
    pub glassware_percent: f64,
}

/// Chooses the glassware for an assay so that the titre falls between `least_titre_cm3` and `greatest_titre_cm3`: the
/// first flask of 250, 500, 1000 and 100 cm3 with which that can be done, and with it the pipettes whose tolerances,
/// added up with those of flask and burette, are the smallest percentage; of equals those that take less stock.
///
/// ```
/// use overwater::peroxide::assay::design;
/// // 20 vol with 0.0200 mol/dm3 permanganate: 10 cm3 to 250 cm3 with 20 cm3 aliquots takes 28.6 cm3.
/// let design = design(1.7846, 0.0200, 15.0, 30.0)?;
/// assert_eq!((design.sample_cm3, design.made_up_to_cm3, design.aliquot_cm3), (10.0, 250.0, 20.0));
/// assert!((design.expected_titre_cm3 - 28.55).abs() < 0.01);
/// # Ok::<(), overwater::Error>(())
/// ```
///
/// # Errors
/// `out_of_range` for the concentrations and titres, `contradiction` when the least titre is above the greatest, and
/// `cannot_be_met` when no glassware brings the titre there.
pub fn design(
    concentration_mol_per_dm3: f64,
    permanganate_mol_per_dm3: f64,
    least_titre_cm3: f64,
    greatest_titre_cm3: f64,
) -> Result<AssayDesign> {
    bounds::TITRE_CM3.check(least_titre_cm3)?;
    bounds::TITRE_CM3.check(greatest_titre_cm3)?;
    if least_titre_cm3 >= greatest_titre_cm3 {
        return Err(Error::new(Code::Contradiction, "least_titre_cm3")
            .value(format!("{least_titre_cm3} cm3"))
            .allowed(format!("less than the greatest titre, {greatest_titre_cm3} cm3")));
    }
    for (made_up_to_cm3, flask_tolerance) in FLASKS {
        let mut best: Option<AssayDesign> = None;
        for (sample_cm3, sample_tolerance) in PIPETTES {
            for (aliquot_cm3, aliquot_tolerance) in ALIQUOTS {
                let expected_titre_cm3 = ExpectedTitre.number([
                    concentration_mol_per_dm3,
                    permanganate_mol_per_dm3,
                    sample_cm3,
                    made_up_to_cm3,
                    aliquot_cm3,
                ])?;
                let glassware_percent = 100.0
                    * (TITRE_TOLERANCE_CM3 / expected_titre_cm3
                        + sample_tolerance / sample_cm3
                        + aliquot_tolerance / aliquot_cm3
                        + flask_tolerance / made_up_to_cm3);
                let fits = (least_titre_cm3..=greatest_titre_cm3).contains(&expected_titre_cm3);
                if fits && best.is_none_or(|found| glassware_percent < found.glassware_percent - 1e-9) {
                    best = Some(AssayDesign {
                        sample_cm3,
                        made_up_to_cm3,
                        aliquot_cm3,
                        permanganate_mol_per_dm3,
                        expected_titre_cm3,
                        glassware_percent,
                    });
                }
            }
        }
        if let Some(design) = best {
            return Ok(design);
        }
    }
    Err(Error::new(Code::CannotBeMet, "titre_cm3")
        .allowed(format!("{least_titre_cm3} to {greatest_titre_cm3} cm3"))
        .advice(
            "no pipette, flask and aliquot bring the titre there: use another concentration of permanganate",
        ))
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    #[test]
    fn strengths_found_on_shelves_all_have_a_design() {
        for volumes in [3.0, 10.0, 20.0, 30.0, 40.0, 60.0, 100.0, 110.0] {
            let design = design(2.0 * volumes / 22.414, 0.02, 15.0, 30.0).unwrap();
            assert!((15.0..=30.0).contains(&design.expected_titre_cm3), "{volumes} vol: {design:?}");
            assert!(design.glassware_percent < 2.5, "{volumes} vol: {design:?}");
        }
    }

    #[test]
    fn what_cannot_be_designed_is_refused() {
        assert_eq!(design(1.8, 1e-4, 15.0, 30.0).unwrap_err().code, Code::CannotBeMet);
        assert_eq!(design(1.8, 0.02, 30.0, 15.0).unwrap_err().code, Code::Contradiction);
        assert_eq!(design(99.0, 0.02, 15.0, 30.0).unwrap_err().code, Code::OutOfRange);
    }

    proptest! {
        #[test]
        fn the_titre_is_the_assay_backwards(
            concentration in 0.1..10.0_f64,
            permanganate in 0.01..0.1_f64,
            sample in 1.0..50.0_f64,
            aliquot in 10.0..50.0_f64,
        ) {
            let titre = ExpectedTitre.evaluate([concentration, permanganate, sample, 250.0, aliquot]);
            let back = AssayedConcentration.evaluate([titre, permanganate, sample, 250.0, aliquot]);
            prop_assert!((back / concentration - 1.0).abs() < 1e-14);
        }
    }
}
