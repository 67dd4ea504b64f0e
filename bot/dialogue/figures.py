"""Which option of the question before a figure of a line is for, and the figure itself."""

import re
from collections.abc import Callable, Mapping
from dataclasses import dataclass

from bot.command import Command
from bot.dialogue.bare import bare_told
from bot.language.errors import NotUnderstoodError
from bot.language.quantities import Measure, read_length, read_power, read_temperature
from bot.preferences import Preferences
from bot.question_context import read_alone

__all__ = ["PLACES", "Before", "bare_degrees", "figure_told", "heat_option", "length_told"]

_NUMBER = re.compile(
    r"(?<![\w.])\d{2,3}(?:\.\d)?(?![\w%.]| ?(?:min|minutes?|h|hrs?|hours?|days?|weeks?|months?"
    r"|years?|minuten?|stunden?|tage?n?|wochen?|monate?n?|jahre?n?)\b)"
)
# Between both ranges a bare number has no meaning; inside one of them it has one alone.
_COLDEST_C, _HOTTEST_C = 12.0, 52.0
_COLDEST_F, _HOTTEST_F = 60.0, 130.0
_LENGTH_UNITS = frozenset(("in", "inch", "inches", '"', "ft", "feet", "foot", "cm", "mm"))
_AMOUNT = re.compile(
    r"(?<![\w.%])(\d+(?:[.,]\d+)?(?:\s*(?:-|–|to|bis)\s*\d+(?:[.,]\d+)?)?)\s*"
    r"(inch(?:es)?|in(?! (?:the|my|a|here|there))|\"|cm|mm|ft|feet|foot|°?\s?[fc]|degrees? ?[fc]"
    r"|fahrenheit|celsius|w|watts?|%)"
    r"(?![\w])",
    re.I,
)
# Which option a bare figure is for, where none of its kind was asked for.
_LENGTHS = {"distance": ("uvi", "distance")}
_HEATS = {
    "night": "room",
    "watts": "room",
    "air": "room",
    "plan": "room",
    "basking": "surface",
    "surface": "reading",
}
_PASSES = re.compile(r"\b(?:lets?|passes|through|lässt|durch)\b")
# What a mesh does to the light: a strength is only printed.
_SHARE = re.compile(rf"{_PASSES.pattern}|\b(?:blocks?|takes?|stops?|schluckt|hält|nimmt)\b")
PLACES = ("basking", "cool", "warm", "night")
"""Where a temperature is told, by the option."""
_POWERS = ("basking", "air", "plan")


@dataclass(frozen=True, slots=True)
class Before:
    """The question before: its options as they were told, and those it lacks."""

    command: Command
    given: Mapping[str, object]
    lacking: tuple[str, ...]


def bare_degrees(line: str) -> str:
    """Return the last number of a line that can only be a temperature that a lizard lives at."""
    if _AMOUNT.search(line):
        return ""
    found = [float(number) for number in _NUMBER.findall(line.replace(",", "."))]
    likely = [n for n in found if _COLDEST_C <= n <= _HOTTEST_C or _COLDEST_F <= n <= _HOTTEST_F]
    return f"{likely[-1]:g}" if likely else ""


def figure_told(
    before: Before, names: set[str], line: str, preferences: Preferences
) -> tuple[str, str, object] | None:
    """Return the question, the option and the value that the last figure of a line is for."""
    name, given, lacking = before.command.name, before.given, before.lacking
    amounts = _AMOUNT.findall(line)
    if not amounts:
        bare = bare_told(name, names, given, line, lacking, preferences.bare)
        return (name, *bare) if bare else None
    value, unit = amounts[-1]
    kind = unit.lower().strip(' °"').removeprefix("degrees ").removeprefix("degree ")
    if kind.startswith("w"):
        option = "watts" if name in _POWERS else ""
        return (name, option, _read(read_power, value)) if option else None
    if unit == "%":
        of_mesh = _SHARE.search(line.lower()) or ("screen" in lacking and "tube" in given)
        share = "passes" if _PASSES.search(line.lower()) else "blocks"
        return (name, "screen", f"{share} {value}%") if of_mesh else (name, "tube", f"{value}%")
    if kind[:1] in ("f", "c") and kind not in ("cm", "ft", "feet", "foot"):
        degrees = _read(read_temperature, f"{value} {kind[0]}")
        place = heat_option(before, degrees, preferences)
        return (name, place, degrees) if place else None
    other, option = _LENGTHS.get(name, (name, "distance"))
    return other, option, _read(read_length, f"{value} {unit}")


def length_told(line: str) -> Measure | str | None:
    """Return the last length of a line; None where it tells none."""
    lengths = [f"{v} {u}" for v, u in _AMOUNT.findall(line) if u.lower() in _LENGTH_UNITS]
    return _read(read_length, lengths[-1]) if lengths else None


def _read(read: Callable[[str], Measure], words: str) -> Measure | str:
    """Return the figure that words tell; what cannot be read is refused where it is asked."""
    try:
        return read(words)
    except NotUnderstoodError:
        return words


def heat_option(before: Before, degrees: object, preferences: Preferences) -> str | None:
    """Return what a bare temperature is: what was asked for, or the nearest one told before."""
    name, given = before.command.name, before.given
    wanted = next((o for o in ("room", "surface", "air", "reading") if o in before.lacking), None)
    if wanted or name in _HEATS:
        return wanted or _HEATS[name]
    query = before.command.query

    def celsius(place: str, value: object) -> float | None:
        read = read_alone(query, place, value, preferences)
        return read.middle if isinstance(read, Measure) else None

    told = {place: celsius(place, given[place]) for place in PLACES if place in given}
    known = {place: at for place, at in told.items() if at is not None}
    here = celsius("basking", degrees) if known else None
    if here is None:
        return "basking" if name == "temps" else None
    return min(known, key=lambda place: abs(known[place] - here))
