"""Tube strengths and fixtures as people name them."""

import re
from dataclasses import dataclass
from enum import StrEnum

from bot.facts import Say
from bot.language.errors import NotUnderstoodError
from bot.language.names import closest
from bot.language.normal import normalise
from bot.language.numerals import NUMERAL, numeral
from bot.language.quantities import Measure, Units, read_length, read_power
from bot.language.sides import LONGEST
from bot.language.uv_lamps import UvLamp, find_uv_lamp, without_uv_lamp
from bot.language.wanted import Closest

__all__ = [
    "Fixture",
    "OtherLamp",
    "TubeStrength",
    "read_fixture",
    "read_tube",
    "read_tube_length",
    "read_tube_strength",
]

# Beyond this no label is known; whether a class can be answered for is the answer's affair.
_STRONGEST = 20
# The older scale printed on labels: the number is not a percentage, the class is (common practice).
_OLDER_SCALE = {5: 6.0, 10: 12.0}
_ACCEPTED = Say("wanted-tube")
_EXAMPLE = "12%"
_STRENGTH = re.compile(rf"({NUMERAL})\s*(%|percent(?:age)?|per cent|pct)?", re.I | re.A)
_KIND = re.compile(
    r"(?<![a-z0-9])(?:t5|h\.?o\.?|high[ -]?output|uv-?b|uv|linear|straight|fluorescent|tube|lamp"
    r"|bulb|light|strip|old(?:er)? scale|desert|\d{2} ?w(?:atts?)?)(?![a-z0-9%])",
    re.I | re.A,
)
_IN_WATTS = re.compile(r".*[0-9] ?w(?:atts?)?", re.I | re.A | re.S)
_T5HO = re.compile(r"(?<![a-z0-9])(?:t5[ -]?ho|ho[ -]t5)(?![a-z0-9])", re.I | re.A)


@dataclass(frozen=True, slots=True)
class TubeStrength:
    """The label strength in percent; ``older_scale`` where 10 or 5 was taken as a class.

    ``is_told``: that it is a T5 HO tube was said and not taken for granted.
    """

    percent: float
    older_scale: bool
    text: str
    is_told: bool = False

    @property
    def printed(self) -> float:
        """The number on the label, which on the older scale is no percentage."""
        older = {percent: float(number) for number, percent in _OLDER_SCALE.items()}
        return older[self.percent] if self.older_scale else self.percent


@dataclass(frozen=True, slots=True)
class OtherLamp:
    """A UV lamp that is no T5 HO tube: its label says nothing that holds for the class.

    ``number`` is what the label says, and no strength that anything is worked out from.
    """

    kind: UvLamp
    text: str
    number: float | None = None


class Fixture(StrEnum):
    """What is behind the tube."""

    POLISHED = "polished"
    PLAIN = "plain"


def read_tube(text: str) -> TubeStrength | OtherLamp:
    """Read a label strength, or that the lamp is of another kind than a T5 HO tube.

    >>> read_tube("T5 HO 12%").percent, read_tube("t8 10.0").kind.value
    (12.0, 'T8 or other tube')
    """
    kind = find_uv_lamp(text) if len(text) <= LONGEST else None
    if kind is not None and kind is not UvLamp.T5_HO:
        return OtherLamp(kind, " ".join(text.split()), _number_beside(text))
    return _strength(text, is_told=kind is UvLamp.T5_HO)


def _number_beside(text: str) -> float | None:
    """Return the number on the label of a lamp of another kind, where there is one alone."""
    rest = " ".join(_KIND.sub(" ", without_uv_lamp(text)).split())
    match = _STRENGTH.fullmatch(rest)
    read = numeral(match[1]) if match else None
    return float(read.value) if read and 1 <= read.value <= _STRONGEST else None


def read_tube_strength(text: str) -> TubeStrength:
    """Read a label strength; a bare 10 or 5 (10.0, 5.0) is the older scale of 12 % and 6 %.

    >>> read_tube_strength("T5 HO 12%").percent, read_tube_strength("10.0").percent
    (12.0, 12.0)
    """
    tube = read_tube(text)
    if isinstance(tube, OtherLamp):
        raise NotUnderstoodError(text, Say("wanted-tube-of-ho"), _EXAMPLE)
    return tube


def _strength(text: str, *, is_told: bool) -> TubeStrength:
    if len(text) > LONGEST:
        raise NotUnderstoodError(text, _ACCEPTED, _EXAMPLE)
    bare = " ".join(_KIND.sub(" ", _T5HO.sub(" ", normalise(text))).split())
    match = _STRENGTH.fullmatch(bare)
    number = numeral(match[1]) if match else None
    if match is None or number is None or number.doubtful or not 1 <= number.value <= _STRONGEST:
        raise NotUnderstoodError(text, _ACCEPTED, _EXAMPLE)
    words = " ".join(text.split())
    older = None if match[2] else _OLDER_SCALE.get(int(number.value))
    if older is not None and number.value.denominator == 1:
        return TubeStrength(older, True, words, is_told)
    return TubeStrength(float(number.value), False, words, is_told)


def read_tube_length(text: str, bare: Units | None = None) -> Measure:
    """Read the length of a tube, or the watts printed on it, which tell the same.

    >>> read_tube_length("34in").low, read_tube_length("39W").low
    (0.8636, 39.0)
    """
    if _IN_WATTS.fullmatch(text[:LONGEST].strip()):
        return read_power(text)
    return read_length(text, bare)


_POLISHED = (
    "polished|polished reflector|shiny|shiny reflector|mirror|mirrored|mirror reflector|reflector"
    "|with reflector|with a reflector|specular|reflective|yes|polished aluminium"
    "|polished aluminum|aluminium reflector|aluminum reflector"
)
_PLAIN = (
    "plain|plain fixture|no reflector|without reflector|without a reflector|none|no|white"
    "|white reflector|white fixture|bare|matte|matt|not polished|unpolished|painted"
)
_FIXTURES = {
    **dict.fromkeys(_POLISHED.split("|"), Fixture.POLISHED),
    **dict.fromkeys(_PLAIN.split("|"), Fixture.PLAIN),
}


def read_fixture(text: str) -> Fixture:
    """Read what is behind the tube: a polished reflector, or a plain or white fixture."""
    words = " ".join(normalise(text[:LONGEST]).lower().replace("-", " ").split())
    if len(text) > LONGEST or words not in _FIXTURES:
        near = closest(words, _FIXTURES) if len(text) <= LONGEST else None
        raise NotUnderstoodError(text, Say("wanted-fixture", Closest(near)), "polished")
    return _FIXTURES[words]
