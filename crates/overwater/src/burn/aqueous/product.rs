//! A product of a burn in a stated volume of water.

use super::balance::{Held, Mixture};
use super::constants::{Acid, Constants, Hydroxide};
use super::indicator::{litmus, universal_indicator};
use super::solve::{Activity, Equilibrium};
use crate::bounds;
use crate::chem::{Formula as Chemical, Reaction, Weights};
use crate::gas::solubility::HenryEquation;
use crate::gas::species::Gas;
use crate::reference::constants::MOLAR_GAS_2019;
use crate::reference::products_in_water::{Becomes, PRODUCTS_IN_WATER, ProductInWater};
use crate::units::{
    CUBIC_CENTIMETRE, DEGREE_CELSIUS, Dimensioned, GRAM, GRAM_PER_MOLE, KILOPASCAL, MILLIMOLE,
    MOLE_PER_CUBIC_DECIMETRE, Mass, MolarWeight, Temperature, Volume,
};
use crate::{Code, Error, Result, nearest};

impl ProductInWater {
    /// A product by its formula.
    ///
    /// ```
    /// use overwater::reference::products_in_water::ProductInWater;
    /// assert!(ProductInWater::named("SO2")?.is_gas);
    /// # Ok::<(), overwater::Error>(())
    /// ```
    ///
    /// # Errors
    /// `unknown_name`, with what is known, and the nearest where one is near.
    pub fn named(formula: &str) -> Result<&'static ProductInWater> {
        let wanted = formula.trim();
        PRODUCTS_IN_WATER.iter().find(|product| product.formula == wanted).ok_or_else(|| {
            let names: Vec<&str> = PRODUCTS_IN_WATER.iter().map(|product| product.formula).collect();
            let near = names.iter().copied().find(|known| known.eq_ignore_ascii_case(wanted));
            let near = near.or_else(|| nearest(wanted, names.iter().copied()));
            Error::new(Code::UnknownName, "product").value(wanted).allowed(names.join(", ")).advice(
                near.map_or_else(
                    || "give the formula of an oxide or hydroxide that a burn leaves".to_owned(),
                    |near| format!("did you mean {near}?"),
                ),
            )
        })
    }
}

/// The water that a product comes into, and what stands over it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Water {
    /// Volume of the water (cm3).
    pub water_cm3: f64,
    /// Temperature (degC).
    pub temperature_c: f64,
    /// Pressure at the place (kPa).
    pub pressure_kpa: f64,
    /// Volume of the closed gas space over the water (cm3), which keeps its share of a gas; nothing where a gas is led
    /// into the water, up to its own pressure.
    pub gas_space_cm3: Option<f64>,
}

/// A product in water.
#[derive(Debug, Clone, PartialEq)]
pub struct InWater {
    /// The product.
    pub product: &'static ProductInWater,
    /// Its reaction with water, balanced; nothing where there is none.
    pub reaction: Option<String>,
    /// The same with subscripts.
    pub reaction_unicode: Option<String>,
    /// Amount of the product (mmol).
    pub amount_mmol: f64,
    /// How much of it is dissolved (mmol).
    pub dissolved_mmol: f64,
    /// Concentration of what is dissolved, counted as the product (mol/dm3).
    pub concentration_mol_per_dm3: f64,
    /// Pressure of the product over the water (kPa); nothing for what is no gas.
    pub pressure_kpa: Option<f64>,
    /// pH with activity coefficients: about what a meter shows.
    pub ph: f64,
    /// pH without them, as school problems take it.
    pub ph_ideal: f64,
    /// pH when the hydrogen peroxide has gone; nothing where there is none.
    pub ph_without_peroxide: Option<f64>,
    /// pH of the water itself at this temperature.
    pub neutral_ph: f64,
    /// Ionic strength (mol/dm3).
    pub ionic_strength: f64,
    /// Whether that is within the range of the activity coefficients; beyond, the pH is a rough figure.
    pub is_dilute: bool,
    /// The colour of universal indicator.
    pub universal_indicator: &'static str,
    /// The colour of litmus.
    pub litmus: &'static str,
}

