//! What a burn leaves: its product in water, and in the air of a room.

pub mod answer;
mod convert;

use overwater::burn::air::{Release, Room, Source, release};
use overwater::burn::aqueous::{Water, dissolve as put_into_water};
use overwater::plan::defaults;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

use crate::Refusal;
use answer::{InWaterAnswer, RoomAirAnswer};

/// Temperature at which the constants of acids are stated, and pH is usually reckoned (degC).
const STATED_C: f64 = 25.0;

/// A product to be put into water.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct InWaterRequest {
    /// The format of the request; 1.
    pub format: u32,
    /// Formula of the product, as in "SO2".
    pub product: String,
    /// Its mass (g).
    pub mass_g: f64,
    /// Volume of the water (cm3).
    pub water_cm3: f64,
    /// Temperature (degC); 25 where it is left out.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub temperature_c: Option<f64>,
    /// Pressure (kPa); that of the standard atmosphere where it is left out.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub pressure_kpa: Option<f64>,
    /// Closed gas space over the water (cm3); a gas is led in wholly where it is left out.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub gas_space_cm3: Option<f64>,
}

/// A product to be let out into a room.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct RoomAirRequest {
    /// The format of the request; 1.
    pub format: u32,
    /// Formula of the product, as in "SO2".
    pub product: String,
    /// Its mass in one jar (g).
    pub mass_g: f64,
    /// Jars opened at once; 1 where it is left out.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub jars: Option<u32>,
    /// Share of each jar that escapes; all of it where it is left out.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub leak_fraction: Option<f64>,
    /// Volume of the room (m3); 200 where it is left out.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub room_volume_m3: Option<f64>,
    /// Air changes per hour; 2 where it is left out.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub air_changes_per_hour: Option<f64>,
    /// Temperature (degC); 20 where it is left out.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub temperature_c: Option<f64>,
    /// Pressure (kPa); that of the standard atmosphere where it is left out.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub pressure_kpa: Option<f64>,
}

/// Puts a product into water.
///
/// ```
/// use overwater_exchange::after::{InWaterRequest, dissolve};
/// let request: InWaterRequest = serde_json::from_str(
///     r#"{"format": 1, "product": "Na2O", "mass_g": 0.0674, "water_cm3": 20}"#,
/// ).unwrap();
/// // 0.05 g of sodium in 20 cm3: 0.109 mol/dm3 of hydroxide, pH 13.0 by hand.
/// assert!((dissolve(&request)?.ph_ideal - 13.03).abs() < 0.01);
/// # Ok::<(), Box<overwater_exchange::Refusal>>(())
/// ```
///
/// # Errors
/// `unknown_name` for the product, `out_of_range` and `not_a_number`.
pub fn dissolve(request: &InWaterRequest) -> Result<InWaterAnswer, Box<Refusal>> {
    let water = Water {
        water_cm3: request.water_cm3,
        temperature_c: request.temperature_c.unwrap_or(STATED_C),
        pressure_kpa: request.pressure_kpa.unwrap_or(defaults::PRESSURE.value),
        gas_space_cm3: request.gas_space_cm3,
    };
    Ok((&put_into_water(&request.product, request.mass_g, &water)?).into())
}

/// Lets a product out into a room.
///
/// ```
/// use overwater_exchange::after::{RoomAirRequest, air};
/// let request: RoomAirRequest =
///     serde_json::from_str(r#"{"format": 1, "product": "SO2", "mass_g": 0.1998, "jars": 8}"#).unwrap();
/// // Eight times 0.375 ppm in 200 m3.
/// assert!((air(&request)?.peak_ppm.unwrap() - 3.0).abs() < 0.01);
/// # Ok::<(), Box<overwater_exchange::Refusal>>(())
/// ```
///
/// # Errors
/// As for [`dissolve`].
pub fn air(request: &RoomAirRequest) -> Result<RoomAirAnswer, Box<Refusal>> {
    let room = Room {
        volume_m3: request.room_volume_m3.unwrap_or(defaults::ROOM_VOLUME.value),
        air_changes_per_hour: request.air_changes_per_hour.unwrap_or(defaults::AIR_CHANGES.value),
        temperature_c: request.temperature_c.unwrap_or(defaults::TEMPERATURE.value),
        pressure_kpa: request.pressure_kpa.unwrap_or(defaults::PRESSURE.value),
    };
    let how =
        Release { leak_fraction: request.leak_fraction.unwrap_or(1.0), jars: request.jars.unwrap_or(1) };
    Ok((&release(&Source::new(&request.product, request.mass_g)?, how, room)?).into())
}
