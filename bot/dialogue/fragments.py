"""What a few words change of the question before: a figure, a name, a lid, 'not sure'."""

import re
from collections.abc import Iterator, Mapping

from bot.command import Command
from bot.dialogue.bare import age_told, lamp_told, on_for_told
from bot.dialogue.figures import (
    PLACES,
    Before,
    bare_degrees,
    figure_told,
    heat_option,
    length_told,
)
from bot.dialogue.phrases import asks, place_named, takes_mesh_off
from bot.language.arranged import lamp_beside_in
from bot.language.lamps import Fixture, read_tube
from bot.language.quantities import Measure
from bot.language.screens import NoScreen
from bot.language.there import There, there_in
from bot.language.unsure import NOT_SURE, SomeMesh, Unsure
from bot.preferences import Context, Preferences
from bot.queries.question import Question
from bot.queries.setup import AskQuery
from bot.queries.typed import typed, typed_all
from bot.routes.asked import Asked
from bot.routes.filled import filled, is_asked_freely
from bot.routes.routing import asked_in
from calc.naming import Known, Several, named

__all__ = ["by_facts", "change_wished", "changed_by", "told_of_set_up"]

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
_SET_UPS = ("check", "next")
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


def told_of_set_up(line: str, context: Context) -> dict[str, object]:
    """Return what a line tells of animal, tube and screen, by the options of the UV questions."""
    asked = asked_in(AskQuery(question=line), context)
    found = dict(_told("uvi", asked))
    return {n: t for n, t in _words(line, asked, ()) if n not in found} | found


def by_facts(line: str, context: Context, *, about_uv: bool = False) -> Question | None:
    """Return the question that what a line tells is for, where it asks none: UV, or warmth.

    ``about_uv``: the question before was about a tube, so that a bare number is how far it is.
    """
    asked = asked_in(AskQuery(question=line), context)
    warm = dict(_told("temps", asked))
    bare = "" if asked.warmth or asked.degrees or "room" in warm else bare_degrees(line)
    if bare and about_uv and place_named(line) is None:
        return Question("uvi", {**told_of_set_up(line, context), "distance": bare})
    if bare and _ONLY_A_NUMBER.match(line):
        return None
    if bare:
        return Question("temps", {**warm, place_named(line) or "basking": bare})
    if asked.warmth:
        return Question("temps", warm)
    if asked.degrees and "room" not in warm:
        return Question("temps", {**warm, "basking": asked.degrees})
    told = told_of_set_up(line, context)
    length = length_told(line)
    if length and "distance" not in told:
        told["distance"] = length
    if "distance" in told:
        return Question("uvi", told)
    told_of_uv = told.keys() & {"tube", "reflector", "screen"}
    return Question("distance", told) if told_of_uv else None


def change_wished(command: Command, given: Mapping[str, object], line: str) -> dict[str, object]:
    """Return the options of the question how a basking spot gets warmer or cooler, if it is asked.

    What was read of it before goes along.
    """
    surface = given.get("basking") if command.name in ("temps", "check") else None
    if not surface or not _WARMER.search(line.lower()):
        return {}
    told = {"surface": surface, "air": given.get("warm"), "animal": given.get("animal")}
    return {option: value for option, value in told.items() if value}


def changed_by(
    command: Command,
    given: Mapping[str, object],
    line: str,
    context: Context,
    preferences: Preferences,
) -> Question | None:
    """Return the question before with what a line changes of it; None where it changes nothing."""
    if not is_asked_freely(command.name):
        return None
    asked = asked_in(AskQuery(question=line), context)
    names = set(command.query.examples())
    before = Before(command, given, command.query.lacking(typed_all(given), preferences.own))
    lacking = before.lacking
    has_figure = asked.warmth or bool(asked.degrees or bare_degrees(line))
    if command.name == "needs" and has_figure and not asks(line):
        return None
    found = {n: t for n, t in _all_told(command.name, asked) if n in names}
    found |= {n: t for n, t in _words(line, asked, lacking) if n in names and n not in found}
    found |= {n: t for n, t in _beside(command.name, asked) if n in names and n not in found}
    if more := ", ".join(_of_set_up(command.name, line)):
        found["setup"] = _with_words(given, more)
    if "animal" in names and "animal" not in found and (kin := asked.unclear_animal):
        found["animal"] = _with_name_before(typed(given.get("animal", "")), kin.words)
    figure = None if "age" in found else figure_told(before, names, line, preferences)
    is_mesh_untold = command.name in _NEEDS_A_SHARE and isinstance(found.get("screen"), Unsure)
    if is_mesh_untold:
        found = _with_mesh_untold(command.name, given, found)
    if figure is None and command.name == "temps" and (bare := bare_degrees(line)):
        place = place_named(line) or heat_option(before, bare, preferences)
        if place and place not in found:
            return Question(command.name, {**given, **found, place: bare})
    goes_on = _GOES_ON.match(line.lower()) or asks(line)
    if figure is None and not (found or goes_on) and command.name == "temps" and place_named(line):
        return _renamed(given, place_named(line))
    strength = _STRENGTH.search(line.lower())
    if strength and "tube" in names and "tube" not in found:
        found["tube"] = read_tube(f"{strength[1]}%")
    if figure is not None and not _is_told(figure, found):
        name, option, value = figure
        if name != command.name or option in names:
            found.setdefault(option, value)
            return Question(name, {**given, **found})
    return Question(command.name, {**given, **found}) if found or is_mesh_untold else None


