"""What is more than a number: frozen objects over the requests and answers of the library.

Each holds the request that was asked and the answer that came, as JSON, and nothing else: equal requests and answers are
equal objects, and all of it survives a pickle.
"""

from __future__ import annotations

import json
import re
from collections.abc import Callable, Iterable, Mapping
from difflib import get_close_matches
from functools import wraps
from html import escape
from typing import TYPE_CHECKING, Any, ParamSpec, TypeVar

from . import _frames, _native, _plots
from ._ask import FORMAT, written
from ._ask import ask as _answered
from ._errors import OverwaterError, refused
from ._parts import Part

if TYPE_CHECKING:
    from typing_extensions import Self

_R = TypeVar("_R", bound="Result")
_P = ParamSpec("_P")

_PRE = "white-space:pre;overflow-x:auto;color:inherit;background:transparent"


def _named(init: Callable[_P, None]) -> Callable[_P, None]:
    """A constructor that names the keyword which is meant, as the library does for the keys of a request."""
    names = init.__code__.co_varnames[1 : init.__code__.co_argcount + init.__code__.co_kwonlyargcount]

    @wraps(init)
    def checked(*arguments: _P.args, **keywords: _P.kwargs) -> None:
        for keyword in keywords:
            if keyword not in names:
                near = get_close_matches(keyword, names, 1)
                hint = f"did you mean {near[0]}?" if near else f"it has {', '.join(names)}"
                raise TypeError(f"{type(arguments[0]).__name__}() has no argument {keyword}; {hint}")
        init(*arguments, **keywords)

    return checked


def _several(number: int, what: str) -> str:
    return f"{number} {what}" if number == 1 else f"{number} {what}s"


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
        self._fill(asked, _answered(self._task, asked))

    @classmethod
    def _restore(cls: type[_R], asked: str, answer: str) -> _R:
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
    def from_dict(cls: type[_R], document: Mapping[str, Any]) -> _R:
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
        asked, answer = _from_document(document, cls._task)
        return cls._restore(asked, _answered(cls._task, asked) if answer is None else answer)

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


_PLAIN = str.maketrans("₀₁₂₃₄₅₆₇₈₉⁰¹²³⁴⁵⁶⁷⁸⁹⁺⁻", "01234567890123456789+-")
_LATEX_SIGNS = str.maketrans({"→": r"\rightarrow ", "⇌": r"\rightleftharpoons ", "·": r"\cdot ", " ": r"\ "})


def _latex(unicode: str) -> str:
    """A formula with raised and lowered signs as LaTeX."""
    # A run at a time: a charge has to stand beside the number below, not in it. The point of a number below is a plain one.
    lowered = re.sub(r"[₀-₉]+(\.[₀-₉]+)?", lambda run: f"_{{{run[0].translate(_PLAIN)}}}", unicode)
    raised = re.sub(r"[⁰¹²³⁴-⁹⁺⁻]+", lambda run: f"^{{{run[0].translate(_PLAIN)}}}", lowered)
    return rf"$\mathrm{{{raised.translate(_LATEX_SIGNS)}}}$"


def _from_document(document: Mapping[str, Any], task: str) -> tuple[str, str | None]:
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


class Formula(Result):
    """A chemical formula and what it weighs.

    Parameters
    ----------
    formula : str
        As in ``"CuSO4.5H2O"``, ``"K4[Fe(CN)6]"`` or ``"SO4^2-"``.
    weights : {"exact", "abridged", "classroom"}
        Which atomic weights to take.

    Raises
    ------
    OverwaterError
        Where the formula cannot be read, with the place.

    Examples
    --------
    >>> from overwater import Formula
    >>> round(Formula("H2O2").molar_mass_g_per_mol, 3)  # 2 x 1.008 + 2 x 15.999
    34.014
    """

    __slots__ = ()
    _task = "weigh"

    if TYPE_CHECKING:
        formula: str
        formula_unicode: str
        molar_mass_g_per_mol: float
        standard_uncertainty_g_per_mol: float
        charge: int
        atoms: tuple[Part, ...]

    @_named
    def __init__(self, formula: str, *, weights: str = "exact") -> None:
        self._ask({"formula": formula, "weights": weights})

    def __repr__(self) -> str:
        return f"Formula({self.request.formula!r}, weights={self.request.weights!r})"

    def sheet(self, width: int = 80) -> str:
        """The formula and its molar mass in one line."""
        return f"{self.formula_unicode}: {self.molar_mass_g_per_mol:.6g} g/mol"

    def _repr_html_(self) -> str:
        rows = "".join(
            f"<tr><td>{escape(atom.name)}</td><td>{atom.count:g}</td><td>{100 * atom.mass_fraction:.2f} %</td></tr>"
            for atom in self.atoms
        )
        return (
            f"<p>{escape(self.sheet())}</p><details><summary>what it is made of</summary><table>"
            f"<thead><tr><th>element</th><th>atoms</th><th>share of the mass</th></tr></thead>"
            f"<tbody>{rows}</tbody></table></details>"
        )

    def _repr_latex_(self) -> str:
        return _latex(self.formula_unicode)


