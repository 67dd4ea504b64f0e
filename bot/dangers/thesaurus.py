"""The words for things, states and moods, and how the words of a text are looked up in them."""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from functools import cache, lru_cache
from typing import Any

from bot.dangers import german
from bot.language.hearing.spelling import corrected
from bot.language.hearing.word_lists import word_list
from bot.language.tongue import Tongue
from calc.tables import read_table

__all__ = ["Entry", "Meaning", "end_of", "listed", "meaning", "phrases_at"]

_FILES = ("things.toml", "bodies.toml", "states.toml", "beside.toml", "moods.toml")
# Shorter words are too like each other to be taken for a slip.
_SHORTEST_SLIP = 6
_SHORTEST_STEM = 3
_VOWELS = "aeiou"
# How an entry is written: word+ has its endings, word* any end, <name> any word of that name,
# _ up to two words of any kind.
_GAP = "_"
# Stands before the words of a German entry, whose signs german.py tells.
_GERMAN = "~"


@dataclass(frozen=True, slots=True)
class Entry:
    """A phrase of the thesaurus: what it is, and the words after its first one."""

    name: str
    rest: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class Meaning:
    """A word as it was meant, what it is by itself, and the phrases that may begin with it.

    ``by_next`` are the phrases by their second word, ``by_any`` those whose second is not fixed;
    ``keys`` is what this word is as the second one of another.
    """

    word: str
    names: frozenset[str]
    keys: tuple[str, ...]
    by_next: Mapping[str, tuple[Entry, ...]]
    by_any: tuple[Entry, ...]


@dataclass(frozen=True, slots=True)
class _Lists:
    words: Mapping[str, frozenset[str]]
    stems: Mapping[str, frozenset[str]]
    phrases: Mapping[str, tuple[Entry, ...]]
    stem_phrases: Mapping[str, tuple[Entry, ...]]
    seconds: frozenset[str]
    known: frozenset[str]


@lru_cache(maxsize=20_000)
def meaning(word: str, tongue: Tongue = Tongue.ENGLISH) -> Meaning:
    """Return what a word is, with one slip of spelling forgiven in a long one.

    >>> "smoke" in meaning("smokin").names
    True
    """
    return _german_meaning(word) if tongue is Tongue.GERMAN else _english_meaning(word)


def _german_meaning(word: str) -> Meaning:
    lists = _german_lists()
    meant = _of_dialect().get(word, word)
    forms = (word,) if meant == word else (word, meant)
    names = frozenset(name for form in forms for name in lists.names.under(form))
    phrases = [entry for name in sorted(names) for entry in lists.after_name.get(name, ())]
    phrases.extend(entry for form in forms for entry in lists.phrases.under(form))
    return Meaning(meant, names, (), {}, tuple(dict.fromkeys(phrases)))


def _english_meaning(word: str) -> Meaning:
    lists = _lists()
    meant = word
    if not _is_known(word, lists) and len(word) >= _SHORTEST_SLIP:
        meant = _one_slip(word, lists.known)
    names = _names(meant, lists)
    first = [meant, *(f"<{name}>" for name in sorted(names))]
    phrases = [entry for key in first for entry in lists.phrases.get(key, ())]
    for stem in _stems(meant):
        phrases.extend(lists.stem_phrases.get(stem, ()))
    by_next: dict[str, tuple[Entry, ...]] = {}
    by_any = []
    for entry in phrases:
        second = entry.rest[0]
        if second == _GAP or second[-1] == "+":
            by_any.append(entry)
        else:
            by_next[second] = (*by_next.get(second, ()), entry)
    keys = (
        meant,
        meant.removesuffix("s"),
        *(f"<{name}>" for name in names),
        *(f"{stem}*" for stem in _stems(meant)),
    )
    used = tuple(key for key in dict.fromkeys(keys) if key in lists.seconds)
    return Meaning(meant, names, used, by_next, tuple(by_any))


def _one_slip(word: str, known: frozenset[str]) -> str:
    """Return the known word that is one slip away, or the word itself."""
    from rapidfuzz.distance import OSA

    meant = corrected(word, known, _right()).word
    return meant if OSA.distance(word, meant, score_cutoff=1) <= 1 else word


def fits(pattern: str, word: Meaning) -> bool:
    """Say whether a word is what one place of a phrase wants."""
    last = pattern[-1]
    if pattern[0] == _GERMAN:
        return german.fits(pattern[1:], word.word)
    if last == ">":
        return pattern[1:-1] in word.names
    if last == "*":
        return word.word.startswith(pattern[:-1])
    if last == "+":
        return word.word in _forms(pattern[:-1])
    return word.word == pattern or word.word == f"{pattern}s"


def phrases_at(words: list[Meaning], place: int) -> Iterator[Entry]:
    """Return the phrases that may stand at a place, by the word there and the one after it."""
    word = words[place]
    if word.by_next and place + 1 < len(words):
        for key in words[place + 1].keys:
            yield from word.by_next.get(key, ())
    yield from word.by_any


