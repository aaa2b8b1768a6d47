//! Readings to results: the request, the answer, and the two doors, for rows that are at hand and for a table that is
//! read as it comes.

pub mod answer;
pub(crate) mod columns;
mod prepared;
pub mod request;
mod run;
mod slope;
mod table;
mod uncertainty;

pub(crate) use prepared::collector;
pub(crate) use run::correction_answers;
pub use run::{KEPT_ROWS, reduce, reduce_table};
pub(crate) use uncertainty::DRAWS;
