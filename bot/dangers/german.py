"""German words as the lists of the thesaurus have them: spelling forgiven, endings, compounds.

An entry's word is plain (it has its endings), ``=word`` (it has none), ``word*`` (any end),
``*word`` (any beginning: a compound, and its endings) or ``*word*``.
"""

from collections.abc import Iterable, Iterator
from dataclasses import dataclass, field
from functools import lru_cache
from typing import Generic, TypeVar

__all__ = ["Words", "fits"]

_UMLAUTS = str.maketrans({"ä": "ae", "ö": "oe", "ü": "ue", "ß": "ss"})
# People write one for the other; a list's words and theirs are brought to the same.
_ALIKE = (
    ("ae", "a"),
    ("oe", "o"),
    ("ue", "u"),
    ("th", "t"),
    ("ph", "f"),
    ("ie", "i"),
    ("ck", "k"),
    ("dt", "t"),
)
# What is another word without its umlaut, or with a single letter.
_UNLIKE = ("wuerd", "haett", "koennt", "moecht", "schoen", "offen")
_LONG_ENOUGH_TO_FOLD = 5
_ENDINGS = ("en", "er", "es", "em", "e", "n", "s")
_LEAST_STEM = 3
# A shorter word ends too many others: "Ei" stands only by itself.
_LEAST_IN_COMPOUND = 4
Kept = TypeVar("Kept")


@lru_cache(maxsize=50_000)
def _plain(word: str) -> str:
    """Return a word as it is compared: umlauts, doubled and like-sounding letters as one.

    >>> _plain("Thermostatt"), _plain("röhre"), _plain("roehre"), _plain("rohre")
    ('termostat', 'rohre', 'rohre', 'rohre')
    """
    word = word.lower().translate(_UMLAUTS)
    if word.startswith(_UNLIKE):
        return word
    for written, meant in _ALIKE:
        word = word.replace(written, meant)
    if len(word) < _LONG_ENOUGH_TO_FOLD:
        return word
    return "".join(letter for at, letter in enumerate(word) if not at or letter != word[at - 1])


@lru_cache(maxsize=50_000)
def _forms(word: str) -> tuple[str, ...]:
    """Return a word as it is compared, and without each of its endings."""
    word = _plain(word)
    cut = (
        word[: -len(end)]
        for end in _ENDINGS
        if word.endswith(end) and len(word) - len(end) >= _LEAST_STEM
    )
    return (word, *dict.fromkeys(cut))


@lru_cache(maxsize=50_000)
def fits(pattern: str, word: str) -> bool:
    """Say whether a word is what one place of an entry wants.

    >>> fits("*lampe", "UVLampen"), fits("rauch*", "rauchwolke"), fits("=rot", "rote")
    (True, True, False)
    """
    kind, stem = _kind(pattern)
    if kind == "=":
        return stem == _plain(word)
    if kind == "word*":
        return _plain(word).startswith(stem)
    if kind == "*word*":
        return stem in _plain(word)
    if kind == "*word":
        return any(form.endswith(_wanted(stem)) for form in _forms(word))
    return not set(_wanted(stem)).isdisjoint(_forms(word))


@lru_cache(maxsize=50_000)
def _kind(pattern: str) -> tuple[str, str]:
    if pattern[0] == "=":
        return "=", _plain(pattern[1:])
    stem = _plain(pattern.strip("*"))
    if pattern[0] == "*" and len(stem) >= _LEAST_IN_COMPOUND:
        return ("*word*" if pattern[-1] == "*" else "*word"), stem
    return ("word*" if pattern[-1] == "*" else "word"), stem


def _wanted(stem: str) -> tuple[str, ...]:
    """Return a plain word and it without a last e, which its other endings take the place of."""
    short = stem[:-1]
    return (stem, short) if stem.endswith("e") and len(short) >= _LEAST_STEM else (stem,)


@dataclass(slots=True)
class Words(Generic[Kept]):
    """What is kept under the words of entries, to be found by a word of a text."""

    exact: dict[str, list[Kept]] = field(default_factory=dict)
    plain: dict[str, list[Kept]] = field(default_factory=dict)
    begins: dict[str, list[Kept]] = field(default_factory=dict)
    ends: dict[str, list[Kept]] = field(default_factory=dict)
    within: dict[str, list[Kept]] = field(default_factory=dict)

    def keep(self, pattern: str, what: Kept) -> None:
        """Keep something under the word of an entry."""
        kind, stem = _kind(pattern)
        into = {"=": self.exact, "word*": self.begins, "*word*": self.within}.get(kind)
        if into is not None:
            into.setdefault(stem, []).append(what)
            return
        for form in _wanted(stem):
            (self.ends if kind == "*word" else self.plain).setdefault(form, []).append(what)

    def under(self, word: str) -> list[Kept]:
        """Return everything whose word of an entry a word fits."""
        return [what for kept in self._under(word) for what in kept]

    def _under(self, word: str) -> Iterator[Iterable[Kept]]:
        plain, forms = _plain(word), _forms(word)
        yield self.exact.get(plain, ())
        for form in forms:
            yield self.plain.get(form, ())
        for length in range(1, len(plain) + 1):
            yield self.begins.get(plain[:length], ())
        endings = {form[at:] for form in forms for at in range(len(form))}
        for ending in sorted(endings):
            yield self.ends.get(ending, ())
        for stem, kept in self.within.items():
            if stem in plain:
                yield kept
