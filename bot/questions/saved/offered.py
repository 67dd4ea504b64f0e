"""What a keeper offers to the group: typed, or the last UV reading of an enclosure; or why not.

Words: ``words/<language>/offer.ftl``.
"""

from collections.abc import Sequence
from dataclasses import dataclass, replace
from datetime import date
from enum import Enum, auto
from typing import Any

from bot.desk import Desk
from bot.facts import Say
from bot.language import screens as typed
from bot.language.lamps import OtherLamp, TubeStrength
from bot.language.readings import PlacedReading, read_placed_readings
from bot.language.uv_lamps import UvLamp
from bot.language.words import join_line
from bot.pooled import class_lamp, screen_of
from bot.queries.options import OwnTube, kind_of
from bot.queries.pool import OfferQuery
from bot.queries.typed import typed as typed_as
from bot.questions.saved.enclosures import enclosure_asked
from bot.questions.saved.reading import day_of
from bot.questions.saved.unable import unable
from bot.questions.uv.lamp_asked import engine_readings, own_lamp
from bot.questions.uv.length_asked import tube_length_m
from bot.questions.uv.readings import off_briefly, read_lamp
from bot.questions.uv.readings_off import OffBy
from bot.refusal import RefusedError
from bot.saved.keeper import Enclosure
from bot.saved.kept_screens import KeptScreen
from bot.saved.pool import PooledReading
from calc.quantities import Quantity
from calc.uv.lamp import CLASS_STRENGTH_PERCENT, Fixture, Lamp, OwnPoint

__all__ = ["Lacks", "given_of", "offered_of"]

_OFFER = "mine offer"
_DAY_S = 86_400.0
_EXAMPLE = "mine offer readings:4.2 at 12 in tube:12% reflector:polished screen:none length:34in"


class Lacks(Enum):
    """What is missing of a reading that a group can use."""

    TUBE = auto()
    REFLECTOR = auto()
    SCREEN = auto()
    LENGTH = auto()
    READING = auto()
    PLACE = auto()


_MORE = {
    Lacks.TUBE: "tube:12%",
    Lacks.REFLECTOR: "reflector:polished",
    Lacks.SCREEN: "screen:none",
    Lacks.LENGTH: "length:34in",
    Lacks.READING: "readings:4.2 at 12 in",
    Lacks.PLACE: "readings:4.2 at 12 in",
}


@dataclass(frozen=True, slots=True)
class _Told:
    """What was told of a lamp, by the question or by what is kept; None: not told.

    ``line`` are the options as they were given, for an example that goes on from them.
    """

    day: date
    kind: UvLamp | None = None
    tube: TubeStrength | OtherLamp | None = None
    percent: float | None = None
    reflector: str | None = None
    screen: KeptScreen | None = None
    length_m: float | None = None
    age_days: int | None = None
    line: tuple[tuple[str, str], ...] = ()


async def offered_of(
    query: OfferQuery, desk: Desk, now: date
) -> tuple[tuple[PooledReading, ...], str]:
    """Return the readings that a question offers, and the enclosure that they are from."""
    told, enclosure = _asked(query, now), ""
    readings: Sequence[PlacedReading] = query.readings or ()
    if not readings or query.name:
        kept = await enclosure_asked(desk, query.name, _OFFER)
        enclosure = kept.name
        told, readings = _of_enclosure(kept, told, readings, dated=bool(query.day))
    fields = _fields(told)
    found = tuple(
        PooledReading(day=told.day, distance_m=r.distance.low, uvi=round(r.value, 3), **fields)
        for r in readings
    )
    _check_sound(found[0], readings, told)
    return found, enclosure


def _asked(query: OfferQuery, now: date) -> _Told:
    age = query.age
    return _Told(
        day=day_of(_OFFER, query.day, now, "day"),
        kind=query.lamp,
        tube=query.tube,
        percent=query.tube.percent if isinstance(query.tube, TubeStrength) else None,
        reflector=None if query.reflector is None else query.reflector.value,
        screen=None if query.screen is None else _screen(query.screen),
        length_m=None if query.length is None else tube_length_m(query.length),
        age_days=None if age is None else round(age.low / _DAY_S),
        line=tuple(given_of(query).items()),
    )


def given_of(query: OfferQuery) -> dict[str, str]:
    """Return what was given of a question as it can be typed again, without the keeper's yes."""
    names = (option.name for option in query.options() if option.name != "sure")
    given = {name: value for name in names if (value := getattr(query, name)) is not None}
    return {name: typed_as(value) for name, value in given.items() if value != ""}


