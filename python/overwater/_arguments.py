"""What an elementwise function does with an argument that is not an exact float or int.

Arrays of numbers are handed to NumPy untouched. Anything that NumPy would turn into numbers silently, or into
numbers of another unit, is refused by the name of the argument.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from typing import Any

from ._columns import Column, check_cells, check_polars, home, named_result
from ._errors import OverwaterError, refused
from ._units import check_unit

# How a units package writes what the library writes otherwise.
_ASKED_FOR = {"degC": "degC", "%": "percent", "": "dimensionless", "deg": "degree"}

_WORDS = {"b": "bool", "c": "complex", "M": "datetime", "m": "timedelta", "S": "bytes", "U": "text", "T": "text"}

_GIVE = "give a number or an array of numbers"


def numpy() -> Any:
    """NumPy, which only arrays need.

    Raises
    ------
    ModuleNotFoundError
        Where it is not installed.
    """
    try:
        import numpy as module
    except ImportError as error:
        raise ModuleNotFoundError("arrays need NumPy: pip install overwater[arrays]", name="numpy") from error
    return module


def is_blank(value: Any) -> bool:
    """Whether a cell of a table has nothing in it: None, NaN or another package's sign of it."""
    try:
        return value is None or bool(value != value)
    except (TypeError, ValueError):
        # pandas.NA does not even say whether it equals itself; an array says it of each of its elements.
        return not hasattr(value, "shape")


def _refuse(argument: str, what: str, advice: str = _GIVE) -> TypeError:
    return TypeError(f"{argument} is {what}, not a number; {advice}")


def _too_large(argument: str) -> OverwaterError:
    return refused("too_large", argument, "", "what a float can hold", "give a smaller number")


def _float(value: Any, argument: str) -> float:
    try:
        return float(value)
    except OverflowError as error:
        raise _too_large(argument) from error


def _check_dtype(argument: str, dtype: Any, value: Any = None) -> None:
    kind = getattr(dtype, "kind", "")
    if kind not in ("f", "i", "u"):
        if getattr(value, "shape", None) == ():
            raise _refuse(argument, repr(value))
        if kind in ("O", "U", "S", "T") and hasattr(value, "tolist") and value.ndim == 1:
            check_cells(argument, value.tolist())
        raise _refuse(argument, f"an array of {_WORDS.get(kind, str(dtype))}")
    if kind == "f" and getattr(dtype, "itemsize", 8) > 8:
        raise TypeError(f"{argument} is of {dtype}, which has more digits than a float; convert it with astype(float)")


def _said(value: Any) -> Any:
    """The unit that an attribute says."""
    attributes = getattr(value, "attrs", None)
    return attributes.get("units", attributes.get("unit")) if isinstance(attributes, dict) else None


def _column(value: Any, argument: str, unit: str) -> Column:
    """A column of another package, where its type and what is written on it fit the argument."""
    numpy()
    if home(value) == "polars":
        if hasattr(type(value), "columns"):
            raise _refuse(argument, f"a {type(value).__name__} of Polars", "give one column of it, or an expression")
        if hasattr(value, "dtype"):
            check_polars(argument, value)
            check_unit(argument, unit, value.name)
        elif hasattr(value, "meta"):
            if value.meta.has_multiple_outputs():
                raise _refuse(argument, "an expression of several columns", "give an expression of one")
            check_unit(argument, unit, value.meta.output_name(raise_if_undetermined=False))
        return Column(argument, value)
    if not hasattr(value, "dtype") and not hasattr(value, "dtypes"):
        raise _refuse(argument, f"of type {type(value).__name__}")
    if hasattr(value, "dtypes") and hasattr(value.dtypes, "items"):
        for name, dtype in value.dtypes.items():
            _check_dtype(f"{argument}[{name!r}]", dtype)
            check_unit(argument, unit, name, _said(getattr(value, "data_vars", {}).get(name)))
        return Column(argument, value)
    _check_dtype(argument, value.dtype, value)
    check_unit(argument, unit, getattr(value, "name", None), _said(value))
    return Column(argument, value)


