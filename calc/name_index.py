"""The names of kept animals folded to one spelling, with their plurals, and what each one names.

The names live in ``data/animal_names.toml``, the words around them in ``data/animal_words.toml``.
"""

import unicodedata
from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from functools import cache, lru_cache
from typing import Any

from calc.animals import animals, own_slug
from calc.name_plurals import plurals_of
from calc.tables import read_table

__all__ = [
    "Candidate",
    "Entry",
    "Found",
    "Known",
    "Named",
    "Several",
    "Unplaced",
    "WithoutTargets",
    "Words",
    "first_of_each",
    "folded",
    "index",
    "listed_names",
    "name_rows",
    "names_with_targets",
    "own_index",
    "own_words",
    "wide_kins",
    "word_index",
    "words_around",
]


@dataclass(frozen=True, slots=True)
class Known:
    """An animal with targets here, by its key and its name."""

    slug: str
    name: str


@dataclass(frozen=True, slots=True)
class WithoutTargets:
    """An animal known by name that has no targets here; ``family`` is its part of the list."""

    name: str
    family: str


@dataclass(frozen=True, slots=True)
class Candidate:
    """One of several animals that a word may mean; ``slug`` is empty where it has no targets."""

    name: str
    slug: str


@dataclass(frozen=True, slots=True)
class Several:
    """A word that several animals share; ``wide``: more of those here than the candidates."""

    word: str
    candidates: tuple[Candidate, ...]
    wide: bool = False


@dataclass(frozen=True, slots=True)
class Unplaced:
    """Words that name no animal of the list, though they may look like one."""

    words: str


Named = Known | WithoutTargets | Several | Unplaced


@dataclass(frozen=True, slots=True)
class Found:
    """A name found within a text, from ``start`` to ``end``; ``slip`` where a letter was off."""

    what: Named
    start: int
    end: int
    slip: bool = False


@dataclass(frozen=True, slots=True)
class Entry:
    """What a name means, of how many words it is, and where it counts within running text.

    ``expected``: only where an animal is expected; ``turned``: it is a name turned round;
    ``pet_name``: no word in front makes it another (a beardie is no part of a longer name).
    """

    what: Known | WithoutTargets | Several
    words: int
    expected: bool = False
    turned: bool = False
    pet_name: bool = False


@dataclass(frozen=True, slots=True)
class Words:
    """The words around names, by what they do there."""

    in_front: frozenset[str]
    before: frozenset[str]
    after: frozenset[str]
    expected: frozenset[str]
    plain_slang: frozenset[str]
    bystanders: frozenset[str]
    misspelt: Mapping[str, str]
    kinds: Mapping[str, tuple[str, ...]]
    ends: tuple[str, ...]
    no_ends: frozenset[str]
    no_slips: frozenset[str]


# They mean something else after an animal: turtle, box 4 ft; gecko, day 80.
_NEVER_TURNED = frozenset(("box", "day"))


@cache
def folded(word: str) -> str:
    """Return a word without case, accents, apostrophes and hyphens.

    >>> folded("Königs-Python's")
    'konigspythons'
    """
    if word.isascii() and word.isalpha():
        return word.lower()
    plain = unicodedata.normalize("NFKD", word.casefold())
    return "".join(c for c in plain if c.isalnum())


@cache
def words_around() -> Words:
    """Return the words that may stand around names."""
    table = _table("animal_words")
    expected, front = table["expected"], table["in_front"]
    describing = _folded_words(f"{front['ages']} {front['sexes']} {front['morphs']}")
    return Words(
        in_front=_folded_words(" ".join(table["in_front"].values())),
        before=_folded_words(expected["before"]) | describing,
        after=_folded_words(expected["after"]) | describing,
        expected=_folded_words(expected["names"]),
        plain_slang=_folded_words(expected["plain_slang"]),
        bystanders=frozenset(table["bystanders"]["groups"]),
        misspelt=table["misspelt"],
        kinds={kind: tuple(last.split()) for kind, last in table["kinds"].items()},
        ends=tuple(table["glued"]["ends"].split()),
        no_ends=_folded_words(table["glued"]["others"]),
        no_slips=_folded_words(table["no_slips"]["words"]),
    )


@cache
def index() -> Mapping[str, Entry]:
    """Return what each name means, by its folded words without blanks, in every plural."""
    found: dict[str, Entry] = {}
    for form, entry in _entries():
        found.setdefault(form, entry)
    return found


@cache
def listed_names() -> Mapping[str, Entry]:
    """Return what each name of the list means, by its folded words without blanks."""
    found: dict[str, Entry] = {}
    for form, entry, _ in _listed():
        found.setdefault(form, entry)
    return found


@cache
def word_index() -> tuple[frozenset[str], frozenset[str]]:
    """Return the folded words that names begin with, and all words of names."""
    first, every = set[str](), set[str]()
    for words, _, _ in name_rows():
        for form in (words, *plurals_of(words)):
            first.add(form[0])
            every.update(form)
        first.update((words[-1], f"{words[-1]}s"))
    return frozenset(first), frozenset(every)


