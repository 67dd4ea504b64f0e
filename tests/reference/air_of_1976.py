"""Air by the US Standard Atmosphere of 1976 as fluids has it, and films of it by ht.

Not the table of the engine: conductivity and viscosity come from other formulas, half a per cent
away, so a film agrees within one per cent and no better.
"""

from collections.abc import Callable
from dataclasses import dataclass
from typing import Any

import fluids
import ht
from scipy.optimize import brentq

__all__ = [
    "CORRELATIONS",
    "FILM_AGREES",
    "Air",
    "air_at",
    "level_film",
    "radiated",
    "settled",
    "upright_film",
]

FILM_AGREES = 0.01
"""How near films of the two airs are [1]."""

_HEAT_CAPACITY = 1006.5
_PRESSURE = 101_325.0
_GRAVITY = 9.80665

Nusselt = Callable[[float, float], float]
CORRELATIONS: dict[str, Nusselt] = {
    "McAdams": ht.conv_free_immersed.Nu_horizontal_plate_McAdams,
    "VDI": ht.conv_free_immersed.Nu_horizontal_plate_VDI,
    "Rohsenow": ht.conv_free_immersed.Nu_horizontal_plate_Rohsenow,
}
"""Nusselt numbers of a hot level plate facing up, of Prandtl and Grashof number."""


@dataclass(frozen=True)
class Air:
    """Conductivity [W/mK], kinematic viscosity [m²/s] and Prandtl number [1]."""

    conductivity: float
    viscosity: float
    prandtl: float

    def grashof(self, hot_c: float, cold_c: float, length: float) -> float:
        expansion = 1.0 / ((hot_c + cold_c) / 2.0 + 273.15)
        return float(
            fluids.core.Grashof(
                L=length,
                beta=expansion,
                T1=hot_c + 273.15,
                T2=cold_c + 273.15,
                nu=self.viscosity,
                g=_GRAVITY,
            )
        )


def air_at(celsius: float) -> Air:
    standard, kelvin = fluids.ATMOSPHERE_1976, celsius + 273.15
    dynamic = standard.viscosity(kelvin)
    conductivity = standard.thermal_conductivity(kelvin)
    density = standard.density(kelvin, _PRESSURE)
    return Air(conductivity, dynamic / density, _HEAT_CAPACITY * dynamic / conductivity)


def level_film(
    hot_c: float, cold_c: float, length: float, correlation: Nusselt = CORRELATIONS["McAdams"]
) -> float:
    air = air_at((hot_c + cold_c) / 2.0)
    number = correlation(air.prandtl, air.grashof(hot_c, cold_c, length))
    return number * air.conductivity / length


def upright_film(hot_c: float, cold_c: float, height: float) -> float:
    air = air_at((hot_c + cold_c) / 2.0)
    grashof = air.grashof(hot_c, cold_c, height)
    number = ht.conv_free_immersed.Nu_vertical_plate_Churchill(air.prandtl, grashof)
    return float(number * air.conductivity / height)


def radiated(emissivity: float, hot_c: float, cold_c: float) -> float:
    # Its signature is taken for integers only, by its default of absolute zero.
    q_rad: Any = ht.radiation.q_rad
    return float(q_rad(emissivity, hot_c + 273.15, cold_c + 273.15))


def settled(
    absorbed: float,
    air_c: float,
    emissivity: float,
    below: float,
    correlation: Nusselt = CORRELATIONS["McAdams"],
    side: float = 0.20,
    film_factor: float = 1.0,
) -> float:
    """Return where a level square settles [°C] that absorbs so much heat [W/m²]."""

    def surplus(surface_c: float) -> float:
        film = film_factor * level_film(surface_c, air_c, side / 4.0, correlation) + below
        return film * (surface_c - air_c) + radiated(emissivity, surface_c, air_c) - absorbed

    return float(brentq(surplus, air_c + 1e-3, air_c + 150.0, xtol=1e-4))
