"""A first wattage for a lamp that has not been bought yet: an honest, wide range.

Lamps of one wattage and distance differ by tens of degrees, so the answer is a range of steps
to buy from, with its reasons, and never a forecast of the surface.
"""

from dataclasses import dataclass
from enum import StrEnum
from functools import cache, lru_cache
from math import log, pi

import numpy as np
from numpy.typing import NDArray

from calc.heat.air import Real
from calc.heat.box import MODEL_DOUBT
from calc.heat.convection import Correlation, film_coefficient
from calc.heat.enclosure import Enclosure, LampPlace
from calc.heat.halves import MOST_RISE_K, Halves, Spot
from calc.heat.radiation import net_exchange
from calc.heat.tables import table
from calc.heat.wattages import next_smaller, steps_between, steps_sold
from calc.uncertainty import Estimate
from calc.validity import check

__all__ = ["LEAST_RISE_K", "FirstWattage", "LampShape", "beam_irradiance", "first_wattage"]

_DRAWS = 512
_STONE_LENGTH_M = 0.05
LEAST_RISE_K = 8.0
"""Least that a surface is wanted over the room [K]: a lamp for less would be none."""
_NEAREST_M, _FARTHEST_M = 0.10, 1.0
# The air by two small lamps tells it for all: between walls and vents it is nearly a power.
_SMALL_W, _LARGER_W = 10.0, 40.0
_ROUNDS = 4


class LampShape(StrEnum):
    """How wide a lamp throws its heat."""

    WIDE_DOME = "wide_dome"
    FLOOD = "flood"
    NARROW = "narrow"


@dataclass(frozen=True, slots=True)
class FirstWattage:
    """The wattage to expect [W], the steps inside it, and what to buy: one and the one below."""

    watts: Estimate
    steps_w: tuple[float, ...]
    buy_w: tuple[float, ...]


def beam_irradiance(
    watts: Real, distance_m: Real | float, half_angle_deg: Real, in_beam: Real
) -> Real:
    """Return the irradiance in the middle of a beam whose intensity falls as a power of cosine.

    E = P f (m + 1) / (2π d²),  m = ln 0.5 / ln cos(half angle)

    Parameters
    ----------
    watts : electrical power [W], above 0
    distance_m : distance from where the beam begins [m], above 0
    half_angle_deg : angle from the axis to half intensity [degree], 1 to 89
    in_beam : share of the power in the beam [1], 0 to 1

    Returns
    -------
    float or ndarray
        Irradiance [W/m²].

    Notes
    -----
    A half angle of 60 degrees is a matt disc. Overstates narrow beams: real lamps spill.
    Source: lamp_beams.

    Examples
    --------
    >>> round(float(beam_irradiance(75.0, 0.25, 60.0, 0.65)))
    248
    """
    order = np.log(0.5) / np.log(np.cos(np.radians(half_angle_deg)))
    irradiance: Real = watts * in_beam * (order + 1.0) / (2.0 * pi * distance_m**2)
    return irradiance


