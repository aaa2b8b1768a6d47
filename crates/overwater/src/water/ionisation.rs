//! Ionisation of water.
//!
//! IAPWS R11-24 (2024; the release of 2007 is the same equation with older coefficients), after Bandura and Lvov:
//!
//! ```text
//! Z   = ρ exp(α0 + α1/T + α2 ρ^(2/3)/T²)                                     ρ in g/cm3, T in K
//! pKw = -2n [log10(1 + Z) - Z/(1 + Z) ρ (β0 + β1/T + β2 ρ)] + pKw(gas) + 2 log10(m0/1000)
//! pKw(gas) = γ0 + γ1/T + γ2/T² + γ3/T³
//! ```
//!
//! with K in mol/kg. Range of the source: 0 to 800 degC, up to 1000 MPa; here liquid water at atmospheric pressure.

use std::f64::consts::LN_10;

use crate::bounds::{self, Bound};
use crate::reference::water_ionisation::{IONISATION_2024, Ionisation};
use crate::scalar::{Formula, Scalar, Symbol};
use crate::symbols;
use crate::units::{Dimensioned, GRAM_PER_CUBIC_CENTIMETRE, MassDensity, Temperature};
use crate::water::density::liquid_density;

/// -log10 of the ionisation constant on the molal scale, at a temperature and a density.
#[inline(always)]
pub fn pkw<S: Scalar>(temperature: Temperature<S>, density: MassDensity<S>, equation: &Ionisation) -> S {
    let [alpha0, alpha1, alpha2] = equation.alpha;
    let [beta0, beta1, beta2] = equation.beta;
    let [gamma0, gamma1, gamma2, gamma3] = equation.gamma;
    let rho = density.si() / GRAM_PER_CUBIC_CENTIMETRE.si;
    let inverse = S::number(1.0) / temperature.si();
    let two_thirds = (rho.ln() * (2.0 / 3.0)).exp();
    let z = rho * (inverse * alpha1 + alpha0 + inverse * inverse * two_thirds * alpha2).exp();
    let hydration = (z + 1.0).ln() / LN_10 - z / (z + 1.0) * rho * (inverse * beta1 + beta0 + rho * beta2);
    let gas = ((inverse * gamma3 + gamma2) * inverse + gamma1) * inverse + gamma0;
    let scale = (equation.molar_mass_g_per_mol / 1000.0).log10() * 2.0;
    (hydration * (-2.0 * equation.hydration_number) + gas + scale).checkpoint(&symbols::PKW)
}

/// `pkw(temperature_c)` of liquid water at atmospheric pressure, on the molal scale.
///
/// ```
/// use overwater::scalar::Formula;
/// use overwater::water::ionisation::Pkw;
/// // 25 degC and 0.1 MPa: 13.995 (Bandura and Lvov 2006, from memory).
/// assert!((Pkw.number([25.0])? - 13.995).abs() < 1e-3);
/// # Ok::<(), overwater::Error>(())
/// ```
#[derive(Debug, Clone, Copy, Default)]
pub struct Pkw;

impl Formula<1> for Pkw {
    const NAME: &'static str = "pkw";

    fn inputs(&self) -> [&'static Bound; 1] {
        [&bounds::TEMPERATURE_C]
    }

    fn output(&self) -> &'static Symbol {
        &symbols::PKW
    }

    #[inline(always)]
    fn evaluate<S: Scalar>(&self, [temperature]: [S; 1]) -> S {
        let temperature = Temperature::new(
            temperature.enter(&symbols::TEMPERATURE).checkpoint(&symbols::THERMODYNAMIC_TEMPERATURE),
        );
        pkw(temperature, liquid_density(temperature), &IONISATION_2024).leave(&symbols::PKW)
    }
}
