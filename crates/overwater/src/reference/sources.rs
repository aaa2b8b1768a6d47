//! The published works that numbers and relations come from, each under one name.

use crate::scalar::Source;

macro_rules! sources {
    ($($(#[$meta:meta])* $constant:ident = $year:literal, $text:literal;)*) => {
        $(
            #[doc = $text]
            pub static $constant: Source = Source { text: $text, year: $year };
        )*

        /// Every source.
        pub static ALL: &[&Source] = &[$(&$constant),*];
    };
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
    HANDBOOK_MEMORY = 2026, "handbook value, from memory";
    COMMON_PRACTICE = 2026, "common practice, no source";
    HYDROSTATICS = 1687, "hydrostatics: pressure of a liquid column is density x gravity x height";
    DALTON = 1802, "Dalton's law of partial pressures";
    IDEAL_GAS = 1834, "ideal gas equation";
    CONSERVATION = 1789, "conservation of the amount of solute";
    VOLUME_STRENGTH = 1982, "definition of volume strength with 2 H2O2 = 2 H2O + O2";
    PERMANGANATE_TITRATION = 1939, "2 MnO4- + 5 H2O2 + 6 H+ = 2 Mn2+ + 5 O2 + 8 H2O; Reichert, McNeight and Rudel, Ind. Eng. Chem. Anal. Ed. 11 (1939) 194";
    HEAT_BALANCE = 1850, "first law: all heat stays in the liquid";
    MIXED_FLASK = 2026, "well-mixed flask at constant pressure: the air left falls as exp(-volume passed / free volume)";
    POISEUILLE = 1840, "Hagen-Poiseuille equation for laminar flow in a round tube";
    LAPLACE = 1806, "Young-Laplace equation for a sphere with one surface";
    GEOMETRY = 1, "volume of a cylinder";
    RATE_DEFINITION = 1850, "definition of the mean rate: change divided by time";
    FIRST_ORDER = 1850, "first-order decay: with the share X gone, mean rate / initial rate = X / (-ln(1 - X))";
    COMBINING_VOLUMES = 1811, "combining volumes: equal volumes of gases at one temperature and pressure hold equal amounts";
    GRAHAM = 1846, "Graham's law of effusion: times are as the square roots of the molar masses";
    ARCHIMEDES = 1687, "buoyancy: a body weighs less by the weight of the air that it displaces";
    STOICHIOMETRY = 1792, "stoichiometry: amounts react in the numbers of the balanced equation";
    CONSERVATION_OF_MASS = 1789, "conservation of mass";
}
