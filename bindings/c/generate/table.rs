//! Every formula of the catalogue, the file that its C functions stand in, and how it is made in Rust.

/// A formula without a choice of gas: file, name in the catalogue, its value in Rust, since which version.
pub(crate) struct Plain(
    pub(crate) &'static str,
    pub(crate) &'static str,
    pub(crate) &'static str,
    pub(crate) &'static str,
);

/// A formula of a gas: name in the catalogue up to the gas, its maker in Rust, since which version.
pub(crate) struct OfGas(pub(crate) &'static str, pub(crate) &'static str, pub(crate) &'static str);

/// What each file is about.
pub(crate) const FILES: [(&str, &str); 8] = [
    ("barometer", "Barometers, altitude, gravity."),
    ("brine", "Brine: humidity over it, its vapour pressure and density."),
    ("collected", "Gas collected over water, and what dissolves in the water."),
    ("column", "The pressure of a column of liquid."),
    ("peroxide", "Hydrogen peroxide: strength, dilution, assay, heat, density."),
    ("room", "A gas in the air of a room."),
    ("vapour", "The vapour pressure of water and of ice."),
    ("water", "Water: density, moist air above it, ionisation."),
];

pub(crate) const PLAIN: &[Plain] = &[
    Plain("vapour", "vapour_pressure", "water::vapour::VapourPressure { supercooled: false }", "0.1.0"),
    Plain(
        "vapour",
        "vapour_pressure_cipm_2007",
        "water::vapour::VapourPressureFrom { source: water::vapour::VapourSource::Cipm2007 }",
        "0.1.0",
    ),
    Plain(
        "vapour",
        "vapour_pressure_hyland_wexler_1983",
        "water::vapour::VapourPressureFrom { source: water::vapour::VapourSource::HylandWexler1983 }",
        "0.1.0",
    ),
    Plain(
        "vapour",
        "vapour_pressure_buck_1981",
        "water::vapour::VapourPressureFrom { source: water::vapour::VapourSource::Buck1981 }",
        "0.1.0",
    ),
    Plain(
        "vapour",
        "vapour_pressure_buck_1996",
        "water::vapour::VapourPressureFrom { source: water::vapour::VapourSource::Buck1996 }",
        "0.1.0",
    ),
    Plain(
        "vapour",
        "vapour_pressure_magnus_wmo",
        "water::vapour::VapourPressureFrom { source: water::vapour::VapourSource::MagnusWmo }",
        "0.1.0",
    ),
    Plain(
        "vapour",
        "vapour_pressure_antoine",
        "water::vapour::VapourPressureFrom { source: water::vapour::VapourSource::Antoine }",
        "0.1.0",
    ),
    Plain(
        "vapour",
        "vapour_pressure_crc_1992",
        "water::vapour::VapourPressureFrom { source: water::vapour::VapourSource::Crc1992 }",
        "0.1.0",
    ),
    Plain(
        "vapour",
        "vapour_pressure_openstax_2019",
        "water::vapour::VapourPressureFrom { source: water::vapour::VapourSource::OpenStax2019 }",
        "0.1.0",
    ),
    Plain("vapour", "saturation_temperature", "water::vapour::SaturationTemperature", "0.1.0"),
    Plain("vapour", "sublimation_pressure", "water::vapour::ice::SublimationPressure", "0.1.0"),
    Plain("water", "water_density", "water::density::WaterDensity", "0.1.0"),
    Plain(
        "water",
        "water_density_kell_1975",
        "water::density::WaterDensityFrom { source: water::density::DensitySource::Kell1975 }",
        "0.1.0",
    ),
    Plain(
        "water",
        "water_density_tanaka",
        "water::density::tanaka::TanakaDensity { air_saturated: false }",
        "0.1.0",
    ),
    Plain(
        "water",
        "water_density_tanaka_air_saturated",
        "water::density::tanaka::TanakaDensity { air_saturated: true }",
        "0.1.0",
    ),
    Plain("water", "saturated_liquid_density", "water::saturated::SaturatedLiquidDensity", "0.1.0"),
    Plain("water", "saturated_vapour_density", "water::saturated::SaturatedVapourDensity", "0.1.0"),
    Plain(
        "water",
        "enhancement_factor_greenspan_1976",
        "water::enhancement::EnhancementFactor { source: water::enhancement::EnhancementSource::Greenspan1976 }",
        "0.1.0",
    ),
    Plain(
        "water",
        "enhancement_factor_hardy_1998",
        "water::enhancement::EnhancementFactor { source: water::enhancement::EnhancementSource::Hardy1998 }",
        "0.1.0",
    ),
    Plain(
        "water",
        "enhancement_factor_buck_1996",
        "water::enhancement::EnhancementFactor { source: water::enhancement::EnhancementSource::Buck1996 }",
        "0.1.0",
    ),
    Plain(
        "water",
        "enhancement_factor_cipm_2007",
        "water::enhancement::EnhancementFactor { source: water::enhancement::EnhancementSource::Cipm2007 }",
        "0.1.0",
    ),
    Plain(
        "water",
        "vapour_pressure_in_air",
        "water::enhancement::VapourPressureInAir { source: water::enhancement::EnhancementSource::Greenspan1976 }",
        "0.1.0",
    ),
    Plain("water", "pkw", "water::ionisation::Pkw", "0.1.0"),
    Plain(
        "brine",
        "brine_humidity",
        "water::brine::SaturatedBrineHumidity { source: water::brine::BrineSource::Crc }",
        "0.1.0",
    ),
    Plain(
        "brine",
        "brine_humidity_greenspan_1977",
        "water::brine::SaturatedBrineHumidity { source: water::brine::BrineSource::Greenspan1977 }",
        "0.1.0",
    ),
    Plain(
        "brine",
        "brine_vapour_pressure",
        "water::brine::SaturatedBrineVapourPressure { source: water::brine::BrineSource::Crc }",
        "0.1.0",
    ),
    Plain(
        "brine",
        "brine_vapour_pressure_greenspan_1977",
        "water::brine::SaturatedBrineVapourPressure { source: water::brine::BrineSource::Greenspan1977 }",
        "0.1.0",
    ),
    Plain("brine", "dilute_brine_vapour_pressure", "water::brine::DiluteBrineVapourPressure", "0.1.0"),
    Plain("brine", "brine_density", "water::brine::SaturatedBrineDensity", "0.1.0"),
    Plain("collected", "molar_volume", "gas::ideal::IdealMolarVolume", "0.1.0"),
    Plain("barometer", "station_pressure", "gas::barometer::StationPressure", "0.1.0"),
    Plain("barometer", "sea_level_pressure", "gas::barometer::SeaLevelPressure", "0.1.0"),
    Plain("barometer", "low_level_station_pressure", "gas::low_level::LowLevelStationPressure", "0.1.0"),
    Plain("barometer", "low_level_sea_level_pressure", "gas::low_level::LowLevelSeaLevelPressure", "0.1.0"),
    Plain("barometer", "gravity", "gas::gravity::Gravity", "0.1.0"),
    Plain("barometer", "gravity_1980", "gas::gravity::Gravity1980", "0.1.0"),
    Plain("column", "mercury_density", "gas::column::MercuryDensity", "0.1.0"),
    Plain("column", "column_pressure", "gas::column::ColumnPressure", "0.1.0"),
    Plain("column", "column_height", "gas::column::ColumnHeight", "0.1.0"),
    Plain(
        "column",
        "water_column_pressure",
        "gas::column::ColumnPressureAt { liquid: gas::column::Liquid::Water }",
        "0.1.0",
    ),
    Plain(
        "column",
        "mercury_column_pressure",
        "gas::column::ColumnPressureAt { liquid: gas::column::Liquid::Mercury }",
        "0.1.0",
    ),
    Plain(
        "column",
        "conventional_mm_of_water",
        "gas::column::ConventionalColumnPressure { column: gas::column::ConventionalColumn::Water }",
        "0.1.0",
    ),
    Plain(
        "column",
        "conventional_mm_of_mercury",
        "gas::column::ConventionalColumnPressure { column: gas::column::ConventionalColumn::Mercury }",
        "0.1.0",
    ),
    Plain(
        "column",
        "torr",
        "gas::column::ConventionalColumnPressure { column: gas::column::ConventionalColumn::Torr }",
        "0.1.0",
    ),
    Plain(
        "barometer",
        "mercury_barometer_brass_scale",
        "gas::mercury_barometer::MercuryBarometer { scale: gas::mercury_barometer::Scale::Brass }",
        "0.1.0",
    ),
    Plain(
        "barometer",
        "mercury_barometer_true_scale",
        "gas::mercury_barometer::MercuryBarometer { scale: gas::mercury_barometer::Scale::True }",
        "0.1.0",
    ),
    Plain(
        "collected",
        "dry_amount",
        "gas::collected::DryAmount { conventions: conventions::Conventions::EXACT }",
        "0.1.0",
    ),
    Plain(
        "collected",
        "dry_amount_with_vapour",
        "gas::collected::DryAmountWithVapour { conventions: conventions::Conventions::EXACT }",
        "0.1.0",
    ),
    Plain("peroxide", "peroxide_concentration", "peroxide::strength::ConcentrationFromVolumes", "0.1.0"),
    Plain("peroxide", "stock_volume", "peroxide::dilution::StockVolume", "0.1.0"),
    Plain("peroxide", "assayed_concentration", "peroxide::assay::AssayedConcentration", "0.1.0"),
    Plain("peroxide", "expected_titre", "peroxide::assay::ExpectedTitre", "0.1.0"),
    Plain("peroxide", "adiabatic_rise", "peroxide::heat::AdiabaticRise", "0.1.0"),
    Plain("collected", "oxygen_fraction", "apparatus::purity::MeanOxygenFraction", "0.1.0"),
    Plain("peroxide", "peroxide_density", "peroxide::density::PeroxideDensity", "0.1.0"),
    Plain("peroxide", "concentration_from_mass", "peroxide::density::ConcentrationFromMass", "0.1.0"),
    Plain("peroxide", "mass_from_concentration", "peroxide::density::MassFromConcentration", "0.1.0"),
    Plain("room", "room_concentration", "burn::air::RoomConcentration", "0.1.0"),
    Plain("collected", "oxygen_saturation", "gas::solubility::OxygenSaturation", "0.1.0"),
];

pub(crate) const OF_GAS: &[OfGas] = &[
    OfGas("second_virial", "gas::virial::SecondVirialCoefficient::of", "0.1.0"),
    OfGas(
        "compressibility",
        "|gas| gas::virial::Compressibility::of(gas, gas::virial::Series::Density)",
        "0.1.0",
    ),
    OfGas(
        "real_molar_volume",
        "|gas| gas::virial::RealMolarVolume::of(gas, gas::virial::Series::Density)",
        "0.1.0",
    ),
    OfGas("gas_density", "|gas| gas::virial::RealDensity::of(gas, gas::virial::Series::Density)", "0.1.0"),
    OfGas("henry_constant", "gas::solubility::HenryConstant::of", "0.1.0"),
    OfGas("ostwald_coefficient", "gas::solubility::OstwaldCoefficient::of", "0.1.0"),
    OfGas("dissolved_amount", "gas::solubility::DissolvedAmount::of", "0.1.0"),
];
