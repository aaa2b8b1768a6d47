"""One reading's budget and a million draws against general-purpose libraries, in one run on one machine.

    cargo build --release && cargo bench -p overwater-benches --bench uncertainty
    python benches/race_uncertainty.py

Needs numpy and uncertainties. The program is started as a process, so that its figure holds the start of the process and
the writing of the answer; the figures of the library alone are those of `cargo bench`.
"""

import os
import pathlib
import subprocess
import time

import numpy
from uncertainties import ufloat, umath

ROOT = pathlib.Path(__file__).resolve().parents[1]
PROGRAM = os.environ.get("OVERWATER", ROOT / "target" / "release" / "overwater")
R = 8.31446261815324
INPUTS = {
    "volume_cm3": (86.5, 0.3),
    "temperature_c": (21.0, 0.3),
    "pressure_kpa": (100.36, 0.1),
    "inside_minus_outside_mm": (12.0, 0.5),
}
DRAWS = 1_000_000


def best(work, repeats):
    """The least of several times, in seconds."""
    times = []
    for _ in range(repeats):
        start = time.perf_counter()
        work()
        times.append(time.perf_counter() - start)
    return min(times)


def amount(volume, temperature, pressure, level, exp):
    """By Magnus and with a constant density of water: far less work than what the program does."""
    vapour = 0.6112 * exp(17.62 * temperature / (243.12 + temperature))
    return (pressure - 0.00979 * level - vapour) * volume / (R * (temperature + 273.15))


def request(rules, more=""):
    lines = ["format = 1", 'formula = "dry_amount"', f'rules = "{rules}"', more, "[inputs]"]
    lines += [f"{name} = {{ value = {value}, standard_uncertainty = {u} }}" for name, (value, u) in INPUTS.items()]
    return "\n".join([*lines, ""])


def overwater(text):
    subprocess.run([PROGRAM, "propagate", "-"], input=text, text=True, check=True, capture_output=True)


def with_uncertainties():
    n = amount(*(ufloat(value, u) for value, u in INPUTS.values()), umath.exp)
    return n.std_dev, {variable.tag: error for variable, error in n.error_components().items()}


def with_numpy():
    random = numpy.random.default_rng(1)
    n = amount(*(random.normal(value, u, DRAWS) for value, u in INPUTS.values()), numpy.exp)
    return n.mean(), n.std(), numpy.quantile(n, [0.025, 0.975])


if __name__ == "__main__":
    print(f"one budget, uncertainties              {best(with_uncertainties, 200) * 1e6:10.1f} us")
    print(f"one budget, overwater as a process     {best(lambda: overwater(request('gum')), 50) * 1e6:10.1f} us")
    print(f"a million draws, NumPy                 {best(with_numpy, 5) * 1e3:10.1f} ms")
    drawing = request("monte_carlo", f"draws = {DRAWS}")
    print(f"a million draws, overwater as a process{best(lambda: overwater(drawing), 5) * 1e3:10.1f} ms")
