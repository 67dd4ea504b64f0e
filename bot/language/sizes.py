"""Sizes of an enclosure, as three numbers with a cross between them."""

import re
from dataclasses import dataclass
from functools import cache

from bot.facts import Say
from bot.language.errors import NotUnderstoodError
from bot.language.normal import normalise
from bot.language.sides import LONGEST, Side, read_side
from bot.language.units import Dimension, Units, exact

__all__ = ["Size", "cross_pattern", "read_size", "size_of"]

_ACCEPTED = Say("wanted-size")
_EXAMPLE = "120x60x60 cm"
# Rule for a size without a unit: up to ten can only be feet, because no home is ten inches or
# ten centimetres long. Everything else takes the caller's unit, or is asked about.
_MOST_FEET = 10
# Beside that, one unit alone makes sense of most sizes: no box that an animal lives in is as narrow
# as 28 cm, and into none as wide as 36 in a keeper's arm reaches. Rules of ours, no source.
_NARROWEST_CM, _WIDEST_IN, _LONGEST_IN = 28, 36, 100


@dataclass(frozen=True, slots=True)
class Size:
    """An enclosure in the order it was written, meant as length, depth and height [m].

    ``assumed`` is true where the unit was not written.
    """

    length_m: float
    depth_m: float
    height_m: float
    unit: str
    text: str
    assumed: bool


def read_size(text: str, bare: Units | None = None) -> Size:
    """Read three lengths; without a unit, numbers up to ten are feet and others take ``bare``.

    >>> read_size("4x2x2 ft").length_m, read_size("120x60x60 cm").depth_m
    (1.2192, 0.6)
    """
    if len(text) > LONGEST:
        raise NotUnderstoodError(text, _ACCEPTED, _EXAMPLE)
    plain = normalise(text).strip()
    pieces = cross_pattern().split(plain)
    sides = [read_side(piece.strip(), 0, Dimension.LENGTH) for piece in pieces]
    whole = [
        side
        for side, piece in zip(sides, pieces, strict=True)
        if side and side.end == len(piece.strip())
    ]
    if len(pieces) != 3 or len(whole) != 3 or any(s.value <= 0 for s in whole):
        raise NotUnderstoodError(text, _ACCEPTED, _EXAMPLE)
    doubt = next((side.doubt for side in whole if side.doubt), None)
    if doubt:
        raise NotUnderstoodError(text, doubt[0], _EXAMPLE)
    size = size_of(whole, bare and bare.value, " ".join(text.split()))
    if size is None:
        raise NotUnderstoodError(text, Say("wanted-size-unit"), f"{plain} cm")
    return size


def size_of(sides: list[Side], bare: str | None, text: str) -> Size | None:
    """Return the size of three sides, or None where nothing says which unit they have."""
    written = sides[-1].unit or next((side.unit for side in sides if side.unit), None)
    small = max(side.value for side in sides) <= _MOST_FEET
    unit = written or ("ft" if small else bare or _only_sense(sides))
    if unit is None:
        return None
    length, depth, height = (float(exact(s.value, s.unit or unit, "m")) for s in sides)
    return Size(length, depth, height, unit, text, written is None)


def _only_sense(sides: list[Side]) -> str | None:
    """Return the unit that alone makes a home of three bare numbers; None where both or none do."""
    narrow, wide = (end(side.value for side in sides) for end in (min, max))
    in_cm = narrow >= _NARROWEST_CM
    in_inches = narrow <= _WIDEST_IN and wide < _LONGEST_IN
    if in_cm == in_inches:
        return None
    return "cm" if in_cm else "in"


@cache
def cross_pattern() -> re.Pattern[str]:
    """Return the pattern of what stands between two sides of a size."""
    return re.compile(r"\s*(?:x|\*|(?<=[\s\"'])by(?=\s))\s*", re.I)
