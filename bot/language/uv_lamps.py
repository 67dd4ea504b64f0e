"""The kinds of UV lamp, as people name them. Only one of them, the T5 HO tube, has figures."""

import re
from collections.abc import Mapping
from enum import StrEnum
from functools import cache

from bot.language.choices import one_of
from bot.language.errors import NotUnderstoodError
from bot.language.names import closest
from bot.language.normal import normalise
from bot.language.sides import LONGEST
from calc.tables import read_table

__all__ = ["TUBES", "WARM", "UvLamp", "find_uv_lamp", "read_uv_lamp", "without_uv_lamp"]


class UvLamp(StrEnum):
    """A kind of UV lamp by class."""

    T5_HO = "T5 HO tube"
    OTHER_TUBE = "T8 or other tube"
    COMPACT = "compact lamp"
    METAL_HALIDE = "metal halide lamp"
    MERCURY = "mercury vapour lamp"
    LED = "LED bar"
    UNKNOWN = "not sure"

    @property
    def a(self) -> str:
        """The kind with its article, as a sentence needs it."""
        if self is UvLamp.UNKNOWN:
            return "a UV lamp that nobody can name"
        return f"{'an' if self is UvLamp.LED else 'a'} {self.value}"


TUBES = frozenset((UvLamp.T5_HO, UvLamp.OTHER_TUBE, UvLamp.LED))
"""Kinds that are as long as a tube, so that their UV falls as under a line."""


WARM = frozenset((UvLamp.METAL_HALIDE, UvLamp.MERCURY))
"""Kinds whose UV and warmth come out of one lamp."""


@cache
def _words() -> Mapping[str, UvLamp]:
    rows = read_table("bot/language/uv_lamps.toml")
    return {word: UvLamp(kind) for kind, row in rows.items() for word in row["words"]}


@cache
def _pattern() -> re.Pattern[str]:
    longest_first = sorted(_words(), key=len, reverse=True)
    forms = "|".join(re.escape(word).replace(r"\ ", "[ -]?") for word in longest_first)
    return re.compile(rf"(?<![a-z0-9])(?:{forms})(?![a-z0-9])")


@cache
def _closed_up() -> Mapping[str, UvLamp]:
    return {word.replace(" ", ""): kind for word, kind in _words().items()}


def find_uv_lamp(text: str) -> UvLamp | None:
    """Return the kind of UV lamp that is named in a text, if any; the first one counts.

    >>> find_uv_lamp("T8 5.0"), find_uv_lamp("12%")
    (<UvLamp.OTHER_TUBE: 'T8 or other tube'>, None)
    """
    match = _pattern().search(_plain(text))
    return _closed_up()[re.sub(r"[ -]", "", match[0])] if match else None


def without_uv_lamp(text: str) -> str:
    """Return a text without the words for kinds of UV lamp.

    >>> without_uv_lamp("T8 10.0").strip()
    '10.0'
    """
    return _pattern().sub(" ", normalise(text).lower())


def read_uv_lamp(text: str) -> UvLamp:
    """Read a kind of UV lamp; a bare T5 or tube is taken as a T5 HO tube.

    >>> read_uv_lamp("spiral bulb"), read_uv_lamp("T5")
    (<UvLamp.COMPACT: 'compact lamp'>, <UvLamp.T5_HO: 'T5 HO tube'>)
    """
    plain = _plain(text) if len(text) <= LONGEST else ""
    found = find_uv_lamp(plain)
    if found is not None:
        return found
    if plain in _BARE:
        return UvLamp.T5_HO
    near = closest(plain, (*_words(), *_BARE)) if plain else None
    names = tuple(kind.value for kind in UvLamp)
    raise NotUnderstoodError(text, one_of(names, near), near or names[0], "lamp")


_BARE = ("t5", "t5 tube", "tube", "linear", "linear tube", "high output", "ho")


def _plain(text: str) -> str:
    words = normalise(text[: 2 * LONGEST]).lower().replace("'", "").replace(".", " ")
    return " ".join(re.sub(r"[-_/,]", " ", words).split())
