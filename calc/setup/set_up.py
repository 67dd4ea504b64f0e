"""The set-up as one frozen value: what stands and hangs where, what is met there, what to change.

An answer makes it once, and everything that shows it reads it: pictures, tables, cases. SI and
enums; axes as in ``uv.section``: x from the warm end, y from the back wall, z up from the floor.
What is not known is None, never a usual value.
"""

from dataclasses import dataclass
from enum import Enum, auto

from calc.heat.enclosure import Lid
from calc.judgement import Judged, Verdict
from calc.quantities import Quantity
from calc.setup.light import LAMPS_APART_M
from calc.setup.lights import LightThere
from calc.setup.sun_patch import SunPatch
from calc.uncertainty import Estimate
from calc.uv.ground import HeatPatch, Platform
from calc.uv.lengths import DARK_ENDS_M
from calc.uv.patches import Shade
from calc.uv.section import Box, HungTube

__all__ = [
    "Act",
    "HeatLamp",
    "Hide",
    "Movement",
    "SetUp",
    "Sign",
    "Spot",
    "Stand",
    "StandKind",
    "Thing",
    "beside_tubes",
    "ends_of",
    "sign_of",
]


class StandKind(Enum):
    """What an animal basks on."""

    PLATFORM = auto()
    BRANCH = auto()
    DOCK = auto()


class Thing(Enum):
    """What can be moved, exchanged, added or measured."""

    TUBE = auto()
    HEAT_LAMP = auto()
    STAND = auto()
    HIDE = auto()
    HEATER = auto()
    MESH = auto()
    THERMOMETER = auto()
    UV_METER = auto()
    BOX = auto()
    ROOM_HEAT = auto()


class Act(Enum):
    """What is done with a thing."""

    MOVE = auto()
    EXCHANGE = auto()
    ADD = auto()
    TAKE_AWAY = auto()
    SWITCH_OFF = auto()
    MORE = auto()
    LESS = auto()
    MEASURE = auto()


class Sign(Enum):
    """What a verdict is drawn and marked as: whether nothing, something or a reading is due."""

    FINE = auto()
    CHANGE = auto()
    CANNOT_TELL = auto()


def sign_of(verdict: Verdict | None) -> Sign:
    """Return the sign of a verdict: a change only where something is sure."""
    if verdict is None:
        return Sign.CANNOT_TELL
    if verdict is Verdict.FINE:
        return Sign.FINE
    return Sign.CHANGE if verdict.wants_change else Sign.CANNOT_TELL


@dataclass(frozen=True, slots=True)
class HeatLamp:
    """A heat lamp: the middle of its face [m], what it is sold as [W], and the patch it warms."""

    x_m: float
    y_m: float
    z_m: float
    sizes_w: tuple[float, ...] = ()
    patch: HeatPatch | None = None


@dataclass(frozen=True, slots=True)
class Stand:
    """What the animal basks on."""

    kind: StandKind
    place: Platform


@dataclass(frozen=True, slots=True)
class Hide:
    """A dark place on the floor [m]; ``is_there`` is false for one that is wanted."""

    x_m: float
    y_m: float
    is_there: bool


@dataclass(frozen=True, slots=True)
class Spot:
    """What is or should be read at a place: the quantity, what is wanted, read, and its verdict.

    ``at_m`` is x, y, z where the place is known; ``is_read`` is false for a figure worked out.
    ``keepers_differ``: the verdict is one on which keepers do. ``held``: its sign, where more
    counts than the verdict: a tube too near, or one that may be longer.
    """

    quantity: Quantity
    at_m: tuple[float, float, float] | None = None
    wanted: tuple[float, float] | None = None
    value: Estimate | None = None
    judged: Judged | None = None
    is_read: bool = True
    keepers_differ: bool = False
    held: Sign | None = None

    @property
    def sign(self) -> Sign:
        """The sign of its verdict."""
        if self.held is not None:
            return self.held
        if self.keepers_differ:
            return Sign.CANNOT_TELL
        return sign_of(self.judged.verdict if self.judged else None)


