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

    /// Notes something that was taken in words.
    pub(super) fn assume(
        &mut self,
        key: impl Into<String>,
        taken: impl Into<String>,
        why: impl Into<String>,
    ) {
        let assumption = Assumption { key: key.into(), taken: taken.into(), why: why.into() };
        if !self.assumptions.contains(&assumption) {
            self.assumptions.push(assumption);
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
