//! Water: its vapour pressure and its density.

pub mod density;
pub mod vapour;

pub mod ionisation;
