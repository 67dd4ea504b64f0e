"""How bright it is outside: full sun, open shade, an overcast day, and a room to compare with."""

from dataclasses import dataclass
from datetime import date
from math import radians, sin, sqrt

from calc.daylight import noon_altitude_deg
from calc.uncertainty import Doubt, Estimate, spread
from calc.validity import check

__all__ = [
    "FULL_MOON_LX",
    "Outdoors",
    "noon_outdoors",
    "outdoors",
    "overcast_lux",
    "room_lux",
    "shade_lux",
    "sun_lux",
]

FULL_MOON_LX = 0.25
"""Under a full moon [lx]. Source: building_lighting."""

_HIGH_SUN_DEG = 60.0
_CLEAR_DOUBT, _SHADE_DOUBT, _OVERCAST_DOUBT = 1.2, 1.5, 2.0
# From so many degrees of the sun's height on; coefficients of deg/90.
_ROWS = (
    (20.0, (3.74, 3.97, -4.07, 1.47)),
    (5.0, (3.05, 13.28, -45.98, 64.33)),
    (-0.8, (2.88, 22.26, -207.64, 1034.30)),
    (-5.0, (2.88, 21.81, -258.11, -858.36)),
    (-12.0, (2.70, 12.17, -431.69, -1899.83)),
    (-18.0, (13.84, 262.72, 1447.42, 2797.93)),
)


@dataclass(frozen=True, slots=True)
class Outdoors:
    """Level ground at one height of the sun [degree]: sun, open shade and overcast [lx]."""

    sun_deg: float
    sun_lx: Estimate
    shade_lx: Estimate
    overcast_lx: Estimate


def sun_lux(sun_deg: float) -> float:
    """Illuminance of level ground under a clear sky, sun and sky together.

    log10 E = l0 + l1 x + l2 x² + l3 x³, x = height/90

    Parameters
    ----------
    sun_deg : height of the sun [degree], -90 to 90

    Returns
    -------
    float
        Illuminance [lx]; 0 from 18 degrees below the horizon on.

    Notes
    -----
    At sea level; real days differ by a fifth or more. A clear-sky model gives an eighth less with
    the sun straight above.
    Source: daylight_polynomial.

    Examples
    --------
    >>> round(sun_lux(90.0), -2), round(sun_lux(-6.0), 2)
    (128800.0, 3.41)
    """
    check("height of the sun", sun_deg, -90.0, 90.0, "degrees")
    for least, (l0, l1, l2, l3) in _ROWS:
        if sun_deg >= least:
            x = sun_deg / 90.0
            return float(10.0 ** (l0 + x * (l1 + x * (l2 + x * l3))))
    return 0.0


def shade_lux(sun_deg: float) -> float:
    """Illuminance of open shade: the whole clear sky without the sun.

    E = 800 + 15 500 sqrt(sin h)

    Parameters
    ----------
    sun_deg : height of the sun [degree], 0 to 90

    Returns
    -------
    float
        Illuminance [lx].

    Notes
    -----
    Under trees or beside walls it is less, to a hundredth in a dense forest.
    Source: sky_light.

    Examples
    --------
    >>> round(shade_lux(30.0), -2)
    11800.0
    """
    check("height of the sun", sun_deg, 0.0, 90.0, "degrees")
    return 800.0 + 15_500.0 * sqrt(sin(radians(sun_deg)))


def overcast_lux(sun_deg: float) -> float:
    """Illuminance of level ground under a sky that is wholly overcast.

    E = 300 + 21 000 sin h

    Parameters
    ----------
    sun_deg : height of the sun [degree], 0 to 90

    Returns
    -------
    float
        Illuminance [lx].

    Notes
    -----
    Heavy cloud gives half, thin cloud twice as much.
    Source: sky_light.

    Examples
    --------
    >>> round(overcast_lux(30.0), -2)
    10800.0
    """
    check("height of the sun", sun_deg, 0.0, 90.0, "degrees")
    return 300.0 + 21_000.0 * sin(radians(sun_deg))


def room_lux() -> Estimate:
    """Return how bright a lit room is [lx], from a passage to an office.

    Source: rooms_for_work; building_lighting.

    Examples
    --------
    >>> room_lux().best
    300.0
    """
    return Estimate(100.0, 300.0, 500.0)


def outdoors(sun_deg: float = _HIGH_SUN_DEG) -> Outdoors:
    """Illuminance outside at one height of the sun, with how far days differ.

    as ``sun_lux``, ``shade_lux``, ``overcast_lux``

    Parameters
    ----------
    sun_deg : height of the sun [degree], 0 to 90; a high sun where nothing is told

    Returns
    -------
    Outdoors
        Illuminance [lx].

    Notes
    -----
    Source: daylight_polynomial; sky_light.

    Examples
    --------
    >>> round(outdoors().sun_lx.best, -4)
    100000.0
    """
    return Outdoors(
        sun_deg,
        spread(sun_lux(sun_deg), [Doubt("clear day", _CLEAR_DOUBT, "daylight_polynomial")]),
        spread(shade_lux(sun_deg), [Doubt("shade", _SHADE_DOUBT, "sky_light")]),
        spread(overcast_lux(sun_deg), [Doubt("cloud", _OVERCAST_DOUBT, "sky_light")]),
    )


def noon_outdoors(latitude_deg: float, month: int) -> Outdoors | None:
    """Illuminance outside at noon in the middle of a month.

    as ``outdoors`` at the sun's height of noon on the 15th

    Parameters
    ----------
    latitude_deg : latitude [degree], -90 to 90, north positive
    month : month [1], 1 to 12

    Returns
    -------
    Outdoors or None
        Illuminance [lx]; None where the sun does not rise.

    Notes
    -----
    Source: daylight_polynomial; sky_light; meeus1998.

    Examples
    --------
    >>> round(noon_outdoors(52.0, 6).sun_lx.best, -3)
    105000.0
    """
    check("month", month, 1, 12)
    sun_deg = noon_altitude_deg(latitude_deg, date(2025, month, 15))
    return outdoors(sun_deg) if sun_deg >= 0.0 else None
