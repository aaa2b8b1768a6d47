//! Chemical equilibrium of a flame: which species there are, how much of each, and how hot.
//!
//! At a temperature T and a pressure p the equilibrium is the composition of least Gibbs energy that holds the elements.
//! It is found from its dual, in the potentials π of the elements (those of White, Johnson and Dantzig, J. Chem. Phys.
//! 28 (1958) 751, in the form of Gordon and McBride, NASA RP-1311 (1994), section 2.2): with b the amounts of the
//! elements and a the atoms of a species,
//!
//! ```text
//! greatest  b · π
//! where     ln Σ exp(a · π - g/RT - ln(p/p°)) <= 0   over the gases: mole fractions add up to 1 at most
//!           a · π <= g/RT                            for each condensed phase
//! ```
//!
//! The number of moles of gas and of each condensed phase are the multipliers of these conditions: a phase that is not
//! there has the multiplier 0, and the gas may be absent too. So no phase is ever put in or taken out by trial.
//!
//! Gases are ideal, condensed phases pure: melts that mix (iron and its oxides) and ions are beyond it.

mod flame;
mod interior;
mod mixture;
mod system;

pub use flame::{Flame, flame};
pub use mixture::Mixture;
pub use system::{Equilibrium, System};
