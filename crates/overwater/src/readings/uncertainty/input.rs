//! What is known of an input: its value, its standard uncertainty, its distribution.

use std::borrow::Cow;

use crate::{Code, Error, Result};

/// How the values that an input may have are spread.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Distribution {
    /// Bell-shaped (JCGM 101:2008, 6.4.7).
    Normal,
    /// All values between two limits alike (JCGM 101:2008, 6.4.2).
    Rectangular,
    /// Between two limits, the middle likeliest (JCGM 101:2008, 6.4.5).
    Triangular,
    /// The mean of a few repeats (JCGM 101:2008, 6.4.9): Student's, scaled and shifted.
    Student,
}

impl Distribution {
    /// Its name for programs.
    #[must_use]
    pub const fn name(self) -> &'static str {
        match self {
            Distribution::Normal => "normal",
            Distribution::Rectangular => "rectangular",
            Distribution::Triangular => "triangular",
            Distribution::Student => "student",
        }
    }
}

/// An input of a model with what is known of it.
#[derive(Debug, Clone, PartialEq)]
pub struct Input {
    /// Its name, by which correlations refer to it.
    pub name: Cow<'static, str>,
    /// Its best value.
    pub value: f64,
    /// Its standard uncertainty, in the unit of the value. For [`Distribution::Student`], s/√n.
    pub standard_uncertainty: f64,
    /// How it is spread.
    pub distribution: Distribution,
    /// Degrees of freedom of the standard uncertainty; infinite where it is not from repeats.
    pub degrees_of_freedom: f64,
}

impl Input {
    /// A value with a standard uncertainty, taken as normal.
    ///
    /// ```
    /// use overwater::readings::uncertainty::input::Input;
    /// let volume = Input::normal("volume_cm3", 86.5, 0.3);
    /// assert_eq!((volume.standard_uncertainty, volume.degrees_of_freedom), (0.3, f64::INFINITY));
    /// ```
    #[must_use]
    pub fn normal(name: impl Into<Cow<'static, str>>, value: f64, standard_uncertainty: f64) -> Input {
        Input {
            name: name.into(),
            value,
            standard_uncertainty,
            distribution: Distribution::Normal,
            degrees_of_freedom: f64::INFINITY,
        }
    }

    /// A value that is taken as known.
    #[must_use]
    pub fn exact(name: impl Into<Cow<'static, str>>, value: f64) -> Input {
        Input::normal(name, value, 0.0)
    }

    /// A value that lies within `half_width` either way, all of it alike: u = a/√3 (GUM 4.3.7).
    ///
    /// ```
    /// use overwater::readings::uncertainty::input::Input;
    /// // GUM 4.3.7 and its example: a half-width of 0.40 gives 0.23.
    /// assert!((Input::rectangular("a", 16.57, 0.40).standard_uncertainty - 0.23).abs() < 0.005);
    /// ```
    #[must_use]
    pub fn rectangular(name: impl Into<Cow<'static, str>>, value: f64, half_width: f64) -> Input {
        Input {
            distribution: Distribution::Rectangular,
            ..Input::normal(name, value, half_width / 3.0_f64.sqrt())
        }
    }

    /// A value that lies within `half_width` either way, the middle likeliest: u = a/√6 (GUM 4.3.9).
    #[must_use]
    pub fn triangular(name: impl Into<Cow<'static, str>>, value: f64, half_width: f64) -> Input {
        Input {
            distribution: Distribution::Triangular,
            ..Input::normal(name, value, half_width / 6.0_f64.sqrt())
        }
    }