def _list(values: Sequence[Any], argument: str, unit: str) -> Any:
    """A list of numbers as an array."""
    module = numpy()
    numbers = [_cell(value, argument, index, unit) for index, value in enumerate(values)]
    try:
        return module.asarray(numbers, float)
    except ValueError as error:
        raise _refuse(argument, "a list of lists of different lengths") from error
    except OverflowError as error:
        raise _too_large(argument) from error


def _cell(value: Any, argument: str, index: int, unit: str) -> Any:
    if type(value) in (float, int):
        return value
    argument = f"{argument}[{index}]"
    if value is None:
        raise _refuse(argument, "None", "write a missing value as float('nan')")
    value = checked(value, argument, unit)
    if isinstance(value, Column):
        raise _refuse(argument, f"of type {type(value.value).__name__}")
    return value


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
        raise _refuse(argument, repr(value) if kind in (bool, str, type(None)) else f"of type {kind.__name__}")
    if isinstance(value, int) or home(value) in ("decimal", "fractions"):
        # Exact numbers, rounded once.
        return _float(value, argument)
    if isinstance(value, (list, tuple, range)):
        return _list(value, argument, unit)
    if hasattr(value, "magnitude") and hasattr(value, "to"):
        return _magnitude(value, argument, unit)
    if hasattr(value, "nominal_value") and hasattr(value, "std_dev"):
        advice = "give its nominal_value; overwater.Budget works out the uncertainty of a result"
        raise TypeError(f"{argument} is a number with an uncertainty; {advice}")
    if hasattr(value, "toarray") and hasattr(value, "nnz"):
        raise TypeError(f"{argument} is a sparse array; give {argument}.toarray()")
    if home(value) == "polars":
        return _column(value, argument, unit)
    if hasattr(value, "__array_ufunc__") and home(value) != "numpy" and not hasattr(value, "__array_finalize__"):
        return _column(value, argument, unit)
    if hasattr(value, "dtype") and not hasattr(value, "columns"):
        _check_dtype(argument, value.dtype, value)
        return value
    if hasattr(value, "__array__") or hasattr(value, "__array_interface__") or isinstance(value, (float, memoryview)) or home(value) == "array":
        array = numpy().asarray(value)
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


def cells(value: Any, argument: str, unit: str) -> Any:
    """An argument as one float, or as a list of floats with None for what is missing.

    Raises
    ------
    TypeError
        For what is no number and no one-dimensional column of numbers, with the name of the argument.
    OverwaterError
        For a column in another unit.
    """
    if type(value) in (float, int):
        return _float(value, argument)
    if not isinstance(value, (list, tuple, range)):
        value = checked(value, argument, unit)
        value = value.value if isinstance(value, Column) else value
        if hasattr(value, "meta"):
            raise _refuse(argument, "an expression, which has no rows yet", "give a column")
        array = numpy().asarray(value)
        if array.ndim > 1:
            raise TypeError(f"{argument} has {array.ndim} dimensions; give a column, which has one")
        if array.ndim == 0:
            return float(array)
        value = array.tolist()
    return [None if is_blank(one) else _one(one, f"{argument}[{index}]", unit) for index, one in enumerate(value)]


def _one(value: Any, argument: str, unit: str) -> float:
    found = value if type(value) in (float, int) else checked(value, argument, unit)
    if getattr(found, "shape", ()) != () or isinstance(found, Column):
        raise _refuse(argument, "a column in a column", "give a number")
    return _float(found, argument)


def shapes_that_differ(names: Sequence[str], values: Sequence[Any]) -> str | None:
    """The shapes of the arrays in words; nothing where they broadcast together."""
    shapes = [(name, numpy().shape(value)) for name, value in zip(names, values, strict=True)]
    try:
        numpy().broadcast_shapes(*(shape for _, shape in shapes))
    except ValueError:
        return ", ".join(f"{name} of shape {shape}" for name, shape in shapes if shape)
    return None


__all__ = ["cells", "checked", "is_blank", "named_result", "shapes_that_differ"]
