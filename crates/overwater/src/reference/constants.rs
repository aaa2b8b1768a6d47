//! Constants of nature, of definition and of the trade.

use super::sources;
use crate::scalar::{Constant, Source, Symbol};
use crate::units::{self, Unit};

/// A constant with its symbol, value in `unit` and source.
pub(super) const fn constant(
    id: &'static str,
    text: &'static str,
    latex: &'static str,
    name: &'static str,
    unit: &'static Unit,
    value: f64,
    source: &'static Source,
) -> Constant {
    Constant {
        symbol: Symbol { id, text, latex, name, unit, source: Some(source) },
        value,
        standard_uncertainty: None,
    }
}

/// The same with a standard uncertainty; 0 for a value that is exact by definition.
const fn certain(constant: Constant, standard_uncertainty: f64) -> Constant {
    Constant { standard_uncertainty: Some(standard_uncertainty), ..constant }
}

/// Molar gas constant, exact since the SI of 2019.
///
/// ```
/// assert_eq!(overwater::reference::constants::MOLAR_GAS_2019.value, 8.314_462_618_153_24);
/// ```
pub static MOLAR_GAS_2019: Constant = certain(
    constant(
        "molar_gas_2019",
        "R",
        "R",
        "molar gas constant",
        &units::JOULE_PER_MOLE_KELVIN,
        8.314_462_618_153_24,
        &sources::SI_2019,
    ),
    0.0,
);
/// Molar gas constant as many examinations print it.
pub static MOLAR_GAS_CLASSROOM: Constant = constant(
    "molar_gas_classroom",
    "R",
    "R",
    "molar gas constant, classroom value",
    &units::JOULE_PER_MOLE_KELVIN,
    8.31,
    &sources::COMMON_PRACTICE,
);
/// Standard acceleration of free fall.
pub static STANDARD_GRAVITY_1901: Constant = certain(
    constant(
        "standard_gravity_1901",
        "g",
        "g",
        "standard acceleration of free fall",
        &units::METRE_PER_SECOND_SQUARED,
        9.806_65,
        &sources::CGPM_1901,
    ),
    0.0,
);
/// Standard atmosphere.
pub static STANDARD_ATMOSPHERE_1954: Constant = certain(
    constant(
        "standard_atmosphere_1954",
        "p(atm)",
        r"p_\mathrm{atm}",
        "standard atmosphere",
        &units::KILOPASCAL,
        101.325,
        &sources::CGPM_1954,
    ),
    0.0,
);
/// Standard pressure of IUPAC.
pub static STANDARD_PRESSURE_1982: Constant = certain(
    constant(
        "standard_pressure_1982",
        "p°",
        r"p^\circ",
        "standard pressure",
        &units::KILOPASCAL,
        100.0,
        &sources::IUPAC_1982,
    ),
    0.0,
);
/// 0 degC.
pub static ICE_POINT_1954: Constant = certain(
    constant("ice_point_1954", "T₀", "T_0", "0 degC", &units::KELVIN, 273.15, &sources::SI_2019),
    0.0,
);

/// Share of air that is not oxygen, by amount of dry gas.
pub static AIR_NOT_OXYGEN: Constant = constant(
    "air_not_oxygen",
    "x(air)",
    r"x_\mathrm{air}",
    "share of air that is not oxygen",
    &units::ONE,
    0.79,
    &sources::COMMON_PRACTICE,
);
/// Viscosity of oxygen at 20 degC.
pub static OXYGEN_VISCOSITY: Constant = constant(
    "oxygen_viscosity",
    "μ",
    r"\mu",
    "viscosity of oxygen at 20 degC",
    &units::PASCAL_SECOND,
    20.3e-6,
    &sources::HANDBOOK_MEMORY,
);
/// Surface tension of water at 20 degC.
pub static WATER_SURFACE_TENSION: Constant = constant(
    "water_surface_tension",
    "γ",
    r"\gamma",
    "surface tension of water at 20 degC",
    &units::NEWTON_PER_METRE,
    0.072_8,
    &sources::HANDBOOK_MEMORY,
);

/// Every constant of this file.
pub static ALL: &[&Constant] = &[
    &MOLAR_GAS_2019,
    &MOLAR_GAS_CLASSROOM,
    &STANDARD_GRAVITY_1901,
    &STANDARD_ATMOSPHERE_1954,
    &STANDARD_PRESSURE_1982,
    &ICE_POINT_1954,
    &AIR_NOT_OXYGEN,
    &OXYGEN_VISCOSITY,
    &WATER_SURFACE_TENSION,
];
