//! Chemical formulas: what is written, what it counts, what charge it carries.
//!
//! The written structure is kept as a flat list (brackets are entries like any other), so that no depth of
//! brackets can exhaust the stack, and a formula prints as it was written.

mod dot;
mod parse;
mod print;
mod suggest;

pub(super) use parse::{excerpt, state_at};

use std::str::FromStr;

use super::{Atom, Count};
use crate::{Error, Result};

/// The longest text that is read as a formula, in bytes.
pub const MAX_FORMULA_BYTES: usize = 4096;
/// The deepest nesting of brackets.
pub const MAX_NESTING: usize = 64;
/// The greatest charge number of either sign.
pub const MAX_CHARGE: i32 = 999;

/// State of aggregation written behind a formula.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum State {
    /// `(s)`, solid.
    Solid,
    /// `(l)`, liquid.
    Liquid,
    /// `(g)`, gas.
    Gas,
    /// `(aq)`, dissolved in water.
    Aqueous,
}

impl State {
    const ALL: [State; 4] = [State::Solid, State::Liquid, State::Gas, State::Aqueous];

    /// The symbol with its brackets.
    #[must_use]
    pub const fn symbol(self) -> &'static str {
        match self {
            State::Solid => "(s)",
            State::Liquid => "(l)",
            State::Gas => "(g)",
            State::Aqueous => "(aq)",
        }
    }
}

#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
enum Bracket {
    Round,
    Square,
}

/// One entry of the written structure.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
enum Item {
    Atoms(Atom, Count),
    Open(Bracket),
    Close(Bracket, Count),
    /// The dot before a further part of an adduct, with the coefficient of that part.
    Dot(Count),
}

/// A chemical formula.
///
/// # What is read
///
/// - Symbols of the 118 elements, `D` and `T`; brackets `( )` and `[ ]`, nested; numbers behind them.
/// - Hydrates and other adducts with `.` or `·`, with or without spaces around it: `CuSO4·5H2O`,
///   `CaSO4·0.5H2O`, `3CdSO4·8H2O`. A number before the whole formula is read only in an adduct.
/// - Charges: `SO4^2-`, `Fe^3+`, `NO3^-`, and a plain sign at the end, `Na+`, `MnO4-`. `e-` is the electron.
/// - A state at the end: `(s)`, `(l)`, `(g)`, `(aq)`.
/// - Unicode: `H₂O`, `SO₄²⁻`, `Fe₀.₉₅O`. An underscore may stand before a subscript: `H_2O`.
///
/// # The dot between digits
///
/// `CuSO4.5H2O` is a hydrate and `Fe0.95O` has a decimal subscript, yet both have a dot between digits.
///
/// 1. A number that begins with `0.` behind a symbol or bracket is a decimal subscript: `Fe0.95O`.
/// 2. Where the digits behind the dot cannot be a coefficient, because no formula follows them or they begin
///    with 0, it is a decimal subscript: `YBa2Cu3O6.9`, `Fe1.05O`.
/// 3. Where they stand before water, heavy water, hydrogen peroxide, ammonia, methanol or ethanol as the
///    whole of the next part, it is an adduct: `CuSO4.5H2O`, `Zn(NO3)2.6H2O`, `CaCl2.6NH3`, `CaSO4.0.5H2O`.
/// 4. Everything else has two readings and is refused with both: `La1.85Sr0.15CuO4` could be a salt with
///    85 formula units of something. Written `La_1.85Sr0.15CuO4` or `Al2O3·2SiO2` it is clear.
///
/// # The sign behind digits
///
/// `MnO4-` is four oxygen atoms and one charge. `Fe3+`, `SO42-` and `[Fe(CN)6]3-` have two readings (a single
/// element with a number, a number of two digits that does not end in 0, a number behind a square bracket) and
/// are refused with both; `Fe^3+`, `SO4^2-` and `[Fe(CN)6]^3-` are clear.
///
/// # Equality
///
/// Two formulas are equal when structure, numbers, charge and state are equal. Spelling does not matter
/// (`H₂O` equals `H2O`, `.` equals `·`), the order of what is written does (`C2H5OH` is not `C2H6O`).
///
/// ```
/// use overwater::chem::Formula;
/// let vitriol = Formula::parse("CuSO4.5H2O")?;
/// assert_eq!(vitriol.to_string(), "CuSO4·5H2O");
/// assert_eq!(vitriol.unicode(), "CuSO₄·5H₂O");
/// # Ok::<(), overwater::Error>(())
/// ```
#[derive(Debug, Clone, PartialEq, Eq, Hash)]
pub struct Formula {
    /// The coefficient of the first part of an adduct, else one.
    first: Count,
    items: Vec<Item>,
    charge: i32,
    state: Option<State>,
    /// Total of each atom, in order of first appearance.
    composition: Vec<(Atom, Count)>,
}

