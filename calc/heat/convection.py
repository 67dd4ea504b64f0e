"""Natural convection: how fast still air carries heat away from a plate or a wall."""

from enum import Enum, auto

import numpy as np

from calc.heat.air import Real, dry_air
from calc.validity import check

__all__ = [
    "GRAVITY_M_S2",
    "Correlation",
    "film_coefficient",
    "level_plate_length",
    "nusselt",
    "nusselt_mcadams_cold",
    "nusselt_mcadams_hot",
    "nusselt_vertical_churchill",
    "rayleigh",
]

GRAVITY_M_S2 = 9.80665
"""Source: standard_gravity."""

_TURNS_TURBULENT = 1e7
_HIGHEST_RAYLEIGH = 1e11


class Correlation(Enum):
    """Which surface loses heat, and so which correlation holds."""

    HOT_SIDE_UP = auto()
    HOT_SIDE_DOWN = auto()
    VERTICAL = auto()


def level_plate_length(long_m: Real, wide_m: Real) -> Real:
    """Return the length that stands for a level plate: its area over its edge.

    L = a b / (2 (a + b))

    Parameters
    ----------
    long_m, wide_m : sides [m], above 0

    Returns
    -------
    float
        Length [m].

    Notes
    -----
    For level plates only; a vertical plate takes its height.
    Source: bergman2011, chapter 9; cengel_9_41.

    Examples
    --------
    >>> round(level_plate_length(0.2, 0.2), 3)
    0.05
    """
    return long_m * wide_m / (2.0 * (long_m + wide_m))


def rayleigh(surface_c: Real, air_c: Real, length_m: Real | float) -> Real:
    """Return the Rayleigh number of a surface in still air, with air at the film temperature.

    Ra = g β |Ts - Ta| L³ Pr / ν²,  β = 1/Tf,  Tf = (Ts + Ta)/2

    Parameters
    ----------
    surface_c, air_c : temperatures [degC], film between 0 and 100
    length_m : length [m], above 0

    Returns
    -------
    float or ndarray
        Rayleigh number [1], 0 or more.

    Notes
    -----
    Raises OutsideModelError where the film leaves 0 to 100 °C.
    Source: bergman2011, chapter 9.

    Examples
    --------
    >>> round(float(rayleigh(40.0, 22.0, 0.05)), -2)
    196800.0
    """
    film = dry_air((surface_c + air_c) / 2.0)
    lift = GRAVITY_M_S2 * film.expansion_1_k * abs(surface_c - air_c)
    return lift * length_m**3 * film.prandtl / film.viscosity_m2_s**2


def nusselt_mcadams_hot(rayleigh_number: Real) -> Real:
    """Return the Nusselt number of a level plate whose hot side looks up.

    0.54 Ra^(1/4) up to 10^7; 0.15 Ra^(1/3) above

    Parameters
    ----------
    rayleigh_number : Rayleigh number [1], 0 to 10^11, on the length area over edge

    Returns
    -------
    float or ndarray
        Nusselt number [1].

    Notes
    -----
    Jumps up by 6 % at 10^7. Below 10^4 it was not measured; a basking stone lies above.
    Source: mcadams1985.

    Examples
    --------
    >>> round(float(nusselt_mcadams_hot(411_500.0)), 2)
    13.68
    """
    _check_rayleigh(rayleigh_number)
    laminar: Real = 0.54 * np.power(rayleigh_number, 0.25)
    turbulent: Real = 0.15 * np.cbrt(rayleigh_number)
    is_turbulent = rayleigh_number > _TURNS_TURBULENT
    return laminar + is_turbulent * (turbulent - laminar)


def nusselt_mcadams_cold(rayleigh_number: Real) -> Real:
    """Return the Nusselt number of a level plate whose hot side looks down.

    0.27 Ra^(1/4)

    Parameters
    ----------
    rayleigh_number : Rayleigh number [1], 0 to 10^10, on the length area over edge

    Returns
    -------
    float or ndarray
        Nusselt number [1].

    Notes
    -----
    The same for a cold side that looks up. Fails above 10^10.
    Source: mcadams1985.

    Examples
    --------
    >>> round(float(nusselt_mcadams_cold(411_500.0)), 3)
    6.838
    """
    _check_rayleigh(rayleigh_number, 1e10)
    number: Real = 0.27 * np.power(rayleigh_number, 0.25)
    return number


def nusselt_vertical_churchill(rayleigh_number: Real, prandtl: Real) -> Real:
    """Return the Nusselt number of a vertical plate.

    (0.825 + 0.387 Ra^(1/6) / (1 + (0.492/Pr)^(9/16))^(8/27))²

    Parameters
    ----------
    rayleigh_number : Rayleigh number [1], 0 to 10^11, on the height
    prandtl : Prandtl number [1], above 0

    Returns
    -------
    float or ndarray
        Nusselt number [1].

    Notes
    -----
    For an even surface temperature and air that is still.
    Source: churchill1975; bergman2011, Example 9.2.

    Examples
    --------
    >>> round(float(nusselt_vertical_churchill(0.69 * 2.63e9, 0.69)))
    147
    """
    _check_rayleigh(rayleigh_number)
    slow: Real = np.power(1.0 + np.power(0.492 / prandtl, 9.0 / 16.0), 8.0 / 27.0)
    number: Real = np.square(0.825 + 0.387 * np.cbrt(np.sqrt(rayleigh_number)) / slow)
    return number


def nusselt(rayleigh_number: Real, prandtl: Real, correlation: Correlation) -> Real:
    """Return the Nusselt number of the correlation that was chosen.

    Source: mcadams1985 for level plates; churchill1975 for vertical ones.
    """
    match correlation:
        case Correlation.HOT_SIDE_UP:
            return nusselt_mcadams_hot(rayleigh_number)
        case Correlation.HOT_SIDE_DOWN:
            return nusselt_mcadams_cold(rayleigh_number)
        case Correlation.VERTICAL:
            return nusselt_vertical_churchill(rayleigh_number, prandtl)


def film_coefficient(
    surface_c: Real, air_c: Real, length_m: Real | float, correlation: Correlation
) -> Real:
    """Return the heat that still air takes per area and kelvin.

    h = Nu k / L

    Parameters
    ----------
    surface_c, air_c : temperatures [degC], film between 0 and 100
    length_m : height, or area over edge of a level plate [m], above 0
    correlation : which way the surface looks

    Returns
    -------
    float or ndarray
        Convection coefficient [W/m²K].

    Notes
    -----
    Correlations differ by up to 30 % for small plates in air.
    Source: mcadams1985; churchill1975.

    Examples
    --------
    >>> round(float(film_coefficient(40.0, 22.0, 0.05, Correlation.HOT_SIDE_UP)), 2)
    6.07
    """
    film = dry_air((surface_c + air_c) / 2.0)
    number = nusselt(rayleigh(surface_c, air_c, length_m), film.prandtl, correlation)
    return number * film.conductivity_w_mk / length_m


def _check_rayleigh(rayleigh_number: Real, highest: float = _HIGHEST_RAYLEIGH) -> None:
    check("Rayleigh number", rayleigh_number, 0.0, highest)
