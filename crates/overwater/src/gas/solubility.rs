//! How much of a gas dissolves in water, and so is lost.
//!
//! Henry's law, `c = H p`: the concentration of the dissolved gas is proportional to its partial pressure. H (written
//! Hᶜᵖ, a solubility) is in mol/(m3 Pa). Three equations give it:
//!
//! ```text
//! IAPWS G7-04, equation 3:    ln(k/p_w) = A/Tr + B τ^0.355/Tr + C Tr^-0.41 exp(τ),  Tr = T/T_c, τ = 1 - Tr
//! Benson, Krause and Peterson 1979, oxygen:   ln(k/atm) = a0 + a1/T + a2/T²
//! Sander 2015, reviews:                       H = H(298.15 K) exp(D (1/T - 1/298.15 K))
//! ```
//!
//! k is fugacity over mole fraction; H = ρ/(M k) with the density ρ and the molar mass M of water. For gases that react
//! with water (carbon, sulfur and nitrogen dioxide, chlorine, ammonia) H is that of the molecules that have not
//! reacted: more than that goes into the water.
//!
//! What is lost into water is bounded from above by equilibrium: `n = H p V`, as if all the water that the gas can reach
//! were saturated at the gas's own partial pressure.

use std::f64::consts::LN_10;

use crate::bounds::{self, Bound};
use crate::gas::species::{Gas, no_data};
use crate::reference::constants::{ICE_POINT_1954, MOLAR_GAS_2019, STANDARD_ATMOSPHERE_1954};
use crate::reference::henry::{
    HENRY_2004, HENRY_2015, IapwsHenry, OXYGEN_HENRY_1979, OXYGEN_SALINITY_1984, OXYGEN_SATURATION_1984,
    OXYGEN_THETA_1984, OXYGEN_VAPOUR_1984, ReviewedHenry, SALTING_OUT_GASES_1993, SALTING_OUT_IONS_1993,
    WATER_MOLAR_MASS_2004,
};
use crate::reference::over_water::{OVER_WATER, OverWaterRow};
use crate::reference::water::CRITICAL_TEMPERATURE_1992;
use crate::scalar::{Formula, Scalar, Symbol};
use crate::symbols;
use crate::units::{
    Dimensioned, MILLIGRAM_PER_CUBIC_DECIMETRE, MassDensity, MolarEntropy, Moles, Pressure, Solubility,
    Temperature, Volume,
};
use crate::water::density::liquid_density;
use crate::water::vapour::saturation_pressure;
use crate::{Code, Error, Result, nearest};

/// Temperature at which the reviews state their constants, in K.
const REVIEWED_AT_K: f64 = 298.15;

