"""The enclosure in a sentence: its size, its volume, its material; and the length of a tube."""

import re
from collections.abc import Iterator
from dataclasses import replace
from fractions import Fraction

from bot.facts import Say
from bot.language.hearing.distances import length_system, measure_of
from bot.language.hearing.facts import GONE, THERE, Ask, Fact, FactName, Material
from bot.language.hearing.figures import Figure
from bot.language.hearing.scene import Scene
from bot.language.hearing.strengths import STRONGEST_TUBE
from bot.language.hearing.word_lists import word_list
from bot.language.sizes import size_of
from bot.language.units import Dimension, exact
from bot.language.wanted import Whole

__all__ = ["homes"]

_HOME = frozenset(("home",))
_TUBE = frozenset(("tube", "lamp"))
# Bare sizes whose longest side reaches this can only be centimetres: eight feet are 96 inches.
_SURELY_CM = 100
# The shortest tube that is sold, and the shortest box somebody calls a tank.
_SHORTEST_TUBE_M, _SHORTEST_HOME_M = Fraction(1, 4), Fraction(1, 4)
# Hardly a tube hangs so far from an animal.
_NO_DISTANCE_M = Fraction(4, 5)
# Between its length and a tube there may stand its watts or its strength.
_UP_TO_TUBE = re.compile(r"[ -]*(?:[0-9]{2} ?w(?:atts?)? )?(?:[0-9]{1,2}(?:\.0)? ?%? )?(?:long )?")


def homes(scene: Scene) -> Iterator[Fact | Ask]:
    """Return sizes, volumes, lengths and materials; run before distances."""
    for figure in scene.loose("size"):
        scene.take(figure)
        yield from _size(scene, figure)
    for figure in scene.loose("volume"):
        measure = measure_of(figure, Dimension.VOLUME)
        there = scene.standing(figure) in THERE
        if measure and there and not scene.left_behind(figure):
            scene.take(figure)
            yield scene.fact(FactName.VOLUME, measure, figure)
    before: Fact | Ask | None = None
    for figure in scene.loose("length"):
        corrects = isinstance(before, Fact) and _corrects(scene, before, figure)
        if corrects and isinstance(before, Fact):
            measure = measure_of(figure, Dimension.LENGTH)
            if measure:
                scene.take(figure)
                yield scene.fact(before.name, measure, figure)
                continue
        for row in _length(scene, figure):
            before = row
            yield row
    for figure in scene.loose("cross"):
        yield from _two_sides(scene, figure)
    for mark in scene.of("material"):
        if mark.value != "nothing" and scene.standing(mark) in THERE:
            yield scene.fact(FactName.MATERIAL, Material(mark.value), mark)


def _size(scene: Scene, figure: Figure) -> Iterator[Fact | Ask]:
    if scene.standing(figure) in GONE or scene.left_behind(figure):
        return
    doubt = next((side.doubt for side in figure.sides if side.doubt), None)
    inches = "in" if figure.text.endswith("in inches") else None
    bare = inches or ("cm" if figure.high >= _SURELY_CM else None)
    sensible = size_of(list(figure.sides), bare, figure.text) is not None
    bare = bare if sensible or doubt else length_system(scene)
    size = None if doubt else size_of(list(figure.sides), bare, figure.text)
    if size is None:
        question = Say("unclear-need", Whole(doubt[0])) if doubt else Say("unclear-inches")
        yield scene.ask(FactName.ENCLOSURE, question, figure)
    else:
        yield scene.fact(FactName.ENCLOSURE, size, figure, assumed=size.assumed and not inches)


def _corrects(scene: Scene, said: Fact, figure: Figure) -> bool:
    """Say whether a length corrects the one said before: 4 foot, no wait its 3.5 foot."""
    mark = scene.before(figure.start, frozenset(("corrected",)), figure.start - 24)
    if mark is None or figure.unit is None:
        return False
    start = scene.normal.span(mark.start, mark.end)[0]
    return 0 <= start - said.end < 16 and len(scene.words(mark.end, figure.start)) <= 1


def _two_sides(scene: Scene, figure: Figure) -> Iterator[Fact | Ask]:
    """Return the longer of two sides of an enclosure: a table 120cm x 60cm."""
    if scene.standing(figure) in GONE or not figure.unit:
        return
    longer = max(figure.sides, key=lambda side: side.value)
    measure = measure_of(replace(figure, sides=(longer,)), Dimension.LENGTH, figure.unit)
    if measure and measure.low >= _SHORTEST_HOME_M and _of_home(scene, figure):
        scene.take(figure)
        yield scene.fact(FactName.ENCLOSURE_LENGTH, replace(measure, assumed=False), figure)