def _with_mesh_untold(
    name: str, given: Mapping[str, object], found: Mapping[str, object]
) -> dict[str, object]:
    """Return what is told where a question takes no mesh without its share."""
    rest = {option: value for option, value in found.items() if option != "screen"}
    if name == "check" and isinstance(found["screen"], SomeMesh):
        return {**rest, "setup": _with_words(given, "mesh")}
    return rest


def _of_set_up(name: str, line: str) -> Iterator[str]:
    """Yield what a line tells of a whole set-up that no option holds, in words that are heard."""
    if name in _SET_UPS and (hang := lamp_beside_in(line)):
        yield hang.value
    if name == "next":
        yield from sorted(one.value for one in there_in(line) - {There.TOGETHER})


def _with_words(given: Mapping[str, object], more: str) -> str:
    """Return the words of a set-up with some more."""
    return ", ".join(filter(None, (typed(given.get("setup", "")).strip("“”"), more)))


def _with_name_before(before: str, word: str) -> str:
    """Return what a word makes of a name that was not clear: leopard, then gecko."""
    clear = not before or isinstance(named(before).what, Known)
    both = () if clear else (f"{before} {word}", f"{word} {before}")
    what = named(word).what
    only = what.candidates if isinstance(what, Several) and len(what.candidates) == 1 else ()
    known = (name for name in both if isinstance(named(name).what, Known))
    return next(known, only[0].name if only else word)


def _all_told(name: str, asked: Asked) -> Iterator[tuple[str, object]]:
    """Yield what a question takes; a whole set-up takes what is told of UV and of warmth."""
    if name != "check":
        yield from _told(name, asked)
        return
    for part in ("uvi", "temps"):
        yield from _told(part, asked)
    for option, text in _told("night", asked):
        if option == "room":
            yield "night", text


def _is_told(figure: tuple[str, str, object], found: Mapping[str, object]) -> bool:
    """Whether the figure of a line was heard already, at the place that it is of."""
    _, option, value = figure
    return option in found or _alike(value) in map(_alike, found.values())


def _alike(value: object) -> object:
    """Return a value as another is held against it, without the words it was read from."""
    if isinstance(value, Measure):
        return value.dimension, round(value.low, 6), round(value.high, 6)
    return typed(value).replace(" ", "").lower()


def _beside(name: str, asked: Asked) -> Iterator[tuple[str, object]]:
    """Yield what a line tells that hearing takes only with a lamp or an animal beside it."""
    line = asked.said
    if age := age_told(line):
        yield "age", age
    if name == "decline" and (lamp := lamp_told(asked.words)):
        yield "lamp", lamp
    if name in ("temps", "check") and (on := on_for_told(line)):
        yield "lamp_on", on
    if name == "hours" and _SEASON.search(line.lower()):
        yield "latitude", "home"


def _told(name: str, asked: Asked) -> Iterator[tuple[str, object]]:
    """Yield what hearing finds; what it only supposes is left as it was."""
    for option, value in filled(name, asked).items():
        if not isinstance(value, Unsure) and option != "setup":
            yield option, value


def _words(line: str, asked: Asked, lacking: tuple[str, ...]) -> Iterator[tuple[str, object]]:
    plain = line.lower()
    if takes_mesh_off(plain) or _UNCOVERED.match(plain.strip()):
        yield "screen", NoScreen("none")
    elif asked.under_mesh or _MESH.search(plain):
        yield "screen", SomeMesh("mesh")
    if _DO_NOT_KNOW.search(plain):
        for option, form in _FITTED:
            if option in lacking or form.search(plain):
                yield option, Unsure(NOT_SURE)
    if _NO.match(plain.strip()) and "screen" in lacking:
        yield "screen", NoScreen("none")
    if _YES.match(plain.strip()) and "reflector" in lacking:
        yield "reflector", Fixture.POLISHED


def _renamed(given: Mapping[str, object], place: str | None) -> Question | None:
    """Return the readings with the only one of them at another place."""
    told = [name for name in PLACES if name in given]
    if place is None or len(told) != 1 or told == [place]:
        return None
    return Question("temps", {place if n == told[0] else n: v for n, v in given.items()})
