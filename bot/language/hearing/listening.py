"""Hearing a whole message: every listener in turn, then what is left contradictory."""

from collections.abc import Callable, Iterator, Mapping
from dataclasses import dataclass

from bot.facts import Say
from bot.language.hearing.animals import animals_heard
from bot.language.hearing.contrasts import contrasted
from bot.language.hearing.counts import counts, lying
from bot.language.hearing.distances import distances
from bot.language.hearing.facts import THERE, Ask, Fact, FactName, Heard
from bot.language.hearing.homes import homes
from bot.language.hearing.items import Item, items_of
from bot.language.hearing.lamps import fixtures, lamp_kinds, tubes
from bot.language.hearing.laying_out import (
    LONGEST_MESSAGE,
    MOST_FIGURES,
    MOST_MARKS,
    laid_out,
)
from bot.language.hearing.lexicon import Names
from bot.language.hearing.meshes import meshes
from bot.language.hearing.meters import meter_readings
from bot.language.hearing.power import controls, thermometers, watts
from bot.language.hearing.scene import Scene
from bot.language.hearing.second import reading_of, second_opinion
from bot.language.hearing.settling import settled
from bot.language.hearing.temperatures import temperatures
from bot.language.hearing.times import times
from bot.language.shown import shown

__all__ = ["Listened", "hear", "listened"]

# In this order: who comes first takes the figures that are surely its own.
_LISTENERS: tuple[Callable[[Scene], Iterator[Fact | Ask]], ...] = (
    animals_heard,
    homes,
    counts,
    lying,
    meter_readings,
    controls,
    times,
    meshes,
    tubes,
    fixtures,
    lamp_kinds,
    watts,
    distances,
    thermometers,
    temperatures,
)

# What tells figures: heard once more where a figure was told that is not so now.
_OF_FIGURES = (homes, meter_readings, controls, times, tubes, watts, distances, temperatures)

_TOO_LONG = Say("unclear-long")


def hear(text: str, names: Names) -> Heard:
    """Return the facts in a free text, and what must be asked.

    ``names`` are those of animals. Nothing is guessed: what is unclear becomes a question with
    the words it is about, and so does a text that is too long.
    """
    first = listened(text, names)
    scene, facts, asked, aside = first.scene, first.facts, first.asked, first.aside
    if scene.figures:
        items = items_of(scene)
        read = {item.start: first.read(item) for item in items}
        facts, asked, not_so = second_opinion(scene, items, read, facts, asked)
        aside = [*aside, *not_so]
    return settled(scene, facts, asked, aside)


@dataclass(frozen=True, slots=True)
class Listened:
    """What the listeners heard in a text; ``apart`` is what they made of what is not so now."""

    scene: Scene
    facts: list[Fact]
    asked: list[Ask]
    aside: list[Fact]
    apart: Mapping[int, Fact | Ask]

    def read(self, item: Item) -> str:
        """Return in a word what was made of a figure."""
        at = item.figure.start
        return reading_of(self.scene.read.get(at), self.apart.get(at))


def listened(text: str, names: Names) -> Listened:
    """Return what the listeners alone hear in a text."""
    scene = laid_out(text[:LONGEST_MESSAGE], names)
    said = [row for listen in _LISTENERS for row in listen(scene)]
    facts = [row for row in said if isinstance(row, Fact)]
    questions = [row for row in said if isinstance(row, Ask)]
    too_many = len(scene.figures) >= MOST_FIGURES or len(scene.marks) >= MOST_MARKS
    if len(text) > LONGEST_MESSAGE or too_many:
        head = shown(text)
        questions.append(Ask(FactName.TEXT, _TOO_LONG, text[: len(head)], 0, len(head)))
    aside, apart = _aside(scene)
    now = list(contrasted(scene, aside, facts)) if aside else []
    # What holds now is asked about no more.
    left = [ask for ask in questions if not any(f.start <= ask.start <= f.end for f in now)]
    return Listened(scene, [*facts, *now], left, aside, apart)


def _aside(scene: Scene) -> tuple[list[Fact], Mapping[int, Fact | Ask]]:
    """Return the figures of what was, is wished for, asked about or others have, as facts.

    The second is what each figure was read as.
    """
    if all(scene.standing(figure) in THERE for figure in scene.figures):
        return [], {}
    supposed = scene.supposed()
    said = (row for listen in _OF_FIGURES for row in listen(supposed))
    found = [row for row in said if isinstance(row, Fact) and row.standing not in THERE]
    return found, supposed.read
