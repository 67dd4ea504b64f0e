"""The hot side of an animal that does not bask: its warmest place, not the air beside that."""

from typing import Protocol, TypeVar

from bot.language.hearing import FactName
from bot.language.quantities import Measure
from calc.animals import animals
from calc.naming import Known, named

__all__ = ["as_warmest"]


class _Said(Protocol):
    """What was said, and whether an option gave it."""

    @property
    def value(self) -> object: ...

    @property
    def option(self) -> bool: ...


Told = TypeVar("Told", bound=_Said)


def as_warmest(
    facts: dict[FactName, tuple[Told, ...]], own: tuple[str, ...] = ()
) -> dict[FactName, tuple[Told, ...]]:
    """Return what was told with a warm side as the warmest place, where no air is so warm.

    It is told of an animal that wants no basking lamp, and of no other hot place. ``own`` are the
    names of the animals that the asker's group added.
    """
    told = facts.get(FactName.ANIMAL, ())
    warm = facts.get(FactName.WARM, ())
    if len(told) != 1 or len(warm) != 1 or FactName.BASKING in facts or warm[0].option:
        return facts
    kept = named(str(told[0].value), own).what
    animal = animals().get(kept.slug) if isinstance(kept, Known) else None
    if animal is None or animal.basking or not (animal.basking_surface_c and animal.warm_air_c):
        return facts
    value = warm[0].value
    if not isinstance(value, Measure) or value.low <= animal.warm_air_c.high:
        return facts
    found = dict(facts)
    del found[FactName.WARM]
    found[FactName.BASKING] = warm
    return found
