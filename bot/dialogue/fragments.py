"""What a few words change of the question before: a figure, a name, a lid, 'not sure'."""

import re
from collections.abc import Iterator, Mapping

from bot.command import Command
from bot.dialogue.bare import age_told, bare_told, lamp_told, on_for_told
from bot.dialogue.phrases import asks, place_named, takes_mesh_off
from bot.language.quantities import Measure, read_temperature
from bot.language.unsure import NOT_SURE
from bot.preferences import Context, Preferences
from bot.queries.setup import AskQuery
from bot.queries.typed import typed_all
from bot.routes.asked import Asked
from bot.routes.filled import filled, is_asked_freely
from bot.routes.routing import asked_in
from calc.naming import Known, Several, named

__all__ = ["by_facts", "change_wished", "changed_by", "told_of_set_up"]

_NUMBER = re.compile(
    r"(?<![\w.])\d{2,3}(?:\.\d)?(?![\w%.]| ?(?:min|minutes?|h|hrs?|hours?|days?|weeks?|months?"
    r"|years?|minuten?|stunden?|tage?n?|wochen?|monate?n?|jahre?n?)\b)"
)
# Between both ranges a bare number has no meaning; inside one of them it has one alone.
_COLDEST_C, _HOTTEST_C = 12.0, 52.0
_COLDEST_F, _HOTTEST_F = 60.0, 130.0
_OF_LENGTH = {
    **dict.fromkeys(("in", "inch", "inches", '"'), "in"),
    **dict.fromkeys(("ft", "feet", "foot"), "ft"),
    "cm": "cm",
    "mm": "mm",
}
_AMOUNT = re.compile(
    r"(?<![\w.%])(\d+(?:[.,]\d+)?(?:\s*(?:-|–|to|bis)\s*\d+(?:[.,]\d+)?)?)\s*"
    r"(inch(?:es)?|in(?! (?:the|my|a|here|there))|\"|cm|mm|ft|feet|foot|°?\s?[fc]|degrees? ?[fc]"
    r"|fahrenheit|celsius|w|watts?|%)"
    r"(?![\w])",
    re.I,
)
_DO_NOT_KNOW = re.compile(
    r"\b(?:not sure|no idea|dunno|don'?t know|dont know|unsure|idk|weiß (?:ich )?nicht"
    r"|keine ahnung)\b"
)
_STRENGTH = re.compile(
    r"\b(?:the|a|an|with|mit|die|der) (2|4|5|6|7|8|10|12|14)(?: percent)?\b(?! ?\w*(?:in|cm|h)\b)"
)
_MESH = re.compile(r"\b(?:mesh|screen|gitter|netz)\b")
_FITTED = (
    ("reflector", re.compile(r"\b(?:reflector|mirror|reflektor|spiegel)\b")),
    ("screen", _MESH),
)
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
_NEEDS_A_SHARE = ("tube", "check", "plan")
_WARMER = re.compile(
    r"\b(?:hotter|warmer|cooler|colder|(?:bring|get|turn) (?:it|that|this) (?:down|up)|raise it"
    r"|lower it|fix (?:it|that|this)|wärmer|heißer|kühler|kälter)\b"
)
# What it counts was not asked for, so it is nothing yet.
_ONLY_A_NUMBER = re.compile(r"^\W*\d+(?:[.,]\d+)?\W*$")
_GOES_ON = re.compile(r"^(?:and|und|what about|how about|was ist mit)\b")
_UNCOVERED = re.compile(
    r"^(?:no|kein|without an?|ohne) (?:cover|lid|pane|glass|abdeckung|deckel)\b"
)
_SEASON = re.compile(r"\b(?:winters?|summers?|seasons?|all year|im winter|sommer|jahreszeit\w*)\b")
_POWERS = ("basking", "air", "plan")


def told_of_set_up(line: str, context: Context) -> dict[str, str]:
    """Return what a line tells of animal, tube and screen, by the options of the UV questions."""
    asked = asked_in(AskQuery(question=line), context)
    found = dict(_told("uvi", asked))
    return {n: t for n, t in _words(line, asked, ()) if n not in found} | found


