//! A concentration in the room against the limits.

use super::room::{Room, mean_falling, time_to_fall};
use crate::chem::{Formula as Chemical, Weights};
use crate::reference::airborne::Airborne;
use crate::reference::exposure_limits::{AveragedOver, EXPOSURE_LIMITS, ExposureLimit};
use crate::{Result, units};

/// The unit that a limit is compared in.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Unit {
    /// Parts in a million by volume.
    Ppm,
    /// Milligrams in a cubic metre.
    MilligramPerCubicMetre,
}

/// One limit, and what the room comes to over its time.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Check {
    /// The limit.
    pub limit: &'static ExposureLimit,
    /// The unit of the two figures.
    pub unit: Unit,
    /// The limit's figure.
    pub allowed: f64,
    /// What the room comes to, averaged over the time of the limit from the moment of the release.
    pub found: f64,
    /// Minutes until the air itself is below the figure; nothing where it never is, in a room without ventilation.
    pub minutes_until_below: Option<f64>,
    /// Volume of air that takes all of it at the figure (m3).
    pub air_needed_m3: f64,
}

impl Check {
    /// Whether the room is above the limit.
    #[must_use]
    pub fn is_exceeded(&self) -> bool {
        self.found > self.allowed
    }
}

/// The time that a limit is averaged over, in seconds.
fn seconds(over: AveragedOver) -> f64 {
    match over {
        AveragedOver::Instant => 0.0,
        AveragedOver::Minutes(minutes) => f64::from(minutes) * 60.0,
        AveragedOver::Hours(hours) => f64::from(hours) * 3600.0,
    }
}

/// What a limit counts, as a share of the mass of the substance: 1, or that of the element in `(as Mg)`.
fn counted_share(limit: &ExposureLimit, formula: &str) -> Result<f64> {
    let Some((_, rest)) = limit.substance.split_once("(as ") else { return Ok(1.0) };
    let element = rest.trim_end_matches(')');
    let whole = Chemical::parse(formula)?;
    let count = whole.composition().iter().find(|(atom, _)| atom.symbol() == element).map(|(_, count)| count);
    let one = Chemical::parse(element)?.molar_mass(Weights::Exact)?.value_g_per_mol;
    Ok(count.map_or(0.0, |count| count.to_f64()) * one / whole.molar_mass(Weights::Exact)?.value_g_per_mol)
}

/// Every limit for a product, against the concentrations at the start.
pub(super) fn checks(
    airborne: &Airborne,
    room: &Room,
    peak_ppm: Option<f64>,
    peak_mg_per_m3: f64,
) -> Result<Vec<Check>> {
    let changes = room.changes_per_second();
    let mut found = Vec::new();
    for limit in EXPOSURE_LIMITS.iter().filter(|limit| limit.cas == airborne.cas) {
        let (unit, allowed, peak) = match (limit.ppm, peak_ppm, limit.mg_per_m3) {
            (Some(allowed), Some(peak), _) => (Unit::Ppm, allowed, peak),
            (_, _, Some(allowed)) => {
                let share = counted_share(limit, airborne.counted_as.0)?;
                (Unit::MilligramPerCubicMetre, allowed, peak_mg_per_m3 * share)
            }
            _ => continue,
        };
        let mean = mean_falling(changes, seconds(limit.averaged_over));
        found.push(Check {
            limit,
            unit,
            allowed,
            found: peak * mean,
            minutes_until_below: time_to_fall(changes, allowed / peak)
                .map(|seconds| seconds / units::MINUTE.si),
            air_needed_m3: room.volume_m3 * peak / allowed,
        });
    }
    Ok(found)
}
