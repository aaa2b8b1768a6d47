//! The first door: exact Python floats and ints, straight to the core.

use std::ffi::c_int;
use std::panic::{AssertUnwindSafe, catch_unwind};
use std::ptr;

use pyo3::ffi;
use pyo3::prelude::*;

use super::{Calculation, Input, MOST, second};
use crate::refusals::{internal, refusal};

/// The arguments of one call, as the interpreter hands them over.
#[derive(Clone, Copy)]
pub(super) struct Arguments {
    values: *const *mut ffi::PyObject,
    positional: usize,
    keywords: *mut ffi::PyObject,
    named: usize,
}

impl Arguments {
    /// How many were given without a name.
    pub(super) fn positional(&self) -> usize {
        self.positional
    }

    /// How many were given by name.
    pub(super) fn named(&self) -> usize {
        self.named
    }

    /// The value at a place; those given by name follow the others.
    pub(super) fn value(&self, index: usize) -> *mut ffi::PyObject {
        debug_assert!(index < self.positional + self.named);
        // SAFETY: the interpreter hands over this many values.
        unsafe { *self.values.add(index) }
    }

    /// The name of a value given by name, in the order of the call.
    pub(super) fn keyword(&self, index: usize) -> *mut ffi::PyObject {
        // SAFETY: `keywords` is a tuple of `named` texts when it is not NULL.
        unsafe { ffi::PyTuple_GetItem(self.keywords, index as ffi::Py_ssize_t) }
    }
}

/// What the interpreter calls.
pub(super) unsafe extern "C" fn function(
    slf: *mut ffi::PyObject,
    values: *const *mut ffi::PyObject,
    positional: ffi::Py_ssize_t,
    keywords: *mut ffi::PyObject,
) -> *mut ffi::PyObject {
    let outcome = catch_unwind(AssertUnwindSafe(|| {
        // SAFETY: the interpreter calls with itself attached.
        let py = unsafe { Python::assume_attached() };
        // SAFETY: `register` makes every function with a calculation as its self, and that lives as long as the function.
        let slf = unsafe { Borrowed::from_ptr(py, slf).cast_unchecked::<Calculation>() };
        // SAFETY: `keywords` is NULL or a tuple.
        let named = if keywords.is_null() { 0 } else { unsafe { ffi::PyTuple_Size(keywords) } };
        let arguments = Arguments {
            values,
            positional: positional.unsigned_abs(),
            keywords,
            named: named.unsigned_abs(),
        };
        match first_door(slf.get(), &arguments) {
            Some(result) => finish(result.map_err(|error| refusal(py, &error))),
            None => Python::attach(|py| finish_object(py, second::door(slf.to_owned(), &arguments))),
        }
    }));
    outcome.unwrap_or_else(|_| Python::attach(|py| finish_object(py, Err(internal(py)))))
}

fn finish(result: PyResult<f64>) -> *mut ffi::PyObject {
    match result {
        // SAFETY: the interpreter is attached.
        Ok(value) => unsafe { ffi::PyFloat_FromDouble(value) },
        Err(error) => Python::attach(|py| finish_object(py, Err(error))),
    }
}

fn finish_object(py: Python<'_>, result: PyResult<Py<PyAny>>) -> *mut ffi::PyObject {
    match result {
        Ok(object) => object.into_ptr(),
        Err(error) => {
            error.restore(py);
            ptr::null_mut()
        }
    }
}

/// The number, where every argument is an exact float or int, each input is given once and nothing else is; otherwise the
/// second door decides, and finds the words if it is a mistake.
fn first_door(calculation: &Calculation, arguments: &Arguments) -> Option<overwater::Result<f64>> {
    if arguments.positional > 1 {
        return None;
    }
    let mut values = [f64::NAN; MOST];
    let mut given = [false; MOST];
    for index in 0..arguments.positional + arguments.named {
        let place = match index.checked_sub(arguments.positional) {
            None => 0,
            Some(keyword) => place(&calculation.inputs, arguments.keyword(keyword), index)?,
        };
        let given = given.get_mut(place).filter(|given| !**given)?;
        *given = true;
        *values.get_mut(place)? = exact(arguments.value(index))?;
    }
    let inputs = &calculation.inputs;
    for ((value, given), input) in values.iter_mut().zip(given).zip(inputs) {
        if !given {
            *value = input.default?;
        }
    }
    Some(calculation.formula.number(values.get(..inputs.len())?))
}

/// Which input has this name. Keywords written in a program are interned, as the names are; most calls give them in order.
fn place(inputs: &[Input], keyword: *mut ffi::PyObject, expected: usize) -> Option<usize> {
    let is = |input: &Input| input.name.as_ptr() == keyword;
    if inputs.get(expected).is_some_and(is) { Some(expected) } else { inputs.iter().position(is) }
}

/// The number that a float or an exact int is; nothing for other types and for ints that no float can hold. NumPy's own
/// numbers of double precision are floats to Python.
pub(super) fn exact(object: *mut ffi::PyObject) -> Option<f64> {
    // SAFETY: the object lives, the interpreter is attached, and each conversion is asked only of its own type.
    unsafe {
        if is_exact(object, &raw mut ffi::PyFloat_Type) != 0 {
            return Some(ffi::PyFloat_AsDouble(object));
        }
        if is_exact(object, &raw mut ffi::PyLong_Type) == 0 {
            return (ffi::PyFloat_Check(object) != 0).then(|| ffi::PyFloat_AsDouble(object));
        }
        let value = ffi::PyLong_AsDouble(object);
        if value == -1.0 && !ffi::PyErr_Occurred().is_null() {
            ffi::PyErr_Clear();
            return None;
        }
        Some(value)
    }
}

/// # Safety
/// The object lives and the interpreter is attached.
unsafe fn is_exact(object: *mut ffi::PyObject, class: *mut ffi::PyTypeObject) -> c_int {
    // SAFETY: as above.
    c_int::from(unsafe { ffi::Py_TYPE(object) } == class)
}
