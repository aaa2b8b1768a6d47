//! One burn in one jar: what it makes, what is left, how much heat, what the gas comes to.

use crate::burn::jar::Contents;
use crate::burn::{
    Answer, Combustion, Extent, Fuel, Jar, Role, answers, extent, heat_released, in_little_oxygen,
    oxygen_needed, sample_for_oxygen,
};
use crate::reference::oxides::ACID_GASES;
use crate::reference::thermochemistry::Phase;
use crate::symbols;
use crate::units::{Dimensioned, GRAM, Mass, Moles};
use crate::{Result, bounds};

/// How the oxygen of the jar stands to the sample.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Regime {
    /// Oxygen is left over.
    OxygenRich,
    /// Neither is left over.
    Stoichiometric,
    /// Oxygen runs out first.
    OxygenPoor,
}

impl Regime {
    /// In words.
    #[must_use]
    pub const fn words(self) -> &'static str {
        match self {
            Regime::OxygenRich => "oxygen left over",
            Regime::Stoichiometric => "just enough oxygen",
            Regime::OxygenPoor => "oxygen runs out",
        }
    }
}

/// A substance and how much of it there is.
#[derive(Debug, Clone, PartialEq)]
pub struct Amount {
    /// Its formula.
    pub formula: String,
    /// The same with subscripts.
    pub formula_unicode: String,
    /// Its phase at room temperature.
    pub phase: Phase,
    /// How much of it, in mmol.
    pub amount_mmol: f64,
    /// Its mass, in g.
    pub mass_g: f64,
}

/// The gas of the jar after the burn, cooled to the temperature of the water.
#[derive(Debug, Clone, PartialEq)]
pub struct GasAfter {
    /// Oxygen, in mmol.
    pub oxygen_mmol: f64,
    /// What was not oxygen before, in mmol.
    pub nitrogen_mmol: f64,
    /// Gases that the burn made, in mmol.
    pub made_mmol: f64,
    /// Sample that is a gas and was not burned, in mmol.
    pub sample_mmol: f64,
    /// Volume of the moist gas, in cm3.
    pub volume_cm3: f64,
    /// How much the water rises (positive) or falls in a jar opened under water, in cm3, before any gas dissolves.
    pub water_rise_cm3: f64,
    /// The same when the acid gases that the burn made have been taken up by water or alkali; nothing where it made none.
    pub water_rise_washed_cm3: Option<f64>,
}

/// What one answer comes to.
#[derive(Debug, Clone, PartialEq)]
pub struct BurntAnswer {
    /// Whose answer it is.
    pub role: Role,
    /// The complete combustion.
    pub combustion: Combustion,
    /// What too little oxygen makes, where some of the sample does.
    pub poor: Option<Combustion>,
    /// How far it goes.
    pub extent: Extent,
    /// How the oxygen stands to the sample.
    pub regime: Regime,
    /// Oxygen that the whole sample would use by complete combustion, as a share of the jar's; infinite without any.
    pub share_of_oxygen: f64,
    /// The most of the sample that the jar's oxygen burns completely, in g.
    pub most_g: f64,
    /// The most that burns before the fraction of oxygen has fallen to where most flames go out, in g.
    pub before_going_out_g: f64,
    /// Sample left, in g.
    pub left_g: f64,
    /// What is made.
    pub made: Vec<Amount>,
    /// Heat given out, water as a liquid, in kJ.
    pub heat_kj: f64,
    /// The gas after it.
    pub after: GasAfter,
}

/// Works out every answer for a mass (g) of a fuel in a jar.
///
/// ```
/// use overwater::burn::{Fuel, Jar, burnt};
/// let jar = Jar { volume_cm3: 250.0, temperature_c: 20.0, pressure_kpa: 101.325, oxygen_fraction: 1.0 };
/// let sulfur = burnt(&Fuel::find("S")?, 0.10, &jar)?.remove(0);
/// // 0.10 g of sulfur gives 3.12 mmol, 75 cm3 of dry SO2 and 0.93 kJ (by hand).
/// assert!((sulfur.made[0].amount_mmol - 3.119).abs() < 1e-3);
/// assert!((sulfur.heat_kj - 0.926).abs() < 1e-3);
/// // As much gas as before: the water neither rises nor falls until the SO2 dissolves.
/// assert!(sulfur.after.water_rise_cm3.abs() < 1e-9);
/// # Ok::<(), overwater::Error>(())
/// ```
///
/// # Errors
/// `out_of_range` for the mass or the jar.
pub fn burnt(fuel: &Fuel, mass_g: f64, jar: &Jar) -> Result<Vec<BurntAnswer>> {
    bounds::MASS_G.check(mass_g)?;
    let inside = jar.contents()?;
    let poor = in_little_oxygen(fuel)?;
    let all = answers(fuel)?;
    Ok(all.into_iter().map(|answer| one(fuel, mass_g, jar, inside, answer, poor.as_ref())).collect())
}

/// Sample and oxygen count as used up together within this share: far below what is weighed.
const TOGETHER: f64 = 1e-9;

