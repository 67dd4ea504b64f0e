"""What of a good set-up is there already, as people say it: a white light, hides, a UV meter."""

import re
from enum import StrEnum

from bot.facts import Say
from bot.language.errors import NotUnderstoodError
from bot.language.normal import normalise

__all__ = ["THERE", "There", "read_there", "there_in"]

_LONGEST = 2000


class There(StrEnum):
    """Something beyond the bare minimum."""

    HIDES = "hides"
    TOGETHER = "side by side"
    METER = "uv meter"
    WHITE_LIGHT = "white light"
    WIDE_UV = "long tube"
    TWO_HEAT_LAMPS = "two heat lamps"
    SEASONS = "seasons"
    PLANTS = "plants"


_WORDS = {
    There.HIDES: r"(?:two|2|both|warm and (?:a )?cool) hides?|hides|caves|verstecke",
    There.TOGETHER: r"side by side|side-by-side|nebeneinander",
    There.METER: r"(?:uvi? ?|uv index )meter|uvi \d|uv-messgerät|uv messgerät",
    There.WHITE_LIGHT: (
        r"white (?:light|led)s?|(?:bright )?led (?:bar|panel|strip|light)s?|full[- ]?spectrum"
        r"|daylight (?:tube|led|lamp)|led-?leiste|weißes licht|jungle led"
    ),
    There.WIDE_UV: r"long(?:er)? tube|two tubes|2 tubes|second tube|lange röhre|zwei röhren",
    There.TWO_HEAT_LAMPS: (
        r"(?:two|2|second|several) (?:heat |basking )?(?:lamps|lamp|floods?|halogens?)"
        r"|zwei (?:wärmelampen|strahler)"
    ),
    There.SEASONS: r"seasons?|seasonal|jahreszeiten?",
    There.PLANTS: r"(?:live |real )?plants?|bioactive|pflanzen",
}
_DENIED = r"\b(?:no|not|without|don't have|do not have|kein\w*|ohne)(?: \w+)?$"
THERE = tuple(one.value for one in There)
_BETWEEN = re.compile(r"\s*(?:,|;|/|&|\+|\band\b|\bund\b)\s*", re.I)


def there_in(text: str) -> frozenset[There]:
    """Return what a text tells to be there already; what it denies is not.

    >>> sorted(there_in("two hides and an LED bar, no plants"))
    [<There.HIDES: 'hides'>, <There.WHITE_LIGHT: 'white light'>]
    """
    words = normalise(text[:_LONGEST]).lower()
    found = set()
    for one, pattern in _WORDS.items():
        for match in re.finditer(rf"\b(?:{pattern})\b", words):
            if not re.search(_DENIED, words[: match.start()].rstrip()):
                found.add(one)
    return frozenset(found)


def read_there(text: str) -> frozenset[There]:
    """Read what is there, one or several, as the option takes it.

    >>> sorted(read_there("hides, plants"))
    [<There.HIDES: 'hides'>, <There.PLANTS: 'plants'>]
    """
    wanted = Say("wanted-there")
    if len(text) > _LONGEST:
        raise NotUnderstoodError(text[:_LONGEST], wanted, THERE[0])
    if text.strip().lower() in ("none", "nothing", "keine", "nichts"):
        return frozenset()
    found: set[There] = set()
    for piece in _BETWEEN.split(text):
        named = there_in(piece)
        if not named:
            raise NotUnderstoodError(piece or text, wanted, THERE[0])
        found |= named
    return frozenset(found)
