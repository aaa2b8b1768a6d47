//! What the tests of overwater share.
//!
//! - [`strategies`]: random values over the whole range of a row of the bounds table;
//! - [`compare`]: a comparison that says which value differs, by how much, and what would have been allowed;
//! - [`data`]: published values from a CSV file whose first lines name their source;
//! - [`notation`]: numbers as tables print them;
//! - [`vectors`]: requests with the very bytes that answer them.

#![forbid(unsafe_code)]
#![deny(missing_docs)]

pub mod compare;
pub mod data;
pub mod notation;
pub mod strategies;
pub mod vectors;
