//! Nothing is in here: the benches are in `benches/`.
