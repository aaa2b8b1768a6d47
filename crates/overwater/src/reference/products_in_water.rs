//! What the product of a burn does in water, and what indicators show.
//!
//! The reactions are facts of chemistry (any textbook). Colours of indicators are common practice, no source: makers
//! print their own charts.

/// An acid that a burn can leave in water.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Acid {
    /// SO2, HSO3-, SO3 2-.
    SulfurDioxide,
    /// HSO4-, SO4 2-: what sulfuric acid is in water, its first proton lost.
    HydrogenSulfate,
    /// CO2, HCO3-, CO3 2-.
    CarbonDioxide,
    /// H3PO4 and its three anions.
    Phosphoric,
    /// H2O2, HO2-.
    HydrogenPeroxide,
}

/// A hydroxide of which little dissolves.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Hydroxide {
    /// Mg(OH)2.
    Magnesium,
    /// Ca(OH)2.
    Calcium,
}

/// What one formula unit of a product becomes in water.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Becomes {
    /// So many molecules of an acid.
    Acid(Acid, f64),
    /// So many ions of an alkali metal with as much hydroxide.
    Alkali(f64),
    /// So many units of a hydroxide of which little dissolves.
    Hydroxide(Hydroxide, f64),
}

/// One product.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct ProductInWater {
    /// Its formula.
    pub formula: &'static str,
    /// What it becomes; nothing where it stays as it is.
    pub becomes: &'static [Becomes],
    /// The reaction with water, to be balanced.
    pub reaction: Option<&'static str>,
    /// Whether it is a gas at room temperature.
    pub is_gas: bool,
    /// What to know beside the pH.
    pub note: &'static str,
}

const fn product(
    formula: &'static str,
    becomes: &'static [Becomes],
    reaction: Option<&'static str>,
    note: &'static str,
) -> ProductInWater {
    ProductInWater { formula, becomes, reaction, is_gas: false, note }
}

const fn gas(product: ProductInWater) -> ProductInWater {
    ProductInWater { is_gas: true, ..product }
}

const STAYS: &str = "does not dissolve: the colour of the indicator stays that of the water";

/// The products that are known in water.
pub static PRODUCTS_IN_WATER: [ProductInWater; 25] = [
    gas(product(
        "SO2",
        &[Becomes::Acid(Acid::SulfurDioxide, 1.0)],
        Some("SO2 + H2O -> H+ + HSO3-"),
        "it can bleach the indicator after a while; in air it is slowly oxidised to sulfuric acid",
    )),
    product(
        "SO3",
        &[Becomes::Acid(Acid::HydrogenSulfate, 1.0)],
        Some("SO3 + H2O -> H+ + HSO4-"),
        "reacts violently with water and makes a mist of sulfuric acid",
    ),
    gas(product(
        "CO2",
        &[Becomes::Acid(Acid::CarbonDioxide, 1.0)],
        Some("CO2 + H2O -> H+ + HCO3-"),
        "a weak acid of which little dissolves: litmus turns purple to wine red at most; limewater is the better test",
    )),
    gas(product(
        "CO",
        &[],
        None,
        "hardly dissolves and does not change an indicator; it is poisonous and has no smell",
    )),
    product(
        "P4O10",
        &[Becomes::Acid(Acid::Phosphoric, 4.0)],
        Some("P4O10 + H2O -> H3PO4"),
        "hisses in water; cold water gives metaphosphoric acid first, which becomes phosphoric acid in hours",
    ),
    product("Na2O", &[Becomes::Alkali(2.0)], Some("Na2O + H2O -> Na+ + OH-"), "the solution is caustic"),
    product(
        "Na2O2",
        &[Becomes::Alkali(2.0), Becomes::Acid(Acid::HydrogenPeroxide, 1.0)],
        Some("Na2O2 + H2O -> Na+ + OH- + H2O2"),
        "the solution is caustic and holds hydrogen peroxide, which gives off oxygen as it warms and can bleach the \
         indicator",
    ),
    product("NaOH", &[Becomes::Alkali(1.0)], None, "the solution is caustic"),
    product("Li2O", &[Becomes::Alkali(2.0)], Some("Li2O + H2O -> Li+ + OH-"), "the solution is caustic"),
    product("LiOH", &[Becomes::Alkali(1.0)], None, "the solution is caustic"),
    product("K2O", &[Becomes::Alkali(2.0)], Some("K2O + H2O -> K+ + OH-"), "the solution is caustic"),
    product(
        "K2O2",
        &[Becomes::Alkali(2.0), Becomes::Acid(Acid::HydrogenPeroxide, 1.0)],
        Some("K2O2 + H2O -> K+ + OH- + H2O2"),
        "the solution is caustic and holds hydrogen peroxide",
    ),
    product(
        "KO2",
        &[Becomes::Alkali(1.0), Becomes::Acid(Acid::HydrogenPeroxide, 0.5)],
        Some("2KO2 + 2H2O -> 2K+ + 2OH- + H2O2 + O2"),
        "gives off oxygen at once; the solution is caustic and holds hydrogen peroxide",
    ),
    product("KOH", &[Becomes::Alkali(1.0)], None, "the solution is caustic"),
    product(
        "CaO",
        &[Becomes::Hydroxide(Hydroxide::Calcium, 1.0)],
        Some("CaO + H2O -> Ca(OH)2"),
        "gets hot when it is wetted; what dissolves is limewater, which clouds in the air",
    ),
    product(
        "Ca(OH)2",
        &[Becomes::Hydroxide(Hydroxide::Calcium, 1.0)],
        None,
        "what dissolves is limewater, which clouds in the air",
    ),
    product(
        "MgO",
        &[Becomes::Hydroxide(Hydroxide::Magnesium, 1.0)],
        Some("MgO + H2O -> Mg(OH)2"),
        "little dissolves, and slowly, the less the hotter the oxide has been: the pH is the most that is reached",
    ),
    product(
        "Mg(OH)2",
        &[Becomes::Hydroxide(Hydroxide::Magnesium, 1.0)],
        None,
        "little dissolves: the pH is the most that is reached",
    ),
    product(
        "ZnO",
        &[],
        None,
        "does not dissolve in water, but in acid and in strong alkali; yellow while hot, white when cold",
    ),
    product("Fe3O4", &[], None, STAYS),
    product("Fe2O3", &[], None, STAYS),
    product("CuO", &[], None, STAYS),
    product("Cu2O", &[], None, STAYS),
    product("Al2O3", &[], None, STAYS),
    product("H2O", &[], None, "is water itself"),
];

/// Colours of universal indicator: below this pH, in words. Makers' charts differ by about one unit.
pub static UNIVERSAL_INDICATOR: [(f64, &str); 8] = [
    (2.5, "deep red"),
    (4.0, "orange-red"),
    (5.5, "orange to yellow"),
    (6.5, "yellow-green"),
    (7.5, "green"),
    (9.0, "blue-green"),
    (11.0, "blue"),
    (f64::INFINITY, "violet"),
];

/// Colours of litmus: below this pH, in words.
pub static LITMUS: [(f64, &str); 3] =
    [(5.0, "red"), (8.0, "purple, between its colours"), (f64::INFINITY, "blue")];
