"""A tube over an animal's back, with one ruler for the scene and for the curve beside it."""

from dataclasses import dataclass

from bot.drawing.chart import Axis, Line, Point, Range, Zone
from bot.drawing.side import Behind, Figure
from bot.drawing.tone import Tone

__all__ = ["Drop"]


@dataclass(frozen=True, slots=True)
class Drop:
    """Distances down from the lit lamp [m]: what they give, and where the back is.

    ``down`` is the axis of the scene, ``across`` that of the UV index, which ``line`` tells over
    the distance. The back lies ``back_m`` below the lamp, ``away`` says so; ``keep`` is advised.
    The lamp is a tube with what is ``behind`` it, or ``is_small``.
    """

    over: str
    title: str
    tone: Tone
    subtitle: str
    down: Axis
    across: Axis
    line: Line
    wanted: Range
    zones: tuple[Zone, ...]
    points: tuple[Point, ...]
    back_m: float
    away: str
    keep: Range | None = None
    animal: Figure = Figure.LIZARD
    animal_m: float = 0.45
    is_small: bool = False
    behind: Behind | None = None
    note: str = ""
