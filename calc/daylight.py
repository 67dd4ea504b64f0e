"""How long the day is, anywhere and on any date, and when the sun comes up and goes down.

Sunrise to sunset: upper edge of the Sun on a level horizon with usual refraction, which puts its
centre 50 minutes of arc below. Civil twilight is another, longer definition.
"""

from dataclasses import dataclass
from datetime import UTC, date, datetime, timedelta
from enum import Enum, auto

import numpy as np
from numpy.typing import NDArray

from calc.validity import check

__all__ = [
    "Day",
    "DayDefinition",
    "DayKind",
    "day",
    "day_hours",
    "kind_of",
    "noon_altitude_deg",
    "solar_noon",
]

_FIRST_YEAR, _LAST_YEAR = 1900, 2100
_J2000 = date(2000, 1, 1)
_ROUNDS = 4

Array = NDArray[np.float64]


class DayDefinition(Enum):
    """What counts as day; the value is how far below the horizon the Sun's centre is [degree].

    Source: usno1990; civil_twilight.
    """

    SUNRISE_TO_SUNSET = 50.0 / 60.0
    CIVIL_TWILIGHT = 6.0


class DayKind(Enum):
    """Whether the Sun rises and sets at all."""

    ORDINARY = auto()
    NEVER_SETS = auto()
    NEVER_RISES = auto()


@dataclass(frozen=True, slots=True)
class Day:
    """One day: its length [h] and, where the Sun rises and sets, when in UTC."""

    kind: DayKind
    hours: float
    sunrise: datetime | None
    sunset: datetime | None


def day_hours(
    latitude_deg: float,
    dates: NDArray[np.datetime64],
    definition: DayDefinition = DayDefinition.SUNRISE_TO_SUNSET,
    longitude_deg: float = 0.0,
) -> Array:
    """Return the length of days.

    half = acos((sin -h - sin φ sin δ) / (cos φ cos δ)), δ taken at sunrise and at sunset

    Parameters
    ----------
    latitude_deg : latitude [degree], -90 to 90, north positive
    dates : days, 1900 to 2100
    definition : sunrise to sunset, or civil twilight
    longitude_deg : longitude [degree], -180 to 180, east positive

    Returns
    -------
    ndarray
        Length [h]: 24 where the Sun never sets, 0 where it never rises.

    Notes
    -----
    Within seconds of an ephemeris away from the polar circles; within minutes near them, where
    the Sun grazes the horizon.
    Source: meeus1998, chapter 15; usno1990.

    Examples
    --------
    >>> solstice = np.array(["2025-06-21"], dtype="datetime64[D]")
    >>> round(float(day_hours(40.0, solstice)[0]), 2)
    15.02
    """
    rise, sets, never = _rise_and_set(latitude_deg, longitude_deg, dates, definition)
    hours = (sets - rise) * 24.0
    return np.where(never > 0, 24.0, np.where(never < 0, 0.0, hours))


def kind_of(hours: float) -> DayKind:
    """Return whether a day of this length [h] has a sunrise and a sunset."""
    if hours >= 24.0:
        return DayKind.NEVER_SETS
    return DayKind.NEVER_RISES if hours <= 0.0 else DayKind.ORDINARY


def noon_altitude_deg(latitude_deg: float, when: date) -> float:
    """Return how high the Sun stands at noon; below the horizon it is negative.

    90 - |φ - δ|

    Parameters
    ----------
    latitude_deg : latitude [degree], -90 to 90, north positive
    when : the day, 1900 to 2100

    Returns
    -------
    float
        Height of the Sun's centre, without refraction [degree].

    Notes
    -----
    Source: meeus1998, chapter 25.

    Examples
    --------
    >>> round(noon_altitude_deg(40.0, date(2025, 6, 21)), 1)
    73.4
    """
    check("latitude", latitude_deg, -90.0, 90.0, "degrees")
    noon = _mean_noon(np.array([when], dtype="datetime64[D]"), 0.0)
    return 90.0 - abs(latitude_deg - float(_sun(noon)[0][0]))


def solar_noon(when: date, longitude_deg: float) -> datetime:
    """Return when the Sun is highest.

    12 h UTC - longitude/15 - equation of time

    Parameters
    ----------
    when : the day at that longitude, 1900 to 2100
    longitude_deg : longitude [degree], -180 to 180, east positive

    Returns
    -------
    datetime
        Moment in UTC.

    Notes
    -----
    Source: meeus1998, chapter 28.

    Examples
    --------
    >>> solar_noon(date(2025, 11, 3), 0.0).time().isoformat("minutes")
    '11:43'
    """
    mean_noon = _mean_noon(np.array([when], dtype="datetime64[D]"), longitude_deg)
    return _moment(float((mean_noon - _sun(mean_noon)[1])[0]))


