"""The program under test, and how a table goes through it."""

import csv
import io
import json
import os
import pathlib
import subprocess

import numpy
import pytest

ROOT = pathlib.Path(__file__).resolve().parents[2]
PROGRAM = pathlib.Path(os.environ.get("OVERWATER", ROOT / "target" / "release" / "overwater"))


def overwater(*arguments, text=None):
    """Runs the program and gives what it printed; a refusal fails the test with its message."""
    done = subprocess.run([PROGRAM, *arguments], input=text, capture_output=True, text=True, check=False)
    assert done.returncode == 0, done.stderr
    return done.stdout


class Formulas:
    """The formulas of the library, a column at a time."""

    def __call__(self, name, **columns):
        names = list(columns)
        rows = zip(*(numpy.broadcast_arrays(*columns.values())))
        lines = [",".join(names)]
        lines += [",".join(repr(float(value)) for value in row) for row in rows]
        printed = overwater("calculate", name, "--table", "-", text="\n".join(lines) + "\n")
        results = [row[-1] for row in csv.reader(io.StringIO(printed))][1:]
        return numpy.array([float(value) if value else numpy.nan for value in results])


@pytest.fixture(scope="session")
def formula():
    return Formulas()


@pytest.fixture(scope="session")
def ask():
    """A command whose answer is JSON."""
    return lambda *arguments: json.loads(overwater(*arguments, "--json"))


@pytest.fixture
def random():
    """The same numbers in every run, so that a failure can be looked at again."""
    return numpy.random.default_rng(20261125)
