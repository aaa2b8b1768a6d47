//! The register of data: every constant, coefficient and table of `reference/`.

use super::{Entry, Kind, coefficients, constant, printed, table};
use crate::peroxide::kinetics::ACTIVATION_RANGES;
use crate::reference::{
    acids, airborne, atmosphere, brine, burns, constants, davies, earth, elements, enhancement,
    exposure_limits, flask, gases, glassware, henry, nasa9, over_water, oxides, peroxide, phase_transitions,
    products_in_water, sources, thermochemistry, vapour, water, water_ionisation,
};

/// Every entry of `reference/`.
pub(super) fn data() -> Vec<Entry> {
    let mut entries: Vec<Entry> = CONSTANTS.iter().copied().map(constant).collect();
    entries.extend(water::SATURATION_1992.iter().map(|coefficient| Entry {
        kind: Kind::Coefficient,
        range: "273.16 to 647.096 K".to_owned(),
        ..constant(coefficient)
    }));
    entries.extend(of_water());
    entries.extend(of_vapour());
    entries.extend(of_pressure());
    entries.extend(of_gases());
    entries.extend(of_solutions());
    entries.extend(of_the_flask());
    entries.extend(of_tables());
    entries
}

static CONSTANTS: [&crate::scalar::Constant; 28] = [
    &constants::MOLAR_GAS_2019,
    &constants::MOLAR_GAS_CLASSROOM,
    &constants::STANDARD_GRAVITY_1901,
    &constants::STANDARD_ATMOSPHERE_1954,
    &constants::STANDARD_PRESSURE_1982,
    &constants::ICE_POINT_1954,
    &constants::ROOM_MOLAR_VOLUME,
    &constants::AIR_NOT_OXYGEN,
    &constants::OXYGEN_VISCOSITY,
    &constants::WATER_SURFACE_TENSION,
    &constants::AIR_MOLAR_MASS_1975,
    &constants::MERCURY_DENSITY,
    &water::CRITICAL_TEMPERATURE_1992,
    &water::CRITICAL_PRESSURE_1992,
    &water::WATER_MOLAR_MASS_2021,
    &atmosphere::SEA_LEVEL_TEMPERATURE_1975,
    &atmosphere::LAPSE_RATE_1975,
    &atmosphere::PRESSURE_EXPONENT_1975,
    &atmosphere::EARTH_RADIUS_1975,
    &earth::BRASS_EXPANSION,
    &earth::REDUCTION_WMO,
    &peroxide::MOLAR_MASS_2021,
    &peroxide::DECOMPOSITION_HEAT_1982,
    &peroxide::DECOMPOSITION_HEAT_LIQUID,
    &peroxide::SPECIFIC_HEAT,
    &davies::DAVIES_A_1962,
    &davies::DAVIES_LINEAR_1962,
    &davies::DAVIES_GREATEST_1962,
];

