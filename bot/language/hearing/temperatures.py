"""Readings in a sentence: where each was taken, and in which unit where none is written.

The rule for a bare number: on a basking spot up to 55 is °C and from 75 °F; anywhere else up to
34 is °C, as in an option, and from 50 °F. A number between takes the unit of all the others in the
message if they agree, and is asked about otherwise: a night of 40 may be hot or deadly cold.
"""

import re
from bisect import bisect_left
from collections.abc import Iterator
from dataclasses import replace

from bot.facts import Say
from bot.language.errors import NotUnderstoodError
from bot.language.hearing.facts import THERE, Ask, Fact, FactName
from bot.language.hearing.figures import Figure
from bot.language.hearing.lexicon import Mark
from bot.language.hearing.linking import MOST_COST, linked
from bot.language.hearing.places import ENDS, Read, as_place, lamps_that_give, placed
from bot.language.hearing.scene import Part, Scene
from bot.language.hearing.strengths import LABELS
from bot.language.hearing.unplaced import MINE, NO_COUNT, unplaced
from bot.language.hearing.word_lists import word_list
from bot.language.quantities import measured
from bot.language.units import Dimension
from bot.language.wanted import Spelled, Whole

__all__ = ["DEGREES", "in_units", "is_setting", "is_way", "temperatures"]

# (up to here °C, from here °F) by place; no living animal's place lies beyond.
_BASKING_BAND = (55, 75)
_OTHER_BAND = (34, 50)
# "It" stands for the last place only this near to it.
_SAME_BREATH = 60
_COLDEST, _HOTTEST = 10, 160
# A number without unit or degree sign must stand close to its place.
_BARE_COST = 2.6
_WEAK_COST = 1.4
# The bottom must stand right beside its number.
_FLOOR_COST = 1.3
# A perch that is only named, without "on", must stand right before its temperature.
_PERCH_COST = 0.3

_NAMES = {
    "basking": FactName.BASKING,
    "warm": FactName.WARM,
    "cool": FactName.COOL,
    "night": FactName.NIGHT,
    "water": FactName.WATER,
    "room": FactName.ROOM,
    "room_night": FactName.ROOM_NIGHT,
}
DEGREES = {name: place for place, name in _NAMES.items()}
"""The place of a reading by its fact."""

# From here on a bare number that ends a clause may be the surface of a perch in °C.
_LIKE_A_SPOT_C = 25
_OF_A_SPOT = ((30, 60), (80, 150))
_BY_GUN = re.compile(
    r" (?:after|by|with|using|on|according to) (?:(?:the|a|my) )?(?:ir |temp |infrared |laser )?"
    r"(?:gun|probe|thermometer|about|an? hour|half|[0-9a-z]+ (?:hours?|minutes?|mins))\b"
)
_AWAY = frozenset(("away", "over"))
_OUTDOORS = frozenset(("outside", "outdoors"))
_NOW = frozenset(("its", "it's", "only", "now", "just")) | MINE


def temperatures(scene: Scene) -> Iterator[Fact | Ask]:
    """Return what was heard of temperatures."""
    loose = scene.loose("temperature", "degrees", "plain")
    figures = [scene.latest(f) for f in loose if _may_be(scene, f)]
    places = [place for mark in scene.marks if (place := as_place(scene, mark))]
    places = sorted([*places, *lamps_that_give(scene)], key=lambda place: place.start)

    def limit(figure: Figure, place: Mark) -> float:
        if place.kind == "perch":
            if _perch_alone(scene, place, figure):
                return _WEAK_COST
            if place.start > figure.start:
                return 0
            if _says_reading(scene, place, figure):
                return _WEAK_COST
            return _PERCH_COST if figure.kind != "plain" else 0
        if figure.kind != "plain":
            return MOST_COST
        if place.value == "floor":
            return _FLOOR_COST
        return _WEAK_COST if place.value in ("hot", "there", "gun") else _BARE_COST

    links = linked(scene, figures, places, limit)
    read = list(placed(scene, links))
    read += _said_of_it(scene, figures, read)
    scene.take(*(figure for figure, _, _ in read))
    yield from in_units(scene, [row for row in read if row[2] in _NAMES])
    nowhere = [figure for figure, _, name in read if name == "ambient"]
    nowhere += unplaced(scene, figures)
    for figure in nowhere:
        scene.take(figure)
        yield scene.ask(FactName.TEMPERATURE, Say("unclear-where"), figure)


