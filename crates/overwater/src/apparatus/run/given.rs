//! What a run is made of, and the check of it.

use std::borrow::Cow;

use crate::bounds::{self, Bound};
use crate::peroxide::kinetics::{Kinetics, Law, TYPICAL_MANGANESE_DIOXIDE};
use crate::{Code, Error, Result};

/// Peroxide solution put in.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Addition {
    /// When it begins (s).
    pub time_s: f64,
    /// Over how long it drips; 0 for a portion poured at once (s).
    pub over_s: f64,
    /// How much (cm3).
    pub volume_cm3: f64,
    /// Concentration of peroxide; 0 for water (mol/dm3).
    pub concentration_mol_per_dm3: f64,
    /// Its temperature (degC).
    pub temperature_c: f64,
}

/// A vessel to fill.
#[derive(Debug, Clone, PartialEq)]
pub struct RunVessel {
    /// Its name.
    pub name: String,
    /// Volume (cm3).
    pub volume_cm3: f64,
    /// How far its top stands above the trough's surface (cm).
    pub height_cm: f64,
}

/// One preparation. [`Run::default`] is a flask of 250 cm3 with 25 cm3 of water in it and nothing added yet; its numbers
/// are the same as the defaults of a plan, and common practice without a source where a field says so.
#[derive(Debug, Clone, PartialEq)]
pub struct Run {
    /// Flask (cm3).
    pub flask_cm3: f64,
    /// Area of its liquid's surface; 50 cm2 for 250 cm3 (cm2).
    pub area_cm2: f64,
    /// Water at the start (cm3).
    pub heel_cm3: f64,
    /// Liquid that covers the tip of the funnel; with less, all gas escapes by the funnel (cm3).
    pub seal_cm3: f64,
    /// Catalyst (g).
    pub catalyst_g: f64,
    /// How fast it works.
    pub kinetics: Kinetics,
    /// Room, trough and flask at the start (degC).
    pub room_c: f64,
    /// Pressure at the place (kPa).
    pub pressure_kpa: f64,
    /// Bore of the delivery tube (mm).
    pub tube_bore_mm: f64,
    /// Its length (cm).
    pub tube_length_cm: f64,
    /// Depth of its outlet under the trough's surface (cm).
    pub outlet_depth_cm: f64,
    /// Its highest point above the trough's surface (cm).
    pub tube_rise_cm: f64,
    /// Stem of the funnel above the liquid (cm).
    pub stem_length_cm: f64,
    /// How deep its tip is under the liquid (cm).
    pub tip_depth_cm: f64,
    /// Whether air can come in through the funnel.
    pub open_funnel: bool,
    /// How fast bubbles rise through the liquid; 20 cm/s for bubbles of some mm in clean water (handbook value, from
    /// memory), a tenth of it where dust or detergent makes froth (common practice, no source) (cm/s).
    pub bubble_rise_cm_per_s: f64,
    /// Heat lost through the glass for each kelvin above the room; 10 W/(m2 K) x 200 cm2 (common practice, no source)
    /// (W/K).
    pub heat_loss_w_per_k: f64,
    /// Heat capacity of the glass that follows the liquid; about 50 g (common practice, no source) (J/K).
    pub glass_j_per_k: f64,
    /// What is added, in order of time.
    pub additions: Vec<Addition>,
    /// Gas driven out first and thrown away (cm3).
    pub rejected_cm3: f64,
    /// What is filled, in order.
    pub vessels: Vec<RunVessel>,
    /// How long to follow it (s).
    pub end_s: f64,
    /// When to report the state, in order (s).
    pub outputs_s: Vec<f64>,
    /// Relative tolerance of the integration.
    pub rtol: f64,
    /// Most steps of the integrator.
    pub most_steps: usize,
    /// Kept at room temperature, as in a water bath.
    pub isothermal: bool,
    /// Without vapour: only to compare with closed forms.
    pub dry: bool,
    /// Whether oxygen dissolves in the water of the vessels, by its upper bound: each vessel's own water takes up
    /// as much as pure oxygen at the barometer's pressure saturates it with, less what it has from the air.
    pub dissolves: bool,
}

