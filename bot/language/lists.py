"""Lists of what has no comma of its own: ``none; 45%``, ``6%, 12%``."""

import re
from collections.abc import Callable
from typing import TypeVar

from bot.facts import Say
from bot.language.errors import NotUnderstoodError
from bot.language.shown import shown

__all__ = ["read_list"]

Read = TypeVar("Read")
_NEXT = re.compile(r"\s*(?:[;\n]|,(?=\s)|(?:,\s*)?\b(?:and|or)\b)\s*", re.I)
_LONGEST = 400


def read_list(
    text: str, read: Callable[[str], Read], most: int, wanted: Say, example: str
) -> tuple[Read, ...]:
    """Read one to ``most`` things, each with ``read``.

    >>> from bot.language.wanted import UpTo

    >>> read_list("6%; 12% and 14%", len, 4, Say("wanted-strengths", UpTo(4)), "6%; 12%")
    (2, 3, 3)
    """
    pieces = [p for p in _NEXT.split(text.strip()) if p] if len(text) <= _LONGEST else []
    if not 1 <= len(pieces) <= most:
        raise NotUnderstoodError(shown(text), wanted, example)
    return tuple(read(piece) for piece in pieces)
