//! From readings to results: amounts and practicals, straight lines, curves, rates, half-lives, orders, activation
//! energies.

pub mod arrhenius;
pub mod bootstrap;
pub mod curve;
pub mod decay;
pub mod effusion;
pub mod eudiometry;
mod experiment;
pub mod half_life;
pub mod initial_rate;
mod least_squares;
pub mod line;
pub mod michaelis_menten;
mod minimise;
pub mod model;
pub mod order;
mod practical;
pub mod rate_law;
pub mod reaction_yield;
pub mod reduction;
mod row;
pub mod series;
mod slopes;
mod student;
pub mod timing;
pub mod titration;
pub mod uncertainty;
pub mod weighing;

pub use experiment::{CorrectionSize, Experiment, Outcome, Reference};
pub use least_squares::Covariance;
pub use practical::{Practical, WaterAfterBurning};
pub use row::{Quantity, Row};
