"""The one balance of heat of an enclosure: a warm half, a cool half, and the room around both.

Heat goes to the two halves by where the heater hangs; each half loses its share through walls,
vents and lid; between them warm air flows over and cool air back. Whoever speaks of the air of a
box asks this: ``air``, ``night``, ``watts``, ``plan`` and ``temps``.
"""

from dataclasses import dataclass
from math import inf

from calc.heat.enclosure import Enclosure
from calc.heat.halves import HOTTEST_AIR_C, MOST_RISE_K, Halves, Spot, end_flow
from calc.uncertainty import Doubt, Estimate, spread
from calc.validity import check

__all__ = [
    "MODEL_DOUBT",
    "MOST_RISE_K",
    "Ends",
    "HeatNeed",
    "Spot",
    "air_held",
    "end_flow",
    "ends_held",
    "likely_cool_end",
    "second_heater",
    "watts_to_hold",
]

MODEL_DOUBT = Doubt("floor, mesh, vents and draughts are assumed", 1.35, "enclosure_model")


@dataclass(frozen=True, slots=True)
class HeatNeed:
    """Watts to hold the cool end: in all with its range, and the two parts of the best value.

    ``warm_c`` is what the air of the warm end comes to then [degC].
    """

    total_w: Estimate
    walls_w: float
    air_w: float
    warm_c: float


@dataclass(frozen=True, slots=True)
class Ends:
    """The air of the cool and of the warm half [degC]."""

    cool_c: Estimate
    warm_c: Estimate


def watts_to_hold(
    enclosure: Enclosure, cool_c: float, room_c: float, spot: Spot = Spot.MIDDLE
) -> HeatNeed:
    """Return the heat that holds the air of the cool end at a temperature.

    P = L(Tc - Tr) + L(Tw - Tr),  L(x) = (UA x + ρ c Q(x) x) / 2
    ρ c Qe(Tw - Tc) (Tw - Tc) = L(Tc - Tr) - s P

    Parameters
    ----------
    enclosure : size, walls and lid
    cool_c : air of the cool half [degC], up to 50
    room_c : room air [degC], 0 or more, at most 40 K below the inside
    spot : where the heater hangs; in the middle both halves are alike

    Returns
    -------
    HeatNeed
        Heat [W]; 0 where the room is as warm.

    Notes
    -----
    Steady, and each half mixed by itself; what of the heat stays outside is not counted.
    Source: enclosure_model; doorway_exchange; ashrae_films; en12524; epstein1988; ashrae_stack.

    Examples
    --------
    >>> from calc.heat.enclosure import Lid, Material
    >>> box = Enclosure(1.2, 0.6, 0.6, Material.WOOD, Lid.SOLID)
    >>> round(watts_to_hold(box, 27.0, 22.0).walls_w)
    48
    """
    halves = Halves.of(enclosure, room_c)
    check("air inside", cool_c, -inf, min(HOTTEST_AIR_C, room_c + MOST_RISE_K), "degC")
    cool_k = max(cool_c - room_c, 0.0)
    watts = halves.watts(cool_k, spot)
    warm_k = halves.warm_rise_k(cool_k, spot.value * watts)
    walls_w = halves.walls_w(cool_k) + halves.walls_w(warm_k)
    air_w = halves.air_w(cool_k) + halves.air_w(warm_k)
    return HeatNeed(spread(walls_w + air_w, [MODEL_DOUBT]), walls_w, air_w, room_c + warm_k)


def second_heater(
    enclosure: Enclosure, cool_c: float, room_c: float, first_w: float, spot: Spot
) -> float:
    """Return the heat [W] in the middle that lifts the cool end to a temperature.

    L(Tc - Tr) + L(Tw - Tr) = P + E, with s P + E/2 of it in the cool half, solved for E

    Parameters
    ----------
    enclosure : size, walls and lid
    cool_c : wanted air of the cool half [degC], 0 to 40 K over the room
    room_c : room air [degC], 0 to 50
    first_w : heat that is inside already [W], 0 or more
    spot : where that heat comes from

    Returns
    -------
    float
        Heat [W]; 0 where what is there holds it.

    Notes
    -----
    Source: enclosure_model; doorway_exchange.

    Examples
    --------
    >>> round(second_heater(Enclosure(1.2, 0.6, 0.6), 25.0, 20.0, 75.0, Spot.WARM_END))
    76
    """
    halves = Halves.of(enclosure, room_c)
    check("air inside", cool_c, room_c, min(HOTTEST_AIR_C, room_c + MOST_RISE_K), "degC")
    return halves.more_w(cool_c - room_c, first_w, spot)


def ends_held(
    enclosure: Enclosure,
    watts: float,
    room_c: float,
    spot: Spot = Spot.MIDDLE,
    more_w: float = 0.0,
) -> Ends:
    """Return the air that a given heat holds at both ends.

    watts_to_hold(Tc) = P, solved for Tc; the range from P/1.35 and 1.35 P

    Parameters
    ----------
    enclosure : size, walls and lid
    watts : heat that ends up inside [W], 0 or more
    room_c : room air [degC], 0 to 50
    spot : where the heater hangs
    more_w : heat of a second heater in the middle [W], 0 or more

    Returns
    -------
    Ends
        Air of the cool and of the warm half [degC]; the cool one lies between room and warm one.

    Notes
    -----
    Raises OutsideModelError where the cool end would be 40 K over the room or more.
    Source: enclosure_model; doorway_exchange.

    Examples
    --------
    >>> from calc.heat.enclosure import Lid, Material
    >>> box = Enclosure(1.2, 0.6, 0.6, Material.WOOD, Lid.SOLID)
    >>> held = ends_held(box, 75.0, 22.0, Spot.WARM_END)
    >>> round(held.cool_c.best, 1), round(held.warm_c.best, 1)
    (27.6, 29.9)
    """
    halves = Halves.of(enclosure, room_c)
    doubt = MODEL_DOUBT.factor
    rises = [halves.rises_k(watts * f, spot, more_w * f) for f in (1.0 / doubt, 1.0, doubt)]
    # Where hardly any heat comes in, the root's last digits may stand out of order.
    cool, warm = (Estimate(*sorted(room_c + halves_k[end] for halves_k in rises)) for end in (0, 1))
    return Ends(cool, warm)


def likely_cool_end(
    enclosure: Enclosure, watts: float, room_c: float, spot: Spot, more_w: float = 0.0
) -> float:
    """Return the best value alone of the cool end [degC]: see ``ends_held``."""
    return room_c + Halves.of(enclosure, room_c).rises_k(watts, spot, more_w)[0]


def air_held(
    enclosure: Enclosure, watts: float, room_c: float, spot: Spot = Spot.MIDDLE
) -> Estimate:
    """Return the air [degC] that a given heat holds at the cool end: see ``ends_held``."""
    return ends_held(enclosure, watts, room_c, spot).cool_c