def _perch_alone(scene: Scene, perch: Mark, figure: Figure) -> bool:
    """Say whether a number and a perch are all that an entry tells: slate 43, or 43 slate."""
    both: tuple[Part, Part] = (perch, figure) if perch.start < figure.start else (figure, perch)
    first, last = both
    hot = any(low <= figure.low <= figure.high <= high for low, high in _OF_A_SPOT)
    lone = not scene.text[first.end : last.start].strip(" :=@-")
    ends = ENDS.match(scene.text, last.end) is not None
    return hot and lone and ends and not scene.before(perch.start, _AWAY, first.start - 12)


def _says_reading(scene: Scene, perch: Mark, figure: Figure) -> bool:
    """Say whether a bare number is told as the temperature of a perch: dock is at 92."""
    said = set(scene.words(perch.end, figure.start))
    distance = word_list("ways") - {"at"}
    ends = ENDS.match(scene.text, figure.end) or _BY_GUN.match(scene.text, figure.end)
    last = figure.low >= _LIKE_A_SPOT_C and ends is not None
    hot = figure.kind != "plain" or figure.low >= NO_COUNT or last
    plain = bool(said) and said <= word_list("reads") and hot
    return plain and scene.next_word(figure.end) not in distance


def _said_of_it(scene: Scene, figures: list[Figure], read: list[Read]) -> list[Read]:
    """Return the temperatures of "now it is 104F": those of the place that was named last."""
    starts = [figure.start for figure, _, _ in read]
    linked_already = set(starts)
    found = []
    for figure in figures:
        start = max(scene.clause(figure.start)[0], figure.start - _SAME_BREATH)
        said = scene.words(start, figure.start)
        told = ({"it", "its", "it's"} | MINE) & set(said)
        back = "its" in said[-3:] and set(said[-2:]) <= word_list("back_to")
        near = back or _NOW & set(said[-2:])
        now = figure.kind != "plain" or (figure.low >= NO_COUNT and near)
        if figure.start in linked_already or not (told and now):
            continue
        last = bisect_left(starts, figure.start) - 1
        if last >= 0 and figure.start - read[last][0].end < _SAME_BREATH:
            name = read[last][2]
        else:
            place = _place_spoken_of(scene, figure)
            if place is None:
                continue
            name = place.value
        found.append((figure, Mark("place", name, figure.start, figure.end), name))
    return found


def _place_spoken_of(scene: Scene, figure: Figure) -> Mark | None:
    """Return the place that "it" stands for where no temperature of it was told before."""
    start = max(scene.sentence(figure.start)[0], figure.start - _SAME_BREATH)
    if MINE & set(scene.words(start, figure.start)):
        # "Good hot spot for an iguana? Mine is at 90."
        start = max(0, figure.start - _SAME_BREATH)
    place = scene.before(figure.start, frozenset(("place", "temperature")), start)
    return place if place and place.value in ("basking", "warm", "cool", "room") else None


