"""Several equal tubes in one place, as they were told: their UV adds."""

from bot.answers.figures import length
from bot.language.quantities import Units
from calc.uv.lamp import Lamp

__all__ = ["COUNTED", "added_told"]

COUNTED = {2: "two", 3: "three", 4: "four"}
"""Numbers of tubes in words."""


def added_told(lamp: Lamp, units: Units) -> str:
    """Return how the UV of several tubes was put together."""
    if lamp.gap_m:
        return (
            f"{length(lamp.gap_m, units)} from middle to middle; their UV adds, told for the "
            "strongest place under them"
        )
    return "their UV adds, taken as from one place, which is the careful side"
