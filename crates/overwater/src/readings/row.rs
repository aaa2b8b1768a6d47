//! One row of readings: the quantities that were read, each at most once.

use crate::bounds::{self, Bound};
use crate::{Code, Error, Result};

macro_rules! quantities {
    ($($(#[$meta:meta])* $name:ident = $bound:ident;)*) => {
        /// What may be read.
        #[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
        pub enum Quantity {
            $(
                $(#[$meta])*
                $name,
            )*
        }

        impl Quantity {
            /// Every quantity, in order.
            pub const ALL: &'static [Quantity] = &[$(Quantity::$name),*];

            /// Its row of the bounds table.
            #[must_use]
            pub fn bound(self) -> &'static Bound {
                match self {
                    $(Quantity::$name => &bounds::$bound,)*
                }
            }
        }
    };
}

quantities! {
    /// Volume of the gas as read.
    Volume = VOLUME_CM3;
    /// Temperature of the gas, and of the water under it.
    Temperature = TEMPERATURE_C;
    /// Pressure at the place.
    Pressure = PRESSURE_KPA;
    /// Pressure reduced to sea level.
    SeaLevelPressure = SEA_LEVEL_PRESSURE_KPA;
    /// Height of the place above sea level.
    Altitude = ALTITUDE_M;
    /// Level inside less level outside.
    InsideMinusOutside = INSIDE_MINUS_OUTSIDE_MM;
    /// Vapour pressure as a text states it.
    VapourPressure = STATED_VAPOUR_PRESSURE_KPA;
    /// Relative saturation of the gas.
    RelativeSaturation = RELATIVE_SATURATION_FRACTION;
    /// Loss of mass.
    MassLoss = MASS_LOSS_G;
    /// Mass before.
    MassBefore = MASS_BEFORE_G;
    /// Mass after.
    MassAfter = MASS_AFTER_G;
    /// Molar mass of the gas.
    GasMolarMass = GAS_MOLAR_MASS_G_PER_MOL;
    /// Mass of the reagent or sample.
    Mass = MASS_G;
    /// Molar mass of the reagent.
    ReagentMolarMass = REAGENT_MOLAR_MASS_G_PER_MOL;
    /// Concentration of the reagent.
    ReagentConcentration = REAGENT_CONCENTRATION_MOL_PER_DM3;
    /// Volume of the reagent's solution.
    ReagentVolume = REAGENT_VOLUME_CM3;
    /// Moles of gas for each mole of the reagent.
    MoleRatio = MOLE_RATIO;
    /// Reference temperature.
    ReferenceTemperature = REFERENCE_TEMPERATURE_C;
    /// Reference pressure.
    ReferencePressure = REFERENCE_PRESSURE_KPA;
    /// Molar volume that is gone by.
    StatedMolarVolume = STATED_MOLAR_VOLUME_DM3_PER_MOL;
    /// Concentration of the acid.
    AcidConcentration = ACID_CONCENTRATION_MOL_PER_DM3;
    /// Volume of the acid.
    AcidVolume = ACID_VOLUME_CM3;
    /// Concentration of the alkali.
    AlkaliConcentration = ALKALI_CONCENTRATION_MOL_PER_DM3;
    /// Titre of the alkali.
    Titre = TITRE_CM3;
    /// Volume that the acid left was made up to.
    MadeUpTo = MADE_UP_TO_CM3;
    /// Volume of it that was titrated.
    Aliquot = ALIQUOT_CM3;
    /// Time.
    Time = TIME_S;
    /// Volume when the reaction is over.
    FinalVolume = FINAL_VOLUME_CM3;
    /// Volume of the hydrocarbon.
    SampleGas = SAMPLE_GAS_CM3;
    /// Volume with oxygen.
    MixedGas = MIXED_GAS_CM3;
    /// Volume after burning.
    BurntGas = BURNT_GAS_CM3;
    /// Volume after the alkali.
    WashedGas = WASHED_GAS_CM3;
    /// Time of the known gas.
    KnownTime = KNOWN_TIME_S;
    /// Molar mass of the known gas.
    KnownMolarMass = KNOWN_MOLAR_MASS_G_PER_MOL;
    /// Mass of the vessel with the gas.
    MassFilled = MASS_FILLED_G;
    /// Mass of the vessel with air, or collapsed.
    MassWithAir = MASS_WITH_AIR_G;
}

const COUNT: usize = Quantity::ALL.len();

impl Quantity {
    /// Its name with the unit at the end, as in `volume_cm3`.
    #[must_use]
    pub fn name(self) -> &'static str {
        self.bound().name
    }
}

/// The readings of one row, in the school units of the bounds table.
///
/// ```
/// use overwater::readings::{Quantity, Row};
/// let row = Row::new().with(Quantity::Volume, 86.5);
/// assert_eq!(row.get(Quantity::Volume), Some(86.5));
/// assert_eq!(row.need(Quantity::Time).unwrap_err().to_string(), "time_s is missing; allowed: 0 to 10000000 s; \
///     give the time");
/// ```
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Row<S> {
    values: [Option<S>; COUNT],
}

impl<S: Copy> Default for Row<S> {
    fn default() -> Self {
        Row::new()
    }
}

impl<S: Copy> Row<S> {
    /// A row with nothing read.
    #[must_use]
    pub fn new() -> Self {
        Row { values: [None; COUNT] }
    }

    /// The same row with one more reading.
    #[must_use]
    pub fn with(mut self, quantity: Quantity, value: S) -> Self {
        self.set(quantity, Some(value));
        self
    }

    /// Puts in a reading, or takes it out.
    pub fn set(&mut self, quantity: Quantity, value: Option<S>) {
        if let Some(place) = self.values.get_mut(quantity as usize) {
            *place = value;
        }
    }

    /// A reading, where there is one.
    #[must_use]
    pub fn get(&self, quantity: Quantity) -> Option<S> {
        self.values.get(quantity as usize).copied().flatten()
    }

    /// A reading that is needed.
    ///
    /// # Errors
    /// `missing`.
    pub fn need(&self, quantity: Quantity) -> Result<S> {
        let bound = quantity.bound();
        self.get(quantity).ok_or_else(|| {
            Error::new(Code::Missing, bound.name)
                .allowed(bound.range())
                .advice(format!("give the {}", bound.symbol.name))
        })
    }

    /// The same readings as another kind of number; `change` is told which quantity it changes.
    pub fn map<T: Copy>(&self, mut change: impl FnMut(Quantity, S) -> T) -> Row<T> {
        let mut row = Row::new();
        for quantity in Quantity::ALL {
            row.set(*quantity, self.get(*quantity).map(|value| change(*quantity, value)));
        }
        row
    }
}

impl Row<f64> {
    /// Holds every reading to its bounds.
    ///
    /// # Errors
    /// `not_a_number` or `out_of_range` for the first that lies outside.
    pub fn check(&self) -> Result<()> {
        for quantity in Quantity::ALL {
            if let Some(value) = self.get(*quantity) {
                quantity.bound().check(value)?;
            }
        }
        Ok(())
    }
}
