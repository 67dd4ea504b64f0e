"""The options of a question, filled with what was heard, as somebody would type them."""

from collections.abc import Callable, Iterator

from bot.language.hearing import FactName
from bot.language.hearing.facts import LampKind
from bot.language.quantities import Dimension, Measure, convert
from bot.language.screens import Blocks, NoScreen, Passes
from bot.language.unsure import NOT_SURE
from bot.questions.setup.told import SetUpTold
from bot.routes.asked import Asked
from bot.routes.quantity import asks_if_right, gives_asked, need_asked
from calc.heat.sources_of_heat import find_heat_source

__all__ = ["FILLED", "filled"]

_SI = {
    Dimension.LENGTH: "m",
    Dimension.TEMPERATURE: "degC",
    Dimension.POWER: "W",
    Dimension.DURATION: "s",
}
_LIDS = {"mesh": "full mesh", "glass": "solid", "plastic": "solid"}
_UNITS = {"degF": "F", "degC": "C"}
_WARMTH = (FactName.BASKING, FactName.COOL, FactName.WARM)
_DISTANCES = (FactName.DISTANCE_BACK, FactName.DISTANCE, FactName.DISTANCE_PERCH)

_Options = Iterator[tuple[str, str]]


def filled(name: str, asked: Asked) -> dict[str, str]:
    """Return the options of a question that the words tell."""
    fill = FILLED[name]
    given = dict(fill(asked, name))
    if asked.told.animal and name not in _WITHOUT_ANIMAL:
        given = {"animal": asked.told.animal, **given}
    return given


def _of_tube(asked: Asked, name: str) -> _Options:
    told = asked.told
    if told.uv_lamp:
        yield from _kind(told)
        if name == "uvi":
            yield from _typed(told, "distance", *_DISTANCES)
        return
    if told.tube:
        yield "tube", _tube_text(told)
    # Not told is not known: the answer then looks at every way it may be.
    yield "reflector", told.reflector.value.value if told.reflector else NOT_SURE
    yield from _screen(told) if told.screen or told.pane else [("screen", _some_screen(asked))]
    yield from _tube_length(told)
    yield from _typed(told, "age", FactName.AGE)
    yield from _many(told)
    if name == "uvi":
        heard = dict(_typed(told, "distance", *_DISTANCES))
        if distance := heard.get("distance") or asked.so_close:
            yield "distance", distance


def _tube_text(told: SetUpTold) -> str:
    """Return the strength, with the kind where it was said too."""
    assert told.tube is not None
    said = told.tube.value.text
    of_kind = any(lamp.value is LampKind.T5_HO for lamp in told.lamps)
    return f"T5 HO {said}" if of_kind and not told.tube.value.is_told else said


def _many(told: SetUpTold) -> _Options:
    if told.tubes > 1:
        yield "tubes", str(told.tubes)
        yield from _typed(told, "gap", FactName.GAP)


def _some_screen(asked: Asked) -> str:
    return "mesh" if asked.under_mesh else NOT_SURE


def _of_place(asked: Asked, _name: str) -> _Options:
    told = asked.told
    yield from _typed(told, "distance", *_DISTANCES)
    yield from _screen(told)
    yield from _along(told)
    yield from _typed(told, "length", FactName.TUBE_LENGTH)
    yield from _many(told)


def _tube_length(told: SetUpTold) -> _Options:
    """Return how long the tube is, or else the enclosure that it has to fit into."""
    known = dict(_typed(told, "length", FactName.TUBE_LENGTH))
    yield from known.items() or _along(told)


def _along(told: SetUpTold) -> _Options:
    if told.size:
        size = told.size.value
        yield "enclosure", f"{convert(size.length_m, 'm', size.unit):.6g} {size.unit}"
    else:
        yield from _typed(told, "enclosure", FactName.ENCLOSURE_LENGTH)


def _of_meter(asked: Asked, _name: str) -> _Options:
    rows = (f"{row.value:g} at {_text(row.distance)}" for row in asked.readings)
    readings = ", ".join(rows)
    if not readings and asked.reading_here is not None:
        distance = dict(_typed(asked.told, "distance", *_DISTANCES)).get("distance")
        readings = f"{asked.reading_here:g} at {distance}" if distance else ""
    if readings:
        yield "readings", readings
    yield from _screen(asked.told)
    yield from _typed(asked.told, "length", FactName.TUBE_LENGTH)
    yield from _kind(asked.told)
    yield from _many(asked.told)


def _kind(told: SetUpTold) -> _Options:
    if told.uv_lamp:
        yield "lamp", told.uv_lamp.value


