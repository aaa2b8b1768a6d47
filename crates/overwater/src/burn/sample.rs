//! The samples that are known, found by name or formula, and the two answers to "what does it make?".

use crate::burn::Combustion;
use crate::reference::burns::{BURNS, Burn};
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
    /// Those of [`Combustion::new`].
    pub fn answers(&self) -> Result<Vec<Answer>> {
        let Burn { formula, favoured, credited, .. } = *self.burn;
        let both = favoured.iter().map(|product| {
            let role = if credited.contains(product) { Role::Both } else { Role::Favoured };
            (role, *product)
        });
        let only_credited =
            credited.iter().filter(|product| !favoured.contains(product)).map(|p| (Role::Credited, *p));
        both.chain(only_credited)
            .map(|(role, product)| Ok(Answer { role, combustion: Combustion::new(formula, product)? }))
            .collect()
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
