//! How much sample to take.

use crate::burn::{Fuel, Jar, answers, sample_for_oxygen};
use crate::reference::burns::FLAME_LIMIT_FRACTION;
use crate::units::{Dimensioned, GRAM, Moles};
use crate::{Result, bounds};

/// How much sample uses a chosen share of a jar's oxygen.
#[derive(Debug, Clone, PartialEq)]
pub struct SampleAdvice {
    /// The share of the oxygen.
    pub share: f64,
    /// Mass to take, in g; by the answer that needs the most oxygen.
    pub mass_g: f64,
    /// Which length of ribbon or wire that is, in cm; nothing where its mass for each metre was not given.
    pub length_cm: Option<f64>,
}

/// Why no sample is advised.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum NoAdvice {
    /// Pupils must not burn it.
    NotForPupils,
    /// The jar holds less oxygen than a flame needs.
    GoesOut,
}

/// The mass of a fuel that uses `share` of a jar's oxygen, and with a weighed mass for each metre the length of ribbon or
/// wire; or why none is advised.
///
/// ```
/// use overwater::burn::{Fuel, Jar, NoAdvice, sample_advice};
/// let jar = Jar { volume_cm3: 250.0, temperature_c: 20.0, pressure_kpa: 101.325, oxygen_fraction: 1.0 };
/// // 10.15 mmol burn at most 0.494 g of magnesium; a fifth is 0.099 g, 12.1 cm of ribbon of 0.816 g/m.
/// let ribbon = sample_advice(&Fuel::find("Mg")?, &jar, 0.2, Some(0.816))?.unwrap();
/// assert!((ribbon.mass_g - 0.0987).abs() < 1e-4);
/// assert!((ribbon.length_cm.unwrap() - 12.1).abs() < 0.05);
/// assert_eq!(sample_advice(&Fuel::find("K")?, &jar, 0.2, None)?, Err(NoAdvice::NotForPupils));
/// # Ok::<(), overwater::Error>(())
/// ```
///
/// # Errors
/// `out_of_range` for the share, the mass for each metre and the jar.
pub fn sample_advice(
    fuel: &Fuel,
    jar: &Jar,
    share: f64,
    g_per_m: Option<f64>,
) -> Result<std::result::Result<SampleAdvice, NoAdvice>> {
    bounds::SHARE_OF_OXYGEN.check(share)?;
    if let Some(given) = g_per_m {
        bounds::MASS_PER_LENGTH_G_PER_M.check(given)?;
    }
    let inside = jar.contents()?;
    if fuel.restriction.is_some() {
        return Ok(Err(NoAdvice::NotForPupils));
    }
    if jar.oxygen_fraction < FLAME_LIMIT_FRACTION {
        return Ok(Err(NoAdvice::GoesOut));
    }
    let wanted = Moles::new(share * inside.oxygen_mol);
    let mass_g = answers(fuel)?
        .iter()
        .map(|answer| sample_for_oxygen::<f64>(&answer.combustion, wanted).si() / GRAM.si)
        .fold(f64::INFINITY, f64::min);
    let length_cm = g_per_m.map(|g_per_m| 100.0 * mass_g / g_per_m);
    Ok(Ok(SampleAdvice { share, mass_g, length_cm }))
}
