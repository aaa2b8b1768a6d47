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


def test_what_is_missing_and_what_is_infinite():
    pandas, polars = pytest.importorskip("pandas"), pytest.importorskip("polars")
    numbers = [20.0, None, math.inf, math.nan, -math.inf]
    for column in (
        numbers,
        numpy.array(numbers, float),
        pandas.Series(numbers),
        pandas.Series([20.0, pandas.NA, math.inf, pandas.NA, -math.inf], dtype=object).astype("Float64"),
        polars.Series(numbers),
    ):
        found = check("vapour_pressure", temperature_c=column)
        assert [(row.row, row.code) for row in found] == [(1, "missing"), (2, "not_a_number"), (3, "missing"), (4, "not_a_number")]
        assert found[1].message.startswith("temperature_c = inf degC is not a finite number")
        assert found[0].message == "temperature_c is missing; allowed: 0 to 100 degC"
    for number, code in ((math.inf, "not_a_number"), (math.nan, "missing")):
        found = check("dry_amount", volume_cm3=[50.0, 60.0], temperature_c=number, pressure_kpa=100.0)
        assert [(row.row, row.code, row.parameter) for row in found] == [(0, code, "temperature_c"), (1, code, "temperature_c")]


def test_the_usual_value_holds_as_in_a_call():
    assert check("dry_amount", volume_cm3=[86.5], temperature_c=21.0, pressure_kpa=100.36) == []


def test_what_cannot_be_asked_is_refused():
    with pytest.raises(UnknownNameError, match="did you mean vapour_pressure"):
        check("vapor_pressure", temperature_c=[20.0])
    with pytest.raises(OverwaterError, match="temperature_c of 2 rows, pressure_kpa of 1 rows contradicts"):
        check("molar_volume", temperature_c=[20.0, 21.0], pressure_kpa=[100.0])
    for rows in ([], [20.0]):
        with pytest.raises(TypeError, match="did you mean temperature_c"):
            check("vapour_pressure", temperature=rows)
        with pytest.raises(TypeError, match="missing the argument pressure_kpa"):
            check("molar_volume", temperature_c=rows)


def test_what_is_no_column_of_numbers_is_named():
    polars, pandas = pytest.importorskip("polars"), pytest.importorskip("pandas")
    words = {
        r"temperature_c is 'abc', not a number": "abc",
        r"temperature_c is None": None,
        r"temperature_c is True": True,
        r"temperature_c\[1\] is 'warm'": [20.0, "warm"],
        r"temperature_c\[0\] is True": [True],
        r"temperature_c\[0\] is a column in a column": [[20.0]],
        r"temperature_c has 2 dimensions": numpy.ones((2, 2)),
        r"temperature_c is an expression, which has no rows yet": polars.col("t"),
    }
    for match, value in words.items():
        with pytest.raises(TypeError, match=match):
            check("vapour_pressure", temperature_c=value)
    with pytest.raises(OverwaterError, match="temperature_k says k"):
        check("vapour_pressure", temperature_c=pandas.Series([293.15], name="temperature_k"))
    assert check("vapour_pressure", temperature_c=numpy.array(20.0)) == []