def _length(scene: Scene, figure: Figure) -> Iterator[Fact | Ask]:
    """Return a length that is said of the enclosure or of the tube itself."""
    if scene.standing(figure) in GONE or not figure.unit:
        return
    metres = exact(figure.low, figure.sides[0].unit or figure.unit, "m")
    doubtful = any(side.doubt for side in figure.sides)
    name = None
    if _of_home(scene, figure) and (metres >= _SHORTEST_HOME_M or doubtful):
        name = FactName.ENCLOSURE_LENGTH
    elif metres >= _SHORTEST_TUBE_M and (_of_tube(scene, figure) or _behind_tube(scene, figure)):
        name = FactName.TUBE_LENGTH
    if name is None:
        return
    scene.take(figure)
    measure = measure_of(figure, Dimension.LENGTH)
    if measure is None:
        yield scene.ask(name, Say("unclear-number"), figure)
    else:
        yield scene.fact(name, measure, figure)


def _of_home(scene: Scene, figure: Figure) -> bool:
    start, end = scene.clause(figure.start)
    if scene.next_word(figure.end) == "long":
        # "She lives on a wooden table, 2 m long."
        near = scene.before(figure.start, _HOME | {"animal", "tube"}, figure.start - 16)
        if near and near.kind == "home" and not scene.words(near.end, figure.start):
            return True
    home = scene.after(figure.end, _HOME | {"material"}, min(end, figure.end + 24))
    after = set(scene.words(figure.end, home.start)) if home else {"no"}
    if after <= {"long", "wooden", "glass", "pvc", "big", "large"}:
        return True
    before = scene.before(figure.start, _HOME, start)
    if before and scene.figures.within(max(start, before.start - 12), before.start):
        # A 4 foot tank 14 inches: the length before is the tank's own.
        return False
    between = scene.words(before.end, figure.start) if before else ["no"]
    tall = scene.next_word(figure.end) in ("tall", "high", "wide", "deep")
    return set(between) <= {"is", "about", "around", "of", "its", "a"} and not tall


def _behind_tube(scene: Scene, figure: Figure) -> bool:
    """Say whether a length right behind a tube or its strength is the tube's own.

    It is where "long" follows (12% 4ft long), where the distance is told by another length, or
    where no tube hangs so high (12% 46 in).
    """
    around = [*scene.marks.within(figure.start - 20, figure.start)]
    parts = [m for m in around if m.kind == "tube" or m.value in ("t5", "t5 ho", "t8")]
    near = scene.figures.within(figure.start - 14, figure.start)
    ends = [part.end for part in parts]
    ends += [f.end for f in near if f.kind == "percent" and f.high <= STRONGEST_TUBE]
    between = scene.words(max(ends), figure.start) if ends else []
    if not ends or set(between) - {"is", "about"} or not figure.unit:
        return False
    following = scene.words(figure.end, figure.end + 16)[:1]
    if following == ["long"]:
        return True
    if between or word_list("ways") & set(following):
        return False
    metres = exact(figure.low, figure.sides[0].unit or figure.unit, "m")
    return metres >= _NO_DISTANCE_M or _has_its_distance(scene, figure)


def _has_its_distance(scene: Scene, figure: Figure) -> bool:
    """Say whether another length near by tells how far the tube is: 24 inch. Distance 10 in."""
    for other in scene.figures.within(figure.end, figure.end + 60):
        if other.kind == "length":
            listed = scene.text[figure.end : other.start].strip() in ("", ",", ".", ", at", "at")
            if listed and scene.next_word(other.end) not in ("long", "tall", "wide"):
                return True
            following = scene.words(other.end, other.end + 12)[:1]
            before = scene.words(figure.end, other.start)[-2:]
            if (word_list("ways") & set(following)) or {"distance", "gap"} & set(before):
                return True
    return False


def _before_label(scene: Scene, figure: Figure) -> bool:
    """Say whether a length stands before a strength or a fixture: 34 inch 12%, 22 inch fixture."""
    of_fixture = scene.next_word(figure.end) in ("fixture", "hood", "strip")
    if of_fixture:
        uv = any(f.kind == "percent" and f.high <= STRONGEST_TUBE for f in scene.figures)
        return uv or bool(scene.of("tube"))
    if scene.words(figure.end, figure.end + 12)[:2] in (["of", "tube"], ["of", "uvb"]):
        return True
    label = next(iter(scene.figures.within(figure.end, figure.end + 8)), None)
    beside = label is not None and not scene.text[figure.end : label.start].strip()
    if not beside or label is None or label.kind != "percent" or label.high > STRONGEST_TUBE:
        return False
    return _has_its_distance(scene, label)


def _of_tube(scene: Scene, figure: Figure) -> bool:
    if _before_label(scene, figure):
        return True
    tube = scene.after(figure.end, _TUBE, figure.end + 20)
    if tube and scene.sentence(tube.start) != scene.sentence(figure.start):
        return False
    if tube is None or not _UP_TO_TUBE.fullmatch(scene.text, figure.end, tube.start):
        return False
    lamp = scene.before(figure.start, _TUBE | {"heat"}, figure.start - 20)
    length = scene.figures.within(tube.end, tube.end + 10)
    listed = lamp and not scene.words(lamp.end, figure.start) and length
    if listed and length[0].kind == "length":
        # "Heat lamp 14in uvb 11in": each length stands behind its own lamp.
        return False
    if tube.kind == "lamp" and tube.value not in ("t5", "t5 ho", "t8"):
        return False
    return scene.next_word(tube.end) not in ("to", "from", "above", "over")
