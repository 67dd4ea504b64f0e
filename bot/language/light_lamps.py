"""Several lamps that give light, as people type them: 24W led bar + 75W halogen flood at 12in."""

import re
from collections.abc import Iterator
from dataclasses import dataclass

from bot.facts import Say
from bot.language.choices import read_choice
from bot.language.errors import NotUnderstoodError
from bot.language.light import COLOURED, LIGHT_LAMPS, read_lumens
from bot.language.normal import normalise
from bot.language.quantities import Measure, Units, read_length, read_power, single
from bot.language.wanted import UpTo

__all__ = [
    "MOST_LAMPS",
    "WHITE",
    "LightLamp",
    "lamps_heard",
    "read_light_lamps",
    "read_white_lamps",
    "tells_distances",
    "white_lamps_heard",
]

MOST_LAMPS = 6
"""So many kinds of lamp in one question, and so many of one kind."""

WHITE = ("white tube", "led bar", "led panel", "led flood")
"""Lamps for light alone: what warms as well is told as the heat lamp."""

_LONGEST = 300
_MOST_ALIKE = 4
_EXAMPLE = "24W led bar + 75W flood"
_WHITE_EXAMPLE = "24W led bar"
_PARTS = re.compile(r"\s*(?:[+;&]|,(?!\d{3}\b)|\band\b|\bplus\b|\bwith\b|\bund\b|\bmit\b)\s*", re.I)
_WATTS = re.compile(r"(\d{1,4}(?:[.,]\d)?) ?(?:w|watts?)\b", re.I | re.A)
_LUMENS = re.compile(
    r"((?:\d{1,3}(?:[.,]\d{3})+|\d{1,6}|\d[.,]\d ?k) ?(?:lm|lumens?))\b", re.I | re.A
)
_AWAY = re.compile(
    r"\b(?:at|from|in)? ?(\d{1,3}(?:\.\d{1,2})? ?(?:inch(?:es)?|in|cm|mm|ft|m|\"))(?![a-z]) ?"
    r"(?:away|up|high|above|over|entfernt)?",
    re.I | re.A,
)
_COUNT = re.compile(r"^(\d{1,2}|one|two|three|four|an?|zwei|drei|eine?n?) ?x? +", re.I | re.A)
_COUNTS = {"one": 1, "two": 2, "three": 3, "four": 4, "zwei": 2, "drei": 3}
_PERCENT = re.compile(r"\b\d{1,2}(?:\.0)? ?%")
_IS_UV = re.compile(r"\buvb?\b|\b\d{1,2}(?:\.0)? ?%", re.I)


@dataclass(frozen=True, slots=True)
class LightLamp:
    """Lamps of one kind that give light: how many, and what their label tells, each None if not."""

    kind: str
    count: int
    watts: float | None
    lumens: float | None
    distance: Measure | None
    text: str


def read_light_lamps(text: str, bare: Units | None = None) -> int | tuple[LightLamp, ...]:
    """Read how many lamps of one kind there are, or several kinds, each with what is told of it.

    >>> read_light_lamps("2")
    2
    >>> [(x.kind, x.watts) for x in read_light_lamps("24W led bar + 75W flood")]
    [('led bar', 24.0), ('halogen flood', 75.0)]
    """
    if len(text) > _LONGEST:
        raise NotUnderstoodError(text[:_LONGEST], Say("wanted-lamps"), _EXAMPLE)
    words = normalise(text).strip()
    if words.isdecimal() and words.isascii():
        if 1 <= int(words[:3]) <= _MOST_ALIKE:
            return int(words)
        raise NotUnderstoodError(text, Say("wanted-lamp-count", UpTo(_MOST_ALIKE)), "2")
    found = tuple(_lamp(part, bare) for part in _PARTS.split(words) if part)
    if not 1 <= len(found) <= MOST_LAMPS:
        raise NotUnderstoodError(text, Say("wanted-lamps"), _EXAMPLE)
    return found


def read_white_lamps(text: str, bare: Units | None = None) -> tuple[LightLamp, ...]:
    """Read white lamps that hang beside tube and heat lamp, each with its watts or lumens.

    >>> [(x.count, x.kind, x.lumens) for x in read_white_lamps("2 x 2000lm led bar")]
    [(2, 'led bar', 2000.0)]
    """
    found = read_light_lamps(text, bare)
    if isinstance(found, int) or not all(map(_is_white, found)):
        raise NotUnderstoodError(text, Say("wanted-white-lamps"), _WHITE_EXAMPLE)
    return found


