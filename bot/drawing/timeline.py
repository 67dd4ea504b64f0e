"""What lies when along a stretch of time: the age of a lamp, a day and its lights."""

from dataclasses import dataclass
from enum import StrEnum, auto

from bot.drawing.chart import Axis, Mark, Range
from bot.drawing.tone import Tone

__all__ = ["Stretch", "StretchKind", "TimeRow", "Timeline"]


class StretchKind(StrEnum):
    """What happens in it."""

    DUE = auto()
    """Something is usual then; what is later than the last of it has no end."""
    UV = auto()
    HEAT = auto()
    LIGHT = auto()


@dataclass(frozen=True, slots=True)
class Stretch:
    """A stretch of the axis [SI of the axis]."""

    kind: StretchKind
    low: float
    high: float


@dataclass(frozen=True, slots=True)
class TimeRow:
    """Stretches beside each other, with a name before them where there are several rows."""

    stretches: tuple[Stretch, ...]
    label: str = ""


@dataclass(frozen=True, slots=True)
class Timeline:
    """Rows of stretches over one axis, marks through all of them, ``nights`` behind them.

    A mark past the end of the axis is drawn at that end as an arrow. ``told`` stands below.
    """

    over: str
    title: str
    tone: Tone
    subtitle: str
    axis: Axis
    rows: tuple[TimeRow, ...]
    marks: tuple[Mark, ...] = ()
    nights: tuple[Range, ...] = ()
    told: str = ""
    note: str = ""
