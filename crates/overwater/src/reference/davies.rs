//! The constants of Davies's equation for activity coefficients in water.

use super::constants::constant;
use super::sources;
use crate::scalar::Constant;
use crate::units;

/// The constant of the limiting law in water at 25 degC, for logarithms to base 10. It falls to 0.491 at 0 degC and
/// rises to 0.524 at 45 degC (from memory), which moves no pH here by more than 0.01.
pub static DAVIES_A_1962: Constant = constant(
    "davies_a_1962",
    "A",
    "A",
    "constant of the limiting law for activity coefficients in water at 25 degC",
    &units::ONE,
    0.509,
    &sources::DAVIES_1962,
);
/// The factor of the term that is linear in the ionic strength.
pub static DAVIES_LINEAR_1962: Constant = constant(
    "davies_linear_1962",
    "b(D)",
    r"b_\mathrm{D}",
    "factor of the linear term in Davies's equation",
    &units::ONE,
    0.3,
    &sources::DAVIES_1962,
);
/// The greatest ionic strength that the equation is trusted to, in mol/dm3.
pub static DAVIES_GREATEST_1962: Constant = constant(
    "davies_greatest_1962",
    "I(max)",
    r"I_\mathrm{max}",
    "greatest ionic strength that Davies's equation is trusted to",
    &units::MOLE_PER_CUBIC_DECIMETRE,
    0.5,
    &sources::DAVIES_1962,
);
