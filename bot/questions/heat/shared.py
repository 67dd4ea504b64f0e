"""What several questions about heat share: how a reading and a target are told, which cautions."""

from collections.abc import Collection
from dataclasses import dataclass
from enum import Enum, auto

from bot.facts import Say, Temp, degrees
from bot.language.sizes import Size
from bot.layered import Care, Weight
from calc.animal import Target
from calc.heat.enclosure import Enclosure, LampPlace, Lid, Material
from calc.heat.first_wattage import LampShape
from calc.uncertainty import Estimate

__all__ = [
    "AFTER_A_CHANGE",
    "HEAT_CARE",
    "LAMP_PLACES",
    "LAMP_SHAPES",
    "VET_CARE",
    "WARM_THE_ROOM",
    "Box",
    "Untold",
    "aimed",
    "box_asked",
    "box_told",
    "has_best",
    "read",
]

LAMP_PLACES = {"inside": LampPlace.INSIDE, "above": LampPlace.ABOVE_MESH}
"""Places as the options name them."""

LAMP_SHAPES = {
    "wide dome": LampShape.WIDE_DOME,
    "flood": LampShape.FLOOD,
    "narrow": LampShape.NARROW,
}
"""Shapes of lamps as the options name them."""

_LIDS = {"solid": Lid.SOLID, "part mesh": Lid.PART_MESH, "full mesh": Lid.FULL_MESH}

AFTER_A_CHANGE = Say("step-after-change")
WARM_THE_ROOM = Say("step-warm-room")
VET_CARE = Care(Say("care-vet-heat"))
HEAT_CARE = (
    Care(Say("care-guard"), Say("care-guard-short"), Weight.STEP),
    Care(Say("care-off-first")),
    VET_CARE,
)

_THERMOMETER_DOUBT_K = 1.0


class Untold(Enum):
    """What of an enclosure nobody told, so that it was assumed."""

    NOTHING = auto()
    WALLS = auto()
    LID = auto()
    BOTH = auto()


_UNTOLD = {
    (True, True): Untold.NOTHING,
    (False, True): Untold.WALLS,
    (True, False): Untold.LID,
    (False, False): Untold.BOTH,
}


@dataclass(frozen=True, slots=True)
class Box:
    """An enclosure as it was told, and what of it was assumed."""

    size: str
    walls: Material
    lid: Lid
    untold: Untold

    @property
    def is_open(self) -> bool:
        """Say whether all sides are mesh, so that its air is the room's."""
        return self.walls is Material.MESH


def box_told(size: Size | None, walls: str, lid: str, told: Collection[str]) -> Box | None:
    """Return an enclosure as facts; ``told`` are the options that were given."""
    if size is None:
        return None
    # A cage of mesh all round has told its lid too.
    untold = _UNTOLD["material" in told, "lid" in told or walls == Material.MESH]
    return Box(size.text, Material(walls), _LIDS[lid], untold)


def box_asked(size: Size, material: str, lid: str) -> Enclosure:
    """Return the enclosure of the engine for a typed one."""
    return Enclosure(size.length_m, size.depth_m, size.height_m, Material(material), _LIDS[lid])


def read(value_c: float) -> Estimate:
    """Return a reading with the doubt of its thermometer."""
    return Estimate(value_c - _THERMOMETER_DOUBT_K, value_c, value_c + _THERMOMETER_DOUBT_K)


def aimed(target: Target) -> Temp:
    """Return a target as a figure: its aim, and its ends."""
    return degrees(target.aim, (target.low, target.high))


def has_best(target: Target) -> bool:
    """Say whether a target has a best value of its own, inside its range."""
    return target.best is not None and target.low < target.best < target.high