@lru_cache(maxsize=256)
def own_index(names: tuple[str, ...]) -> Mapping[str, Entry]:
    """Return what the names of a group's own animals mean, as ``index`` does for ours."""
    found: dict[str, Entry] = {}
    for name in names:
        words = _words_of(name)
        entry = Entry(Known(own_slug(name), name), len(words))
        for form in (words, *plurals_of(words)):
            found.setdefault("".join(form), entry)
    return found


@lru_cache(maxsize=256)
def own_words(names: tuple[str, ...]) -> frozenset[str]:
    """Return all folded words of the names of a group's own animals."""
    return frozenset(
        word
        for words in map(_words_of, names)
        for form in (words, *plurals_of(words))
        for word in form
    )


@cache
def name_rows() -> tuple[tuple[tuple[str, ...], Known | WithoutTargets | Several, str], ...]:
    """Return every name as its folded words, with what it means and its part of the list."""
    return tuple((_words_of(name), what, kind) for name, what, kind in _names())


def _words_of(name: str) -> tuple[str, ...]:
    return tuple(map(folded, name.replace("-", " ").replace("&", " ").split()))


@cache
def names_with_targets(slang: bool = False) -> Mapping[str, str]:
    """Return every name, of any language, of an animal with targets here, and its key; or slang."""
    return {
        name: what.slug
        for name, what, kind in _names()
        if isinstance(what, Known) and (kind == "slang") is slang
    }


@cache
def wide_kins() -> frozenset[frozenset[str]]:
    """Return the names of the candidates of every word that more animals here bear."""
    each = [x.candidates for _, x, _ in _names() if isinstance(x, Several) and x.wide]
    return frozenset((frozenset(first_of_each()), *(frozenset(c.name for c in x) for x in each)))


def first_of_each() -> tuple[str, ...]:
    """Return the name of one animal of each group, to tell who named none at all."""
    return tuple(animals()[slug].name for slug in _table("animal_words")["wide"]["first"])


def _entries() -> Iterator[tuple[str, Entry]]:
    """Yield the names first, then their plurals, so that no plural hides a name."""
    plurals = []
    for whole, entry, words in _listed():
        yield whole, entry
        plurals += [("".join(form), entry) for form in plurals_of(words)]
    yield from plurals
    for words, what, _ in name_rows():
        if isinstance(what, Known) and len(words) == 2 and words[0] not in _NEVER_TURNED:
            for end in ("", "s"):
                yield f"{words[1]}{end}{words[0]}", Entry(what, 2, turned=True)


def _listed() -> Iterator[tuple[str, Entry, tuple[str, ...]]]:
    """Yield every name of the list, its folded words in one, and what it means."""
    around = words_around()
    for words, what, kind in name_rows():
        whole = "".join(words)
        slang = kind == "slang" and len(words) == 1 and words[0] not in around.plain_slang
        pet_name = kind == "slang" and len(words) == 1
        yield (
            whole,
            Entry(what, len(words), whole in around.expected or slang, pet_name=pet_name),
            words,
        )


def _names() -> Iterator[tuple[str, Known | WithoutTargets | Several, str]]:
    """Yield every name with what it means and the part of the list that it stands in."""
    table, words = _table("animal_names"), _table("animal_words")
    known = animals()
    for slug, row in table["species"].items():
        here = known.get(slug)
        if here is not None:
            yield here.name, Known(slug, here.name), "en"
            yield here.scientific, Known(slug, here.name), "latin"
        for language, names in row.items():
            for name in names:
                shown = row["en"][0] if language == "slang" else name
                what = Known(slug, here.name) if here else WithoutTargets(shown, slug)
                yield name, what, language
    for slug, names in words["also_named"].items():
        for name in names:
            here = known.get(slug)
            yield name, Known(slug, here.name) if here else WithoutTargets(name, slug), "en"
    for family, row in table["recognised"].items():
        for name in row["names"]:
            yield name, WithoutTargets(name, family), "en"
    shared = {row["name"]: row["candidates"] for row in table["ambiguous"]}
    for word, keys in (*shared.items(), *words["also_ambiguous"].items()):
        also = Several(word, _candidates(keys, table), word in words["wide"]["words"].split())
        yield word, also, "en"


def _candidates(keys: list[str], table: Mapping[str, Any]) -> tuple[Candidate, ...]:
    return tuple(_candidate(key, table) for key in keys)


def _candidate(key: str, table: Mapping[str, Any]) -> Candidate:
    part, _, family = key.rpartition(":")
    if part:
        return Candidate(table["recognised"][family]["names"][0], "")
    here = animals().get(key)
    return Candidate(here.name, key) if here else Candidate(table["species"][key]["en"][0], "")


@cache
def _table(name: str) -> dict[str, Any]:
    return read_table(f"calc/data/{name}.toml")


def _folded_words(text: str) -> frozenset[str]:
    return frozenset(folded(word) for word in text.split())
