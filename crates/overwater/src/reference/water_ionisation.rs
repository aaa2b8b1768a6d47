//! Coefficients of the ionisation of water: the release of 2024 and the one that it replaced.

use super::sources;
use crate::scalar::Source;

/// The coefficients of one release.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Ionisation {
    /// α0, α1 (K), α2 (K2).
    pub alpha: [f64; 3],
    /// β0, β1 (K), β2.
    pub beta: [f64; 3],
    /// γ0, γ1 (K), γ2 (K2), γ3 (K3), of the ideal gas.
    pub gamma: [f64; 4],
    /// n, the number of water molecules around an ion.
    pub hydration_number: f64,
    /// Molar mass of water, in g/mol.
    pub molar_mass_g_per_mol: f64,
    /// Where they come from.
    pub source: &'static Source,
}

const GAMMA: [f64; 4] = [6.141_5e-1, 4.825_133e4, -6.770_793e4, 1.010_21e7];

/// The release of 2024. Check value at 300 K and 1 g/cm3: 13.906672 (from memory).
pub static IONISATION_2024: Ionisation = Ionisation {
    alpha: [-0.702_132, 8_681.05, -24_145.1],
    beta: [0.813_876, -51.447_1, -0.469_920],
    gamma: GAMMA,
    hydration_number: 6.0,
    molar_mass_g_per_mol: 18.015_268,
    source: &sources::IAPWS_R11_24,
};

/// The release of 2007. Check value at 300 K and 1 g/cm3: 13.906565.
pub static IONISATION_2007: Ionisation = Ionisation {
    alpha: [-0.864_671, 8_659.19, -22_786.2],
    beta: [0.642_044, -56.853_4, -0.375_754],
    gamma: GAMMA,
    hydration_number: 6.0,
    molar_mass_g_per_mol: 18.015_268,
    source: &sources::IAPWS_R11_07,
};
