//! How hot a burn in a jar can get: two mixtures that lose no heat.

use crate::burn::equilibrium::{Flame, Mixture, System, flame};
use crate::burn::{Fuel, Jar, answers};
use crate::reference::nasa9::Species;
use crate::{Code, Error, Result};

/// The two flames of a jar.
#[derive(Debug, Clone, PartialEq)]
pub struct Flames {
    /// The sample with just the gas of the jar that holds the oxygen for complete combustion: the hottest place.
    pub at_the_sample: Flame,
    /// The sample with all the gas of the jar, as if no heat went into glass and water.
    pub whole_jar: Flame,
}

/// The flame temperatures of a mass (g) of a fuel in a jar, at the jar's pressure and from its temperature.
///
/// Both are upper bounds: a real flame loses heat. Dissociation, melting and boiling are in them.
///
/// ```
/// use overwater::burn::{Fuel, Jar, flames};
/// let jar = Jar { volume_cm3: 250.0, temperature_c: 20.0, pressure_kpa: 101.325, oxygen_fraction: 1.0 };
/// let magnesium = flames(&Fuel::find("Mg")?, 0.1, &jar)?;
/// // The oxide boils away at the flame: about 3400 K, whatever the heat.
/// assert!((magnesium.at_the_sample.temperature_k - 3390.0).abs() < 30.0);
/// # Ok::<(), overwater::Error>(())
/// ```
///
/// # Errors
/// `cannot_be_met` where the data know no oxide of an element (zinc), or the search finds no end.
pub fn flames(fuel: &Fuel, mass_g: f64, jar: &Jar) -> Result<Flames> {
    let inside = jar.contents()?;
    if inside.oxygen_mol <= 0.0 {
        return Err(Error::new(Code::CannotBeMet, "flame_temperature")
            .value("a jar without oxygen")
            .allowed("a jar with some oxygen")
            .advice("nothing burns in it"));
    }
    let complete = answers(fuel)?;
    let needed = complete.first().map_or(f64::NAN, |answer| answer.combustion.oxygen_per_sample);
    let molar = complete.first().map_or(f64::NAN, |answer| answer.combustion.sample_g_per_mol);
    let sample_mol = mass_g / molar;
    let mix = |share_of_gas: f64| -> Result<Mixture> {
        let from_k = jar.temperature_k();
        let mut mixture = Mixture::default();
        mixture.add_fuel(fuel, sample_mol, from_k)?;
        for (name, amount) in
            [("O2", inside.oxygen_mol), ("N2", inside.nitrogen_mol), ("H2O", inside.vapour_mol)]
        {
            mixture.add_species(Species::named(name)?, share_of_gas * amount, from_k)?;
        }
        Ok(mixture)
    };
    let just = mix(sample_mol * needed / inside.oxygen_mol)?;
    let system = System::of(&just)?;
    let whole = mix(1.0)?;
    Ok(Flames {
        at_the_sample: flame(&system, &just, jar.pressure_kpa)?,
        whole_jar: flame(&system, &whole, jar.pressure_kpa)?,
    })
}
