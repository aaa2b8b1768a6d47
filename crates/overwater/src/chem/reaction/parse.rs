//! Reading an equation.

use winnow::Parser as _;
use winnow::error::EmptyError;
use winnow::token::take_while;

use super::{Arrow, MAX_EQUATION_BYTES, MAX_SPECIES, Reaction, Term};
use crate::chem::formula::{excerpt, state_at};
use crate::chem::{Count, Formula};
use crate::{Code, Error, Result};

const ARROWS: [(&str, Arrow); 4] =
    [("->", Arrow::Forward), ("→", Arrow::Forward), ("=", Arrow::Equals), ("⇌", Arrow::Reversible)];

pub(super) fn parse(text: &str) -> Result<Reaction> {
    if text.len() > MAX_EQUATION_BYTES {
        return Err(Error::new(Code::TooLarge, "equation")
            .value(format!("{} bytes", text.len()))
            .allowed(format!("{MAX_EQUATION_BYTES} bytes"))
            .advice("write a shorter equation")
            .span(0, text.len()));
    }
    if text.trim().is_empty() {
        return Err(
            refuse(text, Code::Missing, 0, text.len()).advice("write an equation, such as H2O2 -> H2O + O2")
        );
    }
    let Some((at, width, arrow)) = find_arrow(text, 0) else {
        return Err(refuse(text, Code::Syntax, 0, text.len())
            .allowed("-> or → or = or ⇌")
            .advice("write an arrow between what reacts and what is formed"));
    };
    let after = at + width;
    if let Some((second, width, _)) = find_arrow(text, after) {
        return Err(refuse(text, Code::Syntax, second, second + width).advice("an equation has one arrow"));
    }
    let reactants = side(text, 0, at)?;
    let products = side(text, after, text.len())?;
    let species = reactants.len() + products.len();
    if species > MAX_SPECIES {
        return Err(refuse(text, Code::TooLarge, 0, text.len())
            .allowed(format!("{MAX_SPECIES} species"))
            .advice(format!("there are {species}; write the equation in several steps")));
    }
    Ok(Reaction { reactants, products, arrow })
}

/// The first arrow from `from` on: its place, its width, and which it is.
fn find_arrow(text: &str, from: usize) -> Option<(usize, usize, Arrow)> {
    let bytes = text.as_bytes();
    (from..bytes.len()).find_map(|at| {
        let here = bytes.get(at..)?;
        // Every arrow begins with one of these bytes.
        if !matches!(here, [b'-' | b'=' | 0xE2, ..]) {
            return None;
        }
        let (symbol, arrow) = ARROWS.iter().find(|(symbol, _)| here.starts_with(symbol.as_bytes()))?;
        Some((at, symbol.len(), *arrow))
    })
}

/// The species of one side, which lies at `start..end` of the text.
fn side(text: &str, start: usize, end: usize) -> Result<Vec<Term>> {
    let mut terms = Vec::with_capacity(4);
    let mut from = start;
    for at in start..=end {
        if at == end || joins(text, start, at, end) {
            terms.push(term(text, from, at)?);
            from = at + 1;
        }
    }
    Ok(terms)
}

/// Whether the byte at `at` is a `+` between two species, not the sign of a charge.
fn joins(text: &str, start: usize, at: usize, end: usize) -> bool {
    let side = text.as_bytes().get(..end).unwrap_or_default();
    if side.get(at) != Some(&b'+') {
        return false;
    }
    let before = side.get(start..at).and_then(|before| before.last());
    let behind = side.get(at + 1..).unwrap_or_default();
    match before {
        None | Some(b' ' | b'\t' | b'\n' | b'\r') => true,
        Some(b'^') => false,
        Some(_) => match behind {
            [b'(', ..] => state_at(behind).is_none(),
            [next, ..] => next.is_ascii_alphanumeric() || *next == b'[',
            [] => false,
        },
    }
}

