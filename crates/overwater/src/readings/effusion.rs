//! Molar mass from the times in which equal amounts of two gases effuse through one hole: M = M(known) (t/t(known))².

use crate::scalar::Scalar;
use crate::symbols;
use crate::units::{Dimensioned, MolarWeight, Time};

/// Molar mass of the gas that took `time`.
///
/// ```
/// use overwater::readings::effusion::effused_molar_mass;
/// use overwater::units::{Dimensioned, MolarWeight, Time};
/// // Hydrogen effuses 8.97 times as fast as a gas of 162 g/mol (OpenStax, Chemistry 2e, section 9.4 exercise).
/// let molar_mass = effused_molar_mass(Time::new(8.97_f64), Time::new(1.0), MolarWeight::new(2.016e-3));
/// assert_eq!(overwater::units::significant(molar_mass.si() * 1e3, 3), "162");
/// ```
#[inline(always)]
pub fn effused_molar_mass<S: Scalar>(
    time: Time<S>,
    known_time: Time<S>,
    known: MolarWeight<S>,
) -> MolarWeight<S> {
    let ratio = (time.si() / known_time.si()).power(2);
    MolarWeight::new(known.si() * ratio).checkpoint(&symbols::EFFUSED_MOLAR_MASS)
}
