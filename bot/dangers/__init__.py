"""What cannot wait: the one table of hazards, what hears them, and what says them first."""

import re

from bot.reply import Alarm

__all__ = ["listen"]

_LETTERS = re.compile(r"[^\W\d_]+")
# A figure with these and no other word, such as 4x2x2 ft or 18 mesh 0.011 in, tells nothing.
_TELL_NOTHING = frozenset(
    (
        *("in", "inch", "inches", "ft", "feet", "mm", "cm", "m", "x", "by", "f", "c", "w", "h"),
        *("none", "mesh", "blocks", "passes", "new", "at", "uvi"),
        *("a", "an", "about", "around", "like", "roughly", "maybe", "its", "is", "foot", "half"),
    )
)


def listen(text: str) -> tuple[Alarm, ...]:
    """Return the hazards that a text tells, the one that speaks first before the others.

    >>> [alarm.key for alarm in listen("the plug is melting and he is limp")]
    ['fire', 'not_moving']
    >>> listen("4x2x2 ft"), listen("like a foot")
    ((), ())
    """
    if _TELL_NOTHING.issuperset(_LETTERS.findall(text.lower())):
        return ()
    from bot.dangers.listening import listen as heard

    return heard(text)
