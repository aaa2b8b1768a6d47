//! Published data: each table a constant with its source and its year in its name. No formula here.

pub mod elements;
