//! How active a catalyst is, from one trial run.
//!
//! For a first-order catalyst the gas follows V = V∞ (1 - exp(-κ τ)) with κ = k(20 degC) m/V(liquid) and the time as it
//! would be at 20 degC, τ = ∫ exp(-E/R (1/T - 1/293.15 K)) dt. V∞ enters linearly and is eliminated; κ is found
//! by minimising what is left.

use crate::bounds::{self, Bound};
use crate::peroxide::kinetics::{STATED_AT_K, arrhenius};
use crate::{Code, Error, Result};

/// One reading of a trial.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct TrialReading {
    /// Time since the peroxide was added (s).
    pub time_s: f64,
    /// Gas collected since then (cm3).
    pub volume_cm3: f64,
    /// Temperature of the flask, if read; otherwise it is taken as the trial's (degC).
    pub temperature_c: Option<f64>,
}

/// What a trial says.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Calibration {
    /// Rate constant at 20 degC for the catalyst of the trial, ready for a first-order law (m3/(kg s)).
    pub k_at_20: f64,
    /// Its standard uncertainty, from the scatter of the readings (m3/(kg s)).
    pub standard_uncertainty: f64,
    /// Half the width of its 95 % interval, by Student's t (m3/(kg s)).
    pub half_width_95: f64,
    /// Final volume of gas (cm3).
    pub final_volume_cm3: f64,
    /// Scatter of the readings about the curve (cm3).
    pub scatter_cm3: f64,
    /// Degrees of freedom.
    pub degrees_of_freedom: usize,
}

/// Student's t for 95 %, two-sided: the expansion in 1/ν of Abramowitz and Stegun 1964, equation 26.7.5, about the
/// normal quantile; within 1 % from ν = 3.
fn student_95(degrees: f64) -> f64 {
    let z = 1.959_963_984_540_054_f64;
    let z2 = z * z;
    let g1 = z * (z2 + 1.0) / 4.0;
    let g2 = z * ((5.0 * z2 + 16.0) * z2 + 3.0) / 96.0;
    let g3 = z * (((3.0 * z2 + 19.0) * z2 + 17.0) * z2 - 15.0) / 384.0;
    z + (g1 + (g2 + g3 / degrees) / degrees) / degrees
}

/// Sums of the best fit at one κ: the residual sum of squares and V∞.
fn left(taus: &[f64], volumes: &[f64], kappa: f64) -> (f64, f64) {
    let shape = |tau: f64| -f64::exp_m1(-kappa * tau);
    let (mut up, mut down) = (0.0, 0.0);
    for (tau, volume) in taus.iter().zip(volumes) {
        up += shape(*tau) * volume;
        down += shape(*tau) * shape(*tau);
    }
    let end = up / down;
    let sum = taus.iter().zip(volumes).map(|(tau, v)| (v - end * shape(*tau)).powi(2)).sum();
    (sum, end)
}

