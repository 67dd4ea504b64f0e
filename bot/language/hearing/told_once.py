"""Figures that say one thing twice: 15 in (38 cm), or 12 inches instead of 18."""

import re
from dataclasses import replace
from fractions import Fraction

from bot.language.hearing.figures import Figure
from bot.language.units import Dimension, exact

__all__ = ["told_once"]

# What stands between a figure and the same in the other unit, and how far the two may be apart.
_BOTH_UNITS = re.compile(r"\s*(?:/|\(|=|or|aka|,? ?i\.?e\.?)\s*")
_INSTEAD = re.compile(r"\s*(?:now )?,? ?(?:instead of|rather than|(?:and )?not) ")
_SI: dict[str, tuple[str, Fraction]] = {
    Dimension.LENGTH: ("m", Fraction(1, 20)),
    Dimension.TEMPERATURE: ("degC", Fraction(2)),
}


def told_once(figures: list[Figure], text: str) -> list[Figure]:
    """Return the figures with those made one that say the same in two units: 15 in (38 cm)."""
    kept: list[Figure] = []
    for figure in figures:
        before = kept[-1] if kept else None
        instead = before and _INSTEAD.fullmatch(text, before.end, figure.start)
        if before and instead and before.unit and figure.kind == "plain":
            # "12 inches instead of 18": so does the first here.
            kept[-1] = replace(before, end=figure.end)
            continue
        if before and instead and figure.unit:
            # "13 now instead of 18 inches": the first holds, in the unit of the second.
            held = tuple(replace(s, unit=s.unit or figure.unit) for s in before.sides)
            if before.kind in ("plain", figure.kind):
                kept[-1] = replace(before, kind=figure.kind, sides=held, end=figure.end)
                continue
        if (
            before
            and _BOTH_UNITS.fullmatch(text, before.end, figure.start)
            and _equal(before, figure)
        ):
            closed = "(" in text[before.end : figure.start] and text.startswith(")", figure.end)
            kept[-1] = replace(before, end=figure.end + closed)
        else:
            kept.append(figure)
    return kept


def _equal(one: Figure, other: Figure) -> bool:
    units = {one.unit, other.unit}
    if None in units or len(units) == 1 or one.kind != other.kind or one.kind not in _SI:
        return False
    si, near = _SI[one.kind]
    a, b = (exact(figure.low, figure.unit or "", si) for figure in (one, other))
    return abs(a - b) <= (near if si == "degC" else near * max(abs(a), abs(b)))
