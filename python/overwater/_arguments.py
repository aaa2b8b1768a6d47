"""What an elementwise function does with an argument that is not an exact float or int.

Arrays of numbers are handed to NumPy untouched. Anything that NumPy would turn into numbers silently, or into
numbers of another unit, is refused by the name of the argument.
"""

from __future__ import annotations

import re
import sys
from collections.abc import Sequence
from typing import Any

from ._errors import OverwaterError

# Units of one kind, as they are written at the end of a column's name or in an attribute, in lower case. The first name
# of each is the one of the library.
_KINDS: tuple[tuple[tuple[str, ...], ...], ...] = (
    (("degc", "c", "celsius", "deg_c", "degree_celsius", "°c"), ("k", "kelvin"), ("f", "degf", "fahrenheit", "°f")),
    (
        ("kpa", "kilopascal"),
        ("pa", "pascal"),
        ("hpa", "mbar", "millibar", "hectopascal"),
        ("mpa",),
        ("bar",),
        ("atm", "atmosphere"),
        ("mmhg",),
        ("torr",),
        ("psi",),
        ("inhg",),
    ),
    (
        ("cm3", "ml", "cc", "cm^3", "cm**3", "cm³", "millilitre", "milliliter"),
        ("dm3", "l", "dm^3", "dm**3", "dm³", "litre", "liter"),
        ("m3", "m^3", "m**3", "m³"),
        ("ul", "mm3"),
    ),
    (("mmol", "millimole"), ("mol", "mole"), ("umol",), ("kmol",)),
    (
        ("mm", "millimetre", "millimeter"),
        ("cm", "centimetre", "centimeter"),
        ("m", "metre", "meter"),
        ("km",),
        ("ft", "foot", "feet"),
        ("in", "inch"),
    ),
    (("g", "gram"), ("kg", "kilogram"), ("mg", "milligram"), ("lb",), ("oz",)),
    (("s", "second", "seconds"), ("min", "minute", "minutes"), ("h", "hour", "hours"), ("ms",), ("day", "days")),
    (("%", "percent"), ("fraction",)),
)

# How a units package writes what the library writes otherwise.
_ASKED_FOR = {"degC": "degC", "%": "percent", "": "dimensionless", "deg": "degree"}

_WORDS = {"b": "bool", "c": "complex", "M": "datetime", "m": "timedelta", "O": "object", "S": "bytes", "U": "text", "T": "text"}


def _refuse(argument: str, what: str, advice: str = "give a number or an array of numbers") -> TypeError:
    return TypeError(f"{argument} is {what}, not a number; {advice}")


def _kind_and_unit(text: str) -> tuple[int, int] | None:
    text = text.strip().lower()
    for kind, units in enumerate(_KINDS):
        for unit, names in enumerate(units):
            if text in names:
                return kind, unit
    return None


def _contradicts(text: object, unit: str) -> bool:
    """Whether a text names another unit of the same kind."""
    if not isinstance(text, str):
        return False
    ours, theirs = _kind_and_unit(unit), _kind_and_unit(text)
    return ours is not None and theirs is not None and ours[0] == theirs[0] and ours[1] != theirs[1]


def _check_unit(argument: str, unit: str, value: Any) -> None:
    """Refuses a column whose name or whose attribute says that it is in another unit."""
    attributes = getattr(value, "attrs", None)
    said = attributes.get("units", attributes.get("unit")) if isinstance(attributes, dict) else None
    name = getattr(value, "name", None)
    last = [part for part in re.split(r"[\s_/()\[\]]+", name) if part][-1:] if isinstance(name, str) else []
    for text, where in ((said, "its attribute says"), (last[0] if len(last) == 1 and last[0] != name else None, "its name says")):
        if _contradicts(text, unit):
            message = f"{argument} contradicts another value; allowed: {unit}; {where} {text}: convert it to {unit} first"
            raise OverwaterError(message, "contradiction", argument, str(text), unit, f"convert it to {unit} first")


def _check_list(argument: str, values: Sequence[Any]) -> None:
    for value in values:
        if isinstance(value, (list, tuple)):
            _check_list(argument, value)
        elif isinstance(value, bool):
            raise _refuse(argument, "a list with True or False in it")
        elif value is None:
            raise _refuse(argument, "a list with None in it", "write a missing value as float('nan')")