def end_of(entry: Entry, words: list[Meaning], start: int) -> int:
    """Return where a phrase that begins at ``start`` ends, or 0 where it does not stand there."""
    place = start + 1
    free = 0
    for pattern in entry.rest:
        if pattern == _GAP:
            free += 2
            continue
        while place < len(words) and not fits(pattern, words[place]):
            if not free:
                return 0
            free -= 1
            place += 1
        if place >= len(words):
            return 0
        place += 1
        free = 0
    return place


@cache
def listed(file: str, tongue: Tongue = Tongue.ENGLISH) -> Mapping[str, Any]:
    """Return a data file of this room, its lists by their names; its German one stands apart."""
    return read_table(f"bot/dangers/{'de/' if tongue is Tongue.GERMAN else ''}{file}")


def _entries(tongue: Tongue) -> Iterator[tuple[str, list[str]]]:
    for file in _FILES:
        for name, text in listed(file, tongue).items():
            for line in text.replace("\n", ",").split(","):
                if parts := line.split():
                    yield name, parts


@cache
def _of_dialect() -> Mapping[str, str]:
    """Return what words of dialect are in the written language."""
    told = listed("dialect.toml", Tongue.GERMAN).items()
    return {word: meant for meant, words in told for word in words.split()}


@dataclass(frozen=True, slots=True)
class _German:
    names: german.Words[str]
    phrases: german.Words[Entry]
    after_name: Mapping[str, list[Entry]]


@cache
def _german_lists() -> _German:
    lists = _German(german.Words(), german.Words(), {})
    after_name: dict[str, list[Entry]] = {}
    for name, (first, *rest) in _entries(Tongue.GERMAN):
        marked = (word if word == _GAP or word[0] == "<" else f"{_GERMAN}{word}" for word in rest)
        entry = Entry(name, tuple(marked))
        if first[0] == "<":
            after_name.setdefault(first[1:-1], []).append(entry)
        elif rest:
            lists.phrases.keep(first, entry)
        else:
            lists.names.keep(first, name)
    return _German(lists.names, lists.phrases, after_name)


@cache
def _lists() -> _Lists:
    words: dict[str, set[str]] = {}
    stems: dict[str, set[str]] = {}
    phrases: dict[str, list[Entry]] = {}
    stem_phrases: dict[str, list[Entry]] = {}
    for name, parts in _entries(Tongue.ENGLISH):
        first, rest = parts[0], tuple(parts[1:])
        stem = first.endswith("*")
        if rest:
            into = stem_phrases if stem else phrases
            for form in _forms(first[:-1]) if first.endswith("+") else (first.strip("*"),):
                into.setdefault(form, []).append(Entry(name, rest))
        elif stem:
            stems.setdefault(first[:-1], set()).add(name)
        else:
            for form in _forms(first[:-1]) if first.endswith("+") else (first,):
                words.setdefault(form, set()).add(name)
    return _Lists(
        words={word: frozenset(names) for word, names in words.items()},
        stems={stem: frozenset(names) for stem, names in stems.items()},
        phrases={word: tuple(entries) for word, entries in phrases.items()},
        stem_phrases={stem: tuple(entries) for stem, entries in stem_phrases.items()},
        seconds=frozenset(
            entry.rest[0]
            for into in (phrases, stem_phrases)
            for entries in into.values()
            for entry in entries
        ),
        known=frozenset(word for word in words if len(word) >= _SHORTEST_SLIP),
    )


@cache
def _right() -> frozenset[str]:
    return frozenset(listed("right.toml")["right"].split()) | word_list("right")


def _is_known(word: str, lists: _Lists) -> bool:
    return word in lists.words or word in lists.phrases or bool(_names(word, lists))


def _names(word: str, lists: _Lists) -> frozenset[str]:
    names = lists.words.get(word, frozenset())
    if not names and word.endswith("s"):
        names = lists.words.get(word[:-1], frozenset())
    for stem in _stems(word):
        names |= lists.stems.get(stem, frozenset())
    return names


def _stems(word: str) -> tuple[str, ...]:
    return tuple(word[:length] for length in range(_SHORTEST_STEM, len(word) + 1))


@cache
def _forms(word: str) -> frozenset[str]:
    """Return a word with its endings: smoke, smokes, smoked, smoking, smokin."""
    stem = word[:-1] if word.endswith("e") else word
    forms = {word, f"{word}s", f"{stem}ed", f"{stem}ing", f"{stem}in", f"{word}ing"}
    if word.endswith("y"):
        forms |= {f"{word[:-1]}ies", f"{word[:-1]}ied"}
    if word.endswith(("s", "sh", "ch", "x", "z")):
        forms.add(f"{word}es")
    if word[-1] not in f"{_VOWELS}wxy" and len(word) > 2 and word[-2] in _VOWELS:
        double = word + word[-1]
        forms |= {f"{double}ed", f"{double}ing", f"{double}in"}
    return frozenset(forms)
