"""The program `overwater`: ``python -m overwater`` is the same as the command line."""

import signal
import sys

from ._native import run_program


def main() -> int:
    """Run the program with the arguments of this process and give its exit code."""
    # The program does its own work between two looks of the interpreter: let Ctrl-C end it at once, as elsewhere.
    signal.signal(signal.SIGINT, signal.SIG_DFL)
    return run_program(["overwater", *sys.argv[1:]])


if __name__ == "__main__":
    sys.exit(main())
