"""Why rows of a column have no result: the reasons behind the NaN."""

from __future__ import annotations

import math
from collections.abc import Callable
from typing import Any, NamedTuple

from . import _native
from ._arguments import cells
from ._ask import FORMAT, ask, written
from ._errors import OverwaterError, refused


class Unfit(NamedTuple):
    """A row without a result, and why."""

    row: int
    """The row, from 0."""
    code: str
    """The kind of refusal, as of an `OverwaterError`; ``"missing"`` for None and NaN."""
    parameter: str
    """The input that is wrong, or the function where its inputs together have no result."""
    message: str
    """The reason in one sentence."""


def check(function: str | Callable[..., Any], **inputs: Any) -> list[Unfit]:
    """Every row of some inputs that has no result, with the reason. Nothing is clipped and nothing is raised for them.

    Parameters
    ----------
    function : str or function
        One of ``overwater.FUNCTIONS``, by its name or itself.
    **inputs : float or one-dimensional column
        Its inputs. Columns have one length; single numbers hold for every row.

    Returns
    -------
    list of Unfit
        In the order of the rows; empty where every row has a result.

    Raises
    ------
    OverwaterError
        For an unknown function, for columns of different lengths, and for a column that says another unit.
    TypeError
        For an input that the function does not have, one that is left out, and for what is no number.

    Examples
    --------
    >>> from overwater import check, vapour_pressure
    >>> [(unfit.row, unfit.code) for unfit in check(vapour_pressure, temperature_c=[20.0, 120.0])]
    [(1, 'out_of_range')]
    """
    name = function if isinstance(function, str) else str(getattr(function, "__name__", function))
    if name not in _native.FUNCTIONS:
        # The library knows which name is meant.
        ask("calculate_columns", written({"format": FORMAT, "formula": name, "columns": {}}))
    called = getattr(_native, name)
    units = {row["name"]: row["unit"] for row in called.__self__.inputs}
    columns = {key: cells(value, key, units.get(key, "")) for key, value in inputs.items()}
    lengths = {key: len(column) for key, column in columns.items() if isinstance(column, list)}
    if len(set(lengths.values())) > 1:
        said = ", ".join(f"{key} of {length} rows" for key, length in lengths.items())
        raise refused("contradiction", name, said, "", "give columns of one length")
    # Also where there is no row, an input that is unknown or left out is told.
    _refusal(called, dict.fromkeys(columns, None))
    found = []
    for row in range(next(iter(lengths.values()), 1)):
        reason = _refusal(called, {key: column[row] if isinstance(column, list) else column for key, column in columns.items()})
        if reason is not None:
            found.append(Unfit(row, *reason))
    return found


def _refusal(called: Any, row: dict[str, float | None]) -> tuple[str, str, str] | None:
    """The code, the parameter and the message with which a call is refused."""
    try:
        called(**{key: math.nan if cell is None else cell for key, cell in row.items()})
    except OverwaterError as error:
        cell = row.get(error.parameter, 0.0)
        if cell is None or math.isnan(cell):
            return "missing", error.parameter, f"{error.parameter} is missing; allowed: {error.allowed}"
        return error.code, error.parameter, str(error)
    return None


__all__ = ["Unfit", "check"]
