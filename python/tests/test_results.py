"""Objects: what they hold, that they cannot be changed, and that nothing of them is lost on the way."""

import copy
import csv
import html.parser
import json
import math
import pickle
import re
import tomllib
from decimal import Decimal
from fractions import Fraction
from pathlib import Path

import pytest

import overwater
from overwater import (
    Answer,
    Budget,
    Burn,
    Formula,
    OverwaterError,
    Plan,
    RateFit,
    Reaction,
    Reduction,
    Run,
    UnknownNameError,
    Working,
    _native,
    ask,
)

EXAMPLES = Path(__file__).parents[2] / "examples"


def options(name):
    """An options file, as keywords."""
    found = tomllib.loads((EXAMPLES / name).read_text())
    del found["format"]
    return found


def readings(name, sign="."):
    """A table of readings, as rows; `sign` is its decimal sign."""
    lines = [line for line in (EXAMPLES / name).read_text().splitlines() if not line.startswith("#")]

    def cell(text):
        try:
            return float(text.replace(sign, "."))
        except ValueError:
            return text

    table = csv.DictReader(lines, delimiter=";" if sign == "," else ",")
    return [{key: cell(text) for key, text in row.items()} for row in table]


def hydrogen():
    rows = [{("label" if key == "group" else key): value for key, value in row.items()} for row in readings("hydrogen-molar-volume.csv", ",")]
    for row in rows:
        row.pop("label")
    return Reduction(rows, **options("hydrogen-molar-volume.toml"))


def rates():
    return RateFit(readings("rate-at-five-temperatures.csv"), **options("rate-at-five-temperatures.toml"))


def budget():
    whole = options("collected-gas-uncertainty.toml")
    return Budget(whole.pop("formula"), whole.pop("inputs"), **whole)


MAKERS = {
    "Formula": lambda: Formula("CuSO4.5H2O"),
    "Reaction": lambda: Reaction("Mg + HCl -> MgCl2 + H2"),
    "Plan": lambda: Plan.from_toml((EXAMPLES / "oxygen-lesson.toml").read_text()),
    "Run": lambda: Run(**options("all-at-once.toml")),
    "Burn": lambda: Burn(**options("sulfur-burn.toml")),
    "Reduction": hydrogen,
    "RateFit": rates,
    "Budget": budget,
    "Answer": lambda: ask("strength", strength="20 vol"),
    "Working": lambda: Working("dry_amount", volume_cm3=86.5, temperature_c=21.0, pressure_kpa=100.36, inside_minus_outside_mm=12),
}


@pytest.fixture(scope="module", params=MAKERS)
def result(request):
    return MAKERS[request.param]()


def test_nothing_is_lost_in_copies_pickles_and_dicts(result):
    kind = type(result)
    for again in (
        pickle.loads(pickle.dumps(result)),
        copy.copy(result),
        copy.deepcopy(result),
        kind.from_dict(result.to_dict()),
        kind.from_dict(json.loads(json.dumps(result.to_dict()))),
    ):
        assert again == result and hash(again) == hash(result) and type(again) is kind
        assert again.to_dict() == result.to_dict()


def test_asking_again_gives_the_same(result):
    document = result.to_dict()
    del document["answer"]
    assert type(result).from_dict(document) == result


def test_the_answer_is_that_of_the_exchange_to_the_last_digit(result):
    document = result.to_dict()
    envelope = {key: document[key] for key in ("format", "task", "request")}
    answer = json.loads(_native.respond(json.dumps(envelope).encode()))
    assert answer["answer"] == document["answer"]


def test_a_result_cannot_be_changed(result):
    name = next(iter(result.answer))
    for change in (lambda: setattr(result, name, 1), lambda: delattr(result, name), lambda: setattr(result, "new", 1)):
        with pytest.raises(AttributeError, match="cannot be changed"):
            change()
    with pytest.raises(AttributeError, match="cannot be changed"):
        result.answer.format = 2
    with pytest.raises(TypeError):
        result.answer["format"] = 2
    with pytest.raises(AttributeError):
        result.no_such_thing


