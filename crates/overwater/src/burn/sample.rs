//! The samples that are known, found by name or formula, and the two answers to "what does it make?".

use crate::burn::{Combustion, Fuel};
use crate::reference::burns::{BURNS, Burn};
use crate::reference::oxides::Oxides;
use crate::{Code, Error, Result};

/// Whose answer it is.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Role {
    /// What thermodynamics and an excess of oxygen favour.
    Favoured,
    /// What a mark scheme usually credits.
    Credited,
    /// Both.
    Both,
}

impl Role {
    /// In words.
    #[must_use]
    pub const fn words(self) -> &'static str {
        match self {
            Role::Favoured => "favoured by excess oxygen",
            Role::Credited => "usually credited",
            Role::Both => "favoured and credited",
        }
    }
}

/// One answer to what a sample makes.
#[derive(Debug, Clone, PartialEq)]
pub struct Answer {
    /// Whose answer it is.
    pub role: Role,
    /// The combustion.
    pub combustion: Combustion,
}

/// A sample that is known.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Sample {
    /// Its row of the table.
    pub burn: &'static Burn,
}

impl Sample {
    /// Finds a sample by one of its names (in any case) or by its formula.
    ///
    /// ```
    /// use overwater::burn::Sample;
    /// assert_eq!(Sample::find("Steel wool")?.burn.formula, "Fe");
    /// assert_eq!(Sample::find("Na")?.name(), "sodium");
    /// # Ok::<(), overwater::Error>(())
    /// ```
    ///
    /// # Errors
    /// `unknown_name`, with the nearest name that is known.
    pub fn find(text: &str) -> Result<Sample> {
        let wanted = text.trim();
        let lower = wanted.to_lowercase();
        let found = BURNS.iter().find(|burn| burn.formula == wanted || burn.names.contains(&lower.as_str()));
        found.map(|burn| Sample { burn }).ok_or_else(|| {
            let names: Vec<&str> = BURNS.iter().filter_map(|burn| burn.names.first().copied()).collect();
            let every = BURNS.iter().flat_map(|burn| burn.names).copied();
            let error = Error::new(Code::UnknownName, "burn").value(wanted).allowed(names.join(", "));
            match crate::nearest(&lower, every) {
                Some(name) => error.advice(format!("did you mean {name}?")),
                None => error,
            }
        })
    }

    /// The name that is printed.
    #[must_use]
    pub fn name(&self) -> &'static str {
        self.burn.names.first().copied().unwrap_or(self.burn.formula)
    }

    /// The answers: what is favoured, and what is usually credited where that differs.
    ///
    /// # Errors
    /// Those of [`answers`].
    pub fn answers(&self) -> Result<Vec<Answer>> {
        answers(&Fuel::find(self.burn.formula)?)
    }
}

/// The answers to what a fuel makes in an excess of oxygen: what is favoured, and what is usually credited where that
/// differs.
///
/// ```
/// use overwater::burn::{Fuel, Role, answers};
/// let sodium = answers(&Fuel::find("Na")?)?;
/// let equations: Vec<String> = sodium.iter().map(|answer| answer.combustion.equation.to_string()).collect();
/// assert_eq!(equations, ["2Na + O2 -> Na2O2", "4Na + O2 -> 2Na2O"]);
/// assert_eq!(sodium[0].role, Role::Favoured);
/// # Ok::<(), overwater::Error>(())
/// ```
///
/// # Errors
/// Those of [`Combustion::to`].
pub fn answers(fuel: &Fuel) -> Result<Vec<Answer>> {
    let rows = fuel.oxides()?;
    let favoured: Vec<&'static str> = rows.iter().map(|row| row.favoured).collect();
    let kinds = rows.iter().map(|row| row.credited.len()).max().unwrap_or(0);
    let credited: Vec<Vec<&'static str>> = (0..kinds)
        .map(|kind| {
            let of = |row: &&'static Oxides| {
                row.credited.get(kind).or(row.credited.first()).copied().unwrap_or(row.favoured)
            };
            rows.iter().map(of).collect()
        })
        .collect();
    let role = if credited.contains(&favoured) { Role::Both } else { Role::Favoured };
    let mut found = vec![Answer { role, combustion: Combustion::to(fuel, &favoured)? }];
    for products in credited.into_iter().filter(|products| *products != favoured) {
        match Combustion::to(fuel, &products) {
            Ok(combustion) => found.push(Answer { role: Role::Credited, combustion }),
            // A lower oxide burns to the favoured one only: what is credited stands before it already.
            Err(error) if matches!(error.code, Code::Contradiction | Code::NoBalance) => {}
            Err(error) => return Err(error),
        }
    }
    Ok(found)
}

/// What a fuel makes in too little oxygen, by rule: hydrogen burns first, then carbon to the monoxide, and copper and
/// the alkali metals to their lower oxides. Nothing where that is no other answer.
///
/// The rule stands for what is left when the gas has cooled quickly; at the flame's own temperature the equilibrium
/// decides ([`crate::burn::equilibrium`]), and soot and hydrogen come with less oxygen still.
///
/// ```
/// use overwater::burn::{Fuel, in_little_oxygen};
/// let methane = in_little_oxygen(&Fuel::find("CH4")?)?.unwrap();
/// assert_eq!(methane.equation.to_string(), "2CH4 + 3O2 -> 2CO + 4H2O");
/// assert!(in_little_oxygen(&Fuel::find("Mg")?)?.is_none());
/// # Ok::<(), overwater::Error>(())
/// ```
///
/// # Errors
/// Those of [`Combustion::to`].
pub fn in_little_oxygen(fuel: &Fuel) -> Result<Option<Combustion>> {
    let rows = fuel.oxides()?;
    if rows.iter().all(|row| row.poor == row.favoured) {
        return Ok(None);
    }
    let products: Vec<&str> = rows.iter().map(|row| row.poor).collect();
    match Combustion::to(fuel, &products) {
        Ok(combustion) => Ok(Some(combustion)),
        Err(error) if matches!(error.code, Code::Contradiction | Code::NoBalance) => Ok(None),
        Err(error) => Err(error),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_row_of_the_table_balances_and_is_found_by_all_its_names() {
        for burn in &BURNS {
            for name in burn.names.iter().chain([&burn.formula]) {
                assert_eq!(Sample::find(name).unwrap().burn, burn);
            }
            let answers = Sample { burn }.answers().unwrap();
            assert!(answers.iter().all(|answer| answer.combustion.equation.is_balanced()));
            assert!(answers.iter().any(|answer| answer.role != Role::Credited), "{}", burn.formula);
            assert!(answers.iter().any(|answer| answer.role != Role::Favoured), "{}", burn.formula);
        }
    }

    #[test]
    fn sodium_and_iron_have_two_answers() {
        let products = |name: &str| -> Vec<(Role, String)> {
            let answers = Sample::find(name).unwrap().answers().unwrap();
            answers.into_iter().map(|a| (a.role, a.combustion.product.to_string())).collect()
        };
        assert_eq!(
            products("sodium"),
            [(Role::Favoured, "Na2O2".to_owned()), (Role::Credited, "Na2O".to_owned())]
        );
        assert_eq!(
            products("iron"),
            [(Role::Both, "Fe3O4".to_owned()), (Role::Credited, "Fe2O3".to_owned())]
        );
    }

    #[test]
    fn an_unknown_sample_names_the_nearest_known_one() {
        let error = Sample::find("magnesum").unwrap_err();
        assert_eq!(error.code, Code::UnknownName);
        assert!(error.advice.contains("magnesium"), "{error}");
        assert!(Sample::find("gold").unwrap_err().advice.is_empty());
    }
}
