"""What cannot wait: the one table of hazards, what hears them, and what says them first."""

import re

from bot.dangers.first import first
from bot.dangers.table import Call, Hazard, HazardKind, Urgency, hazard, hazards
from bot.reply import Alarm

__all__ = ["Call", "Hazard", "HazardKind", "Urgency", "first", "hazard", "hazards", "listen"]

_LETTERS = re.compile(r"[^\W\d_]+")
# A figure with these and no other word, such as 4x2x2 ft or 103 °F, tells nothing.
_UNITS = frozenset(
    [
        "in",
        "inch",
        "inches",
        "ft",
        "feet",
        "foot",
        "mm",
        "cm",
        "m",
        "x",
        "by",
        "f",
        "c",
        "deg",
        "w",
        "watt",
        "watts",
        "h",
    ]
)


def listen(text: str) -> tuple[Alarm, ...]:
    """Return the hazards that a text tells, the one that speaks first before the others.

    >>> [alarm.key for alarm in listen("the plug is melting and he is limp")]
    ['fire', 'not_moving']
    >>> listen("4x2x2 ft")
    ()
    """
    if _UNITS.issuperset(_LETTERS.findall(text.lower())):
        return ()
    from bot.dangers.listening import listen as heard

    return heard(text)
