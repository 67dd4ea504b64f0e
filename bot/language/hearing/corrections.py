"""A figure that was said in place of another: 45C on the rock, oops, 35C.

The figure before it keeps its place in the sentence and takes the value that was meant, so that it
is told of what the first one was told of. What is corrected is told no more.
"""

import re
from dataclasses import replace

from bot.language.hearing.facts import THERE
from bot.language.hearing.figures import Figure
from bot.language.hearing.lexicon import Mark
from bot.language.hearing.placed import Placed
from bot.language.hearing.scene import Scene
from bot.language.hearing.word_lists import word_list

__all__ = ["with_corrections"]

# From what is corrected to the word for it, and from that to what was meant, in characters.
_BACK, _ON = 90, 30
# A lone no, or a hyphen that starts over, right before a figure.
_NO = re.compile(r"[,.;:!-]\s*(?:(?:oh|er|um|uh|ah|wait),? )?no,? (?:wait,? )?(?:its |it's )?\Z")
_STARRED = re.compile(r"\*\s?\Z")
_DEGREES = frozenset(("temperature", "degrees", "plain"))
_PLACES = frozenset(("place", "reference", "tube", "heat", "lamp", "home"))


def with_corrections(scene: Scene) -> Scene:
    """Return the scene with each corrected figure once, at its place and with what was meant."""
    meant: dict[int, Figure] = {}
    gone: set[int] = set()
    before: Figure | None = None
    for figure in scene.figures:
        said = meant.get(before.start, before) if before is not None else None
        if said is not None and _corrects(scene, said, figure):
            unit = said.unit or None
            sides = tuple(replace(s, unit=s.unit or unit) for s in figure.sides)
            kind = said.kind if figure.kind == "plain" else figure.kind
            meant[said.start] = replace(
                said, kind=kind, sides=sides, text=figure.text, told_to=figure.end
            )
            gone.add(figure.start)
            continue
        before = figure
    if not gone:
        return scene
    kept = [meant.get(f.start, f) for f in scene.figures if f.start not in gone]
    return replace(scene, figures=Placed(kept))


def _corrects(scene: Scene, said: Figure, figure: Figure) -> bool:
    """Say whether a figure is told in place of the one before it."""
    if not _alike(said, figure) or figure.start - said.end > _BACK + _ON:
        return False
    end = said.told_to or said.end
    mark = scene.before(figure.start, frozenset(("corrected",)), max(end, figure.start - _ON))
    if mark is not None:
        between = scene.words(mark.end, figure.start)
        near = len(between) <= 3 and set(between) <= word_list("meant")
    else:
        start = max(end, figure.start - _ON)
        near = _NO.search(scene.text, start, figure.start) is not None
        near = near or (_STARRED.search(scene.text, start, figure.start) is not None)
    if not near or scene.standing(said) not in THERE:
        return False
    first = mark.start if mark is not None else figure.start - 1
    return not _of_another(scene, said, figure, first)


def _alike(one: Figure, other: Figure) -> bool:
    if one.kind == other.kind:
        return True
    if {one.kind, other.kind} <= _DEGREES:
        return True
    return other.kind == "plain" and one.kind in ("length", "percent", "power")


def _of_another(scene: Scene, said: Figure, figure: Figure, mark: int) -> bool:
    """Say whether what was meant is told of a place of its own: basking 98, sorry, cool 75."""
    before = scene.after(said.end, _PLACES, mark)
    after = scene.after(figure.end, _PLACES, scene.clause(figure.start)[1])
    named = scene.before(figure.start, _PLACES, mark)
    own = _value(named) or (_value(after) if after and _touches(scene, figure, after) else "")
    if not own:
        return False
    first = scene.before(said.start, _PLACES, scene.clause(said.start)[0])
    return own not in (_value(before), _value(first))


def _touches(scene: Scene, figure: Figure, mark: Mark) -> bool:
    return len(scene.words(figure.end, mark.start)) <= 2


def _value(mark: Mark | None) -> str:
    return mark.value if mark is not None else ""
