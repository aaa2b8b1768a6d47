//! From "these burns, this class, this stock" to everything to weigh, pour, fill, wait for and be careful of.

mod additions;
mod burns;
mod cooling;
pub mod defaults;
mod filling;
mod flow;
mod gas_budget;
mod given;
pub mod lesson;
mod requisition;
pub mod schedule;
mod stock;

pub use additions::Additions;
pub use burns::{BurnAnswer, BurnPlan};
pub use cooling::SuckBack;
pub use filling::{Filling, OxygenBalance, VesselFilling};
pub use flow::BackPressures;
pub use gas_budget::{GasBudget, VesselGas};
pub use given::Assumption;
pub use lesson::Lesson;
pub use requisition::{Dilution, Requisition, SampleLine};
pub use stock::{ASSAY_PERMANGANATE_MOL_PER_DM3, ASSAY_TITRES_CM3, ConventionReading, StockReport, Strength};

use crate::caution::{self, Caution};
use crate::gas::barometer::StationPressure;
use crate::peroxide::strength::VolumeConvention;
use crate::reference::{constants, peroxide, sources, water};
use crate::scalar::{Constant, Formula, Source};
use crate::units::{DEGREE_CELSIUS, KILOPASCAL, Pressure, Temperature};
use crate::{Result, bounds};
use given::Given;
use lesson::Barometer;

/// Everything that follows from a lesson.
#[derive(Debug, Clone, PartialEq)]
pub struct Plan {
    /// The place: temperature and pressure.
    pub place: Place,
    /// The stock and the strength it is run at.
    pub stock: StockReport,
    /// What to order and set out.
    pub requisition: Requisition,
    /// How much gas.
    pub gas: GasBudget,
    /// What to reject, and how much oxygen each vessel holds.
    pub filling: Filling,
    /// Heat, steam and portions.
    pub additions: Additions,
    /// Pressure in the flask, the funnel stem.
    pub back_pressure: BackPressures,
    /// Water running back.
    pub suck_back: SuckBack,
    /// The burns.
    pub burns: Vec<BurnPlan>,
    /// What to be careful of.
    pub cautions: Vec<Caution>,
    /// What was taken because the lesson did not say.
    pub assumptions: Vec<Assumption>,
    /// The constants that were put in.
    pub constants: Vec<&'static Constant>,
    /// The published relations that were used.
    pub relations: Vec<&'static Source>,
}

/// Temperature and pressure at the place.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Place {
    /// Temperature of room, trough and stock (degC).
    pub temperature_c: f64,
    /// Pressure at the place (kPa).
    pub pressure_kpa: f64,
    /// What the pressure was worked out from, where it was not given for the place itself.
    pub sea_level: Option<(f64, f64)>,
    /// Volume of the room (m3).
    pub room_volume_m3: f64,
    /// Air changes per hour.
    pub air_changes_per_hour: f64,
}

impl Place {
    /// Thermodynamic temperature.
    pub(crate) fn temperature(&self) -> Temperature<f64> {
        Temperature::new(DEGREE_CELSIUS.to_si(self.temperature_c))
    }

    /// Pressure.
    pub(crate) fn pressure(&self) -> Pressure<f64> {
        Pressure::new(KILOPASCAL.to_si(self.pressure_kpa))
    }
}

