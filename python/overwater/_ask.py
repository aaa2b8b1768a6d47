"""A request to the library, and its answer."""

from __future__ import annotations

import json
import math
from collections.abc import Mapping
from decimal import Decimal
from fractions import Fraction
from typing import Any

from . import _native
from ._errors import OverwaterError, UnknownNameError, refused

FORMAT = 1


def _plain(value: Any, path: str) -> Any:
    """A value as JSON has it, or a refusal with its path."""
    if value is None or isinstance(value, (str, int)):
        return value
    if isinstance(value, float):
        if math.isfinite(value):
            return value
        said = "NaN" if math.isnan(value) else str(value)
        raise refused("not_a_number", path, said, "finite numbers", "leave a missing value out")
    if isinstance(value, Mapping):
        for key in value:
            if not isinstance(key, str):
                raise TypeError(f"{path or 'the request'} has the key {key!r}; give a text")
        return {key: _plain(one, f"{path}.{key}" if path else key) for key, one in value.items()}
    if isinstance(value, (list, tuple)):
        return [_plain(one, f"{path}[{index}]") for index, one in enumerate(value)]
    if getattr(value, "shape", ()) != ():
        raise TypeError(f"{path} is an array, not a number; give a number, or its tolist() where a list is meant")
    if hasattr(value, "item"):
        return _plain(value.item(), path)
    if hasattr(value, "isoformat"):
        return value.isoformat()
    if isinstance(value, (Decimal, Fraction)):
        return _plain(float(value), path)
    raise TypeError(f"{path} is of type {type(value).__name__}; give a number, a text, a list or a dict")


def written(document: Any) -> str:
    """A document as JSON: the same document always gives the same text.

    Raises
    ------
    OverwaterError
        For NaN and infinity, with the path.
    TypeError
        For what has no place in JSON, with the path.
    """
    return json.dumps(_plain(document, ""), sort_keys=True, separators=(",", ":"))


def refusal(error: Mapping[str, str]) -> OverwaterError:
    """The exception that says what an answer with an error says."""
    path, message = error["path"].removeprefix("request."), error["message"]
    if message.startswith(error["path"]):
        message = path + message[len(error["path"]) :]
    kind = UnknownNameError if error["code"] == "unknown_name" else OverwaterError
    return kind(message, error["code"], path, error["value"], error["allowed"], error["advice"])


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
