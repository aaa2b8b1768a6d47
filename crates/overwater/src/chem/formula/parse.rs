//! Reading a formula.
//!
//! One pass over the bytes, left to right, with `winnow` for the tokens. Refusals are boxed and built in cold
//! functions, so that a formula that is right costs two allocations and no more.

use winnow::Parser as _;
use winnow::error::EmptyError;
use winnow::token::take_while;

use super::dot::{Dot, meaning};
use super::{Bracket, Formula, Item, MAX_CHARGE, MAX_FORMULA_BYTES, MAX_NESTING, State, suggest};
use crate::chem::{Atom, Count};
use crate::{Code, Error};

type Read<T> = std::result::Result<T, Box<Error>>;

const DOT: &[u8] = "·".as_bytes();
const MINUS: &[u8] = "−".as_bytes();
const UPPER_PLUS: &[u8] = "⁺".as_bytes();
const UPPER_MINUS: &[u8] = "⁻".as_bytes();

pub(super) fn parse(text: &str) -> Read<Formula> {
    if text.len() > MAX_FORMULA_BYTES {
        return Err(too_long(text));
    }
    let start = text.len() - text.trim_start().len();
    let trimmed = text.trim();
    if trimmed.is_empty() {
        return Err(Box::new(
            Error::new(Code::Missing, "formula")
                .advice("write a formula, such as H2O2 or CuSO4·5H2O")
                .span(0, text.len()),
        ));
    }
    let room = trimmed.len().min(16);
    let mut reader = Reader {
        text,
        end: start + trimmed.len(),
        rest: trimmed.as_bytes(),
        first: None,
        items: Vec::with_capacity(room),
        totals: Vec::with_capacity(room),
        groups: Vec::new(),
        part: Part { coefficient: Count::ONE, item: 0, total: 0 },
        plain_digits: None,
    };
    reader.formula()
}

/// The state that this text begins with.
pub(crate) fn state_at(text: &[u8]) -> Option<State> {
    State::ALL.into_iter().find(|state| text.starts_with(state.symbol().as_bytes()))
}

struct Group {
    bracket: Bracket,
    /// Where the bracket stands in the text.
    at: usize,
    /// How many totals and items there were when it opened.
    total: usize,
    item: usize,
}

/// The part of an adduct that is being read.
struct Part {
    coefficient: Count,
    item: usize,
    total: usize,
}

struct Reader<'t> {
    text: &'t str,
    end: usize,
    rest: &'t [u8],
    /// The coefficient of the first part and where it was written.
    first: Option<(Count, usize, usize)>,
    items: Vec<Item>,
    /// Atoms in order of writing, with their numbers multiplied out so far.
    totals: Vec<(Atom, Count)>,
    groups: Vec<Group>,
    part: Part,
    /// Where the digits that were read last stand, if they were plain ones: a plain sign may follow them.
    plain_digits: Option<usize>,
}

impl<'t> Reader<'t> {
    fn formula(&mut self) -> Read<Formula> {
        if let Some(number) = self.coefficient()? {
            self.first = Some(number);
            self.part.coefficient = number.0;
        }
        let mut electron = false;
        let mut dots = false;
        loop {
            match self.rest.first() {
                Some(b'A'..=b'Z') => self.atoms()?,
                Some(b'(') if state_at(self.rest).is_some() => break,
                Some(b'(') => self.open(Bracket::Round)?,
                Some(b'[') => self.open(Bracket::Square)?,
                Some(b')') => self.close(Bracket::Round)?,
                Some(b']') => self.close(Bracket::Square)?,
                Some(b'e') if self.items.is_empty() && self.first.is_none() && self.electron() => {
                    electron = true;
                    break;
                }
                None | Some(b'+' | b'-' | b'^') => break,
                _ if self.sign_follows() => break,
                _ if self.dot()? => dots = true,
                Some(b' ') if state_at(self.rest.trim_ascii_start()).is_some() => break,
                _ => return Err(self.unexpected()),
            }
        }
        self.end_part(electron)?;
        if let Some((_, start, end)) = self.first.filter(|_| !dots) {
            return Err(self.refuse(
                Code::Syntax,
                (start, end),
                "a symbol or a bracket first",
                "leave the number out: a number before a formula belongs to an equation, or to an adduct such as 3CdSO4·8H2O",
            ));
        }
        let charge_at = self.at();
        let charge = self.charge()?;
        if electron && charge != -1 {
            return Err(self.refuse(
                Code::Syntax,
                (charge_at, self.end),
                "e- or e^-",
                "the electron has one negative charge",
            ));
        }
        let state = self.state();
        if !self.rest.is_empty() {
            return Err(self.unexpected());
        }
        Ok(Formula {
            first: self.first.map_or(Count::ONE, |(count, ..)| count),
            items: std::mem::take(&mut self.items),
            charge,
            state,
            composition: self.merged_totals()?,
        })
    }

