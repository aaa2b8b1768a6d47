//! Two straight lines through the same readings, with and without intercept, as every answer gives them.

use overwater::readings::line::{Line, Lines};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// A straight line.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct LineAnswer {
    /// The slope.
    pub slope: f64,
    /// Its standard error; none for as many rows as numbers fitted.
    pub slope_standard_error: Option<f64>,
    /// The intercept; 0 for the line through the origin.
    pub intercept: f64,
    /// Its standard error; 0 for the line through the origin.
    pub intercept_standard_error: Option<f64>,
    /// The standard deviation of the residuals.
    pub residual_standard_deviation: Option<f64>,
    /// The share explained, about the mean for the line with intercept and about zero for the other: the two must not
    /// be compared.
    pub r_squared: Option<f64>,
}

/// An intercept that differs from zero by more than the scatter explains.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct InterceptAnswer {
    /// How likely so large an intercept would be if the true one were zero.
    pub probability: f64,
    /// What it may mean, each a possible cause.
    pub may_mean: Vec<String>,
}

/// Both lines.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct LinesAnswer {
    /// What stands along, with its unit.
    pub x: String,
    /// What stands up, with its unit.
    pub y: String,
    /// The unit of the slopes.
    pub slope_unit: String,
    /// The unit of the intercept.
    pub intercept_unit: String,
    /// How many points.
    pub points: u64,
    /// y = intercept + slope x.
    pub with_intercept: LineAnswer,
    /// y = slope x.
    pub through_origin: LineAnswer,
    /// Where the line through the origin contradicts the points.
    pub warning: Option<InterceptAnswer>,
}

/// A number, where it is one.
pub(crate) fn finite(value: f64) -> Option<f64> {
    value.is_finite().then_some(value)
}

pub(crate) fn line_answer(line: &Line) -> LineAnswer {
    LineAnswer {
        slope: line.slope,
        slope_standard_error: finite(line.slope_error),
        intercept: line.intercept,
        intercept_standard_error: finite(line.intercept_error),
        residual_standard_deviation: finite(line.residual_sd),
        r_squared: finite(line.r_squared),
    }
}

/// What the two axes are.
pub(crate) struct Axes<'a> {
    pub(crate) x: &'a str,
    pub(crate) x_unit: &'a str,
    pub(crate) y: &'a str,
    pub(crate) y_unit: &'a str,
}

fn titled(words: &str, unit: &str) -> String {
    if unit.is_empty() { words.to_owned() } else { format!("{words} / {unit}") }
}

/// The unit of one thing for each unit of another.
pub(crate) fn per(one: &str, other: &str) -> String {
    match (one, other.contains(['/', ' '])) {
        ("", _) => format!("1/{other}"),
        (one, _) if one == other => String::new(),
        (one, false) => match one.split_once('/') {
            Some((above, below)) => {
                let below = below.trim_start_matches('(').trim_end_matches(')');
                format!("{above}/({below} {other})")
            }
            None => format!("{one}/{other}"),
        },
        (one, true) => format!("({one})/({other})"),
    }
}

pub(crate) fn lines_answer(lines: &Lines, axes: &Axes<'_>, may_mean: &[&str]) -> LinesAnswer {
    LinesAnswer {
        x: titled(axes.x, axes.x_unit),
        y: titled(axes.y, axes.y_unit),
        slope_unit: per(axes.y_unit, axes.x_unit),
        intercept_unit: axes.y_unit.to_owned(),
        points: lines.with_intercept.residuals.len() as u64,
        with_intercept: line_answer(&lines.with_intercept),
        through_origin: line_answer(&lines.through_origin),
        warning: lines.warning.map(|warning| InterceptAnswer {
            probability: warning.probability,
            may_mean: may_mean.iter().map(|cause| (*cause).to_owned()).collect(),
        }),
    }
}

#[cfg(test)]
mod tests {
    use super::per;

    #[test]
    fn units_of_slopes() {
        for (one, other, expected) in [
            ("cm3", "s", "cm3/s"),
            ("mol/dm3", "s", "mol/(dm3 s)"),
            ("", "min", "1/min"),
            ("mol/(dm3 s)", "min", "mol/(dm3 s min)"),
            ("cm3/s", "mol/dm3", "(cm3/s)/(mol/dm3)"),
            ("g", "g", ""),
        ] {
            assert_eq!(per(one, other), expected);
        }
    }
}
