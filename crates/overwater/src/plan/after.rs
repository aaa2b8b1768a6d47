//! What is left of each burn: in the jar, in its water, in the room's air; and how to tidy up.

use crate::Result;
use crate::bounds;
use crate::burn::air::{Release, Room, RoomAir, Source, release};
use crate::burn::aqueous::{InWater, Water, dissolve};
use crate::burn::tidying::{Tidying, tidying};
use crate::burn::{Fuel, GasAfter, Jar, Role, burnt, flames};
use crate::plan::filling::Wanted;
use crate::plan::{Filling, Place, defaults};
use crate::reference::airborne::AIRBORNE;

/// No more of a vessel than this is water.
const MOST_WATER: f64 = 0.25;
/// Less than this is not put into a vessel (cm3).
const LEAST_WATER_CM3: f64 = 0.1;

/// What is left by one of the answers to what a sample makes.
#[derive(Debug, Clone, PartialEq)]
pub struct AfterAnswer {
    /// Whose answer it is.
    pub role: Role,
    /// The product.
    pub product: String,
    /// The product with subscripts.
    pub product_unicode: String,
    /// How much of it (mmol), as far as the oxygen goes.
    pub product_mmol: f64,
    /// The same (g).
    pub product_g: f64,
    /// Whether it is a gas.
    pub is_gas: bool,
    /// Heat given out (kJ).
    pub heat_kj: f64,
    /// Sample that is left over (g).
    pub left_g: f64,
    /// The gas after the burn, cooled.
    pub gas: GasAfter,
    /// The product in the water of the jar; nothing where there is too little of it to speak of.
    pub in_water: Option<InWater>,
    /// All of this jar let out into the room; nothing for what stays in the jar.
    pub air_of_one: Option<RoomAir>,
    /// The same jar of every group opened at once; nothing for one group.
    pub air_of_all: Option<RoomAir>,
    /// How to tidy up.
    pub tidying: Tidying,
}

/// One burn, over.
#[derive(Debug, Clone, PartialEq)]
pub struct AfterBurn {
    /// The vessel's name.
    pub vessel: String,
    /// Oxygen at the start (mmol).
    pub oxygen_mmol: f64,
    /// The rest of the dry gas at the start (mmol).
    pub nitrogen_mmol: f64,
    /// Amount of the sample at the start (mmol).
    pub sample_mmol: f64,
    /// Water that is put in to test the product (cm3).
    pub water_cm3: f64,
    /// Temperature of the flame at the sample, no heat lost (degC); nothing where it cannot be worked out.
    pub flame_c: Option<f64>,
    /// What is left, by each of the answers.
    pub answers: Vec<AfterAnswer>,
}

pub(super) fn after(
    vessels: &[Wanted],
    filling: &Filling,
    place: &Place,
    groups: u32,
) -> Result<Vec<AfterBurn>> {
    let mut all = Vec::new();
    for (vessel, filled) in vessels.iter().zip(&filling.vessels) {
        let (Some(sample), Some(sample_g)) = (&vessel.sample, vessel.sample_g) else { continue };
        let jar = Jar {
            volume_cm3: vessel.volume_cm3,
            temperature_c: place.temperature_c,
            pressure_kpa: place.pressure_kpa,
            oxygen_fraction: filled.oxygen_fraction,
        };
        let fuel = Fuel::find(sample.name())?;
        let contents = jar.contents()?;
        let water_cm3 = (vessel.volume_cm3 * MOST_WATER).clamp(LEAST_WATER_CM3, defaults::WATER_IN_JAR_CM3);
        let mut answers = Vec::new();
        let mut sample_mmol = 0.0;
        for found in burnt(&fuel, sample_g, &jar)? {
            let combustion = &found.combustion;
            sample_mmol = sample_g / combustion.sample_g_per_mol * 1000.0;
            let formula = combustion.product.without_state();
            let made = found.made.iter().find(|made| made.formula == formula.to_string());
            let (product_mmol, product_g) = made.map_or((0.0, 0.0), |made| (made.amount_mmol, made.mass_g));
            let product = formula.to_string();
            let is_enough = product_g >= bounds::MASS_G.least;
            let water = Water {
                water_cm3,
                temperature_c: place.temperature_c,
                pressure_kpa: place.pressure_kpa,
                gas_space_cm3: Some((vessel.volume_cm3 - water_cm3).max(bounds::GAS_SPACE_CM3.least)),
            };
            let in_water = if is_enough { Some(dissolve(&product, product_g, &water)?) } else { None };
            let (air_of_one, air_of_all) =
                if is_enough { air(&product, product_g, place, groups)? } else { (None, None) };
            answers.push(AfterAnswer {
                role: found.role,
                product_unicode: formula.unicode(),
                product_mmol,
                product_g,
                is_gas: in_water.as_ref().is_some_and(|found| found.product.is_gas),
                heat_kj: found.heat_kj,
                left_g: found.left_g,
                gas: found.after,
                in_water,
                air_of_one,
                air_of_all,
                tidying: tidying(&product, product_mmol)?,
                product,
            });
        }
        all.push(AfterBurn {
            vessel: vessel.name.clone(),
            oxygen_mmol: contents.oxygen_mol * 1000.0,
            nitrogen_mmol: contents.nitrogen_mol * 1000.0,
            sample_mmol,
            water_cm3,
            flame_c: flames(&fuel, sample_g, &jar)
                .ok()
                .map(|flames| crate::units::DEGREE_CELSIUS.from_si(flames.at_the_sample.temperature_k)),
            answers,
        });
    }
    Ok(all)
}

/// The air of the room when one jar is opened, and when that jar of every group is.
fn air(
    product: &str,
    product_g: f64,
    place: &Place,
    groups: u32,
) -> Result<(Option<RoomAir>, Option<RoomAir>)> {
    if AIRBORNE.iter().all(|row| row.product != product) {
        return Ok((None, None));
    }
    let room = Room {
        volume_m3: place.room_volume_m3,
        air_changes_per_hour: place.air_changes_per_hour,
        temperature_c: place.temperature_c,
        pressure_kpa: place.pressure_kpa,
    };
    let source = Source::new(product, product_g)?;
    let one = release(&source, Release::ONE_JAR, room)?;
    let all = if groups > 1 {
        Some(release(&source, Release { jars: groups, ..Release::ONE_JAR }, room)?)
    } else {
        None
    };
    Ok((Some(one), all))
}
