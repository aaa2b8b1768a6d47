"""What the README says of Python is what happens."""

import datetime
import decimal
import fractions
import re
import sys
import warnings
from pathlib import Path

import pytest

import overwater
from middle import ranges

README = (Path(__file__).parents[2] / "README.md").read_text()
SECTION = README.split("\n## In Python\n")[1].split("\n## ")[0]


def test_each_line_gives_what_its_comment_says():
    (block,) = re.findall(r"```python\n(.*?)```", SECTION, re.DOTALL)
    compile(block, "README.md", "exec")
    checked = 0
    for line in block.splitlines():
        code, mark, said = line.strip().partition("  # ")
        if not mark or code.startswith("error."):
            continue
        found = eval(code, {"overwater": overwater})
        if isinstance(found, float):
            digits = said.split()[0]
            assert f"{found:.{len(digits.partition('.')[2])}f}" == digits, line
        else:
            assert str(found) == said.partition(",")[0], line
        checked += 1
    assert checked == 6
    try:
        overwater.vapour_pressure(150.0)
    except overwater.OverwaterError as error:
        assert f"# {(error.code, error.allowed)}" in block


def classes():
    """The classes of answers, by name."""
    later = {name: getattr(overwater, name) for name, home in overwater._LATER.items() if home in ("_results", "_tasks")}
    return {name: one for name, one in later.items() if isinstance(one, type)}


def test_the_objects_named_are_all_there_are():
    named = re.search(r"What is more than a number \((.*?)\)", SECTION, re.DOTALL).group(1)
    assert {*re.findall(r"`(\w+)`", named), "Answer"} == set(classes())


def test_pictures_and_tables_are_of_those_that_are_named():
    for method in ("plot", "to_frame"):
        (named,) = re.findall(rf"`{method}\(\)`, of a\s(.*?) \(with", SECTION, re.DOTALL)
        assert set(re.findall(r"`(\w+)`", named)) == {name for name, one in classes().items() if hasattr(one, method)}


TABLE = re.findall(r"^\| `(.*)` \| `(.*)` \|$", (Path(__file__).parents[1] / "README.md").read_text(), re.MULTILINE)


def kinds():
    """What the names in the table stand for."""
    packages = {"np": "numpy", "pd": "pandas", "pl": "polars", "xr": "xarray", "dask": "dask.array"}
    found = {name: pytest.importorskip(package) for name, package in packages.items()}
    return {**found, "dask": sys.modules["dask"], "decimal": decimal, "fractions": fractions}


def test_the_table_has_every_kind():
    assert len(TABLE) == 19


@pytest.mark.parametrize("name", overwater.FUNCTIONS)
def test_every_function_makes_of_every_kind_what_the_table_says(name):
    function = getattr(overwater, name)
    middle = {key: (least + greatest) / 2 for key, (least, greatest) in ranges(name).items()}
    first = next(iter(middle))
    known = kinds()
    for argument, expected in TABLE:
        # In the range of this function; for what holds whole numbers only, the nearest one.
        value = eval(argument.replace("20.0", repr(middle[first])), known)
        with warnings.catch_warnings():
            # In the middle of each range some functions have no result.
            warnings.simplefilter("ignore", RuntimeWarning)
            try:
                result = function(**{**middle, first: value})
            except overwater.OverwaterError as error:
                assert expected == "float" and error.code in ("contradiction", "out_of_range"), argument
                continue
        home, _, kind = expected.rpartition(".")
        assert type(result).__name__ == kind, argument
        assert type(result).__module__.partition(".")[0] == (home.partition(".")[0] or "builtins"), argument


@pytest.mark.parametrize("name", overwater.FUNCTIONS)
def test_every_function_refuses_by_name_what_is_no_number(name):
    function = getattr(overwater, name)
    middle = {key: (least + greatest) / 2 for key, (least, greatest) in ranges(name).items()}
    for argument in middle:
        for value in (None, True, "20", 20j, datetime.date(2026, 11, 28)):
            with pytest.raises(TypeError, match=rf"^{argument} is "):
                function(**{**middle, argument: value})
