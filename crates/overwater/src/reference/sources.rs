//! The published works that numbers and relations come from, each under one name.

use crate::scalar::Source;

/// Works with the year of the edition used.
macro_rules! sources {
    ($($constant:ident = $year:literal, $text:literal;)*) => {
        $(
            #[doc = $text]
            pub static $constant: Source = Source { text: $text, year: Some($year) };
        )*

        /// Every published work.
        pub static PUBLISHED: &[&Source] = &[$(&$constant),*];
    };
}

/// Laws, definitions and what has no single work to name.
macro_rules! undated {
    ($($constant:ident = $text:literal;)*) => {
        $(
            #[doc = $text]
            pub static $constant: Source = Source { text: $text, year: None };
        )*

        /// Every law, definition, and what has no single work to name.
        pub static UNDATED: &[&Source] = &[$(&$constant),*];
    };
}

undated! {
    HANDBOOK_MEMORY = "handbook value, from memory";
    COMMON_PRACTICE = "common practice, no source";
    HYDROSTATICS = "hydrostatics: pressure of a liquid column is density x gravity x height";
    DALTON = "Dalton's law of partial pressures";
    IDEAL_GAS = "ideal gas equation";
    CONSERVATION = "conservation of the amount of solute";
    HEAT_BALANCE = "first law: all heat stays in the liquid";
    MIXED_FLASK = "well-mixed flask at constant pressure: the air left falls as exp(-volume passed / free volume)";
    POISEUILLE = "Hagen-Poiseuille equation for laminar flow in a round tube";
    LAPLACE = "Young-Laplace equation for a sphere with one surface";
    GEOMETRY = "volume of a cylinder";
    VOLUME_STRENGTH = "definition of volume strength with 2 H2O2 = 2 H2O + O2";
}

sources! {
    SI_2019 = 2019, "BIPM, The International System of Units, 9th edition: defining constants";
    CGPM_1901 = 1901, "3rd General Conference on Weights and Measures: standard acceleration of free fall";
    CGPM_1954 = 1954, "10th General Conference on Weights and Measures, resolution 4: standard atmosphere";
    IUPAC_1982 = 1982, "IUPAC: standard pressure 100 kPa";
    IAPWS_SR1_86 = 1992, "IAPWS SR1-86(1992), saturation properties of ordinary water; Wagner and Pruss, J. Phys. Chem. Ref. Data 22 (1993) 783, equation 1";
    IAPWS_IF97 = 1997, "IAPWS-IF97, industrial formulation, backward saturation equation 31";
    KELL_1975 = 1975, "Kell, J. Chem. Eng. Data 20 (1975) 97, equation 16";
    ISO_2533 = 1975, "ISO 2533:1975 standard atmosphere, troposphere (also ICAO Doc 7488/3)";
    CODATA_KEY_1989 = 1989, "CODATA Key Values for Thermodynamics (Cox, Wagman and Medvedev), from memory";
    NBS_1982 = 1982, "NBS tables of chemical thermodynamic properties, from memory";
    CIAAW_2021 = 2022, "IUPAC/CIAAW: Prohaska et al., Pure Appl. Chem. 94 (2022) 573, standard atomic weights 2021";
    PERMANGANATE_TITRATION = 1939, "2 MnO4- + 5 H2O2 + 6 H+ = 2 Mn2+ + 5 O2 + 8 H2O; Reichert, McNeight and Rudel, Ind. Eng. Chem. Anal. Ed. 11 (1939) 194";
}
