//! Formulas, molar masses, reactions and exact balancing.

mod atom;
mod count;
mod formula;
mod molar_mass;

pub use atom::Atom;
pub use count::Count;
pub use formula::{Formula, MAX_CHARGE, MAX_FORMULA_BYTES, MAX_NESTING, State};
pub use molar_mass::{MassFraction, MolarMass, Weights};
