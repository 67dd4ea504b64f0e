"""Bringing a text to the words of hearing, each with the place that it came from."""

import re
from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from functools import lru_cache

from bot.language.glossary.table import NUMBER, Run, Table, forms, rank, table
from bot.language.normal import Normal, normal
from bot.language.tongue import Tongue, tongue_of

__all__ = ["glossed"]

_TOKEN = re.compile(r"[^\W\d_]+[0-9]{0,2}|[0-9]+(?:[.,][0-9]+)?")
_JOINT = re.compile(r"[ \t]*[-./]?[ \t]*\Z")
# 30,5 but not a list: 30,24,18.
_COMMA = re.compile(r"(?<![\d.,])(\d{1,3}),(\d{1,2})(?![\d]|[.,]\d)")
_HYPHEN = re.compile(r"(?<=\w)-(?=[^\W\d_])")
# Two sides of a box in words: 140 auf 70, 120 mal 60 mal 60.
_SIDES = re.compile(
    r"(?<![\d.,%])(?P<unit>(?P<one>[1-9]\d{1,2})(?: ?cm)? )(?P<by>auf|mal) "
    r"(?=(?P<other>[1-9]\d{1,2})(?![\d.,]| ?(?:°|grad|%|uhr|h\b|w\b|watt)))",
    re.I,
)
_NO_BOX = re.compile(r"von|temp|sonnen|spot|kühl|warm|wärm|nacht|grad|bask|uvi|index|watt", re.I)
_SHORTEST_SIDE, _BACK = 40, 24
_LONGEST = 2000
_LONGEST_WORD = 40
_SHORTEST_SLIPPED = 6
_SHORTEST_COMPOUND = 6
_SHORTEST_PART = 3
# What German puts between the parts of a compound.
_BETWEEN = ("", "s", "n", "en", "es", "e")


@dataclass(frozen=True, slots=True)
class _Token:
    text: str
    start: int
    end: int


@dataclass(frozen=True, slots=True)
class _Piece:
    """Words of hearing for the characters from ``start`` to ``end``."""

    text: str
    start: int
    end: int


@lru_cache(maxsize=8)
def glossed(text: str) -> Normal:
    """Return a text in the one spelling and in the words of hearing.

    A text that is English stays as it is. Of one whose language is not told only those words
    are taken that English has not.

    >>> glossed("Abstand 30,5 cm, kühle Seite 24 Grad, ohne Gitter").text
    'distance 30.5 cm, cool side 24 degrees c, without mesh'
    """
    plain = normal(text)
    tongue = tongue_of(text[:_LONGEST])
    if tongue is Tongue.ENGLISH:
        return plain
    told = _SIDES.sub(_by, plain.text)
    plain = replace(plain, text=told, metric=told != plain.text)
    known = table(Tongue.GERMAN)
    pieces = list(_pieces(plain.text, known, surely=tongue is None))
    if tongue is None and not pieces:
        return plain
    return _rewritten(plain, pieces)


def _by(sides: re.Match[str]) -> str:
    """Return a side of a box with a sign behind it, as long as it was: 140 auf 70."""
    one, word = int(sides["one"]), sides["by"]
    # "35 auf 30" may tell of degrees: sides are round, and told of nothing that is warm.
    round_sides = one >= _SHORTEST_SIDE and not one % 5 and not int(sides["other"]) % 5
    before = sides.string[max(0, sides.start() - _BACK) : sides.start()]
    if word.lower() == "auf" and (not round_sides or _NO_BOX.search(before)):
        return sides[0]
    return f"{sides['unit']} x  "


def _pieces(text: str, known: Table, *, surely: bool) -> Iterator[_Piece]:
    lower = "".join(low if len(low := c.lower()) == 1 else c for c in text)
    tokens = [_Token(m[0], *m.span()) for m in _TOKEN.finditer(lower)]
    at = 0
    while at < len(tokens):
        token = tokens[at]
        run = _run(lower, tokens, at, known, surely=surely)
        if run is not None and not (surely and run.meant == token.text):
            last = tokens[at + len(run.words) - 1]
            numbers = iter(t.text for t in tokens[at : at + len(run.words)] if t.text[0].isdigit())
            said = "".join(
                next(numbers, "") if letter == NUMBER else letter for letter in run.meant
            )
            yield _Piece(said.replace(",", "."), token.start, last.end)
            at += len(run.words)
            continue
        shared = surely and token.text in known.english
        if not shared and (meant := _compound(token.text)) is not None:
            yield _Piece(meant, token.start, token.end)
        at += 1


