//! A product let out into a room.

use super::limits::{Check, checks};
use super::room::{Room, mean_falling};
use crate::bounds;
use crate::chem::{Formula as Chemical, Weights};
use crate::reference::airborne::{AIRBORNE, Airborne};
use crate::reference::constants::MOLAR_GAS_2019;
use crate::units::{
    CUBIC_CENTIMETRE, DEGREE_CELSIUS, Dimensioned, GRAM, GRAM_PER_MOLE, KILOPASCAL, MILLIMOLE, Mass,
    MolarWeight, Moles,
};
use crate::{Code, Error, Result, nearest};

/// Averaging times of the two figures that are always given, in seconds.
const QUARTER_OF_AN_HOUR_S: f64 = 900.0;
const WORKING_DAY_S: f64 = 28_800.0;
const PPM: f64 = 1e-6;
const MILLIGRAM: f64 = 1e-6;

/// How much comes out.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Release {
    /// The share of the product in each jar that escapes: 1 for an open jar.
    pub leak_fraction: f64,
    /// Jars that are opened at the same time.
    pub jars: u32,
}

impl Release {
    /// All of one jar.
    pub const ONE_JAR: Release = Release { leak_fraction: 1.0, jars: 1 };
}

/// A product that can get into the air.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Source {
    /// Its row of the table.
    pub airborne: &'static Airborne,
    /// Amount in one jar.
    amount: Moles<f64>,
}

impl Source {
    /// A mass of a product in one jar.
    ///
    /// # Errors
    /// `unknown_name` for a product that does not get into the air, with the nearest that does; `out_of_range` and
    /// `not_a_number` for the mass.
    pub fn new(product: &str, mass_g: f64) -> Result<Self> {
        let wanted = product.trim();
        let airborne =
            AIRBORNE.iter().find(|row| row.product == wanted || row.name == wanted).ok_or_else(|| {
                let names = || AIRBORNE.iter().map(|row| row.product);
                let near = names()
                    .find(|known| known.eq_ignore_ascii_case(wanted))
                    .or_else(|| nearest(wanted, names()));
                Error::new(Code::UnknownName, "product")
                    .value(wanted)
                    .allowed(names().collect::<Vec<_>>().join(", "))
                    .advice(near.map_or_else(
                        || "give the formula of a product that gets into the air".to_owned(),
                        |near| format!("did you mean {near}?"),
                    ))
            })?;
        let g_per_mol = molar_mass(airborne.product)?;
        let mass: Mass<f64> = Mass::new(GRAM.to_si(bounds::MASS_G.check(mass_g)?));
        Ok(Source { airborne, amount: mass / MolarWeight::new(GRAM_PER_MOLE.to_si(g_per_mol)) })
    }
}

fn molar_mass(formula: &str) -> Result<f64> {
    Ok(Chemical::parse(formula)?.molar_mass(Weights::Exact)?.value_g_per_mol)
}

/// What a release does to the air of a room, well mixed.
#[derive(Debug, Clone, PartialEq)]
pub struct RoomAir {
    /// What was let out.
    pub airborne: &'static Airborne,
    /// Amount let out (mmol).
    pub released_mmol: f64,
    /// The same as a volume at the room's temperature and pressure (cm3); nothing for a smoke.
    pub released_cm3: Option<f64>,
    /// At the start (ppm by volume); nothing for a smoke.
    pub peak_ppm: Option<f64>,
    /// At the start (mg/m3).
    pub peak_mg_per_m3: f64,
    /// Mean over the first 15 minutes, as a share of the start.
    pub share_over_15_min: f64,
    /// Mean over the first 8 hours, as a share of the start.
    pub share_over_8_h: f64,
    /// The limits, each with what the room comes to.
    pub checks: Vec<Check>,
}

impl RoomAir {
    /// The limit that is used up most.
    #[must_use]
    pub fn tightest(&self) -> Option<&Check> {
        self.checks.iter().max_by(|a, b| (a.found / a.allowed).total_cmp(&(b.found / b.allowed)))
    }

    /// Whether any limit is exceeded, from memory or not: then this is for a fume cupboard, or for less of it.
    #[must_use]
    pub fn needs_fume_cupboard(&self) -> bool {
        self.checks.iter().any(Check::is_exceeded)
    }

    /// What to do, in words.
    #[must_use]
    pub fn advice(&self) -> &'static str {
        match (self.needs_fume_cupboard(), self.airborne.product) {
            (true, _) => {
                "more than a limit allows, even mixed into all the air of the room: open it in a fume cupboard only, or \
                 not at all"
            }
            (false, "SO2" | "CO") => {
                "within the limits once mixed into all the air of the room, far above them beside the jar before that: a \
                 fume cupboard stays the place to open it"
            }
            (false, _) => {
                "within the limits once mixed into all the air of the room; beside the jar there is far more before that"
            }
        }
    }
}

/// Lets a product out into a room.
///
/// ```
/// use overwater::burn::air::{Release, Room, Source, release};
/// // 0.10 g of sulfur makes 0.20 g of SO2: 75 cm3, and 0.38 ppm in 200 m3 (by hand: 3.12 mmol x 24.06 dm3/mol).
/// let room = Room { volume_m3: 200.0, air_changes_per_hour: 2.0, temperature_c: 20.0, pressure_kpa: 101.325 };
/// let air = release(&Source::new("SO2", 0.1998)?, Release::ONE_JAR, room)?;
/// assert!((air.released_cm3.unwrap() - 75.0).abs() < 0.1 && (air.peak_ppm.unwrap() - 0.375).abs() < 1e-3);
/// # Ok::<(), overwater::Error>(())
/// ```
///
/// # Errors
/// `out_of_range` and `not_a_number` for the room and the leak fraction; `out_of_range` for no jar.
pub fn release(source: &Source, release: Release, room: Room) -> Result<RoomAir> {
    let room = room.check()?;
    bounds::LEAK_FRACTION.check(release.leak_fraction)?;
    if release.jars == 0 {
        return Err(Error::new(Code::OutOfRange, "jars")
            .value("0")
            .allowed("1 or more")
            .advice("give the number of jars that are opened at once"));
    }
    let airborne = source.airborne;
    let amount = source.amount * (f64::from(release.jars) * release.leak_fraction);
    let (formula, count) = airborne.counted_as;
    let kilograms = amount.si() * count * GRAM_PER_MOLE.to_si(molar_mass(formula)?);
    let fraction = room.fraction(amount);
    let peak_ppm = airborne.is_gas.then_some(fraction / PPM);
    let peak_mg_per_m3 = kilograms / MILLIGRAM / room.volume_m3;
    let changes = room.changes_per_second();
    let volume = amount.si() * MOLAR_GAS_2019.si() * DEGREE_CELSIUS.to_si(room.temperature_c)
        / KILOPASCAL.to_si(room.pressure_kpa);
    Ok(RoomAir {
        airborne,
        released_mmol: amount.si() / MILLIMOLE.si,
        released_cm3: airborne.is_gas.then_some(volume / CUBIC_CENTIMETRE.si),
        peak_ppm,
        peak_mg_per_m3,
        share_over_15_min: mean_falling(changes, QUARTER_OF_AN_HOUR_S),
        share_over_8_h: mean_falling(changes, WORKING_DAY_S),
        checks: checks(airborne, &room, peak_ppm, peak_mg_per_m3)?,
    })
}