impl Default for Run {
    fn default() -> Self {
        Run {
            flask_cm3: 250.0,
            area_cm2: 50.0,
            heel_cm3: 25.0,
            seal_cm3: 25.0,
            catalyst_g: 0.4,
            kinetics: TYPICAL_MANGANESE_DIOXIDE,
            room_c: 20.0,
            pressure_kpa: 101.325,
            tube_bore_mm: 5.0,
            tube_length_cm: 80.0,
            outlet_depth_cm: 10.0,
            tube_rise_cm: 15.0,
            stem_length_cm: 25.0,
            tip_depth_cm: 1.0,
            open_funnel: true,
            bubble_rise_cm_per_s: 20.0,
            heat_loss_w_per_k: 0.2,
            glass_j_per_k: 40.0,
            additions: Vec::new(),
            rejected_cm3: 0.0,
            vessels: Vec::new(),
            end_s: 1200.0,
            outputs_s: Vec::new(),
            rtol: 1e-8,
            most_steps: 20_000,
            isothermal: false,
            dry: false,
            dissolves: false,
        }
    }
}

/// Most additions, vessels and times of one run.
const MOST_LISTED: usize = 1000;
const MOST_OUTPUTS: usize = 100_000;
/// Liquid never takes up more of the flask.
const MOST_LIQUID: f64 = 0.98;

/// Checks a number against a row of the bounds table, under the name that it has here.
fn within(bound: &Bound, name: impl Into<Cow<'static, str>>, value: f64) -> Result<()> {
    bound.check(value).map_err(|error| Error { parameter: name.into(), ..error })?;
    Ok(())
}

fn not_more(name: &'static str, count: usize, most: usize) -> Result<()> {
    if count <= most {
        return Ok(());
    }
    let error = Error::new(Code::TooLarge, name).value(count.to_string()).allowed(format!("at most {most}"));
    Err(error.advice("follow one preparation at a time"))
}

