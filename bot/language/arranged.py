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


_UV = r"(?:uv\w*|tube|t5(?: ho)?|\d+ ?%(?: tube)?|röhre|uv-röhre)"
_HEAT = r"(?:heat|basking|halogen|flood|lamp|bulb|wärme\w*|strahler|spot\w*|lampe)"
_THE = r"(?:the |my |his |her |its |der |die |dem |zur )?"
_WORDS = {
    LampBeside.SIDE_BY_SIDE: (
        r"side by side|side-by-side|next to each other|beside each other|nebeneinander"
        rf"|(?:right |just |directly )?(?:next to|beside|alongside) {_THE}(?:{_UV}|{_HEAT})\b"
        rf"|neben {_THE}(?:{_UV}|{_HEAT})"
        r"|(?:at|on|over) the same (?:end|side|spot|place)|auf derselben seite"
    ),
    LampBeside.IN_A_ROW: (
        r"in (?:a|one) row|in (?:a )?line|end to end|one (?:after|behind) the other"
        r"|in (?:einer )?reihe|hintereinander"
    ),
    LampBeside.APART: (
        r"(?:at|on|over) (?:the )?opposite (?:end|side|corner)s?|opposite (?:end|side|corner)s"
        rf"|{_UV} (?:\w+ ){{0,3}}(?:at|on|over) (?:the |its |his |her )?(?:cool|cold|other|far) "
        r"(?:end|side)"
        r"|gegenüberliegend\w* (?:seite|ende)\w*|an verschiedenen enden"
        rf"|{_UV} (?:\w+ ){{0,3}}(?:auf|an|über) der (?:kühlen|kalten|anderen) seite"
    ),
}
_DENIED = r"\b(?:not|isn't|aren't|never|nicht|kein\w*)(?: \w+)?$"


def lamp_beside_in(text: str) -> LampBeside | None:
    """Return where a text says the heat lamp hangs by the tube; None where it says none, or two.

    >>> lamp_beside_in("12% tube, the halogen right beside the tube").value
    'side by side'
    >>> lamp_beside_in("uvb on the cool side").value
    'at opposite ends'
    """
    words = normalise(text[:_LONGEST]).lower()
    found = {
        one
        for one, pattern in _WORDS.items()
        for match in re.finditer(rf"\b(?:{pattern})", words)
        if not re.search(_DENIED, words[: match.start()].rstrip())
    }
    return found.pop() if len(found) == 1 else None
