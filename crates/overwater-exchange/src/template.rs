//! An annotated lesson to start from.

/// A lesson with every key explained. It is a valid request as it stands.
///
/// ```
/// assert!(overwater_exchange::lesson_from_toml(overwater_exchange::TEMPLATE).is_ok());
/// ```
pub const TEMPLATE: &str = include_str!("template.toml");
