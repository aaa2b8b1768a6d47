//! The charge at the end of a formula.

use super::{Read, Reader};
use crate::Code;
use crate::chem::formula::{MAX_CHARGE, plain_sign_is_clear};

const MINUS: &[u8] = "−".as_bytes();
const UPPER_PLUS: &[u8] = "⁺".as_bytes();
const UPPER_MINUS: &[u8] = "⁻".as_bytes();

impl Reader<'_> {
    pub(super) fn sign_follows(&self) -> bool {
        matches!(self.rest, [0xC2 | 0xE2, ..])
            && (self.rest.starts_with(MINUS)
                || raised_digit(self.rest).is_some()
                || raised_sign(self.rest).is_some())
    }

    pub(super) fn charge(&mut self) -> Read<i32> {
        let start = self.at();
        let (sign, number) = if self.take(b"^") {
            self.caret_charge(start)?
        } else if let Some(sign) = plain_sign(&mut self.rest) {
            let part = self.items.get(self.part.item..).unwrap_or_default();
            if self.plain_digits.is_some() && !plain_sign_is_clear(part) {
                return Err(self.two_readings_of_sign(start));
            }
            (sign, 1)
        } else {
            let mut number = 0;
            let mut any = false;
            while let Some((digit, width)) = raised_digit(self.rest) {
                number = (number * 10 + digit).min(MAX_CHARGE + 1);
                any = true;
                self.skip(width);
            }
            match raised_sign(self.rest) {
                Some(sign) => {
                    self.skip(3);
                    (sign, if any { number } else { 1 })
                }
                None if any => {
                    let at = self.at();
                    return Err(self.refuse(
                        Code::Syntax,
                        (start, at),
                        "²⁺ or ²⁻",
                        "the sign of the charge is missing",
                    ));
                }
                None => return Ok(0),
            }
        };
        let place = (start, self.at());
        if number == 0 {
            return Err(self.refuse(Code::Syntax, place, "", "leave out a charge of 0"));
        }
        if number > MAX_CHARGE {
            return Err(self.refuse(
                Code::TooLarge,
                place,
                &format!("charges up to {MAX_CHARGE}"),
                "write a smaller charge",
            ));
        }
        if plain_sign(&mut self.rest).is_some() || raised_sign(self.rest).is_some() {
            let place = (start, self.at().max(place.1));
            return Err(self.refuse(
                Code::Syntax,
                place,
                "one sign",
                "write the number before the sign: Ca^2+",
            ));
        }
        Ok(sign * number)
    }

    /// Behind the caret: a number and a sign, in this or the other order, or a sign alone.
    fn caret_charge(&mut self, start: usize) -> Read<(i32, i32)> {
        let mut written = self.digits();
        let sign = plain_sign(&mut self.rest);
        if written.is_empty() && sign.is_some() {
            written = self.digits();
        }
        let Some(sign) = sign else {
            let at = self.at();
            return Err(self.refuse(
                Code::Syntax,
                (start, at),
                "^2+ or ^2-",
                "the sign of the charge is missing",
            ));
        };
        let number = written
            .iter()
            .fold(0, |number, digit| (number * 10 + i32::from(digit - b'0')).min(MAX_CHARGE + 1));
        Ok((sign, if written.is_empty() { 1 } else { number }))
    }
}

fn plain_sign(rest: &mut &[u8]) -> Option<i32> {
    let (sign, width) = match rest {
        [b'+', ..] => (1, 1),
        [b'-', ..] => (-1, 1),
        _ if rest.starts_with(MINUS) => (-1, MINUS.len()),
        _ => return None,
    };
    *rest = rest.get(width..).unwrap_or_default();
    Some(sign)
}

/// A Unicode superscript digit and its width in bytes.
fn raised_digit(text: &[u8]) -> Option<(i32, usize)> {
    match text {
        [0xC2, 0xB9, ..] => Some((1, 2)),
        [0xC2, 0xB2, ..] => Some((2, 2)),
        [0xC2, 0xB3, ..] => Some((3, 2)),
        [0xE2, 0x81, digit @ (0xB0 | 0xB4..=0xB9), ..] => Some((i32::from(digit & 0x0F), 3)),
        _ => None,
    }
}

fn raised_sign(text: &[u8]) -> Option<i32> {
    if text.starts_with(UPPER_PLUS) {
        Some(1)
    } else if text.starts_with(UPPER_MINUS) {
        Some(-1)
    } else {
        None
    }
}
