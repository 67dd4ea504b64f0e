"""Whether a figure is of before: by the words around it, and by the figure that came after it."""

import re

__all__ = ["is_only_asked", "is_past"]

# A figure of before, beside the one of now: 16in away (was 22in).
_WAS = re.compile(
    r"(?:\(|,\s|\bnow )(?:it )?was (?:at )?\Z"
    r"|[(,]\s?(?:i )?(?:typed|wrote|said|put)(?: it was| it as| as)?(?: at)? \Z"
)
_IT_WAS = re.compile(
    r"\b(?:(?:was|were)(?: running| sitting| hanging| reading)?|had (?:it|him|her|(?:the|my) \w+))"
    r" (?:at )?\Z"
)
_NOW_ITS = re.compile(r"\b(?:now|lowered|raised|moved|dropped|turned|changed)\b[^0-9.]{0,30}[0-9]")
_SWAPPED = re.compile(r"\b(?:swapped|traded|exchanged|switched)(?: \w+){0,2} \Z")
_WHETHER = re.compile(r"(?:\A|[.!?,\n] ?)(?:is|are|would|can|could|should)(?: [a-z]+){0,4} \Z")
_MINE_IS = re.compile(
    r"[^.!?\n]{0,50}\? ?(?:mine|mines|i have|ive|i've|i get|i give|currently|right now|its|it's)\b"
    r"[^.!?0-9]{0,20}[0-9]"
)
_FOR = re.compile(r"\s+for\b")


def is_past(text: str, start: int, end: int, until: int) -> bool:
    """Say whether a figure is of before: (was 22in); it was 125, now its back to 104.

    ``until`` is the end of its sentence.
    """
    if _WAS.search(text, max(0, start - 24), start):
        return True
    if _SWAPPED.search(text, max(0, start - 30), start) and _FOR.match(text, end):
        return True
    return _IT_WAS.search(text, max(0, start - 30), start) is not None and (
        _NOW_ITS.search(text, end, min(until, end + 120)) is not None
    )


def is_only_asked(text: str, start: int, end: int) -> bool:
    """Say whether a figure is asked about beside the one that is so: is 95 ok? mine is 91."""
    asked = _WHETHER.search(text, max(0, start - 30), start) is not None
    return asked and _MINE_IS.match(text, end) is not None
