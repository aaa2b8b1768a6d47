"""Flames against Cantera, a general-purpose library for chemical equilibrium, with the coefficients that the program prints."""

import cantera
import numpy
import pytest
from scipy.optimize import brentq

R = 8.31451  # J/(mol K), the constant of the fit; Cantera uses that of 2019, 5e-6 less.
START_K = 293.15


def definition(rows, kind, name, elements):
    """A phase of species as the program prints them, for Cantera."""
    lines = [f"phases:\n- {{name: {name}, thermo: {kind}, elements: [{', '.join(elements)}], "
             f"species: [{', '.join(quote(row['name']) for row in rows)}], state: {{T: 1000.0, P: 1 atm}}}}"]
    lines.append("species:")
    for row in rows:
        ranges = row["ranges"]
        edges = [ranges[0]["least_k"], *[part["greatest_k"] for part in ranges]]
        data = [[*part["a"], part["b1"], part["b2"]] for part in ranges]
        atoms = ", ".join(f"{symbol}: {count}" for symbol, count in row["atoms"])
        lines.append(f"- name: {quote(row['name'])}\n  composition: {{{atoms}}}\n"
                     f"  thermo: {{model: NASA9, reference-pressure: 1.0e5, temperature-ranges: {edges}, data: {data}}}")
        if kind == "fixed-stoichiometry":
            lines.append("  equation-of-state: {model: constant-volume, molar-volume: 1.0e-5 m^3/mol}")
    return "\n".join(lines) + "\n"


def quote(name):
    return f'"{name}"'


@pytest.fixture(scope="module")
def data():
    import program

    answer = program.ask("species")
    assert answer["molar_gas_j_per_mol_k"] == R
    return [row for row in answer["species"] if row["atoms"]]


def among(data, elements):
    return [row for row in data if {symbol for symbol, _ in row["atoms"]} <= set(elements)]


def gas_of(data, elements):
    rows = [row for row in among(data, elements) if row["phase"] == "gas"]
    return cantera.Solution(yaml=definition(rows, "ideal-gas", "gas", elements))


def contents(answer, flame):
    """What was mixed: amounts in mmol of the sample, oxygen, nitrogen and vapour."""
    jar = answer["jar"]
    gas = {"O2": jar["oxygen_mmol"], "N2": jar["nitrogen_mmol"], "H2O": jar["vapour_mmol"]}
    if flame == "at_the_sample":
        share = answer["answers"][0]["share_of_oxygen"]
        gas = {name: share * amount for name, amount in gas.items()}
    return gas


CASES = [
    ("H2", "H2", 2.016, 0.005),
    ("CO", "CO", 28.010, 0.08),
    ("CH4", "CH4", 16.043, 0.03),
    ("C2H2", "C2H2,acetylene", 26.038, 0.03),
    ("C3H8", "C3H8", 44.097, 0.03),
    ("H2S", "H2S", 34.076, 0.05),
]


@pytest.mark.parametrize("fraction", [0.21, 0.6, 1.0])
@pytest.mark.parametrize(("sample", "species", "molar_mass", "mass_g"), CASES)
@pytest.mark.parametrize("flame", ["at_the_sample", "whole_jar"])
def test_gas_flames(data, ask, sample, species, molar_mass, mass_g, fraction, flame):
    answer = ask("burn", sample, "--mass-g", str(mass_g), "--oxygen-fraction", str(fraction))
    ours = answer["flames"][flame]
    assert not ours["condensed"]
    mixed = contents(answer, flame)
    mixed[species] = 1000 * mass_g / molar_mass
    elements = sorted({symbol for row in data if row["name"] in mixed for symbol, _ in row["atoms"]})
    gas = gas_of(data, elements)
    gas.TPX = START_K, 101325, mixed
    gas.equilibrate("HP", rtol=1e-10)
    # The enthalpies of formation of the handbook differ from those of the data by up to 0.8 kJ/mol (ethyne).
    assert ours["temperature_k"] == pytest.approx(gas.T, abs=2.0)
    compare_fractions(ours, gas)


def test_sulfur_in_oxygen(data, ask):
    """3232 K with coefficients of 1993; the sample is a solid, its enthalpy at 298.15 K zero."""
    answer = ask("burn", "S", "--mass-g", "0.1", "--temperature-c", "20")
    ours = answer["flames"]["at_the_sample"]
    mixed = contents(answer, "at_the_sample")
    sulfur = 100 / 32.06
    gas = gas_of(data, ["H", "N", "O", "S"])
    gas.TPX = START_K, 101325, mixed
    before = gas.enthalpy_mole / 1e6 * sum(mixed.values())  # J
    solid = next(row for row in data if row["name"] == "S(a)")
    crystal = cantera.Solution(yaml=definition([solid], "fixed-stoichiometry", "solid", ["S"]))
    crystal.TP = START_K, 101325
    before += crystal.enthalpy_mole / 1e6 * sulfur
    grams = sum(amount * gas.molecular_weights[gas.species_index(name)] for name, amount in mixed.items() if amount)
    grams = (grams + sulfur * gas.atomic_weight("S")) / 1000
    wanted = before / grams * 1000  # J/kg

    def missing(kelvin):
        gas.TPX = kelvin, 101325, {**mixed, "S": sulfur}
        gas.equilibrate("TP", rtol=1e-10)
        return gas.enthalpy_mass - wanted

    kelvin = brentq(missing, 2000, 4500, xtol=1e-3)
    missing(kelvin)
    assert ours["temperature_k"] == pytest.approx(kelvin, abs=0.1)
    assert ours["temperature_k"] == pytest.approx(3200, abs=5)  # a little water vapour and 5 K below 298.15 K
    compare_fractions(ours, gas)


