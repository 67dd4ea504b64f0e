"""What the figure on a tube may be, and the word for a tube beside a figure."""

from bot.language.hearing.figures import Figure
from bot.language.hearing.lexicon import Mark
from bot.language.hearing.scene import Scene

__all__ = ["LABELS", "NO_TUBE", "STRONGEST_TUBE", "UV_LAMPS", "tube_beside"]

NO_TUBE = frozenset(("compact", "mercury vapour", "metal halide", "uv led", "led"))
"""Kinds of lamp that give UV, or light, and are no tube."""

UV_LAMPS = frozenset(("t5", "t5 ho", "t8", "compact", "metal halide", "uv led"))
"""Kinds of lamp that hang for their UV; a mercury lamp hangs for its heat as well."""

LABELS = frozenset((2, 5, 6, 7, 8, 10, 12, 14))
"""The figures on labels; those of the older scale are written with their point: 5.0, 10.0."""

STRONGEST_TUBE = 20
"""A percentage beyond this is of something else [%]."""

_NOUNS = frozenset(("tube", "lamp"))


def tube_beside(scene: Scene, figure: Figure) -> tuple[Mark, ...]:
    """Return the word for a tube right before or right after a figure, if there is one."""
    for mark in scene.marks.within(figure.start - 20, figure.end + 24):
        if mark.kind not in _NOUNS or mark.value in NO_TUBE:
            continue
        if mark.kind == "lamp" and mark.value not in ("t5", "t5 ho", "t8"):
            continue
        gap = (mark.end, figure.start) if mark.end <= figure.start else (figure.end, mark.start)
        near = 0 <= gap[1] - gap[0] <= 3 and not scene.words(*gap)
        if near and scene.sentence(mark.start) == scene.sentence(figure.start):
            return (mark,)
    return ()