def test_every_key_of_the_answer_is_an_attribute(result):
    for name in result.answer:
        assert getattr(result, name) == result.answer[name]
    assert set(result.answer) <= set(dir(result))


def test_what_a_notebook_shows_owns_no_colour(result):
    html = result._repr_html_()
    Balance().feed(html)
    styles = re.findall(r'style="(.*?)"', html)
    for style in styles:
        for part in filter(None, style.split(";")):
            name, _, value = part.partition(":")
            assert "color" not in name and "background" not in name or value in ("inherit", "transparent", "currentColor"), part
    assert "<font" not in html and "bgcolor" not in html and "<style" not in html
    assert len(str(result)) > 5


BRIEF = {
    "Formula": "Formula('CuSO4.5H2O', weights='exact')",
    "Reaction": "Reaction('Mg + 2HCl -> MgCl2 + H2')",
    "Plan": "<Plan: 5 vessels, 1055 cm3 of gas from 90 cm3 of peroxide solution, 14 cautions>",
    "Run": "<Run: 0 of 3 vessels full after 302 s, 4 findings>",
    "Burn": "<Burn: 0.1 g of sulfur (rhombic) in 250 cm3, S(s) + O2(g) -> SO2(g)>",
    "Reduction": (
        "<Reduction: 6 of 6 rows good, mean amount 1.597 mmol, mean volume of the dry gas at the reference conditions 38.4 cm3, "
        "mean molar volume measured 24.08 dm3/mol, mean yield 100.1 %>"
    ),
    "RateFit": "<RateFit: 71 of 71 rows good, 5 runs, activation energy 57.34 kJ/mol>",
    "Budget": "<Budget: dry_amount = (3.457 ± 0.034) mmol>",
    "Working": "<Working: dry_amount = 3.4574 mmol>",
    "Answer": "<Answer: strength, with convention, strength, volume_strengths, readings, assumptions>",
}


def test_what_a_prompt_shows(result):
    assert repr(result) == BRIEF[type(result).__name__]


def test_what_a_prompt_shows_of_little():
    row = {"volume_cm3": 86.5, "temperature_c": 21.0, "pressure_kpa": 100.36}
    assert repr(Reduction([{**row, "volume_cm3": -1.0}])) == "<Reduction: 0 of 1 row good>"
    assert repr(RateFit(readings("rate-at-five-temperatures.csv")[:15], gas="O2")) == "<RateFit: 15 of 15 rows good, 1 run>"
    assert repr(Working("pkw", temperature_c=25.0)).startswith("<Working: pkw = 13.99")


class Balance(html.parser.HTMLParser):
    """Complains of a tag that is closed and was not opened, or the other way round."""

    def __init__(self):
        super().__init__()
        self.open = []

    def handle_starttag(self, tag, attrs):
        if tag not in ("br", "hr", "img", "col"):
            self.open.append(tag)

    def handle_endtag(self, tag):
        assert self.open and self.open.pop() == tag, tag

    def feed(self, text):
        super().feed(text)
        assert not self.open, self.open


def test_a_notebook_may_choose(result):
    bundle = result._repr_mimebundle_()
    assert bundle["text/plain"] == result.sheet() and bundle["text/html"] == result._repr_html_()
    assert ("text/latex" in bundle) == hasattr(type(result), "_repr_latex_")


@pytest.mark.parametrize(
    ("change", "code", "parameter"),
    [
        ({"task": "version"}, "contradiction", "task"),
        ({"task": None}, "contradiction", "task"),
        ({"format": 2}, "contradiction", "format"),
        ({"request": None}, "missing", "request"),
        ({"request": [1]}, "syntax", "request"),
        ({"request": {}}, "contradiction", "request.format"),
        ({"answer": "text"}, "syntax", "answer"),
        ({"answer": {}}, "contradiction", "answer.format"),
        ({"anwser": {}}, "unknown_name", "anwser"),
    ],
)
def test_documents_that_to_dict_did_not_give_are_refused(change, code, parameter):
    with pytest.raises(OverwaterError, match=re.escape(parameter)) as refused:
        Formula.from_dict({**Formula("H2O").to_dict(), **change})
    assert (refused.value.code, refused.value.parameter) == (code, parameter)


