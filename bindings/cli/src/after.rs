//! `overwater dissolve` and `overwater air`.

use clap::Args;
use overwater_exchange::FORMAT;
use overwater_exchange::after::{InWaterRequest, RoomAirRequest, air, dissolve};

use crate::WIDTH;
use crate::files::{self, Message};

/// A product and the water it is put into.
#[derive(Debug, Args)]
pub(crate) struct InWater {
    /// Formula of the product, as in SO2, Na2O2, MgO.
    product: String,
    /// Its mass (g).
    #[arg(long)]
    mass_g: f64,
    /// Volume of the water (cm3).
    #[arg(long)]
    water_cm3: f64,
    /// Temperature (degC); 25 where it is left out.
    #[arg(long)]
    temperature_c: Option<f64>,
    /// Pressure (kPa); 101.325 where it is left out.
    #[arg(long)]
    pressure_kpa: Option<f64>,
    /// Closed gas space over the water (cm3), which keeps its share of a gas; without it a gas is led in wholly.
    #[arg(long)]
    gas_space_cm3: Option<f64>,
    /// Print the whole answer as JSON.
    #[arg(long)]
    json: bool,
}

/// A product and the room it is let out into.
#[derive(Debug, Args)]
pub(crate) struct RoomAir {
    /// Formula of the product, as in SO2, CO, MgO.
    product: String,
    /// Its mass in one jar (g).
    #[arg(long)]
    mass_g: f64,
    /// Jars opened at once; 1 where it is left out.
    #[arg(long)]
    jars: Option<u32>,
    /// Share of each jar that escapes; all of it where it is left out.
    #[arg(long)]
    leak_fraction: Option<f64>,
    /// Volume of the room (m3); 200 where it is left out.
    #[arg(long)]
    room_volume_m3: Option<f64>,
    /// Air changes per hour; 2 where it is left out.
    #[arg(long)]
    air_changes_per_hour: Option<f64>,
    /// Temperature (degC); 20 where it is left out.
    #[arg(long)]
    temperature_c: Option<f64>,
    /// Pressure (kPa); 101.325 where it is left out.
    #[arg(long)]
    pressure_kpa: Option<f64>,
    /// Print the whole answer as JSON.
    #[arg(long)]
    json: bool,
}

/// A product in water, as text or JSON.
pub(crate) fn in_water(given: InWater) -> Result<(), Message> {
    let request = InWaterRequest {
        format: FORMAT,
        product: given.product,
        mass_g: given.mass_g,
        water_cm3: given.water_cm3,
        temperature_c: given.temperature_c,
        pressure_kpa: given.pressure_kpa,
        gas_space_cm3: given.gas_space_cm3,
    };
    let answer = dissolve(&request).map_err(|refusal| format!("error: {refusal} [{}]", refusal.code))?;
    if given.json {
        return files::print_json(&answer);
    }
    files::print(&overwater_sheet::in_water(&answer, WIDTH))
}

/// A product in the air of a room, as text or JSON.
pub(crate) fn room_air(given: RoomAir) -> Result<(), Message> {
    let request = RoomAirRequest {
        format: FORMAT,
        product: given.product,
        mass_g: given.mass_g,
        jars: given.jars,
        leak_fraction: given.leak_fraction,
        room_volume_m3: given.room_volume_m3,
        air_changes_per_hour: given.air_changes_per_hour,
        temperature_c: given.temperature_c,
        pressure_kpa: given.pressure_kpa,
    };
    let answer = air(&request).map_err(|refusal| format!("error: {refusal} [{}]", refusal.code))?;
    if given.json {
        return files::print_json(&answer);
    }
    files::print(&overwater_sheet::room_air(&answer, WIDTH))
}
