"""Arrays: as NumPy's own functions treat them, and each element as the number alone."""

import math
import warnings

import numpy as np
import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st
from hypothesis.extra import numpy as arrays

import overwater

from middle import number, ranges

TEMPERATURES = np.linspace(0.0, 100.0, 1001)


@pytest.fixture(autouse=True)
def quiet():
    with np.errstate(invalid="ignore"):
        yield


@pytest.mark.parametrize("name", overwater.FUNCTIONS)
def test_every_element_is_the_number_to_the_bit(name):
    random = np.random.default_rng(20261128)
    columns = {}
    for key, (least, greatest) in ranges(name).items():
        values = random.uniform(least, greatest, 41)
        values[:3] = least, greatest, np.nextafter(greatest, np.inf)
        columns[key] = random.permutation(values)
    found = getattr(overwater, name)(**columns)
    expected = [number(name, row) for row in zip(*columns.values(), strict=True)]
    assert np.array_equal(found, expected, equal_nan=True)
    assert found.dtype == np.float64 and found.shape == (41,)
    assert np.isnan(found).any()


@pytest.mark.parametrize("shape", [(), (1,), (1, 1), (0,), (0, 3), (7,), (3, 5), (2, 1, 4)])
def test_shapes(shape):
    values = np.full(shape, 20.0)
    found = overwater.vapour_pressure(values)
    assert np.shape(found) == shape
    assert isinstance(found, np.float64 if shape == () else np.ndarray)
    assert np.all(found == overwater.vapour_pressure(20.0))


def test_shapes_broadcast():
    found = overwater.dry_amount(np.array([[50.0], [60.0]]), temperature_c=np.array([10.0, 20.0, 30.0]), pressure_kpa=101.325)
    assert found.shape == (2, 3)
    for row, volume in enumerate((50.0, 60.0)):
        for column, temperature in enumerate((10.0, 20.0, 30.0)):
            assert found[row, column] == overwater.dry_amount(volume, temperature_c=temperature, pressure_kpa=101.325)


def test_shapes_that_do_not_broadcast_are_named():
    with pytest.raises(overwater.OverwaterError, match=r"volume_cm3 of shape \(3,\), temperature_c of shape \(4,\)"):
        overwater.dry_amount(np.ones(3), temperature_c=np.ones(4), pressure_kpa=100.0)


@pytest.mark.parametrize("kind", [np.float32, np.float16, np.int8, np.int64, np.uint16, np.uint64, ">f8", np.longdouble])
def test_kinds_of_numbers_are_cast_as_numpy_casts(kind):
    values = np.array([0, 20, 99], dtype=kind)
    if kind is np.longdouble:
        with pytest.raises(TypeError):
            overwater.vapour_pressure(values)
        return
    assert np.array_equal(overwater.vapour_pressure(values), [overwater.vapour_pressure(v) for v in (0.0, 20.0, 99.0)])


@pytest.mark.parametrize("values", [np.array([True]), np.array([1j]), np.array(["20"]), np.array([None]), np.array(["2026-11-28"], "M8[D]"), np.array([1], "m8[s]")])
def test_kinds_that_are_no_numbers_are_named(values):
    with pytest.raises(TypeError, match="temperature_c"):
        overwater.vapour_pressure(values)


def test_lists_tuples_and_buffers():
    import array

    expected = overwater.vapour_pressure(np.array([20.0, 30.0]))
    for values in ([20.0, 30], (20, 30.0), range(20, 31, 10), [np.float32(20), np.int8(30)], array.array("d", [20.0, 30.0]), memoryview(array.array("d", [20.0, 30.0]))):
        assert np.array_equal(overwater.vapour_pressure(values), expected)
    assert overwater.vapour_pressure([]).shape == (0,)


@pytest.mark.parametrize(
    ("value", "words"),
    [
        ([np.True_, 20.0], r"temperature_c\[0\] is np.True_"),
        (np.array(["20", "x"]), r"temperature_c\[0\] is '20'"),
        (np.array([20.0, "x"], object), r"temperature_c\[1\] is 'x'"),
        (np.longdouble(20), "temperature_c is of float128, which has more digits"),
    ],
)
def test_what_numpy_would_take_for_a_number_or_name_by_itself(value, words):
    with pytest.raises(TypeError, match=words):
        overwater.vapour_pressure(value)


def test_numbers_of_other_packages_are_named():
    uncertainties, sparse = pytest.importorskip("uncertainties"), pytest.importorskip("scipy.sparse")
    for value in (uncertainties.ufloat(20, 1), [uncertainties.ufloat(20, 1)]):
        with pytest.raises(TypeError, match="temperature_c.* nominal_value; overwater.Budget"):
            overwater.vapour_pressure(value)
    with pytest.raises(TypeError, match=r"temperature_c is a sparse array; give temperature_c.toarray\(\)"):
        overwater.vapour_pressure(sparse.csr_array(np.array([[20.0]])))


