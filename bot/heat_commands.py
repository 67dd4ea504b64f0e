"""The questions about heat, air, nights and hours, in the order of the list."""

from bot.answers.basking import answer_basking
from bot.command import Command
from bot.queries.heat import BaskingQuery
from bot.questions.heat.air import AIR
from bot.questions.heat.hours import HOURS
from bot.questions.heat.lamp import LAMP
from bot.questions.heat.night import NIGHT
from bot.questions.heat.surface import SURFACE
from bot.questions.heat.temps import TEMPS
from bot.questions.heat.watts import WATTS

__all__ = ["HEAT_COMMANDS"]

HEAT_COMMANDS: tuple[Command, ...] = (
    TEMPS,
    Command(
        name="basking",
        summary="From your reading to the wanted surface: move the lamp, change it or dim it",
        query=BaskingQuery,
        answer=answer_basking,
        examples=(
            "basking surface:92F air:80F distance:10in want:103F",
            "basking surface:44C air:27C distance:25cm watts:75W animal:bearded dragon",
        ),
        guide=("the-basking-spot", "dimmers-and-wattage"),
    ),
    WATTS,
    AIR,
    NIGHT,
    HOURS,
    SURFACE,
    LAMP,
)
