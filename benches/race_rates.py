"""Fits, refits and tables against general-purpose libraries, in one run on one machine.

    cargo build --release && cargo bench -p overwater-benches --bench rates --bench reduce
    python benches/race_rates.py

Needs numpy, scipy, pandas and polars. The program is started as a process, so that its figure for a table holds the start
of the process and the reading of the file; the figures of the fits alone are those of `cargo bench`.
"""

import os
import pathlib
import subprocess
import tempfile
import time

import numpy
import pandas
import polars
from scipy.optimize import curve_fit

ROOT = pathlib.Path(__file__).resolve().parents[1]
PROGRAM = os.environ.get("OVERWATER", ROOT / "target" / "release" / "overwater")
ROWS = 1_000_000


def best(work, repeats):
    """The least of several times, in seconds."""
    times = []
    for _ in range(repeats):
        start = time.perf_counter()
        work()
        times.append(time.perf_counter() - start)
    return min(times)


def first_order(t, last, k, start):
    return last * (1 - numpy.exp(-k * (t - start)))


def slopes(t, last, k, start):
    e = numpy.exp(-k * (t - start))
    return numpy.stack([1 - e, last * (t - start) * e, -last * k * e], axis=1)


def fits():
    t = numpy.arange(60) * 5.0
    scatter = numpy.resize([0.3, -0.2, 0.1, -0.4, 0.2, 0.0, 0.3], 60)
    v = first_order(t, 80.0, numpy.log(2) / 40, 2.0) + scatter
    guess = (v.max(), 0.02, 0.0)
    fitted, _ = curve_fit(first_order, t, v, guess, jac=slopes)
    once = best(lambda: curve_fit(first_order, t, v, guess, jac=slopes), 200)
    print(f"first order, 60 readings, scipy.optimize.curve_fit   {once * 1e6:8.1f} us")
    random = numpy.random.default_rng(1)
    curve = first_order(t, *fitted)
    residuals = v - curve

    def refits():
        for _ in range(1000):
            curve_fit(first_order, t, curve + random.choice(residuals, 60), fitted, jac=slopes)

    print(f"1000 refits, scipy.optimize.curve_fit                {best(refits, 3) * 1e3:8.1f} ms")


ZERO = 273.15
R = 8.31446261815324


def vapour_kpa(t, exp):
    """Magnus: far less work than what the program does."""
    return 0.6112 * exp(17.62 * t / (243.12 + t))


def tables(folder):
    path = folder / "readings.csv"
    random = numpy.random.default_rng(7)
    frame = pandas.DataFrame(
        {
            "volume_cm3": random.uniform(20, 95, ROWS).round(1),
            "temperature_c": random.uniform(15, 28, ROWS).round(1),
            "pressure_kpa": random.uniform(97, 104, ROWS).round(2),
        }
    )
    frame.to_csv(path, index=False)

    def with_pandas():
        read = pandas.read_csv(path)
        dry = read.pressure_kpa - vapour_kpa(read.temperature_c, numpy.exp)
        n = dry * read.volume_cm3 / (R * (read.temperature_c + ZERO))
        return n.mean(), n.std(), n.min(), n.max()

    def with_polars():
        t = polars.col("temperature_c")
        n = (polars.col("pressure_kpa") - vapour_kpa(t, polars.Expr.exp)) * polars.col("volume_cm3") / (R * (t + ZERO))
        plan = polars.scan_csv(path).select(
            n.mean().alias("mean"), n.std().alias("s"), n.min().alias("least"), n.max().alias("greatest")
        )
        return plan.collect(engine="streaming")

    def with_overwater():
        return subprocess.run([PROGRAM, "reduce", path], check=True, capture_output=True)

    for name, work in [("pandas", with_pandas), ("polars, streaming", with_polars), ("overwater reduce", with_overwater)]:
        print(f"a million rows, {name:36} {best(work, 5) * 1e9 / ROWS:8.1f} ns a row")


if __name__ == "__main__":
    fits()
    with tempfile.TemporaryDirectory() as folder:
        tables(pathlib.Path(folder))
