//! The train of flask, funnel, tube and trough: its volumes and the pressure in it.

use crate::apparatus::back_pressure::BackPressure;
use crate::apparatus::tube;
use crate::bounds;
use crate::plan::given::{Given, check};
use crate::plan::lesson::{Funnel, Lesson};
use crate::plan::{Place, defaults};
use crate::units::{
    CENTIMETRE, CUBIC_CENTIMETRE, CUBIC_CENTIMETRE_PER_SECOND, Dimensioned, KILOPASCAL, Length, MILLIMETRE,
    VolumeFlow,
};
use crate::{Code, Error, Result};

/// The apparatus with everything decided.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Train {
    pub(super) flask_cm3: f64,
    pub(super) heel_cm3: f64,
    pub(super) free_volume_cm3: f64,
    pub(super) tube_volume_cm3: f64,
    pub(super) funnel: Funnel,
    stem_length_cm: f64,
    bore: Length<f64>,
    length: Length<f64>,
    depth: Length<f64>,
    flow: VolumeFlow<f64>,
    flow_cm3_per_s: f64,
}

pub(super) fn train(lesson: &Lesson, given: &mut Given) -> Result<Train> {
    let apparatus = &lesson.apparatus;
    let flask_cm3 = given.number(apparatus.flask_cm3, &defaults::FLASK, &bounds::FLASK_CM3)?;
    let heel_cm3 = given.number(apparatus.heel_cm3, &defaults::HEEL, &bounds::LIQUID_CM3)?;
    if heel_cm3 >= flask_cm3 {
        return Err(Error::new(Code::Contradiction, "apparatus.heel_cm3")
            .value(format!("{heel_cm3} cm3"))
            .allowed(format!("less than the flask, {flask_cm3} cm3"))
            .advice("leave room for the peroxide, the froth and the gas: fill at most a third"));
    }
    let bore_mm = given.number(apparatus.tube_bore_mm, &defaults::TUBE_BORE, &bounds::TUBE_BORE_MM)?;
    let length_cm =
        given.number(apparatus.tube_length_cm, &defaults::TUBE_LENGTH, &bounds::TUBE_LENGTH_CM)?;
    let depth_cm =
        given.number(apparatus.outlet_depth_cm, &defaults::OUTLET_DEPTH, &bounds::OUTLET_DEPTH_CM)?;
    let stem_length_cm =
        given.number(apparatus.stem_length_cm, &defaults::STEM_LENGTH, &bounds::STEM_LENGTH_CM)?;
    let flow_cm3_per_s = given.number(apparatus.flow_cm3_per_s, &defaults::FLOW, &bounds::FLOW_CM3_PER_S)?;
    let funnel = apparatus.funnel.unwrap_or_else(|| {
        given.assume(
            "apparatus.funnel",
            "open thistle funnel",
            "the usual one; a tap funnel lets no air in when the flask cools",
        );
        Funnel::Open
    });
    let bore = Length::new(MILLIMETRE.to_si(bore_mm));
    let length = Length::new(CENTIMETRE.to_si(length_cm));
    let tube_volume_cm3 = tube::volume(bore, length).si() / CUBIC_CENTIMETRE.si;
    let free_volume_cm3 = match apparatus.free_volume_cm3 {
        Some(free) => check(&bounds::FREE_VOLUME_CM3, free, "apparatus.free_volume_cm3")?,
        None => {
            let free = flask_cm3 - heel_cm3 + tube_volume_cm3;
            given.assume(
                "apparatus.free_volume_cm3",
                format!("{} cm3", crate::units::significant(free, 3)),
                "flask less the water in it, and the delivery tube",
            );
            free
        }
    };
    Ok(Train {
        flask_cm3,
        heel_cm3,
        free_volume_cm3,
        tube_volume_cm3,
        funnel,
        stem_length_cm,
        bore,
        length,
        depth: Length::new(CENTIMETRE.to_si(depth_cm)),
        flow: VolumeFlow::new(CUBIC_CENTIMETRE_PER_SECOND.to_si(flow_cm3_per_s)),
        flow_cm3_per_s,
    })
}

/// Pressure in the flask above that of the room, and what it does in the funnel stem.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct BackPressures {
    /// Rate at which gas comes (cm3/s).
    pub flow_cm3_per_s: f64,
    /// Water over the outlet (kPa).
    pub depth_kpa: f64,
    /// Friction in the tube (kPa).
    pub friction_kpa: f64,
    /// Excess pressure in a bubble (kPa).
    pub bubble_kpa: f64,
    /// All together (kPa).
    pub total_kpa: f64,
    /// How far the liquid stands in the stem above the liquid in the flask (cm).
    pub stem_rise_cm: f64,
    /// Length of the stem above the liquid (cm).
    pub stem_length_cm: f64,
    /// What is left of the stem before gas pushes liquid out of the funnel (cm); below 0 it does.
    pub margin_cm: f64,
}

pub(super) fn back_pressures(place: &Place, train: &Train) -> BackPressures {
    let back = BackPressure::new(train.depth, train.bore, train.length, train.flow, place.temperature());
    let stem_rise_cm = back.stem_rise().si() / CENTIMETRE.si;
    BackPressures {
        flow_cm3_per_s: train.flow_cm3_per_s,
        depth_kpa: back.depth.si() / KILOPASCAL.si,
        friction_kpa: back.friction.si() / KILOPASCAL.si,
        bubble_kpa: back.bubble.si() / KILOPASCAL.si,
        total_kpa: back.total().si() / KILOPASCAL.si,
        stem_rise_cm,
        stem_length_cm: train.stem_length_cm,
        margin_cm: train.stem_length_cm - stem_rise_cm,
    }
}
