"""UV past a limit, in every question alike."""

from bot.dangers.past_limits import alarms_past
from bot.preferences import Context
from bot.questions.shared import limits_for
from bot.reply import Alarm
from calc.limits import Met, under_uvi
from calc.uncertainty import Estimate

__all__ = ["uv_alarms"]


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
