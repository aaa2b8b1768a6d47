//! What the simulation of a flask puts in.

/// Molar volume of water: 18.015 g/mol over 0.9982 g/cm3 (m3/mol) (Kell 1975 at 20 degC).
pub const WATER_VOLUME: f64 = 18.015e-6 / 0.998_2;
/// Molar volume of liquid peroxide: 34.014 g/mol over 1.45 g/cm3 (handbook value, from memory) (m3/mol).
pub const PEROXIDE_VOLUME: f64 = 34.014e-6 / 1.45;
/// Heat capacity of water: 4.18 J/(g K) x 18.015 g/mol (J/(mol K)).
pub const WATER_HEAT: f64 = 4.18 * 18.015;
/// Heat capacity of oxygen and nitrogen at constant pressure, 7/2 R (J/(mol K)).
pub const GAS_HEAT: f64 = 29.1;
/// Heat capacity of water vapour at constant pressure, 4 R (J/(mol K)).
pub const VAPOUR_HEAT: f64 = 33.6;
/// Heat of vaporisation at 25 degC: 285.830 - 241.826 kJ/mol (CODATA 1989, from memory) (J/mol).
pub const VAPORISATION: f64 = 44_004.0;
/// The temperature that heats are counted from (K).
pub const HEAT_ZERO: f64 = 298.15;
/// Coefficient of Blasius' law of friction in a smooth tube, f = 0.316 Re^(-1/4): Blasius 1913, from memory.
pub const BLASIUS: f64 = 0.316;
/// Molar mass of oxygen, kg/mol: 2 x 15.999.
pub const OXYGEN_MOLAR_MASS: f64 = 0.031_998;
/// 20 degC, the temperature that rate constants are stated for (K).
pub const STATED_AT_K: f64 = 293.15;
