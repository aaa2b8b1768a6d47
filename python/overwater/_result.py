"""What all results have in common: the request that was asked and the answer that came, frozen."""

from __future__ import annotations

import json
from collections.abc import Mapping
from html import escape
from typing import TYPE_CHECKING, Any, TypeVar

from . import _native
from ._ask import FORMAT, ask, written
from ._errors import refused
from ._parts import Part

if TYPE_CHECKING:
    from typing_extensions import Self

R = TypeVar("R", bound="Result")

_PRE = "white-space:pre;overflow-x:auto;color:inherit;background:transparent"


class Result:
    """What all results have in common; it is not made by itself.

    The keys of the answer are attributes: ``plan.gas`` is ``plan.answer["gas"]``. Nothing can be changed.
    """

    __slots__ = ("_answer", "_asked", "_data")
    _task: str
    _asked: str
    _answer: str
    _data: Part

    def _fill(self, asked: str, answer: str) -> None:
        object.__setattr__(self, "_asked", asked)
        object.__setattr__(self, "_answer", answer)
        object.__setattr__(self, "_data", Part(json.loads(answer)))

    def _ask(self, request: Mapping[str, Any]) -> None:
        asked = written({"format": FORMAT, **request})
        self._fill(asked, ask(self._task, asked))

    @classmethod
    def _restore(cls: type[R], asked: str, answer: str) -> R:
        result = cls.__new__(cls)
        result._fill(asked, answer)
        return result

    @property
    def request(self) -> Part:
        """What was asked."""
        return Part(json.loads(self._asked))

    @property
    def answer(self) -> Part:
        """The whole answer."""
        return self._data

    def to_dict(self) -> dict[str, Any]:
        """The task, the request and the answer, as they travel to other programs."""
        return {
            "format": FORMAT,
            "task": self._task,
            "request": json.loads(self._asked),
            "answer": json.loads(self._answer),
        }

    @classmethod
    def from_dict(cls: type[R], document: Mapping[str, Any]) -> R:
        """What `to_dict` gave, without working it out again; a document without an answer is worked out.

        An answer is taken on trust: whether it belongs to the request is only known by leaving it out.

        Raises
        ------
        TypeError
            For what is no mapping.
        OverwaterError
            For a document of another task or format, for a key that is missing or not known, and where the request is
            refused.
        """
        asked, answer = from_document(document, cls._task)
        return cls._restore(asked, ask(cls._task, asked) if answer is None else answer)

    def __getattr__(self, name: str) -> Any:
        if name.startswith("_"):
            raise AttributeError(name)
        return getattr(self._data, name)

    def __setattr__(self, name: str, value: object) -> None:
        raise AttributeError(f"a {type(self).__name__} cannot be changed, nor its {name}")

    def __delattr__(self, name: str) -> None:
        raise AttributeError(f"a {type(self).__name__} cannot be changed, nor its {name}")

    def __dir__(self) -> list[str]:
        return [*super().__dir__(), *self._data]

    def __eq__(self, other: object) -> bool:
        if type(other) is not type(self):
            return NotImplemented
        return (self._task, self._asked, self._answer) == (other._task, other._asked, other._answer)

    def __hash__(self) -> int:
        return hash((self._task, self._asked, self._answer))

    def __reduce__(self) -> tuple[Any, tuple[Any, ...]]:
        return type(self)._restore, (self._asked, self._answer)

    def __copy__(self) -> Self:
        return self

    def __deepcopy__(self, memo: object) -> Self:
        return self

    def _brief(self) -> str:
        """What a reader wants to see of it in one line."""
        raise NotImplementedError

    def __repr__(self) -> str:
        return f"<{type(self).__name__}: {self._brief()}>"

    def sheet(self, width: int = 80) -> str:
        """What the program prints of it, at most `width` columns wide."""
        text = _native.sheet(self._task, self._answer, width)
        return repr(self) if text is None else text

    def __str__(self) -> str:
        return self.sheet()

    def _repr_html_(self) -> str:
        return f'<pre style="{_PRE}">{escape(self.sheet())}</pre>'

    def _repr_mimebundle_(self, include: object = None, exclude: object = None) -> dict[str, str]:
        """The same in every form that a notebook may choose from."""
        bundle = {"text/plain": self.sheet(), "text/html": self._repr_html_()}
        latex = getattr(self, "_repr_latex_", None)
        if latex is not None:
            bundle["text/latex"] = latex()
        return bundle


def from_document(document: Mapping[str, Any], task: str) -> tuple[str, str | None]:
    """The request, and the answer if there is one, of what `to_dict` gave."""
    if not isinstance(document, Mapping):
        raise TypeError(f"document is of type {type(document).__name__}; give a dict, as json.loads gives it of a text")
    keys = ("format", "task", "request", "answer")
    for key in document:
        if key not in keys:
            raise refused("unknown_name", str(key), "", ", ".join(keys))
    for key, value in (("format", FORMAT), ("task", task)):
        if key not in document:
            raise refused("missing", key, "", str(value), "give what to_dict gave")
        if document[key] != value:
            raise refused("contradiction", key, str(document[key]), str(value), "give a document of this kind")
    for key in ("request", "answer"):
        part = document.get(key)
        if part is None and key == "request":
            raise refused("missing", key, "", "a mapping", "give what to_dict gave")
        if part is not None and not isinstance(part, Mapping):
            raise refused("syntax", key, "", "a mapping", f"it is of type {type(part).__name__}")
        if part is not None and part.get("format") != FORMAT:
            raise refused("contradiction", f"{key}.format", str(part.get("format", "nothing")), str(FORMAT))
    answer = document.get("answer")
    return written(document["request"]), None if answer is None else json.dumps(answer, separators=(",", ":"))


__all__ = ["R", "Result", "from_document"]
