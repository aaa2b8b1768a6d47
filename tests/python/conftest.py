"""What the tests share."""

import numpy
import program
import pytest


@pytest.fixture(scope="session")
def formula():
    return program.formula


@pytest.fixture(scope="session")
def ask():
    return program.ask


@pytest.fixture
def random():
    """The same numbers in every run, so that a failure can be looked at again."""
    return numpy.random.default_rng(20261125)
