"""What a line tells of animal, lamps and temperatures, by the options of the questions."""

import re
from collections.abc import Collection, Iterator, Mapping
from datetime import date

from bot.dialogue.another import STAYS
from bot.dialogue.bare import age_told, lamp_told, on_for_told
from bot.dialogue.figures import (
    Before,
    bare_degrees,
    heat_option,
)
from bot.dialogue.phrases import names_a_season, takes_mesh_off
from bot.dialogue.places import place_named
from bot.dialogue.remembered import LAMP_DISTANCE, LAMP_WATTS, READINGS
from bot.language.hearing import FactName
from bot.language.lamps import Fixture
from bot.language.screens import NoScreen
from bot.language.states import states_told
from bot.language.unsure import NOT_SURE, SomeMesh, Unsure
from bot.language.uv_lamps import UvLamp
from bot.preferences import Context, Preferences
from bot.queries.heat import TempsQuery
from bot.queries.question import Question
from bot.queries.setup import AskQuery
from bot.queries.typed import typed
from bot.routes.asked import Asked
from bot.routes.filled import filled
from bot.routes.routing import asked_in
from calc.animal import State
from calc.naming import Known, Several, named

__all__ = [
    "UNPLACED",
    "all_told",
    "box_told",
    "named_again",
    "part_told",
    "readings_heard",
    "set_up_told",
    "states_in",
    "states_now",
    "staying",
    "told_beside",
    "told_in_words",
    "told_of_set_up",
    "warmth_told",
    "whole_name",
    "with_name_before",
]

_DO_NOT_KNOW = re.compile(
    r"\b(?:not sure|no idea|dunno|don'?t know|dont know|unsure|idk|weiß (?:ich )?nicht"
    r"|keine ahnung)\b"
)
_MESH = re.compile(r"\b(?:mesh|screen|gitter|netz)\b")
_FITTED = (
    ("reflector", re.compile(r"\b(?:reflector|mirror|reflektor|spiegel)\b")),
    ("screen", _MESH),
)
_UNFITTED = re.compile(
    r"\b(?:no|without(?: an?)?|missing|lost the|kein\w*|ohne) "
    r"(?:reflector|mirror|reflektor|spiegel)\b"
    r"|\b(?:reflector|mirror|reflektor|spiegel)\b.{0,16}"
    r"\b(?:missing|gone|fell off|not there|isn'?t there|fehlt|weg)\b"
)
_NO = re.compile(r"^(?:no|nope|nein|none|nothing|kein\w*)\b\W*$")
_YES = re.compile(r"^(?:yes|yep|yeah|ja|it does|it has|there is)\b\W*$")
_SET_UPS = ("check", "next")
_SHORTEST_DAY_S = 6 * 3600.0
_AGAIN_OF = re.compile(
    r"\b(?:for|under|over|about|to|my|für) (?:the|my|den|die|das) ([^\W\d]{3,})\b"
)
# Eight eighths of an inch, as its name says.
_AS_THICK_AS_A_T8 = re.compile(
    r"\b(?:2[4-7](?:\.\d)? ?mm|(?:an|1) ?inch) (?:thick|across|wide|in diameter|dick)\b"
)
_MOST_OF_YOUNG, _MOST_OF_A_NAME = 9, 2
_YOUNG = re.compile(
    r"\b(?:bab(?:y|ies)|young (?:one|ones)|younger ones?|juveniles?|juvies?|hatchlings?"
    r"|jungtiere?|babys|kleinen?)\b"
    r"|\b(?:he|she|it|they|hes|shes|he's|she's|er|sie|es)(?: is| are| ist| sind)?"
    r"(?: still| only| just| so| very| quite| noch| erst| ganz| sehr| ziemlich)*"
    r" (?:small|tiny|young|little|klein|winzig|jung)\b"
)
_GROWN = re.compile(r"\b(?:adult\w*|(?:fully?[ -])?grown|ausgewachsen\w*|erwachsen\w*)\b", re.I)
UNPLACED = "degrees"
"""Under this a conversation knows a temperature that was asked about without its place."""
_DOUBTED = re.compile(
    r"\b(?:ok\w*|fine|good|right|bad|safe|too|to (?:hot|cold)|enough|gut|passt|zu|normal)\b"
)
_UNDER_A_LAMP = re.compile(
    r"\b(?:under|below|beneath|unter|unterm) (?:the |his |her |its |my |der |dem )?"
    r"(?:lamp|bulb|light|heat|lampe|spot|strahler)\b"
)
_OF_A_LAMP = {LAMP_DISTANCE: FactName.LAMP_DISTANCE, LAMP_WATTS: FactName.WATTS}
_PLAIN = re.compile(
    r"^(?:(?:its|it's|it is|is|just|only|no|inside|es ist|ist|nur|innen|the|der) )*"
    r"(?:plain|white|painted|matt?|weiße?[rsn]?|matte?)(?: (?:inside|painted|paint|back|innen|one"
    r"|plastic|lackiert|drin))*\W*$"
)
_SHINY = re.compile(
    r"^(?:(?:its|it's|it is|is|has|yes|ja|inside|es ist|ist|a|the|der|ein|hat) )*"
    r"(?:mirror\w*|shiny|polished|silver|chrome|spiegel\w*|glänz\w*|verspiegelt)"
    r"(?: (?:inside|one|yes|ist|drin|behind|there|metal|ja|dahinter))*\W*$"
)
_YOUNG_TO_S = 31_557_600.0
_UNCOVERED = re.compile(
    r"^(?:no|kein|without an?|ohne) (?:cover|lid|pane|glass|abdeckung|deckel)\b"
)