class Reaction(Result):
    """An equation, balanced with the smallest whole numbers.

    Parameters
    ----------
    equation : str
        As in ``"MnO4- + H+ + e- -> Mn^2+ + H2O"``.

    Raises
    ------
    OverwaterError
        ``no_balance`` and ``many_balances`` with the reason, and what cannot be read.

    Examples
    --------
    >>> from overwater import Reaction
    >>> print(Reaction("H2O2 -> H2O + O2").equation)
    2H2O2 -> 2H2O + O2
    """

    __slots__ = ()
    _task = "balance"

    if TYPE_CHECKING:
        equation: str
        equation_unicode: str
        reactants: tuple[Part, ...]
        products: tuple[Part, ...]

    @_named
    def __init__(self, equation: str) -> None:
        self._ask({"equation": equation})

    def __repr__(self) -> str:
        return f"Reaction({self.equation!r})"

    def sheet(self, width: int = 80) -> str:
        """The balanced equation."""
        return self.equation_unicode

    def _repr_html_(self) -> str:
        return f"<p>{escape(self.equation_unicode)}</p>"

    def _repr_latex_(self) -> str:
        return _latex(self.equation_unicode)


class Plan(Result):
    """A lesson, planned: everything to weigh, dilute, fill, reject, wait for and be careful of.

    The cautions that it holds go with the employer's risk assessment and local rules, which come first.

    Parameters
    ----------
    **lesson
        The keys of a lesson file: ``stock``, ``vessels``, ``room`` and so on; ``overwater template`` explains them.

    Raises
    ------
    OverwaterError
        Where the lesson is refused, with the path of the key.

    Examples
    --------
    >>> from overwater import Plan
    >>> plan = Plan(stock={"strength": "20 vol"}, vessels=[{"burn": "sulfur"}])
    >>> round(plan.gas.vessels[0].amount_mmol, 2)  # 250 cm3 at 20 degC and 101.325 kPa
    10.15
    """

    __slots__ = ()
    _task = "plan"

    if TYPE_CHECKING:
        place: Part
        stock: Part
        requisition: Part
        gas: Part
        filling: Part
        additions: Part
        burns: tuple[Part, ...]
        cautions: tuple[Part, ...]
        deference: str

    def __init__(self, **lesson: Any) -> None:
        self._ask(lesson)

    @classmethod
    def from_toml(cls, text: str) -> Plan:
        """Plans a lesson in the words of a lesson file."""
        return cls(**_from_toml(text))

    def _brief(self) -> str:
        volume = sum(vessel.moist_cm3 for vessel in self.gas.vessels)
        peroxide, cautions = self.requisition.issue_in_all_cm3, _several(len(self.cautions), "caution")
        vessels = _several(len(self.gas.vessels), "vessel")
        return f"{vessels}, {volume:.6g} cm3 of gas from {peroxide:.6g} cm3 of peroxide solution, {cautions}"

    def plot(self, ax: Any = None) -> Any:
        """The gas in each vessel, as bars; gives the axes."""
        return _plots.plan(self, ax)


