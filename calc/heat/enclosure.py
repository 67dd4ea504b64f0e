"""The air of a whole enclosure: watts to hold it, and what given watts hold.

Walls lose through their room-air films more than through themselves, so a wooden box loses only
about a third less than glass. A mesh lid lets warm air out by itself. Doubt: 35 %.
"""

from dataclasses import dataclass
from enum import Enum, StrEnum
from math import inf, pi, sqrt

from calc.heat.air import KELVIN, dry_air
from calc.heat.convection import GRAVITY_M_S2
from calc.heat.tables import table
from calc.uncertainty import Doubt, Estimate, spread
from calc.validity import check

__all__ = [
    "INDOOR_FILM_W_M2K",
    "MODEL_DOUBT",
    "MOST_RISE_K",
    "Enclosure",
    "HeatNeed",
    "LampPlace",
    "Lid",
    "Material",
    "air_held",
    "level_opening_flow",
    "stack_flow",
    "wall_transmittance",
    "watts_to_hold",
]

INDOOR_FILM_W_M2K = 8.29
"""Still air and radiation on one face of an indoor wall. Source: ashrae_films."""

MODEL_DOUBT = Doubt("floor, mesh, vents and draughts are assumed", 1.35, "enclosure_model")

_MESH_OPEN = 0.6
_VENT_M2 = 0.005
_DISCHARGE = 0.65
_SMALLEST_M, _LARGEST_M = 0.15, 3.0
_COLDEST_ROOM_C, _HOTTEST_AIR_C = 0.0, 50.0

MOST_RISE_K = 40.0
"""How far over the room the air is answered."""


class Material(StrEnum):
    """What the walls are made of; keys of ``data/heat/walls.toml``."""

    GLASS = "glass"
    WOOD = "wood"
    PVC = "pvc"
    MELAMINE = "melamine"


class Lid(Enum):
    """How much of the lid is mesh; the value is that share."""

    SOLID = 0.0
    PART_MESH = 1 / 3
    FULL_MESH = 0.9


class LampPlace(Enum):
    """Where the lamp hangs; the value is the share of its heat that ends up inside.

    Source: lamp_split (what a lamp above the mesh gives to the air above it is lost).
    """

    INSIDE = 1.0
    ABOVE_MESH = 0.8


@dataclass(frozen=True, slots=True)
class Enclosure:
    """A box on a shelf: inside sizes [m], 0.15 to 3, walls and lid; the front is glass."""

    length_m: float
    depth_m: float
    height_m: float
    material: Material = Material.GLASS
    lid: Lid = Lid.FULL_MESH

    def __post_init__(self) -> None:
        for name in ("length_m", "depth_m", "height_m"):
            size = getattr(self, name)
            check("enclosure " + name.removesuffix("_m"), size, _SMALLEST_M, _LARGEST_M, "m")

    @property
    def open_lid_m2(self) -> float:
        """Free area of the mesh [m²]: wires and frame taken off."""
        return self.length_m * self.depth_m * self.lid.value * _MESH_OPEN

    def conductance_w_k(self) -> float:
        """Return what walls, floor and closed lid lose together [W/K]."""
        walls = table("walls")
        row = walls[self.material.value]
        wall = wall_transmittance(row["thickness_m"], row["conductivity_w_mk"])
        glass = walls[Material.GLASS.value]
        front = wall_transmittance(glass["thickness_m"], glass["conductivity_w_mk"])
        level_m2 = self.length_m * self.depth_m
        front_m2 = self.length_m * self.height_m
        other_m2 = front_m2 + 2.0 * self.depth_m * self.height_m
        roof_m2 = level_m2 - self.open_lid_m2
        floor = row["floor_w_m2k"] * level_m2
        return float(front * front_m2 + wall * (other_m2 + roof_m2) + floor)

    def air_loss_w(self, rise_k: float, room_c: float) -> float:
        """Return what air exchange loses [W] with the inside this much warmer than the room."""
        if rise_k <= 0.0:
            return 0.0
        if self.lid is Lid.SOLID:
            flow = stack_flow(_VENT_M2, self.height_m, room_c + rise_k, room_c)
        else:
            flow = level_opening_flow(self.open_lid_m2, room_c + rise_k, room_c)
        air = dry_air(room_c)
        return float(flow * air.density_kg_m3 * air.heat_capacity_j_kgk * rise_k)


@dataclass(frozen=True, slots=True)
class HeatNeed:
    """Watts to hold the air: in all with its range, and the two parts of the best value."""

    total_w: Estimate
    walls_w: float
    air_w: float


def wall_transmittance(thickness_m: float, conductivity_w_mk: float) -> float:
    """Return what a wall between two rooms of still air loses per area and kelvin.

    U = 1 / (2/h + t/k),  h = 8.29

    Parameters
    ----------
    thickness_m : wall [m], 0 or more
    conductivity_w_mk : conductivity [W/mK], above 0

    Returns
    -------
    float
        Transmittance [W/m²K].

    Notes
    -----
    The U of building glass has wind on one side and is too high for an enclosure in a room.
    Source: ashrae_films; en12524 for conductivities.

    Examples
    --------
    >>> round(wall_transmittance(0.006, 1.0), 2)
    4.04
    """
    return 1.0 / (2.0 / INDOOR_FILM_W_M2K + thickness_m / conductivity_w_mk)


