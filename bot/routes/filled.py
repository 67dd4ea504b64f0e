"""The options of a question, filled with what was heard, as somebody would type them."""

from collections.abc import Callable
from typing import Final

from bot.language.hearing import FactName
from bot.language.hearing.facts import LampKind
from bot.language.quantities import Dimension, Measure, convert
from bot.language.screens import Blocks, NoScreen, Passes
from bot.language.unsure import NOT_SURE
from bot.language.uv_lamps import UvLamp
from bot.menu import MODULES
from bot.questions.record import record_of
from bot.questions.setup.told import SetUpTold
from bot.routes.asked import Asked
from bot.routes.of_light import (
    light_lamp,
    light_watts,
    lumens_in,
    lux_by,
    lux_in,
    sides_in,
)
from bot.routes.quantity import asks_if_right, gives_asked, need_asked
from bot.routes.rule import tells_anything
from calc.heat.sources_of_heat import find_heat_source

__all__ = ["filled", "is_asked_freely"]

_SI = {
    Dimension.LENGTH: "m",
    Dimension.TEMPERATURE: "degC",
    Dimension.POWER: "W",
    Dimension.DURATION: "s",
}
_LIDS = {"mesh": "full mesh", "glass": "solid", "plastic": "solid"}
_UNITS = {"degF": "F", "degC": "C"}
_FADING = {"T8 tube": UvLamp.OTHER_TUBE, "compact UV lamp": UvLamp.COMPACT}
_SEASON = r"\b(?:winters?|summers?|seasons?|im winter|im sommer)\b"
# Questions that judge a reading by both its ends.
_OF_RANGES = frozenset(("temps",))
_DISTANCES = (FactName.DISTANCE_BACK, FactName.DISTANCE, FactName.DISTANCE_PERCH)


def is_asked_freely(name: str) -> bool:
    """Say whether free words may mean a question."""
    return name in MODULES and record_of(name).fills is not None


def filled(name: str, asked: Asked) -> dict[str, str]:
    """Return the options of a question that the words tell."""
    record = record_of(name)
    fills = dict(record.fills or {})
    if record.query and "animal" in record.model.examples() and "animal" not in fills:
        fills = {"animal": ("animal",), **fills}
    if asked.told.uv_lamp and record.other_lamp:
        fills = {o: heard for o, heard in fills.items() if o in ("animal", *record.other_lamp)}
    whole = name in _OF_RANGES
    texts = {option: _first(asked, heard, whole=whole) for option, heard in fills.items()}
    return {option: text for option, text in texts.items() if text}


def _first(asked: Asked, heard: tuple[str, ...], *, whole: bool) -> str:
    """Return the first of what may be heard that was told: a measure, or what is named below."""
    return next(filter(None, (_text_of(asked, name, whole=whole) for name in heard)), "")


def _text_of(asked: Asked, name: str, *, whole: bool) -> str:
    how = _HEARD.get(name)
    if how:
        return how(asked)
    said = asked.told.measure(FactName(name)) if whole else None
    return _both_ends(said.value) if said else _measured(asked.told, FactName(name))


def _measured(told: SetUpTold, *names: FactName) -> str:
    """Return the first of these measures as text with its unit, if one was told."""
    said = next(filter(None, map(told.measure, names)), None)
    return _text(said.value) if said else ""


def _both_ends(measure: Measure) -> str:
    """Return a measure as text with its unit, a range from end to end."""
    if measure.low == measure.high or measure.dimension is not Dimension.TEMPERATURE:
        return _text(measure)
    ends = (convert(end, "degC", measure.unit) for end in (measure.low, measure.high))
    told = " to ".join(f"{end:.6g}" for end in ends)
    return f"{told} {_UNITS.get(measure.unit, measure.unit)}"


def _text(measure: Measure) -> str:
    middle = (measure.low + measure.high) / 2.0
    value = convert(middle, _SI[measure.dimension], measure.unit)
    return f"{value:.6g} {_UNITS.get(measure.unit, measure.unit)}"


def _tube_of_kind(asked: Asked) -> str:
    """Return the strength, with the kind where it was said too."""
    tube = asked.told.tube
    if tube is None:
        return ""
    of_kind = any(lamp.value is LampKind.T5_HO for lamp in asked.told.lamps)
    return f"T5 HO {tube.value.text}" if of_kind and not tube.value.is_told else tube.value.text


def _reflector(asked: Asked) -> str:
    return asked.told.reflector.value.value if asked.told.reflector else ""


def _screen(asked: Asked) -> str:
    told = asked.told
    if told.pane:
        return told.pane.value.material
    if told.screen is None:
        return ""
    match told.screen.value:
        case NoScreen():
            return "none"
        case Blocks(fraction):
            return f"{100 * fraction:.4g}%"
        case Passes(fraction):
            return f"passes {100 * fraction:.4g}%"
        case weave:
            return weave.text


