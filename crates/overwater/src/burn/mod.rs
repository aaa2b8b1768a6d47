//! Burning a sample in a jar: which oxide, how much oxygen, how much of the product, how much heat, how hot.

mod advice;
mod burnt;
mod combustion;
mod extent;
mod fuel;
mod heat;
mod jar;
mod sample;

pub mod air;
pub mod aqueous;
pub mod equilibrium;
pub mod thermo;
pub mod tidying;

pub use advice::{NoAdvice, SampleAdvice, sample_advice};
pub use burnt::{Amount, BurntAnswer, GasAfter, Regime, burnt};
pub use combustion::{Combustion, Product, heat_released, oxygen_needed, product_formed, sample_for_oxygen};
pub use extent::{Extent, extent};
pub use fuel::{Fuel, Restriction};
pub use heat::{Flames, flames};
pub use jar::{Contents, Jar, moist_volume};
pub use sample::{Answer, Role, Sample, answers, in_little_oxygen};
