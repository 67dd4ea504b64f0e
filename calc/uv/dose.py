"""Doses: a day under the tube in SED, beside a day of sun, and how long a person may stay.

An animal that may leave takes less than any figure here; nobody knows the dose a reptile needs.
"""

from dataclasses import dataclass
from math import cos, pi, radians, sin

import numpy as np
from numpy.typing import ArrayLike, NDArray

from calc.uncertainty import Doubt, Estimate, spread
from calc.uv.erythema import UVI_PER_W_M2
from calc.validity import OutsideModelError

__all__ = [
    "MID_MONTH_DAYS",
    "OZONE_DU",
    "SUN_DOUBTS",
    "SafeTime",
    "SunDay",
    "clear_sky_uvi",
    "declination_rad",
    "dose_sed",
    "safe_time",
    "sun_day",
]

SED_J_M2 = 100.0
"""One standard erythema dose [J/m²]. Source: cie125."""

OZONE_DU = 300.0
"""A usual ozone column [DU]. Source: madronich2007."""

SUN_DOUBTS = (
    Doubt("ozone", 1.3, "madronich2007"),
    Doubt("formula", 1.2, "temis"),
)
"""A column of 250 to 400 DU, and the distance to another formula. Cloud only lowers."""

ACTINIC_LIMIT_J_M2 = 30.0
"""Effective dose of eye and skin in eight hours [J/m²]. Source: directive_2006_25."""

ACTINIC_PER_ERYTHEMAL = 0.64
"""The most that S(λ) exceeds s_er(λ) from 290 nm up: S(290 nm) = 0.64. Source: acgih1992."""

_HOUR_S = 3600.0
_WORKING_DAY_S = 8.0 * _HOUR_S
MID_MONTH_DAYS = (17, 47, 75, 105, 135, 162, 198, 228, 258, 288, 318, 344)
"""The day of each month whose sun is the month's mean. Source: klein1977."""


@dataclass(frozen=True, slots=True)
class SunDay:
    """A clear day of a month: UVI [1] at noon, dose [SED], hours [h] over a UVI of 3."""

    noon_uvi: Estimate
    dose: Estimate
    strong_hours: float


@dataclass(frozen=True, slots=True)
class SafeTime:
    """How long [s] a person may be exposed in a working day of eight hours.

    ``whole_day``: the limit is not reached in it.
    """

    seconds: float
    whole_day: bool


def dose_sed(uvi: float, hours: float) -> float:
    """Turn a UVI kept for some hours into standard erythema doses.

    H = UVI/40 t / (100 J/m²) = 0.9 UVI t

    Parameters
    ----------
    uvi : UV index [1], 0 or more
    hours : time [h], 0 or more

    Returns
    -------
    float
        Dose [SED].

    Notes
    -----
    Defined for human skin.
    Source: cie125; cie_17_26_073.

    Examples
    --------
    >>> dose_sed(4.0, 10.0)
    36.0
    """
    return uvi / UVI_PER_W_M2 * hours * _HOUR_S / SED_J_M2


def clear_sky_uvi(cos_zenith: ArrayLike, ozone_du: float = OZONE_DU) -> NDArray[np.float64]:
    """UVI of a cloudless, clean sky over dark ground.

    UVI = 12.5 μ^2.42 (Ω/300)^-1.23

    Parameters
    ----------
    cos_zenith : cosine of the sun's zenith angle, μ [1], -1 to 1; 0 UVI below the horizon
    ozone_du : ozone column, Ω [DU], 150 to 600

    Returns
    -------
    ndarray
        UV index [1].

    Notes
    -----
    At sea level and near the mean distance of the sun; height adds, cloud and haze take.
    Source: madronich2007, abstract.

    Examples
    --------
    >>> round(float(clear_sky_uvi(0.5)), 2)
    2.34
    """
    mu = np.asarray(cos_zenith, dtype=np.float64)
    if np.any(~(np.abs(mu) <= 1.0)):
        raise OutsideModelError("cosine of the zenith angle", float(np.max(mu)), -1.0, 1.0, "")
    if not 150.0 <= ozone_du <= 600.0:
        raise OutsideModelError("ozone column", ozone_du, 150.0, 600.0, "DU")
    return np.asarray(12.5 * np.maximum(mu, 0.0) ** 2.42 * (ozone_du / 300.0) ** -1.23)


