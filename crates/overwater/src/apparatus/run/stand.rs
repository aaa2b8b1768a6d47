//! The stand: what the apparatus is in SI units, as far as events and reports need it beside the equations.

use super::given::{Addition, Run};
use crate::apparatus::tube;
use crate::gas::solubility::{HenryEquation, dissolved};
use crate::reference::constants::{
    AIR_NOT_OXYGEN, MOLAR_GAS_2019, STANDARD_GRAVITY_1901, WATER_SURFACE_TENSION,
};
use crate::units::{Dimensioned, Length, Pressure, Temperature, Volume, VolumeFlow};
use crate::water::density::liquid_density;
use crate::water::vapour::saturation_pressure;

/// The dry gas never has less than this share of the pressure.
pub(super) const LEAST_DRY_SHARE: f64 = 1e-3;
/// Less than this share of all peroxide counts as spent.
const SPENT: f64 = 1e-6;

/// Numbers of the run in SI units that events need.
pub(super) struct Bench {
    pub barometer: f64,
    pub density: f64,
    pub flask: f64,
    pub tube: f64,
    pub area: f64,
    pub bubble_rise: f64,
    pub seal: f64,
    pub bore: Length<f64>,
    pub length: Length<f64>,
    /// Pressure above the barometer without friction.
    pub still: f64,
    pub stem: f64,
    pub rise: f64,
    pub tip: f64,
    pub open_funnel: bool,
    /// Flow at which the liquid stands at the top of the stem.
    pub most_flow: f64,
    pub trough: f64,
    pub trough_vapour: f64,
    /// Oxygen that a volume of the vessels' water takes up at most (mol/m3); 0 where that is left out.
    pub taken_up: f64,
    pub spent: f64,
}

impl Bench {
    pub(super) fn new(run: &Run, peroxide: f64) -> Self {
        let density = liquid_density::<f64>(Temperature::new(run.room_c + 273.15)).si();
        let weight = density * STANDARD_GRAVITY_1901.si();
        let bore = run.tube_bore_mm * 1e-3;
        let (bore_q, length) = (Length::new(bore), Length::new(run.tube_length_cm * 1e-2));
        let still = weight * run.outlet_depth_cm * 1e-2 + 4.0 * WATER_SURFACE_TENSION.si() / bore;
        let trough = run.room_c + 273.15;
        let trough_vapour =
            if run.dry { 0.0 } else { saturation_pressure::<f64>(Temperature::new(trough)).si() };
        let barometer = run.pressure_kpa * 1e3;
        let stem = run.stem_length_cm * 1e-2 * weight;
        Bench {
            barometer,
            density,
            flask: run.flask_cm3 * 1e-6,
            tube: tube::volume::<f64>(bore_q, length).si(),
            area: run.area_cm2 * 1e-4,
            bubble_rise: run.bubble_rise_cm_per_s * 1e-2,
            seal: run.seal_cm3.min(run.heel_cm3 + total_volume(&run.additions)) * 1e-6,
            bore: bore_q,
            length,
            still,
            stem,
            rise: run.tube_rise_cm * 1e-2 * weight,
            tip: run.tip_depth_cm * 1e-2 * weight,
            open_funnel: run.open_funnel,
            most_flow: tube::flow_for_drop(stem - still, bore_q, length),
            trough,
            trough_vapour,
            taken_up: if run.dissolves { taken_up(trough, barometer - trough_vapour) } else { 0.0 },
            spent: SPENT * peroxide,
        }
    }

    /// How far liquid stands in the stem before any gas flows (cm).
    pub(super) fn still_rise_cm(&self) -> f64 {
        100.0 * self.still / (self.density * STANDARD_GRAVITY_1901.si())
    }

    /// Dry gas that fills a volume at the trough (mol/m3).
    pub(super) fn per_volume(&self) -> f64 {
        (self.barometer - self.trough_vapour) / (MOLAR_GAS_2019.si() * self.trough)
    }

    pub(super) fn friction(&self, flow: f64) -> f64 {
        tube::drop(VolumeFlow::new(flow.max(0.0)), self.bore, self.length)
    }

    /// Liquid with its bubbles: V/(1 - ε), ε = j/(j + u) for the upward flow j of gas by area and the rise u of bubbles.
    pub(super) fn froth(&self, liquid: f64, flow: f64) -> f64 {
        let j = flow.max(0.0) / self.area;
        liquid * (1.0 + j / self.bubble_rise)
    }
}

/// What saturates water with pure oxygen, less what saturates it with the oxygen of the air: H p (1 - 0.21).
fn taken_up(trough: f64, dry_pressure: f64) -> f64 {
    let solubility = HenryEquation::BensonKrause.solubility(Temperature::new(trough));
    let not_from_air = Pressure::new(dry_pressure * AIR_NOT_OXYGEN.si());
    dissolved(solubility, not_from_air, Volume::new(1.0)).si()
}

fn total_volume(additions: &[Addition]) -> f64 {
    additions.iter().map(|addition| addition.volume_cm3).sum()
}
