"""What several things give at one place, each as a bar with its doubt."""

from dataclasses import dataclass

from bot.drawing.chart import Axis, Range
from bot.drawing.tone import Tone

__all__ = ["Ladder", "Rung"]


@dataclass(frozen=True, slots=True)
class Rung:
    """One of them: its name, what it gives with its doubt, and its verdict in a word or two.

    Without a bar its figures are nothing (``is_barred``): then the words say why. Its best is
    a dot where it ``has_best``.
    """

    label: str
    low: float
    best: float
    high: float
    verdict: str
    tone: Tone
    picked: bool = False
    is_barred: bool = True
    has_best: bool = True


@dataclass(frozen=True, slots=True)
class Ladder:
    """Bars below each other on one axis, with what is wanted across all of them, if it is one."""

    over: str
    title: str
    tone: Tone
    subtitle: str
    axis: Axis
    wanted: Range | None
    rungs: tuple[Rung, ...]
    note: str = ""
