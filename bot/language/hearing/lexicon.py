"""The words that hearing knows, and where they stand in a text."""

import re
import tomllib
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from functools import cache, lru_cache
from importlib.resources import files
from itertools import pairwise

from bot.language.hearing.spelling import Spelt, corrected

__all__ = ["Mark", "Phrases", "animal_phrases", "known_phrases", "marks_of", "tokens_of"]

_THINGS = frozenset(("lamp", "heat", "tube", "mesh", "lid", "thermometer", "control"))
_TOKEN = re.compile(r"[a-z]+(?:'[a-z]+)*[0-9]{0,2}|[0-9]+")
# Shorter words are taken as they are.
_SHORTEST = 4
# A letter held down: coool, sooo.
_DRAWN_OUT = re.compile(r"([a-z])\1{2,}")
# What may stand between two words of one phrase.
_JOINT = re.compile(r"[ \t]*[-:=/]?[ \t]*\Z")


# A name may be turned round: chameleon (veiled); python, carpet.
_JOINT_OF_NAMES = re.compile(r"[ \t]*[-:=/(,]?[ \t]*\Z")
# Words of names that mean something else after an animal: turtle, box 4 ft; gecko, day 80.
_NO_NAMES = frozenset(("box", "day"))
# What people cut short in a name.
_SHORT = {"tortoise": "tort", "chameleon": "cham"}


@dataclass(frozen=True, slots=True)
class Mark:
    """A phrase found in the normalised text; ``slip`` where the spelling was corrected."""

    kind: str
    value: str
    start: int
    end: int
    slip: bool = False


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


@lru_cache(maxsize=8)
def animal_phrases(animals: tuple[tuple[str, str], ...]) -> Phrases:
    """Return the phrases of animals given as (name or alias, name), with their plurals.

    A last word that several names share, such as gecko, is kept as a hint that must be asked about.
    """
    forms: dict[str, tuple[str, str]] = {}
    for alias, name in animals:
        for form in _forms(_plain(alias)):
            forms.setdefault(form, ("animal", name))
    kin: dict[str, set[str]] = {}
    for alias, name in animals:
        kin.setdefault(_plain(alias).split()[-1], set()).add(name)
    for last, names in kin.items():
        for form in _forms(last):
            forms.setdefault(form, ("kin", "|".join(sorted(names))))
    for last in ("snake", "lizard", "reptile"):
        forms.setdefault(last, ("kin", ""))
    return _phrases((form, kind, value) for form, (kind, value) in forms.items())


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
            joint = _JOINT if kind != "animal" else _JOINT_OF_NAMES
            if tuple(words[at : at + len(phrase)]) == phrase and _joined(text, run, joint):
                slip = any(word in meant and meant[word].slip for word, _, _ in run)
                start, last = run[0][1], run[-1][2]
                closed = text[last : last + 1] == ")" and "(" in text[start:last]
                found.append(Mark(kind, value, start, last + closed, slip))
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


def _joined(text: str, run: Sequence[tuple[str, int, int]], joint: re.Pattern[str]) -> bool:
    return len(run) == 1 or all(joint.match(text, one[2], other[1]) for one, other in pairwise(run))


def _plain(name: str) -> str:
    return " ".join(re.sub(r"[-_]", " ", name.lower().replace("'", "").replace("’", "")).split())


def _forms(name: str) -> tuple[str, ...]:
    forms = [name, f"{name}s", f"{name}es"]
    first, _, last = name.rpartition(" ")
    if first and last in _SHORT:
        forms += [f"{first} {_SHORT[last]}", f"{first} {_SHORT[last]}s"]
    if first and first not in _NO_NAMES:
        forms.append(f"{last} {first}")
    if name.endswith("y"):
        forms.append(f"{name[:-1]}ies")
    if name.endswith("ie"):
        forms += [f"{name[:-2]}y", f"{name[:-2]}ys"]
    if "ck" in name:
        # A slip that leaves four letters, which spelling does not touch: geko.
        forms.append(name.replace("ck", "k"))
    return tuple(forms)
