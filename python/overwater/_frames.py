"""Tables of readings from any kind of data frame and back, through narwhals: one path for pandas, Polars and Arrow."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import Any

from ._arguments import is_blank
from ._errors import refused

_MISSING = "reading a data frame needs the package narwhals: pip install overwater[frames]"


def _narwhals() -> Any:
    try:
        import narwhals.stable.v2 as narwhals
    except ImportError as error:
        raise ImportError(_MISSING) from error
    return narwhals


def _row(row: Mapping[str, Any]) -> dict[str, Any]:
    """A blank cell is left out, as in a table of the program."""
    return {str(name): value for name, value in row.items() if not is_blank(value)}


def rows(readings: Any) -> list[dict[str, Any]]:
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
        For anything that is no table.
    """
    if isinstance(readings, Mapping):
        lengths = {str(name): len(column) for name, column in readings.items()}
        if len(set(lengths.values())) > 1:
            said = ", ".join(f"{name} of {length} rows" for name, length in lengths.items())
            raise refused("contradiction", "readings", said, "", "give columns of one length")
        names, columns = list(readings), list(readings.values())
        return [_row(dict(zip(names, row, strict=True))) for row in zip(*columns, strict=True)]
    if isinstance(readings, Sequence) and not isinstance(readings, (str, bytes)):
        if not all(isinstance(row, Mapping) for row in readings):
            raise TypeError("readings is a list of something else than rows; give a list of dicts, one a row")
        return [_row(row) for row in readings]
    # Asked of the class: a lazy frame would have to be planned to tell its columns.
    if not hasattr(type(readings), "columns") and not hasattr(type(readings), "__arrow_c_stream__"):
        raise TypeError(f"readings is of type {type(readings).__name__}, not a table; give a data frame or a list of rows")
    narwhals = _narwhals()
    frame = narwhals.from_native(readings)
    if isinstance(frame, narwhals.LazyFrame):
        frame = frame.collect()
    return [_row(row) for row in frame.iter_rows(named=True)]


def frame(columns: Mapping[str, Sequence[Any]], backend: str) -> Any:
    """Columns as a data frame of the package named."""
    return _narwhals().from_dict(dict(columns), backend=backend).to_native()
