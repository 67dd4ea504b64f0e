"""How many UV tubes hang together, and how far apart: two 12% tubes, a dual fixture."""

import re
from collections.abc import Iterator, Mapping
from functools import cache
from typing import Any

from bot.language.hearing.distances import measure_of
from bot.language.hearing.facts import Ask, Fact, FactName, Standing
from bot.language.hearing.lexicon import Mark
from bot.language.hearing.scene import Scene
from bot.language.hearing.strengths import UV_LAMPS
from bot.language.units import Dimension
from calc.tables import read_table

__all__ = ["counts", "lying"]

_A_FIGURE = r"[0-9]{1,3}(?:\.[0-9])? ?(?:%|percent|w|watts?|in|inch(?:es)?|ft|foot|cm)?"
_MOST_BETWEEN = 5
_TUBES = frozenset(("tube", "lamp"))


@cache
def _table() -> Mapping[str, Any]:
    return read_table("bot/language/hearing/counts.toml")


def _any_of(words: list[str]) -> str:
    longest_first = sorted(words, key=len, reverse=True)
    return "|".join(re.escape(word).replace(r"\ ", "[ -]") for word in longest_first)


@cache
def _counted() -> re.Pattern[str]:
    words = _table()["words"]
    many = _any_of(list(_table()["many"]))
    between = rf"(?:(?:{_any_of(words['between'])}|{_A_FIGURE})[ ,-]{{1,2}}){{0,{_MOST_BETWEEN}}}"
    percent = r"[0-9]{1,2} ?(?:%|percent)"
    nouns = rf"(?:(?:{_any_of(words['nouns'])})(?![a-z0-9])|{percent})"
    after = (
        rf"(?:{percent}|(?:{_any_of(words['nouns'])})(?![a-z0-9])) ?,? ?"
        r"(?:x ?(?P<times>[2-4])|\((?:x ?)?(?P<braced>[2-4])x?\))(?![0-9.])"
    )
    return re.compile(
        rf"(?<![a-z0-9.%])(?:(?P<many>{many})[ -]x?[ -]?{between}{nouns}"
        rf"|(?P<held>{many})[ -](?:{_any_of(words['fixtures'])})(?![a-z0-9]))|{after}"
    )


@cache
def _only_one() -> re.Pattern[str]:
    return re.compile(rf"(?<![a-z0-9])(?:{_any_of(_table()['words']['only_one'])})(?![a-z0-9])")


@cache
def _across() -> re.Pattern[str]:
    return re.compile(rf"(?<![a-z0-9])(?:{_any_of(_table()['words']['across'])})(?![a-z0-9])")


@cache
def _apart() -> re.Pattern[str]:
    return re.compile(rf" ?(?:{_any_of(_table()['words']['apart'])})(?![a-z0-9])")


def counts(scene: Scene) -> Iterator[Fact | Ask]:
    """Return how many tubes were told to hang together, where it is more than one."""
    for match in _counted().finditer(scene.text):
        word = match["many"] or match["held"] or match["times"] or match["braced"]
        number = int(_table()["many"].get(word.replace("-", " "), word if word.isdigit() else 1))
        mark = Mark("tubes", str(number), *match.span())
        if scene.standing(mark) is Standing.NOT:
            continue
        if _only_one().search(scene.text):
            return
        yield scene.fact(FactName.TUBES, number, mark)
        yield from _gaps(scene)
        return


def lying(scene: Scene) -> Iterator[Fact | Ask]:
    """Return that a tube was told to lie across, the short way."""
    for match in _across().finditer(scene.text):
        mark = Mark("across", "across", *match.span())
        start = scene.clause(mark.start)[0]
        tube = scene.before(mark.start, _TUBES, start)
        uv = tube is not None and (tube.kind == "tube" or tube.value in UV_LAMPS)
        percent = any(f.kind == "percent" for f in scene.figures.within(start, mark.start))
        if (uv or percent) and scene.standing(mark) is not Standing.NOT:
            yield scene.fact(FactName.ACROSS, True, mark)
            return


def _gaps(scene: Scene) -> Iterator[Fact | Ask]:
    """Return the length that is told to lie between the tubes."""
    for figure in scene.loose("length"):
        measure = measure_of(figure, Dimension.LENGTH)
        if measure and len(figure.sides) == 1 and _apart().match(scene.text, figure.end):
            scene.take(figure)
            yield scene.fact(FactName.GAP, measure, figure)
            return
