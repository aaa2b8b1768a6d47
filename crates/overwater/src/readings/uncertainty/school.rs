//! The rules of school examinations: half-widths of readings, percentages added.
//!
//! For products and quotients percentages are added, a power multiplies the percentage, for sums and differences the absolute
//! half-widths are added. To first order all three are one relation, Δy = Σ |∂y/∂x| Δx, which holds for a whole chain of
//! steps and is what is computed here. Boards differ and change their rules: a rule set is data, with its year.

use std::borrow::Cow;

use super::model::MeasurementModel;
use super::stated::{Stated, stated};
use crate::{Code, Error, Result};

/// How much of a scale's smallest division a reading may be off.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Division {
    /// Half of it.
    Half,
    /// All of it.
    Whole,
}

impl Division {
    const fn share(self) -> f64 {
        match self {
            Division::Half => 0.5,
            Division::Whole => 1.0,
        }
    }
}

/// A set of rules.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct SchoolRules {
    /// Its name for programs, with its year.
    pub name: &'static str,
    /// What it says of a scale with lines.
    pub analogue: Division,
    /// What it says of a display with digits.
    pub digital: Division,
    /// Whether a difference of two readings has twice the half-width of one.
    pub difference_doubles: bool,
    /// Significant figures of the uncertainty.
    pub figures: usize,
    /// Where it is met.
    pub source: &'static str,
}

/// Half a division of a scale, one unit in the last digit of a display, doubled for a difference of two readings.
pub static HALF_DIVISION_2026: SchoolRules = SchoolRules {
    name: "half_division_2026",
    analogue: Division::Half,
    digital: Division::Whole,
    difference_doubles: true,
    figures: 1,
    source: "common practice of school examinations as met in 2026, no single source",
};

/// A whole division of any scale or display, once for a reading and twice for a difference.
pub static WHOLE_DIVISION_2026: SchoolRules = SchoolRules {
    name: "whole_division_2026",
    analogue: Division::Whole,
    digital: Division::Whole,
    difference_doubles: true,
    figures: 1,
    source: "common practice of school examinations as met in 2026, no single source",
};

/// Every set of rules.
pub static ALL: [&SchoolRules; 2] = [&HALF_DIVISION_2026, &WHOLE_DIVISION_2026];

/// How an input was read.
#[derive(Debug, Clone, PartialEq)]
pub enum Reading {
    /// Its half-width is known, as from the mark on class B glass.
    HalfWidth(f64),
    /// A scale with lines: the smallest division, and how many readings make the value (2 for a difference).
    Scale {
        /// The smallest division.
        division: f64,
        /// One, or two for a difference.
        readings: u8,
    },
    /// A display with digits: one unit of the last digit, and how many readings make the value.
    Display {
        /// One unit of the last digit.
        division: f64,
        /// One, or two for a difference.
        readings: u8,
    },
    /// Repeats: the value is their mean, the half-width half their range.
    Repeats(Vec<f64>),
}

/// An input of a school budget.
#[derive(Debug, Clone, PartialEq)]
pub struct SchoolInput {
    /// Its name.
    pub name: Cow<'static, str>,
    /// Its value; for repeats, their mean.
    pub value: f64,
    /// How it was read.
    pub reading: Reading,
}

impl SchoolRules {
    /// The half-width of a reading.
    ///
    /// ```
    /// use overwater::readings::uncertainty::school::{HALF_DIVISION_2026, Reading};
    /// // A burette read twice to half of 0.1 cm3: 0.10 cm3, 0.4 % of 25.00 cm3 and 4 % of 2.50 cm3 (worked examples of
    /// // practical notes, common practice).
    /// let burette = Reading::Scale { division: 0.1, readings: 2 };
    /// assert_eq!(HALF_DIVISION_2026.half_width("titre_cm3", &burette)?, 0.1);
    /// # Ok::<(), overwater::Error>(())
    /// ```
    ///
    /// # Errors
    /// `not_a_number` and `out_of_range` for a half-width or a division below 0, `out_of_range` for other than 1 or 2 readings,
    /// `missing` for fewer than two repeats.
    pub fn half_width(&self, name: &str, reading: &Reading) -> Result<f64> {
        let held = |value: f64| -> Result<f64> {
            if value.is_finite() && value >= 0.0 {
                return Ok(value);
            }
            let code = if value.is_finite() { Code::OutOfRange } else { Code::NotANumber };
            Err(Error::new(code, name.to_owned())
                .value(value.to_string())
                .allowed("0 or more")
                .advice("an uncertainty has no sign"))
        };
        let of = |division: f64, share: Division, readings: u8| -> Result<f64> {
            let times = match readings {
                1 => 1.0,
                2 if self.difference_doubles => 2.0,
                2 => 1.0,
                _ => {
                    return Err(Error::new(Code::OutOfRange, name.to_owned())
                        .value(format!("{readings} readings"))
                        .allowed("1, or 2 for a difference")
                        .advice("give repeats as repeats"));
                }
            };
            Ok(held(division)? * share.share() * times)
        };
        match reading {
            Reading::HalfWidth(half_width) => held(*half_width),
            Reading::Scale { division, readings } => of(*division, self.analogue, *readings),
            Reading::Display { division, readings } => of(*division, self.digital, *readings),
            Reading::Repeats(repeats) => {
                if repeats.len() < 2 {
                    return Err(Error::new(Code::Missing, name.to_owned())
                        .value(format!("{} repeats", repeats.len()))
                        .allowed("2 or more")
                        .advice("one reading has no range: say how it was read"));
                }
                if let Some(bad) = repeats.iter().find(|value| !value.is_finite()) {
                    return held(*bad);
                }
                let greatest = repeats.iter().copied().fold(f64::NEG_INFINITY, f64::max);
                let least = repeats.iter().copied().fold(f64::INFINITY, f64::min);
                Ok((greatest - least) / 2.0)
            }
        }
    }
}