@pytest.mark.parametrize("key", ["format", "task", "request"])
def test_documents_with_a_hole_are_refused(key):
    document = Formula("H2O").to_dict()
    del document[key]
    with pytest.raises(OverwaterError, match=f"{key} is missing"):
        Formula.from_dict(document)


@pytest.mark.parametrize("document", ["{}", [], None, 1])
def test_documents_that_are_no_mappings_are_refused(document):
    with pytest.raises(TypeError, match="document is of type"):
        Formula.from_dict(document)


def test_results_of_different_requests_differ():
    assert Formula("H2O") != Formula("H2O2") and Formula("H2O") != Reaction("H2 + O2 -> H2O")
    assert Formula("H2O", weights="classroom") != Formula("H2O")
    assert len({Formula("H2O"), Formula("H2O"), Formula("H2O2")}) == 2


def test_formula():
    # Conventional atomic weights (CIAAW): Cu 63.546, S 32.06, O 15.999, H 1.008.
    assert Formula("CuSO4.5H2O").molar_mass_g_per_mol == pytest.approx(63.546 + 32.06 + 9 * 15.999 + 10 * 1.008, abs=1e-9)
    assert Formula("H2O2")._repr_latex_() == r"$\mathrm{H_{2}O_{2}}$"
    assert repr(Formula("H2O")) == "Formula('H2O', weights='exact')"
    assert {atom.symbol: atom.count for atom in Formula("Fe2(SO4)3").atoms} == {"Fe": 2, "S": 3, "O": 12}
    with pytest.raises(OverwaterError) as refused:
        Formula("NaXl")
    assert refused.value.parameter == "formula" and "request" not in str(refused.value)


@pytest.mark.parametrize(
    ("formula", "latex"),
    [
        ("SO4^2-", "SO_{4}^{2-}"),
        ("MnO4-", "MnO_{4}^{-}"),
        ("Cr2O7^2-", "Cr_{2}O_{7}^{2-}"),
        ("NH4+", "NH_{4}^{+}"),
        ("Fe^3+", "Fe^{3+}"),
        ("Fe0.947O", "Fe_{0.947}O"),
        ("C12H22O11", "C_{12}H_{22}O_{11}"),
        ("CuSO4.5H2O", r"CuSO_{4}\cdot 5H_{2}O"),
        ("CaSO4.0.5H2O", r"CaSO_{4}\cdot 0.5H_{2}O"),
    ],
)
def test_a_charge_stands_beside_the_number_below(formula, latex):
    found = Formula(formula)._repr_latex_()
    assert found == rf"$\mathrm{{{latex}}}$"
    pytest.importorskip("matplotlib.mathtext").MathTextParser("path").parse(found)


def test_an_equation_in_latex():
    found = Reaction("Cr2O7^2- + H+ + e- -> Cr^3+ + H2O")._repr_latex_()
    assert found == (
        r"$\mathrm{Cr_{2}O_{7}^{2-}\ +\ 14\ H^{+}\ +\ 6\ e^{-}\ \rightarrow \ 2\ Cr^{3+}\ +\ 7\ H_{2}O}$"
    )


def test_reaction():
    reaction = Reaction("MnO4- + H+ + e- -> Mn^2+ + H2O")
    assert [(one.coefficient, one.formula) for one in reaction.reactants][:2] == [("1", "MnO4-"), ("8", "H+")]
    assert r"\rightarrow" in reaction._repr_latex_()
    with pytest.raises(OverwaterError) as refused:
        Reaction("H2 -> O2")
    assert refused.value.code == "no_balance"


