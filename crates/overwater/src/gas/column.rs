//! Columns of liquid: the pressure of a height of water, brine, oil or mercury, and back.
//!
//! ```text
//! p = ρ g h,   h = p/(ρ g)
//! ```
//!
//! The density is given (brine, oil), or follows from the temperature (water: IAPWS SR6-08; mercury: Sommer and
//! Poziemski, Metrologia 30 (1994) 665, from memory):
//!
//! ```text
//! ρ(Hg) = ρ20/(1 + A (t - 20) + B (t - 20)²)      0 to 100 degC
//! ```
//!
//! The conventional units go without temperature and place: 1 mmHg is 13595.1 kg/m3 x 9.80665 m/s2 x 1 mm, 1 mmH2O the
//! same with 1000 kg/m3, and 1 torr is 101325/760 Pa: see [`units`](crate::units).

use crate::bounds::{self, Bound};
use crate::reference::earth::MERCURY_1994;
use crate::scalar::{Formula, Scalar, Symbol};
use crate::symbols;
use crate::units::{
    Acceleration, DEGREE_CELSIUS, Dimensioned, Length, MILLIMETRE_OF_MERCURY, MILLIMETRE_OF_WATER,
    MassDensity, Pressure, TORR, Temperature, Unit,
};
use crate::water::density::liquid_density;

/// ρ g h.
#[inline(always)]
pub fn pressure<S: Scalar>(
    height: Length<S>,
    density: MassDensity<S>,
    gravity: Acceleration<S>,
) -> Pressure<S> {
    density * gravity * height
}

/// p/(ρ g).
#[inline(always)]
pub fn height<S: Scalar>(
    pressure: Pressure<S>,
    density: MassDensity<S>,
    gravity: Acceleration<S>,
) -> Length<S> {
    pressure / (density * gravity)
}

/// Density of mercury at a temperature.
#[inline(always)]
pub fn mercury_density<S: Scalar>(temperature: Temperature<S>) -> MassDensity<S> {
    let [at_20, a, b] = MERCURY_1994;
    let t = temperature.si() - (DEGREE_CELSIUS.zero + 20.0);
    MassDensity::new(S::number(at_20) / ((t * b + a) * t + 1.0)).checkpoint(&symbols::MERCURY_DENSITY)
}

/// A liquid whose density follows from its temperature.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Liquid {
    /// Water: IAPWS SR6-08.
    Water,
    /// Mercury: Sommer and Poziemski 1994.
    Mercury,
}

impl Liquid {
    /// Density at a temperature.
    #[inline(always)]
    pub fn density<S: Scalar>(self, temperature: Temperature<S>) -> MassDensity<S> {
        match self {
            Liquid::Water => liquid_density(temperature),
            Liquid::Mercury => mercury_density(temperature),
        }
    }
}

/// A conventional unit of pressure that is read as a height.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum ConventionalColumn {
    /// Millimetre of water of 1000 kg/m3.
    Water,
    /// Millimetre of mercury of 13595.1 kg/m3.
    Mercury,
    /// Torr.
    Torr,
}

impl ConventionalColumn {
    /// The unit.
    #[must_use]
    pub const fn unit(self) -> &'static Unit {
        match self {
            ConventionalColumn::Water => &MILLIMETRE_OF_WATER,
            ConventionalColumn::Mercury => &MILLIMETRE_OF_MERCURY,
            ConventionalColumn::Torr => &TORR,
        }
    }
}

/// `mercury_density(temperature_c)` in kg/m3, from 0 to 100 degC.
///
/// ```
/// use overwater::gas::column::MercuryDensity;
/// use overwater::scalar::Formula;
/// // Cook (NPL, 1961): 13545.854 kg/m3 at 20 degC.
/// assert!((MercuryDensity.number([20.0])? - 13_545.854).abs() < 1e-9);
/// # Ok::<(), overwater::Error>(())
/// ```
#[derive(Debug, Clone, Copy, Default)]
pub struct MercuryDensity;

