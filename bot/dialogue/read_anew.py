"""A reading that a few words change: its figure, its place, or what it was taken with."""

import re
from collections.abc import Mapping

from bot.dialogue.figures import PLACES, Before, bare_degrees, heat_option
from bot.dialogue.phrases import asks
from bot.dialogue.places import place_named
from bot.language.quantities import Measure
from bot.preferences import Preferences
from bot.queries.question import Question

__all__ = ["is_heard", "over", "read_anew"]

_GOES_ON = re.compile(
    r"^(?:(?:ok|okay|so|but|well|then|aber|gut)[, ]+)*"
    r"(?:and|und|what about|how about|was ist mit)\b"
)


def over(given: Mapping[str, object], found: Mapping[str, object]) -> dict[str, object]:
    """Return what was told before with what was found; the reading told last stands last."""
    anew = found.keys() & set(PLACES)
    return {n: v for n, v in given.items() if n not in anew} | dict(found)


def read_anew(
    before: Before,
    given: Mapping[str, object],
    found: Mapping[str, object],
    line: str,
    preferences: Preferences,
) -> Question | None:
    """Return the readings with a bare one of a line, or with the last at the place it names."""
    named_place, bare = place_named(line), bare_degrees(line)
    if bare and not is_heard(bare, found):
        place = named_place or heat_option(before, bare, preferences)
        if place and place not in found:
            return Question("temps", over(given, {**found, place: bare}))
    goes_on = _GOES_ON.match(line.lower()) or asks(line)
    if named_place is None or goes_on or found.keys() - {"measured"}:
        return None
    renamed = _renamed({**given, **found}, named_place)
    again = Question("temps", given) if named_place in given else None
    return (None if again else renamed) or _measured_so(given, found) or again


def is_heard(number: str, found: Mapping[str, object]) -> bool:
    """Whether a bare number was taken for an option already."""
    texts = (value.text for value in found.values() if isinstance(value, Measure))
    return any(number and number in text.split() for text in texts)


def _measured_so(given: Mapping[str, object], found: Mapping[str, object]) -> Question | None:
    """Return the readings with what they were taken with, if a line tells that."""
    return Question("temps", {**given, **found}) if found else None


def _renamed(given: Mapping[str, object], place: str | None) -> Question | None:
    """Return the readings with the one that was told last at another place."""
    # What was told last stands last.
    told = [name for name in given if name in PLACES]
    if place is None or not told or told[-1] == place:
        return None
    rest = {n: v for n, v in given.items() if n not in (told[-1], place)}
    return Question("temps", {**rest, place: given[told[-1]]})
