//! What is burned in a jar of oxygen; what it makes stands in [`crate::reference::oxides`].
//!
//! Usual masses, the oxygen that a burn wants, what holds the sample and where a flame goes out are common practice,
//! no source.

/// What holds the sample.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Holder {
    /// A deflagrating spoon.
    Spoon,
    /// Tongs or a wire.
    Tongs,
}

/// One kind of sample.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Burn {
    /// Its formula.
    pub formula: &'static str,
    /// Its names; the first is the one that is printed.
    pub names: &'static [&'static str],
    /// The form it is used in.
    pub form: &'static str,
    /// The mass usually taken, in g.
    pub usual_mass_g: f64,
    /// The fraction of oxygen that makes the burn worth seeing.
    pub wanted_fraction: f64,
    /// What holds it.
    pub holder: Holder,
}

/// The burns that this library knows.
pub static BURNS: [Burn; 7] = [
    Burn {
        formula: "S",
        names: &["sulfur", "sulphur"],
        form: "powdered roll sulfur",
        usual_mass_g: 0.10,
        wanted_fraction: 0.80,
        holder: Holder::Spoon,
    },
    Burn {
        formula: "C",
        names: &["carbon", "charcoal"],
        form: "a piece of charcoal",
        usual_mass_g: 0.05,
        wanted_fraction: 0.80,
        holder: Holder::Spoon,
    },
    Burn {
        formula: "Mg",
        names: &["magnesium"],
        form: "ribbon, cleaned",
        usual_mass_g: 0.10,
        wanted_fraction: 0.90,
        holder: Holder::Tongs,
    },
    Burn {
        formula: "Na",
        names: &["sodium"],
        form: "a piece like a rice grain, oil removed",
        usual_mass_g: 0.05,
        wanted_fraction: 0.90,
        holder: Holder::Spoon,
    },
    Burn {
        formula: "Ca",
        names: &["calcium"],
        form: "a fresh turning",
        usual_mass_g: 0.10,
        wanted_fraction: 0.90,
        holder: Holder::Spoon,
    },
    Burn {
        formula: "P",
        names: &["phosphorus", "red phosphorus"],
        form: "red phosphorus, dry",
        usual_mass_g: 0.05,
        wanted_fraction: 0.80,
        holder: Holder::Spoon,
    },
    Burn {
        formula: "Fe",
        names: &["iron", "steel wool", "iron wool"],
        form: "a loose tuft of fine steel wool",
        usual_mass_g: 0.20,
        wanted_fraction: 0.95,
        holder: Holder::Tongs,
    },
];

/// The fraction of oxygen in which a glowing splint relights with certainty; about 0.3 is often enough.
pub const SPLINT_FRACTION: f64 = 0.50;

/// The fraction of oxygen below which most flames go out. Burning magnesium, sodium and calcium go on below it.
pub const FLAME_LIMIT_FRACTION: f64 = 0.15;
