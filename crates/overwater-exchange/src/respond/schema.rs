//! The schema of everything that is asked and answered.

/// The schema.
#[must_use]
pub fn schema() -> String {
    String::new()
}
