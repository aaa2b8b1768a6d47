//! Turns answers into sheets that a person works from: text for a terminal, and a page to print.

#![forbid(unsafe_code)]
#![deny(missing_docs)]

mod layout;
mod page;
mod terminal;
mod typeset;

pub use page::page;
pub use terminal::terminal;
pub use typeset::typeset;
