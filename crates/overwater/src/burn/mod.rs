//! Burning a sample in a jar: which oxide, how much oxygen, how much of the product.

mod combustion;
mod fuel;
mod sample;

pub mod equilibrium;
pub mod thermo;

pub use combustion::{Combustion, Product, heat_released, oxygen_needed, product_formed, sample_for_oxygen};
pub use fuel::{Fuel, Restriction};
pub use sample::{Answer, Role, Sample, answers, in_little_oxygen};
