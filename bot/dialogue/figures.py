"""Which option of the question before a figure of a line is for, and the figure itself."""

import re
from collections.abc import Callable, Collection, Mapping
from dataclasses import dataclass

from bot.dialogue.bare import NO_FIGURE, bare_told, is_distance, only_number, tells_a_lamp, unit_of
from bot.dialogue.places import place_named
from bot.facts import Say
from bot.language.errors import NotUnderstoodError
from bot.language.quantities import Measure, read_length, read_power, read_temperature
from bot.layered import Brief, Layered
from bot.preferences import Preferences
from bot.queries.query import Query
from bot.queries.question import Question
from bot.question_context import read_alone

__all__ = [
    "OF_A_MESH",
    "PLACES",
    "Before",
    "bare_degrees",
    "either_meant",
    "figure_told",
    "heat_option",
    "length_told",
    "without_lengths",
]

_NUMBER = re.compile(rf"(?<![\w.])\d{{2,3}}(?:\.\d)?(?![\w%]|\.\d| ?{NO_FIGURE}\b)")
# Between both ranges a bare number has no meaning; inside one of them it has one alone.
_COLDEST_C, _HOTTEST_C = 12.0, 52.0
_COLDEST_F, _HOTTEST_F = 60.0, 130.0
_LENGTH_UNITS = frozenset(("in", "inch", "inches", '"', "ft", "feet", "foot", "cm", "mm"))
_AMOUNT = re.compile(
    r"(?<![\w.%])(\d+(?:[.,]\d+)?(?:\s*(?:-|–|to|bis)\s*\d+(?:[.,]\d+)?)?)\s*"
    r"(inch(?:es)?|in(?! (?:the|my|an?|our|here|there|winter|summer|all)\b)"
    r"|\"|cm|mm|ft|feet|foot|°?\s?[fc](?![^\W\d_])|degrees? ?[fc](?![^\W\d_])|degrees?|grad|°"
    r"|fahrenheit|celsius|w|watts?|%|percent|prozent)"
    # How big a box or a tube is, is no distance.
    r"(?![\w]| ?(?:high|tall|deep|wide|long|thick|across|diameter|viv|tank|box|hoch|tief|breit"
    r"|lang|dick)\b)",
    re.I,
)
# The last of several numbers holds where it is told in place of another.
_NOT_SO_MUCH = re.compile(r"\b(?:not|nicht|instead of|rather than|statt) \d+(?:\.\d+)?\b", re.I)
_DONE = re.compile(r"\b(?:done|fixed|did (?:it|that)|sorted|dimmed|erledigt|gemacht|gedimmt)\b")
_IN_PLACE_OF = re.compile(
    r"\b(?:now|no|not|nope|sorry|actually|oops|wait|was|were|after|then|instead|mean[t]?|jetzt|nein"
    r"|nicht|doch|war)\b"
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
OF_A_MESH = re.compile(rf"{_PASSES.pattern}|\b(?:blocks?|takes?|stops?|schluckt|hält|nimmt)\b")
"""What a mesh does to the light: a strength is only printed."""
PLACES = ("basking", "cool", "warm", "night", "water")
"""Where a temperature is told, by the option."""
_NO_SPOT, _NO_ROOM = ("cool", "night", "water"), ("basking", "cool", "water")
_ELSEWHERE = {
    **dict.fromkeys(("basking", "surface"), _NO_SPOT),
    **dict.fromkeys(("night", "watts", "air", "plan"), _NO_ROOM),
}
"""Which places named beside a figure are none of a question's."""
_DEGREES_ALONE = re.compile(r"\d+(?:[.,]\d+)? ?°?\s?(?:f|c|fahrenheit|celsius)?", re.I)
_FEET = ("ft", "feet", "foot")
_IS_SO_LONG = re.compile(
    r"\b(?:tube|bulb|t5|t8|röhre)\b(?!.*\b(?:away|above|over|up|from|high|off)\b)"
)
_POWERS = ("basking", "air", "plan")


@dataclass(frozen=True, slots=True)
class Before:
    """The question before: its options as they were told, and those it lacks."""

    name: str
    query: type[Query]
    given: Mapping[str, object]
    lacking: Collection[str]

    @property
    def names(self) -> set[str]:
        """The options of the question."""
        return set(self.query.examples())


def bare_degrees(line: str) -> str:
    """Return the last number of a line that can only be a temperature that a lizard lives at."""
    if _AMOUNT.search(line):
        return ""
    plain = _NOT_SO_MUCH.sub(" ", line.replace(",", "."))
    found = [float(number) for number in _NUMBER.findall(plain)]
    likely = [n for n in found if _COLDEST_C <= n <= _HOTTEST_C or _COLDEST_F <= n <= _HOTTEST_F]
    if len(set(likely)) > 1 and not _IN_PLACE_OF.search(line.lower()):
        # "The paving is 33 and by the door it is 19": nobody knows of which place the last is.
        return ""
    return f"{likely[-1]:g}" if likely else ""


def figure_told(
    before: Before, line: str, preferences: Preferences
) -> tuple[str, str, object] | None:
    """Return the question, the option and the value that the last figure of a line is for."""
    name = before.name
    amounts = _AMOUNT.findall(line)
    place = place_named(line)
    if place in _ELSEWHERE.get(name, ()):
        return None
    if name == "basking" and place == "warm" and (told := amounts or only_number(line)):
        text = told if isinstance(told, str) else " ".join(told[-1])
        return (name, "air", text) if _DEGREES_ALONE.fullmatch(text) else None
    if not amounts:
        return _bare_figure(before, place, line, preferences)
    return _of_an_amount(before, amounts[-1], line, preferences)


def others_told(before: Before, line: str, preferences: Preferences) -> dict[str, object]:
    """Return what the figures with a unit before the last one of a line are for, by the option."""
    found: dict[str, object] = {}
    for amount in _AMOUNT.findall(line)[:-1]:
        figure = _of_an_amount(before, amount, line, preferences)
        if figure and figure[0] == before.name and figure[1] in before.names:
            found[figure[1]] = figure[2]
    return found


def _of_an_amount(
    before: Before, amount: tuple[str, str], line: str, preferences: Preferences
) -> tuple[str, str, object] | None:
    """Return the question, the option and the value that a figure with its unit is for."""
    name, names = before.name, before.names
    value, unit = amount
    kind = unit.lower().strip(' °"').removeprefix("degrees ").removeprefix("degree ")
    if kind in ("", "degree", "degrees", "grad") and '"' not in unit:
        degrees: object = f"{value} C" if kind == "grad" else value
        place = place_named(line)
        at = place if place in names else heat_option(before, degrees, preferences)
        return (name, at, degrees) if at else None
    if kind.startswith("w"):
        option = "watts" if name in _POWERS else ""
        return (name, option, _read(read_power, value)) if option else None
    if kind in ("%", "percent", "prozent"):
        of_mesh = OF_A_MESH.search(line.lower()) or (
            "screen" in before.lacking and "tube" in before.given
        )
        share = "passes" if _PASSES.search(line.lower()) else "blocks"
        return (name, "screen", f"{share} {value}%") if of_mesh else (name, "tube", f"{value}%")
    if kind[:1] in ("f", "c") and kind not in ("cm", "ft", "feet", "foot"):
        degrees = _read(read_temperature, f"{value} {kind[0]}")
        at = heat_option(before, degrees, preferences)
        return (name, at, degrees) if at else None
    if unit.lower() in _FEET and "length" in names and _IS_SO_LONG.search(line.lower()):
        return name, "length", _read(read_length, f"{value} {unit}")
    other, option = _LENGTHS.get(name, (name, "distance"))
    return other, option, _read(read_length, f"{value} {unit}")


def _bare_figure(
    before: Before, place: str | None, line: str, preferences: Preferences
) -> tuple[str, str, object] | None:
    """Return what the one bare number of a line is for."""
    name, names, given = before.name, before.names, before.given
    if name == "convert" and (number := only_number(line)) and (unit := _unit_before(given)):
        return name, "value", f"{number} {unit}"
    if bare := bare_told(name, names, given, line, before.lacking, preferences.bare):
        return (name, *bare)
    number = bare_degrees(line) if only_number(line) else ""
    # What was done was done to the lamp.
    spot = "basking" if "basking" in given and _DONE.search(line.lower()) else None
    at = place or spot or heat_option(before, number, preferences) if number else None
    return (name, at, number) if at and at in names else None


def either_meant(
    before: Before, given: Mapping[str, object], line: str, preferences: Preferences
) -> Layered | None:
    """Return the question what a bare number is, where a set-up was told that has both.

    It may be how far away the tube is, or a temperature; None where it can only be one.
    """
    number, degrees = only_number(line), bare_degrees(line)
    place = before.given.get("distance")
    both = place is not None and any(name in before.given for name in PLACES)
    if before.name not in ("check", "next") or not both or _AMOUNT.search(line):
        return None
    if place_named(line) or not degrees or not is_distance(number, place):
        return None
    if tells_a_lamp(line):
        return None
    unit = unit_of(place) or preferences.bare
    option = heat_option(before, degrees, preferences)
    if unit is None or option is None:
        return None
    kinds = {"distance": read_length(number, unit), option: degrees}
    offers = (Question(before.name, {**given, name: value}) for name, value in kinds.items())
    return Layered(
        "ask",
        Say("ask-title-which"),
        Brief(Say("talk-either"), steps=(Say("talk-either-distance"), Say("talk-either-heat"))),
        status="problem",
        offers=tuple(offers),
    )


def length_told(line: str) -> Measure | str | None:
    """Return the last length of a line; None where it tells none."""
    lengths = [f"{v} {u}" for v, u in _AMOUNT.findall(line) if u.lower() in _LENGTH_UNITS]
    return _read(read_length, lengths[-1]) if lengths else None


def without_lengths(line: str) -> str:
    """Return a line without the lengths that it tells.

    >>> without_lengths("its 6 inches under the screen")
    'its under the screen'
    """
    plain = _AMOUNT.sub(lambda m: "" if m[2].lower() in _LENGTH_UNITS else m[0], line)
    return " ".join(plain.split())


def _unit_before(given: Mapping[str, object]) -> str:
    """Return the unit of what was converted before."""
    found = re.search(r"[^\W\d]+|\"", str(given.get("value", "")))
    return found[0] if found else ""


def _read(read: Callable[[str], Measure], words: str) -> Measure | str:
    """Return the figure that words tell; what cannot be read is refused where it is asked."""
    try:
        return read(words)
    except NotUnderstoodError:
        return words


def heat_option(before: Before, degrees: object, preferences: Preferences) -> str | None:
    """Return what a bare temperature is: what was asked for, or the nearest one told before."""
    name, given = before.name, before.given
    wanted = next((o for o in ("room", "surface", "air", "reading") if o in before.lacking), None)
    if wanted or name in _HEATS:
        return wanted or _HEATS[name]
    query = before.query

    def celsius(place: str, value: object) -> float | None:
        read = read_alone(query, place, value, preferences)
        return read.middle if isinstance(read, Measure) else None

    told = {place: celsius(place, given[place]) for place in PLACES if place in given}
    known = {place: at for place, at in told.items() if at is not None}
    here = celsius("basking", degrees) if known else None
    if here is None:
        return "basking" if name == "temps" else None
    return min(known, key=lambda place: abs(known[place] - here))
