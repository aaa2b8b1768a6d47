//! The formulas of the catalogue, one function for a number and one for columns.
//! Written by `cargo run -p overwater-c --example generate` from the catalogue of the core.

pub mod barometer;
pub mod brine;
pub mod collected;
pub mod column;
pub mod peroxide;
pub mod room;
pub mod species;
pub mod vapour;
pub mod water;
