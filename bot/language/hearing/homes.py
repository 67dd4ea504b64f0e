"""The enclosure in a sentence: its size, its volume, its material; and the length of a tube."""

import re
from collections.abc import Iterator
from dataclasses import replace
from fractions import Fraction

from bot.facts import Say
from bot.language.hearing.distances import length_system, measure_of
from bot.language.hearing.facts import GONE, THERE, Ask, Fact, FactName, Material
from bot.language.hearing.figures import Figure
from bot.language.hearing.scene import LIVING, Scene
from bot.language.hearing.strengths import STRONGEST_TUBE
from bot.language.hearing.word_lists import word_list
from bot.language.sizes import size_of
from bot.language.units import Dimension, exact
from bot.language.wanted import Whole

__all__ = ["box_of", "homes", "longer_side"]

_HOME = frozenset(("home",))
_REFERENCE = frozenset(("reference",))
# The usual lengths of tubes.
_SOLD: dict[str, tuple[int, ...]] = {
    "in": (21, 22, 24, 33, 34, 36, 45, 46, 48),
    "cm": (55, 58, 60, 85, 90, 115, 116, 120),
}
_TUBE = frozenset(("tube", "lamp"))
# Bare sizes whose longest side reaches this can only be centimetres: eight feet are 96 inches.
_SURELY_CM = 100
# The shortest tube that is sold, and the shortest box somebody calls a tank.
_SHORTEST_TUBE_M, _SHORTEST_HOME_M = Fraction(1, 4), Fraction(1, 4)
# Hardly a tube hangs so far from an animal.
_NO_DISTANCE_M = Fraction(4, 5)
# A tube and its own length: the tube is 60 cm, uvb bar is 3ft, tube length 24 in, how long? 22 in.
_TUBE_THEN = re.compile(
    r"\b(?:tubes?|uvb?|linear|t5(?: ho)?|t8|fixture|strip|bar)"
    r"(?: (?:is|its|of|a|an|long|about|around|bar|strip|fixture|light|tube|bulb|that|with|only|just"
    r"|hood"
    r"|[0-9]{1,2}(?:\.0)? ?%|[0-9]{2} ?w(?:atts?)?)| ?[:=,(-])* ?\Z"
)
_LENGTH_THEN = re.compile(
    r"\b(?:tubes?|uvb?|linear|t5|t8|fixture|strip|bar|bulb|light|lamp)"
    r"(?: (?:length|size|covers|spans|measures|runs|is|about|around|of|for|over)| ?[:=])+ ?\Z"
)
_LISTED = frozenset(("", ", to", ",", ".", ", at", "at", "and", ";", ", and", ")"))
_SAYS_LENGTH = frozenset(("length", "size", "covers", "spans", "measures", "runs"))
# Words between a home and its size.
_BEFORE_SIZE = frozenset(
    ("is", "about", "around", "of", "its", "a", "only", "make", "makes", "measures")
)
_WATTS = re.compile(r"[0-9]{1,3}w?|w|watts?")
_HOW_LONG = re.compile(r"\bhow long\?? (?:is (?:it|the tube|it\?|the tube\?) )?\Z")
_LAMP_OF_LABEL = re.compile(
    r"(?: long)? (?:lamp|light|bulb|uvb?|uvb? lamp|bar)[ ,(]{1,3}[0-9]{1,2}(?:\.0| ?%)"
)
_LONG = re.compile(r" (?:long|of (?:large|long|length))\b")
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
    if scene.standing(figure) not in GONE and not scene.left_behind(figure):
        yield box_of(scene, figure)


def box_of(scene: Scene, figure: Figure) -> Fact | Ask:
    """Return the enclosure of three sides, or what must be asked of it."""
    doubt = next((side.doubt for side in figure.sides if side.doubt), None)
    inches = "in" if figure.text.endswith("in inches") else None
    bare = inches or ("cm" if figure.high >= _SURELY_CM else None)
    sensible = size_of(list(figure.sides), bare, figure.text) is not None
    bare = bare if sensible or doubt else length_system(scene)
    size = None if doubt else size_of(list(figure.sides), bare, figure.text)
    if size is None:
        question = Say("unclear-need", Whole(doubt[0])) if doubt else Say("unclear-inches")
        return scene.ask(FactName.ENCLOSURE, question, figure)
    return scene.fact(FactName.ENCLOSURE, size, figure, assumed=size.assumed and not inches)


def _corrects(scene: Scene, said: Fact, figure: Figure) -> bool:
    """Say whether a length corrects the one said before: 4 foot, no wait its 3.5 foot."""
    mark = scene.before(figure.start, frozenset(("corrected",)), figure.start - 24)
    if mark is None or figure.unit is None:
        return False
    start = scene.normal.span(mark.start, mark.end)[0]
    return 0 <= start - said.end < 16 and len(scene.words(mark.end, figure.start)) <= 1


def _two_sides(scene: Scene, figure: Figure) -> Iterator[Fact | Ask]:
    """Return the longer of two sides of an enclosure: a table 120cm x 60cm."""
    if scene.standing(figure) in GONE or not _of_home(scene, figure):
        return
    fact = longer_side(scene, figure)
    if fact is not None:
        scene.take(figure)
        yield fact


