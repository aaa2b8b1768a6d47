//! A hydrocarbon is burnt with more oxygen than it needs: carbon and hydrogen from the volumes, all read at one
//! temperature and pressure.
//!
//! ```text
//! CxHy + (x + y/4) O2 = x CO2 + y/2 H2O
//! x = (V(burnt) - V(washed)) / V(sample)                   the alkali takes the carbon dioxide
//! y = 4 ((V(mixed) - V(burnt))/V(sample) - 1)              water liquid
//! y = 4 (1 - (V(mixed) - V(burnt))/V(sample))              water a gas, that the alkali does not take
//! ```

use crate::scalar::Scalar;
use crate::symbols;
use crate::units::{Dimensioned, Volume};

use super::WaterAfterBurning;

/// The four volumes.
#[derive(Debug, Clone, Copy)]
pub struct Volumes<S> {
    /// The hydrocarbon by itself.
    pub sample: Volume<S>,
    /// With oxygen, before burning.
    pub mixed: Volume<S>,
    /// After burning.
    pub burnt: Volume<S>,
    /// After the alkali.
    pub washed: Volume<S>,
}

/// x, y and the oxygen left over by them.
///
/// ```
/// use overwater::readings::WaterAfterBurning;
/// use overwater::readings::eudiometry::{Volumes, composition};
/// use overwater::units::Volume;
/// // 10 cm3 of propane with 70 cm3 of oxygen: 50 are used, 30 of CO2 are made, 20 are left.
/// let [sample, mixed, burnt, washed] = [10.0, 80.0, 50.0, 20.0].map(Volume::new);
/// let volumes = Volumes { sample, mixed, burnt, washed };
/// assert_eq!(composition(&volumes, WaterAfterBurning::Liquid), [3.0, 8.0, 20.0]);
/// ```
#[inline(always)]
pub fn composition<S: Scalar>(volumes: &Volumes<S>, water: WaterAfterBurning) -> [S; 3] {
    let sample = volumes.sample.si();
    let carbon = ((volumes.burnt.si() - volumes.washed.si()) / sample).checkpoint(&symbols::CARBON_NUMBER);
    let contraction = (volumes.mixed.si() - volumes.burnt.si()) / sample;
    let hydrogen = match water {
        WaterAfterBurning::Liquid => (contraction - 1.0) * 4.0,
        WaterAfterBurning::Gas => (-contraction + 1.0) * 4.0,
    }
    .checkpoint(&symbols::HYDROGEN_NUMBER);
    let left = volumes.mixed.si() - sample - (carbon + hydrogen / 4.0) * sample;
    [carbon, hydrogen, left.checkpoint(&symbols::OXYGEN_LEFT)]
}
