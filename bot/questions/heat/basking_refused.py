"""Readings of a basking spot from which nothing can be worked out. Words: ``basking.ftl``."""

from dataclasses import dataclass
from enum import Enum, auto

from bot.facts import Says
from bot.language.shown import shown
from bot.layered import Brief, Layered
from bot.questions.heat.shared import HEAT_CARE
from bot.refusal import RefusedError

__all__ = ["Missing", "Unreckoned", "refused"]


class Missing(Enum):
    """What is missing before a lamp can be changed."""

    DIMMER_ON = auto()
    LAMP_HEAT = auto()
    COOLER_AIR = auto()


_ASK = {
    Missing.DIMMER_ON: (("dimmer:80%",), "dimmer"),
    Missing.LAMP_HEAT: (("surface:92F", "air:80F"), "air"),
    Missing.COOLER_AIR: (("surface:92F", "air:80F", "want:103F"), "air"),
}


@dataclass(frozen=True, slots=True)
class Unreckoned:
    """A reading that cannot be right, or a wish that a lamp cannot bring."""

    missing: Missing
    read: str
    example: str


def refused(missing: Missing, text: str) -> RefusedError:
    """Return the refusal, with an example that is answered."""
    example, option = _ASK[missing]
    return RefusedError(Unreckoned(missing, shown(text), " ".join(example)), _told, option)


def _told(facts: Unreckoned) -> Layered:
    say = Says("basking", facts)
    return Layered(
        command="basking",
        status="problem",
        title=say("refused-title"),
        brief=Brief(
            head=say.by("refused", facts.missing),
            range=(say.by("refused-why", facts.missing),),
            steps=(say("do-ask"),),
        ),
        steps=(say("do-ask"),),
        care=HEAT_CARE,
        guide=("the-basking-spot",),
    )