/// Which equation a solubility comes from.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum HenryEquation {
    /// IAPWS G7-04.
    Iapws(&'static IapwsHenry),
    /// Benson, Krause and Peterson, oxygen only.
    BensonKrause,
    /// A row of the reviews in Sander's compilation.
    Reviewed(&'static ReviewedHenry),
}

impl HenryEquation {
    /// The best that there is for a gas: Benson and Krause for oxygen, IAPWS where it has the gas, the reviews for the
    /// rest.
    ///
    /// # Errors
    /// `cannot_be_met` for a gas without a constant: hydrogen chloride, which ionises completely, and air, which is a
    /// mixture.
    pub fn of(gas: Gas) -> Result<HenryEquation> {
        if gas == Gas::Oxygen {
            return Ok(HenryEquation::BensonKrause);
        }
        Self::iapws(gas).or_else(|_| Self::reviewed(gas))
    }

    /// IAPWS G7-04 for a gas.
    ///
    /// # Errors
    /// `cannot_be_met` for a gas that is not among its fourteen.
    pub fn iapws(gas: Gas) -> Result<HenryEquation> {
        HENRY_2004.iter().find(|row| row.gas == gas).map(HenryEquation::Iapws).ok_or_else(|| {
            no_data(gas, "an equation in IAPWS G7-04", "take the one of the reviews, HenryEquation::reviewed")
        })
    }

    /// The reviews for a gas.
    ///
    /// # Errors
    /// `cannot_be_met` for a gas that has no constant there.
    pub fn reviewed(gas: Gas) -> Result<HenryEquation> {
        HENRY_2015.iter().find(|row| row.gas == gas).map(HenryEquation::Reviewed).ok_or_else(|| {
            no_data(
                gas,
                "a Henry constant",
                "hydrogen chloride ionises completely, and air is a mixture: no single constant describes them",
            )
        })
    }

    /// The temperatures that it is good for.
    #[must_use]
    pub fn temperature(&self) -> &'static Bound {
        match self {
            HenryEquation::Iapws(row) => &row.temperature,
            HenryEquation::BensonKrause => &bounds::BENSON_KRAUSE_TEMPERATURE_C,
            HenryEquation::Reviewed(_) => &bounds::SANDER_TEMPERATURE_C,
        }
    }

    /// The symbol of the solubility, with the source of the equation.
    #[must_use]
    pub fn symbol(&self) -> &'static Symbol {
        match self {
            HenryEquation::Iapws(_) => &symbols::HENRY_CONSTANT,
            HenryEquation::BensonKrause => &symbols::HENRY_CONSTANT_OXYGEN,
            HenryEquation::Reviewed(_) => &symbols::HENRY_CONSTANT_REVIEWED,
        }
    }

    /// The solubility at a temperature.
    #[inline(always)]
    pub fn solubility<S: Scalar>(&self, temperature: Temperature<S>) -> Solubility<S> {
        let solubility = match *self {
            HenryEquation::Iapws(row) => from_fugacity(iapws_fugacity(temperature, row), temperature),
            HenryEquation::BensonKrause => from_fugacity(oxygen_fugacity(temperature), temperature),
            HenryEquation::Reviewed(row) => {
                let distance = S::number(1.0) / temperature.si() - 1.0 / REVIEWED_AT_K;
                Solubility::new((distance * row.slope_k).exp() * row.solubility_298)
            }
        };
        solubility.checkpoint(self.symbol())
    }
}

/// Fugacity over mole fraction by IAPWS G7-04; the equation itself holds over the whole range of the source.
#[inline(always)]
pub fn iapws_fugacity<S: Scalar>(temperature: Temperature<S>, row: &IapwsHenry) -> Pressure<S> {
    let reduced = temperature.si().over(&CRITICAL_TEMPERATURE_1992);
    let tau = S::number(1.0) - reduced;
    let first = (S::number(row.a) + (tau.ln() * 0.355).exp() * row.b) / reduced;
    let second = (tau - reduced.ln() * 0.41).exp() * row.c;
    Pressure::new(saturation_pressure(temperature).si() * (first + second).exp())
}

/// Fugacity of oxygen over its mole fraction, Benson, Krause and Peterson 1979.
#[inline(always)]
pub fn oxygen_fugacity<S: Scalar>(temperature: Temperature<S>) -> Pressure<S> {
    let [a0, a1, a2] = OXYGEN_HENRY_1979;
    let inverse = S::number(1.0) / temperature.si();
    let exponent = (inverse * a2 + a1) * inverse + a0;
    Pressure::new(S::constant(&STANDARD_ATMOSPHERE_1954) * exponent.exp())
}

#[inline(always)]
fn from_fugacity<S: Scalar>(fugacity: Pressure<S>, temperature: Temperature<S>) -> Solubility<S> {
    Solubility::new(liquid_density(temperature).si() / (fugacity.si() * WATER_MOLAR_MASS_2004))
}

/// Volume of gas, at the temperature and partial pressure at which it dissolves, in one volume of water: L = H R T.
#[inline(always)]
pub fn ostwald<S: Scalar>(solubility: Solubility<S>, temperature: Temperature<S>) -> S {
    let r = MolarEntropy::new(S::constant(&MOLAR_GAS_2019));
    (solubility * r * temperature).into_value().checkpoint(&symbols::OSTWALD)
}

/// The same volume reduced to 0 degC and 1 atm, under a partial pressure of 1 atm: α = H R T₀.
#[inline(always)]
pub fn bunsen<S: Scalar>(solubility: Solubility<S>) -> S {
    let r = MolarEntropy::new(S::constant(&MOLAR_GAS_2019));
    let ice_point = Temperature::new(S::constant(&ICE_POINT_1954));
    (solubility * r * ice_point).into_value().checkpoint(&symbols::BUNSEN)
}

/// What a volume of water holds at equilibrium, the upper bound of what is lost into it: n = H p V.
#[inline(always)]
pub fn dissolved<S: Scalar>(
    solubility: Solubility<S>,
    partial_pressure: Pressure<S>,
    water: Volume<S>,
) -> Moles<S> {
    (solubility * partial_pressure * water).checkpoint(&symbols::DISSOLVED_AMOUNT)
}

