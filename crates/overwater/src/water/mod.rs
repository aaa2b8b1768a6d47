//! Water and brine: vapour pressure, alone and in a gas under pressure, and density.

pub mod brine;
pub mod density;
pub mod enhancement;
pub mod saturated;
pub mod vapour;

pub mod ionisation;
