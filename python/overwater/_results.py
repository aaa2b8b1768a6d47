"""What is more than a number: frozen objects over the requests and answers of the library.

Each holds the request that was asked and the answer that came, as JSON: equal requests and answers are
equal objects, and all of it survives a pickle.
"""

from __future__ import annotations

import json
import re
from collections.abc import Callable, Iterable, Mapping
from difflib import get_close_matches
from functools import wraps
from html import escape
from typing import TYPE_CHECKING, Any, ParamSpec

from . import _frames, _native, _plots
from ._parts import Part
from ._result import R, Result

_P = ParamSpec("_P")


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


_PLAIN = str.maketrans("₀₁₂₃₄₅₆₇₈₉⁰¹²³⁴⁵⁶⁷⁸⁹⁺⁻", "01234567890123456789+-")
_LATEX_SIGNS = str.maketrans({"→": r"\rightarrow ", "⇌": r"\rightleftharpoons ", "·": r"\cdot ", " ": r"\ "})


def _latex(unicode: str) -> str:
    """A formula with raised and lowered signs as LaTeX."""
    # A run at a time: a charge has to stand beside the number below, not in it. The point of a number below is a plain one.
    lowered = re.sub(r"[₀-₉]+(\.[₀-₉]+)?", lambda run: f"_{{{run[0].translate(_PLAIN)}}}", unicode)
    raised = re.sub(r"[⁰¹²³⁴-⁹⁺⁻]+", lambda run: f"^{{{run[0].translate(_PLAIN)}}}", lowered)
    return rf"$\mathrm{{{raised.translate(_LATEX_SIGNS)}}}$"


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
        The keys of a lesson file, which ``overwater template`` explains; ``stock`` and ``vessels`` are needed:

        - ``apparatus``: The apparatus: with flask_cm3, flow_cm3_per_s, free_volume_cm3, funnel, heel_cm3, jar_cm3,
          outlet_depth_cm, stem_length_cm, tube_bore_mm, tube_cm3, tube_length_cm.
        - ``barometer``: The barometer; the standard atmosphere where it is left out: with altitude_m,
          sea_level_pressure_hpa, sea_level_pressure_kpa, station_pressure_hpa, station_pressure_kpa,
          station_pressure_mmhg.
        - ``catalyst``: The catalyst: with mass_g, substance.
        - ``date``: The day of the lesson, as in "2026-12-03".
        - ``room``: The room: with air_changes_per_hour, temperature_c, volume_m3.
        - ``run``: How the preparation is run: with collection_efficiency_fraction, groups, rejected_cm3, spare_jars,
          spare_sets, strength.
        - ``stock``: The peroxide in stock: with assay, convention, density_g_per_cm3, opened, strength.
        - ``title``: A title for the sheet.
        - ``vessels``: The vessels, in the order in which they are filled: with burn, kind, name, sample_g,
          volume_cm3, wanted_oxygen_fraction.

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
        return cls(**_from_toml(cls._task, text))

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
        The keys of a run file. What is left out is listed in ``assumed``:

        - ``additions``: What is added, in order of time: with concentration_mol_per_dm3, over_s, strength,
          temperature_c, time_s, volume_cm3.
        - ``area_cm2``: Area of the liquid in the flask; left out, that of a flask of its size (cm2).
        - ``bubble_rise_cm_per_s``: How fast bubbles rise; about 2 where there is froth (cm/s).
        - ``catalyst_g``: Catalyst (g).
        - ``dissolves``: Whether oxygen dissolves in the water of the vessels, by its upper bound.
        - ``end_s``: How long it is followed; 1200 s where it is left out (s).
        - ``every_s``: From one reported state to the next; a hundredth of the whole where it is left out (s).
        - ``flask_cm3``: Flask (cm3).
        - ``glass_j_per_k``: Heat capacity of the glass (J/K).
        - ``heat_loss_w_per_k``: Heat lost for each kelvin above the room (W/K).
        - ``heel_cm3``: Water at the start (cm3).
        - ``kinetics``: How fast the catalyst works; typical powder where it is left out: with activation_j_per_mol,
          half_mol_per_m3, k_at_20, order.
        - ``most_steps``: Most steps of the integration; 20000 where it is left out.
        - ``open_funnel``: Whether air can come in through the funnel.
        - ``outlet_depth_cm``: Depth of the tube's outlet (cm).
        - ``pressure_kpa``: Pressure at the place (kPa).
        - ``rejected_cm3``: Gas driven out first and thrown away; none where it is left out (cm3).
        - ``room_c``: Room, trough and flask at the start (degC).
        - ``rtol``: Relative tolerance of the integration; 1e-8 where it is left out.
        - ``seal_cm3``: Liquid that covers the tip of the funnel; 25 cm3 where it is left out (cm3).
        - ``sensitivities``: Whether the answer holds how the outcome moves with each input.
        - ``stem_length_cm``: Stem of the funnel above the liquid (cm).
        - ``tip_depth_cm``: How deep the tip of the funnel is under the liquid (cm).
        - ``title``: What the run is called.
        - ``tube_bore_mm``: Bore of the delivery tube (mm).
        - ``tube_length_cm``: Length of the tube (cm).
        - ``tube_rise_cm``: Highest point of the tube above the trough's surface (cm).
        - ``vessels``: What is filled, in order: with height_cm, name, volume_cm3.

    Raises
    ------
    OverwaterError
        Where the preparation is refused, with the path of the key.

    Examples
    --------
    >>> from overwater import Run
    >>> additions = [{"time_s": 0, "volume_cm3": 5, "strength": "20 vol"}]
    >>> run = Run(catalyst_g=1.0, additions=additions, vessels=[{"volume_cm3": 20}, {"volume_cm3": 200}])
    >>> [vessel.full_at_s is not None for vessel in run.vessels]  # 5 cm3 of 20 vol give 100 cm3 of oxygen
    [True, False]
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

    @classmethod
    def from_toml(cls, text: str) -> Run:
        """Simulates a preparation in the words of a run file."""
        return cls(**_from_toml(cls._task, text))

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
        The other keys of a burn file:

        - ``jar``: The jar: with free_volume_cm3, oxygen_fraction, pressure_kpa, rejected_cm3, temperature_c,
          volume_cm3.
        - ``mass_g``: Mass of the sample (g); the mass that is advised where it is left out.
        - ``mass_per_length_g_per_m``: Mass of ribbon or wire for each metre, as weighed (g/m); without it no length
          is advised.
        - ``share_of_oxygen``: Share of the jar's oxygen that the advised mass uses up; 0.25 where it is left out.

    Raises
    ------
    OverwaterError
        Where the sample is not known or something is out of range, with the path of the key.

    Examples
    --------
    >>> from overwater import Burn
    >>> burn = Burn("sulfur", mass_g=0.1, jar={"volume_cm3": 250, "oxygen_fraction": 1.0})
    >>> round(burn.answers[0].most_g, 3)  # 250 cm3 at 20 degC hold 10.15 mmol of oxygen, for as much sulfur of 32.06 g/mol
    0.326
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

    @classmethod
    def from_toml(cls, text: str) -> Burn:
        """Works out a burn in the words of a burn file."""
        return cls(**_from_toml(cls._task, text))

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
    def _restore(cls: type[R], asked: str, answer: str, backend: str = "pandas", index: Any = None) -> R:
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
        The keys of an options file:

        - ``accepted``: An accepted value, under the name of a result, as in ``measured_molar_volume_dm3_per_mol =
          24.0``.
        - ``collector``: How the gas was collected; over water where it is left out: "over_water", "over_mercury",
          "syringe", "mass_loss".
        - ``constants``: The constants to put in; the best ones where it is left out: "exact", "classroom".
        - ``decimal``: The decimal sign of a table, where it cannot be told: "point", "comma".
        - ``gas``: The gas, as a formula.
        - ``given``: Readings that are the same in every row.
        - ``known_gas``: The known gas of an effusion, as a formula.
        - ``leave_out``: Corrections that are not made: "altitude", "level", "vapour", "carried_vapour", "buoyancy",
          "real_gas".
        - ``make``: Corrections that are made although they are not usual in schools: ``real_gas``. Its size is told
          in any case ("altitude", "level", "vapour", "carried_vapour", "buoyancy", "real_gas").
        - ``practical``: What is worked out; the amount of dry gas where it is left out: "amount", "metal_and_acid",
          "molar_volume_from_slope", "metal_molar_mass", "carbonate_purity", "carbonate_molar_mass",
          "carbonate_back_titration", "gas_molar_mass", "vapour_molar_mass", "mass_loss_rate", "time_to_volume",
          "eudiometry_water_liquid", "eudiometry_water_gas", "effusion", "gas_density".
        - ``reaction``: The reaction, as in "Mg + HCl -> MgCl2 + H2"; it is balanced here.
        - ``reagent``: The reagent that the yield goes by, as it stands in the reaction.
        - ``reference``: What volumes of dry gas are given at: with molar_volume_dm3_per_mol, pressure_kpa,
          temperature_c.
        - ``title``: A title for the sheet.
        - ``uncertainty``: How well the readings were read; then a result of each row is given with its uncertainty:
          with correlations, coverage, draws, readings, result, rules, school_rules, seed.
        - ``working``: The row whose worked solution is wanted, from 1.

    Raises
    ------
    OverwaterError
        Where a row or an option is refused, with its path.

    Examples
    --------
    >>> from overwater import Reduction
    >>> found = Reduction([{"volume_cm3": 193.0, "temperature_c": 23.0, "pressure_mmhg": 762}])
    >>> round(found.columns()["amount_mmol"][0], 2)  # Purdue University, general chemistry help, gas over water: 7.74e-3 mol
    7.74
    """

    __slots__ = ()
    _task = "reduce"

    if TYPE_CHECKING:
        rows: tuple[Part, ...]
        summary: tuple[Part, ...]
        slope: Part | None

    def _means(self) -> Iterable[str]:
        return (f"mean {one.words} {one.mean:.4g} {one.unit}" for one in self.summary)

    def columns(self) -> dict[str, list[Any]]:
        """The results as columns, a row for each row that was read; where it has no result, ``bad_rows`` says why."""
        found: dict[int, dict[str, Any]] = {}
        for row in self.rows:
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
        The keys of an options file:

        - ``arrhenius_from``: What the activation energy is worked out from; rate constants where every run has one,
          initial rates elsewhere: "rate_constant", "initial_rate".
        - ``bootstrap``: Intervals by refitting readings drawn from the readings: with draw, level_percent,
          replicates, seed.
        - ``collector``: How a volume was collected; over water where it is left out: "over_water", "over_mercury",
          "syringe", "mass_loss".
        - ``constants``: The constants to put in; the best ones where it is left out: "exact", "classroom".
        - ``decimal``: The decimal sign of a table, where it cannot be told: "point", "comma".
        - ``fit_final_value``: A concentration is taken to fall to zero unless its final value is given, or fitted by
          this.
        - ``gas``: The gas, as a formula: with its temperature and pressure, rates are given as amounts too.
        - ``given``: What is the same in every row.
        - ``half_lives_within_percent``: By how much the longest half-life may exceed the shortest for them to count
          as the same; 8 % where it is left out.
        - ``may_go_back_percent``: By how much of the whole change a reading may go back from one row to the next, as
          a misreading does; 2 % where it is left out.
        - ``michaelis_menten``: Rates against concentration as those of an enzyme (Michaelis and Menten).
        - ``rate_from``: Which initial rate is compared between runs; the whole curve's where every run has one, the
          tangent's elsewhere: "tangent", "whole_curve", "first_two".
        - ``title``: A title for the sheet.
        - ``worst_lines``: What the worst lines of the activation energy are drawn through; the scatter where it is
          left out: "scatter", "standard_errors".

    Raises
    ------
    OverwaterError
        Where a row or an option is refused, with its path.

    Examples
    --------
    >>> from overwater import RateFit
    >>> fit = RateFit({"time_h": [0, 6, 12, 18, 24], "concentration_mol_per_dm3": [1.0, 0.5, 0.25, 0.125, 0.0625]})
    >>> round(fit.runs[0].curve.half_life.value, 6)  # OpenStax Chemistry, decomposition of hydrogen peroxide: 6.00 h
    6.0
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
        For each input what is known of it, as in ``{"value": 86.5, "division": 1.0}``:

        - ``value``, or ``repeats``, readings whose mean is the value;
        - ``division``, the smallest of a scale with lines; ``last_digit``, one unit of a display; ``half_width``, limits either
          way, with ``spread``; or ``standard_uncertainty``, with ``degrees_of_freedom``;
        - ``readings``, how many make the value: 2 for a difference.
    **options
        The other keys of a propagation file:

        - ``correlations``: Inputs that go together: with between, coefficient.
        - ``coverage``: Coverage probability, 0.5 to 0.999; 0.95 where it is left out.
        - ``draws``: How many draws; as many as make the result stable where it is left out.
        - ``relation``: Whether the relation's own uncertainty, where its source states one, is an input too.
        - ``rules``: The rule set; that of the GUM where it is left out: "gum", "monte_carlo", "school".
        - ``school_rules``: Which school rules, with their year; "half_division_2026" where it is left out.
        - ``seed``: Seed of the draws; 1 where it is left out.

    Raises
    ------
    OverwaterError
        Where something is refused, with its path.

    Examples
    --------
    >>> from overwater import Budget
    >>> budget = Budget("vapour_pressure", {"temperature_c": {"value": 20.0, "half_width": 0.40}})
    >>> round(budget.lines[0].uncertainty, 2)  # JCGM 100:2008, 4.3.7: limits of 0.40 either way are 0.23
    0.23
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
    >>> round(working.result.value, 2)  # CRC Handbook: 2.3388 kPa
    2.34
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


def _from_toml(task: str, text: str) -> dict[str, Any]:
    """A file of a task as a dict."""
    if not isinstance(text, str):
        raise TypeError(f"text is of type {type(text).__name__}; give the text of the file")
    document: dict[str, Any] = json.loads(_native.request_from_toml(task, text))
    document.pop("format", None)
    return document


__all__ = ["Budget", "Burn", "Formula", "Plan", "RateFit", "Reaction", "Reduction", "Run", "Working"]
