//! Gas-collection calculations for school and college chemistry: the pure core.
//!
//! No input or output, no clock, no global state. Every formula is written once, in the room of its trade, over a
//! [`scalar::Scalar`]; choosing the scalar chooses whether a number, a column, a sensitivity, a worked solution or a
//! marking comes out of it.

#![forbid(unsafe_code)]
#![deny(missing_docs)]

pub mod apparatus;
pub mod bounds;
pub mod burn;
pub mod caution;
pub mod chem;
mod error;
pub mod gas;
mod nearest;
pub mod peroxide;
pub mod plan;
pub mod readings;
pub mod reference;
pub mod scalar;
pub mod symbols;
pub mod units;
pub mod water;

pub use error::{Code, Error};
pub use nearest::nearest;

/// The result of everything that can refuse.
pub type Result<T> = std::result::Result<T, Error>;