@settings(deadline=None, max_examples=60, suppress_health_check=[HealthCheck.too_slow])
@given(data=st.data())
def test_shapes_kinds_strides_and_nan_equal_the_numbers(data):
    name = data.draw(st.sampled_from(["dry_amount", "vapour_pressure", "station_pressure", "water_density"]))
    keys = ranges(name)
    shapes = data.draw(arrays.mutually_broadcastable_shapes(num_shapes=len(keys), max_dims=3, max_side=5)).input_shapes
    values = {}
    with np.errstate(invalid="ignore"):
        for (key, (least, greatest)), shape in zip(keys.items(), shapes, strict=True):
            span = greatest - least
            numbers = st.floats(least - 0.1 * span, greatest + 0.1 * span) | st.just(math.nan)
            kind = data.draw(st.sampled_from([np.float64, np.float32, np.int32]))
            if kind is np.int32:
                numbers = st.integers(math.ceil(least), math.floor(min(greatest, 1e6)))
                column = data.draw(arrays.arrays(kind, shape, elements=numbers))
            else:
                column = data.draw(arrays.arrays(np.float64, shape, elements=numbers)).astype(kind)
            if column.ndim and data.draw(st.booleans()):
                wide = np.full((*column.shape[:-1], 3 * column.shape[-1]), np.nan, dtype=column.dtype) if kind is not np.int32 else np.zeros((*column.shape[:-1], 3 * column.shape[-1]), column.dtype)
                wide[..., 1::3] = column
                column = wide[..., 1::3]
            if column.ndim and data.draw(st.booleans()):
                column = column[..., ::-1]
            if data.draw(st.booleans()):
                column = column.T.copy().T
            column.flags.writeable = False
            values[key] = column
        found = getattr(overwater, name)(**values)
    flat = [np.ravel(one) for one in np.broadcast_arrays(*values.values())]
    expected = np.reshape([number(name, row) for row in zip(*flat, strict=True)], np.shape(found))
    assert np.array_equal(found, expected, equal_nan=True)


def test_out_of_range_is_nan_there_alone_and_numpy_decides_what_to_say():
    values = np.array([20.0, 150.0, 30.0])
    with np.errstate(invalid="ignore"), warnings.catch_warnings():
        warnings.simplefilter("error")
        found = overwater.vapour_pressure(values)
    assert np.isnan(found).tolist() == [False, True, False]
    with np.errstate(invalid="raise"), pytest.raises(FloatingPointError):
        overwater.vapour_pressure(values)
    with np.errstate(invalid="warn"), pytest.warns(RuntimeWarning, match="invalid value"):
        overwater.vapour_pressure(values)


