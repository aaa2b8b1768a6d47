//! The tests are in `tests/`, the published values that they hold the library to in `data/`.

/// The Rust code of the README, compiled and run.
#[cfg(doctest)]
#[doc = include_str!("../../README.md")]
pub struct Readme;
