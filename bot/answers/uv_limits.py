"""A wished UV index that would have to be switched off: it is not worked towards."""

from bot.answers.animals import WithoutFiguresError, animal_asked, of_animal
from bot.answers.figures import number, uvi_range, uvi_wanted
from bot.answers.past_limit import PastLimitError
from bot.preferences import Context
from bot.questions.shared import limits_for
from bot.reply import Alarm
from calc.animals import Animal

__all__ = ["check_it_cannot_harm"]


def _kept(animal: str, context: Context) -> Animal | None:
    """Return the animal whose figures count; one without any is held to what holds for all."""
    is_named = animal.strip() or context.default_animal
    try:
        return animal_asked(animal, context) if is_named else None
    except WithoutFiguresError:
        return None


def check_it_cannot_harm(uvi: tuple[float, float], animal: str, context: Context) -> None:
    """Refuse to work towards a UV index that would have to be switched off."""
    limits = limits_for(animal, context)
    now, most = limits.uvi_now.value, limits.uvi_high
    kept = _kept(animal, context)
    own = None if kept is None else kept.uvi
    # The list's own highest, not a group's: what a group aims for forbids nobody else.
    over = own is not None and most is not None and (uvi[0] + uvi[1]) / 2.0 > most.value
    if uvi[1] < now and not over:
        return
    whom = "any animal I know" if kept is None else of_animal(kept)
    usual = "" if own is None else f" UVI {uvi_range(own.low, own.high)} is right, and"
    raise PastLimitError(
        uvi_range(*uvi),
        f"a UV index that does not harm {whom}:{usual} UVI {uvi_wanted(now)} is too strong",
        "uvi:3-5" if own is None else f"uvi:{number(own.low, 0.1)}-{number(own.high, 0.1)}",
        "uvi",
        (Alarm(key="uv_too_strong", words=f"uvi {uvi_range(*uvi)}", asked=True),),
    )
