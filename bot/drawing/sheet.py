"""Thermometers against their ranges."""

from dataclasses import dataclass

from bot.drawing.chart import Axis
from bot.drawing.tone import Tone

__all__ = [
    "Gauge",
    "Sheet",
]


@dataclass(frozen=True, slots=True)
class Gauge:
    """A thermometer: what is wanted and what it reads [SI of the sheet's axis].

    ``wanted`` or ``reading`` is None where it is not known. ``below``: nothing is wanted but
    that there is heat below this.
    """

    label: str
    where: str
    wanted: tuple[float, float] | None
    wanted_text: str
    reading: tuple[float, float] | None
    reading_text: str
    verdict: str
    tone: Tone = Tone.PLAIN
    below: float | None = None


@dataclass(frozen=True, slots=True)
class Sheet:
    """Thermometers against their ranges, one below the other, numbered."""

    title: str
    subtitle: str
    axis: Axis
    gauges: tuple[Gauge, ...]
    note: str = ""
