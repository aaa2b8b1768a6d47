"""What is raised when something is refused, in the words of the core."""

from __future__ import annotations


class OverwaterError(ValueError):
    """A refusal: what was refused, what is allowed, and what to do instead.

    Attributes
    ----------
    code : str
        A stable name for programs, such as ``"out_of_range"``.
    parameter : str
        The argument, or a path to it, such as ``"vessels[2].volume_cm3"``.
    value : str
        The value as it was given, with its unit; empty when nothing was given.
    allowed : str
        What would have been accepted.
    advice : str
        What to do instead.
    """

    code: str
    parameter: str
    value: str
    allowed: str
    advice: str

    def __init__(
        self,
        message: str,
        code: str = "",
        parameter: str = "",
        value: str = "",
        allowed: str = "",
        advice: str = "",
    ) -> None:
        super().__init__(message)
        self.code = code
        self.parameter = parameter
        self.value = value
        self.allowed = allowed
        self.advice = advice

    def __str__(self) -> str:
        return str(self.args[0])

    def __reduce__(self) -> tuple[type[OverwaterError], tuple[str, ...]]:
        parts = (str(self), self.code, self.parameter, self.value, self.allowed, self.advice)
        return type(self), parts


class UnknownNameError(OverwaterError, KeyError):
    """A name (of an element, a formula, a key, a substance) that is not known."""


_WORDS = {
    "contradiction": "contradicts another value",
    "missing": "is missing",
    "not_a_number": "is not a finite number",
    "syntax": "cannot be read",
    "too_large": "is too large",
    "unknown_name": "is not known",
}


def refused(code: str, parameter: str, value: str = "", allowed: str = "", advice: str = "") -> OverwaterError:
    """A refusal on this side of the core, put together as the core does it."""
    message = f"{parameter} = {value}" if value else parameter
    message += f" {_WORDS[code]}"
    message += f"; allowed: {allowed}" if allowed else ""
    message += f"; {advice}" if advice else ""
    kind = UnknownNameError if code == "unknown_name" else OverwaterError
    return kind(message, code, parameter, value, allowed, advice)
