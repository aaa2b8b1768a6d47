//! The program.

use std::ffi::OsString;

use pyo3::prelude::*;

/// Runs the program `overwater` with its arguments, the first of which is its name, and gives its exit code.
#[pyfunction]
fn run_program(py: Python<'_>, arguments: Vec<OsString>) -> u8 {
    py.detach(|| overwater_cli::run(arguments))
}

pub(crate) fn register(module: &Bound<'_, PyModule>) -> PyResult<()> {
    module.add_function(wrap_pyfunction!(run_program, module)?)
}