def _lamp(part: str, bare: Units | None) -> LightLamp:
    count, rest = _counted(part)
    if count > _MOST_ALIKE:
        raise NotUnderstoodError(part, Say("wanted-lamp-count", UpTo(_MOST_ALIKE)), "2 led bar")
    away = _AWAY.search(rest)
    for told in (_WATTS.search(rest), _LUMENS.search(rest), away):
        rest = rest.replace(told[0], " ") if told else rest
    name = " ".join(_PERCENT.sub(" ", rest).split()).strip(" .-")
    kind = "uv tube" if _IS_UV.search(part) else _kind(name)
    distance = None if away is None else single(read_length(away[1], bare))
    return _labelled(part, kind, count, distance, " ".join(part.split()))


def _kind(name: str) -> str:
    try:
        return read_choice(name, LIGHT_LAMPS)
    except NotUnderstoodError as error:
        raise NotUnderstoodError(name, error.accepted, _EXAMPLE) from error


def _labelled(part: str, kind: str, count: int, distance: Measure | None, text: str) -> LightLamp:
    """Return a lamp with the watts or lumens that a part of the words tells."""
    watts, lumens = _WATTS.search(part), _LUMENS.search(part)
    return LightLamp(
        kind=kind,
        count=count,
        watts=read_power(watts[0]).low if watts else None,
        lumens=read_lumens(lumens[1]) if lumens else None,
        distance=distance,
        text=text,
    )


def _counted(part: str) -> tuple[int, str]:
    found = _COUNT.match(part)
    if found is None:
        return 1, part
    word = found[1].lower()
    return int(word) if word.isdecimal() else _COUNTS.get(word, 1), part[found.end() :]


def tells_distances(text: str) -> bool:
    """Say whether each of several lamps has its own distance; what is not read asks for none.

    >>> tells_distances("24W led bar at 12in + 75W flood"), tells_distances("75W flood at 30cm")
    (False, True)
    """
    try:
        found = read_light_lamps(text, Units.IN)
    except NotUnderstoodError:
        return True
    return isinstance(found, tuple) and all(one.distance for one in found)


def lamps_heard(words: str) -> tuple[LightLamp, ...]:
    """Return the lamps that free words tell, of each the watts or lumens that stand with it.

    >>> [x.text for x in lamps_heard("how bright are a 24w led bar and a 75w flood 16in away")]
    ['24w led bar', '75w flood']
    """
    return tuple(_heard(words))[:MOST_LAMPS]


def white_lamps_heard(words: str) -> tuple[LightLamp, ...]:
    """Return the white lamps that free words tell with their watts or lumens.

    >>> [(x.count, x.kind, x.watts) for x in white_lamps_heard("a 12% tube, two 24w led bars")]
    [(2, 'led bar', 24.0)]
    """
    return tuple(one for one in lamps_heard(words) if _is_white(one))


def _is_white(lamp: LightLamp) -> bool:
    return lamp.kind in WHITE and bool(lamp.watts or lamp.lumens)


def _heard(words: str) -> Iterator[LightLamp]:
    for part in _PARTS.split(normalise(words[:2000])):
        kind = _KINDS.search(part)
        label = _LUMENS.search(part) or _WATTS.search(part)
        if kind is None or not (label or _IS_UV.search(part)):
            continue
        named = next(k for k, forms in _FORMS.items() if kind[1].lower() in forms)
        start = min(kind.start(1), label.start() if label else kind.start(1))
        end = max(kind.end(1), label.end() if label else kind.end(1))
        before = re.search(r"(\d{1,2}|two|three|four|zwei|drei) ?x? $", part[:start], re.I)
        count = _counted(f"{before[1]} x")[0] if before else 1
        kind_told = "uv tube" if _IS_UV.search(part) else named
        yield _labelled(part, kind_told, min(count, _MOST_ALIKE), None, part[start:end])


_FORMS = {
    kind: frozenset((kind, *forms)) for kind, forms in LIGHT_LAMPS.items() if kind != COLOURED
}
_KINDS = re.compile(
    r"(?<![a-z])("
    + "|".join(
        sorted((re.escape(f) for forms in _FORMS.values() for f in forms), key=len, reverse=True)
    )
    + r")s?(?![a-z])",
    re.I,
)