def by_facts(
    line: str, context: Context, *, about_uv: bool = False
) -> tuple[str, dict[str, str]] | None:
    """Return the question that what a line tells is for, where it asks none: UV, or warmth.

    ``about_uv``: the question before was about a tube, so that a bare number is how far it is.
    """
    asked = asked_in(AskQuery(question=line), context)
    warm = dict(_told("temps", asked))
    bare = "" if asked.warmth or asked.degrees or "room" in warm else _bare_degrees(line)
    if bare and about_uv and place_named(line) is None:
        return "uvi", {**told_of_set_up(line, context), "distance": bare}
    if bare and _ONLY_A_NUMBER.match(line):
        return None
    if bare:
        return "temps", {**warm, place_named(line) or "basking": bare}
    if asked.warmth:
        return "temps", warm
    if asked.degrees and "room" not in warm:
        return "temps", {**warm, "basking": asked.degrees}
    told = told_of_set_up(line, context)
    lengths = [(v, u) for v, u in _AMOUNT.findall(line) if u.lower() in _OF_LENGTH]
    if lengths and "distance" not in told:
        value, unit = lengths[-1]
        told["distance"] = f"{value} {_OF_LENGTH[unit.lower()]}"
    if "distance" in told:
        return "uvi", told
    return ("distance", told) if told.keys() & {"tube", "reflector", "screen"} else None


def change_wished(command: Command, given: Mapping[str, str], line: str) -> dict[str, str]:
    """Return the options of the question how a basking spot gets warmer or cooler, if it is asked.

    What was read of it before goes along.
    """
    surface = given.get("basking", "") if command.name in ("temps", "check") else ""
    if not surface or not _WARMER.search(line.lower()):
        return {}
    told = {"surface": surface, "air": given.get("warm", ""), "animal": given.get("animal", "")}
    return {option: text for option, text in told.items() if text}


def changed_by(
    command: Command,
    given: Mapping[str, str],
    line: str,
    context: Context,
    preferences: Preferences,
) -> tuple[str, dict[str, str]] | None:
    """Return the question before with what a line changes of it; None where it changes nothing."""
    if not is_asked_freely(command.name):
        return None
    asked = asked_in(AskQuery(question=line), context)
    names = set(command.query.examples())
    lacking = tuple(command.query.lacking(dict(given), preferences.own))
    figure_told = asked.warmth or bool(asked.degrees or _bare_degrees(line))
    if command.name == "needs" and figure_told and not asks(line):
        return None
    found = {n: t for n, t in _all_told(command.name, asked) if n in names}
    found |= {n: t for n, t in _words(line, asked, lacking) if n in names and n not in found}
    found |= {n: t for n, t in _beside(command.name, line) if n in names and n not in found}
    if "animal" in names and "animal" not in found and (kin := asked.unclear_animal):
        found["animal"] = _with_name_before(given.get("animal", ""), kin.words)
    if "age" not in found:
        figure = _figure(command.name, names, given, line, lacking, preferences)
    else:
        figure = None
    is_mesh_untold = command.name in _NEEDS_A_SHARE and found.get("screen") in ("mesh", NOT_SURE)
    if is_mesh_untold:
        found = _with_mesh_untold(command.name, given, found)
    if figure is None and command.name == "temps" and (bare := _bare_degrees(line)):
        place = place_named(line) or _heat_option(command.name, given, lacking, bare)
        if place and place not in found:
            return command.name, {**given, **found, place: bare}
    goes_on = _GOES_ON.match(line.lower()) or asks(line)
    if figure is None and not (found or goes_on) and command.name == "temps" and place_named(line):
        return _renamed(given, place_named(line))
    strength = _STRENGTH.search(line.lower())
    if strength and "tube" in names and "tube" not in found:
        found["tube"] = f"{strength[1]}%"
    if figure is not None and not _is_told(figure, found):
        name, option, text = figure
        if name != command.name or option in names:
            found.setdefault(option, text)
            return name, {**given, **found}
    return (command.name, {**given, **found}) if found or is_mesh_untold else None


def _with_mesh_untold(
    name: str, given: Mapping[str, str], found: Mapping[str, str]
) -> dict[str, str]:
    """Return what is told where a question takes no mesh without its share."""
    rest = {option: text for option, text in found.items() if option != "screen"}
    if name == "check" and found["screen"] == "mesh":
        words = ", ".join(filter(None, (given.get("setup", "").strip("“”"), "mesh")))
        return {**rest, "setup": words}
    return rest