def _run(text: str, tokens: Sequence[_Token], at: int, known: Table, *, surely: bool) -> Run | None:
    """Return the longest run of words that starts at a token, of those the likest."""
    best: tuple[int, int] | None = None
    found: Run | None = None
    first = tokens[at].text
    keys = (NUMBER,) if first[0].isdigit() else _meant(first, known, surely=surely)
    shared = surely and first in known.english
    for key in keys:
        for run in known.by_first.get(key, ()):
            if surely and (run.english or (shared and len(run.words) == 1)):
                continue
            unlike = _unlike(text, tokens[at : at + len(run.words)], run, key)
            if unlike is None:
                continue
            score = (-len(run.words), unlike)
            if best is None or score < best:
                best, found = score, run
    return found


def _unlike(text: str, said: Sequence[_Token], run: Run, key: str) -> int | None:
    if len(said) < len(run.words):
        return None
    total = 0 if key == NUMBER else (rank(said[0].text, run.words[0]) or 0)
    for token, before, word in zip(said[1:], said, run.words[1:], strict=False):
        if not _JOINT.match(text, before.end, token.start) and before.end != token.start:
            return None
        if word == NUMBER:
            if not token.text[0].isdigit():
                return None
            continue
        likeness = rank(token.text, word)
        if likeness is None:
            return None
        total += likeness
    return total


@lru_cache(maxsize=20_000)
def _forms_with_slips(word: str, known: frozenset[str]) -> tuple[str, ...]:
    from bot.language.hearing.spelling import corrected

    found = forms(word)
    if len(word) < _SHORTEST_SLIPPED or not known.isdisjoint(found):
        return found
    spelt = corrected(found[0], known)
    return (*found, spelt.word) if spelt.slip else found


def _meant(word: str, known: Table, *, surely: bool) -> tuple[str, ...]:
    if len(word) > _LONGEST_WORD:
        return ()
    return forms(word) if surely else _forms_with_slips(word, known.words)


def _compound(word: str) -> str | None:
    """Return the parts of a compound in the words of hearing; None: it is none."""
    if not _SHORTEST_COMPOUND <= len(word) <= _LONGEST_WORD or not word.isalpha():
        return None
    return _parted(forms(word)[0])


@lru_cache(maxsize=20_000)
def _parted(word: str) -> str | None:
    parts = table(Tongue.GERMAN).parts
    for at in range(_SHORTEST_PART, len(word) - _SHORTEST_PART + 1):
        last = next((parts[form] for form in forms(word[at:]) if form in parts), None)
        if last is None:
            continue
        front = word[:at]
        for between in _BETWEEN:
            stem = front.removesuffix(between) if between else front
            if between and stem == front:
                continue
            first = parts.get(stem) or (_parted(stem) if len(stem) >= _SHORTEST_COMPOUND else None)
            if first:
                return f"{first} {last}"
    return None


def _rewritten(plain: Normal, pieces: Sequence[_Piece]) -> Normal:
    """Return the text with its pieces in place, and where each character came from."""
    text, starts, ends = [], [], []
    at = 0
    source = _COMMA.sub(r"\1.\2", plain.text)
    source = _HYPHEN.sub(" ", source)

    def original(start: int, end: int) -> tuple[int, int]:
        return plain.span(start, end)

    for piece in (*pieces, _Piece("", len(source), len(source))):
        for place in range(at, piece.start):
            first, last = original(place, place + 1)
            text.append(source[place])
            starts.append(first)
            ends.append(last)
        if piece.text:
            first, last = original(piece.start, piece.end)
            text.append(piece.text)
            starts += [first] * len(piece.text)
            ends += [last] * len(piece.text)
        at = piece.end
    starts.append(len(plain.original))
    return Normal("".join(text), tuple(starts), plain.original, tuple(ends), metric=True)
