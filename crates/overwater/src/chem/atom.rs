//! What a formula counts: an element as found in nature, or deuterium or tritium by its own symbol.

use std::fmt;

use crate::reference::elements::{self, DEUTERIUM_2020, Element, Isotope, TRITIUM_2020};

/// A kind of atom in a formula: an element of natural composition, or one of the isotopes `D` and `T`.
///
/// `H`, `D` and `T` are different kinds: a balanced equation conserves each of them.
#[derive(Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub struct Atom(u8);

impl Atom {
    /// Deuterium, `D`.
    pub const D: Atom = Atom(elements::PLACE_D);
    /// Tritium, `T`.
    pub const T: Atom = Atom(elements::PLACE_T);

    /// The atom with this symbol: one of the 118 elements, `D` or `T`.
    ///
    /// ```
    /// use overwater::chem::Atom;
    /// assert_eq!(Atom::from_symbol("Fe").unwrap().name(), "iron");
    /// assert_eq!(Atom::from_symbol("D"), Some(Atom::D));
    /// assert_eq!(Atom::from_symbol("fe"), None);
    /// ```
    #[must_use]
    pub fn from_symbol(symbol: &str) -> Option<Self> {
        match symbol.as_bytes() {
            [first] => Self::from_letters(*first, None),
            [first, second] => Self::from_letters(*first, Some(*second)),
            _ => None,
        }
    }

    pub(crate) fn from_letters(first: u8, second: Option<u8>) -> Option<Self> {
        elements::place_of(first, second).map(Atom)
    }

    /// The natural element of this atomic number, 1 to 118.
    #[must_use]
    pub fn from_number(number: u8) -> Option<Self> {
        elements::by_number(number).map(|element| Atom(element.number))
    }

    /// The element, when it is one of natural composition.
    #[must_use]
    pub fn element(self) -> Option<&'static Element> {
        elements::by_number(self.0)
    }

    /// The isotope, when it is `D` or `T`.
    #[must_use]
    pub fn isotope(self) -> Option<&'static Isotope> {
        match self {
            Atom::D => Some(&DEUTERIUM_2020),
            Atom::T => Some(&TRITIUM_2020),
            _ => None,
        }
    }

    /// The symbol.
    #[must_use]
    pub fn symbol(self) -> &'static str {
        self.element().map(|e| e.symbol).or(self.isotope().map(|i| i.symbol)).unwrap_or_default()
    }

    /// The English name in lower case.
    #[must_use]
    pub fn name(self) -> &'static str {
        self.element().map(|e| e.name).or(self.isotope().map(|i| i.name)).unwrap_or_default()
    }
}

impl fmt::Debug for Atom {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(self.symbol())
    }
}

impl fmt::Display for Atom {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(self.symbol())
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_atom_has_a_symbol_that_finds_it() {
        let atoms: Vec<Atom> = (1..=118).filter_map(Atom::from_number).chain([Atom::D, Atom::T]).collect();
        assert_eq!(atoms.len(), 120);
        for atom in atoms {
            assert_eq!(Atom::from_symbol(atom.symbol()), Some(atom));
            assert!(!atom.name().is_empty(), "{atom}");
        }
    }

    #[test]
    fn isotopes_are_not_elements() {
        assert_eq!(Atom::D.isotope().map(|i| i.mass_number), Some(2));
        assert_eq!(Atom::T.isotope().map(|i| i.mass_number), Some(3));
        assert!(Atom::D.element().is_none() && Atom::T.element().is_none());
        assert_eq!((Atom::D.to_string(), format!("{:?}", Atom::T)), ("D".into(), "T".into()));
        assert!(Atom::from_number(1).unwrap().isotope().is_none());
        assert_eq!((Atom::from_number(0), Atom::from_number(119)), (None, None));
        assert_eq!(Atom::from_symbol("Hel"), None);
    }
}
