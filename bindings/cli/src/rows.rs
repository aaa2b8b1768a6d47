//! Lists of rows as a table of comma-separated values.

use serde::Serialize;

use crate::files::Message;

/// Rows as comma-separated values under a line of names.
pub(crate) fn csv<T: Serialize>(rows: &[T]) -> Result<String, Message> {
    let wrong = |error: &dyn std::fmt::Display| format!("error: the table cannot be written ({error})");
    let mut writer = csv::Writer::from_writer(Vec::new());
    for row in rows {
        writer.serialize(row).map_err(|error| wrong(&error))?;
    }
    let bytes = writer.into_inner().map_err(|error| wrong(&error))?;
    String::from_utf8(bytes).map_err(|error| wrong(&error))
}
