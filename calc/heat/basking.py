"""From one reading under a lamp to the wanted surface: move it, change it or dim it.

Everything scales the rise of the surface over its local air, never the thermometer's number.
The range comes from how heat loss grows with warmth and from where a lamp's beam begins.
The local air is taken to stay as it was, so every answer ends in measuring again.
"""

from collections.abc import Iterable
from dataclasses import dataclass
from enum import Enum, auto

from calc.heat.wattages import next_step_up, steps_sold
from calc.uncertainty import Estimate
from calc.validity import check

__all__ = [
    "MOST_DIMMING",
    "MOST_W",
    "SCALINGS",
    "SMALLEST_RISE_K",
    "DimmerChange",
    "DimmerVerdict",
    "Reading",
    "Scaling",
    "WattageStep",
    "check_power",
    "dimmer_for",
    "distance_for",
    "surface_at",
    "wattage_steps",
    "watts_for",
]

SMALLEST_RISE_K = 2.0
LARGEST_RISE_K = 80.0
MOST_POWER = 4.0
MOST_W = 1000.0
"""Most watts that one lamp is taken for [W]: our own bound, far beyond what is sold."""
MOST_DIMMING = 0.20
"""Most that a dimmer should take off [1]. Source: common_practice."""
_NEAREST_M, _FARTHEST_M = 0.05, 2.0
_COLDEST_AIR_C, _HOTTEST_AIR_C = 0.0, 60.0


def check_power(watts: float) -> None:
    """Raise OutsideModelError where no lamp that is sold has such a power [W]."""
    check("lamp power", watts, 0.0, MOST_W, "W", is_open_low=True)


@dataclass(frozen=True, slots=True)
class Scaling:
    """One view of how the rise follows the lamp.

    rise = K (P s / (d + d0)²)^p, with P watts, s the dimmer's share of them and d the distance.
    ``exponent`` is p, ``offset_m`` is d0: how far behind the lamp's face the beam begins.
    """

    exponent: float
    offset_m: float

    def rise_k(self, reading: "Reading", distance_m: float, power: float = 1.0) -> float:
        """Return the rise [K] at a new distance and a new power (a factor on the present one)."""
        before, after = reading.distance_m + self.offset_m, distance_m + self.offset_m
        return reading.rise_k * float((power * (before / after) ** 2) ** self.exponent)

    def distance_m(self, reading: "Reading", rise_k: float) -> float:
        """Return the distance [m] that gives a rise; below 0 where none does."""
        before = reading.distance_m + self.offset_m
        stretch = (reading.rise_k / rise_k) ** (1.0 / (2.0 * self.exponent))
        return float(before * stretch - self.offset_m)

    def power(self, reading: "Reading", rise_k: float, distance_m: float | None = None) -> float:
        """Return the power that gives a rise, as a factor on the present one."""
        away = reading.distance_m if distance_m is None else distance_m
        farther = (away + self.offset_m) / (reading.distance_m + self.offset_m)
        return float(farther**2 * (rise_k / reading.rise_k) ** (1.0 / self.exponent))


SCALINGS = (Scaling(1.0, 0.0), Scaling(0.85, 0.05), Scaling(0.83, 0.10))
"""The plain inverse square, the likely case, and the strongest softening. Source: rise_scaling."""


@dataclass(frozen=True, slots=True)
class Reading:
    """What a keeper measured after the lamp had been on for two hours or more.

    Surface and the air beside it [degC], air 0 to 60; lamp face to surface [m], 0.05 to 2.
    """

    surface_c: float
    air_c: float
    distance_m: float

    def __post_init__(self) -> None:
        check("air beside the spot", self.air_c, _COLDEST_AIR_C, _HOTTEST_AIR_C, "degC")
        check("rise over the air", self.rise_k, SMALLEST_RISE_K, LARGEST_RISE_K, "K")
        _check_distance(self.distance_m)

    @property
    def rise_k(self) -> float:
        """How far the surface is above its local air [K]."""
        return self.surface_c - self.air_c

    def wanted_rise_k(self, wanted_c: float) -> float:
        """Return the wanted rise [K]; too small a one is outside the model."""
        rise = wanted_c - self.air_c
        check("wanted rise", rise, SMALLEST_RISE_K, LARGEST_RISE_K, "K")
        return rise


def distance_for(reading: Reading, wanted_c: float) -> Estimate:
    """Return the lamp distance that gives the wanted surface.

    d2 = (d1 + d0) (rise1 / rise2)^(1/2p) - d0

    Parameters
    ----------
    reading : what was measured
    wanted_c : wanted surface [degC], 2 to 80 K above the local air

    Returns
    -------
    Estimate
        Lamp face to surface [m]. The far end is the careful one, both ways.

    Notes
    -----
    Raises OutsideModelError where no distance of 5 cm or more can give it.
    Source: rise_scaling.

    Examples
    --------
    >>> found = distance_for(Reading(42.0, 22.0, 0.30), 37.0)
    >>> round(found.low, 3), round(found.high, 3)
    (0.346, 0.376)
    """
    rise = reading.wanted_rise_k(wanted_c)
    found = _ordered(scaling.distance_m(reading, rise) for scaling in SCALINGS)
    _check_distance(found.best)
    return Estimate(max(found.low, _NEAREST_M), found.best, found.high)


