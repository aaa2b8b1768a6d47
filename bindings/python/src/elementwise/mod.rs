//! Functions that take a number or an array: one for each formula of the core's catalogue.
//!
//! A function has two doors. Exact Python floats and ints go straight to the core ([`call`]); anything else goes through a
//! `numpy.ufunc` ([`ufunc`]) whose loop hands columns to the core ([`sweep`]).

mod call;
mod docs;
mod floating;
mod overlap;
mod second;
mod sweep;
mod ufunc;

use std::ffi::CString;

use overwater::bounds::Bound as Limits;
use overwater::catalogue::{self, AnyFormula};
use overwater_exchange::calculation::result_name;
use pyo3::exceptions::PyRuntimeError;
use pyo3::ffi;
use pyo3::prelude::*;
use pyo3::sync::PyOnceLock;
use pyo3::types::{PyDict, PyString};

/// More inputs than any formula has.
pub(crate) const MOST: usize = 8;

/// One input of a function.
struct Input {
    limits: &'static Limits,
    /// The name, interned, so that a keyword is usually found by comparing pointers.
    name: Py<PyString>,
    default: Option<f64>,
}

/// A formula of the catalogue, as the functions know it; `function.__self__` is one.
#[pyclass(frozen, module = "overwater._native")]
pub(crate) struct Calculation {
    /// Lives as long as the process: NumPy keeps a pointer to it.
    formula: &'static dyn AnyFormula,
    inputs: Vec<Input>,
    ufunc: PyOnceLock<Py<PyAny>>,
}

#[pymethods]
impl Calculation {
    /// The name of the function.
    #[getter]
    fn name(&self) -> &str {
        self.formula.name()
    }

    /// The unit of the result; empty for a plain number.
    #[getter]
    fn unit(&self) -> &'static str {
        self.formula.output().unit.text
    }

    /// The name of the result, with its unit at the end.
    #[getter]
    fn result(&self) -> String {
        result_name(self.formula.output())
    }

    /// What the result is, in words.
    #[getter]
    fn words(&self) -> &'static str {
        self.formula.output().name
    }

    /// Where the relation comes from.
    #[getter]
    fn source(&self) -> &'static str {
        self.formula.output().source.map_or("", |source| source.text)
    }

    /// The inputs in order: name, unit, least, greatest, why, default.
    #[getter]
    fn inputs<'py>(&self, py: Python<'py>) -> PyResult<Vec<Bound<'py, PyDict>>> {
        self.inputs
            .iter()
            .map(|input| {
                let row = PyDict::new(py);
                row.set_item("name", input.limits.name)?;
                row.set_item("words", input.limits.symbol.name)?;
                row.set_item("unit", input.limits.symbol.unit.text)?;
                row.set_item("least", input.limits.least)?;
                row.set_item("greatest", input.limits.greatest)?;
                row.set_item("why", input.limits.why)?;
                row.set_item("default", input.default)?;
                Ok(row)
            })
            .collect()
    }

    /// The function for arrays.
    #[getter(ufunc)]
    fn get_ufunc(&self, py: Python<'_>) -> PyResult<Py<PyAny>> {
        Ok(self.ufunc(py)?.clone_ref(py))
    }

    /// A pickled function is found again by its name in the package.
    fn __reduce__(slf: &Bound<'_, Self>) -> PyResult<(Py<PyAny>, (&'static str,))> {
        let import = slf.py().import("importlib")?.getattr("import_module")?;
        Ok((import.unbind(), ("overwater",)))
    }

    fn __repr__(&self) -> String {
        format!("<calculation {}>", self.formula.name())
    }
}

impl Calculation {
    /// The function for arrays; made, and NumPy imported, when it is first asked for.
    fn ufunc(&self, py: Python<'_>) -> PyResult<&Py<PyAny>> {
        self.ufunc.get_or_try_init(py, || ufunc::make(py, self))
    }
}

fn calculation(py: Python<'_>, formula: Box<dyn AnyFormula>) -> Calculation {
    let formula: &'static dyn AnyFormula = Box::leak(formula);
    let inputs = formula
        .inputs()
        .into_iter()
        .map(|limits| Input {
            limits,
            name: PyString::intern(py, limits.name).unbind(),
            default: limits.where_unsaid(),
        })
        .collect();
    Calculation { formula, inputs, ufunc: PyOnceLock::new() }
}

fn c_string(text: String) -> PyResult<*const std::ffi::c_char> {
    let text =
        CString::new(text).map_err(|_| PyRuntimeError::new_err("a text of the catalogue holds NUL"))?;
    Ok(text.into_raw().cast_const())
}

/// Adds every function to the module, and the list of their names.
pub(crate) fn register(module: &Bound<'_, PyModule>) -> PyResult<()> {
    let py = module.py();
    let package = PyString::intern(py, "overwater");
    let mut names = Vec::new();
    for formula in catalogue::all() {
        let calculation = calculation(py, formula);
        if calculation.inputs.len() > MOST {
            return Err(PyRuntimeError::new_err(format!(
                "{} has more than {MOST} inputs",
                calculation.name()
            )));
        }
        let name = calculation.formula.name().to_owned();
        let definition = Box::leak(Box::new(ffi::PyMethodDef {
            ml_name: c_string(name.clone())?,
            ml_meth: ffi::PyMethodDefPointer { PyCFunctionFastWithKeywords: call::function },
            ml_flags: ffi::METH_FASTCALL | ffi::METH_KEYWORDS,
            ml_doc: c_string(docs::text(&calculation))?,
        }));
        let calculation = Bound::new(py, calculation)?;
        // SAFETY: the definition and its texts live as long as the process; the other two are objects that live, and the
        // new function takes references of its own.
        let function = unsafe {
            let function = ffi::PyCFunction_NewEx(definition, calculation.as_ptr(), package.as_ptr());
            Bound::from_owned_ptr_or_err(py, function)?
        };
        module.add(name.as_str(), function)?;
        names.push(name);
    }
    module.add_class::<Calculation>()?;
    module.add("FUNCTIONS", pyo3::types::PyTuple::new(py, names)?)
}
