"""What `help` says: the examples give what they say, and the options listed are those that there are."""

import doctest
import importlib
import inspect
import json
import pkgutil
import re
from pathlib import Path

import pytest

import overwater

SCHEMA = json.loads((Path(__file__).parents[2] / "crates/overwater-exchange/schema.json").read_text())["$defs"]


@pytest.mark.parametrize("name", [one.name for one in pkgutil.iter_modules(overwater.__path__) if not one.name.startswith("__")])
def test_examples(name):
    if name == "_native":
        pytest.skip("its functions have no examples")
    assert doctest.testmod(importlib.import_module(f"overwater.{name}")).failed == 0


def test_every_class_has_an_example_against_something():
    for name, home in overwater._LATER.items():
        if home == "_results" or name in ("ask", "check"):
            assert ">>>" in inspect.getdoc(getattr(overwater, name)), name


def values(row):
    """The texts that an option may be, where they are fixed."""
    ways = [row, row.get("items", {}), *row.get("anyOf", [])]
    of = [SCHEMA[way["$ref"].rpartition("/")[2]] for way in ways if "$ref" in way]
    return {one["const"] for kind in of for one in kind.get("oneOf", []) if "const" in one}.union(*(kind.get("enum", []) for kind in of))


@pytest.mark.parametrize(
    ("name", "request_type"),
    [
        ("Plan", "LessonRequest"),
        ("Run", "RunRequest2"),
        ("Burn", "BurnRequest"),
        ("Reduction", "ReductionRequest"),
        ("RateFit", "RateRequest"),
        ("Budget", "PropagationRequest"),
    ],
)
def test_the_options_are_those_of_the_schema(name, request_type):
    text = inspect.getdoc(getattr(overwater, name))
    rows = dict(SCHEMA[request_type]["properties"])
    for elsewhere in ("format", "rows", "sample", "formula", "inputs"):
        rows.pop(elsewhere, None)
    listed = dict(re.findall(r"^    - ``(\w+)``: (.*?)(?=^    - ``|\n\n)", text, re.MULTILINE | re.DOTALL))
    assert set(listed) == set(rows)
    for key, row in rows.items():
        assert values(row) <= set(re.findall(r'"(\w+)"', listed[key])), key
