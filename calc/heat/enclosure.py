"""What an enclosure is built of, and how its walls, lid and vents let warmth out.

Walls lose through their room-air films more than through themselves, so a wooden box loses only
about a third less than glass. A mesh lid lets warm air out by itself. What the air comes to is
reckoned in ``box``.
"""

from dataclasses import dataclass
from enum import Enum, StrEnum
from math import hypot, pi, sqrt

from calc.heat.air import KELVIN, dry_air
from calc.heat.convection import GRAVITY_M_S2
from calc.heat.tables import table
from calc.validity import check

__all__ = [
    "INDOOR_FILM_W_M2K",
    "Enclosure",
    "LampPlace",
    "Lid",
    "Material",
    "level_opening_flow",
    "stack_flow",
    "upright_opening_flow",
    "wall_transmittance",
]

INDOOR_FILM_W_M2K = 8.29
"""Still air and radiation on one face of an indoor wall. Source: ashrae_films."""

_MESH_OPEN = 0.6
_VENT_M2 = 0.005
_DISCHARGE = 0.65
_SMALLEST_M, _LARGEST_M = 0.15, 3.0


class Material(StrEnum):
    """What the walls are made of; keys of ``data/heat/walls.toml``. ``MESH``: all sides of it."""

    GLASS = "glass"
    WOOD = "wood"
    PVC = "pvc"
    MELAMINE = "melamine"
    MESH = "mesh"


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
    """A box on a shelf: inside sizes [m], 0.15 to 3, walls and lid; the front is glass.

    A cage of mesh has a mesh front too; only its floor is closed.
    """

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
    def is_open(self) -> bool:
        """Say whether all sides are mesh, so that its air is nearly the room's."""
        return self.material is Material.MESH

    @property
    def open_lid_m2(self) -> float:
        """Free area of the mesh [m²]: wires and frame taken off."""
        return self.length_m * self.depth_m * self.lid.value * _MESH_OPEN

    def conductance_w_k(self) -> float:
        """Return what walls, floor and lid lose together [W/K], but for the air that leaves.

        The mesh counts as a wall of no thickness: what shines out through it is lost.
        """
        walls = table("walls")
        row = walls[self.material.value]
        wall = wall_transmittance(row["thickness_m"], row["conductivity_w_mk"])
        glass = walls[Material.GLASS.value]
        front = wall
        if not self.is_open:
            front = wall_transmittance(glass["thickness_m"], glass["conductivity_w_mk"])
        mesh = wall_transmittance(0.0, glass["conductivity_w_mk"])
        level_m2 = self.length_m * self.depth_m
        front_m2 = self.length_m * self.height_m
        other_m2 = front_m2 + 2.0 * self.depth_m * self.height_m
        roof_m2 = level_m2 - self.open_lid_m2
        floor = row["floor_w_m2k"] * level_m2
        lid = wall * roof_m2 + mesh * self.open_lid_m2
        return float(front * front_m2 + wall * other_m2 + lid + floor)

    def air_flows_m3_s(self, rise_k: float, room_c: float) -> tuple[float, float]:
        """Return the air that flows through and that which sinks in over a mesh [m³/s].

        Each box has a low vent; the warm air leaves by a high one or by the mesh. Together they
        make the root of the sum of their squares. Through mesh sides it leaves above and comes in
        below, all round.
        """
        high_m2 = _VENT_M2 + self.open_lid_m2
        # Two unequal vents pass what two equal ones of this size would.
        equal_m2 = sqrt(2.0) * _VENT_M2 * high_m2 / hypot(_VENT_M2, high_m2)
        inside_c = room_c + rise_k
        through = stack_flow(equal_m2, self.height_m, inside_c, room_c)
        if self.is_open:
            around_m = 2.0 * (self.length_m + self.depth_m) * _MESH_OPEN
            through = upright_opening_flow(around_m, self.height_m, rise_k, room_c)
        return through, level_opening_flow(self.open_lid_m2, inside_c, room_c)

    def air_loss_w(self, rise_k: float, room_c: float) -> float:
        """Return what air exchange loses [W] with the inside this much warmer than the room."""
        if rise_k <= 0.0:
            return 0.0
        air = dry_air(room_c)
        flow = hypot(*self.air_flows_m3_s(rise_k, room_c))
        return float(flow * air.density_kg_m3 * air.heat_capacity_j_kgk * rise_k)


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


def upright_opening_flow(width_m: float, height_m: float, rise_k: float, around_c: float) -> float:
    """Return the air exchanged through one upright opening between warmer and cooler air.

    Q = (C/3) W H sqrt(g H ΔT/T),  C = 0.65

    Parameters
    ----------
    width_m, height_m : free size [m], 0 or more
    rise_k : how much warmer one side is [K], 0 or more
    around_c : the cooler air [degC]

    Returns
    -------
    float
        Flow each way [m³/s].

    Notes
    -----
    Out above, in below. Source: doorway_exchange.

    Examples
    --------
    >>> round(1000.0 * upright_opening_flow(0.45, 0.45, 2.0, 22.0), 1)
    7.6
    """
    fall = sqrt(GRAVITY_M_S2 * height_m * max(rise_k, 0.0) / (around_c + KELVIN))
    return _DISCHARGE / 3.0 * width_m * height_m * fall


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
