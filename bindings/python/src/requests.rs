//! A request in JSON to an answer in JSON, what the sheet prints of an answer, and the program.

use std::ffi::OsString;
use std::ops::RangeInclusive;

use overwater::{Code, Error};
use overwater_exchange::Refusal;
use overwater_exchange::after::answer::{InWaterAnswer, RoomAirAnswer};
use overwater_exchange::answer::PlanAnswer;
use overwater_exchange::burn::answer::SampleBurnAnswer;
use overwater_exchange::calculation::CalculationAnswer;
use overwater_exchange::propagation::answer::PropagationAnswer;
use overwater_exchange::rate::answer::RateAnswer;
use overwater_exchange::reduction::answer::ReductionAnswer;
use overwater_exchange::run::answer::{CalibrationAnswer, RunAnswer};
use overwater_exchange::schedule::ScheduleAnswer;
use overwater_sheet::{Figures, WorkingFormat};
use pyo3::exceptions::PyValueError;
use pyo3::prelude::*;
use serde::Serialize;
use serde::de::DeserializeOwned;

use crate::refusals::{caught, refusal, refused};

/// Answers a request in JSON; a refusal is an answer too.
#[pyfunction]
fn respond(py: Python<'_>, request: &[u8]) -> String {
    py.detach(|| overwater_exchange::respond(request))
}

/// The names of all tasks that `respond` knows.
#[pyfunction]
fn tasks() -> Vec<&'static str> {
    overwater_exchange::respond::names().collect()
}

/// What the program prints of an answer, given as the JSON of its `answer`; nothing for a task that has no sheet.
#[pyfunction]
fn sheet(py: Python<'_>, task: &str, answer: &str, width: i64) -> PyResult<Option<String>> {
    caught(py, || {
        let width = columns(width).map_err(|error| refusal(py, &error))?;
        sheet_of(py, task, answer, width)
    })
}

/// A width that a sheet can have.
fn columns(width: i64) -> Result<usize, Error> {
    usize::try_from(width).ok().filter(|width| WIDTHS.contains(width)).ok_or_else(|| {
        Error::new(Code::OutOfRange, "width")
            .value(format!("{width} columns"))
            .allowed(format!("{} to {} columns", WIDTHS.start(), WIDTHS.end()))
            .advice("a terminal has 80")
    })
}

/// Columns of a sheet: fewer hold no word, more nobody reads.
const WIDTHS: RangeInclusive<usize> = 20..=1000;

fn sheet_of(py: Python<'_>, task: &str, answer: &str, width: usize) -> PyResult<Option<String>> {
    let text = py.detach(|| {
        Ok(Some(match task {
            "plan" => overwater_sheet::terminal(&read::<PlanAnswer>(answer)?, width),
            "run" => overwater_sheet::run(&read::<RunAnswer>(answer)?, width),
            "calibrate" => overwater_sheet::calibration(&read::<CalibrationAnswer>(answer)?, width),
            "burn" => overwater_sheet::burn(&read::<SampleBurnAnswer>(answer)?, width),
            "dissolve" => overwater_sheet::in_water(&read::<InWaterAnswer>(answer)?, width),
            "air" => overwater_sheet::room_air(&read::<RoomAirAnswer>(answer)?, width),
            "schedule" => overwater_sheet::timeline(&read::<ScheduleAnswer>(answer)?, width),
            "reduce" => {
                overwater_sheet::results(&read::<ReductionAnswer>(answer)?, width, Figures::Number(FIGURES))
            }
            "rate" => overwater_sheet::rates(&read::<RateAnswer>(answer)?, width, FIGURES),
            "propagate" => overwater_sheet::propagation(&read::<PropagationAnswer>(answer)?, width),
            "calculate" => working(answer, WorkingFormat::Text)?,
            _ => return Ok(None),
        }))
    });
    text.map_err(|error: serde_json::Error| {
        PyValueError::new_err(format!("not an answer to {task}: {error}"))
    })
}

/// The worked solution of an answer to `calculate`, as a piece of HTML.
#[pyfunction]
fn working_html(py: Python<'_>, answer: &str) -> PyResult<String> {
    caught(py, || {
        working(answer, WorkingFormat::Html)
            .map_err(|error| PyValueError::new_err(format!("not an answer to calculate: {error}")))
    })
}

fn working(answer: &str, format: WorkingFormat) -> serde_json::Result<String> {
    Ok(overwater_sheet::working(&read::<CalculationAnswer>(answer)?.steps, &[], format))
}

/// Significant figures of results, as the program prints them where it is not told otherwise.
const FIGURES: usize = 3;

fn read<Answer: DeserializeOwned>(answer: &str) -> serde_json::Result<Answer> {
    serde_json::from_str(answer)
}

/// A file in TOML as the JSON of a request to `plan`, `run` or `burn`.
#[pyfunction]
fn request_from_toml(py: Python<'_>, task: &str, text: &str) -> PyResult<String> {
    fn written<Request: Serialize>(read: Result<Request, Box<Refusal>>) -> Result<String, Box<Refusal>> {
        // What was read from a text can be written again.
        read.map(|request| serde_json::to_string(&request).unwrap_or_default())
    }
    caught(py, || {
        let request = match task {
            "plan" => written(overwater_exchange::lesson_from_toml(text)),
            "run" => written(overwater_exchange::run_from_toml(text)),
            "burn" => written(overwater_exchange::burn_from_toml(text)),
            _ => return Err(PyValueError::new_err(format!("{task} is not read from a file"))),
        };
        request.map_err(|refusal| refused(py, &refusal))
    })
}

/// Runs the program `overwater` with its arguments, the first of which is its name, and gives its exit code.
#[pyfunction]
fn run_program(py: Python<'_>, arguments: Vec<OsString>) -> PyResult<u8> {
    caught(py, || Ok(py.detach(|| overwater_cli::run(arguments))))
}

pub(crate) fn register(module: &Bound<'_, PyModule>) -> PyResult<()> {
    module.add_function(wrap_pyfunction!(respond, module)?)?;
    module.add_function(wrap_pyfunction!(tasks, module)?)?;
    module.add_function(wrap_pyfunction!(sheet, module)?)?;
    module.add_function(wrap_pyfunction!(working_html, module)?)?;
    module.add_function(wrap_pyfunction!(request_from_toml, module)?)?;
    module.add_function(wrap_pyfunction!(run_program, module)?)
}
