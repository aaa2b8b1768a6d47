"""Whether what is written on a column, its name or an attribute, says another unit than that of the argument.

A unit of another kind in a name may be an accident: ``pressure_c`` is the pressure of run c, ``temperature_min`` the least
one. Such names are left alone, unless they are names of the library, as ``temperature_c`` is.
"""

from __future__ import annotations

import re

from . import _native
from ._errors import refused

# Units of one kind, as they are written at the end of a column's name or in an attribute, in lower case. The first name
# of each is the one of the library.
_KINDS: tuple[tuple[tuple[str, ...], ...], ...] = (
    (("degc", "c", "celsius", "°c"), ("k", "kelvin", "degk", "°k"), ("f", "degf", "fahrenheit", "°f")),
    (
        ("kpa", "kilopascal"),
        ("pa", "pascal"),
        ("hpa", "mbar", "mb", "millibar", "hectopascal"),
        ("mpa",),
        ("bar",),
        ("atm", "atmosphere"),
        ("mmhg",),
        ("torr",),
        ("psi",),
        ("inhg",),
    ),
    (
        ("cm3", "ml", "cc", "cm^3", "cm**3", "cm³", "millilitre", "millilitres", "milliliter", "milliliters"),
        ("dm3", "l", "dm^3", "dm**3", "dm³", "litre", "litres", "liter", "liters"),
        ("m3", "m^3", "m**3", "m³"),
        ("ul", "mm3", "mm^3", "mm³", "microlitre", "microlitres", "microliter", "microliters"),
    ),
    (("mmol", "millimole", "millimoles"), ("mol", "mole", "moles"), ("umol",), ("kmol",)),
    (
        ("mm", "millimetre", "millimetres", "millimeter", "millimeters"),
        ("cm", "centimetre", "centimetres", "centimeter", "centimeters"),
        ("m", "metre", "metres", "meter", "meters"),
        ("km",),
        ("ft", "foot", "feet"),
        ("in", "inch", "inches"),
    ),
    (("g", "gram", "grams"), ("kg", "kilogram", "kilograms"), ("mg", "milligram", "milligrams"), ("lb",), ("oz",)),
    (("s", "second", "seconds"), ("min", "minute", "minutes"), ("h", "hour", "hours"), ("ms",), ("day", "days")),
    (("%", "percent"), ("fraction",)),
)

# What a plain number is, for the library a unit without a name.
_PLAIN = "fraction"

# Units that are words as well: "temperature_in" is that of the inside.
_WORDS = ("in", "min", "day", "second", "fraction")


def _lower(text: str) -> str:
    """The text in the spelling of the list above."""
    text = text.strip().lower().replace("µ", "u").replace("μ", "u")
    text = re.sub(r"(?<![a-z])(mm|in)[\s_]hg\b", r"\1hg", text)
    return re.sub(r"(?<![a-z])deg(rees?)?[\s_](?=[ckf])", "", text)


def _kind_and_unit(text: str) -> tuple[int, int] | None:
    text = _lower(text)
    for kind, units in enumerate(_KINDS):
        for unit, names in enumerate(units):
            if text in names:
                return kind, unit
    return None


def _of_the_library() -> dict[str, str]:
    units: dict[str, str] = {}
    for function in _native.FUNCTIONS:
        calculation = getattr(_native, function).__self__
        units[calculation.result] = calculation.unit
        units.update((row["name"], row["unit"]) for row in calculation.inputs)
    return units


# The unit of each input and result, by its name.
_OWN = _of_the_library()


def _said_by_name(name: str, unit: str) -> str | None:
    """The other unit that a column's name says, if it says one."""
    own = _OWN.get(name)
    if own:
        return own if own != unit else None
    *before, last = re.split(r"([\s_/()\[\],]+)", _lower(name).rstrip(")] "))
    if not before or before[-2] == "per" or (before[-1] == "/" and _kind_and_unit(before[-2]) is not None):
        # A single word is a symbol, and "mol/dm3" is not the unit dm3.
        return None
    said, asked = _kind_and_unit(last), _kind_and_unit(unit or _PLAIN)
    if said is None or said == asked:
        return None
    accident = last in _WORDS or (len(last) == 1 and before[-1] == "_")
    return last if (asked is not None and said[0] == asked[0]) or not accident else None


def _said_by_attribute(text: str, unit: str) -> str | None:
    """The other unit that an attribute says, if it says one that is known."""
    said = _kind_and_unit(text)
    return text if said is not None and said != _kind_and_unit(unit or _PLAIN) else None


def check_unit(argument: str, unit: str, name: object, attribute: object = None) -> None:
    """Refuses a column whose name or whose attribute says that it is in another unit.

    Raises
    ------
    OverwaterError
        With the unit that was said.
    """
    by_attribute = _said_by_attribute(attribute, unit) if isinstance(attribute, str) else None
    by_name = _said_by_name(name, unit) if isinstance(name, str) else None
    for said, where in ((by_attribute, "its attribute"), (by_name, f"its name {name}")):
        if said is None:
            continue
        ours = unit or "a plain number"
        of_one_kind = (_kind_and_unit(said) or (-1,))[0] == (_kind_and_unit(unit or _PLAIN) or (-2,))[0]
        advice = f"convert it to {ours} first" if of_one_kind else "give the column that is meant, or rename it"
        raise refused("contradiction", argument, said, ours, f"{where} says {said}: {advice}")


__all__ = ["check_unit"]
