"""One number at a time: values, mistakes, refusals."""

import enum
import inspect
import math
import pickle
import shutil
import subprocess
import sys
from decimal import Decimal
from fractions import Fraction
from pathlib import Path

import pytest

import overwater
from overwater import OverwaterError

from middle import ranges


def test_published_values():
    # Vapour pressure of water, CRC Handbook: 2.3388 kPa at 20 degC, 3.1690 at 25, 101.32 at 100 (5 figures, IAPWS-95).
    # The equation used here is stated to 0.1 %; the printed values agree with it to 0.02 %.
    for temperature, pressure in [(20.0, 2.3388), (25.0, 3.1690), (60.0, 19.932)]:
        assert overwater.vapour_pressure(temperature) == pytest.approx(pressure, rel=1e-3)
    # Density of air-free water, Kell 1975 table as in the CRC Handbook: 0.998206 g/cm3 at 20 degC.
    assert overwater.water_density(20.0) == pytest.approx(0.998206, abs=2e-6)
    # 0.193 dm3 over water at 23.0 degC and 762 mmHg: 7.74e-3 mol (Purdue University general chemistry help, gas over
    # water, problem 3).
    amount = overwater.dry_amount(193.0, temperature_c=23.0, pressure_kpa=762 * 0.133322387415)
    assert amount == pytest.approx(7.74, abs=0.005)


def test_the_default_is_that_the_levels_are_alike():
    reading = {"volume_cm3": 86.5, "temperature_c": 21.0, "pressure_kpa": 100.36}
    assert overwater.dry_amount(**reading) == overwater.dry_amount(**reading, inside_minus_outside_mm=0)
    assert overwater.dry_amount(**reading) > overwater.dry_amount(**reading, inside_minus_outside_mm=12)


def test_ints_are_numbers_and_the_result_is_a_float():
    assert type(overwater.vapour_pressure(20)) is float
    assert overwater.vapour_pressure(20) == overwater.vapour_pressure(20.0) == overwater.vapour_pressure(temperature_c=20)


@pytest.mark.parametrize("name", overwater.FUNCTIONS)
def test_each_bound_is_held_and_named(name):
    limits = ranges(name)
    middle = {key: (least + greatest) / 2 for key, (least, greatest) in limits.items()}
    for key, (least, greatest) in limits.items():
        for beyond in (math.nextafter(least, -math.inf), math.nextafter(greatest, math.inf)):
            with pytest.raises(OverwaterError) as refused:
                getattr(overwater, name)(**{**middle, key: beyond})
            error = refused.value
            assert (error.code, error.parameter) == ("out_of_range", key)
            assert error.allowed in str(error) and error.advice in str(error) and key in str(error)
        with pytest.raises(OverwaterError) as refused:
            getattr(overwater, name)(**{**middle, key: math.nan})
        assert refused.value.code == "not_a_number"


def test_a_refusal_has_five_parts_and_survives_a_pickle():
    with pytest.raises(ValueError) as refused:
        overwater.vapour_pressure(150.0)
    error = refused.value
    assert isinstance(error, OverwaterError)
    assert error.value == "150 degC" and error.allowed == "0 to 100 degC"
    again = pickle.loads(pickle.dumps(error))
    assert (str(again), again.code, again.parameter, again.allowed) == (str(error), "out_of_range", "temperature_c", error.allowed)


def test_values_that_contradict_each_other_are_refused_with_the_reason():
    with pytest.raises(OverwaterError, match="nothing would be left beside the vapour") as refused:
        overwater.dry_amount(50.0, temperature_c=99.0, pressure_kpa=90.0)
    assert refused.value.code == "contradiction"