fn of_water() -> Vec<Entry> {
    let if97 = "273.15 to 647.096 K; start of the inverse only";
    let sr1 = "273.16 to 647.096 K";
    let sr6 = "253.15 to 383.15 K, 0.1 MPa";
    let tanaka = "0 to 40 degC, 101.325 kPa";
    [
        coefficients(
            "backward_saturation_1997",
            "coefficient of the backward saturation equation",
            &water::BACKWARD_SATURATION_1997,
            &[""],
            if97,
            &sources::IAPWS_IF97,
        ),
        coefficients(
            "density_1975",
            "coefficient of Kell's numerator",
            &water::DENSITY_1975,
            &["kg/m3", "kg/(m3 degC)", "kg/(m3 degC2)", "kg/(m3 degC3)", "kg/(m3 degC4)", "kg/(m3 degC5)"],
            "0 to 150 degC, 101.325 kPa",
            &sources::KELL_1975,
        ),
        coefficients(
            "density_1975_b",
            "coefficient of Kell's denominator",
            &[water::DENSITY_1975_B],
            &["1/degC"],
            "0 to 150 degC, 101.325 kPa",
            &sources::KELL_1975,
        ),
        coefficients(
            "critical_density_1992",
            "critical density of water",
            &[water::CRITICAL_DENSITY_1992],
            &["kg/m3"],
            sr1,
            &sources::IAPWS_SR1_86_LIQUID,
        ),
        coefficients(
            "saturated_liquid_1992",
            "coefficient of the density of the saturated liquid",
            &water::SATURATED_LIQUID_1992,
            &[""],
            sr1,
            &sources::IAPWS_SR1_86_LIQUID,
        ),
        coefficients(
            "saturated_vapour_1992",
            "coefficient of the density of the saturated vapour",
            &water::SATURATED_VAPOUR_1992,
            &[""],
            sr1,
            &sources::IAPWS_SR1_86_VAPOUR,
        ),
        coefficients(
            "volume_2008_reducing",
            "gas constant of water, reducing temperature and pressure",
            &water::VOLUME_2008_REDUCING,
            &["J/(kg K)", "K", "Pa"],
            sr6,
            &sources::IAPWS_SR6_08,
        ),
        coefficients(
            "volume_2008_poles",
            "pole of the volume equation",
            &water::VOLUME_2008_POLES,
            &["K"],
            sr6,
            &sources::IAPWS_SR6_08,
        ),
        coefficients(
            "volume_2008_a",
            "coefficient a of the volume equation",
            &water::VOLUME_2008_A,
            &[""],
            sr6,
            &sources::IAPWS_SR6_08,
        ),
        coefficients(
            "volume_2008_b",
            "coefficient b of the volume equation",
            &water::VOLUME_2008_B,
            &[""],
            sr6,
            &sources::IAPWS_SR6_08,
        ),
        coefficients(
            "density_2001",
            "coefficient of Tanaka's density",
            &water::DENSITY_2001,
            &["degC", "degC", "degC2", "degC", "kg/m3"],
            tanaka,
            &sources::TANAKA_2001,
        ),
        coefficients(
            "dissolved_air_2001",
            "what dissolved air adds to the density",
            &water::DISSOLVED_AIR_2001,
            &["kg/m3", "kg/(m3 degC)"],
            "0 to 25 degC",
            &sources::TANAKA_2001,
        ),
        coefficients(
            "compressibility_2001",
            "coefficient of the compressibility",
            &water::COMPRESSIBILITY_2001,
            &["1/Pa", "1/(Pa degC)", "1/(Pa degC2)"],
            tanaka,
            &sources::TANAKA_2001,
        ),
    ]
    .concat()
}

fn of_vapour() -> Vec<Entry> {
    let [greenspan_a, greenspan_b] = enhancement::GREENSPAN_1976;
    let [hardy_a, hardy_b] = enhancement::HARDY_1998;
    let powers = ["", "1/degC", "1/degC2", "1/degC3"];
    let sublimation: Vec<f64> = vapour::SUBLIMATION_2008.iter().flat_map(|(a, b)| [*a, *b]).collect();
    [
        coefficients(
            "hyland_wexler_1983",
            "coefficient of the vapour pressure",
            &vapour::HYLAND_WEXLER_1983,
            &["K", "", "1/K", "1/K2", "1/K3", ""],
            "0 to 200 degC",
            &sources::HYLAND_WEXLER_1983,
        ),
        coefficients(
            "buck_1981",
            "coefficient of the vapour pressure",
            &vapour::BUCK_1981,
            &["Pa", "", "degC"],
            "0 to 50 degC",
            &sources::BUCK_1981,
        ),
        coefficients(
            "buck_1996",
            "coefficient of the vapour pressure",
            &vapour::BUCK_1996,
            &["Pa", "", "degC", "degC"],
            "0 to 60 degC",
            &sources::BUCK_1996,
        ),
        coefficients(
            "magnus_wmo_2008",
            "coefficient of the vapour pressure",
            &vapour::MAGNUS_WMO_2008,
            &["Pa", "", "degC"],
            "0 to 50 degC",
            &sources::MAGNUS_WMO,
        ),
        coefficients(
            "antoine",
            "coefficient of the vapour pressure",
            &vapour::ANTOINE,
            &["", "degC", "degC"],
            "1 to 100 degC",
            &sources::ANTOINE,
        ),
        coefficients(
            "cipm_2007",
            "coefficient of the vapour pressure",
            &vapour::CIPM_2007,
            &["1/K2", "1/K", "", "K"],
            "0 to 30 degC",
            &sources::CIPM_2007,
        ),
        coefficients(
            "triple_point_2008",
            "triple point of water",
            &vapour::TRIPLE_POINT_2008,
            &["K", "Pa"],
            "",
            &sources::IAPWS_R14_08,
        ),
        coefficients(
            "sublimation_2008",
            "coefficient and power of the sublimation pressure",
            &sublimation,
            &[""],
            "50 to 273.16 K",
            &sources::IAPWS_R14_08,
        ),
        coefficients(
            "enhancement_greenspan_1976_a",
            "coefficient A of the enhancement factor",
            &greenspan_a,
            &powers,
            "0 to 100 degC",
            &sources::GREENSPAN_1976,
        ),
        coefficients(
            "enhancement_greenspan_1976_b",
            "coefficient B of the enhancement factor",
            &greenspan_b,
            &powers,
            "0 to 100 degC",
            &sources::GREENSPAN_1976,
        ),
        coefficients(
            "enhancement_hardy_1998_a",
            "coefficient A of the enhancement factor",
            &hardy_a,
            &powers,
            "0 to 100 degC",
            &sources::HARDY_1998,
        ),
        coefficients(
            "enhancement_hardy_1998_b",
            "coefficient B of the enhancement factor",
            &hardy_b,
            &powers,
            "0 to 100 degC",
            &sources::HARDY_1998,
        ),
        coefficients(
            "enhancement_buck_1996",
            "coefficient of the enhancement factor",
            &enhancement::BUCK_1996,
            &["", "1/hPa", "1/(hPa degC2)"],
            "",
            &sources::BUCK_1996,
        ),
        coefficients(
            "enhancement_cipm_2007",
            "coefficient of the enhancement factor",
            &enhancement::CIPM_2007,
            &["", "1/Pa", "1/degC2"],
            "5 to 30 degC, 60 to 110 kPa",
            &sources::CIPM_2007,
        ),
        coefficients(
            "brine_saturated_crc",
            "coefficient of the humidity over saturated brine",
            &brine::SATURATED_CRC,
            &["%", "K"],
            "10 to 40 degC",
            &sources::CRC_BRINE,
        ),
        coefficients(
            "brine_saturated_greenspan_1977",
            "coefficient of the humidity over saturated brine",
            &brine::SATURATED_GREENSPAN_1977,
            &["%", "%/degC", "%/degC2", "%/degC3"],
            "0 to 80 degC",
            &sources::GREENSPAN_1977,
        ),
    ]
    .concat()
}