def _with_name_before(before: str, word: str) -> str:
    """Return what a word makes of a name that was not clear: leopard, then gecko."""
    clear = not before or isinstance(named(before).what, Known)
    both = () if clear else (f"{before} {word}", f"{word} {before}")
    what = named(word).what
    only = what.candidates if isinstance(what, Several) and len(what.candidates) == 1 else ()
    known = (name for name in both if isinstance(named(name).what, Known))
    return next(known, only[0].name if only else word)


def _all_told(name: str, asked: Asked) -> Iterator[tuple[str, str]]:
    """Yield what a question takes; a whole set-up takes what is told of UV and of warmth."""
    if name != "check":
        yield from _told(name, asked)
        return
    for part in ("uvi", "temps"):
        yield from _told(part, asked)
    for option, text in _told("night", asked):
        if option == "room":
            yield "night", text


def _is_told(figure: tuple[str, str, str], found: Mapping[str, str]) -> bool:
    """Whether the figure of a line was heard already, at the place that it is of."""
    _, option, text = figure
    same = {told.replace(" ", "").lower() for told in found.values()}
    return option in found or text.replace(" ", "").lower() in same


def _beside(name: str, line: str) -> Iterator[tuple[str, str]]:
    """Yield what a line tells that hearing takes only with a lamp or an animal beside it."""
    if age := age_told(line):
        yield "age", age
    if name == "decline" and (lamp := lamp_told(line)):
        yield "lamp", lamp
    if name in ("temps", "check") and (on := on_for_told(line)):
        yield "lamp_on", on
    if name == "hours" and _SEASON.search(line.lower()):
        yield "latitude", "home"


def _bare_degrees(line: str) -> str:
    """Return the last number of a line that can only be a temperature that a lizard lives at."""
    if _AMOUNT.search(line):
        return ""
    found = [float(number) for number in _NUMBER.findall(line.replace(",", "."))]
    likely = [n for n in found if _COLDEST_C <= n <= _HOTTEST_C or _COLDEST_F <= n <= _HOTTEST_F]
    return f"{likely[-1]:g}" if likely else ""


def _told(name: str, asked: Asked) -> Iterator[tuple[str, str]]:
    """Yield what hearing finds; what it only supposes is left as it was."""
    for option, text in typed_all(filled(name, asked)).items():
        supposed = text == NOT_SURE or (option == "screen" and text == "mesh")
        if not supposed and option != "setup":
            yield option, text


def _words(line: str, asked: Asked, lacking: tuple[str, ...]) -> Iterator[tuple[str, str]]:
    plain = line.lower()
    if takes_mesh_off(plain) or _UNCOVERED.match(plain.strip()):
        yield "screen", "none"
    elif asked.under_mesh or _MESH.search(plain):
        yield "screen", "mesh"
    if _DO_NOT_KNOW.search(plain):
        unsure = {option: option in lacking or bool(form.search(plain)) for option, form in _FITTED}
        yield from ((option, NOT_SURE) for option, is_unsure in unsure.items() if is_unsure)
    if _NO.match(plain.strip()) and "screen" in lacking:
        yield "screen", "none"
    if _YES.match(plain.strip()) and "reflector" in lacking:
        yield "reflector", "polished"


def _renamed(given: Mapping[str, str], place: str | None) -> tuple[str, dict[str, str]] | None:
    """Return the readings with the only one of them at another place."""
    told = [name for name in _PLACES if name in given]
    if place is None or len(told) != 1 or told == [place]:
        return None
    return "temps", {place if n == told[0] else n: text for n, text in given.items()}


def _figure(
    name: str,
    names: set[str],
    given: Mapping[str, str],
    line: str,
    lacking: tuple[str, ...],
    preferences: Preferences,
) -> tuple[str, str, str] | None:
    """Return the question, the option and the text that the last figure of a line is for."""
    amounts = _AMOUNT.findall(line)
    if not amounts:
        bare = bare_told(name, names, given, line, lacking, preferences.bare)
        return (name, *bare) if bare else None
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
    """Return a temperature [degC]; a bare one has the only unit that it can have."""
    if text.replace(".", "").isdigit():
        bare = float(text)
        return bare if bare <= _HOTTEST_C else (bare - 32.0) / 1.8
    measure: Measure = read_temperature(text)
    return (measure.low + measure.high) / 2.0
