//! A `numpy.ufunc` for a formula, made while the program runs.

use std::ffi::{c_char, c_int, c_void};
use std::panic::{AssertUnwindSafe, catch_unwind};

use numpy::npyffi::{NPY_TYPES, PY_UFUNC_API, PyUFuncGenericFunction, npy_intp};
use overwater::catalogue::AnyFormula;
use pyo3::prelude::*;

use super::overlap::{Column, Columns};
use super::{Calculation, MOST, c_string, docs, floating, sweep};

/// NumPy's number for "has no identity element".
const NO_IDENTITY: c_int = -1;

/// What NumPy hands back to the loop.
struct Loop {
    formula: &'static dyn AnyFormula,
    inputs: usize,
}

/// Makes the ufunc; NumPy is imported for it.
pub(super) fn make(py: Python<'_>, calculation: &Calculation) -> PyResult<Py<PyAny>> {
    py.import("numpy")?;
    let inputs = calculation.inputs.len();
    // NumPy copies none of these and never frees a ufunc's tables: they live as long as the process.
    let data: *mut Loop = Box::leak(Box::new(Loop { formula: calculation.formula, inputs }));
    let datas: &'static mut [*mut c_void] = Box::leak(Box::new([data.cast()]));
    let loops: &'static mut [PyUFuncGenericFunction] = Box::leak(Box::new([Some(inner_loop as _)]));
    let types: &'static mut [c_char] =
        Box::leak(vec![NPY_TYPES::NPY_DOUBLE as c_char; inputs + 1].into_boxed_slice());
    let name = c_string(calculation.formula.name().to_owned())?;
    let doc = c_string(docs::text(calculation))?;
    // SAFETY: the tables hold one loop of `inputs` + 1 types and outlive the ufunc.
    let ufunc = unsafe {
        let ufunc = PY_UFUNC_API.PyUFunc_FromFuncAndData(
            py,
            loops.as_mut_ptr(),
            datas.as_mut_ptr(),
            types.as_mut_ptr(),
            1,
            inputs as c_int,
            1,
            NO_IDENTITY,
            name,
            doc,
            0,
        );
        Bound::from_owned_ptr_or_err(py, ufunc)?
    };
    // A ufunc is pickled by its name, and found again in this module.
    py.import("overwater.ufuncs")?.setattr(calculation.formula.name(), &ufunc)?;
    Ok(ufunc.unbind())
}

/// The loop that NumPy calls, without the interpreter.
unsafe extern "C" fn inner_loop(
    pointers: *mut *mut c_char,
    lengths: *mut npy_intp,
    steps: *mut npy_intp,
    data: *mut c_void,
) {
    // SAFETY: NumPy hands back what `make` gave it.
    let Loop { formula, inputs } = unsafe { &*data.cast::<Loop>() };
    // SAFETY: NumPy gives one length, and a pointer and a step for each input and for the output, in this order.
    let (rows, column) = unsafe {
        let column = |index: usize| Column { start: (*pointers.add(index)).cast(), step: *steps.add(index) };
        (*lengths as usize, column)
    };
    if rows == 0 {
        return;
    }
    let output = column(*inputs);
    let mut columns = Columns { inputs: [output; MOST], count: *inputs, output };
    for (index, input) in columns.inputs.iter_mut().enumerate().take(*inputs) {
        *input = column(index);
    }
    floating::only_told(|| {
        // SAFETY: NumPy holds the arrays during the loop.
        let work = || unsafe { sweep::sweep(*formula, &columns, rows) };
        // A panic would be a fault of ours; the rows are then as NumPy left them, and marked invalid.
        catch_unwind(AssertUnwindSafe(work)).unwrap_or(true)
    });
}
