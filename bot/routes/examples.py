"""Examples of options, made from what an animal needs: none that the answers would fault."""

import re
from collections.abc import Mapping
from functools import cache

from bot.language.quantities import Units
from bot.questions.animals import ANY_ANIMAL, animal_of
from bot.questions.record import record_of
from bot.saved.group import NOTHING_OWN, Own
from calc.animal import Animal, Group, Target
from calc.animals import animals
from calc.limits import Limit, Limits, limits_of
from calc.naming import Known, named
from calc.uv.lamp import Fixture, Lamp
from calc.uv.placement import place
from calc.uv.screen import NoScreen

__all__ = ["examples_for", "figures_of", "typed_in"]

_USUAL_ROOM_F = 70
_LEAST_RISE_F = 5
_COLDEST_ROOM_F = 50
_USUAL = {"tube": "12%", "room": "70F", "surface": "92F", "air": "78F", "reading": "92F"}
_INCH_M = 0.0254
_HEAT, _LENGTHS = re.compile(r"(\d+)F"), re.compile(r"(\d+(?:x\d+)*) ?in")
# From this much UV on a 12 % tube is the usual one, under it a 6 % one, under a little a 2 % one.
_STRONG_UVI, _LITTLE_UVI = 3.6, 1.2


def examples_for(command: str, animal: str, own: Own = NOTHING_OWN) -> Mapping[str, str]:
    """Return examples for the options of a question that suit an animal.

    A name that is not known here is taken for the one that stands in examples.

    >>> examples_for("temps", "crested gecko")["basking"]
    '78F'
    """
    found = named(animal, own.names).what
    what = found if isinstance(found, Known) else named(ANY_ANIMAL).what
    assert isinstance(what, Known)
    listed = what.slug in animals()
    suiting = _examples(what.slug) if listed else _of(animal_of(what.slug, own))
    suits = record_of(command).suits
    return {option: suiting[figure] for option, figure in suits.items() if figure in suiting}


def figures_of(examples: Mapping[str, str], units: Units) -> dict[str, str]:
    """Return examples as words need them: in the asker's unit, lengths without it."""
    in_cm = units is Units.CM
    distance = typed_in(examples.get("distance", "14in"), units).removesuffix(
        "cm" if in_cm else "in"
    )
    uvi = examples.get("readings", "4.2 at 12 in").partition(" at ")[0]
    whole = {name: typed_in(text, units) for name, text in {**_USUAL, **examples}.items()}
    return {**whole, "distance": distance, "uvi_at": f"{uvi} at {distance}"}


def typed_in(text: str, units: Units) -> str:
    """Return an example in inches and °F as who measures in centimetres and °C types it.

    >>> typed_in("71F", Units.CM), typed_in("48x24x36in", Units.CM), typed_in("71F", Units.IN)
    ('21.5C', '120x60x90cm', '71F')
    """
    if units is not Units.CM:
        return text
    if heat := _HEAT.fullmatch(text):
        return f"{round((int(heat[1]) - 32.0) / 0.9) / 2.0:g}C"
    if lengths := _LENGTHS.fullmatch(text):
        sides = [int(side) * 100.0 * _INCH_M for side in lengths[1].split("x")]
        # Boxes are told by tens of centimetres.
        return "x".join(f"{round(side, -1 if sides[1:] else 0):.0f}" for side in sides) + "cm"
    return text


@cache
def _examples(slug: str) -> Mapping[str, str]:
    return _of(animals()[slug])


def _of(animal: Animal) -> Mapping[str, str]:
    return {**_of_heat(animal), **_of_uv(animal)}


def _of_heat(animal: Animal) -> dict[str, str]:
    spot = animal.basking_surface_c or animal.warm_air_c
    # What cools down in its water has no range for its cool air.
    in_water = animal.group is Group.TURTLE
    cool = animal.cool_air_c or (None if in_water else animal.warm_air_c)
    floor = animal.night_floor_c
    limits = limits_of(animal)
    surface = _below(limits.surface_c, 85) if spot is None else _f(spot.aim, spot)
    air = _below(limits.caution_c, 78) if cool is None else _f(cool.aim, cool)
    warm = air if animal.warm_air_c is None else _f(animal.warm_air_c.low, animal.warm_air_c)
    if cool is None:
        air = _cooler(air, warm)
    least = _USUAL_ROOM_F if cool is None else int(cool.low * 1.8 + 32.0)
    room = _below(limits.room_c, min(_USUAL_ROOM_F, least))
    night = _usual_night(limits) if floor is None else f"{int(floor.high * 1.8 + 33.0)}F"
    return {
        "surface": surface,
        "warm": warm,
        "air": air,
        "cooler_air": _cooler(air, surface),
        "night": night,
        "room": room,
        "room_under": _room_under(room, surface),
    }


def _room_under(room: str, surface: str) -> str:
    return f"{max(_COLDEST_ROOM_F, min(int(room[:-1]), int(surface[:-1]) - 16))}F"


def _cooler(air: str, surface: str) -> str:
    """Return the air, or what is cooler than the surface where both have one target."""
    return f"{min(int(air[:-1]), int(surface[:-1]) - _LEAST_RISE_F)}F"


def _below(limit: Limit | None, usual_f: int) -> str:
    """Return what is usual, or less where a limit is near."""
    return f"{usual_f if limit is None else min(usual_f, int(limit.value * 1.8 + 30.0))}F"


def _usual_night(limits: Limits) -> str:
    coldest = 0 if limits.night_c is None else int(limits.night_c.value * 1.8 + 34.0)
    return f"{max(int(_below(limits.room_c, _USUAL_ROOM_F)[:-1]), coldest)}F"


def _f(aim_c: float, target: Target) -> str:
    """Return an aim in whole °F that lies inside its target, the cooler of two as near."""
    low, high = (c * 1.8 + 32.0 for c in (target.low, target.high))
    inside = [f for f in range(int(low), int(high) + 2) if low - 1e-6 <= f <= high + 1e-6]
    aim_f = aim_c * 1.8 + 32.0
    return f"{min(inside, key=lambda f: round(abs(f - aim_f), 6))}F" if inside else f"{aim_f:.0f}F"


def _of_uv(animal: Animal) -> dict[str, str]:
    wanted = animal.uvi
    if wanted is None:
        return {}
    strength = 12.0 if wanted.high >= _STRONG_UVI else 6.0 if wanted.high > _LITTLE_UVI else 2.0
    lamp = Lamp(strength, Fixture.POLISHED)
    start = place(lamp, NoScreen(), wanted.low, wanted.high).start
    distance = "14in" if start is None else f"{start.distance_m / _INCH_M:.0f}in"
    aim, later = (f"{round(wanted.aim * share, 1):g}" for share in (1.0, 0.95))
    span = f"{round(wanted.low, 1):g}-{round(wanted.high, 1):g}"
    # A tube gets too weak only for who needs some of it.
    above_0 = f"{round(max(wanted.low, 0.1), 1):g}-{round(wanted.high, 1):g}"
    return {
        "tube": f"{strength:.0f}%",
        "distance": distance,
        "uvi": span,
        "uvi_aim": aim,
        "uvi_above_0": above_0,
        "readings": f"{aim} at {distance.removesuffix('in')} in",
        "dated_readings": f"2026-01-03 {aim}, 2026-03-01 {later}",
        "box": "48x24x36in",
    }
