# Written by write_stubs.py: change that instead.
from . import ufuncs as ufuncs
from ._check import check as check
from ._errors import OverwaterError as OverwaterError, UnknownNameError as UnknownNameError
from ._native import FUNCTIONS as FUNCTIONS, __version__ as __version__
from ._native import vapour_pressure as vapour_pressure
from ._native import vapour_pressure_cipm_2007 as vapour_pressure_cipm_2007
from ._native import vapour_pressure_hyland_wexler_1983 as vapour_pressure_hyland_wexler_1983
from ._native import vapour_pressure_buck_1981 as vapour_pressure_buck_1981
from ._native import vapour_pressure_buck_1996 as vapour_pressure_buck_1996
from ._native import vapour_pressure_magnus_wmo as vapour_pressure_magnus_wmo
from ._native import vapour_pressure_antoine as vapour_pressure_antoine
from ._native import vapour_pressure_crc_1992 as vapour_pressure_crc_1992
from ._native import vapour_pressure_openstax_2019 as vapour_pressure_openstax_2019
from ._native import saturation_temperature as saturation_temperature
from ._native import sublimation_pressure as sublimation_pressure
from ._native import water_density as water_density
from ._native import water_density_kell_1975 as water_density_kell_1975
from ._native import water_density_tanaka as water_density_tanaka
from ._native import water_density_tanaka_air_saturated as water_density_tanaka_air_saturated
from ._native import saturated_liquid_density as saturated_liquid_density
from ._native import saturated_vapour_density as saturated_vapour_density
from ._native import enhancement_factor_greenspan_1976 as enhancement_factor_greenspan_1976
from ._native import enhancement_factor_hardy_1998 as enhancement_factor_hardy_1998
from ._native import enhancement_factor_buck_1996 as enhancement_factor_buck_1996
from ._native import enhancement_factor_cipm_2007 as enhancement_factor_cipm_2007
from ._native import vapour_pressure_in_air as vapour_pressure_in_air
from ._native import brine_humidity as brine_humidity
from ._native import brine_humidity_greenspan_1977 as brine_humidity_greenspan_1977
from ._native import brine_vapour_pressure as brine_vapour_pressure
from ._native import brine_vapour_pressure_greenspan_1977 as brine_vapour_pressure_greenspan_1977
from ._native import dilute_brine_vapour_pressure as dilute_brine_vapour_pressure
from ._native import brine_density as brine_density
from ._native import molar_volume as molar_volume
from ._native import station_pressure as station_pressure
from ._native import sea_level_pressure as sea_level_pressure
from ._native import low_level_station_pressure as low_level_station_pressure
from ._native import low_level_sea_level_pressure as low_level_sea_level_pressure
from ._native import gravity as gravity
from ._native import gravity_1980 as gravity_1980
from ._native import mercury_density as mercury_density
from ._native import column_pressure as column_pressure
from ._native import column_height as column_height
from ._native import water_column_pressure as water_column_pressure
from ._native import mercury_column_pressure as mercury_column_pressure
from ._native import conventional_mm_of_water as conventional_mm_of_water
from ._native import conventional_mm_of_mercury as conventional_mm_of_mercury
from ._native import torr as torr
from ._native import mercury_barometer_brass_scale as mercury_barometer_brass_scale
from ._native import mercury_barometer_true_scale as mercury_barometer_true_scale
from ._native import dry_amount as dry_amount
from ._native import dry_amount_with_vapour as dry_amount_with_vapour
from ._native import dry_pressure as dry_pressure
from ._native import volume_over_water as volume_over_water
from ._native import peroxide_concentration as peroxide_concentration
from ._native import volume_strength as volume_strength
from ._native import stock_volume as stock_volume
from ._native import assayed_concentration as assayed_concentration
from ._native import expected_titre as expected_titre
from ._native import adiabatic_rise as adiabatic_rise
from ._native import oxygen_fraction as oxygen_fraction
from ._native import peroxide_density as peroxide_density
from ._native import concentration_from_mass as concentration_from_mass
from ._native import mass_from_concentration as mass_from_concentration
from ._native import oxygen_saturation as oxygen_saturation
from ._native import pkw as pkw
from ._native import room_concentration as room_concentration
from ._native import second_virial_oxygen as second_virial_oxygen
from ._native import compressibility_oxygen as compressibility_oxygen
from ._native import real_molar_volume_oxygen as real_molar_volume_oxygen
from ._native import gas_density_oxygen as gas_density_oxygen
from ._native import henry_constant_oxygen as henry_constant_oxygen
from ._native import ostwald_coefficient_oxygen as ostwald_coefficient_oxygen
from ._native import dissolved_amount_oxygen as dissolved_amount_oxygen
from ._native import second_virial_nitrogen as second_virial_nitrogen
from ._native import compressibility_nitrogen as compressibility_nitrogen
from ._native import real_molar_volume_nitrogen as real_molar_volume_nitrogen
from ._native import gas_density_nitrogen as gas_density_nitrogen
from ._native import henry_constant_nitrogen as henry_constant_nitrogen
from ._native import ostwald_coefficient_nitrogen as ostwald_coefficient_nitrogen
from ._native import dissolved_amount_nitrogen as dissolved_amount_nitrogen
from ._native import second_virial_air as second_virial_air
from ._native import compressibility_air as compressibility_air
from ._native import real_molar_volume_air as real_molar_volume_air
from ._native import gas_density_air as gas_density_air
from ._native import second_virial_hydrogen as second_virial_hydrogen
from ._native import compressibility_hydrogen as compressibility_hydrogen
from ._native import real_molar_volume_hydrogen as real_molar_volume_hydrogen
from ._native import gas_density_hydrogen as gas_density_hydrogen
from ._native import henry_constant_hydrogen as henry_constant_hydrogen
from ._native import ostwald_coefficient_hydrogen as ostwald_coefficient_hydrogen
from ._native import dissolved_amount_hydrogen as dissolved_amount_hydrogen
from ._native import second_virial_carbon_dioxide as second_virial_carbon_dioxide
from ._native import compressibility_carbon_dioxide as compressibility_carbon_dioxide
from ._native import real_molar_volume_carbon_dioxide as real_molar_volume_carbon_dioxide
from ._native import gas_density_carbon_dioxide as gas_density_carbon_dioxide
from ._native import henry_constant_carbon_dioxide as henry_constant_carbon_dioxide
from ._native import ostwald_coefficient_carbon_dioxide as ostwald_coefficient_carbon_dioxide
from ._native import dissolved_amount_carbon_dioxide as dissolved_amount_carbon_dioxide
from ._native import second_virial_carbon_monoxide as second_virial_carbon_monoxide
from ._native import compressibility_carbon_monoxide as compressibility_carbon_monoxide
from ._native import real_molar_volume_carbon_monoxide as real_molar_volume_carbon_monoxide
from ._native import gas_density_carbon_monoxide as gas_density_carbon_monoxide
from ._native import henry_constant_carbon_monoxide as henry_constant_carbon_monoxide
from ._native import ostwald_coefficient_carbon_monoxide as ostwald_coefficient_carbon_monoxide
from ._native import dissolved_amount_carbon_monoxide as dissolved_amount_carbon_monoxide
from ._native import second_virial_methane as second_virial_methane
from ._native import compressibility_methane as compressibility_methane
from ._native import real_molar_volume_methane as real_molar_volume_methane
from ._native import gas_density_methane as gas_density_methane
from ._native import henry_constant_methane as henry_constant_methane
from ._native import ostwald_coefficient_methane as ostwald_coefficient_methane
from ._native import dissolved_amount_methane as dissolved_amount_methane
from ._native import second_virial_ethane as second_virial_ethane
from ._native import compressibility_ethane as compressibility_ethane
from ._native import real_molar_volume_ethane as real_molar_volume_ethane
from ._native import gas_density_ethane as gas_density_ethane
from ._native import henry_constant_ethane as henry_constant_ethane
from ._native import ostwald_coefficient_ethane as ostwald_coefficient_ethane
from ._native import dissolved_amount_ethane as dissolved_amount_ethane
from ._native import second_virial_ethene as second_virial_ethene
from ._native import compressibility_ethene as compressibility_ethene
from ._native import real_molar_volume_ethene as real_molar_volume_ethene
from ._native import gas_density_ethene as gas_density_ethene
from ._native import henry_constant_ethene as henry_constant_ethene
from ._native import ostwald_coefficient_ethene as ostwald_coefficient_ethene
from ._native import dissolved_amount_ethene as dissolved_amount_ethene
from ._native import second_virial_ethyne as second_virial_ethyne
from ._native import compressibility_ethyne as compressibility_ethyne
from ._native import real_molar_volume_ethyne as real_molar_volume_ethyne
from ._native import gas_density_ethyne as gas_density_ethyne
from ._native import henry_constant_ethyne as henry_constant_ethyne
from ._native import ostwald_coefficient_ethyne as ostwald_coefficient_ethyne
from ._native import dissolved_amount_ethyne as dissolved_amount_ethyne
from ._native import second_virial_propane as second_virial_propane
from ._native import compressibility_propane as compressibility_propane
from ._native import real_molar_volume_propane as real_molar_volume_propane
from ._native import gas_density_propane as gas_density_propane
from ._native import henry_constant_propane as henry_constant_propane
from ._native import ostwald_coefficient_propane as ostwald_coefficient_propane
from ._native import dissolved_amount_propane as dissolved_amount_propane
from ._native import second_virial_butane as second_virial_butane
from ._native import compressibility_butane as compressibility_butane
from ._native import real_molar_volume_butane as real_molar_volume_butane
from ._native import gas_density_butane as gas_density_butane
from ._native import henry_constant_butane as henry_constant_butane
from ._native import ostwald_coefficient_butane as ostwald_coefficient_butane
from ._native import dissolved_amount_butane as dissolved_amount_butane
from ._native import second_virial_dinitrogen_oxide as second_virial_dinitrogen_oxide
from ._native import compressibility_dinitrogen_oxide as compressibility_dinitrogen_oxide
from ._native import real_molar_volume_dinitrogen_oxide as real_molar_volume_dinitrogen_oxide
from ._native import gas_density_dinitrogen_oxide as gas_density_dinitrogen_oxide
from ._native import henry_constant_dinitrogen_oxide as henry_constant_dinitrogen_oxide
from ._native import ostwald_coefficient_dinitrogen_oxide as ostwald_coefficient_dinitrogen_oxide
from ._native import dissolved_amount_dinitrogen_oxide as dissolved_amount_dinitrogen_oxide
from ._native import second_virial_nitrogen_monoxide as second_virial_nitrogen_monoxide
from ._native import compressibility_nitrogen_monoxide as compressibility_nitrogen_monoxide
from ._native import real_molar_volume_nitrogen_monoxide as real_molar_volume_nitrogen_monoxide
from ._native import gas_density_nitrogen_monoxide as gas_density_nitrogen_monoxide
from ._native import henry_constant_nitrogen_monoxide as henry_constant_nitrogen_monoxide
from ._native import ostwald_coefficient_nitrogen_monoxide as ostwald_coefficient_nitrogen_monoxide
from ._native import dissolved_amount_nitrogen_monoxide as dissolved_amount_nitrogen_monoxide
from ._native import henry_constant_nitrogen_dioxide as henry_constant_nitrogen_dioxide
from ._native import ostwald_coefficient_nitrogen_dioxide as ostwald_coefficient_nitrogen_dioxide
from ._native import dissolved_amount_nitrogen_dioxide as dissolved_amount_nitrogen_dioxide
from ._native import second_virial_sulfur_dioxide as second_virial_sulfur_dioxide
from ._native import compressibility_sulfur_dioxide as compressibility_sulfur_dioxide
from ._native import real_molar_volume_sulfur_dioxide as real_molar_volume_sulfur_dioxide
from ._native import gas_density_sulfur_dioxide as gas_density_sulfur_dioxide
from ._native import henry_constant_sulfur_dioxide as henry_constant_sulfur_dioxide
from ._native import ostwald_coefficient_sulfur_dioxide as ostwald_coefficient_sulfur_dioxide
from ._native import dissolved_amount_sulfur_dioxide as dissolved_amount_sulfur_dioxide
from ._native import second_virial_hydrogen_sulfide as second_virial_hydrogen_sulfide
from ._native import compressibility_hydrogen_sulfide as compressibility_hydrogen_sulfide
from ._native import real_molar_volume_hydrogen_sulfide as real_molar_volume_hydrogen_sulfide
from ._native import gas_density_hydrogen_sulfide as gas_density_hydrogen_sulfide
from ._native import henry_constant_hydrogen_sulfide as henry_constant_hydrogen_sulfide
from ._native import ostwald_coefficient_hydrogen_sulfide as ostwald_coefficient_hydrogen_sulfide
from ._native import dissolved_amount_hydrogen_sulfide as dissolved_amount_hydrogen_sulfide
from ._native import second_virial_hydrogen_chloride as second_virial_hydrogen_chloride
from ._native import compressibility_hydrogen_chloride as compressibility_hydrogen_chloride
from ._native import real_molar_volume_hydrogen_chloride as real_molar_volume_hydrogen_chloride
from ._native import gas_density_hydrogen_chloride as gas_density_hydrogen_chloride
from ._native import second_virial_ammonia as second_virial_ammonia
from ._native import compressibility_ammonia as compressibility_ammonia
from ._native import real_molar_volume_ammonia as real_molar_volume_ammonia
from ._native import gas_density_ammonia as gas_density_ammonia
from ._native import henry_constant_ammonia as henry_constant_ammonia
from ._native import ostwald_coefficient_ammonia as ostwald_coefficient_ammonia
from ._native import dissolved_amount_ammonia as dissolved_amount_ammonia
from ._native import second_virial_chlorine as second_virial_chlorine
from ._native import compressibility_chlorine as compressibility_chlorine
from ._native import real_molar_volume_chlorine as real_molar_volume_chlorine
from ._native import gas_density_chlorine as gas_density_chlorine
from ._native import henry_constant_chlorine as henry_constant_chlorine
from ._native import ostwald_coefficient_chlorine as ostwald_coefficient_chlorine
from ._native import dissolved_amount_chlorine as dissolved_amount_chlorine
from ._native import henry_constant_ozone as henry_constant_ozone
from ._native import ostwald_coefficient_ozone as ostwald_coefficient_ozone
from ._native import dissolved_amount_ozone as dissolved_amount_ozone
from ._native import second_virial_helium as second_virial_helium
from ._native import compressibility_helium as compressibility_helium
from ._native import real_molar_volume_helium as real_molar_volume_helium
from ._native import gas_density_helium as gas_density_helium
from ._native import henry_constant_helium as henry_constant_helium
from ._native import ostwald_coefficient_helium as ostwald_coefficient_helium
from ._native import dissolved_amount_helium as dissolved_amount_helium
from ._native import henry_constant_neon as henry_constant_neon
from ._native import ostwald_coefficient_neon as ostwald_coefficient_neon
from ._native import dissolved_amount_neon as dissolved_amount_neon
from ._native import second_virial_argon as second_virial_argon
from ._native import compressibility_argon as compressibility_argon
from ._native import real_molar_volume_argon as real_molar_volume_argon
from ._native import gas_density_argon as gas_density_argon
from ._native import henry_constant_argon as henry_constant_argon
from ._native import ostwald_coefficient_argon as ostwald_coefficient_argon
from ._native import dissolved_amount_argon as dissolved_amount_argon
from ._native import henry_constant_krypton as henry_constant_krypton
from ._native import ostwald_coefficient_krypton as ostwald_coefficient_krypton
from ._native import dissolved_amount_krypton as dissolved_amount_krypton
from ._native import henry_constant_xenon as henry_constant_xenon
from ._native import ostwald_coefficient_xenon as ostwald_coefficient_xenon
from ._native import dissolved_amount_xenon as dissolved_amount_xenon
from ._native import henry_constant_sulfur_hexafluoride as henry_constant_sulfur_hexafluoride
from ._native import ostwald_coefficient_sulfur_hexafluoride as ostwald_coefficient_sulfur_hexafluoride
from ._native import dissolved_amount_sulfur_hexafluoride as dissolved_amount_sulfur_hexafluoride
from ._results import (
    Budget as Budget,
    Burn as Burn,
    Formula as Formula,
    Plan as Plan,
    RateFit as RateFit,
    Reaction as Reaction,
    Reduction as Reduction,
    Run as Run,
    Working as Working,
)
from ._tasks import Answer as Answer, ask as ask

