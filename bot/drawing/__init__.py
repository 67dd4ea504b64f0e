"""What a picture shows, as plain data: made by the answers, drawn by the renderer.

Figures are in SI; how an axis shows them stands in its scales. Words are ready to be set.
Everything is frozen, hashable and small, so that it can be sent to another process and a
picture once drawn can be found again by ``fingerprint``.
"""

from hashlib import sha256

from bot.drawing.card import Card, CardRow, Cell
from bot.drawing.chart import (
    Axis,
    Chart,
    Due,
    Line,
    Mark,
    Point,
    PointKind,
    Range,
    Scale,
    Stroke,
    Ticks,
    Zone,
    ZoneKind,
)
from bot.drawing.drop import Drop
from bot.drawing.ladder import Ladder, Rung
from bot.drawing.sheet import Gauge, Sheet
from bot.drawing.side import (
    Bar,
    Behind,
    Block,
    Dimension,
    End,
    Figure,
    Flow,
    Grid,
    Moved,
    Place,
    Placeless,
    Shift,
    Side,
    Strip,
    Tool,
)
from bot.drawing.tally import Course, Tally, TallyGroup, TallyRow
from bot.drawing.timeline import Stretch, StretchKind, Timeline, TimeRow
from bot.drawing.tone import Tone

__all__ = [
    "Axis",
    "Bar",
    "Behind",
    "Block",
    "Card",
    "CardRow",
    "Cell",
    "Chart",
    "Course",
    "Dimension",
    "Drawing",
    "Drop",
    "Due",
    "End",
    "Figure",
    "Flow",
    "Gauge",
    "Grid",
    "Ladder",
    "Line",
    "Mark",
    "Moved",
    "Place",
    "Placeless",
    "Point",
    "PointKind",
    "Range",
    "Rung",
    "Scale",
    "Sheet",
    "Shift",
    "Side",
    "Stretch",
    "StretchKind",
    "Strip",
    "Stroke",
    "Tally",
    "TallyGroup",
    "TallyRow",
    "Ticks",
    "TimeRow",
    "Timeline",
    "Tone",
    "Tool",
    "Zone",
    "ZoneKind",
    "fingerprint",
]

Drawing = Chart | Drop | Side | Sheet | Card | Tally | Ladder | Timeline


def fingerprint(drawing: Drawing) -> str:
    """Return a short name that only an equal drawing has, the same in every process."""
    return sha256(repr(drawing).encode()).hexdigest()[:32]
