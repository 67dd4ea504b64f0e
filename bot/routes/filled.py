"""The options of a question, filled with what was heard: values, never text to be read again."""

from collections.abc import Callable
from dataclasses import replace
from typing import Final, TypeVar

from bot.language.choices import THERMOMETERS, read_choice
from bot.language.hearing import FactName
from bot.language.hearing.facts import LampKind
from bot.language.quantities import Dimension, Measure
from bot.language.readings import PlacedReading
from bot.language.screens import NoScreen
from bot.language.unsure import NOT_SURE, SomeMesh, Unsure
from bot.language.uv_lamps import UvLamp
from bot.menu import MODULES
from bot.queries.options import OwnTube
from bot.questions.record import record_of
from bot.questions.setup.told import Said, SetUpTold
from bot.routes.asked import Asked
from bot.routes.of_light import (
    heat_watts,
    hours_of_plants,
    light_away,
    light_lamp,
    light_watts,
    lumens_in,
    lux_by,
    lux_in,
    set_up_in,
    several_lamps,
    sides_in,
    white_lamps,
)
from bot.routes.of_sky import sky_hour, sky_latitude, sky_month, sky_place
from bot.routes.of_two import distance_of_one, distance_of_other, one_tube, other_tube
from bot.routes.quantity import asks_if_right, gives_asked, need_asked
from bot.routes.rule import tells_anything
from calc.heat.sources_of_heat import find_heat_source

__all__ = ["filled", "is_asked_freely"]

Kind = TypeVar("Kind")

_LIDS = {"mesh": "full mesh", "glass": "solid", "plastic": "solid"}
_FADING = {"T8 tube": UvLamp.OTHER_TUBE, "compact UV lamp": UvLamp.COMPACT}
_SEASON = r"\b(?:winters?|summers?|seasons?|im winter|im sommer)\b"
_DISTANCES = (FactName.DISTANCE_BACK, FactName.DISTANCE, FactName.DISTANCE_PERCH)


def is_asked_freely(name: str) -> bool:
    """Say whether free words may mean a question."""
    return name in MODULES and record_of(name).fills is not None


def filled(name: str, asked: Asked) -> dict[str, object]:
    """Return the values of a question's options that the words tell.

    A value is what its option holds once it is read; where only the option knows how to read
    it, as a name or a length to convert, it is the asker's own words.
    """
    record = record_of(name)
    fills = dict(record.fills or {})
    if record.query and "animal" in record.model.examples() and "animal" not in fills:
        fills = {"animal": ("animal",), **fills}
    if asked.told.uv_lamp and record.other_lamp:
        fills = {o: heard for o, heard in fills.items() if o in ("animal", *record.other_lamp)}
    values = {option: _first(asked, heard) for option, heard in fills.items()}
    return {option: value for option, value in values.items() if value}


def _first(asked: Asked, heard: tuple[str, ...]) -> object:
    """Return the first of what may be heard that was told: a measure, or what is named below."""
    return next(filter(None, (_value_of(asked, name) for name in heard)), None)


def _value_of(asked: Asked, name: str) -> object:
    how = _HEARD.get(name)
    return how(asked) if how else _measured(asked.told, FactName(name))


def _measured(told: SetUpTold, *names: FactName) -> Measure | None:
    """Return the first of these measures that was told."""
    return next((said.value for said in map(told.measure, names) if said), None)


def _value(said: Said[Kind] | None) -> Kind | None:
    return said.value if said else None


def _tube_of_kind(asked: Asked) -> object:
    """Return the strength, with the kind where it was said too."""
    tube = _value(asked.told.tube)
    of_kind = any(lamp.value is LampKind.T5_HO for lamp in asked.told.lamps)
    if tube is None or not of_kind or tube.is_told:
        return tube
    return replace(tube, is_told=True, text=f"T5 HO {tube.text}")


def _screen(asked: Asked) -> object:
    return _value(asked.told.pane) or _value(asked.told.screen)


def _screen_if_known(asked: Asked) -> object:
    """Return the screen; what was not told is not known, and every way it may be is looked at."""
    return _screen(asked) or (SomeMesh("mesh") if asked.under_mesh else Unsure(NOT_SURE))


def _reflector_if_known(asked: Asked) -> object:
    """Return what is behind the tube; the readings of a group's own lamp hold that already."""
    tube = asked.told.tube
    is_own = tube is not None and isinstance(tube.value, OwnTube)
    return _value(asked.told.reflector) or (None if is_own else Unsure(NOT_SURE))


def _some_screen(asked: Asked) -> object:
    screen = asked.told.screen
    return _screen(asked) if screen and not isinstance(screen.value, NoScreen) else None