impl Formula<1> for MercuryDensity {
    const NAME: &'static str = "mercury_density";

    fn inputs(&self) -> [&'static Bound; 1] {
        [&bounds::MERCURY_TEMPERATURE_C]
    }

    fn output(&self) -> &'static Symbol {
        &symbols::MERCURY_DENSITY
    }

    #[inline(always)]
    fn evaluate<S: Scalar>(&self, [temperature]: [S; 1]) -> S {
        let temperature = Temperature::new(temperature.enter(&symbols::TEMPERATURE));
        mercury_density(temperature).leave(&symbols::MERCURY_DENSITY)
    }
}

/// `column_pressure(column_mm, liquid_density_g_per_cm3, gravity_m_per_s2)` in kPa, for brine, oil or any other liquid
/// whose density is known. A negative height gives a negative pressure.
///
/// ```
/// use overwater::gas::column::ColumnPressure;
/// use overwater::scalar::Formula;
/// // By definition 760 mm of 13.5951 g/cm3 under standard gravity are 101.325 kPa, to 1.5 parts in ten million.
/// let pressure = ColumnPressure.number([760.0, 13.5951, 9.806_65])?;
/// assert!((pressure - 101.325_014_4).abs() < 1e-6);
/// # Ok::<(), overwater::Error>(())
/// ```
#[derive(Debug, Clone, Copy, Default)]
pub struct ColumnPressure;

impl Formula<3> for ColumnPressure {
    const NAME: &'static str = "column_pressure";

    fn inputs(&self) -> [&'static Bound; 3] {
        [&bounds::COLUMN_MM, &bounds::LIQUID_DENSITY_G_PER_CM3, &bounds::GRAVITY_M_PER_S2]
    }

    fn output(&self) -> &'static Symbol {
        &symbols::COLUMN_PRESSURE
    }

    #[inline(always)]
    fn evaluate<S: Scalar>(&self, [column, density, gravity]: [S; 3]) -> S {
        let column = Length::new(column.enter(&symbols::COLUMN));
        let density = MassDensity::new(density.enter(&symbols::LIQUID_DENSITY));
        let gravity = Acceleration::new(gravity.enter(&symbols::GRAVITY));
        pressure(column, density, gravity)
            .checkpoint(&symbols::COLUMN_PRESSURE)
            .leave(&symbols::COLUMN_PRESSURE)
    }
}

/// `column_height(column_pressure_kpa, liquid_density_g_per_cm3, gravity_m_per_s2)` in mm: the inverse of
/// [`ColumnPressure`].
///
/// ```
/// use overwater::gas::column::ColumnHeight;
/// use overwater::scalar::Formula;
/// // One centimetre of water of 1 g/cm3 is 98.0665 Pa under standard gravity.
/// assert!((ColumnHeight.number([0.098_066_5, 1.0, 9.806_65])? - 10.0).abs() < 1e-12);
/// # Ok::<(), overwater::Error>(())
/// ```
#[derive(Debug, Clone, Copy, Default)]
pub struct ColumnHeight;

impl Formula<3> for ColumnHeight {
    const NAME: &'static str = "column_height";

    fn inputs(&self) -> [&'static Bound; 3] {
        [&bounds::COLUMN_PRESSURE_KPA, &bounds::LIQUID_DENSITY_G_PER_CM3, &bounds::GRAVITY_M_PER_S2]
    }

    fn output(&self) -> &'static Symbol {
        &symbols::COLUMN
    }

    #[inline(always)]
    fn evaluate<S: Scalar>(&self, [column, density, gravity]: [S; 3]) -> S {
        let column = Pressure::new(column.enter(&symbols::COLUMN_PRESSURE));
        let density = MassDensity::new(density.enter(&symbols::LIQUID_DENSITY));
        let gravity = Acceleration::new(gravity.enter(&symbols::GRAVITY));
        height(column, density, gravity).checkpoint(&symbols::COLUMN).leave(&symbols::COLUMN)
    }
}

