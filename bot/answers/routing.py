"""From a free question to one of the questions that are answered, with its options filled in.

Nothing is answered here: the words choose the question, hearing fills its options, and what is
still missing is asked for by that question as usual.
"""

import re
from collections.abc import Callable, Iterator

from bot.answers.setup_told import Told, told_by
from bot.command import Routed
from bot.language.errors import NotUnderstoodError
from bot.language.hearing import FactName, hear
from bot.language.hearing.facts import LampKind
from bot.language.normal import normalise
from bot.language.quantities import Dimension, Measure, convert
from bot.language.screens import Blocks, NoScreen, Passes
from bot.queries.setup import AskQuery

__all__ = ["route"]


# Words that choose a question, the surest first.
_ASKED: tuple[tuple[str, str], ...] = (
    (
        "convert",
        r"\bconvert\b|\b(?:in|to|into) (?:inches|inch|cm|centimet\w+|fahrenheit|celsius)\b",
    ),
    (
        "plan",
        r"\bplan\b|\bshopping list\b|\bwhat (?:do|will|would) i need\b|\bset(?:ting)? (?:it )?up\b",
    ),
    ("plan", r"\bwant to (?:get|buy|keep)\b|\bthinking (?:of|about) getting\b|\bnew set-?up\b"),
    ("hours", r"\bhow (?:many hours|long should (?:the |my )?lights?)\b|\btimer\b|\bday ?length\b"),
    (
        "watts",
        r"\b(?:what|which|how many|how much) watt|\bwhat (?:size|strength) (?:heat )?bulb\b",
    ),
    ("tube", r"\b(?:which|what) (?:uvb? ?)?(?:tube|uvb|strength|percent)"),
    ("tube", r"\bshould i (?:get|use|buy)\b.*(?:%|\btube\b|\buvb?\b)"),
    ("distance", r"\bhow (?:far|high|close|low)\b|\bwhat distance\b|\bwhat height\b"),
    ("uvi", r"\b(?:what|which|how much) (?:is the )?uv(?:i| index)?\b|\bhow strong\b"),
    (
        "lamp",
        r"\b(?:what is|is|are|can i use|should i use)\b.*\b(?:good|ok|okay|fine|safe|bad)\b",
    ),
    (
        "night",
        r"\b(?:need|heat|lamp|bulb|cold|warm)\w*\b.*\bnight\b|\bnight\b.*\b(?:need|heat|cold)\b",
    ),
)
_SI = {
    Dimension.LENGTH: "m",
    Dimension.TEMPERATURE: "degC",
    Dimension.POWER: "W",
    Dimension.DURATION: "s",
}
_TUBES = frozenset((LampKind.T5, LampKind.T5_HO, LampKind.T8))
_LIDS = {"mesh": "full mesh", "glass": "solid"}
_UNITS = {"degF": "F", "degC": "C"}
_UV = (FactName.TUBE, FactName.REFLECTOR, FactName.SCREEN, FactName.PLACEMENT, FactName.UVI)
_WARMTH = (FactName.BASKING, FactName.COOL, FactName.WARM)
_DISTANCES = (FactName.DISTANCE_BACK, FactName.DISTANCE, FactName.DISTANCE_PERCH)
_FEWEST_FACTS = 2
_ACCEPTED = "a question about UV, heat, nights or a whole set-up, with what you know of yours"
_EXAMPLE = "how far should a 12% tube be with a polished reflector and no screen, bearded dragon"


def route(query: AskQuery) -> Routed:
    """Return the question that free words ask, or say that none was found in them."""
    words = query.question
    told = told_by(words, query)
    name = _named(words) or _chosen(normalise(words.lower()), told)
    if name is None:
        raise NotUnderstoodError(words, _ACCEPTED, _EXAMPLE, "question")
    if name == "check":
        return Routed("check", {"setup": words})
    return Routed(name, dict(_options(name, told, words)))


def _named(words: str) -> str | None:
    """Return the question whose name the words start with."""
    first = words.split(maxsplit=1)[:1]
    return first[0].lower() if first and first[0].lower() in _FILLED else None


def _chosen(words: str, told: Told) -> str | None:
    asked = [name for name, pattern in _ASKED if re.search(pattern, words)]
    for name in asked:
        if name == "lamp" and not _lamp(told):
            continue
        if name == "convert" and not _amount(words):
            continue
        if name == "watts" and told.size is not None:
            return "plan"
        return name
    uv = any(told.all(fact) for fact in _UV)
    warmth = [fact for fact in _WARMTH if told.all(fact)]
    if told.all(FactName.ROOM_NIGHT) and not (uv or warmth or told.lamps):
        return "night"
    if len(told.facts) < _FEWEST_FACTS and not warmth:
        return None
    if warmth and not uv and not told.lamps and not told.lacks("uvb"):
        return "temps"
    return "check" if uv or warmth or told.lamps else None


def _options(name: str, told: Told, words: str) -> Iterator[tuple[str, str]]:
    """Return the options of a question as somebody would type them."""
    if name == "convert":
        yield "value", _amount(normalise(words.lower()))
        return
    if name == "lamp":
        yield "kind", _lamp(told)
        return
    if told.animal:
        yield "animal", told.animal
    fill = _FILLED.get(name)
    if fill is not None:
        yield from fill(told, name)