def test_plan():
    plan = MAKERS["Plan"]()
    assert plan.sheet() == (EXAMPLES / "oxygen-lesson.txt").read_text()
    whole = tomllib.loads((EXAMPLES / "oxygen-lesson.toml").read_text())
    del whole["format"]
    assert Plan(**whole).answer == plan.answer
    assert plan.deference and len(plan.cautions) > 0
    with pytest.raises(OverwaterError) as refused:
        Plan(stock={"strength": "30 %"}, vessels=[{"burn": "sulfur"}])
    assert refused.value.parameter == "stock.strength"
    with pytest.raises(OverwaterError, match="line 2"):
        Plan.from_toml("format = 1\nstok = 3\n")
    with pytest.raises(OverwaterError, match="^the text cannot be read; .*line 1, column 5") as refused:
        Plan.from_toml("x = ")
    assert (refused.value.code, refused.value.parameter) == ("syntax", "text")
    with pytest.raises(TypeError, match="text is of type int"):
        Plan.from_toml(3)


def test_run():
    run = MAKERS["Run"]()
    assert run.sheet() == (EXAMPLES / "all-at-once.txt").read_text()
    assert {finding.code for finding in run.findings} and run.assumed
    columns = run.columns()
    assert columns["time_s"] == sorted(columns["time_s"]) and max(columns["temperature_c"]) <= run.top_temperature_c
    with pytest.raises(OverwaterError) as refused:
        Run(**{**options("all-at-once.toml"), "flask_cm3": 0})
    assert refused.value.parameter == "flask_cm3"
    pyplot = pytest.importorskip("matplotlib.pyplot")
    axes = run.plot(pyplot.subplots()[1], quantity="temperature_c")
    assert axes.get_ylabel() == "temperature of the flask / degC" and axes.get_xlabel() == "time / s"
    assert list(axes.lines[0].get_ydata()) == columns["temperature_c"]
    with pytest.raises(UnknownNameError, match="flow_cm3_per_s"):
        run.plot(quantity="flaw")


def test_burn():
    burn = MAKERS["Burn"]()
    assert burn.sheet() == (EXAMPLES / "sulfur-burn.txt").read_text()
    # S + O2 -> SO2: 0.10 g is 3.12 mmol, and as much oxygen goes as dioxide comes.
    (answer,) = burn.answers
    assert answer.made[0].amount_mmol == pytest.approx(100 / 32.06, rel=1e-3)
    assert burn.jar.oxygen_mmol - answer.after.oxygen_mmol == pytest.approx(answer.made[0].amount_mmol, rel=1e-9)
    assert [one.made[0].formula for one in Burn("sodium", mass_g=0.05).answers] == ["Na2O2", "Na2O"]
    with pytest.raises(OverwaterError, match="sulfur"):
        Burn("sulfer", mass_g=0.1)
    pyplot = pytest.importorskip("matplotlib.pyplot")
    axes = burn.plot(pyplot.subplots()[1])
    assert axes.get_xlabel() == "amount of gas / mmol" and len(axes.patches) == 6


def test_reduction_of_every_kind_of_table():
    rows = [{"volume_cm3": 86.5, "temperature_c": 21.0, "pressure_kpa": 100.36}, {"volume_cm3": 60.0, "temperature_c": 20.0, "pressure_kpa": 100.36}]
    columns = {key: [row[key] for row in rows] for key in rows[0]}
    expected = Reduction(rows)
    assert Reduction(columns) == expected
    amounts = expected.columns()["amount_mmol"]
    assert amounts == [overwater.dry_amount(**row) for row in rows]
    pandas, polars = pytest.importorskip("pandas"), pytest.importorskip("polars")
    pytest.importorskip("narwhals")
    for frame in (pandas.DataFrame(rows), polars.DataFrame(rows), polars.DataFrame(rows).lazy()):
        assert Reduction(frame) == expected
    assert isinstance(expected.to_frame("pandas"), pandas.DataFrame)
    assert expected.to_frame("polars")["amount_mmol"].to_list() == amounts
    for wrong in ("text", 3, [1, 2], None):
        with pytest.raises(TypeError, match="readings"):
            Reduction(wrong)
    with pytest.raises(OverwaterError, match="volume_cm3 of 1"):
        Reduction({**columns, "volume_cm3": [1.0]})
    for series in (pandas.Series([1.0]), polars.Series([1.0])):
        with pytest.raises(TypeError, match="readings is a Series"):
            Reduction(series)
    with pytest.raises(TypeError, match="rows is given twice"):
        Reduction(rows, rows=rows)


