//! Gases: from a reading to the amount of dry gas.

pub mod barometer;
pub mod collected;
pub mod ideal;
pub mod level;

pub mod column;
pub mod gravity;
pub mod low_level;
pub mod mercury_barometer;

pub mod solubility;
pub mod species;
pub mod virial;
