//! The enhancement factor: how much more vapour a gas under pressure holds than empty space.

use super::sources;
use crate::scalar::Source;

/// Coefficients A0 to A3 and B0 to B3 (degC): Greenspan, J. Res. Natl. Bur. Stand. 80A (1976) 41, over liquid water; as five public code bases quote
/// them (two more carry slips in A3 and B2). Range of the source: 0 to 100 degC.
pub static GREENSPAN_1976: [[f64; 4]; 2] = [
    [3.536_24e-4, 2.932_28e-5, 2.614_74e-7, 8.575_38e-9],
    [-1.075_88e1, 6.325_29e-2, -2.535_91e-4, 6.337_84e-7],
];

/// Coefficients A0 to A3 and B0 to B3 (degC): Hardy, Third Int. Symp. on Humidity and Moisture, NPL 1998, over liquid water, the temperature scale of 1990; as
/// three public code bases quote them. Range of the source: 0 to 100 degC.
pub static HARDY_1998: [[f64; 4]; 2] = [
    [3.536_24e-4, 2.932_836_3e-5, 2.616_897_9e-7, 8.581_360_9e-9],
    [-1.075_88e1, 6.326_813_4e-2, -2.536_893_4e-4, 6.340_528_6e-7],
];

/// Coefficients a, b (1/hPa) and c (1/(hPa degC2)): Buck Research CR-1A user manual, appendix 1 (1996), from memory;
/// within 2.5e-4 of Greenspan from 5 to 50 degC.
pub static BUCK_1996: [f64; 3] = [7.2e-4, 3.20e-6, 5.9e-10];

/// Coefficients α, β (1/Pa) and γ (1/degC2): CIPM-2007, Picard et al., Metrologia 45 (2008) 149, equation A1.2, from
/// memory; within 5e-5 of Greenspan from 5 to 30 degC.
pub static CIPM_2007: [f64; 3] = [1.000_62, 3.14e-8, 5.6e-7];

/// The size of the enhancement in one gas at 20 degC and 101.325 kPa, estimated from second virial coefficients.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Enhancement {
    /// The gas, as a formula; `air` for air.
    pub gas: &'static str,
    /// Second virial coefficient of water with the gas, cm3/mol.
    pub cross_virial_cm3_per_mol: f64,
    /// Its uncertainty.
    pub cross_virial_uncertainty_cm3_per_mol: f64,
    /// Second virial coefficient of the gas, cm3/mol.
    pub virial_cm3_per_mol: f64,
    /// The enhancement factor.
    pub factor: f64,
    /// Its uncertainty, from that of the cross coefficient.
    pub factor_uncertainty: f64,
    /// Where the cross coefficient comes from.
    pub source: &'static Source,
}

/// Estimates at 20 degC and 101.325 kPa. But for air the cross coefficients are from memory and nothing was found to
/// check them against: the size is to be trusted, not the digits.
pub static AT_20_DEGREES: [Enhancement; 6] = [
    Enhancement {
        gas: "air",
        cross_virial_cm3_per_mol: -32.0,
        cross_virial_uncertainty_cm3_per_mol: 3.0,
        virial_cm3_per_mol: -9.1,
        factor: 1.0042,
        factor_uncertainty: 0.0002,
        source: &sources::IAPWS_G8_10,
    },
    Enhancement {
        gas: "O2",
        cross_virial_cm3_per_mol: -32.0,
        cross_virial_uncertainty_cm3_per_mol: 8.0,
        virial_cm3_per_mol: -16.9,
        factor: 1.0038,
        factor_uncertainty: 0.0006,
        source: &sources::CROSS_VIRIALS_MEMORY,
    },
    Enhancement {
        gas: "N2",
        cross_virial_cm3_per_mol: -32.0,
        cross_virial_uncertainty_cm3_per_mol: 8.0,
        virial_cm3_per_mol: -5.9,
        factor: 1.0043,
        factor_uncertainty: 0.0006,
        source: &sources::CROSS_VIRIALS_MEMORY,
    },
    Enhancement {
        gas: "H2",
        cross_virial_cm3_per_mol: -13.0,
        cross_virial_uncertainty_cm3_per_mol: 8.0,
        virial_cm3_per_mol: 14.4,
        factor: 1.0036,
        factor_uncertainty: 0.0006,
        source: &sources::CROSS_VIRIALS_MEMORY,
    },
    Enhancement {
        gas: "CO2",
        cross_virial_cm3_per_mol: -205.0,
        cross_virial_uncertainty_cm3_per_mol: 25.0,
        virial_cm3_per_mol: -127.9,
        factor: 1.0126,
        factor_uncertainty: 0.0020,
        source: &sources::CROSS_VIRIALS_MEMORY,
    },
    Enhancement {
        gas: "CH4",
        cross_virial_cm3_per_mol: -63.0,
        cross_virial_uncertainty_cm3_per_mol: 12.0,
        virial_cm3_per_mol: -44.9,
        factor: 1.0052,
        factor_uncertainty: 0.0010,
        source: &sources::CROSS_VIRIALS_MEMORY,
    },
];
