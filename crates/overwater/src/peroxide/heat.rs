//! Heat of the decomposition: how hot the liquid gets when none of the heat is lost.
//!
//! ```text
//! ΔT = c V q / (ρ c_p (V + V(heel)))
//! ```
//!
//! The density and specific heat of the liquid are taken as those of water at 20 degC; dilute peroxide differs from it
//! by less than 3 % up to 30 vol.

use crate::bounds::{self, Bound};
use crate::reference::peroxide::{DECOMPOSITION_HEAT_1982, SPECIFIC_HEAT};
use crate::scalar::{Formula, Scalar, Symbol};
use crate::symbols;
use crate::units::{
    Concentration, DEGREE_CELSIUS, Dimensioned, MassDensity, MolarEnergy, SpecificHeat, Temperature, Volume,
};
use crate::water::density::liquid_density;

/// Temperature rise when `solution` of the given concentration decomposes in itself and a `heel` of water.
#[inline(always)]
pub fn adiabatic_rise<S: Scalar>(
    concentration: Concentration<S>,
    solution: Volume<S>,
    heel: Volume<S>,
) -> Temperature<S> {
    let heat = concentration * solution * MolarEnergy::new(S::constant(&DECOMPOSITION_HEAT_1982));
    let density: MassDensity<S> =
        MassDensity::new(S::number(liquid_density(Temperature::new(20.0 + DEGREE_CELSIUS.zero)).si()));
    let capacity = density * SpecificHeat::new(S::constant(&SPECIFIC_HEAT)) * (solution + heel);
    (heat / capacity).checkpoint(&symbols::TEMPERATURE_RISE)
}

/// `adiabatic_rise(concentration_mol_per_dm3, solution_cm3, heel_cm3)` in kelvin.
///
/// ```
/// use overwater::peroxide::heat::AdiabaticRise;
/// use overwater::scalar::Formula;
/// // 20 vol by itself: 1.785 mol/dm3 x 94.66 kJ/mol over 4.17 J/(cm3 K), about 40 K.
/// assert!((AdiabaticRise.number([1.7846, 50.0, 0.0])? - 40.5).abs() < 0.05);
/// # Ok::<(), overwater::Error>(())
/// ```
#[derive(Debug, Clone, Copy, Default)]
pub struct AdiabaticRise;

impl Formula<3> for AdiabaticRise {
    const NAME: &'static str = "adiabatic_rise";

    fn inputs(&self) -> [&'static Bound; 3] {
        [&bounds::CONCENTRATION_MOL_PER_DM3, &bounds::SAMPLE_CM3, &bounds::LIQUID_CM3]
    }

    fn output(&self) -> &'static Symbol {
        &symbols::TEMPERATURE_RISE
    }

    #[inline(always)]
    fn evaluate<S: Scalar>(&self, [concentration, solution, heel]: [S; 3]) -> S {
        let concentration = Concentration::new(concentration.enter(&symbols::STOCK_CONCENTRATION));
        let solution = Volume::new(solution.enter(&symbols::SAMPLE_VOLUME));
        let heel = Volume::new(heel.enter(&symbols::LIQUID_VOLUME));
        adiabatic_rise(concentration, solution, heel).leave(&symbols::TEMPERATURE_RISE)
    }
}
