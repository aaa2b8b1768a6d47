//! The conversation vectors: requests with the very bytes that answer them, for every binding to replay.

use std::path::PathBuf;

/// A request and its answer.
#[derive(Debug, Clone)]
pub struct Vector {
    /// Its name, which says what it shows.
    pub name: String,
    /// The bytes of the request; not always text.
    pub request: Vec<u8>,
    /// The answer, without the line end that closes its file.
    pub answer: String,
    /// The file of the answer.
    pub answer_file: PathBuf,
}

/// Where the vectors are kept.
#[must_use]
pub fn folder() -> PathBuf {
    PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("../../tests/vectors")
}

/// Every vector, in the order of the names. A request without an answer has an empty one.
///
/// # Panics
/// Where the folder cannot be read.
#[must_use]
pub fn all() -> Vec<Vector> {
    let folder = folder();
    let files = std::fs::read_dir(&folder).unwrap_or_else(|error| panic!("{}: {error}", folder.display()));
    let mut names: Vec<String> = files
        .filter_map(|file| file.ok()?.file_name().into_string().ok())
        .filter_map(|file| file.strip_suffix(".request.json").map(str::to_owned))
        .collect();
    names.sort();
    names
        .into_iter()
        .map(|name| {
            let request = folder.join(format!("{name}.request.json"));
            let request = std::fs::read(&request).unwrap_or_else(|error| panic!("{name}: {error}"));
            let answer_file = folder.join(format!("{name}.answer.json"));
            let answer = std::fs::read_to_string(&answer_file).unwrap_or_default();
            let answer = answer.strip_suffix('\n').unwrap_or(&answer).to_owned();
            Vector { name, request, answer, answer_file }
        })
        .collect()
}
