"""The UV tube, its fixture and the kinds of lamp in a sentence."""

from collections.abc import Iterator
from itertools import pairwise

from bot.language.errors import NotUnderstoodError
from bot.language.hearing.facts import Ask, Fact, FactName, LampKind
from bot.language.hearing.figures import Figure
from bot.language.hearing.lexicon import Mark
from bot.language.hearing.scene import SPOKEN_NONE, Part, Scene, Standing
from bot.language.lamps import Fixture, TubeStrength, read_tube_strength

__all__ = ["fixtures", "lamp_kinds", "tubes"]

_NO_TUBE = frozenset(("compact", "mercury vapour", "led"))
_TUBE_NOUNS = frozenset(("tube", "lamp"))
# The figures of the older labels, written with their point: 5.0, 10.0.
_LABELS = frozenset((2, 5, 6, 7, 8, 10, 12, 14))
# Label figures that stand without a percent sign.
_BARE_STRENGTHS = frozenset((5, 6, 10, 12, 14))
_STRONGEST = 20
_WHICH_TUBE = "Which strength is on the label of the tube that hangs there?"


def tubes(scene: Scene) -> Iterator[Fact | Ask]:
    """Return the strengths of tubes that were heard."""
    found: list[tuple[Figure, tuple[Part, ...]]] = []
    for figure in scene.loose("percent", "plain"):
        parts = _percent(scene, figure) if figure.kind == "percent" else _label(scene, figure)
        if parts is not None:
            found.append((figure, parts))
    for one, other in pairwise(found):
        if set(scene.words(one[0].end, other[0].start)) & {"or"} and _close(one[0], other[0]):
            scene.take(one[0], other[0])
            yield scene.ask(FactName.TUBE, _WHICH_TUBE, one[0], other[0])
    for figure, parts in found:
        if not scene.free(figure):
            continue
        scene.take(figure)
        standing = scene.standing(figure)
        if standing is Standing.ASKED:
            yield scene.ask(FactName.TUBE, _WHICH_TUBE, figure, *parts)
        elif standing in (Standing.HAVE, Standing.INTENT):
            strength = _strength(figure)
            if strength:
                yield scene.fact(FactName.TUBE, strength, figure, *parts)


def _close(one: Figure, other: Figure) -> bool:
    return other.start - one.end < 40


def _strength(figure: Figure) -> TubeStrength | None:
    if len(figure.sides) != 1:
        return None
    try:
        return read_tube_strength(figure.text.replace("pct", "%"))
    except NotUnderstoodError:
        return None


def _percent(scene: Scene, figure: Figure) -> tuple[Part, ...] | None:
    """Return the words that go with a percentage if it is the strength of a tube."""
    if figure.high > _STRONGEST:
        return None
    start, end = scene.clause(figure.start)
    before = scene.before(figure.start, frozenset(("humidity", "share", "control")), start)
    after = scene.after(figure.end, frozenset(("humidity", "share")), min(end, figure.end + 20))
    if before or after or _of_other_lamp(scene, figure):
        return None
    return _beside(scene, figure)


def _label(scene: Scene, figure: Figure) -> tuple[Part, ...] | None:
    """Return the words that go with a bare label figure: 10.0, or 12 right beside the tube."""
    decimal = figure.text.endswith((".0", ",0")) and figure.low in _LABELS
    beside = _beside(scene, figure)
    if len(figure.sides) != 1 or _of_other_lamp(scene, figure):
        return None
    if decimal:
        return beside
    if not beside or figure.low not in _BARE_STRENGTHS:
        return None
    following = scene.next_word(figure.end)
    if (
        beside[0].start > figure.start
        or not following
        or following in ("and", "with", "in", "tube")
    ):
        return beside
    return None


def _beside(scene: Scene, figure: Figure) -> tuple[Part, ...]:
    """Return the tube word right before or right after a figure."""
    for mark in scene.marks.within(figure.start - 20, figure.end + 24):
        if mark.kind not in _TUBE_NOUNS or mark.value in _NO_TUBE:
            continue
        if mark.kind == "lamp" and mark.value not in ("t5", "t5 ho", "t8"):
            continue
        gap = (mark.end, figure.start) if mark.end <= figure.start else (figure.end, mark.start)
        if 0 <= gap[1] - gap[0] <= 3 and not scene.words(*gap):
            return (mark,)
    return ()


def _of_other_lamp(scene: Scene, figure: Figure) -> bool:
    """Say whether a figure is the label of a compact or mercury lamp right beside it."""
    for mark in scene.marks.within(figure.start - 40, figure.end + 40):
        if mark.kind != "lamp" or mark.value not in _NO_TUBE:
            continue
        gap = (mark.end, figure.start) if mark.end <= figure.start else (figure.end, mark.start)
        near = gap[0] <= gap[1] and gap[1] - gap[0] <= 14 and len(scene.words(*gap)) <= 1
        if near and scene.clause(mark.start) == scene.clause(figure.start):
            return True
    return False


def fixtures(scene: Scene) -> Iterator[Fact | Ask]:
    """Return what was heard of the fixture: polished, plain, or no reflector."""
    for mark in scene.of("reflector"):
        standing = scene.standing(mark)
        if standing in (Standing.WISH, Standing.ASKED):
            continue
        denied = standing is Standing.NOT or bool(SPOKEN_NONE.match(scene.text, mark.end))
        denied = denied and mark.value == "polished"
        if standing is Standing.NOT and not denied:
            continue
        fixture = Fixture.PLAIN if denied else Fixture(mark.value)
        yield scene.fact(FactName.REFLECTOR, fixture, *_with_denial(scene, mark, denied))


def _with_denial(scene: Scene, mark: Mark, denied: bool) -> tuple[Part, ...]:
    start, _ = scene.sentence(mark.start)
    word = scene.before(mark.start, frozenset(("not",)), start) if denied else None
    return (word, mark) if word else (mark,)


def lamp_kinds(scene: Scene) -> Iterator[Fact | Ask]:
    """Return the kinds of lamp and heater that are there, and those that are said not to be."""
    for mark in scene.of("lamp"):
        standing = scene.standing(mark)
        if standing is Standing.ASKED:
            question = f"Is there such a lamp ({mark.value}) in use already?"
            yield scene.ask(FactName.LAMP, question, mark)
        elif standing is Standing.NOT:
            parts = _with_denial(scene, mark, denied=True)
            yield scene.fact(FactName.WITHOUT, LampKind(mark.value), *parts)
        elif standing is not Standing.WISH:
            yield scene.fact(FactName.LAMP, LampKind(mark.value), mark)
    for kind, value in (("tube", "uvb"), ("night_heat", "night heat")):
        for mark in scene.of(kind):
            if scene.standing(mark) is Standing.NOT:
                parts = _with_denial(scene, mark, denied=True)
                yield scene.fact(FactName.WITHOUT, value, *parts)