def longer_side(scene: Scene, figure: Figure) -> Fact | None:
    """Return the length of an enclosure of two sides, if any home is so long."""
    longer = max(figure.sides, key=lambda side: side.value)
    # As a box of three sides, so that 8x4 are feet and 120x60 are centimetres.
    box = size_of([*figure.sides, figure.sides[-1]], length_system(scene), figure.text)
    unit = figure.unit or (box.unit if box else None)
    measure = measure_of(replace(figure, sides=(longer,)), Dimension.LENGTH, unit)
    if measure is None or measure.low < _SHORTEST_HOME_M:
        return None
    assumed = not figure.unit
    told = replace(measure, assumed=assumed)
    return scene.fact(FactName.ENCLOSURE_LENGTH, told, figure, assumed=assumed)


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
    return set(between) <= _BEFORE_SIZE and not tall


def _behind_tube(scene: Scene, figure: Figure) -> bool:
    """Say whether a length right behind a tube or its strength is the tube's own.

    It is where "long" follows (12% 4ft long), where the distance is told by another length, or
    where no tube hangs so high (12% 46 in).
    """
    around = [*scene.marks.within(figure.start - 20, figure.start)]
    parts = [m for m in around if m.kind == "tube" or m.value in ("t5", "t5 ho", "t8")]
    near = scene.figures.within(figure.start - 14, figure.start)
    ends = [part.end for part in parts]
    ends += [f.end for f in near if _is_label(f)]
    between = scene.words(max(ends), figure.start) if ends else []
    between = [word for word in between if not _WATTS.fullmatch(word)]
    if not ends or set(between) - {"is", "about"} or not figure.unit:
        return False
    end = min(figure.end + 16, scene.clause(figure.start)[1])
    following = scene.words(figure.end, end)[:1]
    if following == ["long"]:
        return True
    if between or (word_list("ways") - {"at"}) & set(following):
        return False
    if _is_sold_so_long(figure) and not scene.after(figure.end, _REFERENCE, figure.end + 20):
        return True
    metres = exact(figure.low, figure.sides[0].unit or figure.unit, "m")
    return metres >= _NO_DISTANCE_M or _has_its_distance(scene, figure)


def _is_label(figure: Figure) -> bool:
    older = figure.kind == "plain" and figure.text.endswith((".0", ",0"))
    return older or (figure.kind == "percent" and figure.high <= STRONGEST_TUBE)


def _is_sold_so_long(figure: Figure) -> bool:
    """Say whether a length is one that tubes are sold in: right behind a label it is theirs."""
    return figure.low in _SOLD.get(figure.unit or "", ())


def _has_its_distance(scene: Scene, figure: Figure) -> bool:
    """Say whether another length near by tells how far the tube is: 24 inch. Distance 10 in."""
    for other in scene.figures.within(figure.end, figure.end + 60):
        if other.kind == "length":
            listed = scene.text[figure.end : other.start].strip() in _LISTED
            if listed and scene.next_word(other.end) not in ("long", "tall", "wide"):
                return True
            following = scene.words(other.end, other.end + 12)[:1]
            before = scene.words(figure.end, other.start)[-2:]
            if (word_list("ways") & set(following)) or {"distance", "gap"} & set(before):
                return True
    return False


def _told_as_its_length(scene: Scene, figure: Figure) -> bool:
    """Say whether a length is told as the tube's: the uvb is 60 cm and 30 cm from him."""
    text, start, end = scene.text, max(0, figure.start - 44), figure.end
    if _HOW_LONG.search(text, start, figure.start):
        return True
    if _LAMP_OF_LABEL.match(text, end) and not figure.text.endswith("."):
        return True
    if _TUBE_THEN.search(text, start, figure.start) and text.endswith("long ", 0, figure.start):
        return True
    said = _LENGTH_THEN.search(text, start, figure.start)
    if said and _SAYS_LENGTH & set(said[0].split()):
        return True
    if _LONG.match(text, end):
        return _is_beside_label(scene, figure)
    if not (_TUBE_THEN.search(text, start, figure.start) or _of_it(scene, figure)):
        return False
    if (word_list("ways") - {"at"}) & set(scene.words(end, end + 16)[:1]):
        return False
    metres = exact(figure.low, figure.sides[0].unit or figure.unit or "m", "m")
    return metres >= _NO_DISTANCE_M or _has_its_distance(scene, figure)


def _of_it(scene: Scene, figure: Figure) -> bool:
    """Say whether "its" is the tube that was named last: what % the tube is. its 18 inch."""
    if scene.words(figure.start - 7, figure.start)[-1:] not in (["its"], ["it's"]):
        return False
    last = scene.before(figure.start, _TUBE | _HOME | LIVING | {"heat"}, figure.start - 50)
    return last is not None and last.kind == "tube"


def _is_beside_label(scene: Scene, figure: Figure) -> bool:
    """Say whether a length stands beside a strength or a T5 in a list: 22 inches long, T5, 12%."""
    start, end = scene.sentence(figure.start)
    near = (max(start, figure.start - 40), min(end, figure.end + 24))
    marks = scene.marks.within(*near)
    if any(mark.kind in _HOME | LIVING for mark in marks):
        return False
    label = any(
        f.kind == "percent" and f.high <= STRONGEST_TUBE for f in scene.figures.within(*near)
    )
    return label or any(
        mark.value in ("t5", "t5 ho", "t8") or mark.kind == "tube" for mark in marks
    )


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
    if _before_label(scene, figure) or _told_as_its_length(scene, figure):
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
