//! What a person writes down before a lesson. Everything that has a default may be left out.

use jiff::civil::Date;

use crate::peroxide::label::Label;
use crate::peroxide::strength::VolumeConvention;

/// A lesson: what there is, and what is to be burned.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Lesson {
    /// A title for the sheet.
    pub title: Option<String>,
    /// The day of the lesson.
    pub date: Option<Date>,
    /// The room.
    pub room: Room,
    /// The barometer.
    pub barometer: Option<Barometer>,
    /// The peroxide in stock.
    pub stock: Option<Stock>,
    /// How it is run.
    pub run: Run,
    /// The catalyst.
    pub catalyst: Catalyst,
    /// The apparatus.
    pub apparatus: Apparatus,
    /// The vessels, in the order in which they are filled.
    pub vessels: Vec<Vessel>,
}

/// The room.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Room {
    /// Temperature of room and trough (degC).
    pub temperature_c: Option<f64>,
    /// Volume (m3).
    pub volume_m3: Option<f64>,
    /// Air changes per hour.
    pub air_changes_per_hour: Option<f64>,
}

/// What the barometer, or the weather report, says.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Barometer {
    /// Pressure at the place (kPa).
    Station {
        /// Pressure at the place (kPa).
        pressure_kpa: f64,
    },
    /// Pressure reduced to sea level.
    SeaLevel {
        /// Pressure reduced to sea level (kPa).
        pressure_kpa: f64,
        /// Height of the place (m).
        altitude_m: f64,
    },
}

/// The bottle.
#[derive(Debug, Clone, PartialEq)]
pub struct Stock {
    /// What its label says.
    pub label: Label,
    /// The convention of a volume strength.
    pub convention: Option<VolumeConvention>,
    /// Density, for a label in % w/w (g/cm3); computed where it is not given.
    pub density_g_per_cm3: Option<f64>,
    /// The day it was opened.
    pub opened: Option<Date>,
    /// A titration that says how strong it still is.
    pub assay: Option<Assay>,
}

/// A titration with permanganate.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Assay {
    /// Titre (cm3).
    pub titre_cm3: f64,
    /// Concentration of the permanganate (mol/dm3).
    pub permanganate_mol_per_dm3: f64,
    /// Stock taken (cm3).
    pub sample_cm3: f64,
    /// Volume it was made up to (cm3).
    pub made_up_to_cm3: f64,
    /// Volume titrated (cm3).
    pub aliquot_cm3: f64,
}

/// How the preparation is run.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Run {
    /// Strength to run at.
    pub strength: Option<Label>,
    /// Share of the oxygen made that is collected or rejected on purpose.
    pub collection_efficiency_fraction: Option<f64>,
    /// Gas to throw away first (cm3); worked out from the fractions wanted where it is not given.
    pub rejected_cm3: Option<f64>,
    /// Groups that each make the preparation.
    pub groups: Option<u32>,
    /// Sets put out beyond those for the groups.
    pub spare_sets: Option<u32>,
    /// Jars in each set beyond those to be filled.
    pub spare_jars: Option<u32>,
}

/// The catalyst.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Catalyst {
    /// What it is.
    pub substance: Option<String>,
    /// Its mass for one preparation (g).
    pub mass_g: Option<f64>,
}

/// How the funnel is made.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub enum Funnel {
    /// An open thistle funnel.
    #[default]
    Open,
    /// A funnel with a tap, closed between additions.
    Tap,
}

/// The apparatus.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Apparatus {
    /// Volume of the flask (cm3).
    pub flask_cm3: Option<f64>,
    /// Water in it at the start (cm3).
    pub heel_cm3: Option<f64>,
    /// Volume of air in flask and tube (cm3); worked out from the others where it is not given.
    pub free_volume_cm3: Option<f64>,
    /// The funnel.
    pub funnel: Option<Funnel>,
    /// Length of the funnel stem above the liquid (cm).
    pub stem_length_cm: Option<f64>,
    /// Bore of the delivery tube (mm).
    pub tube_bore_mm: Option<f64>,
    /// Length of the delivery tube (cm).
    pub tube_length_cm: Option<f64>,
    /// Depth of its outlet under the trough's surface (cm).
    pub outlet_depth_cm: Option<f64>,
    /// Rate at which gas is to come (cm3/s).
    pub flow_cm3_per_s: Option<f64>,
    /// Volume of a jar (cm3).
    pub jar_cm3: Option<f64>,
    /// Volume of a tube (cm3).
    pub tube_cm3: Option<f64>,
}

/// What kind of vessel it is.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub enum Kind {
    /// A gas jar.
    #[default]
    Jar,
    /// A boiling tube.
    Tube,
}

impl Kind {
    /// In words.
    #[must_use]
    pub const fn words(self) -> &'static str {
        match self {
            Kind::Jar => "jar",
            Kind::Tube => "tube",
        }
    }
}

/// A vessel to be filled.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Vessel {
    /// A name for the sheet.
    pub name: Option<String>,
    /// Jar or tube.
    pub kind: Kind,
    /// Its volume, where it is not that of every jar or tube (cm3).
    pub volume_cm3: Option<f64>,
    /// What is burned in it, by name or formula; nothing for a glowing splint.
    pub burn: Option<String>,
    /// Mass of the sample (g).
    pub sample_g: Option<f64>,
    /// The fraction of oxygen wanted.
    pub wanted_oxygen_fraction: Option<f64>,
}
