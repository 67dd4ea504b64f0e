"""Figures that can only be temperatures although nobody said of where: they are asked about."""

from itertools import pairwise

from bot.language.hearing.figures import Figure
from bot.language.hearing.scene import Scene
from bot.language.hearing.word_lists import word_list

__all__ = ["MINE", "NO_COUNT", "unplaced"]

NO_COUNT = 60
"""A number from here on is no count of plants or crickets, if no money or time is named."""

MINE = frozenset(("mine", "mines", "mine's"))


def unplaced(scene: Scene, figures: list[Figure]) -> list[Figure]:
    """Return the figures that are readings, and that nobody has used."""
    found = [f for f in figures if scene.free(f) and _surely(scene, f)]
    found += [f for f in scene.loose("pair", "row") if _like_two_readings(f)]
    return found + [f for f in figures if scene.free(f) and f not in found and _lonely(scene, f)]


def _surely(scene: Scene, figure: Figure) -> bool:
    if figure.kind in ("temperature", "degrees"):
        return True
    word = scene.before(figure.start, frozenset(("temperature",)), scene.clause(figure.start)[0])
    return word is not None and len(scene.words(word.end, figure.start)) <= 2


def _like_two_readings(figure: Figure) -> bool:
    return 60 <= figure.low <= figure.high <= 140 or 18 <= figure.low <= figure.high <= 50


def _lonely(scene: Scene, figure: Figure) -> bool:
    """Say whether a bare number can only be a reading whose place was not said: beardie, 112."""
    if not _like_two_readings(figure):
        return False
    said = {*scene.words(max(0, figure.start - 10), figure.start)[-1:]} & word_list("reads")
    start, end = scene.clause(figure.start)
    around = [*scene.words(start, figure.start), *scene.words(figure.end, end)]
    alone = set(around) <= word_list("by_itself") and figure.low >= NO_COUNT
    if alone or (said and figure.low >= NO_COUNT) or _of_day(scene, figure):
        return True
    mine = bool(MINE & set(scene.words(start, figure.start)[-2:]))
    return mine or _in_a_run(scene, figure)


def _in_a_run(scene: Scene, figure: Figure) -> bool:
    """Say whether a bare number stands in a row that falls, as readings do: leo 33 24 20."""
    around = scene.figures.within(figure.start - 12, figure.end + 12)
    row = [f for f in around if f.kind in ("plain", "pair") and _like_two_readings(f)]
    for one, other in pairwise(row):
        between = scene.text[one.end : other.start].strip(" ,/&|-")
        if figure in (one, other) and between in ("", "and", "e", "y") and one.low > other.low:
            return True
    return False


def _of_day(scene: Scene, figure: Figure) -> bool:
    day = scene.before(figure.start, frozenset(("place",)), figure.start - 16)
    if day is not None and day.value == "day" and not scene.words(day.end, figure.start):
        return True
    return scene.next_word(figure.end) == "day"
