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
    EXPOSURE_DOCUMENTS = "the document named in each row";
    GLASSWARE = "ISO 648 and ISO 1042, class B: 25 cm3 pipette and 250 cm3 flask as printed in school practical notes, the others from memory";
    DEFINITION = "follows from the definitions of its quantities";
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
    ANTOINE = "Antoine equation for water, 1 to 100 degC, constants as commonly quoted";
    CROSS_VIRIALS_MEMORY = "second virial coefficients of water with gases, from memory";
    PHREEQC_PITZER = "computed with PHREEQC and its database pitzer.dat";
    RAOULT = "Raoult's law, with the salt counted as its ions";
    RATE_DEFINITION = "definition of the mean rate: change divided by time";
    FIRST_ORDER = "first-order decay: with the share X gone, mean rate / initial rate = X / (-ln(1 - X))";
    COMBINING_VOLUMES = "combining volumes: equal volumes of gases at one temperature and pressure hold equal amounts";
    GRAHAM = "Graham's law of effusion: times are as the square roots of the molar masses";
    ARCHIMEDES = "buoyancy: a body weighs less by the weight of the air that it displaces";
    STOICHIOMETRY = "stoichiometry: amounts react in the numbers of the balanced equation";
    CONSERVATION_OF_MASS = "conservation of mass";
    VIRIAL_SERIES = "virial equation of Kamerlingh Onnes, cut behind the second coefficient";
    VANT_HOFF = "van 't Hoff equation, the enthalpy of the reaction taken as constant";
    CHARGE_BALANCE = "electroneutrality: the charges in a solution add up to nothing";
    MIXED_ROOM = "well-mixed room: what is in the air falls as exp(-air changes x time)";
    BUNSEN = "Henry's law, with the solubility written as a volume of gas";
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
    IAPWS_SR1_86_LIQUID = 1992, "IAPWS SR1-86(1992), saturation properties of ordinary water, equation 2";
    IAPWS_SR1_86_VAPOUR = 1992, "IAPWS SR1-86(1992), saturation properties of ordinary water, equation 3";
    IAPWS_SR6_08 = 2011, "IAPWS SR6-08(2011), properties of liquid water at 0.1 MPa, equation 4";
    TANAKA_2001 = 2001, "Tanaka, Girard, Davis, Peuto and Bignell, Metrologia 38 (2001) 301";
    IAPWS_R14_08 = 2011, "IAPWS R14-08(2011), pressure along the melting and sublimation curves, equation 6";
    HYLAND_WEXLER_1983 = 1983, "Hyland and Wexler, ASHRAE Trans. 89(2A) (1983) 500; ASHRAE Handbook Fundamentals, chapter 1, equation 6";
    BUCK_1981 = 1981, "Buck, J. Appl. Meteorol. 20 (1981) 1527, from memory";
    BUCK_1996 = 1996, "Buck Research CR-1A user manual, appendix 1 (revision of 1996)";
    MAGNUS_WMO = 2008, "WMO-No. 8, guide to instruments and methods of observation, annex 4.B, from memory";
    CIPM_2007 = 2008, "CIPM-2007: Picard, Davis, Glaeser and Fujii, Metrologia 45 (2008) 149, appendix A1, from memory";
    CRC_1992 = 1992, "CRC Handbook of Chemistry and Physics, 73rd edition, vapor pressure of water";
    OPENSTAX_2019 = 2019, "OpenStax, Chemistry 2e, appendix E, water vapor pressure";
    GREENSPAN_1976 = 1976, "Greenspan, J. Res. Natl. Bur. Stand. 80A (1976) 41";
    HARDY_1998 = 1998, "Hardy, Third International Symposium on Humidity and Moisture, NPL 1998";
    IAPWS_G8_10 = 2010, "Harvey and Huang, Int. J. Thermophys. 28 (2007) 556, as in IAPWS G8-10";
    CRC_BRINE = 1992, "CRC Handbook of Chemistry and Physics, section 15, constant humidity solutions (Wexler)";
    GREENSPAN_1977 = 1977, "Greenspan, J. Res. Natl. Bur. Stand. 81A (1977) 89, from memory";
    WGS_84 = 2000, "NIMA TR8350.2, World Geodetic System 1984, equations 4-1 and 4-3, from memory";
    IGF_1980 = 1980, "Moritz, Geodetic Reference System 1980, Bull. Geod. 54 (1980) 395, from memory";
    SOMMER_1994 = 1994, "Sommer and Poziemski, Metrologia 30 (1994) 665, from memory";
    WMO_8 = 2008, "WMO-No. 8, guide to instruments and methods of observation, part I, chapter 3, annex 3.A, from memory";

    CODATA_KEY_1989_READ = 1989, "CODATA Key Values for Thermodynamics (Cox, Wagman and Medvedev), row read";
    OXIDES_OPENSTAX = 2019, "OpenStax Chemistry 2e, section 18.9, for the alkali metals; what mark schemes credit: common practice, no source";
    CRC_THERMOCHEMISTRY = 2014, "CRC Handbook of Chemistry and Physics, Standard thermodynamic properties of chemical substances, as carried by chemicals 1.5.2 (edition from memory)";
    CRC_PHYSICAL_CONSTANTS = 2014, "CRC Handbook of Chemistry and Physics, Physical constants of inorganic compounds, as carried by chemicals 1.5.2 (edition from memory)";
    CRC_ACIDS = 1982, "CRC Handbook of Chemistry and Physics, Dissociation constants of inorganic acids and bases, after Perrin (1982)";
    CRC_VIRIAL = 2002, "CRC Handbook of Chemistry and Physics, Virial coefficients of selected gases, after Dymond, Marsh, Wilhoit and Wong, Landolt-Bornstein IV/21A (2002), as carried by chemicals 1.5.2";
    JANAF_1998 = 1998, "NIST-JANAF Thermochemical Tables, 4th edition (Chase), by way of janaf 1.4.0";
    NASA_GLENN_2002 = 2002, "McBride, Zehe and Gordon, NASA Glenn Coefficients for Calculating Thermodynamic Properties of Individual Species, NASA/TP-2002-211556";
    COOLPROP_8 = 2026, "fit of this library to the reference equation of state of the gas, evaluated with CoolProp 8.0.0";
    IAPWS_G7_04 = 2004, "IAPWS G7-04, Guideline on the Henry's constant and vapor-liquid distribution constant for gases in H2O and D2O, equation 3 and Table 2; Fernandez-Prini, Alvarez and Harvey, J. Phys. Chem. Ref. Data 32 (2003) 903";
    SANDER_2015 = 2015, "Sander, Compilation of Henry's law constants (version 4.0), Atmos. Chem. Phys. 15 (2015) 4399, rows of the literature reviews";
    BENSON_KRAUSE_1979 = 1979, "Benson, Krause and Peterson, J. Solution Chem. 8 (1979) 655: Henry constant of oxygen (from memory; IAPWS G7-04 within 1.1 %)";
    BENSON_KRAUSE_1984 = 1984, "Benson and Krause, Limnol. Oceanogr. 25 (1980) 662 and 29 (1984) 620, form of Standard Methods 4500-O (from memory; gsw 3.6.23 within 0.025 %)";
    SCHUMPE_1993 = 1993, "Schumpe, Chem. Eng. Sci. 48 (1993) 153, Tables 2 and 3, as carried by chempy 0.10.2";
    LALIBERTE_2009 = 2009, "Laliberte, J. Chem. Eng. Data 54 (2009) 1725: density of H2O2 solutions, 0 to 96 degC, mass fraction 0 to 0.996, coefficients as carried by chemicals 1.5.2";
    IAPWS_R11_24 = 2024, "IAPWS R11-24, Release on the ionization constant of H2O (edition from memory), after Arcis et al., J. Phys. Chem. Ref. Data 49 (2020) 033103";
    DAVIES_1962 = 1962, "Davies, Ion Association, Butterworths, London (1962): activity coefficients, from memory";
    IAPWS_R11_07 = 2007, "IAPWS release on the ionization constant of H2O (2007); Bandura and Lvov, J. Phys. Chem. Ref. Data 35 (2006) 15";
}
