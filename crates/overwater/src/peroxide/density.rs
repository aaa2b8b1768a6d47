//! Density of peroxide solutions, and with it all scales of strength from each other.
//!
//! Laliberte, J. Chem. Eng. Data 54 (2009) 1725, form of his density model, fitted to 122 published points:
//!
//! ```text
//! 1/ρ   = (1 - w)/ρ(water) + w/ρ(app)
//! ρ(app) = (c0 w + c1) exp[1e-6 (t + c4)²] / (w + c2 + c3 t)
//! ```
//!
//! w is the mass fraction, t in degC, ρ(water) by Kell, the equation that the fit was made with. Range of the source: 0 to 96 degC, w from 0 to 0.996; the doors
//! here take the strengths of [`bounds::PERCENT_W_W`]. Take 0.2 % as the uncertainty: the old tables (International
//! Critical Tables, 18 degC, from memory) lie up to 0.0017 g/cm3 away below 60 % and 0.0025 g/cm3 at 100 %.
//!
//! The mass fraction of a concentration solves `w = m/ρ(w)`, m being grams in a volume. Four Newton steps from `m` over the
//! density of water reach the last bits for every strength; their number is fixed, so that nothing can fail to end.

use crate::bounds::{self, Bound};
use crate::peroxide::strength::{VolumeConvention, from_mass_concentration, mass_concentration};
use crate::reference::peroxide::DENSITY_2009;
use crate::reference::sources;
use crate::scalar::{Formula, PropertyUncertainty, Scalar, Symbol};
use crate::symbols;
use crate::units::{
    Concentration, DEGREE_CELSIUS, Dimensioned, GRAM_PER_CUBIC_CENTIMETRE, MOLE_PER_CUBIC_DECIMETRE,
    MassDensity, PERCENT, Temperature,
};
use crate::water::density::kell;

/// The equation carries no stated uncertainty; its largest difference from the older tables is taken.
static TAKEN: PropertyUncertainty = PropertyUncertainty::from_limits(
    0.002,
    "0.2 %, the largest difference from the older tables below 90 % by mass",
    &sources::LALIBERTE_2009,
);

/// What does not depend on the mass fraction: the volume of water, the temperature's part of the apparent volume.
struct At<S> {
    water_volume: S,
    shift: S,
    expansion: S,
}

impl<S: Scalar> At<S> {
    #[inline(always)]
    fn new(temperature: Temperature<S>) -> Self {
        let [_, _, c2, c3, c4] = DENSITY_2009;
        let celsius = temperature.si() - DEGREE_CELSIUS.zero;
        let shifted = celsius + c4;
        At {
            water_volume: S::number(1.0) / kell::density(temperature).si(),
            shift: celsius * c3 + c2,
            expansion: (shifted * shifted * -1e-6).exp(),
        }
    }

    /// The specific volume 1/ρ and its slope by the mass fraction.
    #[inline(always)]
    fn volume(&self, fraction: S) -> (S, S) {
        let [c0, c1, _, _, _] = DENSITY_2009;
        let solute = fraction + self.shift;
        let below = fraction * c0 + c1;
        let apparent = fraction * solute / below * self.expansion;
        let slope = ((fraction + solute) - fraction * solute * c0 / below) / below * self.expansion;
        let water = (S::number(1.0) - fraction) * self.water_volume;
        (water + apparent, slope - self.water_volume)
    }
}

/// Density of a solution with a mass fraction of peroxide.
#[inline(always)]
pub fn density<S: Scalar>(fraction: S, temperature: Temperature<S>) -> MassDensity<S> {
    let (volume, _) = At::new(temperature).volume(fraction);
    MassDensity::new(S::number(1.0) / volume).checkpoint(&symbols::PEROXIDE_DENSITY)
}

/// Amount concentration of a mass fraction of peroxide: c = w ρ/M.
#[inline(always)]
pub fn concentration<S: Scalar>(fraction: S, temperature: Temperature<S>) -> Concentration<S> {
    let density = density(fraction, temperature);
    from_mass_concentration(MassDensity::new(fraction * density.si()))
}

/// Mass fraction of an amount concentration: the root of w = m/ρ(w).
#[inline(always)]
pub fn mass_fraction<S: Scalar>(concentration: Concentration<S>, temperature: Temperature<S>) -> S {
    let mass = mass_concentration(concentration).si();
    let at = At::new(temperature);
    let mut fraction = mass * at.water_volume;
    for _ in 0..4 {
        let (volume, slope) = at.volume(fraction);
        fraction = fraction - (fraction - mass * volume) / (S::number(1.0) - mass * slope);
    }
    fraction.checkpoint(&symbols::PERCENT_BY_MASS)
}

/// One strength in all scales, at one temperature.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Scales {
    /// Amount concentration (mol/dm3).
    pub concentration_mol_per_dm3: f64,
    /// Volume strength under the convention (vol).
    pub volume_strength_vol: f64,
    /// Grams in 100 cm3.
    pub percent_w_v: f64,
    /// Grams in 100 g.
    pub percent_w_w: f64,
    /// Density (g/cm3).
    pub density_g_per_cm3: f64,
}