fn of_pressure() -> Vec<Entry> {
    let wgs = |id, name, value: f64, unit| coefficients(id, name, &[value], &[unit], "", &sources::WGS_84);
    [
        wgs("equatorial_gravity_1984", "gravity at the equator", earth::EQUATORIAL_GRAVITY_1984, "m/s2"),
        wgs("gravity_1984_k", "constant k of the gravity formula", earth::GRAVITY_1984_K, ""),
        wgs("eccentricity_squared_1984", "square of the eccentricity", earth::ECCENTRICITY_SQUARED_1984, ""),
        wgs("semi_major_axis_1984", "semi-major axis of the Earth", earth::SEMI_MAJOR_AXIS_1984, "m"),
        wgs("flattening_1984", "flattening of the Earth", earth::FLATTENING_1984, ""),
        wgs("gravity_1984_m", "constant m of the gravity formula", earth::GRAVITY_1984_M, ""),
        coefficients(
            "gravity_1980",
            "coefficient of the gravity formula of 1980",
            &earth::GRAVITY_1980,
            &["m/s2", "", ""],
            "",
            &sources::IGF_1980,
        ),
        coefficients(
            "mercury_1994",
            "density of mercury at 20 degC and its expansion",
            &earth::MERCURY_1994,
            &["kg/m3", "1/degC", "1/degC2"],
            "0 to 100 degC",
            &sources::SOMMER_1994,
        ),
        coefficients(
            "vapour_term_wmo",
            "what vapour adds to the temperature of the air column",
            &[earth::VAPOUR_TERM_WMO],
            &["K/hPa"],
            "stations below 750 m",
            &sources::WMO_8,
        ),
    ]
    .concat()
}