def compare_fractions(ours, gas):
    found = {row["name"]: row["fraction"] for row in ours["gases"]}
    for name, fraction in zip(gas.species_names, gas.X):
        assert found.get(name, 0.0) == pytest.approx(fraction, abs=1e-3), name


SOLIDS = [("Mg", 0.1, 1.0), ("Mg", 0.1, 0.3), ("Fe", 0.2, 1.0), ("Fe", 0.8, 0.9), ("Na", 0.05, 1.0), ("Ca", 0.1, 0.95),
          ("C", 0.05, 1.0), ("C", 0.3, 0.8), ("Li", 0.02, 0.8), ("Al", 0.05, 1.0), ("P", 0.05, 0.8), ("Cu", 0.2, 0.9)]


@pytest.mark.parametrize(("sample", "mass_g", "fraction"), SOLIDS)
@pytest.mark.parametrize("flame", ["at_the_sample", "whole_jar"])
def test_phases_at_the_flame(data, ask, sample, mass_g, fraction, flame):
    """At the temperature that the program finds, Cantera's least Gibbs energy over gas and pure phases: the same composition; and
    the enthalpy just below and above it brackets that of what was mixed (a phase may melt or boil there)."""
    answer = ask("burn", sample, "--mass-g", str(mass_g), "--oxygen-fraction", str(fraction))
    ours = answer["flames"][flame]
    mixed = contents(answer, flame)
    atoms = {"O": 2 * mixed["O2"] + mixed["H2O"], "N": 2 * mixed["N2"], "H": 2 * mixed["H2O"]}
    molar = {"Mg": 24.305, "Fe": 55.845, "Na": 22.98976928, "Ca": 40.078, "C": 12.011, "Li": 6.94, "Al": 26.9815384,
             "P": 30.973761998, "Cu": 63.546}[sample]
    atoms[sample] = 1000 * mass_g / molar
    elements = sorted(element for element, amount in atoms.items() if amount > 0)
    kelvin = ours["temperature_k"]
    apart = 0.05

    def equilibrium(at_k):
        rows = [row for row in among(data, elements)
                if row["ranges"][0]["least_k"] <= at_k <= row["ranges"][-1]["greatest_k"]]
        gas = cantera.Solution(yaml=definition([row for row in rows if row["phase"] == "gas"], "ideal-gas", "gas", elements))
        phases = [(gas, 1.0)]
        for index, row in enumerate(row for row in rows if row["phase"] != "gas"):
            own = sorted({symbol for symbol, _ in row["atoms"]})
            phases.append((cantera.Solution(yaml=definition([row], "fixed-stoichiometry", f"p{index}", own)), 0.0))
        mixture = cantera.Mixture(phases)
        mixture.T, mixture.P = at_k, 101325
        moles = numpy.zeros(mixture.n_species)
        for element, amount in atoms.items():
            if amount > 0:
                moles[mixture.species_index(0, gas.species_index(element))] = amount
        mixture.species_moles = moles
        mixture.equilibrate("TP", solver="vcs", rtol=1e-9, max_steps=5000)
        total = sum(
            mixture.phase_moles(index) * mixture.phase(index).enthalpy_mole / 1e6 for index in range(mixture.n_phases))
        return mixture, gas, total

    _, _, cold = equilibrium(kelvin - apart)
    _, _, warm = equilibrium(kelvin + apart)
    wanted = sum(amount * enthalpy(data, name) for name, amount in mixed.items() if amount)
    wanted += atoms[sample] * answer["sample"]["formation_kj_per_mol"] + solid_warming(data, sample, atoms[sample])
    slack = 1e-3 * sum(atoms.values())
    assert cold - slack <= wanted <= warm + slack
    # Away from a plateau the composition too.
    if not ours["changes_phase"]:
        there, gas, _ = equilibrium(kelvin)
        found = {row["name"]: row["fraction"] for row in ours["gases"]}
        for index, name in enumerate(gas.species_names):
            theirs = there.species_moles[index] / max(there.phase_moles(0), 1e-30)
            assert found.get(name, 0.0) == pytest.approx(theirs, abs=1e-3), name
        condensed = sum(row["amount_mmol"] for row in ours["condensed"])
        theirs = sum(there.phase_moles(index) for index in range(1, there.n_phases))
        assert condensed == pytest.approx(theirs, rel=1e-3, abs=1e-4)


def enthalpy(data, name):
    """Of a gas as it is in the jar, in J/mmol."""
    row = next(row for row in data if row["name"] == name)
    gas = cantera.Solution(yaml=definition([row], "ideal-gas", "one", sorted({symbol for symbol, _ in row["atoms"]})))
    gas.TP = START_K, 101325
    return gas.enthalpy_mole / 1e6


def solid_warming(data, sample, amount):
    """The 5 K below 298.15 K of a solid element, about 25 J/(mol K), in J for mmol."""
    rows = [row for row in data if row["formula"] == sample and row["phase"] == "solid"
            and row["ranges"][0]["least_k"] <= START_K and row["ranges"][-1]["greatest_k"] >= 298.15]
    solid = cantera.Solution(yaml=definition([rows[0]], "fixed-stoichiometry", "one", [sample]))
    solid.TP = 298.15, 101325
    warm = solid.enthalpy_mole
    solid.TP = START_K, 101325
    return (solid.enthalpy_mole - warm) / 1e6 * amount
