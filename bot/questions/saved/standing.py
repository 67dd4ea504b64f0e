"""How the last readings of an enclosure stand, by the judgement that every other answer asks.

Words: ``words/<language>/home.ftl``, ``heat.ftl``.
"""

from collections.abc import Iterator
from dataclasses import dataclass

from bot.facts import Say, Uvi, uvi
from bot.language.errors import NotUnderstoodError
from bot.layered import Row
from bot.preferences import Context
from bot.questions.animals import animal_asked
from bot.questions.heat.readings import reading_told
from bot.questions.saved.reading import ReadOnce, last_said, read_once, read_said
from bot.questions.uv.judged import judged_uvi_read
from bot.saved.keeper import KEPT_AS, Enclosure, Reading
from calc.animal import Animal
from calc.animals import animal_name
from calc.heat.readings import finding_for
from calc.judgement import Verdict
from calc.limits import limits_of
from calc.quantities import Quantity

__all__ = ["UvStanding", "animal_of", "standing_rows"]


@dataclass(frozen=True, slots=True)
class UvStanding:
    """A UV index that was read last, and how it stands against what is wanted."""

    read: ReadOnce
    stand: Verdict
    wanted: Uvi

    @property
    def told(self) -> Say:
        """Return what was read, and where."""
        return read_said(self.read)

    @property
    def verdict(self) -> Say:
        """Return how it stands."""
        return Say.by("verdict", self.stand)


def standing_rows(kept: Enclosure, context: Context) -> Iterator[Row]:
    """Return the last reading of each kind with its verdict; nothing where no animal is known."""
    animal = animal_of(kept.setup.animal, context)
    if animal is None:
        return
    for of in KEPT_AS:
        newest = max((r for r in kept.readings if r.of is of), key=lambda r: r.day, default=None)
        told = None if newest is None else _told(newest, animal, context)
        if newest is not None and told is not None:
            yield Row(last_said(read_once(newest)), told)


def animal_of(slug: str | None, context: Context) -> Animal | None:
    """Return the animal of a kept set-up; None where none was told or it is known no more."""
    try:
        return animal_asked(animal_name(slug), context) if slug else None
    except NotUnderstoodError:
        return None


def _told(reading: Reading, animal: Animal, context: Context) -> Say | None:
    if reading.of is not Quantity.UVI:
        finding = finding_for(reading.of, reading.value, animal)
        return Say("heat-row", reading_told(finding, animal, context.own))
    wanted = animal.uvi
    if wanted is None:
        return None
    judged = judged_uvi_read(
        (reading.value,), wanted.low, wanted.high, limits_of(animal), unchecked=wanted.is_unchecked
    )
    ends = uvi(wanted.low, (wanted.low, wanted.high))
    return Say("home-standing", UvStanding(read_once(reading), judged.verdict, ends))