/// A coefficient, where there is one, and a formula.
fn term(text: &str, start: usize, end: usize) -> Result<Term> {
    let written = text.get(start..end).unwrap_or_default();
    let trimmed = written.trim();
    if trimmed.is_empty() {
        return Err(refuse(text, Code::Missing, start, end).advice("a formula is missing here"));
    }
    let start = start + (written.len() - written.trim_start().len());
    let mut rest = trimmed;
    let number = number.parse_next(&mut rest).unwrap_or_default();
    let place = (start, start + number.len());
    if rest.trim_start().starts_with('/') {
        return Err(refuse(text, Code::Syntax, place.0, place.1)
            .allowed("whole and decimal numbers")
            .advice("write 0.5 for 1/2, or multiply the whole equation until every number is whole"));
    }
    let coefficient = coefficient(number).map_err(|code| {
        refuse(text, code, place.0, place.1)
            .allowed("numbers above 0 and up to 10^15")
            .advice("leave out what does not take part; a number does not begin with a needless 0")
    })?;
    let formula_text = rest.trim_start();
    let offset = start + (trimmed.len() - formula_text.len());
    let formula = Formula::parse(formula_text).map_err(|error| moved(error, text, offset))?;
    Ok(Term { coefficient, formula })
}

/// A whole or decimal number, or nothing.
fn number<'t>(input: &mut &'t str) -> std::result::Result<&'t str, EmptyError> {
    let digits = |input: &mut &'t str| -> std::result::Result<&'t str, EmptyError> {
        take_while(1.., |c: char| c.is_ascii_digit()).parse_next(input)
    };
    let whole = *input;
    digits(input)?;
    let before = *input;
    if ('.', digits).parse_next(input).is_err() {
        *input = before;
    }
    Ok(whole.get(..whole.len() - input.len()).unwrap_or_default())
}

fn coefficient(number: &str) -> std::result::Result<Count, Code> {
    if number.is_empty() {
        return Ok(Count::ONE);
    }
    let (whole, fraction) = number.split_once('.').unwrap_or((number, ""));
    if whole.len() > 1 && whole.starts_with('0') {
        return Err(Code::Syntax);
    }
    let digits: u64 = [whole, fraction].concat().parse().map_err(|_| Code::TooLarge)?;
    if digits == 0 {
        return Err(Code::Syntax);
    }
    let decimals = u8::try_from(fraction.len()).map_err(|_| Code::TooLarge)?;
    Count::new(digits, decimals).ok_or(Code::TooLarge)
}

/// A refusal of a formula, seen from the equation in which it stands at `offset`.
fn moved(error: Error, text: &str, offset: usize) -> Error {
    let (start, end) = error.span.unwrap_or_default();
    Error { parameter: "equation".into(), value: excerpt(text).into_boxed_str(), ..error }
        .span(offset + start, offset + end)
}

