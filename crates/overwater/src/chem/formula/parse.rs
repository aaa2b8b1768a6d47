//! Reading a formula.
//!
//! One pass over the bytes, left to right, with `winnow` for the tokens. Refusals are boxed and built in cold
//! functions, so that a formula that is right costs two allocations and no more.

mod charge;
mod number;
mod refuse;

use winnow::Parser as _;
use winnow::error::EmptyError;
use winnow::token::take_while;

use self::refuse::{too_long, too_many};
use super::{Bracket, Formula, Item, MAX_FORMULA_BYTES, MAX_NESTING, State};
use crate::chem::{Atom, Count};
use crate::{Code, Error};

pub(crate) use self::refuse::excerpt;

type Read<T> = std::result::Result<T, Box<Error>>;

const DOT: &[u8] = "·".as_bytes();

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