/// Works out everything for a lesson.
///
/// ```
/// use overwater::peroxide::label::Label;
/// use overwater::plan::lesson::{Lesson, Stock, Vessel};
/// let lesson = Lesson {
///     stock: Some(Stock::labelled(Label::read("20 vol")?)),
///     vessels: vec![Vessel { burn: Some("sulfur".to_owned()), ..Vessel::default() }],
///     ..Lesson::default()
/// };
/// let plan = overwater::plan::plan(&lesson)?;
/// // 250 cm3 over water at 20 degC and 101.325 kPa hold 10.15 mmol.
/// assert!((plan.gas.vessels[0].amount_mmol - 10.15).abs() < 0.005);
/// # Ok::<(), overwater::Error>(())
/// ```
///
/// # Errors
/// Everything in the lesson that is outside its bounds, contradicts something else or cannot be met, with the path of
/// the key in the lesson.
pub fn plan(lesson: &Lesson) -> Result<Plan> {
    let mut given = Given::default();
    let place = place(lesson, &mut given)?;
    let stock = stock::report(lesson, &place, &mut given)?;
    let vessels = filling::vessels(lesson, &mut given)?;
    let train = flow::train(lesson, &mut given)?;
    let filling = filling::fill(lesson, &vessels, &train)?;
    let gas = gas_budget::budget(&place, &vessels, filling.rejected_cm3);
    let requisition = requisition::requisition(lesson, &gas, &stock, &vessels, &mut given)?;
    let additions =
        additions::additions(&place, &stock, &train, requisition.with_efficiency_cm3, gas.total.moist_cm3)?;
    let back_pressure = flow::back_pressures(&place, &train);
    let suck_back = cooling::suck_back(&place, &train, &additions);
    let burns = burns::burns(&vessels, &filling, &gas)?;
    let mut plan = Plan {
        place,
        stock,
        requisition,
        gas,
        filling,
        additions,
        back_pressure,
        suck_back,
        burns,
        cautions: Vec::new(),
        assumptions: given.assumptions(),
        constants: CONSTANTS.to_vec(),
        relations: RELATIONS.to_vec(),
    };
    if plan.place.sea_level.is_some() {
        plan.relations.push(&sources::ISO_2533);
    }
    plan.cautions = caution::raise(lesson, &plan);
    Ok(plan)
}

fn place(lesson: &Lesson, given: &mut Given) -> Result<Place> {
    let room = &lesson.room;
    let temperature_c =
        given.number(room.temperature_c, &defaults::TEMPERATURE, &bounds::ROOM_TEMPERATURE_C)?;
    let room_volume_m3 = given.number(room.volume_m3, &defaults::ROOM_VOLUME, &bounds::ROOM_VOLUME_M3)?;
    let air_changes_per_hour =
        given.number(room.air_changes_per_hour, &defaults::AIR_CHANGES, &bounds::AIR_CHANGES_PER_HOUR)?;
    let (pressure_kpa, sea_level) = match lesson.barometer {
        Some(Barometer::SeaLevel { pressure_kpa, altitude_m }) => {
            let station = StationPressure
                .number([pressure_kpa, altitude_m])
                .map_err(|error| error.within("barometer"))?;
            (station, Some((pressure_kpa, altitude_m)))
        }
        Some(Barometer::Station { pressure_kpa }) => {
            (bounds::PRESSURE_KPA.check(pressure_kpa).map_err(|error| error.within("barometer"))?, None)
        }
        None => (given.number(None, &defaults::PRESSURE, &bounds::PRESSURE_KPA)?, None),
    };
    Ok(Place { temperature_c, pressure_kpa, sea_level, room_volume_m3, air_changes_per_hour })
}

/// The default convention of a volume strength.
pub const DEFAULT_CONVENTION: VolumeConvention = VolumeConvention::ZeroDegreesOneAtmosphere;

static CONSTANTS: [&Constant; 11] = [
    &constants::MOLAR_GAS_2019,
    &constants::STANDARD_GRAVITY_1901,
    &constants::STANDARD_ATMOSPHERE_1954,
    &constants::ICE_POINT_1954,
    &constants::AIR_NOT_OXYGEN,
    &constants::OXYGEN_VISCOSITY,
    &constants::WATER_SURFACE_TENSION,
    &peroxide::MOLAR_MASS_2021,
    &peroxide::DECOMPOSITION_HEAT_1982,
    &peroxide::SPECIFIC_HEAT,
    &water::CRITICAL_TEMPERATURE_1992,
];

static RELATIONS: [&Source; 10] = [
    &sources::IAPWS_SR1_86,
    &sources::IAPWS_SR6_08,
    &sources::CIAAW_2021,
    &sources::IDEAL_GAS,
    &sources::DALTON,
    &sources::VOLUME_STRENGTH,
    &sources::MIXED_FLASK,
    &sources::HEAT_BALANCE,
    &sources::POISEUILLE,
    &sources::LAPLACE,
];
