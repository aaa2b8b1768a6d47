//! The bounds table: one row for each quantity that is taken in.
//!
//! The check, the error text, the documentation and the random values of the tests all come from the row.

use crate::scalar::Symbol;
use crate::{Code, Error, Result, symbols};

/// What is accepted for one quantity.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Bound {
    /// The parameter's name: quantity first, unit last.
    pub name: &'static str,
    /// What it is.
    pub symbol: &'static Symbol,
    /// The least value accepted, in the symbol's unit.
    pub least: f64,
    /// The greatest value accepted, in the symbol's unit.
    pub greatest: f64,
    /// Why just these limits.
    pub why: &'static str,
}

impl Bound {
    /// The value itself when it is accepted.
    ///
    /// ```
    /// use overwater::bounds;
    /// assert_eq!(bounds::TEMPERATURE_C.check(21.0), Ok(21.0));
    /// let error = bounds::TEMPERATURE_C.check(150.0).unwrap_err();
    /// assert!(error.to_string().starts_with(
    ///     "temperature_c = 150 degC is out of range; allowed: 0 to 100 degC"));
    /// ```
    ///
    /// # Errors
    /// `not_a_number` for NaN and infinities, `out_of_range` outside the limits.
    pub fn check(&self, value: f64) -> Result<f64> {
        if value >= self.least && value <= self.greatest && value.is_finite() {
            return Ok(value);
        }
        let code = if value.is_finite() { Code::OutOfRange } else { Code::NotANumber };
        Err(Error::new(code, self.name)
            .value(self.show(value))
            .allowed(self.range())
            .advice(format!("give the {} in this range ({})", self.symbol.name, self.why)))
    }

    /// The value that is taken where nothing is said of the quantity; nothing where it must be given.
    ///
    /// ```
    /// use overwater::bounds;
    /// // Nobody speaks of levels that were made equal.
    /// assert_eq!(bounds::INSIDE_MINUS_OUTSIDE_MM.where_unsaid(), Some(0.0));
    /// assert_eq!(bounds::TEMPERATURE_C.where_unsaid(), None);
    /// ```
    #[must_use]
    pub fn where_unsaid(&self) -> Option<f64> {
        (self.name == INSIDE_MINUS_OUTSIDE_MM.name).then_some(0.0)
    }

    /// The accepted range in words, as in `0 to 100 degC`. The limits are printed with as many digits as they
    /// have, never rounded outwards.
    #[must_use]
    pub fn range(&self) -> String {
        let unit = self.symbol.unit.text;
        let space = if unit.is_empty() { "" } else { " " };
        format!("{} to {}{space}{unit}", self.least, self.greatest)
    }

    fn show(&self, value: f64) -> String {
        let unit = self.symbol.unit.text;
        let number = if value != 0.0 && value.is_finite() && !(1e-4..1e7).contains(&value.abs()) {
            format!("{value:e}")
        } else {
            value.to_string()
        };
        if unit.is_empty() { number } else { format!("{number} {unit}") }
    }
}

