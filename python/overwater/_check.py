"""Why rows of a column have no result: the reasons behind the NaN."""

from __future__ import annotations

import json
from collections.abc import Callable
from typing import Any, NamedTuple

from ._ask import FORMAT, ask, written

# A request may have a megabyte: some twenty characters for each number.
_ROWS = 5_000


class Unfit(NamedTuple):
    """A row without a result, and why."""

    row: int
    """The row, from 0."""
    code: str
    """The kind of refusal, as of an `OverwaterError`."""
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
        For an unknown function or input, and for columns of different lengths.

    Examples
    --------
    >>> from overwater import check, vapour_pressure
    >>> [(unfit.row, unfit.code) for unfit in check(vapour_pressure, temperature_c=[20.0, 120.0])]
    [(1, 'out_of_range')]
    """
    name = function if isinstance(function, str) else str(getattr(function, "__name__", function))
    given = {key: float(value) for key, value in inputs.items() if not hasattr(value, "__len__")}
    columns = {key: [_number(cell) for cell in value] for key, value in inputs.items() if key not in given}
    if not columns:
        columns = {key: [_number(value)] for key, value in given.items()}
        given = {}
    lengths = {key: len(column) for key, column in columns.items()}
    longest = max(lengths.values(), default=0)
    found: list[Unfit] = []
    # Columns that differ in length are refused by the library, so that they travel whole.
    step = _ROWS if len(set(lengths.values())) == 1 else max(longest, 1)
    for start in range(0, max(longest, 1), step):
        part = {key: column[start : start + step] for key, column in columns.items()}
        asked = written({"format": FORMAT, "formula": name, "given": given, "columns": part})
        answer = json.loads(ask("calculate_columns", asked))
        found.extend(
            Unfit(start + row["row"] - 1, row["code"], row["name"], row["message"]) for row in answer["without_result"]
        )
    return found


def _number(cell: Any) -> float | None:
    """A cell as JSON has it; what is not a number at all travels as a missing one."""
    if cell is None:
        return None
    number = float(cell)
    return number if number - number == 0 else None


__all__ = ["Unfit", "check"]
