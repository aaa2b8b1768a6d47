//! The names of the columns: what is followed, what a run was done at, and rates that are known already.

use overwater::units::{self, Unit};
use overwater::{Code, Error, nearest};

use crate::reduction::columns::{LABELS, endings};

/// What a column holds.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Kind {
    Time,
    Volume,
    Mass,
    MassLoss,
    Concentration,
    Rate,
    RateConstant,
    TimeTaken,
    Temperature,
    InitialConcentration,
    Start,
    FinalVolume,
    FinalMass,
    FinalMassLoss,
    FinalConcentration,
    GasTemperature,
    Pressure,
    RelativeSaturation,
}

/// How many kinds there are.
pub(crate) const KINDS: usize = Kind::RelativeSaturation as usize + 1;

impl Kind {
    /// What is followed in time: each with the kind of its final value.
    pub(crate) const FOLLOWED: [(Kind, Kind); 4] = [
        (Kind::Volume, Kind::FinalVolume),
        (Kind::Mass, Kind::FinalMass),
        (Kind::MassLoss, Kind::FinalMassLoss),
        (Kind::Concentration, Kind::FinalConcentration),
    ];

    /// What stands for a rate in a table without times.
    pub(crate) const RATES: [Kind; 3] = [Kind::Rate, Kind::RateConstant, Kind::TimeTaken];

    /// The name without its unit.
    pub(crate) fn stem(self) -> &'static str {
        COLUMNS
            .iter()
            .flat_map(|group| group.iter())
            .find(|entry| entry.kind == self)
            .map_or("", |entry| entry.stem)
    }

    /// Whether it falls as the reaction goes on.
    pub(crate) fn falls(self) -> bool {
        matches!(self, Kind::Mass | Kind::Concentration)
    }
}

/// A name that is read.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Entry {
    pub(crate) name: &'static str,
    pub(crate) stem: &'static str,
    pub(crate) kind: Kind,
    /// The school unit of its family.
    school: &'static str,
    ending: &'static str,
}

macro_rules! family {
    ($stem:literal, $kind:ident, $school:literal, [$($ending:literal),*]) => {
        &[$(Entry {
            name: concat!($stem, "_", $ending),
            stem: $stem,
            kind: Kind::$kind,
            school: $school,
            ending: $ending,
        }),*]
    };
}
macro_rules! time {
    ($stem:literal, $kind:ident) => {
        family!($stem, $kind, "s", ["s", "min", "h"])
    };
}
macro_rules! volume {
    ($stem:literal, $kind:ident) => {
        family!($stem, $kind, "cm3", ["cm3", "ml", "dm3", "l", "m3"])
    };
}
macro_rules! mass {
    ($stem:literal, $kind:ident) => {
        family!($stem, $kind, "g", ["g", "mg", "kg"])
    };
}
macro_rules! concentration {
    ($stem:literal, $kind:ident) => {
        family!($stem, $kind, "mol/dm3", ["mol_per_dm3", "mol_per_l", "mmol_per_dm3"])
    };
}
macro_rules! rate {
    ($stem:literal, $kind:ident) => {
        family!(
            $stem,
            $kind,
            "",
            [
                "cm3_per_s",
                "cm3_per_min",
                "g_per_s",
                "g_per_min",
                "mmol_per_s",
                "mmol_per_min",
                "mol_per_dm3_s",
                "mol_per_dm3_min",
                "dm3_per_mol_s",
                "l_per_mol_s",
                "per_s",
                "per_min",
                "per_h"
            ]
        )
    };
}

const COLUMNS: [&[Entry]; KINDS] = [
    time!("time", Time),
    volume!("volume", Volume),
    mass!("mass", Mass),
    mass!("mass_loss", MassLoss),
    concentration!("concentration", Concentration),
    rate!("rate", Rate),
    rate!("rate_constant", RateConstant),
    time!("time_taken", TimeTaken),
    family!("temperature", Temperature, "degC", ["c", "k"]),
    concentration!("initial_concentration", InitialConcentration),
    time!("start", Start),
    volume!("final_volume", FinalVolume),
    mass!("final_mass", FinalMass),
    mass!("final_mass_loss", FinalMassLoss),
    concentration!("final_concentration", FinalConcentration),
    family!("gas_temperature", GasTemperature, "degC", ["c", "k"]),
    family!("pressure", Pressure, "kPa", ["kpa", "hpa", "mbar", "pa", "bar", "mmhg", "torr", "atm"]),
    family!("relative_saturation", RelativeSaturation, "%", ["fraction", "percent"]),
];

