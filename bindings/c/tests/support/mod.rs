//! The functions of the interface, called by the names of their formulas.

mod door;
mod doors;

pub use door::{Door, details};
pub use doors::doors;
