//! How uncertain a result is, by one of three rule sets that are never mixed.
//!
//! | rule set | what it does | rests on |
//! |---|---|---|
//! | [`budget`] | standard uncertainties, first order, root of the sum of squares | JCGM 100:2008 (GUM) |
//! | [`monte_carlo`] | distributions carried through by drawing | JCGM 101:2008 (GUM Supplement 1) |
//! | [`school`] | half-widths, percentages added | common practice of school examinations, dated |
//!
//! All three take the slopes and values of one model, which is the library's own formula and never written a second time.

pub mod budget;
pub mod correlation;
pub mod coverage;
pub mod input;
pub mod model;
pub mod monte_carlo;
pub mod normal;
pub mod rules;
pub mod school;
pub mod stated;