@pytest.mark.parametrize(
    ("change", "words"),
    [
        ({"temperature_c": 21.0}, r"temperature_c is of type float, not a column; .* given=\{'temperature_c': 21.0\}"),
        ({"label": "ab"}, "label is of type str, not a column"),
        ({"volume_cm3": [86.5, True]}, "row 2, volume_cm3 is True"),
        ({"volume_cm3": [[86.5], 60.0]}, "row 1, volume_cm3 is of type list"),
    ],
)
def test_what_is_no_cell_is_named_by_row_and_column(change, words):
    columns = {"volume_cm3": [86.5, 60.0], "temperature_c": [21.0, 20.0], "pressure_kpa": [100.36, 100.36]}
    with pytest.raises(TypeError, match=words):
        Reduction({**columns, **change})
    numpy, pandas = pytest.importorskip("numpy"), pytest.importorskip("pandas")
    with pytest.raises(TypeError, match="row 1, volume_cm3 is (np.)?True"):
        Reduction([{"volume_cm3": numpy.True_}])
    with pytest.raises(TypeError, match="row 1, volume_cm3 is True"):
        Reduction(pandas.DataFrame({"volume_cm3": [True]}))


def dry_amounts(rows):
    """The amount of each row, by the function; none where it is refused."""
    found = []
    for row in rows:
        try:
            found.append(overwater.dry_amount(**row))
        except OverwaterError:
            found.append(None)
    return found


def test_a_frame_goes_back_with_every_row_and_its_index():
    pandas, polars = pytest.importorskip("pandas"), pytest.importorskip("polars")
    rows = [{"volume_cm3": 60.0 + row, "temperature_c": 21.0, "pressure_kpa": 100.36} for row in range(5)]
    rows[2]["temperature_c"] = 300.0
    frame = pandas.DataFrame(rows, index=list("abcde"))
    found = Reduction(frame)
    assert [bad.row for bad in found.bad_rows] == [3]
    for again in (found, pickle.loads(pickle.dumps(found))):
        back = again.to_frame()
        assert list(back.index) == list("abcde") and list(back["row"]) == [1, 2, 3, 4, 5]
        assert back["amount_mmol"].isna().tolist() == [False, False, True, False, False]
        assert back["amount_mmol"].dropna().tolist() == [value for value in dry_amounts(rows) if value is not None]
        joined = frame.join(back)
        assert len(joined) == 5 and joined.loc["e", "amount_mmol"] == dry_amounts(rows)[4]
    assert isinstance(found.to_frame("polars"), polars.DataFrame)
    back = Reduction(polars.DataFrame(rows).lazy()).to_frame()
    assert isinstance(back, polars.DataFrame) and back["amount_mmol"].to_list() == dry_amounts(rows)
    assert isinstance(Reduction(rows).to_frame(), pandas.DataFrame)
    with pytest.raises(UnknownNameError, match="backend = pd is not known; allowed: pandas, polars, pyarrow"):
        found.to_frame("pd")


def test_a_row_for_each_of_many_rows():
    rows = [{"volume_cm3": 60.0 + row / 100, "temperature_c": 21.0, "pressure_kpa": 100.36} for row in range(450)]
    for row in (5, 210, 430):
        rows[row]["temperature_c"] = 300.0
    found = Reduction(rows)
    assert len(found.rows) == found.rows_good == 447
    assert found.columns()["row"] == list(range(1, 451))
    assert found.columns()["amount_mmol"] == dry_amounts(rows)


