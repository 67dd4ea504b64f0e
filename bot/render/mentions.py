"""Questions that a text of Discord names, each as a mention that can be clicked."""

import re
from collections.abc import Callable, Iterable, Mapping
from typing import Final

from bot.menu import MODULES, menu_name
from bot.render.escaping import escape

__all__ = ["Mention", "by_number", "clickable", "unnumbered"]

Mention = Callable[[str], str]
"""What stands in a message for a question's name."""

_NAMES: Final = "|".join(map(re.escape, sorted(MODULES, key=len, reverse=True)))
# A name behind a slash; one with its first option; help and a page of the guide where they begin.
_NAMED: Final = re.compile(
    rf"(?<![\w/])/({_NAMES})\b"
    rf"|(?<![\w/:=.-])({_NAMES})(?= [a-z]+(?:\\?_[a-z]+)*[:=]\S)"
    rf"|(?:(?<=: )|^)(help(?= (?:{_NAMES})\b)|guide(?= [a-z]+-[a-z-]+\b))",
    re.MULTILINE,
)


def unnumbered(name: str) -> str:
    """Return a question's name as it is typed: what stands where its number is not known.

    >>> unnumbered("meter")
    '/uv meter'
    """
    return f"/{menu_name(name)}"


def by_number(numbers: Mapping[str, int]) -> Mention:
    """Return what mentions a question by the number that its command was registered with.

    >>> by_number({"uv": 7})("meter"), by_number({})("meter")
    ('</uv meter:7>', '/uv meter')
    """

    def mention(name: str) -> str:
        number = numbers.get(menu_name(name).partition(" ")[0])
        return f"<{unnumbered(name)}:{number}>" if number else unnumbered(name)

    return mention


def clickable(text: str, mention: Mention, lines: Iterable[str] = ()) -> str:
    """Return a text, made safe for Discord before, with each question in it to be clicked.

    ``lines`` are whole questions of which any may stand in it.

    >>> clickable("Try: distance tube:12%, or /meter", unnumbered)
    'Try: /distance tube:12%, or /uv meter'
    """
    for line in lines:
        text = re.sub(rf"(?<![\w/]){re.escape(escape(line))}(?!\w)", r"/\g<0>", text)
    return _NAMED.sub(lambda found: mention(found[1] or found[2] or found[3]), text)
