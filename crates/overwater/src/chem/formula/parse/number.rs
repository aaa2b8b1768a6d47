//! The numbers in a formula: subscripts and coefficients.

use winnow::Parser as _;
use winnow::error::EmptyError;
use winnow::token::take_while;

use super::refuse::too_many;
use super::{Read, Reader};
use crate::Code;
use crate::chem::Count;
use crate::chem::formula::dot::{Dot, meaning};

impl<'t> Reader<'t> {
    pub(super) fn digits(&mut self) -> &'t [u8] {
        digits.parse_next(&mut self.rest).unwrap_or_default()
    }

    /// A number before a part, whole or decimal, with its place.
    pub(super) fn coefficient(&mut self) -> Read<Option<(Count, usize, usize)>> {
        let start = self.at();
        let whole = self.digits();
        if whole.is_empty() {
            return Ok(None);
        }
        let fraction = self.fraction();
        let count = self.number(start, whole, fraction)?;
        Ok(Some((count, start, self.at())))
    }

    /// The digits behind a decimal point; nothing is taken unless both are there.
    fn fraction(&mut self) -> &'t [u8] {
        match self.rest {
            [b'.', b'0'..=b'9', ..] => {
                self.skip(1);
                self.digits()
            }
            _ => &[],
        }
    }

    /// The number behind a symbol or a bracket; one where none is written.
    pub(super) fn subscript(&mut self) -> Read<Count> {
        self.plain_digits = None;
        let start = self.at();
        match self.rest.first() {
            Some(b'0'..=b'9') => {
                let whole = self.digits();
                self.plain_digits = Some(start);
                let fraction = match self.rest {
                    [b'.', behind @ ..] if behind.first().is_some_and(u8::is_ascii_digit) => {
                        match meaning(whole, behind) {
                            Dot::Decimal => self.fraction(),
                            Dot::Adduct => &[],
                            Dot::Either => return Err(self.two_readings_of_dot(start)),
                        }
                    }
                    _ => &[],
                };
                self.number(start, whole, fraction)
            }
            Some(b'_') => {
                self.skip(1);
                let whole = self.digits();
                if whole.is_empty() {
                    let at = self.at();
                    return Err(self.refuse(
                        Code::Syntax,
                        (start, at),
                        "digits",
                        "a number is missing behind the underscore",
                    ));
                }
                let fraction = self.fraction();
                self.number(start, whole, fraction)
            }
            Some(0xE2) => {
                let whole = self.lowered_digits();
                if whole.is_empty() {
                    return Ok(Count::ONE);
                }
                let before = self.rest;
                let fraction = if self.take(b".") { self.lowered_digits() } else { Vec::new() };
                if fraction.is_empty() {
                    self.rest = before;
                }
                self.number(start, &whole, &fraction)
            }
            _ => Ok(Count::ONE),
        }
    }

    /// Unicode subscripts as plain digits.
    fn lowered_digits(&mut self) -> Vec<u8> {
        let mut plain = Vec::new();
        while let [0xE2, 0x82, digit @ 0x80..=0x89, ..] = self.rest {
            plain.push(b'0' + (digit & 0x0F));
            self.skip(3);
        }
        plain
    }

    fn number(&self, start: usize, whole: &[u8], fraction: &[u8]) -> Read<Count> {
        let place = (start, self.at());
        if let [b'0', _, ..] = whole {
            return Err(self.refuse(
                Code::Syntax,
                place,
                "",
                "a number does not begin with 0; was the letter O meant?",
            ));
        }
        let mut digits: u64 = 0;
        for digit in whole.iter().chain(fraction) {
            digits = match digits.checked_mul(10).and_then(|tens| tens.checked_add(u64::from(digit - b'0'))) {
                Some(digits) => digits,
                None => return Err(too_many(self.text, place.0, place.1)),
            };
        }
        let decimals = u8::try_from(fraction.len()).unwrap_or(u8::MAX);
        match Count::new(digits, decimals) {
            Some(count) => Ok(count),
            None if digits == 0 => {
                Err(self.refuse(Code::Syntax, place, "a number above 0", "leave out what is not there"))
            }
            None => Err(too_many(self.text, place.0, place.1)),
        }
    }
}

fn digits<'t>(input: &mut &'t [u8]) -> std::result::Result<&'t [u8], EmptyError> {
    take_while(0.., |byte: u8| byte.is_ascii_digit()).parse_next(input)
}
