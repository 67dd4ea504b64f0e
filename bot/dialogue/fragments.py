"""What a few words change of the question before: a figure, a name, a lid, 'not sure'."""

import re
from collections.abc import Iterator, Mapping

from bot.command import Command
from bot.dialogue.phrases import takes_mesh_off
from bot.language.quantities import Measure, read_temperature
from bot.language.unsure import NOT_SURE
from bot.preferences import Context, Preferences
from bot.queries.setup import AskQuery
from bot.routes.asked import Asked
from bot.routes.filled import FILLED, filled
from bot.routes.routing import asked_in

__all__ = ["by_facts", "changed_by", "told_of_set_up"]

_OF_LENGTH = {
    **dict.fromkeys(("in", "inch", "inches", '"'), "in"),
    **dict.fromkeys(("ft", "feet", "foot"), "ft"),
    "cm": "cm",
    "mm": "mm",
}
_AMOUNT = re.compile(
    r"(?<![\w.%])(\d+(?:[.,]\d+)?(?:\s*(?:-|–|to|bis)\s*\d+(?:[.,]\d+)?)?)\s*"
    r"(inch(?:es)?|in|\"|cm|mm|ft|feet|foot|°?\s?[fc]|degrees? ?[fc]|fahrenheit|celsius|w|watts?|%)"
    r"(?![\w])",
    re.I,
)
_BARE = re.compile(r"^\W*(?:\w+ ){0,3}(\d+(?:[.,]\d+)?)(?: \w+){0,2}\W*$")
_DO_NOT_KNOW = re.compile(
    r"\b(?:not sure|no idea|dunno|don'?t know|dont know|unsure|idk|weiß (?:ich )?nicht"
    r"|keine ahnung)\b"
)
_MESH = re.compile(r"\b(?:mesh|screen|gitter|netz)\b")
_NO = re.compile(r"^(?:no|nope|nein|none|nothing|kein\w*)\b\W*$")
_YES = re.compile(r"^(?:yes|yep|yeah|ja|it does|it has|there is)\b\W*$")
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
_PLACES = ("basking", "cool", "warm", "night")
_POWERS = ("basking", "air", "plan")


def told_of_set_up(line: str, context: Context) -> dict[str, str]:
    """Return what a line tells of animal, tube and screen, by the options of the UV questions."""
    asked = asked_in(AskQuery(question=line), context)
    found = dict(_told("uvi", asked))
    return {n: t for n, t in _words(line, asked, ()) if n not in found} | found


def by_facts(line: str, context: Context) -> tuple[str, dict[str, str]] | None:
    """Return the question that what a line tells is for, where it asks none: UV, or warmth."""
    asked = asked_in(AskQuery(question=line), context)
    warm = dict(_told("temps", asked))
    if asked.warmth:
        return "temps", warm
    if asked.degrees:
        return "temps", {**warm, "basking": asked.degrees}
    told = told_of_set_up(line, context)
    lengths = [(v, u) for v, u in _AMOUNT.findall(line) if u.lower() in _OF_LENGTH]
    if lengths and "distance" not in told:
        value, unit = lengths[-1]
        told["distance"] = f"{value} {_OF_LENGTH[unit.lower()]}"
    if "distance" in told:
        return "uvi", told
    return ("distance", told) if told.keys() & {"tube", "reflector", "screen"} else None


def changed_by(
    command: Command,
    given: Mapping[str, str],
    line: str,
    context: Context,
    preferences: Preferences,
) -> tuple[str, dict[str, str]] | None:
    """Return the question before with what a line changes of it; None where it changes nothing."""
    if command.name not in FILLED:
        return None
    asked = asked_in(AskQuery(question=line), context)
    names = {option.name for option in command.query.options()}
    lacking = tuple(command.query.lacking(dict(given), preferences.own))
    found = {n: t for n, t in _told(command.name, asked) if n in names}
    found |= {n: t for n, t in _words(line, asked, lacking) if n in names and n not in found}
    figure = _figure(command.name, given, line, lacking, preferences)
    if figure is not None and not found.keys() & {figure[1]}:
        name, option, text = figure
        if name != command.name or option in names:
            found.setdefault(option, text)
            return name, {**given, **found}
    return (command.name, {**given, **found}) if found else None


def _told(name: str, asked: Asked) -> Iterator[tuple[str, str]]:
    """Yield what hearing finds; what it only supposes is left as it was."""
    for option, text in filled(name, asked).items():
        supposed = text == NOT_SURE or (option == "screen" and text == "mesh")
        if not supposed and option != "setup":
            yield option, text


def _words(line: str, asked: Asked, lacking: tuple[str, ...]) -> Iterator[tuple[str, str]]:
    plain = line.lower()
    if takes_mesh_off(plain):
        yield "screen", "none"
    elif asked.under_mesh or _MESH.search(plain):
        yield "screen", "mesh"
    if _DO_NOT_KNOW.search(plain):
        yield from ((option, NOT_SURE) for option in lacking if option in ("reflector", "screen"))
    if _NO.match(plain.strip()) and "screen" in lacking:
        yield "screen", "none"
    if _YES.match(plain.strip()) and "reflector" in lacking:
        yield "reflector", "polished"


def _figure(
    name: str,
    given: Mapping[str, str],
    line: str,
    lacking: tuple[str, ...],
    preferences: Preferences,
) -> tuple[str, str, str] | None:
    """Return the question, the option and the text that the last figure of a line is for."""
    amounts = _AMOUNT.findall(line)
    if not amounts:
        bare = _BARE.match(line.lower())
        if bare is None or "distance" not in lacking or preferences.bare is None:
            return None
        return name, "distance", f"{bare[1]} {preferences.bare.value}"
    value, unit = amounts[-1]
    kind = unit.lower().strip(' °"').removeprefix("degrees ").removeprefix("degree ")
    if kind.startswith("w"):
        option = "watts" if name in _POWERS else ""
        return (name, option, f"{value} W") if option else None
    if unit == "%":
        free = "screen" if "screen" in lacking and "tube" in given else "tube"
        return name, free, f"{value}%"
    if kind[:1] in ("f", "c") and kind not in ("cm", "ft", "feet", "foot"):
        text = f"{value} {kind[0].upper()}"
        place = _heat_option(name, given, lacking, text)
        return (name, place, text) if place else None
    other, option = _LENGTHS.get(name, (name, "distance"))
    return other, option, f"{value} {_OF_LENGTH[unit.lower()]}"


def _heat_option(
    name: str, given: Mapping[str, str], lacking: tuple[str, ...], text: str
) -> str | None:
    """Return what a bare temperature is: what was asked for, or the nearest one told before."""
    wanted = next((o for o in ("room", "surface", "air", "reading") if o in lacking), None)
    if wanted or name in _HEATS:
        return wanted or _HEATS[name]
    told = {place: _celsius(given[place]) for place in _PLACES if place in given}
    if not told:
        return "basking" if name == "temps" else None
    here = _celsius(text)
    return min(told, key=lambda place: abs(told[place] - here))


def _celsius(text: str) -> float:
    measure: Measure = read_temperature(text)
    return (measure.low + measure.high) / 2.0
