//! How far a burn goes: all of the sample, all of the oxygen, and which product where the oxygen is short.

use crate::burn::Combustion;

/// Moles of sample by what becomes of them.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Extent {
    /// Burned completely.
    pub complete_mol: f64,
    /// Burned to what too little oxygen makes.
    pub poor_mol: f64,
    /// Not burned.
    pub left_mol: f64,
    /// Oxygen used.
    pub oxygen_used_mol: f64,
}

/// What an amount of sample (mol) and of oxygen (mol) come to. With too little oxygen for complete combustion some of the
/// sample burns to the poorer product, as much as uses up sample and oxygen both; with less than that needs too, all that
/// burns makes the poorer product and the rest of the sample is left.
///
/// ```
/// use overwater::burn::{Fuel, answers, extent, in_little_oxygen};
/// let carbon = Fuel::find("C")?;
/// let complete = answers(&carbon)?.remove(0).combustion;
/// let poor = in_little_oxygen(&carbon)?;
/// // 4 C and 3 O2: two of them to CO2, two to CO.
/// let burnt = extent(&complete, poor.as_ref(), 4.0, 3.0);
/// assert_eq!((burnt.complete_mol, burnt.poor_mol, burnt.left_mol), (2.0, 2.0, 0.0));
/// # Ok::<(), overwater::Error>(())
/// ```
#[must_use]
pub fn extent(complete: &Combustion, poor: Option<&Combustion>, sample_mol: f64, oxygen_mol: f64) -> Extent {
    let full = complete.oxygen_per_sample;
    if sample_mol * full <= oxygen_mol {
        return Extent {
            complete_mol: sample_mol,
            poor_mol: 0.0,
            left_mol: 0.0,
            oxygen_used_mol: sample_mol * full,
        };
    }
    let Some(little) = poor.map(|poor| poor.oxygen_per_sample).filter(|little| *little < full) else {
        let complete_mol = oxygen_mol / full;
        let left_mol = sample_mol - complete_mol;
        return Extent { complete_mol, poor_mol: 0.0, left_mol, oxygen_used_mol: oxygen_mol };
    };
    if sample_mol * little >= oxygen_mol {
        let poor_mol = oxygen_mol / little;
        let left_mol = sample_mol - poor_mol;
        return Extent { complete_mol: 0.0, poor_mol, left_mol, oxygen_used_mol: oxygen_mol };
    }
    let complete_mol = (oxygen_mol - little * sample_mol) / (full - little);
    Extent { complete_mol, poor_mol: sample_mol - complete_mol, left_mol: 0.0, oxygen_used_mol: oxygen_mol }
}