    fn at(&self) -> usize {
        self.end - self.rest.len()
    }

    fn skip(&mut self, bytes: usize) {
        self.rest = self.rest.get(bytes..).unwrap_or_default();
    }

    fn take(&mut self, token: &[u8]) -> bool {
        let found = self.rest.starts_with(token);
        if found {
            self.skip(token.len());
        }
        found
    }

    fn digits(&mut self) -> &'t [u8] {
        digits.parse_next(&mut self.rest).unwrap_or_default()
    }

    fn atoms(&mut self) -> Read<()> {
        let start = self.at();
        let letters = symbol.parse_next(&mut self.rest).unwrap_or_default();
        let atom = match letters {
            [first] => Atom::from_letters(*first, None),
            [first, second] => Atom::from_letters(*first, Some(*second)),
            _ => None,
        };
        let Some(atom) = atom else {
            return Err(self.unknown(start, start + letters.len()));
        };
        let count = self.subscript()?;
        self.items.push(Item::Atoms(atom, count));
        self.totals.push((atom, count));
        Ok(())
    }

    /// Takes `e` when a charge follows it.
    fn electron(&mut self) -> bool {
        let before = self.rest;
        self.skip(1);
        let found = matches!(self.rest.first(), Some(b'+' | b'-' | b'^')) || self.sign_follows();
        if !found {
            self.rest = before;
        }
        found
    }

    fn open(&mut self, bracket: Bracket) -> Read<()> {
        let at = self.at();
        if self.groups.len() == MAX_NESTING {
            return Err(self.refuse(
                Code::TooLarge,
                (at, at + 1),
                &format!("brackets up to {MAX_NESTING} deep"),
                "write the formula with fewer brackets inside each other",
            ));
        }
        self.groups.push(Group { bracket, at, total: self.totals.len(), item: self.items.len() });
        self.items.push(Item::Open(bracket));
        self.plain_digits = None;
        self.skip(1);
        Ok(())
    }

    fn close(&mut self, bracket: Bracket) -> Read<()> {
        let at = self.at();
        let Some(group) = self.groups.pop() else {
            return Err(self.refuse(
                Code::Syntax,
                (at, at + 1),
                "",
                "no bracket is open here; open one before it or leave it out",
            ));
        };
        if group.bracket != bracket {
            return Err(self.refuse(
                Code::Syntax,
                (group.at, at + 1),
                "( ) and [ ]",
                "close each bracket with its own kind",
            ));
        }
        if self.items.len() == group.item + 1 {
            return Err(self.refuse(
                Code::Syntax,
                (group.at, at + 1),
                "",
                "there is nothing between the brackets",
            ));
        }
        self.skip(1);
        let count = self.subscript()?;
        self.items.push(Item::Close(bracket, count));
        self.multiply(group.total, count, at)
    }

    /// Multiplies the totals from `from` on.
    fn multiply(&mut self, from: usize, count: Count, at: usize) -> Read<()> {
        if count == Count::ONE {
            return Ok(());
        }
        for (_, total) in self.totals.iter_mut().skip(from) {
            match total.checked_mul(count) {
                Some(product) => *total = product,
                None => return Err(too_many(self.text, at, self.at())),
            }
        }
        Ok(())
    }

    /// Ends the part of the adduct: it must have something in it and every bracket must be closed.
    fn end_part(&mut self, electron: bool) -> Read<()> {
        let at = self.at();
        if let Some(group) = self.groups.last() {
            return Err(self.refuse(Code::Syntax, (group.at, at), "", "close this bracket"));
        }
        if self.items.len() == self.part.item && !electron {
            return Err(self.refuse(
                Code::Syntax,
                (at, at),
                "a symbol such as Na or a bracket",
                "a formula is missing here",
            ));
        }
        self.multiply(self.part.total, self.part.coefficient, at)
    }

    /// A dot between the parts of an adduct, with spaces around it, and the coefficient behind it.
    fn dot(&mut self) -> Read<bool> {
        let before = self.rest;
        self.rest = self.rest.trim_ascii_start();
        if !self.take(b".") && !self.take(DOT) {
            self.rest = before;
            return Ok(false);
        }
        self.rest = before;
        self.end_part(false)?;
        self.rest = self.rest.trim_ascii_start();
        let _ = self.take(b".") || self.take(DOT);
        self.rest = self.rest.trim_ascii_start();
        let coefficient = self.coefficient()?.map_or(Count::ONE, |(count, ..)| count);
        self.items.push(Item::Dot(coefficient));
        self.part = Part { coefficient, item: self.items.len(), total: self.totals.len() };
        self.plain_digits = None;
        Ok(true)
    }

    /// A number before a part, whole or decimal, with its place.
    fn coefficient(&mut self) -> Read<Option<(Count, usize, usize)>> {
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
    fn subscript(&mut self) -> Read<Count> {
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

    fn sign_follows(&self) -> bool {
        matches!(self.rest, [0xC2 | 0xE2, ..])
            && (self.rest.starts_with(MINUS)
                || raised_digit(self.rest).is_some()
                || raised_sign(self.rest).is_some())
    }

    fn charge(&mut self) -> Read<i32> {
        let start = self.at();
        let (sign, number) = if self.take(b"^") {
            self.caret_charge(start)?
        } else if let Some(sign) = plain_sign(&mut self.rest) {
            let part = self.items.get(self.part.item..).unwrap_or_default();
            if self.plain_digits.is_some() && !super::plain_sign_is_clear(part) {
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

    fn state(&mut self) -> Option<State> {
        let behind = self.rest.trim_ascii_start();
        let state = state_at(behind)?;
        self.rest = behind;
        self.skip(state.symbol().len());
        Some(state)
    }

    /// Each atom once, in order of first appearance.
    fn merged_totals(&mut self) -> Read<Vec<(Atom, Count)>> {
        let mut merged = std::mem::take(&mut self.totals);
        let mut kept = 0;
        for next in 0..merged.len() {
            let Some(&(atom, count)) = merged.get(next) else {
                break;
            };
            match merged.iter_mut().take(kept).find(|(kind, _)| *kind == atom) {
                Some((_, total)) => match total.checked_add(count) {
                    Some(sum) => *total = sum,
                    None => return Err(too_many(self.text, 0, self.text.len())),
                },
                None => {
                    merged.swap(kept, next);
                    kept += 1;
                }
            }
        }
        merged.truncate(kept);
        Ok(merged)
    }

    #[cold]
    fn refuse(&self, code: Code, (start, end): (usize, usize), allowed: &str, advice: &str) -> Box<Error> {
        Box::new(
            Error::new(code, "formula")
                .value(excerpt(self.text))
                .allowed(allowed)
                .advice(advice)
                .span(start, end),
        )
    }

    #[cold]
    fn unknown(&self, start: usize, end: usize) -> Box<Error> {
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
    fn unexpected(&self) -> Box<Error> {
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
    fn two_readings_of_dot(&self, start: usize) -> Box<Error> {
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
    fn two_readings_of_sign(&self, sign: usize) -> Box<Error> {
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

fn digits<'t>(input: &mut &'t [u8]) -> std::result::Result<&'t [u8], EmptyError> {
    take_while(0.., |byte: u8| byte.is_ascii_digit()).parse_next(input)
}

/// A capital letter and every small letter behind it, so that no symbol is read in part.
fn symbol<'t>(input: &mut &'t [u8]) -> std::result::Result<&'t [u8], EmptyError> {
    (
        take_while(1, |byte: u8| byte.is_ascii_uppercase()),
        take_while(0.., |byte: u8| byte.is_ascii_lowercase()),
    )
        .take()
        .parse_next(input)
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

/// The text as an error shows it: whole, or its beginning when it is long.
pub(crate) fn excerpt(text: &str) -> String {
    const LONGEST: usize = 120;
    match text.char_indices().nth(LONGEST) {
        None => text.to_owned(),
        Some((end, _)) => format!("{}...", text.get(..end).unwrap_or_default()),
    }
}

#[cold]
fn too_long(text: &str) -> Box<Error> {
    Box::new(
        Error::new(Code::TooLarge, "formula")
            .value(format!("{} bytes", text.len()))
            .allowed(format!("{MAX_FORMULA_BYTES} bytes"))
            .advice("write a shorter formula")
            .span(0, text.len()),
    )
}

#[cold]
fn too_many(text: &str, start: usize, end: usize) -> Box<Error> {
    Box::new(
        Error::new(Code::TooLarge, "formula")
            .value(excerpt(text))
            .allowed("numbers of atoms up to 10^15, with up to 12 decimals")
            .advice("write smaller numbers")
            .span(start, end),
    )
}
