"""Any task of the library by its name."""

from __future__ import annotations

import json
from collections.abc import Mapping
from typing import Any

from . import _native
from ._ask import FORMAT, written
from ._ask import ask as _answered
from ._errors import refused
from ._result import R, Result, from_document
from ._results import Budget, Burn, Formula, Plan, RateFit, Reaction, Reduction, Run, Working

_KINDS: dict[str, type[Result]] = {
    kind._task: kind for kind in (Budget, Burn, Formula, Plan, RateFit, Reaction, Reduction, Run, Working)
}


class Answer(Result):
    """The answer to a task that has no class of its own; `ask` makes it."""

    __slots__ = ("_task",)

    @classmethod
    def _restore(cls: type[R], asked: str, answer: str, task: str = "") -> R:
        result = cls.__new__(cls)
        result._fill(asked, answer)
        object.__setattr__(result, "_task", task)
        return result

    @classmethod
    def from_dict(cls, document: Mapping[str, Any]) -> Answer:
        """What `to_dict` gave, without working it out again; a document without an answer is worked out.

        An answer is taken on trust: whether it belongs to the request is only known by leaving it out.

        Raises
        ------
        TypeError
            For what is no mapping.
        OverwaterError
            For a document that `to_dict` did not give, and where the request is refused.
        """
        task = document.get("task", "") if isinstance(document, Mapping) else ""
        asked, answer = from_document(document, task)
        if task not in _native.tasks():
            raise refused("unknown_name", "task", str(task), ", ".join(_native.tasks()))
        return cls._restore(asked, _answered(task, asked) if answer is None else answer, task)

    def __reduce__(self) -> tuple[Any, tuple[Any, ...]]:
        return type(self)._restore, (self._asked, self._answer, self._task)

    def _brief(self) -> str:
        return f"{self._task}, with {', '.join(name for name in self.answer if name not in ('format', 'library_version'))}"

    def sheet(self, width: int = 80) -> str:
        """What the program prints of it, or the answer in JSON for a task without a sheet."""
        text = _native.sheet(self._task, self._answer, width)
        return json.dumps(json.loads(self._answer), indent=2, ensure_ascii=False) if text is None else text


def ask(task: str, /, **request: Any) -> Result:
    """The answer to any task of the library.

    =================  =====================================================================================================
    task               from a request to an answer
    =================  =====================================================================================================
    plan               a lesson to everything to weigh, dilute, fill, reject, wait for and be careful of
    schedule           portions by the stop-watch that keep flow, heat and pressure within limits, or what stands in the way
    run                one preparation simulated: what happens when, what goes wrong, curves, balances
    calibrate          readings of a trial run to the activity of a catalyst at 20 degC with its uncertainty
    burn               a sample in a jar: what burns, what is made and left, heat, flame, how much to take
    dissolve           a product of a burn in water: how much dissolves, the pH, what indicators show
    air                a product of a burn in a room's air against the limits for people at work
    species            the species of the flames with their coefficients, or those that hold a text
    cautions           what to be careful of in a lesson, and the facts that raise it
    reduce             rows of readings to amounts, volumes, yields, molar masses, with the size of each correction
    rate               readings against time to rates, half-lives, orders, activation energies
    propagate          how uncertain the result of a formula is, by a stated rule set
    calculate          one formula: the number, its sensitivities, the worked solution
    calculate_columns  one formula over columns of values; a row without a result says why
    formulas           the formulas there are, with what each takes in and gives, or those that hold a text
    strength           a strength of peroxide in every scale, and under every convention
    dilute             how much stock to make up to a volume for a strength wanted
    design_assay       pipette, flask and aliquot that bring the titre of an assay into range
    weigh              the molar mass of a chemical formula with its uncertainty, and what it is made of
    balance            an equation with the smallest whole numbers
    sources            where every number comes from, or those entries that hold a text
    bounds             what is accepted for each quantity, or for those that hold a text
    version            the version of the library, and the tasks it knows
    =================  =====================================================================================================

    Parameters
    ----------
    task : str
        Its name.
    **request
        The keys of the request, as they stand in a file of the program.

    Returns
    -------
    Result
        A `Plan`, `Run`, `Burn`, `Reduction`, `RateFit`, `Budget`, `Working`, `Formula` or `Reaction` where the task has such a
        class, an `Answer` otherwise; the keys of the answer are its attributes.

    Raises
    ------
    UnknownNameError
        For a task that there is not, with the nearest.
    OverwaterError
        Where the request is refused, with the path of the key.

    Examples
    --------
    >>> from overwater import ask
    >>> round(ask("strength", strength="20 vol").strength.percent_w_v)  # British Pharmacopoeia: 6 per cent is 20 volumes
    6
    """
    asked = written({"format": FORMAT, **request})
    answer = _answered(task, asked)
    kind = _KINDS.get(task)
    return Answer._restore(asked, answer, task) if kind is None else kind._restore(asked, answer)


__all__ = ["Answer", "ask"]
