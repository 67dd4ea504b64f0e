"""Whether an animal is told to be pale or very young, so that it gets less UV."""

import re
import tomllib
from functools import cache
from importlib.resources import files

from bot.language.normal import normalise

__all__ = ["MOST", "before_animals", "tells_pale_or_young"]

MOST = 2000
"""More characters are not looked at."""

_NEXT = r"\s+([\w'-]+(?:\s+[\w'-]+)?)"


def tells_pale_or_young(text: str) -> bool:
    """Say whether the name of an animal, or a sentence, tells one that is pale or very young.

    >>> tells_pale_or_young("albino leopard gecko"), tells_pale_or_young("leopard gecko")
    (True, False)
    """
    plain = _denied().sub(" ", _plain(text))
    return bool(_before().match(plain) or _anywhere().search(plain))


def before_animals(text: str) -> tuple[str, ...]:
    """Return the words that follow one like "baby", which counts right before an animal alone.

    >>> before_animals("my baby corn snake hides")
    ('corn snake',)
    """
    return tuple(match[1] for match in _before().finditer(_denied().sub(" ", _plain(text))))


def _plain(text: str) -> str:
    return " ".join(normalise(text[:MOST]).lower().replace("'", "").split())


@cache
def _words() -> dict[str, list[str]]:
    return tomllib.loads((files("bot.language") / "pale.toml").read_text(encoding="utf-8"))


def _any_of(name: str) -> str:
    return rf"(?<![\w-])(?:{'|'.join(map(re.escape, _words()[name]))})(?![\w-])"


@cache
def _anywhere() -> re.Pattern[str]:
    return re.compile(_any_of("anywhere"))


@cache
def _before() -> re.Pattern[str]:
    return re.compile(_any_of("before_the_animal") + _NEXT)


@cache
def _denied() -> re.Pattern[str]:
    return re.compile(_any_of("but"))