def test_the_uncertainty_that_was_asked_for_is_a_column():
    row = {"volume_cm3": 45.0, "temperature_c": 20.0, "pressure_kpa": 100.9}
    readings = {"volume_cm3": {"half_width": 0.5}}
    # The amount goes as the volume; the standard uncertainty of a rectangle is its half-width over the root of three.
    amount = overwater.dry_amount(**row)
    columns = Reduction([row, {}], uncertainty={"rules": "gum", "readings": readings}).columns()
    assert columns["amount_mmol_standard_uncertainty"] == [pytest.approx(amount * 0.5 / 45.0 / math.sqrt(3), rel=1e-9), None]
    columns = Reduction([row], uncertainty={"rules": "school", "readings": readings}).columns()
    assert "amount_mmol_standard_uncertainty" not in columns
    assert columns["amount_mmol_half_width"] == [pytest.approx(amount * 0.5 / 45.0, rel=1e-9)]
    assert set(Reduction([row]).columns()) == {"row", "label", "amount_mmol"}


def test_a_frame_of_rates_has_every_reading():
    pandas = pytest.importorskip("pandas")
    rows = readings("rate-at-five-temperatures.csv")
    rows[3]["volume_cm3"] = -1.0
    frame = pandas.DataFrame(rows, index=[f"r{number}" for number in range(len(rows))])
    back = RateFit(frame, **options("rate-at-five-temperatures.toml")).to_frame()
    assert list(back.index) == list(frame.index)
    assert back["y"].isna().sum() == 1 and math.isnan(back.loc["r3", "y"])
    good = back.drop("r3")
    assert good["y"].tolist() == frame.drop("r3")["volume_cm3"].tolist() and good["run"].tolist() == frame.drop("r3")["run"].tolist()


def test_blank_cells_are_left_out():
    pandas = pytest.importorskip("pandas")
    frame = pandas.DataFrame({"volume_cm3": [86.5, 60.0], "temperature_c": [21.0, 20.0], "pressure_kpa": [100.36, 100.36], "inside_minus_outside_mm": [12.0, None]})
    found = Reduction(frame)
    assert "inside_minus_outside_mm" in found.request.rows[0] and "inside_minus_outside_mm" not in found.request.rows[1]
    assert found.request.rows[0]["pressure_kpa"] == 100.36
    nullable = frame.astype("Float64")
    assert Reduction(nullable) == Reduction({name: nullable[name] for name in nullable}) == found


def test_rates():
    # The line through ln k against 1/T, by scipy, from the rate constants that the runs gave.
    stats = pytest.importorskip("scipy.stats")
    fit = rates()
    points = fit.arrhenius.points
    line = stats.linregress([point.plotted_x for point in points], [point.plotted_y for point in points])
    unit = {"kJ/mol": 1e-3, "J/mol": 1.0}[fit.arrhenius.activation_energy.unit]
    assert fit.arrhenius.activation_energy.value == pytest.approx(-line.slope * 8.314462618 * unit, rel=1e-6)
    assert fit.columns()["run"][0] == "A" and len(fit.columns()["x"]) == fit.rows_good


def test_budget():
    # GUM, by the package uncertainties, with the sensitivities taken from differences of the function itself.
    umath = pytest.importorskip("uncertainties")
    found = budget()
    inputs = [umath.ufloat(line.value, line.uncertainty) for line in found.lines]
    names = [line.name for line in found.lines]
    wrapped = umath.wrap(lambda *values: overwater.dry_amount(**dict(zip(names, values, strict=True))))
    assert found.standard_uncertainty == pytest.approx(wrapped(*inputs).std_dev, rel=1e-5)
    assert sum(line.share for line in found.lines) == pytest.approx(1.0, abs=1e-12)
    assert found.columns()["name"] == names