class Run(Result):
    """One preparation, simulated as it is stated: what happens when, what goes wrong, and what would help.

    Parameters
    ----------
    **preparation
        The keys of a run file: ``flask_cm3``, ``catalyst_g``, ``additions``, ``vessels`` and so on. What is left out is
        listed in ``assumed``.

    Raises
    ------
    OverwaterError
        Where the preparation is refused, with the path of the key.

    Examples
    --------
    >>> from overwater import Run
    >>> run = Run(catalyst_g=1.0, additions=[{"volume_cm3": 5, "strength": "20 vol"}], vessels=[{"volume_cm3": 20}])
    >>> [vessel.full_at_s is not None for vessel in run.vessels]
    [True]
    """

    __slots__ = ()
    _task = "run"

    if TYPE_CHECKING:
        assumed: tuple[Part, ...]
        findings: tuple[Part, ...]
        events: tuple[Part, ...]
        vessels: tuple[Part, ...]
        filled_at_s: float | None
        reached_s: float
        top_temperature_c: float
        top_flow_cm3_per_s: float
        sensitivities: tuple[Part, ...]
        curve: tuple[Part, ...]

    def __init__(self, **preparation: Any) -> None:
        self._ask(preparation)

    def _brief(self) -> str:
        full = sum(vessel.full_at_s is not None for vessel in self.vessels)
        wrong = _several(len(self.findings), "finding")
        return f"{full} of {_several(len(self.vessels), 'vessel')} full after {self.reached_s:.0f} s, {wrong}"

    def columns(self) -> dict[str, list[Any]]:
        """The curves against time as columns."""
        names = list(self.curve[0]) if self.curve else []
        return {name: [point[name] for point in self.curve] for name in names}

    def to_frame(self, backend: str = "pandas") -> Any:
        """The curves against time as a data frame of the package named."""
        return _frames.frame(self.columns(), backend)

    def plot(self, ax: Any = None, *, quantity: str = "flow_cm3_per_s") -> Any:
        """One quantity of the curves against time, with the times at which vessels are full; gives the axes."""
        return _plots.run(self, ax, quantity)


class Burn(Result):
    """A sample that burns in a jar: what is made and left, how much heat, how hot, how much to take.

    The cautions come first; the employer's risk assessment and local rules come before them.

    Parameters
    ----------
    sample : str
        A name or a formula, as ``"sulfur"`` or ``"Mg"``.
    **rest
        ``mass_g``, ``jar`` (``volume_cm3``, ``temperature_c`` and so on) and the other keys of a burn file.

    Raises
    ------
    OverwaterError
        Where the sample is not known or something is out of range, with the path of the key.

    Examples
    --------
    >>> from overwater import Burn
    >>> burn = Burn("sulfur", mass_g=0.1, jar={"volume_cm3": 250})
    >>> round(burn.answers[0].most_g, 3)  # 10.15 mmol of oxygen burn as much sulfur
    0.325
    """

    __slots__ = ()
    _task = "burn"

    if TYPE_CHECKING:
        cautions: tuple[str, ...]
        assumed: tuple[str, ...]
        sample: Part
        jar: Part
        mass_g: float
        advice: Part | None
        answers: tuple[Part, ...]
        flames: Part | None

    def __init__(self, sample: str, **rest: Any) -> None:
        self._ask({**rest, "sample": sample})

    def _brief(self) -> str:
        equations = " or ".join(answer.equation for answer in self.answers)
        return f"{self.mass_g:.6g} g of {self.sample.name} in {self.jar.volume_cm3:.6g} cm3, {equations}"

    def plot(self, ax: Any = None) -> Any:
        """The gas of the jar before the burn and after it, as stacked bars; gives the axes."""
        return _plots.burn(self, ax)


class _OfReadings(Result):
    """What comes of a table of readings, and goes back into the kind of table that it came in."""

    __slots__ = ("_backend", "_index")
    _backend: str
    _index: Any

    if TYPE_CHECKING:
        rows_read: int
        rows_good: int
        bad_rows: tuple[Part, ...]
        notes: tuple[str, ...]

    def __init__(self, readings: Any, **options: Any) -> None:
        if "rows" in options:
            raise TypeError("rows is given twice, as readings and by name; leave rows out")
        table = _frames.read(readings)
        self._ask({**options, "rows": table.rows})
        self._remember(table.backend, table.index)

    def _remember(self, backend: str, index: Any) -> None:
        object.__setattr__(self, "_backend", backend)
        object.__setattr__(self, "_index", index)

    @classmethod
    def _restore(cls: type[_R], asked: str, answer: str, backend: str = "pandas", index: Any = None) -> _R:
        result = cls.__new__(cls)
        result._fill(asked, answer)
        result._remember(backend, index)
        return result

    def __reduce__(self) -> tuple[Any, tuple[Any, ...]]:
        return type(self)._restore, (self._asked, self._answer, self._backend, self._index)

    def _means(self) -> Iterable[str]:
        """What all rows tell together."""
        raise NotImplementedError

    def _brief(self) -> str:
        return ", ".join((f"{self.rows_good} of {_several(self.rows_read, 'row')} good", *self._means()))

    def columns(self) -> dict[str, list[Any]]:
        """A row for each row of the readings."""
        raise NotImplementedError

    def to_frame(self, backend: str | None = None) -> Any:
        """The columns as a data frame, a row for each row of the readings.

        Parameters
        ----------
        backend : {"pandas", "polars", "pyarrow"}, optional
            The package of the frame; that of the readings where it is left out, or pandas where they were in no frame.
            The index of a pandas frame is kept.
        """
        return _frames.frame(self.columns(), self._backend if backend is None else backend, self._index)


