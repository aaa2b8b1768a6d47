"""pH of products in water against a charge balance written here and solved by SciPy's brentq."""

import math

import program
import pytest
from molmass import Formula
from scipy.optimize import brentq

# Handbook constants at 25 degC and zero ionic strength (CRC Handbook; the two hydroxides from memory).
PKW = 13.995
ACIDS = {
    "SO2": (0, [1.85, 7.2]),
    "HSO4-": (-1, [1.99]),
    "CO2": (0, [6.35, 10.33]),
    "H3PO4": (0, [2.16, 7.21, 12.32]),
    "H2O2": (0, [11.62]),
}
SOLIDS = {"MgO": 11.25, "CaO": 5.3}


def gamma(z, strength):
    root = math.sqrt(min(strength, 0.5))
    return 10 ** (-0.509 * z * z * (root / (1 + root) - 0.3 * min(strength, 0.5)))


def species(ph, strength, acids, metal, solid):
    """Charge and concentration of every ion at a pH."""
    h = 10**-ph
    found = [(1, h / gamma(1, strength)), (-1, 10 ** (ph - PKW) / gamma(1, strength)), (1, metal)]
    for name, total in acids.items():
        charge, steps = ACIDS[name]
        weights = [1.0]
        for index, pk in enumerate(steps):
            z = charge - index
            weights.append(weights[-1] * 10 ** (ph - pk) * gamma(z, strength) / gamma(z - 1, strength))
        found += [(charge - i, total * w / sum(weights)) for i, w in enumerate(weights)]
    if solid:
        name, total = solid
        most = 10 ** -SOLIDS[name] / (10 ** (ph - PKW)) ** 2 / gamma(2, strength)
        found.append((2, min(total, most)))
    return found


def reference(acids, metal=0.0, solid=None):
    strength = 0.0
    for _ in range(60):
        ph = brentq(lambda x: sum(z * c for z, c in species(x, strength, acids, metal, solid)), -2, 16, xtol=1e-12)
        strength = 0.5 * sum(z * z * c for z, c in species(ph, strength, acids, metal, solid))
    return ph


CASES = {
    "SO2": lambda c: reference({"SO2": c}),
    "SO3": lambda c: reference({"HSO4-": c}),
    "CO2": lambda c: reference({"CO2": c}),
    "P4O10": lambda c: reference({"H3PO4": 4 * c}),
    "Na2O": lambda c: reference({}, metal=2 * c),
    "Na2O2": lambda c: reference({"H2O2": c}, metal=2 * c),
    "Li2O": lambda c: reference({}, metal=2 * c),
    "K2O": lambda c: reference({}, metal=2 * c),
    "NaOH": lambda c: reference({}, metal=c),
    "MgO": lambda c: reference({}, solid=("MgO", c)),
    "CaO": lambda c: reference({}, solid=("CaO", c)),
    "Fe3O4": lambda c: reference({}),
}


@pytest.mark.parametrize("product", CASES)
@pytest.mark.parametrize("concentration", [3e-5, 1e-3, 0.02])
def test_ph_is_that_of_brentq(product, concentration):
    water_cm3 = 2000.0
    mass = concentration * water_cm3 / 1000 * Formula(product).mass
    ours = program.ask("dissolve", product, "--mass-g", repr(mass), "--water-cm3", repr(water_cm3))
    assert ours["ph"] == pytest.approx(CASES[product](concentration), abs=0.005)
    assert ours["amount_mmol"] == pytest.approx(concentration * water_cm3, rel=1e-4)


def test_the_figures_of_the_trade():
    sodium = program.ask("dissolve", "Na2O", "--mass-g", repr(0.05 / 22.98977 * 61.979 / 2), "--water-cm3", "20")
    assert sodium["ph_ideal"] == pytest.approx(13.0, abs=0.05)
    sulfur = program.ask("dissolve", "SO2", "--mass-g", repr(0.2 * 0.02 * 64.064), "--water-cm3", "20")
    assert sulfur["ph"] == pytest.approx(1.3, abs=0.05)
    assert sulfur["ph"] == pytest.approx(reference({"SO2": 0.2}), abs=0.005)
