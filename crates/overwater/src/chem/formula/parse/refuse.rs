//! Refusals, each with its place and its advice.

use super::Reader;
use crate::chem::formula::{MAX_FORMULA_BYTES, suggest};
use crate::{Code, Error};

impl Reader<'_> {
    #[cold]
    pub(super) fn refuse(
        &self,
        code: Code,
        (start, end): (usize, usize),
        allowed: &str,
        advice: &str,
    ) -> Box<Error> {
        Box::new(
            Error::new(code, "formula")
                .value(excerpt(self.text))
                .allowed(allowed)
                .advice(advice)
                .span(start, end),
        )
    }

    #[cold]
    pub(super) fn unknown(&self, start: usize, end: usize) -> Box<Error> {
        let letters = self.text.get(start..end).unwrap_or_default();
        self.refuse(
            Code::UnknownName,
            (start, end),
            "the symbols of the elements, D, T, and e- for the electron",
            &suggest::advice(letters),
        )
    }

    /// What stands here fits nowhere.
    #[cold]
    pub(super) fn unexpected(&self) -> Box<Error> {
        let at = self.at();
        let here = self.text.get(at..).unwrap_or_default();
        let letters = here.bytes().take_while(u8::is_ascii_lowercase).count();
        if letters > 0 {
            return self.unknown(at, at + letters);
        }
        let sign = here.chars().next();
        let advice = match sign {
            Some(sign) if sign.is_whitespace() => "a formula has no space inside it".to_owned(),
            Some(sign) if sign.is_ascii_digit() => "a number does not fit here".to_owned(),
            Some(sign) => format!("\"{sign}\" does not fit here"),
            None => "something is missing here".to_owned(),
        };
        let allowed = "symbols, numbers, ( ) and [ ], a dot before a further part, then a charge, then (s), (l), (g) or (aq)";
        self.refuse(Code::Syntax, (at, at + sign.map_or(0, char::len_utf8)), allowed, &advice)
    }

    /// `start`: where the digits before the dot begin; the dot is next.
    #[cold]
    pub(super) fn two_readings_of_dot(&self, start: usize) -> Box<Error> {
        let dot = self.at();
        let (before, behind) = (self.text.get(..dot), self.text.get(dot + 1..));
        let (head, number) = (self.text.get(..start), self.text.get(start..));
        let adduct = [before.unwrap_or_default(), "·", behind.unwrap_or_default()].concat();
        let decimal = [head.unwrap_or_default(), "_", number.unwrap_or_default()].concat();
        let digits = behind.unwrap_or_default().bytes().take_while(u8::is_ascii_digit).count();
        let decimal = excerpt(decimal.trim());
        let advice = if self.groups.is_empty() {
            format!("write {} for an adduct or {decimal} for a decimal subscript", excerpt(adduct.trim()))
        } else {
            format!("write {decimal} for a decimal subscript; an adduct does not stand inside brackets")
        };
        self.refuse(Code::Ambiguous, (start, dot + 1 + digits), "", &advice)
    }

    /// `sign`: where the sign stands.
    #[cold]
    pub(super) fn two_readings_of_sign(&self, sign: usize) -> Box<Error> {
        let with_caret_at = |place: usize| {
            let (head, tail) = self.text.split_at_checked(place).unwrap_or((self.text, ""));
            excerpt([head, "^", tail].concat().trim())
        };
        self.refuse(
            Code::Ambiguous,
            (self.plain_digits.unwrap_or(sign), self.at()),
            "",
            &format!(
                "write {} when the number is part of the charge, {} when it counts atoms",
                with_caret_at(sign.saturating_sub(1)),
                with_caret_at(sign)
            ),
        )
    }
}

/// The text as an error shows it: whole, or its beginning when it is long.
pub(crate) fn excerpt(text: &str) -> String {
    const LONGEST: usize = 120;
    match text.char_indices().nth(LONGEST) {
        None => text.to_owned(),
        Some((end, _)) => format!("{}...", text.get(..end).unwrap_or_default()),
    }
}

#[cold]
pub(super) fn too_long(text: &str) -> Box<Error> {
    Box::new(
        Error::new(Code::TooLarge, "formula")
            .value(format!("{} bytes", text.len()))
            .allowed(format!("{MAX_FORMULA_BYTES} bytes"))
            .advice("write a shorter formula")
            .span(0, text.len()),
    )
}

#[cold]
pub(super) fn too_many(text: &str, start: usize, end: usize) -> Box<Error> {
    Box::new(
        Error::new(Code::TooLarge, "formula")
            .value(excerpt(text))
            .allowed("numbers of atoms up to 10^15, with up to 12 decimals")
            .advice("write smaller numbers")
            .span(start, end),
    )
}