def _along(asked: Asked) -> Measure | None:
    """Return how long the enclosure is, alone or as the first of its sides."""
    size = _value(asked.told.size)
    if size is None:
        return _measured(asked.told, FactName.ENCLOSURE_LENGTH)
    length = size.length_m
    return Measure(Dimension.LENGTH, length, length, size.unit, size.text, size.assumed)


def _room_for_tube(asked: Asked) -> Measure | None:
    """Return the enclosure that the tube has to fit into, where its length was not told."""
    return None if _measured(asked.told, FactName.TUBE_LENGTH) else _along(asked)


def _walls(asked: Asked) -> str:
    material = asked.told.one(FactName.MATERIAL, str)
    return material.value if material else asked.walls


def _lid(asked: Asked) -> str:
    lid = asked.told.one(FactName.LID, str)
    return _LIDS.get(lid.value, lid.value) if lid else ""


def _readings(asked: Asked) -> tuple[PlacedReading, ...]:
    distance = _measured(asked.told, *_DISTANCES)
    if asked.readings or asked.reading_here is None or distance is None:
        return asked.readings
    return (PlacedReading(asked.reading_here, distance.narrowed(), distance.text),)


def _basking_wanted(asked: Asked) -> Measure | None:
    wanted = asked.says(r"\b(?:reach|get (?:it )?to|hit|want|aim)\b")
    return _measured(asked.told, FactName.BASKING) if wanted else None


def _given_asked(asked: Asked) -> str:
    about = gives_asked(asked) if asked.lamps else ""
    kind = find_heat_source(asked.lamps[0]) if about else None
    return "" if about == "night" and kind and kind.gives_light else about


def _bare(place: str) -> Callable[[Asked], Measure | None]:
    """Return what hears a temperature without its unit at a place that is named."""

    def heard(asked: Asked) -> Measure | None:
        found = asked.bare_warmth
        return found[1] if found and found[0] == place else None

    return heard


def _fading(asked: Asked) -> UvLamp | None:
    """Return the kind of UV lamp that is named where its age is asked about."""
    named = (_FADING[name] for name in asked.lamps if name in _FADING)
    return asked.told.uv_lamp or next(named, None)


_HEARD: Final[dict[str, Callable[[Asked], object]]] = {
    "all_told": lambda a: a.said if tells_anything(a) else "",
    "all_told_after": lambda a: set_up_in(a) if tells_anything(a) else "",
    "along": _along,
    "amount": lambda a: a.amount,
    "animal": lambda a: a.told.animal,
    "bare_basking": _bare("basking"),
    "bare_cool": _bare("cool"),
    "bare_warm": _bare("warm"),
    "basking_wanted": _basking_wanted,
    "box": lambda a: _value(a.told.size),
    "degrees": lambda a: a.degrees,
    "degrees_doubted": lambda a: a.degrees if a.told.animal and asks_if_right(a) else "",
    "distance_of_one": distance_of_one,
    "distance_of_other": distance_of_other,
    "fading_lamp": _fading,
    "gap_of_tubes": lambda a: _measured(a.told, FactName.GAP) if a.told.tubes > 1 else None,
    "given_asked": _given_asked,
    "heat_source": lambda a: a.lamps[0] if a.lamps else "",
    "heat_watts": heat_watts,
    "hours_of_plants": hours_of_plants,
    "length_asked": lambda a: a.so_close,
    "lid": _lid,
    "light_away": light_away,
    "light_lamp": light_lamp,
    "light_watts": light_watts,
    "lumens": lumens_in,
    "light_lamps": several_lamps,
    "lux": lux_in,
    "lux_by": lux_by,
    "need_asked": need_asked,
    "one_tube": one_tube,
    "other_tube": other_tube,
    "only_the_animal": lambda a: "" if tells_anything(a) else a.told.animal,
    "readings": _readings,
    "reflector": lambda a: _value(a.told.reflector),
    "reflector_if_known": _reflector_if_known,
    "room_for_tube": _room_for_tube,
    "sides": lambda a: sides_in(a.words),
    "season": lambda a: "home" if a.says(_SEASON) else "",
    "screen": _screen,
    "screen_if_known": _screen_if_known,
    "sky_hour": sky_hour,
    "sky_latitude": sky_latitude,
    "sky_month": sky_month,
    "sky_place": sky_place,
    "some_screen": _some_screen,
    "swum_in": lambda a: a.water,
    "surface_shot_at": lambda a: a.surface,
    "thermometers": lambda a: frozenset(read_choice(x, THERMOMETERS) for x in a.told.thermometers),
    "tube": lambda a: _value(a.told.tube),
    "tube_of_kind": _tube_of_kind,
    "tubes": lambda a: a.told.tubes if a.told.tubes > 1 else None,
    "uv_lamp": lambda a: a.told.uv_lamp,
    "walls": _walls,
    "white_lamps": white_lamps,
    "wattage": lambda a: a.wattage,
}
