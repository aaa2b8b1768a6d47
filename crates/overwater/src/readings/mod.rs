//! What follows from a table of readings: straight lines, curves, rates, half-lives, orders, activation energies.

pub mod arrhenius;
pub mod bootstrap;
pub mod curve;
pub mod decay;
pub mod half_life;
pub mod initial_rate;
mod least_squares;
pub mod line;
pub mod michaelis_menten;
mod minimise;
pub mod model;
pub mod order;
pub mod rate_law;
pub mod series;
mod slopes;
mod student;

pub use least_squares::Covariance;