/// `column_pressure_at(column_mm, temperature_c, gravity_m_per_s2)` in kPa, of water or mercury at its temperature.
///
/// ```
/// use overwater::gas::column::{ColumnPressureAt, Liquid};
/// use overwater::scalar::Formula;
/// // By hand: 0.1 m x 998.2067 kg/m3 x 9.80665 m/s2 = 978.906 Pa of water at 20 degC.
/// let pressure = ColumnPressureAt { liquid: Liquid::Water }.number([100.0, 20.0, 9.806_65])?;
/// assert!((pressure - 0.978_906).abs() < 1e-6);
/// # Ok::<(), overwater::Error>(())
/// ```
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct ColumnPressureAt {
    /// The liquid.
    pub liquid: Liquid,
}

impl Formula<3> for ColumnPressureAt {
    const NAME: &'static str = "column_pressure_at";

    fn inputs(&self) -> [&'static Bound; 3] {
        let temperature = match self.liquid {
            Liquid::Water => &bounds::TEMPERATURE_C,
            Liquid::Mercury => &bounds::MERCURY_TEMPERATURE_C,
        };
        [&bounds::COLUMN_MM, temperature, &bounds::GRAVITY_M_PER_S2]
    }

    fn output(&self) -> &'static Symbol {
        &symbols::COLUMN_PRESSURE
    }

    #[inline(always)]
    fn evaluate<S: Scalar>(&self, [column, temperature, gravity]: [S; 3]) -> S {
        let column = Length::new(column.enter(&symbols::COLUMN));
        let density = self.liquid.density(Temperature::new(temperature.enter(&symbols::TEMPERATURE)));
        let gravity = Acceleration::new(gravity.enter(&symbols::GRAVITY));
        pressure(column, density, gravity)
            .checkpoint(&symbols::COLUMN_PRESSURE)
            .leave(&symbols::COLUMN_PRESSURE)
    }
}

/// `conventional_column_pressure(column_mm)` in kPa: millimetres of water or of mercury as a unit, or torr, whatever the
/// temperature and the place.
///
/// ```
/// use overwater::gas::column::{ConventionalColumn, ConventionalColumnPressure};
/// use overwater::scalar::Formula;
/// // ISO 80000-4: 1 mmHg is 133.322387415 Pa, 1 mmH2O 9.80665 Pa; 760 torr are 101.325 kPa.
/// let pressure = |column| ConventionalColumnPressure { column }.number([760.0]);
/// assert!((pressure(ConventionalColumn::Mercury)? - 101.325_014_435_4).abs() < 1e-10);
/// assert!((pressure(ConventionalColumn::Water)? - 7.453_054).abs() < 1e-12);
/// assert!((pressure(ConventionalColumn::Torr)? - 101.325).abs() < 1e-12);
/// # Ok::<(), overwater::Error>(())
/// ```
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct ConventionalColumnPressure {
    /// The unit.
    pub column: ConventionalColumn,
}

impl Formula<1> for ConventionalColumnPressure {
    const NAME: &'static str = "conventional_column_pressure";

    fn inputs(&self) -> [&'static Bound; 1] {
        [&bounds::COLUMN_MM]
    }

    fn output(&self) -> &'static Symbol {
        &symbols::COLUMN_PRESSURE
    }

    #[inline(always)]
    fn evaluate<S: Scalar>(&self, [column]: [S; 1]) -> S {
        let millimetres = symbols::COLUMN.unit.from_si(column.enter(&symbols::COLUMN));
        Pressure::new(self.column.unit().to_si(millimetres))
            .checkpoint(&symbols::COLUMN_PRESSURE)
            .leave(&symbols::COLUMN_PRESSURE)
    }
}
