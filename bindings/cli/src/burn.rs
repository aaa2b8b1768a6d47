//! `overwater burn`.

use std::path::PathBuf;

use clap::Args;
use overwater_exchange::burn::burn;
use overwater_exchange::burn::request::{BurnRequest, JarRequest};
use overwater_exchange::{FORMAT, burn_from_json, burn_from_toml};

use crate::WIDTH;
use crate::files::{self, Message};

/// The sample and the jar.
#[derive(Debug, Args)]
pub(crate) struct Arguments {
    /// The sample, by name or formula, as in sulfur, Mg or C2H5OH.
    #[arg(required_unless_present = "request")]
    sample: Option<String>,
    /// Volume of the jar; 250 where it is left out.
    #[arg(long, value_name = "CM3")]
    jar_cm3: Option<f64>,
    /// Mass of the sample; what is advised where it is left out.
    #[arg(long, value_name = "G")]
    mass_g: Option<f64>,
    /// Temperature of gas and water; 20 where it is left out.
    #[arg(long, value_name = "DEGC", allow_negative_numbers = true)]
    temperature_c: Option<f64>,
    /// Pressure at the place; 101.325 where it is left out.
    #[arg(long, value_name = "KPA")]
    pressure_kpa: Option<f64>,
    /// Mole fraction of oxygen in the dry gas; 1 where nothing is said of it.
    #[arg(long, value_name = "FRACTION")]
    oxygen_fraction: Option<f64>,
    /// Instead of the fraction: gas thrown away before the jar was filled.
    #[arg(long, value_name = "CM3", requires = "free_volume_cm3")]
    rejected_cm3: Option<f64>,
    /// Free volume of flask and tube.
    #[arg(long, value_name = "CM3", requires = "rejected_cm3")]
    free_volume_cm3: Option<f64>,
    /// Share of the oxygen that the advised mass uses up; 0.25 where it is left out.
    #[arg(long, value_name = "SHARE")]
    share_of_oxygen: Option<f64>,
    /// Mass of ribbon or wire for each metre, as weighed, for a length.
    #[arg(long, value_name = "G_PER_M")]
    mass_per_length_g_per_m: Option<f64>,
    /// Take everything from a file instead: TOML (or JSON, where the name ends in .json); `-` reads TOML from standard
    /// input.
    #[arg(long, value_name = "FILE", conflicts_with_all = ["sample", "jar_cm3", "mass_g", "temperature_c", "pressure_kpa", "oxygen_fraction", "rejected_cm3", "free_volume_cm3", "share_of_oxygen", "mass_per_length_g_per_m"])]
    request: Option<PathBuf>,
    /// Print the whole answer as JSON.
    #[arg(long)]
    json: bool,
}

/// Prints what burns and what comes of it, as text or JSON.
pub(crate) fn run(arguments: Arguments) -> Result<(), Message> {
    let json = arguments.json;
    let (request, shown, text) = match &arguments.request {
        Some(file) => {
            let text = files::read(file)?;
            let is_json = file.extension().is_some_and(|ending| ending.eq_ignore_ascii_case("json"));
            let request = if is_json { burn_from_json(&text) } else { burn_from_toml(&text) };
            let shown = file.display().to_string();
            (request.map_err(|refusal| refusal.show(&shown, &text))?, shown, text)
        }
        None => (from(arguments), "burn".to_owned(), String::new()),
    };
    let answer = burn(&request).map_err(|refusal| refusal.show(&shown, &text))?;
    if json {
        return files::print_json(&answer);
    }
    files::print(&overwater_sheet::burn(&answer, WIDTH))
}

fn from(arguments: Arguments) -> BurnRequest {
    BurnRequest {
        format: FORMAT,
        sample: arguments.sample.unwrap_or_default(),
        mass_g: arguments.mass_g,
        share_of_oxygen: arguments.share_of_oxygen,
        mass_per_length_g_per_m: arguments.mass_per_length_g_per_m,
        jar: JarRequest {
            volume_cm3: arguments.jar_cm3,
            temperature_c: arguments.temperature_c,
            pressure_kpa: arguments.pressure_kpa,
            oxygen_fraction: arguments.oxygen_fraction,
            rejected_cm3: arguments.rejected_cm3,
            free_volume_cm3: arguments.free_volume_cm3,
        },
    }
}