@pytest.mark.parametrize(
    ("call", "words"),
    [
        (lambda f: f(), r"dry_amount\(\) is missing the argument volume_cm3"),
        (lambda f: f(86.5, temperature_c=21.0), "missing the argument pressure_kpa"),
        (lambda f: f(86.5, 21.0, 100.0), "give temperature_c, pressure_kpa, inside_minus_outside_mm by name"),
        (lambda f: f(86.5, temperature_c=21.0, presure_kpa=100.0), "no argument presure_kpa; did you mean pressure_kpa?"),
        (lambda f: f(86.5, volume_cm3=86.5, temperature_c=21.0, pressure_kpa=100.0), "was given volume_cm3 twice"),
    ],
)
def test_mistakes_in_a_call_are_named(call, words):
    with pytest.raises(TypeError, match=words):
        call(overwater.dry_amount)


@pytest.mark.parametrize("value", [None, True, "20", b"20", 20 + 0j, {"a": 1}, {20}, object(), [20.0, None], [True, 20.0], ["20"], [[1.0], [1.0, 2.0]]])
def test_what_is_no_number_is_refused_by_the_name_of_the_argument(value):
    with pytest.raises(TypeError, match="temperature_c"):
        overwater.vapour_pressure(value)
    with pytest.raises(TypeError, match="temperature_c"):
        overwater.dry_amount(86.5, temperature_c=value, pressure_kpa=100.0)


@pytest.mark.parametrize("value", [10**400, Fraction(10**400), [20.0, 10**400]])
def test_a_number_that_no_float_can_hold_is_refused(value):
    with pytest.raises(OverwaterError, match="temperature_c") as refused:
        overwater.vapour_pressure(value)
    assert (refused.value.code, refused.value.parameter.partition("[")[0]) == ("too_large", "temperature_c")


def test_exact_numbers_are_numbers():
    expected = overwater.vapour_pressure(20.5)
    for value in (Decimal("20.5"), Fraction(41, 2)):
        assert overwater.vapour_pressure(value) == expected and type(overwater.vapour_pressure(value)) is float
        assert overwater.vapour_pressure([value, 20.5]).tolist() == [expected] * 2
    assert overwater.vapour_pressure(enum.IntEnum("Bath", {"WARM": 20}).WARM) == overwater.vapour_pressure(20)
    for value in (Decimal("nan"), Decimal("inf"), Decimal("1e999")):
        with pytest.raises(OverwaterError, match="temperature_c"):
            overwater.vapour_pressure(value)


@pytest.mark.parametrize(
    ("value", "words"),
    [
        ("warm", "temperature_c is 'warm', not a number"),
        ([20.0, "warm"], r"temperature_c\[1\] is 'warm', not a number"),
        ([[20.0], ["warm"]], r"temperature_c\[1\]\[0\] is 'warm', not a number"),
        ([20.0, None], r"temperature_c\[1\] is None, not a number; write a missing value as float\('nan'\)"),
        ([True, 20.0], r"temperature_c\[0\] is True"),
    ],
)
def test_the_cell_that_is_no_number_is_named(value, words):
    with pytest.raises(TypeError, match=words):
        overwater.vapour_pressure(value)


def test_what_help_shows():
    for name in overwater.FUNCTIONS:
        function = getattr(overwater, name)
        text = inspect.getdoc(function)
        for row in function.__self__.inputs:
            assert row["name"] in text
        assert "Source:" in text and "Parameters\n----------" in text
        given = list(inspect.signature(function).parameters.values())
        assert given[0].kind is inspect.Parameter.POSITIONAL_OR_KEYWORD
        assert all(one.kind is inspect.Parameter.KEYWORD_ONLY for one in given[1:])
    assert inspect.signature(overwater.dry_amount).parameters["inside_minus_outside_mm"].default == 0.0


def test_a_quantity_that_knows_its_unit_is_converted():
    pint = pytest.importorskip("pint")
    units = pint.UnitRegistry()
    assert overwater.vapour_pressure(units.Quantity(293.15, "kelvin")) == pytest.approx(overwater.vapour_pressure(20.0), rel=1e-12)
    amount = overwater.dry_amount(units.Quantity(0.0865, "litre"), temperature_c=21.0, pressure_kpa=units.Quantity(1003.6, "hPa"))
    assert amount == pytest.approx(overwater.dry_amount(86.5, temperature_c=21.0, pressure_kpa=100.36), rel=1e-12)
    with pytest.raises(TypeError, match="temperature_c"):
        overwater.vapour_pressure(units.Quantity(1.0, "metre"))


