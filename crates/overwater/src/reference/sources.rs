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

    CODATA_KEY_1989_READ = 1989, "CODATA Key Values for Thermodynamics (Cox, Wagman and Medvedev), row read";
    CRC_THERMOCHEMISTRY = 2014, "CRC Handbook of Chemistry and Physics, Standard thermodynamic properties of chemical substances, as carried by chemicals 1.5.2 (edition from memory)";
    CRC_PHYSICAL_CONSTANTS = 2014, "CRC Handbook of Chemistry and Physics, Physical constants of inorganic compounds, as carried by chemicals 1.5.2 (edition from memory)";
    CRC_ACIDS = 1982, "CRC Handbook of Chemistry and Physics, Dissociation constants of inorganic acids and bases, after Perrin (1982)";
    CRC_VIRIAL = 2002, "CRC Handbook of Chemistry and Physics, Virial coefficients of selected gases, after Dymond, Marsh, Wilhoit and Wong, Landolt-Bornstein IV/21A (2002), as carried by chemicals 1.5.2";
    JANAF_1998 = 1998, "NIST-JANAF Thermochemical Tables, 4th edition (Chase), by way of janaf 1.4.0";
    NASA_GLENN_2002 = 2002, "McBride, Zehe and Gordon, NASA Glenn Coefficients for Calculating Thermodynamic Properties of Individual Species, NASA/TP-2002-211556";
    VIRIAL_SERIES = 1901, "virial equation of Kamerlingh Onnes, cut behind the second coefficient";
    COOLPROP_8 = 2026, "fit of this library to the reference equation of state of the gas, evaluated with CoolProp 8.0.0";
    IAPWS_G8_10 = 2010, "IAPWS G8-10, Guideline on a virial equation for the fugacity of H2O in humid air, equation 7; Harvey and Huang, Int. J. Thermophys. 28 (2007) 556";
    CIPM_2007 = 2008, "Picard, Davis, Glaser and Fujii, Metrologia 45 (2008) 149: CIPM-2007 (from memory)";
    IAPWS_G7_04 = 2004, "IAPWS G7-04, Guideline on the Henry's constant and vapor-liquid distribution constant for gases in H2O and D2O, equation 3 and Table 2; Fernandez-Prini, Alvarez and Harvey, J. Phys. Chem. Ref. Data 32 (2003) 903";
    SANDER_2015 = 2015, "Sander, Compilation of Henry's law constants (version 4.0), Atmos. Chem. Phys. 15 (2015) 4399, rows of the literature reviews";
    BENSON_KRAUSE_1979 = 1979, "Benson, Krause and Peterson, J. Solution Chem. 8 (1979) 655: Henry constant of oxygen (from memory; IAPWS G7-04 within 1.1 %)";
    BENSON_KRAUSE_1984 = 1984, "Benson and Krause, Limnol. Oceanogr. 25 (1980) 662 and 29 (1984) 620, form of Standard Methods 4500-O (from memory; gsw 3.6.23 within 0.025 %)";
    BUNSEN = 1857, "Henry's law, with the solubility written as a volume of gas";
    SCHUMPE_1993 = 1993, "Schumpe, Chem. Eng. Sci. 48 (1993) 153, Tables 2 and 3, as carried by chempy 0.10.2";
    LALIBERTE_2009 = 2009, "Laliberte, J. Chem. Eng. Data 54 (2009) 1725: density of H2O2 solutions, 0 to 96 degC, mass fraction 0 to 0.996, coefficients as carried by chemicals 1.5.2";
    IAPWS_R11_24 = 2024, "IAPWS R11-24, Release on the ionization constant of H2O (edition from memory), after Arcis et al., J. Phys. Chem. Ref. Data 49 (2020) 033103";
    IAPWS_R11_07 = 2007, "IAPWS release on the ionization constant of H2O (2007); Bandura and Lvov, J. Phys. Chem. Ref. Data 35 (2006) 15";
}