def _may_be(scene: Scene, figure: Figure) -> bool:
    if scene.standing(figure) not in THERE:
        return False
    if is_way(scene, figure):
        return False
    if _OUTDOORS & {scene.next_word(figure.end), *scene.words(figure.start - 14, figure.start)[:1]}:
        return False
    if is_setting(scene, figure):
        return False
    if figure.kind == "temperature":
        return True
    if figure.kind == "plain" and scene.next_word(figure.end) in word_list("counted"):
        return False
    if figure.kind == "plain" and _of_humidity(scene, figure):
        return False
    if figure.kind == "plain" and figure.low in LABELS and figure.text.endswith((".0", ",0")):
        # A 10.0 is the label of a lamp.
        return False
    if not _COLDEST <= figure.low <= figure.high <= _HOTTEST:
        return False
    if figure.kind == "degrees":
        return True
    if figure.low >= NO_COUNT and scene.next_word(figure.end) not in word_list("counted"):
        return True
    following = scene.next_word(figure.end)
    place = scene.before(figure.start, frozenset(("place",)), figure.start - 16)
    if place and not scene.words(place.end, figure.start) and not following.endswith("s"):
        return following not in word_list("counted")
    marked = any(m.start <= figure.end + 2 for m in scene.marks.within(figure.end, figure.end + 40))
    return not following or following in word_list("may_follow") or marked


def _of_humidity(scene: Scene, figure: Figure) -> bool:
    """Say whether a bare number is the air's humidity: humidity 70 in the day, 95 at night."""
    start, _ = scene.sentence(figure.start)
    damp = scene.before(figure.start, frozenset(("humidity",)), start)
    if damp is None:
        return False
    said = scene.figures.within(damp.end, figure.start)
    warm = scene.before(figure.start, frozenset(("temperature",)), damp.end)
    place = scene.before(figure.start, frozenset(("place", "reference")), damp.end)
    near = figure.start - damp.end < _SAME_BREATH
    near = near and (place is None or place.value in ("day", "night"))
    return near and warm is None and all(f.kind in ("plain", "percent", "pair") for f in said)


def is_way(scene: Scene, figure: Figure) -> bool:
    """Say whether two figures tell of a plan: to get from 92 to 100."""
    return scene.words(figure.start - 10, figure.start)[-2:] == ["get", "from"]


def is_setting(scene: Scene, figure: Figure) -> bool:
    """Say whether a figure is what a thermostat is set to, and no reading."""
    control = scene.before(figure.start, frozenset(("control",)), scene.clause(figure.start)[0])
    if control is None or control.value != "thermostat":
        return False
    between = scene.words(control.end, figure.start)
    return "set" in between[-3:] or set(between) <= word_list("set_to")


def _clear_unit(figure: Figure, name: str, *, metric: bool) -> str | None:
    if figure.unit:
        return figure.unit
    most_c, least_f = _BASKING_BAND if name == "basking" else _OTHER_BAND
    if figure.high <= most_c:
        return "degC"
    if figure.low >= least_f:
        return "degF"
    return "degC" if metric else None


def in_units(scene: Scene, read: list[Read], others: str | None = None) -> Iterator[Fact | Ask]:
    """Return readings in degrees; ``others`` is the unit of the rest of the text."""
    metric = scene.normal.metric
    clear = {unit for f, _, name in read if (unit := _clear_unit(f, name, metric=metric))}
    agreed = clear.pop() if len(clear) == 1 else others
    for figure, mark, name in read:
        unit = _clear_unit(figure, name, metric=metric) or agreed
        doubt = next((side.doubt for side in figure.sides if side.doubt), None)
        parts = (figure, mark) if abs(figure.start - mark.start) < 60 else (figure,)
        if unit is None or doubt:
            question = Say("unclear-degrees", Spelled(figure.text))
            if doubt:
                question = Say("unclear-need", Whole(doubt[0]))
            yield scene.ask(_NAMES[name], question, *parts)
            continue
        sides = [replace(side, unit=side.unit or unit) for side in figure.sides]
        try:
            value = measured(sides[0], sides[-1], Dimension.TEMPERATURE, unit, figure.text)
        except NotUnderstoodError as error:
            yield scene.ask(_NAMES[name], Say("unclear-need", Whole(error.accepted)), *parts)
            continue
        assumed = not figure.unit
        yield scene.fact(_NAMES[name], replace(value, assumed=assumed), *parts, assumed=assumed)
