"""Gases against a general-purpose library that carries their reference equations of state, and against published tables."""

import CoolProp.CoolProp as coolprop
import numpy
import program
import pytest

ZERO = 273.15

# The name of each gas here and there, and how close its molar volume must come (relative).
GASES = {
    "oxygen": ("Oxygen", 1e-4),
    "nitrogen": ("Nitrogen", 1e-4),
    "hydrogen": ("Hydrogen", 1e-4),
    "carbon_dioxide": ("CarbonDioxide", 1e-4),
    "air": ("Air", 1e-3),
    "carbon_monoxide": ("CarbonMonoxide", 1e-3),
    "methane": ("Methane", 1e-3),
    "ethane": ("Ethane", 1e-3),
    "ethene": ("Ethylene", 1e-3),
    "propane": ("n-Propane", 1e-3),
    "butane": ("n-Butane", 1e-3),
    "dinitrogen_oxide": ("NitrousOxide", 1e-3),
    "sulfur_dioxide": ("SulfurDioxide", 1e-3),
    "hydrogen_sulfide": ("HydrogenSulfide", 1e-3),
    "hydrogen_chloride": ("HydrogenChloride", 1e-3),
    "ammonia": ("Ammonia", 1e-3),
    "chlorine": ("Chlorine", 1e-3),
    "helium": ("Helium", 1e-3),
    "argon": ("Argon", 1e-3),
}

# Below its boiling point a gas is not there.
COLDEST_C = {"butane": 5.0}


@pytest.mark.parametrize("gas", GASES)
def test_molar_volumes_at_random_states(formula, random, gas):
    name, tolerance = GASES[gas]
    celsius = random.uniform(COLDEST_C.get(gas, 0.0), 99.85, 300)
    kilopascals = random.uniform(50.0, 110.0, 300)
    ours = formula(f"real_molar_volume_{gas}", temperature_c=celsius, pressure_kpa=kilopascals)
    theirs = numpy.array(
        [
            1000 / coolprop.PropsSI("Dmolar", "T|gas", t + ZERO, "P", p * 1000, name)
            for t, p in zip(celsius, kilopascals)
        ]
    )
    difference = numpy.abs(ours / theirs - 1)
    print(f"{gas}: {difference.max():.1e} at worst")
    assert difference.max() < tolerance


@pytest.mark.parametrize("gas", ["oxygen", "nitrogen", "hydrogen", "carbon_dioxide", "methane", "argon"])
def test_second_virial_coefficients_at_random_temperatures(formula, random, gas):
    celsius = random.uniform(0.0, 99.85, 100)
    ours = formula(f"second_virial_{gas}", temperature_c=celsius)
    state = coolprop.AbstractState("HEOS", GASES[gas][0])
    theirs = []
    for t in celsius:
        state.update(coolprop.DmolarT_INPUTS, 1e-6, t + ZERO)
        theirs.append(state.Bvirial() * 1e6)
    # A thousandth of the molar volume at 1 atm would be 24 cm3/mol; the goal is a hundred times closer.
    assert numpy.abs(ours - numpy.array(theirs)).max() < 0.05


def test_density_is_molar_mass_over_molar_volume(formula, random):
    celsius = random.uniform(0.0, 99.85, 100)
    ours = formula("gas_density_oxygen", temperature_c=celsius, pressure_kpa=101.325)
    theirs = numpy.array([coolprop.PropsSI("D", "T|gas", t + ZERO, "P", 101325, "Oxygen") for t in celsius])
    assert numpy.abs(ours / theirs - 1).max() < 1e-4


def test_oxygen_dissolved_under_moist_air():
    # Benson and Krause 1980, 1984, worked out with a second program; Standard Methods 4500-O, from memory.
    rows = program.published("oxygen_in_water.csv")
    for column, least_rows in [("saturation", 30), ("standard_methods", 3)]:
        kept = [row for row in rows if row[column] and float(row["temperature_c"]) <= 40]
        celsius = numpy.array([float(row["temperature_c"]) for row in kept])
        ours = program.formula("oxygen_saturation", temperature_c=celsius, pressure_kpa=101.325, salinity=0.0)
        theirs = numpy.array([float(row[column]) for row in kept])
        assert len(kept) >= least_rows
        assert numpy.abs(ours / theirs - 1).max() < 3e-3, column
