"""Several equal tubes in one place, as they were told: their UV adds."""

from typing import Protocol

from bot.answers.figures import length
from bot.language.quantities import Measure, Units
from calc.uv.lamp import Lamp, side_by_side

__all__ = ["COUNTED", "added_told", "all_together"]

COUNTED = {2: "two", 3: "three", 4: "four"}
"""Numbers of tubes in words."""


class _Several(Protocol):
    """What a question tells of tubes side by side."""

    @property
    def tubes(self) -> int: ...

    @property
    def gap(self) -> Measure | None: ...


def all_together(lamp: Lamp, told: _Several) -> Lamp:
    """Return a lamp as one of so many, with the space between them where it was told."""
    gap_m = told.gap.low if told.gap and told.tubes > 1 else 0.0
    return side_by_side(lamp, told.tubes, gap_m)


def added_told(lamp: Lamp, units: Units) -> str:
    """Return how the UV of several tubes was put together."""
    if lamp.gap_m:
        return (
            f"{length(lamp.gap_m, units)} from middle to middle; their UV adds, told for the "
            "strongest place under them"
        )
    return "their UV adds, taken as from one place, which is the careful side"
