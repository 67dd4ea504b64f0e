"""Hazards of a UV lamp that a told set-up shows: a pane between, a dimmer."""

from collections.abc import Iterator

from bot.answers.setup_told import Told
from bot.answers.through_pane import NO_UV
from bot.language.hearing.facts import LampKind
from bot.reply import Alarm

__all__ = ["lamp_alarms"]

_DIMMER = "dimmer_mismatch"
_GLOWS = (LampKind.HALOGEN, LampKind.FLOOD, LampKind.INCANDESCENT, LampKind.CERAMIC)


def lamp_alarms(told: Told) -> Iterator[Alarm]:
    """Return the hazards that the facts of a set-up show."""
    if told.pane:
        yield Alarm(key=NO_UV, words=told.pane.words)
    elif told.pane_lid and (told.tube or told.uv_lamp):
        yield Alarm(key=NO_UV, words=told.pane_lid.words, asked=True)
