"""Which part of a guide page answers free words, so that nobody has to look for it."""

import re
from collections import Counter
from functools import cache

from bot import guide
from bot.language.screens import pane_in
from bot.routes.asked import Asked

__all__ = ["part_asked"]

_WORD = re.compile(r"[a-z]{3,}")
# Words that stand in every question or on every page.
_COMMON = frozenset(
    (
        *("the", "and", "for", "are", "does", "what", "why", "how", "can", "should", "will"),
        *("with", "that", "this", "have", "has", "need", "get", "put", "use", "when", "which"),
        *("you", "your", "not", "but", "out", "from", "where", "much", "many", "its", "was"),
        *("uvb", "uva", "lamp", "lamps", "light", "lights", "tube", "tubes", "bulb", "bulbs"),
        *("near", "too", "enough", "good", "bad", "hot", "warm", "cold", "know", "mesh", "heat"),
        *("animal", "animals", "tank", "viv", "dragon", "beardie", "gecko", "snake"),
    )
)
_OF_PANES = "Glass and plastic"
_AT_THE_END = "One thing to do next"
_STEM = 5
_IN_HEADING = 3.0
_LEAST = 1.0


def part_asked(slug: str, asked: Asked) -> str:
    """Return the heading of the page's part that the words are about, or nothing."""
    if slug == "screens" and pane_in(asked.words):
        return _OF_PANES
    parts, often = _parts(slug)
    # What the whole page is about tells no part from another.
    wanted = _stems(asked.words) - _stems(f"{guide.page(slug).title} {slug}")
    scores = {
        heading: sum(
            _IN_HEADING * (stem in _stems(heading)) + (stem in stems) / max(1, often[stem])
            for stem in wanted
        )
        for heading, stems in parts.items()
    }
    best = max(scores, key=lambda heading: scores[heading])
    return best if scores[best] >= _LEAST else ""


@cache
def _parts(slug: str) -> tuple[dict[str, set[str]], Counter[str]]:
    """Return the word stems of each part of a page, and in how many parts each stands."""
    parts: dict[str, set[str]] = {}
    for heading, text in guide.sections(guide.page(slug)):
        parts.setdefault(heading, set()).update(_stems(text))
    for never in (guide.INTRODUCTION, _AT_THE_END):
        parts.pop(never, None)
    return parts, Counter(stem for stems in parts.values() for stem in stems)


def _stems(text: str) -> set[str]:
    return {word[:_STEM] for word in _WORD.findall(text.lower()) if word not in _COMMON}
