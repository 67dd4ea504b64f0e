"""What the kept UV readings of an enclosure show, where the last one was taken."""

from dataclasses import dataclass
from datetime import date, timedelta

from bot.facts import Length, metres
from bot.language.errors import NotUnderstoodError
from bot.language.uv_lamps import TUBES
from bot.preferences import Context
from bot.questions.uv.fading import Fading, fading
from bot.saved.keeper import Enclosure, Reading
from calc.animals import animal_name
from calc.quantities import Quantity
from calc.uv.dated import DatedReading, at_one_place
from calc.uv.decline import MOST_READINGS
from calc.uv.lamp import CLASS_STRENGTH_PERCENT, Fixture, Lamp, of_length, side_by_side
from calc.uv.lengths import DARK_ENDS_M, length_of_tube

__all__ = ["Reckoned", "next_reading_day", "trend_of"]

_LEAST_UVI = 0.05


@dataclass(frozen=True, slots=True)
class Reckoned:
    """A trend at one place, and how many readings were taken elsewhere."""

    fading: Fading
    at: Length | None
    elsewhere: int


def trend_of(kept: Enclosure, context: Context) -> Reckoned | None:
    """Return what the UV readings show, if the wanted range is known."""
    read = _uvi_read(kept)
    if not read:
        return None
    at = read[-1].distance_m
    seen = tuple(DatedReading(float(r.day.toordinal()), r.value, r.distance_m) for r in read)
    if at is not None:
        seen = at_one_place(seen, _lamp_of(kept), at)
    animal = animal_name(kept.setup.animal) if kept.setup.animal else ""
    try:
        found = fading(seen, animal, None, context)
    except NotUnderstoodError:
        # No range is wanted: no animal is told, or none is known for it.
        return None
    elsewhere = sum(new.moved > 0.0 for new in seen)
    return Reckoned(found, None if at is None else metres(at), 0 if at is None else elsewhere)


def next_reading_day(kept: Enclosure, context: Context) -> date | None:
    """Return the day, today or later, on which the UV should be read again by the trend so far."""
    trend = trend_of(kept, context)
    return None if trend is None else context.day + timedelta(hours=trend.fading.again_in.best)


def _uvi_read(kept: Enclosure) -> list[Reading]:
    """Return the newest UV readings that say something of a lamp, the oldest first.

    Those of a small lamp are not reckoned from one distance to another by the law of a tube: the
    ones at the last distance count.
    """
    uvi = [r for r in kept.readings if r.of is Quantity.UVI and r.value >= _LEAST_UVI]
    newest = sorted(uvi, key=lambda r: r.day)[-MOST_READINGS:]
    if kept.setup.lamp in (None, *TUBES):
        return newest
    return [r for r in newest if r.distance_m == newest[-1].distance_m]


def _lamp_of(kept: Enclosure) -> Lamp:
    """Return a tube as long as the set-up's; its strength does not count in a trend."""
    setup, lamp = kept.setup, Lamp(CLASS_STRENGTH_PERCENT, Fixture.POLISHED)
    lit_m = None if setup.tube_length_m is None else setup.tube_length_m - DARK_ENDS_M
    lamp = of_length(lamp, length_of_tube(lit_m, box_m=setup.length_m))
    return side_by_side(lamp, setup.tubes or 1, setup.gap_m or 0.0)