class Reduction(_OfReadings):
    """Rows of readings, reduced: amounts, volumes, yields, molar masses, with the size of each correction.

    Parameters
    ----------
    readings : data frame, mapping of columns, or sequence of mappings
        A row each; the unit stands at the end of each column's name, as in ``volume_cm3``.
    **options
        The keys of an options file: ``practical``, ``collector``, ``gas``, ``reaction``, ``given`` and so on.

    Raises
    ------
    OverwaterError
        Where a row or an option is refused, with its path.
    """

    __slots__ = ()
    _task = "reduce"

    if TYPE_CHECKING:
        rows: tuple[Part, ...]
        summary: tuple[Part, ...]
        slope: Part | None

    def _means(self) -> Iterable[str]:
        return (f"mean {one.words} {one.mean:.4g} {one.unit}" for one in self.summary)

    def _every_row(self) -> list[Part]:
        """All rows that have a result; an answer keeps the first of them only."""
        kept = max(len(self.rows), len(self.bad_rows))
        if len(self.rows) == self.rows_good:
            return list(self.rows)
        request = self.request.to_dict()
        request.pop("working", None)
        whole = []
        for start in range(0, self.rows_read, kept):
            part = Part(json.loads(_answered(self._task, written({**request, "rows": request["rows"][start : start + kept]}))))
            whole += [Part({**row.to_dict(), "row": row.row + start}) for row in part.rows]
        return whole

    def columns(self) -> dict[str, list[Any]]:
        """The results as columns, a row for each row that was read; where it has no result, ``bad_rows`` says why."""
        found: dict[int, dict[str, Any]] = {}
        for row in self._every_row():
            found[row.row] = values = {}
            for result in row.results:
                values[result.name] = result.value
                if row.uncertainty is not None and row.uncertainty.name == result.name:
                    for kind in ("standard_uncertainty", "half_width"):
                        values[f"{result.name}_{kind}"] = row.uncertainty[kind]
        names = dict.fromkeys(name for values in found.values() for name, value in values.items() if value is not None)
        rows = range(1, self.rows_read + 1)
        return {
            "row": list(rows),
            "label": [row.get("label") for row in self.request.rows],
            **{name: [found.get(row, {}).get(name) for row in rows] for name in names},
        }

    def plot(self, ax: Any = None, *, result: str | None = None) -> Any:
        """One result, row by row, with its mean; gives the axes.

        The result is named as in the columns; the last one where it is left out.
        """
        return _plots.reduction(self, ax, result)


class RateFit(_OfReadings):
    """Readings against time: initial rates, curves, half-lives, orders, and what several runs tell together.

    Parameters
    ----------
    readings : data frame, mapping of columns, or sequence of mappings
        A reading each, with columns such as ``run``, ``time_s``, ``volume_cm3``, ``temperature_c``.
    **options
        The keys of an options file: ``gas``, ``given``, ``rate_from`` and so on.

    Raises
    ------
    OverwaterError
        Where a row or an option is refused, with its path.
    """

    __slots__ = ()
    _task = "rate"

    if TYPE_CHECKING:
        runs: tuple[Part, ...]
        order: Part | None
        arrhenius: Part | None
        warnings: tuple[str, ...]

    def _means(self) -> Iterable[str]:
        yield _several(len(self.runs), "run")
        if self.arrhenius is not None:
            energy = self.arrhenius.activation_energy
            yield f"activation energy {energy.value:.4g} {energy.unit}"

    def columns(self) -> dict[str, list[Any]]:
        """Every reading with the fitted value beside it, as columns; where it was not used, ``bad_rows`` says why."""
        points = {point.row: (run.run, point) for run in self.runs for point in run.points}
        rows = range(1, self.rows_read + 1)
        return {
            "run": [points[row][0] if row in points else None for row in rows],
            "row": list(rows),
            **{name: [points[row][1][name] if row in points else None for row in rows] for name in ("x", "y", "fitted")},
        }

    def plot(self, ax: Any = None) -> Any:
        """Readings and fitted curves; gives the axes."""
        return _plots.rate(self, ax)


