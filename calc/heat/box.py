"""The one balance of heat of an enclosure: a warm half, a cool half, and the room around both.

Heat goes to the two halves by where the heater hangs; each half loses its share through walls,
vents and lid; between them warm air flows over and cool air back. Whoever speaks of the air of a
box asks this: ``air``, ``night``, ``watts``, ``plan`` and ``temps``.
"""

from dataclasses import dataclass
from enum import Enum
from math import inf, sqrt

from calc.heat.air import KELVIN, dry_air
from calc.heat.convection import GRAVITY_M_S2
from calc.heat.enclosure import Enclosure
from calc.roots import rising_root
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
    "watts_to_hold",
]

MODEL_DOUBT = Doubt("floor, mesh, vents and draughts are assumed", 1.35, "enclosure_model")

MOST_RISE_K = 40.0
"""How far over the room the air is answered."""

_DISCHARGE = 0.65
_COLDEST_ROOM_C, _HOTTEST_AIR_C = 0.0, 50.0


class Spot(Enum):
    """Where along the box a heater hangs; the value is the share that warms the cool half.

    A lamp shines most of its heat on what is under it. Source: enclosure_model.
    """

    WARM_END = 0.1
    INWARD = 0.3
    MIDDLE = 0.5


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


@dataclass(frozen=True, slots=True)
class _Halves:
    """What a half loses, and what flows between the two, for one enclosure in one room."""

    enclosure: Enclosure
    room_c: float
    conductance_w_k: float
    volume_heat_j_m3k: float
    over_w_k: float

    @classmethod
    def of(cls, enclosure: Enclosure, room_c: float) -> "_Halves":
        """Return the halves of an enclosure; a room beyond the model is refused."""
        check("room air", room_c, _COLDEST_ROOM_C, _HOTTEST_AIR_C, "degC")
        air = dry_air(room_c)
        heat = air.density_kg_m3 * air.heat_capacity_j_kgk
        over = heat * end_flow(enclosure, 1.0, room_c)
        return cls(enclosure, room_c, enclosure.conductance_w_k(), heat, over)

    def walls_w(self, rise_k: float) -> float:
        """Return what one half loses through its walls [W]."""
        return self.conductance_w_k * rise_k / 2.0

    def air_w(self, rise_k: float) -> float:
        """Return what one half loses with the air that leaves [W]."""
        flow = self.enclosure.air_flow_m3_s(rise_k, self.room_c) if rise_k > 0.0 else 0.0
        return self.volume_heat_j_m3k * flow * rise_k / 2.0

    def loss_w(self, rise_k: float) -> float:
        """Return what one half loses in all [W]."""
        return self.walls_w(rise_k) + self.air_w(rise_k)

    def apart_k(self, across_w: float) -> float:
        """Return how much warmer the warm half is where so much [W] flows over to the cool one."""
        if across_w <= 0.0:
            return 0.0
        return float((across_w / self.over_w_k) ** (2.0 / 3.0))

    def warm_rise_k(self, cool_rise_k: float, to_cool_w: float) -> float:
        """Return the rise of the warm half from that of the cool one and the heat it is given."""
        return cool_rise_k + self.apart_k(self.loss_w(cool_rise_k) - to_cool_w)

    def watts(self, cool_rise_k: float, spot: Spot) -> float:
        """Return the heat [W] that holds the cool half so far over the room."""
        cool_w = self.loss_w(cool_rise_k)
        if spot is Spot.MIDDLE or cool_w <= 0.0:
            return 2.0 * cool_w

        def too_much(watts: float) -> float:
            warm = self.warm_rise_k(cool_rise_k, spot.value * watts)
            return watts - cool_w - self.loss_w(warm)

        return rising_root(too_much, 2.0 * cool_w, cool_w / spot.value)

    def rises_k(self, watts: float, spot: Spot) -> tuple[float, float]:
        """Return how far the cool and the warm half come over the room [K]."""
        to_cool_w = spot.value * watts

        def too_much(cool_rise_k: float) -> float:
            warm = self.warm_rise_k(cool_rise_k, to_cool_w)
            return self.loss_w(cool_rise_k) + self.loss_w(warm) - watts

        if not watts >= 0.0 or too_much(MOST_RISE_K) < 0.0:
            check("heat inside", watts, 0.0, self.watts(MOST_RISE_K, spot), "W")
            cool = MOST_RISE_K
        else:
            cool = rising_root(too_much, 0.0, MOST_RISE_K) if watts > 0.0 else 0.0
        return cool, self.warm_rise_k(cool, to_cool_w)


def end_flow(enclosure: Enclosure, apart_k: float, room_c: float) -> float:
    """Return the air that flows over from the warm half to the cool one, and back below.

    Q = (C/3) D H sqrt(g H ΔT/T),  C = 0.65

    Parameters
    ----------
    enclosure : whose depth D and height H make the opening between the halves
    apart_k : how much warmer the warm half is [K], 0 or more
    room_c : room air [degC]

    Returns
    -------
    float
        Flow each way [m³/s].

    Notes
    -----
    For a box that is open from end to end; what fills it lets the ends lie further apart.
    Source: doorway_exchange; enclosure_model.

    Examples
    --------
    >>> round(1000.0 * end_flow(Enclosure(1.2, 0.6, 0.6), 2.0, 22.0), 1)
    15.6
    """
    high_m = enclosure.height_m
    fall = sqrt(GRAVITY_M_S2 * high_m * max(apart_k, 0.0) / (room_c + KELVIN))
    return _DISCHARGE / 3.0 * enclosure.depth_m * high_m * fall


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
    halves = _Halves.of(enclosure, room_c)
    check("air inside", cool_c, -inf, min(_HOTTEST_AIR_C, room_c + MOST_RISE_K), "degC")
    cool_k = max(cool_c - room_c, 0.0)
    watts = halves.watts(cool_k, spot)
    warm_k = halves.warm_rise_k(cool_k, spot.value * watts)
    walls_w = halves.walls_w(cool_k) + halves.walls_w(warm_k)
    air_w = halves.air_w(cool_k) + halves.air_w(warm_k)
    return HeatNeed(spread(walls_w + air_w, [MODEL_DOUBT]), walls_w, air_w, room_c + warm_k)


def ends_held(enclosure: Enclosure, watts: float, room_c: float, spot: Spot = Spot.MIDDLE) -> Ends:
    """Return the air that a given heat holds at both ends.

    watts_to_hold(Tc) = P, solved for Tc; the range from P/1.35 and 1.35 P

    Parameters
    ----------
    enclosure : size, walls and lid
    watts : heat that ends up inside [W], 0 or more
    room_c : room air [degC], 0 to 50
    spot : where the heater hangs

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
    (28.0, 29.5)
    """
    halves = _Halves.of(enclosure, room_c)
    heats = spread(watts, [MODEL_DOUBT])
    rises = [halves.rises_k(heat, spot) for heat in (heats.low, heats.best, heats.high)]
    cool, warm = (Estimate(*(room_c + rise for rise in end)) for end in zip(*rises, strict=True))
    return Ends(cool, warm)


def air_held(
    enclosure: Enclosure, watts: float, room_c: float, spot: Spot = Spot.MIDDLE
) -> Estimate:
    """Return the air [degC] that a given heat holds at the cool end: see ``ends_held``."""
    return ends_held(enclosure, watts, room_c, spot).cool_c
