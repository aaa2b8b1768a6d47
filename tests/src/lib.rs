//! Nothing is in here: the tests are in `tests/`, the published values they hold the library to in `data/`.
