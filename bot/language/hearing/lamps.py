"""The UV tube, its fixture and the kinds of lamp in a sentence."""

import re
from collections.abc import Iterator
from dataclasses import replace
from itertools import pairwise

from bot.facts import Say
from bot.language.errors import NotUnderstoodError
from bot.language.hearing.facts import THERE, WISHES, Ask, Fact, FactName, LampKind, Standing
from bot.language.hearing.figures import Figure
from bot.language.hearing.lexicon import Mark
from bot.language.hearing.scene import Part, Scene
from bot.language.hearing.strengths import LABELS, NO_TUBE, STRONGEST_TUBE, tube_beside
from bot.language.lamps import Fixture, TubeStrength, read_tube_strength

__all__ = ["fixtures", "is_of_other_lamp", "is_other_share", "lamp_kinds", "tubes"]

# Label figures that stand without a percent sign.
_BARE_STRENGTHS = frozenset((5, 6, 10, 12, 14))
# What a percentage may be of, if it is not of the tube.
_MEASURED = frozenset(("measured", "measure", "uvi", "index", "meter"))
_SHARES = frozenset(("humidity", "share", "control"))
_WHETHER_GOOD = re.compile(r"\s+(?:ok|okay|fine|good|bad|safe|better|enough|needed|necessary)\b")
_SHORT_PERCENT = re.compile(r"(?:pct|perc)\Z")
# The strength may stand between the two parts of the name: T5 12% HO.
_HIGH_OUTPUT = re.compile(r"[ ,]*[0-9.]{1,4} ?(?:%|percent|pct)?,? (?:ho|high output)(?![a-z])")


def tubes(scene: Scene) -> Iterator[Fact | Ask]:
    """Return the strengths of tubes that were heard."""
    found: list[tuple[Figure, tuple[Part, ...]]] = []
    for figure in scene.loose("percent", "plain"):
        parts = _percent(scene, figure) if figure.kind == "percent" else _label(scene, figure)
        if parts is not None:
            found.append((figure, parts))
    if not found:
        yield from _too_strong(scene)
    for one, other in pairwise(found):
        if set(scene.words(one[0].end, other[0].start)) & {"or"} and _close(one[0], other[0]):
            scene.take(one[0], other[0])
            yield scene.ask(FactName.TUBE, Say("unclear-tube"), one[0], other[0])
    for figure, parts in found:
        if not scene.free(figure):
            continue
        scene.take(figure)
        standing = scene.standing(figure)
        if standing is Standing.ASKED:
            yield scene.ask(FactName.TUBE, Say("unclear-tube"), figure, *parts)
        elif standing in THERE:
            strength = _strength(figure)
            if strength:
                yield scene.fact(FactName.TUBE, strength, figure, *parts)


def _too_strong(scene: Scene) -> Iterator[Ask]:
    """Return a question about a percentage beside a tube that no label bears."""
    for figure in scene.loose("percent"):
        beside = tube_beside(scene, figure)
        if figure.high > STRONGEST_TUBE and beside and not is_other_share(scene, figure):
            scene.take(figure)
            yield scene.ask(FactName.TUBE, Say("unclear-label"), figure, *beside)
            return


def _close(one: Figure, other: Figure) -> bool:
    return other.start - one.end < 40


def _strength(figure: Figure) -> TubeStrength | None:
    if len(figure.sides) != 1:
        return None
    try:
        return read_tube_strength(_SHORT_PERCENT.sub("%", figure.text))
    except NotUnderstoodError:
        return None


def _percent(scene: Scene, figure: Figure) -> tuple[Part, ...] | None:
    """Return the words that go with a percentage if it is the strength of a tube."""
    if figure.high > STRONGEST_TUBE:
        return None
    beside = tube_beside(scene, figure)
    if is_of_other_lamp(scene, figure) or (not beside and is_other_share(scene, figure)):
        return None
    return beside


def is_other_share(scene: Scene, figure: Figure) -> bool:
    """Say whether a percentage is told of the air, of a mesh or of a dimmer."""
    start, end = scene.clause(figure.start)
    before = scene.before(figure.start, _SHARES, start)
    if before and not _another_between(scene, before.end, figure.start):
        return True
    after = scene.after(figure.end, _SHARES - {"control"}, min(end, figure.end + 20))
    if after is None or _another_between(scene, figure.end, after.start):
        return False
    # In "12% humidity 40%" the second figure is that of the humidity.
    return not any(f.kind == "percent" for f in scene.figures.within(after.end, after.end + 8))


def _another_between(scene: Scene, start: int, end: int) -> bool:
    return any(figure.kind == "percent" for figure in scene.figures.within(start, end))


def _label(scene: Scene, figure: Figure) -> tuple[Part, ...] | None:
    """Return the words that go with a bare label figure: 10.0, or 12 right beside the tube."""
    decimal = figure.text.endswith((".0", ",0")) and figure.low in LABELS
    decimal = decimal and not _MEASURED & set(scene.words(figure.start - 12, figure.start)[-1:])
    beside = tube_beside(scene, figure)
    if len(figure.sides) != 1 or is_of_other_lamp(scene, figure):
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


def is_of_other_lamp(scene: Scene, figure: Figure) -> bool:
    """Say whether a figure is the label of a compact or mercury lamp right beside it."""
    for mark in scene.marks.within(figure.start - 40, figure.end + 40):
        if mark.kind != "lamp" or mark.value not in NO_TUBE:
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
        if standing in (*WISHES, Standing.ASKED):
            continue
        word = scene.denial(mark)
        denied = scene.absent(mark) or (word is not None and word.value == "other")
        denied = denied and mark.value == "polished"
        if standing is Standing.NOT and not denied:
            continue
        fixture = Fixture.PLAIN if denied else Fixture(mark.value)
        yield scene.fact(FactName.REFLECTOR, fixture, *_with_denial(scene, mark, denied))


def _with_denial(scene: Scene, mark: Mark, denied: bool) -> tuple[Part, ...]:
    word = scene.denial(mark) if denied else None
    return (word, mark) if word else (mark,)


def _is_questioned(scene: Scene, mark: Mark) -> bool:
    """Say whether a lamp is only asked about: is a heat mat ok for a python?"""
    asked = scene.words(mark.start - 8, mark.start)[-2:] in (["is", "a"], ["is", "an"])
    return asked and _WHETHER_GOOD.match(scene.text, mark.end) is not None


def lamp_kinds(scene: Scene) -> Iterator[Fact | Ask]:
    """Return the kinds of lamp and heater that are there, and those that are said not to be."""
    for mark in scene.of("lamp"):
        standing = scene.standing(mark)
        if standing is Standing.ASKED or _is_questioned(scene, mark):
            yield scene.ask(FactName.LAMP, Say("unclear-lamp"), mark)
        elif standing is Standing.NOT:
            parts = _with_denial(scene, mark, denied=True)
            yield scene.fact(FactName.WITHOUT, LampKind(mark.value), *parts)
        elif standing not in WISHES:
            later = _HIGH_OUTPUT.match(scene.text, mark.end) if mark.value == "t5" else None
            kind = LampKind.T5_HO if later else LampKind(mark.value)
            end = later.end() if later else mark.end
            yield scene.fact(FactName.LAMP, kind, replace(mark, end=end))
    for name, value in (("tube", "uvb"), ("night_heat", "night heat")):
        for mark in scene.of(name):
            word = scene.denial(mark)
            if word and word.value == "absent":
                yield scene.fact(FactName.WITHOUT, value, word, mark)
