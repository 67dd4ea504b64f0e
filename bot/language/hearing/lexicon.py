"""The words that hearing knows, and where they stand in a text."""

import re
import tomllib
from collections.abc import Callable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from functools import cache
from importlib.resources import files
from itertools import pairwise

from bot.language.hearing.spelling import Spelt, corrected

__all__ = ["Mark", "Names", "Phrases", "known_phrases", "marks_of", "tokens_of"]

_THINGS = frozenset(("lamp", "heat", "tube", "mesh", "lid", "thermometer", "control"))
_TOKEN = re.compile(r"[a-z]+(?:'[a-z]+)*[0-9]{0,2}|[0-9]+")
# Shorter words are taken as they are.
_SHORTEST = 4
# A letter held down: coool, sooo.
_DRAWN_OUT = re.compile(r"([a-z])\1{2,}")
# What may stand between two words of one phrase.
_JOINT = re.compile(r"[ \t]*[-:=/]?[ \t]*\Z")


@dataclass(frozen=True, slots=True)
class Mark:
    """A phrase found in the normalised text; ``slip`` where the spelling was corrected."""

    kind: str
    value: str
    start: int
    end: int
    slip: bool = False


@dataclass(frozen=True, slots=True)
class Names:
    """Names that the caller knows: ``find`` marks them in a text, ``words`` are spelt right.

    A mark of the kind animal has the name as its value, one of the kind kin the names of those
    that a word may mean, with | between them, and one of the kind strange names none.
    """

    find: Callable[[str, frozenset[str]], Sequence[Mark]]
    words: frozenset[str]


@dataclass(frozen=True, slots=True)
class Phrases:
    """Phrases by their first word, the longest first, and every word that occurs in them."""

    by_first: Mapping[str, tuple[tuple[tuple[str, ...], str, str], ...]]
    words: frozenset[str]


def _phrases(rows: Iterator[tuple[str, str, str]]) -> Phrases:
    by_first: dict[str, list[tuple[tuple[str, ...], str, str]]] = {}
    for phrase, kind, value in rows:
        words = tuple(phrase.split())
        by_first.setdefault(words[0], []).append((words, kind, value))
    ordered = {
        first: tuple(sorted(found, key=lambda row: -len(row[0])))
        for first, found in by_first.items()
    }
    known = {word for found in by_first.values() for words, _, _ in found for word in words}
    return Phrases(ordered, frozenset(known))


@cache
def known_phrases() -> Phrases:
    """Return the phrases of the lexicon."""
    text = (files("bot.language.hearing") / "lexicon.toml").read_text(encoding="utf-8")
    table = tomllib.loads(text)
    return _phrases(
        (form, kind, value)
        for kind, values in table.items()
        for value, phrases in values.items()
        for form in dict.fromkeys(f for phrase in phrases for f in _numbers(phrase, kind))
    )


def _numbers(phrase: str, kind: str) -> tuple[str, ...]:
    """Return a phrase, and its plural where it names a thing that there may be several of."""
    single = kind not in _THINGS or phrase.endswith("s") or not phrase[-2:].isalpha()
    return (phrase,) if single else (phrase, f"{phrase}s")


def tokens_of(text: str) -> list[tuple[str, int, int]]:
    """Return the words and numbers of a text with their places."""
    return [(match[0], match.start(), match.end()) for match in _TOKEN.finditer(text)]


def marks_of(
    text: str,
    places: Sequence[tuple[str, int, int]],
    phrases: Phrases,
    also: frozenset[str],
    most: int,
) -> list[Mark]:
    """Return the first phrases in a normalised lower-case text, leftmost and longest, none twice.

    ``places`` are the text's tokens. Words of ``also`` are spelt right too, though they belong to
    other phrases.
    """
    meant = _meant({token[0] for token in places}, phrases, also)
    words = [meant[word].word if word in meant else word for word, _, _ in places]
    found: list[Mark] = []
    after = 0
    for at, word in enumerate(words):
        if at < after or word not in phrases.by_first:
            continue
        for phrase, kind, value in phrases.by_first[word]:
            run = places[at : at + len(phrase)]
            if tuple(words[at : at + len(phrase)]) == phrase and _joined(text, run):
                slip = any(word in meant and meant[word].slip for word, _, _ in run)
                found.append(Mark(kind, value, run[0][1], run[-1][2], slip))
                after = at + len(phrase)
                break
        if len(found) >= most:
            break
    return found


def _meant(words: set[str], phrases: Phrases, also: frozenset[str]) -> dict[str, Spelt]:
    """Return what is meant by the words that are no known ones, each looked up once."""
    found = {}
    for word in words:
        if word in phrases.words or (len(word) < _SHORTEST and "'" not in word):
            continue
        plain = word.replace("'", "")
        if len(plain) - len(set(plain)) > 1:
            plain = _DRAWN_OUT.sub(r"\1\1", plain)
        spelt = corrected(plain, phrases.words, also)
        if spelt.word != word:
            found[word] = spelt
    return found


def _joined(text: str, run: Sequence[tuple[str, int, int]]) -> bool:
    return len(run) == 1 or all(
        _JOINT.match(text, one[2], other[1]) for one, other in pairwise(run)
    )
