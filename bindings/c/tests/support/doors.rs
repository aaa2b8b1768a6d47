//! Every formula of the catalogue behind its two C functions. Written by `cargo run -p overwater-c --example generate` from the catalogue of the core.

use super::door::*;
use overwater_c::elementwise::*;

pub(crate) fn doors() -> Vec<Door> {
    vec![
        plain1!(vapour_pressure, vapour::ow_vapour_pressure, vapour::ow_vapour_pressure_array),
        plain1!(
            vapour_pressure_cipm_2007,
            vapour::ow_vapour_pressure_cipm_2007,
            vapour::ow_vapour_pressure_cipm_2007_array
        ),
        plain1!(
            vapour_pressure_hyland_wexler_1983,
            vapour::ow_vapour_pressure_hyland_wexler_1983,
            vapour::ow_vapour_pressure_hyland_wexler_1983_array
        ),
        plain1!(
            vapour_pressure_buck_1981,
            vapour::ow_vapour_pressure_buck_1981,
            vapour::ow_vapour_pressure_buck_1981_array
        ),
        plain1!(
            vapour_pressure_buck_1996,
            vapour::ow_vapour_pressure_buck_1996,
            vapour::ow_vapour_pressure_buck_1996_array
        ),
        plain1!(
            vapour_pressure_magnus_wmo,
            vapour::ow_vapour_pressure_magnus_wmo,
            vapour::ow_vapour_pressure_magnus_wmo_array
        ),
        plain1!(
            vapour_pressure_antoine,
            vapour::ow_vapour_pressure_antoine,
            vapour::ow_vapour_pressure_antoine_array
        ),
        plain1!(
            vapour_pressure_crc_1992,
            vapour::ow_vapour_pressure_crc_1992,
            vapour::ow_vapour_pressure_crc_1992_array
        ),
        plain1!(
            vapour_pressure_openstax_2019,
            vapour::ow_vapour_pressure_openstax_2019,
            vapour::ow_vapour_pressure_openstax_2019_array
        ),
        plain1!(
            saturation_temperature,
            vapour::ow_saturation_temperature,
            vapour::ow_saturation_temperature_array
        ),
        plain1!(sublimation_pressure, vapour::ow_sublimation_pressure, vapour::ow_sublimation_pressure_array),
        plain1!(water_density, water::ow_water_density, water::ow_water_density_array),
        plain1!(
            water_density_kell_1975,
            water::ow_water_density_kell_1975,
            water::ow_water_density_kell_1975_array
        ),
        plain2!(water_density_tanaka, water::ow_water_density_tanaka, water::ow_water_density_tanaka_array),
        plain2!(
            water_density_tanaka_air_saturated,
            water::ow_water_density_tanaka_air_saturated,
            water::ow_water_density_tanaka_air_saturated_array
        ),
        plain1!(
            saturated_liquid_density,
            water::ow_saturated_liquid_density,
            water::ow_saturated_liquid_density_array
        ),
        plain1!(
            saturated_vapour_density,
            water::ow_saturated_vapour_density,
            water::ow_saturated_vapour_density_array
        ),
        plain2!(
            enhancement_factor_greenspan_1976,
            water::ow_enhancement_factor_greenspan_1976,
            water::ow_enhancement_factor_greenspan_1976_array
        ),
        plain2!(
            enhancement_factor_hardy_1998,
            water::ow_enhancement_factor_hardy_1998,
            water::ow_enhancement_factor_hardy_1998_array
        ),
        plain2!(
            enhancement_factor_buck_1996,
            water::ow_enhancement_factor_buck_1996,
            water::ow_enhancement_factor_buck_1996_array
        ),
        plain2!(
            enhancement_factor_cipm_2007,
            water::ow_enhancement_factor_cipm_2007,
            water::ow_enhancement_factor_cipm_2007_array
        ),
        plain2!(
            vapour_pressure_in_air,
            water::ow_vapour_pressure_in_air,
            water::ow_vapour_pressure_in_air_array
        ),
        plain1!(pkw, water::ow_pkw, water::ow_pkw_array),
        plain1!(brine_humidity, brine::ow_brine_humidity, brine::ow_brine_humidity_array),
        plain1!(
            brine_humidity_greenspan_1977,
            brine::ow_brine_humidity_greenspan_1977,
            brine::ow_brine_humidity_greenspan_1977_array
        ),
        plain1!(
            brine_vapour_pressure,
            brine::ow_brine_vapour_pressure,
            brine::ow_brine_vapour_pressure_array
        ),
        plain1!(
            brine_vapour_pressure_greenspan_1977,
            brine::ow_brine_vapour_pressure_greenspan_1977,
            brine::ow_brine_vapour_pressure_greenspan_1977_array
        ),
        plain3!(
            dilute_brine_vapour_pressure,
            brine::ow_dilute_brine_vapour_pressure,
            brine::ow_dilute_brine_vapour_pressure_array
        ),
        plain1!(brine_density, brine::ow_brine_density, brine::ow_brine_density_array),
        plain2!(molar_volume, collected::ow_molar_volume, collected::ow_molar_volume_array),
        plain2!(station_pressure, barometer::ow_station_pressure, barometer::ow_station_pressure_array),
        plain2!(sea_level_pressure, barometer::ow_sea_level_pressure, barometer::ow_sea_level_pressure_array),
        plain4!(
            low_level_station_pressure,
            barometer::ow_low_level_station_pressure,
            barometer::ow_low_level_station_pressure_array
        ),
        plain4!(
            low_level_sea_level_pressure,
            barometer::ow_low_level_sea_level_pressure,
            barometer::ow_low_level_sea_level_pressure_array
        ),
        plain2!(gravity, barometer::ow_gravity, barometer::ow_gravity_array),
        plain1!(gravity_1980, barometer::ow_gravity_1980, barometer::ow_gravity_1980_array),
        plain1!(mercury_density, column::ow_mercury_density, column::ow_mercury_density_array),
        plain3!(column_pressure, column::ow_column_pressure, column::ow_column_pressure_array),
        plain3!(column_height, column::ow_column_height, column::ow_column_height_array),
        plain3!(
            water_column_pressure,
            column::ow_water_column_pressure,
            column::ow_water_column_pressure_array
        ),
        plain3!(
            mercury_column_pressure,
            column::ow_mercury_column_pressure,
            column::ow_mercury_column_pressure_array
        ),
        plain1!(
            conventional_mm_of_water,
            column::ow_conventional_mm_of_water,
            column::ow_conventional_mm_of_water_array
        ),
        plain1!(
            conventional_mm_of_mercury,
            column::ow_conventional_mm_of_mercury,
            column::ow_conventional_mm_of_mercury_array
        ),
        plain1!(torr, column::ow_torr, column::ow_torr_array),
        plain3!(
            mercury_barometer_brass_scale,
            barometer::ow_mercury_barometer_brass_scale,
            barometer::ow_mercury_barometer_brass_scale_array
        ),
        plain3!(
            mercury_barometer_true_scale,
            barometer::ow_mercury_barometer_true_scale,
            barometer::ow_mercury_barometer_true_scale_array
        ),
        plain4!(dry_amount, collected::ow_dry_amount, collected::ow_dry_amount_array),
        plain5!(
            dry_amount_with_vapour,
            collected::ow_dry_amount_with_vapour,
            collected::ow_dry_amount_with_vapour_array
        ),
        plain3!(dry_pressure, collected::ow_dry_pressure, collected::ow_dry_pressure_array),
        plain4!(volume_over_water, collected::ow_volume_over_water, collected::ow_volume_over_water_array),
        plain2!(volume_strength, peroxide::ow_volume_strength, peroxide::ow_volume_strength_array),
        plain2!(
            peroxide_concentration,
            peroxide::ow_peroxide_concentration,
            peroxide::ow_peroxide_concentration_array
        ),
        plain3!(stock_volume, peroxide::ow_stock_volume, peroxide::ow_stock_volume_array),
        plain5!(
            assayed_concentration,
            peroxide::ow_assayed_concentration,
            peroxide::ow_assayed_concentration_array
        ),
        plain5!(expected_titre, peroxide::ow_expected_titre, peroxide::ow_expected_titre_array),
        plain3!(adiabatic_rise, peroxide::ow_adiabatic_rise, peroxide::ow_adiabatic_rise_array),
        plain3!(oxygen_fraction, collected::ow_oxygen_fraction, collected::ow_oxygen_fraction_array),
        plain2!(peroxide_density, peroxide::ow_peroxide_density, peroxide::ow_peroxide_density_array),
        plain2!(
            concentration_from_mass,
            peroxide::ow_concentration_from_mass,
            peroxide::ow_concentration_from_mass_array
        ),
        plain2!(
            mass_from_concentration,
            peroxide::ow_mass_from_concentration,
            peroxide::ow_mass_from_concentration_array
        ),
        plain6!(room_concentration, room::ow_room_concentration, room::ow_room_concentration_array),
        plain3!(oxygen_saturation, collected::ow_oxygen_saturation, collected::ow_oxygen_saturation_array),
        gas1!(second_virial_oxygen, 1, species::ow_second_virial, species::ow_second_virial_array),
        gas1!(second_virial_nitrogen, 2, species::ow_second_virial, species::ow_second_virial_array),
        gas1!(second_virial_air, 3, species::ow_second_virial, species::ow_second_virial_array),
        gas1!(second_virial_hydrogen, 4, species::ow_second_virial, species::ow_second_virial_array),
        gas1!(second_virial_carbon_dioxide, 5, species::ow_second_virial, species::ow_second_virial_array),
        gas1!(second_virial_carbon_monoxide, 6, species::ow_second_virial, species::ow_second_virial_array),
        gas1!(second_virial_methane, 7, species::ow_second_virial, species::ow_second_virial_array),
        gas1!(second_virial_ethane, 8, species::ow_second_virial, species::ow_second_virial_array),
        gas1!(second_virial_ethene, 9, species::ow_second_virial, species::ow_second_virial_array),
        gas1!(second_virial_ethyne, 10, species::ow_second_virial, species::ow_second_virial_array),
        gas1!(second_virial_propane, 11, species::ow_second_virial, species::ow_second_virial_array),
        gas1!(second_virial_butane, 12, species::ow_second_virial, species::ow_second_virial_array),
        gas1!(second_virial_dinitrogen_oxide, 13, species::ow_second_virial, species::ow_second_virial_array),
        gas1!(
            second_virial_nitrogen_monoxide,
            14,
            species::ow_second_virial,
            species::ow_second_virial_array
        ),
        gas1!(second_virial_sulfur_dioxide, 16, species::ow_second_virial, species::ow_second_virial_array),
        gas1!(second_virial_hydrogen_sulfide, 17, species::ow_second_virial, species::ow_second_virial_array),
        gas1!(
            second_virial_hydrogen_chloride,
            18,
            species::ow_second_virial,
            species::ow_second_virial_array
        ),
        gas1!(second_virial_ammonia, 19, species::ow_second_virial, species::ow_second_virial_array),
        gas1!(second_virial_chlorine, 20, species::ow_second_virial, species::ow_second_virial_array),
        gas1!(second_virial_helium, 22, species::ow_second_virial, species::ow_second_virial_array),
        gas1!(second_virial_argon, 24, species::ow_second_virial, species::ow_second_virial_array),
        gas2!(compressibility_oxygen, 1, species::ow_compressibility, species::ow_compressibility_array),
        gas2!(compressibility_nitrogen, 2, species::ow_compressibility, species::ow_compressibility_array),
        gas2!(compressibility_air, 3, species::ow_compressibility, species::ow_compressibility_array),
        gas2!(compressibility_hydrogen, 4, species::ow_compressibility, species::ow_compressibility_array),
        gas2!(
            compressibility_carbon_dioxide,
            5,
            species::ow_compressibility,
            species::ow_compressibility_array
        ),
        gas2!(
            compressibility_carbon_monoxide,
            6,
            species::ow_compressibility,
            species::ow_compressibility_array
        ),
        gas2!(compressibility_methane, 7, species::ow_compressibility, species::ow_compressibility_array),
        gas2!(compressibility_ethane, 8, species::ow_compressibility, species::ow_compressibility_array),
        gas2!(compressibility_ethene, 9, species::ow_compressibility, species::ow_compressibility_array),
        gas2!(compressibility_ethyne, 10, species::ow_compressibility, species::ow_compressibility_array),
        gas2!(compressibility_propane, 11, species::ow_compressibility, species::ow_compressibility_array),
        gas2!(compressibility_butane, 12, species::ow_compressibility, species::ow_compressibility_array),
        gas2!(
            compressibility_dinitrogen_oxide,
            13,
            species::ow_compressibility,
            species::ow_compressibility_array
        ),
        gas2!(
            compressibility_nitrogen_monoxide,
            14,
            species::ow_compressibility,
            species::ow_compressibility_array
        ),
        gas2!(
            compressibility_sulfur_dioxide,
            16,
            species::ow_compressibility,
            species::ow_compressibility_array
        ),
        gas2!(
            compressibility_hydrogen_sulfide,
            17,
            species::ow_compressibility,
            species::ow_compressibility_array
        ),
        gas2!(
            compressibility_hydrogen_chloride,
            18,
            species::ow_compressibility,
            species::ow_compressibility_array
        ),
        gas2!(compressibility_ammonia, 19, species::ow_compressibility, species::ow_compressibility_array),
        gas2!(compressibility_chlorine, 20, species::ow_compressibility, species::ow_compressibility_array),
        gas2!(compressibility_helium, 22, species::ow_compressibility, species::ow_compressibility_array),
        gas2!(compressibility_argon, 24, species::ow_compressibility, species::ow_compressibility_array),
        gas2!(
            real_molar_volume_oxygen,
            1,
            species::ow_real_molar_volume,
            species::ow_real_molar_volume_array
        ),
        gas2!(
            real_molar_volume_nitrogen,
            2,
            species::ow_real_molar_volume,
            species::ow_real_molar_volume_array
        ),
        gas2!(real_molar_volume_air, 3, species::ow_real_molar_volume, species::ow_real_molar_volume_array),
        gas2!(
            real_molar_volume_hydrogen,
            4,
            species::ow_real_molar_volume,
            species::ow_real_molar_volume_array
        ),
        gas2!(
            real_molar_volume_carbon_dioxide,
            5,
            species::ow_real_molar_volume,
            species::ow_real_molar_volume_array
        ),
        gas2!(
            real_molar_volume_carbon_monoxide,
            6,
            species::ow_real_molar_volume,
            species::ow_real_molar_volume_array
        ),
        gas2!(
            real_molar_volume_methane,
            7,
            species::ow_real_molar_volume,
            species::ow_real_molar_volume_array
        ),
        gas2!(
            real_molar_volume_ethane,
            8,
            species::ow_real_molar_volume,
            species::ow_real_molar_volume_array
        ),
        gas2!(
            real_molar_volume_ethene,
            9,
            species::ow_real_molar_volume,
            species::ow_real_molar_volume_array
        ),
        gas2!(
            real_molar_volume_ethyne,
            10,
            species::ow_real_molar_volume,
            species::ow_real_molar_volume_array
        ),
        gas2!(
            real_molar_volume_propane,
            11,
            species::ow_real_molar_volume,
            species::ow_real_molar_volume_array
        ),
        gas2!(
            real_molar_volume_butane,
            12,
            species::ow_real_molar_volume,
            species::ow_real_molar_volume_array
        ),
        gas2!(
            real_molar_volume_dinitrogen_oxide,
            13,
            species::ow_real_molar_volume,
            species::ow_real_molar_volume_array
        ),
        gas2!(
            real_molar_volume_nitrogen_monoxide,
            14,
            species::ow_real_molar_volume,
            species::ow_real_molar_volume_array
        ),
        gas2!(
            real_molar_volume_sulfur_dioxide,
            16,
            species::ow_real_molar_volume,
            species::ow_real_molar_volume_array
        ),
        gas2!(
            real_molar_volume_hydrogen_sulfide,
            17,
            species::ow_real_molar_volume,
            species::ow_real_molar_volume_array
        ),
        gas2!(
            real_molar_volume_hydrogen_chloride,
            18,
            species::ow_real_molar_volume,
            species::ow_real_molar_volume_array
        ),
        gas2!(
            real_molar_volume_ammonia,
            19,
            species::ow_real_molar_volume,
            species::ow_real_molar_volume_array
        ),
        gas2!(
            real_molar_volume_chlorine,
            20,
            species::ow_real_molar_volume,
            species::ow_real_molar_volume_array
        ),
        gas2!(
            real_molar_volume_helium,
            22,
            species::ow_real_molar_volume,
            species::ow_real_molar_volume_array
        ),
        gas2!(
            real_molar_volume_argon,
            24,
            species::ow_real_molar_volume,
            species::ow_real_molar_volume_array
        ),
        gas2!(gas_density_oxygen, 1, species::ow_gas_density, species::ow_gas_density_array),
        gas2!(gas_density_nitrogen, 2, species::ow_gas_density, species::ow_gas_density_array),
        gas2!(gas_density_air, 3, species::ow_gas_density, species::ow_gas_density_array),
        gas2!(gas_density_hydrogen, 4, species::ow_gas_density, species::ow_gas_density_array),
        gas2!(gas_density_carbon_dioxide, 5, species::ow_gas_density, species::ow_gas_density_array),
        gas2!(gas_density_carbon_monoxide, 6, species::ow_gas_density, species::ow_gas_density_array),
        gas2!(gas_density_methane, 7, species::ow_gas_density, species::ow_gas_density_array),
        gas2!(gas_density_ethane, 8, species::ow_gas_density, species::ow_gas_density_array),
        gas2!(gas_density_ethene, 9, species::ow_gas_density, species::ow_gas_density_array),
        gas2!(gas_density_ethyne, 10, species::ow_gas_density, species::ow_gas_density_array),
        gas2!(gas_density_propane, 11, species::ow_gas_density, species::ow_gas_density_array),
        gas2!(gas_density_butane, 12, species::ow_gas_density, species::ow_gas_density_array),
        gas2!(gas_density_dinitrogen_oxide, 13, species::ow_gas_density, species::ow_gas_density_array),
        gas2!(gas_density_nitrogen_monoxide, 14, species::ow_gas_density, species::ow_gas_density_array),
        gas2!(gas_density_sulfur_dioxide, 16, species::ow_gas_density, species::ow_gas_density_array),
        gas2!(gas_density_hydrogen_sulfide, 17, species::ow_gas_density, species::ow_gas_density_array),
        gas2!(gas_density_hydrogen_chloride, 18, species::ow_gas_density, species::ow_gas_density_array),
        gas2!(gas_density_ammonia, 19, species::ow_gas_density, species::ow_gas_density_array),
        gas2!(gas_density_chlorine, 20, species::ow_gas_density, species::ow_gas_density_array),
        gas2!(gas_density_helium, 22, species::ow_gas_density, species::ow_gas_density_array),
        gas2!(gas_density_argon, 24, species::ow_gas_density, species::ow_gas_density_array),
        gas1!(henry_constant_oxygen, 1, species::ow_henry_constant, species::ow_henry_constant_array),
        gas1!(henry_constant_nitrogen, 2, species::ow_henry_constant, species::ow_henry_constant_array),
        gas1!(henry_constant_hydrogen, 4, species::ow_henry_constant, species::ow_henry_constant_array),
        gas1!(henry_constant_carbon_dioxide, 5, species::ow_henry_constant, species::ow_henry_constant_array),
        gas1!(
            henry_constant_carbon_monoxide,
            6,
            species::ow_henry_constant,
            species::ow_henry_constant_array
        ),
        gas1!(henry_constant_methane, 7, species::ow_henry_constant, species::ow_henry_constant_array),
        gas1!(henry_constant_ethane, 8, species::ow_henry_constant, species::ow_henry_constant_array),
        gas1!(henry_constant_ethene, 9, species::ow_henry_constant, species::ow_henry_constant_array),
        gas1!(henry_constant_ethyne, 10, species::ow_henry_constant, species::ow_henry_constant_array),
        gas1!(henry_constant_propane, 11, species::ow_henry_constant, species::ow_henry_constant_array),
        gas1!(henry_constant_butane, 12, species::ow_henry_constant, species::ow_henry_constant_array),
        gas1!(
            henry_constant_dinitrogen_oxide,
            13,
            species::ow_henry_constant,
            species::ow_henry_constant_array
        ),
        gas1!(
            henry_constant_nitrogen_monoxide,
            14,
            species::ow_henry_constant,
            species::ow_henry_constant_array
        ),
        gas1!(
            henry_constant_nitrogen_dioxide,
            15,
            species::ow_henry_constant,
            species::ow_henry_constant_array
        ),
        gas1!(
            henry_constant_sulfur_dioxide,
            16,
            species::ow_henry_constant,
            species::ow_henry_constant_array
        ),
        gas1!(
            henry_constant_hydrogen_sulfide,
            17,
            species::ow_henry_constant,
            species::ow_henry_constant_array
        ),
        gas1!(henry_constant_ammonia, 19, species::ow_henry_constant, species::ow_henry_constant_array),
        gas1!(henry_constant_chlorine, 20, species::ow_henry_constant, species::ow_henry_constant_array),
        gas1!(henry_constant_ozone, 21, species::ow_henry_constant, species::ow_henry_constant_array),
        gas1!(henry_constant_helium, 22, species::ow_henry_constant, species::ow_henry_constant_array),
        gas1!(henry_constant_neon, 23, species::ow_henry_constant, species::ow_henry_constant_array),
        gas1!(henry_constant_argon, 24, species::ow_henry_constant, species::ow_henry_constant_array),
        gas1!(henry_constant_krypton, 25, species::ow_henry_constant, species::ow_henry_constant_array),
        gas1!(henry_constant_xenon, 26, species::ow_henry_constant, species::ow_henry_constant_array),
        gas1!(
            henry_constant_sulfur_hexafluoride,
            27,
            species::ow_henry_constant,
            species::ow_henry_constant_array
        ),
        gas1!(
            ostwald_coefficient_oxygen,
            1,
            species::ow_ostwald_coefficient,
            species::ow_ostwald_coefficient_array
        ),
        gas1!(
            ostwald_coefficient_nitrogen,
            2,
            species::ow_ostwald_coefficient,
            species::ow_ostwald_coefficient_array
        ),
        gas1!(
            ostwald_coefficient_hydrogen,
            4,
            species::ow_ostwald_coefficient,
            species::ow_ostwald_coefficient_array
        ),
        gas1!(
            ostwald_coefficient_carbon_dioxide,
            5,
            species::ow_ostwald_coefficient,
            species::ow_ostwald_coefficient_array
        ),
        gas1!(
            ostwald_coefficient_carbon_monoxide,
            6,
            species::ow_ostwald_coefficient,
            species::ow_ostwald_coefficient_array
        ),
        gas1!(
            ostwald_coefficient_methane,
            7,
            species::ow_ostwald_coefficient,
            species::ow_ostwald_coefficient_array
        ),
        gas1!(
            ostwald_coefficient_ethane,
            8,
            species::ow_ostwald_coefficient,
            species::ow_ostwald_coefficient_array
        ),
        gas1!(
            ostwald_coefficient_ethene,
            9,
            species::ow_ostwald_coefficient,
            species::ow_ostwald_coefficient_array
        ),
        gas1!(
            ostwald_coefficient_ethyne,
            10,
            species::ow_ostwald_coefficient,
            species::ow_ostwald_coefficient_array
        ),
        gas1!(
            ostwald_coefficient_propane,
            11,
            species::ow_ostwald_coefficient,
            species::ow_ostwald_coefficient_array
        ),
        gas1!(
            ostwald_coefficient_butane,
            12,
            species::ow_ostwald_coefficient,
            species::ow_ostwald_coefficient_array
        ),
        gas1!(
            ostwald_coefficient_dinitrogen_oxide,
            13,
            species::ow_ostwald_coefficient,
            species::ow_ostwald_coefficient_array
        ),
        gas1!(
            ostwald_coefficient_nitrogen_monoxide,
            14,
            species::ow_ostwald_coefficient,
            species::ow_ostwald_coefficient_array
        ),
        gas1!(
            ostwald_coefficient_nitrogen_dioxide,
            15,
            species::ow_ostwald_coefficient,
            species::ow_ostwald_coefficient_array
        ),
        gas1!(
            ostwald_coefficient_sulfur_dioxide,
            16,
            species::ow_ostwald_coefficient,
            species::ow_ostwald_coefficient_array
        ),
        gas1!(
            ostwald_coefficient_hydrogen_sulfide,
            17,
            species::ow_ostwald_coefficient,
            species::ow_ostwald_coefficient_array
        ),
        gas1!(
            ostwald_coefficient_ammonia,
            19,
            species::ow_ostwald_coefficient,
            species::ow_ostwald_coefficient_array
        ),
        gas1!(
            ostwald_coefficient_chlorine,
            20,
            species::ow_ostwald_coefficient,
            species::ow_ostwald_coefficient_array
        ),
        gas1!(
            ostwald_coefficient_ozone,
            21,
            species::ow_ostwald_coefficient,
            species::ow_ostwald_coefficient_array
        ),
        gas1!(
            ostwald_coefficient_helium,
            22,
            species::ow_ostwald_coefficient,
            species::ow_ostwald_coefficient_array
        ),
        gas1!(
            ostwald_coefficient_neon,
            23,
            species::ow_ostwald_coefficient,
            species::ow_ostwald_coefficient_array
        ),
        gas1!(
            ostwald_coefficient_argon,
            24,
            species::ow_ostwald_coefficient,
            species::ow_ostwald_coefficient_array
        ),
        gas1!(
            ostwald_coefficient_krypton,
            25,
            species::ow_ostwald_coefficient,
            species::ow_ostwald_coefficient_array
        ),
        gas1!(
            ostwald_coefficient_xenon,
            26,
            species::ow_ostwald_coefficient,
            species::ow_ostwald_coefficient_array
        ),
        gas1!(
            ostwald_coefficient_sulfur_hexafluoride,
            27,
            species::ow_ostwald_coefficient,
            species::ow_ostwald_coefficient_array
        ),
        gas3!(dissolved_amount_oxygen, 1, species::ow_dissolved_amount, species::ow_dissolved_amount_array),
        gas3!(dissolved_amount_nitrogen, 2, species::ow_dissolved_amount, species::ow_dissolved_amount_array),
        gas3!(dissolved_amount_hydrogen, 4, species::ow_dissolved_amount, species::ow_dissolved_amount_array),
        gas3!(
            dissolved_amount_carbon_dioxide,
            5,
            species::ow_dissolved_amount,
            species::ow_dissolved_amount_array
        ),
        gas3!(
            dissolved_amount_carbon_monoxide,
            6,
            species::ow_dissolved_amount,
            species::ow_dissolved_amount_array
        ),
        gas3!(dissolved_amount_methane, 7, species::ow_dissolved_amount, species::ow_dissolved_amount_array),
        gas3!(dissolved_amount_ethane, 8, species::ow_dissolved_amount, species::ow_dissolved_amount_array),
        gas3!(dissolved_amount_ethene, 9, species::ow_dissolved_amount, species::ow_dissolved_amount_array),
        gas3!(dissolved_amount_ethyne, 10, species::ow_dissolved_amount, species::ow_dissolved_amount_array),
        gas3!(dissolved_amount_propane, 11, species::ow_dissolved_amount, species::ow_dissolved_amount_array),
        gas3!(dissolved_amount_butane, 12, species::ow_dissolved_amount, species::ow_dissolved_amount_array),
        gas3!(
            dissolved_amount_dinitrogen_oxide,
            13,
            species::ow_dissolved_amount,
            species::ow_dissolved_amount_array
        ),
        gas3!(
            dissolved_amount_nitrogen_monoxide,
            14,
            species::ow_dissolved_amount,
            species::ow_dissolved_amount_array
        ),
        gas3!(
            dissolved_amount_nitrogen_dioxide,
            15,
            species::ow_dissolved_amount,
            species::ow_dissolved_amount_array
        ),
        gas3!(
            dissolved_amount_sulfur_dioxide,
            16,
            species::ow_dissolved_amount,
            species::ow_dissolved_amount_array
        ),
        gas3!(
            dissolved_amount_hydrogen_sulfide,
            17,
            species::ow_dissolved_amount,
            species::ow_dissolved_amount_array
        ),
        gas3!(dissolved_amount_ammonia, 19, species::ow_dissolved_amount, species::ow_dissolved_amount_array),
        gas3!(
            dissolved_amount_chlorine,
            20,
            species::ow_dissolved_amount,
            species::ow_dissolved_amount_array
        ),
        gas3!(dissolved_amount_ozone, 21, species::ow_dissolved_amount, species::ow_dissolved_amount_array),
        gas3!(dissolved_amount_helium, 22, species::ow_dissolved_amount, species::ow_dissolved_amount_array),
        gas3!(dissolved_amount_neon, 23, species::ow_dissolved_amount, species::ow_dissolved_amount_array),
        gas3!(dissolved_amount_argon, 24, species::ow_dissolved_amount, species::ow_dissolved_amount_array),
        gas3!(dissolved_amount_krypton, 25, species::ow_dissolved_amount, species::ow_dissolved_amount_array),
        gas3!(dissolved_amount_xenon, 26, species::ow_dissolved_amount, species::ow_dissolved_amount_array),
        gas3!(
            dissolved_amount_sulfur_hexafluoride,
            27,
            species::ow_dissolved_amount,
            species::ow_dissolved_amount_array
        ),
    ]
}
