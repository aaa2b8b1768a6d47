"""The shared library from Python without an extension module: ctypes and nothing else.

    python gas.py FOLDER/lib/liboverwater.so
"""

import ctypes
import json
import sys
from array import array
from ctypes import POINTER, c_char, c_char_p, c_double, c_int32, c_size_t, c_ssize_t


class Error(ctypes.Structure):
    """ow_error."""

    _fields_ = [
        ("size", c_size_t),
        ("status", c_int32),
        ("reserved", c_int32),
        ("value", c_double),
        ("code", c_char * 32),
        ("parameter", c_char * 64),
        ("message", c_char_p),
        ("message_capacity", c_size_t),
        ("message_needed", c_size_t),
    ]


def load(path):
    """The library with the signatures that are used here."""
    library = ctypes.CDLL(path)
    library.ow_error_size.restype = c_size_t
    if library.ow_abi_version() != 1 or library.ow_error_size() != ctypes.sizeof(Error):
        raise SystemExit("the library does not fit this program")
    library.ow_version.restype = c_char_p
    library.ow_vapour_pressure.argtypes = [c_double, POINTER(c_double), POINTER(Error)]
    column = [c_size_t, POINTER(c_double), c_ssize_t, POINTER(c_double), c_ssize_t, POINTER(Error)]
    library.ow_vapour_pressure_array.argtypes = column
    library.ow_respond.argtypes = [c_char_p, c_size_t, c_char_p, c_size_t, POINTER(c_size_t), POINTER(Error)]
    return library


def refusal(call):
    """The message of a call that is refused; the call takes an error struct."""
    text = ctypes.create_string_buffer(512)
    error = Error(size=ctypes.sizeof(Error), message_capacity=len(text))
    error.message = ctypes.cast(text, c_char_p)
    status = call(error)
    return status, error.code.decode(), error.value, text.value.decode()


def main(path):
    library = load(path)
    pressure = c_double()
    library.ow_vapour_pressure(20.0, pressure, None)
    print(f"overwater {library.ow_version().decode()}")
    print(f"20 degC: {pressure.value:.4f} kPa")

    temperatures = array("d", [0.0, 25.0, 50.0, float("nan"), 100.0])
    pressures = array("d", [0.0] * len(temperatures))
    pointer = [(c_double * len(column)).from_buffer(column) for column in (temperatures, pressures)]
    library.ow_vapour_pressure_array(len(temperatures), pointer[0], 8, pointer[1], 8, None)
    print("column:", ", ".join(f"{value:.4f}" for value in pressures))

    print("refused:", *refusal(lambda error: library.ow_vapour_pressure(293.15, pressure, error)))

    request = b'{"format": 1, "task": "weigh", "request": {"format": 1, "formula": "H2O2"}}'
    needed = c_size_t()
    library.ow_respond(request, len(request), None, 0, needed, None)
    answer = ctypes.create_string_buffer(needed.value)
    library.ow_respond(request, len(request), answer, len(answer), needed, None)
    weighed = json.loads(answer.value)["answer"]
    print(f"{weighed['formula']}: {weighed['molar_mass_g_per_mol']} g/mol")


if __name__ == "__main__":
    main(sys.argv[1])
