"""What a picture shows, as plain data: made by the answers, drawn by the renderer.

Figures are in SI; how an axis shows them stands in its scales. Words are ready to be set.
Everything is frozen, hashable and small, so that it can be sent to another process and a
picture once drawn can be found again by ``fingerprint``.
"""

from dataclasses import dataclass
from enum import Enum
from hashlib import sha256

__all__ = [
    "Axis",
    "Bar",
    "Block",
    "Card",
    "CardRow",
    "Cell",
    "Chart",
    "Dimension",
    "Drawing",
    "End",
    "Gauge",
    "Grid",
    "Line",
    "Mark",
    "Place",
    "Point",
    "PointKind",
    "Range",
    "Scale",
    "Sheet",
    "Side",
    "Stroke",
    "Ticks",
    "Tone",
    "fingerprint",
]


class Ticks(Enum):
    """What the numbers of an axis are."""

    NUMBERS = "numbers"
    DATES = "days, counted as datetime.date.toordinal does"
    MONTHS = "days of a year, 1 to 366"


class Stroke(Enum):
    """How a line is told from its neighbours without its colour."""

    MAIN = "solid and heavy"
    SOLID = "solid"
    DASHED = "dashed"
    DOTTED = "dotted"


class PointKind(Enum):
    """What a point stands for."""

    START = "where to start"
    HERE = "the place asked about"
    READING = "a reading"
    SET_ASIDE = "a reading that was not used"


class Tone(Enum):
    """How a figure stands; always told in words too."""

    PLAIN = "neither good nor bad"
    GOOD = "as wanted"
    DOUBTFUL = "possible, with care"
    BAD = "not to be used"


@dataclass(frozen=True, slots=True)
class Scale:
    """A unit in which an axis is shown: shown = SI × factor + offset."""

    unit: str
    factor: float = 1.0
    offset: float = 0.0


@dataclass(frozen=True, slots=True)
class Axis:
    """An axis from low to high [SI], in one unit or in two, the asker's first."""

    title: str
    low: float
    high: float
    scales: tuple[Scale, ...] = (Scale(""),)
    ticks: Ticks = Ticks.NUMBERS


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


@dataclass(frozen=True, slots=True)
class Mark:
    """A line across the chart at one value of x."""

    x: float
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

    ``bands`` lie along y, ``spans`` along x.
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


@dataclass(frozen=True, slots=True)
class Bar:
    """A tube [m]: seen from the side a bar, from its end (x0 = x1) a dot."""

    x0: float
    x1: float
    y: float
    label: str


@dataclass(frozen=True, slots=True)
class Block:
    """Something solid in the enclosure [m], such as a platform."""

    x0: float
    x1: float
    y0: float
    y1: float
    label: str


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

    Contours lie at ``levels``, the two of ``wanted`` are drawn heavier.
    """

    x: tuple[float, ...]
    y: tuple[float, ...]
    values: tuple[tuple[float, ...], ...]
    levels: tuple[float, ...]
    wanted: tuple[float, float] | None = None
    name: str = "UVI"


@dataclass(frozen=True, slots=True)
class Place:
    """A numbered place to measure at [m], explained in the list below the picture."""

    x: float
    y: float
    text: str


@dataclass(frozen=True, slots=True)
class End:
    """An end of the enclosure: its name, and what it should be."""

    name: str
    text: str
    on_the_left: bool


@dataclass(frozen=True, slots=True)
class Side:
    """An enclosure to scale, cut open: x along the floor, y up from it [m].

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


@dataclass(frozen=True, slots=True)
class Gauge:
    """A thermometer: what is wanted and what it reads [SI of the sheet's axis].

    ``wanted`` or ``reading`` is None where it is not known.
    """

    label: str
    where: str
    wanted: tuple[float, float] | None
    wanted_text: str
    reading: tuple[float, float] | None
    reading_text: str
    verdict: str
    tone: Tone = Tone.PLAIN


@dataclass(frozen=True, slots=True)
class Sheet:
    """Thermometers against their ranges, one below the other, numbered."""

    title: str
    subtitle: str
    axis: Axis
    gauges: tuple[Gauge, ...]
    note: str = ""


@dataclass(frozen=True, slots=True)
class Cell:
    """A cell of a card: a figure, the same in the other unit, and how it stands."""

    first: str
    second: str = ""
    tone: Tone = Tone.PLAIN


@dataclass(frozen=True, slots=True)
class CardRow:
    """A row of a card."""

    label: str
    cells: tuple[Cell, ...]


@dataclass(frozen=True, slots=True)
class Card:
    """A table to pin; every row has a cell for each column."""

    title: str
    subtitle: str
    corner: str
    columns: tuple[str, ...]
    rows: tuple[CardRow, ...]
    notes: tuple[str, ...] = ()


Drawing = Chart | Side | Sheet | Card


def fingerprint(drawing: Drawing) -> str:
    """Return a short name that only an equal drawing has, the same in every process."""
    return sha256(repr(drawing).encode()).hexdigest()[:32]
