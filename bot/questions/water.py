"""How deep the water of an animal is, where that is known."""

from bot.facts import Length, metres
from calc.animal import Animal
from calc.setup.space import smallest_floor

__all__ = ["water_deep"]


def water_deep(animal: Animal) -> Length | None:
    """Return how deep its water is: as the group set it, else the least by a public code."""
    own, floor = animal.water_depth_m, smallest_floor(animal.slug)
    if own is not None:
        return metres(own.aim, (own.low, own.high))
    return metres(floor.water_m) if floor and floor.water_m else None
