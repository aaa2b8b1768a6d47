"""Tables of readings from any kind of data frame and back, through narwhals: one path for pandas, Polars and Arrow."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import Any, NamedTuple

from ._arguments import is_blank
from ._errors import refused

_MISSING = "a data frame needs the package narwhals: pip install overwater[frames]"

_BACKENDS = ("pandas", "polars", "pyarrow")


class Table(NamedTuple):
    """Rows of readings, and the kind of frame that they came in."""

    rows: list[dict[str, Any]]
    backend: str = "pandas"
    index: Any = None
    """The index of a pandas frame."""


def _narwhals() -> Any:
    try:
        import narwhals.stable.v2 as narwhals
    except ImportError as error:
        raise ImportError(_MISSING) from error
    return narwhals


def _row(number: int, row: Mapping[Any, Any]) -> dict[str, Any]:
    """A blank cell is left out, as in a table of the program."""
    cells = {str(name): cell for name, cell in row.items() if not is_blank(cell)}
    for name, cell in cells.items():
        truth = isinstance(cell, bool) or getattr(getattr(cell, "dtype", None), "kind", "") == "b"
        if truth or isinstance(cell, (bytes, Mapping, Sequence, set)) and not isinstance(cell, str) or getattr(cell, "shape", ()) != ():
            what = repr(cell) if truth else f"of type {type(cell).__name__}"
            raise TypeError(f"row {number}, {name} is {what}; give a number or a text")
    return cells


def _of_mapping(readings: Mapping[Any, Any]) -> list[dict[str, Any]]:
    for name, column in readings.items():
        if isinstance(column, (str, bytes, Mapping)) or not hasattr(column, "__len__"):
            advice = f"give what is the same in every row as given={{{str(name)!r}: {column!r}}}"
            raise TypeError(f"{name} is of type {type(column).__name__}, not a column; {advice}")
    lengths = {str(name): len(column) for name, column in readings.items()}
    if len(set(lengths.values())) > 1:
        said = ", ".join(f"{name} of {length} rows" for name, length in lengths.items())
        raise refused("contradiction", "readings", said, "", "give columns of one length")
    rows = zip(*readings.values(), strict=True)
    return [_row(number, dict(zip(readings, row, strict=True))) for number, row in enumerate(rows, 1)]


def read(readings: Any) -> Table:
    """The rows of a table of readings.

    Parameters
    ----------
    readings : data frame, mapping of columns, or sequence of mappings
        The unit stands at the end of each column's name. None, NaN and null are blank cells.

    Raises
    ------
    OverwaterError
        Where columns have different lengths.
    TypeError
        For anything that is no table, and for a cell that is neither a number nor a text.
    """
    if isinstance(readings, Mapping):
        return Table(_of_mapping(readings))
    if isinstance(readings, Sequence) and not isinstance(readings, (str, bytes)):
        if not all(isinstance(row, Mapping) for row in readings):
            raise TypeError("readings is a list of something else than rows; give a list of dicts, one a row")
        return Table([_row(number, row) for number, row in enumerate(readings, 1)])
    # Asked of the class: a lazy frame would have to be planned to tell its columns.
    if not hasattr(type(readings), "columns") and not hasattr(type(readings), "__arrow_c_stream__"):
        raise TypeError(f"readings is of type {type(readings).__name__}, not a table; give a data frame or a list of rows")
    narwhals = _narwhals()
    frame = narwhals.from_native(readings, allow_series=True)
    if isinstance(frame, narwhals.Series):
        raise TypeError("readings is a Series, one column; give a data frame, or a dict of columns by name")
    if isinstance(frame, narwhals.LazyFrame):
        frame = frame.collect()
    rows = [_row(number, row) for number, row in enumerate(frame.iter_rows(named=True), 1)]
    backend = str(frame.implementation)
    return Table(rows, backend, narwhals.maybe_get_index(frame)) if backend in _BACKENDS else Table(rows)


def frame(columns: Mapping[str, Sequence[Any]], backend: str, index: Any = None) -> Any:
    """Columns as a data frame of the package named, in pandas with this index.

    Raises
    ------
    OverwaterError
        For a package that is not one of the three.
    ModuleNotFoundError
        For a package that is not installed.
    """
    if backend not in _BACKENDS:
        raise refused("unknown_name", "backend", backend, ", ".join(_BACKENDS))
    narwhals = _narwhals()
    try:
        found = narwhals.from_dict(dict(columns), backend=backend).to_native()
    except ModuleNotFoundError as error:
        raise ModuleNotFoundError(f"a data frame of {backend} needs the package {backend}", name=backend) from error
    return found.set_axis(index, axis=0) if backend == "pandas" and index is not None else found