__all__ = [
    "FUNCTIONS",
    "__version__",
    "Budget",
    "Burn",
    "Formula",
    "Plan",
    "RateFit",
    "Reaction",
    "Reduction",
    "Run",
    "Working",
    "Answer",
    "ask",
    "check",
    "OverwaterError",
    "UnknownNameError",
    "vapour_pressure",
    "vapour_pressure_cipm_2007",
    "vapour_pressure_hyland_wexler_1983",
    "vapour_pressure_buck_1981",
    "vapour_pressure_buck_1996",
    "vapour_pressure_magnus_wmo",
    "vapour_pressure_antoine",
    "vapour_pressure_crc_1992",
    "vapour_pressure_openstax_2019",
    "saturation_temperature",
    "sublimation_pressure",
    "water_density",
    "water_density_kell_1975",
    "water_density_tanaka",
    "water_density_tanaka_air_saturated",
    "saturated_liquid_density",
    "saturated_vapour_density",
    "enhancement_factor_greenspan_1976",
    "enhancement_factor_hardy_1998",
    "enhancement_factor_buck_1996",
    "enhancement_factor_cipm_2007",
    "vapour_pressure_in_air",
    "brine_humidity",
    "brine_humidity_greenspan_1977",
    "brine_vapour_pressure",
    "brine_vapour_pressure_greenspan_1977",
    "dilute_brine_vapour_pressure",
    "brine_density",
    "molar_volume",
    "station_pressure",
    "sea_level_pressure",
    "low_level_station_pressure",
    "low_level_sea_level_pressure",
    "gravity",
    "gravity_1980",
    "mercury_density",
    "column_pressure",
    "column_height",
    "water_column_pressure",
    "mercury_column_pressure",
    "conventional_mm_of_water",
    "conventional_mm_of_mercury",
    "torr",
    "mercury_barometer_brass_scale",
    "mercury_barometer_true_scale",
    "dry_amount",
    "dry_amount_with_vapour",
    "dry_pressure",
    "volume_over_water",
    "peroxide_concentration",
    "volume_strength",
    "stock_volume",
    "assayed_concentration",
    "expected_titre",
    "adiabatic_rise",
    "oxygen_fraction",
    "peroxide_density",
    "concentration_from_mass",
    "mass_from_concentration",
    "oxygen_saturation",
    "pkw",
    "room_concentration",
    "second_virial_oxygen",
    "compressibility_oxygen",
    "real_molar_volume_oxygen",
    "gas_density_oxygen",
    "henry_constant_oxygen",
    "ostwald_coefficient_oxygen",
    "dissolved_amount_oxygen",
    "second_virial_nitrogen",
    "compressibility_nitrogen",
    "real_molar_volume_nitrogen",
    "gas_density_nitrogen",
    "henry_constant_nitrogen",
    "ostwald_coefficient_nitrogen",
    "dissolved_amount_nitrogen",
    "second_virial_air",
    "compressibility_air",
    "real_molar_volume_air",
    "gas_density_air",
    "second_virial_hydrogen",
    "compressibility_hydrogen",
    "real_molar_volume_hydrogen",
    "gas_density_hydrogen",
    "henry_constant_hydrogen",
    "ostwald_coefficient_hydrogen",
    "dissolved_amount_hydrogen",
    "second_virial_carbon_dioxide",
    "compressibility_carbon_dioxide",
    "real_molar_volume_carbon_dioxide",
    "gas_density_carbon_dioxide",
    "henry_constant_carbon_dioxide",
    "ostwald_coefficient_carbon_dioxide",
    "dissolved_amount_carbon_dioxide",
    "second_virial_carbon_monoxide",
    "compressibility_carbon_monoxide",
    "real_molar_volume_carbon_monoxide",
    "gas_density_carbon_monoxide",
    "henry_constant_carbon_monoxide",
    "ostwald_coefficient_carbon_monoxide",
    "dissolved_amount_carbon_monoxide",
    "second_virial_methane",
    "compressibility_methane",
    "real_molar_volume_methane",
    "gas_density_methane",
    "henry_constant_methane",
    "ostwald_coefficient_methane",
    "dissolved_amount_methane",
    "second_virial_ethane",
    "compressibility_ethane",
    "real_molar_volume_ethane",
    "gas_density_ethane",
    "henry_constant_ethane",
    "ostwald_coefficient_ethane",
    "dissolved_amount_ethane",
    "second_virial_ethene",
    "compressibility_ethene",
    "real_molar_volume_ethene",
    "gas_density_ethene",
    "henry_constant_ethene",
    "ostwald_coefficient_ethene",
    "dissolved_amount_ethene",
    "second_virial_ethyne",
    "compressibility_ethyne",
    "real_molar_volume_ethyne",
    "gas_density_ethyne",
    "henry_constant_ethyne",
    "ostwald_coefficient_ethyne",
    "dissolved_amount_ethyne",
    "second_virial_propane",
    "compressibility_propane",
    "real_molar_volume_propane",
    "gas_density_propane",
    "henry_constant_propane",
    "ostwald_coefficient_propane",
    "dissolved_amount_propane",
    "second_virial_butane",
    "compressibility_butane",
    "real_molar_volume_butane",
    "gas_density_butane",
    "henry_constant_butane",
    "ostwald_coefficient_butane",
    "dissolved_amount_butane",
    "second_virial_dinitrogen_oxide",
    "compressibility_dinitrogen_oxide",
    "real_molar_volume_dinitrogen_oxide",
    "gas_density_dinitrogen_oxide",
    "henry_constant_dinitrogen_oxide",
    "ostwald_coefficient_dinitrogen_oxide",
    "dissolved_amount_dinitrogen_oxide",
    "second_virial_nitrogen_monoxide",
    "compressibility_nitrogen_monoxide",
    "real_molar_volume_nitrogen_monoxide",
    "gas_density_nitrogen_monoxide",
    "henry_constant_nitrogen_monoxide",
    "ostwald_coefficient_nitrogen_monoxide",
    "dissolved_amount_nitrogen_monoxide",
    "henry_constant_nitrogen_dioxide",
    "ostwald_coefficient_nitrogen_dioxide",
    "dissolved_amount_nitrogen_dioxide",
    "second_virial_sulfur_dioxide",
    "compressibility_sulfur_dioxide",
    "real_molar_volume_sulfur_dioxide",
    "gas_density_sulfur_dioxide",
    "henry_constant_sulfur_dioxide",
    "ostwald_coefficient_sulfur_dioxide",
    "dissolved_amount_sulfur_dioxide",
    "second_virial_hydrogen_sulfide",
    "compressibility_hydrogen_sulfide",
    "real_molar_volume_hydrogen_sulfide",
    "gas_density_hydrogen_sulfide",
    "henry_constant_hydrogen_sulfide",
    "ostwald_coefficient_hydrogen_sulfide",
    "dissolved_amount_hydrogen_sulfide",
    "second_virial_hydrogen_chloride",
    "compressibility_hydrogen_chloride",
    "real_molar_volume_hydrogen_chloride",
    "gas_density_hydrogen_chloride",
    "second_virial_ammonia",
    "compressibility_ammonia",
    "real_molar_volume_ammonia",
    "gas_density_ammonia",
    "henry_constant_ammonia",
    "ostwald_coefficient_ammonia",
    "dissolved_amount_ammonia",
    "second_virial_chlorine",
    "compressibility_chlorine",
    "real_molar_volume_chlorine",
    "gas_density_chlorine",
    "henry_constant_chlorine",
    "ostwald_coefficient_chlorine",
    "dissolved_amount_chlorine",
    "henry_constant_ozone",
    "ostwald_coefficient_ozone",
    "dissolved_amount_ozone",
    "second_virial_helium",
    "compressibility_helium",
    "real_molar_volume_helium",
    "gas_density_helium",
    "henry_constant_helium",
    "ostwald_coefficient_helium",
    "dissolved_amount_helium",
    "henry_constant_neon",
    "ostwald_coefficient_neon",
    "dissolved_amount_neon",
    "second_virial_argon",
    "compressibility_argon",
    "real_molar_volume_argon",
    "gas_density_argon",
    "henry_constant_argon",
    "ostwald_coefficient_argon",
    "dissolved_amount_argon",
    "henry_constant_krypton",
    "ostwald_coefficient_krypton",
    "dissolved_amount_krypton",
    "henry_constant_xenon",
    "ostwald_coefficient_xenon",
    "dissolved_amount_xenon",
    "henry_constant_sulfur_hexafluoride",
    "ostwald_coefficient_sulfur_hexafluoride",
    "dissolved_amount_sulfur_hexafluoride",
]
