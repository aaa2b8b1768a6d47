//! What is taken when a lesson does not say: each default with its reason. Every one that is used is listed on the
//! sheet as an assumption.

use crate::units::Unit;
use crate::units::{
    CENTIMETRE, CUBIC_CENTIMETRE, CUBIC_CENTIMETRE_PER_SECOND, CUBIC_METRE, DEGREE_CELSIUS, GRAM, KILOPASCAL,
    MILLIMETRE, ONE, PER_HOUR,
};

/// A number that is taken where the lesson gives none.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Default {
    /// The key in the lesson.
    pub key: &'static str,
    /// The value.
    pub value: f64,
    /// Its unit.
    pub unit: &'static Unit,
    /// Why this value.
    pub why: &'static str,
}

macro_rules! defaults {
    ($($(#[$meta:meta])* $constant:ident = $key:literal, $value:literal, $unit:ident, $why:literal;)*) => {
        $(
            $(#[$meta])*
            pub static $constant: Default =
                Default { key: $key, value: $value, unit: &$unit, why: $why };
        )*

        /// Every default.
        pub static ALL: &[&Default] = &[$(&$constant),*];
    };
}

defaults! {
    /// Temperature of room, trough and stock.
    TEMPERATURE = "room.temperature_c", 20.0, DEGREE_CELSIUS, "an ordinary room, with the trough at room temperature";
    /// Volume of the room.
    ROOM_VOLUME = "room.volume_m3", 200.0, CUBIC_METRE, "an ordinary school laboratory";
    /// Ventilation of the room.
    AIR_CHANGES = "room.air_changes_per_hour", 2.0, PER_HOUR, "windows closed, no fan";
    /// Pressure at the place.
    PRESSURE = "barometer", 101.325, KILOPASCAL, "the standard atmosphere; weather moves it by 3 %, 100 m of height by 1.2 %";
    /// Strength to run at, where the stock is stronger.
    RUN_STRENGTH = "run.strength", 20.0, ONE, "20 vol, below the strength at which peroxide is classed as damaging to eyes";
    /// Collection efficiency.
    EFFICIENCY = "run.collection_efficiency_fraction", 0.85, ONE, "a good bung and little gas lost between vessels";
    /// Groups.
    GROUPS = "run.groups", 1.0, ONE, "one demonstration";
    /// Spare sets.
    SPARE_SETS = "run.spare_sets", 0.0, ONE, "none asked for";
    /// Spare jars in each set.
    SPARE_JARS = "run.spare_jars", 1.0, ONE, "one jar may be lost to a bubble of air or a crack";
    /// Catalyst.
    CATALYST_MASS = "catalyst.mass_g", 0.4, GRAM, "0.1 to 0.5 g of powder for 50 cm3; more makes it faster, never more gas";
    /// Flask.
    FLASK = "apparatus.flask_cm3", 250.0, CUBIC_CENTIMETRE, "the usual side-arm flask";
    /// Heel of water.
    HEEL = "apparatus.heel_cm3", 25.0, CUBIC_CENTIMETRE, "water that covers the tip of the funnel stem and takes up heat";
    /// Funnel stem.
    STEM_LENGTH = "apparatus.stem_length_cm", 25.0, CENTIMETRE, "a usual thistle funnel, measured above the liquid";
    /// Bore.
    TUBE_BORE = "apparatus.tube_bore_mm", 5.0, MILLIMETRE, "ordinary glass or plastic tube, 4 to 5 mm inside";
    /// Length of the tube.
    TUBE_LENGTH = "apparatus.tube_length_cm", 80.0, CENTIMETRE, "from flask to trough, 50 to 100 cm";
    /// Depth of the outlet.
    OUTLET_DEPTH = "apparatus.outlet_depth_cm", 10.0, CENTIMETRE, "a trough 8 to 15 cm deep";
    /// Flow.
    FLOW = "apparatus.flow_cm3_per_s", 4.0, CUBIC_CENTIMETRE_PER_SECOND, "a jar of 250 cm3 in about a minute";
    /// Jar.
    JAR = "apparatus.jar_cm3", 250.0, CUBIC_CENTIMETRE, "a gas jar of 150 x 50 mm";
    /// Tube.
    TUBE = "apparatus.tube_cm3", 55.0, CUBIC_CENTIMETRE, "a boiling tube of 150 x 25 mm";
    /// Fraction wanted where neither the lesson nor the burn says.
    WANTED = "vessels.wanted_oxygen_fraction", 0.5, ONE, "enough to relight a glowing splint";
}

/// Most liquid that is added at once, in cm3, and the rise that one portion may cause, in K.
pub const PORTION_STEPS_CM3: [f64; 5] = [5.0, 4.0, 3.0, 2.0, 1.0];
/// The rise that one portion may cause, in K; common practice, no source.
pub const PORTION_RISE_K: f64 = 12.0;
/// Volumes to which a measured issue is rounded up: up to `.0`, in steps of `.1`, in cm3. Common practice, no source.
pub const MEASURING_STEPS_CM3: [(f64, f64); 6] =
    [(5.0, 0.5), (25.0, 1.0), (50.0, 5.0), (250.0, 10.0), (1000.0, 50.0), (f64::INFINITY, 100.0)];
/// Volumes to which a solution is made up: up to `.0`, in steps of `.1`, in cm3. Common practice, no source.
pub const MAKING_UP_STEPS_CM3: [(f64, f64); 4] =
    [(50.0, 10.0), (500.0, 50.0), (1000.0, 100.0), (f64::INFINITY, 500.0)];
/// Water for each jar whose product is tested, and indicator, in cm3; common practice, no source.
pub const WATER_IN_JAR_CM3: f64 = 20.0;
/// Indicator for each jar whose product is tested, in cm3; common practice, no source.
pub const INDICATOR_CM3: f64 = 1.0;
