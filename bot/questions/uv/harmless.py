"""A wished UV index that would have to be switched off: it is not worked towards."""

from dataclasses import dataclass

from bot.facts import Name, Say, Uvi
from bot.facts import uvi as uvi_figure
from bot.preferences import Context
from bot.questions.animals import WithoutFiguresError, animal_asked
from bot.questions.past_limit import PastLimitError
from bot.questions.shared import animal_name, limits_for
from bot.reply import Alarm
from calc.animal import Animal

__all__ = ["check_it_cannot_harm"]


@dataclass(frozen=True, slots=True)
class Harmless:
    """The UV index that does not harm an animal, and the one that would have to go."""

    animal: Name | None
    own: Uvi | None
    now: Uvi


def _kept(animal: str, context: Context) -> Animal | None:
    """Return the animal whose figures count; one without any is held to what holds for all."""
    is_named = animal.strip() or context.default_animal
    try:
        return animal_asked(animal, context) if is_named else None
    except WithoutFiguresError:
        return None


def check_it_cannot_harm(
    uvi: tuple[float, float], asked: str, animal: str, context: Context
) -> None:
    """Refuse to work towards a UV index that would have to be switched off.

    ``asked`` is the wish as it is typed, which ``uvi`` may be wider than.
    """
    limits = limits_for(animal, context)
    now, most = limits.uvi_now.value, limits.uvi_high
    kept = _kept(animal, context)
    own = None if kept is None else kept.uvi
    # The list's own highest, not a group's: what a group aims for forbids nobody else.
    over = own is not None and most is not None and (uvi[0] + uvi[1]) / 2.0 > most.value
    if uvi[1] < now and not over:
        return
    facts = Harmless(
        None if kept is None else animal_name(kept),
        None if own is None else uvi_figure(own.low, (own.low, own.high)),
        uvi_figure(now),
    )
    raise PastLimitError(
        asked,
        Say("wanted-uvi-harmless", facts),
        "uvi:3-5" if own is None else f"uvi:{round(own.low, 1):g}-{round(own.high, 1):g}",
        "uvi",
        (Alarm(key="uv_too_strong", words=f"uvi {asked}", asked=True),),
    )
