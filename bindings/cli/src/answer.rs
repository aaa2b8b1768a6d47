//! `overwater answer`.

use std::path::Path;

use overwater_exchange::respond_with_status;

use crate::files::{self, Message};

/// Prints the answer to a request, and a line end.
pub(crate) fn run(file: &Path) -> Result<u8, Message> {
    let (answer, good) = respond_with_status(&files::bytes(file)?);
    files::print(&(answer + "\n"))?;
    Ok(if good { 0 } else { 2 })
}