/// Puts a mass of a product into water.
///
/// ```
/// use overwater::burn::aqueous::{Water, dissolve};
/// // 0.067 g of Na2O, from 0.05 g of sodium, in 20 cm3: 0.109 mol/dm3 of hydroxide, pH 13.0 by arithmetic.
/// let water = Water { water_cm3: 20.0, temperature_c: 25.0, pressure_kpa: 101.325, gas_space_cm3: None };
/// let found = dissolve("Na2O", 0.0674, &water)?;
/// assert!((found.ph_ideal - 13.03).abs() < 0.01 && found.litmus == "blue");
/// # Ok::<(), overwater::Error>(())
/// ```
///
/// # Errors
/// `unknown_name` for a product, `out_of_range` and `not_a_number` for mass, water, temperature, pressure and gas space.
pub fn dissolve(product: &str, mass_g: f64, water: &Water) -> Result<InWater> {
    let product = ProductInWater::named(product)?;
    let g_per_mol = Chemical::parse(product.formula)?.molar_mass(Weights::Exact)?.value_g_per_mol;
    let mass: Mass<f64> = Mass::new(GRAM.to_si(bounds::MASS_G.check(mass_g)?));
    let amount = mass / MolarWeight::new(GRAM_PER_MOLE.to_si(g_per_mol));
    bounds::PRODUCT_WATER_CM3.check(water.water_cm3)?;
    bounds::ROOM_TEMPERATURE_C.check(water.temperature_c)?;
    bounds::PRESSURE_KPA.check(water.pressure_kpa)?;
    if let Some(space) = water.gas_space_cm3 {
        bounds::GAS_SPACE_CM3.check(space)?;
    }
    let volume: Volume<f64> = Volume::new(CUBIC_CENTIMETRE.to_si(water.water_cm3));
    let temperature = Temperature::new(DEGREE_CELSIUS.to_si(water.temperature_c));
    let concentration = (amount / volume).si() / MOLE_PER_CUBIC_DECIMETRE.si;
    let constants = Constants::at(temperature);

    let solved = Solved::new(product, concentration, water, temperature, &constants)?;
    let peroxide = |part: &&Becomes| !matches!(part, Becomes::Acid(Acid::HydrogenPeroxide, _));
    let ph_without_peroxide = if product.becomes.iter().all(|part| peroxide(&part)) {
        None
    } else {
        let left = mixture(product.becomes.iter().filter(peroxide), concentration);
        Some(Equilibrium::of(&left, &constants, Activity::Davies)?.ph)
    };
    let neutral = Equilibrium::of(&Mixture::water(), &constants, Activity::Davies)?.ph;
    let balanced = match product.reaction {
        Some(reaction) => {
            let reaction = Reaction::parse(reaction)?;
            // A superoxide balances in more ways than one; what the table writes is checked.
            Some(reaction.balance().or_else(|_| reaction.as_written())?)
        }
        None => None,
    };
    let amount_mmol = amount.si() / MILLIMOLE.si;
    let dissolved_mmol = solved.dissolved * volume.si() * MOLE_PER_CUBIC_DECIMETRE.si / MILLIMOLE.si;
    Ok(InWater {
        product,
        reaction: balanced.as_ref().map(ToString::to_string),
        reaction_unicode: balanced.as_ref().map(|equation| equation.unicode()),
        amount_mmol,
        dissolved_mmol: dissolved_mmol.min(amount_mmol),
        concentration_mol_per_dm3: solved.dissolved,
        pressure_kpa: solved.pressure_kpa,
        ph: solved.real.ph,
        ph_ideal: solved.ideal_ph,
        ph_without_peroxide,
        neutral_ph: neutral,
        ionic_strength: solved.real.ionic_strength,
        is_dilute: solved.real.is_dilute,
        universal_indicator: universal_indicator(solved.real.ph),
        litmus: litmus(solved.real.ph),
    })
}

