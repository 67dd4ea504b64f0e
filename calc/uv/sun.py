"""The open sun over a day: its UV index at any hour, and when it lies in a range."""

from dataclasses import dataclass
from math import cos, radians, sin

import numpy as np
from numpy.typing import NDArray

from calc.uncertainty import Estimate, spread
from calc.uv.dose import MID_MONTH_DAYS, OZONE_DU, SUN_DOUBTS, clear_sky_uvi, declination_rad
from calc.validity import check

__all__ = ["SunCourse", "sun_course"]

_DEGREES_AN_HOUR = 15.0
_NOON_H = 12.0


@dataclass(frozen=True, slots=True)
class SunCourse:
    """A clear day in the middle of a month, by sun time: at 12 h the sun is highest."""

    latitude_deg: float
    day_of_year: float

    def cos_zenith(self, hours: NDArray[np.float64]) -> NDArray[np.float64]:
        """Return the cosine of the sun's zenith angle [1] at hours of sun time [h]."""
        height, tilt = radians(self.latitude_deg), declination_rad(self.day_of_year)
        turned = np.cos(np.radians(_DEGREES_AN_HOUR * (hours - _NOON_H)))
        mu = sin(height) * sin(tilt) + cos(height) * cos(tilt) * turned
        return np.asarray(np.clip(mu, -1.0, 1.0))

    def uvi(self, hour: float) -> Estimate:
        """Return the UV index [1] at an hour of sun time [h], 0 to 24; cloud only lowers it."""
        best = clear_sky_uvi(self.cos_zenith(np.array(hour)), OZONE_DU)
        return spread(float(best), SUN_DOUBTS)

    def hours_within(self, low: float, high: float) -> tuple[tuple[float, float], ...]:
        """Return when the UV index lies in a range [1]: from and to [h], none, one or two spans."""
        minutes = np.arange(0.0, 24.0 * 60.0 + 1.0) / 60.0
        uvi = clear_sky_uvi(self.cos_zenith(minutes), OZONE_DU)
        inside = np.concatenate(([False], (uvi >= low) & (uvi <= high) & (uvi > 0.0), [False]))
        steps = np.flatnonzero(inside[1:] != inside[:-1])
        return tuple(
            (float(minutes[start]), float(minutes[end - 1]))
            for start, end in zip(steps[::2], steps[1::2], strict=True)
        )


def sun_course(latitude_deg: float, month: int) -> SunCourse:
    """Return the sun's course over a clear day in the middle of a month.

    μ(t) = sin φ sin δ + cos φ cos δ cos(15° (t - 12 h)); UVI = 12.5 μ^2.42 (Ω/300)^-1.23

    Parameters
    ----------
    latitude_deg : latitude, φ [degree], -90 to 90, north positive
    month : 1 to 12

    Returns
    -------
    SunCourse
        UV index [1] at any hour of sun time [h].

    Notes
    -----
    Level ground at sea level with 300 DU of ozone; height adds, cloud, trees and haze take.
    Source: madronich2007; cooper1969; klein1977.

    Examples
    --------
    >>> june = sun_course(40.0, 6)
    >>> round(june.uvi(12.0).best, 1), round(june.uvi(8.0).best, 1)
    (11.2, 3.7)
    """
    check("latitude", latitude_deg, -90.0, 90.0, "degrees")
    check("month", month, 1, 12, "")
    return SunCourse(latitude_deg, MID_MONTH_DAYS[month - 1])
