//! Sodium chloride brine.

use super::sources;
use crate::scalar::Table;
use crate::units::{DEGREE_CELSIUS, GRAM_PER_CUBIC_CENTIMETRE};

/// Relative humidity over saturated brine, A exp(B/T) with A in per cent and B in K: CRC Handbook, section 15, constant
/// humidity solutions (Wexler). Range of the source: 10 to 40 degC; within 2 %.
pub static SATURATED_CRC: [f64; 2] = [69.20, 25.0];
/// Relative humidity over saturated brine in per cent, a cubic in degC: Greenspan, J. Res. Natl. Bur. Stand. 81A (1977)
/// 89, from memory; within 0.01 of the table there as remembered, 0 to 50 degC.
pub static SATURATED_GREENSPAN_1977: [f64; 4] = [75.516_4, 0.039_832_1, -0.265_459e-2, 0.284_8e-4];

/// Density of saturated brine in g/cm3. Computed with PHREEQC and its database pitzer.dat, not measured.
pub static SATURATED_DENSITY: Table = Table {
    entries: &[
        (10.0, 1.205_57),
        (15.0, 1.202_57),
        (20.0, 1.199_96),
        (25.0, 1.197_61),
        (30.0, 1.195_49),
        (40.0, 1.191_66),
    ],
    argument: &DEGREE_CELSIUS,
    value: &GRAM_PER_CUBIC_CENTIMETRE,
    source: &sources::PHREEQC_PITZER,
};
