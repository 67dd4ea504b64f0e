"""How a heat lamp hangs by a UV tube, as people say it: beside it, in a row, at the other end."""

import re
from enum import StrEnum

from bot.language.normal import normalise

__all__ = ["LampBeside", "lamp_beside_in"]

_LONGEST = 2000


class LampBeside(StrEnum):
    """Where a heat lamp hangs by a UV tube."""

    SIDE_BY_SIDE = "side by side"
    IN_A_ROW = "in a row"
    APART = "at opposite ends"


_UV = r"(?:uv\w*(?: (?:tube|lamp|light))?|tube|t5(?: ho)?|\d+ ?%(?: tube)?|(?:uv-?)?röhre)"
_LAMP = (
    r"(?:heat ?(?:lamp|bulb|light)?|basking (?:lamp|bulb|light)|halogen\w*|floods?|lamp|bulb"
    r"|spotlight|wärmelampe|wärmestrahler|strahler|lampe|it|they|both|sie)"
)
_THE = r"(?:the |my |his |her |its |der |die |dem )?"
_BY = r"(?:next to|beside|alongside|neben)"
_ENDS = r"(?:end|side|corner)s?"
_WORDS = {
    LampBeside.SIDE_BY_SIDE: (
        r"side by side|side-by-side|next to each other|beside each other|nebeneinander"
        r"|(?:at|on|over) the same (?:end|side|spot|place)|auf derselben seite"
    ),
    LampBeside.IN_A_ROW: (
        r"in (?:a|one) row|in (?:a )?line|end to end|one (?:after|behind) the other"
        r"|in (?:einer )?reihe|hintereinander"
    ),
    LampBeside.APART: (
        rf"(?:at|on|over) (?:the )?opposite {_ENDS}|opposite {_ENDS}"
        r"|gegenüberliegend\w* (?:seite|ende)\w*|an verschiedenen enden"
    ),
}
_WHOLE = {
    LampBeside.SIDE_BY_SIDE: (
        rf"{_LAMP} (?:[\w']+ ){{0,4}}?{_BY} {_THE}{_UV}\b"
        rf"|{_UV} (?:[\w']+ ){{0,4}}?{_BY} {_THE}{_LAMP}\b"
        rf"|^(?:[\w']+ ){{0,3}}{_BY} {_THE}(?:{_UV}|{_LAMP})\b"
    ),
    LampBeside.APART: (
        rf"{_UV} (?:[\w']+ ){{0,3}}(?:at|on|over) (?:the |its |his |her )?(?:cool|cold|other|far) "
        r"(?:end|side)"
        rf"|{_UV} (?:[\w']+ ){{0,3}}(?:auf|an|über) der (?:kühlen|kalten|anderen) seite"
    ),
}
_DENIED = re.compile(r"\b(?:not|isn't|aren't|never|nicht|kein\w*)(?: \w+)?$")
# Several of one kind may stand so too.
_ALIKE = re.compile(
    r"\b(?:tubes|t5s|röhren|hides|caves|verstecke|höhlen|bowls|boxes|tanks)(?: \w+){0,3}$"
)
_OF_LAMPS = re.compile(rf"\b(?:{_UV}|{_LAMP}|lamps|lights|lampen)\b")
_SHORT, _NEAR = 40, 70


def lamp_beside_in(text: str) -> LampBeside | None:
    """Return where a text says the heat lamp hangs by the tube; None where it says none, or two.

    >>> lamp_beside_in("12% tube, the halogen right beside the tube").value
    'side by side'
    >>> lamp_beside_in("uvb on the cool side").value
    'at opposite ends'
    """
    words = normalise(text[:_LONGEST]).lower()
    found = {one for one, pattern in _WHOLE.items() if _told(pattern, words)}
    found |= {one for one, pattern in _WORDS.items() if _told(pattern, words, of_lamps=True)}
    return found.pop() if len(found) == 1 else None


def _told(pattern: str, words: str, *, of_lamps: bool = False) -> bool:
    """Say whether a pattern is told and not denied; ``of_lamps``: where lamps stand before it."""
    for match in re.finditer(rf"(?<!\w)(?:{pattern})", words):
        before = words[: match.start()].rstrip()
        if _DENIED.search(before) or _DENIED.search(match[0]) or " not " in match[0]:
            continue
        if not of_lamps or len(words) <= _SHORT:
            return True
        if _OF_LAMPS.search(before[-_NEAR:]) and not _ALIKE.search(before):
            return True
    return False
