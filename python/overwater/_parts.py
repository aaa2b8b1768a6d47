"""Parts of an answer: read-only, by key or by attribute."""

from __future__ import annotations

import json
from collections.abc import Iterator, Mapping
from typing import Any


class Part(Mapping[str, Any]):
    """An object of an answer, which cannot be changed: ``part.value`` is ``part["value"]``."""

    __slots__ = ("_data",)
    _data: dict[str, Any]

    def __init__(self, data: Mapping[str, Any]) -> None:
        object.__setattr__(self, "_data", dict(data))

    def __getitem__(self, key: str) -> Any:
        return frozen(self._data[key])

    def __iter__(self) -> Iterator[str]:
        return iter(self._data)

    def __len__(self) -> int:
        return len(self._data)

    def __getattr__(self, name: str) -> Any:
        if name.startswith("_") or name not in self._data:
            raise AttributeError(f"there is no {name} here; there is {', '.join(self._data)}")
        return self[name]

    def __setattr__(self, name: str, value: object) -> None:
        raise AttributeError(f"an answer cannot be changed, nor its {name}")

    def __delattr__(self, name: str) -> None:
        raise AttributeError(f"an answer cannot be changed, nor its {name}")

    def __dir__(self) -> list[str]:
        return [*super().__dir__(), *self._data]

    def __eq__(self, other: object) -> bool:
        return self._data == (other._data if isinstance(other, Part) else other)

    def __hash__(self) -> int:
        return hash(json.dumps(self._data, sort_keys=True))

    def __reduce__(self) -> tuple[type[Part], tuple[dict[str, Any]]]:
        return Part, (self._data,)

    def __repr__(self) -> str:
        return f"Part({self._data!r})"

    def to_dict(self) -> dict[str, Any]:
        """A copy of its own, to be changed at will."""
        return dict(json.loads(json.dumps(self._data)))


def frozen(value: Any) -> Any:
    """A value of an answer as it is given out: objects as parts, lists as tuples."""
    if isinstance(value, dict):
        return Part(value)
    if isinstance(value, list):
        return tuple(frozen(one) for one in value)
    return value
