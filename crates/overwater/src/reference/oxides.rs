//! What the elements make when they burn, and the fuels that the handbook table of enthalpies does not share with
//! [`crate::reference::thermochemistry`].
//!
//! Which oxide an excess of oxygen favours: OpenStax Chemistry 2e, section 18.9, for the alkali metals (lithium the
//! oxide, sodium the peroxide, potassium the superoxide); magnetite from iron in oxygen holds 72.4 % of iron; sulfur,
//! carbon, phosphorus as every textbook has them. What a mark scheme credits: common practice, no source.

use crate::reference::sources;
use crate::reference::thermochemistry::Phase;
use crate::scalar::Source;

/// The oxides of one element.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Oxides {
    /// The symbol of the element.
    pub element: &'static str,
    /// What an excess of oxygen favours; the element itself where it does not burn but goes free.
    pub favoured: &'static str,
    /// What a mark scheme usually credits.
    pub credited: &'static [&'static str],
    /// What too little oxygen makes.
    pub poor: &'static str,
}

const fn oxides(
    element: &'static str,
    favoured: &'static str,
    credited: &'static [&'static str],
    poor: &'static str,
) -> Oxides {
    Oxides { element, favoured, credited, poor }
}

/// Every element that is burned, and nitrogen, which goes free.
pub static OXIDES: [Oxides; 14] = [
    oxides("S", "SO2", &["SO2"], "SO2"),
    oxides("C", "CO2", &["CO2"], "CO"),
    oxides("H", "H2O", &["H2O"], "H2O"),
    oxides("N", "N2", &["N2"], "N2"),
    oxides("P", "P4O10", &["P4O10"], "P4O10"),
    oxides("Mg", "MgO", &["MgO"], "MgO"),
    oxides("Ca", "CaO", &["CaO"], "CaO"),
    oxides("Al", "Al2O3", &["Al2O3"], "Al2O3"),
    oxides("Zn", "ZnO", &["ZnO"], "ZnO"),
    oxides("Cu", "CuO", &["CuO"], "Cu2O"),
    oxides("Fe", "Fe3O4", &["Fe3O4", "Fe2O3"], "Fe3O4"),
    oxides("Li", "Li2O", &["Li2O"], "Li2O"),
    oxides("Na", "Na2O2", &["Na2O"], "Na2O"),
    oxides("K", "KO2", &["K2O"], "K2O"),
];

/// Gases that water or dilute alkali takes up for the most part; carbon monoxide and nitrogen stay.
pub static ACID_GASES: [&str; 3] = ["SO2", "SO3", "CO2"];

/// A fuel of which the handbook gives no entropy.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct LiquidFuel {
    /// Its name.
    pub name: &'static str,
    /// Its formula.
    pub formula: &'static str,
    /// Its phase at 298.15 K.
    pub phase: Phase,
    /// CAS registry number.
    pub cas: &'static str,
    /// Enthalpy of formation at 298.15 K, in kJ/mol.
    pub formation_kj_per_mol: f64,
    /// Heat capacity at constant pressure at 298.15 K, in J/(mol K).
    pub heat_capacity_j_per_mol_k: f64,
    /// Where both come from.
    pub source: &'static Source,
}

const fn liquid(
    name: &'static str,
    formula: &'static str,
    cas: &'static str,
    formation_kj_per_mol: f64,
    heat_capacity_j_per_mol_k: f64,
) -> LiquidFuel {
    let source = &sources::CRC_THERMOCHEMISTRY;
    LiquidFuel {
        name,
        formula,
        phase: Phase::Liquid,
        cas,
        formation_kj_per_mol,
        heat_capacity_j_per_mol_k,
        source,
    }
}

/// Liquid fuels beside ethanol.
pub static LIQUID_FUELS_298: [LiquidFuel; 9] = [
    liquid("methanol", "CH3OH", "67-56-1", -239.2, 81.1),
    liquid("propanone", "CH3COCH3", "67-64-1", -248.4, 126.3),
    liquid("pentane", "C5H12", "109-66-0", -173.5, 167.2),
    liquid("hexane", "C6H14", "110-54-3", -198.7, 195.6),
    liquid("cyclohexane", "C6H12", "110-82-7", -156.4, 154.9),
    liquid("benzene", "C6H6", "71-43-2", 49.1, 136.0),
    liquid("heptane", "C7H16", "142-82-5", -224.2, 224.7),
    liquid("methylbenzene", "C7H8", "108-88-3", 12.4, 157.3),
    liquid("octane", "C8H18", "111-65-9", -250.1, 254.6),
];

/// Other names and formulas of what burns: what is written, and the name in the tables.
pub static FUEL_NAMES: [(&str, &str); 31] = [
    ("sulfur", "sulfur (rhombic)"),
    ("sulphur", "sulfur (rhombic)"),
    ("S8", "sulfur (rhombic)"),
    ("carbon", "carbon (graphite)"),
    ("charcoal", "carbon (graphite)"),
    ("graphite", "carbon (graphite)"),
    ("phosphorus", "phosphorus red (V)"),
    ("red phosphorus", "phosphorus red (V)"),
    ("white phosphorus", "phosphorus white"),
    ("yellow phosphorus", "phosphorus white"),
    ("P4", "phosphorus white"),
    ("steel wool", "iron"),
    ("iron wool", "iron"),
    ("aluminum", "aluminium"),
    ("acetylene", "ethyne"),
    ("ethylene", "ethene"),
    ("C3H6O", "propanone"),
    ("acetone", "propanone"),
    ("(CH3)2CO", "propanone"),
    ("C2H6O", "ethanol"),
    ("CH3CH2OH", "ethanol"),
    ("CH4O", "methanol"),
    ("C2H5OH(g)", "ethanol vapour"),
    ("toluene", "methylbenzene"),
    ("CH3CH3", "ethane"),
    ("CH3CH2CH3", "propane"),
    ("CH3CH2CH2CH3", "butane"),
    ("CH3CH2CH2CH2CH3", "pentane"),
    ("n-hexane", "hexane"),
    ("n-heptane", "heptane"),
    ("n-octane", "octane"),
];