def _check_polars(argument: str, value: Any) -> None:
    kind = getattr(value, "dtype", None)
    if kind is not None and not kind.is_numeric():
        raise _refuse(argument, f"a series of {kind}")


def _check_dtype(argument: str, dtype: Any) -> None:
    kind = getattr(dtype, "kind", "f")
    if kind not in "fiu":
        raise _refuse(argument, f"an array of {_WORDS.get(kind, str(dtype))}")


def checked(value: Any, argument: str, unit: str) -> Any:
    """The value as NumPy shall see it.

    Raises
    ------
    TypeError
        For what is no number, with the name of the argument.
    OverwaterError
        For a column in another unit.
    """
    kind = type(value)
    if value is None or isinstance(value, (bool, str, bytes, bytearray, complex, dict, set, frozenset)):
        raise _refuse(argument, repr(value) if kind in (bool, type(None)) else f"of type {kind.__name__}")
    if isinstance(value, int):
        raise OverwaterError(
            f"{argument} is too large", "too_large", argument, "", "what a float can hold", "give a smaller number"
        )
    home = kind.__module__.partition(".")[0]
    if isinstance(value, (list, tuple)):
        import numpy

        _check_list(argument, value)
        try:
            array = numpy.asarray(value)
        except ValueError as error:
            raise _refuse(argument, "a list of lists of different lengths") from error
        if array.size:
            _check_dtype(argument, array.dtype)
        return array.astype(float) if array.size == 0 else array
    if home == "polars":
        _check_polars(argument, value)
        if getattr(value, "name", None) is not None and hasattr(value, "dtype"):
            _check_unit(argument, unit, value)
        return value
    if hasattr(value, "magnitude") and hasattr(value, "to"):
        return _magnitude(value, argument, unit)
    if hasattr(value, "dtypes") and hasattr(value, "columns"):
        for dtype in value.dtypes:
            _check_dtype(argument, dtype)
        return value
    if hasattr(value, "dtype"):
        _check_dtype(argument, value.dtype)
        _check_unit(argument, unit, value)
        return value
    if hasattr(value, "__array_ufunc__"):
        _check_unit(argument, unit, value)
        return value
    if hasattr(value, "__array__") or hasattr(value, "__array_interface__") or isinstance(value, (float, memoryview)) or home == "array":
        import numpy

        array = numpy.asarray(value)
        _check_dtype(argument, array.dtype)
        return array
    raise _refuse(argument, f"of type {kind.__name__}")


def _magnitude(value: Any, argument: str, unit: str) -> Any:
    """The number of a quantity that knows its unit, in the unit of the argument."""
    wanted = _ASKED_FOR.get(unit) or re.sub(r"(?<=[a-zA-Z])(\d)", r"**\1", unit).replace(" ", "*")
    try:
        magnitude = value.to(wanted).magnitude
    except Exception as error:
        # Each units package has exceptions of its own.
        raise TypeError(f"{argument} cannot be converted to {unit or 'a plain number'}: {error}") from error
    return magnitude if type(magnitude) in (int, float) else checked(magnitude, argument, unit)


def shapes_that_differ(names: Sequence[str], values: Sequence[Any]) -> str | None:
    """The shapes of the arrays in words; nothing where they broadcast together."""
    import numpy

    shapes = [(name, numpy.shape(value)) for name, value in zip(names, values, strict=True)]
    try:
        numpy.broadcast_shapes(*(shape for _, shape in shapes))
    except ValueError:
        return ", ".join(f"{name} of shape {shape}" for name, shape in shapes if shape)
    return None


def named_result(result: Any, name: str, unit: str, values: Sequence[Any]) -> Any:
    """A column under the name of what it now is, and not under that of the argument, whose unit would be wrong.

    What is neither a pandas, a Polars nor an xarray object is given back as it is.
    """
    home = type(result).__module__.partition(".")[0]
    if home == "polars":
        module = sys.modules["polars"]
        if isinstance(result, module.Series):
            return result.rename(name)
        return result.alias(name) if isinstance(result, module.Expr) else result
    if home in ("pandas", "xarray") and hasattr(result, "name"):
        named = any(getattr(value, "name", None) is not None for value in values)
        result = result.rename(name) if named else result
        if isinstance(getattr(result, "attrs", None), dict) and result.attrs:
            kept = {key: value for key, value in result.attrs.items() if key not in ("units", "unit", "long_name", "standard_name")}
            result.attrs = {**kept, "units": unit}
    return result