#[inline(always)]
fn enter<S: Scalar>(temperature: S) -> Temperature<S> {
    Temperature::new(temperature.enter(&symbols::TEMPERATURE).checkpoint(&symbols::THERMODYNAMIC_TEMPERATURE))
}

macro_rules! of_a_gas {
    ($($name:ident),*) => {
        $(
            impl $name {
                /// That of a gas, by the best equation that there is.
                ///
                /// # Errors
                /// As [`HenryEquation::of`].
                pub fn of(gas: Gas) -> Result<Self> {
                    Ok($name { equation: HenryEquation::of(gas)? })
                }
            }
        )*
    };
}

/// `henry_constant(temperature_c)` in mol/(m3 Pa).
///
/// ```
/// use overwater::gas::solubility::HenryConstant;
/// use overwater::gas::species::Gas;
/// use overwater::scalar::Formula;
/// // Oxygen at 25 degC: 1.3e-5 mol/(m3 Pa) in Sander's compilation, which gives two figures.
/// let oxygen = HenryConstant::of(Gas::Oxygen)?.number([25.0])?;
/// assert!((oxygen / 1.3e-5 - 1.0).abs() < 0.04);
/// # Ok::<(), overwater::Error>(())
/// ```
#[derive(Debug, Clone, Copy)]
pub struct HenryConstant {
    /// The equation.
    pub equation: HenryEquation,
}

impl Formula<1> for HenryConstant {
    const NAME: &'static str = "henry_constant";

    fn inputs(&self) -> [&'static Bound; 1] {
        [self.equation.temperature()]
    }

    fn output(&self) -> &'static Symbol {
        self.equation.symbol()
    }

    #[inline(always)]
    fn evaluate<S: Scalar>(&self, [temperature]: [S; 1]) -> S {
        self.equation.solubility(enter(temperature)).leave(self.equation.symbol())
    }
}

/// `ostwald_coefficient(temperature_c)`: volumes of gas that dissolve in one volume of water.
///
/// ```
/// use overwater::gas::solubility::OstwaldCoefficient;
/// use overwater::gas::species::Gas;
/// use overwater::scalar::Formula;
/// // Carbon dioxide: 0.00033 mol/(m3 Pa) x R x 298.15 K = 0.82 volumes at 25 degC.
/// let volumes = OstwaldCoefficient::of(Gas::CarbonDioxide)?.number([25.0])?;
/// assert!((volumes - 0.82).abs() < 0.015);
/// # Ok::<(), overwater::Error>(())
/// ```
#[derive(Debug, Clone, Copy)]
pub struct OstwaldCoefficient {
    /// The equation for the solubility.
    pub equation: HenryEquation,
}

impl Formula<1> for OstwaldCoefficient {
    const NAME: &'static str = "ostwald_coefficient";

    fn inputs(&self) -> [&'static Bound; 1] {
        [self.equation.temperature()]
    }

    fn output(&self) -> &'static Symbol {
        &symbols::OSTWALD
    }

    #[inline(always)]
    fn evaluate<S: Scalar>(&self, [temperature]: [S; 1]) -> S {
        let temperature = enter(temperature);
        ostwald(self.equation.solubility(temperature), temperature).leave(&symbols::OSTWALD)
    }
}

/// `bunsen_coefficient(temperature_c)`: the same, reduced to 0 degC and 1 atm.
#[derive(Debug, Clone, Copy)]
pub struct BunsenCoefficient {
    /// The equation for the solubility.
    pub equation: HenryEquation,
}

impl Formula<1> for BunsenCoefficient {
    const NAME: &'static str = "bunsen_coefficient";

    fn inputs(&self) -> [&'static Bound; 1] {
        [self.equation.temperature()]
    }

    fn output(&self) -> &'static Symbol {
        &symbols::BUNSEN
    }

    #[inline(always)]
    fn evaluate<S: Scalar>(&self, [temperature]: [S; 1]) -> S {
        bunsen(self.equation.solubility(enter(temperature))).leave(&symbols::BUNSEN)
    }
}

