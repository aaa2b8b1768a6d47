"""Columns of Polars keep their type."""

from typing import assert_type

import polars

import overwater

assert_type(overwater.vapour_pressure(polars.Series([20.0])), polars.Series)
assert_type(overwater.vapour_pressure(polars.col("temperature_c")), polars.Expr)
