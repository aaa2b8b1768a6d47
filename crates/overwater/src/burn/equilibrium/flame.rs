//! The adiabatic flame temperature at constant pressure.

use super::system::{GREATEST_K, LEAST_K};
use super::{Equilibrium, Mixture, System};
use crate::{Code, Error, Result};

/// A flame that loses no heat.
#[derive(Debug, Clone, PartialEq)]
pub struct Flame {
    /// Temperature, in K.
    pub temperature_k: f64,
    /// Whether a phase melts or boils at just this temperature, so that some of the heat goes into that.
    pub changes_phase: bool,
    /// The composition.
    pub equilibrium: Equilibrium,
}

/// How closely the temperature is found, in K.
const CLOSE_K: f64 = 1e-3;
/// Enough steps to halve the whole range down to [`CLOSE_K`] twice over.
const MOST_STEPS: usize = 80;
/// More than any heat capacity takes up within [`CLOSE_K`].
const JUMP_J_PER_MOL: f64 = 10.0;
/// Where most flames are, in K.
const FIRST_K: f64 = 2600.0;

/// The temperature that a mixture reaches when it comes to equilibrium at a pressure (kPa) and no heat is lost.
///
/// The enthalpy rises with the temperature, steadily but for jumps where a phase melts or boils; a jump that holds
/// the enthalpy wanted is met by mixing the states on its two sides, which is an equilibrium too.
///
/// ```
/// use overwater::burn::Fuel;
/// use overwater::burn::equilibrium::{Mixture, System, flame};
/// use overwater::reference::nasa9::Species;
/// let mut mixture = Mixture::default();
/// mixture.add_fuel(&Fuel::find("S")?, 1.0, 298.15)?;
/// mixture.add_species(Species::named("O2")?, 1.0, 298.15)?;
/// let hot = flame(&System::of(&mixture)?, &mixture, 101.325)?;
/// // A general-purpose equilibrium library with the same species: 3232 K.
/// assert!((hot.temperature_k - 3232.0).abs() < 5.0, "{}", hot.temperature_k);
/// # Ok::<(), overwater::Error>(())
/// ```
///
/// # Errors
/// `cannot_be_met` where the temperature lies outside 200 to 6000 K.
pub fn flame(system: &System, mixture: &Mixture, pressure_kpa: f64) -> Result<Flame> {
    let wanted = mixture.enthalpy_j;
    let near = |temperature_k: f64, known: &Equilibrium| {
        system.near(mixture, temperature_k, pressure_kpa, Some(known))
    };
    // A bracket, in growing steps from where most flames are.
    let mut one = system.at(mixture, FIRST_K, pressure_kpa)?;
    let rising = one.enthalpy_j < wanted;
    let mut factor = if rising { 1.15 } else { 0.85 };
    let (mut low, mut high) = loop {
        let next_k = (one.temperature_k * factor).clamp(LEAST_K, GREATEST_K);
        if next_k == one.temperature_k {
            return Err(Error::new(Code::CannotBeMet, "flame_temperature")
                .value(format!("beyond {next_k} K"))
                .allowed(format!("{LEAST_K} to {GREATEST_K} K"))
                .advice("check the amounts and the enthalpies of what burns"));
        }
        let next = near(next_k, &one)?;
        match (rising, next.enthalpy_j < wanted) {
            (true, false) => break (one, next),
            (false, true) => break (next, one),
            _ => one = next,
        }
        factor *= if rising { 1.05 } else { 0.95 };
    };
    // False position, Illinois variant; a bisection where that gains too little.
    let (mut weight_low, mut weight_high) = (1.0, 1.0);
    let mut halve = false;
    let mut last_was_low = None;
    for _ in 0..MOST_STEPS {
        let width = high.temperature_k - low.temperature_k;
        if width < CLOSE_K {
            break;
        }
        let (below, above) =
            ((wanted - low.enthalpy_j) * weight_low, (high.enthalpy_j - wanted) * weight_high);
        let share = if halve { 0.5 } else { (below / (below + above)).clamp(0.0, 1.0) };
        // Half the closeness away from either end, so that both ends close in.
        let inset = 0.4 * CLOSE_K / width;
        let share = share.clamp(inset, 1.0 - inset);
        let next = near(low.temperature_k + width * share, if share < 0.5 { &low } else { &high })?;
        let is_low = next.enthalpy_j < wanted;
        if is_low {
            weight_high = if last_was_low == Some(true) { 0.5 * weight_high } else { 1.0 };
            (low, weight_low) = (next, 1.0);
        } else {
            weight_low = if last_was_low == Some(false) { 0.5 * weight_low } else { 1.0 };
            (high, weight_high) = (next, 1.0);
        }
        last_was_low = Some(is_low);
        halve = high.temperature_k - low.temperature_k > 0.5 * width;
    }
    let atoms: f64 = mixture.atoms().iter().map(|(_, amount)| amount).sum();
    Ok(meet(low, high, wanted, atoms))
}

/// The state between two that lie close together, at the enthalpy wanted.
fn meet(low: Equilibrium, high: Equilibrium, wanted: f64, atoms: f64) -> Flame {
    let jump = high.enthalpy_j - low.enthalpy_j;
    let share = if jump > 0.0 { ((wanted - low.enthalpy_j) / jump).clamp(0.0, 1.0) } else { 0.5 };
    let temperature_k = low.temperature_k + share * (high.temperature_k - low.temperature_k);
    let gas_mol = low.gas_mol + share * (high.gas_mol - low.gas_mol);
    let mix = |a: f64, b: f64| a + share * (b - a);
    let fractions = low
        .fractions
        .iter()
        .map(|(species, x)| {
            let amount = mix(x * low.gas_mol, high.fraction(species.name) * high.gas_mol);
            (*species, if gas_mol > 0.0 { amount / gas_mol } else { 0.0 })
        })
        .collect();
    let mut condensed: Vec<_> = low
        .condensed
        .iter()
        .map(|(species, n)| {
            (*species, mix(*n, high.condensed.iter().find(|(s, _)| s == species).map_or(0.0, |(_, n)| *n)))
        })
        .collect();
    for (species, n) in &high.condensed {
        if !low.condensed.iter().any(|(known, _)| known == species) {
            condensed.push((*species, share * n));
        }
    }
    // Without a change of phase the heat capacity times the width is far below this, in J for each mole of atoms.
    let changes_phase = jump > JUMP_J_PER_MOL * atoms;
    Flame {
        temperature_k,
        changes_phase,
        equilibrium: Equilibrium {
            temperature_k,
            pressure_kpa: low.pressure_kpa,
            gas_mol,
            fractions,
            condensed,
            enthalpy_j: wanted,
            potentials: low.potentials,
        },
    }
}
