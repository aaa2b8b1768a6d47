"""The NumPy ufuncs behind the functions, by the same names: ``overwater.ufuncs.vapour_pressure.outer`` and so on.

A pickled ufunc is found again here. Arguments are not checked by name at this door, as they are by the functions.
"""

from __future__ import annotations

from typing import Any

from . import _native
from ._arguments import numpy


def __getattr__(name: str) -> Any:
    if name not in _native.FUNCTIONS:
        raise AttributeError(f"module 'overwater.ufuncs' has no attribute {name!r}")
    numpy()
    ufunc = getattr(_native, name).__self__.ufunc
    globals()[name] = ufunc
    return ufunc