impl Scales {
    /// All scales of a concentration.
    ///
    /// ```
    /// use overwater::peroxide::density::Scales;
    /// use overwater::peroxide::strength::VolumeConvention;
    /// use overwater::units::{Concentration, Temperature};
    /// // 100 vol at 0 degC and 1 atm: 8.923 mol/dm3, 30.35 % w/v and, at 20 degC, 27.52 % w/w.
    /// let convention = VolumeConvention::ZeroDegreesOneAtmosphere;
    /// let scales = Scales::of(convention.concentration(100.0), Temperature::new(293.15), convention);
    /// assert!((scales.percent_w_v - 30.351).abs() < 5e-4);
    /// assert!((scales.percent_w_w - 27.523).abs() < 5e-4);
    /// ```
    #[must_use]
    pub fn of(
        concentration: Concentration<f64>,
        temperature: Temperature<f64>,
        convention: VolumeConvention,
    ) -> Scales {
        let fraction = mass_fraction(concentration, temperature);
        let grams_per_cm3 = mass_concentration(concentration).si() / GRAM_PER_CUBIC_CENTIMETRE.si;
        Scales {
            concentration_mol_per_dm3: concentration.si() / MOLE_PER_CUBIC_DECIMETRE.si,
            volume_strength_vol: convention.volume_strength(concentration),
            percent_w_v: grams_per_cm3 / PERCENT.si,
            percent_w_w: fraction / PERCENT.si,
            density_g_per_cm3: density(fraction, temperature).si() / GRAM_PER_CUBIC_CENTIMETRE.si,
        }
    }
}

#[inline(always)]
fn enter<S: Scalar>(temperature: S) -> Temperature<S> {
    Temperature::new(temperature.enter(&symbols::TEMPERATURE))
}

/// `peroxide_density(percent_w_w, temperature_c)` in g/cm3.
///
/// ```
/// use overwater::peroxide::density::PeroxideDensity;
/// use overwater::scalar::Formula;
/// // International Critical Tables, 18 degC: 1.1122 g/cm3 for 30 % (from memory); the equation is 0.0015 above.
/// assert!((PeroxideDensity.number([30.0, 18.0])? - 1.113_7).abs() < 5e-5);
/// # Ok::<(), overwater::Error>(())
/// ```
#[derive(Debug, Clone, Copy, Default)]
pub struct PeroxideDensity;

impl Formula<2> for PeroxideDensity {
    const NAME: &'static str = "peroxide_density";

    fn inputs(&self) -> [&'static Bound; 2] {
        [&bounds::PERCENT_W_W, &bounds::PEROXIDE_TEMPERATURE_C]
    }

    fn output(&self) -> &'static Symbol {
        &symbols::PEROXIDE_DENSITY
    }

    fn property_uncertainty(&self) -> Option<&'static PropertyUncertainty> {
        Some(&TAKEN)
    }

    #[inline(always)]
    fn evaluate<S: Scalar>(&self, [percent, temperature]: [S; 2]) -> S {
        let fraction = percent.enter(&symbols::PERCENT_BY_MASS);
        density(fraction, enter(temperature)).leave(&symbols::PEROXIDE_DENSITY)
    }
}

/// `concentration_from_mass(percent_w_w, temperature_c)` in mol/dm3.
///
/// ```
/// use overwater::peroxide::density::ConcentrationFromMass;
/// use overwater::scalar::Formula;
/// // 30.007 % w/w at 20 degC is 110 vol, 9.815 mol/dm3.
/// assert!((ConcentrationFromMass.number([30.007, 20.0])? - 9.815_3).abs() < 5e-4);
/// # Ok::<(), overwater::Error>(())
/// ```
#[derive(Debug, Clone, Copy, Default)]
pub struct ConcentrationFromMass;

impl Formula<2> for ConcentrationFromMass {
    const NAME: &'static str = "concentration_from_mass";

    fn inputs(&self) -> [&'static Bound; 2] {
        [&bounds::PERCENT_W_W, &bounds::PEROXIDE_TEMPERATURE_C]
    }

    fn output(&self) -> &'static Symbol {
        &symbols::CONCENTRATION
    }

    #[inline(always)]
    fn evaluate<S: Scalar>(&self, [percent, temperature]: [S; 2]) -> S {
        let fraction = percent.enter(&symbols::PERCENT_BY_MASS);
        concentration(fraction, enter(temperature)).leave(&symbols::CONCENTRATION)
    }
}

/// `mass_from_concentration(concentration_mol_per_dm3, temperature_c)` in % w/w: the inverse.
#[derive(Debug, Clone, Copy, Default)]
pub struct MassFromConcentration;

impl Formula<2> for MassFromConcentration {
    const NAME: &'static str = "mass_from_concentration";

    fn inputs(&self) -> [&'static Bound; 2] {
        [&bounds::CONCENTRATION_MOL_PER_DM3, &bounds::PEROXIDE_TEMPERATURE_C]
    }

    fn output(&self) -> &'static Symbol {
        &symbols::PERCENT_BY_MASS
    }

    #[inline(always)]
    fn evaluate<S: Scalar>(&self, [concentration, temperature]: [S; 2]) -> S {
        let concentration = Concentration::new(concentration.enter(&symbols::STOCK_CONCENTRATION));
        mass_fraction(concentration, enter(temperature)).leave(&symbols::PERCENT_BY_MASS)
    }
}