def surface_at(reading: Reading, distance_m: float, power: float = 1.0) -> Estimate:
    """Return the surface to expect after moving the lamp or changing its power.

    Ts = Ta + rise1 (power (d1 + d0)²/(d2 + d0)²)^p

    Parameters
    ----------
    reading : what was measured
    distance_m : new distance [m], 0.05 to 2
    power : new power as a factor on the present one [1], above 0 to 4

    Returns
    -------
    Estimate
        Surface temperature [degC].

    Notes
    -----
    Takes the local air as unchanged. Source: rise_scaling.

    Examples
    --------
    >>> round(surface_at(Reading(42.0, 22.0, 0.30), 0.30, power=60 / 75).best, 1)
    38.5
    """
    _check_distance(distance_m)
    check("change of power", power, 0.0, MOST_POWER, is_open_low=True)
    rises = (scaling.rise_k(reading, distance_m, power) for scaling in SCALINGS)
    return _ordered(reading.air_c + rise for rise in rises)


def watts_for(
    reading: Reading, watts: float, wanted_c: float, distance_m: float | None = None
) -> Estimate:
    """Return the wattage that gives the wanted surface, from the same place or another.

    P2 = P1 (rise2 / rise1)^(1/p) ((d2 + d0) / (d1 + d0))²

    Parameters
    ----------
    reading : what was measured
    watts : power of the lamp as it was measured, dimmed or not [W], above 0 to 1000
    wanted_c : wanted surface [degC], 2 to 80 K above the local air
    distance_m : new distance [m], 0.05 to 2; the present one where not given

    Returns
    -------
    Estimate
        Wattage [W] of a lamp of the same shape.

    Notes
    -----
    Another lamp shape breaks it: lamps of one wattage differ twofold in the area they warm.
    Source: rise_scaling; davis2008.

    Examples
    --------
    >>> round(watts_for(Reading(42.0, 22.0, 0.30), 75.0, 38.5).best)
    60
    """
    check_power(watts)
    rise = reading.wanted_rise_k(wanted_c)
    return _ordered(watts * scaling.power(reading, rise, distance_m) for scaling in SCALINGS)


@dataclass(frozen=True, slots=True)
class WattageStep:
    """A lamp that is sold, and the surface [degC] to expect from it."""

    watts: float
    surface_c: Estimate


def wattage_steps(
    reading: Reading, watts: float, wanted_c: float, distance_m: float | None = None
) -> tuple[WattageStep, ...]:
    """Return the steps sold just below and just above the wanted wattage, cooler first.

    As for ``watts_for``; a step of more than four times the present power is left out.
    Source: lamp_steps; rise_scaling.
    """
    away_m = reading.distance_m if distance_m is None else distance_m
    wanted_w = watts_for(reading, watts, wanted_c, away_m).best
    below = [step for step in steps_sold() if step <= wanted_w][-1:]
    above = [step for step in steps_sold() if step > wanted_w][:1]
    return tuple(
        WattageStep(step, surface_at(reading, away_m, step / watts))
        for step in (*below, *above)
        if step / watts <= MOST_POWER
    )


class DimmerVerdict(Enum):
    """Whether the dimmer is the right tool for this change."""

    WITHIN = auto()
    TOO_MUCH = auto()
    BEYOND_FULL = auto()


@dataclass(frozen=True, slots=True)
class DimmerChange:
    """A new dimmer setting as a share of the lamp's full power [1].

    ``smaller_w`` is the smaller lamp [W] that would need little or no dimming, where one is sold.
    """

    setting: Estimate
    verdict: DimmerVerdict
    smaller_w: float | None


def dimmer_for(
    reading: Reading, wanted_c: float, setting: float = 1.0, watts: float | None = None
) -> DimmerChange:
    """Return the dimmer setting that gives the wanted surface.

    s2 = s1 (rise2 / rise1)^(1/p)

    Parameters
    ----------
    reading : what was measured
    wanted_c : wanted surface [degC], 2 to 80 K above the local air
    setting : present share of full power [1], above 0 to 1
    watts : lamp's full wattage [W], above 0 to 1000, to name a smaller one

    Returns
    -------
    DimmerChange
        New share [1], and whether it is below four fifths: then a smaller lamp is better.

    Notes
    -----
    A dimmer's own scale is not power: go by the thermometer, and by small turns.
    Source: rise_scaling; common_practice for the limit of a fifth.

    Examples
    --------
    >>> dimmer_for(Reading(42.0, 22.0, 0.30), 34.0, watts=75.0).smaller_w
    50.0
    """
    check("dimmer setting", setting, 0.0, 1.0, is_open_low=True)
    if watts is not None:
        check_power(watts)
    rise = reading.wanted_rise_k(wanted_c)
    found = _ordered(setting * scaling.power(reading, rise) for scaling in SCALINGS)
    if found.best > 1.0:
        verdict = DimmerVerdict.BEYOND_FULL
    elif found.best < 1.0 - MOST_DIMMING:
        verdict = DimmerVerdict.TOO_MUCH
    else:
        verdict = DimmerVerdict.WITHIN
    enough_w = None if watts is None else next_step_up(found.best * watts)
    is_smaller = enough_w is not None and watts is not None and enough_w < watts
    return DimmerChange(found, verdict, enough_w if is_smaller else None)


def _check_distance(distance_m: float) -> None:
    check("lamp distance", distance_m, _NEAREST_M, _FARTHEST_M, "m")


def _ordered(values: Iterable[float]) -> Estimate:
    """Return the envelope of the scalings' values, with the likely scaling's as the best."""
    every = tuple(values)
    return Estimate(min(every), every[1], max(every))
