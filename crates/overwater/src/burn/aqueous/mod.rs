//! Products of a burn in water: how much dissolves, the pH, what indicators show.

mod balance;
mod constants;
mod indicator;
mod product;
mod solve;

pub use balance::{Charges, Held, Mixture, charges, davies, saturation};
pub use constants::{Acid, Constants, Hydroxide, STEPS, constant};
pub use indicator::{litmus, universal_indicator};
pub use product::{InWater, Water, dissolve};
pub use solve::{Activity, Equilibrium};
