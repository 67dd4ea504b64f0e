"""The words that hearing knows, and where they stand in a text."""

import re
import tomllib
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from functools import cache, lru_cache
from importlib.resources import files
from itertools import pairwise

from bot.language.hearing.spelling import Spelt, corrected

__all__ = ["Mark", "Phrases", "animal_phrases", "known_phrases", "marks_of"]

_THINGS = frozenset(("lamp", "heat", "tube", "mesh", "lid", "thermometer", "control"))
_TOKEN = re.compile(r"[a-z]+(?:'[a-z]+)*[0-9]{0,2}|[0-9]+")
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


def marks_of(text: str, phrases: Phrases, also: frozenset[str] = frozenset()) -> list[Mark]:
    """Return the phrases in a normalised lower-case text, leftmost and longest, none twice.

    Words of ``also`` are spelt right too, though they belong to other phrases.
    """
    tokens = [
        (corrected(match[0].replace("'", ""), phrases.words, also), match.start(), match.end())
        for match in _TOKEN.finditer(text)
    ]
    found = []
    at = 0
    while at < len(tokens):
        step = 1
        for words, kind, value in phrases.by_first.get(tokens[at][0].word, ()):
            run = tokens[at : at + len(words)]
            if tuple(token[0].word for token in run) == words and _joined(text, run):
                slip = any(token[0].slip for token in run)
                found.append(Mark(kind, value, run[0][1], run[-1][2], slip))
                step = len(words)
                break
        at += step
    return found


def _joined(text: str, run: Sequence[tuple[Spelt, int, int]]) -> bool:
    return all(_JOINT.match(text, one[2], other[1]) for one, other in pairwise(run))


def _plain(name: str) -> str:
    return " ".join(re.sub(r"[-_]", " ", name.lower().replace("'", "").replace("’", "")).split())


def _forms(name: str) -> tuple[str, ...]:
    forms = [name, f"{name}s", f"{name}es"]
    if name.endswith("y"):
        forms.append(f"{name[:-1]}ies")
    if name.endswith("ie"):
        forms += [f"{name[:-2]}y", f"{name[:-2]}ys"]
    if "ck" in name:
        # A slip that leaves four letters, which spelling does not touch: geko.
        forms.append(name.replace("ck", "k"))
    return tuple(forms)
