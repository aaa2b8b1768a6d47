//! What comes out of a run.

/// What happened.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Happening {
    /// The gas to reject has passed.
    Rejected,
    /// The vessel of this number, counted from 0, is full.
    VesselFull(usize),
    /// Gas pushed liquid out of the top of the funnel stem; from here on gas escapes there.
    StemOvertopped,
    /// The stem holds again.
    StemHolds,
    /// Three quarters of the gas that leaves are steam (92 degC at one atmosphere): the liquid boils off with its oxygen,
    /// which takes the place of the vapour bubbles of plain water.
    Boiling,
    /// Less than 70 % of the gas are steam again.
    BoilingEnds,
    /// Froth has come up to the bung.
    FrothAtBung,
    /// Less than a millionth of the peroxide is left.
    Spent,
    /// The flask cools faster than gas comes: water begins to rise in the delivery tube.
    WaterRises,
    /// Gas leaves again.
    GasLeaves,
    /// Trough water reaches the flask. The run ends here: the tube should have been out of the water.
    SuckBack,
    /// Air comes in through the funnel before water reaches the flask. The run ends here.
    AirThroughFunnel,
    /// The first time after an addition that the flask is no longer getting hotter.
    Hottest,
    /// Liquid has covered the tip of the funnel.
    TipCovered,
    /// The bound on steps was hit: what follows is not known. The run ends here.
    StepBound,
    /// Nearly all liquid has boiled away. The run ends here.
    BoiledDry,
}

/// What happened when.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Event {
    /// When (s).
    pub time_s: f64,
    /// What.
    pub what: Happening,
}

/// The state at one time.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Point {
    /// Time (s).
    pub time_s: f64,
    /// Liquid and gas in the flask (degC).
    pub temperature_c: f64,
    /// Peroxide left in the flask (mmol).
    pub peroxide_mmol: f64,
    /// Water in the flask, with its vapour (mmol).
    pub water_mmol: f64,
    /// Oxygen in the free volume (mmol).
    pub oxygen_mmol: f64,
    /// Nitrogen in the free volume (mmol).
    pub nitrogen_mmol: f64,
    /// Oxygen that has left through the tube (mmol).
    pub oxygen_out_mmol: f64,
    /// Nitrogen that has left through the tube (mmol).
    pub nitrogen_out_mmol: f64,
    /// Oxygen that has escaped by the funnel (mmol).
    pub oxygen_lost_mmol: f64,
    /// Nitrogen that has escaped by the funnel (mmol).
    pub nitrogen_lost_mmol: f64,
    /// Vapour that has left either way (mmol).
    pub vapour_out_mmol: f64,
    /// Heat that has left with the gas and through the glass (J).
    pub heat_out_j: f64,
    /// Moist gas leaving the flask, at its temperature (cm3/s).
    pub flow_cm3_per_s: f64,
    /// Fraction of oxygen in the dry gas that leaves.
    pub oxygen_fraction: f64,
    /// Rise of liquid in the funnel stem (cm).
    pub stem_rise_cm: f64,
    /// Pressure in the flask above the room's (Pa).
    pub back_pressure_pa: f64,
    /// Moist gas collected so far, at the trough's temperature and the barometer's pressure (cm3).
    pub collected_cm3: f64,
    /// Moist gas in the vessel that is being filled, at the lower pressure of its water level (cm3).
    pub in_vessel_cm3: f64,
}

/// What a vessel holds.
#[derive(Debug, Clone, PartialEq)]
pub struct VesselOutcome {
    /// Its name.
    pub name: String,
    /// When it was full; nothing where it was not (s).
    pub full_at_s: Option<f64>,
    /// Fraction of oxygen in its dry gas; NaN where nothing came in.
    pub oxygen_fraction: f64,
}

/// The outcome of a run.
#[derive(Debug, Clone, PartialEq)]
pub struct RunResult {
    /// The state at the times asked for, as far as the run went.
    pub points: Vec<Point>,
    /// What happened, in order.
    pub events: Vec<Event>,
    /// The vessels.
    pub vessels: Vec<VesselOutcome>,
    /// When the last vessel was full (s).
    pub filled_at_s: Option<f64>,
    /// Highest temperature (degC).
    pub top_temperature_c: f64,
    /// Greatest flow at any step of the integration (cm3/s).
    pub top_flow_cm3_per_s: f64,
    /// Highest rise in the stem (cm).
    pub top_stem_rise_cm: f64,
    /// Greatest volume of liquid with its bubbles (cm3).
    pub top_froth_cm3: f64,
    /// Share of the moist gas of the flask that is lost when it cools from the end to the room.
    pub shrinkage_to_come: f64,
    /// Greatest relative error of the balances of hydrogen, oxygen and nitrogen.
    pub atom_balance: f64,
    /// Error of the heat balance, relative to the heat of all the peroxide.
    pub heat_balance: f64,
    /// Steps of the integrator.
    pub steps: usize,
    /// How far the run went (s).
    pub reached_s: f64,
}

impl RunResult {
    /// When something first happened.
    #[must_use]
    pub fn first(&self, what: Happening) -> Option<f64> {
        self.events.iter().find(|event| event.what == what).map(|event| event.time_s)
    }
}
