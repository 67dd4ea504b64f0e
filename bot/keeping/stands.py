"""How the last readings of an enclosure stand, by the judgement that every other answer asks."""

from collections.abc import Iterator

from bot.answers.animals import animal_asked
from bot.answers.figures import uvi_range
from bot.answers.temps_words import finding_clause
from bot.answers.verdicts import verdict_word
from bot.keeping.words import measured_name, reading_told
from bot.kept.keeper import KEPT_AS, Enclosure, Reading
from bot.language.errors import NotUnderstoodError
from bot.preferences import Context
from bot.questions.uv.judged import judged_uvi_read
from bot.reply import Row
from calc.animals import Animal, animal_name
from calc.heat.readings import finding_for
from calc.limits import limits_of
from calc.quantities import Quantity

__all__ = ["standing_rows"]


def standing_rows(kept: Enclosure, context: Context) -> Iterator[Row]:
    """Return the last reading of each kind with its verdict; nothing where no animal is known."""
    try:
        animal = (
            animal_asked(animal_name(kept.setup.animal), context) if kept.setup.animal else None
        )
    except NotUnderstoodError:
        animal = None
    if animal is None:
        return
    for of in KEPT_AS:
        newest = max((r for r in kept.readings if r.of is of), key=lambda r: r.day, default=None)
        told = "" if newest is None else _told(newest, animal, context)
        if told:
            yield Row(label=f"Last {measured_name(of)}", text=told)


def _animal(slug: str | None, context: Context) -> Animal | None:
    try:
        return animal_asked(animal_name(slug), context) if slug else None
    except NotUnderstoodError:
        return None


def _told(reading: Reading, animal: Animal, context: Context) -> str:
    if reading.of is not Quantity.UVI:
        return finding_clause(finding_for(reading.of, reading.value, animal), context.units)
    wanted = animal.uvi
    if wanted is None:
        return ""
    judged = judged_uvi_read((reading.value,), wanted.low, wanted.high, limits_of(animal))
    told = reading_told(reading, context.units)
    return f"{told}: {verdict_word(judged)}, wanted {uvi_range(wanted.low, wanted.high)}"
