"""Curves over an axis."""

from dataclasses import dataclass
from enum import Enum, StrEnum, auto

from bot.drawing.tone import Tone

__all__ = [
    "Axis",
    "Chart",
    "Due",
    "Line",
    "Mark",
    "Point",
    "PointKind",
    "Range",
    "Scale",
    "Stroke",
    "Ticks",
    "Zone",
    "ZoneKind",
]


class Ticks(Enum):
    """What the numbers of an axis are."""

    NUMBERS = "numbers"
    DATES = "days, counted as datetime.date.toordinal does"
    MONTHS = "days of a year, 1 to 366"
    CLOCK = "hours of a day, 0 to 24"
    POWERS = "powers of ten: the axis holds their exponents"


class Stroke(Enum):
    """How a line is told from its neighbours without its colour."""

    MAIN = "solid and heavy"
    SOLID = "solid"
    DASHED = "dashed"
    DOTTED = "dotted"
    AHEAD = "heavy and broken: not read yet"


class PointKind(Enum):
    """What a point stands for."""

    START = "where to start"
    HERE = "the place asked about"
    READING = "a reading"
    SET_ASIDE = "a reading that was not used"


@dataclass(frozen=True, slots=True)
class Scale:
    """A unit in which an axis is shown: shown = SI × factor + offset."""

    unit: str
    factor: float = 1.0
    offset: float = 0.0


@dataclass(frozen=True, slots=True)
class Axis:
    """An axis from low to high [SI], in one unit or in two, the asker's first.

    ``months`` are their short names, for an axis of days.
    """

    title: str
    low: float
    high: float
    scales: tuple[Scale, ...] = (Scale(""),)
    ticks: Ticks = Ticks.NUMBERS
    months: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True)
class Line:
    """A curve, with the range it may really lie in where ``low`` and ``high`` are given."""

    label: str
    x: tuple[float, ...]
    y: tuple[float, ...]
    low: tuple[float, ...] = ()
    high: tuple[float, ...] = ()
    stroke: Stroke = Stroke.MAIN
    stepped: bool = False


@dataclass(frozen=True, slots=True)
class Range:
    """A stretch of an axis with a name: what is wanted, what is advised, what to avoid."""

    low: float
    high: float
    label: str
    tone: Tone = Tone.GOOD


class ZoneKind(StrEnum):
    """How strong UV is."""

    TOO_NEAR = auto()
    STRONGER = auto()
    RIGHT = auto()
    WEAKER = auto()
    SHADE = auto()


@dataclass(frozen=True, slots=True)
class Zone:
    """A stretch of one kind, with the word for it."""

    kind: ZoneKind
    low: float
    high: float
    word: str


@dataclass(frozen=True, slots=True)
class Mark:
    """A line across the chart at one value of x; ``is_now`` where that is today."""

    x: float
    label: str
    is_now: bool = False


@dataclass(frozen=True, slots=True)
class Due:
    """When something happens, along x: an end that nobody knows is None; told in ``label``."""

    low: float | None
    best: float
    high: float | None
    label: str


@dataclass(frozen=True, slots=True)
class Point:
    """A point of a chart; without doubt, low and high equal y."""

    x: float
    y: float
    low: float
    high: float
    label: str
    kind: PointKind = PointKind.READING


@dataclass(frozen=True, slots=True)
class Chart:
    """Curves over an axis: UV index against distance, a decline, a year of day lengths.

    ``over`` stands above the title, which has the sign of ``tone``. ``bands`` and ``zones`` of UV
    lie along y, ``spans`` along x, ``due`` below the axis.
    """

    title: str
    subtitle: str
    x: Axis
    y: Axis
    lines: tuple[Line, ...]
    bands: tuple[Range, ...] = ()
    spans: tuple[Range, ...] = ()
    marks: tuple[Mark, ...] = ()
    points: tuple[Point, ...] = ()
    note: str = ""
    over: str = ""
    tone: Tone = Tone.PLAIN
    zones: tuple[Zone, ...] = ()
    due: Due | None = None
