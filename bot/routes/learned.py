"""A second opinion on what free words ask, learned from sentences: for what no rule foresaw.

``second.py`` says where it is heard beside the rules. The model, ``learned.npz``, is made by
``tests/bot/routing/training.py`` from the sentences beside it; nothing is learned while the bot
runs. Names of animals and figures count as such, not by which they are.
"""

import re
from functools import cache
from importlib.resources import files
from typing import NamedTuple

import numpy as np
from numpy.typing import NDArray

from bot.language.hearing import FactName
from bot.language.linear import Linear, number_of, of_letters
from bot.routes.asked import Asked

__all__ = ["Meant", "features", "labels", "meant", "plain"]

_WORD = re.compile(r"[^\W\d_]+|\d+(?:[.,]\d+)?\s?(?:%|°?[fc]\b|in\b|cm\b|ft\b|w\b|h\b)?|[?]")
_APART = 2
_TOLD = (
    ("uv", (FactName.TUBE, FactName.UVI, FactName.UVI_AT, FactName.DISTANCE)),
    ("warmth", (FactName.BASKING, FactName.WARM, FactName.COOL)),
    ("night", (FactName.NIGHT, FactName.ROOM_NIGHT)),
    ("home", (FactName.ENCLOSURE, FactName.ENCLOSURE_LENGTH)),
    ("age", (FactName.AGE,)),
    ("watts", (FactName.WATTS,)),
)


class Meant(NamedTuple):
    """What words may ask: ``q`` a question and what of it, ``g`` a page and its part, and how sure.

    ``key`` is the label of the sentences: ``q:needs night``, ``g:slug/Part``, ``t:why``.
    """

    key: str
    chance: float


def plain(asked: Asked) -> str:
    """Return the words with every animal's name as one."""
    words = asked.typed
    named = [said.words for said in asked.told.all(FactName.ANIMAL)]
    if asked.unclear_animal:
        named.append(asked.unclear_animal.words)
    for name in sorted(filter(None, named), key=len, reverse=True):
        words = words.replace(name.lower(), "animal")
    return words


def features(asked: Asked) -> NDArray[np.int64]:
    """Return the numbers of the features of a question: words, pairs, letters, what was told."""
    words = [_figure(match[0]) for match in _WORD.finditer(plain(asked))]
    names = {f"t{name}" for name, facts in _TOLD if any(asked.told.all(fact) for fact in facts)}
    names.add(f"n{min(len(words), 12) // 3}")
    names |= {f"0{word}" for word in words[:1]}
    for word in words:
        names.add(f"w{word}")
        names.update(of_letters(word))
    for apart in range(1, _APART + 1):
        names |= {f"{apart}{a} {b}" for a, b in zip(words, words[apart:], strict=False)}
    return np.unique(np.array([number_of(name) for name in sorted(names)], dtype=np.int64))


def _figure(word: str) -> str:
    """Return a word, or of a figure its unit alone."""
    return f"#{word.lstrip('0123456789., °')}" if word[0].isdecimal() else word


def meant(asked: Asked) -> tuple[Meant, ...]:
    """Return what the words may ask, the likeliest first; nothing where no word is known."""
    model = _model()
    chances = model.chances(features(asked))
    if chances is None:
        return ()
    order = np.argsort(-chances, kind="stable")
    return tuple(Meant(model.keys[at], float(chances[at])) for at in order[:_MOST])


def labels() -> tuple[str, ...]:
    """Return every label that was learned."""
    return _model().keys


_MOST = 4


@cache
def _model() -> Linear:
    return Linear.load(files("bot.routes") / "learned.npz")