impl Run {
    /// Checks every number and the order of the times.
    ///
    /// # Errors
    /// `not_a_number` or `out_of_range` for a single number, `contradiction` for liquid that does not fit in the flask,
    /// times out of order, or a heel that leaves no gas space.
    pub fn check(&self) -> Result<()> {
        let rows: [(&Bound, &'static str, f64); 22] = [
            (&bounds::FLASK_CM3, "flask_cm3", self.flask_cm3),
            (&bounds::LIQUID_AREA_CM2, "area_cm2", self.area_cm2),
            (&bounds::LIQUID_CM3, "heel_cm3", self.heel_cm3),
            (&bounds::LIQUID_CM3, "seal_cm3", self.seal_cm3),
            (&bounds::CATALYST_G, "catalyst_g", self.catalyst_g),
            (&bounds::RATE_CONSTANT_AT_20, "kinetics.k_at_20", self.kinetics.k_at_20),
            (&bounds::ACTIVATION_J_PER_MOL, "kinetics.activation_j_per_mol", self.kinetics.activation),
            (&bounds::ROOM_TEMPERATURE_C, "room_c", self.room_c),
            (&bounds::PRESSURE_KPA, "pressure_kpa", self.pressure_kpa),
            (&bounds::TUBE_BORE_MM, "tube_bore_mm", self.tube_bore_mm),
            (&bounds::TUBE_LENGTH_CM, "tube_length_cm", self.tube_length_cm),
            (&bounds::OUTLET_DEPTH_CM, "outlet_depth_cm", self.outlet_depth_cm),
            (&bounds::TUBE_RISE_CM, "tube_rise_cm", self.tube_rise_cm),
            (&bounds::STEM_LENGTH_CM, "stem_length_cm", self.stem_length_cm),
            (&bounds::TIP_DEPTH_CM, "tip_depth_cm", self.tip_depth_cm),
            (&bounds::BUBBLE_RISE_CM_PER_S, "bubble_rise_cm_per_s", self.bubble_rise_cm_per_s),
            (&bounds::HEAT_LOSS_W_PER_K, "heat_loss_w_per_k", self.heat_loss_w_per_k),
            (&bounds::GLASS_J_PER_K, "glass_j_per_k", self.glass_j_per_k),
            (&bounds::REJECTED_CM3, "rejected_cm3", self.rejected_cm3),
            (&bounds::RUN_END_S, "end_s", self.end_s),
            (&bounds::RELATIVE_TOLERANCE, "rtol", self.rtol),
            (&bounds::MOST_STEPS, "most_steps", self.most_steps as f64),
        ];
        for (bound, name, value) in rows {
            within(bound, name, value)?;
        }
        not_more("additions", self.additions.len(), MOST_LISTED)?;
        not_more("vessels", self.vessels.len(), MOST_LISTED)?;
        not_more("outputs_s", self.outputs_s.len(), MOST_OUTPUTS)?;
        match self.kinetics.law {
            Law::Power { order } => within(&bounds::REACTION_ORDER, "kinetics.order", order)?,
            Law::Saturating { half } => within(&bounds::HALF_MOL_PER_M3, "kinetics.half_mol_per_m3", half)?,
        }
        let mut last = 0.0;
        let mut liquid = self.heel_cm3;
        for (index, addition) in self.additions.iter().enumerate() {
            let name = |field: &str| format!("additions[{index}].{field}");
            within(&bounds::ADDITION_CM3, name("volume_cm3"), addition.volume_cm3)?;
            let concentration = addition.concentration_mol_per_dm3;
            within(&bounds::ADDITION_MOL_PER_DM3, name("concentration_mol_per_dm3"), concentration)?;
            within(&bounds::ROOM_TEMPERATURE_C, name("temperature_c"), addition.temperature_c)?;
            within(&bounds::DRIP_S, name("over_s"), addition.over_s)?;
            within(&bounds::TIME_S, name("time_s"), addition.time_s)?;
            if addition.time_s > self.end_s {
                return Err(Error::new(Code::Contradiction, name("time_s"))
                    .value(format!("{} s", addition.time_s))
                    .allowed(format!("no later than the end, {} s", self.end_s))
                    .advice("follow the run for longer, or add earlier"));
            }
            if addition.time_s < last {
                return Err(Error::new(Code::Contradiction, name("time_s"))
                    .value(format!("{} s", addition.time_s))
                    .allowed(format!("{last} s or later, when the addition before it has ended"))
                    .advice("give the additions in order of time"));
            }
            last = addition.time_s + addition.over_s;
            liquid += addition.volume_cm3;
            if liquid >= MOST_LIQUID * self.flask_cm3 {
                return Err(Error::new(Code::Contradiction, name("volume_cm3"))
                    .value(format!("{} cm3, {liquid} cm3 with what is in the flask", addition.volume_cm3))
                    .allowed(format!("less than 98 % of the flask of {} cm3", self.flask_cm3))
                    .advice("take a larger flask or add less"));
            }
        }
        if liquid <= 0.0 || self.heel_cm3 >= MOST_LIQUID * self.flask_cm3 {
            return Err(Error::new(Code::Contradiction, "heel_cm3")
                .value(format!("{} cm3", self.heel_cm3))
                .allowed("some liquid, and less than 98 % of the flask")
                .advice("leave room for the gas"));
        }
        let mut before = 0.0;
        for (index, time) in self.outputs_s.iter().enumerate() {
            let name = format!("outputs_s[{index}]");
            within(&bounds::TIME_S, name.clone(), *time)?;
            if *time < before || *time > self.end_s {
                return Err(Error::new(Code::Contradiction, name)
                    .value(format!("{time} s"))
                    .allowed(format!("{before} to {} s: in order, and within the run", self.end_s))
                    .advice("give the times in order"));
            }
            before = *time;
        }
        for (index, vessel) in self.vessels.iter().enumerate() {
            within(&bounds::VOLUME_CM3, format!("vessels[{index}].volume_cm3"), vessel.volume_cm3)?;
            within(&bounds::VESSEL_HEIGHT_CM, format!("vessels[{index}].height_cm"), vessel.height_cm)?;
        }
        Ok(())
    }
}
