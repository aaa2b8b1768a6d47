//! The second door: everything that is not an exact Python number, and every mistake in a call.

use numpy::{PyUntypedArray, PyUntypedArrayMethods};
use overwater::{Code, Error, nearest};
use pyo3::exceptions::PyValueError;
use pyo3::prelude::*;
use pyo3::sync::PyOnceLock;
use pyo3::types::{PyDict, PyString, PyTuple};

use super::call::{Arguments, exact};
use super::docs::HANDED_ON;
use super::{Calculation, MOST};
use crate::refusals::{refusal, type_error};

/// What the Python half says about arguments.
fn arguments_module(py: Python<'_>) -> PyResult<&Bound<'_, PyModule>> {
    static MODULE: PyOnceLock<Py<PyModule>> = PyOnceLock::new();
    let module =
        MODULE.get_or_try_init(py, || Ok::<_, PyErr>(py.import("overwater._arguments")?.unbind()))?;
    Ok(module.bind(py))
}

/// Sorts the arguments, refuses by name what is no number, and hands the rest to the ufunc untouched.
pub(super) fn door(slf: Bound<'_, Calculation>, arguments: &Arguments) -> PyResult<Py<PyAny>> {
    let py = slf.py();
    let calculation = slf.get();
    let sorted = sort(py, calculation, arguments)?;
    let values: Vec<Bound<'_, PyAny>> = calculation
        .inputs
        .iter()
        .zip(sorted.values)
        .map(|(input, value)| match (value, input.default) {
            (Some(value), _) => checked(value, input.limits.name, input.limits.symbol.unit.text),
            (None, Some(default)) => Ok(default.into_pyobject(py)?.into_any()),
            (None, None) => Err(type_error(format!(
                "{}() is missing the argument {}",
                calculation.name(),
                input.limits.name
            ))),
        })
        .collect::<PyResult<_>>()?;

    // What was a number in other clothes, such as a quantity with a unit, has become an exact one.
    let numbers: Option<Vec<f64>> = values.iter().map(|value| exact(value.as_ptr())).collect();
    if let Some(numbers) = numbers.filter(|_| sorted.others.is_empty()) {
        let number = calculation.formula.number(&numbers).map_err(|error| refusal(py, &error))?;
        return Ok(number.into_pyobject(py)?.into_any().unbind());
    }

    let values = PyTuple::new(py, values)?;
    let ufunc = calculation.ufunc(py)?.bind(py);
    let result = match ufunc.call(&values, Some(&sorted.others)) {
        Err(error) if error.is_instance_of::<PyValueError>(py) => {
            let names: Vec<&str> = calculation.inputs.iter().map(|input| input.limits.name).collect();
            return match arguments_module(py)?.getattr("shapes_that_differ")?.call1((names, &values)) {
                Ok(words) if !words.is_none() => {
                    Err(refusal(py, &shapes(calculation, &words.extract::<String>()?)))
                }
                _ => Err(error),
            };
        }
        result => result?,
    };
    if result.is_exact_instance_of::<PyUntypedArray>() || exact(result.as_ptr()).is_some() {
        return Ok(result.unbind());
    }
    let finish = arguments_module(py)?.getattr("named_result")?;
    Ok(finish.call1((result, calculation.result(), calculation.unit(), &values))?.unbind())
}

fn shapes(calculation: &Calculation, words: &str) -> Error {
    Error::new(Code::Contradiction, calculation.formula.name().to_owned())
        .value(words)
        .allowed("shapes that broadcast together")
        .advice("give arrays of one length, or a number for what is the same in every row")
}

struct Sorted<'py> {
    values: [Option<Bound<'py, PyAny>>; MOST],
    others: Bound<'py, PyDict>,
}

fn sort<'py>(py: Python<'py>, calculation: &Calculation, arguments: &Arguments) -> PyResult<Sorted<'py>> {
    let name = calculation.formula.name();
    if arguments.positional() > 1 {
        let rest: Vec<&str> = calculation.inputs.iter().skip(1).map(|input| input.limits.name).collect();
        return Err(type_error(match rest.is_empty() {
            true => format!("{name}() takes one argument"),
            false => format!("{name}() takes one argument without a name; give {} by name", rest.join(", ")),
        }));
    }
    let mut sorted = Sorted { values: Default::default(), others: PyDict::new(py) };
    for index in 0..arguments.positional() + arguments.named() {
        // SAFETY: the interpreter keeps the arguments alive during the call.
        let value = unsafe { Bound::from_borrowed_ptr(py, arguments.value(index)) };
        let Some(keyword) = index.checked_sub(arguments.positional()) else {
            if let Some(first) = sorted.values.first_mut() {
                *first = Some(value);
            }
            continue;
        };
        // SAFETY: as above; the names of keywords are texts.
        let keyword =
            unsafe { Bound::from_borrowed_ptr(py, arguments.keyword(keyword)) }.cast_into::<PyString>()?;
        let text = keyword.to_cow()?;
        let place = calculation.inputs.iter().position(|input| input.limits.name == text);
        match place.and_then(|place| sorted.values.get_mut(place)) {
            Some(Some(_)) => return Err(type_error(format!("{name}() was given {text} twice"))),
            Some(empty) => *empty = Some(value),
            None if HANDED_ON.iter().any(|(known, _)| *known == text) => {
                sorted.others.set_item(&keyword, value)?
            }
            None => return Err(unknown(calculation, &text)),
        }
    }
    Ok(sorted)
}

fn unknown(calculation: &Calculation, keyword: &str) -> PyErr {
    let inputs = calculation.inputs.iter().map(|input| input.limits.name);
    let known: Vec<&str> = inputs.chain(HANDED_ON.iter().map(|(name, _)| *name)).collect();
    let hint = match nearest(keyword, known.iter().copied()) {
        Some(near) => format!("did you mean {near}?"),
        None => format!("it has {}", known.join(", ")),
    };
    type_error(format!("{}() has no argument {keyword}; {hint}", calculation.formula.name()))
}

/// The value as the ufunc shall see it; a plain array of numbers is not touched at all.
fn checked<'py>(value: Bound<'py, PyAny>, name: &str, unit: &str) -> PyResult<Bound<'py, PyAny>> {
    if exact(value.as_ptr()).is_some() {
        return Ok(value);
    }
    let py = value.py();
    // Only where NumPy is there already: a refusal of None should not pay for its import.
    static LOADED: PyOnceLock<()> = PyOnceLock::new();
    let loaded = LOADED.get(py).is_some() || {
        let modules = py.import("sys")?.getattr("modules")?;
        let loaded = modules.contains("numpy.linalg")?;
        if loaded {
            let _ = LOADED.set(py, ());
        }
        loaded
    };
    if loaded
        && value.is_exact_instance_of::<PyUntypedArray>()
        && let Ok(array) = value.cast::<PyUntypedArray>()
        && matches!(numpy::PyArrayDescrMethods::kind(&array.dtype()), b'f' | b'i' | b'u')
        // Numbers of more than double precision would be cut.
        && numpy::PyArrayDescrMethods::itemsize(&array.dtype()) <= 8
    {
        return Ok(value);
    }
    arguments_module(py)?.getattr("checked")?.call1((value, name, unit))
}
