//! Formulas, molar masses, reactions and exact balancing.

mod atom;
mod balance;
mod conserved;
mod count;
mod formula;
mod limiting;
mod molar_mass;
mod reaction;

pub use atom::Atom;
pub use balance::{Balanced, Species};
pub use count::Count;
pub use formula::{Formula, MAX_CHARGE, MAX_FORMULA_BYTES, MAX_NESTING, State};
pub use limiting::{Limiting, SpeciesAmount, percent_yield};
pub use molar_mass::{MassFraction, MolarMass, Weights};
pub use reaction::{Arrow, MAX_EQUATION_BYTES, MAX_SPECIES, Reaction, Term};