fn of_gases() -> Vec<Entry> {
    let fitted = "273.15 to 373.15 K";
    let mut entries = Vec::new();
    for virial in &gases::SECOND_VIRIALS_2026 {
        for (index, value) in virial.coefficients.iter().enumerate() {
            entries.push(Entry {
                kind: Kind::Coefficient,
                id: format!(
                    "second_virials_2026_{}_{}",
                    virial.gas.name().replace([' ', '-'], "_"),
                    index + 1
                ),
                symbol: String::new(),
                name: format!("coefficient of the second virial coefficient of {}", virial.gas.name()),
                value: Some(*value),
                unit: "cm3/mol".to_owned(),
                standard_uncertainty: None,
                range: fitted.to_owned(),
                source: virial.source,
            });
        }
    }
    let air_water: Vec<f64> = gases::AIR_WATER_VIRIAL_2010.iter().flat_map(|(c, d)| [*c, *d]).collect();
    entries.extend(coefficients(
        "water_virial_1995",
        "coefficient of the second virial coefficient of water vapour",
        &gases::WATER_VIRIAL_1995,
        &["cm3/mol"],
        fitted,
        &sources::COOLPROP_8,
    ));
    entries.extend(coefficients(
        "air_water_virial_2010",
        "coefficient and power of the second virial coefficient of water with air",
        &air_water,
        &["cm3/mol", ""],
        "130 to 2000 K",
        &sources::IAPWS_G8_10,
    ));
    entries.push(table(
        "water_cross_estimates",
        format!(
            "second virial coefficients of water with {} gases, estimates",
            gases::WATER_CROSS_ESTIMATES.len()
        ),
        "cm3/mol",
        "near 20 degC".to_owned(),
        &sources::CROSS_VIRIALS_MEMORY,
    ));
    entries.push(table(
        "gases_2021",
        format!("names, formulas and molar masses of {} gases", gases::GASES_2021.len()),
        "g/mol",
        String::new(),
        &sources::CIAAW_2021,
    ));
    entries.push(table(
        "over_water",
        format!(
            "what may be collected over water and what not, and why, {} gases",
            over_water::OVER_WATER.len()
        ),
        "",
        String::new(),
        &sources::COMMON_PRACTICE,
    ));
    entries
}

fn of_solutions() -> Vec<Entry> {
    let benson = |id, name, values: &[f64], units: &[&'static str]| {
        coefficients(id, name, values, units, "0 to 40 degC", &sources::BENSON_KRAUSE_1984)
    };
    let mut entries = [
        coefficients(
            "water_molar_mass_2004",
            "molar mass of water in Henry's constant",
            &[henry::WATER_MOLAR_MASS_2004],
            &["kg/mol"],
            "",
            &sources::IAPWS_G7_04,
        ),
        coefficients(
            "oxygen_henry_1979",
            "coefficient of Henry's constant of oxygen",
            &henry::OXYGEN_HENRY_1979,
            &["", "K", "K2"],
            "0 to 60 degC",
            &sources::BENSON_KRAUSE_1979,
        ),
        benson(
            "oxygen_saturation_1984",
            "coefficient of dissolved oxygen under moist air",
            &henry::OXYGEN_SATURATION_1984,
            &["", "K", "K2", "K3", "K4"],
        ),
        benson(
            "oxygen_salinity_1984",
            "coefficient of the salinity",
            &henry::OXYGEN_SALINITY_1984,
            &["", "K", "K2"],
        ),
        benson(
            "oxygen_theta_1984",
            "coefficient of the pressure term",
            &henry::OXYGEN_THETA_1984,
            &["1/atm", "1/(atm degC)", "1/(atm degC2)"],
        ),
        benson(
            "oxygen_vapour_1984",
            "coefficient of the vapour term",
            &henry::OXYGEN_VAPOUR_1984,
            &["", "K", "K2"],
        ),
        coefficients(
            "peroxide_density_2009",
            "coefficient of the density of peroxide solutions",
            &peroxide::DENSITY_2009,
            &["kg/m3", "kg/m3", "", "1/degC", "degC"],
            "0 to 96 degC, mass fraction 0 to 0.996",
            &sources::LALIBERTE_2009,
        ),
        coefficients(
            "molar_gas_of_the_fit",
            "gas constant that the NASA Glenn coefficients were fitted with",
            &[nasa9::MOLAR_GAS_OF_THE_FIT],
            &["J/(mol K)"],
            "",
            &sources::NASA_GLENN_2002,
        ),
    ]
    .concat();
    for (id, ionisation) in [
        ("ionisation_2024", &water_ionisation::IONISATION_2024),
        ("ionisation_2007", &water_ionisation::IONISATION_2007),
    ] {
        let values: Vec<f64> = ionisation
            .alpha
            .iter()
            .chain(&ionisation.beta)
            .chain(&ionisation.gamma)
            .chain([&ionisation.hydration_number, &ionisation.molar_mass_g_per_mol])
            .copied()
            .collect();
        let units = ["", "K", "K2", "", "K", "", "", "K", "K2", "K3", "", "g/mol"];
        let name = "coefficient of the ionisation of water";
        entries.extend(coefficients(id, name, &values, &units, "0 to 800 degC", ionisation.source));
    }
    entries
}

