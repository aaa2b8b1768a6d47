"""Columns of pandas, Polars, xarray and dask on their way through a ufunc, and what comes back of them."""

from __future__ import annotations

import sys
from collections.abc import Sequence
from typing import Any


def home(value: Any) -> str:
    """The package that a value comes from."""
    return type(value).__module__.partition(".")[0]


class Column:
    """A column under the name of its argument.

    NumPy hands the whole call to `__array_ufunc__`, so that all columns are seen together: packages that do not go together are
    told by name, and nulls of Polars, below which any number may lie, are kept from being worked out.
    """

    __slots__ = ("argument", "value")
    argument: str
    value: Any

    def __init__(self, argument: str, value: Any) -> None:
        self.argument = argument
        self.value = value

    @property
    def shape(self) -> tuple[int, ...]:
        """The shape of the column; that of an expression is not known yet."""
        return tuple(getattr(self.value, "shape", ()))

    def __array_ufunc__(self, ufunc: Any, method: str, *inputs: Any, **kwargs: Any) -> Any:
        columns = [one for one in inputs if isinstance(one, Column)]
        homes = {home(one.value): one.argument for one in columns}
        if "polars" in homes:
            if len(homes) > 1:
                raise _apart(homes)
            return _polars(ufunc, columns, inputs, kwargs)
        nullable = [_has_nulls(one.value) for one in columns]
        try:
            result = ufunc(*(_plain(one) for one in inputs), **kwargs)
        except TypeError as error:
            raise (_apart(homes) if len(homes) > 1 else error) from error
        return result.astype("Float64") if any(nullable) else result


def _apart(homes: dict[str, str]) -> TypeError:
    said = ", ".join(f"{argument} of {package}" for package, argument in homes.items())
    return TypeError(f"columns of different packages do not go together: {said}; give all of them as columns of one")


def _has_nulls(value: Any) -> bool:
    """Whether a pandas Series has nulls beside its numbers, and not NaN among them."""
    return home(value) == "pandas" and hasattr(getattr(value, "array", None), "_mask") and bool(value.hasnans)


def _plain(one: Any) -> Any:
    if not isinstance(one, Column):
        return one
    return one.value.astype(float) if _has_nulls(one.value) else one.value


def _polars(ufunc: Any, columns: Sequence[Column], inputs: Sequence[Any], kwargs: dict[str, Any]) -> Any:
    """The ufunc of Series at once, and of expressions when they are worked out."""
    polars = sys.modules["polars"]
    if kwargs.get("out") is not None:
        raise TypeError(f"out does not go with {columns[0].argument}, a column of Polars; leave it out and take what is given back")
    expressions = [index for index, one in enumerate(inputs) if isinstance(one, Column) and isinstance(one.value, polars.Expr)]
    if not expressions:
        return _series(ufunc, inputs, kwargs)

    def later(fields: Any) -> Any:
        # Fields of a struct, because only so Polars hands over several columns together.
        whole = list(inputs)
        for index in expressions:
            whole[index] = Column(inputs[index].argument, fields.struct.field(str(index)))
        return _series(ufunc, whole, kwargs)

    fields = polars.struct([inputs[index].value.alias(str(index)) for index in expressions])
    return fields.map_batches(later, return_dtype=polars.Float64, is_elementwise=True)


def _series(ufunc: Any, inputs: Sequence[Any], kwargs: dict[str, Any]) -> Any:
    import numpy

    polars = sys.modules["polars"]
    values, nulls = [], []
    for one in inputs:
        if isinstance(one, Column):
            check_polars(one.argument, one.value)
            nulls.append(one.value.is_null().to_numpy())
            # Nulls become NaN on the way to NumPy.
            one = one.value.cast(polars.Float64).to_numpy()
        values.append(one)
    found = numpy.atleast_1d(ufunc(*values, **kwargs))
    if found.ndim > 1:
        argument = next(one.argument for one in inputs if isinstance(one, Column))
        raise TypeError(f"{argument} is a column of Polars beside an array of {found.ndim} dimensions; give arrays of one")
    null = numpy.logical_or.reduce(numpy.broadcast_arrays(numpy.ma.getmaskarray(found), *nulls))
    result = polars.Series(numpy.ma.getdata(found))
    return result.set(polars.Series(null), None) if null.any() else result


def check_cells(argument: str, cells: Sequence[Any]) -> None:
    """Names the first cell that is a text, where a column has something else than numbers.

    Raises
    ------
    TypeError
        With the name of the argument, the place of the cell and what is in it.
    """
    for index, cell in enumerate(cells):
        if isinstance(cell, (str, bytes)):
            raise TypeError(f"{argument}[{index}] is {cell!r}, not a number; give a column of numbers")


def check_polars(argument: str, series: Any) -> None:
    """Refuses a Series of Polars that is no numbers; one of nulls alone may be.

    Raises
    ------
    TypeError
        With the name of the argument.
    """
    if not series.dtype.is_numeric() and str(series.dtype) != "Null":
        check_cells(argument, series.to_list())
        raise TypeError(f"{argument} is a series of {series.dtype}, not a number; give a column of numbers")


# What an attribute says of the argument is not true of the result.
_OF_THE_ARGUMENT = ("units", "unit", "long_name", "standard_name")


def _say_unit(result: Any, unit: str) -> None:
    if isinstance(getattr(result, "attrs", None), dict) and result.attrs:
        kept = {key: value for key, value in result.attrs.items() if key not in _OF_THE_ARGUMENT}
        result.attrs = {**kept, "units": unit}


def named_result(result: Any, name: str, unit: str, values: Sequence[Any]) -> Any:
    """A column under the name of what it now is, and not under that of the argument, whose unit would be wrong.

    What is neither a pandas, a Polars nor an xarray object is given back as it is.
    """
    if home(result) == "polars":
        return result.alias(name)
    if home(result) in ("pandas", "xarray") and hasattr(result, "name"):
        named = any(getattr(one.value, "name", None) is not None for one in values if isinstance(one, Column))
        result = result.rename(name) if named else result
        _say_unit(result, unit)
    elif home(result) == "xarray":
        for variable in getattr(result, "data_vars", {"": result}).values():
            _say_unit(variable, unit)
    return result


__all__ = ["Column", "check_cells", "check_polars", "home", "named_result"]
