"""Inputs that a function accepts, from the bounds that it states."""

import overwater


def rows(name):
    """What a function says of its inputs."""
    return getattr(overwater, name).__self__.inputs


def ranges(name):
    """The accepted range of each input, by name."""
    return {row["name"]: (row["least"], row["greatest"]) for row in rows(name)}


def number(name, values):
    """The result for one set of values; NaN where a number is refused or missing."""
    try:
        return getattr(overwater, name)(**dict(zip(ranges(name), map(float, values), strict=True)))
    except overwater.OverwaterError:
        return float("nan")
