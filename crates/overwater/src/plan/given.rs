//! Taking a value from the lesson or, where there is none, from the defaults, and remembering which.

use crate::bounds::Bound;
use crate::plan::defaults::Default;
use crate::units::Unit;
use crate::{Code, Error, Result};

/// Something that was taken because the lesson did not say.
#[derive(Debug, Clone, PartialEq)]
pub struct Assumption {
    /// The key in the lesson that would change it.
    pub key: String,
    /// What was taken, with its unit.
    pub taken: String,
    /// Why.
    pub why: String,
}

/// The values taken so far.
#[derive(Debug, std::default::Default)]
pub(super) struct Given {
    assumptions: Vec<Assumption>,
}

impl Given {
    /// The lesson's value within its bounds, or the default, which is noted.
    pub(super) fn number(
        &mut self,
        value: Option<f64>,
        default: &'static Default,
        bound: &'static Bound,
    ) -> Result<f64> {
        match value {
            Some(value) => check(bound, value, default.key),
            None => {
                self.note(default);
                Ok(default.value)
            }
        }
    }

    /// The lesson's whole number within limits, or the default, which is noted.
    pub(super) fn count(
        &mut self,
        value: Option<u32>,
        default: &'static Default,
        least: u32,
        greatest: u32,
    ) -> Result<u32> {
        match value {
            Some(value) if (least..=greatest).contains(&value) => Ok(value),
            Some(value) => Err(Error::new(Code::OutOfRange, default.key)
                .value(value.to_string())
                .allowed(format!("{least} to {greatest}"))
                .advice("a class and its spares fit in this range")),
            None => {
                self.note(default);
                Ok(default.value as u32)
            }
        }
    }

    /// Notes something that was taken in words. What is taken for one key for the same reason is told together.
    pub(super) fn assume(&mut self, key: &str, taken: impl Into<String>, why: impl Into<String>) {
        let (taken, why) = (taken.into(), why.into());
        match self.assumptions.iter_mut().find(|known| known.key == key && known.why == why) {
            Some(known) if known.taken.split(", ").any(|part| part == taken) => {}
            Some(known) => {
                known.taken.push_str(", ");
                known.taken.push_str(&taken);
            }
            None => self.assumptions.push(Assumption { key: key.to_owned(), taken, why }),
        }
    }

    fn note(&mut self, default: &'static Default) {
        self.assume(default.key, with_unit(default.value, default.unit), default.why);
    }

    pub(super) fn assumptions(self) -> Vec<Assumption> {
        self.assumptions
    }
}

/// Checks a value against its bounds, named by its key in the lesson.
pub(super) fn check(bound: &'static Bound, value: f64, key: &'static str) -> Result<f64> {
    bound.check(value).map_err(|error| Error { parameter: key.into(), ..error })
}

fn with_unit(value: f64, unit: &Unit) -> String {
    if unit.text.is_empty() { value.to_string() } else { format!("{value} {}", unit.text) }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::{bounds, plan::defaults};

    #[test]
    fn only_what_was_not_given_is_noted_and_each_thing_once() {
        let mut given = Given::default();
        assert_eq!(given.number(Some(18.0), &defaults::TEMPERATURE, &bounds::TEMPERATURE_C), Ok(18.0));
        assert_eq!(given.number(None, &defaults::JAR, &bounds::VOLUME_CM3), Ok(250.0));
        assert_eq!(given.number(None, &defaults::JAR, &bounds::VOLUME_CM3), Ok(250.0));
        given.assume("sample", "0.1 g of sulfur", "usual");
        given.assume("sample", "0.2 g of iron", "usual");
        let noted = given.assumptions();
        assert_eq!(noted.len(), 2);
        assert_eq!((noted[0].key.as_str(), noted[0].taken.as_str()), ("apparatus.jar_cm3", "250 cm3"));
        assert_eq!(noted[1].taken, "0.1 g of sulfur, 0.2 g of iron");
    }

    #[test]
    fn a_value_outside_its_bounds_is_named_by_its_key() {
        let mut given = Given::default();
        let error = given.number(Some(0.0), &defaults::JAR, &bounds::VOLUME_CM3).unwrap_err();
        assert_eq!(error.parameter, "apparatus.jar_cm3");
        let error = given.count(Some(0), &defaults::GROUPS, 1, 100).unwrap_err();
        assert_eq!((error.parameter.as_ref(), &*error.allowed), ("run.groups", "1 to 100"));
        assert_eq!(given.count(Some(100), &defaults::GROUPS, 1, 100), Ok(100));
        assert!(given.assumptions().is_empty());
    }
}