def day(
    latitude_deg: float,
    when: date,
    longitude_deg: float = 0.0,
    definition: DayDefinition = DayDefinition.SUNRISE_TO_SUNSET,
) -> Day:
    """Return one day with its sunrise and sunset.

    as ``day_hours``; noon = 12 h UTC - longitude/15 - equation of time

    Parameters
    ----------
    latitude_deg : latitude [degree], -90 to 90, north positive
    when : the day at that longitude, 1900 to 2100
    longitude_deg : longitude [degree], -180 to 180, east positive
    definition : sunrise to sunset, or civil twilight

    Returns
    -------
    Day
        Length [h], sunrise and sunset in UTC.

    Notes
    -----
    Source: meeus1998, chapters 15 and 28; usno1990.

    Examples
    --------
    >>> day(-23.7, date(2025, 12, 21)).kind
    <DayKind.ORDINARY: 1>
    """
    dates = np.array([when], dtype="datetime64[D]")
    rise, sets, never = _rise_and_set(latitude_deg, longitude_deg, dates, definition)
    if never[0] > 0:
        return Day(DayKind.NEVER_SETS, 24.0, None, None)
    if never[0] < 0:
        return Day(DayKind.NEVER_RISES, 0.0, None, None)
    hours = float((sets - rise)[0]) * 24.0
    return Day(DayKind.ORDINARY, hours, _moment(float(rise[0])), _moment(float(sets[0])))


def _rise_and_set(
    latitude_deg: float,
    longitude_deg: float,
    dates: NDArray[np.datetime64],
    definition: DayDefinition,
) -> tuple[Array, Array, Array]:
    """Return rise and set [days since 2000-01-01 12:00 UTC], and +1, -1 or 0 for never."""
    check("latitude", latitude_deg, -90.0, 90.0, "degrees")
    mean_noon = _mean_noon(dates, longitude_deg)
    noon = mean_noon - _sun(mean_noon)[1]
    at_noon = _half_day_cosine(latitude_deg, _sun(noon)[0], definition)
    never = np.where(at_noon < -1.0, 1.0, np.where(at_noon > 1.0, -1.0, 0.0))
    rise, sets = noon, noon
    for _ in range(_ROUNDS):
        rise = _crossing(mean_noon, rise, -1.0, latitude_deg, definition)
        sets = _crossing(mean_noon, sets, 1.0, latitude_deg, definition)
    return rise, sets, never


def _mean_noon(dates: NDArray[np.datetime64], longitude_deg: float) -> Array:
    """Return noon by the mean Sun [days since 2000-01-01 12:00 UTC]."""
    check("longitude", longitude_deg, -180.0, 180.0, "degrees")
    midday = (dates.astype("datetime64[D]") - np.datetime64(_J2000)).astype(np.float64)
    years = dates.astype("datetime64[Y]").astype(int) + 1970
    check("year", years, _FIRST_YEAR, _LAST_YEAR)
    return midday - longitude_deg / 360.0


def _crossing(
    mean_noon: Array, guess: Array, side: float, latitude_deg: float, definition: DayDefinition
) -> Array:
    """Return a better time of sunrise (side -1) or sunset (+1) with the Sun where it is then."""
    declination, equation = _sun(guess)
    cosine = np.clip(_half_day_cosine(latitude_deg, declination, definition), -1.0, 1.0)
    return mean_noon - equation + side * np.arccos(cosine) / (2.0 * np.pi)


def _half_day_cosine(latitude_deg: float, declination: Array, definition: DayDefinition) -> Array:
    """Return the cosine of the half day's hour angle; beyond ±1 the Sun stays up or down."""
    phi, delta = np.radians(latitude_deg), np.radians(declination)
    depth = np.sin(np.radians(definition.value))
    # At a pole the cosine of latitude is a rounding error; a tiny floor keeps the sign right.
    level = np.maximum(np.cos(phi) * np.cos(delta), 1e-9)
    return np.asarray((-depth - np.sin(phi) * np.sin(delta)) / level)


def _sun(days: Array) -> tuple[Array, Array]:
    """Return the Sun's declination [degree] and the equation of time [day]."""
    century = days / 36525.0
    mean_longitude = np.radians(280.46646 + century * (36000.76983 + 0.0003032 * century))
    anomaly = np.radians(357.52911 + century * (35999.05029 - 0.0001537 * century))
    centre = (
        (1.914602 - century * (0.004817 + 0.000014 * century)) * np.sin(anomaly)
        + (0.019993 - 0.000101 * century) * np.sin(2.0 * anomaly)
        + 0.000289 * np.sin(3.0 * anomaly)
    )
    node = np.radians(125.04 - 1934.136 * century)
    apparent = mean_longitude + np.radians(centre - 0.00569 - 0.00478 * np.sin(node))
    obliquity = np.radians(23.43929111 - 0.0130042 * century + 0.00256 * np.cos(node))
    declination = np.degrees(np.arcsin(np.sin(obliquity) * np.sin(apparent)))
    ascension = np.arctan2(np.cos(obliquity) * np.sin(apparent), np.cos(apparent))
    # 0.0057183 degree is the aberration that the mean longitude does not carry.
    ahead = mean_longitude - np.radians(0.0057183) - ascension
    turned = np.arctan2(np.sin(ahead), np.cos(ahead))
    return declination, turned / (2.0 * np.pi)


def _moment(days: float) -> datetime:
    return datetime(2000, 1, 1, 12, tzinfo=UTC) + timedelta(days=days)
