"""Dated readings as the engine takes them; a day that is not here yet is refused."""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date, timedelta

from bot.facts import Say
from bot.language.errors import NotUnderstoodError
from bot.language.readings import DatedReading as TypedReading
from bot.preferences import Context
from bot.questions.uv.lamp_asked import Wanted, wanted_asked
from bot.questions.uv.unlit import never_too_weak
from calc.uv.dated import DatedReading

__all__ = ["dated_asked", "wanted_above_nothing"]


@dataclass(frozen=True, slots=True)
class Today:
    """The day it is."""

    today: date


def dated_asked(readings: Sequence[TypedReading], context: Context) -> tuple[DatedReading, ...]:
    """Return typed readings; somewhere it may be a day later than in Greenwich."""
    last, today = readings[-1], context.day
    if last.day > today + timedelta(days=1):
        raise NotUnderstoodError(
            last.text,
            Say("wanted-days-past", Today(today)),
            f"readings:{today} {round(last.value, 2):g}",
            "readings",
        )
    return tuple(DatedReading(float(r.day.toordinal()), r.value) for r in readings)


def wanted_above_nothing(animal: str, uvi: tuple[float, float] | None, context: Context) -> Wanted:
    """Return the range that a tube may leave by fading, so one that does not begin at 0."""
    wanted = wanted_asked(animal, uvi, context)
    if wanted.low <= 0.0 and wanted.animal is not None:
        raise never_too_weak(wanted.animal)
    if wanted.low <= 0.0:
        told = f"{wanted.low:g}-{wanted.high:g}"
        raise NotUnderstoodError(told, Say("wanted-uvi-not-zero"), "uvi:1-2", "uvi")
    return wanted