def level_opening_flow(open_m2: float, inside_c: float, room_c: float) -> float:
    """Return the air exchanged through one level opening over a warm, otherwise tight box.

    Q = 0.055 sqrt(g ΔT/T) D^2.5,  D = sqrt(4A/π)

    Parameters
    ----------
    open_m2 : free area [m²], 0 or more
    inside_c, room_c : air inside and around [degC], inside the warmer

    Returns
    -------
    float
        Flow each way [m³/s].

    Notes
    -----
    For a thin opening and still rooms; a fan or a draught beats it.
    Source: epstein1988.

    Examples
    --------
    >>> round(1000 * level_opening_flow(0.10, 32.0, 22.0), 2)
    2.41
    """
    wide_m = sqrt(4.0 * open_m2 / pi)
    lightness = max(inside_c - room_c, 0.0) / (room_c + KELVIN)
    return 0.055 * sqrt(GRAVITY_M_S2 * lightness) * wide_m**2 * sqrt(wide_m)


def stack_flow(vent_m2: float, apart_m: float, inside_c: float, room_c: float) -> float:
    """Return the air that rises through two equal vents, one low and one high.

    Q = C A sqrt(2 g (H/2) ΔT/Ti),  C = 0.65

    Parameters
    ----------
    vent_m2 : free area of each vent [m²], 0 or more
    apart_m : height between them [m], 0 or more
    inside_c, room_c : air inside and around [degC], inside the warmer

    Returns
    -------
    float
        Flow [m³/s].

    Notes
    -----
    Takes the neutral level half way up. Source: ashrae_stack.

    Examples
    --------
    >>> round(1000 * stack_flow(0.01, 0.5, 32.0, 22.0), 2)
    2.61
    """
    lightness = max(inside_c - room_c, 0.0) / (inside_c + KELVIN)
    return _DISCHARGE * vent_m2 * sqrt(GRAVITY_M_S2 * apart_m * lightness)


def watts_to_hold(enclosure: Enclosure, inside_c: float, room_c: float) -> HeatNeed:
    """Return the heat that holds the mean air inside at a temperature.

    P = UA (Ti - Tr) + ρ c Q (Ti - Tr)

    Parameters
    ----------
    enclosure : size, walls and lid
    inside_c : mean air inside [degC], up to 50
    room_c : room air [degC], 0 or more, at most 40 K below the inside

    Returns
    -------
    HeatNeed
        Heat [W]; 0 where the room is as warm.

    Notes
    -----
    Steady and mixed air: the cool end is cooler than this mean, the warm end warmer.
    Source: enclosure_model; ashrae_films; en12524; epstein1988; ashrae_stack.

    Examples
    --------
    >>> box = Enclosure(1.2, 0.6, 0.6, Material.WOOD, Lid.SOLID)
    >>> round(watts_to_hold(box, 27.0, 22.0).walls_w)
    48
    """
    _check_room(room_c)
    check("air inside", inside_c, -inf, min(_HOTTEST_AIR_C, room_c + MOST_RISE_K), "degC")
    rise_k = max(inside_c - room_c, 0.0)
    walls_w = enclosure.conductance_w_k() * rise_k
    air_w = enclosure.air_loss_w(rise_k, room_c)
    return HeatNeed(spread(walls_w + air_w, [MODEL_DOUBT]), walls_w, air_w)


def air_held(enclosure: Enclosure, watts: float, room_c: float) -> Estimate:
    """Return the mean air that a given heat holds.

    watts_to_hold(Ti) = P, solved for Ti; the range from P/1.35 and 1.35 P

    Parameters
    ----------
    enclosure : size, walls and lid
    watts : heat that ends up inside [W], 0 or more
    room_c : room air [degC], 0 to 50

    Returns
    -------
    Estimate
        Mean air inside [degC].

    Notes
    -----
    Raises OutsideModelError where the air would be 40 K over the room or more.
    Source: enclosure_model.

    Examples
    --------
    >>> box = Enclosure(1.2, 0.6, 0.6, Material.WOOD, Lid.SOLID)
    >>> round(air_held(box, 60.0, 22.0).best, 1)
    27.5
    """
    from scipy.optimize import brentq

    _check_room(room_c)
    conductance = enclosure.conductance_w_k()

    def rise_for(heat_w: float) -> float:
        def unbalanced(rise_k: float) -> float:
            return conductance * rise_k + enclosure.air_loss_w(rise_k, room_c) - heat_w

        most_w = unbalanced(MOST_RISE_K) + heat_w
        check("heat inside", heat_w, 0.0, most_w, "W")
        return float(brentq(unbalanced, 0.0, MOST_RISE_K, xtol=1e-12))

    heats = spread(watts, [MODEL_DOUBT])
    return Estimate(*(room_c + rise_for(heat) for heat in (heats.low, heats.best, heats.high)))


def _check_room(room_c: float) -> None:
    check("room air", room_c, _COLDEST_ROOM_C, _HOTTEST_AIR_C, "degC")
