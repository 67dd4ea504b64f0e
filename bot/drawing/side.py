"""An enclosure from its side, and what hangs and stands in it."""

from dataclasses import dataclass
from enum import StrEnum, auto

from bot.drawing.sheet import Gauge
from bot.drawing.tone import Tone

__all__ = [
    "Bar",
    "Behind",
    "Block",
    "Dimension",
    "End",
    "Figure",
    "Flow",
    "Grid",
    "Moved",
    "Place",
    "Placeless",
    "Shift",
    "Side",
    "Strip",
    "Tool",
]


class Figure(StrEnum):
    """What an animal is drawn as."""

    LIZARD = auto()
    GECKO = auto()
    SNAKE = auto()
    TORTOISE = auto()
    CHAMELEON = auto()
    FROG = auto()


class Tool(StrEnum):
    """What is read with at a place."""

    INFRARED_GUN = auto()
    PROBE = auto()
    UV_METER = auto()
    NIGHT = auto()
    """A thermometer that keeps the lowest of the night."""
    CLOCK = auto()


class Moved(StrEnum):
    """What is moved."""

    TUBE = auto()
    LAMP = auto()
    STAND = auto()


class Behind(StrEnum):
    """What is behind a tube."""

    POLISHED = auto()
    PLAIN = auto()


@dataclass(frozen=True, slots=True)
class Bar:
    """A tube [m]: seen from the side a bar, from its end (x0 = x1) a dot.

    Where nobody told what is ``behind`` it, none of both is drawn.
    """

    x0: float
    x1: float
    y: float
    label: str
    behind: Behind | None = None


@dataclass(frozen=True, slots=True)
class Block:
    """Something solid in the enclosure [m], such as a platform."""

    x0: float
    x1: float
    y0: float
    y1: float
    label: str


@dataclass(frozen=True, slots=True)
class Strip:
    """A part of what something stands on [m], marked along its top; named where there is room."""

    x0: float
    x1: float
    y: float
    label: str = ""


@dataclass(frozen=True, slots=True)
class Dimension:
    """A distance from one point to another [m], written in both units."""

    x0: float
    y0: float
    x1: float
    y1: float
    label: str


@dataclass(frozen=True, slots=True)
class Grid:
    """Values over a plane [m]; ``values`` holds a row for each y.

    Contours lie at ``levels``, the two of ``wanted`` are drawn heavier; ``words`` are those of the
    zones from the strongest to shade.
    """

    x: tuple[float, ...]
    y: tuple[float, ...]
    values: tuple[tuple[float, ...], ...]
    levels: tuple[float, ...]
    wanted: tuple[float, float] | None = None
    name: str = "UVI"
    words: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True)
class Place:
    """A numbered place to measure at [m], explained in the list below the picture.

    The sign of its ``tone`` stands beside both numbers. With a ``gauge`` it is explained on a
    plate and not by ``text``; ``tool`` is drawn where there is room.
    """

    x: float
    y: float
    text: str
    tone: Tone = Tone.PLAIN
    tool: Tool | None = None
    gauge: Gauge | None = None


@dataclass(frozen=True, slots=True)
class Placeless:
    """What has no place in the enclosure: a line of the list below it, with its sign."""

    text: str
    tone: Tone


@dataclass(frozen=True, slots=True)
class Shift:
    """What is moved, from where [m], by how much ``along`` the floor and ``up`` from it [m].

    ``is_measured`` is false where only the way is known: then only the signs of the two count.
    """

    what: Moved
    x: float
    y: float
    along: float
    up: float
    is_measured: bool
    label: str


@dataclass(frozen=True, slots=True)
class Flow:
    """Where warmth leaves [m]: through the wall at x1 or the lid at y1, with how much in words."""

    x0: float
    y0: float
    x1: float
    y1: float
    label: str


@dataclass(frozen=True, slots=True)
class End:
    """An end of the enclosure: its name, and what it should be."""

    name: str
    text: str
    on_the_left: bool


@dataclass(frozen=True, slots=True)
class Side:
    """An enclosure to scale, cut open: x along the floor, y up from it [m].

    ``over`` stands above the title, which has the sign of ``tone``. The bars of plates go from
    the low to the high end of ``span`` [SI of what is read].
    A ``hide`` stands on the floor, a ``wanted_hide`` should; water goes up to ``water``; ``flows``
    are where warmth leaves. ``sun`` is where UV, heat and light meet, ``lights`` are white lamps,
    drawn over a tube that hides them. The animal is drawn as ``animal``, ``animal_m`` long.
    ``end`` is the same box cut across, drawn below to the same scale; of its words only the
    title is set, above it.
    """

    title: str
    subtitle: str
    width_m: float
    height_m: float
    width_label: str
    height_label: str
    lid: str = ""
    tubes: tuple[Bar, ...] = ()
    heat_lamp: Place | None = None
    blocks: tuple[Block, ...] = ()
    back: Place | None = None
    dimensions: tuple[Dimension, ...] = ()
    grid: Grid | None = None
    places: tuple[Place, ...] = ()
    ends: tuple[End, ...] = ()
    note: str = ""
    end: "Side | None" = None
    animal: Figure = Figure.LIZARD
    animal_m: float = 0.45
    sun: Strip | None = None
    placeless: tuple[Placeless, ...] = ()
    shifts: tuple[Shift, ...] = ()
    flows: tuple[Flow, ...] = ()
    lights: tuple[Bar, ...] = ()
    over: str = ""
    tone: Tone = Tone.PLAIN
    span: tuple[float, float] | None = None
    hide: Strip | None = None
    wanted_hide: Strip | None = None
    water: float = 0.0
