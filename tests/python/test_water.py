"""Water against two general-purpose libraries that carry IAPWS-95."""

import CoolProp.CoolProp as coolprop
import numpy
from iapws.iapws97 import _PSat_T

ZERO = 273.15


def test_vapour_pressure_of_a_thousand_temperatures(formula, random):
    celsius = random.uniform(0.01, 100.0, 1000)
    ours = formula("vapour_pressure", temperature_c=celsius)
    theirs = numpy.array([coolprop.PropsSI("P", "T", t + ZERO, "Q", 0, "Water") for t in celsius]) / 1000
    # The equation's stated uncertainty: 0.02 % up to 373 K.
    assert numpy.abs(ours / theirs - 1).max() < 2e-4


def test_vapour_pressure_of_the_industrial_formulation(formula, random):
    celsius = random.uniform(0.0, 100.0, 1000)
    ours = formula("vapour_pressure", temperature_c=celsius)
    theirs = numpy.array([_PSat_T(t + ZERO) for t in celsius]) * 1000
    assert numpy.abs(ours / theirs - 1).max() < 2e-4


def test_the_inverse_comes_back_to_a_part_in_a_million_million(formula, random):
    celsius = random.uniform(0.02, 99.99, 1000)
    back = formula("saturation_temperature", vapour_pressure_kpa=formula("vapour_pressure", temperature_c=celsius))
    assert numpy.abs((back - celsius) / (celsius + ZERO)).max() < 1e-12


def test_density_of_a_thousand_temperatures(formula, random):
    celsius = random.uniform(0.1, 99.9, 1000)
    ours = formula("water_density", temperature_c=celsius) * 1000
    theirs = numpy.array([coolprop.PropsSI("D", "T", t + ZERO, "P", 101325, "Water") for t in celsius])
    assert numpy.abs(ours / theirs - 1).max() < 1e-5


def test_saturated_densities(formula, random):
    celsius = random.uniform(0.02, 100.0, 300)
    for name, quality in [("saturated_liquid_density", 0), ("saturated_vapour_density", 1)]:
        ours = formula(name, temperature_c=celsius)
        theirs = numpy.array([coolprop.PropsSI("D", "T", t + ZERO, "Q", quality, "Water") for t in celsius])
        ratio = ours / theirs
        # Whatever unit the formula gives, it is one unit; the source states 0.01 % for the liquid.
        scale = 10.0 ** numpy.round(numpy.log10(numpy.median(ratio)))
        assert numpy.abs(ratio / scale - 1).max() < (1e-4 if quality == 0 else 1e-3), name


def test_a_temperature_outside_its_range_has_no_result(formula):
    celsius = numpy.array([-0.001, 0.0, 100.0, 100.001, numpy.nan])
    with_result = ~numpy.isnan(formula("vapour_pressure", temperature_c=celsius))
    assert with_result.tolist() == [False, True, True, False, False]