def _of_age(asked: Asked, _name: str) -> _Options:
    yield from _typed(asked.told, "age", FactName.AGE)
    yield from _kind(asked.told)


def _of_watts(asked: Asked, _name: str) -> _Options:
    yield from _typed(asked.told, "room", FactName.ROOM)
    if asked.says(r"\b(?:reach|get (?:it )?to|hit|want|aim)\b"):
        yield from _typed(asked.told, "want", FactName.BASKING)
    yield from _typed(asked.told, "distance", FactName.LAMP_DISTANCE, *_DISTANCES)
    yield from _box(asked)


def _of_basking(asked: Asked, _name: str) -> _Options:
    yield from _typed(asked.told, "surface", FactName.BASKING)
    yield from _typed(asked.told, "air", FactName.WARM)
    yield from _typed(asked.told, "distance", FactName.LAMP_DISTANCE, *_DISTANCES)
    if asked.wattage:
        yield "watts", asked.wattage


def _of_night(asked: Asked, _name: str) -> _Options:
    yield from _typed(asked.told, "room", FactName.ROOM_NIGHT, FactName.NIGHT, FactName.ROOM)


def _of_warmth(asked: Asked, _name: str) -> _Options:
    told = asked.told
    for fact in (*_WARMTH, FactName.NIGHT, FactName.WATER):
        yield from _typed(told, fact.value, fact)
    yield from _typed(told, "lamp_on", FactName.ON_FOR)
    yield from _typed(told, "room", FactName.ROOM)
    yield from _box(asked)
    if told.thermometers:
        names = sorted(x.value for x in told.thermometers)
        yield "measured", " and ".join(names)


def _of_gun(asked: Asked, _name: str) -> _Options:
    if asked.degrees:
        yield "reading", asked.degrees
    if asked.surface:
        yield "material", asked.surface


def _of_plan(asked: Asked, _name: str) -> _Options:
    told = asked.told
    yield from _box(asked)
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
    yield from _many(told)


def _of_air(asked: Asked, _name: str) -> _Options:
    yield from _box(asked)
    yield from _typed(asked.told, "room", FactName.ROOM)
    if asked.wattage:
        yield "watts", asked.wattage


def _box(asked: Asked) -> _Options:
    told = asked.told
    if told.size:
        size = told.size.value
        sides = (size.length_m, size.depth_m, size.height_m)
        shown = "x".join(f"{convert(side, 'm', size.unit):.6g}" for side in sides)
        yield "enclosure", f"{shown} {size.unit}"
    material, lid = told.one(FactName.MATERIAL, str), told.one(FactName.LID, str)
    if walls := material.value if material else asked.walls:
        yield "material", walls
    if lid:
        yield "lid", _LIDS.get(lid.value, lid.value)


def _of_convert(asked: Asked, _name: str) -> _Options:
    if asked.amount:
        yield "value", asked.amount


def _of_lamp(asked: Asked, _name: str) -> _Options:
    if asked.lamps:
        yield "kind", asked.lamps[0]
        about, kind = gives_asked(asked), find_heat_source(asked.lamps[0])
        if about and not (about == "night" and kind and kind.gives_light):
            yield "about", about


def _of_needs(asked: Asked, _name: str) -> _Options:
    about = need_asked(asked)
    if about:
        yield "about", about
    if asked.told.animal and asked.degrees and asks_if_right(asked):
        yield "heard", asked.degrees


def _of_words(asked: Asked, _name: str) -> _Options:
    # Words that tell nothing of a set-up are none.
    if len(asked.told.facts) > bool(asked.told.animal):
        yield "setup", asked.said
    elif asked.told.animal:
        yield "animal", asked.told.animal


def _nothing(_asked: Asked, _name: str) -> _Options:
    yield from ()


FILLED: dict[str, Callable[[Asked, str], _Options]] = {
    "about": _nothing,
    "air": _of_air,
    "basking": _of_basking,
    "check": _of_words,
    "convert": _of_convert,
    "decline": _of_age,
    "distance": _of_tube,
    "hours": _nothing,
    "lamp": _of_lamp,
    "meter": _of_meter,
    "needs": _of_needs,
    "night": _of_night,
    "plan": _of_plan,
    "surface": _of_gun,
    "temps": _of_warmth,
    "tube": _of_place,
    "uvi": _of_tube,
    "watts": _of_watts,
}
"""How each question that free words may mean is filled."""

_WITHOUT_ANIMAL = frozenset(("about", "check", "convert", "lamp", "surface"))


def _screen(told: SetUpTold) -> _Options:
    if told.pane:
        yield "screen", told.pane.value.material
        return
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


def _typed(told: SetUpTold, option: str, *names: FactName) -> _Options:
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
