//! The one shape that every refusal has, wherever it is shown.
//!
//! An error says five things: a stable code for programs, the parameter, the value with its unit, what is
//! allowed, and what to do instead. The same five things travel unchanged to the command line, to JSON and
//! to every other language.

use std::borrow::Cow;
use std::fmt;

/// What kind of refusal it is. The names are stable: programs may compare them.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord)]
#[non_exhaustive]
pub enum Code {
    /// A number is NaN or infinite.
    NotANumber,
    /// A number lies outside its row of the bounds table.
    OutOfRange,
    /// Two values that are each allowed do not go together.
    Contradiction,
    /// Something needed was not given.
    Missing,
    /// The same thing was given twice, in two unit styles.
    GivenTwice,
    /// A text has more than one reading and none of them is taken silently.
    Ambiguous,
    /// A name (of an element, a unit, a key, a substance) is not known.
    UnknownName,
    /// A text does not follow its grammar.
    Syntax,
    /// A chemical equation cannot be balanced.
    NoBalance,
    /// A chemical equation can be balanced in several independent ways.
    ManyBalances,
    /// A whole number is larger than can be held.
    TooLarge,
    /// The request is understood but cannot be met.
    CannotBeMet,
}

impl Code {
    /// Every code, in order of their stable names; a test raises each.
    pub const ALL: [Code; 12] = [
        Code::Ambiguous,
        Code::CannotBeMet,
        Code::Contradiction,
        Code::GivenTwice,
        Code::ManyBalances,
        Code::Missing,
        Code::NoBalance,
        Code::NotANumber,
        Code::OutOfRange,
        Code::Syntax,
        Code::TooLarge,
        Code::UnknownName,
    ];

    /// The stable name, in lower case with underscores.
    ///
    /// ```
    /// assert_eq!(overwater::Code::OutOfRange.name(), "out_of_range");
    /// ```
    #[must_use]
    pub const fn name(self) -> &'static str {
        match self {
            Code::NotANumber => "not_a_number",
            Code::OutOfRange => "out_of_range",
            Code::Contradiction => "contradiction",
            Code::Missing => "missing",
            Code::GivenTwice => "given_twice",
            Code::Ambiguous => "ambiguous",
            Code::UnknownName => "unknown_name",
            Code::Syntax => "syntax",
            Code::NoBalance => "no_balance",
            Code::ManyBalances => "many_balances",
            Code::TooLarge => "too_large",
            Code::CannotBeMet => "cannot_be_met",
        }
    }
}

/// A refusal: what, where, the value with its unit, what is allowed, what to do instead.
///
/// ```
/// use overwater::{Code, Error};
/// let error = Error::new(Code::OutOfRange, "temperature_c")
///     .value("150 degC")
///     .allowed("0 to 100 degC")
///     .advice("give the temperature of the gas in degrees Celsius");
/// assert_eq!(
///     error.to_string(),
///     "temperature_c = 150 degC is out of range; allowed: 0 to 100 degC; \
///      give the temperature of the gas in degrees Celsius"
/// );
/// // Without a parameter it is of the whole text.
/// let error = Error::new(Code::TooLarge, "").value("9 bytes");
/// assert_eq!(error.to_string(), "the text, 9 bytes, is too large");
/// ```
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
pub struct Error {
    /// The kind of refusal.
    pub code: Code,
    /// The name of the parameter, or a path to it (`vessels[2].volume_cm3`).
    pub parameter: Cow<'static, str>,
    /// The value as it was given, with its unit; empty when nothing was given.
    pub value: Box<str>,
    /// What would have been accepted.
    pub allowed: Box<str>,
    /// What to do instead.
    pub advice: Box<str>,
    /// For an error inside a text: the byte range that is wrong, for a caret.
    pub span: Option<(usize, usize)>,
}

impl Error {
    /// A refusal of `parameter`; the other parts are added by the methods that follow.
    #[must_use]
    pub fn new(code: Code, parameter: impl Into<Cow<'static, str>>) -> Self {
        Error {
            code,
            parameter: parameter.into(),
            value: Box::default(),
            allowed: Box::default(),
            advice: Box::default(),
            span: None,
        }
    }

    /// The value as given, with its unit.
    #[must_use]
    pub fn value(mut self, value: impl Into<String>) -> Self {
        self.value = value.into().into_boxed_str();
        self
    }

    /// What would have been accepted.
    #[must_use]
    pub fn allowed(mut self, allowed: impl Into<String>) -> Self {
        self.allowed = allowed.into().into_boxed_str();
        self
    }

    /// What to do instead.
    #[must_use]
    pub fn advice(mut self, advice: impl Into<String>) -> Self {
        self.advice = advice.into().into_boxed_str();
        self
    }

    /// The byte range of the text that is wrong.
    #[must_use]
    pub fn span(mut self, start: usize, end: usize) -> Self {
        self.span = Some((start, end));
        self
    }

    /// The same refusal seen from further out: `outer` is put before the parameter's path.
    ///
    /// ```
    /// use overwater::{Code, Error};
    /// let error = Error::new(Code::Missing, "volume_cm3").within("vessels[2]");
    /// assert_eq!(error.parameter, "vessels[2].volume_cm3");
    /// ```
    #[must_use]
    pub fn within(mut self, outer: &str) -> Self {
        self.parameter = Cow::Owned(if self.parameter.is_empty() {
            outer.to_owned()
        } else {
            format!("{outer}.{}", self.parameter)
        });
        self
    }

    /// The text with a line of carets under the part that is wrong, when the error lies inside a text.
    ///
    /// ```
    /// use overwater::{Code, Error};
    /// let error = Error::new(Code::UnknownName, "formula").value("NaXl").span(2, 3);
    /// assert_eq!(error.caret("NaXl").as_deref(), Some("NaXl\n  ^"));
    /// ```
    #[must_use]
    pub fn caret(&self, text: &str) -> Option<String> {
        let (start, end) = self.span?;
        let before = text.get(..start)?.chars().count();
        let wide = text.get(start..end)?.chars().count().max(1);
        Some(format!("{text}\n{}{}", " ".repeat(before), "^".repeat(wide)))
    }
}

impl fmt::Display for Error {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match (&*self.parameter, &*self.value) {
            // Where no key is to blame, the text as a whole is.
            ("", "") => f.write_str("the text")?,
            ("", value) => write!(f, "the text, {value},")?,
            (parameter, "") => f.write_str(parameter)?,
            (parameter, value) => write!(f, "{parameter} = {value}")?,
        }
        f.write_str(match self.code {
            Code::NotANumber => " is not a finite number",
            Code::OutOfRange => " is out of range",
            Code::Contradiction => " contradicts another value",
            Code::Missing => " is missing",
            Code::GivenTwice => " was given in more than one way",
            Code::Ambiguous => " can be read in more than one way",
            Code::UnknownName => " is not known",
            Code::Syntax => " cannot be read",
            Code::NoBalance => " cannot be balanced",
            Code::ManyBalances => " can be balanced in several independent ways",
            Code::TooLarge => " is too large",
            Code::CannotBeMet => " cannot be met",
        })?;
        if !self.allowed.is_empty() {
            write!(f, "; allowed: {}", self.allowed)?;
        }
        if !self.advice.is_empty() {
            write!(f, "; {}", self.advice)?;
        }
        Ok(())
    }
}