fn of_the_flask() -> Vec<Entry> {
    let memory = &sources::HANDBOOK_MEMORY;
    let one = |id, name, value: f64, unit, source| coefficients(id, name, &[value], &[unit], "", source);
    [
        one(
            "water_volume",
            "molar volume of water, 18.015/0.9982",
            flask::WATER_VOLUME,
            "m3/mol",
            &sources::KELL_1975,
        ),
        one(
            "peroxide_volume",
            "molar volume of peroxide, 34.014/1.45",
            flask::PEROXIDE_VOLUME,
            "m3/mol",
            memory,
        ),
        one("water_heat", "heat capacity of water, 4.18 x 18.015", flask::WATER_HEAT, "J/(mol K)", memory),
        one("gas_heat", "heat capacity of oxygen and nitrogen", flask::GAS_HEAT, "J/(mol K)", memory),
        one("vapour_heat", "heat capacity of water vapour", flask::VAPOUR_HEAT, "J/(mol K)", memory),
        one(
            "vaporisation",
            "heat of vaporisation at 25 degC",
            flask::VAPORISATION,
            "J/mol",
            &sources::CODATA_KEY_1989,
        ),
        one(
            "heat_zero",
            "temperature that heats are counted from",
            flask::HEAT_ZERO,
            "K",
            &sources::DEFINITION,
        ),
        one("blasius", "coefficient of Blasius' friction", flask::BLASIUS, "", memory),
        one(
            "oxygen_molar_mass",
            "molar mass of oxygen",
            flask::OXYGEN_MOLAR_MASS,
            "kg/mol",
            &sources::CIAAW_2021,
        ),
        one(
            "stated_at",
            "temperature that rate constants are stated for",
            flask::STATED_AT_K,
            "K",
            &sources::DEFINITION,
        ),
        vec![
            table(
                "activation_ranges",
                format!(
                    "activation energies as they are cited, {} catalysts, each with its source",
                    ACTIVATION_RANGES.len()
                ),
                "kJ/mol",
                String::new(),
                memory,
            ),
            table(
                "typical_manganese_dioxide",
                "typical activity of manganese dioxide: bottles differ by a factor of two".to_owned(),
                "",
                "20 degC".to_owned(),
                &sources::COMMON_PRACTICE,
            ),
        ],
    ]
    .concat()
}

