//! Volumetric glassware of class B and its tolerances.

/// A volume that glassware of class B delivers or holds, with its tolerance, in cm3.
pub type Glass = (f64, f64);

/// One-mark pipettes and their tolerances (ISO 648 class B; 25 cm3 as printed in school practical notes, the others
/// from memory).
pub static PIPETTES: [Glass; 6] =
    [(1.0, 0.015), (2.0, 0.02), (5.0, 0.03), (10.0, 0.04), (20.0, 0.06), (25.0, 0.06)];
/// Volumetric flasks in the order of preference, as common practice (no source) has it, and their tolerances (ISO 1042 class B; 250 cm3 as printed in school practical notes, the others
/// from memory).
pub static FLASKS: [Glass; 4] = [(250.0, 0.3), (500.0, 0.5), (1000.0, 0.8), (100.0, 0.2)];
/// Aliquots that a titration flask takes.
pub static ALIQUOTS: [Glass; 3] = [(10.0, 0.04), (20.0, 0.06), (25.0, 0.06)];
/// A titre is the difference of two readings, each good to 0.05 cm3.
pub const TITRE_TOLERANCE_CM3: f64 = 0.1;
