"""Columns of xarray and dask keep their type; pandas tells a type checker nothing of its own."""

from typing import assert_type

import dask.array
import numpy as np
import xarray

import overwater

readings = xarray.DataArray([20.0, 21.0], dims="row")
chunks: dask.array.Array = dask.array.from_array(np.array([20.0, 21.0]))  # type: ignore[no-untyped-call]

assert_type(overwater.vapour_pressure(readings), xarray.DataArray)
assert_type(overwater.vapour_pressure(xarray.Dataset({"bath": readings})), xarray.Dataset)
assert_type(overwater.vapour_pressure(chunks), dask.array.Array)
