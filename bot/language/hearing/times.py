"""Times in a sentence: hours of light, time before a reading, the age of a tube or an animal."""

import re
from collections.abc import Iterator
from itertools import pairwise

from bot.language.hearing.distances import measure_of
from bot.language.hearing.facts import THERE, Ask, Fact, FactName
from bot.language.hearing.figures import Figure
from bot.language.hearing.lexicon import Mark
from bot.language.hearing.scene import LIVING, Scene
from bot.language.hearing.strengths import STRONGEST_TUBE
from bot.language.hearing.word_lists import word_list
from bot.language.quantities import Measure, read_duration
from bot.language.units import Dimension

__all__ = ["times"]

_HOUR = 3600
# A day of light is not shorter; a shorter time is how long a lamp had been on.
_SHORTEST_DAY_H, _LONGEST_DAY_H = 6, 20
# An entry of a list has no more characters than this on either side of its figure.
_LIST_ENTRY = 60
_AGED = frozenset(("month", "year", "week"))
_LAMPS = frozenset(("tube", "heat", "lamp"))
_CHANGED = frozenset(("changed", "replaced", "bought", "installed", "swapped", "got", "new", "put"))
# A child or somebody else whose age is told.
_SOMEBODY = re.compile(
    r"(?: old)? (?:sons?|daughters?|kids?|child|children|boys?|girls?|brother|sister)\b"
)
_DOTTED = re.compile(
    r"\bon (?:at )?([0-9]{1,2})[.h]([0-5][0-9])\b[^0-9\n]{0,20}"
    r"off (?:at )?([0-9]{1,2})[.h]([0-5][0-9])\b"
)
# A kind of animal right before an age, where another name tells which one it is.
_OF_A_KIND = re.compile(
    r"\b(?:lizard|gecko|snake|tortoise|turtle|dragon|python|skink|chameleon|monitor|boa|animal|pet|guy|girl"
    r"|boy)(?: (?:is|of|aged|about|around|now|approx))* \Z"
)
# An age without its unit: my corn snake is 2, aged 7, she turned 3 in may.
_IS = re.compile(r"(?: (?:about|around|only|just|now|nearly|almost|like))* is(?: (?:about|only|now|nearly))* \Z")
_AGED_SO = re.compile(r"\b(?:aged|age:?|turned|turns|turning)(?: about| around)? \Z")
_AGE_ENDS = re.compile(r" ?(?:[,.;!?)\n]|\Z|now\b|and\b|but\b|in (?:jan|feb|mar|apr|may|ju|aug|sep|oct|nov|dec))")
_OLDEST_BARE, _OLDEST = 12, 120
_HOURS_SAID = re.compile(
    r"\b(?:hours(?: of (?:light|uvb?))?|photoperiod|day ?length|light cycle|lights? on)(?: ?[:=]| is)? "
    r"([0-9]{1,2})(?:[:/]([0-9]{1,2}))?(?=\s*(?:[,.;)\n]|\Z))"
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
    yield from _bare_ages(scene)
    for figure in scene.loose("duration"):
        if scene.standing(figure) not in THERE:
            continue
        measure = measure_of(figure, Dimension.DURATION)
        if measure is None:
            continue
        name = _age(scene, figure) if figure.unit in _AGED else _hours(scene, figure, measure)
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


def _bare_ages(scene: Scene) -> Iterator[Fact | Ask]:
    """Return an animal's age that is told in years without the word: my corn snake is 2."""
    for figure in scene.loose("plain"):
        if len(figure.sides) > 1 or figure.low.denominator > 2 or not 0 < figure.low <= _OLDEST:
            continue
        start = max(scene.sentence(figure.start)[0], figure.start - 40)
        living = scene.before(figure.start, LIVING, start)
        lamp = scene.before(figure.start, _LAMPS, living.end if living else start)
        aged = _AGED_SO.search(scene.text, start, figure.start) is not None
        bare = living is not None and _IS.fullmatch(scene.text, living.end, figure.start)
        bare = bare and figure.low <= _OLDEST_BARE and not figure.text.endswith(".0")
        if lamp or not (aged or bare) or not _AGE_ENDS.match(scene.text, figure.end):
            continue
        if scene.standing(figure) in THERE:
            scene.take(figure)
            years = read_duration(f"{float(figure.low):g} years")
            yield scene.fact(FactName.ANIMAL_AGE, years, figure, assumed=True)


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
    said = re.match(
        r"\s*(?:a day|per day|each day|every day|daily|day\b|of (?:light|uv|day)|on\b|/\s?day|light)",
        following,
    )
    asked = scene.words(figure.start - 4, figure.start) == ["is"]
    asked = asked and scene.next_word(figure.end) in ("fine", "ok", "okay", "enough", "too")
    listed = asked or _alone(scene, figure) or _in_a_row(scene, figure)
    return FactName.HOURS if light or said or listed else None


def _alone(scene: Scene, figure: Figure) -> bool:
    """Say whether a figure is all there is in its clause, as in a list."""
    start, end = scene.clause(figure.start)
    if figure.start - start > _LIST_ENTRY or end - figure.end > _LIST_ENTRY:
        return False
    around = [*scene.words(start, figure.start), *scene.words(figure.end, end)]
    return set(around) <= {"currently", "now", "about", "around", "its", "for", "is", "at"}


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


def _is_bare_age(scene: Scene, living: Mark, figure: Figure, said: set[str]) -> bool:
    """Say whether the age stands right behind the animal: iguana 4 years; shes abt 3 yrs."""
    between = set(scene.words(living.end, figure.start))
    kept = living.kind != "person" and said & word_list("kept_for")
    # "My beardie Pepper is 7 months": one more word, the name.
    told = "is" in between or scene.text[figure.start - 1 : figure.start] == "("
    named = len(between - word_list("before_age")) == 1 and told
    return (named or between <= word_list("before_age")) and not kept


def _of_animal_only(scene: Scene, figure: Figure) -> bool:
    """Say whether a lone age stands in a list about the animal: leopard gecko female, 2 years."""
    start, end = scene.sentence(figure.start)
    around = [*scene.marks.within(start, end), *scene.marks.before(start, max(0, start - 60))]
    kinds = {mark.kind for mark in around}
    return bool(kinds & LIVING) and not kinds & _LAMPS


def _is_strength(figure: Figure) -> bool:
    label = figure.kind == "plain" and figure.text.endswith((".0", ",0"))
    return label or (figure.kind == "percent" and figure.high <= STRONGEST_TUBE)


def _age(scene: Scene, figure: Figure) -> FactName | None:
    start, end = scene.sentence(figure.start)
    following = scene.words(figure.end, min(end, figure.end + 12))[:2]
    start = max(start, figure.start - 200)
    said = set(scene.words(start, figure.start))
    before = scene.before(figure.start, _LAMPS | LIVING, start)
    figures = scene.figures.within(max(start, figure.start - 60), figure.start)
    strengths = [f for f in figures if _is_strength(f)]
    if strengths and (before is None or before.end < strengths[-1].start):
        lamp, living = True, False
    else:
        lamp = before is not None and before.kind in _LAMPS
        living = before is not None and before.kind in LIVING
    if following in (["in", "use"], ["of", "use"]):
        any_lamp = scene.before(figure.start, _LAMPS, start)
        return FactName.AGE if any_lamp else None
    if "ago" in following:
        object_words = {"it", "tube", "bulb", "uvb", "lamp", "light"}
        own = bool(said & object_words) or lamp
        return FactName.AGE if said & _CHANGED and own else None
    if _SOMEBODY.match(scene.text, figure.end):
        return None
    if _OF_A_KIND.search(scene.text, max(0, figure.start - 36), figure.start):
        return FactName.ANIMAL_AGE
    if figure.unit != "week" and _alone(scene, figure) and _of_animal_only(scene, figure):
        return FactName.ANIMAL_AGE
    if living:
        baby = before is not None and scene.text[before.start : before.end] in (
            "baby",
            "juvenile",
            "hatchling",
        )
        bare = before is not None and _is_bare_age(scene, before, figure, said)
        aged = "old" in following or figure.text.endswith("o")
        return FactName.ANIMAL_AGE if aged or baby or bare else None
    if lamp and before is not None and scene.denial(before):
        # "He had no uv for 2 years."
        return None
    if lamp:
        near = before is None or len(scene.words(before.end, figure.start)) <= 4
        return FactName.AGE if "old" in following or near else None
    if "old" in following or figure.text.endswith(("yo", "y/o")):
        after = scene.after(figure.end, _LAMPS | LIVING, end)
        if after:
            return FactName.AGE if after.kind in _LAMPS else FactName.ANIMAL_AGE
        earlier = scene.before(start, _LAMPS | LIVING, max(0, start - 200))
        if earlier:
            return FactName.AGE if earlier.kind in _LAMPS else FactName.ANIMAL_AGE
    return None