def fresh(code):
    """What a new interpreter prints."""
    done = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, timeout=60)
    assert done.returncode == 0, done.stderr
    return done.stdout.strip()


def test_numbers_do_not_import_numpy_and_arrays_do():
    first = "import sys, overwater; overwater.vapour_pressure(20.0)"
    assert fresh(f"{first}; print('numpy' in sys.modules, 'typing' in sys.modules)") == "False False"
    assert fresh(f"{first}; overwater.vapour_pressure([20.0]); print('numpy' in sys.modules)") == "True"


def test_a_refusal_does_not_import_numpy():
    code = "import sys, overwater\ntry: overwater.vapour_pressure(None)\nexcept TypeError: print('numpy' in sys.modules)"
    assert fresh(code) == "False"


@pytest.mark.parametrize("call", ["vapour_pressure([20.0])", "vapour_pressure(range(3))", "ufuncs.vapour_pressure", "check('vapour_pressure', temperature_c=memoryview(b''))"])
def test_without_numpy_arrays_say_what_they_need(call):
    code = (
        "import sys\nsys.modules['numpy'] = None\nimport overwater, overwater.ufuncs\n"
        f"try: overwater.{call}\nexcept ModuleNotFoundError as error: print(error, error.name)\n"
    )
    assert fresh(code) == "arrays need NumPy: pip install overwater[arrays] numpy"


def test_without_numpy_numbers_and_objects_work():
    code = (
        "import sys\nsys.modules['numpy'] = None\nimport overwater\nfrom fractions import Fraction\n"
        "assert overwater.vapour_pressure(Fraction(20)) == overwater.vapour_pressure(20)\n"
        "assert overwater.check('vapour_pressure', temperature_c=[20.0, 200.0])[0].row == 1\n"
        "print(overwater.Formula('H2O2').sheet())"
    )
    assert fresh(code) == "H₂O₂: 34.014 g/mol"


def test_a_locale_with_a_decimal_comma_changes_nothing(tmp_path, monkeypatch):
    if shutil.which("localedef") is None or not Path("/usr/share/i18n/locales/de_DE").exists():
        pytest.skip("no sources of locales here")
    subprocess.run(["localedef", "-i", "de_DE", "-f", "UTF-8", str(tmp_path / "de_DE.UTF-8")], capture_output=True)
    monkeypatch.setenv("LOCPATH", str(tmp_path))
    code = (
        "import locale, overwater\n"
        "lesson = {'stock': {'strength': '20 vol'}, 'vessels': [{'burn': 'sulfur'}]}\n"
        "before = str(overwater.Plan(**lesson))\n"
        "locale.setlocale(locale.LC_ALL, 'de_DE.UTF-8')\n"
        "assert locale.localeconv()['decimal_point'] == ','\n"
        "print(overwater.Formula('CuSO4.5H2O').sheet(), str(overwater.Plan(**lesson)) == before)"
    )
    # 63.546 + 32.06 + 9 x 15.999 + 10 x 1.008, conventional atomic weights.
    assert fresh(code) == "CuSO₄·5H₂O: 249.677 g/mol True"


def test_other_interpreters_are_refused_cleanly_or_served():
    interpreters = pytest.importorskip("_xxsubinterpreters" if sys.version_info < (3, 13) else "_interpreters")
    one = interpreters.create()
    code = "try:\n    import overwater\n    assert overwater.vapour_pressure(20.0) > 2\nexcept ImportError as error:\n    assert 'interpreter' in str(error)\n"
    try:
        outcome = interpreters.run_string(one, code)
        assert outcome is None, outcome
    finally:
        interpreters.destroy(one)
