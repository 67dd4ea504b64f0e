"""What a line does after an answer, learned from lines that were written as such.

The model, ``following.npz``, is made by ``tests/bot/dialogue/training.py`` from lines beside it.
A line tells a value (``f:cool``), asks on about the same animal and set-up (``q:night``) or is
about the answer (``t:why``); which it is hangs on its words, its figures and what stands before.
"""

import re
from collections.abc import Iterator
from functools import cache
from importlib.resources import files
from typing import NamedTuple

import numpy as np
from numpy.typing import NDArray

from bot.dialogue.kept import Dialogue
from bot.language.linear import Linear, number_of, of_letters
from bot.routes.asked import Asked
from bot.routes.learned import meant, plain

__all__ = ["Does", "Line", "does", "features", "line_after"]

_WORD = re.compile(
    r"[^\W\d_]+(?:'[^\W\d_]+)?|\d+(?:[.,]\d+)?\s?(?:%|\"|°?[fc]\b|in(?:ch\w*)?\b|cm\b|ft\b|w\b"
    r"|h\b|x\b)?|[?!]"
)
_HALVES = (15, 30, 45, 60, 80, 95, 150)
_LIKELY, _MOST = 0.2, 3


class Line(NamedTuple):
    """A line and what stands before it: the question answered last, and what was asked for."""

    asked: Asked
    before: str
    wanted: str


class Does(NamedTuple):
    """What a line may do, and how sure that is [1]."""

    key: str
    chance: float


# Questions that few talk of go with their like.
_LIKE = {
    "dose": "uvi",
    "card": "tube",
    "compare": "uvi",
    "outdoors": "guide",
    "arrange": "plan",
    "bright": "hours",
    "about": "guide",
    "help": "guide",
}
_WANTED_LIKE = {
    "air": "room",
    "reading": "surface",
    "readings": "uvi",
    "material": "enclosure",
    "lid": "enclosure",
}


def line_after(dialogue: Dialogue, asked: Asked) -> Line:
    """Return a line with what stands before it in a conversation."""
    before = dialogue.asked
    name = before.command if before else "guide"
    if before and name == "needs" and before.values.get("about") == "night":
        name = "night"
    open_still = [o for o in dialogue.wanted if before is None or o not in before.values]
    wanted = open_still[-1] if open_still else "-"
    return Line(asked, _LIKE.get(name, name), _WANTED_LIKE.get(wanted, wanted))


def features(line: Line) -> NDArray[np.int64]:
    """Return the numbers of the features of a line."""
    return np.unique(
        np.array([number_of(name) for name in sorted(set(_names(line)))], dtype=np.int64)
    )


def _names(line: Line) -> Iterator[str]:
    asked = line.asked
    words = [_figure(match[0]) for match in _WORD.finditer(plain(asked))]
    told = {fact.value for fact in asked.told.facts} | {
        f"?{ask.name.value}" for ask in asked.told.unclear
    }
    kinds = {word for word in words if word[0] == "#"} or {"#-"}
    yield f"b{line.before}"
    yield f"a{line.wanted}"
    yield f"n{min(len(words), 12) // 2}"
    for name in (*told, *kinds):
        yield f"t{name}"
        yield f"tb{name} {line.before}"
        yield f"ta{name} {line.wanted}"
    for word in words[:1]:
        yield f"0{word}"
    for word in words[-1:]:
        yield f"9{word}"
    for word in words:
        yield f"w{word}"
        yield from of_letters(word)
        yield f"b{word} {line.before}"
        yield f"a{word} {line.wanted}"
    for apart in (1, 2):
        yield from (f"{apart}{a} {b}" for a, b in zip(words, words[apart:], strict=False))
    for one in meant(asked)[:2]:
        if one.chance >= _LIKELY:
            yield f"r{one.key}"
            yield f"r{one.key.partition('/')[0]}"


def _figure(word: str) -> str:
    """Return a word; of a figure its unit, or how big it is where it has none."""
    if not word[0].isdecimal():
        return word
    unit = word.lstrip("0123456789., °")
    if unit:
        return f"#{unit[:2]}"
    number = float(re.sub(r"[^\d.]", "", word.replace(",", ".")) or 0)
    return f"#{sum(number > half for half in _HALVES)}"


def does(line: Line) -> tuple[Does, ...]:
    """Return what a line may do, the likeliest first; nothing where no feature is known."""
    model = _model()
    chances = model.chances(features(line))
    if chances is None:
        return ()
    order = np.argsort(-chances, kind="stable")[:_MOST]
    return tuple(Does(model.keys[at], float(chances[at])) for at in order)


@cache
def _model() -> Linear:
    return Linear.load(files("bot.dialogue") / "following.npz")
