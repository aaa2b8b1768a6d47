//! What the trade calls its quantities: one symbol, name and unit for each, used by the bounds table, the
//! worked solutions and the sheets.

use crate::reference::sources;
use crate::scalar::Symbol;
use crate::units;

macro_rules! symbols {
    ($($constant:ident = $id:literal, $text:literal, $latex:literal, $name:literal, $unit:ident, $source:expr;)*) => {
        $(
            #[doc = concat!("`", $text, "`: ", $name, ".")]
            pub static $constant: Symbol = Symbol {
                id: $id,
                text: $text,
                latex: $latex,
                name: $name,
                unit: &units::$unit,
                source: $source,
            };
        )*

        /// Every symbol.
        pub static ALL: &[&Symbol] = &[$(&$constant),*];
    };
}

symbols! {
    TEMPERATURE = "temperature", "t", "t", "temperature", DEGREE_CELSIUS, None;
    THERMODYNAMIC_TEMPERATURE = "thermodynamic_temperature", "T", "T", "thermodynamic temperature", KELVIN, None;
    STATION_PRESSURE = "station_pressure", "p", "p", "pressure at the place", KILOPASCAL, Some(&sources::ISO_2533);
    SEA_LEVEL_PRESSURE = "sea_level_pressure", "p₀", "p_0", "pressure reduced to sea level", KILOPASCAL, Some(&sources::ISO_2533);
    ALTITUDE = "altitude", "z", "z", "height above sea level", METRE, None;
    GEOPOTENTIAL_HEIGHT = "geopotential_height", "h", "h", "geopotential height", METRE, Some(&sources::ISO_2533);
    LEVEL_DIFFERENCE = "level_difference", "Δh", r"\Delta h", "water level inside less level outside", MILLIMETRE, None;
    LEVEL_PRESSURE = "level_pressure", "p(level)", r"p_\mathrm{level}", "pressure of the level difference", KILOPASCAL, Some(&sources::HYDROSTATICS);
    GAS_PRESSURE = "gas_pressure", "p(gas)", r"p_\mathrm{gas}", "pressure of the moist gas", KILOPASCAL, Some(&sources::HYDROSTATICS);
    REDUCED_TEMPERATURE = "reduced_temperature", "τ", r"\tau", "distance from the critical temperature", ONE, Some(&sources::IAPWS_SR1_86);
    VAPOUR_PRESSURE = "vapour_pressure", "p(H₂O)", r"p_\mathrm{H_2O}", "vapour pressure of water", KILOPASCAL, Some(&sources::IAPWS_SR1_86);
    PRESSURE_ROOT = "pressure_root", "β", r"\beta", "fourth root of the pressure in megapascal", ONE, Some(&sources::IAPWS_IF97);
    FIRST_TEMPERATURE = "first_temperature", "T₁", "T_1", "first estimate of the temperature", KELVIN, Some(&sources::IAPWS_IF97);
    SECOND_TEMPERATURE = "second_temperature", "T₂", "T_2", "second estimate of the temperature", KELVIN, Some(&sources::IAPWS_SR1_86);
    WATER_DENSITY = "water_density", "ρ", r"\rho", "density of water", GRAM_PER_CUBIC_CENTIMETRE, Some(&sources::IAPWS_SR6_08);
    DRY_PRESSURE = "dry_pressure", "p(dry)", r"p_\mathrm{dry}", "pressure of the dry gas", KILOPASCAL, Some(&sources::DALTON);
    VOLUME = "volume", "V", "V", "volume", CUBIC_CENTIMETRE, None;
    AMOUNT = "amount", "n", "n", "amount", MILLIMOLE, Some(&sources::IDEAL_GAS);
    GAS_VOLUME = "gas_volume", "V(gas)", r"V_\mathrm{gas}", "volume of the gas", CUBIC_CENTIMETRE, Some(&sources::IDEAL_GAS);
    MOLAR_VOLUME = "molar_volume", "Vₘ", r"V_\mathrm{m}", "molar volume of a gas", CUBIC_DECIMETRE_PER_MOLE, Some(&sources::IDEAL_GAS);
    VOLUME_STRENGTH = "volume_strength", "S", "S", "volume strength", VOLUMES, None;
    CONCENTRATION = "concentration", "c", "c", "concentration of peroxide", MOLE_PER_CUBIC_DECIMETRE, Some(&sources::VOLUME_STRENGTH);
    STOCK_CONCENTRATION = "stock_concentration", "c₁", "c_1", "concentration of the stock", MOLE_PER_CUBIC_DECIMETRE, None;
    WANTED_CONCENTRATION = "wanted_concentration", "c₂", "c_2", "concentration wanted", MOLE_PER_CUBIC_DECIMETRE, None;
    PERCENT_BY_VOLUME = "percent_by_volume", "w/v", r"\mathrm{w/v}", "grams of peroxide in 100 cm3", PERCENT, None;
    PERCENT_BY_MASS = "percent_by_mass", "w/w", r"\mathrm{w/w}", "grams of peroxide in 100 g", PERCENT, None;
    SOLUTION_DENSITY = "solution_density", "ρ(sol)", r"\rho_\mathrm{sol}", "density of the solution", GRAM_PER_CUBIC_CENTIMETRE, None;
    STOCK_VOLUME = "stock_volume", "V₁", "V_1", "volume of stock to measure", CUBIC_CENTIMETRE, Some(&sources::CONSERVATION);
    MADE_UP_VOLUME = "made_up_volume", "V₂", "V_2", "volume made up to", CUBIC_CENTIMETRE, None;
    TITRE = "titre", "V(titre)", r"V_\mathrm{titre}", "titre", CUBIC_CENTIMETRE, None;
    PERMANGANATE = "permanganate", "c(MnO₄⁻)", r"c_\mathrm{MnO_4^-}", "concentration of permanganate", MOLE_PER_CUBIC_DECIMETRE, None;
    SAMPLE_VOLUME = "sample_volume", "V(sample)", r"V_\mathrm{sample}", "volume of stock taken", CUBIC_CENTIMETRE, None;
    ALIQUOT = "aliquot", "V(aliquot)", r"V_\mathrm{aliquot}", "volume titrated", CUBIC_CENTIMETRE, None;
    ALIQUOT_CONCENTRATION = "aliquot_concentration", "c(diluted)", r"c_\mathrm{diluted}", "concentration of the diluted sample", MOLE_PER_CUBIC_DECIMETRE, Some(&sources::PERMANGANATE_TITRATION);
    SOLUTION_VOLUME = "solution_volume", "V(sol)", r"V_\mathrm{sol}", "volume of peroxide solution", CUBIC_CENTIMETRE, Some(&sources::VOLUME_STRENGTH);
    LIQUID_VOLUME = "liquid_volume", "V(liquid)", r"V_\mathrm{liquid}", "volume of liquid", CUBIC_CENTIMETRE, None;
    TEMPERATURE_RISE = "temperature_rise", "ΔT", r"\Delta T", "adiabatic temperature rise", KELVIN, Some(&sources::HEAT_BALANCE);
    STEAM_SHARE = "steam_share", "y", "y", "share of steam in the moist gas", ONE, Some(&sources::DALTON);
    FLASK_VOLUME = "flask_volume", "V(flask)", r"V_\mathrm{flask}", "volume of the flask", CUBIC_CENTIMETRE, None;
    FREE_VOLUME = "free_volume", "V(free)", r"V_\mathrm{free}", "free volume of flask and tube", CUBIC_CENTIMETRE, None;
    REJECTED_VOLUME = "rejected_volume", "V(before)", r"V_\mathrm{before}", "gas that has passed before", CUBIC_CENTIMETRE, None;
    OXYGEN_FRACTION = "oxygen_fraction", "x", "x", "fraction of oxygen in the dry gas", ONE, Some(&sources::MIXED_FLASK);
    STEM_LENGTH = "stem_length", "l(stem)", r"l_\mathrm{stem}", "length of the funnel stem", CENTIMETRE, None;
    TUBE_BORE = "tube_bore", "d", "d", "bore of the delivery tube", MILLIMETRE, None;
    TUBE_LENGTH = "tube_length", "l", "l", "length of the delivery tube", CENTIMETRE, None;
    TUBE_VOLUME = "tube_volume", "V(tube)", r"V_\mathrm{tube}", "volume of the delivery tube", CUBIC_CENTIMETRE, Some(&sources::GEOMETRY);
    OUTLET_DEPTH = "outlet_depth", "H", "H", "depth of the outlet under water", CENTIMETRE, None;
    FLOW = "flow", "Q", "Q", "rate at which gas comes", CUBIC_CENTIMETRE_PER_SECOND, None;
    FRICTION_PRESSURE = "friction_pressure", "p(friction)", r"p_\mathrm{friction}", "pressure drop along the tube", PASCAL, Some(&sources::POISEUILLE);
    BUBBLE_PRESSURE = "bubble_pressure", "p(bubble)", r"p_\mathrm{bubble}", "excess pressure in a bubble", PASCAL, Some(&sources::LAPLACE);
    DEPTH_PRESSURE = "depth_pressure", "p(depth)", r"p_\mathrm{depth}", "pressure of the water over the outlet", PASCAL, Some(&sources::HYDROSTATICS);
    BACK_PRESSURE = "back_pressure", "p(back)", r"p_\mathrm{back}", "pressure in the flask above that of the room", PASCAL, Some(&sources::HYDROSTATICS);
    STEM_RISE = "stem_rise", "h(stem)", r"h_\mathrm{stem}", "rise of liquid in the funnel stem", CENTIMETRE, Some(&sources::HYDROSTATICS);
    SHRINKAGE = "shrinkage", "s", "s", "share of the moist gas that is lost on cooling", ONE, Some(&sources::IDEAL_GAS);
    COLLECTION_EFFICIENCY = "collection_efficiency", "η", r"\eta", "collection efficiency", ONE, None;
    MASS = "mass", "m", "m", "mass", GRAM, None;
    ROOM_VOLUME = "room_volume", "V(room)", r"V_\mathrm{room}", "volume of the room", CUBIC_METRE, None;
    AIR_CHANGES = "air_changes", "N", "N", "air changes per hour", PER_HOUR, None;

    VAPOUR_PRESSURE_CIPM = "vapour_pressure_cipm", "p(H₂O, CIPM)", r"p_\mathrm{H_2O,CIPM}", "vapour pressure of water, CIPM", KILOPASCAL, Some(&sources::CIPM_2007);
    VAPOUR_PRESSURE_HYLAND_WEXLER = "vapour_pressure_hyland_wexler", "p(H₂O, Hyland-Wexler)", r"p_\mathrm{H_2O,Hyland-Wexler}", "vapour pressure of water, Hyland-Wexler", KILOPASCAL, Some(&sources::HYLAND_WEXLER_1983);
    VAPOUR_PRESSURE_BUCK_1981 = "vapour_pressure_buck_1981", "p(H₂O, Buck 1981)", r"p_\mathrm{H_2O,Buck~1981}", "vapour pressure of water, Buck 1981", KILOPASCAL, Some(&sources::BUCK_1981);
    VAPOUR_PRESSURE_BUCK_1996 = "vapour_pressure_buck_1996", "p(H₂O, Buck 1996)", r"p_\mathrm{H_2O,Buck~1996}", "vapour pressure of water, Buck 1996", KILOPASCAL, Some(&sources::BUCK_1996);
    VAPOUR_PRESSURE_MAGNUS = "vapour_pressure_magnus", "p(H₂O, Magnus)", r"p_\mathrm{H_2O,Magnus}", "vapour pressure of water, Magnus", KILOPASCAL, Some(&sources::MAGNUS_WMO);
    VAPOUR_PRESSURE_ANTOINE = "vapour_pressure_antoine", "p(H₂O, Antoine)", r"p_\mathrm{H_2O,Antoine}", "vapour pressure of water, Antoine", KILOPASCAL, Some(&sources::ANTOINE);
    VAPOUR_PRESSURE_CRC = "vapour_pressure_crc", "p(H₂O, CRC)", r"p_\mathrm{H_2O,CRC}", "vapour pressure of water, CRC", KILOPASCAL, Some(&sources::CRC_1992);
    VAPOUR_PRESSURE_OPENSTAX = "vapour_pressure_openstax", "p(H₂O, OpenStax)", r"p_\mathrm{H_2O,OpenStax}", "vapour pressure of water, OpenStax", KILOPASCAL, Some(&sources::OPENSTAX_2019);
    SUBLIMATION_PRESSURE = "sublimation_pressure", "p(ice)", r"p_\mathrm{ice}", "vapour pressure over ice", PASCAL, Some(&sources::IAPWS_R14_08);
    VOLUME_ALPHA = "volume_alpha", "α(v)", r"\alpha_v", "first variable of the density equation", ONE, Some(&sources::IAPWS_SR6_08);
    VOLUME_BETA = "volume_beta", "β(v)", r"\beta_v", "second variable of the density equation", ONE, Some(&sources::IAPWS_SR6_08);
    WATER_DENSITY_KELL = "water_density_kell", "ρ(Kell)", r"\rho_\mathrm{Kell}", "density of water, Kell", GRAM_PER_CUBIC_CENTIMETRE, Some(&sources::KELL_1975);
    WATER_DENSITY_TANAKA = "water_density_tanaka", "ρ(Tanaka)", r"\rho_\mathrm{Tanaka}", "density of water, Tanaka", GRAM_PER_CUBIC_CENTIMETRE, Some(&sources::TANAKA_2001);
    WATER_DENSITY_AT_PRESSURE = "water_density_at_pressure", "ρ(p)", r"\rho_p", "density of water at a pressure", GRAM_PER_CUBIC_CENTIMETRE, Some(&sources::TANAKA_2001);
    SATURATION_ROOT = "saturation_root", "x(τ)", r"x_\tau", "root of the distance from the critical temperature", ONE, Some(&sources::IAPWS_SR1_86);
    SATURATED_LIQUID_DENSITY = "saturated_liquid_density", "ρ'", r"\rho'", "density of the saturated liquid", GRAM_PER_CUBIC_CENTIMETRE, Some(&sources::IAPWS_SR1_86_LIQUID);
    SATURATED_VAPOUR_DENSITY = "saturated_vapour_density", "ρ''", r"\rho''", "density of the saturated vapour", KILOGRAM_PER_CUBIC_METRE, Some(&sources::IAPWS_SR1_86_VAPOUR);
    ENHANCEMENT = "enhancement", "f", r"f", "enhancement factor", ONE, Some(&sources::GREENSPAN_1976);
    ENHANCEMENT_HARDY = "enhancement_hardy", "f(Hardy)", r"f_\mathrm{Hardy}", "enhancement factor, Hardy", ONE, Some(&sources::HARDY_1998);
    ENHANCEMENT_BUCK = "enhancement_buck", "f(Buck)", r"f_\mathrm{Buck}", "enhancement factor, Buck", ONE, Some(&sources::BUCK_1996);
    ENHANCEMENT_CIPM = "enhancement_cipm", "f(CIPM)", r"f_\mathrm{CIPM}", "enhancement factor, CIPM", ONE, Some(&sources::CIPM_2007);
    MOIST_VAPOUR_PRESSURE = "moist_vapour_pressure", "p(H₂O, air)", r"p_\mathrm{H_2O,air}", "vapour pressure of water in air", KILOPASCAL, Some(&sources::GREENSPAN_1976);
    BRINE_HUMIDITY = "brine_humidity", "RH", r"RH", "relative humidity over saturated brine", PERCENT, Some(&sources::CRC_BRINE);
    BRINE_HUMIDITY_GREENSPAN = "brine_humidity_greenspan", "RH(Greenspan)", r"RH_\mathrm{Greenspan}", "relative humidity over saturated brine, Greenspan", PERCENT, Some(&sources::GREENSPAN_1977);
    BRINE_VAPOUR_PRESSURE = "brine_vapour_pressure", "p(brine)", r"p_\mathrm{brine}", "vapour pressure over saturated brine", KILOPASCAL, Some(&sources::CRC_BRINE);
    DILUTE_VAPOUR_PRESSURE = "dilute_vapour_pressure", "p(solution)", r"p_\mathrm{solution}", "vapour pressure over a dilute solution", KILOPASCAL, Some(&sources::RAOULT);
    MOLALITY = "molality", "m(salt)", r"m_\mathrm{salt}", "molality of the salt", MOLE_PER_KILOGRAM, None;
    IONS = "ions", "i", r"i", "ions from one formula of the salt", ONE, None;
    BRINE_DENSITY = "brine_density", "ρ(brine)", r"\rho_\mathrm{brine}", "density of saturated brine", GRAM_PER_CUBIC_CENTIMETRE, Some(&sources::PHREEQC_PITZER);
    STATION_PRESSURE_WMO = "station_pressure_wmo", "p(WMO)", r"p_\mathrm{WMO}", "pressure at a low place", KILOPASCAL, Some(&sources::WMO_8);
    SEA_LEVEL_PRESSURE_WMO = "sea_level_pressure_wmo", "p₀(WMO)", r"p_{0,\mathrm{WMO}}", "pressure reduced to sea level from a low place", KILOPASCAL, Some(&sources::WMO_8);
    AIR_TEMPERATURE = "air_temperature", "t(air)", r"t_\mathrm{air}", "temperature of the outside air", DEGREE_CELSIUS, None;
    AIR_VAPOUR_PRESSURE = "air_vapour_pressure", "e", r"e", "pressure of the vapour in the outside air", KILOPASCAL, None;
    MEAN_VIRTUAL_TEMPERATURE = "mean_virtual_temperature", "T(mv)", r"T_\mathrm{mv}", "mean virtual temperature of the air column", KELVIN, Some(&sources::WMO_8);
    LATITUDE = "latitude", "φ", r"\varphi", "latitude", DEGREE, None;
    SEA_LEVEL_GRAVITY = "sea_level_gravity", "g₀", r"g_0", "gravity at sea level", METRE_PER_SECOND_SQUARED, Some(&sources::WGS_84);
    GRAVITY = "gravity", "g(φ)", r"g_\varphi", "gravity at the place", METRE_PER_SECOND_SQUARED, Some(&sources::WGS_84);
    GRAVITY_1980 = "gravity_1980", "g(1980)", r"g_{1980}", "gravity at sea level, series of 1980", METRE_PER_SECOND_SQUARED, Some(&sources::IGF_1980);
    COLUMN = "column", "h(column)", r"h_\mathrm{column}", "height of the column", MILLIMETRE, Some(&sources::HYDROSTATICS);
    LIQUID_DENSITY = "liquid_density", "ρ(liquid)", r"\rho_\mathrm{liquid}", "density of the liquid", GRAM_PER_CUBIC_CENTIMETRE, None;
    COLUMN_PRESSURE = "column_pressure", "p(column)", r"p_\mathrm{column}", "pressure of the column", KILOPASCAL, Some(&sources::HYDROSTATICS);
    MERCURY_DENSITY = "mercury_density", "ρ(Hg)", r"\rho_\mathrm{Hg}", "density of mercury", KILOGRAM_PER_CUBIC_METRE, Some(&sources::SOMMER_1994);
    BAROMETER_READING = "barometer_reading", "B", r"B", "reading of the mercury barometer", MILLIMETRE, None;
    BAROMETER_HEIGHT = "barometer_height", "h(Hg)", r"h_\mathrm{Hg}", "true height of the mercury", MILLIMETRE, Some(&sources::HANDBOOK_MEMORY);
    BAROMETER_PRESSURE = "barometer_pressure", "p(Hg)", r"p_\mathrm{Hg}", "pressure from the mercury barometer", KILOPASCAL, Some(&sources::HYDROSTATICS);
    RELATIVE_SATURATION = "relative_saturation", "s(rel)", r"s_\mathrm{rel}", "relative saturation of the gas with water vapour", ONE, None;
    MASS_LOSS = "mass_loss", "Δm", r"\Delta m", "loss of mass", GRAM, Some(&sources::CONSERVATION_OF_MASS);
    MASS_BEFORE = "mass_before", "m₁", "m_1", "mass before", GRAM, None;
    MASS_AFTER = "mass_after", "m₂", "m_2", "mass after", GRAM, None;
    GAS_MOLAR_MASS = "gas_molar_mass", "M(gas)", r"M_\mathrm{gas}", "molar mass of the gas", GRAM_PER_MOLE, Some(&sources::CIAAW_2021);
    CARRIED_MASS = "carried_mass", "M(moist)", r"M_\mathrm{moist}", "mass that leaves with one mole of dry gas", GRAM_PER_MOLE, Some(&sources::DALTON);
    SATURATED_VAPOUR_PRESSURE = "saturated_vapour_pressure", "p(sat)", r"p_\mathrm{sat}", "vapour pressure that is in the gas", KILOPASCAL, Some(&sources::DALTON);
    REAGENT_MOLAR_MASS = "reagent_molar_mass", "M(reagent)", r"M_\mathrm{reagent}", "molar mass of the reagent", GRAM_PER_MOLE, Some(&sources::CIAAW_2021);
    REAGENT_CONCENTRATION = "reagent_concentration", "c(reagent)", r"c_\mathrm{reagent}", "concentration of the reagent", MOLE_PER_CUBIC_DECIMETRE, None;
    REAGENT_VOLUME = "reagent_volume", "V(reagent)", r"V_\mathrm{reagent}", "volume of the reagent's solution", CUBIC_CENTIMETRE, None;
    REAGENT_AMOUNT = "reagent_amount", "n(reagent)", r"n_\mathrm{reagent}", "amount of the reagent", MILLIMOLE, Some(&sources::STOICHIOMETRY);
    MOLE_RATIO = "mole_ratio", "r", "r", "moles of gas for each mole of the reagent", ONE, None;
    EXPECTED_AMOUNT = "expected_amount", "n(expected)", r"n_\mathrm{expected}", "amount of gas that the reagent can give", MILLIMOLE, Some(&sources::STOICHIOMETRY);
    YIELD = "yield", "Y", "Y", "yield", PERCENT, Some(&sources::STOICHIOMETRY);
    REFERENCE_TEMPERATURE = "reference_temperature", "t(ref)", r"t_\mathrm{ref}", "reference temperature", DEGREE_CELSIUS, None;
    REFERENCE_PRESSURE = "reference_pressure", "p(ref)", r"p_\mathrm{ref}", "reference pressure", KILOPASCAL, None;
    STATED_MOLAR_VOLUME = "stated_molar_volume", "Vₘ(stated)", r"V_\mathrm{m,stated}", "molar volume that is gone by", CUBIC_DECIMETRE_PER_MOLE, None;
    REFERENCE_VOLUME = "reference_volume", "V(ref)", r"V_\mathrm{ref}", "volume of the dry gas at the reference conditions", CUBIC_CENTIMETRE, Some(&sources::IDEAL_GAS);
    MEASURED_MOLAR_VOLUME = "measured_molar_volume", "Vₘ(measured)", r"V_\mathrm{m,measured}", "molar volume measured", CUBIC_DECIMETRE_PER_MOLE, Some(&sources::STOICHIOMETRY);
    MOLAR_MASS = "molar_mass", "M", "M", "molar mass measured", GRAM_PER_MOLE, Some(&sources::IDEAL_GAS);
    PURITY = "purity", "w", "w", "purity by mass", PERCENT, Some(&sources::STOICHIOMETRY);
    ACID_CONCENTRATION = "acid_concentration", "c(acid)", r"c_\mathrm{acid}", "concentration of the acid", MOLE_PER_CUBIC_DECIMETRE, None;
    ACID_VOLUME = "acid_volume", "V(acid)", r"V_\mathrm{acid}", "volume of the acid", CUBIC_CENTIMETRE, None;
    ALKALI_CONCENTRATION = "alkali_concentration", "c(alkali)", r"c_\mathrm{alkali}", "concentration of the alkali", MOLE_PER_CUBIC_DECIMETRE, None;
    ACID_AMOUNT = "acid_amount", "n(acid)", r"n_\mathrm{acid}", "acid at the start, as hydrogen ions", MILLIMOLE, Some(&sources::STOICHIOMETRY);
    ACID_LEFT = "acid_left", "n(left)", r"n_\mathrm{left}", "acid that is left, as hydrogen ions", MILLIMOLE, Some(&sources::STOICHIOMETRY);
    ELAPSED_TIME = "elapsed_time", "t(time)", r"t_\mathrm{time}", "time", SECOND, None;
    RECIPROCAL_TIME = "reciprocal_time", "1/t", "1/t", "reciprocal of the time", PER_SECOND, Some(&sources::RATE_DEFINITION);
    MEAN_RATE = "mean_rate", "V/t", "V/t", "mean rate up to this volume", CUBIC_CENTIMETRE_PER_SECOND, Some(&sources::RATE_DEFINITION);
    FINAL_VOLUME = "final_volume", "V(end)", r"V_\mathrm{end}", "volume when the reaction is over", CUBIC_CENTIMETRE, None;
    CONVERSION = "conversion", "X", "X", "share that has reacted", PERCENT, Some(&sources::RATE_DEFINITION);
    AVERAGE_BIAS = "average_bias", "b", "b", "mean rate against the first-order initial rate", PERCENT, Some(&sources::FIRST_ORDER);
    SAMPLE_GAS = "sample_gas", "V(sample gas)", r"V_\mathrm{sample\,gas}", "volume of the hydrocarbon", CUBIC_CENTIMETRE, None;
    MIXED_GAS = "mixed_gas", "V(mixed)", r"V_\mathrm{mixed}", "volume with oxygen, before burning", CUBIC_CENTIMETRE, None;
    BURNT_GAS = "burnt_gas", "V(burnt)", r"V_\mathrm{burnt}", "volume after burning", CUBIC_CENTIMETRE, None;
    WASHED_GAS = "washed_gas", "V(washed)", r"V_\mathrm{washed}", "volume after the alkali", CUBIC_CENTIMETRE, None;
    CARBON_NUMBER = "carbon_number", "x(C)", r"x_\mathrm{C}", "carbon atoms in the molecule", ONE, Some(&sources::COMBINING_VOLUMES);
    HYDROGEN_NUMBER = "hydrogen_number", "y(H)", r"y_\mathrm{H}", "hydrogen atoms in the molecule", ONE, Some(&sources::COMBINING_VOLUMES);
    OXYGEN_LEFT = "oxygen_left", "V(O₂ left)", r"V_\mathrm{O_2\,left}", "oxygen left, by the combining volumes", CUBIC_CENTIMETRE, Some(&sources::COMBINING_VOLUMES);
    KNOWN_TIME = "known_time", "t(known)", r"t_\mathrm{known}", "time of the known gas", SECOND, None;
    KNOWN_MOLAR_MASS = "known_molar_mass", "M(known)", r"M_\mathrm{known}", "molar mass of the known gas", GRAM_PER_MOLE, Some(&sources::CIAAW_2021);
    EFFUSED_MOLAR_MASS = "effused_molar_mass", "M(effused)", r"M_\mathrm{effused}", "molar mass of the gas by effusion", GRAM_PER_MOLE, Some(&sources::GRAHAM);
    MASS_FILLED = "mass_filled", "m(filled)", r"m_\mathrm{filled}", "mass of the vessel with the gas", GRAM, None;
    MASS_WITH_AIR = "mass_with_air", "m(with air)", r"m_\mathrm{with\,air}", "mass of the vessel with air, or collapsed", GRAM, None;
    DISPLACED_AIR = "displaced_air", "m(air)", r"m_\mathrm{air}", "mass of the air that the gas stands in for", GRAM, Some(&sources::IDEAL_GAS);
    GAS_MASS = "gas_mass", "m(gas)", r"m_\mathrm{gas}", "mass of the gas", GRAM, Some(&sources::ARCHIMEDES);

    SECOND_VIRIAL = "second_virial", "B(T)", "B(T)", "second virial coefficient", CUBIC_CENTIMETRE_PER_MOLE, Some(&sources::COOLPROP_8);
    SECOND_VIRIAL_HANDBOOK = "second_virial_handbook", "B(hb)", r"B_\mathrm{hb}", "second virial coefficient, from the handbook", CUBIC_CENTIMETRE_PER_MOLE, Some(&sources::CRC_VIRIAL);
    COMPRESSIBILITY = "compressibility", "Z", "Z", "compressibility factor", ONE, Some(&sources::VIRIAL_SERIES);
    REAL_MOLAR_VOLUME = "real_molar_volume", "Vₘ(real)", r"V_\mathrm{m,real}", "molar volume of the real gas", CUBIC_DECIMETRE_PER_MOLE, Some(&sources::VIRIAL_SERIES);
    REAL_GAS_AMOUNT = "real_gas_amount", "n(real)", r"n_\mathrm{real}", "amount of the gas, taken as a real one", MILLIMOLE, Some(&sources::VIRIAL_SERIES);
    WEIGHED_DENSITY = "weighed_density", "ρ(weighed)", r"\rho_\mathrm{weighed}", "density of the gas", GRAM_PER_CUBIC_DECIMETRE, Some(&sources::CONSERVATION_OF_MASS);
    GAS_DENSITY = "gas_density", "ρ(gas)", r"\rho_\mathrm{gas}", "density of the gas", GRAM_PER_CUBIC_DECIMETRE, Some(&sources::VIRIAL_SERIES);
    WATER_FRACTION = "water_fraction", "y(H₂O)", r"y_\mathrm{H_2O}", "fraction of water vapour, by amount", ONE, None;
    MIXTURE_VIRIAL = "mixture_virial", "B(mix)", r"B_\mathrm{mix}", "second virial coefficient of the moist gas", CUBIC_CENTIMETRE_PER_MOLE, Some(&sources::VIRIAL_SERIES);
    HENRY_CONSTANT = "henry_constant", "Hᶜᵖ", r"H^{cp}", "solubility by Henry's law", MOLE_PER_CUBIC_METRE_PASCAL, Some(&sources::IAPWS_G7_04);
    HENRY_CONSTANT_OXYGEN = "henry_constant_oxygen", "Hᶜᵖ(O₂)", r"H^{cp}_\mathrm{O_2}", "solubility of oxygen by Henry's law", MOLE_PER_CUBIC_METRE_PASCAL, Some(&sources::BENSON_KRAUSE_1979);
    HENRY_CONSTANT_REVIEWED = "henry_constant_reviewed", "Hᶜᵖ(rev)", r"H^{cp}_\mathrm{rev}", "solubility by Henry's law, from the reviews", MOLE_PER_CUBIC_METRE_PASCAL, Some(&sources::SANDER_2015);
    OSTWALD = "ostwald_coefficient", "L", "L", "volumes of gas in one volume of water (Ostwald)", ONE, Some(&sources::BUNSEN);
    BUNSEN = "bunsen_coefficient", "α", r"\alpha", "volumes of gas, at 0 degC and 1 atm, in one volume of water (Bunsen)", ONE, Some(&sources::BUNSEN);
    PARTIAL_PRESSURE = "partial_pressure", "p(i)", "p_i", "partial pressure of the gas", KILOPASCAL, None;
    CONTACT_WATER = "contact_water", "V(water)", r"V_\mathrm{water}", "volume of water in contact with the gas", CUBIC_CENTIMETRE, None;
    DISSOLVED_AMOUNT = "dissolved_amount", "n(lost)", r"n_\mathrm{lost}", "gas lost into the water, at most", MILLIMOLE, Some(&sources::BUNSEN);
    OXYGEN_SATURATION = "oxygen_saturation", "DO", r"\mathrm{DO}", "oxygen in water under moist air", MILLIGRAM_PER_CUBIC_DECIMETRE, Some(&sources::BENSON_KRAUSE_1984);
    SALINITY = "salinity", "S(sal)", r"S_\mathrm{sal}", "salinity on the practical scale", ONE, None;
    SALTING_OUT = "salting_out", "c₀/c", r"c_0/c", "solubility in water over that in the solution", ONE, Some(&sources::SCHUMPE_1993);
    SALT_CONCENTRATION = "salt_concentration", "c(salt)", r"c_\mathrm{salt}", "concentration of the salt", MOLE_PER_CUBIC_DECIMETRE, None;
    PEROXIDE_DENSITY = "peroxide_density", "ρ(H₂O₂)", r"\rho_\mathrm{H_2O_2}", "density of the peroxide solution, computed", GRAM_PER_CUBIC_CENTIMETRE, Some(&sources::LALIBERTE_2009);
    LIQUID_AREA = "liquid_area", "A", "A", "area of the liquid in the flask", SQUARE_CENTIMETRE, None;
    RATE_CONSTANT = "rate_constant_at_20", "k(20 °C)", r"k_{20}", "rate constant at 20 degC, in the SI unit of its law", ONE, None;
    ACTIVATION_ENERGY = "activation_energy", "E(a)", r"E_\mathrm{a}", "activation energy", JOULE_PER_MOLE, None;
    REACTION_ORDER = "reaction_order", "n(order)", r"n_\mathrm{order}", "order of the reaction", ONE, None;
    HALF_RATE_CONCENTRATION = "half_rate_concentration", "K(M)", r"K_\mathrm{M}", "concentration at half of the greatest rate", MOLE_PER_CUBIC_METRE, None;
    TUBE_RISE = "tube_rise", "h(tube)", r"h_\mathrm{tube}", "highest point of the delivery tube above the trough", CENTIMETRE, None;
    TIP_DEPTH = "tip_depth", "h(tip)", r"h_\mathrm{tip}", "depth of the funnel's tip under the liquid", CENTIMETRE, None;
    BUBBLE_RISE = "bubble_rise", "u", "u", "speed at which bubbles rise", CENTIMETRE_PER_SECOND, None;
    HEAT_LOSS = "heat_loss", "U", "U", "heat lost for each kelvin above the room", WATT_PER_KELVIN, None;
    GLASS_HEAT = "glass_heat", "C(glass)", r"C_\mathrm{glass}", "heat capacity of the glass", JOULE_PER_KELVIN, None;
    RUN_LENGTH = "run_length", "t(end)", r"t_\mathrm{end}", "how long the preparation is followed", SECOND, None;
    DRIP_TIME = "drip_time", "Δt", r"\Delta t", "how long an addition drips", SECOND, None;
    VESSEL_HEIGHT = "vessel_height", "h(vessel)", r"h_\mathrm{vessel}", "height of a vessel above the trough", CENTIMETRE, None;
    RELATIVE_TOLERANCE = "relative_tolerance", "ε", r"\varepsilon", "relative tolerance of the integration", ONE, None;
    COUNT = "count", "N(count)", r"N_\mathrm{count}", "how many", ONE, None;
    TRIAL_VOLUME = "trial_volume", "V(trial)", r"V_\mathrm{trial}", "gas read in a trial", CUBIC_CENTIMETRE, None;
    PKW = "pkw", "pK(w)", r"\mathrm{p}K_\mathrm{w}", "ionisation of water, -log10 of the molal constant", ONE, Some(&sources::IAPWS_R11_24);
    LEAK = "leak", "L(leak)", r"L_\mathrm{leak}", "share that escapes", ONE, None;
    AIR_CONCENTRATION = "air_concentration", "φ(0)", r"\varphi_0", "volume fraction in the air of the room, at the start", PART_PER_MILLION, Some(&sources::IDEAL_GAS);
    AIR_CONCENTRATION_LATER = "air_concentration_later", "φ(t)", r"\varphi_t", "volume fraction in the air of the room, after the time", PART_PER_MILLION, Some(&sources::MIXED_ROOM);
    ACTIVITY_COEFFICIENT = "activity_coefficient", "γ", r"\gamma", "activity coefficient of an ion of one charge", ONE, Some(&sources::DAVIES_1962);
    MOLAR_HEAT_CAPACITY = "molar_heat_capacity", "Cₚ", r"C_{p,\mathrm{m}}", "heat capacity at constant pressure", JOULE_PER_MOLE_KELVIN, Some(&sources::NASA_GLENN_2002);
    MOLAR_ENTHALPY = "molar_enthalpy", "H(T)", "H(T)", "enthalpy, with that of formation at 298.15 K", KILOJOULE_PER_MOLE, Some(&sources::NASA_GLENN_2002);
    MOLAR_ENTROPY = "molar_entropy", "S(T)", "S(T)", "entropy at the standard pressure", JOULE_PER_MOLE_KELVIN, Some(&sources::NASA_GLENN_2002);
    SHARE_OF_OXYGEN = "share_of_oxygen", "φ(O₂)", r"\varphi_\mathrm{O_2}", "share of the oxygen that a sample uses", ONE, None;
    MASS_PER_LENGTH = "mass_per_length", "m/l", r"m/l", "mass of ribbon or wire for each metre", GRAM_PER_METRE, None;
    COMBUSTION_HEAT = "combustion_heat", "q(burn)", r"q_\mathrm{burn}", "heat given out by burning", KILOJOULE, Some(&sources::CRC_THERMOCHEMISTRY);
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn no_id_and_no_symbol_stands_for_two_things() {
        for (index, one) in ALL.iter().enumerate() {
            for other in &ALL[index + 1..] {
                assert_ne!(one.id, other.id);
                assert_ne!(one.text, other.text, "{} and {}", one.id, other.id);
                assert_ne!(one.latex, other.latex, "{} and {}", one.id, other.id);
            }
        }
    }
}
