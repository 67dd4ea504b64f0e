"""The enclosure in a sentence: its size, its volume, its material; and the length of a tube."""

from collections.abc import Iterator
from fractions import Fraction

from bot.language.hearing.distances import measure_of
from bot.language.hearing.facts import Ask, Fact, FactName, Material
from bot.language.hearing.figures import Figure
from bot.language.hearing.scene import Scene, Standing
from bot.language.sizes import size_of
from bot.language.units import Dimension, exact

__all__ = ["homes"]

_HOME = frozenset(("home",))
_TUBE = frozenset(("tube", "lamp"))
# Bare sizes whose longest side reaches this can only be centimetres: eight feet are 96 inches.
_SURELY_CM = 100
# The shortest tube that is sold, and the shortest box somebody calls a tank.
_SHORTEST_TUBE_M, _SHORTEST_HOME_M = Fraction(1, 4), Fraction(1, 4)
_INCHES_OR_CM = "Are these inches or centimetres?"


def homes(scene: Scene) -> Iterator[Fact | Ask]:
    """Return sizes, volumes, lengths and materials; run before distances."""
    for figure in scene.loose("size"):
        scene.take(figure)
        yield from _size(scene, figure)
    for figure in scene.loose("volume"):
        measure = measure_of(figure, Dimension.VOLUME)
        if measure and scene.standing(figure) in (Standing.HAVE, Standing.INTENT):
            scene.take(figure)
            yield scene.fact(FactName.VOLUME, measure, figure)
    for figure in scene.loose("length"):
        yield from _length(scene, figure)
    for mark in scene.of("material"):
        if mark.value != "nothing" and scene.standing(mark) in (Standing.HAVE, Standing.INTENT):
            yield scene.fact(FactName.MATERIAL, Material(mark.value), mark)


def _size(scene: Scene, figure: Figure) -> Iterator[Fact | Ask]:
    if scene.standing(figure) in (Standing.WISH, Standing.NOT):
        return
    doubt = next((side.doubt for side in figure.sides if side.doubt), None)
    inches = "in" if figure.text.endswith("in inches") else None
    bare = inches or ("cm" if figure.high >= _SURELY_CM else None)
    size = None if doubt else size_of(list(figure.sides), bare, figure.text)
    if size is None:
        question = f"I need {doubt[0]}" if doubt else _INCHES_OR_CM
        yield scene.ask(FactName.ENCLOSURE, question, figure)
    else:
        yield scene.fact(FactName.ENCLOSURE, size, figure, assumed=size.assumed and not inches)


def _length(scene: Scene, figure: Figure) -> Iterator[Fact | Ask]:
    """Return a length that is said of the enclosure or of the tube itself."""
    if scene.standing(figure) in (Standing.WISH, Standing.NOT) or not figure.unit:
        return
    metres = exact(figure.low, figure.sides[0].unit or figure.unit, "m")
    doubtful = any(side.doubt for side in figure.sides)
    name = None
    if _of_home(scene, figure) and (metres >= _SHORTEST_HOME_M or doubtful):
        name = FactName.ENCLOSURE_LENGTH
    elif _of_tube(scene, figure) and metres >= _SHORTEST_TUBE_M:
        name = FactName.TUBE_LENGTH
    if name is None:
        return
    scene.take(figure)
    measure = measure_of(figure, Dimension.LENGTH)
    if measure is None:
        yield scene.ask(name, "Which number is meant here, with a point and no comma?", figure)
    else:
        yield scene.fact(name, measure, figure)


def _of_home(scene: Scene, figure: Figure) -> bool:
    start, end = scene.clause(figure.start)
    home = scene.after(figure.end, _HOME | {"material"}, min(end, figure.end + 24))
    after = set(scene.words(figure.end, home.start)) if home else {"no"}
    if after <= {"long", "wooden", "glass", "pvc", "big", "large"}:
        return True
    before = scene.before(figure.start, _HOME, start)
    if before and scene.figures.within(before.start - 12, before.start):
        # A 4 foot tank 14 inches: the length before is the tank's own.
        return False
    between = scene.words(before.end, figure.start) if before else ["no"]
    tall = scene.next_word(figure.end) in ("tall", "high", "wide", "deep")
    return set(between) <= {"is", "about", "around", "of", "its", "a"} and not tall


def _of_tube(scene: Scene, figure: Figure) -> bool:
    tube = scene.after(figure.end, _TUBE, figure.end + 8)
    if tube is None or scene.words(figure.end, tube.start) not in ([], ["long"]):
        return False
    if tube.kind == "lamp" and tube.value not in ("t5", "t5 ho", "t8"):
        return False
    return scene.next_word(tube.end) not in ("to", "from", "above", "over")
