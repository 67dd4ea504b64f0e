"""UV past a limit, in every question alike."""

from bot.answers.animals import AnimalNotNamedError
from bot.answers.past_limit import PastLimitError
from bot.answers.uv_parts import Wish, wish_asked
from bot.dangers.past_limits import alarms_past
from bot.preferences import Context
from bot.questions.shared import limits_for
from bot.reply import Alarm
from calc.limits import Met, any_limits, under_uvi
from calc.uncertainty import Estimate

__all__ = ["uv_alarms", "wish_under"]


def uv_alarms(
    uvi: Estimate | None, animal: str, wanted_high: float, context: Context
) -> tuple[Alarm, ...]:
    """Return the hazard of a UV index where the animal can get, if it passes a limit.

    None where the figure is not to be believed. Of the animal's highest and of what the asker
    wants the lower one counts: an albino or a hatchling is asked for with less.
    """
    if uvi is None:
        return ()
    limits = under_uvi(limits_for(animal, context), wanted_high)
    return alarms_past(limits, Met(uvi=uvi))


def wish_under(
    animal: str, wanted: tuple[float, float] | None, uvi: Estimate, context: Context
) -> Wish:
    """Return the range wanted under a UV index; without one, danger is told all the same."""
    try:
        return wish_asked(animal, wanted, context)
    except AnimalNotNamedError:
        raise AnimalNotNamedError(*alarms_past(any_limits(), Met(uvi=uvi))) from None
    except PastLimitError as error:
        error.alarms += alarms_past(limits_for(animal, context), Met(uvi=uvi))
        raise
