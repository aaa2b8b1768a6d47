"""Pickles, threads, memory, the time that an import takes."""

import concurrent.futures
import copy
import pickle
import subprocess
import sys
import threading
import tracemalloc

import numpy as np
import pytest

import overwater
from middle import number, ranges


def test_functions_survive_pickle_and_copy():
    for name in overwater.FUNCTIONS:
        function = getattr(overwater, name)
        assert pickle.loads(pickle.dumps(function)) is function
        assert copy.deepcopy(function) is function
        assert (function.__module__, function.__name__) == ("overwater", name)


def test_the_ufuncs_are_a_part_of_the_package():
    code = (
        "import sys, overwater\n"
        "ufuncs = overwater.ufuncs\n"
        "assert 'numpy' not in sys.modules\n"
        "assert ufuncs.vapour_pressure is overwater.vapour_pressure.__self__.ufunc\n"
        "assert 'ufuncs' in dir(overwater)"
    )
    subprocess.run([sys.executable, "-c", code], check=True)


def test_eight_threads_calling_every_function():
    middles = {name: {key: (least + greatest) / 2 for key, (least, greatest) in ranges(name).items()} for name in overwater.FUNCTIONS}
    expected = {name: number(name, values.values()) for name, values in middles.items()}
    columns = {name: {key: np.full(100, value) for key, value in values.items()} for name, values in middles.items()}
    start = threading.Barrier(8)

    def work(turn):
        start.wait()
        # Each thread begins elsewhere, so that different functions meet.
        names = [*overwater.FUNCTIONS[turn * 20 :], *overwater.FUNCTIONS[: turn * 20]]
        for name in names:
            assert np.array_equal([number(name, middles[name].values())], [expected[name]], equal_nan=True), name
            with np.errstate(invalid="ignore"):
                found = getattr(overwater, name)(**columns[name])
            assert np.array_equal(found, np.full(100, expected[name]), equal_nan=True), name
        return len(names)

    with concurrent.futures.ThreadPoolExecutor(8) as pool:
        assert list(pool.map(work, range(8))) == [len(overwater.FUNCTIONS)] * 8


def test_arrays_in_other_processes():
    # As dask and multiprocessing do it: the function is found again where it is called.
    code = (
        "import pickle, sys\n"
        "function, values = pickle.load(sys.stdin.buffer)\n"
        "sys.stdout.buffer.write(pickle.dumps(function(values)))"
    )
    values = np.array([10.0, 20.0])
    for function in (overwater.vapour_pressure, overwater.vapour_pressure.__self__.ufunc):
        done = subprocess.run([sys.executable, "-c", code], input=pickle.dumps((function, values)), capture_output=True, check=True)
        assert np.array_equal(pickle.loads(done.stdout), overwater.vapour_pressure(values))


def test_eight_threads_calling_everything():
    values = np.linspace(1.0, 99.0, 100_000)
    expected = overwater.vapour_pressure(values), overwater.vapour_pressure(20.0), overwater.Formula("H2O2")
    start = threading.Barrier(8)

    def work(_):
        start.wait()
        for _ in range(20):
            assert np.array_equal(overwater.vapour_pressure(values), expected[0])
            assert overwater.vapour_pressure(20.0) == expected[1]
            assert overwater.Formula("H2O2") == expected[2]
            with pytest.raises(overwater.OverwaterError):
                overwater.vapour_pressure(200.0)
        return True

    with concurrent.futures.ThreadPoolExecutor(8) as pool:
        assert list(pool.map(work, range(8))) == [True] * 8


def test_a_fork_after_arrays_still_works():
    code = (
        "import os, numpy as np, overwater\n"
        "values = np.full(1_000_000, 20.0)\n"
        "overwater.vapour_pressure(values)\n"
        "child = os.fork()\n"
        "if child == 0: os._exit(0 if np.all(overwater.vapour_pressure(values) > 2) else 1)\n"
        "sys_exit = os.waitpid(child, 0)[1]\n"
        "raise SystemExit(sys_exit)"
    )
    if not hasattr(__import__("os"), "fork"):
        pytest.skip("no fork here")
    assert subprocess.run([sys.executable, "-W", "ignore", "-c", code], timeout=60).returncode == 0


def calls():
    array = np.array([20.0, 30.0])
    reading = {"temperature_c": 21.0, "pressure_kpa": 100.36}

    def refused():
        try:
            overwater.vapour_pressure(200.0)
        except overwater.OverwaterError:
            pass

    def mistaken():
        try:
            overwater.vapour_pressure(None)
        except TypeError:
            pass

    return {
        "number": (100_000, lambda: overwater.dry_amount(86.5, **reading)),
        "array": (100_000, lambda: overwater.vapour_pressure(array)),
        "list": (100_000, lambda: overwater.vapour_pressure([20.0, 30])),
        "refused": (100_000, refused),
        "mistaken": (100_000, mistaken),
        "formula": (1_000, lambda: overwater.Formula("H2O2")),
    }


@pytest.mark.parametrize("name", calls())
def test_no_call_leaks(name):
    times, call = calls()[name]
    watched = [overwater.vapour_pressure, None, 21.0, overwater.vapour_pressure.__self__, *overwater.FUNCTIONS]
    for _ in range(200):
        call()
    before = [sys.getrefcount(one) for one in watched]
    tracemalloc.start()
    try:
        first = tracemalloc.get_traced_memory()[0]
        for _ in range(times):
            call()
        grown = tracemalloc.get_traced_memory()[0] - first
    finally:
        tracemalloc.stop()
    after = [sys.getrefcount(one) for one in watched]
    assert grown < 20_000, f"{grown} bytes after {times} calls"
    assert all(abs(b - a) < 50 for a, b in zip(before, after, strict=True))


def resident():
    """Memory of the process, in bytes; what Rust takes is not seen by tracemalloc."""
    with open("/proc/self/statm") as file:
        return int(file.read().split()[1]) * 4096


@pytest.mark.skipif(not sys.platform.startswith("linux"), reason="reads /proc")
@pytest.mark.parametrize("name", ["array", "refused", "formula"])
def test_rust_does_not_leak(name):
    times, call = calls()[name]
    for _ in range(times // 2):
        call()
    before = resident()
    for _ in range(times):
        call()
    assert resident() - before < 2_000_000


def test_importing_is_quick():
    # The least of several: how long it takes, not how busy the machine is.
    code = "import time\nt = time.perf_counter()\nimport overwater\nprint(time.perf_counter() - t)"
    least = min(float(subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, check=True).stdout) for _ in range(7))
    assert least < 0.015, f"{1000 * least:.1f} ms"