def told_of_set_up(line: str, context: Context) -> dict[str, object]:
    """Return what a line tells of animal, tube and screen, by the options of the UV questions."""
    asked = asked_in(AskQuery(question=line), context)
    found = dict(part_told("uvi", asked))
    if "animal" not in found and (name := named_again(line)):
        found["animal"] = name
    if "lamp" not in found and _AS_THICK_AS_A_T8.search(line.lower()):
        found["lamp"] = UvLamp.OTHER_TUBE
    return {n: t for n, t in told_in_words(line, asked, ()) if n not in found} | found


def staying(line: str, context: Context) -> dict[str, object]:
    """Return what a line tells that is so of the set-up, whatever is asked next."""
    told = told_of_set_up(line, context)
    asked = asked_in(AskQuery(question=line), context)
    if states := states_now(asked):
        told["state"] = states
    unclear = asked.unclear_animal
    if "animal" not in told and unclear and isinstance(named(unclear.words).what, Several):
        # Which one it is can be asked later: of a chameleon is spoken already.
        told["animal"] = unclear.words
    return {name: value for name, value in told.items() if name in STAYS}


def readings_heard(line: str, context: Context) -> dict[str, object]:
    """Return the temperatures that a line tells with their places, and its heat lamp."""
    asked = asked_in(AskQuery(question=line), context)
    heard: dict[str, object] = {n: v for n, v in part_told("temps", asked) if n in READINGS}
    degrees = asked.degrees or bare_degrees(line)
    if not heard and degrees and _DOUBTED.search(line.lower()) and not place_named(line):
        heard["basking" if _UNDER_A_LAMP.search(line.lower()) else UNPLACED] = degrees
    for option, fact in _OF_A_LAMP.items():
        if said := asked.told.measure(fact):
            heard[option] = said.value
    return heard


def set_up_told(question: Question | None, context: Context) -> Mapping[str, object]:
    """Return what a question tells; of a whole set-up, what its words tell too."""
    if question is None:
        return {}
    words = typed(question.values.get("setup", "")) if question.command in _SET_UPS else ""
    if not words:
        return question.values
    asked = asked_in(AskQuery(question=words.strip("“”")), context)
    heard = dict(all_told("check", asked))
    read = [said.value for said in asked.told.all(FactName.UVI)]
    return {**heard, **({"meter": read[0]} if len(read) == 1 else {}), **question.values}


def box_told(line: str, context: Context) -> dict[str, object]:
    """Return the box that a line tells, its walls and its lid."""
    asked = asked_in(AskQuery(question=line), context)
    return {n: v for n, v in part_told("plan", asked) if n in ("enclosure", "material", "lid")}


def warmth_told(
    line: str, told: Mapping[str, object], context: Context, preferences: Preferences
) -> dict[str, object]:
    """Return the temperatures that a line tells, by the options of the question about them."""
    asked = asked_in(AskQuery(question=line), context)
    places = ("animal", "room", "water")
    warm = {n: v for n, v in part_told("temps", asked) if n not in places}
    bare = "" if warm else asked.degrees or bare_degrees(line)
    if not bare:
        return warm
    before = Before("temps", TempsQuery, told, ())
    return {place_named(line) or heat_option(before, bare, preferences) or "basking": bare}