impl Formula {
    /// Reads a formula; spaces around it are ignored.
    ///
    /// # Errors
    ///
    /// Each with the byte range of what is wrong:
    /// `Missing` when the text is empty; `UnknownName` for a symbol that is no element, with near ones;
    /// `Ambiguous` for two readings, with both; `TooLarge` beyond [`MAX_FORMULA_BYTES`], [`MAX_NESTING`],
    /// [`MAX_CHARGE`] or the range of [`Count`]; `Syntax` for everything else. Nothing is ever read in part.
    ///
    /// ```
    /// use overwater::{Code, chem::Formula};
    /// assert_eq!(Formula::parse("COqasza").unwrap_err().span, Some((1, 7)));
    /// assert_eq!(Formula::parse("La1.85Sr0.15CuO4").unwrap_err().code, Code::Ambiguous);
    /// ```
    pub fn parse(text: &str) -> Result<Self> {
        parse::parse(text).map_err(|error| *error)
    }

    /// The number of each kind of atom, in order of first appearance. Empty for the electron.
    ///
    /// ```
    /// use overwater::chem::Formula;
    /// let text: Vec<String> = Formula::parse("K4[Fe(CN)6]")?
    ///     .composition().iter().map(|(atom, count)| format!("{atom} {count}")).collect();
    /// assert_eq!(text, ["K 4", "Fe 1", "C 6", "N 6"]);
    /// # Ok::<(), overwater::Error>(())
    /// ```
    #[must_use]
    pub fn composition(&self) -> &[(Atom, Count)] {
        &self.composition
    }

    /// How many atoms of this kind; `None` when there are none.
    #[must_use]
    pub fn count(&self, atom: Atom) -> Option<Count> {
        self.composition.iter().find(|(kind, _)| *kind == atom).map(|(_, count)| *count)
    }

    /// Charge number, 0 for a neutral formula unit, -2 for `SO4^2-`.
    #[must_use]
    pub const fn charge(&self) -> i32 {
        self.charge
    }

    /// The state, where one is written.
    #[must_use]
    pub const fn state(&self) -> Option<State> {
        self.state
    }

    /// Whether this is the electron, `e-`.
    #[must_use]
    pub const fn is_electron(&self) -> bool {
        self.items.is_empty()
    }

    /// The same formula with no state written.
    #[must_use]
    pub fn without_state(&self) -> Formula {
        Formula { state: None, ..self.clone() }
    }

    /// Whether the two are equal once their states are left out.
    ///
    /// ```
    /// use overwater::chem::Formula;
    /// let (steam, water) = (Formula::parse("H2O(g)")?, Formula::parse("H2O(l)")?);
    /// assert!(steam.equal_but_for_state(&water) && steam != water);
    /// # Ok::<(), overwater::Error>(())
    /// ```
    #[must_use]
    pub fn equal_but_for_state(&self, other: &Formula) -> bool {
        self.first == other.first && self.charge == other.charge && self.items == other.items
    }

    /// Whether a number stands before the whole, as in `3CdSO4·8H2O`.
    pub(crate) fn begins_with_a_number(&self) -> bool {
        self.first != Count::ONE
    }

    /// The items of the last part, behind the last dot.
    fn last_part(&self) -> &[Item] {
        self.items.rsplit(|item| matches!(item, Item::Dot(_))).next().unwrap_or_default()
    }
}

impl FromStr for Formula {
    type Err = Error;

    fn from_str(text: &str) -> Result<Self> {
        Formula::parse(text)
    }
}

/// Whether a plain `+` or `-` behind this part can only be one charge, so that no `^` is needed.
fn plain_sign_is_clear(part: &[Item]) -> bool {
    let (count, square) = match part.last() {
        Some(Item::Atoms(_, count)) => (*count, false),
        Some(Item::Close(bracket, count)) => (*count, *bracket == Bracket::Square),
        _ => return true,
    };
    match count.whole() {
        // A decimal number cannot end in a charge.
        None | Some(1) => true,
        Some(number) if number >= 10 => number.is_multiple_of(10),
        Some(_) => part.len() > 1 && !square,
    }
}

#[cfg(test)]
mod tests;