def _screen(screen: typed.Screen | typed.Pane) -> KeptScreen:
    match screen:
        case typed.Pane():
            raise _refusal(Say("offer-no-pane"), "screen")
        case typed.NoScreen():
            return KeptScreen()
        case typed.Blocks(fraction):
            return KeptScreen(passes=1.0 - fraction)
        case typed.Passes(fraction):
            return KeptScreen(passes=fraction)
        case typed.Weave(mesh_x, mesh_y, wire):
            return KeptScreen(mesh_x_per_m=mesh_x, mesh_y_per_m=mesh_y, wire_m=wire)


def _of_enclosure(
    kept: Enclosure, told: _Told, readings: Sequence[PlacedReading], *, dated: bool
) -> tuple[_Told, Sequence[PlacedReading]]:
    """Return what was told with what is kept of an enclosure, and its last UV reading."""
    setup, day = kept.setup, told.day
    if (setup.tubes or 1) > 1:
        raise _refusal(Say("offer-no-several"))
    if not readings:
        read = [r for r in kept.readings if r.of is Quantity.UVI and (r.day == day or not dated)]
        if not read:
            raise _lacking(Lacks.READING, told)
        last = max(read, key=lambda r: r.day)
        at_m, day = last.distance_m or setup.distance_m, last.day
        if at_m is None:
            raise _lacking(Lacks.PLACE, told)
        typed_again = read_placed_readings(f"{last.value:g} at {100.0 * at_m:.6g} cm", None)
        readings = [replace(one, kept=True) for one in typed_again]
    since = setup.tube_since
    age = (day - since).days if since is not None and since <= day else None
    return (
        replace(
            told,
            day=day,
            kind=told.kind or setup.lamp,
            percent=told.percent or setup.tube_percent,
            reflector=told.reflector or setup.reflector,
            screen=told.screen or setup.screen,
            length_m=told.length_m or setup.tube_length_m,
            age_days=age if told.age_days is None else told.age_days,
        ),
        readings,
    )


def _fields(told: _Told) -> dict[str, Any]:
    """Return what is kept of a lamp; what is missing of it is refused."""
    kind = kind_of(told.tube, told.kind)
    is_own = isinstance(told.tube, OwnTube)
    if not is_own and kind is UvLamp.T5_HO:
        _check_told(told)
    if told.screen is None:
        raise _lacking(Lacks.SCREEN, told)
    if told.screen.pane:
        raise _refusal(Say("offer-no-pane"), "screen")
    of_class = not is_own and kind is UvLamp.T5_HO
    return {
        "lamp": kind,
        "own_lamp": told.tube.lamp.name if isinstance(told.tube, OwnTube) else None,
        "percent": told.percent if of_class else None,
        "reflector": told.reflector if of_class else None,
        "screen": None if told.screen.is_nothing else told.screen,
        "tube_length_m": None if is_own else told.length_m,
        "age_days": told.age_days,
    }


def _check_told(told: _Told) -> None:
    if told.percent is None:
        raise _lacking(Lacks.TUBE, told)
    if told.reflector is None:
        raise _lacking(Lacks.REFLECTOR, told)
    if told.screen is None:
        raise _lacking(Lacks.SCREEN, told)
    if told.length_m is None:
        raise _lacking(Lacks.LENGTH, told)


def _check_sound(kept: PooledReading, readings: Sequence[PlacedReading], told: _Told) -> None:
    """Refuse to give a group what no such lamp gives, or what contradicts itself."""
    screen, kind = screen_of(kept.screen), kept.lamp
    engine_readings(readings, screen)
    of_class = kept.own_lamp is None and kind is UvLamp.T5_HO
    named = class_lamp(kept) if of_class else Lamp(CLASS_STRENGTH_PERCENT, Fixture.POLISHED)
    if isinstance(told.tube, OwnTube):
        named = replace(own_lamp(told.tube.lamp), own=None)
        if isinstance(own_lamp(told.tube.lamp).own, OwnPoint):
            return
    off = read_lamp(named, readings, screen, kind, is_named=of_class).off
    if off.by is not OffBy.NOTHING or off.aside is not None:
        by = OffBy.CONTRADICT if off.by is OffBy.NOTHING else off.by
        raise unable(_OFFER, Say.by("reading-head", by), *off_briefly(off), example=_EXAMPLE)


def _lacking(what: Lacks, told: _Told) -> RefusedError:
    option, _, example = _MORE[what].partition(":")
    line = join_line(_OFFER, {**dict(told.line), option: example})
    return unable(_OFFER, Say.by("offer-lacks", what), example=line)


def _refusal(why: Say, option: str = "") -> RefusedError:
    return unable(_OFFER, why, example=_EXAMPLE, option=option)