def test_working():
    working = MAKERS["Working"]()
    assert working.steps[-1].relation == "p(dry) × V / (R × T)"
    assert working._repr_latex_().startswith("$$") and r"\frac" in working._repr_latex_()
    assert "p(dry)" in str(working) and "<" in working._repr_html_()
    with pytest.raises(UnknownNameError, match="did you mean vapour_pressure"):
        Working("vapor_pressure", temperature_c=20.0)
    with pytest.raises(OverwaterError) as refused:
        Working("vapour_pressure", temperature_c=200.0)
    assert refused.value.parameter == "inputs.temperature_c"


@pytest.mark.parametrize(
    ("ask", "path", "value"),
    [
        (lambda: Working("vapour_pressure", temperature_c=math.nan), "inputs.temperature_c", "NaN"),
        (lambda: Working("vapour_pressure", temperature_c=-math.inf), "inputs.temperature_c", "-inf"),
        (lambda: Burn("sulfur", mass_g=math.inf), "mass_g", "inf"),
        (lambda: Plan(stock={"strength": "20 vol"}, vessels=[{"volume_cm3": math.nan}]), "vessels[0].volume_cm3", "NaN"),
        (lambda: Reduction([{"volume_cm3": 1.0}, {"volume_cm3": math.inf}]), "rows[1].volume_cm3", "inf"),
    ],
)
def test_numbers_that_are_none_are_refused_in_requests(ask, path, value):
    with pytest.raises(OverwaterError) as refused:
        ask()
    error = refused.value
    assert (error.code, error.parameter, error.value) == ("not_a_number", path, value)
    assert str(error).startswith(f"{path} = {value} is not a finite number")


def test_what_has_no_place_in_a_request_is_named():
    numpy = pytest.importorskip("numpy")
    with pytest.raises(TypeError, match="stock is of type object"):
        Plan(stock=object())
    with pytest.raises(TypeError, match="mass_g is an array, not a number"):
        Burn("sulfur", mass_g=numpy.array([0.1, 0.2]))
    with pytest.raises(TypeError, match=r"vessels\[1\] has the key 3"):
        Plan(stock={"strength": "20 vol"}, vessels=[{}, {3: 4}])
    with pytest.raises(TypeError, match=r"vessels\[0\].burn is of type set"):
        Plan(stock={"strength": "20 vol"}, vessels=[{"burn": {"sulfur"}}])


@pytest.mark.parametrize(
    ("make", "words"),
    [
        (lambda: Formula("H2O", weigths="abridged"), r"Formula\(\) has no argument weigths; did you mean weights\?"),
        (lambda: Formula("H2O", x=1), r"Formula\(\) has no argument x; it has formula, weights"),
        (lambda: Reaction(equatoin="H2 + O2 -> H2O"), "did you mean equation"),
        (lambda: Plan(stok={"strength": "20 vol"}), "did you mean stock"),
        (lambda: Reduction([{"volume_cm3": 1.0}], practcal="yield"), "did you mean practical"),
    ],
)
def test_a_misspelt_keyword_gets_the_nearest(make, words):
    with pytest.raises((TypeError, OverwaterError), match=words):
        make()


VECTORS = Path(__file__).parents[2] / "tests/vectors"


ANSWERED = {
    path.name.removesuffix(".answer.json"): document
    for path in sorted(VECTORS.glob("*.answer.json"))
    if "answer" in (document := json.loads(path.read_text()))
}


@pytest.mark.parametrize("name", ANSWERED)
def test_every_task_can_be_asked_for(name):
    document = ANSWERED[name]
    request = json.loads((VECTORS / f"{name}.request.json").read_text())["request"]
    del request["format"]
    found = ask(document["task"], **request)
    assert found.answer.to_dict() == document["answer"]
    assert pickle.loads(pickle.dumps(found)) == found
    classes = {kind: getattr(overwater, kind) for kind in MAKERS}
    of_task = {one._task: one for kind, one in classes.items() if kind != "Answer"}
    assert type(found) is of_task.get(document["task"], Answer) and len(str(found)) > 5


def test_every_task_is_tried_and_listed():
    assert {document["task"] for document in ANSWERED.values()} == set(_native.tasks())
    listed = re.findall(r"^    (\w+)  +(\S.*)$", ask.__doc__, re.MULTILINE)
    assert listed[1:] == [(one.task, one.about) for one in ask("version").tasks]


