"""Budgets by first order against a general-purpose library, and drawing against NumPy."""

import json
import math

import numpy
import program
import pytest
from uncertainties import correlated_values, ufloat, umath

R = 8.31446261815324


def propagate(request):
    return json.loads(program.overwater("propagate", "-", "--json", text=request))


def toml(formula, inputs, head="", tail=""):
    lines = ["format = 1", f'formula = "{formula}"', "relation = false", head, "[inputs]"]
    lines += [f"{name} = {{ value = {value!r}, standard_uncertainty = {u!r} }}" for name, (value, u) in inputs.items()]
    return "\n".join([*lines, tail, ""])


CASES = {
    "molar_volume": (
        {"temperature_c": (20.0, 0.5), "pressure_kpa": (101.3, 0.2)},
        lambda t, p: R * (t + 273.15) / p,
    ),
    "station_pressure": (
        {"sea_level_pressure_kpa": (102.1, 0.1), "altitude_m": (145.0, 8.0)},
        lambda p, h: p * umath.pow(1 - 0.0065 * (6356766 * h / (6356766 + h)) / 288.15, 9.80665 / (0.0065 * 287.05287)),
    ),
    "peroxide_concentration": (
        {"volume_strength_vol": (20.0, 0.7), "molar_volume_dm3_per_mol": (22.414, 0.001)},
        lambda v, m: 2 * v / m,
    ),
    "oxygen_fraction": (
        {"rejected_cm3": (300.0, 10.0), "volume_cm3": (250.0, 5.0), "free_volume_cm3": (235.0, 8.0)},
        lambda v, w, f: 1 - 0.79 * f / w * (umath.exp(-v / f) - umath.exp(-(v + w) / f)),
    ),
}


@pytest.mark.parametrize("formula", CASES)
def test_first_order_is_that_of_uncertainties(formula):
    inputs, relation = CASES[formula]
    names = {row["name"]: row for row in program.ask("calculate", formula, *[f"{n}={v}" for n, (v, _) in inputs.items()])["inputs"]}
    assert set(names) == set(inputs)
    ours = propagate(toml(formula, inputs))
    theirs = relation(*(ufloat(value, u) for value, u in inputs.values()))
    assert ours["value"] == pytest.approx(theirs.nominal_value, rel=1e-8)
    assert ours["standard_uncertainty"] == pytest.approx(theirs.std_dev, rel=1e-6)
    assert sum(line["share"] for line in ours["lines"]) == pytest.approx(1, abs=1e-12)


def test_correlated_inputs_are_those_of_uncertainties():
    inputs, relation = CASES["molar_volume"]
    tail = '[[correlations]]\nbetween = ["temperature_c", "pressure_kpa"]\ncoefficient = 0.7'
    ours = propagate(toml("molar_volume", inputs, tail=tail))
    (t, ut), (p, up) = inputs.values()
    theirs = relation(*correlated_values([t, p], [[ut * ut, 0.7 * ut * up], [0.7 * ut * up, up * up]]))
    assert ours["standard_uncertainty"] == pytest.approx(theirs.std_dev, rel=1e-6)


def test_drawing_is_that_of_numpy(random):
    inputs, _ = CASES["molar_volume"]
    ours = propagate(toml("molar_volume", inputs, head='rules = "monte_carlo"\ndraws = 1000000'))
    (t, ut), (p, up) = inputs.values()
    drawn = R * (random.normal(t, ut, 1_000_000) + 273.15) / random.normal(p, up, 1_000_000)
    # A million draws: the standard deviation is known to 0.07 %, a 2.5 % quantile to 0.0027 standard deviations.
    assert ours["standard_uncertainty"] == pytest.approx(drawn.std(), rel=4e-3)
    for one, other in zip(ours["drawn"]["symmetric"], numpy.quantile(drawn, [0.025, 0.975])):
        assert math.isclose(one, other, abs_tol=0.015 * drawn.std())


def test_a_row_of_readings_is_that_of_uncertainties(tmp_path):
    """The chain over water with a stated vapour pressure, which the library can be told in one line."""
    rows = [(45.0, 20.0, 100.9, 2.34), (86.5, 24.5, 98.2, 3.08)]
    u = {"volume_cm3": 0.3, "temperature_c": 0.5, "pressure_kpa": 0.1, "vapour_pressure_kpa": 0.02}
    request = {
        "format": 1,
        "rows": [dict(zip(u, row)) for row in rows],
        "uncertainty": {
            "readings": {name: {"standard_uncertainty": own} for name, own in u.items()},
            "correlations": [{"between": ["temperature_c", "vapour_pressure_kpa"], "coefficient": 0.9}],
        },
    }
    file = tmp_path / "rows.json"
    file.write_text(json.dumps(request))
    ours = program.ask("reduce", str(file))["rows"]
    for row, answer in zip(rows, ours):
        correlation = numpy.eye(4)
        correlation[1, 3] = correlation[3, 1] = 0.9
        spread = numpy.array(list(u.values()))
        v, t, p, w = correlated_values(row, correlation * numpy.outer(spread, spread))
        n = (p - w) * v / (R * (t + 273.15))
        assert answer["uncertainty"]["value"] == pytest.approx(n.nominal_value, rel=1e-12)
        assert answer["uncertainty"]["standard_uncertainty"] == pytest.approx(n.std_dev, rel=1e-9)