impl Entry {
    /// Its unit; that of a rate has a text only.
    pub(crate) fn unit(&self) -> Unit {
        if let Some(text) = self.rate_unit() {
            return Unit { text, pretty: text, latex: text, ..units::ONE };
        }
        let found = endings(self.school).iter().find(|(ending, _)| *ending == self.ending);
        found.map_or(units::ONE, |(_, unit)| *unit)
    }

    fn rate_unit(&self) -> Option<&'static str> {
        if !self.school.is_empty() {
            return None;
        }
        Some(match self.ending {
            "cm3_per_s" => "cm3/s",
            "cm3_per_min" => "cm3/min",
            "g_per_s" => "g/s",
            "g_per_min" => "g/min",
            "mmol_per_s" => "mmol/s",
            "mmol_per_min" => "mmol/min",
            "mol_per_dm3_s" => "mol/(dm3 s)",
            "mol_per_dm3_min" => "mol/(dm3 min)",
            "dm3_per_mol_s" | "l_per_mol_s" => "dm3/(mol s)",
            "per_min" => "1/min",
            "per_h" => "1/h",
            _ => "1/s",
        })
    }
}

/// What a name stands for.
#[derive(Debug, Clone, Copy)]
pub(crate) enum Column {
    /// A number.
    Number(&'static Entry),
    /// The label of a run.
    Run,
    /// Something that is not used.
    Note,
}

/// Reads a name.
///
/// # Errors
/// `ambiguous` for a name without a unit, `unknown_name` for one that is nearly a known one.
pub(crate) fn column(name: &str) -> Result<Column, Error> {
    if LABELS.contains(&name) {
        return Ok(Column::Run);
    }
    let all = || COLUMNS.iter().flat_map(|group| group.iter());
    if let Some(entry) = all().find(|entry| entry.name == name) {
        return Ok(Column::Number(entry));
    }
    if let Some(group) = COLUMNS.iter().find(|group| group.iter().any(|entry| entry.stem == name)) {
        let allowed: Vec<&str> = group.iter().map(|entry| entry.name).collect();
        return Err(Error::new(Code::Ambiguous, name.to_owned())
            .allowed(allowed.join(", "))
            .advice("write the unit at the end of the name"));
    }
    match nearest(name, all().map(|entry| entry.name)) {
        Some(near) => {
            Err(Error::new(Code::UnknownName, name.to_owned()).advice(format!("did you mean {near}?")))
        }
        None => Ok(Column::Note),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_name_has_its_unit_and_every_kind_its_place() {
        let mut names = 0;
        for (place, group) in COLUMNS.iter().enumerate() {
            for entry in *group {
                names += 1;
                assert_eq!(entry.kind as usize, place, "{}", entry.name);
                assert!(matches!(column(entry.name), Ok(Column::Number(found)) if found.kind == entry.kind));
                let unit = entry.unit();
                let known = entry.rate_unit().is_some()
                    || endings(entry.school)
                        .iter()
                        .any(|(ending, own)| *ending == entry.ending && *own == unit);
                assert!(known, "{}", entry.name);
                let same = group.iter().filter(|other| {
                    let other = other.unit();
                    other.si == unit.si && other.zero == unit.zero
                });
                assert!(entry.rate_unit().is_some() || same.count() <= 2, "{} has a wrong unit", entry.name);
            }
        }
        // Three times, two volumes, four masses, three concentrations, two rates, two temperatures, pressure, saturation.
        assert_eq!(names, 3 * 3 + 2 * 5 + 4 * 3 + 3 * 3 + 2 * 13 + 2 * 2 + 8 + 2);
        assert_eq!(Kind::FinalMassLoss.stem(), "final_mass_loss");
    }

    #[test]
    fn what_leaves_something_open_is_asked_about() {
        let error = column("time").unwrap_err();
        assert_eq!((error.code, &*error.allowed), (Code::Ambiguous, "time_s, time_min, time_h"));
        assert_eq!(&*column("tine_s").unwrap_err().advice, "did you mean time_s?");
        assert!(matches!(column("run"), Ok(Column::Run)) && matches!(column("weather"), Ok(Column::Note)));
    }
}
