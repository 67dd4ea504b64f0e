"""Times in a sentence: hours of light, time before a reading, the age of a tube or an animal."""

import re
from collections.abc import Iterator
from itertools import pairwise

from bot.language.hearing.ages import age_of, alone, bare_ages
from bot.language.hearing.distances import measure_of
from bot.language.hearing.facts import THERE, Ask, Fact, FactName
from bot.language.hearing.figures import Figure
from bot.language.hearing.lexicon import Mark
from bot.language.hearing.scene import Scene
from bot.language.quantities import Measure, read_duration
from bot.language.units import Dimension

__all__ = ["times"]

_HOUR = 3600
# A day of light is not shorter; a shorter time is how long a lamp had been on.
_SHORTEST_DAY_H, _LONGEST_DAY_H = 6, 20
_AGED = frozenset(("month", "year", "week"))
_LAMPS = frozenset(("tube", "heat", "lamp"))
_DOTTED = re.compile(
    r"\bon (?:at )?([0-9]{1,2})[.h]([0-5][0-9])\b[^0-9\n]{0,20}"
    r"off (?:at )?([0-9]{1,2})[.h]([0-5][0-9])\b"
)
_HOURS_SAID = re.compile(
    r"\b(?:hours(?: of (?:light|uvb?))?|photoperiod|day ?length|light cycle|lights? on)"
    r"(?: ?[:=]| is)? ([0-9]{1,2})(?:[:/]([0-9]{1,2}))?(?=\s*(?:[,.;)\n]|\Z))"
)
_NEEDS = re.compile(
    r"\b(?:need|needs|give|gives|gets?|run|package|label)(?: (?:about|only|her|him|them|it))* \Z"
)
_RUNS = frozenset(("do", "run", "have", "doing", "running", "give", "currently", "mine", "mines"))
_ON_OFF = re.compile(
    r"([0-9]{1,2})(?:\s?h(?:ou)?rs?)?\s*on\s*(?:and|,|/)?\s*([0-9]{1,2})(?:\s?h(?:ou)?rs?)?\s*off"
)


def times(scene: Scene) -> Iterator[Fact | Ask]:
    """Return hours, times and ages."""
    yield from _on_off(scene)
    yield from _said_as_hours(scene)
    yield from _clocks(scene)
    yield from bare_ages(scene)
    for figure in scene.loose("duration"):
        if scene.standing(figure) not in THERE:
            continue
        measure = measure_of(figure, Dimension.DURATION)
        if measure is None:
            continue
        name = age_of(scene, figure) if figure.unit in _AGED else _hours(scene, figure, measure)
        if name:
            scene.take(figure)
            yield scene.fact(name, measure, figure)
            if name is FactName.HOURS:
                yield from _also_in_season(scene, figure)


def _said_as_hours(scene: Scene) -> Iterator[Fact | Ask]:
    """Return the hours of a form: hours: 12; photoperiod 13:11."""
    for match in _HOURS_SAID.finditer(scene.text):
        hours = int(match[1])
        whole = match[2] is None or hours + int(match[2]) == 24
        if whole and _SHORTEST_DAY_H <= hours <= _LONGEST_DAY_H:
            figures = scene.figures.touching(match.start(1), match.end())
            if all(scene.free(f) and scene.standing(f) in THERE for f in figures):
                scene.take(*figures)
                yield _day(scene, hours, match.start(1), match.end())


def _on_off(scene: Scene) -> Iterator[Fact | Ask]:
    for match in _ON_OFF.finditer(scene.text):
        on, off = int(match[1]), int(match[2])
        if on + off == 24:
            scene.take(*scene.figures.within(match.start(), match.end()))
            yield _day(scene, on, match.start(), match.end())
    for match in _DOTTED.finditer(scene.text):
        first, last = (int(match[i]) + int(match[i + 1]) / 60 for i in (1, 3))
        hours = (last - first) % 24
        if _SHORTEST_DAY_H <= hours <= _LONGEST_DAY_H:
            scene.take(*scene.figures.touching(match.start(), match.end()))
            yield _day(scene, hours, match.start(), match.end())
    for figure in scene.loose("pair"):
        on, off = (int(side.value) for side in figure.sides)
        if on + off == 24 and min(on, off) >= _SHORTEST_DAY_H:
            scene.take(figure)
            yield _day(scene, on, figure.start, figure.end)