/// `dissolved_amount(temperature_c, partial_pressure_kpa, contact_water_cm3)` in mmol: what is lost at most.
///
/// ```
/// use overwater::gas::solubility::DissolvedAmount;
/// use overwater::gas::species::Gas;
/// use overwater::scalar::Formula;
/// // 250 cm3 of water at 20 degC under 99 kPa of oxygen: 1.36e-5 x 99000 x 250e-6 mol = 0.34 mmol.
/// let lost = DissolvedAmount::of(Gas::Oxygen)?.number([20.0, 99.0, 250.0])?;
/// assert!((lost - 0.34).abs() < 0.005);
/// # Ok::<(), overwater::Error>(())
/// ```
#[derive(Debug, Clone, Copy)]
pub struct DissolvedAmount {
    /// The equation for the solubility.
    pub equation: HenryEquation,
}

impl Formula<3> for DissolvedAmount {
    const NAME: &'static str = "dissolved_amount";

    fn inputs(&self) -> [&'static Bound; 3] {
        [self.equation.temperature(), &bounds::PARTIAL_PRESSURE_KPA, &bounds::CONTACT_WATER_CM3]
    }

    fn output(&self) -> &'static Symbol {
        &symbols::DISSOLVED_AMOUNT
    }

    #[inline(always)]
    fn evaluate<S: Scalar>(&self, [temperature, pressure, water]: [S; 3]) -> S {
        let pressure = Pressure::new(pressure.enter(&symbols::PARTIAL_PRESSURE));
        let water = Volume::new(water.enter(&symbols::CONTACT_WATER));
        dissolved(self.equation.solubility(enter(temperature)), pressure, water)
            .leave(&symbols::DISSOLVED_AMOUNT)
    }
}

of_a_gas!(HenryConstant, OstwaldCoefficient, BunsenCoefficient, DissolvedAmount);

/// Oxygen in water under moist air (Benson and Krause 1980, 1984), at a total pressure and a salinity.
#[inline(always)]
pub fn oxygen_saturation<S: Scalar>(
    temperature: Temperature<S>,
    pressure: Pressure<S>,
    salinity: S,
) -> MassDensity<S> {
    let [c0, c1, c2, c3, c4] = OXYGEN_SATURATION_1984;
    let [s0, s1, s2] = OXYGEN_SALINITY_1984;
    let [theta0, theta1, theta2] = OXYGEN_THETA_1984;
    let [w0, w1, w2] = OXYGEN_VAPOUR_1984;
    let inverse = S::number(1.0) / temperature.si();
    let fresh = (((inverse * c4 + c3) * inverse + c2) * inverse + c1) * inverse + c0;
    let salt = salinity * ((inverse * s2 + s1) * inverse + s0);
    let celsius = temperature.si() - ICE_POINT_1954.si();
    let theta = (celsius * theta2 + theta1) * celsius + theta0;
    let vapour = ((inverse * w2 + w1) * inverse + w0).exp();
    let atmospheres = pressure.si().over(&STANDARD_ATMOSPHERE_1954);
    let one = S::number(1.0);
    let here = (atmospheres - vapour) * (one - theta * atmospheres);
    let at_one = (one - vapour) * (one - theta);
    let milligrams = (fresh - salt).exp() * here / at_one;
    MassDensity::new(milligrams * MILLIGRAM_PER_CUBIC_DECIMETRE.si).checkpoint(&symbols::OXYGEN_SATURATION)
}

/// `oxygen_saturation(temperature_c, pressure_kpa, salinity)` in mg/dm3, from 0 to 40 degC.
///
/// ```
/// use overwater::gas::solubility::OxygenSaturation;
/// use overwater::scalar::Formula;
/// // Standard Methods 4500-O: 9.092 mg/dm3 at 20 degC and 101.325 kPa in fresh water.
/// assert!((OxygenSaturation.number([20.0, 101.325, 0.0])? - 9.092).abs() < 0.001);
/// # Ok::<(), overwater::Error>(())
/// ```
#[derive(Debug, Clone, Copy, Default)]
pub struct OxygenSaturation;

impl Formula<3> for OxygenSaturation {
    const NAME: &'static str = "oxygen_saturation";

    fn inputs(&self) -> [&'static Bound; 3] {
        [&bounds::DISSOLVED_OXYGEN_TEMPERATURE_C, &bounds::PRESSURE_KPA, &bounds::SALINITY]
    }