#[cold]
fn refuse(text: &str, code: Code, start: usize, end: usize) -> Error {
    Error::new(code, "equation").value(excerpt(text)).span(start, end)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn printed(text: &str) -> String {
        let reaction = Reaction::parse(text).unwrap_or_else(|error| panic!("{text}: {error}"));
        let printed = reaction.to_string();
        assert_eq!(Reaction::parse(&printed).as_ref(), Ok(&reaction), "{printed}");
        printed
    }

    #[test]
    fn equations_are_read_in_every_spelling() {
        for (text, expected) in [
            ("H2O2 -> H2O + O2", "H2O2 -> H2O + O2"),
            ("H2+O2->H2O", "H2 + O2 -> H2O"),
            ("2 H2 + O2 → 2 H2O", "2H2 + O2 -> 2H2O"),
            ("N2 + 3H2 ⇌ 2NH3", "N2 + 3H2 ⇌ 2NH3"),
            ("H2 + 0.5O2 = H2O", "H2 + 0.5O2 = H2O"),
            ("Na+ + Cl- -> NaCl", "Na+ + Cl- -> NaCl"),
            ("Na++Cl-->NaCl", "Na+ + Cl- -> NaCl"),
            ("Na+(aq)+Cl-(aq)->NaCl(s)", "Na+(aq) + Cl-(aq) -> NaCl(s)"),
            ("Fe+(NH4)2SO4->Fe", "Fe + (NH4)2SO4 -> Fe"),
            ("Fe+[Fe]->Fe", "Fe + [Fe] -> Fe"),
            ("Fe+2H2O=Fe", "Fe + 2H2O = Fe"),
            ("MnO4- + 8H+ + 5e- -> Mn^2+ + 4H2O", "MnO4- + 8H+ + 5e- -> Mn^2+ + 4H2O"),
            ("Fe^+3 + e- -> Fe^+2", "Fe^3+ + e- -> Fe^2+"),
            ("H+->H", "H+ -> H"),
            ("Ca^2+=Ca", "Ca^2+ = Ca"),
            ("Cl⁻ → Cl₂ + e⁻", "Cl- -> Cl2 + e-"),
            ("H2O (l) -> H2O (g)", "H2O(l) -> H2O(g)"),
            ("CuSO4 . 5H2O -> CuSO4 + H2O", "CuSO4·5H2O -> CuSO4 + H2O"),
            ("3CdSO4.8H2O -> Cd", "3CdSO4·8H2O -> Cd"),
            ("1 3CdSO4.8H2O -> Cd", "1 3CdSO4·8H2O -> Cd"),
            ("2 3CdSO4.8H2O -> Cd", "2 3CdSO4·8H2O -> Cd"),
            ("H2\n+ O2 -> H2O", "H2 + O2 -> H2O"),
        ] {
            assert_eq!(printed(text), expected);
        }
        let three = Reaction::parse("3CdSO4.8H2O -> Cd").unwrap();
        assert_eq!(three.reactants()[0].coefficient.whole(), Some(3));
        let one = Reaction::parse("1 3CdSO4.8H2O -> Cd").unwrap();
        assert_eq!(one.reactants()[0].coefficient, Count::ONE);
        assert_eq!((one.arrow(), one.products().len()), (Arrow::Forward, 1));
    }

    #[test]
    fn refusals_point_into_the_equation() {
        use Code::{Ambiguous, Missing, Syntax, TooLarge, UnknownName};
        for (text, code, span) in [
            ("", Missing, (0, 0)),
            ("H2 + O2", Syntax, (0, 7)),
            ("H2 -> O2 -> H2O", Syntax, (9, 11)),
            ("-> H2O", Missing, (0, 0)),
            ("H2 ->  ", Missing, (5, 7)),
            ("H2 + + O2 -> H2O", Missing, (4, 5)),
            ("H2 + O2 -> H2Xl", UnknownName, (13, 15)),
            ("H2 + 2 COqasza -> H2", UnknownName, (8, 14)),
            ("0H2 -> H2", Syntax, (0, 1)),
            ("02H2 -> H2", Syntax, (0, 2)),
            ("H2 + 1/2 O2 -> H2O", Syntax, (5, 6)),
            ("99999999999999999999H2 -> H2", TooLarge, (0, 20)),
            ("9999999999999999H2 -> H2", TooLarge, (0, 16)),
            ("Fe3+ + e- -> Fe", Ambiguous, (2, 4)),
            ("H2 O2 -> H2", Syntax, (2, 3)),
            ("2 -> H2", Missing, (1, 1)),
        ] {
            let error = Reaction::parse(text).unwrap_err();
            assert_eq!((error.code, error.span), (code, Some(span)), "{text}: {error}");
            assert_eq!(error.parameter, "equation");
            assert!(!error.advice.is_empty());
        }
    }

    #[test]
    fn limits_are_where_they_are_said_to_be() {
        let many = |species: usize| format!("{} -> H", vec!["H"; species - 1].join(" + "));
        assert_eq!(Reaction::parse(&many(MAX_SPECIES)).unwrap().reactants().len(), MAX_SPECIES - 1);
        assert_eq!(Reaction::parse(&many(MAX_SPECIES + 1)).unwrap_err().code, Code::TooLarge);
        let padded = |bytes: usize| format!("{}H -> H", " ".repeat(bytes - 6));
        assert!(Reaction::parse(&padded(MAX_EQUATION_BYTES)).is_ok());
        assert_eq!(Reaction::parse(&padded(MAX_EQUATION_BYTES + 1)).unwrap_err().code, Code::TooLarge);
    }
}