@dataclass(frozen=True, slots=True)
class Movement:
    """A change: what is done with which things at once, and by how much [m] along x, y and z.

    ``toward``: only the way along x, y and z is known [1], not how far.
    """

    act: Act
    things: tuple[Thing, ...]
    by_m: tuple[float, float, float] | None = None
    toward: tuple[int, int, int] | None = None


@dataclass(frozen=True, slots=True)
class SetUp:
    """A whole set-up: what is not known of it is None or empty.

    ``uvi_wanted`` [1] is for a back on the stand, ``back_m`` how high that is over what it lies on;
    ``tube_to_back_m``, ``tube_long_m`` and ``tube_is_over`` (over the lid) are what was told of
    tubes whose places are not known, ``lamp_to_stand_m`` of a heat lamp; lengths in [m].
    ``sun`` is where UV, heat and light meet, ``light`` what white lamps give, where any were told.
    ``is_turned``: the tubes lie across, so that x is
    from the back wall and y from the warm end.
    """

    box: Box | None = None
    lid: Lid | None = None
    tubes: tuple[HungTube, ...] = ()
    lamps: tuple[HeatLamp, ...] = ()
    stands: tuple[Stand, ...] = ()
    hides: tuple[Hide, ...] = ()
    in_water: bool = False
    is_turned: bool = False
    animal: str = ""
    back_m: Estimate | None = None
    tube_to_back_m: Estimate | None = None
    tube_long_m: float | None = None
    tube_is_over: bool = False
    lamp_to_stand_m: Estimate | None = None
    uvi_wanted: tuple[float, float] | None = None
    spots: tuple[Spot, ...] = ()
    shade: Shade | None = None
    sun: SunPatch | None = None
    light: LightThere | None = None
    first: Movement | None = None

    @property
    def back_z_m(self) -> float | None:
        """Height of a back on the first stand [m]."""
        if not self.stands or self.back_m is None:
            return None
        return self.stands[0].place.top_m + self.back_m.best

    @property
    def shade_sign(self) -> Sign:
        """The sign of whether there is shade to go to."""
        if self.shade is Shade.THERE:
            return Sign.FINE
        without = self.shade in (Shade.NONE, Shade.PROBABLY_NONE)
        return Sign.CHANGE if without else Sign.CANNOT_TELL

    def spot_of(self, quantity: Quantity) -> Spot | None:
        """Return the first spot of a quantity."""
        return next((spot for spot in self.spots if spot.quantity is quantity), None)

    def is_before_a_tube(self, lamp: HeatLamp) -> bool:
        """Say whether a lamp seen from the front covers a tube or seems to hang under one."""
        spans = (ends_of(tube) for tube in self.tubes)
        return any(first <= lamp.x_m <= last for first, last in spans)


def ends_of(tube: HungTube) -> tuple[float, float]:
    """Return where a tube begins and ends from the warm end wall [m], its dark ends included."""
    half = (tube.lamp.lit_length_m + DARK_ENDS_M) / 2.0
    return tube.x_m - half, tube.x_m + half


def beside_tubes(tubes: tuple[HungTube, ...], y_m: float, depth_m: float) -> float:
    """Return where across a box [m] a lamp can hang that would be under a tube at ``y_m``.

    In front of the tubes, or behind them where there is more room.

    Examples
    --------
    >>> beside_tubes((), 0.3, 0.6)
    0.3
    """
    if all(abs(tube.y_m - y_m) >= LAMPS_APART_M for tube in tubes):
        return y_m
    first, last = min(tube.y_m for tube in tubes), max(tube.y_m for tube in tubes)
    if depth_m - last >= first:
        return min(last + LAMPS_APART_M, (last + depth_m) / 2.0)
    return max(first - LAMPS_APART_M, first / 2.0)
