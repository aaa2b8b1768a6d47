"""A race over a million values: these functions, C with a vector maths library, numba, NumPy. Least of many runs, in ns a value.

Run it with the packages of the Python tests and numba: ``python benches/race_elementwise.py [--threads 1]``. The C program is
compiled here, with ``cc -O3 -march=native -ffast-math -fopenmp`` and libmvec, for this processor alone.
"""

import argparse
import ctypes
import os
import subprocess
import sys
import tempfile
import timeit
from pathlib import Path

import numpy as np

ROWS = 1_000_000

C = r"""
#include <math.h>
#include <stddef.h>
/* Saturation pressure of water, IAPWS 1992 (Wagner and Pruss), in kPa. */
static inline double vapour(double c) {
    double t = c + 273.15, u = 1.0 - t / 647.096, s = sqrt(u), u2 = u * u, u3 = u2 * u;
    double sum = u * (-7.85951783 + 1.84408259 * s) + u3 * (-11.7866497 + s * 22.6807411)
               + u2 * u2 * (-15.9618719 + 1.80122502 * u3 * s);
    return 22064.0 * exp(647.096 / t * sum);
}
void vapour_pressure(const double *c, double *p, ptrdiff_t n) {
    #pragma omp parallel for simd schedule(dynamic, 8192)
    for (ptrdiff_t i = 0; i < n; i++) p[i] = vapour(c[i]);
}
/* Density of water by a polynomial of the fifth degree over a line (Kell 1975), in kg/m3. */
void dry_amount(const double *v, const double *c, const double *p, const double *h, double *n_mmol, ptrdiff_t n) {
    #pragma omp parallel for simd schedule(dynamic, 8192)
    for (ptrdiff_t i = 0; i < n; i++) {
        double t = c[i];
        double density = (999.83952 + t * (16.945176 + t * (-7.9870401e-3 + t * (-46.170461e-6
                       + t * (105.56302e-9 - t * 280.54253e-12))))) / (1.0 + 16.879850e-3 * t);
        double dry = p[i] - density * 9.80665e-6 * h[i] - vapour(t);
        n_mmol[i] = dry * v[i] / (8.31446261815324 * (t + 273.15));
    }
}
"""


def best(call, repeats=30):
    """The least time of one call, in ns a value."""
    call()
    return min(timeit.repeat(call, number=1, repeat=repeats)) / ROWS * 1e9


def c_library(folder):
    """The C functions, compiled for this processor; nothing where there is no compiler."""
    source, library = Path(folder) / "race.c", Path(folder) / "race.so"
    source.write_text(C)
    command = ["cc", "-O3", "-march=native", "-ffast-math", "-fopenmp", "-shared", "-fPIC", source, "-o", library, "-lm"]
    try:
        subprocess.run(command, check=True)
    except (OSError, subprocess.CalledProcessError) as error:
        print(f"no C compiler: {error}", file=sys.stderr)
        return None
    return ctypes.CDLL(str(library))


def pointers(*arrays):
    return [array.ctypes.data_as(ctypes.c_void_p) for array in arrays]


def numpy_vapour(c):
    t = c + 273.15
    u = 1.0 - t / 647.096
    s = np.sqrt(u)
    u2 = u * u
    u3 = u2 * u
    total = u * (-7.85951783 + 1.84408259 * s) + u3 * (-11.7866497 + s * 22.6807411) + u2 * u2 * (-15.9618719 + 1.80122502 * u3 * s)
    return 22064.0 * np.exp(647.096 / t * total)


def numba_functions():
    """The same by numba, in parallel; nothing where it is not installed."""
    try:
        import numba
    except ImportError:
        print("numba is not installed", file=sys.stderr)
        return None
    from math import exp, sqrt

    @numba.njit(fastmath=True, inline="always")
    def vapour(c):
        t = c + 273.15
        u = 1.0 - t / 647.096
        s = sqrt(u)
        u2 = u * u
        u3 = u2 * u
        total = u * (-7.85951783 + 1.84408259 * s) + u3 * (-11.7866497 + s * 22.6807411) + u2 * u2 * (-15.9618719 + 1.80122502 * u3 * s)
        return 22064.0 * exp(647.096 / t * total)

    @numba.njit(fastmath=True, parallel=True)
    def vapour_pressure(c, out):
        for i in numba.prange(len(c)):
            out[i] = vapour(c[i])

    @numba.njit(fastmath=True, parallel=True)
    def dry_amount(v, c, p, h, out):
        for i in numba.prange(len(c)):
            t = c[i]
            density = (999.83952 + t * (16.945176 + t * (-7.9870401e-3 + t * (-46.170461e-6 + t * (105.56302e-9 - t * 280.54253e-12))))) / (1.0 + 16.879850e-3 * t)
            out[i] = (p[i] - density * 9.80665e-6 * h[i] - vapour(t)) * v[i] / (8.31446261815324 * (t + 273.15))

    return vapour_pressure, dry_amount


def race():
    """Every runner over the same columns."""
    import overwater

    random = np.random.default_rng(1)
    v, c, p, h = (random.uniform(*ends, ROWS) for ends in ((10, 500), (5, 40), (95, 105), (-100, 100)))
    out = np.empty(ROWS)
    print(f"{len(os.sched_getaffinity(0))} thread(s), {ROWS} values, ns a value")
    print(f"{'copy':36}{best(lambda: np.copyto(out, c)):8.2f}")

    reading = {"temperature_c": c, "pressure_kpa": p, "inside_minus_outside_mm": h}
    rows = {
        "vapour pressure": {"overwater": lambda: overwater.vapour_pressure(c, out=out), "NumPy": lambda: numpy_vapour(c)},
        "dry amount": {"overwater": lambda: overwater.dry_amount(v, **reading, out=out)},
    }
    with tempfile.TemporaryDirectory() as folder:
        if (library := c_library(folder)) is not None:
            n = ctypes.c_ssize_t(ROWS)
            rows["vapour pressure"]["C, libmvec"] = lambda: library.vapour_pressure(*pointers(c, out), n)
            rows["dry amount"]["C, libmvec"] = lambda: library.dry_amount(*pointers(v, c, p, h, out), n)
        if (compiled := numba_functions()) is not None:
            rows["vapour pressure"]["numba"] = lambda: compiled[0](c, out)
            rows["dry amount"]["numba"] = lambda: compiled[1](v, c, p, h, out)
        for name, runners in rows.items():
            for runner, call in runners.items():
                print(f"{name + ', ' + runner:36}{best(call):8.2f}")
    # The rivals must have worked out the same thing.
    assert np.allclose(numpy_vapour(c), overwater.vapour_pressure(c), rtol=1e-12)

    print("one call, ns")
    number = timeit.Timer("f(20.0)", globals={"f": overwater.vapour_pressure})
    print(f"{'vapour pressure':36}{min(number.repeat(20, 100_000)) * 1e4:8.1f}")
    number = timeit.Timer("f(86.5, temperature_c=21.0, pressure_kpa=100.36)", globals={"f": overwater.dry_amount})
    print(f"{'dry amount, keywords':36}{min(number.repeat(20, 100_000)) * 1e4:8.1f}")
    array = np.array([20.0])
    number = timeit.Timer("f(a)", globals={"f": overwater.vapour_pressure, "a": array})
    print(f"{'an array of one':36}{min(number.repeat(20, 10_000)) * 1e5:8.1f}")


if __name__ == "__main__":
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--threads", type=int, default=0)
    threads = parser.parse_args().threads
    if threads and hasattr(os, "sched_setaffinity"):
        os.sched_setaffinity(0, sorted(os.sched_getaffinity(0))[:threads])
    race()
