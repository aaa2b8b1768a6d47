//! One preparation in time: what is added when, how fast the gas comes, how hot it gets, what each vessel holds, and
//! what goes wrong.
//!
//! [`simulate`] follows a [`Run`]; [`sensitivities`] tells how its outcome moves with what goes in; [`advise`] looks
//! for portions and times that stay within limits; [`calibrate`] finds how active a catalyst is from one trial.

mod advice;
mod calibration;
mod course;
mod events;
mod given;
mod model;
mod outcome;
mod packed;
mod sensitivities;
mod simulation;
mod solver;
mod stand;

pub use advice::{Advice, Limits, advise};
pub use calibration::{Calibration, TrialReading, calibrate};
pub use given::{Addition, Run, RunVessel};
pub use outcome::{Event, Happening, Point, RunResult, VesselOutcome};
pub use sensitivities::{RunSensitivities, SENSITIVE_TO, sensitivities};
pub use simulation::simulate;
