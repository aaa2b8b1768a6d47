//! Water running back when the flask cools.

use crate::apparatus::suck_back::shrinkage;
use crate::plan::Place;
use crate::plan::additions::Additions;
use crate::plan::flow::Train;
use crate::plan::lesson::Funnel;
use crate::units::{DEGREE_CELSIUS, Temperature};

/// Water running back when the flask cools.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SuckBack {
    /// Temperature from which the flask is taken to cool (degC).
    pub from_c: f64,
    /// Share of the moist gas that is lost.
    pub shrinkage: f64,
    /// Water that the cooling flask would draw in (cm3).
    pub drawn_cm3: f64,
    /// What the delivery tube holds (cm3).
    pub tube_cm3: f64,
    /// Whether that reaches the flask while the tube's end is under water.
    pub reaches_flask: bool,
    /// The funnel.
    pub funnel: Funnel,
}

pub(super) fn suck_back(place: &Place, train: &Train, additions: &Additions) -> SuckBack {
    // It does not get hotter than its boiling point, where all of the gas is steam.
    let from_c = additions.end_temperature_c.min(additions.boiling_point_c);
    let hot = Temperature::new(DEGREE_CELSIUS.to_si(from_c));
    let shrinkage = shrinkage(hot, place.temperature(), place.pressure());
    let drawn_cm3 = shrinkage * train.free_volume_cm3;
    SuckBack {
        from_c,
        shrinkage,
        drawn_cm3,
        tube_cm3: train.tube_volume_cm3,
        reaches_flask: drawn_cm3 > train.tube_volume_cm3,
        funnel: train.funnel,
    }
}