/// k at 20 degC from the readings of one trial with `catalyst_g` in `liquid_cm3` of liquid. `activation` is the
/// activation energy (J/mol), used only where the temperature is not 20 degC; `temperature_c` is that of the flask
/// wherever a reading has none.
///
/// ```
/// use overwater::apparatus::run::{TrialReading, calibrate};
/// let readings: Vec<TrialReading> = (1..=10)
///     .map(|i| f64::from(i) * 30.0)
///     .map(|t| TrialReading { time_s: t, volume_cm3: 100.0 * (1.0 - (-0.01 * t).exp()), temperature_c: None })
///     .collect();
/// let found = calibrate(&readings, 0.4, 30.0, 50_000.0, 20.0)?;
/// // 0.01 per second x 30e-6 m3 / 0.4e-3 kg.
/// assert!((found.k_at_20 / 7.5e-4 - 1.0).abs() < 1e-6);
/// # Ok::<(), overwater::Error>(())
/// ```
///
/// # Errors
/// `missing` for fewer than five readings; `not_a_number`, `out_of_range` or `contradiction` naming the reading that is
/// not a number, out of order or out of range; `cannot_be_met` for readings that show no curve.
pub fn calibrate(
    readings: &[TrialReading],
    catalyst_g: f64,
    liquid_cm3: f64,
    activation: f64,
    temperature_c: f64,
) -> Result<Calibration> {
    if readings.len() < 5 {
        return Err(Error::new(Code::Missing, "readings")
            .value(format!("{} readings", readings.len()))
            .allowed("5 readings or more")
            .advice("read the volume more often"));
    }
    let needs = [
        (&bounds::CATALYST_G, "catalyst_g", catalyst_g),
        (&bounds::ADDITION_CM3, "liquid_cm3", liquid_cm3),
        (&bounds::ACTIVATION_J_PER_MOL, "activation_j_per_mol", activation),
        (&bounds::TEMPERATURE_C, "temperature_c", temperature_c),
    ];
    for (bound, name, value) in needs {
        bound.check(value).map_err(|error| Error { parameter: name.into(), ..error })?;
    }
    let (mut taus, mut volumes) = (Vec::new(), Vec::new());
    let faster = |celsius: f64| arrhenius(activation, celsius + 273.15, STATED_AT_K);
    let (mut before, mut tau) = (0.0, 0.0);
    let mut pace = faster(readings.first().and_then(|first| first.temperature_c).unwrap_or(temperature_c));
    for (index, reading) in readings.iter().enumerate() {
        let named = |field: &str| format!("readings[{index}].{field}");
        let check = |bound: &Bound, field: &str, value: f64| {
            bound.check(value).map_err(|error| Error { parameter: named(field).into(), ..error })
        };
        check(&bounds::TIME_S, "time_s", reading.time_s)?;
        check(&bounds::TRIAL_VOLUME_CM3, "volume_cm3", reading.volume_cm3)?;
        let celsius = reading.temperature_c.unwrap_or(temperature_c);
        check(&bounds::TEMPERATURE_C, "temperature_c", celsius)?;
        if index > 0 && reading.time_s <= before {
            return Err(Error::new(Code::Contradiction, named("time_s"))
                .value(format!("{} s", reading.time_s))
                .allowed(format!("later than {before} s"))
                .advice("give the readings in order of time, each time once"));
        }
        let now = faster(celsius);
        tau += (reading.time_s - before) * 0.5 * (pace + now);
        (before, pace) = (reading.time_s, now);
        taus.push(tau);
        volumes.push(reading.volume_cm3);
    }
    // A coarse look over eight powers of ten, then golden-section steps in ln κ: a fixed number of both.
    let longest = tau.max(1e-9);
    let at = |log: f64| left(&taus, &volumes, log.exp() / longest).0;
    let grid = |i: i32| -5.0 + 0.3 * f64::from(i);
    let best = (0..=40).min_by(|a, b| at(grid(*a)).total_cmp(&at(grid(*b)))).unwrap_or(0);
    if best == 0 || best == 40 {
        return Err(Error::new(Code::CannotBeMet, "readings").advice(
            "the readings show no curve that levels off: read more often at the start, and to the end",
        ));
    }
    let (mut low, mut high) = (grid(best - 1), grid(best + 1));
    let golden = 0.618_033_988_749_894_9;
    for _ in 0..64 {
        let (one, two) = (high - golden * (high - low), low + golden * (high - low));
        if at(one) < at(two) {
            high = two;
        } else {
            low = one;
        }
    }
    let kappa = (0.5 * (low + high)).exp() / longest;
    let (sum, end) = left(&taus, &volumes, kappa);
    let degrees = readings.len() - 2;
    let scatter = (sum / degrees as f64).sqrt();
    // Covariance of (V∞, κ) from the normal equations of the curve's two slopes.
    let (mut aa, mut ab, mut bb) = (0.0, 0.0, 0.0);
    for tau in &taus {
        let (a, b) = (-f64::exp_m1(-kappa * tau), end * tau * (-kappa * tau).exp());
        aa += a * a;
        ab += a * b;
        bb += b * b;
    }
    let uncertainty = scatter * (aa / (aa * bb - ab * ab)).sqrt();
    let to_k = liquid_cm3 * 1e-6 / (catalyst_g * 1e-3);
    if !(uncertainty.is_finite() && end > 0.0) {
        return Err(Error::new(Code::CannotBeMet, "readings")
            .advice("no gas that levels off can be read out of these"));
    }
    Ok(Calibration {
        k_at_20: kappa * to_k,
        standard_uncertainty: uncertainty * to_k,
        half_width_95: uncertainty * to_k * student_95(degrees as f64),
        final_volume_cm3: end,
        scatter_cm3: scatter,
        degrees_of_freedom: degrees,
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn students_t_as_tables_print_it() {
        // Any table of Student's t, two-sided 95 %.
        for (degrees, expected) in [(10.0, 2.228), (18.0, 2.101), (30.0, 2.042), (1e6, 1.960)] {
            assert!((student_95(degrees) - expected).abs() < 6e-4, "{degrees}: {}", student_95(degrees));
        }
    }
}
