"""Properties of dry room air, from one table."""

from dataclasses import dataclass
from functools import cache
from typing import Generic, TypeVar

import numpy as np
from numpy.typing import NDArray

from calc.heat.tables import table
from calc.validity import check

__all__ = ["COLDEST_C", "HOTTEST_C", "KELVIN", "Air", "Real", "dry_air"]

Real = TypeVar("Real", float, NDArray[np.float64])

KELVIN = 273.15
COLDEST_C, HOTTEST_C = 0.0, 100.0


@dataclass(frozen=True, slots=True)
class Air(Generic[Real]):
    """Dry air at one temperature and 101 325 Pa."""

    density_kg_m3: Real
    heat_capacity_j_kgk: Real
    conductivity_w_mk: Real
    viscosity_m2_s: Real
    prandtl: Real
    expansion_1_k: Real


def dry_air(air_c: Real) -> Air[Real]:
    """Return the properties of dry air at 101 325 Pa.

    the parabola through each column of the table; β = 1/T

    Parameters
    ----------
    air_c : temperature [degC], 0 to 100; the table covers 20 to 50

    Returns
    -------
    Air
        Density [kg/m³], heat capacity [J/kgK], conductivity [W/mK], kinematic viscosity [m²/s],
        Prandtl number [1], expansion [1/K].

    Notes
    -----
    The parabola meets every row of the table within 0.01 %; beyond it the doubt grows to 1 %.
    Source: coolprop8, table of dry air.

    Examples
    --------
    >>> round(float(dry_air(31.0).conductivity_w_mk), 6)
    0.026692
    """
    check("air temperature", air_c, COLDEST_C, HOTTEST_C, "degC")
    density, capacity, conductivity, viscosity, prandtl = (
        constant + air_c * (slope + air_c * bend) for constant, slope, bend in _parabolas()
    )
    return Air(density, capacity, conductivity, viscosity, prandtl, 1.0 / (air_c + KELVIN))


@cache
def _parabolas() -> tuple[tuple[float, float, float], ...]:
    rows = table("air")
    grid = np.array(rows["temperature_c"], dtype=np.float64)
    columns = (
        np.array(rows["density_kg_m3"]),
        np.array(rows["heat_capacity_j_kgk"]),
        np.array(rows["conductivity_w_mk"]),
        np.array(rows["viscosity_e5_m2_s"]) * 1e-5,
        np.array(rows["prandtl"]),
    )
    fits = (np.polynomial.Polynomial.fit(grid, c, 2).convert().coef.tolist() for c in columns)
    return tuple((fit[0], fit[1], fit[2]) for fit in fits)
