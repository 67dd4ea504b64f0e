"""The words that hearing knows, and where they stand in a text."""

import re
from collections.abc import Callable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from functools import cache, lru_cache
from itertools import pairwise

from bot.language.hearing.spelling import Spelt, corrected
from calc.tables import read_table

__all__ = ["Mark", "Names", "Phrases", "known_phrases", "marks_of", "tokens_of"]

_THINGS = frozenset(("lamp", "heat", "tube", "mesh", "lid", "thermometer", "control"))
_TOKEN = re.compile(r"[a-z]+(?:'[a-z]+)*[0-9]{0,2}|[0-9]+")
# Shorter words are taken as they are.
_SHORTEST = 4
_MOST_WORDS = 20_000
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


# Its words, its kind and its value.
_Phrase = tuple[tuple[str, ...], str, str]


@dataclass(frozen=True, slots=True)
class Phrases:
    """Phrases, the longest first, and every word that occurs in them.

    They are kept by their first word and by their second, which is "" in a phrase of one word.
    """

    by_first: Mapping[str, Mapping[str, tuple[_Phrase, ...]]]
    words: frozenset[str]


def _phrases(rows: Iterator[tuple[str, str, str]]) -> Phrases:
    by_first: dict[str, dict[str, tuple[_Phrase, ...]]] = {}
    for phrase, kind, value in sorted(rows, key=lambda row: -len(row[0].split())):
        first, *rest = words = tuple(phrase.split())
        by_second = by_first.setdefault(first, {})
        second = rest[0] if rest else ""
        by_second[second] = (*by_second.get(second, ()), (words, kind, value))
    known = {
        word
        for by_second in by_first.values()
        for found in by_second.values()
        for words, _, _ in found
        for word in words
    }
    return Phrases(by_first, frozenset(known))


@cache
def known_phrases() -> Phrases:
    """Return the phrases of the lexicon."""
    rows = read_table("bot/language/hearing/lexicon.toml")
    return _phrases(
        (form, kind, value)
        for kind, values in rows.items()
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
    meant = [_meant(word, phrases.words, also) for word, _, _ in places]
    words = [spelt.word for spelt in meant]
    found: list[Mark] = []
    after = 0
    for at, word in enumerate(words):
        by_second = phrases.by_first.get(word) if at >= after else None
        if by_second is None:
            continue
        second = by_second.get(words[at + 1], ()) if at + 1 < len(words) else ()
        for phrase, kind, value in (*second, *by_second.get("", ())):
            end = at + len(phrase)
            if tuple(words[at:end]) == phrase and _joined(text, places[at:end]):
                slip = any(spelt.slip for spelt in meant[at:end])
                found.append(Mark(kind, value, places[at][1], places[end - 1][2], slip))
                after = end
                break
        if len(found) >= most:
            break
    return found


@lru_cache(maxsize=_MOST_WORDS)
def _meant(word: str, known: frozenset[str], also: frozenset[str]) -> Spelt:
    """Return what is meant by a word that may be no known one."""
    if word in known or (len(word) < _SHORTEST and "'" not in word):
        return Spelt(word, False)
    plain = word.replace("'", "")
    if len(plain) - len(set(plain)) > 1:
        plain = _DRAWN_OUT.sub(r"\1\1", plain)
    return corrected(plain, known, also)


def _joined(text: str, run: Sequence[tuple[str, int, int]]) -> bool:
    return len(run) == 1 or all(
        _JOINT.match(text, one[2], other[1]) for one, other in pairwise(run)
    )