def _day(scene: Scene, hours: float, start: int, end: int) -> Fact:
    measure = read_duration(f"{hours:g} h")
    return scene.fact(FactName.HOURS, measure, Mark("hours", "day", start, end))


def _clocks(scene: Scene) -> Iterator[Fact | Ask]:
    """Return the hours between two times of the clock: 7am to 7pm, or lights on and lights off."""
    clocks = scene.loose("clock")
    for one, other in pairwise(clocks):
        if scene.text[one.end : other.start].strip() in ("to", "-", "till", "until", "til"):
            yield from _between(scene, one, other)
    words = {m.start: m for m in scene.of("hours", "light")}
    switched: dict[str, Figure] = {}
    for figure in clocks:
        before = scene.text[max(0, figure.start - 14) : figure.start]
        near = scene.text[figure.end : figure.end + 14]
        for way in ("on", "off"):
            after = re.match(rf"\s*:?\s*lights?\s+{way}\b", near)
            said = re.search(rf"\b{way}\b\s*:?\s*(?:at )?$", before)
            if (after or said) and words:
                switched.setdefault(way, figure)
    if len(switched) == 2:
        yield from _between(scene, switched["on"], switched["off"])


def _between(scene: Scene, on: Figure, off: Figure) -> Iterator[Fact | Ask]:
    hours = float(off.low - on.low) % 24
    if _SHORTEST_DAY_H <= hours <= _LONGEST_DAY_H and scene.free(on):
        scene.take(on, off)
        yield _day(scene, hours, on.start, off.end)


def _hours(scene: Scene, figure: Figure, measure: Measure) -> FactName | None:
    start, end = scene.sentence(figure.start)
    waited = scene.before(figure.start, frozenset(("hours",)), max(start, figure.start - 30))
    on = (
        waited is not None
        and waited.value == "on"
        and len(scene.words(waited.end, figure.start)) <= 2
    )
    if on and measure.high <= _SHORTEST_DAY_H * _HOUR:
        return FactName.ON_FOR
    if figure.unit != "h" or not _SHORTEST_DAY_H * _HOUR <= measure.low <= _LONGEST_DAY_H * _HOUR:
        return None
    light = scene.before(figure.start, frozenset(("hours", "tube", "heat")), start)
    lamp = scene.before(figure.start, frozenset(("lamp",)), max(start, figure.start - 20))
    if lamp and not scene.words(lamp.end, figure.start):
        light = lamp
    if light is None and _RUNS & set(scene.words(max(start, figure.start - 12), figure.start)[-2:]):
        # "How long should the lights be on? I do 10 hours."
        light = scene.before(start, frozenset(("hours",)), start - 60)
    following = scene.text[figure.end : min(end, figure.end + 24)]
    need = _NEEDS.search(scene.text, max(start, figure.start - 24), figure.start)
    said = need or re.match(
        r"\s*(?:a day|per day|each day|every day|daily|day\b|of (?:light|uv|day)|on\b"
        r"|/\s?day|light)",
        following,
    )
    asked = scene.words(figure.start - 4, figure.start) == ["is"]
    asked = asked and scene.next_word(figure.end) in ("fine", "ok", "okay", "enough", "too")
    listed = asked or alone(scene, figure) or _in_a_row(scene, figure)
    return FactName.HOURS if light or said or listed else None


def _in_a_row(scene: Scene, figure: Figure) -> bool:
    """Say whether a figure follows a place in a list without commas: 78 cool 67 night 12h."""
    place = scene.before(figure.start, frozenset(("place", "temperature")), figure.start - 20)
    told = place is not None and not scene.text[place.end : figure.start].strip()
    return told and not scene.next_word(figure.end)


def _also_in_season(scene: Scene, figure: Figure) -> Iterator[Fact | Ask]:
    _, end = scene.sentence(figure.start)
    for other in scene.figures.within(figure.end, min(end, figure.end + 40)):
        if other.kind == "plain" and re.match(r"\s*in (?:summer|winter)", scene.text[other.end :]):
            scene.take(other)
            yield _day(scene, float(other.low), other.start, other.end)
