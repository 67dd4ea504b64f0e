"""Which animal a name is: one with targets here, one known without them, one of several, or none.

No name is ever taken for that of another animal: the longest known name wins, and an unknown word
in front of one makes it a name that is not known (mountain horned dragon). ``own`` are the names of
animals that a group added: they win over those without targets here, and over no other.
"""

import re
from collections.abc import Iterator, Sequence
from functools import lru_cache
from itertools import pairwise
from typing import NamedTuple

from calc.animal import Animal
from calc.animals import animals
from calc.name_index import (
    Candidate,
    Entry,
    Found,
    Known,
    Named,
    Several,
    Unplaced,
    WithoutTargets,
    folded,
    index,
    listed_names,
    own_index,
    own_words,
    word_index,
    words_around,
)
from calc.name_settling import is_bystander, settled
from calc.name_slips import meant

__all__ = [
    "Candidate",
    "Found",
    "Known",
    "Named",
    "Several",
    "Unplaced",
    "WithoutTargets",
    "find",
    "named",
    "names_in",
]

_WORD = re.compile(r"[^\W\d_]+(?:['’][^\W\d_]+)*")
# French l' stands before a name and is no part of it.
_ARTICLE = re.compile(r"l['’](?=\w)", re.I)
_MOST_WORDS = 6
_JOINED = re.compile(r"[ \t]*[-–'’&]?[ \t]*\Z")
# A name may be turned round: chameleon (veiled); python, carpet.
_TURNED = re.compile(r"[ \t]*[-:=/(,]?[ \t]*\Z")
_IN_FRONT = re.compile(r"(?:[ \t]+|[ \t]*-[ \t]*)\Z")
# A royal needs heat, a royal mess; do royals need it, I do monitor it.
_ARTICLES = frozenset(("a", "an", "do", "does"))
_HEAD = re.compile(r"[,.;:!?()\n/|]\s*\Z")
_PARTED = re.compile(r"[ \t]*(?:[,.;:!?()\n/|+*=]|-[ \t]|\Z)")
_SHORTEST_PIECE = 3


class _Token(NamedTuple):
    """A word of the text, folded, and as it was meant."""

    plain: str
    meant: tuple[str, ...]
    start: int
    end: int


def find(name: str) -> Animal | None:
    """Return the animal of this name if it names one with targets, and no other.

    Examples
    --------
    >>> find("Beardies").name
    'bearded dragon'
    >>> find("dragon") is None
    True
    """
    what = named(name).what
    return animals()[what.slug] if isinstance(what, Known) else None


@lru_cache(maxsize=256)
def named(name: str, own: tuple[str, ...] = ()) -> Found:
    """Return what a name means that was given as one, slang and short forms included.

    Examples
    --------
    >>> named("emerald tree boa").what
    WithoutTargets(name='emerald tree boa', family='emerald-tree-boa')
    >>> named("mountain dragon").what
    Unplaced(words='mountain dragon')
    """
    whole = name.strip()
    key = folded(_ARTICLE.sub("", whole))
    entry = _meaning(key, own) or index().get(words_around().misspelt.get(key, ""))
    if entry is not None and not (entry.turned and " " not in whole):
        return Found(entry.what, 0, len(name))
    found = [one for one in names_in(name, own=own) if not isinstance(one.what, Unplaced)]
    tokens = tuple(_tokens(name, own_words(own)))
    rest = [t for t in tokens if not any(f.start <= t.start < f.end for f in found)]
    if len(found) == 1 and all(token.plain in words_around().in_front for token in rest):
        return found[0]
    return Found(Unplaced(whole), 0, len(name))


def names_in(
    text: str, ordinary: frozenset[str] = frozenset(), own: tuple[str, ...] = ()
) -> tuple[Found, ...]:
    """Return the names within running text, in order, none overlapping.

    ``ordinary`` are words that are spelt right and no names, beside those of the list.

    Examples
    --------
    >>> [one.what.name for one in names_in("tube for my emerald tree boa or a corn snake")]
    ['emerald tree boa', 'corn snake']
    """
    tokens = tuple(_tokens(text, ordinary | own_words(own) if own else ordinary))
    first = word_index()[0] | own_words(own) if own else word_index()[0]
    found: list[Found] = []
    after = 0
    for at, token in enumerate(tokens):
        if at < after:
            continue
        if first.isdisjoint(token.meant):
            if _is_glued(token.plain):
                found.append(Found(Unplaced(text[token.start : token.end]), token.start, token.end))
            continue
        hit = _longest(text, tokens, at, own)
        if hit is None:
            continue
        after = at + hit[1]
        bound = found[-1].end if found else 0
        found.append(_placed(text, tokens, at, hit, bound))
    return settled(text, found)


def _is_glued(plain: str) -> bool:
    """Say whether a word of no list ends as German names of animals do: Sumpfschildkröte."""
    around = words_around()
    for ending in ("", "n", "en", "s"):
        word = plain.removesuffix(ending) if ending else plain
        if word.endswith(around.ends) and word not in around.ends:
            return word not in around.no_ends
    return False


