"""What is chosen for an option, told in another language: one value of the few that it takes."""

from collections.abc import Collection, Mapping
from functools import cache

from bot.language.glossary.table import CHOICES, UMLAUTS, told_in
from bot.language.normal import normalise
from bot.language.tongue import Tongue

__all__ = ["chosen"]

_LONGEST = 40


def chosen(text: str, choices: Collection[str]) -> str | None:
    """Return the choice that a text in another language means; None: it means none of them.

    >>> chosen("Holz", ("glass", "wood")), chosen("Fuß", ("glass", "wood"))
    ('wood', None)
    """
    if len(text) > _LONGEST:
        return None
    words = _plain(text)
    meant = (words, *_by_words().get(words, ()))
    return next((choice for choice in choices if choice.lower() in meant), None)


@cache
def _by_words() -> Mapping[str, tuple[str, ...]]:
    found: dict[str, tuple[str, ...]] = {}
    for choice, written in told_in(Tongue.GERMAN)[CHOICES].items():
        for words in written:
            plain = _plain(words)
            found[plain] = (*found.get(plain, ()), choice)
    return found


def _plain(text: str) -> str:
    words = normalise(text).lower().translate(UMLAUTS)
    return " ".join(words.replace("-", " ").replace(",", " ").split())
