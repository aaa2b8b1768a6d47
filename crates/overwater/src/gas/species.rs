//! Which gas is meant.

pub use crate::reference::gases::Gas;

use crate::reference::gases::{GASES_2021, GasRow};
use crate::{Code, Error, Result, nearest};

impl Gas {
    /// Reads a gas by its formula or by one of its names.
    ///
    /// ```
    /// use overwater::gas::species::Gas;
    /// assert_eq!(Gas::read("N2O"), Ok(Gas::DinitrogenOxide));
    /// assert_eq!(Gas::read("Sulphur dioxide"), Ok(Gas::SulfurDioxide));
    /// let error = Gas::read("oxigen").unwrap_err();
    /// assert_eq!(error.code, overwater::Code::UnknownName);
    /// assert!(error.to_string().contains("oxygen"));
    /// ```
    ///
    /// # Errors
    /// `unknown_name`, with the nearest name where one is near.
    pub fn read(text: &str) -> Result<Gas> {
        let wanted = text.trim();
        let lower = wanted.to_lowercase();
        let found = GASES_2021.iter().find(|row| {
            row.formula == Some(wanted) || row.names.iter().any(|name| name.to_lowercase() == lower)
        });
        if let Some(row) = found {
            return Ok(row.gas);
        }
        let names = GASES_2021.iter().flat_map(|row| row.names.iter().copied());
        let formulas = GASES_2021.iter().filter_map(|row| row.formula);
        let advice = match nearest(&lower, names).or_else(|| nearest(wanted, formulas)) {
            Some(name) => format!("did you mean {name}?"),
            None => "give a formula such as O2 or a name such as oxygen".to_owned(),
        };
        let allowed = GASES_2021.iter().filter_map(|row| row.names.first().copied()).collect::<Vec<_>>();
        Err(Error::new(Code::UnknownName, "gas").value(wanted).allowed(allowed.join(", ")).advice(advice))
    }

    /// Every gas.
    pub fn all() -> impl Iterator<Item = Gas> {
        GASES_2021.iter().map(|row| row.gas)
    }

    /// Its row of the table.
    #[must_use]
    pub fn row(self) -> Option<&'static GasRow> {
        GASES_2021.iter().find(|row| row.gas == self)
    }

    /// The name that is printed.
    #[must_use]
    pub fn name(self) -> &'static str {
        self.row().and_then(|row| row.names.first().copied()).unwrap_or_default()
    }

    /// Its formula; none for air.
    #[must_use]
    pub fn formula(self) -> Option<&'static str> {
        self.row().and_then(|row| row.formula)
    }
}

/// The refusal of a property that a gas has no data for.
pub(crate) fn no_data(gas: Gas, what: &str, advice: &'static str) -> Error {
    Error::new(Code::CannotBeMet, "gas")
        .value(gas.name())
        .allowed(format!("a gas with {what}"))
        .advice(advice)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_gas_is_read_by_each_of_its_names_and_stands_once() {
        for (index, row) in GASES_2021.iter().enumerate() {
            for name in row.names.iter().copied().chain(row.formula) {
                assert_eq!(Gas::read(name), Ok(row.gas), "{name}");
                assert_eq!(Gas::read(&format!(" {name} ")), Ok(row.gas), "{name}");
            }
            assert_eq!(row.gas.name(), row.names[0]);
            assert!(GASES_2021[..index].iter().all(|other| other.gas != row.gas), "{:?}", row.gas);
        }
        assert_eq!(Gas::all().count(), GASES_2021.len());
        // Formulas keep their case: Co is cobalt, not carbon monoxide.
        assert_eq!(Gas::read("Co").unwrap_err().code, Code::UnknownName);
        assert_eq!(Gas::read("").unwrap_err().code, Code::UnknownName);
    }
}
