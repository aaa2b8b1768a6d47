//! What may have been meant by a symbol that is no element.

use strsim::damerau_levenshtein;

use crate::chem::Atom;
use crate::reference::elements::{self, STANDARD_ATOMIC_WEIGHTS_2024};

/// Advice for letters that are no symbol; never empty.
pub(super) fn advice(letters: &str) -> String {
    if let Some((symbol, name)) = by_name(letters) {
        return format!("\"{letters}\" is no symbol; write {symbol} for {name}");
    }
    if let Some(symbol) = capitalised(letters) {
        return format!("\"{letters}\": a symbol begins with a capital letter, such as {symbol}");
    }
    let near = near_symbols(letters);
    if near.is_empty() {
        format!("\"{letters}\" is no symbol of an element")
    } else {
        format!("\"{letters}\" is no symbol of an element; near it are {}", near.join(", "))
    }
}

/// The element whose name, or nearly whose name, was written; names of four letters and more only.
fn by_name(letters: &str) -> Option<(&'static str, &'static str)> {
    let lower = letters.to_ascii_lowercase();
    let (distance, element) = (1..=118)
        .filter_map(elements::by_number)
        .map(|element| (damerau_levenshtein(&lower, element.name), element))
        .min_by_key(|(distance, _)| *distance)?;
    let allowed = if lower.len() >= 6 { 2 } else { usize::from(lower.len() >= 5) };
    (distance <= allowed && lower.len() >= 3).then_some((element.symbol, element.name))
}

/// For letters in lower case: the symbol that they begin with, once capitalised.
fn capitalised(letters: &str) -> Option<&'static str> {
    let [first, rest @ ..] = letters.as_bytes() else {
        return None;
    };
    if !first.is_ascii_lowercase() {
        return None;
    }
    let first = first.to_ascii_uppercase();
    let two = rest.first().and_then(|second| Atom::from_letters(first, Some(*second)));
    two.or_else(|| Atom::from_letters(first, None)).map(Atom::symbol)
}

/// Up to four symbols that differ in one letter, by atomic number.
fn near_symbols(letters: &str) -> Vec<&'static str> {
    let differs_by_one = |symbol: &&str| match (letters.as_bytes(), symbol.as_bytes()) {
        ([a, b], [c, d]) => (a == c) != (b == d),
        ([a], [c, _]) => a == c,
        _ => false,
    };
    STANDARD_ATOMIC_WEIGHTS_2024.iter().map(|e| e.symbol).filter(differs_by_one).take(4).collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn names_capitals_and_neighbours_are_suggested() {
        assert_eq!(advice("Xl"), "\"Xl\" is no symbol of an element; near it are Al, Cl, Xe, Tl");
        assert_eq!(advice("A"), "\"A\" is no symbol of an element; near it are Al, Ar, As, Ag");
        assert_eq!(advice("Sodium"), "\"Sodium\" is no symbol; write Na for sodium");
        assert_eq!(advice("sodum"), "\"sodum\" is no symbol; write Na for sodium");
        assert_eq!(advice("Tin"), "\"Tin\" is no symbol; write Sn for tin");
        assert_eq!(advice("nacl"), "\"nacl\": a symbol begins with a capital letter, such as Na");
        assert_eq!(advice("h"), "\"h\": a symbol begins with a capital letter, such as H");
        assert_eq!(advice("Oqasza"), "\"Oqasza\" is no symbol of an element");
        assert_eq!(advice("J"), "\"J\" is no symbol of an element");
        assert_eq!(advice("q"), "\"q\" is no symbol of an element");
    }

    #[test]
    fn a_name_may_be_one_letter_off_from_five_and_two_from_six() {
        assert_eq!(by_name("iron"), Some(("Fe", "iron")));
        assert_eq!(by_name("irop"), None);
        assert_eq!(by_name("boronn"), Some(("B", "boron")));
        assert_eq!(by_name("xenom"), Some(("Xe", "xenon")));
        assert_eq!(by_name("xexom"), None);
        assert_eq!(by_name("pottasum"), None);
        assert_eq!(by_name("pottasium"), Some(("K", "potassium")));
    }
}
