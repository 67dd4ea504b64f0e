"""Readings of a UV index meter in a sentence."""

import re
from collections.abc import Iterator

from bot.language.hearing.distances import measure_of
from bot.language.hearing.facts import GONE, Ask, Fact, FactName, LampKind
from bot.language.hearing.figures import Figure
from bot.language.hearing.lexicon import Mark
from bot.language.hearing.scene import Scene
from bot.language.quantities import Measure
from bot.language.readings import PlacedReading
from bot.language.units import Dimension

__all__ = ["meter_readings"]

_MOST_UVI = 20
# In the shade it should be next to nothing: no reading of the basking spot.
_ELSEWHERE = re.compile(
    r",? (?:in|at|on) (?:the |a )?(?:\w+ )?(?:shade|shadow|cool|cold|far end|other end|floor)\b"
)
_MOST_LAMPS = 4
_SHOWS = frozenset(("reads", "shows", "says", "read"))
_UNLABELLED = (LampKind.METAL_HALIDE, LampKind.MERCURY_VAPOUR)


def meter_readings(scene: Scene) -> Iterator[Fact | Ask]:
    """Return UV indices, with their distance where it is told; run before tubes and distances."""
    if not scene.of("uvi"):
        yield from _unlabelled(scene)
        return
    for figure in scene.loose("plain"):
        if figure.high > _MOST_UVI or scene.standing(figure) in GONE:
            continue
        distance = _distance_after(scene, figure)
        if distance and len(figure.sides) == 1:
            length, measure = distance
            scene.take(figure, length)
            text = scene.text[figure.start : length.end]
            reading = PlacedReading(float(figure.low), measure, text)
            yield scene.fact(FactName.UVI_AT, reading, figure, length)
            continue
        elsewhere = _ELSEWHERE.match(scene.text, figure.end) is not None
        if _shown_by_meter(scene, figure):
            scene.take(figure)
            if elsewhere:
                continue
            value = (float(figure.low), float(figure.high))
            yield scene.fact(FactName.UVI, value, figure)
            continue
        around = scene.marks.within(figure.start - 60, figure.end + 20)
        words = (mark for mark in around if mark.kind == "uvi")
        word = next((w for w in words if _belongs(scene, figure, w)), None)
        if word:
            scene.take(figure)
            if elsewhere:
                continue
            value = (float(figure.low), float(figure.high))
            yield scene.fact(FactName.UVI, value, figure, word)


def _unlabelled(scene: Scene) -> Iterator[Fact]:
    """Yield what is read at a distance beside a lamp with no strength on it: 8 at 12 inch.

    A small whole number may be how many lamps there are, unless something reads it.
    """
    if not scene.of("lamp", *_UNLABELLED):
        return
    for figure in scene.loose("plain"):
        is_read = bool(set(scene.words(figure.start - 12, figure.start)[-1:]) & _SHOWS)
        is_count = figure.high <= _MOST_LAMPS and "." not in figure.text and not is_read
        distance = _distance_after(scene, figure)
        if figure.high > _MOST_UVI or is_count or distance is None or len(figure.sides) != 1:
            continue
        if scene.standing(figure) in GONE:
            continue
        length, measure = distance
        scene.take(figure, length)
        reading = PlacedReading(float(figure.low), measure, scene.text[figure.start : length.end])
        yield scene.fact(FactName.UVI_AT, reading, figure, length)


def _shown_by_meter(scene: Scene, figure: Figure) -> bool:
    """Say whether a figure is told after a sentence about the UV index: mine reads 6.2."""
    start, _ = scene.sentence(figure.start)
    asked = scene.before(figure.start, frozenset(("uvi",)), min(start, figure.start) - 60)
    verb = scene.words(max(start, figure.start - 12), figure.start)[-1:]
    return asked is not None and "." in figure.text and bool(set(verb) & _SHOWS)


def _belongs(scene: Scene, figure: Figure, word: Mark) -> bool:
    if scene.sentence(word.start) != scene.sentence(figure.start):
        return False
    if word.end <= figure.start:
        between = scene.words(word.end, figure.start)
        comma = "," in scene.text[word.end : figure.start]
        return len(between) <= 4 and not comma and not _number_between(scene, word, figure)
    return (
        not scene.words(figure.end, word.start) and "," not in scene.text[figure.end : word.start]
    )


def _number_between(scene: Scene, word: Mark, figure: Figure) -> bool:
    return bool(scene.figures.within(word.end, figure.start))


def _distance_after(scene: Scene, figure: Figure) -> tuple[Figure, Measure] | None:
    for length in scene.figures.within(figure.end, figure.end + 40):
        if length.kind != "length" or not scene.free(length):
            return None
        between = scene.text[figure.end : length.start].strip()
        measure = measure_of(length, Dimension.LENGTH)
        if (
            between in ("at", "@", "from", "uvi at", "uvi @")
            and measure
            and measure.low == measure.high
        ):
            return length, measure
        return None
    return None
