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
    twice = overwater.vapour_pressure(pandas.DataFrame([[20.0, 30.0]], columns=["a", "a"]))
    assert twice.to_numpy().tolist() == [[overwater.vapour_pressure(20.0), overwater.vapour_pressure(30.0)]]
    with pytest.raises(TypeError, match=r"temperature_c\['b'\] is an array of str"):
        overwater.vapour_pressure(pandas.DataFrame({"a": [20.0], "b": ["x"]}))


def test_pandas_missing_values_have_no_result():
    column = pandas.Series([20.0, None, 30.0])
    assert overwater.vapour_pressure(column).isna().tolist() == [False, True, False]
    nullable = pandas.Series([20.0, None, 30.0], dtype="Float64")
    for found in (overwater.vapour_pressure(nullable), overwater.dry_amount(86.5, temperature_c=nullable, pressure_kpa=100.0)):
        assert isinstance(found, pandas.Series) and found.isna().tolist() == [False, True, False]
    whole = pandas.Series([101, None], dtype="Int64")
    with np.errstate(invalid="raise"):
        found = overwater.dry_amount(pandas.Series([50.0, 60.0]), temperature_c=20.0, pressure_kpa=whole)
    assert str(found.dtype) == "Float64" and found.isna().tolist() == [False, True]


def test_pandas_missing_sign_is_no_number():
    for value in (pandas.NA, pandas.NaT, [20.0, pandas.NA]):
        with pytest.raises(TypeError, match="temperature_c"):
            overwater.vapour_pressure(value)


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
    frame = polars.DataFrame({place: columns[place]})
    expressions = {**READING, place: polars.col(place)}
    # What lies in memory where a null is, often 0, is out of range for some of them.
    with np.errstate(invalid="raise"):
        eager = overwater.dry_amount(**columns)
        lazy = frame.lazy().select(overwater.dry_amount(**expressions)).collect()["amount_mmol"]
    for found in (eager, lazy):
        assert found.to_list() == [overwater.dry_amount(**READING), None, overwater.dry_amount(**READING)]


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


def test_polars_tells_null_from_no_result():
    column = polars.Series([20.0, None, 150.0, float("nan")])
    with np.errstate(invalid="ignore"):
        found = overwater.vapour_pressure(column)
    assert found.is_null().to_list() == [False, True, False, False]
    assert found.is_nan().to_list() == [False, None, True, True]
    assert overwater.vapour_pressure(polars.Series([None, None])).to_list() == [None, None]


@pytest.mark.parametrize("kind", [polars.Float32, polars.Int8, polars.UInt64, polars.Decimal(10, 2)])
def test_polars_numbers_of_every_kind(kind):
    column = polars.Series([20, 30]).cast(kind)
    expected = [overwater.vapour_pressure(20.0), overwater.vapour_pressure(30.0)]
    assert overwater.vapour_pressure(column).to_list() == expected
    assert overwater.dry_amount(column, temperature_c=np.float32(20), pressure_kpa=100).to_list()[0] == overwater.dry_amount(20, temperature_c=20, pressure_kpa=100)


def test_polars_in_groups_and_beside_masks():
    frame = polars.DataFrame({"g": ["a", "b", "a"], "t": TEMPERATURES})
    grouped = frame.group_by("g", maintain_order=True).agg(overwater.vapour_pressure(polars.col("t")).sum())
    assert grouped["vapour_pressure_kpa"].to_list() == [EXPECTED[0] + EXPECTED[2], EXPECTED[1]]
    masked = np.ma.array([100.0, 101.0], mask=[False, True])
    found = overwater.dry_amount(86.5, temperature_c=polars.Series([20.0, 21.0]), pressure_kpa=masked)
    assert found.is_null().to_list() == [False, True]


def test_polars_texts_are_named():
    for column in (polars.Series([True]), polars.Series([20.0]).to_frame(), polars.LazyFrame({"t": [20.0]}), polars.all()):
        with pytest.raises(TypeError, match="temperature_c is a"):
            overwater.vapour_pressure(column)
    with pytest.raises(TypeError, match=r"temperature_c\[1\] is 'x'"):
        overwater.vapour_pressure(polars.Series([None, "x"]))
    with pytest.raises(Exception, match=r"temperature_c\[0\] is '20'"):
        polars.DataFrame({"t": ["20"]}).select(overwater.vapour_pressure(polars.col("t")))
    with pytest.raises(TypeError, match="volume_cm3 is a column of Polars beside an array of 2 dimensions"):
        overwater.dry_amount(polars.Series([50.0, 60.0]), temperature_c=np.full((2, 2), 20.0), pressure_kpa=100.0)
    with pytest.raises(TypeError, match="out does not go with temperature_c"):
        overwater.vapour_pressure(polars.Series([20.0]), out=np.zeros(1))


COLUMNS = {
    "pandas": pandas.Series,
    "polars": polars.Series,
    "xarray": lambda values: xarray.DataArray(values, dims="row"),
    "dask": lambda values: dask_array.from_array(np.array(values), chunks=1),
}


