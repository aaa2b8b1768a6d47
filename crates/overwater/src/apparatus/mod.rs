//! The apparatus: the air still in it, the pressure in it, and water running back.

pub mod back_pressure;
pub mod purity;
pub mod run;
pub mod suck_back;
pub mod tube;
