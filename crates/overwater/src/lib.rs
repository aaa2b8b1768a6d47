//! Gas-collection calculations for school and college chemistry.

#![forbid(unsafe_code)]
#![deny(missing_docs)]

pub mod chem;
mod error;
pub mod reference;

pub use error::{Code, Error};

/// The result of everything that can refuse.
pub type Result<T> = std::result::Result<T, Error>;
