"""The program under test, and how a table goes through it."""

import csv
import io
import json
import os
import pathlib
import subprocess

import numpy

ROOT = pathlib.Path(__file__).resolve().parents[2]
PROGRAM = pathlib.Path(os.environ.get("OVERWATER", ROOT / "target" / "release" / "overwater"))


def overwater(*arguments, text=None):
    """Runs the program and gives what it printed; a refusal fails the test with its message."""
    done = subprocess.run([PROGRAM, *arguments], input=text, capture_output=True, text=True, check=False)
    assert done.returncode == 0, done.stderr
    return done.stdout


def ask(*arguments):
    """A command whose answer is JSON."""
    return json.loads(overwater(*arguments, "--json"))


def formula(name, **columns):
    """A formula of the library, a column at a time; NaN where it has no result."""
    names = list(columns)
    rows = zip(*(numpy.broadcast_arrays(*columns.values())))
    lines = [",".join(names)]
    lines += [",".join(repr(float(value)) for value in row) for row in rows]
    printed = overwater("calculate", name, "--table", "-", text="\n".join(lines) + "\n")
    results = [row[-1] for row in csv.reader(io.StringIO(printed))][1:]
    return numpy.array([float(value) if value else numpy.nan for value in results])


def published(name):
    """The rows of a table of tests/data, as dictionaries."""
    lines = (ROOT / "tests" / "data" / name).read_text().splitlines()
    return list(csv.DictReader(line for line in lines if not line.startswith("#")))
