"""What has no figures, whatever else was told: a pane between, a lamp that is no T5 HO tube."""

from typing import Protocol

from bot.answers.other_lamp import answer_other_lamp
from bot.answers.through_pane import answer_pane
from bot.language.lamps import OtherLamp
from bot.language.readings import PlacedReading
from bot.language.screens import Pane, Screen
from bot.language.unsure import Unsure
from bot.language.uv_lamps import UvLamp
from bot.preferences import Context
from bot.questions.uv.readings import enough_read
from bot.reply import Reply

__all__ = ["answer_without_figures"]


class _AboutUv(Protocol):
    """What every question about a UV lamp tells."""

    @property
    def screen(self) -> Screen | Pane | Unsure | None: ...

    @property
    def animal(self) -> str: ...

    @property
    def uvi(self) -> tuple[float, float] | None: ...


def answer_without_figures(
    command: str,
    query: _AboutUv,
    kind: UvLamp,
    context: Context,
    readings: tuple[PlacedReading, ...] | None = None,
) -> Reply | None:
    """Return the answer where no figure holds; enough readings of one's own take its place."""
    if isinstance(query.screen, Pane):
        return answer_pane(command, query.screen, context)
    if kind is UvLamp.T5_HO or enough_read(readings, kind):
        return None
    tube = getattr(query, "tube", None)
    label = tube.number if isinstance(tube, OtherLamp) else None
    return answer_other_lamp(command, kind, query.animal, query.uvi, context, readings, label)