macro_rules! bounds {
    ($($(#[$meta:meta])* $constant:ident = $name:literal, $symbol:ident, $least:expr, $greatest:expr, $why:expr;)*) => {
        $(
            $(#[$meta])*
            pub static $constant: Bound = Bound {
                name: $name,
                symbol: &symbols::$symbol,
                least: $least,
                greatest: $greatest,
                why: $why,
            };
        )*

        /// Every row.
        pub static ALL: &[&Bound] = &[$(&$constant),*];
    };
}

const TROUGH: &str = "liquid water at atmospheric pressure";
const SCHOOLS: &str = "pressures from sea level to the highest schools";
const PERMANENT: &str = "what school glassware and a room can hold";
const BALANCE: &str = "what a school balance carries";
const SOLUTIONS: &str = "from a trace to concentrated acid";

bounds! {
    /// Temperature of the gas and of the water under it.
    TEMPERATURE_C = "temperature_c", TEMPERATURE, 0.0, 100.0, TROUGH;
    /// The same where supercooled water is asked for by name.
    SUPERCOOLED_TEMPERATURE_C = "temperature_c", TEMPERATURE, -20.0, 100.0,
        "below 0 degC the equation is extrapolated";
    /// Temperature of a room that people work in.
    ROOM_TEMPERATURE_C = "temperature_c", TEMPERATURE, 0.0, 45.0, "a room that people can work in";
    /// Vapour pressure whose temperature is wanted: 0 to 100 degC, rounded inwards.
    VAPOUR_PRESSURE_KPA = "vapour_pressure_kpa", VAPOUR_PRESSURE, 0.6113, 101.4,
        "the vapour pressure of water from 0 to 100 degC";
    /// Vapour pressure as a textbook states it.
    STATED_VAPOUR_PRESSURE_KPA = "vapour_pressure_kpa", VAPOUR_PRESSURE, 0.0, 101.4,
        "0 for a gas that is dry, up to the vapour pressure at 100 degC";
    /// Pressure at the place of the experiment.
    PRESSURE_KPA = "pressure_kpa", STATION_PRESSURE, 40.0, 120.0, SCHOOLS;
    /// Pressure reduced to sea level, as a weather report gives it.
    SEA_LEVEL_PRESSURE_KPA = "sea_level_pressure_kpa", SEA_LEVEL_PRESSURE, 85.0, 110.0,
        "the lowest and highest ever reported, rounded outwards";
    /// Height of the place above sea level.
    ALTITUDE_M = "altitude_m", ALTITUDE, -450.0, 5500.0, "the lowest and the highest places where people live";
    /// Volume of a gas or of a vessel.
    VOLUME_CM3 = "volume_cm3", VOLUME, 0.01, 1e6, PERMANENT;
    /// Amount of gas.
    AMOUNT_MMOL = "amount_mmol", AMOUNT, 1e-6, 1e5, PERMANENT;
    /// Water level inside the vessel less the level outside; positive where the water inside stands higher.
    INSIDE_MINUS_OUTSIDE_MM = "inside_minus_outside_mm", LEVEL_DIFFERENCE, -2000.0, 2000.0,
        "taller than any school gas jar or eudiometer";
    /// Volume strength.
    VOLUME_STRENGTH_VOL = "volume_strength_vol", VOLUME_STRENGTH, 0.1, 150.0,
        "stronger than about 40 % by mass is not handled in schools";
    /// Amount concentration of peroxide.
    CONCENTRATION_MOL_PER_DM3 = "concentration_mol_per_dm3", CONCENTRATION, 0.005, 14.0,
        "stronger than about 40 % by mass is not handled in schools";
    /// Concentration of a stock that is diluted.
    STOCK_MOL_PER_DM3 = "stock_mol_per_dm3", STOCK_CONCENTRATION, 0.005, 14.0,
        "stronger than about 40 % by mass is not handled in schools";
    /// Concentration that a dilution is to give.
    WANTED_MOL_PER_DM3 = "wanted_mol_per_dm3", WANTED_CONCENTRATION, 0.005, 14.0,
        "stronger than about 40 % by mass is not handled in schools";
    /// Grams of peroxide in 100 cm3 of solution.
    PERCENT_W_V = "percent_w_v", PERCENT_BY_VOLUME, 0.02, 46.0,
        "stronger than about 40 % by mass is not handled in schools";
    /// Grams of peroxide in 100 g of solution.
    PERCENT_W_W = "percent_w_w", PERCENT_BY_MASS, 0.02, 40.0,
        "stronger than about 40 % by mass is not handled in schools";
    /// Density of a peroxide solution.
    DENSITY_G_PER_CM3 = "density_g_per_cm3", SOLUTION_DENSITY, 0.98, 1.2,
        "from hot water to 40 % by mass, cold";
    /// Molar volume that a volume strength or a textbook goes by.
    MOLAR_VOLUME_DM3_PER_MOL = "molar_volume_dm3_per_mol", MOLAR_VOLUME, 20.0, 30.0,
        "room conditions anywhere";
    /// Titre.
    TITRE_CM3 = "titre_cm3", TITRE, 0.05, 100.0, "one reading of a burette to two fillings of it";
    /// Concentration of permanganate.
    PERMANGANATE_MOL_PER_DM3 = "permanganate_mol_per_dm3", PERMANGANATE, 1e-4, 0.4,
        "up to a saturated solution";
    /// Volume of stock taken for dilution.
    SAMPLE_CM3 = "sample_cm3", SAMPLE_VOLUME, 0.05, 1000.0, PERMANENT;
    /// Volume it is made up to.
    MADE_UP_TO_CM3 = "made_up_to_cm3", MADE_UP_VOLUME, 0.05, 1e4, PERMANENT;
    /// Volume titrated.
    ALIQUOT_CM3 = "aliquot_cm3", ALIQUOT, 0.05, 1000.0, PERMANENT;
    /// Volume of a liquid.
    LIQUID_CM3 = "liquid_cm3", LIQUID_VOLUME, 0.0, 1e5, PERMANENT;
    /// Volume of the flask.
    FLASK_CM3 = "flask_cm3", FLASK_VOLUME, 5.0, 2e4, "from a small boiling tube to the largest flask on a bench";
    /// Volume of air that the gas must drive out.
    FREE_VOLUME_CM3 = "free_volume_cm3", FREE_VOLUME, 1.0, 2e4, "from a small boiling tube to the largest flask on a bench";
    /// Volume of gas driven out and thrown away.
    REJECTED_CM3 = "rejected_cm3", REJECTED_VOLUME, 0.0, 1e5, PERMANENT;
    /// Length of the funnel stem.
    STEM_LENGTH_CM = "stem_length_cm", STEM_LENGTH, 1.0, 150.0, "a stem that stands on a bench";
    /// Bore of the delivery tube.
    TUBE_BORE_MM = "tube_bore_mm", TUBE_BORE, 0.2, 30.0, "from a capillary to wide hose";
    /// Length of the delivery tube.
    TUBE_LENGTH_CM = "tube_length_cm", TUBE_LENGTH, 1.0, 1000.0, "what stands on a bench";
    /// Depth of the outlet under the trough's surface.
    OUTLET_DEPTH_CM = "outlet_depth_cm", OUTLET_DEPTH, 0.0, 60.0, "the depth of a trough or sink";
    /// Rate at which gas comes.
    FLOW_CM3_PER_S = "flow_cm3_per_s", FLOW, 0.0, 100.0, "faster than any school preparation may run";
    /// Fraction of oxygen, by amount of dry gas.
    OXYGEN_FRACTION = "oxygen_fraction", OXYGEN_FRACTION, 0.21, 0.9999, "air holds 0.21; 1 is never reached";
    /// Share of the oxygen made that ends in the vessels or is rejected on purpose.
    COLLECTION_EFFICIENCY_FRACTION = "collection_efficiency_fraction", COLLECTION_EFFICIENCY, 0.1, 1.0,
        "1 is no loss; below 0.1 the apparatus leaks";
    /// Mass of a sample or of a catalyst.
    MASS_G = "mass_g", MASS, 1e-4, 1000.0, PERMANENT;
    /// Volume of the room.
    ROOM_VOLUME_M3 = "room_volume_m3", ROOM_VOLUME, 5.0, 1e5, "from a store cupboard to a hall";
    /// Air changes per hour.
    AIR_CHANGES_PER_HOUR = "air_changes_per_hour", AIR_CHANGES, 0.0, 100.0, "from a sealed room to a cleanroom";

    /// Temperature of water, for the equation of CIPM-2007.
    CIPM_TEMPERATURE_C = "temperature_c", TEMPERATURE, 5.0, 30.0, "range of CIPM-2007";
    /// Pressure of moist air, for the enhancement factor of CIPM-2007.
    CIPM_PRESSURE_KPA = "pressure_kpa", STATION_PRESSURE, 60.0, 110.0, "range of CIPM-2007";
    /// Temperature of water, for the equations of Buck.
    BUCK_TEMPERATURE_C = "temperature_c", TEMPERATURE, 0.0, 50.0, "range of Buck's equations";
    /// Temperature of water, for the Magnus form.
    MAGNUS_TEMPERATURE_C = "temperature_c", TEMPERATURE, 0.0, 60.0, "range of the Magnus form over water";
    /// Temperature of water, for the Antoine equation.
    ANTOINE_TEMPERATURE_C = "temperature_c", TEMPERATURE, 1.0, 100.0, "range of the Antoine equation";
    /// Temperature of water, for a printed table.
    TABLE_TEMPERATURE_C = "temperature_c", TEMPERATURE, 0.0, 100.0, "first and last entry of the table";
    /// Temperature of ice.
    ICE_TEMPERATURE_C = "temperature_c", TEMPERATURE, -100.0, 0.0,
        "ice at atmospheric pressure, well inside the range of the source";
    /// Temperature of water, for the density of Tanaka et al.
    TANAKA_TEMPERATURE_C = "temperature_c", TEMPERATURE, 0.0, 40.0, "range of the recommended table of 2001";
    /// Temperature of water saturated with air, for the density of Tanaka et al.
    AERATED_TEMPERATURE_C = "temperature_c", TEMPERATURE, 0.0, 25.0,
        "range of the term for dissolved air in the recommended table of 2001";
    /// Temperature of saturated brine.
    BRINE_TEMPERATURE_C = "temperature_c", TEMPERATURE, 10.0, 40.0, "range of the handbook's values for brine";
    /// Temperature of saturated brine, for the cubic of Greenspan.
    GREENSPAN_TEMPERATURE_C = "temperature_c", TEMPERATURE, 0.0, 50.0, "where the cubic was compared";
    /// Molality of a dilute solution.
    MOLALITY_MOL_PER_KG = "molality_mol_per_kg", MOLALITY, 0.0, 2.0,
        "beyond 2 mol/kg Raoult's law goes astray fast";
    /// Ions from one formula of the salt.
    IONS = "ions", IONS, 1.0, 5.0, "1 for sugar, 2 for sodium chloride, 5 for aluminium sulfate";
    /// Height above sea level of a low place.
    LOW_ALTITUDE_M = "altitude_m", ALTITUDE, -450.0, 750.0,
        "the reduction for low stations holds below 750 m";
    /// Temperature of the outside air.
    AIR_TEMPERATURE_C = "air_temperature_c", AIR_TEMPERATURE, -50.0, 50.0, "weather where people live";
    /// Pressure of the vapour in the outside air.
    AIR_VAPOUR_PRESSURE_KPA = "air_vapour_pressure_kpa", AIR_VAPOUR_PRESSURE, 0.0, 6.0,
        "from dry air to a dew point of 36 degC";
    /// Latitude, positive to the north.
    LATITUDE_DEG = "latitude_deg", LATITUDE, -90.0, 90.0, "from pole to pole";
    /// Gravity at the place.
    GRAVITY_M_PER_S2 = "gravity_m_per_s2", GRAVITY, 9.76, 9.84, "from high mountains at the equator to the poles";
    /// Height of a column of liquid; negative below the level it is counted from.
    COLUMN_MM = "column_mm", COLUMN, -2000.0, 2000.0, "taller than any school manometer";
    /// Pressure of a column of liquid.
    COLUMN_PRESSURE_KPA = "column_pressure_kpa", COLUMN_PRESSURE, -120.0, 120.0, SCHOOLS;
    /// Density of the liquid in a column.
    LIQUID_DENSITY_G_PER_CM3 = "liquid_density_g_per_cm3", LIQUID_DENSITY, 0.5, 14.0,
        "from the lightest oils to mercury";
    /// Temperature of mercury.
    MERCURY_TEMPERATURE_C = "temperature_c", TEMPERATURE, 0.0, 100.0, "range of the density of mercury";
    /// Reading of a mercury barometer.
    BAROMETER_MM = "barometer_mm", BAROMETER_READING, 300.0, 850.0, SCHOOLS;
    /// How far the gas in a syringe is saturated with water vapour.
    RELATIVE_SATURATION_FRACTION = "relative_saturation_fraction", RELATIVE_SATURATION, 0.0, 1.0, "0 is dry, 1 is saturated";
    /// Loss of mass.
    MASS_LOSS_G = "mass_loss_g", MASS_LOSS, 1e-4, 1000.0, PERMANENT;
    /// Mass before something has left, vessel and all.
    MASS_BEFORE_G = "mass_before_g", MASS_BEFORE, 1e-4, 1e4, BALANCE;
    /// Mass after something has left, vessel and all.
    MASS_AFTER_G = "mass_after_g", MASS_AFTER, 1e-4, 1e4, BALANCE;
    /// Molar mass of a gas.
    GAS_MOLAR_MASS_G_PER_MOL = "gas_molar_mass_g_per_mol", GAS_MOLAR_MASS, 2.0, 400.0, "from hydrogen to the heaviest vapours";
    /// Molar mass of a reagent.
    REAGENT_MOLAR_MASS_G_PER_MOL = "reagent_molar_mass_g_per_mol", REAGENT_MOLAR_MASS, 1.0, 2000.0, "from hydrogen to the largest formula on a bottle";
    /// Concentration of a reagent.
    REAGENT_CONCENTRATION_MOL_PER_DM3 = "reagent_concentration_mol_per_dm3", REAGENT_CONCENTRATION, 1e-5, 20.0, SOLUTIONS;
    /// Volume of a reagent's solution.
    REAGENT_VOLUME_CM3 = "reagent_volume_cm3", REAGENT_VOLUME, 0.01, 1e4, PERMANENT;
    /// Moles of gas for each mole of the reagent.
    MOLE_RATIO = "mole_ratio", MOLE_RATIO, 0.01, 100.0, "from a balanced equation";
    /// Temperature that a gas volume is given at.
    REFERENCE_TEMPERATURE_C = "reference_temperature_c", REFERENCE_TEMPERATURE, -0.15, 100.0, "from 273 K to boiling water";
    /// Pressure that a gas volume is given at.
    REFERENCE_PRESSURE_KPA = "reference_pressure_kpa", REFERENCE_PRESSURE, 40.0, 120.0, SCHOOLS;
    /// Molar volume that a gas volume goes by.
    STATED_MOLAR_VOLUME_DM3_PER_MOL = "stated_molar_volume_dm3_per_mol", STATED_MOLAR_VOLUME, 20.0, 30.0, "room conditions anywhere";
    /// Concentration of the acid.
    ACID_CONCENTRATION_MOL_PER_DM3 = "acid_concentration_mol_per_dm3", ACID_CONCENTRATION, 1e-5, 20.0, SOLUTIONS;
    /// Volume of the acid.
    ACID_VOLUME_CM3 = "acid_volume_cm3", ACID_VOLUME, 0.01, 1e4, PERMANENT;
    /// Concentration of the alkali.
    ALKALI_CONCENTRATION_MOL_PER_DM3 = "alkali_concentration_mol_per_dm3", ALKALI_CONCENTRATION, 1e-5, 20.0, SOLUTIONS;
    /// Time.
    TIME_S = "time_s", ELAPSED_TIME, 0.0, 1e7, "up to some months";
    /// Volume when the reaction is over.
    FINAL_VOLUME_CM3 = "final_volume_cm3", FINAL_VOLUME, 0.01, 1e6, PERMANENT;
    /// Volume of the hydrocarbon.
    SAMPLE_GAS_CM3 = "sample_gas_cm3", SAMPLE_GAS, 0.01, 1e6, PERMANENT;
    /// Volume of the hydrocarbon with oxygen.
    MIXED_GAS_CM3 = "mixed_gas_cm3", MIXED_GAS, 0.01, 1e6, PERMANENT;
    /// Volume after burning.
    BURNT_GAS_CM3 = "burnt_gas_cm3", BURNT_GAS, 0.0, 1e6, PERMANENT;
    /// Volume after the alkali.
    WASHED_GAS_CM3 = "washed_gas_cm3", WASHED_GAS, 0.0, 1e6, PERMANENT;
    /// Time of the known gas.
    KNOWN_TIME_S = "known_time_s", KNOWN_TIME, 1e-3, 1e7, "up to some months";
    /// Molar mass of the known gas.
    KNOWN_MOLAR_MASS_G_PER_MOL = "known_molar_mass_g_per_mol", KNOWN_MOLAR_MASS, 2.0, 400.0, "from hydrogen to the heaviest vapours";
    /// Mass of a vessel with the gas.
    MASS_FILLED_G = "mass_filled_g", MASS_FILLED, 1e-4, 1e4, BALANCE;
    /// Mass of the vessel with air, or collapsed.
    MASS_WITH_AIR_G = "mass_with_air_g", MASS_WITH_AIR, 1e-4, 1e4, BALANCE;

    /// Temperature of butane: it stays a gas at every pressure that is accepted.
    BUTANE_TEMPERATURE_C = "temperature_c", TEMPERATURE, 5.0, 100.0,
        "butane under 120 kPa is a liquid below 4 degC";
    /// Pressure of a real gas, total or partial.
    REAL_GAS_PRESSURE_KPA = "pressure_kpa", STATION_PRESSURE, 1e-3, 120.0,
        "where two terms of the virial series are enough";
    /// Temperature of a moist gas whose cross coefficient with water is an estimate at 20 degC.
    ESTIMATED_MOIST_TEMPERATURE_C = "temperature_c", TEMPERATURE, 5.0, 35.0,
        "the cross coefficient with water is an estimate at 20 degC";
    /// Fraction of water vapour in a moist gas.
    WATER_FRACTION = "water_fraction", WATER_FRACTION, 0.0, 0.7,
        "beyond it the third virial coefficient of water shows";
    /// Temperature of water with a gas in it, by the rows of the reviews.
    SANDER_TEMPERATURE_C = "temperature_c", TEMPERATURE, 0.0, 50.0,
        "the temperature term of the reviews is one number, kept near 25 degC";
    /// Temperature of water with oxygen in it, Henry constant of 1979.
    BENSON_KRAUSE_TEMPERATURE_C = "temperature_c", TEMPERATURE, 0.0, 60.0, "the range of the measurements";
    /// Temperature of water under moist air.
    DISSOLVED_OXYGEN_TEMPERATURE_C = "temperature_c", TEMPERATURE, 0.0, 40.0, "the range of the measurements";
    /// Salinity.
    SALINITY = "salinity", SALINITY, 0.0, 40.0, "from fresh water to the saltiest sea of the measurements";
    /// Partial pressure of a gas over water.
    PARTIAL_PRESSURE_KPA = "partial_pressure_kpa", PARTIAL_PRESSURE, 0.0, 120.0, "from none to the gas alone";
    /// Volume of water that a gas stands over or bubbles through.
    CONTACT_WATER_CM3 = "contact_water_cm3", CONTACT_WATER, 0.0, 1e5, PERMANENT;
    /// Concentration of a salt.
    SALT_CONCENTRATION_MOL_PER_DM3 = "salt_concentration_mol_per_dm3", SALT_CONCENTRATION, 0.0, 5.0,
        "the parameters are fitted to solutions of up to about 5 mol/dm3";
    /// Temperature of a peroxide solution.
    PEROXIDE_TEMPERATURE_C = "temperature_c", TEMPERATURE, 0.0, 96.0, "the range of the measurements";
    /// Area of the liquid in the flask.
    LIQUID_AREA_CM2 = "area_cm2", LIQUID_AREA, 1.0, 1e4, "from a test-tube to a bowl";
    /// Mass of a catalyst that is simulated.
    CATALYST_G = "catalyst_g", MASS, 1e-6, 1000.0, "from a trace of an enzyme to a whole bottle";
    /// Rate constant at 20 degC; its unit is that of its law.
    RATE_CONSTANT_AT_20 = "k_at_20", RATE_CONSTANT, 1e-12, 1e6, "from no catalyst at all to the fastest enzyme";
    /// Activation energy.
    ACTIVATION_J_PER_MOL = "activation_j_per_mol", ACTIVATION_ENERGY, 0.0, 150_000.0,
        "0 for a rate that does not change with temperature; twice that of peroxide by itself";
    /// Order of a reaction.
    REACTION_ORDER = "order", REACTION_ORDER, 0.5, 2.0, "the orders that powders and solutions show";
    /// Concentration at which a saturating rate is half of its greatest.
    HALF_MOL_PER_M3 = "half_mol_per_m3", HALF_RATE_CONCENTRATION, 1e-3, 1e5, "from always saturated to never";
    /// Highest point of the delivery tube above the trough's surface.
    TUBE_RISE_CM = "tube_rise_cm", TUBE_RISE, 0.0, 200.0, "what stands on a bench";
    /// Depth of the funnel's tip under the liquid.
    TIP_DEPTH_CM = "tip_depth_cm", TIP_DEPTH, 0.0, 20.0, "the depth of liquid in a flask";
    /// Speed at which bubbles rise.
    BUBBLE_RISE_CM_PER_S = "bubble_rise_cm_per_s", BUBBLE_RISE, 0.01, 50.0,
        "from standing foam to the largest bubbles";
    /// Heat lost through the glass.
    HEAT_LOSS_W_PER_K = "heat_loss_w_per_k", HEAT_LOSS, 0.0, 100.0, "from a perfect jacket to a running cold bath";
    /// Heat capacity of the glass.
    GLASS_J_PER_K = "glass_j_per_k", GLASS_HEAT, 0.0, 1e4, "from no glass to 12 kg of it";
    /// How long a preparation is followed.
    RUN_END_S = "end_s", RUN_LENGTH, 1e-3, 1e5, "up to a day";
    /// How long an addition drips.
    DRIP_S = "over_s", DRIP_TIME, 0.0, 1e5, "0 for a portion poured at once; up to a day";
    /// Volume of one addition.
    ADDITION_CM3 = "volume_cm3", LIQUID_VOLUME, 1e-3, 1e4, PERMANENT;
    /// Concentration of what is added; 0 for water.
    ADDITION_MOL_PER_DM3 = "concentration_mol_per_dm3", CONCENTRATION, 0.0, 14.0,
        "0 for water; stronger than about 40 % by mass is not handled in schools";
    /// Height of a vessel's top above the trough's surface.
    VESSEL_HEIGHT_CM = "height_cm", VESSEL_HEIGHT, 0.0, 100.0, "taller than any school vessel";
    /// Relative tolerance of an integration.
    RELATIVE_TOLERANCE = "rtol", RELATIVE_TOLERANCE, 1e-12, 1e-3, "what double precision and a rough look allow";
    /// Steps of an integration.
    MOST_STEPS = "most_steps", COUNT, 1.0, 1e6, "some seconds of work";
    /// Gas read in a trial; a little below 0 where the level wavers at the start.
    TRIAL_VOLUME_CM3 = "volume_cm3", TRIAL_VOLUME, -100.0, 1e5, PERMANENT;
    /// Volume of the water that a product is put into.
    PRODUCT_WATER_CM3 = "water_cm3", LIQUID_VOLUME, 0.1, 1e5, "from a few drops to a bath";
    /// Volume of the closed gas space over water.
    GAS_SPACE_CM3 = "gas_space_cm3", VOLUME, 0.01, 1e6, PERMANENT;
    /// Time after a gas was let out into a room.
    ROOM_TIME_S = "time_s", ELAPSED_TIME, 0.0, 86400.0, "up to a day";
    /// Share of a product that escapes into the room.
    LEAK_FRACTION = "leak_fraction", LEAK, 0.0, 1.0, "from none to all of it";
    /// Fraction of oxygen in the dry gas of a jar that something burns in.
    JAR_OXYGEN_FRACTION = "oxygen_fraction", OXYGEN_FRACTION, 0.0, 1.0, "a fraction of the dry gas";
    /// Share of a jar's oxygen that a sample is to use up.
    SHARE_OF_OXYGEN = "share_of_oxygen", SHARE_OF_OXYGEN, 0.01, 1.0, "a share of what the jar holds";
    /// Mass of ribbon or wire for each metre.
    MASS_PER_LENGTH_G_PER_M = "mass_per_length_g_per_m", MASS_PER_LENGTH, 1e-3, 1000.0, "from a hair to a bar";
    /// Temperature of a species in a flame.
    SPECIES_TEMPERATURE_K = "temperature_k", THERMODYNAMIC_TEMPERATURE, 100.0, 20000.0,
        "from the coldest crystal to the hottest gas of the data";
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn each_limit_is_accepted_and_the_next_number_beyond_it_is_not() {
        for bound in ALL {
            assert!(bound.least < bound.greatest, "{}", bound.name);
            assert_eq!(bound.check(bound.least), Ok(bound.least), "{}", bound.name);
            assert_eq!(bound.check(bound.greatest), Ok(bound.greatest), "{}", bound.name);
            for beyond in [bound.least.next_down(), bound.greatest.next_up()] {
                let error = bound.check(beyond).unwrap_err();
                assert_eq!(error.code, Code::OutOfRange, "{}", bound.name);
                assert!(error.to_string().contains(&bound.range()), "{error}");
                assert!(error.to_string().contains(bound.why), "{error}");
            }
            for value in [f64::NAN, f64::INFINITY, f64::NEG_INFINITY] {
                assert_eq!(bound.check(value).unwrap_err().code, Code::NotANumber, "{}", bound.name);
            }
        }
    }

    #[test]
    fn names_end_in_their_unit() {
        let endings = [
            ("degC", "_c"),
            ("kPa", "_kpa"),
            ("m", "_m"),
            ("cm3", "_cm3"),
            ("mmol", "_mmol"),
            ("mm", "_mm"),
            ("vol", "_vol"),
            ("mol/dm3", "_mol_per_dm3"),
            ("g/cm3", "_g_per_cm3"),
            ("dm3/mol", "_dm3_per_mol"),
            ("cm", "_cm"),
            ("cm3/s", "_cm3_per_s"),
            ("g", "_g"),
            ("m3", "_m3"),
            ("", ""),
            ("%", ""),
            ("1/h", "_per_hour"),
            ("deg", "_deg"),
            ("m/s2", "_m_per_s2"),
            ("mol/kg", "_mol_per_kg"),
            ("s", "_s"),
            ("g/mol", "_g_per_mol"),
            ("K", "_k"),
            ("cm2", "_cm2"),
            ("cm/s", "_cm_per_s"),
            ("W/K", "_w_per_k"),
            ("J/K", "_j_per_k"),
            ("J/mol", "_j_per_mol"),
            ("mol/m3", "_mol_per_m3"),
            ("g/m", "_g_per_m"),
        ];
        for bound in ALL {
            let unit = bound.symbol.unit.text;
            let ending = endings.iter().find(|(text, _)| *text == unit).map(|(_, ending)| *ending);
            assert!(ending.is_some_and(|ending| bound.name.ends_with(ending)), "{} in {unit}", bound.name);
        }
    }
}