def _of_tube(told: Told, name: str) -> Iterator[tuple[str, str]]:
    if told.tube:
        yield "tube", told.tube.value.text
    if told.reflector:
        yield "reflector", told.reflector.value.value
    yield from _screen(told)
    yield from _typed(told, "length", FactName.TUBE_LENGTH)
    yield from _typed(told, "age", FactName.AGE)
    if name == "uvi":
        yield from _typed(told, "distance", *_DISTANCES)


def _of_place(told: Told, _name: str) -> Iterator[tuple[str, str]]:
    yield from _typed(told, "distance", *_DISTANCES)
    yield from _screen(told)
    if told.size:
        size = told.size.value
        yield "enclosure", f"{convert(size.length_m, 'm', size.unit):.6g} {size.unit}"
    else:
        yield from _typed(told, "enclosure", FactName.ENCLOSURE_LENGTH)


def _of_watts(told: Told, _name: str) -> Iterator[tuple[str, str]]:
    yield from _typed(told, "room", FactName.ROOM)
    yield from _typed(told, "distance", FactName.LAMP_DISTANCE, *_DISTANCES)


def _of_night(told: Told, _name: str) -> Iterator[tuple[str, str]]:
    yield from _typed(told, "room", FactName.ROOM_NIGHT, FactName.NIGHT, FactName.ROOM)


def _of_warmth(told: Told, _name: str) -> Iterator[tuple[str, str]]:
    for fact in (*_WARMTH, FactName.NIGHT):
        yield from _typed(told, fact.value, fact)
    yield from _typed(told, "lamp_on", FactName.ON_FOR)
    if told.thermometers:
        names = sorted(x.value for x in told.thermometers)
        yield "measured", " and ".join(names)


def _of_plan(told: Told, _name: str) -> Iterator[tuple[str, str]]:
    if told.size:
        size = told.size.value
        sides = (size.length_m, size.depth_m, size.height_m)
        shown = "x".join(f"{convert(side, 'm', size.unit):.6g}" for side in sides)
        yield "enclosure", f"{shown} {size.unit}"
    for option, fact in (("material", FactName.MATERIAL), ("lid", FactName.LID)):
        said = told.one(fact, str)
        if said:
            yield option, _LIDS.get(said.value, said.value)
    yield from _typed(told, "room", FactName.ROOM)
    yield from _typed(told, "night", FactName.ROOM_NIGHT, FactName.NIGHT)
    yield from _typed(told, "watts", FactName.WATTS)
    if told.screen and not isinstance(told.screen.value, NoScreen):
        yield from _screen(told)
    if told.tube:
        yield "tube", told.tube.value.text
    if told.reflector:
        yield "reflector", told.reflector.value.value
    yield from _typed(told, "length", FactName.TUBE_LENGTH)


_FILLED: dict[str, Callable[[Told, str], Iterator[tuple[str, str]]]] = {
    "distance": _of_tube,
    "uvi": _of_tube,
    "tube": _of_place,
    "watts": _of_watts,
    "night": _of_night,
    "temps": _of_warmth,
    "plan": _of_plan,
}


def _screen(told: Told) -> Iterator[tuple[str, str]]:
    if told.screen is None:
        return
    match told.screen.value:
        case NoScreen():
            yield "screen", "none"
        case Blocks(fraction):
            yield "screen", f"{100 * fraction:.4g}%"
        case Passes(fraction):
            yield "screen", f"passes {100 * fraction:.4g}%"
        case weave:
            yield "screen", weave.text


def _typed(told: Told, option: str, *names: FactName) -> Iterator[tuple[str, str]]:
    """Return the first of these measures as text with its unit, if one was told."""
    for name in names:
        said = told.measure(name)
        if said is not None:
            yield option, _text(said.value)
            return


def _text(measure: Measure) -> str:
    middle = (measure.low + measure.high) / 2.0
    value = convert(middle, _SI[measure.dimension], measure.unit)
    return f"{value:.6g} {_UNITS.get(measure.unit, measure.unit)}"


def _lamp(told: Told) -> str:
    """Return the kind of lamp that is there or asked about."""
    asked = [ask.words for ask in told.unclear if ask.name is FactName.LAMP]
    kinds = [lamp.value for lamp in told.lamps]
    kinds += [fact.value for words in asked for fact in hear(words, {}).all(FactName.LAMP)]
    # The question lamp knows these two by another name.
    names = {LampKind.FLOOD: "halogen flood", LampKind.COLOURED: "night lamp"}
    heat = (k for k in kinds if isinstance(k, LampKind) and k not in _TUBES)
    return next((names.get(k, k.value) for k in heat), "")


def _amount(words: str) -> str:
    """Return the first amount with a unit, as the question convert reads it."""
    pattern = (
        r"[-+]?\d[\d.,]*(?:\s*\d/\d+)?\s*"
        r"(?:inch(?:es)?|in|feet|foot|ft|cm|mm|m|°\s*[fc]|degrees? [fc]|[fc]|fahrenheit|celsius)\b"
    )
    found = re.search(pattern, words)
    return found[0] if found else ""
