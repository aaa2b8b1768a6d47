//! Turns answers into sheets that a person works from: text for a terminal, and a page to print.

#![forbid(unsafe_code)]
#![deny(missing_docs)]

mod page;
mod terminal;

pub use page::page;
pub use terminal::terminal;
