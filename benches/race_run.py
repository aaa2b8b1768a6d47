"""A lesson of twenty minutes against scipy on the same equations, in one run on one machine.

    cargo build --release && cargo bench -p overwater-benches --bench run
    python benches/race_run.py

Needs numpy and scipy. The program is started as a process, so that its figure holds the start of the process, the reading
of the file and the printing; the figures of the library alone are those that `cargo bench` has left behind.
"""

import json
import os
import pathlib
import subprocess
import sys
import time

ROOT = pathlib.Path(__file__).resolve().parents[1]
sys.path.insert(0, str(ROOT / "tests" / "python"))

from preparation import Preparation, arrhenius, first_state, mixed  # noqa: E402

PROGRAM = os.environ.get("OVERWATER", ROOT / "target" / "release" / "overwater")
TARGET = pathlib.Path(os.environ.get("CARGO_TARGET_DIR", ROOT / "target"))
PORTIONS = [(30.0 * index, 5.0, 1.785) for index in range(13)]
ROOM, SPACE, PRESSURE = 293.15, 250e-6 + 3.141592653589793 / 4 * 0.005**2 * 0.8, 101_325 + 1037.146


def best(work, repeats):
    """The least of several times, in seconds."""
    times = []
    for _ in range(repeats):
        start = time.perf_counter()
        work()
        times.append(time.perf_counter() - start)
    return min(times)


def with_scipy(method):
    """The same portions and the same end, without any event; until the flask cools and takes no more gas."""
    flask = Preparation(SPACE, PRESSURE, ROOM, 0.2, 40.0, lambda t, c: 5e-4 * arrhenius(t, 50_000) * 0.4e-3 * c)
    x = first_state(SPACE, PRESSURE, 25.0, ROOM)
    ends = [start for start, *_ in PORTIONS[1:]] + [1200.0]
    for (start, volume, strength), end in zip(PORTIONS, ends):
        x = flask.poured(x, *mixed(volume, strength), ROOM)
        x = flask.follow(x, start, end, method=method, rtol=1e-8)
    return x


def program():
    additions = ", ".join(
        f"{{ time_s = {t}, volume_cm3 = {v}, concentration_mol_per_dm3 = {c} }}" for t, v, c in PORTIONS
    )
    jars = "".join(f", {{ volume_cm3 = 250 }}" for _ in range(4))
    text = (
        f"format = 1\nopen_funnel = false\ntube_rise_cm = 100\nrejected_cm3 = 200\nadditions = [{additions}]\n"
        f"vessels = [{{ volume_cm3 = 55 }}{jars}]\n"
    )
    return subprocess.run([PROGRAM, "run", "-", "--json"], input=text, check=True, capture_output=True, text=True)


if __name__ == "__main__":
    for method in ["LSODA", "Radau", "BDF"]:
        print(f"scipy solve_ivp, {method:6} rtol 1e-8, no events   {best(lambda: with_scipy(method), 3) * 1e3:9.1f} ms")
    print(f"overwater run, all events, as a process         {best(program, 10) * 1e3:9.1f} ms")
    for folder in sorted((TARGET / "criterion" / "run").glob("*/new/estimates.json")):
        name = folder.parents[1].name
        middle = json.loads(folder.read_text())["median"]["point_estimate"]
        print(f"overwater, in the library: {name:24} {middle / 1e6:9.3f} ms")
