//! How far a published relation may be from nature.

use super::Source;

/// The uncertainty that a source states for its relation, as a budget takes it in.
///
/// ```
/// use overwater::scalar::Formula;
/// use overwater::water::density::WaterDensity;
/// // 0.001 % either way, taken as the limits of a rectangular distribution.
/// let stated = WaterDensity.property_uncertainty().expect("the source states one");
/// assert!((stated.relative_standard - 1e-5 / 3.0_f64.sqrt()).abs() < 1e-12);
/// ```
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct PropertyUncertainty {
    /// Relative standard uncertainty.
    pub relative_standard: f64,
    /// What the source states.
    pub stated: &'static str,
    /// Where it is stated.
    pub source: &'static Source,
}

/// The square root of 3.
const ROOT_3: f64 = 1.732_050_807_568_877_2;

impl PropertyUncertainty {
    /// From limits that hold either way: a rectangular distribution (GUM 4.3.7), the limit over √3.
    #[must_use]
    pub const fn from_limits(relative: f64, stated: &'static str, source: &'static Source) -> Self {
        PropertyUncertainty { relative_standard: relative / ROOT_3, stated, source }
    }

    /// From an expanded uncertainty with the coverage factor 2 (GUM 4.3.3).
    #[must_use]
    pub const fn from_expanded(relative: f64, stated: &'static str, source: &'static Source) -> Self {
        PropertyUncertainty { relative_standard: relative / 2.0, stated, source }
    }
}
