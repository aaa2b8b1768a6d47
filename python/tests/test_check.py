"""The reasons behind the NaN: for every row those that one call would raise."""

import math

import numpy
import pytest

import overwater
from overwater import OverwaterError, UnknownNameError, check


def test_every_row_that_one_call_refuses_is_listed_with_its_reason():
    volumes = [86.5, -1.0, 60.0, math.nan, 40.0]
    temperatures = [21.0, 20.0, 999.0, 20.0, 20.0]
    found = check("dry_amount", volume_cm3=volumes, temperature_c=numpy.array(temperatures), pressure_kpa=100.36, inside_minus_outside_mm=0)
    assert [row.row for row in found] == [1, 2, 3]
    for row in found[:2]:
        with pytest.raises(OverwaterError) as refused:
            overwater.dry_amount(volumes[row.row], temperature_c=temperatures[row.row], pressure_kpa=100.36)
        assert (row.code, row.parameter) == (refused.value.code, refused.value.parameter)
    assert found[2].parameter == "volume_cm3"
    with numpy.errstate(invalid="ignore"):
        values = overwater.dry_amount(numpy.array(volumes), temperature_c=temperatures, pressure_kpa=100.36)
    assert [index for index, value in enumerate(values) if math.isnan(value)] == [row.row for row in found]


def test_long_columns_keep_their_rows():
    temperatures = numpy.full(12_345, 20.0)
    bad = [0, 4_999, 5_000, 12_344]
    temperatures[bad] = 150.0
    assert [row.row for row in check(overwater.vapour_pressure, temperature_c=temperatures)] == bad
    assert check(overwater.vapour_pressure, temperature_c=20.0) == []
    assert [row.row for row in check(overwater.vapour_pressure, temperature_c=150)] == [0]


def test_what_cannot_be_asked_is_refused():
    with pytest.raises(UnknownNameError, match="vapour_pressure"):
        check("vapor_pressure", temperature_c=[20.0])
    with pytest.raises(OverwaterError):
        check("molar_volume", temperature_c=[20.0, 21.0], pressure_kpa=[100.0])
    with pytest.raises((TypeError, ValueError)):
        check("vapour_pressure", temperature_c=["warm"])
