"""Whether a figure is of before: by the words around it, and by the figure that came after it."""

import re
from bisect import bisect_left
from collections.abc import Sequence
from typing import Protocol

from bot.language.hearing.figures import Figure
from bot.language.hearing.lexicon import Mark
from bot.language.hearing.placed import Placed
from bot.language.hearing.word_lists import word_list

__all__ = ["changes_in", "is_only_asked", "is_past", "stands_now"]

# A figure of before, beside the one of now: 16in away (was 22in).
_WAS = re.compile(
    r"(?:\(|,\s|\bnow )(?:it )?was (?:at )?\Z"
    r"|[(,]\s?(?:i )?(?:typed|wrote|said|put)(?: it was| it as| as)?(?: at)? \Z"
)
_SWAPPED = re.compile(r"\b(?:swapped|traded|exchanged|switched)(?: \w+){0,2} \Z")
_FOR = re.compile(r"\s+for\b")
_WHETHER = re.compile(r"(?:\A|[.!?,\n] ?)(?:is|are|would|can|could|should)(?: [a-z]+){0,4} \Z")
_MINE_IS = re.compile(
    r"[^.!?\n]{0,80}\? ?(?:mine|mines|i have|ive|i've|i get|i give|i do|i run|currently"
    r"|right now|its|it's|it (?:stays|is|sits|gets|drops))\b"
    r"[^.!?0-9]{0,20}[0-9]"
)

_TIMES = r"(?:winter|summer|spring|autumn|week|month|year|time|night)"
# Words before or after a figure that make it one of before, if another figure says what is so now.
_BEFORE = re.compile(
    r"\b(?:(?:was|were|had|been|fell|dropped|said|showed|hung|sat|went|got|ran)"
    r"|used to [a-z]+)"
    r"(?: (?!now\b|to\b)[a-z']+){0,4}(?: to)? ?~?\Z"
    rf"|\b(?:before|previously|originally|initially|yesterday|first|last {_TIMES})\b:?"
    r"(?: (?!now\b|since\b|after\b)[a-z']+){0,4} ?\Z"
)
_AGO = re.compile(
    rf" ?(?:f|c|deg|degrees)?\)? ?(?:of [a-z]+ )?(?:before|yesterday|at first|originally"
    rf"|last {_TIMES}|a (?:week|month|year) ago)\b"
)
# Down to 99 from 110: the first one holds.
_DOWN_FROM = re.compile(
    r"\b(?:down|up)(?: to)? [0-9.]+ ?[a-z°\"']{0,7}[, ]{1,2}(?:down |up )?from \Z"
)
_NOW = re.compile(
    r"\b(?:now|today|since|currently|new|down to|up to|at the moment|edit|raised|lowered"
    rf"|lifted|moved|turned|dropped|this {_TIMES})\b"
)
# In the same sentence these are enough: it was 118 yesterday and is 103.
_THEN = re.compile(r"[^.!?\n]*\b(?:is|its|it's|later|after|down)\b[^.!?\n]*")
_AT_ONCE = re.compile(rf"[a-z°\"' ]{{0,10}}\b(?:now|today|at the moment|this {_TIMES})\b")
# Where it hung before it was moved: had the bulb at 5 inches. Raised it so the dock reads 91.
_HAD = re.compile(
    r"\bhad (?:it|him|her|(?:the|my|his|her) [a-z0-9]+(?: [a-z]+)?)"
    r"(?: (?:up|hung|at|like|about|only|just))+ \Z"
)
_THEN_MOVED = re.compile(
    r"[^?]{0,90}\b(?:raised|lowered|moved|lifted|dropped) (?:it|him|her|the)\b", re.S
)
# What was of a lamp that is no more: the bulb died. It was a 100 watt.
_OF_THE_DEAD = re.compile(
    r"\b(?:died|broke|blew|failed|(?:burned|burnt) out)\b[^0-9]{0,20}\bit was\b[^.!?]*\Z"
)
# What was changed after it was told: 128 on the rock, went down to a 75w and its 98.
_CHANGES = re.compile(
    r"\b(?:went|switched|swapped|lowered|raised|moved|turned|dimmed|dropped|lifted|changed)\b"
)
_CHANGED = re.compile(
    rf".*{_CHANGES.pattern}.*"
    r"\b(?:now|its|it's|it is|reads|gets|hits)(?: (?:at|only|about|around))* ",
    re.S,
)
# From the figure of before to the one of now, in characters, and how many times larger or smaller.
_FURTHEST = 110
_MOST_TIMES = 3
_DEGREES = frozenset(("temperature", "degrees", "plain"))
_SPOTS, _REFERENCES = frozenset(("place", "reference")), frozenset(("reference",))
_NONE = frozenset[str]()
_ON_THE = re.compile(r"(?: (?:on|at|in|of|the|his|her|my))*\s")


# Every word that one of the patterns for a figure of before needs, and how far it may stand away.
_CHANGE = re.compile(
    r"\b(?:was|were|been|had|fell|dropped|said|showed|hung|sat|went|got|ran|used|before|previously"
    r"|originally|initially|yesterday|first|last|ago|swapped|traded|exchanged|switched|died|broke"
    r"|blew|failed|burned|burnt|down|up|typed|wrote|put|lowered|raised|moved|turned|dimmed|lifted"
    r"|changed)\b"
)
_BACK = 90


