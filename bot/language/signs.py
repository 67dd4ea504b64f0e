"""Signs of illness in what a keeper wrote, so that nobody is told about lamps alone."""

import re
import tomllib
from dataclasses import dataclass
from functools import cache
from importlib.resources import files
from typing import Any

from bot.language.normal import normalise

__all__ = ["Sign", "fire_in", "signs_in"]

# A message of Discord; what is longer is not read.
_LONGEST = 2000
# What takes a sign back, if it stands just before it: "not squinting", "never twitches".
_TAKEN_BACK = re.compile(
    r"\b(?:not|no|never|without|isn'?t|isnt|doesn'?t|doesnt|don'?t|dont|hasn'?t|hasnt|wasn'?t|"
    r"wasnt|stopped|no longer|no sign(?:s)? of|any)(?: \w+)?\s*\Z"
)
_BEFORE = 24
# Whom a sign is told of, where the same words may be told of a lamp: "he is dead".
_PET = (
    r"(?:he|she|they|beardie|dragon|gecko|leo|crestie|lizard|snake|python|boa|tortoise|tort|turtle|"
    r"skink|chameleon|cham|iguana|monitor|anole|agama|tegu|uromastyx|uro|animal|reptile|pet|baby)s?"
)
# Where it is not hot: there an open mouth is no cooling off.
_COOL = (
    r"(?:in|at|on|to) (?:the |his |her |its )?(?:cold|cool|coolest|coldest) "
    r"(?:corner|end|side|part|hide|spot)"
)
_SMELL = r"(?:burnt|burning|burned|smoke|plastic)"
_FIRE = re.compile(
    rf"\b(?:smok(?:es?|ing|ey|y)(?! (?:detector|alarm|glass))|spark(?:s|ed|ing)?|"
    rf"smell(?:s|ing|ed)?(?: like| of)? {_SMELL}|(?:burning|burnt|smoky) (?:smell|plastic)|"
    rf"melt(?:s|ed|ing)|scorch(?:es|ed|ing)?|(?:on|caught|catching) fire|flames?|"
    rf"(?:get|got|gives?|gave)(?: me)?(?: an?)?(?: electric| small| little)? shocks?)\b"
)


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


def fire_in(text: str) -> str:
    """Return the words for smoke, fire, melting or a shock in a text, or nothing.

    >>> fire_in("the mesh is smoking"), fire_in("no smoke")
    ('smoking', '')
    """
    plain = normalise(text[:_LONGEST]).lower()
    found = (m for m in _FIRE.finditer(plain) if not _taken_back(plain, m.start()))
    return next((m[0] for m in found), "")


def _taken_back(text: str, start: int) -> bool:
    return _TAKEN_BACK.search(text[max(0, start - _BEFORE) : start]) is not None


@cache
def _known() -> tuple[tuple[dict[str, Any], re.Pattern[str]], ...]:
    text = (files("bot.language") / "signs.toml").read_text(encoding="utf-8")
    return tuple((row, _pattern(row["words"])) for row in tomllib.loads(text).values())


def _pattern(words: list[str]) -> re.Pattern[str]:
    any_of = "|".join(words).replace("<pet>", _PET).replace("<cool>", _COOL)
    return re.compile(rf"(?<!\w)(?:{any_of})(?!\w)")
