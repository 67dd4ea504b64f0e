"""What the options of a question may consult while they are read, and its answer afterwards."""

from collections.abc import Mapping

from bot.language.quantities import Units
from bot.preferences import Context, Preferences
from bot.queries.options import Query
from bot.queries.units import system_of

__all__ = ["context_of", "reading_of"]


def reading_of(preferences: Preferences) -> dict[str, object]:
    """Return what the options may consult while they are read."""
    return {"units": preferences.bare, "own": preferences.own, "today": preferences.today}


def context_of(query: Query, given: Mapping[str, str], preferences: Preferences) -> Context:
    """Return what the answer needs beside the query."""
    typed = (getattr(query, name, None) for name in given)
    # Without a setting, a bare number has a unit only where it tells its own.
    own = preferences.bare is None
    first = next((s for value in typed if (s := system_of(value, bare=own))), None)
    units = preferences.forced_units or first or preferences.units or Units.IN
    given_by = preferences.guide_url, preferences.default_animal, preferences.own
    return Context(units, *given_by, preferences.today, preferences.language)