    /// The mean of repeats with its experimental standard deviation s/√n and n - 1 degrees of freedom (GUM 4.2.3).
    ///
    /// # Errors
    /// `missing` for fewer than two repeats, `not_a_number`.
    pub fn repeats(name: impl Into<Cow<'static, str>>, repeats: &[f64]) -> Result<Input> {
        let name = name.into();
        let count = repeats.len() as f64;
        if repeats.len() < 2 {
            return Err(Error::new(Code::Missing, name)
                .value(format!("{} repeats", repeats.len()))
                .allowed("2 or more")
                .advice(
                    "one reading says nothing about scatter: give a half-width or a standard uncertainty",
                ));
        }
        if let Some(bad) = repeats.iter().find(|value| !value.is_finite()) {
            return Err(Error::new(Code::NotANumber, name).value(bad.to_string()).advice("give numbers"));
        }
        let mean = repeats.iter().sum::<f64>() / count;
        let squares: f64 = repeats.iter().map(|value| (value - mean) * (value - mean)).sum();
        Ok(Input {
            name,
            value: mean,
            standard_uncertainty: (squares / (count - 1.0) / count).sqrt(),
            distribution: Distribution::Student,
            degrees_of_freedom: count - 1.0,
        })
    }

    /// The same input with these degrees of freedom.
    #[must_use]
    pub fn with_degrees_of_freedom(mut self, degrees_of_freedom: f64) -> Input {
        self.degrees_of_freedom = degrees_of_freedom;
        self
    }

    /// Holds it to what an input may be.
    ///
    /// # Errors
    /// `not_a_number`; `out_of_range` for a standard uncertainty below 0 or degrees of freedom below 1; `contradiction` for
    /// Student's distribution without whole repeats behind it.
    pub fn check(&self) -> Result<()> {
        let wrong = |code, value: f64, what: &str, advice: &'static str| {
            Err(Error::new(code, self.name.clone())
                .value(value.to_string())
                .allowed(what.to_owned())
                .advice(advice))
        };
        if !self.value.is_finite() {
            return wrong(Code::NotANumber, self.value, "a number", "give the value that was read");
        }
        let u = self.standard_uncertainty;
        if !u.is_finite() {
            return wrong(
                Code::NotANumber,
                u,
                "a number, 0 or more",
                "give the standard uncertainty, or a half-width",
            );
        }
        if u < 0.0 {
            return wrong(Code::OutOfRange, u, "an uncertainty of 0 or more", "an uncertainty has no sign");
        }
        let nu = self.degrees_of_freedom;
        if nu.is_nan() || nu < 1.0 {
            return wrong(
                Code::OutOfRange,
                nu,
                "1 or more degrees of freedom",
                "n repeats leave n - 1 of them",
            );
        }
        Ok(())
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn repeats_give_mean_scatter_and_degrees_of_freedom() {
        // 2, 4, 6: mean 4, s = 2, u = 2/√3.
        let input = Input::repeats("x", &[2.0, 4.0, 6.0]).unwrap();
        assert_eq!((input.value, input.degrees_of_freedom), (4.0, 2.0));
        assert!((input.standard_uncertainty - 2.0 / 3.0_f64.sqrt()).abs() < 1e-15);
        assert_eq!(input.distribution, Distribution::Student);
        assert_eq!(Input::repeats("x", &[2.0]).unwrap_err().code, Code::Missing);
        assert_eq!(Input::repeats("x", &[2.0, f64::NAN]).unwrap_err().code, Code::NotANumber);
    }

    #[test]
    fn what_cannot_be_is_refused() {
        let code = |input: Input| input.check().unwrap_err().code;
        assert_eq!(code(Input::normal("x", f64::NAN, 0.1)), Code::NotANumber);
        assert_eq!(code(Input::normal("x", 1.0, f64::NAN)), Code::NotANumber);
        assert_eq!(code(Input::normal("x", 1.0, f64::INFINITY)), Code::NotANumber);
        assert_eq!(code(Input::normal("x", 1.0, -1e-300)), Code::OutOfRange);
        assert_eq!(code(Input::exact("x", 1.0).with_degrees_of_freedom(0.999)), Code::OutOfRange);
        assert_eq!(code(Input::exact("x", 1.0).with_degrees_of_freedom(f64::NAN)), Code::OutOfRange);
        assert!(Input::exact("x", 1.0).with_degrees_of_freedom(1.0).check().is_ok());
        assert!((Input::triangular("x", 0.0, 6.0_f64.sqrt()).standard_uncertainty - 1.0).abs() < 1e-15);
    }
}
