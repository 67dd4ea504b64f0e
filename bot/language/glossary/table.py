"""The table of a language: its runs of words, each with what hearing calls them."""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from functools import cache, lru_cache
from typing import Any

from calc.tables import read_table

__all__ = ["CHOICES", "NUMBER", "UMLAUTS", "Run", "Table", "forms", "table", "told_in"]

NUMBER = "#"
"""Stands for any number in a run of words."""

UMLAUTS = str.maketrans({"ä": "ae", "ö": "oe", "ü": "ue", "ß": "ss"})
_LEFT_OFF = (("ae", "a"), ("oe", "o"), ("ue", "u"))
_ENDINGS = ("n", "s", "e", "en", "er", "es", "em")
_LEAST_STEM = 3
_PARTS = "nouns"
_NO_RUNS = "also_english"
CHOICES = "choices"
"""The rows of what is chosen for an option."""


@dataclass(frozen=True, slots=True)
class Run:
    """Words that stand for others; ``part`` says that a compound may be made of it."""

    words: tuple[str, ...]
    meant: str
    part: bool
    english: bool


@dataclass(frozen=True, slots=True)
class Table:
    """The runs of a language by the forms of their first word, the longest first."""

    by_first: dict[str, tuple[Run, ...]]
    parts: dict[str, str]
    words: frozenset[str]
    english: frozenset[str]


@lru_cache(maxsize=20_000)
def forms(word: str) -> tuple[str, ...]:
    """Return a word as it is compared, the likeliest first: as written, without its ending.

    >>> forms("kühlen")
    ('kuehlen', 'kuehle', 'kuehl', 'kuhlen', 'kuhle', 'kuhl')
    """
    plain = word.translate(UMLAUTS)
    whole = (plain, *_cut(plain))
    bare = tuple(_bare(form) for form in whole)
    return tuple(dict.fromkeys((*whole, *bare)))


def _cut(word: str) -> Iterator[str]:
    for end in _ENDINGS:
        if word.endswith(end) and len(word) - len(end) >= _LEAST_STEM:
            yield word[: -len(end)]


def _bare(word: str) -> str:
    for written, left in _LEFT_OFF:
        word = word.replace(written, left)
    return word


@lru_cache(maxsize=20_000)
def _kept_under(word: str) -> tuple[str, ...]:
    """Return the forms that a word of the table is found by, itself first."""
    plain = word.translate(UMLAUTS)
    short = (plain[:-1],) if plain.endswith("e") and len(plain) > _LEAST_STEM else ()
    whole = (plain, *short)
    return tuple(dict.fromkeys((*whole, *map(_bare, whole))))


def _words_of_hearing() -> frozenset[str]:
    from bot.language.hearing.lexicon import known_phrases

    return known_phrases().words


@cache
def told_in(language: str) -> Mapping[str, Any]:
    """Return the file of a language."""
    return read_table(f"bot/language/glossary/{language}.toml")


@cache
def table(language: str) -> Table:
    """Return the table of a language."""
    told = told_in(language)
    english = frozenset((*told[_NO_RUNS].split(), NUMBER)) | _words_of_hearing()
    runs = [
        Run(words, meant, part=section == _PARTS, english=all(w in english for w in words))
        for section, rows in told.items()
        if section not in (_NO_RUNS, CHOICES)
        for meant, written in rows.items()
        for each in written
        if (words := tuple(each.replace("-", " ").replace(NUMBER, f" {NUMBER} ").split()))
    ]
    by_first: dict[str, list[Run]] = {}
    parts: dict[str, str] = {}
    for run in sorted(runs, key=lambda run: -len(run.words)):
        for form in _kept_under(run.words[0]):
            by_first.setdefault(form, []).append(run)
        if run.part and len(run.words) == 1:
            for form in _kept_under(run.words[0]):
                parts.setdefault(form, run.meant)
    known = frozenset(form for run in runs for word in run.words for form in _kept_under(word)[:1])
    return Table({form: tuple(found) for form, found in by_first.items()}, parts, known, english)


@lru_cache(maxsize=50_000)
def rank(word: str, of_table: str) -> int | None:
    """Return how unlike a word is to one of the table; None: it is another word."""
    kept = _kept_under(of_table)
    said = forms(word)
    found = [at + kept.index(form) for at, form in enumerate(said) if form in kept]
    return min(found, default=None)
