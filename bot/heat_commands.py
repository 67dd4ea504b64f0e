"""The questions about heat, air, nights and hours, in the order of the list."""

from bot.command import Command
from bot.questions.heat.air import AIR
from bot.questions.heat.basking import BASKING
from bot.questions.heat.hours import HOURS
from bot.questions.heat.lamp import LAMP
from bot.questions.heat.night import NIGHT
from bot.questions.heat.surface import SURFACE
from bot.questions.heat.temps import TEMPS
from bot.questions.heat.watts import WATTS

__all__ = ["HEAT_COMMANDS"]

HEAT_COMMANDS: tuple[Command, ...] = (
    TEMPS,
    BASKING,
    WATTS,
    AIR,
    NIGHT,
    HOURS,
    SURFACE,
    LAMP,
)
