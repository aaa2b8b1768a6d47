//! Burning a sample in a jar: which oxide, how much oxygen, how much of the product.

mod combustion;
mod sample;

pub mod air;
pub mod aqueous;
pub mod thermo;

pub use combustion::{Combustion, oxygen_needed, product_formed, sample_for_oxygen};
pub use sample::{Answer, Role, Sample};
