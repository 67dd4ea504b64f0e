"""Which things and states beside each other are a hazard, and where each must stand."""

from bisect import bisect_left
from collections.abc import Mapping
from dataclasses import dataclass
from functools import cache
from operator import attrgetter

from bot.dangers.clauses import Hit, Mood, Told
from bot.dangers.thesaurus import listed
from bot.language.tongue import Tongue

__all__ = ["Found", "Pair", "found", "pairs", "urgencies"]

_NEAR, _BESIDE, _CLOSE, _ACROSS = 12, 8, 3, 40
_APART = 6
# No phrase is longer; and what is said more often says nothing new.
_LONGEST, _MOST_HITS = 10, 8
_START = attrgetter("start")
_NOT_TOLD = Mood.DENIED | Mood.OVER | Mood.REPORTED


@dataclass(frozen=True, slots=True)
class _Place:
    """One more thing that must, or must not, stand near: where (see pairs.toml), and its names."""

    where: str
    names: tuple[str, ...]
    wanted: bool


@dataclass(frozen=True, slots=True)
class Pair:
    """A state and what stands with it; ``first`` are the names of the state.

    ``needed`` has one set for each thing that must stand somewhere: one of its names. What a
    ``sure`` pair tells, nothing that was learned takes back.
    """

    first: tuple[str, ...]
    others: tuple[_Place, ...]
    needed: tuple[frozenset[str], ...]
    sure: bool


@dataclass(frozen=True, slots=True)
class Found:
    """A pair that a text tells: from which word to which, if only asked about, and if surely."""

    start: int
    end: int
    asked: bool
    sure: bool = False


@cache
def pairs(tongue: Tongue = Tongue.ENGLISH) -> Mapping[str, tuple[Pair, ...]]:
    """Return the pairs of each hazard by its key."""
    return {key: _read(text) for key, text in listed("pairs.toml", tongue).items()}


@cache
def urgencies() -> Mapping[str, Mapping[str, tuple[Pair, ...]]]:
    """Return what makes a hazard more or less urgent, by its key and the urgency."""
    return {
        key: {urgency: _read(text) for urgency, text in rows.items()}
        for key, rows in listed("urgencies.toml").items()
    }


def found(told: Told, pair: Pair) -> Found | None:
    """Return where a text tells a pair, the plain telling before the asked one."""
    there = told.hits.keys()
    for names in pair.needed:
        if there.isdisjoint(names):
            return None
    asked = None
    for name in pair.first:
        hits = told.hits.get(name, [])
        for hit in hits if len(hits) <= _MOST_HITS else (*hits[:_MOST_HITS], hits[-1]):
            if told.mood(hit) & _NOT_TOLD:
                continue
            spans = _with_others(told, pair, hit)
            if spans is None:
                continue
            result = Found(
                start=min(span.start for span in spans),
                end=max(span.end for span in spans),
                asked=any(told.mood(span) & Mood.ASKED for span in spans),
                sure=pair.sure,
            )
            if not result.asked:
                return result
            asked = asked or result
    return asked


def _with_others(told: Told, pair: Pair, first: Hit) -> list[Hit] | None:
    spans = [first]
    for place in pair.others:
        stands = _standing(told, place, first)
        if (stands is not None) != place.wanted:
            return None
        if stands is not None and place.where not in "@^":
            spans.append(stands)
    return spans


def _standing(told: Told, place: _Place, first: Hit) -> Hit | None:
    """Return what stands where a pair wants it, or, where it must not, anything that does."""
    low, high = _reach(told, place.where, first)
    for name in place.names:
        hits = told.hits.get(name)
        if not hits:
            continue
        for at in range(bisect_left(hits, low - _LONGEST, key=_START), len(hits)):
            hit = hits[at]
            if hit.start >= high:
                break
            if _stands(told, place.where, first, hit, low) and (
                not place.wanted or not told.mood(hit) & _NOT_TOLD
            ):
                return hit
    return None


def _reach(told: Told, where: str, first: Hit) -> tuple[int, int]:
    """Return the words within which something must end or begin: from one to before another."""
    if where == "@":
        return 0, len(told.words)
    clause = told.clause_of(first.start)
    if where == "=":
        return clause.start, clause.stop
    if where == "-":
        return min(clause.start, first.start - _APART), max(clause.stop, first.end + _APART + 1)
    if where == "<":
        return first.start - _BESIDE, first.start
    if where == "+":
        return max(clause.start, first.start - _CLOSE + 1), first.start
    if where == ">":
        return first.end, first.end + _BESIDE + 1
    far = {"^": _ACROSS, "~": _CLOSE}.get(where, _NEAR)
    return first.start - far, first.end + far + 1


def _stands(told: Told, where: str, first: Hit, hit: Hit, low: int) -> bool:
    if where == "@":
        return True
    apart = abs(told.sentence[hit.start] - told.sentence[first.start])
    if apart > (where == "^"):
        return False
    if where == "=":
        return hit.start >= low
    if where == "+":
        between = told.words[hit.end : first.start]
        return low <= hit.end <= first.start and not any(word.word[0].isdigit() for word in between)
    if where == "<":
        return low <= hit.end <= first.start
    return hit.end >= low if where != ">" else hit.start >= low


def _read(text: str) -> tuple[Pair, ...]:
    result = []
    for line in text.splitlines():
        terms = line.split("#")[0].split()
        if terms:
            sure = terms[0].startswith("*")
            first = tuple(terms[0].removeprefix("*").split("|"))
            others = tuple(_place(term) for term in terms[1:])
            wanted = (place.names for place in others if place.wanted)
            result.append(Pair(first, others, tuple(map(frozenset, (first, *wanted))), sure))
    return tuple(result)


def _place(term: str) -> _Place:
    wanted = not term.startswith("!")
    term = term.removeprefix("!")
    where = term[0] if term[0] in "@^=~<>+" else "" if wanted else "-"
    if not wanted and term[0] == "&":
        where, term = "", term[1:]
    return _Place(where, tuple(term.lstrip("@^=~<>+").split("|")), wanted)
