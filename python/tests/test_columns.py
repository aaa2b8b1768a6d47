"""Columns of other packages come back as their own kind."""

import numpy as np
import pytest

import overwater

pandas = pytest.importorskip("pandas")
polars = pytest.importorskip("polars")
xarray = pytest.importorskip("xarray")
dask_array = pytest.importorskip("dask.array")

TEMPERATURES = [15.0, 20.0, 25.0]
EXPECTED = [overwater.vapour_pressure(value) for value in TEMPERATURES]
READING = {"volume_cm3": 86.5, "temperature_c": 21.0, "pressure_kpa": 100.36}


def test_pandas_series_keep_their_index():
    column = pandas.Series(TEMPERATURES, index=["a", "b", "c"], name="temperature_c")
    found = overwater.vapour_pressure(column)
    assert isinstance(found, pandas.Series) and list(found.index) == ["a", "b", "c"]
    assert found.tolist() == EXPECTED and found.name == "vapour_pressure_kpa"
    assert overwater.vapour_pressure(column.rename(None)).name is None


def test_pandas_frames_and_mixed_arguments():
    frame = pandas.DataFrame({"volume_cm3": [50.0, 60.0], "temperature_c": [20, 21], "pressure_kpa": [100.0, 101.0]})
    found = overwater.dry_amount(frame.volume_cm3, temperature_c=frame.temperature_c, pressure_kpa=frame["pressure_kpa"])
    assert isinstance(found, pandas.Series) and found.name == "amount_mmol"
    assert found.tolist() == [
        overwater.dry_amount(50.0, temperature_c=20, pressure_kpa=100.0),
        overwater.dry_amount(60.0, temperature_c=21, pressure_kpa=101.0),
    ]
    whole = overwater.vapour_pressure(pandas.DataFrame({"a": TEMPERATURES, "b": TEMPERATURES}))
    assert isinstance(whole, pandas.DataFrame) and whole["b"].tolist() == EXPECTED


def test_pandas_missing_values_have_no_result():
    column = pandas.Series([20.0, None, 30.0])
    assert overwater.vapour_pressure(column).isna().tolist() == [False, True, False]
    nullable = pandas.Series([20.0, None, 30.0], dtype="Float64")
    for found in (overwater.vapour_pressure(nullable), overwater.dry_amount(86.5, temperature_c=nullable, pressure_kpa=100.0)):
        assert isinstance(found, pandas.Series) and found.isna().tolist() == [False, True, False]


@pytest.mark.parametrize("column", [["20", "21"], [True, False], [None, "x"], pandas.to_datetime(["2026-11-28"]), [1 + 0j]])
def test_pandas_columns_that_are_no_numbers_are_named(column):
    with pytest.raises(TypeError, match="temperature_c"):
        overwater.vapour_pressure(pandas.Series(column))


def test_polars_series():
    column = polars.Series("temperature_c", TEMPERATURES)
    found = overwater.vapour_pressure(column)
    assert isinstance(found, polars.Series) and found.to_list() == EXPECTED and found.name == "vapour_pressure_kpa"


@pytest.mark.parametrize("place", list(READING))
def test_polars_nulls_have_no_result_in_any_argument(place):
    columns = {**READING, place: polars.Series(place, [READING[place], None, READING[place]])}
    # What lies in memory where a null is, often 0, goes through the function too, and is thrown away by Polars.
    with np.errstate(invalid="ignore"):
        values = overwater.dry_amount(**columns).to_list()
    assert values[0] == values[2] == overwater.dry_amount(**READING)
    assert values[1] is None or np.isnan(values[1])


def test_polars_expressions_eager_and_lazy():
    frame = polars.DataFrame({"temperature_c": TEMPERATURES})
    expression = overwater.vapour_pressure(polars.col("temperature_c"))
    assert isinstance(expression, polars.Expr)
    for found in (frame.with_columns(expression), frame.lazy().with_columns(expression).collect()):
        assert found.columns == ["temperature_c", "vapour_pressure_kpa"]
        assert found["vapour_pressure_kpa"].to_list() == EXPECTED


def test_polars_expressions_of_several_columns():
    frame = polars.DataFrame({"v": [50.0, 60.0], "t": [20.0, 21.0]})
    expression = overwater.dry_amount(polars.col("v"), temperature_c=polars.col("t"), pressure_kpa=100.0)
    found = frame.lazy().select(expression).collect()
    assert found["amount_mmol"].to_list() == [
        overwater.dry_amount(50.0, temperature_c=20.0, pressure_kpa=100.0),
        overwater.dry_amount(60.0, temperature_c=21.0, pressure_kpa=100.0),
    ]


def test_polars_texts_are_named():
    for column in (polars.Series(["20"]), polars.Series([True])):
        with pytest.raises(TypeError, match="temperature_c"):
            overwater.vapour_pressure(column)


def test_xarray_keeps_its_coordinates_and_says_the_new_unit():
    column = xarray.DataArray(TEMPERATURES, dims="row", coords={"row": [1, 2, 3]}, name="temperature_c", attrs={"units": "degC", "place": "bench 2"})
    with xarray.set_options(keep_attrs=True):
        found = overwater.vapour_pressure(column)
    assert isinstance(found, xarray.DataArray) and found.row.values.tolist() == [1, 2, 3]
    assert found.values.tolist() == EXPECTED and found.name == "vapour_pressure_kpa"
    assert found.attrs == {"units": "kPa", "place": "bench 2"}


def test_dask_stays_lazy_and_chunked():
    column = dask_array.from_array(np.array(TEMPERATURES * 4), chunks=5)
    found = overwater.vapour_pressure(column)
    assert isinstance(found, dask_array.Array) and found.chunks == column.chunks
    assert found.compute().tolist() == EXPECTED * 4
    amounts = overwater.dry_amount(86.5, temperature_c=column, pressure_kpa=100.0)
    assert amounts.compute()[0] == overwater.dry_amount(86.5, temperature_c=15.0, pressure_kpa=100.0)


@pytest.mark.parametrize(
    "column",
    [
        pandas.Series([293.15], name="temperature_k"),
        pandas.Series([68.0], name="temperature / F"),
        polars.Series("temperature (K)", [293.15]),
        xarray.DataArray([293.15], attrs={"units": "K"}),
        xarray.DataArray([293.15], name="temperature_k"),
    ],
)
def test_a_column_that_says_another_unit_is_refused(column):
    with pytest.raises(overwater.OverwaterError, match="temperature_c") as refused:
        overwater.vapour_pressure(column)
    assert (refused.value.code, refused.value.parameter) == ("contradiction", "temperature_c")


@pytest.mark.parametrize("name", ["temperature_c", "temperature / degC", "t", "K", None, "bath_2", "run_g"])
def test_other_names_are_not_in_the_way(name):
    found = overwater.vapour_pressure(pandas.Series(TEMPERATURES, name=name))
    assert found.tolist() == EXPECTED
