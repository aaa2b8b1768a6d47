"""Fits against scipy.optimize.curve_fit and numpy.polyfit, through `overwater rate --json`."""

import json

import numpy
import pytest
from scipy.optimize import curve_fit

from program import overwater

ESTIMATES = 1e-8
ERRORS = 1e-6


def rate(columns, options="", folder=None):
    """The answer for a table of columns."""
    lines = [",".join(columns)]
    lines += [",".join(value if isinstance(value, str) else repr(float(value)) for value in row) for row in zip(*columns.values())]
    path = folder / "options.toml"
    path.write_text(f"format = 1\nbootstrap = {{ replicates = 0 }}\n{options}\n")
    return json.loads(overwater("rate", "-", "--json", "--options", str(path), text="\n".join(lines) + "\n"))


@pytest.fixture
def rates(tmp_path):
    return lambda columns, options="": rate(columns, options, tmp_path)


def growth(t, last, k, start):
    return last * (1 - numpy.exp(-k * (t - start)))


def decay(t, first, last, k):
    return last + (first - last) * numpy.exp(-k * t)


def growth_slopes(t, last, k, start):
    e = numpy.exp(-k * (t - start))
    return numpy.stack([1 - e, last * (t - start) * e, -last * k * e], axis=1)


def fitted(model, t, y, guess, jac=None):
    """To the last digit that the sum of squares allows: each fit goes on from the last one. Slopes by differences cost
    the last digits of the estimates; where eight are wanted of what follows from several fits, they are given."""
    for _ in range(4):
        guess, covariance = curve_fit(model, t, y, guess, jac=jac, xtol=1e-15, ftol=1e-15, gtol=1e-15, maxfev=10_000)
    return guess, numpy.sqrt(numpy.diag(covariance))


def near(measure, value, error):
    assert measure["value"] == pytest.approx(value, rel=ESTIMATES)
    assert measure["standard_error"] == pytest.approx(error, rel=ERRORS)


CURVES = [(62.0, 0.011, 3.0, 0.4), (48.5, 0.043, -4.0, 0.3), (91.0, 0.0035, 20.0, 0.8)]


@pytest.mark.parametrize("last, k, start, scatter", CURVES)
def test_growth(rates, random, last, k, start, scatter):
    t = numpy.linspace(0, 2.5 / k, 24)
    v = growth(t, last, k, start) + random.normal(0, scatter, t.size)
    answer = rates({"time_s": t, "volume_cm3": v}, "may_go_back_percent = 100")
    curve = answer["runs"][0]["curve"]
    numbers, errors = fitted(growth, t, v, (last, k, start), growth_slopes)
    for name, value, error in zip(["final_value", "rate_constant", "start"], numbers, errors):
        # The start may lie anywhere near zero: it is judged by its error.
        if name == "start":
            assert curve[name]["value"] == pytest.approx(value, abs=1e-6 * error)
            assert curve[name]["standard_error"] == pytest.approx(error, rel=ERRORS)
        else:
            near(curve[name], value, error)
    residuals = v - growth(t, *numbers)
    assert curve["residual_standard_deviation"] == pytest.approx(numpy.sqrt(residuals @ residuals / (t.size - 3)), rel=ESTIMATES)


@pytest.mark.parametrize("last, k, start, scatter", CURVES)
def test_growth_with_its_end_known(rates, random, last, k, start, scatter):
    t = numpy.linspace(0, 2.5 / k, 24)
    v = growth(t, last, k, start) + random.normal(0, scatter, t.size)
    options = f"may_go_back_percent = 100\n[given]\nfinal_volume_cm3 = {last}\nstart_s = {start:.1f}"
    curve = rates({"time_s": t, "volume_cm3": v}, options)["runs"][0]["curve"]
    (value,), (error,) = fitted(lambda t, k: growth(t, last, k, start), t, v, (k,))
    near(curve["rate_constant"], value, error)
    near(curve["half_life"], numpy.log(2) / value, numpy.log(2) / value**2 * error)


def test_decay_of_a_mass(rates, random):
    t = numpy.arange(0, 400, 20.0)
    m = decay(t, 184.91, 183.22, 0.009) + random.normal(0, 0.004, t.size)
    curve = rates({"time_s": t, "mass_g": m}, "may_go_back_percent = 100")["runs"][0]["curve"]
    numbers, errors = fitted(decay, t, m, (184.9, 183.2, 0.009))
    for name, value, error in zip(["first_value", "final_value", "rate_constant"], numbers, errors):
        near(curve[name], value, error)


