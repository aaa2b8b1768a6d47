//! The constants that a textbook uses, so that its own figures can be reproduced exactly.
//!
//! Without a word the best constants are used. Whoever reproduces a text says which of its constants differ; the answer
//! carries them.

use crate::reference::constants::{MOLAR_GAS_2019, MOLAR_GAS_CLASSROOM};
use crate::scalar::{Constant, Symbol};
use crate::symbols;
use crate::units::Unit;

/// Which constants are put in.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Conventions {
    /// The gas constant.
    pub gas_constant: &'static Constant,
    /// What is added to a temperature in degrees Celsius.
    pub ice_point: IcePoint,
}

/// What is added to a temperature in degrees Celsius.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub enum IcePoint {
    /// 273.15 K, by definition.
    #[default]
    Exact,
    /// 273 K, as many texts take.
    Rounded,
}

impl IcePoint {
    /// The symbol with which a temperature is taken in.
    #[must_use]
    pub fn temperature(self) -> &'static Symbol {
        match self {
            IcePoint::Exact => &symbols::TEMPERATURE,
            IcePoint::Rounded => &TEMPERATURE_FROM_273,
        }
    }
}

static DEGREE_FROM_273: Unit = Unit { zero: 273.0, ..crate::units::DEGREE_CELSIUS };
static TEMPERATURE_FROM_273: Symbol = Symbol { unit: &DEGREE_FROM_273, ..symbols::TEMPERATURE };

impl Conventions {
    /// The best constants.
    pub const EXACT: Conventions = Conventions { gas_constant: &MOLAR_GAS_2019, ice_point: IcePoint::Exact };
    /// The rounded constants of many examinations: R = 8.31 J/(mol K) and 273 K.
    pub const CLASSROOM: Conventions =
        Conventions { gas_constant: &MOLAR_GAS_CLASSROOM, ice_point: IcePoint::Rounded };
}

impl Default for Conventions {
    fn default() -> Self {
        Conventions::EXACT
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::gas::collected::DryAmount;
    use crate::scalar::{Formula, Notation};

    #[test]
    fn a_texts_own_constants_give_its_own_figures() {
        let exact = DryAmount::default().number([100.0, 20.0, 101.325, 0.0]).unwrap();
        let classroom = DryAmount { conventions: Conventions::CLASSROOM };
        let rounded = classroom.number([100.0, 20.0, 101.325, 0.0]).unwrap();
        // Only R and T change in n = p V/(R T): the vapour pressure is still that of 20 degC.
        let ratio = (8.314_462_618_153_24 / 8.31) * (293.15 / 293.0);
        assert!((rounded / exact / ratio - 1.0).abs() < 1e-14, "{rounded} {exact}");
        let (_, solution) = classroom.working([100.0, 20.0, 101.325, 0.0]).unwrap();
        let steps = solution.steps(Notation::Text);
        assert_eq!((steps[0].relation.as_str(), steps[1].relation.as_str()), ("t + 273.15", "t + 273"));
        assert_eq!(steps.last().unwrap().numbers, "98.986 kPa × 100 cm3 / (8.31 J/(mol K) × 293 K)");
    }
}