def _meaning(key: str, own: tuple[str, ...]) -> Entry | None:
    """Return what a folded name means."""
    # A name as it stands in the list is found without all the plurals.
    listed = listed_names().get(key) or index().get(key)
    if not own or (listed is not None and isinstance(listed.what, Known)):
        return listed
    return own_index(own).get(key) or listed


def _tokens(text: str, ordinary: frozenset[str]) -> Iterator[_Token]:
    for match in _WORD.finditer(text):
        raw, start = match[0], match.start()
        article = _ARTICLE.match(raw) if raw[0] in "lL" else None
        if article:
            raw, start = raw[article.end() :], start + article.end()
        plain = folded(raw)
        words = (plain,) if plain in ordinary else meant(plain)
        yield _Token(plain, words, start, match.end())


_Hit = tuple[Entry | None, int, bool]


def _longest(text: str, tokens: Sequence[_Token], at: int, own: tuple[str, ...]) -> _Hit | None:
    """Return the longest name that begins with this token, of how many tokens, and if misspelt.

    Without an entry: the words may be a slip of several names.
    """
    for n in range(_joined_to(text, tokens, at), 0, -1):
        run = tokens[at : at + n]
        exact = _meaning("".join(token.plain for token in run), own)
        if exact is not None and _counts(text, tokens, at, n, exact, slip=False):
            return exact, n, False
        others = [(i, token) for i, token in enumerate(run) if token.meant != (token.plain,)]
        if len(others) != 1:
            continue
        (place, slipped) = others[0]
        plain = [token.plain for token in run]
        near = {}
        for word in slipped.meant:
            entry = index().get("".join([*plain[:place], word, *plain[place + 1 :]]))
            if entry is not None and _counts(text, tokens, at, n, entry, slip=True):
                near[entry.what] = entry
        if near:
            return (next(iter(near.values())) if len(near) == 1 else None), n, True
    return None


def _counts(
    text: str, tokens: Sequence[_Token], at: int, size: int, entry: Entry, *, slip: bool
) -> bool:
    """Say whether a name counts here as the name of an animal."""
    if size > entry.words and (size > entry.words + 1 or _has_crumbs(tokens[at : at + size])):
        return False
    if not entry.turned and not _stands_together(text, tokens[at : at + size]):
        return False
    if slip and (entry.expected or is_bystander(entry.what)):
        return False
    return not entry.expected or _is_expected(text, tokens, at, size)


def _has_crumbs(run: Sequence[_Token]) -> bool:
    """Say whether pieces of a word are too short to be a name written apart: a noli."""
    return any(len(token.plain) < _SHORTEST_PIECE for token in run)


def _joined_to(text: str, tokens: Sequence[_Token], at: int) -> int:
    """Return how many tokens from this one on stand close enough to be one name."""
    last = min(at + _MOST_WORDS, len(tokens))
    for other in range(at + 1, last):
        between = text[tokens[other - 1].end : tokens[other].start]
        if between != " " and not (_TURNED.match(between) or _JOINED.match(between)):
            return other - at
    return last - at


def _stands_together(text: str, run: Sequence[_Token]) -> bool:
    return all(_JOINED.match(text[one.end : other.start]) for one, other in pairwise(run))


def _is_expected(text: str, tokens: Sequence[_Token], at: int, size: int) -> bool:
    """Say whether an animal is expected here: after my, at the head of a list, as a whole line."""
    before = tokens[at - 1] if at else None
    gap = text[before.end : tokens[at].start] if before else text[: tokens[at].start]
    called = before and before.plain in words_around().before and _IN_FRONT.match(gap)
    if before and called and before.plain not in _ARTICLES:
        return True
    if before and not (called or _HEAD.search(gap)):
        return False
    last = tokens[at + size - 1]
    rest = text[last.end :]
    if _PARTED.match(rest) or rest.lstrip()[:1].isdigit():
        return True
    follows = tokens[at + size] if at + size < len(tokens) else None
    if follows is None or (before and not called):
        return False
    return follows.plain in words_around().after


def _placed(text: str, tokens: Sequence[_Token], at: int, hit: _Hit, bound: int) -> Found:
    """Return what was found, or that an unknown word in front makes it another name."""
    entry, size, slip = hit
    start, end = tokens[at].start, tokens[at + size - 1].end
    if entry is None:
        return Found(Unplaced(text[start:end]), start, end)
    if entry.turned and text[end : end + 1] == ")" and "(" in text[start:end]:
        end += 1
    front = at
    while (
        not entry.pet_name
        and front
        and _makes_another(text, tokens[front - 1], tokens[front], bound)
    ):
        front -= 1
    if front == at or entry.pet_name or isinstance(entry.what, WithoutTargets):
        return Found(entry.what, start, end, slip)
    start = tokens[front].start
    return Found(Unplaced(text[start:end]), start, end)


def _makes_another(text: str, before: _Token, this: _Token, bound: int) -> bool:
    """Say whether the word before a name may make it the name of another animal."""
    if before.start < bound or len(before.plain) < 2:
        return False
    if not _IN_FRONT.match(text[before.end : this.start]):
        return False
    glued = before.start and text[before.start - 1].isdigit()
    return not glued and before.plain not in words_around().in_front