def test_tangent_is_that_of_a_parabola(rates, random):
    t = numpy.linspace(0, 300, 40)
    v = growth(t, 70.0, 0.008, 0.0) + random.normal(0, 0.05, t.size)
    run = rates({"time_s": t, "volume_cm3": v}, "may_go_back_percent = 100")["runs"][0]
    tangent = run["initial_rates"][0]
    window = tangent["readings"]
    numbers, covariance = numpy.polyfit(t[:window], v[:window], 2, cov=True)
    assert tangent["way"] == "tangent" and window > 4
    near(tangent["rate"], numbers[1], numpy.sqrt(covariance[1, 1]))
    # The straight lines go through the same readings.
    (slope, intercept), covariance = numpy.polyfit(t[:window], v[:window], 1, cov=True)
    line = run["lines"]["with_intercept"]
    assert [line["slope"], line["intercept"]] == pytest.approx([slope, intercept], rel=ESTIMATES)
    errors = [line["slope_standard_error"], line["intercept_standard_error"]]
    assert errors == pytest.approx(numpy.sqrt(numpy.diag(covariance)), rel=ERRORS)
    through = numpy.linalg.lstsq(t[:window, None], v[:window])
    assert run["lines"]["through_origin"]["slope"] == pytest.approx(through[0][0], rel=ESTIMATES)


def test_activation_energy_is_that_of_polyfit(rates, random):
    kelvin = numpy.array([288.0, 293.5, 298.0, 303.2, 308.0, 313.1])
    k = 4e7 * numpy.exp(-56.5e3 / (8.31446261815324 * kelvin)) * (1 + random.normal(0, 0.03, kelvin.size))
    found = rates({"temperature_k": kelvin, "rate_constant_per_s": k})["arrhenius"]
    (slope, intercept), covariance = numpy.polyfit(1 / kelvin, numpy.log(k), 1, cov=True)
    gas = 8.31446261815324e-3
    near(found["activation_energy"], -gas * slope, gas * numpy.sqrt(covariance[0, 0]))
    near(found["ln_pre_exponential"], intercept, numpy.sqrt(covariance[1, 1]))
    assert found["covariance"] == pytest.approx(-gas * covariance[0, 1], rel=ERRORS)
    expected = -covariance[0, 1] / numpy.sqrt(covariance[0, 0] * covariance[1, 1])
    assert found["correlation"] == pytest.approx(expected, rel=ERRORS)


def test_order_is_that_of_polyfit(rates, random):
    c = numpy.array([0.05, 0.1, 0.2, 0.3, 0.5])
    v = 1.7 * c**1.2 * (1 + random.normal(0, 0.04, c.size))
    found = rates({"initial_concentration_mol_per_dm3": c, "rate_cm3_per_s": v})["order"]
    (order, logarithm), covariance = numpy.polyfit(numpy.log(c), numpy.log(v), 1, cov=True)
    near(found["order"], order, numpy.sqrt(covariance[0, 0]))
    assert found["rate_constant"] == pytest.approx(numpy.exp(logarithm), rel=ESTIMATES)


def test_an_enzyme(rates, random):
    s = numpy.array([0.5, 1, 2, 3, 5, 8, 12, 20.0])
    v = 9.5 * s / (3.2 + s) + random.normal(0, 0.12, s.size)
    columns = {"initial_concentration_mmol_per_dm3": s, "rate_cm3_per_min": v}
    found = rates(columns, "michaelis_menten = true")["saturation"]
    numbers, errors = fitted(lambda s, greatest, half: greatest * s / (half + s), s, v, (9.0, 3.0))
    for name, value, error in zip(["greatest_rate", "half_rate_concentration"], numbers, errors):
        near(found[name], value, error)


def test_runs_become_an_activation_energy(rates, random):
    celsius = [16.0, 22.0, 29.0, 36.0]
    columns = {"run": [], "temperature_c": [], "time_s": [], "volume_cm3": []}
    constants = []
    for index, temperature in enumerate(celsius):
        k = 0.004 * numpy.exp(-52e3 / 8.31446261815324 * (1 / (temperature + 273.15) - 1 / 298.15))
        t = numpy.linspace(0, 2.2 / k, 16)
        v = growth(t, 55.0, k, 1.0) + random.normal(0, 0.2, t.size)
        constants.append(fitted(growth, t, v, (55.0, k, 1.0), growth_slopes)[0][1])
        columns["run"] += [f"r{index}"] * t.size
        columns["temperature_c"] += [temperature] * t.size
        columns["time_s"] += list(t)
        columns["volume_cm3"] += list(v)
    found = rates(columns, "may_go_back_percent = 100")["arrhenius"]
    slope = numpy.polyfit(1 / (numpy.array(celsius) + 273.15), numpy.log(constants), 1)[0]
    assert found["from"] == "rate_constant"
    assert found["activation_energy"]["value"] == pytest.approx(-8.31446261815324e-3 * slope, rel=ESTIMATES)