def _screen_if_known(asked: Asked) -> str:
    """Return the screen; what was not told is not known, and every way it may be is looked at."""
    return _screen(asked) or ("mesh" if asked.under_mesh else NOT_SURE)


def _some_screen(asked: Asked) -> str:
    screen = asked.told.screen
    return _screen(asked) if screen and not isinstance(screen.value, NoScreen) else ""


def _along(asked: Asked) -> str:
    if asked.told.size:
        size = asked.told.size.value
        return f"{convert(size.length_m, 'm', size.unit):.6g} {size.unit}"
    return _measured(asked.told, FactName.ENCLOSURE_LENGTH)


def _room_for_tube(asked: Asked) -> str:
    """Return the enclosure that the tube has to fit into, where its length was not told."""
    return "" if _measured(asked.told, FactName.TUBE_LENGTH) else _along(asked)


def _box(asked: Asked) -> str:
    if asked.told.size is None:
        return ""
    size = asked.told.size.value
    sides = (size.length_m, size.depth_m, size.height_m)
    shown = "x".join(f"{convert(side, 'm', size.unit):.6g}" for side in sides)
    return f"{shown} {size.unit}"


def _walls(asked: Asked) -> str:
    material = asked.told.one(FactName.MATERIAL, str)
    return material.value if material else asked.walls


def _lid(asked: Asked) -> str:
    lid = asked.told.one(FactName.LID, str)
    return _LIDS.get(lid.value, lid.value) if lid else ""


def _readings(asked: Asked) -> str:
    readings = ", ".join(f"{row.value:g} at {_text(row.distance)}" for row in asked.readings)
    distance = _measured(asked.told, *_DISTANCES)
    if readings or asked.reading_here is None or not distance:
        return readings
    return f"{asked.reading_here:g} at {distance}"


def _basking_wanted(asked: Asked) -> str:
    wanted = asked.says(r"\b(?:reach|get (?:it )?to|hit|want|aim)\b")
    return _measured(asked.told, FactName.BASKING) if wanted else ""


def _given_asked(asked: Asked) -> str:
    about = gives_asked(asked) if asked.lamps else ""
    kind = find_heat_source(asked.lamps[0]) if about else None
    return "" if about == "night" and kind and kind.gives_light else about


def _bare(place: str) -> Callable[[Asked], str]:
    """Return what hears a temperature without its unit at a place that is named."""

    def heard(asked: Asked) -> str:
        found = asked.bare_warmth
        return found[1] if found and found[0] == place else ""

    return heard


def _fading(asked: Asked) -> str:
    """Return the kind of UV lamp that is named where its age is asked about."""
    told = asked.told.uv_lamp
    if told:
        return told.value
    return next((_FADING[name].value for name in asked.lamps if name in _FADING), "")


_HEARD: Final[dict[str, Callable[[Asked], str]]] = {
    "all_told": lambda a: a.said if tells_anything(a) else "",
    "along": _along,
    "amount": lambda a: a.amount,
    "animal": lambda a: a.told.animal,
    "bare_basking": _bare("basking"),
    "bare_cool": _bare("cool"),
    "bare_warm": _bare("warm"),
    "basking_wanted": _basking_wanted,
    "box": _box,
    "degrees": lambda a: a.degrees,
    "degrees_doubted": lambda a: a.degrees if a.told.animal and asks_if_right(a) else "",
    "fading_lamp": _fading,
    "gap_of_tubes": lambda a: _measured(a.told, FactName.GAP) if a.told.tubes > 1 else "",
    "given_asked": _given_asked,
    "heat_source": lambda a: a.lamps[0] if a.lamps else "",
    "length_asked": lambda a: a.so_close,
    "lid": _lid,
    "light_lamp": light_lamp,
    "light_watts": light_watts,
    "lumens": lumens_in,
    "lux": lux_in,
    "lux_by": lux_by,
    "need_asked": need_asked,
    "only_the_animal": lambda a: "" if tells_anything(a) else a.told.animal,
    "readings": _readings,
    "reflector": _reflector,
    "reflector_if_known": lambda a: _reflector(a) or NOT_SURE,
    "room_for_tube": _room_for_tube,
    "sides": lambda a: sides_in(a.words),
    "season": lambda a: "home" if a.says(_SEASON) else "",
    "screen": _screen,
    "screen_if_known": _screen_if_known,
    "some_screen": _some_screen,
    "swum_in": lambda a: a.water,
    "surface_shot_at": lambda a: a.surface,
    "thermometers": lambda a: " and ".join(sorted(x.value for x in a.told.thermometers)),
    "tube": lambda a: a.told.tube.value.text if a.told.tube else "",
    "tube_of_kind": _tube_of_kind,
    "tubes": lambda a: str(a.told.tubes) if a.told.tubes > 1 else "",
    "uv_lamp": lambda a: a.told.uv_lamp.value if a.told.uv_lamp else "",
    "walls": _walls,
    "wattage": lambda a: a.wattage,
}
