"""What the options of a question may consult while they are read, and its answer afterwards."""

from collections.abc import Mapping

from bot.language.pale import before_animals, tells_pale_or_young
from bot.preferences import Context, Preferences
from bot.queries.query import Query
from bot.queries.units import system_of
from calc.naming import Known, Several, named

__all__ = ["context_of", "reading_of"]

_FREE_WORDS = ("question", "setup", "words")


def reading_of(preferences: Preferences) -> dict[str, object]:
    """Return what the options may consult while they are read."""
    return {"units": preferences.bare, "own": preferences.own, "today": preferences.today}


def context_of(query: Query, given: Mapping[str, str], preferences: Preferences) -> Context:
    """Return what the answer needs beside the query."""
    typed = (getattr(query, name, None) for name in given)
    # Without a setting, a bare number has a unit only where it tells its own.
    own = preferences.bare is None
    first = next((s for value in typed if (s := system_of(value, bare=own))), None)
    units = preferences.forced_units or first or preferences.shown
    pale = preferences.is_pale_or_young or _is_pale_or_young(given, preferences.own.names)
    return Context(
        units=units,
        guide_url=preferences.guide_url,
        default_animal=preferences.default_animal,
        own=preferences.own,
        today=preferences.today,
        language=preferences.spoken,
        is_pale_or_young=pale,
    )


def _is_pale_or_young(given: Mapping[str, str], own: tuple[str, ...]) -> bool:
    """Say whether free words tell an animal that is pale or very young."""
    return any(
        tells_pale_or_young(text) or any(_names_one(words, own) for words in before_animals(text))
        for name, text in given.items()
        if name in _FREE_WORDS
    )


def _names_one(words: str, own: tuple[str, ...]) -> bool:
    return any(
        isinstance(named(text, own).what, Known | Several) for text in (words, words.split()[0])
    )
