"""Signs of illness in what a keeper wrote, so that nobody is told about lamps alone."""

import re
import tomllib
from dataclasses import dataclass
from functools import cache
from importlib.resources import files
from typing import Any

from bot.language.normal import normalise

__all__ = ["Sign", "signs_in"]

# A message of Discord; what is longer is not read.
_LONGEST = 2000
# What takes a sign back, if it stands just before it: "not squinting", "never twitches".
_TAKEN_BACK = re.compile(
    r"\b(?:not|no|never|without|isn'?t|isnt|doesn'?t|doesnt|don'?t|dont|hasn'?t|hasnt|wasn'?t|"
    r"wasnt|stopped|no longer|no sign(?:s)? of|any)(?: \w+)?\s*\Z"
)
_BEFORE = 24


@dataclass(frozen=True, slots=True)
class Sign:
    """A sign of illness: what it is, how soon a vet should see it, and the asker's words.

    ``light`` is true where too much UV may be the cause.
    """

    told: str
    soon: str
    light: bool
    words: str


def signs_in(text: str) -> tuple[Sign, ...]:
    """Return the signs of illness in a text, each kind once, what cannot wait first.

    >>> [sign.words for sign in signs_in("he squints a lot and won't eat")]
    ['squints', "won't eat"]
    >>> signs_in("no squinting, he is eating well")
    ()
    """
    plain = normalise(text[:_LONGEST]).lower()
    found = []
    for row, pattern in _known():
        first = next(
            (m for m in pattern.finditer(plain) if not _taken_back(plain, m.start())), None
        )
        if first is not None:
            found.append(Sign(row["told"], row["soon"], row["light"], first[0].strip()))
    return tuple(sorted(found, key=lambda sign: sign.soon != "today"))


def _taken_back(text: str, start: int) -> bool:
    return _TAKEN_BACK.search(text[max(0, start - _BEFORE) : start]) is not None


@cache
def _known() -> tuple[tuple[dict[str, Any], re.Pattern[str]], ...]:
    text = (files("bot.language") / "signs.toml").read_text(encoding="utf-8")
    return tuple(
        (row, re.compile(rf"(?<!\w)(?:{'|'.join(row['words'])})(?!\w)"))
        for row in tomllib.loads(text).values()
    )
