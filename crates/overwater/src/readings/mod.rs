//! From readings to results.

pub mod effusion;
pub mod eudiometry;
mod experiment;
mod practical;
pub mod reaction_yield;
pub mod reduction;
mod row;
pub mod timing;
pub mod titration;
pub mod weighing;

pub use experiment::{CorrectionSize, Experiment, Outcome, Reference};
pub use practical::{Practical, WaterAfterBurning};
pub use row::{Quantity, Row};
