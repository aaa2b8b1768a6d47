//! The extension module `overwater._native`: every number of the Python package comes from here, that is, from the core.
//!
//! | file | what it does |
//! |---|---|
//! | `elementwise` | the functions that take a number or an array |
//! | `requests` | a request in JSON to an answer in JSON, the program, what the sheet prints |
//! | `refusals` | `overwater::Error` to `OverwaterError` |

mod elementwise;
mod refusals;
mod requests;

use pyo3::prelude::*;

/// The compiled half of the package.
#[pymodule(name = "_native", gil_used = true)]
fn native(module: &Bound<'_, PyModule>) -> PyResult<()> {
    module.add("__version__", env!("CARGO_PKG_VERSION"))?;
    module.add("OPTIMISED", !cfg!(debug_assertions))?;
    elementwise::register(module)?;
    requests::register(module)
}