fn one(
    fuel: &Fuel,
    mass_g: f64,
    jar: &Jar,
    inside: Contents,
    answer: Answer,
    poor: Option<&Combustion>,
) -> BurntAnswer {
    let Answer { role, combustion } = answer;
    // What too little oxygen makes may be the answer itself.
    let poor = poor.filter(|poor| poor.oxygen_per_sample < combustion.oxygen_per_sample);
    let mass = Mass::new(GRAM.to_si(mass_g));
    let grams = |combustion: &Combustion, sample_mol: f64| sample_mol * combustion.sample_g_per_mol;
    let needed: f64 = oxygen_needed(&combustion, mass).si();
    let sample_mol = needed / combustion.oxygen_per_sample;
    let extent = extent(&combustion, poor, sample_mol, inside.oxygen_mol);
    let share = needed / inside.oxygen_mol;
    let regime = if (share - 1.0).abs() < TOGETHER {
        Regime::Stoichiometric
    } else if share < 1.0 {
        Regime::OxygenRich
    } else {
        Regime::OxygenPoor
    };
    let parts = [(Some(&combustion), extent.complete_mol), (poor, extent.poor_mol)];
    let (mut made, mut heat_kj): (Vec<Amount>, f64) = (Vec::new(), 0.0);
    for (part, burned_mol) in parts.into_iter().filter_map(|(part, mol)| Some((part?, mol))) {
        if burned_mol > 0.0 {
            let burned = Mass::new(GRAM.to_si(grams(part, burned_mol)));
            heat_kj += heat_released::<f64>(part, burned).leave(&symbols::COMBUSTION_HEAT);
            add_products(&mut made, part, burned_mol);
        }
    }
    let most: f64 = sample_for_oxygen(&combustion, Moles::new(inside.oxygen_mol)).si();
    BurntAnswer {
        role,
        share_of_oxygen: share,
        most_g: most / GRAM.si,
        before_going_out_g: grams(&combustion, before_going_out(&combustion, inside)),
        left_g: grams(&combustion, extent.left_mol),
        after: after(fuel, jar, inside, &extent, &made),
        poor: poor.filter(|_| extent.poor_mol > 0.0).cloned(),
        combustion,
        extent,
        regime,
        made,
        heat_kj,
    }
}

fn add_products(made: &mut Vec<Amount>, combustion: &Combustion, burned_mol: f64) {
    for product in &combustion.products {
        let formula = product.formula.to_string();
        let amount_mmol = 1000.0 * burned_mol * product.per_sample;
        let mass_g = amount_mmol / 1000.0 * product.g_per_mol;
        match made.iter_mut().find(|known| known.formula == formula) {
            Some(known) => {
                known.amount_mmol += amount_mmol;
                known.mass_g += mass_g;
            }
            None => made.push(Amount {
                formula,
                formula_unicode: product.formula.unicode(),
                phase: product.phase,
                amount_mmol,
                mass_g,
            }),
        }
    }
}

fn after(fuel: &Fuel, jar: &Jar, inside: Contents, extent: &Extent, made: &[Amount]) -> GasAfter {
    let oxygen_mmol = 1000.0 * (inside.oxygen_mol - extent.oxygen_used_mol).max(0.0);
    let nitrogen_mmol = 1000.0 * inside.nitrogen_mol;
    let made_mmol: f64 =
        made.iter().filter(|amount| amount.phase == Phase::Gas).map(|amount| amount.amount_mmol).sum();
    let acid_mmol: f64 = made
        .iter()
        .filter(|amount| ACID_GASES.contains(&amount.formula.as_str()))
        .map(|amount| amount.amount_mmol)
        .sum();
    let sample_mmol = if fuel.phase == Phase::Gas { 1000.0 * extent.left_mol } else { 0.0 };
    let kept = oxygen_mmol + nitrogen_mmol + sample_mmol;
    let volume_cm3 = jar.moist_cm3((kept + made_mmol) / 1000.0);
    GasAfter {
        oxygen_mmol,
        nitrogen_mmol,
        made_mmol,
        sample_mmol,
        volume_cm3,
        water_rise_cm3: jar.volume_cm3 - volume_cm3,
        water_rise_washed_cm3: (acid_mmol > 0.0)
            .then(|| jar.volume_cm3 - jar.moist_cm3((kept + made_mmol - acid_mmol) / 1000.0)),
    }
}

/// Moles of sample that burn until oxygen is down to the fraction at which most flames go out.
///
/// With x of the oxygen used and g moles of gas made for each of oxygen, (n(O2) - x)/(n - x + g x) is that fraction.
fn before_going_out(combustion: &Combustion, inside: Contents) -> f64 {
    let limit = crate::reference::burns::FLAME_LIMIT_FRACTION;
    let dry = inside.oxygen_mol + inside.nitrogen_mol;
    let gases = combustion.products.iter().filter(|product| product.phase == Phase::Gas);
    let gas = gases.map(|product| product.per_sample).sum::<f64>() / combustion.oxygen_per_sample;
    let used = (inside.oxygen_mol - limit * dry) / (1.0 - limit * (1.0 - gas));
    used.max(0.0) / combustion.oxygen_per_sample
}
