//! What may have been meant by a name that is not known.

/// The known name that is nearest to what was written, if any is near enough: at most a third of its letters differ.
///
/// ```
/// assert_eq!(overwater::nearest("temprature_c", ["pressure_kpa", "temperature_c"]), Some("temperature_c"));
/// assert_eq!(overwater::nearest("colour", ["pressure_kpa", "temperature_c"]), None);
/// ```
#[must_use]
pub fn nearest<'a>(written: &str, known: impl IntoIterator<Item = &'a str>) -> Option<&'a str> {
    let far = written.chars().count().div_ceil(3);
    known
        .into_iter()
        .map(|name| (strsim::damerau_levenshtein(written, name), name))
        .filter(|(distance, _)| *distance <= far)
        .min_by_key(|(distance, _)| *distance)
        .map(|(_, name)| name)
}
