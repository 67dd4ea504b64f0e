"""UV so far above the range that the tube goes off before it is moved, in every question alike."""

from functools import cache

from bot.answers.animals import AnimalNotNamedError
from bot.answers.uv_parts import Wish, wish_asked
from bot.preferences import Context
from bot.reply import Alarm
from calc.animals import animals

__all__ = ["is_far_too_strong", "uv_alarms", "wish_under"]

# Our judgement, no source: from here on one does not wait for the tube to be moved. Seven is about
# the most that an open basker seeks out for a while (zone 3, from memory).
_FAR_TOO_STRONG, _STRONG_UVI = 2.0, 7.0


def is_far_too_strong(uvi: float, wanted_high: float) -> bool:
    """Say whether a UV index is so far above the wanted range that the tube goes off at once."""
    return uvi >= max(_FAR_TOO_STRONG * wanted_high, _STRONG_UVI)


def uv_alarms(uvi: float, wanted_high: float) -> tuple[Alarm, ...]:
    """Return the alarm of a UV index that is far above the wanted range."""
    return (Alarm(key="uv_too_strong"),) if is_far_too_strong(uvi, wanted_high) else ()


def wish_under(
    animal: str, wanted: tuple[float, float] | None, uvi: float, context: Context
) -> Wish:
    """Return the range wanted under a UV index; where no animal is named, danger is told first."""
    try:
        return wish_asked(animal, wanted, context)
    except AnimalNotNamedError:
        if not is_far_too_strong(uvi, _most_wanted()):
            raise
        raise AnimalNotNamedError(*uv_alarms(uvi, _most_wanted())) from None


@cache
def _most_wanted() -> float:
    return max(animal.uvi.high for animal in animals().values() if animal.uvi)
