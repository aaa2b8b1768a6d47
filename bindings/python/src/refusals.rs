//! Refusals of the core, raised as what Python users catch.

use std::panic::{AssertUnwindSafe, catch_unwind};

use overwater::{Code, Error};
use overwater_exchange::Refusal;
use pyo3::exceptions::PyTypeError;
use pyo3::prelude::*;
use pyo3::sync::PyOnceLock;

/// The exception that says the same as `error`.
pub(crate) fn refusal(py: Python<'_>, error: &Error) -> PyErr {
    let class = match error.code {
        Code::UnknownName => "UnknownNameError",
        _ => "OverwaterError",
    };
    raise(
        py,
        class,
        (
            error.to_string(),
            error.code.name(),
            &*error.parameter,
            &*error.value,
            &*error.allowed,
            &*error.advice,
        ),
    )
}

/// The same for a refusal of the exchange, with the line where there is one.
pub(crate) fn refused(py: Python<'_>, refusal: &Refusal) -> PyErr {
    let place = refusal.place.map(|place| format!(" (line {}, column {})", place.line, place.column));
    let message = format!("{}{}", refusal.message, place.unwrap_or_default());
    let path = if refusal.path.is_empty() { "text" } else { &*refusal.path };
    raise(
        py,
        "OverwaterError",
        (message, &refusal.code, path, &refusal.value, &refusal.allowed, &refusal.advice),
    )
}

/// What `work` gives; a panic in it is an exception.
pub(crate) fn caught<T>(py: Python<'_>, work: impl FnOnce() -> PyResult<T>) -> PyResult<T> {
    // What a panic leaves half-done is dropped: nothing outlives the call.
    catch_unwind(AssertUnwindSafe(work)).unwrap_or_else(|_| Err(internal(py)))
}

/// What a panic becomes: it would be a fault of ours, and can be caught like any refusal.
pub(crate) fn internal(py: Python<'_>) -> PyErr {
    let advice = "this is a fault of the library: please report the call that led to it";
    raise(
        py,
        "OverwaterError",
        (format!("overwater failed inside; {advice}"), "internal", "", "", "", advice),
    )
}

/// A `TypeError` in the words of Python.
pub(crate) fn type_error(message: String) -> PyErr {
    PyTypeError::new_err(message)
}

fn raise(py: Python<'_>, class: &str, parts: (String, &str, &str, &str, &str, &str)) -> PyErr {
    static MODULE: PyOnceLock<Py<PyModule>> = PyOnceLock::new();
    let made = MODULE
        .get_or_try_init(py, || Ok::<_, PyErr>(py.import("overwater._errors")?.unbind()))
        .and_then(|module| module.bind(py).getattr(class)?.call1(parts));
    made.map_or_else(|error| error, PyErr::from_value)
}
