"""The limits of UV that an answer holds its figures against, and the hazards past them."""

from bot.answers.animals import animal_asked, of_animal
from bot.answers.figures import number, uvi_range, uvi_wanted
from bot.answers.limits_told import limits_for
from bot.answers.past_limit import PastLimitError
from bot.dangers.past_limits import alarms_past
from bot.preferences import Context
from bot.reply import Alarm
from calc.limits import Limits, Met, any_limits, under_uvi
from calc.uncertainty import Estimate

__all__ = ["check_it_cannot_harm", "uv_alarms"]


def uv_alarms(
    uvi: Estimate | None, animal: str, wanted_high: float, context: Context
) -> tuple[Alarm, ...]:
    """Return the hazard of a UV index where the animal can get, if it passes a limit.

    None where the figure is not to be believed. Of the animal's highest and of what the asker
    wants the lower one counts: an albino or a hatchling is asked for with less.
    """
    if uvi is None:
        return ()
    return alarms_past(_limits(animal, wanted_high, context), Met(uvi=uvi))


def _limits(animal: str, wanted_high: float, context: Context) -> Limits:
    own = limits_for(animal, context) if _is_named(animal, context) else any_limits()
    return under_uvi(own, wanted_high)


def _is_named(animal: str, context: Context) -> bool:
    return bool(animal.strip() or context.default_animal)


def check_it_cannot_harm(uvi: tuple[float, float], animal: str, context: Context) -> None:
    """Refuse to work towards a UV index that would have to be switched off."""
    now = limits_for(animal, context).uvi_now.value
    if uvi[1] < now:
        return
    kept = animal_asked(animal, context) if _is_named(animal, context) else None
    own = None if kept is None else kept.uvi
    whom = "any animal I know" if kept is None else of_animal(kept)
    usual = "" if own is None else f" UVI {uvi_range(own.low, own.high)} is right, and"
    raise PastLimitError(
        uvi_range(*uvi),
        f"a UV index that does not harm {whom}:{usual} UVI {uvi_wanted(now)} is too strong",
        "uvi:3-5" if own is None else f"uvi:{number(own.low, 0.1)}-{number(own.high, 0.1)}",
        "uvi",
        (Alarm(key="uv_too_strong", words=f"uvi {uvi_range(*uvi)}", asked=True),),
    )
