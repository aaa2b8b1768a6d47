"""A request to the library, and its answer."""

from __future__ import annotations

import json
from collections.abc import Mapping
from typing import Any

from . import _native
from ._errors import OverwaterError, UnknownNameError

FORMAT = 1


def _plain(value: Any) -> Any:
    """What JSON does not know by itself: numbers of NumPy, dates, parts of answers."""
    if isinstance(value, Mapping):
        return dict(value)
    for method in ("item", "isoformat"):
        if hasattr(value, method):
            return getattr(value, method)()
    raise TypeError(f"a {type(value).__name__} has no place in a request; give a number, a text, a list or a dict")


def written(document: Any) -> str:
    """A document as JSON: the same document always gives the same text."""
    try:
        return json.dumps(document, default=_plain, sort_keys=True, separators=(",", ":"), allow_nan=False)
    except ValueError as error:
        if isinstance(error, OverwaterError):
            raise
        raise OverwaterError(
            "request is not a finite number; leave a missing value out",
            "not_a_number",
            "request",
            "",
            "finite numbers",
            "leave a missing value out",
        ) from error


def refusal(error: Mapping[str, str]) -> OverwaterError:
    """The exception that says what an answer with an error says."""
    path = error["path"].removeprefix("request").removeprefix(".")
    message = error["message"]
    if message.startswith(error["path"]):
        message = path + message[len(error["path"]) :]
    kind = UnknownNameError if error["code"] == "unknown_name" else OverwaterError
    return kind(message.strip(), error["code"], path, error["value"], error["allowed"], error["advice"])


def ask(task: str, request: str) -> str:
    """The answer, as JSON, to a request in JSON.

    Raises
    ------
    OverwaterError
        For everything that is refused.
    """
    whole = f'{{"format":{FORMAT},"task":{json.dumps(task)},"request":{request}}}'
    answer = json.loads(_native.respond(whole.encode()))
    if "error" in answer:
        raise refusal(answer["error"])
    return json.dumps(answer["answer"], separators=(",", ":"))
