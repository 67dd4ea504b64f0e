"""Two tubes that are held against each other in free words, each at its place if one is told."""

import re

from bot.language.errors import NotUnderstoodError
from bot.language.lamps import TubeStrength, read_tube_strength
from bot.language.quantities import Measure, read_length
from bot.routes.asked import Asked

__all__ = ["distance_of_one", "distance_of_other", "one_tube", "other_tube", "two_at_a_place"]

_LENGTH = r"\d+(?:\.\d+)? ?(?:inch(?:es)?|in|cm|ft|feet|\")"
_FIGURE = r"\d{1,2}(?:\.0| ?%)"
_BETWEEN = r"(?: (?:t5|ho|tube|uvb?|bulb|lamp|one|hung|hanging))*"
_AT = rf"(?:,? (?:at|@|from|in) (?P<{{0}}>{_LENGTH}))?"
_JOINED = r",? (?:or|vs\.?|versus|and|than|against|compared (?:to|with)|instead of) (?:an? |the )?"
_TWO = re.compile(
    rf"(?P<one>{_FIGURE}){_BETWEEN}{_AT.format('near')}(?: \w+){{0,2}}?"
    rf"{_JOINED}(?P<other>{_FIGURE}){_BETWEEN}{_AT.format('far')}"
)


def _part(asked: Asked, name: str) -> str:
    found = _TWO.search(asked.words)
    return (found[name] or "") if found else ""


def _strength(text: str) -> TubeStrength | None:
    try:
        return read_tube_strength(text) if text else None
    except NotUnderstoodError:
        return None


def _length(text: str) -> Measure | None:
    return read_length(text) if text else None


def one_tube(asked: Asked) -> TubeStrength | None:
    """Return the tube that is named first."""
    return _strength(_part(asked, "one"))


def other_tube(asked: Asked) -> TubeStrength | None:
    """Return the tube that it is held against."""
    return _strength(_part(asked, "other"))


def distance_of_one(asked: Asked) -> Measure | None:
    """Return where the first one hangs; of one distance that is told for both, that."""
    return _length(_part(asked, "near") or _part(asked, "far"))


def distance_of_other(asked: Asked) -> Measure | None:
    """Return where the other one hangs, if that is another place."""
    return _length(_part(asked, "far")) if _part(asked, "near") else None


def two_at_a_place(asked: Asked) -> bool:
    """Say whether two tubes are told, and where at least one of them hangs."""
    return bool(one_tube(asked) and other_tube(asked) and distance_of_one(asked))