def declination_rad(day_of_year: float) -> float:
    """Height of the sun over the equator, good to about a degree and a half.

    δ = 23.45° sin(360° (284 + n)/365)

    Parameters
    ----------
    day_of_year : n [d], 1 to 366

    Returns
    -------
    float
        Declination [rad].

    Notes
    -----
    Good enough beside the other doubts of a clear-sky UVI; not for rising and setting.
    Source: cooper1969.

    Examples
    --------
    >>> import math
    >>> round(math.degrees(declination_rad(172)), 2)
    23.45
    """
    return radians(23.45) * sin(2.0 * pi * (284.0 + day_of_year) / 365.0)


def sun_day(latitude_deg: float, month: int, ozone_du: float = OZONE_DU) -> SunDay:
    """Sum up a clear day in the middle of a month.

    μ(t) = sin φ sin δ + cos φ cos δ cos(15° (t - 12 h)); dose = ∫ 0.9 UVI(μ) dt

    Parameters
    ----------
    latitude_deg : latitude, φ [degree], -90 to 90, north positive
    month : 1 to 12
    ozone_du : ozone column [DU], 150 to 600

    Returns
    -------
    SunDay
        Noon UVI [1], dose [SED] and hours [h] over UVI 3.

    Notes
    -----
    As ``clear_sky_uvi``; the dose is that of a level place that stays in the sun all day.
    Source: madronich2007; cooper1969; klein1977.

    Examples
    --------
    >>> equator = sun_day(0.0, 3)
    >>> round(equator.noon_uvi.best, 1), round(equator.dose.best)
    (12.5, 62)
    """
    if not -90.0 <= latitude_deg <= 90.0:
        raise OutsideModelError("latitude", latitude_deg, -90.0, 90.0, "degree")
    if not 1 <= month <= 12:
        raise OutsideModelError("month", month, 1, 12, "")
    height, tilt = radians(latitude_deg), declination_rad(MID_MONTH_DAYS[month - 1])
    hours = np.linspace(-12.0, 12.0, 24 * 60 + 1)
    mu = sin(height) * sin(tilt) + cos(height) * cos(tilt) * np.cos(radians(15.0) * hours)
    uvi = clear_sky_uvi(np.clip(mu, -1.0, 1.0), ozone_du)
    dose = dose_sed(1.0, float(np.trapezoid(uvi, hours)))
    return SunDay(
        spread(float(uvi.max()), SUN_DOUBTS),
        spread(dose, SUN_DOUBTS),
        float(np.trapezoid((uvi >= 3.0).astype(float), hours)),
    )


def safe_time(uvi: float) -> SafeTime:
    """How long a person's eyes and skin may be in a lamp's light in a working day.

    t = 30 J/m² / (0.64 UVI/40), at most 8 h

    Parameters
    ----------
    uvi : UV index where the person is [1], above 0, to 100

    Returns
    -------
    SafeTime
        Time [s]; the lamp's own spectrum may allow more, never less.

    Notes
    -----
    A bound: it holds for any lamp that gives nothing under 290 nm and fails for one that does.
    Looking into the tube is not covered.
    Source: directive_2006_25, annex I table 1.1 row a; acgih1992.

    Examples
    --------
    >>> safe_time(3.0).seconds
    625.0
    """
    if not 0.0 < uvi <= 100.0:
        raise OutsideModelError("UV index", uvi, 0.0, 100.0, "")
    seconds = ACTINIC_LIMIT_J_M2 / (ACTINIC_PER_ERYTHEMAL * uvi / UVI_PER_W_M2)
    return SafeTime(min(seconds, _WORKING_DAY_S), seconds >= _WORKING_DAY_S)
