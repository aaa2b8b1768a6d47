"""Pictures of results; matplotlib is imported when the first is drawn. Axes are labelled as quantity / unit."""

from __future__ import annotations

import math
from typing import TYPE_CHECKING, Any

from ._errors import refused

if TYPE_CHECKING:
    from ._results import Budget, Burn, Plan, RateFit, Reduction, Run


def _axes(ax: Any) -> Any:
    if ax is not None:
        return ax
    try:
        from matplotlib import pyplot
    except ImportError as error:
        raise ImportError("plotting needs matplotlib: pip install overwater[plot]") from error
    return pyplot.subplots(layout="constrained")[1]


def _label(words: str, unit: str) -> str:
    return f"{words} / {unit}" if unit else words


def plan(result: Plan, ax: Any) -> Any:
    """The amount of gas in each vessel."""
    ax = _axes(ax)
    names = [f"{number}: {vessel.name}" for number, vessel in enumerate(result.filling.vessels, 1)]
    ax.barh(names, [vessel.amount_mmol for vessel in result.gas.vessels])
    ax.invert_yaxis()
    ax.set_xlabel(_label("amount of gas", "mmol"))
    return ax


def reduction(result: Reduction, ax: Any, wanted: str | None) -> Any:
    """One result for each row, and the mean."""
    summaries = {summary.name: summary for summary in result.summary}
    if not summaries:
        raise refused("missing", "rows", "", "a row with a result", "bad_rows says why there is none")
    name = wanted if wanted is not None else list(summaries)[-1]
    if name not in summaries:
        raise refused("unknown_name", "result", name, ", ".join(summaries))
    summary = summaries[name]
    columns = result.columns()
    ax = _axes(ax)
    ax.plot(columns["row"], [math.nan if value is None else value for value in columns[name]], "o", label="rows")
    ax.axhline(summary.mean, linestyle="--", label="mean")
    ax.legend()
    ax.set_xlabel("row")
    ax.set_ylabel(_label(summary.words, summary.unit))
    return ax


def rate(result: RateFit, ax: Any) -> Any:
    """The readings of each run, with the fitted curve."""
    ax = _axes(ax)
    for run in result.runs:
        (dots,) = ax.plot([point.x for point in run.points], [point.y for point in run.points], "o", label=run.run)
        fitted = [(point.x, point.fitted) for point in run.points if point.fitted is not None]
        if fitted:
            ax.plot([x for x, _ in fitted], [y for _, y in fitted], "-", color=dots.get_color())
    if result.runs:
        ax.set_xlabel(_label("time", result.runs[0].time_unit))
        ax.set_ylabel(_label(result.answer.reading, result.runs[0].reading_unit))
    if len(result.runs) > 1:
        ax.legend(title="run")
    return ax


def budget(result: Budget, ax: Any) -> Any:
    """What each input contributes to the uncertainty, largest first."""
    ax = _axes(ax)
    lines = sorted(result.lines, key=lambda line: -abs(line.contribution))
    ax.barh([line.name for line in lines], [abs(line.contribution) for line in lines])
    ax.invert_yaxis()
    ax.set_xlabel(_label("contribution to the uncertainty", result.unit))
    return ax


def run(result: Run, ax: Any, wanted: str) -> Any:
    """One quantity against time, and the times at which vessels are full."""
    names = [name for name in (result.curve[0] if result.curve else ()) if name != "time_s"]
    if wanted not in names:
        raise refused("unknown_name", "quantity", wanted, ", ".join(names))
    ax = _axes(ax)
    ax.plot([point.time_s for point in result.curve], [point[wanted] for point in result.curve])
    for vessel in result.vessels:
        if vessel.full_at_s is not None:
            ax.axvline(vessel.full_at_s, linestyle=":")
            ax.annotate(vessel.name, (vessel.full_at_s, 1), xycoords=("data", "axes fraction"), rotation=90, va="top", ha="right")
    words, unit = _UNITS.get(wanted, (wanted.replace("_", " "), ""))
    ax.set_xlabel(_label("time", "s"))
    ax.set_ylabel(_label(words, unit))
    return ax


_UNITS = {
    "temperature_c": ("temperature of the flask", "degC"),
    "flow_cm3_per_s": ("flow", "cm3/s"),
    "oxygen_fraction": ("fraction of oxygen in the gas", ""),
    "collected_cm3": ("gas collected", "cm3"),
    "in_vessel_cm3": ("gas in the vessel", "cm3"),
    "stem_rise_cm": ("rise in the funnel stem", "cm"),
    "back_pressure_pa": ("back pressure", "Pa"),
    "peroxide_mmol": ("hydrogen peroxide", "mmol"),
    "water_mmol": ("water", "mmol"),
    "oxygen_mmol": ("oxygen in the flask", "mmol"),
    "nitrogen_mmol": ("nitrogen in the flask", "mmol"),
}


def burn(result: Burn, ax: Any) -> Any:
    """The gas of the jar before and after, as stacked bars that differ by their hatching."""
    ax = _axes(ax)
    names = ["before"]
    amounts = [(result.jar.oxygen_mmol, result.jar.nitrogen_mmol, 0.0)]
    for answer in result.answers:
        names.append("after, " + ", ".join(one.formula_unicode for one in answer.made))
        amounts.append((answer.after.oxygen_mmol, answer.after.nitrogen_mmol, answer.after.made_mmol))
    start = [0.0] * len(names)
    for words, hatch, widths in zip(("oxygen", "nitrogen", "gas made"), ("", "..", "//"), zip(*amounts)):
        ax.barh(names, widths, left=start, hatch=hatch, edgecolor="black", label=words)
        start = [left + width for left, width in zip(start, widths)]
    ax.invert_yaxis()
    ax.legend()
    ax.set_xlabel(_label("amount of gas", "mmol"))
    return ax
