//! Turns answers into sheets that a person works from: text for a terminal, and a page to print.

#![forbid(unsafe_code)]
#![deny(missing_docs)]

mod after;
mod bounds;
mod burn;
mod layout;
mod page;
mod propagation;
mod rate;
mod reduction;
mod run;
mod sources;
mod terminal;
mod timeline;
mod typeset;
mod working;

pub use after::{in_water, room_air};
pub use bounds::bounds;
pub use burn::burn;
pub use page::{page, rate_page, run_page};
pub use propagation::propagation;
pub use rate::rates;
pub use reduction::{Figures, results};
pub use run::{calibration, run};
pub use sources::sources;
pub use terminal::terminal;
pub use timeline::timeline;
pub use typeset::typeset;
pub use working::{WorkingFormat, working};
