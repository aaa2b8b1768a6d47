//! How the outcome of a run moves with what goes in.

use super::course::Course;
use super::given::Run;
use super::model::STATES;
use super::simulation::guarded;
use crate::Result;
use crate::scalar::Sensitivities;

/// What the outcome of a run is differentiated by, with the units of the derivatives.
pub const SENSITIVE_TO: [&str; 8] = [
    "kinetics.k_at_20 (relative)",
    "kinetics.activation [kJ/mol]",
    "catalyst_g (relative)",
    "concentration (relative)",
    "heat_loss_w_per_k [W/K]",
    "flask_cm3 [cm3]",
    "pressure_kpa [kPa]",
    "glass_j_per_k [J/K]",
];
const INPUTS: usize = SENSITIVE_TO.len();

/// How the outcome moves with each of [`SENSITIVE_TO`].
#[derive(Debug, Clone, PartialEq)]
pub struct RunSensitivities {
    /// Derivatives of the time at which the last vessel is full; nothing where it is not (s).
    pub filled_at_s: Option<[f64; INPUTS]>,
    /// Derivatives of the highest temperature (K).
    pub top_temperature: [f64; INPUTS],
    /// Derivatives of the oxygen fraction of each vessel.
    pub oxygen_fraction: Vec<[f64; INPUTS]>,
}

/// Exact first derivatives of a run's outcome: the equations are integrated together with their derivatives, and events
/// move with the inputs. What is poured moves only in its strength. A stem that overtops keeps its greatest flow.
///
/// # Errors
/// As for [`simulate`](super::simulate).
pub fn sensitivities(run: &Run) -> Result<RunSensitivities> {
    const NUMBERS: usize = STATES * (INPUTS + 1);
    run.check()?;
    let traced = guarded(|| Course::<Sensitivities<INPUTS>, NUMBERS>::new(run).all())?;
    Ok(RunSensitivities {
        filled_at_s: traced.vessels.last().and_then(|(full, _)| *full).map(|time| time.derivatives()),
        top_temperature: traced.top.derivatives(),
        oxygen_fraction: traced.vessels.iter().map(|(_, fraction)| fraction.derivatives()).collect(),
    })
}