class Budget(Result):
    """How uncertain the result of a formula is, and which input matters.

    Parameters
    ----------
    formula : str
        The name of a function, such as ``"dry_amount"``.
    inputs : mapping
        For each input what is known of it, as in ``{"value": 86.5, "division": 1.0}``.
    **options
        ``rules`` (``"gum"``, ``"monte_carlo"``, ...), ``seed``, ``draws``, ``coverage`` and so on.

    Raises
    ------
    OverwaterError
        Where something is refused, with its path.
    """

    __slots__ = ()
    _task = "propagate"

    if TYPE_CHECKING:
        formula: str
        value: float
        unit: str
        standard_uncertainty: float | None
        expanded_uncertainty: float | None
        coverage_factor: float | None
        stated: Part
        drawn: Part | None
        lines: tuple[Part, ...]

    def __init__(self, formula: str, inputs: Mapping[str, Any], **options: Any) -> None:
        self._ask({**options, "formula": formula, "inputs": inputs})

    def _brief(self) -> str:
        return f"{self.formula} = ({self.stated.value} ± {self.stated.uncertainty}) {self.unit}".rstrip()

    def columns(self) -> dict[str, list[Any]]:
        """The lines of the budget as columns."""
        names = list(self.lines[0]) if self.lines else []
        return {name: [line[name] for line in self.lines] for name in names}

    def to_frame(self, backend: str = "pandas") -> Any:
        """The lines of the budget as a data frame of the package named."""
        return _frames.frame(self.columns(), backend)

    def plot(self, ax: Any = None) -> Any:
        """What each input contributes, as bars; gives the axes."""
        return _plots.budget(self, ax)


class Working(Result):
    """A formula worked out step by step.

    Parameters
    ----------
    formula : str
        The name of a function, such as ``"dry_amount"``.
    **inputs : float
        Its inputs.

    Raises
    ------
    OverwaterError
        Where an input is refused.

    Examples
    --------
    >>> from overwater import Working
    >>> working = Working("vapour_pressure", temperature_c=20.0)
    >>> round(working.result.value, 4)  # CRC Handbook: 2.3388 kPa
    2.3393
    """

    __slots__ = ()
    _task = "calculate"

    if TYPE_CHECKING:
        formula: str
        inputs: tuple[Part, ...]
        result: Part
        steps: tuple[Part, ...]

    def __init__(self, formula: str, **inputs: float) -> None:
        self._ask({"formula": formula, "inputs": inputs})

    def _brief(self) -> str:
        return f"{self.formula} = {self.result.value:.5g} {self.result.unit}".rstrip()

    def _repr_html_(self) -> str:
        return _native.working_html(self._answer)

    def _repr_latex_(self) -> str:
        return "$$\n\\begin{gathered}\n" + " \\\\\n".join(step.latex for step in self.steps) + "\n\\end{gathered}\n$$"


class Answer(Result):
    """The answer to a task that has no class of its own; `ask` makes it."""

    __slots__ = ("_task",)

    @classmethod
    def _restore(cls: type[_R], asked: str, answer: str, task: str = "") -> _R:
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
        asked, answer = _from_document(document, task)
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


def _from_toml(text: str) -> dict[str, Any]:
    """A lesson file as a dict."""
    if not isinstance(text, str):
        raise TypeError(f"text is of type {type(text).__name__}; give the text of a lesson file")
    try:
        document: dict[str, Any] = json.loads(_native.lesson_from_toml(text))
    except OverwaterError as error:
        if error.parameter:
            raise
        raise OverwaterError(f"text{error}", error.code, "text", error.value, error.allowed, error.advice) from error
    document.pop("format", None)
    return document


_KINDS: dict[str, type[Result]] = {
    kind._task: kind for kind in (Budget, Burn, Formula, Plan, RateFit, Reaction, Reduction, Run, Working)
}

__all__ = ["Answer", "Budget", "Burn", "Formula", "Plan", "RateFit", "Reaction", "Reduction", "Result", "Run", "Working", "ask"]