@pytest.mark.parametrize("first", COLUMNS)
@pytest.mark.parametrize("second", COLUMNS)
def test_columns_of_packages_that_do_not_go_together_are_named(first, second):
    volumes, temperatures = COLUMNS[first]([50.0, 60.0]), COLUMNS[second]([20.0, 21.0])
    if first == second or {first, second} == {"xarray", "dask"}:
        found = overwater.dry_amount(volumes, temperature_c=temperatures, pressure_kpa=100.0)
        assert np.array(found).tolist() == overwater.dry_amount([50.0, 60.0], temperature_c=[20.0, 21.0], pressure_kpa=100.0).tolist()
        return
    with pytest.raises(TypeError, match=f"volume_cm3 of {first}, temperature_c of {second}"):
        overwater.dry_amount(volumes, temperature_c=temperatures, pressure_kpa=100.0)


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
    ("column", "said"),
    [
        (pandas.Series([293.15], name="temperature_k"), "k"),
        (pandas.Series([68.0], name="temperature / F"), "f"),
        (pandas.Series([68.0], name="bath_degf"), "degf"),
        (pandas.Series([293.15], name="T/degK"), "degk"),
        (polars.Series("temperature (K)", [293.15]), "k"),
        (xarray.DataArray([293.15], attrs={"units": "K"}), "K"),
        (xarray.DataArray([293.15], name="temperature_k"), "k"),
        (polars.col("T / K"), "k"),
        (polars.col("t").alias("T / K"), "k"),
        (pandas.DataFrame({"bath_1": [20.0], "bath / K": [293.15]}), "k"),
        (xarray.Dataset({"bath": ("row", [293.15], {"units": "K"})}), "K"),
        # Of another kind altogether.
        (pandas.Series([20.0], name="pressure_kpa"), "kPa"),
        (pandas.Series([20.0], name="altitude_m"), "m"),
        (pandas.Series([20.0], name="water_density_g_per_cm3"), "g/cm3"),
        (pandas.Series([20.0], name="p (mm Hg)"), "mmhg"),
        (pandas.Series([20.0], name="m / g"), "g"),
        (polars.Series("gas_ml", [20.0]), "ml"),
        (xarray.DataArray([20.0], attrs={"units": "hPa"}), "hPa"),
    ],
)
def test_a_column_that_says_another_unit_is_refused(column, said):
    with pytest.raises(overwater.OverwaterError, match="temperature_c") as refused:
        overwater.vapour_pressure(column)
    error = refused.value
    assert (error.code, error.parameter, error.value, error.allowed) == ("contradiction", "temperature_c", said, "degC")
    assert error.advice in str(error)


# pressure_c may be run c, temperature_min the least one: units of another kind that may as well be none.
@pytest.mark.parametrize("name", ["temperature_c", "temperature / degC", "t / deg C", "t", "K", None, "bath_2", "run_g", "pressure_h", "temperature_min", "temperature_in"])
def test_other_names_are_not_in_the_way(name):
    found = overwater.vapour_pressure(pandas.Series(TEMPERATURES, name=name))
    assert found.tolist() == EXPECTED


# That each is another unit of the same kind is what the package pint says.
@pytest.mark.parametrize(
    ("argument", "spelling", "of_pint"),
    [
        ("pressure_kpa", "mb", "mbar"),
        ("pressure_kpa", "mm Hg", "mmHg"),
        ("pressure_kpa", "in Hg", "inHg"),
        ("volume_cm3", "litre", "litre"),
        ("volume_cm3", "litres", "litres"),
        ("volume_cm3", "µl", "microlitre"),
        ("volume_cm3", "μl", "microlitre"),
        ("inside_minus_outside_mm", "inches", "inches"),
        ("temperature_c", "degK", "degK"),
        ("temperature_c", "degrees F", "degF"),
    ],
)
def test_spellings_of_other_units(argument, spelling, of_pint):
    pint = pytest.importorskip("pint")
    ours = {"cm3": "cm**3", "c": "degC", "kpa": "kPa", "mm": "mm"}[argument.rpartition("_")[2]]
    unit = pint.UnitRegistry()
    assert unit.Quantity(1.0, of_pint).check(unit.Quantity(1.0, ours).dimensionality)
    assert unit.Quantity(1.0, of_pint).to(ours).magnitude != pytest.approx(1.0)
    for column in (xarray.DataArray([20.0], attrs={"units": spelling}), pandas.Series([20.0], name=f"reading / {spelling}")):
        with pytest.raises(overwater.OverwaterError, match=argument):
            overwater.dry_amount(**{**READING, argument: column})


@pytest.mark.parametrize(
    ("function", "argument", "name"),
    [
        (overwater.adiabatic_rise, "concentration_mol_per_dm3", "c / mol/dm3"),
        (overwater.adiabatic_rise, "concentration_mol_per_dm3", "concentration_mol_per_dm3"),
        (overwater.adiabatic_rise, "concentration_mol_per_dm3", "strength_mol_per_dm3"),
    ],
)
def test_a_unit_of_two_is_not_one_of_them(function, argument, name):
    values = {row["name"]: (row["least"] + row["greatest"]) / 2 for row in function.__self__.inputs}
    values[argument] = pandas.Series([values[argument]], name=name)
    assert function(**values).notna().all()
    with pytest.raises(overwater.OverwaterError, match="temperature_c says degC"):
        function(**{**values, argument: values[argument].rename("temperature_c")})


def test_a_dataset_says_the_new_unit_of_each_variable():
    attributes = {"units": "degC", "long_name": "temperature of the bath", "place": "bench 2"}
    whole = xarray.Dataset({"a": ("row", TEMPERATURES, attributes), "b": ("row", TEMPERATURES)}, attrs={"title": "lesson"})
    with xarray.set_options(keep_attrs=True):
        found = overwater.vapour_pressure(whole)
    assert found.a.attrs == {"units": "kPa", "place": "bench 2"} and found.b.attrs == {} and found.attrs == {"title": "lesson"}
    assert found.a.values.tolist() == EXPECTED and whole.a.attrs == attributes
    with xarray.set_options(keep_attrs=True):
        variable = overwater.vapour_pressure(xarray.Variable("row", TEMPERATURES, attributes))
    assert variable.attrs == {"units": "kPa", "place": "bench 2"} and variable.values.tolist() == EXPECTED