@pytest.mark.parametrize("rows", [3, 1000, 300_000])
def test_nan_in_is_nan_out_without_a_word(rows):
    values = np.full(rows, 20.0)
    values[rows // 2] = np.nan
    with np.errstate(all="raise"):
        found = overwater.vapour_pressure(values)
        amount = overwater.dry_amount(50.0, temperature_c=values, pressure_kpa=values + 80.0)
    assert np.isnan(found).sum() == 1 and np.isnan(found[rows // 2])
    assert np.isnan(amount).sum() == 1


def test_the_flags_of_others_are_left_alone():
    # The cast of the results to half precision, inside the same call, overflows: that is still told, and nothing else.
    out = np.zeros(20_000, np.float16)
    with np.errstate(over="raise", invalid="raise"), pytest.raises(FloatingPointError, match="overflow"):
        overwater.real_molar_volume_oxygen(np.full(20_000, 20.0), pressure_kpa=1e-3, out=out, casting="unsafe")


def test_one_bad_row_in_many_is_told_by_whichever_thread_finds_it():
    values = np.full(1_000_000, 20.0)
    values[-1] = 200.0
    with np.errstate(invalid="raise"), pytest.raises(FloatingPointError):
        overwater.vapour_pressure(values)
    with np.errstate(invalid="ignore"):
        found = overwater.vapour_pressure(values)
    assert np.isnan(found).sum() == 1 and np.all(found[:-1] == overwater.vapour_pressure(20.0))


def test_many_rows_over_threads_equal_few_rows_at_a_time():
    values = np.random.default_rng(1).uniform(-5.0, 105.0, 400_003)
    with np.errstate(invalid="ignore"):
        whole = overwater.vapour_pressure(values)
        parts = np.concatenate([overwater.vapour_pressure(values[start : start + 1000]) for start in range(0, len(values), 1000)])
        strided = overwater.vapour_pressure(np.repeat(values, 2)[::2])
        turned = overwater.vapour_pressure(values[::-1])[::-1]
    for other in (parts, strided, turned):
        assert np.array_equal(whole, other, equal_nan=True)


def test_out_and_where():
    out = np.full(4, -1.0)
    given = overwater.vapour_pressure(np.array([10.0, 20.0, 30.0, 40.0]), out=out, where=np.array([True, False, True, False]))
    assert given is out
    assert out[1] == out[3] == -1.0 and out[0] == overwater.vapour_pressure(10.0) and out[2] == overwater.vapour_pressure(30.0)


@pytest.mark.parametrize("rows", [5, 700, 200_000])
def test_out_may_be_an_input(rows):
    expected = overwater.vapour_pressure(np.linspace(0, 100, rows))
    values = np.linspace(0, 100, rows)
    overwater.vapour_pressure(values, out=values)
    assert np.array_equal(values, expected)
    shifted = np.append(np.linspace(0, 100, rows), 0.0)
    overwater.vapour_pressure(shifted[:-1], out=shifted[1:])
    assert np.array_equal(shifted[1:], expected)
    volumes = np.linspace(50, 100, rows)
    amounts = overwater.dry_amount(volumes, temperature_c=20.0, pressure_kpa=100.0)
    overwater.dry_amount(volumes, temperature_c=20.0, pressure_kpa=100.0, out=volumes)
    assert np.array_equal(volumes, amounts)


def test_out_of_the_wrong_kind_is_refused():
    with pytest.raises(TypeError):
        overwater.vapour_pressure(np.array([20.0]), out=np.zeros(1, int))
    with pytest.raises(ValueError):
        readonly = np.zeros(1)
        readonly.flags.writeable = False
        overwater.vapour_pressure(np.array([20.0]), out=readonly)


def test_dtype_signature_casting_and_order():
    values = np.array([[20.0, 30.0]] * 2)
    assert overwater.vapour_pressure(values, dtype=float).dtype == np.float64
    assert np.array_equal(overwater.vapour_pressure(values, signature="d->d"), overwater.vapour_pressure(values))
    assert overwater.vapour_pressure(values, order="F").flags.f_contiguous
    with pytest.raises(TypeError):
        overwater.vapour_pressure(values, dtype=np.float32)
    with pytest.raises(TypeError):
        overwater.vapour_pressure(np.array([20]), casting="no")


def test_the_other_methods_of_a_ufunc_go_row_by_row():
    # Sea-level pressure from a pressure and a height: each step depends on the one before.
    ufunc = overwater.station_pressure.__self__.ufunc
    assert isinstance(ufunc, np.ufunc) and ufunc.nin == len(ranges("station_pressure"))
    if ufunc.nin == 2:
        steps = np.array([100.0, 10.0, 20.0, 30.0])
        expected, value = [100.0], 100.0
        for height in steps[1:]:
            value = overwater.station_pressure(value, **{list(ranges("station_pressure"))[1]: height})
            expected.append(value)
        assert np.array_equal(ufunc.accumulate(steps), expected)
        assert ufunc.reduce(steps) == expected[-1]
        table = ufunc.outer(np.array([100.0, 101.0]), np.array([0.0, 50.0, 100.0]))
        assert table.shape == (2, 3) and table[1, 2] == overwater.station_pressure(101.0, altitude_m=100.0)
    values = np.array([10.0, 20.0])
    overwater.vapour_pressure.__self__.ufunc.at(values, [1])
    assert values.tolist() == [10.0, overwater.vapour_pressure(20.0)]


def test_masks_stay():
    values = np.ma.array([20.0, 999.0, 30.0], mask=[False, True, False])
    found = overwater.vapour_pressure(values)
    assert isinstance(found, np.ma.MaskedArray) and found.mask.tolist() == [False, True, False]
    assert found[0] == overwater.vapour_pressure(20.0)
    amounts = overwater.dry_amount(np.array([50.0, 60.0, 70.0]), temperature_c=values, pressure_kpa=np.ma.array([100.0] * 3, mask=[True, False, False]))
    assert amounts.mask.tolist() == [True, True, False]


def test_a_subclass_comes_back_as_itself():
    class Column(np.ndarray):
        pass

    assert type(overwater.vapour_pressure(np.array([20.0]).view(Column))) is Column


def test_misaligned_memory():
    raw = np.zeros(8 * 5 + 1, np.uint8)
    values = raw[1:].view(np.float64)
    values[:] = 20.0
    assert not values.flags.aligned
    assert np.all(overwater.vapour_pressure(values) == overwater.vapour_pressure(20.0))


def test_numbers_of_numpy_are_numbers():
    twenty = overwater.vapour_pressure(20.0)
    for number in (np.float64(20), np.float32(20), np.int64(20), np.uint8(20)):
        assert overwater.vapour_pressure(number) == twenty
    assert type(overwater.vapour_pressure(np.float64(20))) is float
    # As a plain number out of range, not as a value of an array.
    with pytest.raises(overwater.OverwaterError, match="temperature_c = 200 degC"):
        overwater.vapour_pressure(np.float64(200))


@pytest.mark.skipif(np.dtype(np.longdouble).itemsize == 8, reason="a long double is a double here")
def test_more_than_double_precision_is_not_cut():
    with pytest.raises(TypeError, match="temperature_c"):
        overwater.vapour_pressure(np.array([20], np.longdouble))
