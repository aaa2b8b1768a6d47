//! Hydrogen peroxide: how strong it is, how to dilute it, how to find out, and the heat it gives.

pub mod assay;
pub mod dilution;
pub mod heat;
pub mod kinetics;
pub mod label;
pub mod strength;

pub mod density;
