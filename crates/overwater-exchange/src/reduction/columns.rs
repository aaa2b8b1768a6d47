//! The names of columns: a quantity with its unit at the end.

use overwater::readings::Quantity;
use overwater::units::{self, Unit};
use overwater::{Code, Error, nearest};

const fn unit(text: &'static str, si: f64) -> Unit {
    Unit { text, pretty: text, latex: text, si, zero: 0.0 }
}

/// Endings that are read in the place of a school unit.
pub(crate) fn endings(school: &str) -> &'static [(&'static str, Unit)] {
    const VOLUME: &[(&str, Unit)] = &[
        ("cm3", units::CUBIC_CENTIMETRE),
        ("ml", units::CUBIC_CENTIMETRE),
        ("dm3", units::CUBIC_DECIMETRE),
        ("l", units::CUBIC_DECIMETRE),
        ("m3", units::CUBIC_METRE),
    ];
    const TEMPERATURE: &[(&str, Unit)] = &[("c", units::DEGREE_CELSIUS), ("k", units::KELVIN)];
    const PRESSURE: &[(&str, Unit)] = &[
        ("kpa", units::KILOPASCAL),
        ("hpa", units::HECTOPASCAL),
        ("mbar", units::HECTOPASCAL),
        ("pa", units::PASCAL),
        ("bar", unit("bar", 1e5)),
        ("mmhg", units::MILLIMETRE_OF_MERCURY),
        ("torr", unit("Torr", 101_325.0 / 760.0)),
        ("atm", unit("atm", 101_325.0)),
    ];
    const LENGTH: &[(&str, Unit)] =
        &[("mm", units::MILLIMETRE), ("cm", units::CENTIMETRE), ("m", units::METRE)];
    const MASS: &[(&str, Unit)] = &[("g", units::GRAM), ("mg", unit("mg", 1e-6)), ("kg", unit("kg", 1.0))];
    const TIME: &[(&str, Unit)] =
        &[("s", units::SECOND), ("min", unit("min", 60.0)), ("h", unit("h", 3600.0))];
    const CONCENTRATION: &[(&str, Unit)] = &[
        ("mol_per_dm3", units::MOLE_PER_CUBIC_DECIMETRE),
        ("mol_per_l", units::MOLE_PER_CUBIC_DECIMETRE),
        ("mmol_per_dm3", unit("mmol/dm3", 1.0)),
    ];
    const MOLAR_MASS: &[(&str, Unit)] = &[("g_per_mol", units::GRAM_PER_MOLE)];
    const MOLAR_VOLUME: &[(&str, Unit)] = &[("dm3_per_mol", units::CUBIC_DECIMETRE_PER_MOLE)];
    const SHARE: &[(&str, Unit)] = &[("fraction", units::ONE), ("percent", units::PERCENT)];
    match school {
        "cm3" => VOLUME,
        "degC" => TEMPERATURE,
        "kPa" => PRESSURE,
        "mm" | "m" => LENGTH,
        "g" => MASS,
        "s" => TIME,
        "mol/dm3" => CONCENTRATION,
        "g/mol" => MOLAR_MASS,
        "dm3/mol" => MOLAR_VOLUME,
        _ => SHARE,
    }
}

/// The name of a quantity without its unit.
fn stem(quantity: Quantity) -> &'static str {
    let name = quantity.name();
    endings(quantity.bound().symbol.unit.text)
        .iter()
        .find_map(|(ending, _)| name.strip_suffix(ending).and_then(|rest| rest.strip_suffix('_')))
        .unwrap_or(name)
}

/// Every name that a quantity may be read under.
fn names(quantity: Quantity) -> Vec<(String, Unit)> {
    if quantity == Quantity::MoleRatio {
        return vec![(quantity.name().to_owned(), units::ONE)];
    }
    let stem = stem(quantity);
    endings(quantity.bound().symbol.unit.text)
        .iter()
        .map(|(ending, unit)| (format!("{stem}_{ending}"), *unit))
        .collect()
}

/// What a column holds.
#[derive(Debug, Clone, PartialEq)]
pub(crate) enum Column {
    /// A reading.
    Reading(Quantity, Unit),
    /// The label of a row.
    Label,
    /// Something that is not used.
    Note,
}

/// Names of a column of labels.
pub(crate) const LABELS: [&str; 5] = ["label", "group", "name", "run", "sample"];

/// What a name stands for.
///
/// # Errors
/// `ambiguous` for a quantity without a unit, `unknown_name` for a name that is nearly a known one.
pub(crate) fn column(name: &str) -> Result<Column, Error> {
    if LABELS.contains(&name) {
        return Ok(Column::Label);
    }
    let mut known = Vec::new();
    for quantity in Quantity::ALL {
        for (own, unit) in names(*quantity) {
            if own == name {
                return Ok(Column::Reading(*quantity, unit));
            }
            known.push(own);
        }
        if stem(*quantity) == name {
            let allowed: Vec<String> = names(*quantity).into_iter().map(|(name, _)| name).collect();
            return Err(Error::new(Code::Ambiguous, name.to_owned())
                .allowed(allowed.join(", "))
                .advice("write the unit at the end of the name"));
        }
    }
    match nearest(name, known.iter().map(String::as_str)) {
        Some(near) => {
            Err(Error::new(Code::UnknownName, name.to_owned()).advice(format!("did you mean {near}?")))
        }
        None => Ok(Column::Note),
    }
}

/// A value in the unit of its column, as the bounds table has it; untouched where the units are the same.
pub(crate) fn school(quantity: Quantity, unit: &Unit, value: f64) -> f64 {
    let own = quantity.bound().symbol.unit;
    if own == unit { value } else { own.from_si(unit.to_si(value)) }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_bound_has_its_own_name_among_those_that_are_read() {
        for quantity in Quantity::ALL {
            assert_eq!(
                column(quantity.name()),
                Ok(Column::Reading(*quantity, *quantity.bound().symbol.unit)),
                "{}",
                quantity.name()
            );
            assert_eq!(school(*quantity, quantity.bound().symbol.unit, 0.1 + 0.2), 0.1 + 0.2);
        }
    }

    #[test]
    fn units_are_read_and_missing_units_asked_for() {
        let Ok(Column::Reading(Quantity::Pressure, unit)) = column("pressure_mmhg") else { panic!() };
        assert!((school(Quantity::Pressure, &unit, 760.0) - 101.325).abs() < 2e-5);
        let error = column("volume").unwrap_err();
        assert_eq!(
            (error.code, &*error.allowed),
            (Code::Ambiguous, "volume_cm3, volume_ml, volume_dm3, volume_l, volume_m3")
        );
        assert_eq!(&*column("volum_cm3").unwrap_err().advice, "did you mean volume_cm3?");
        assert_eq!(column("weather"), Ok(Column::Note));
    }
}
