"""Writes the stubs of the package: what a type checker knows of the functions made from the catalogue.

Run it after the catalogue has changed, with the package installed: ``python python/tools/write_stubs.py``. With ``--check``
it only says whether they are as they should be.
"""

import sys
from pathlib import Path

import overwater
from overwater import _native

PACKAGE = Path(__file__).parents[1] / "overwater"

HEAD = '''\
# Written by write_stubs.py: change that instead.
from collections.abc import Sequence
from decimal import Decimal
from fractions import Fraction
from typing import Any, Protocol, TypeVar, final, overload

import numpy as np
from numpy.typing import DTypeLike, NDArray

class _HasUfunc(Protocol):
    def __array_ufunc__(self, ufunc: Any, method: Any, /, *inputs: Any, **kwargs: Any) -> Any: ...

# A column of pandas, Polars, xarray or dask: it comes back as its own kind.
_Column = TypeVar("_Column", bound=_HasUfunc)
_Number = float | Decimal | Fraction
_Numbers = NDArray[Any] | Sequence[Any]

__version__: str
FUNCTIONS: tuple[str, ...]
OPTIMISED: bool

@final
class Calculation:
    @property
    def name(self) -> str: ...
    @property
    def unit(self) -> str: ...
    @property
    def result(self) -> str: ...
    @property
    def words(self) -> str: ...
    @property
    def source(self) -> str: ...
    @property
    def inputs(self) -> list[dict[str, Any]]: ...
    @property
    def ufunc(self) -> np.ufunc: ...

def respond(request: bytes) -> str: ...
def tasks() -> list[str]: ...
def sheet(task: str, answer: str, width: int) -> str | None: ...
def working_html(answer: str) -> str: ...
def request_from_toml(task: str, text: str) -> str: ...
def run_program(arguments: Sequence[str]) -> int: ...
'''

KEYWORDS = (
    "out: Any = None, where: Any = True, casting: str = 'same_kind', order: str = 'K', "
    "dtype: DTypeLike | None = None, subok: bool = True, signature: Any = None"
)

INIT = '''\
# Written by write_stubs.py: change that instead.
from . import ufuncs as ufuncs
from ._check import check as check
from ._errors import OverwaterError as OverwaterError, UnknownNameError as UnknownNameError
from ._native import FUNCTIONS as FUNCTIONS, __version__ as __version__
{functions}
from ._results import (
{results}
)
from ._tasks import Answer as Answer, ask as ask

__all__ = [
{names}
]
'''


def parameters(inputs, first, others):
    """The inputs of a function, the first of one type and the others of another."""
    parts = []
    for index, row in enumerate(inputs):
        kind = first if index == 0 else others
        default = "" if row["default"] is None else f" = {row['default']!r}"
        parts.append(f"{row['name']}: {kind}{default}")
        if index == 0:
            parts.append("*")
    return ", ".join(parts)


def function(name):
    """A function's ways of being called: numbers, arrays and lists, columns."""
    inputs = getattr(overwater, name).__self__.inputs
    plain = parameters(inputs, "_Number", "_Number").removesuffix(", *")
    ways = [f"def {name}({plain}) -> float: ..."]
    kinds = [(parameters(inputs, "_Numbers", "_Number | _Numbers"), "NDArray[np.float64]")]
    kinds.append((parameters(inputs, "_Column", "_Number | _Numbers | _Column"), "_Column"))
    if len(inputs) > 1:
        kinds.append((parameters(inputs, "Any", "Any"), "Any"))
    ways += [f"def {name}({taken}, {KEYWORDS}) -> {given}: ..." for taken, given in kinds]
    return "".join(f"@overload\n{way}\n" for way in ways)


def main():
    """Write both stubs, or say which is stale."""
    later = sorted(overwater._LATER)
    results = [name for name in later if overwater._LATER[name] == "_results"]
    texts = {
        "_native.pyi": "\n".join(
            [HEAD, f"__all__ = {list(_native.__all__)!r}\n", *(function(name) for name in _native.FUNCTIONS)]
        ),
        "__init__.pyi": INIT.format(
            functions="\n".join(f"from ._native import {name} as {name}" for name in _native.FUNCTIONS),
            results="\n".join(f"    {name} as {name}," for name in results),
            names="\n".join(f'    "{name}",' for name in overwater.__all__),
        ),
    }
    stale = [name for name, text in texts.items() if not (PACKAGE / name).is_file() or (PACKAGE / name).read_text() != text]
    if "--check" in sys.argv:
        return f"stale: {', '.join(stale)}; run python/tools/write_stubs.py" if stale else 0
    for name in stale:
        (PACKAGE / name).write_text(texts[name])
    return 0


if __name__ == "__main__":
    sys.exit(main())
