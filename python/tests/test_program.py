"""The program, the exchange and the wheel."""

import json
import runpy
import subprocess
import sys
from importlib import metadata
from pathlib import Path

import pytest

import overwater
from overwater import _native

ROOT = Path(__file__).parents[2]


def run(*arguments):
    return subprocess.run([sys.executable, "-m", "overwater", *arguments], capture_output=True, text=True, cwd=ROOT, timeout=120)


def test_python_m_overwater_is_the_program():
    done = run("plan", "examples/oxygen-lesson.toml")
    assert (done.returncode, done.stderr) == (0, "")
    assert done.stdout == (ROOT / "examples/oxygen-lesson.txt").read_text()
    assert run("--version").stdout == f"overwater {overwater.__version__}\n"
    refused = run("calculate", "vapour_pressure", "temperature_c=200")
    assert refused.returncode == 2 and "out of range" in refused.stderr and refused.stdout == ""


def vectors():
    folder = ROOT / "tests/vectors"
    return sorted(path for path in folder.rglob("*.request.json")) if folder.is_dir() else []


@pytest.mark.parametrize("path", vectors(), ids=lambda path: path.stem)
def test_shared_requests_give_the_shared_answers(path):
    answer = path.with_name(path.name.replace(".request.", ".answer."))
    assert _native.respond(path.read_bytes()) == answer.read_text().rstrip("\n")


@pytest.mark.parametrize("request_bytes", [b"", b"\xff", b"\0", b"{", b"[1]", b'{"format":1,"task":"no"}'])
def test_any_bytes_get_an_answer(request_bytes):
    assert json.loads(_native.respond(request_bytes))["error"]["code"]


def test_versions_are_one():
    assert metadata.version("overwater") == overwater.__version__


def test_the_wheel_is_for_every_python_from_3_10_on():
    tags = [line for line in metadata.distribution("overwater").read_text("WHEEL").splitlines() if line.startswith("Tag:")]
    assert tags and all(tag.startswith("Tag: cp310-abi3-") for tag in tags)


@pytest.mark.skipif(not _native.OPTIMISED, reason="built without optimisation, for the tests only")
def test_the_compiled_half_is_small():
    assert Path(_native.__file__).stat().st_size < 15_000_000


@pytest.mark.parametrize("path", sorted(Path(__file__).parent.glob("typed*.py")), ids=lambda path: path.stem)
def test_what_the_type_checker_reads_runs(path):
    pytest.importorskip({"typed_polars": "polars", "typed_columns": "xarray"}.get(path.stem, "numpy"))
    runpy.run_path(str(path))


def test_stubs_are_fresh():
    done = subprocess.run([sys.executable, str(ROOT / "python/tools/write_stubs.py"), "--check"], capture_output=True, text=True)
    assert done.returncode == 0, done.stderr