    fn output(&self) -> &'static Symbol {
        &symbols::OXYGEN_SATURATION
    }

    #[inline(always)]
    fn evaluate<S: Scalar>(&self, [temperature, pressure, salinity]: [S; 3]) -> S {
        let pressure = Pressure::new(pressure.enter(&symbols::STATION_PRESSURE));
        let salinity = salinity.enter(&symbols::SALINITY);
        oxygen_saturation(enter(temperature), pressure, salinity).leave(&symbols::OXYGEN_SATURATION)
    }
}

/// `salting_out(salt_concentration_mol_per_dm3)`: by what factor less of a gas dissolves than in water, at 25 degC.
///
/// ```text
/// log10(c₀/c) = c(salt) Σ ν(ion) (h(ion) + h(gas))
/// ```
///
/// Schumpe 1993. The parameters hold at 25 degC; no uncertainty is stated.
///
/// ```
/// use overwater::gas::solubility::SaltingOutFactor;
/// use overwater::gas::species::Gas;
/// use overwater::scalar::Formula;
/// // Oxygen in 1 mol/dm3 NaCl: h = 0.1171 + 0.0334 + 2 x 0 = 0.1505 dm3/mol.
/// let factor = SaltingOutFactor::of(Gas::Oxygen, &[("Na+", 1), ("Cl-", 1)])?;
/// assert!((factor.number([1.0])?.log10() - 0.1505).abs() < 1e-12);
/// # Ok::<(), overwater::Error>(())
/// ```
#[derive(Debug, Clone, Copy)]
pub struct SaltingOutFactor {
    sechenov_dm3_per_mol: f64,
}

impl SaltingOutFactor {
    /// For a gas and a salt: its ions, as in `Na+`, `Mg+2`, `SO4-2`, and how many of each a formula unit has.
    ///
    /// # Errors
    /// `unknown_name` for an ion without a parameter, `cannot_be_met` for a gas without one.
    pub fn of(gas: Gas, ions: &[(&str, u8)]) -> Result<Self> {
        let of_gas =
            SALTING_OUT_GASES_1993.iter().find(|row| row.of == gas).map(|row| row.h).ok_or_else(|| {
                no_data(gas, "a parameter of salting out", "take the solubility in water as an upper bound")
            })?;
        let mut sechenov_dm3_per_mol = 0.0;
        for (ion, count) in ions {
            let of_ion = SALTING_OUT_IONS_1993
                .iter()
                .find(|row| row.of == *ion)
                .map(|row| row.h)
                .ok_or_else(|| unknown_ion(ion))?;
            sechenov_dm3_per_mol += f64::from(*count) * (of_ion + of_gas);
        }
        Ok(SaltingOutFactor { sechenov_dm3_per_mol })
    }

    /// The Sechenov constant of the gas and the salt, in dm3/mol.
    #[must_use]
    pub fn sechenov_dm3_per_mol(&self) -> f64 {
        self.sechenov_dm3_per_mol
    }
}

fn unknown_ion(ion: &str) -> Error {
    let known = || SALTING_OUT_IONS_1993.iter().map(|row| row.of);
    let advice = match nearest(ion, known()) {
        Some(near) => format!("did you mean {near}?"),
        None => "write the sign before the number of charges, as in SO4-2".to_owned(),
    };
    Error::new(Code::UnknownName, "ion")
        .value(ion)
        .allowed(known().collect::<Vec<_>>().join(", "))
        .advice(advice)
}

impl Formula<1> for SaltingOutFactor {
    const NAME: &'static str = "salting_out";

    fn inputs(&self) -> [&'static Bound; 1] {
        [&bounds::SALT_CONCENTRATION_MOL_PER_DM3]
    }

    fn output(&self) -> &'static Symbol {
        &symbols::SALTING_OUT
    }

    #[inline(always)]
    fn evaluate<S: Scalar>(&self, [concentration]: [S; 1]) -> S {
        // The parameters are in dm3/mol, so the concentration stays in mol/dm3.
        let concentration =
            concentration.enter(&symbols::SALT_CONCENTRATION) / symbols::SALT_CONCENTRATION.unit.si;
        (concentration * (self.sechenov_dm3_per_mol * LN_10)).exp().checkpoint(&symbols::SALTING_OUT)
    }
}

impl Gas {
    /// Whether it may be collected over water, and why.
    #[must_use]
    pub fn over_water(self) -> Option<&'static OverWaterRow> {
        OVER_WATER.iter().find(|row| row.gas == self)
    }
}