/// A line of a school budget.
#[derive(Debug, Clone, PartialEq)]
pub struct SchoolLine {
    /// The input.
    pub name: Cow<'static, str>,
    /// Its value.
    pub value: f64,
    /// Its half-width.
    pub half_width: f64,
    /// The half-width in per cent of the value.
    pub percent: f64,
    /// What it adds to the uncertainty of the result, in the unit of the result.
    pub contribution: f64,
    /// Its share of the whole; all shares add up to 1.
    pub share: f64,
}

/// The result by school rules.
#[derive(Debug, Clone, PartialEq)]
pub struct SchoolBudget {
    /// The rules.
    pub rules: &'static SchoolRules,
    /// The result.
    pub value: f64,
    /// Its uncertainty, unrounded.
    pub half_width: f64,
    /// In per cent of the result.
    pub percent: f64,
    /// A line for each input.
    pub lines: Vec<SchoolLine>,
    /// Both as they are written down.
    pub stated: Stated,
}

/// The uncertainty of a model's result by school rules.
///
/// # Errors
/// Those of the model and of [`SchoolRules::half_width`].
pub fn add_up(
    model: &impl MeasurementModel,
    inputs: &[SchoolInput],
    rules: &'static SchoolRules,
) -> Result<SchoolBudget> {
    let half_widths: Vec<f64> =
        inputs.iter().map(|input| rules.half_width(&input.name, &input.reading)).collect::<Result<_>>()?;
    let values: Vec<f64> = inputs.iter().map(|input| input.value).collect();
    let (value, slopes) = model.slopes(&values)?;
    let contributions: Vec<f64> =
        slopes.iter().zip(&half_widths).map(|(slope, half_width)| slope.abs() * half_width).collect();
    let half_width: f64 = contributions.iter().sum();
    let lines = inputs
        .iter()
        .zip(half_widths)
        .zip(contributions)
        .map(|((input, half), contribution)| SchoolLine {
            name: input.name.clone(),
            value: input.value,
            half_width: half,
            percent: 100.0 * half / input.value.abs(),
            contribution,
            share: if half_width > 0.0 { contribution / half_width } else { 0.0 },
        })
        .collect();
    Ok(SchoolBudget {
        rules,
        value,
        half_width,
        percent: 100.0 * half_width / value.abs(),
        lines,
        stated: stated(value, half_width, rules.figures),
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn each_kind_of_reading_by_each_set_of_rules() {
        for (reading, half, whole) in [
            (Reading::HalfWidth(0.3), 0.3, 0.3),
            (Reading::Scale { division: 1.0, readings: 1 }, 0.5, 1.0),
            (Reading::Scale { division: 1.0, readings: 2 }, 1.0, 2.0),
            (Reading::Display { division: 0.01, readings: 1 }, 0.01, 0.01),
            (Reading::Display { division: 0.01, readings: 2 }, 0.02, 0.02),
            (Reading::Repeats(vec![25.1, 25.4, 25.2]), 0.15, 0.15),
        ] {
            for (rules, expected) in [(&HALF_DIVISION_2026, half), (&WHOLE_DIVISION_2026, whole)] {
                let found = rules.half_width("x", &reading).unwrap();
                assert!((found - expected).abs() < 1e-12, "{} {reading:?}: {found}", rules.name);
            }
        }
        let once = SchoolRules { difference_doubles: false, ..HALF_DIVISION_2026 };
        assert_eq!(once.half_width("x", &Reading::Scale { division: 1.0, readings: 2 }), Ok(0.5));
    }

    #[test]
    fn what_cannot_be_is_refused() {
        let code = |reading: Reading| HALF_DIVISION_2026.half_width("x", &reading).unwrap_err().code;
        assert_eq!(code(Reading::HalfWidth(-0.1)), Code::OutOfRange);
        assert_eq!(code(Reading::HalfWidth(f64::NAN)), Code::NotANumber);
        assert_eq!(code(Reading::Scale { division: -1.0, readings: 1 }), Code::OutOfRange);
        assert_eq!(code(Reading::Scale { division: 1.0, readings: 0 }), Code::OutOfRange);
        assert_eq!(code(Reading::Display { division: 1.0, readings: 3 }), Code::OutOfRange);
        assert_eq!(code(Reading::Repeats(vec![1.0])), Code::Missing);
        assert_eq!(code(Reading::Repeats(vec![1.0, f64::INFINITY])), Code::NotANumber);
    }
}