def changes_in(text: str) -> list[int]:
    """Return where words stand without which no figure is one of before; the last is no place."""
    return [*(match.start() for match in _CHANGE.finditer(text)), len(text) + _BACK + _FURTHEST]


def _tells_a_change(places: Sequence[int], start: int, end: int) -> bool:
    """Say whether such a word stands near enough to a figure to make it one of before."""
    return places[bisect_left(places, start - _BACK)] <= end + _FURTHEST


class _Told(Protocol):
    """A text with its marks, its figures, and where words stand for what was before."""

    marks: Placed[Mark]
    figures: Placed[Figure]
    changes: list[int]

    @property
    def text(self) -> str: ...


def is_past(told: _Told, figure: Figure) -> bool:
    """Say whether a figure is of before: (was 22in); it was 125, now its back to 104."""
    text, start, end = told.text, figure.start, figure.end
    if not _tells_a_change(told.changes, start, end):
        return False
    if _WAS.search(text, max(0, start - 24), start):
        return True
    if _SWAPPED.search(text, max(0, start - 30), start) and _FOR.match(text, end):
        return True
    if _HAD.search(text, max(0, start - 44), start) and _THEN_MOVED.match(text, end):
        return True
    if _OF_THE_DEAD.search(text, max(0, start - 80), start):
        return True
    return stands_now(text, told.marks, told.figures, figure) is not None


def stands_now(
    text: str, marks: Placed[Mark], figures: Placed[Figure], figure: Figure
) -> Figure | None:
    """Return the figure that says what is so now, where this one says what was; None: it does not.

    It is of the same kind, has a word for now, and is told of no place of its own.
    """
    start, end = figure.start, figure.end
    if _DOWN_FROM.search(text, max(0, start - 34), start):
        return figures.last(start, start - 34)
    was = _BEFORE.search(text, max(0, start - 44), start) or _AGO.match(text, end)
    # Most figures stand alone: nothing is looked for where nothing was changed.
    if not was and not _CHANGES.search(text, end, end + _FURTHEST):
        return None
    if _NOW.search(text, max(0, start - 8), start):
        # "It has now been 104."
        return None
    for other in figures.within(end, end + _FURTHEST):
        if not _alike(figure, other) or _is_counted(text, other):
            continue
        between = text[end : other.start]
        now = _CHANGED.fullmatch(between)
        if was:
            now = now or _NOW.search(between) or _THEN.fullmatch(between)
            now = now or _AT_ONCE.match(text, other.end)
        return other if now and not _of_another_place(text, marks, figure, other) else None
    return None


def _alike(one: Figure, other: Figure) -> bool:
    kinds = {one.kind, other.kind}
    label = kinds == {"plain", "percent"} and one.text.endswith(".0")
    if not (one.kind == other.kind or kinds <= _DEGREES or other.kind == "plain" or label):
        return False
    units = {one.unit, other.unit} - {None}
    if len(units) > 1 and one.kind in _DEGREES:
        return False
    low, high = sorted((one.low, other.low))
    return len(units) > 1 or (low > 0 and high <= _MOST_TIMES * low)


def _is_counted(text: str, figure: Figure) -> bool:
    word = re.match(r"[ \t]*([a-z']+)", text[figure.end : figure.end + 16])
    return figure.kind == "plain" and word is not None and word[1] in word_list("counted")


def _of_another_place(text: str, marks: Placed[Mark], one: Figure, other: Figure) -> bool:
    """Say whether what is so now is told of a place, and what was of another."""
    kinds = _SPOTS if one.kind in _DEGREES else _REFERENCES if one.kind == "length" else _NONE
    between = [m for m in marks.within(one.end, other.start) if _is_spot(m, kinds, one)]
    after = marks.within(other.end, other.end + 24)
    behind = next((m for m in after if _is_spot(m, kinds, one)), None)
    ends = text[other.end - 1] in ".!?"
    if behind is not None and not ends and _ON_THE.fullmatch(text, other.end, behind.start):
        between.append(behind)
    if not between:
        return False
    said = marks.within(max(0, one.start - 40), one.start)
    before = {_spot(m) for m in said if m.kind in kinds}
    if _ON_THE.fullmatch(text, one.end, between[0].start) and between[0] is not behind:
        # "Used to read 95 under the lamp": the first place is that of what was.
        before.add(_spot(between[0]))
    return any(_spot(m) not in before for m in between)


def _is_spot(mark: Mark, kinds: frozenset[str], one: Figure) -> bool:
    """Say whether a mark is a place of such a figure: his back is none of a temperature."""
    told = mark.kind == "place" or mark.value == "perch" or one.kind == "length"
    return mark.kind in kinds and told


def _spot(mark: Mark) -> str:
    """Return a place; a perch is the place to bask at."""
    return "basking" if mark.value == "perch" else mark.value


def is_only_asked(text: str, start: int, end: int) -> bool:
    """Say whether a figure is asked about beside the one that is so: is 95 ok? mine is 91."""
    asked = _WHETHER.search(text, max(0, start - 30), start) is not None
    return asked and _MINE_IS.match(text, end) is not None
