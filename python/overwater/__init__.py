"""Gas-collection calculations for school and college chemistry.

Functions take numbers, arrays, and columns of pandas, Polars, xarray or dask; the unit stands in the name of each
argument:

>>> import overwater
>>> round(overwater.vapour_pressure(21.0), 3)  # kPa
2.488
>>> round(overwater.dry_amount(86.5, temperature_c=21.0, pressure_kpa=100.36), 3)  # mmol
3.461

``overwater.FUNCTIONS`` lists them and ``help(overwater.dry_amount)`` says what each takes and where it comes from.
"""

from . import _native
from ._native import FUNCTIONS, __version__

globals().update({name: getattr(_native, name) for name in FUNCTIONS})

# What is not needed for a number is loaded when it is first asked for: importing the package takes about a millisecond.
_LATER = {
    **dict.fromkeys(("Budget", "Burn", "Formula", "Plan", "RateFit", "Reaction", "Reduction", "Run", "Working"), "_results"),
    **dict.fromkeys(("Answer", "ask"), "_tasks"),
    "check": "_check",
    "OverwaterError": "_errors",
    "UnknownNameError": "_errors",
}

__all__ = ["FUNCTIONS", "__version__", *_LATER, *FUNCTIONS]


def __getattr__(name):
    from importlib import import_module

    if name == "ufuncs":
        return import_module(".ufuncs", __name__)
    module = _LATER.get(name)
    if module is None:
        raise AttributeError(f"module 'overwater' has no attribute {name!r}")
    value = getattr(import_module(f".{module}", __name__), name)
    globals()[name] = value
    return value


def __dir__():
    return sorted({*globals(), *_LATER, "ufuncs"})
