//! Nothing here: the measurements are in `benches/`.
