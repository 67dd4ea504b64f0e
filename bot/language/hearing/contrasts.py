"""A bare figure told against another: the guide says 16 inches, mine 14; used to be 30, now 26.

What was, is wished for, asked about or told of others has a place and a unit. The figure that holds
now follows it with a word such as mine, now or i have, and takes both from it.
"""

from collections.abc import Iterator
from dataclasses import replace

from bot.language.errors import NotUnderstoodError
from bot.language.hearing.facts import THERE, Fact, Standing
from bot.language.hearing.figures import Figure
from bot.language.hearing.past import stands_now
from bot.language.hearing.scene import Scene
from bot.language.hearing.unplaced import MINE
from bot.language.hearing.word_lists import word_list
from bot.language.quantities import Measure, measured

__all__ = ["contrasted"]

# From the one figure to the other, in characters, and how many times larger or smaller it may be.
_FURTHEST = 60
_MOST_TIMES = 3
_AFTER = frozenset(("here", "now", "today"))


def contrasted(scene: Scene, aside: list[Fact], facts: list[Fact]) -> Iterator[Fact]:
    """Return the facts of the bare figures that are told against what stands apart."""
    told = {fact.name for fact in facts}
    for before in scene.figures:
        stands = scene.standing(before)
        fact = None if stands in THERE else _fact_of(scene, before, aside)
        if fact is None or fact.name in told or not isinstance(fact.value, Measure):
            continue
        figure = stands_now(scene.text, scene.marks, scene.figures, before)
        if figure is None:
            later = scene.figures.within(before.end, before.end + 2 * _FURTHEST)
            near = (f for f in later if f.end <= before.end + _FURTHEST or _is_mine(scene, f))
            figure = next((f for f in near if _holds(scene, before, f)), None)
        if figure is None or _used(scene, figure, facts):
            continue
        measure = _measured(figure, fact.value)
        if measure is not None:
            scene.take(figure)
            told.add(fact.name)
            found = scene.fact(fact.name, measure, figure, assumed=figure.unit is None)
            yield replace(found, standing=Standing.IS)


def _fact_of(scene: Scene, figure: Figure, aside: list[Fact]) -> Fact | None:
    start, end = scene.normal.span(figure.start, figure.end)
    return next((fact for fact in aside if fact.start <= start and end <= fact.end), None)


def _used(scene: Scene, figure: Figure, facts: list[Fact]) -> bool:
    start, end = scene.normal.span(figure.start, figure.end)
    return any(fact.start < end and start < fact.end for fact in facts)


def _holds(scene: Scene, before: Figure, figure: Figure) -> bool:
    """Say whether a figure is a bare one that is so now, told against the one before it."""
    if figure.kind != "plain":
        return False
    if scene.next_word(figure.end) in word_list("counted"):
        return False
    said = scene.words(before.end, figure.start)
    own = bool(set(said[-4:]) & word_list("holds_now"))
    own = own or scene.next_word(figure.end) in _AFTER
    low, high = sorted((before.low, figure.low))
    return own and low > 0 and high <= _MOST_TIMES * low


def _is_mine(scene: Scene, figure: Figure) -> bool:
    return bool(MINE & set(scene.words(figure.start - 24, figure.start)[-3:]))


def _measured(figure: Figure, like: Measure) -> Measure | None:
    sides = [replace(side, unit=side.unit or like.unit) for side in figure.sides]
    try:
        return measured(sides[0], sides[-1], like.dimension, like.unit, figure.text)
    except NotUnderstoodError:
        return None
