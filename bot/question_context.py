"""What the options of a question may consult while they are read, and its answer afterwards."""

from collections.abc import Mapping
from contextlib import suppress

from bot.language.errors import NotUnderstoodError
from bot.language.states import before_animals, read_states, states_told
from bot.preferences import Context, Preferences
from bot.queries.query import Query
from bot.queries.units import system_of
from calc.animal import State
from calc.naming import Known, Several, named

__all__ = ["context_of", "reading_of", "states_of"]

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
    return Context(
        units=units,
        guide_url=preferences.guide_url,
        default_animal=preferences.default_animal,
        own=preferences.own,
        today=preferences.today,
        language=preferences.spoken,
        states=states_of(given, preferences),
    )


def states_of(given: Mapping[str, str], preferences: Preferences) -> frozenset[State]:
    """Return the states of the animal, by an option, by free words or as they were told before."""
    found = set(preferences.states)
    for name, text in given.items():
        if name in _FREE_WORDS:
            found |= states_told(text)
            own = preferences.own.names
            found |= {state for state, words in before_animals(text) if _names_one(words, own)}
    # What cannot be read is said by whoever reads the options.
    with suppress(NotUnderstoodError):
        found |= read_states(given.get("state", "none"))
    return frozenset(found)


def _names_one(words: str, own: tuple[str, ...]) -> bool:
    return any(
        isinstance(named(text, own).what, Known | Several) for text in (words, words.split()[0])
    )
