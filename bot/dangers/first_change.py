"""The first change of a set-up where a limit was passed: what is switched off comes before all."""

from collections.abc import Iterable

from bot.dangers.table import hazard
from bot.reply import Alarm
from calc.setup.set_up import Act, Movement, Thing

__all__ = ["first_change"]

_NOW = ("now", "")
_CHANGES = {
    "box_too_hot": Movement(Act.SWITCH_OFF, (Thing.HEAT_LAMP,)),
    "uv_too_strong": Movement(Act.SWITCH_OFF, (Thing.TUBE,)),
    "night_too_cold": Movement(Act.ADD, (Thing.HEATER,)),
}


def first_change(alarms: Iterable[Alarm], planned: Movement | None) -> Movement | None:
    """Return what the most pressing limit asks for now, else the change that was planned."""
    pressing = (
        alarm
        for alarm in alarms
        if alarm.key in _CHANGES and alarm.urgency in _NOW and not alarm.asked
    )
    first = min(pressing, key=lambda alarm: hazard(alarm.key).rank, default=None)
    return planned if first is None else _CHANGES[first.key]