def first_wattage(
    shape: LampShape,
    room_c: float,
    wanted_c: float,
    distance_m: float,
    enclosure: Enclosure | None = None,
    place: LampPlace = LampPlace.INSIDE,
) -> FirstWattage:
    """Return the range of wattages from which to buy the first lamp.

    P = q(Ts, Ta) 2π (d + d0)² / (a f (m + 1)) over 512 draws of the unknowns; 5, 50 and 95 %
    Ta is the air that P itself holds at the warm end of a box, solved together

    Parameters
    ----------
    shape : how wide the lamp throws its heat
    room_c : room air [degC], 10 to 35; without a box the air over the spot is 0 to 6 K warmer
    wanted_c : wanted surface [degC], 8 K over the room to 65
    distance_m : lamp face to surface [m], 0.10 to 1.0
    enclosure : the box, where it is known
    place : of the lamp: above a mesh a part of its heat does not warm the box

    Returns
    -------
    FirstWattage
        Wattage [W] and the steps to buy.

    Notes
    -----
    Wide because shape, reflector, stone and air are not known: a lamp of the same wattage can be
    20 K cooler or 30 K hotter. Raises OutsideModelError outside the ranges.
    Source: lamp_beams; mcadams1985; lamp_steps; enclosure_model for the air of a box.

    Examples
    --------
    >>> first_wattage(LampShape.WIDE_DOME, 22.0, 39.4, 0.25).buy_w
    (75.0, 60.0)
    """
    check("room air", room_c, 10.0, 35.0, "degC")
    check("wanted surface", wanted_c, room_c + LEAST_RISE_K, 65.0, "degC")
    check("lamp distance", distance_m, _NEAREST_M, _FARTHEST_M, "m")
    draws = _draws(shape)
    per_watt = draws.flux_per_watt(distance_m)
    needed_w = draws.flux_to_hold(room_c + draws.air_warmer_k, wanted_c) / per_watt
    if enclosure is not None:
        small_k, power = _warm_end(enclosure, room_c, place)
        for _ in range(_ROUNDS):
            warm_k = np.minimum(small_k * (needed_w / _SMALL_W) ** power, MOST_RISE_K)
            air_k = np.minimum(draws.box_factor * warm_k, wanted_c - room_c - 1.0)
            again_w = draws.flux_to_hold(room_c + air_k, wanted_c) / per_watt
            needed_w = np.sqrt(needed_w * again_w)
    low, best, high = np.quantile(needed_w, [0.05, 0.5, 0.95]).tolist()
    nearest = min(steps_sold(), key=lambda step: abs(log(step / best)))
    # A step only a little smaller would not be worth buying.
    below = next_smaller(0.85 * nearest)
    return FirstWattage(
        watts=Estimate(low, best, high),
        steps_w=steps_between(low, high),
        buy_w=(nearest,) if below is None else (nearest, below),
    )


@lru_cache(maxsize=256)
def _warm_end(enclosure: Enclosure, room_c: float, place: LampPlace) -> tuple[float, float]:
    """Return how far the air of the warm end comes over the room by a small lamp [K], its power."""
    halves = Halves.of(enclosure, room_c)
    small_k, larger_k = (
        halves.rises_k(watts * place.value, Spot.WARM_END)[1] for watts in (_SMALL_W, _LARGER_W)
    )
    return small_k, log(larger_k / small_k) / log(_LARGER_W / _SMALL_W)


@dataclass(frozen=True, slots=True)
class _Draws:
    """What is not known about a lamp and its stone, drawn evenly from its ranges."""

    half_angle_deg: NDArray[np.float64]
    in_beam: NDArray[np.float64]
    spreading: NDArray[np.float64]
    tape_m: NDArray[np.float64]
    behind_face_m: NDArray[np.float64]
    absorbed: NDArray[np.float64]
    emissivity: NDArray[np.float64]
    below_w_m2k: NDArray[np.float64]
    air_warmer_k: NDArray[np.float64]
    film_factor: NDArray[np.float64]
    box_factor: NDArray[np.float64]

    def flux_to_hold(self, air_c: NDArray[np.float64], wanted_c: float) -> NDArray[np.float64]:
        """Return the heat [W/m²] that a wide spot would absorb where this one is as wanted."""
        flat_c = air_c + (wanted_c - air_c) / self.spreading
        film = film_coefficient(flat_c, air_c, _STONE_LENGTH_M, Correlation.HOT_SIDE_UP)
        convected = (film * self.film_factor + self.below_w_m2k) * (flat_c - air_c)
        return convected + net_exchange(self.emissivity, flat_c, air_c)

    def flux_per_watt(self, distance_m: float) -> NDArray[np.float64]:
        """Return the heat absorbed per watt of lamp [1/m²]."""
        away_m = distance_m + self.tape_m + self.behind_face_m
        one_watt = np.ones_like(away_m)
        return self.absorbed * beam_irradiance(one_watt, away_m, self.half_angle_deg, self.in_beam)


@cache
def _draws(shape: LampShape) -> _Draws:
    beam = table("lamp_shapes")[shape.value]
    ranges = (
        beam["half_angle_deg"],
        beam["in_beam"],
        beam["spreading"],
        (-0.02, 0.02),
        (0.0, 0.08),
        (0.79, 0.90),
        (0.67, 0.97),
        (0.0, 6.0),
        (0.0, 6.0),
        (0.6, 1.0),
        (1.0 / MODEL_DOUBT.factor, MODEL_DOUBT.factor),
    )
    # A fixed seed, so that the same question always gets the same answer.
    random = np.random.default_rng(1)
    return _Draws(*(random.uniform(low, high, _DRAWS) for low, high in ranges))
