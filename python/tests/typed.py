"""What a type checker makes of the package; checked by mypy, and run as a test."""

from decimal import Decimal
from typing import Any, assert_type

import numpy as np
from numpy.typing import NDArray

import overwater

column: NDArray[np.float64] = np.array([20.0, 30.0])
whole: NDArray[np.int64] = np.array([20, 30])

assert_type(overwater.vapour_pressure(20.0), float)
assert_type(overwater.vapour_pressure(20), float)
assert_type(overwater.vapour_pressure(Decimal("20.5")), float)
assert_type(overwater.vapour_pressure(range(20, 30)), NDArray[np.float64])
assert_type(overwater.dry_amount(86.5, temperature_c=21, pressure_kpa=100.0), float)
assert_type(overwater.vapour_pressure(column), NDArray[np.float64])
assert_type(overwater.vapour_pressure(whole), NDArray[np.float64])
assert_type(overwater.vapour_pressure([20.0, 30.0]), NDArray[np.float64])
assert_type(overwater.dry_amount(column, temperature_c=21.0, pressure_kpa=column + 80.0), NDArray[np.float64])
assert_type(overwater.vapour_pressure(column, out=np.zeros(2), where=column > 25.0), NDArray[np.float64])
assert_type(overwater.Formula("H2O2").molar_mass_g_per_mol, float)
assert_type(overwater.Reaction("H2 + O2 -> H2O").equation, str)
assert_type(overwater.Working("vapour_pressure", temperature_c=20.0).to_dict(), dict[str, Any])
assert_type(overwater.ask("strength", strength="20 vol").to_dict(), dict[str, Any])
assert_type(overwater.Formula.from_dict(overwater.Formula("H2O").to_dict()), overwater.Formula)

try:
    overwater.vapour_pressure(200.0)
except overwater.OverwaterError as error:
    assert_type(error.code, str)