fn of_tables() -> Vec<Entry> {
    let glass = |id, name: &str, pieces: &[glassware::Glass]| {
        let pieces: Vec<String> =
            pieces.iter().map(|(volume, tolerance)| format!("{volume} ± {tolerance}")).collect();
        table(id, format!("{name}: {}", pieces.join(", ")), "cm3", String::new(), &sources::GLASSWARE)
    };
    vec![
        glass("pipettes", "one-mark pipettes of class B", &glassware::PIPETTES),
        glass("flasks", "volumetric flasks of class B", &glassware::FLASKS),
        glass("aliquots", "aliquots for a titration", &glassware::ALIQUOTS),
        table(
            "titre_tolerance",
            format!("tolerance of a titre, two readings of 0.05: {}", glassware::TITRE_TOLERANCE_CM3),
            "cm3",
            String::new(),
            &sources::GLASSWARE,
        ),
        table(
            "standard_atomic_weights_2024",
            format!(
                "standard atomic weights (interval or value with uncertainty, abridged, conventional), {} elements",
                elements::STANDARD_ATOMIC_WEIGHTS_2024.len()
            ),
            "",
            String::new(),
            &sources::CIAAW_2021,
        ),
        printed("crc_1992", "vapour pressure of water", &vapour::CRC_1992),
        printed("openstax_2019", "vapour pressure of water", &vapour::OPENSTAX_2019),
        printed("brine_saturated_density", "density of saturated brine", &brine::SATURATED_DENSITY),
        table(
            "enhancement_at_20_degrees",
            format!("enhancement in single gases, {} gases", enhancement::AT_20_DEGREES.len()),
            "",
            "20 degC, 101.325 kPa".to_owned(),
            &sources::CROSS_VIRIALS_MEMORY,
        ),
        table(
            "henry_2004",
            format!("coefficients of Henry's constant, {} gases", henry::HENRY_2004.len()),
            "",
            "each gas its own".to_owned(),
            &sources::IAPWS_G7_04,
        ),
        table(
            "henry_2015",
            format!(
                "Henry's constants at 25 degC with their temperature dependence, {} gases",
                henry::HENRY_2015.len()
            ),
            "mol/(m3 Pa)",
            "0 to 50 degC".to_owned(),
            &sources::SANDER_2015,
        ),
        table(
            "salting_out_gases_1993",
            format!("salting-out parameters, {} gases", henry::SALTING_OUT_GASES_1993.len()),
            "dm3/mol",
            "25 degC".to_owned(),
            &sources::SCHUMPE_1993,
        ),
        table(
            "salting_out_ions_1993",
            format!("salting-out parameters, {} ions", henry::SALTING_OUT_IONS_1993.len()),
            "dm3/mol",
            "25 degC".to_owned(),
            &sources::SCHUMPE_1993,
        ),
        table(
            "species_2002",
            format!("coefficients of cp, H and S, {} species", nasa9::SPECIES_2002.len()),
            "",
            "each species its own".to_owned(),
            &sources::NASA_GLENN_2002,
        ),
        table(
            "standard_states_298",
            format!(
                "enthalpy of formation, entropy and heat capacity, {} substances, each row with its own source",
                thermochemistry::STANDARD_STATES_298.len()
            ),
            "",
            "298.15 K".to_owned(),
            &sources::CRC_THERMOCHEMISTRY,
        ),
        table(
            "phase_transitions",
            format!("melting and boiling points, {} substances", phase_transitions::PHASE_TRANSITIONS.len()),
            "K",
            "101.325 kPa".to_owned(),
            &sources::CRC_PHYSICAL_CONSTANTS,
        ),
        table(
            "equilibrium_constants_25c",
            format!(
                "pK of acids and bases, {} equilibria, each row with its own source",
                acids::EQUILIBRIUM_CONSTANTS_25C.len()
            ),
            "",
            "25 degC, ionic strength 0".to_owned(),
            &sources::CRC_ACIDS,
        ),
        table(
            "exposure_limits",
            format!(
                "exposure limits, {} rows, each with country, document and edition, {} of them read in their source",
                exposure_limits::EXPOSURE_LIMITS.len(),
                exposure_limits::EXPOSURE_LIMITS.iter().filter(|limit| limit.verified).count()
            ),
            "",
            String::new(),
            &sources::EXPOSURE_DOCUMENTS,
        ),
        table(
            "airborne",
            format!("products that get into the air, {} products", airborne::AIRBORNE.len()),
            "",
            String::new(),
            &sources::EXPOSURE_DOCUMENTS,
        ),
        table(
            "products_in_water",
            format!(
                "what the product of a burn becomes in water, {} products",
                products_in_water::PRODUCTS_IN_WATER.len()
            ),
            "",
            String::new(),
            &sources::STOICHIOMETRY,
        ),
        table(
            "universal_indicator",
            format!(
                "colours of universal indicator by pH, {} ranges",
                products_in_water::UNIVERSAL_INDICATOR.len()
            ),
            "",
            String::new(),
            &sources::COMMON_PRACTICE,
        ),
        table(
            "litmus",
            format!("colours of litmus by pH, {} ranges", products_in_water::LITMUS.len()),
            "",
            String::new(),
            &sources::COMMON_PRACTICE,
        ),
        table(
            "burns",
            format!(
                "samples burned in a jar: usual masses, oxygen wanted, {} samples; a splint relights with certainty \
                 from {} oxygen, most flames go out below {}",
                burns::BURNS.len(),
                burns::SPLINT_FRACTION,
                burns::FLAME_LIMIT_FRACTION
            ),
            "",
            String::new(),
            &sources::COMMON_PRACTICE,
        ),
        table(
            "oxides",
            format!("what elements make when they burn, {} elements", oxides::OXIDES.len()),
            "",
            String::new(),
            &sources::OXIDES_OPENSTAX,
        ),
        table(
            "liquid_fuels_298",
            format!(
                "enthalpy of formation and heat capacity, {} fuels without entropy",
                oxides::LIQUID_FUELS_298.len()
            ),
            "",
            "298.15 K".to_owned(),
            &sources::CRC_THERMOCHEMISTRY,
        ),
        table(
            "acid_gases",
            format!("gases that water or dilute alkali takes up, {}", oxides::ACID_GASES.join(", ")),
            "",
            String::new(),
            &sources::COMMON_PRACTICE,
        ),
        table(
            "fuel_names",
            format!("other names of what burns, {} names", oxides::FUEL_NAMES.len()),
            "",
            String::new(),
            &sources::COMMON_PRACTICE,
        ),
    ]
}