/// So much of a product, as what it becomes.
fn mixture<'a>(parts: impl Iterator<Item = &'a Becomes>, concentration: f64) -> Mixture<f64> {
    parts.fold(Mixture::water(), |mixture, part| match *part {
        Becomes::Acid(acid, count) => mixture.with_acid(acid, count * concentration),
        Becomes::Alkali(count) => mixture.with_univalent(count * concentration),
        Becomes::Hydroxide(solid, count) => mixture.with_hydroxide(solid, count * concentration),
    })
}

struct Solved {
    real: Equilibrium,
    ideal_ph: f64,
    /// Of the product, dissolved (mol/dm3).
    dissolved: f64,
    pressure_kpa: Option<f64>,
}

impl Solved {
    fn new(
        product: &ProductInWater,
        concentration: f64,
        water: &Water,
        temperature: Temperature<f64>,
        constants: &Constants<f64>,
    ) -> Result<Solved> {
        let all = mixture(product.becomes.iter(), concentration);
        let both = |mixture: &Mixture<f64>| -> Result<(Equilibrium, f64)> {
            let real = Equilibrium::of(mixture, constants, Activity::Davies)?;
            Ok((real, Equilibrium::of(mixture, constants, Activity::Ideal)?.ph))
        };
        let gas = if product.is_gas { Gas::read(product.formula).ok() } else { None };
        let Some(gas) = gas else {
            let (real, ideal_ph) = both(&all)?;
            let dissolved = match product.becomes {
                [] => 0.0,
                [Becomes::Hydroxide(solid, count)] => {
                    let found = Hydroxide::ALL.iter().zip(real.dissolved).find(|(known, _)| *known == solid);
                    found.map_or(0.0, |(_, amount)| amount / count)
                }
                _ => concentration,
            };
            return Ok(Solved { real, ideal_ph, dissolved, pressure_kpa: None });
        };
        // H in mol/dm3 for each kPa.
        let henry = HenryEquation::of(gas)?.solubility(temperature).si() * KILOPASCAL.si
            / MOLE_PER_CUBIC_DECIMETRE.si;
        let thermal = MOLAR_GAS_2019.si() * temperature.si() * MOLE_PER_CUBIC_DECIMETRE.si / KILOPASCAL.si;
        let gas_ratio = water.gas_space_cm3.map_or(0.0, |space| space / (water.water_cm3 * henry * thermal));
        let acid = match product.becomes {
            [Becomes::Acid(acid, _)] => Some(*acid),
            _ => None,
        };
        let Some(acid) = acid else {
            // A gas that does not react: Henry's law alone.
            let (real, ideal_ph) = both(&Mixture::water())?;
            let most = if water.gas_space_cm3.is_some() { f64::INFINITY } else { water.pressure_kpa * henry };
            let dissolved = (concentration / (1.0 + gas_ratio)).min(most);
            return Ok(Solved { real, ideal_ph, dissolved, pressure_kpa: Some(dissolved / henry) });
        };
        let closed = all.holding(acid, Held::Total { concentration, gas_ratio });
        let (real, ideal_ph) = both(&closed)?;
        let share = real.uncharged_share(acid, constants);
        // Of each mole in all, the uncharged form in the water takes share/(1 + share x ratio).
        let dissolved = concentration / (1.0 + share * gas_ratio);
        let pressure = dissolved * share / henry;
        if pressure <= water.pressure_kpa || water.gas_space_cm3.is_some() {
            return Ok(Solved { real, ideal_ph, dissolved, pressure_kpa: Some(pressure) });
        }
        let held = Held::Saturated { concentration: water.pressure_kpa * henry };
        let (real, ideal_ph) = both(&Mixture::water().holding(acid, held))?;
        let dissolved = water.pressure_kpa * henry / real.uncharged_share(acid, constants);
        Ok(Solved { real, ideal_ph, dissolved, pressure_kpa: Some(water.pressure_kpa) })
    }
}