def test_a_task_that_there_is_not():
    with pytest.raises(UnknownNameError, match="did you mean dilute") as refused:
        ask("dillute", stock="100 vol")
    assert refused.value.parameter == "task"
    with pytest.raises(OverwaterError) as refused:
        ask("dilute", stock="10 vol", wanted="20 vol", made_up_to_cm3=500)
    assert (refused.value.code, refused.value.parameter) == ("cannot_be_met", "wanted")
    with pytest.raises(UnknownNameError, match="task = dillute is not known; allowed: plan, "):
        Answer.from_dict({"format": 1, "task": "dillute", "request": {"format": 1}})
    with pytest.raises(OverwaterError, match="task is missing"):
        Answer.from_dict({"format": 1, "request": {"format": 1}})


def test_answers_without_a_sheet_are_shown_whole():
    found = ask("strength", strength="20 vol")
    assert json.loads(found.sheet()) == found.answer.to_dict()
    assert ask("dissolve", product="Na2O2", mass_g=0.0848, water_cm3=20).sheet().startswith("Na2O2 in water")
    assert ask("strength", strength="20 vol") != ask("strength", strength="10 vol")


def test_numbers_of_every_kind_have_a_place_in_a_request():
    numpy = pytest.importorskip("numpy")
    expected = Burn("sulfur", mass_g=0.5)
    for mass in (numpy.float64(0.5), numpy.float32(0.5), numpy.array(0.5), Decimal("0.5"), Fraction(1, 2)):
        assert Burn("sulfur", mass_g=mass) == expected


@pytest.mark.parametrize("name", ["Plan", "Reduction", "RateFit", "Budget"])
def test_plots(name):
    pyplot = pytest.importorskip("matplotlib.pyplot")
    pyplot.switch_backend("agg")
    result = MAKERS[name]()
    figure, given = pyplot.subplots()
    axes = result.plot(given)
    assert axes is given and " / " in axes.get_xlabel() + axes.get_ylabel()
    other = result.plot()
    assert other is not given
    pyplot.close("all")


def test_the_figure_of_a_reduction_shows_the_values():
    pyplot = pytest.importorskip("matplotlib.pyplot")
    pyplot.switch_backend("agg")
    found = hydrogen()
    axes = found.plot(result="amount_mmol")
    assert axes.lines[0].get_ydata().tolist() == found.columns()["amount_mmol"]
    with pytest.raises(UnknownNameError, match="amount_mmol"):
        found.plot(result="amount_mol")
    with pytest.raises(OverwaterError, match="bad_rows says why"):
        Reduction([{"volume_cm3": -1.0}]).plot()
    pyplot.close("all")


def test_the_width_of_a_sheet_is_bounded():
    plan = Plan.from_toml((EXAMPLES / "oxygen-lesson.toml").read_text())
    assert max(len(line) for line in plan.sheet(60).splitlines()) <= 60
    for width in (0, -1, 19, 1001, 2**62):
        with pytest.raises(OverwaterError, match=f"width = {width} columns is out of range; allowed: 20 to 1000 columns"):
            plan.sheet(width)


@pytest.mark.parametrize("kind, name", [(Plan, "oxygen-lesson"), (Run, "all-at-once"), (Burn, "sulfur-burn")])
def test_files_are_read_in_their_own_words(kind, name):
    text = (EXAMPLES / f"{name}.toml").read_text()
    document = tomllib.loads(text)
    document.pop("format")
    assert kind.from_toml(text).answer == kind(**document).answer
    with pytest.raises(OverwaterError, match=r"^the text cannot be read; .* \(line 1, column \d+\)$") as caught:
        kind.from_toml("format = ")
    assert (caught.value.code, caught.value.parameter) == ("syntax", "text")
    with pytest.raises(TypeError, match="text is of type bytes"):
        kind.from_toml(text.encode())