def all_told(name: str, asked: Asked) -> Iterator[tuple[str, object]]:
    """Yield what a question takes; a whole set-up takes what is told of UV and of warmth."""
    if name != "check":
        yield from part_told(name, asked)
        return
    for part in ("uvi", "temps"):
        yield from part_told(part, asked)
    for option, text in part_told("night", asked):
        if option == "room":
            yield "night", text


def part_told(name: str, asked: Asked) -> Iterator[tuple[str, object]]:
    """Yield what hearing finds; what it only supposes is left as it was."""
    for option, value in filled(name, asked).items():
        if not isinstance(value, Unsure) and option != "setup":
            yield option, value


def told_beside(name: str, asked: Asked, today: date | None) -> Iterator[tuple[str, object]]:
    """Yield what a line tells that hearing takes only with a lamp or an animal beside it."""
    line = asked.said
    if age := age_told(line, today):
        yield "age", age
    if name == "decline" and (lamp := lamp_told(asked.words)):
        yield "lamp", lamp
    if name in ("temps", "check") and (on := on_for_told(line)):
        # So long no lamp warms up: it is the day.
        yield "hours" if on.low >= _SHORTEST_DAY_S else "lamp_on", on
    if name == "hours" and names_a_season(line):
        yield "latitude", "home"


def told_in_words(
    line: str, asked: Asked, lacking: Collection[str]
) -> Iterator[tuple[str, object]]:
    """Yield what a line tells by a few words that hearing takes for nothing alone."""
    plain = line.lower()
    if takes_mesh_off(plain) or _UNCOVERED.match(plain.strip()):
        yield "screen", NoScreen("none")
    elif asked.under_mesh or _MESH.search(plain):
        yield "screen", SomeMesh("mesh")
    if _UNFITTED.search(plain) or _PLAIN.match(plain.strip()):
        yield "reflector", Fixture.PLAIN
    elif _SHINY.match(plain.strip()):
        yield "reflector", Fixture.POLISHED
    if _DO_NOT_KNOW.search(plain):
        for option, form in _FITTED:
            if option in lacking or form.search(plain):
                yield option, Unsure(NOT_SURE)
    if _NO.match(plain.strip()) and "screen" in lacking:
        yield "screen", NoScreen("none")
    if _YES.match(plain.strip()) and "reflector" in lacking:
        yield "reflector", Fixture.POLISHED


def states_in(line: str) -> frozenset[State]:
    """Return the states that a line tells, a young one that is asked about included."""
    short = len(line.split()) <= _MOST_OF_YOUNG
    young = {State.YOUNG} if short and _YOUNG.search(line.lower()) else set()
    return states_told(line) | young


def states_now(asked: Asked) -> frozenset[State] | None:
    """Return the states of the animal that a line tells, none of a grown one; None: it tells none.

    An age tells whether it is young still.
    """
    if states := states_in(asked.said):
        return states
    words = re.findall(r"[^\W\d_]{3,}", asked.said.lower())
    if states := frozenset().union(*(states_told(f"{word} animal") for word in words)):
        return states
    age = asked.told.measure(FactName.ANIMAL_AGE)
    if age is not None:
        return frozenset({State.YOUNG}) if age.value.high < _YOUNG_TO_S else frozenset()
    return frozenset() if _GROWN.search(asked.said) else None


def named_again(line: str) -> str:
    """Return the animal that a line goes back to: the leo; else nothing."""
    for found in _AGAIN_OF.finditer(line.lower()):
        what = named(found[1]).what
        if isinstance(what, Known):
            return found[1]
    return ""


def whole_name(known: Mapping[str, object], line: str) -> str:
    """Return a line that tells the rest of a name that several share, as the whole name."""
    before, word = typed(known.get("animal", "")), line.strip(" .!?")
    if not before or len(word.split()) > _MOST_OF_A_NAME or any(map(str.isdigit, word)):
        return line
    if not isinstance(named(before).what, Several) or isinstance(named(word).what, Known):
        return line
    whole = named(f"{word} {before}").what
    return whole.name if isinstance(whole, Known) else line


def with_name_before(before: str, word: str) -> str:
    """Return what a word makes of a name that was not clear: leopard, then gecko."""
    clear = not before or isinstance(named(before).what, Known)
    both = () if clear else (f"{word} {before}", f"{before} {word}")
    what = named(word).what
    only = what.candidates if isinstance(what, Several) and len(what.candidates) == 1 else ()
    known = (name for name in both if isinstance(named(name).what, Known))
    return next(known, only[0].name if only else word)
