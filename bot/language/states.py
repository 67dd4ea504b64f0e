"""In what state an animal is told to be: young, pale, with eggs, ill, in quarantine, a female."""

import re
from collections.abc import Iterator
from functools import cache
from typing import Any

from bot.facts import Say
from bot.language.errors import NotUnderstoodError
from bot.language.normal import normalise
from calc.animal import State
from calc.tables import read_table

__all__ = ["MOST", "STATES", "before_animals", "read_states", "states_told"]

MOST = 2000
"""More characters are not looked at."""
STATES = tuple(state.value for state in State)
"""The states as they are typed."""

_NEXT = r"\s+([\w'-]+(?:\s+[\w'-]+)?)"
_NONE = frozenset(("none", "no", "adult", "grown", "normal", "healthy"))


def states_told(text: str) -> frozenset[State]:
    """Return the states that the name of an animal, or a sentence, tells.

    >>> sorted(states_told("albino leopard gecko")), sorted(states_told("leopard gecko"))
    ([<State.PALE: 'pale'>], [])
    """
    plain = _without_denied(text)
    first = (s for s, words in _before().items() if words.match(plain))
    return frozenset((*first, *(s for s, words in _anywhere().items() if words.search(plain))))


def before_animals(text: str) -> Iterator[tuple[State, str]]:
    """Yield each state told by a word that counts right before an animal alone, and what follows.

    >>> list(before_animals("my baby corn snake hides"))
    [(<State.YOUNG: 'young'>, 'corn snake')]
    """
    plain = _without_denied(text)
    for state, words in _before().items():
        yield from ((state, match[1]) for match in words.finditer(plain))


def read_states(text: str) -> frozenset[State]:
    """Read states, one or several, as they are typed or in other words.

    >>> sorted(read_states("gravid, albino"))
    [<State.GRAVID: 'gravid'>, <State.PALE: 'pale'>]
    """
    found: set[State] = set()
    for part in re.split(r"[,;/&+]|\band\b|\bund\b", _plain(text)):
        word = part.strip()
        if word in STATES:
            found.add(State(word))
        elif told := states_told(f"{word} animal"):
            found |= told
        elif word not in _NONE:
            raise NotUnderstoodError(text, Say("wanted-state"), "young")
    return frozenset(found)


def _plain(text: str) -> str:
    spoken = normalise(text[:MOST]).lower().replace("i'll", "i will")
    return " ".join(spoken.replace("'", "").split())


def _without_denied(text: str) -> str:
    return _denied().sub(" ", _plain(text))


@cache
def _words() -> dict[str, Any]:
    return read_table("bot/language/states.toml")


def _any_of(words: list[str]) -> str:
    return rf"(?<![\w-])(?:{'|'.join(map(re.escape, words))})(?![\w-])"


@cache
def _anywhere() -> dict[State, re.Pattern[str]]:
    return {State(s): re.compile(_any_of(words)) for s, words in _words()["anywhere"].items()}


@cache
def _before() -> dict[State, re.Pattern[str]]:
    return {State(s): re.compile(_any_of(words) + _NEXT) for s, words in _words()["before"].items()}


@cache
def _denied() -> re.Pattern[str]:
    return re.compile(_any_of(_words()["but"]))
