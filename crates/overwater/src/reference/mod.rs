//! Published data, each table a constant with its source and its year. No formula is in here.

pub mod atmosphere;
pub mod burns;
pub mod constants;
pub mod elements;
pub mod glassware;
pub mod peroxide;
pub mod sources;
pub mod water;

pub mod brine;
pub mod earth;
pub mod enhancement;
pub mod vapour;

pub mod acids;
pub mod airborne;
pub mod davies;
pub mod exposure_limits;
pub mod flask;
pub mod gases;
pub mod henry;
pub mod nasa9;
pub mod over_water;
pub mod oxides;
pub mod phase_transitions;
pub mod products_in_water;
pub mod thermochemistry;
pub mod water_ionisation;
