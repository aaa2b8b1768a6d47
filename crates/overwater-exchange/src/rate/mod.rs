//! Readings against time to rates: the request, the answer, and the two doors, for rows that are at hand and for a table.

mod across;
pub mod answer;
mod columns;
mod gas;
mod one;
mod prepared;
pub mod request;
mod rows;
mod run;
mod runs;

pub use run::{rate, rate_table};
